"""The cells of a workbook as a person reads them, with what no reader could know told instead of guessed."""

from __future__ import annotations

import re
import zipfile
from collections.abc import Callable, Iterator, Sequence
from io import BytesIO
from typing import TYPE_CHECKING, Any

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.tables import WorkbookBounds, check_workbook
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from openpyxl.workbook.workbook import Workbook

_MERGED = re.compile(rb'<(?:\w+:)?mergeCell\b[^>]*\bref="([A-Z]{1,3})(\d+):[A-Z]{1,3}(\d+)"')
_FORMULA = re.compile(rb"<(?:\w+:)?f[ />]")

A_DATE = "the spreadsheet made a date of what was typed: give the cell the format text and write it anew"
NO_RESULT = "a formula without its result: open and save the file in a spreadsheet, or write the value"
_LONG = Worded("a cell of at most {most} characters is read", most=BOUNDS.cell_characters)
AN_ERROR = "a formula ends in an error: write the value"


@frozen
class Cell:
    """A cell as text; ``fault`` says why the text cannot be trusted, empty where it can."""

    text: str
    fault: str = ""


_EMPTY = Cell("")


def workbook_sheets(place: str, content: bytes, bounds: WorkbookBounds | None = None) -> tuple[tuple[str, bool], ...]:
    """Return the name of each sheet that holds cells and whether it is hidden; raise ``InputFault``."""
    check_workbook(content, place, bounds)
    try:
        import openpyxl

        book = openpyxl.load_workbook(BytesIO(content), read_only=True, data_only=True)
        try:
            return tuple((sheet.title, sheet.sheet_state != "visible") for sheet in book.worksheets)
        finally:
            book.close()
    except Exception as fault:  # the library has many ways to refuse a broken archive
        raise _fault(place, "file", "the workbook", "a workbook that a spreadsheet can open is needed") from fault


def workbook_rows(
    place: str,
    content: bytes,
    sheet_name: str | None,
    most_columns: int,
    check_count: Callable[[int, int], None],
    *,
    bounds: WorkbookBounds | None = None,
) -> tuple[str, list[list[Cell]]]:
    """Return the name of the sheet and its rows; ``check_count`` refuses too many rows or cells.

    Raises
    ------
    InputFault
        The bytes are no workbook, the sheet is not in it or far too large.
    """
    check_workbook(content, place, bounds)
    try:
        return _read(place, content, sheet_name, most_columns, check_count)
    except InputFault:
        raise
    except Exception as fault:  # the library has many ways to refuse a broken archive, some while rows are read
        raise _fault(place, "file", "the workbook", "a workbook that a spreadsheet can open is needed") from fault


def _read(
    place: str, content: bytes, sheet_name: str | None, most_columns: int, check_count: Callable[[int, int], None]
) -> tuple[str, list[list[Cell]]]:
    import openpyxl

    book = openpyxl.load_workbook(BytesIO(content), read_only=True, data_only=True)
    try:
        names = [sheet.title for sheet in book.worksheets]  # without sheets that hold only a chart
        if not names or (sheet_name is not None and sheet_name not in names):
            raise _fault(place, "sheet", repr(sheet_name), Worded("use one of: {names}", names=", ".join(names)))
        name = sheet_name or names[0]
        written = _sheet_text(content, book, name)
        rows: list[list[Cell]] = []
        count = 0
        for cells in _all_rows(book, name, most_columns):
            rows.append(_filled(cells))
            count += len(rows[-1])
            check_count(len(rows), count)
    finally:
        book.close()
    for row, column in _formulas(content, name, most_columns) if _FORMULA.search(written) else ():
        if row < len(rows) and column < len(rows[row]) and not rows[row][column].text:
            rows[row][column] = Cell("a formula", NO_RESULT)
    _fill_merged(place, rows, written)
    return name, rows


def _filled(cells: Sequence[Any]) -> list[Cell]:
    """Return the cells of a row up to its last one that is filled."""
    from openpyxl.cell.read_only import EMPTY_CELL

    end = len(cells)
    while end and cells[end - 1] is EMPTY_CELL:
        end -= 1
    return [_EMPTY if cell is EMPTY_CELL else _cell(cell) for cell in cells[:end]]


def _all_rows(book: Workbook, name: str, most_columns: int) -> Iterator[Any]:
    """Return the rows that are there, whatever size the sheet states: a false one would drop rows unsaid."""
    sheet: Any = book[name]
    sheet.reset_dimensions()
    return iter(sheet.iter_rows(max_col=most_columns))


def _sheet_text(content: bytes, book: Workbook, name: str) -> bytes:
    sheet: Any = book[name]  # the library keeps merged cells from those who read it row by row
    path = str(sheet._worksheet_path)
    with zipfile.ZipFile(BytesIO(content)) as archive:
        return archive.read(path)


def _formulas(content: bytes, name: str, most_columns: int) -> Iterator[tuple[int, int]]:
    """Return row and column, counted from 0, of every formula."""
    import openpyxl

    book = openpyxl.load_workbook(BytesIO(content), read_only=True)
    try:
        for row, cells in enumerate(_all_rows(book, name, most_columns)):
            for column, cell in enumerate(cells):
                if cell.data_type == "f":
                    yield row, column
    finally:
        book.close()


def _fill_merged(place: str, rows: list[list[Cell]], written: bytes) -> None:
    """Let a cell that is merged downwards answer for every row that it covers."""
    from openpyxl.utils import column_index_from_string

    covered = 0
    for letters, first, last in _MERGED.findall(written):
        column, top = column_index_from_string(letters.decode()) - 1, int(first) - 1
        below = range(max(top, 0) + 1, min(int(last), len(rows)))
        covered += len(below)
        if covered > BOUNDS.merged_cells:
            wanted = Worded("merged ranges that cover at most {most} cells are read", most=BOUNDS.merged_cells)
            raise _fault(place, "sheet", "far too many merged cells", wanted)
        for row in below:
            if column < min(len(rows[top]), len(rows[row])) and not rows[row][column].text:
                rows[row][column] = rows[top][column]


def _cell(cell: Any) -> Cell:  # noqa: ANN401 - cells of three classes of the library
    """Return a cell as a person reads it: whole numbers without a decimal point, a share as its percentage."""
    value = cell.value
    if value is None:
        return Cell("")
    if isinstance(value, bool):
        return Cell("yes" if value else "no")
    if isinstance(value, int | float):
        return Cell(_number_text(value, str(cell.number_format or "")))
    if cell.data_type == "e":
        return Cell(str(value), AN_ERROR)
    if not isinstance(value, str):
        return Cell(str(value).removesuffix(" 00:00:00"), A_DATE)
    if len(value) > BOUNDS.cell_characters:
        raise _fault(Worded("cell {coordinate}", coordinate=cell.coordinate), "cell", "a far too long text", _LONG)
    return Cell(value)


def _number_text(value: float, number_format: str) -> str:
    if "%" in number_format:
        return f"{value * 100:.10g} %"
    return str(int(value)) if float(value).is_integer() and abs(value) < 1e15 else str(value)


def _fault(place: str, field: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place, field, value, wanted),))
