"""Conversions of positions remembered over many sites: stations of one owner mostly ask the same questions."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Hashable

from spoutline.model.position_conversion import PositionConversion
from spoutline.model.survey import Position, Survey
from spoutline.planning.conversion.relabelling import same_conversion
from spoutline.planning.sets.relabel import same_site

_MOST_KEPT = 4000


class ConversionMemory:
    """Keeps the conversions met last.

    A remembered conversion names the site where it was first met in its requirement, so it serves where results are
    added up and not where they are printed.
    """

    def __init__(self) -> None:
        self._kept: OrderedDict[Hashable, PositionConversion] = OrderedDict()

    def get(self, key: Hashable) -> PositionConversion | None:
        """Return what was kept under ``key``; None where nothing was."""
        found = self._kept.get(key)
        if found is not None:
            self._kept.move_to_end(key)
        return found

    def keep(self, key: Hashable, conversion: PositionConversion) -> None:
        """Keep a conversion; the one longest unused goes where there are too many."""
        self._kept[key] = conversion
        if len(self._kept) > _MOST_KEPT:
            self._kept.popitem(last=False)


def memory_key(position: Position, survey: Survey, *, forbidden: bool) -> Hashable:
    """Return all that the conversion of a position depends on within one catalogue and one set of tables."""
    answers = survey.conversion
    return (
        _question(position, ages_matter=answers.longest_age_years is not None),
        same_site(survey.site),
        answers.follow,
        answers.keep_parts,
        answers.longest_age_years,
        answers.retire_superseded,
        answers.agency,
        answers.money.labour_rate_per_hour,
        forbidden,
    )


def _question(position: Position, *, ages_matter: bool) -> Position:
    """Return the position without what has no bearing; ages have none where no oldest age is set."""
    question = same_conversion(position)
    if ages_matter:
        return question
    ageless = tuple(item.model_copy(update={"age_years": None}) for item in question.installed)
    return question.model_copy(update={"installed": ageless})
