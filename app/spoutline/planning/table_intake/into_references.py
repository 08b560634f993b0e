"""A table of old numbers taken into the draft of a catalogue: all of it, or nothing where a cell is wrong or open."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Final

from pydantic import ValidationError

from spoutline.catalogue.cross_references import going_round
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.cross_reference import CrossReference
from spoutline.model.part_ref import PartRef
from spoutline.planning.table_intake.draft_changes import DraftChanges, row_changes
from spoutline.planning.table_intake.intake import Intake, IntakeReport, PartLine, Progress, Seen
from spoutline.planning.table_intake.into_draft import OpenedTable, report_of_row

if TYPE_CHECKING:
    from spoutline.catalogue.cross_references import ReferenceDesk

_UNKNOWN: Final = "part_number"


@dataclass(slots=True)
class ReferenceResult:
    """What a table did to the cross-references of a draft; ``changes`` holds the first ones, before and after.

    ``astray`` are those that lead to no part of the draft: it cannot be published before they do.
    """

    report: IntakeReport
    new: int = 0
    changed: int = 0
    unchanged: int = 0
    missing: int = 0
    rows: list[tuple[int, CrossReference | None, CrossReference]] = field(default_factory=list)
    gone: tuple[PartRef, ...] = ()
    changes: list[tuple[CrossReference | None, CrossReference]] = field(default_factory=list)
    astray: list[CrossReference] = field(default_factory=list)


def take_in_references(
    desk: ReferenceDesk,
    parts: set[PartRef],
    opened: OpenedTable,
    progress: Progress | None = None,
    *,
    take_out_missing: bool = False,
    only_looks: bool = False,
    seen: Seen | None = None,
) -> ReferenceResult:
    """Put the rows of a table into the cross-references of a draft, in the transaction of ``desk``.

    ``parts`` are those of the draft. Where the report is not sound afterwards, the caller takes the transaction back.
    What ``only_looks`` writes nothing; ``seen`` is shown every row. With ``take_out_missing`` the old numbers of its
    makers that it does not hold go. A row that would lead in a circle is a fault. A part of the draft whose number is
    called old too is one. Raise ``Stopped``.
    """
    intake = Intake(opened.table, opened.headings, opened.mapping, opened.table_map, progress, seen=seen)
    rows: dict[PartRef, int] = {}
    found: dict[PartRef, CrossReference] = {}
    for line in intake.lines():
        one = _reference(line, opened, intake.report)
        if one is not None:
            rows[one.ref] = line.row
            found[one.ref] = one
    result = ReferenceResult(intake.report)
    before = desk.all()
    for ref in found:
        if ref in parts:
            wanted = "an old number; a part of the draft has it: name the successor in the part"
            intake.report.add(report_of_row(opened, rows[ref], "number", str(ref), wanted))
    for one in going_round({**before, **found}):
        if one.ref in found:
            wanted = "a number that does not lead back to this one"
            intake.report.add(report_of_row(opened, rows[one.ref], _UNKNOWN, str(one.leads_to), wanted))
    _compare(result, before, found)
    result.rows = [(rows[ref], before.get(ref), one) for ref, one in found.items()]
    known = {*parts, *before, *found}
    result.astray = [one for one in found.values() if one.leads_to not in known]
    makers = {ref.maker for ref in found}
    missing = [ref for ref in before if ref.maker in makers and ref not in found]
    result.missing, result.gone = len(missing), tuple(sorted(missing))
    if intake.report.is_sound and not only_looks:
        desk.put(found.values())
        if take_out_missing:
            desk.take_out(sorted(missing))
    return result


def reference_changes(result: ReferenceResult) -> DraftChanges:
    """Return what a table did to the cross-references of a draft, as the view of a table shows it."""

    def said(one: CrossReference | None) -> dict[str, str] | None:
        if one is None:
            return None
        return {"part": str(one.leads_to), "relation": one.relation.value, "remark": one.remark}

    rows = ((row, str(one.ref), said(was), said(one) or {}) for row, was, one in result.rows)
    return row_changes(rows, map(str, result.gone))


def _compare(
    result: ReferenceResult, before: dict[PartRef, CrossReference], found: dict[PartRef, CrossReference]
) -> None:
    for ref, one in found.items():
        was = before.get(ref)
        if was == one:
            result.unchanged += 1
            continue
        if was is None:
            result.new += 1
        else:
            result.changed += 1
        if len(result.changes) < BOUNDS.intake_faults:
            result.changes.append((was, one))


def _reference(line: PartLine, opened: OpenedTable, report: IntakeReport) -> CrossReference | None:
    if not line.is_sound:
        return None
    told = {"number": line.number, "maker": line.maker, **line.values}
    values = {name: opened.plain(value) if isinstance(value, str) else value for name, value in told.items()}
    if "part_number" not in values:
        wanted = "the number of the part that it leads to"
        report.add(report_of_row(opened, line.row, "part_number", "", wanted))
        return None
    if "part_maker" not in values:
        # with one maker for all rows said by the map the parts are of the table's supplier, where that is named
        if not opened.table_map.supplier:
            wanted = "the maker of that part: in the row, or --supplier for all rows"
            report.add(report_of_row(opened, line.row, "part_maker", "", wanted))
            return None
        values["part_maker"] = opened.table_map.supplier
    try:
        return CrossReference.model_validate(values)
    except ValidationError as fault:
        _tell(line, opened, report, fault.errors(include_url=False))
        return None


def _tell(line: PartLine, opened: OpenedTable, report: IntakeReport, errors: Iterable[object]) -> None:
    for error in errors:
        if not isinstance(error, dict):
            continue
        context = error.get("ctx") or {}
        name = str(context.get("field") or (error["loc"] or ("number",))[0])
        wanted = str(context.get("wanted") or error["msg"]).removeprefix("Value error, ")
        value = line.number if name == "number" else line.maker if name == "maker" else line.values.get(name, "")
        report.add(report_of_row(opened, line.row, name, str(value), wanted))
