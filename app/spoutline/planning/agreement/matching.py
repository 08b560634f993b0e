"""Which agreement is that of a survey: by id, else by name, labels and content; a doubtful match is none."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.frozen import frozen
from spoutline.model.agreed_sets import AgreedSets, EntryKind
from spoutline.model.survey import Survey
from spoutline.planning.agreement.making import question_of

_LEAST_SHARE = 0.5  # of the positions that both know must ask what they asked


@frozen(kw_only=True)
class AgreementLine:
    """The history of the agreements of one survey, oldest first."""

    id: int
    entries: tuple[AgreedSets, ...]

    @property
    def site(self) -> str:
        """The name of the site when last agreed."""
        return self.entries[-1].site

    @property
    def survey_id(self) -> int | None:
        """The survey of the book that it belongs to, where any entry says so."""
        return next((one.survey_id for one in reversed(self.entries) if one.survey_id is not None), None)

    @property
    def agreed(self) -> AgreedSets | None:
        """What holds: the last agreement that was not withdrawn."""
        standing: list[AgreedSets] = []
        for one in self.entries:
            if one.entry is EntryKind.AGREED:
                standing.append(one)
            elif standing:
                standing.pop()
        return standing[-1] if standing else None


@frozen(kw_only=True)
class AgreementMatch:
    """The line of a survey; None with ``doubtful`` lines where none is surely the survey's."""

    line: AgreementLine | None
    doubtful: tuple[AgreementLine, ...] = ()


def match(survey: Survey, survey_id: int | None, fingerprint: str, lines: Sequence[AgreementLine]) -> AgreementMatch:
    """Return the line of agreements of a survey.

    By ``survey_id`` where one is known, then the name must be the same too; else by name: one line holds the very
    survey, or only one line has the name, its labels and those of the survey hold one another, and at least half of
    the positions ask what they asked.
    """
    if survey_id is not None:
        own = [line for line in lines if line.survey_id == survey_id]
        if own and own[0].site == survey.site.name:
            return AgreementMatch(line=own[0])
        if own:
            return AgreementMatch(line=None, doubtful=tuple(own))
    named = [
        line
        for line in lines
        if line.site == survey.site.name and (survey_id is None or line.survey_id in (None, survey_id))
    ]
    same = [line for line in named if any(one.survey_fingerprint == fingerprint for one in line.entries)]
    if len(same) == 1:
        return AgreementMatch(line=same[0])
    if len(named) == 1 and not same and _is_alike(survey, named[0].entries[-1]):
        return AgreementMatch(line=named[0])
    return AgreementMatch(line=None, doubtful=tuple(same or named))


def _is_alike(survey: Survey, agreed: AgreedSets) -> bool:
    now, then = {one.label for one in survey.positions}, set(agreed.labels)
    shared = now & then
    if not shared or not (now <= then or then <= now):
        return False
    asked = {one.label: one.question for one in agreed.positions}
    same = sum(question_of(one) == asked[one.label] for one in survey.positions if one.label in shared)
    return same >= _LEAST_SHARE * len(shared)
