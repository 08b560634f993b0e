"""The exchange file: a whole catalogue as a Data Package, one ZIP of CSV tables and the ``datapackage.json`` on them.

Equal catalogues give equal bytes, whichever edition of whichever book they are: the file holds entries and nothing of
when and by whom they were published. A text that a spreadsheet would take for a formula stands behind an apostrophe,
and so does one that begins with such an apostrophe already; reading takes one away.
"""

from __future__ import annotations

import csv
import io
import json
import zipfile
from collections.abc import Callable, Iterable, Sequence
from sys import intern
from typing import Final, NamedTuple

from spoutline.catalogue.entry_text import digest_of, entry_text
from spoutline.catalogue.exchange_format import (
    DESCRIPTOR,
    FAMILIES,
    FAMILY_FIGURES,
    FILES,
    LIST_COLUMNS,
    LIST_PRICES,
    LISTS,
    ORIGINS,
    PRICES,
    REFERENCES,
    TABLES,
    TEXTS,
    columns_of,
    descriptor_of,
    member_of,
    shielded,
)
from spoutline.catalogue.family_store import family_text
from spoutline.catalogue.list_store import list_text
from spoutline.catalogue.publishing import fingerprint_of_states
from spoutline.catalogue.table_schema import IDENTITY_COLUMNS, UNKNOWN_KIND
from spoutline.model.catalogue_entry import CatalogueEntry, Cell, Origin
from spoutline.model.cross_reference import COLUMNS as REFERENCE_COLUMNS
from spoutline.model.cross_reference import CrossReference
from spoutline.model.part_family import PartFamily
from spoutline.model.part_file import PartFile
from spoutline.model.pricing import PriceList


def exchange_bytes(
    entries: Iterable[CatalogueEntry],
    references: Iterable[CrossReference] = (),
    lists: Iterable[PriceList] = (),
    families: Iterable[PartFamily] = (),
    content_of: Callable[[str], bytes | None] = lambda _: None,
) -> bytes:
    """Return the exchange file of entries, cross-references, price lists and families; the same bytes in any order.

    ``content_of`` returns the content of a picture or document of a part by its digest.
    """
    written = sorted(map(_written, entries), key=lambda one: (one.number, one.maker))
    tables = _tables(written)
    leading = sorted(references, key=lambda one: one.ref)
    if leading:
        rows = [[shielded(str(getattr(one, column))) for column in REFERENCE_COLUMNS] for one in leading]
        tables[REFERENCES] = _lines(rows)
    priced = sorted(map(_written_list, lists), key=lambda one: one.id)
    if priced:
        tables |= {LISTS: "".join(one.head for one in priced), LIST_PRICES: "".join(one.prices for one in priced)}
    common = sorted(families, key=lambda one: one.name)
    if common:
        tables |= _family_tables(common)
    states = ((one.number, one.maker, one.digest) for one in written)
    fingerprint = fingerprint_of_states(states, leading, (one.text for one in priced), map(family_text, common))
    files = {file.digest: file for one in written for file in one.files}
    del written, priced  # their texts stand in the tables
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED, compresslevel=6) as archive:
        descriptor = descriptor_of(tables, fingerprint)
        _add(archive, DESCRIPTOR, json.dumps(descriptor, indent=2, ensure_ascii=False) + "\n")
        for name in tuple(tables):
            _add(archive, f"{name}.csv", _lines([columns_of(name)]) + tables.pop(name))
        for file in files.values():
            content = content_of(file.digest)
            if content is not None:
                _add_bytes(archive, member_of(file), content, zipfile.ZIP_STORED)  # packed already
    return target.getvalue()


class _Written(NamedTuple):
    """An entry as its lines in the tables, which take a tenth of the room that it takes itself."""

    number: str
    maker: str
    digest: str
    table: str
    part: str
    prices: str
    origins: str
    files_lines: str
    files: tuple[PartFile, ...]


def _written(entry: CatalogueEntry) -> _Written:
    named = [shielded(entry.number), shielded(entry.maker)]
    table = entry.kind.value if entry.kind else UNKNOWN_KIND
    given = {cell.column: cell.value for cell in entry.figures}
    figures = [_text(given.get(column)) for column in columns_of(table)[len(IDENTITY_COLUMNS) :]]
    origins = [
        [*named, cell.column, cell.origin.value, shielded(cell.source)]
        for cell in entry.figures
        if cell.origin is not Origin.STATED or cell.source
    ]
    files = [[*named, shielded(one.title), one.matter, one.media, one.digest, str(one.size)] for one in entry.files]
    return _Written(
        entry.number,
        intern(entry.maker),
        digest_of(entry_text(entry)),
        table,
        _lines([[_identity(entry, column) for column in IDENTITY_COLUMNS] + figures]),
        _lines([*named, price.currency, str(price.minor)] for price in entry.prices),
        _lines(origins),
        _lines(files),
        entry.files,
    )


class _WrittenList(NamedTuple):
    """A price list as its lines in the tables, and as it is stored."""

    id: str
    head: str
    prices: str
    text: str


def _written_list(one: PriceList) -> _WrittenList:
    prices = (
        [
            shielded(text)
            for text in (one.id, row.part_number, row.discount_group, str(step.from_quantity), str(step.unit_price))
        ]
        for row in sorted(one.rows, key=lambda row: row.part_number)
        for step in row.breaks
    )
    head = [shielded(_plain(getattr(one, column))) for column in LIST_COLUMNS]
    return _WrittenList(one.id, _lines([head]), _lines(prices), list_text(one))


def _lines(rows: Iterable[Sequence[str]]) -> str:
    text = io.StringIO(newline="")
    csv.writer(text, lineterminator="\n").writerows(rows)
    return text.getvalue()


def _family_tables(families: Iterable[PartFamily]) -> dict[str, str]:
    heads = [[shielded(one.name), one.kind.value] for one in families]
    figures = [[shielded(one.name), cell.column, _text(cell.value)] for one in families for cell in one.figures]
    return {FAMILIES: _lines(heads), FAMILY_FIGURES: _lines(figures)}


def _plain(value: object) -> str:
    return "" if value is None else str(value)


_LONG_AGO: Final = (1980, 1, 1, 0, 0, 0)  # the first day that a ZIP can name: no clock enters


def _add(archive: zipfile.ZipFile, name: str, text: str) -> None:
    _add_bytes(archive, name, text.encode(), zipfile.ZIP_DEFLATED)


def _add_bytes(archive: zipfile.ZipFile, name: str, content: bytes, compression: int) -> None:
    member = zipfile.ZipInfo(name, _LONG_AGO)
    member.compress_type = compression
    member.external_attr = 0o644 << 16
    archive.writestr(member, content)


def _tables(written: Sequence[_Written]) -> dict[str, str]:
    """Return the lines of the tables of parts, of each table that has any."""
    parts: dict[str, list[str]] = {name: [] for name in TABLES}
    for one in written:
        parts[one.table].append(one.part)
    tables = {name: "".join(lines) for name, lines in parts.items()}
    tables[PRICES] = "".join(one.prices for one in written)
    tables[ORIGINS] = "".join(one.origins for one in written)
    tables[FILES] = "".join(one.files_lines for one in written)
    return {name: lines for name, lines in tables.items() if lines}


def _identity(entry: CatalogueEntry, column: str) -> str:
    value = getattr(entry, column)
    if value is None:
        return ""
    return shielded(str(value)) if column in TEXTS else str(value)


def _text(value: Cell | None) -> str:
    if value is None or isinstance(value, str):
        return value or ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, tuple):
        return " ".join(value)
    return str(int(value)) if float(value).is_integer() and abs(value) < 1e15 else repr(value)
