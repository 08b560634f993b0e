"""A table of dispenser types read row by row: every type that it holds, or what is wrong by cell."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

from pydantic import ValidationError

from spoutline.model.dispenser_type import folded_type_name
from spoutline.model.figure import TableUnit
from spoutline.model.survey import DispenserType
from spoutline.model.type_columns import TYPE_COLUMNS, TypeColumn
from spoutline.planning.table_intake.cell_values import FaultKind
from spoutline.planning.table_intake.intake import CellReport, Intake, IntakeReport, PartLine, Progress

if TYPE_CHECKING:
    from spoutline.planning.table_intake.into_draft import OpenedTable

_COLUMNS: Final = {column.key: column for column in TYPE_COLUMNS}


@dataclass(frozen=True, slots=True)
class TypesRead:
    """The types of a table; none may be used where ``report`` is not sound."""

    kinds: tuple[DispenserType, ...]
    report: IntakeReport


def read_types(opened: OpenedTable, progress: Progress | None = None) -> TypesRead:
    """Return the types that a table holds; an empty cell is no answer. Raise ``Stopped`` where the progress asks to."""
    intake = Intake(opened.table, opened.headings, opened.mapping, opened.table_map, progress)
    kinds: list[DispenserType] = []
    names: dict[str, int] = {}
    for line in intake.lines():
        kind = _type_of(line, opened, intake.report) if line.is_sound else None
        if kind is None:
            continue
        first = names.setdefault(folded_type_name(kind.name), line.row)
        if first != line.row:
            wanted = f"row {first} has this name too; skip one of the two rows"
            intake.report.add(_report(opened, line.row, "name", kind.name, wanted))
        kinds.append(kind)
    return TypesRead(tuple(kinds), intake.report)


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
            report.add(_report(opened, line.row, key, text, wanted.replace("Input should", "it should")))
        return None


def _stored(value: object, column: TypeColumn, opened: OpenedTable) -> object:
    """Return a value as the survey keeps it: kilopascals and liters a minute as they are, all else SI."""
    if isinstance(value, str):
        return opened.plain(value)
    return round(value, 9) if isinstance(value, float) and column.unit is not TableUnit.SI else value


def _report(opened: OpenedTable, row: int, name: str, text: str, wanted: str) -> CellReport:
    places = {one.field.key: one.place for one in opened.mapping if one.field}
    return CellReport(
        kind=FaultKind.FAULT,
        address=opened.table.address(row, places.get(name, places.get("name", 0))),
        row=row,
        field=name,
        text=text,
        wanted=wanted,
    )
