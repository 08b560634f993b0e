"""Two people's edits of one survey brought together: field by field where they do not meet, named where they do."""

from __future__ import annotations

from dataclasses import dataclass

from pydantic import BaseModel, ValidationError

from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.survey import Position, Site, Survey


@dataclass(frozen=True, slots=True, kw_only=True)
class MergeConflict:
    """Something that both changed in different ways; a text is empty where it was removed."""

    position: str
    field: str
    base: str
    mine: str
    theirs: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SurveyMerge:
    """The merged survey, mine standing in every conflict; None where it would be none that holds together."""

    survey: Survey | None
    conflicts: tuple[MergeConflict, ...]


def merged(base: Survey, mine: Survey, theirs: Survey) -> SurveyMerge:
    """Return both edits of ``base`` in one survey.

    Positions are known by their labels, so a renamed one counts as removed and added. A position that one removed and
    the other changed is a conflict, and stays.
    """
    conflicts: list[MergeConflict] = []
    positions = _positions(base, mine, theirs, conflicts)
    try:
        survey = Survey(
            site=Site.model_validate(_merged_document("", base.site, mine.site, theirs.site, conflicts)),
            positions=tuple(positions),
            conversion=ConversionAnswers.model_validate(
                _merged_document("", base.conversion, mine.conversion, theirs.conversion, conflicts)
            ),
        )
    except ValidationError:
        return SurveyMerge(survey=None, conflicts=tuple(conflicts))
    return SurveyMerge(survey=survey, conflicts=tuple(conflicts))


def _positions(base: Survey, mine: Survey, theirs: Survey, conflicts: list[MergeConflict]) -> list[Position]:
    """Return the positions in my order, theirs that I do not have at the end."""
    old, own, other = ({one.label: one for one in survey.positions} for survey in (base, mine, theirs))
    found = []
    for label in dict.fromkeys((*own, *other)):
        before, here, there = old.get(label), own.get(label), other.get(label)
        if here is not None and there is not None:
            found.append(_both_have(label, before, here, there, conflicts))
            continue
        kept = here if here is not None else there
        if kept is None or before == kept:
            continue  # one of us removed it and the other left it as it was
        if before is not None:
            texts = ("" if one is None else "changed" for one in (here, there))
            first, second = texts
            conflicts.append(MergeConflict(position=label, field="", base="there", mine=first, theirs=second))
        found.append(kept)
    return found


def _both_have(
    label: str, before: Position | None, here: Position, there: Position, conflicts: list[MergeConflict]
) -> Position:
    if before is None:
        if here != there:
            conflicts.append(MergeConflict(position=label, field="", base="", mine="added", theirs="added"))
        return here
    return Position.model_validate(_merged_document(label, before, here, there, conflicts))


def _merged_document(
    label: str, base: BaseModel, mine: BaseModel, theirs: BaseModel, conflicts: list[MergeConflict]
) -> dict[str, object]:
    """Return a document with every field as the one who changed it left it."""
    return {
        name: _merged_value(label, name, getattr(base, name), getattr(mine, name), getattr(theirs, name), conflicts)
        for name in type(base).model_fields
    }


def _merged_value(  # noqa: PLR0917 - three values of one kind, told apart by their order everywhere in this module
    label: str, field: str, base: object, mine: object, theirs: object, conflicts: list[MergeConflict]
) -> object:
    if theirs in (mine, base):
        return mine
    if mine == base:
        return theirs
    if isinstance(base, BaseModel) and isinstance(mine, BaseModel) and isinstance(theirs, BaseModel):
        return {
            name: _merged_value(
                label,
                f"{field}.{name}",
                getattr(base, name),
                getattr(mine, name),
                getattr(theirs, name),
                conflicts,
            )
            for name in type(base).model_fields
        }
    conflicts.append(
        MergeConflict(position=label, field=field, base=_shown(base), mine=_shown(mine), theirs=_shown(theirs))
    )
    return mine


def _shown(value: object) -> str:
    if value is None:
        return ""
    return value.model_dump_json() if isinstance(value, BaseModel) else str(value)
