"""A table looked at before it is taken in: its rows as they would be read, and steps that say of it something else."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Final

from spoutline.explain.writing.money import amount
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault
from spoutline.model.figure import plain_number
from spoutline.planning.table_intake.cell_values import Money, Value
from spoutline.planning.table_intake.column_map import TableMap, said_otherwise, suggested, with_column
from spoutline.planning.table_intake.headings import find_headings
from spoutline.planning.table_intake.intake import CellReport, Intake, Progress, RowKind, Seen, SeenRow
from spoutline.planning.table_intake.intake_fields import IntakeField, TableSubject, fields_of
from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult, bounds_of, take_in
from spoutline.planning.table_intake.raw_table import RawTable, SheetFacts, TextEncoding, open_table
from spoutline.planning.table_intake.repairs import Repair
from spoutline.planning.table_intake.text_patterns import Proposal, found_by_patterns
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.catalogue.draft import DraftDesk

SHOWN_ROWS: Final = 1_000  # from above; rows with a report are shown wherever they stand


@frozen
class TableFile:
    """A file with the sheets that it has, and the table in hand or why there is none."""

    path: Path
    sheets: tuple[SheetFacts, ...] = ()
    opened: OpenedTable | None = None
    fault: str = ""


@frozen
class TableLook:
    """What a table would do to a draft, and its rows as they were read: the first ones, and all with a report."""

    result: TableResult
    rows: tuple[SeenRow, ...]
    proposals: tuple[Proposal, ...]  # what patterns find in the texts of the first rows

    @property
    def reports(self) -> tuple[CellReport, ...]:
        """What is wrong or open, cell by cell."""
        return tuple(self.result.report.reports)


def open_file(
    path: Path,
    remembered: Iterable[TableMap] = (),
    sheet: str = "",
    encoding: TextEncoding | None = None,
    plain: TableMap | None = None,
) -> TableFile:
    """Return the table in a file, read as remembered where its titles are those of a remembered one.

    Parameters
    ----------
    path
        The file; where it cannot be read as a table the result says why.
    remembered
        Maps of earlier tables.
    sheet, encoding
        What a person says of the file; empty goes by the remembered map, else by the file.
    plain
        What is said of a table that nothing is remembered of; maps of other subjects are passed over.
    """
    begun = plain or TableMap()
    bounds = bounds_of(begun.subject)
    sheets: tuple[SheetFacts, ...] = ()
    fault = ""
    for table_map in (*(one for one in remembered if one.subject is begun.subject), begun):
        is_plain = not table_map.fingerprint
        asked = {"sheet": sheet or table_map.sheet, "encoding": encoding or table_map.encoding}
        tried = table_map.model_copy(update=asked)
        try:
            table = open_table(path, tried.sheet, tried.encoding, bounds)
            sheets = table.sheets
            headings = find_headings(table, tried.titles, tried.subject)
        except InputFault as error:
            fault = str(error.problems[0])
            continue  # a map of another sheet or encoding is none of this table
        if is_plain or tried.recognises(headings):
            shown = tried.model_copy(update={"sheet": table.sheet.name})
            opened = OpenedTable(table, headings, suggested(headings, tried), shown, not is_plain)
            return TableFile(path, sheets, opened)
    return TableFile(path, sheets, None, fault)


def opened_rows(table: RawTable, remembered: Iterable[TableMap], plain: TableMap) -> OpenedTable:
    """Return rows that are no file, such as those of a clipboard, as ``open_file`` does; raise ``InputFault``."""
    for table_map in (*(one for one in remembered if one.subject is plain.subject), plain):
        headings = find_headings(table, table_map.titles, table_map.subject)
        if table_map.recognises(headings):
            return OpenedTable(table, headings, suggested(headings, table_map), table_map, is_recognised=True)
    return OpenedTable(table, headings, suggested(headings, plain), plain, is_recognised=False)


def look_at(desk: DraftDesk, opened: OpenedTable, progress: Progress | None = None) -> TableLook:
    """Read a whole table against a draft and change nothing; raise ``Stopped`` where the progress asks to stop."""
    return look_through(opened, lambda seen: take_in(desk, opened, progress, only_looks=True, seen=seen), progress)


def look_through(
    opened: OpenedTable, read: Callable[[Seen], TableResult], progress: Progress | None = None
) -> TableLook:
    """Return what ``read`` finds of a table, with the rows that it shows on its way; see ``look_at``."""
    rows: dict[int, SeenRow] = {}

    def show_first(row: SeenRow) -> None:
        if len(rows) < SHOWN_ROWS and row.kind is not RowKind.BLANK:
            rows[row.number] = row

    result = read(show_first)
    beyond = {report.row for report in result.report.reports} - set(rows)
    if beyond:
        _read_again(opened, beyond, rows, progress)
    is_of_parts = opened.table_map.subject is TableSubject.PARTS
    name = next((one.place for one in opened.mapping if is_of_parts and one.field and one.field.key == "name"), None)
    texts = [] if name is None else [row.cell(name) for row in opened.table.head()]
    found = found_by_patterns(texts, opened.table_map.kind)
    return TableLook(result, tuple(rows[number] for number in sorted(rows)), found)


def _read_again(opened: OpenedTable, wanted: set[int], rows: dict[int, SeenRow], progress: Progress | None) -> None:
    def show_wanted(row: SeenRow) -> None:
        if row.number in wanted:
            rows[row.number] = row

    intake = Intake(opened.table, opened.headings, opened.mapping, opened.table_map, progress, seen=show_wanted)
    for _line in intake.lines():
        pass


def _money_text(minor: int, currency: str) -> str:
    return f"{amount(minor, currency)} {currency}".strip()


def shown_value(value: Value | Money, field: IntakeField | None, units: UnitSystem | None = None) -> str:
    """Return a typed value as text: words as the program writes them, numbers in the units said, else of the field."""
    if isinstance(value, Money):
        return _money_text(value.minor, value.currency) if value.minor is not None else "–"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float) and units is not None and field is not None and field.dimension is not None:
        return Display(units).show(field.unit.to_si(value), field.dimension)
    if isinstance(value, float):
        unit = "" if field is None else field.unit.value or _own_unit(field)
        return f"{plain_number(value)} {unit}".strip()
    if isinstance(value, tuple):
        return " ".join(value)
    return value.isoformat() if isinstance(value, date) else str(value)


def _own_unit(field: IntakeField) -> str:
    from spoutline.planning.table_intake.column_map import own_unit

    return own_unit(field) if field.needs_unit else ""


# steps: each gives another table in hand


def with_said(opened: OpenedTable, **said: object) -> OpenedTable:
    """Return the table with something said of it by the names of ``TableMap``; raise ``InputFault``."""
    return replace(opened, table_map=said_otherwise(opened.table_map, said, opened.table.place))


def with_holding(opened: OpenedTable, place: int, key: str, measure: str = "") -> OpenedTable:
    """Return the table whose column at ``place`` holds ``key``, in a unit or currency; nothing where it is empty."""
    return replace(opened, mapping=with_column(opened.mapping, place, key, measure, opened.table_map.subject))


def with_repairs(opened: OpenedTable, steps: Iterable[Repair]) -> OpenedTable:
    """Return the table with further repairs."""
    return with_said(opened, repair=(*opened.table_map.repair, *steps))


def without_repair(opened: OpenedTable, place: int) -> OpenedTable:
    """Return the table without one of its repairs."""
    kept = opened.table_map.repair
    return with_said(opened, repair=(*kept[:place], *kept[place + 1 :]))


def with_pattern(opened: OpenedTable, pattern: str, *, confirmed: bool) -> OpenedTable:
    """Return the table with a pattern that may fill figures from texts, or without it."""
    others = tuple(one for one in opened.table_map.pattern if one != pattern)
    return with_said(opened, pattern=(*others, pattern) if confirmed else others)


def words_of(slot: str, subject: TableSubject = TableSubject.PARTS) -> tuple[str, ...]:
    """Return the words that cells of a slot may hold; nothing where they hold others."""
    field = fields_of(subject).by_key.get(slot)
    return () if field is None else tuple(choice.value for choice in field.choices)


Step = Callable[[OpenedTable], OpenedTable]
