"""The conversion of one position handed to another that asks exactly the same."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.finding import Finding, SubjectKind
from spoutline.model.position_conversion import ConversionOption, PositionConversion
from spoutline.model.survey import Position
from spoutline.planning.sets.relabel import relabelled

WITHOUT_BEARING = ("label", "dispenser", "island", "grade", "tank", "notes")


def same_conversion(position: Position) -> Position:
    """Return ``position`` without what has no bearing on its conversion."""
    blank = dict.fromkeys(WITHOUT_BEARING, "") | {"label": "-", "dispenser": "-"}
    return position.model_copy(update=blank)


def relabelled_conversion(one: PositionConversion, position: Position) -> PositionConversion:
    """Return ``one`` as the conversion of ``position``, which asks the same under another label."""
    return replace(
        one,
        position=position,
        renewal=relabelled(one.renewal, position),
        least_cost=_option(one.least_cost, position),
        good_practice=_option(one.good_practice, position),
        renewal_option=_option(one.renewal_option, position),
    )


def _option(option: ConversionOption | None, position: Position) -> ConversionOption | None:
    if option is None:
        return None
    findings = tuple(_finding(finding, position) for finding in option.judged.findings)
    return replace(option, judged=replace(option.judged, findings=findings))


def _finding(finding: Finding, position: Position) -> Finding:
    return replace(finding, subject=position.label) if finding.subject_kind is SubjectKind.POSITION else finding
