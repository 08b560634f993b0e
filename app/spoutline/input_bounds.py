"""How much of a file is taken in: one place for the bounds of every reader, and the few ways to read within them.

A file from elsewhere may be damaged, made by a faulty program, or made to harm. Every bound is far above what an honest
file needs and low enough that the worst file within it costs seconds and some hundred megabytes. What is beyond a
bound is refused with the file, the place, what stands there and what would be right; nothing is cut off silently.
"""

from __future__ import annotations

import csv
import tomllib
import zipfile
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from io import BytesIO
from pathlib import Path
from typing import Any, Final, TypeVar

from spoutline.model.faults import InputFault, InputProblem

_Row = TypeVar("_Row")


@dataclass(frozen=True, slots=True)
class InputBounds:
    """What a reader takes at most; sizes in bytes, all else counted."""

    survey_bytes: int = 20_000_000
    toml_bytes: int = 2_000_000
    stock_bytes: int = 10_000_000
    table_bytes: int = 50_000_000
    nesting: int = 40  # tables in tables; a terms file needs four
    workbook_members: int = 2_000  # files in the archive
    workbook_bytes: int = 100_000_000  # of all files in the archive, unpacked
    style_elements: int = 60_000  # a spreadsheet keeps at most about 64,000 cell formats
    text_elements: int = 600_000  # of the shared texts
    cell_elements: int = 2_000_000  # of one sheet
    other_elements: int = 60_000  # of any other file of a workbook
    merged_cells: int = 1_000_000  # cells that merged ranges cover


BOUNDS: Final = InputBounds()
_FORBIDDEN_XML: Final = (b"<!DOCTYPE", b"<!ENTITY")


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
            content = file.read(most + 1)
    except (OSError, ValueError) as fault:  # a path with a NUL is a value error
        reason = getattr(fault, "strerror", None) or fault
        raise _fault(str(path), field, "this path", f"{needed} ({reason})") from fault
    if len(content) > most:
        raise _fault(str(path), field, f"more than {most} bytes", f"{needed}; at most {most} bytes are read")
    return content


def bounded_text(path: Path, most: int, field: str, needed: str) -> str:
    """Return the text of a UTF-8 file of at most ``most`` bytes, without byte order mark; raise ``InputFault``."""
    content = bounded_bytes(path, most, field, needed)
    try:
        return content.decode("utf-8-sig").replace("\r\n", "\n").replace("\r", "\n")
    except UnicodeDecodeError as fault:
        value = f"byte {fault.start} (0x{content[fault.start]:02x})"
        raise _fault(str(path), field, value, f"{needed}, in UTF-8") from fault


def toml_table(text: str, place: str, field: str, parse_float: Callable[[str], Any] = float) -> dict[str, Any]:
    """Return the table in a TOML text.

    Raises
    ------
    InputFault
        It is no TOML, holds a number that no reader takes, is far too long or nested far too deep.
    """
    if len(text) > BOUNDS.toml_bytes:
        raise _fault(place, field, f"{len(text)} characters", f"at most {BOUNDS.toml_bytes} characters are read")
    try:
        table = tomllib.loads(text, parse_float=parse_float)
    except tomllib.TOMLDecodeError as fault:
        raise _fault(
            place, field, str(fault) if field == "file" else "the text", f"write valid TOML ({fault})"
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
    wanted = f"nest tables and lists at most {BOUNDS.nesting} deep"
    return _fault(place, field, f"more than {BOUNDS.nesting} levels", wanted)


def csv_rows(reader: Iterable[_Row], place: Callable[[], str]) -> Iterator[_Row]:
    """Yield the rows of a CSV reader; what it cannot read, such as a huge cell, is an ``InputFault`` at ``place()``."""
    try:
        yield from reader
    except csv.Error as fault:
        wanted = f"write valid CSV with cells of at most {csv.field_size_limit()} characters ({fault})"
        raise _fault(place(), "row", "the text", wanted) from fault


def check_workbook(content: bytes, place: str) -> None:
    """Refuse a workbook that would unpack to far more than a table of positions needs.

    Raises
    ------
    InputFault
        A file of the archive is beyond its bound, or declares entities; or the bytes are no sound archive.
    """
    try:
        with zipfile.ZipFile(BytesIO(content)) as archive:
            members = archive.infolist()
            if len(members) > BOUNDS.workbook_members:
                wanted = f"a workbook of at most {BOUNDS.workbook_members} files is read"
                raise _fault(place, "workbook", f"{len(members)} files", wanted)
            unpacked = sum(member.file_size for member in members)
            if unpacked > BOUNDS.workbook_bytes:
                wanted = f"a workbook of at most {BOUNDS.workbook_bytes} bytes, unpacked, is read"
                raise _fault(place, "workbook", f"{unpacked} bytes", wanted)
            for member in members:
                if member.filename.lower().endswith((".xml", ".rels", ".vml")):
                    _check_member(archive, member, place)
    except InputFault:
        raise
    except Exception as fault:  # a damaged archive fails in many ways
        raise _fault(place, "file", "the workbook", "a workbook that a spreadsheet can open is needed") from fault


def _check_member(archive: zipfile.ZipFile, member: zipfile.ZipInfo, place: str) -> None:
    name = member.filename
    most = _most_elements(name.lower())
    count = 0
    tail = b""
    with archive.open(member) as file:
        while block := file.read(1 << 20):
            count += block.count(b"<")
            if any(sign in tail + block for sign in _FORBIDDEN_XML):
                wanted = "a workbook whose files declare no entities is needed"
                raise _fault(f"{place}, {name}", "workbook", "a document type", wanted)
            if count > 2 * most:  # most elements open and close
                wanted = f"at most {most} elements are read; save only the table that is needed"
                raise _fault(f"{place}, {name}", "workbook", f"more than {most} elements", wanted)
            tail = block[-16:]


def _most_elements(name: str) -> int:
    if "styles" in name:
        return BOUNDS.style_elements
    if "sharedstrings" in name:
        return BOUNDS.text_elements
    return BOUNDS.cell_elements if "worksheets/" in name or "sheet" in name else BOUNDS.other_elements


def _fault(place: str, field: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place, field, value, wanted),))
