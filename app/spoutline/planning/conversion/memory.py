"""Answers remembered over many sites: stations of one owner mostly ask the same questions."""

from __future__ import annotations

import hashlib
from collections import OrderedDict
from collections.abc import Callable, Mapping
from typing import Any, Protocol

from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.position_conversion import PositionConversion
from spoutline.model.survey import Position, Survey
from spoutline.planning.conversion.position_answer import PositionAnswer
from spoutline.planning.conversion.relabelling import WITHOUT_BEARING
from spoutline.planning.sets.relabel import same_site

_MOST_MET = 2000
_AGES: dict[str, Any] = {"installed": {"__all__": {"age_years"}}}


class KeptAnswers(Protocol):
    """Answers that outlive this process and are shared with the others of a run."""

    def answer(self, key: str, work: Callable[[], PositionAnswer]) -> PositionAnswer:
        """Return the answer kept under ``key``; else that of ``work``, which no other process does meanwhile."""
        ...


class ConversionMemory:
    """Keeps the conversions met last, and asks ``kept`` for the answers to others before they are worked out.

    A remembered conversion names the position where it was first met, and tells no more than a programme counts.
    """

    def __init__(self, kept: KeptAnswers | None = None) -> None:
        self._kept = kept
        self._met: OrderedDict[str, PositionConversion] = OrderedDict()

    def met(self, key: str) -> PositionConversion | None:
        """Return the conversion met under ``key``; None where there was none lately."""
        found = self._met.get(key)
        if found is not None:
            self._met.move_to_end(key)
        return found

    def meet(self, key: str, conversion: PositionConversion) -> None:
        """Remember a conversion; the one longest unused goes where there are too many."""
        self._met[key] = conversion
        if len(self._met) > _MOST_MET:
            self._met.popitem(last=False)

    def answer(self, key: str, work: Callable[[], PositionAnswer]) -> PositionAnswer:
        """Return the answer to a question: a kept one, else that of ``work``."""
        return work() if self._kept is None else self._kept.answer(key, work)


class QuestionKeys:
    """Makes the keys of what the positions of one survey ask: fingerprints of all that their answers depend on.

    Parameters
    ----------
    survey
        The survey of the positions.
    basis
        Fingerprint of what answers rest on beside the survey and what stands behind its part numbers: program, rules,
        steps, edition of the catalogue.
    """

    def __init__(self, survey: Survey, basis: str) -> None:
        answers = survey.conversion
        told = (
            basis,
            same_site(survey.site).model_dump_json(),
            answers.follow,
            answers.keep_parts,
            answers.longest_age_years,
            answers.retire_superseded,
            answers.agency,
            answers.money.labour_rate_per_hour,
        )
        self._head = hashlib.sha256(repr(tuple(map(str, told))).encode())
        ages_matter = answers.longest_age_years is not None
        self._without = dict.fromkeys(WITHOUT_BEARING, True) | ({} if ages_matter else _AGES)

    def key(self, position: Position, known: Mapping[PartRef, Part], *, forbidden: bool) -> str:
        """Return the key of what a position asks; ``known`` are the parts of the catalogue by what names them there."""
        digest = self._head.copy()
        digest.update(position.model_dump_json(exclude=self._without).encode())
        parts = [known.get(item.ref) if item.ref else None for item in position.installed]
        digest.update(repr((forbidden, [part and part.ref for part in parts])).encode())
        return digest.hexdigest()
