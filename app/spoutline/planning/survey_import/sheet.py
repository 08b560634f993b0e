"""A table of texts with the address of each cell, from CSV or a workbook."""

from __future__ import annotations

import csv
from dataclasses import dataclass
from io import BytesIO, StringIO
from itertools import zip_longest
from pathlib import Path

from spoutline.model.faults import InputFault, InputProblem

_DELIMITERS = ",;\t"
_MOST_ROWS = 20_000
_MOST_COLUMNS = 200
_LARGEST_FILE = 50_000_000  # bytes


@dataclass(frozen=True, slots=True)
class SheetRow:
    """One row: its number as a spreadsheet counts it, and its cells as texts without outer blanks."""

    number: int
    cells: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Sheet:
    """Titles and rows below them; ``place`` names file and sheet."""

    place: str
    title_row: int
    titles: tuple[str, ...]
    rows: tuple[SheetRow, ...]

    def address(self, row: SheetRow, column: int) -> str:
        """Return where a cell stands, such as ``stations.xlsx, sheet Positions, cell C7``."""
        return f"{self.place}, cell {column_name(column)}{row.number}"


def column_name(column: int) -> str:
    """Return the letters of a column counted from 0."""
    letters = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters


def read_sheet(path: Path, sheet_name: str | None = None) -> Sheet:
    """Return the table in a CSV or XLSX file; the first row that holds anything gives the titles.

    Parameters
    ----------
    path
        A file that ends in ``.csv``, ``.tsv``, ``.txt`` or ``.xlsx``.
    sheet_name
        Which sheet of a workbook; the first where None.

    Raises
    ------
    InputFault
        The file cannot be read, holds no row below its titles, or is far too large.
    """
    try:
        content = path.read_bytes()
    except OSError as fault:
        raise _fault(
            str(path), "file", "this path", f"a readable file is needed ({fault.strerror or fault})"
        ) from fault
    if len(content) > _LARGEST_FILE:
        raise _fault(str(path), "file", f"{len(content)} bytes", f"at most {_LARGEST_FILE} bytes are read")
    suffix = path.suffix.lower()
    if suffix == ".xlsx":
        place, rows = _workbook_rows(str(path), content, sheet_name)
    elif suffix in (".csv", ".tsv", ".txt"):
        place, rows = str(path), _csv_rows(str(path), content)
    else:
        raise _fault(str(path), "file", repr(suffix), "a file that ends in .csv or .xlsx is needed")
    return sheet_of(place, rows)


def sheet_of(place: str, rows: list[list[str]]) -> Sheet:
    """Return rows of texts as a sheet: the first that holds anything gives the titles, empty ones are left out."""
    filled = [
        SheetRow(number, tuple(cell.strip() for cell in cells))
        for number, cells in enumerate(rows, start=1)
        if any(cell.strip() for cell in cells)
    ]
    if len(filled) < 2:
        raise _fault(
            place, "rows", "nothing below the titles", "a row of titles and at least one row below it are needed"
        )
    return Sheet(place, filled[0].number, filled[0].cells, tuple(filled[1:]))


def pasted_rows(text: str) -> list[list[str]]:
    """Return what a spreadsheet puts on the clipboard: rows by line, cells by tabulator, quoted where they need it."""
    return list(csv.reader(StringIO(text, newline=""), delimiter="\t"))


def _csv_rows(place: str, content: bytes) -> list[list[str]]:
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError as fault:
        value = f"byte {fault.start} (0x{content[fault.start]:02x})"
        raise _fault(place, "encoding", value, "save the file as CSV in UTF-8") from fault
    first = next((line for line in text.splitlines() if line.strip()), "")
    delimiter = max(_DELIMITERS, key=first.count)
    reader = csv.reader(StringIO(text, newline=""), delimiter=delimiter, strict=True)
    rows: list[list[str]] = []
    try:
        for cells in reader:
            # an address counts rows, as a spreadsheet does, not the lines of a quoted text
            rows.append(cells[:_MOST_COLUMNS])
            _check_count(place, rows)
    except csv.Error as fault:
        raise _fault(f"{place}, line {reader.line_num}", "row", "the text", f"write valid CSV ({fault})") from fault
    return rows


def _workbook_rows(place: str, content: bytes, sheet_name: str | None) -> tuple[str, list[list[str]]]:
    import openpyxl

    try:
        book = openpyxl.load_workbook(BytesIO(content), read_only=True, data_only=True)
    except Exception as fault:  # the library has many ways to refuse a broken archive
        raise _fault(place, "file", "the workbook", "a workbook that a spreadsheet can open is needed") from fault
    try:
        if sheet_name is not None and sheet_name not in book.sheetnames:
            raise _fault(place, "sheet", repr(sheet_name), f"use one of: {', '.join(book.sheetnames)}")
        name = sheet_name or book.sheetnames[0]
        rows: list[list[str]] = []
        for cells in book[name].iter_rows(values_only=True, max_col=_MOST_COLUMNS):
            rows.append([_text(cell) for cell in cells])
            _check_count(place, rows)
        return f"{place}, sheet {name}", rows
    finally:
        book.close()


def _text(cell: object) -> str:
    """Return a cell as a person reads it: whole numbers without a decimal point."""
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, float) and cell.is_integer() and abs(cell) < 1e15:
        return str(int(cell))
    return str(cell)


def _check_count(place: str, rows: list[list[str]]) -> None:
    if len(rows) > _MOST_ROWS:
        raise _fault(place, "rows", f"more than {_MOST_ROWS}", f"at most {_MOST_ROWS} rows are read")


def widened(rows: list[list[str]]) -> list[list[str]]:
    """Return rows of equal length, short ones filled up with empty cells."""
    return [list(row) for row in zip(*zip_longest(*rows, fillvalue=""), strict=True)]


def _fault(place: str, field: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place, field, value, wanted),))
