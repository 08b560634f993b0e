"""A table of dispenser types read row by row: every type that it holds, or what is wrong by cell."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from pydantic import ValidationError

from spoutline.frozen import frozen
from spoutline.model.dispenser_type import folded_type_name
from spoutline.model.figure import TableUnit
from spoutline.model.survey import DispenserType
from spoutline.model.type_columns import TYPE_COLUMNS, TypeColumn
from spoutline.model.worded import Worded
from spoutline.planning.table_intake.draft_changes import DraftChanges, row_changes
from spoutline.planning.table_intake.intake import Intake, IntakeReport, PartLine, Progress, Seen
from spoutline.planning.table_intake.into_draft import OpenedTable, report_of_row

_COLUMNS: Final = {column.key: column for column in TYPE_COLUMNS}


@frozen
class TypesRead:
    """The types of a table; none may be used where ``report`` is not sound."""

    kinds: tuple[DispenserType, ...]
    report: IntakeReport
    rows: tuple[int, ...] = ()


def read_types(opened: OpenedTable, progress: Progress | None = None, *, seen: Seen | None = None) -> TypesRead:
    """Return the types that a table holds; an empty cell is no answer. Raise ``Stopped`` where the progress asks to."""
    intake = Intake(opened.table, opened.headings, opened.mapping, opened.table_map, progress, seen=seen)
    kinds: list[DispenserType] = []
    rows: list[int] = []
    names: dict[str, int] = {}
    for line in intake.lines():
        kind = _type_of(line, opened, intake.report) if line.is_sound else None
        if kind is None:
            continue
        first = names.setdefault(folded_type_name(kind.name), line.row)
        if first != line.row:
            wanted = Worded("row {first} has this name too; skip one of the two rows", first=first)
            intake.report.add(report_of_row(opened, line.row, "name", kind.name, wanted))
        kinds.append(kind)
        rows.append(line.row)
    return TypesRead(tuple(kinds), intake.report, tuple(rows))


def type_changes(read: TypesRead, known: Mapping[str, DispenserType]) -> DraftChanges:
    """Return what the types of a table change; ``known`` are those of the book by folded name."""

    def said(kind: DispenserType | None) -> dict[str, str] | None:
        if kind is None:
            return None
        cells = zip((column.key for column in TYPE_COLUMNS), type_cells(kind), strict=True)
        return {key: text for key, text in cells if text}

    return row_changes(
        (row, kind.name, said(known.get(folded_type_name(kind.name))), said(kind) or {})
        for row, kind in zip(read.rows, read.kinds, strict=True)
    )


def type_cells(kind: DispenserType) -> list[str]:
    """Return a type as cells in the order of ``TYPE_COLUMNS``, figures in the unit of their column."""
    from spoutline.model.answered import answered

    said = answered(kind)
    return [_cell(column.value(kind)) if column.path in said else "" for column in TYPE_COLUMNS]


def _cell(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return repr(value) if isinstance(value, float) else str(value)


def _type_of(line: PartLine, opened: OpenedTable, report: IntakeReport) -> DispenserType | None:
    document: dict[str, Any] = {"name": opened.plain(line.number)}
    for key, value in line.values.items():
        column = _COLUMNS[key]
        *outer, last = column.path
        place = document
        for step in outer:
            place = place.setdefault(step, {})
        place[last] = _stored(value, column, opened)
    try:
        return DispenserType.model_validate(document)
    except ValidationError as fault:
        for error in fault.errors(include_url=False):
            context = error.get("ctx") or {}
            steps = [str(step) for step in error["loc"]] + ([str(context["field"])] if "field" in context else [])
            key = ".".join(steps)
            key = key if key in _COLUMNS else next((one for one in _COLUMNS if one.startswith(key)), "name")
            wanted = str(context.get("wanted") or error["msg"]).removeprefix("Value error, ")
            text = str(line.values.get(key, line.number if key == "name" else ""))
            report.add(report_of_row(opened, line.row, key, text, wanted.replace("Input should", "it should")))
        return None


def _stored(value: object, column: TypeColumn, opened: OpenedTable) -> object:
    """Return a value as the survey keeps it: kilopascals and liters a minute as they are, all else SI."""
    if isinstance(value, str):
        return opened.plain(value)
    return round(value, 9) if isinstance(value, float) and column.unit is not TableUnit.SI else value
