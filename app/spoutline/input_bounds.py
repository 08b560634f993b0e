"""How much of a file is taken in: one place for the bounds of every reader, and the few ways to read within them.

A file from elsewhere may be damaged, made by a faulty program, or made to harm. Every bound is far above what an honest
file needs and low enough that the worst file within it costs seconds and some hundred megabytes. What is beyond a
bound is refused with the file, the place, what stands there and what would be right; nothing is cut off silently.
"""

from __future__ import annotations

import csv
import json
import re
import tomllib
import warnings
import zipfile
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from io import BytesIO
from pathlib import Path
from typing import Any, BinaryIO, Final, TypeVar

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

_Row = TypeVar("_Row")


@dataclass(frozen=True, slots=True)
class InputBounds:
    """What a reader takes at most; sizes in bytes, all else counted."""

    run_bytes: int = 200_000_000  # lines of a stopped run: 100,000 sites of about 1,700 bytes
    survey_bytes: int = 16_000_000  # one of 5,000 positions has 14 MB where every field is spelled out
    document_bytes: int = 16_000_000  # of a document that the program itself writes, such as agreed sets
    json_objects: int = 150_000  # objects and lists; a survey of 5,000 positions has about 100,000
    json_values: int = 450_000  # such a survey has about 425,000 where every field is spelled out
    json_entry_values: int = 5_000  # of one entry of a large document, such as a position
    json_members: int = 500  # fields of one object
    json_unknown: int = 2_000  # fields that no such document has; each of them would be told
    toml_bytes: int = 1_000_000
    toml_entries: int = 2_000  # of one table or list
    nesting: int = 40  # tables in tables; a terms file needs four
    stock_bytes: int = 10_000_000
    stock_lines: int = 100_000
    price_bytes: int = 20_000_000
    catalogue_bytes: int = 20_000_000
    exchange_bytes: int = 400_000_000  # of an exchange file; 100,000 parts need about 8,000,000
    exchange_unpacked_bytes: int = 2_000_000_000
    exchange_rows: int = 5_000_000  # a part has about three: itself and its prices
    form_bytes: int = 20_000_000
    form_objects: int = 100_000  # of the PDF; a form has about 110 for each position
    form_dictionaries: int = 400_000
    form_fields: int = 11_000  # about 35 for each position
    form_positions: int = 300
    tablet_bytes: int = 90_000_000  # of a form saved by the page for a tablet: the pictures below, and a third more
    tablet_total_bytes: int = 60_000_000  # of all pictures of such a form
    tablet_photo_bytes: int = 700_000  # of one photo, as the page scales it down
    tablet_photos: int = 8  # of one position
    picture_bytes: int = 20_000_000
    part_file_bytes: int = 20_000_000  # of a picture or document of a part
    part_document_pages: int = 400
    letterhead_bytes: int = 5_000_000
    picture_pieces: int = 20_000
    png_pixels: int = 16_000_000  # unpacked whole to be drawn, some 12 bytes each while it is
    jpeg_pixels: int = 51_000_000  # what the cameras of most telephones make at most
    table_bytes: int = 20_000_000  # of a workbook as it lies on the disk
    text_table_bytes: int = 10_000_000
    table_rows: int = 10_000  # a survey has at most 5,000 positions
    table_columns: int = 200
    table_cells: int = 500_000
    cell_characters: int = 32_767  # what a spreadsheet itself takes
    title_characters: int = 200  # a longer text is no title of a column
    pasted_characters: int = 2_000_000
    workbook_members: int = 2_000  # files in the archive
    workbook_bytes: int = 40_000_000  # of all files in the archive, unpacked
    style_elements: int = 60_000  # a spreadsheet keeps at most about 64,000 cell formats
    text_elements: int = 400_000  # of the shared texts
    cell_elements: int = 500_000  # of one sheet
    other_elements: int = 60_000  # of any other file of a workbook
    merged_cells: int = 1_000_000  # cells that merged ranges cover
    intake_bytes: int = 64_000_000  # of a supplier's table of parts or prices
    intake_rows: int = 200_000
    intake_cells: int = 3_000_000
    intake_workbook_bytes: int = 250_000_000  # unpacked, read as a stream
    intake_faults: int = 2_000  # told one by one, the others counted
    own_file_bytes: int = 64_000_000  # a larger file is no paper of the program
    problems: int = 2_000  # told one by one; a file with more is none of its kind


BOUNDS: Final = InputBounds()
_FORBIDDEN_XML: Final = (b"<!DOCTYPE", b"<!ENTITY")
_ROW_NUMBER: Final = re.compile(rb'<(?:\w+:)?row\b[^>]*?\sr=["\']([^"\']*)["\']')
# a name of more than 16 parts; it begins where a word begins, and never looks back (possessive), so that the time is
# linear in the text
_LONG_KEY: Final = re.compile(r"""(?<![^\s.="'\[\]{},])(?:[^\s.="'\[\]{},]++\s*+\.\s*+){16}""")
_JPEG_SCAN: Final = 0xDA  # begins the pixels (ITU-T T.81, table B.1)
_PICTURES: Final = ("PNG", "JPEG")


def bounded_bytes(path: Path, most: int, field: str, needed: str) -> bytes:
    """Return the bytes of a file without ever holding more than ``most`` of them.

    Parameters
    ----------
    path
        The file.
    most
        Largest size that is read, bytes.
    field
        What a fault names.
    needed
        What would be right, such as ``a readable survey file is needed``.

    Raises
    ------
    InputFault
        The file cannot be read or is larger.
    """
    try:
        with path.open("rb") as file:
            return bounded_stream(file, most, str(path), field, needed)
    except (OSError, ValueError) as fault:  # a path with a NUL is a value error
        reason = getattr(fault, "strerror", None) or fault
        raise _fault(
            str(path), field, "this path", Worded("{needed} ({reason})", needed=needed, reason=reason)
        ) from fault


def bounded_stream(stream: BinaryIO, most: int, place: str, field: str, needed: str) -> bytes:
    """Return all of a stream, such as standard input; see ``bounded_bytes``."""
    content = stream.read(most + 1)
    if len(content) > most:
        raise _fault(
            place,
            field,
            Worded("more than {most} bytes", most=most),
            Worded("{needed}; at most {most} bytes are read", needed=needed, most=most),
        )
    return content


def bounded_text(path: Path, most: int, field: str, needed: str) -> str:
    """Return the text of a UTF-8 file of at most ``most`` bytes, without byte order mark; raise ``InputFault``."""
    content = bounded_bytes(path, most, field, needed)
    try:
        return content.decode("utf-8-sig").replace("\r\n", "\n").replace("\r", "\n")
    except UnicodeDecodeError as fault:
        value = Worded("byte {start} (0x{content:02x})", start=fault.start, content=content[fault.start])
        raise _fault(str(path), field, value, Worded("{needed}, in UTF-8", needed=needed)) from fault


def toml_table(text: str, place: str, field: str, parse_float: Callable[[str], Any] = float) -> dict[str, Any]:
    """Return the table in a TOML text.

    Raises
    ------
    InputFault
        It is no TOML, holds a number that no reader takes, is far too long or nested far too deep.
    """
    if len(text) > BOUNDS.toml_bytes:
        raise _fault(
            place,
            field,
            Worded("{count} characters", count=len(text)),
            Worded("at most {most} characters are read", most=BOUNDS.toml_bytes),
        )
    if _LONG_KEY.search(text):  # reading one takes time with the square of its parts
        raise _too_deep(place, field)
    try:
        table = tomllib.loads(text, parse_float=parse_float)
    except tomllib.TOMLDecodeError as fault:
        raise _fault(
            place,
            field,
            str(fault) if field == "file" else "the text",
            Worded("write valid TOML ({reason})", reason=fault),
        ) from fault
    except RecursionError as fault:
        raise _too_deep(place, field) from fault
    except (ValueError, ArithmeticError) as fault:  # digits or an exponent beyond what a number may have
        raise _fault(place, field, "a number of far too many digits", "write numbers of at most 15 digits") from fault
    _check_values(table, place, field)
    return table


def _check_values(table: dict[str, Any], place: str, field: str) -> None:
    level: list[object] = [table]
    for _ in range(BOUNDS.nesting):
        inner: list[object] = []
        for one in level:
            if isinstance(one, dict | list) and len(one) > BOUNDS.toml_entries:
                wanted = Worded("write at most {most} entries into one table or list", most=BOUNDS.toml_entries)
                raise _fault(place, field, Worded("{count} entries", count=len(one)), wanted)
            inner.extend(one.values() if isinstance(one, dict) else one if isinstance(one, list) else ())
        for one in inner:
            if isinstance(one, int | Decimal) and not isinstance(one, bool) and _is_far(one):
                raise _fault(place, field, "a number of far too many digits", "write numbers of at most 15 digits")
        level = inner
        if not level:
            return
    raise _too_deep(place, field)


def _is_far(number: int | Decimal) -> bool:
    if isinstance(number, int):
        return number.bit_length() > 1000
    return number.is_finite() and (abs(number.adjusted()) > 300 or len(number.as_tuple().digits) > 300)


def _too_deep(place: str, field: str) -> InputFault:
    wanted = Worded("nest tables and lists at most {most} deep", most=BOUNDS.nesting)
    return _fault(place, field, Worded("more than {most} levels", most=BOUNDS.nesting), wanted)


def json_object(
    text: str, place: str, whole: str, schema: str, known: frozenset[str] = frozenset()
) -> dict[str, object]:
    r"""Return the JSON object in a text.

    Parameters
    ----------
    text, place
        The text, and where it came from.
    whole
        What the document is called in faults, such as ``survey``.
    schema
        What shows how it is written, such as ``\`spoutline schema\` prints what a survey looks like``.

    known
        The names of all fields that such a document may have; empty where any may stand.

    Raises
    ------
    InputFault
        It is no JSON object, says the same field twice (one of the two would get lost), or is beyond a bound.
    """
    _check_json(text, place, whole)
    doubled: list[str] = []
    crowded: list[int] = []
    unknown = 0

    def note(pairs: list[tuple[str, object]]) -> dict[str, object]:
        nonlocal unknown
        fields: dict[str, object] = {}
        for name, value in pairs:
            if name in fields:
                doubled.append(name)
            fields[name] = value
        if len(fields) > BOUNDS.json_members:
            crowded.append(len(fields))
        if known:
            unknown += len(fields.keys() - known)
        return fields

    try:
        document = json.loads(text, object_pairs_hook=note)
    except json.JSONDecodeError as fault:
        where = Worded("{place}, line {lineno}, column {colno}", place=place, lineno=fault.lineno, colno=fault.colno)
        shown = "the text" if text.strip() else "an empty text"
        raise _fault(
            where, whole, shown, Worded("the file must be JSON ({reason}); {schema}", reason=fault.msg, schema=schema)
        ) from fault
    except (ValueError, RecursionError) as fault:
        wanted = Worded("the file must be a JSON {whole}; numbers and nesting are far beyond one", whole=whole)
        raise _fault(place, whole, "the text", wanted) from fault
    if not isinstance(document, dict):
        kind = "list" if isinstance(document, list) else "text" if isinstance(document, str) else "bare value"
        raise _fault(place, whole, f"a {kind}", Worded("the file must hold one JSON object; {schema}", schema=schema))
    if crowded:
        wanted = Worded(
            "at most {most} fields of one object are read; {schema}", most=BOUNDS.json_members, schema=schema
        )
        raise _fault(place, whole, Worded("{crowded} fields of one object", crowded=max(crowded)), wanted)
    if unknown > BOUNDS.json_unknown:
        raise _fault(
            place,
            whole,
            Worded("{unknown} unknown fields", unknown=unknown),
            Worded("this is no {whole} of this program; {schema}", whole=whole, schema=schema),
        )
    if doubled:
        told = sorted(set(doubled))[: BOUNDS.problems]
        raise InputFault(tuple(InputProblem(place, name, "written twice", "say each field once") for name in told))
    return document


def _check_json(text: str, place: str, whole: str) -> None:
    for signs, most, what in (
        ("[{", BOUNDS.json_objects, "objects and lists"),
        (",", BOUNDS.json_values, Worded("values")),
    ):
        count = sum(text.count(sign) for sign in signs)
        if count > most:
            raise _fault(
                place,
                whole,
                Worded("about {count} {what}", count=count, what=what),
                Worded("at most {most} {what} are read", most=most, what=what),
            )


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
        raise _fault(place(), "row", "the text", wanted) from fault


@dataclass(frozen=True, slots=True)
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


@dataclass(frozen=True, slots=True)
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
                raise _fault(place, "workbook", Worded("{count} files", count=len(members)), wanted)
            unpacked = sum(member.file_size for member in members)
            if unpacked > bounds.unpacked_bytes:
                wanted = Worded(
                    "a workbook of at most {unpacked_bytes} bytes, unpacked, is read",
                    unpacked_bytes=bounds.unpacked_bytes,
                )
                raise _fault(place, "workbook", Worded("{unpacked} bytes", unpacked=unpacked), wanted)
            for member in members:
                if member.filename.lower().endswith((".xml", ".rels", ".vml")):
                    _check_member(archive, member, place, bounds)
    except InputFault:
        raise
    except Exception as fault:  # a damaged archive fails in many ways
        raise _fault(place, "file", "the workbook", "a workbook that a spreadsheet can open is needed") from fault


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
                raise _fault(f"{place}, {name}", "workbook", "a document type", wanted)
            if count > 2 * most:  # most elements open and close
                wanted = Worded("at most {most} elements are read; save only the table that is needed", most=most)
                raise _fault(f"{place}, {name}", "workbook", Worded("more than {most} elements", most=most), wanted)
            tail = block[-200:]


def _check_row_numbers(text: bytes, place: str, most: int) -> None:
    """Refuse a row far below all others: the rows between would be made one by one (ECMA-376 Part 1, 18.3.1.73)."""
    for number in _ROW_NUMBER.findall(text):
        if not number.isdigit() or len(number) > 9 or int(number) > most:
            wanted = Worded("at most {most} rows are read", most=most)
            raise _fault(
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


def check_form(pdf: bytes, place: str) -> None:
    """Refuse a PDF with far more objects than a form has; raise ``InputFault``."""
    for sign, most, what in (
        (b" obj", BOUNDS.form_objects, Worded("objects")),
        (b"<<", BOUNDS.form_dictionaries, Worded("dictionaries")),
    ):
        count = pdf.count(sign)
        if count > most:
            raise _fault(
                place,
                "form",
                f"{count} {what}",
                Worded("a form of at most {most} {what} is read", most=most, what=what),
            )


def check_picture(content: bytes, place: str, field: str) -> None:
    """Refuse what is no PNG or JPEG picture that can be drawn, and one of too many pixels, before it is unpacked.

    Raises
    ------
    InputFault
        It is damaged, of another form, or would take far more memory than a paper needs.
    """
    from PIL import Image

    needed = "a PNG or JPEG picture is needed"
    if _pieces(content) > BOUNDS.picture_pieces:
        wanted = Worded("a picture of at most {most} pieces is read; save it anew", most=BOUNDS.picture_pieces)
        raise _fault(place, field, Worded("more than {most} pieces", most=BOUNDS.picture_pieces), wanted)
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # the library's own bound on pixels is told below
            picture = Image.open(BytesIO(content), formats=_PICTURES)
            most = BOUNDS.png_pixels if picture.format == "PNG" else BOUNDS.jpeg_pixels
            pixels = picture.width * picture.height
            if pixels > most:
                wanted = Worded("save it smaller: at most {most} million pixels are read", most=most // 1000000)
                raise _fault(
                    place,
                    field,
                    Worded("a picture of {width} x {height} pixels", width=picture.width, height=picture.height),
                    wanted,
                )
            picture.draft("RGB", (picture.width // 8 or 1, picture.height // 8 or 1))  # of a JPEG every block is read
            picture.load()
    except InputFault:
        raise
    except Image.DecompressionBombError as fault:
        raise _fault(
            place, field, Worded("a picture of far too many pixels ({reason})", reason=fault), "save it smaller"
        ) from fault
    except Exception as fault:  # the library has many ways to refuse a damaged picture
        raise _fault(place, field, "the content", needed) from fault


def _pieces(content: bytes) -> int:
    """Count the pieces of a picture up to its bound: chunks of a PNG (its specification, 5.3), segments of a JPEG.

    The library looks at each, however small it is.
    """
    is_png = content.startswith(b"\x89PNG")
    place, count = (8, 0) if is_png else (2, 0)
    while place + 4 <= len(content) and count <= BOUNDS.picture_pieces:
        if not is_png and content[place + 1] == _JPEG_SCAN:
            break
        length = int.from_bytes(content[place : place + 4] if is_png else content[place + 2 : place + 4], "big")
        place += length + 12 if is_png else length + 2
        count += 1
    return count


def _fault(place: str, field: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place, field, value, wanted),))
