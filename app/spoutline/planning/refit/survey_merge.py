"""Two people's edits of one survey brought together: field by field where they do not meet, named where they do."""

from __future__ import annotations

from pydantic import BaseModel, ValidationError

from spoutline.frozen import frozen
from spoutline.model.answered import same_answers
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.survey import Position, Site, Survey


@frozen(kw_only=True)
class MergeConflict:
    """Something that both changed in different ways; a text is empty where it was removed."""

    position: str
    field: str
    base: str
    mine: str
    theirs: str


@frozen(kw_only=True)
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
            site=Site.model_validate(_merged_document("", "", (base.site, mine.site, theirs.site), conflicts)),
            positions=tuple(positions),
            conversion=ConversionAnswers.model_validate(
                _merged_document("", "", (base.conversion, mine.conversion, theirs.conversion), conflicts)
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
    if same_answers(here, there) or same_answers(before, there):
        return here
    if same_answers(before, here):
        return there
    return Position.model_validate(_merged_document(label, "", (before, here, there), conflicts))


def _merged_document(
    label: str, inside: str, versions: tuple[BaseModel, BaseModel, BaseModel], conflicts: list[MergeConflict]
) -> dict[str, object]:
    """Return a document with every field as the one who changed it left it.

    ``versions`` are base, mine and theirs. Whether a field was answered is merged like its value: who changed it wins.
    """
    merged_values: dict[str, object] = {}
    document: dict[str, object] = {}
    for name, declared in type(versions[0]).model_fields.items():
        base, mine, theirs = (getattr(one, name) for one in versions)
        if isinstance(base, BaseModel) and isinstance(mine, BaseModel) and isinstance(theirs, BaseModel):
            inner = _merged_document(label, f"{inside}{name}.", (base, mine, theirs), conflicts)
            if inner or declared.default is None or declared.is_required():
                document[name] = inner
            continue
        value = merged_values[name] = _merged_value(label, f"{inside}{name}", base, mine, theirs, conflicts)
        usual = declared.get_default(call_default_factory=True, validated_data=merged_values)
        if _is_answered(name, versions) or declared.is_required() or value != usual:
            document[name] = value
    return document


def _is_answered(name: str, versions: tuple[BaseModel, BaseModel, BaseModel]) -> bool:
    base, mine, theirs = (name in one.model_fields_set for one in versions)
    return theirs if mine == base else mine


def _merged_value(  # noqa: PLR0917 - three values of one kind, told apart by their order everywhere in this module
    label: str, field: str, base: object, mine: object, theirs: object, conflicts: list[MergeConflict]
) -> object:
    if theirs in (mine, base):
        return mine
    if mine == base:
        return theirs
    conflicts.append(
        MergeConflict(position=label, field=field, base=_shown(base), mine=_shown(mine), theirs=_shown(theirs))
    )
    return mine


def _shown(value: object) -> str:
    if value is None:
        return ""
    return value.model_dump_json() if isinstance(value, BaseModel) else str(value)
