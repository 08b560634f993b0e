"""By what the program knows a file that it wrote, so that it replaces no other without being told to.

=========  =======================================================================================================
PDF        producer ``Spoutline`` in the document's information; written once: a program that fills in or signs the file
           adds to its end, or writes another producer, and the file is somebody's work then
XLSX       the document property ``Spoutline``, and a date of change that is the date of creation: a spreadsheet program
           that saves the file sets another
CSV        UTF-8 with byte order mark, and the column titles of a bill, order lines, margins, a programme, a sequence,
           old numbers, dispenser types, due work or a coverage map
ICS        ``PRODID`` of Spoutline
HTML       a ``generator`` of Spoutline
JSON       ``format`` begins with ``spoutline-``
EML        ``X-Mailer`` of Spoutline, and a boundary that is the digest of the mail: nobody has changed it since
ZIP        of a catalogue: its ``datapackage.json`` says ``format`` ``spoutline-catalogue``
=========  =======================================================================================================

Files in TOML (terms, jurisdictions) are written by people, and pictures are drawn on by them: none is ever taken for
the program's own.
"""

from __future__ import annotations

import csv
import mmap
import re
import zipfile
from collections.abc import Callable
from enum import StrEnum
from functools import cache
from io import BytesIO, StringIO
from pathlib import Path
from typing import Final

from spoutline.documents.marks import PDF_PRODUCER, XLSX_PROPERTY
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.json_text import json_object
from spoutline.input_bounds.reading import bounded_text
from spoutline.model.faults import InputFault

_START: Final = 4096  # bytes in which the marks of texts stand
_PROPERTIES: Final = "docProps/custom.xml"
_CORE: Final = "docProps/core.xml"
_DATES: Final = re.compile(rb"<dcterms:(?:created|modified)[^>]*>([^<]*)<")
_LARGEST_PROPERTIES: Final = 100_000


class FileForm(StrEnum):
    """The forms in which files are written; the value is the usual ending of the name."""

    PDF = "pdf"
    XLSX = "xlsx"
    CSV = "csv"
    ICS = "ics"
    HTML = "html"
    JSON = "json"
    TOML = "toml"
    TEXT = "txt"
    CATALOGUE = "zip"
    SVG = "svg"
    PNG = "png"
    MAIL = "eml"
    FOREIGN = "file"  # handed out as it was taken in: nothing tells it from a file of somebody else


def is_own(path: Path, form: FileForm) -> bool:
    """Say whether the file at ``path`` carries the program's mark of this form; raise ``OSError`` as reading does."""
    if path.stat().st_size > BOUNDS.own_file_bytes:
        return False
    test = _TESTS.get(form)
    return test is not None and test(path)


def own_test(form: FileForm) -> Callable[[Path], bool]:
    """Return the test of one form."""
    return lambda path: is_own(path, form)


def _is_pdf(path: Path) -> bool:
    if not path.stat().st_size:
        return False
    with path.open("rb") as stream, mmap.mmap(stream.fileno(), 0, access=mmap.ACCESS_READ) as content:
        if content[:5] != b"%PDF-" or content.find(f"/Producer ({PDF_PRODUCER})".encode()) < 0:
            return False
        return content.find(b"%%EOF") == content.rfind(b"%%EOF") != -1


def _is_xlsx(path: Path) -> bool:
    content = path.read_bytes()
    try:
        with zipfile.ZipFile(BytesIO(content)) as archive:
            if any(archive.getinfo(name).file_size > _LARGEST_PROPERTIES for name in (_PROPERTIES, _CORE)):
                return False
            dates = _DATES.findall(archive.read(_CORE))
            is_marked = f'name="{XLSX_PROPERTY}"'.encode() in archive.read(_PROPERTIES)
            return is_marked and len(dates) == 2 and dates[0] == dates[1]
    except Exception:  # a damaged archive fails in many ways; it is none of the program's
        return False


def _is_csv(path: Path) -> bool:
    start = _start_of(path)
    if not start.startswith("\ufeff"):
        return False
    try:
        first = next(csv.reader(StringIO(start.removeprefix("\ufeff"), newline="")), [])
    except csv.Error:
        return False
    return tuple(first) in _csv_heads()


@cache
def _csv_heads() -> frozenset[tuple[str, ...]]:
    from spoutline import assets
    from spoutline.documents.conversion import programme_table, task_table
    from spoutline.documents.coverage import papers as coverage
    from spoutline.documents.pack import due_work, stock_tables
    from spoutline.documents.quotation import csv_order, margin_tables
    from spoutline.documents.tabular.rows import bill_titles_ever, with_island_title
    from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml
    from spoutline.explain.plan.story import Story
    from spoutline.model.cross_reference import COLUMNS as OLD_NUMBERS
    from spoutline.model.type_columns import TYPE_COLUMNS
    from spoutline.units.accepted import UnitSystem
    from spoutline.units.display import Display

    path = assets.resources_folder() / "phrases" / "en.toml"  # tables for programs are in English in every language
    story = Story(phrasebook_from_toml(path.read_text(encoding="utf-8"), path.name), Display(UnitSystem.SI))
    types = tuple(column.key for column in TYPE_COLUMNS)
    bills = bill_titles_ever(story)
    with_islands = (with_island_title(titles, story) for titles in bills)
    return frozenset(
        {
            OLD_NUMBERS,
            types,
            csv_order.COLUMNS,
            margin_tables.COLUMNS,
            *programme_table.COLUMNS_EVER,
            task_table.COLUMNS,
            coverage.COLUMNS,
            due_work.COLUMNS,
            stock_tables.COLUMNS,
            stock_tables.ENTRY_COLUMNS,
            *bills,
            *with_islands,
        }
    )


def _is_calendar(path: Path) -> bool:
    start = _start_of(path)
    return start.startswith("BEGIN:VCALENDAR") and re.search(r"^PRODID:-//Spoutline//", start, re.MULTILINE) is not None


def _is_html(path: Path) -> bool:
    return re.search(r'<meta name="generator" content="Spoutline[ "]', _start_of(path)) is not None


def _is_json(path: Path) -> bool:
    try:
        text = bounded_text(path, BOUNDS.document_bytes, "file", "a document is needed")
        document = json_object(text, str(path), "document", "")
    except InputFault:
        return False
    return str(document.get("format", "")).startswith("spoutline-")


def _is_catalogue(path: Path) -> bool:
    try:
        with zipfile.ZipFile(path) as archive:
            if archive.getinfo("datapackage.json").file_size > BOUNDS.document_bytes:
                return False
            document = json_object(archive.read("datapackage.json").decode(), str(path), "document", "")
    except Exception:  # a damaged archive fails in many ways; it is none of the program's
        return False
    return document.get("format") == "spoutline-catalogue"


def _is_mail(path: Path) -> bool:
    from spoutline.documents.mail import is_mail_of_program

    return is_mail_of_program(path.read_bytes())


def _start_of(path: Path) -> str:
    with path.open("rb") as stream:
        return stream.read(_START).decode("utf-8", "replace")


_TESTS: Final[dict[FileForm, Callable[[Path], bool]]] = {
    FileForm.PDF: _is_pdf,
    FileForm.XLSX: _is_xlsx,
    FileForm.CSV: _is_csv,
    FileForm.ICS: _is_calendar,
    FileForm.HTML: _is_html,
    FileForm.JSON: _is_json,
    FileForm.CATALOGUE: _is_catalogue,
    FileForm.MAIL: _is_mail,
}
