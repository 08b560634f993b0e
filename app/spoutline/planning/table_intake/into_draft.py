"""A supplier's table taken into the draft of a catalogue: all of it, or nothing where a cell is wrong or open."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice
from pathlib import Path
from typing import TYPE_CHECKING, Final

from spoutline.frozen import frozen
from spoutline.input_bounds.tables import TableBounds
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded
from spoutline.planning.table_intake.cell_values import FaultKind, without_shield
from spoutline.planning.table_intake.column_map import (
    MappedColumn,
    TableMap,
    corrected,
    read_map,
    remembering,
    suggested,
)
from spoutline.planning.table_intake.draft_changes import Comparer, DraftChanges
from spoutline.planning.table_intake.headings import Headings, find_headings
from spoutline.planning.table_intake.intake import CellReport, Intake, IntakeReport, PartLine, Progress, Seen
from spoutline.planning.table_intake.intake_fields import BY_KEY, TableSubject, fields_of
from spoutline.planning.table_intake.part_entries import LineFault, merged
from spoutline.planning.table_intake.raw_table import RawTable, open_table
from spoutline.whole_files.environment import files_in

if TYPE_CHECKING:
    from collections.abc import Mapping

    from spoutline.catalogue.draft import DraftDesk
    from spoutline.model.catalogue_entry import CatalogueEntry

_CHUNK: Final = 1_000  # lines whose parts are looked up at once
TABLE_ENDINGS: Final = (".csv", ".tsv", ".txt", ".xlsx")


@frozen
class OpenedTable:
    """A table with its headings, what its columns hold, and the map that says the rest.

    ``is_recognised`` says whether its titles are just those that the map was made for.
    """

    table: RawTable
    headings: Headings
    mapping: tuple[MappedColumn, ...]
    table_map: TableMap
    is_recognised: bool

    def plain(self, text: str) -> str:
        """Return a text of the program's own table as it was before it was written; a workbook shields none."""
        return without_shield(text) if self.table.is_text_file else text

    @property
    def remembered(self) -> TableMap:
        """The map that reads the next table of this supplier as this one is read."""
        return remembering(self.table_map, self.headings, self.mapping)


@frozen
class TableResult:
    """What a table did to a draft, or would do: nothing where ``report`` is not sound."""

    opened: OpenedTable
    report: IntakeReport
    changes: DraftChanges


def bounds_of(subject: TableSubject) -> TableBounds:
    """Return what a table of a subject may hold."""
    return TableBounds.of_positions() if subject is TableSubject.POSITIONS else TableBounds.of_intake()


def report_of_row(opened: OpenedTable, row: int, key: str, text: str, wanted: str) -> CellReport:
    """Return a fault of a row, told at the column of ``key``, or of what names the row where there is none."""
    places = {one.field.key: one.place for one in opened.mapping if one.field}
    named = fields_of(opened.table_map.subject).key
    return CellReport(
        kind=FaultKind.FAULT,
        address=opened.table.address(row, places.get(key, places.get(named, 0))),
        row=row,
        field=key,
        text=text,
        wanted=wanted,
    )


def is_table(path: Path) -> bool:
    """Say whether a file is a supplier's table, by its ending."""
    return path.suffix.lower() in TABLE_ENDINGS


def maps_in(path: Path) -> tuple[TableMap, ...]:
    """Return the map in a file, or every map in a folder by the name of its file; raise ``InputFault``."""
    if path.is_dir():
        return tuple(read_map(one) for one in files_in(path, "*.toml"))
    return (read_map(path),)


def open_supplier_table(
    path: Path, maps: tuple[TableMap, ...], said: Mapping[str, object], choices: Mapping[str, str]
) -> OpenedTable:
    """Return a table as it is to be read.

    Parameters
    ----------
    path
        The file.
    maps
        What is remembered; of several the one whose titles these are.
    said
        What a person says of this table, by the names of ``TableMap``; it goes before what is remembered.
    choices
        Columns, by letters or title, to what they hold.

    Raises
    ------
    InputFault
        The file cannot be read, or something said names nothing.
    """
    chosen, is_recognised = _map_for(path, maps, said)
    table_map = chosen.model_copy(update=dict(said))
    table = open_table(path, table_map.sheet, table_map.encoding, bounds_of(table_map.subject))
    headings = find_headings(table, table_map.titles, table_map.subject, are_said=bool(choices))
    mapping = corrected(suggested(headings, table_map), choices, table.place, table_map.subject)
    return OpenedTable(table, headings, mapping, table_map, is_recognised or table_map.recognises(headings))


def _map_for(path: Path, maps: tuple[TableMap, ...], said: Mapping[str, object]) -> tuple[TableMap, bool]:
    if len(maps) < 2:
        return (maps[0] if maps else TableMap()), False
    for one in maps:
        tried = one.model_copy(update=dict(said))
        try:
            table = open_table(path, tried.sheet, tried.encoding, bounds_of(tried.subject))
            headings = find_headings(table, tried.titles, tried.subject)
        except InputFault:
            continue  # a map of another encoding or sheet is none of this table
        if one.recognises(headings):
            return one, True
    wanted = "none of the maps was made for these titles: name the one to use"
    raise InputFault((InputProblem(str(path), "--map", Worded("{count} maps", count=len(maps)), wanted),))


def take_in(
    desk: DraftDesk,
    opened: OpenedTable,
    progress: Progress | None = None,
    *,
    take_out_missing: bool = False,
    only_looks: bool = False,
    seen: Seen | None = None,
) -> TableResult:
    """Put the parts of a table into a draft, in the transaction of ``desk``.

    Where the report is not sound afterwards, the caller takes the transaction back. What the table does not say of a
    part stays as it was. With ``take_out_missing`` the parts of its makers that it does not hold go.
    What ``only_looks`` writes nothing and only says what would change; ``seen`` is shown every row on the way.

    Raises
    ------
    Stopped
        The progress asked to stop.
    """
    intake = Intake(opened.table, opened.headings, opened.mapping, opened.table_map, progress, seen=seen)
    comparer = Comparer(desk.refs())
    for lines in _chunks(intake.lines()):
        held = desk.entries([PartRef(line.number, line.maker) for line in lines])
        entries = list(_entries(lines, held, intake, comparer, opened))
        if intake.report.is_sound and not only_looks:
            desk.put(entries)
    missing = comparer.missing()
    if take_out_missing and not only_looks and intake.report.is_sound:
        desk.take_out(missing)
    return TableResult(opened, intake.report, comparer.changes)


def _chunks(lines: Iterator[PartLine]) -> Iterator[list[PartLine]]:
    while chunk := list(islice(lines, _CHUNK)):
        yield chunk


def _entries(
    lines: list[PartLine],
    held: Mapping[PartRef, CatalogueEntry],
    intake: Intake,
    comparer: Comparer,
    opened: OpenedTable,
) -> Iterator[CatalogueEntry]:
    for line in lines:
        if not line.is_sound:
            continue
        before = held.get(PartRef(line.number, line.maker))
        made = merged(line, before, opened.table_map)
        for fault in made.faults:
            intake.report.add(_report(line, fault, opened))
        if made.entry is not None:
            comparer.compare(line.row, before, made.entry)
            yield made.entry


def _report(line: PartLine, fault: LineFault, opened: OpenedTable) -> CellReport:
    place = next((one.place for one in opened.mapping if one.field and one.field.key == fault.field), None)
    number = next(one.place for one in opened.mapping if one.field and one.field.key == "number")
    is_open = fault.field == "kind" and fault.value == "nothing"
    return CellReport(
        kind=FaultKind.QUESTION if is_open else FaultKind.FAULT,
        address=opened.table.address(line.row, number if place is None else place),
        row=line.row,
        field=fault.field if fault.field in BY_KEY else "number",
        text=fault.value.strip("'"),
        wanted=fault.wanted,
    )
