"""A table of texts with the address of each cell, from CSV or a workbook."""

from __future__ import annotations

import csv
from collections.abc import Iterable
from dataclasses import dataclass
from io import StringIO
from pathlib import Path

from spoutline.input_bounds import BOUNDS, bounded_bytes, csv_rows
from spoutline.model.faults import InputFault, InputProblem
from spoutline.planning.survey_import.titles import heads_over, title_place
from spoutline.planning.survey_import.workbook import Cell, workbook_rows

_DELIMITERS = ",;\t"
_UTF_16 = (b"\xff\xfe", b"\xfe\xff")
_CLIPBOARD = "clipboard"
_LINES_LOOKED_AT = 15  # for the delimiter; a heading above the table has none


@dataclass(frozen=True, slots=True)
class SheetRow:
    """One row: its number as a spreadsheet counts it, and its cells as texts without outer blanks.

    ``faults`` holds columns whose text cannot be trusted, with the reason.
    """

    number: int
    cells: tuple[str, ...]
    faults: tuple[tuple[int, str], ...] = ()

    def fault_of(self, column: int) -> str:
        """Return why the text in a column cannot be trusted; empty where it can."""
        return dict(self.faults).get(column, "")


@dataclass(frozen=True, slots=True)
class Sheet:
    """Titles and rows below them; ``place`` names file and sheet, ``heads`` says what stands over each title."""

    place: str
    titles: tuple[str, ...]
    rows: tuple[SheetRow, ...]
    heads: tuple[str, ...] = ()

    def address(self, row: SheetRow, column: int) -> str:
        """Return where a cell stands, such as ``stations.xlsx, sheet Positions, cell C7``."""
        return f"{self.place}, cell {column_name(column)}{row.number}"


def column_name(column: int) -> str:
    """Return the letters of a column counted from 0."""
    from openpyxl.utils import get_column_letter

    return get_column_letter(column + 1)


def read_sheet(path: Path, sheet_name: str | None = None) -> Sheet:
    """Return the table in a CSV or XLSX file; what stands above its row of titles is left out.

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
    suffix = path.suffix.lower()
    most = BOUNDS.table_bytes if suffix == ".xlsx" else BOUNDS.text_table_bytes
    content = bounded_bytes(path, most, "file", "a readable file is needed")
    if suffix == ".xlsx":
        name, cells = workbook_rows(
            str(path),
            content,
            sheet_name,
            BOUNDS.table_columns,
            lambda rows, cells: _check_count(str(path), rows, cells),
        )
        return _sheet(f"{path}, sheet {name}", cells)
    if suffix in (".csv", ".tsv", ".txt"):
        return sheet_of(str(path), _csv_rows(str(path), content))
    raise _fault(str(path), "file", repr(suffix), "a file that ends in .csv or .xlsx is needed")


def sheet_of(place: str, rows: list[list[str]]) -> Sheet:
    """Return rows of texts as a sheet: one of the first gives the titles, empty rows and columns are left out.

    Raises
    ------
    InputFault
        There is no row below the titles.
    """
    return _sheet(place, [[Cell(text) for text in row] for row in rows])


def _sheet(place: str, rows: list[list[Cell]]) -> Sheet:
    filled = [
        _row(number, cells) for number, cells in enumerate(rows, start=1) if any(cell.text.strip() for cell in cells)
    ]
    if len(filled) < 2:
        raise _fault(
            place, "rows", "nothing below the titles", "a row of titles and at least one row below it are needed"
        )
    place_of_titles = title_place([row.cells for row in filled])
    titles = filled[place_of_titles]
    above = filled[place_of_titles - 1].cells if place_of_titles else ()
    below = filled[place_of_titles + 1 :]
    wide = max(len(row.cells) for row in (titles, *below))
    names = (*titles.cells, *[""] * (wide - len(titles.cells)))
    return Sheet(place, names, tuple(below), heads_over(names, above))


def _row(number: int, cells: list[Cell]) -> SheetRow:
    texts = [cell.text.strip() for cell in cells]
    while texts and not texts[-1]:
        texts.pop()
    return SheetRow(
        number, tuple(texts), tuple((column, cell.fault) for column, cell in enumerate(cells) if cell.fault)
    )


def pasted_rows(text: str) -> list[list[str]]:
    """Return what a spreadsheet puts on the clipboard: rows by line, cells by tabulator, quoted where they need it.

    Raise ``InputFault`` for far more of it than a table of positions has.
    """
    if len(text) > BOUNDS.pasted_characters:
        wanted = f"at most {BOUNDS.pasted_characters} characters are pasted; import the table from its file instead"
        raise _fault(_CLIPBOARD, "text", f"{len(text)} characters", wanted)
    reader = csv.reader(StringIO(text, newline=""), delimiter="\t")
    return _bounded_rows(csv_rows(reader, lambda: f"{_CLIPBOARD}, line {reader.line_num}"), _CLIPBOARD)


def _bounded_rows(found: Iterable[list[str]], place: str) -> list[list[str]]:
    rows: list[list[str]] = []
    count = 0
    for cells in found:
        rows.append(cells[: BOUNDS.table_columns])
        count += len(rows[-1])
        if any(len(text) > BOUNDS.cell_characters for text in rows[-1]):
            wanted = f"a cell of at most {BOUNDS.cell_characters} characters is read"
            raise _fault(f"{place}, row {len(rows)}", "cell", "a far too long text", wanted)
        _check_count(place, len(rows), count)
    return rows


def _csv_rows(place: str, content: bytes) -> list[list[str]]:
    try:
        # a spreadsheet's own text format carries a byte order mark of UTF-16
        text = content.decode("utf-16" if content[:2] in _UTF_16 else "utf-8-sig")
    except UnicodeDecodeError as fault:
        value = f"byte {fault.start} (0x{content[fault.start]:02x})"
        raise _fault(place, "encoding", value, "save the file as CSV in UTF-8") from fault
    lines = [line for line in text.splitlines() if line.strip()][:_LINES_LOOKED_AT]
    delimiter = max(_DELIMITERS, key=lambda sign: max((line.count(sign) for line in lines), default=0))
    reader = csv.reader(StringIO(text, newline=""), delimiter=delimiter, strict=True)
    # an address counts rows, as a spreadsheet does, not the lines of a quoted text
    return _bounded_rows(csv_rows(reader, lambda: f"{place}, line {reader.line_num}"), place)


def _check_count(place: str, count: int, cells: int) -> None:
    if cells > BOUNDS.table_cells:
        raise _fault(place, "cells", f"more than {BOUNDS.table_cells}", f"at most {BOUNDS.table_cells} cells are read")
    if count > BOUNDS.table_rows:
        raise _fault(place, "rows", f"more than {BOUNDS.table_rows}", f"at most {BOUNDS.table_rows} rows are read")


def _fault(place: str, field: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place, field, value, wanted),))
