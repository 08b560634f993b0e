"""Where each place of the work stands, in a word or two: surveyed, fitting, drafted, issued, agreed, built."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from itertools import chain, repeat
from typing import TYPE_CHECKING

from spoutline.gui.places import Place
from spoutline.gui.roles import Standing, Tone
from spoutline.gui.wording import tr
from spoutline.model.agreed_sets import AgreedSets, AgreementKind, SetsSource
from spoutline.model.answered import is_surveyed
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.survey import Position, Survey

if TYPE_CHECKING:
    from spoutline.bootstrap.standing import StationStanding

_WORDS = {
    QuotationStatus.DRAFT: "drafted",
    QuotationStatus.ISSUED: "issued",
    QuotationStatus.ACCEPTED: "accepted",
    QuotationStatus.DECLINED: "declined",
    QuotationStatus.EXPIRED: "expired",
}
_TONES = {
    QuotationStatus.DRAFT: Tone.NOTE,
    QuotationStatus.ISSUED: Tone.NOTE,
    QuotationStatus.ACCEPTED: Tone.GOOD,
    QuotationStatus.DECLINED: Tone.BAD,
    QuotationStatus.EXPIRED: Tone.CAUTION,
}


class SurveyedCount:
    """Counts the surveyed positions; those that stay as they were are not looked at again after every edit."""

    def __init__(self) -> None:
        self._looked_at: list[tuple[Position, bool]] = []
        self._positions: tuple[Position, ...] = ()

    def of(self, positions: tuple[Position, ...]) -> int:
        """Return how many of these are surveyed."""
        if positions is not self._positions:
            before = chain(self._looked_at, repeat((None, False)))
            self._looked_at = [
                (one, was if one is old else is_surveyed(one))
                for one, (old, was) in zip(positions, before, strict=False)
            ]
            self._positions = positions
        return sum(was for _, was in self._looked_at)


def standings(
    survey: Survey,
    tone: Callable[[str], Tone],
    source: SetsSource,
    agreed: AgreedSets | None,
    known: StationStanding | None,
    *,
    surveyed: SurveyedCount | None = None,
) -> Mapping[Place, Standing]:
    """Return where each place stands.

    ``tone`` gives the mark of a position, ``source`` the sets shown, ``agreed`` what was agreed last; ``known``
    is what the book holds, None while it is being read; ``surveyed`` counted the positions before, if anybody did.
    """
    return {
        Place.START: _kept(known),
        Place.SURVEY: _surveyed(survey, surveyed or SurveyedCount()),
        Place.POSITIONS: _fitting([tone(one.label) for one in survey.positions]),
        Place.PARTS: _sets(source, agreed),
        Place.QUOTATION: _quoted(known),
        Place.CONVERSION: _converted(agreed),
        Place.INSTALLER: _built(len(survey.positions), known),
        Place.CATALOGUES: _planned_with(known),
    }


def _kept(known: StationStanding | None) -> Standing:
    if known is None:
        return Standing(Tone.WORKING, "")
    words = tr("{0} surveys") if known.surveys != 1 else tr("1 survey")
    return Standing(Tone.NOTE, words.format(known.surveys))


def _surveyed(survey: Survey, surveyed: SurveyedCount) -> Standing:
    done, count = surveyed.of(survey.positions), len(survey.positions)
    tone = Tone.GOOD if done == count else Tone.OPEN
    return Standing(tone, tr("{0} of {1} surveyed").format(done, count))


def _fitting(tones: list[Tone]) -> Standing:
    without = sum(one is Tone.BAD for one in tones)
    if without:
        return Standing(Tone.BAD, tr("{0} of {1} do not fit").format(without, len(tones)))
    if Tone.WORKING in tones:
        return Standing(Tone.WORKING, tr("being planned"))
    fits = sum(one in (Tone.GOOD, Tone.NOTE, Tone.CAUTION, Tone.QUESTION) for one in tones)
    worst = next((one for one in (Tone.QUESTION, Tone.CAUTION, Tone.OPEN) if one in tones), Tone.GOOD)
    return Standing(worst, tr("{0} of {1} fit").format(fits, len(tones)))


def _sets(source: SetsSource, agreed: AgreedSets | None) -> Standing:
    if source is SetsSource.BUILT:
        return Standing(Tone.GOOD, tr("built"))
    if agreed is not None:
        words = tr("agreed") if source is SetsSource.AGREED else tr("planned; others agreed")
        return Standing(Tone.GOOD if source is SetsSource.AGREED else Tone.CAUTION, words)
    return Standing(Tone.NOTE, tr("planned, not agreed"))


def _quoted(known: StationStanding | None) -> Standing:
    if known is None:
        return Standing(Tone.WORKING, "")
    if not known.quotations:
        return Standing(Tone.OPEN, tr("none yet"))
    last = known.quotations[0]
    return Standing(_TONES[last.status], f"{last.number} {tr(_WORDS[last.status])}")


def _converted(agreed: AgreedSets | None) -> Standing:
    if agreed is not None and agreed.origin.kind is AgreementKind.CONVERSION:
        return Standing(Tone.GOOD, tr("agreed"))
    return Standing(Tone.NOTE, tr("nothing agreed"))


def _built(count: int, known: StationStanding | None) -> Standing:
    if known is None:
        return Standing(Tone.WORKING, "")
    done, faulty = len(known.recorded), len(known.faulty)
    if faulty:
        return Standing(Tone.BAD, tr("{0} of {1}, {2} faulty").format(done, count, faulty))
    tone = Tone.GOOD if done == count else Tone.NOTE if done else Tone.OPEN
    return Standing(tone, tr("{0} of {1} built").format(done, count))


def _planned_with(known: StationStanding | None) -> Standing:
    if known is None:
        return Standing(Tone.WORKING, "")
    return Standing(Tone.CAUTION if known.planned_with.is_draft else Tone.NOTE, str(known.planned_with))
