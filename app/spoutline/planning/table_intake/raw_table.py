"""A supplier's file as rows of texts, read one after the other, whatever encoding and delimiter it was saved in."""

from __future__ import annotations

import csv
import io
import re
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from enum import StrEnum
from functools import cache
from itertools import islice
from pathlib import Path
from typing import Final

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.input_bounds.tables import TableBounds, csv_rows
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.workbook import Cell, workbook_rows, workbook_sheets

_DELIMITERS: Final = ",;\t|"
_COMMA_ELSEWHERE: Final = re.compile(r"(?<![0-9]),|,(?![0-9])")
_TEXT_ENDINGS: Final = (".csv", ".tsv", ".txt")
_HEAD_BYTES: Final = 65_536  # looked at for encoding and delimiter
_HEAD_ROWS: Final = 60
_BLANKS: Final = str.maketrans({"\N{NO-BREAK SPACE}": " ", "\N{NARROW NO-BREAK SPACE}": " ", "\N{THIN SPACE}": " "})


class TextEncoding(StrEnum):
    """How a text file is encoded; nobody can tell an older code page from its bytes, so a person names it."""

    AUTOMATIC = "auto"  # UTF-8, or UTF-16 with a byte order mark
    UTF_8 = "utf-8"
    UTF_16 = "utf-16"
    WINDOWS_1252 = "windows-1252"


@frozen
class RawRow:
    """One row: its number as a spreadsheet counts it, and its cells as texts without outer blanks.

    ``faults`` holds columns whose text cannot be trusted, with the reason.
    """

    number: int
    cells: tuple[str, ...]
    faults: tuple[tuple[int, str], ...] = ()

    def cell(self, column: int) -> str:
        """Return the text in a column; empty beyond the last one."""
        return self.cells[column] if column < len(self.cells) else ""

    @property
    def is_blank(self) -> bool:
        """Whether nothing stands in it."""
        return not any(self.cells)


@frozen
class SheetFacts:
    """A sheet of a file; a text file has one without a name."""

    name: str
    is_hidden: bool = False


@frozen
class RawTable:
    """One sheet of a file. ``rows`` reads it from its start each time it is called."""

    place: str
    sheet: SheetFacts
    sheets: tuple[SheetFacts, ...]
    rows: Callable[[], Iterator[RawRow]]

    @property
    def is_text_file(self) -> bool:
        """Whether it is a file of text, such as CSV, and not a sheet of a workbook."""
        return not self.sheet.name

    def head(self) -> tuple[RawRow, ...]:
        """Return the first rows that are not blank: what titles are looked for in."""
        return tuple(islice((row for row in self.rows() if not row.is_blank), _HEAD_ROWS))

    def address(self, row: int, column: int) -> str:
        """Return where a cell stands, such as ``prices.xlsx, sheet 2026, cell C7``."""
        return Worded(
            "{place}, cell {column_letters}{row}", place=self.place, column_letters=column_letters(column), row=row
        )


def column_letters(column: int) -> str:
    """Return the letters of a column counted from 0."""
    letters, rest = "", column + 1
    while rest:
        rest, digit = divmod(rest - 1, 26)
        letters = chr(ord("A") + digit) + letters
    return letters


def open_table(
    path: Path, sheet: str = "", encoding: TextEncoding = TextEncoding.AUTOMATIC, bounds: TableBounds | None = None
) -> RawTable:
    """Return a sheet of a file that ends in ``.csv``, ``.tsv``, ``.txt`` or ``.xlsx``.

    Parameters
    ----------
    path
        The file.
    sheet
        Name of the sheet; where empty the first one that is not hidden.
    encoding
        Of a text file.
    bounds
        What it may hold; those of a supplier's table where None.

    Raises
    ------
    InputFault
        The file cannot be read, is beyond a bound, or has no such sheet. Reading rows raises it too.
    """
    ending = path.suffix.lower()
    most = bounds or TableBounds.of_intake()
    if ending == ".xlsx":
        return _workbook(path, sheet, most)
    if ending in _TEXT_ENDINGS:
        if sheet:
            raise _fault(str(path), "sheet", repr(sheet), "a text file has no sheets")
        return _text_table(path, encoding, most)
    raise _fault(str(path), "file", repr(ending), "a file that ends in .csv, .tsv, .txt or .xlsx is needed")


def pasted_table(place: str, texts: Sequence[Sequence[str]]) -> RawTable:
    """Return rows of texts, such as those of a clipboard, as a table."""
    facts = SheetFacts("")
    made = tuple(RawRow(number, _plain(list(cells))) for number, cells in enumerate(texts, start=1))
    return RawTable(place, facts, (facts,), lambda: iter(made))


def _workbook(path: Path, wanted: str, most: TableBounds) -> RawTable:
    place = str(path)
    content = bounded_bytes(path, most.workbook_bytes, "file", "a readable workbook is needed")
    sheets = tuple(SheetFacts(name, hidden) for name, hidden in workbook_sheets(place, content, most.unpacked))
    shown = [one for one in sheets if not one.is_hidden] or list(sheets)
    chosen = next((one for one in sheets if one.name == wanted), None) if wanted else next(iter(shown), None)
    if chosen is None:
        raise _fault(
            place, "sheet", repr(wanted), Worded("use one of: {sheets}", sheets=", ".join(one.name for one in sheets))
        )

    @cache  # a workbook is only read as a whole: once is enough
    def found() -> list[list[Cell]]:
        return workbook_rows(
            place,
            content,
            chosen.name,
            BOUNDS.table_columns,
            lambda rows, cells: _check_count(place, rows, cells, most),
            bounds=most.unpacked,
        )[1]

    def rows() -> Iterator[RawRow]:
        for number, cells in enumerate(found(), start=1):
            faults = tuple((column, cell.fault) for column, cell in enumerate(cells) if cell.fault)
            yield RawRow(number, _plain([cell.text for cell in cells]), faults)

    return RawTable(Worded("{place}, sheet {chosen_name}", place=place, chosen_name=chosen.name), chosen, sheets, rows)


def _text_table(path: Path, encoding: TextEncoding, most: TableBounds) -> RawTable:
    place = str(path)
    try:
        size = path.stat().st_size
        with path.open("rb") as file:
            head = file.read(_HEAD_BYTES)
    except (OSError, ValueError) as fault:
        reason = getattr(fault, "strerror", None) or fault
        raise _fault(
            place, "file", "this path", Worded("a readable file is needed ({reason})", reason=reason)
        ) from fault
    if size > most.text_bytes:
        raise _fault(
            place,
            "file",
            Worded("{size} bytes", size=size),
            Worded("at most {text_bytes} bytes are read", text_bytes=most.text_bytes),
        )
    codec = _codec(place, head, encoding)
    delimiter = _delimiter(_decoded_head(place, head, codec))
    facts = SheetFacts("")

    def rows() -> Iterator[RawRow]:
        cells_read = 0
        for number, cells in enumerate(_text_rows(path, codec, delimiter), start=1):
            if any(len(text) > BOUNDS.cell_characters for text in cells):
                wanted = Worded("a cell of at most {most} characters is read", most=BOUNDS.cell_characters)
                raise _fault(
                    Worded("{place}, row {number}", place=place, number=number), "cell", "a far too long text", wanted
                )
            row = RawRow(number, _plain(cells[: BOUNDS.table_columns]))
            cells_read += len(row.cells)
            _check_count(place, number, cells_read, most)
            yield row

    return RawTable(place, facts, (facts,), rows)


def _text_rows(path: Path, codec: str, delimiter: str) -> Iterator[list[str]]:
    place = str(path)
    with path.open("r", encoding=codec, newline="") as file:
        reader = csv.reader(file, delimiter=delimiter, strict=True)
        try:
            yield from csv_rows(
                reader, lambda: Worded("{place}, line {line_num}", place=place, line_num=reader.line_num)
            )
        except UnicodeDecodeError as fault:
            raise _fault(
                Worded("{place}, below line {line_num}", place=place, line_num=reader.line_num),
                "encoding",
                _byte(fault),
                _ENCODINGS,
            ) from fault


_ENCODINGS: Final = Worded(
    "save the file as CSV in UTF-8, or name its encoding: {textencoding}",
    textencoding=", ".join(list(TextEncoding)[1:]),
)


def _codec(place: str, head: bytes, encoding: TextEncoding) -> str:
    if encoding is TextEncoding.WINDOWS_1252:
        return "cp1252"
    marked_16 = head[:2] in (b"\xff\xfe", b"\xfe\xff")
    if encoding is TextEncoding.UTF_16:
        return "utf-16" if marked_16 else "utf-16-le"
    if marked_16 and encoding is TextEncoding.AUTOMATIC:
        return "utf-16"
    if b"\0" in head:
        raise _fault(
            place, "encoding", "a NUL byte", Worded("this is no text in UTF-8; {encodings}", encodings=_ENCODINGS)
        )
    return "utf-8-sig"


def _decoded_head(place: str, head: bytes, codec: str) -> str:
    import codecs

    try:
        return codecs.getincrementaldecoder(codec)().decode(head)
    except UnicodeDecodeError as fault:
        raise _fault(place, "encoding", _byte(fault), _ENCODINGS) from fault


def _byte(fault: UnicodeDecodeError) -> str:
    return Worded("byte 0x{object:02x}", object=fault.object[fault.start])


def _delimiter(head: str) -> str:
    """Return the sign that parts most rows into the same number of cells; of equal ones the one that makes more.

    A comma that stands between digits alone may be a decimal sign, and comes after another that parts rows as well.
    """
    may_be_decimal = _COMMA_ELSEWHERE.search(head) is None

    def sameness(sign: str) -> tuple[int, int, bool]:
        counts = Counter[int]()
        try:
            for cells in islice(csv.reader(io.StringIO(head, newline=""), delimiter=sign), _HEAD_ROWS):
                counts[len(cells) - 1] += len(cells) > 1
        except csv.Error:
            pass
        count, rows = max(counts.items(), key=lambda one: (one[1], one[0]), default=(0, 0))
        return rows, count, sign != "," or not may_be_decimal

    return max(_DELIMITERS, key=sameness)


def _plain(cells: list[str]) -> tuple[str, ...]:
    texts = [text.translate(_BLANKS).strip() for text in cells]
    while texts and not texts[-1]:
        texts.pop()
    return tuple(texts)


def _check_count(place: str, rows: int, cells: int, bounds: TableBounds) -> None:
    for count, most, what in ((rows, bounds.rows, "rows"), (cells, bounds.cells, "cells")):
        if count > most:
            raise _fault(
                place,
                what,
                Worded("more than {most}", most=most),
                Worded("at most {most} {what} are read", most=most, what=what),
            )


def _fault(place: str, field: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place, field, value, wanted),))
