"""What a table may hold as CSV or as a workbook, and a workbook looked at before it is unpacked."""

from __future__ import annotations

import csv
import re
import zipfile
from collections.abc import Callable, Iterable, Iterator
from io import BytesIO
from typing import Final, TypeVar

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.refusal import refusal
from spoutline.model.faults import InputFault
from spoutline.model.worded import Worded

_Row = TypeVar("_Row")
_FORBIDDEN_XML: Final = (b"<!DOCTYPE", b"<!ENTITY")
_ROW_NUMBER: Final = re.compile(rb'<(?:\w+:)?row\b[^>]*?\sr=["\']([^"\']*)["\']')


def csv_rows(reader: Iterable[_Row], place: Callable[[], str]) -> Iterator[_Row]:
    """Yield the rows of a CSV reader; what it cannot read, such as a huge cell, is an ``InputFault`` at ``place()``."""
    try:
        yield from reader
    except csv.Error as fault:
        wanted = Worded(
            "write valid CSV with cells of at most {field_size_limit} characters ({reason})",
            field_size_limit=csv.field_size_limit(),
            reason=fault,
        )
        raise refusal(place(), "row", "the text", wanted) from fault


@frozen
class WorkbookBounds:
    """What a workbook may hold, by the table that it is read as."""

    unpacked_bytes: int
    cell_elements: int
    text_elements: int
    rows: int

    @classmethod
    def of_positions(cls) -> WorkbookBounds:
        """Return the bounds of a table of positions."""
        return cls(BOUNDS.workbook_bytes, BOUNDS.cell_elements, BOUNDS.text_elements, BOUNDS.table_rows)

    @classmethod
    def of_intake(cls) -> WorkbookBounds:
        """Return the bounds of a supplier's table."""
        return cls(BOUNDS.intake_workbook_bytes, 3 * BOUNDS.intake_cells, BOUNDS.intake_cells, BOUNDS.intake_rows)


@frozen
class TableBounds:
    """What a table may hold, by what its rows are."""

    workbook_bytes: int
    text_bytes: int
    rows: int
    cells: int
    unpacked: WorkbookBounds

    @classmethod
    def of_positions(cls) -> TableBounds:
        """Return the bounds of a table of positions."""
        return cls(
            BOUNDS.table_bytes,
            BOUNDS.text_table_bytes,
            BOUNDS.table_rows,
            BOUNDS.table_cells,
            WorkbookBounds.of_positions(),
        )

    @classmethod
    def of_intake(cls) -> TableBounds:
        """Return the bounds of a supplier's table."""
        return cls(
            BOUNDS.intake_bytes,
            BOUNDS.intake_bytes,
            BOUNDS.intake_rows,
            BOUNDS.intake_cells,
            WorkbookBounds.of_intake(),
        )


def check_workbook(content: bytes, place: str, bounds: WorkbookBounds | None = None) -> None:
    """Refuse a workbook that would unpack to far more than its table needs; that of positions where none is said.

    Raises
    ------
    InputFault
        A file of the archive is beyond its bound, or declares entities; or the bytes are no sound archive.
    """
    bounds = bounds or WorkbookBounds.of_positions()
    try:
        with zipfile.ZipFile(BytesIO(content)) as archive:
            members = archive.infolist()
            if len(members) > BOUNDS.workbook_members:
                wanted = Worded("a workbook of at most {most} files is read", most=BOUNDS.workbook_members)
                raise refusal(place, "workbook", Worded("{count} files", count=len(members)), wanted)
            unpacked = sum(member.file_size for member in members)
            if unpacked > bounds.unpacked_bytes:
                wanted = Worded(
                    "a workbook of at most {unpacked_bytes} bytes, unpacked, is read",
                    unpacked_bytes=bounds.unpacked_bytes,
                )
                raise refusal(place, "workbook", Worded("{unpacked} bytes", unpacked=unpacked), wanted)
            for member in members:
                if member.filename.lower().endswith((".xml", ".rels", ".vml")):
                    _check_member(archive, member, place, bounds)
    except InputFault:
        raise
    except Exception as fault:  # a damaged archive fails in many ways
        raise refusal(place, "file", "the workbook", "a workbook that a spreadsheet can open is needed") from fault


def _check_member(archive: zipfile.ZipFile, member: zipfile.ZipInfo, place: str, bounds: WorkbookBounds) -> None:
    name = member.filename
    most, is_sheet = _most_elements(name.lower(), bounds), "sheets/" in name.lower()
    count = 0
    tail = b""
    with archive.open(member) as file:
        while block := file.read(1 << 20):
            count += block.count(b"<")
            if is_sheet:
                _check_row_numbers(tail + block, f"{place}, {name}", bounds.rows)
            if any(sign in tail + block for sign in _FORBIDDEN_XML):
                wanted = "a workbook whose files declare no entities is needed"
                raise refusal(f"{place}, {name}", "workbook", "a document type", wanted)
            if count > 2 * most:  # most elements open and close
                wanted = Worded("at most {most} elements are read; save only the table that is needed", most=most)
                raise refusal(f"{place}, {name}", "workbook", Worded("more than {most} elements", most=most), wanted)
            tail = block[-200:]


def _check_row_numbers(text: bytes, place: str, most: int) -> None:
    """Refuse a row far below all others: the rows between would be made one by one (ECMA-376 Part 1, 18.3.1.73)."""
    for number in _ROW_NUMBER.findall(text):
        if not number.isdigit() or len(number) > 9 or int(number) > most:
            wanted = Worded("at most {most} rows are read", most=most)
            raise refusal(
                place,
                "rows",
                Worded("a row of the number {number}", number=number[:20].decode("ascii", "replace")),
                wanted,
            )


def _most_elements(name: str, bounds: WorkbookBounds) -> int:
    if "styles" in name:
        return BOUNDS.style_elements
    if "sharedstrings" in name:
        return bounds.text_elements
    return bounds.cell_elements if "worksheets/" in name or "sheet" in name else BOUNDS.other_elements
