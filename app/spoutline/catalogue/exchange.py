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
from collections.abc import Callable, Iterable
from typing import Final

from spoutline.catalogue.entry_text import digest_of, entry_text
from spoutline.catalogue.exchange_format import (
    DESCRIPTOR,
    FAMILIES,
    FAMILY_COLUMNS,
    FAMILY_FIGURE_COLUMNS,
    FAMILY_FIGURES,
    FILES,
    LIST_COLUMNS,
    LIST_PRICE_COLUMNS,
    LIST_PRICES,
    LISTS,
    ORIGINS,
    PRICES,
    REFERENCES,
    TABLES,
    TEXTS,
    Tables,
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
    ordered = sorted(entries, key=lambda entry: entry.ref)
    leading = sorted(references, key=lambda one: one.ref)
    tables = _tables(ordered)
    if leading:
        rows = [[shielded(str(getattr(one, column))) for column in REFERENCE_COLUMNS] for one in leading]
        tables[REFERENCES] = (REFERENCE_COLUMNS, rows)
    priced = sorted(lists, key=lambda one: one.id)
    if priced:
        tables |= _list_tables(priced)
    common = sorted(families, key=lambda one: one.name)
    if common:
        tables |= _family_tables(common)
    states = ((entry.number, entry.maker, digest_of(entry_text(entry))) for entry in ordered)
    descriptor = descriptor_of(
        tables, fingerprint_of_states(states, leading, map(list_text, priced), map(family_text, common))
    )
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED, compresslevel=6) as archive:
        _add(archive, DESCRIPTOR, json.dumps(descriptor, indent=2, ensure_ascii=False) + "\n")
        for name, (columns, rows) in tables.items():
            text = io.StringIO(newline="")
            writer = csv.writer(text, lineterminator="\n")
            writer.writerow(columns)
            writer.writerows(rows)
            _add(archive, f"{name}.csv", text.getvalue())
        for file in {one.digest: one for entry in ordered for one in entry.files}.values():
            content = content_of(file.digest)
            if content is not None:
                _add_bytes(archive, member_of(file), content, zipfile.ZIP_STORED)  # packed already
    return target.getvalue()


def _list_tables(lists: Iterable[PriceList]) -> Tables:
    heads = [[shielded(_plain(getattr(one, column))) for column in LIST_COLUMNS] for one in lists]
    prices = [
        [
            shielded(text)
            for text in (one.id, row.part_number, row.discount_group, str(step.from_quantity), str(step.unit_price))
        ]
        for one in lists
        for row in sorted(one.rows, key=lambda row: row.part_number)
        for step in row.breaks
    ]
    return {LISTS: (LIST_COLUMNS, heads), LIST_PRICES: (LIST_PRICE_COLUMNS, prices)}


def _family_tables(families: Iterable[PartFamily]) -> Tables:
    heads = [[shielded(one.name), one.kind.value] for one in families]
    figures = [[shielded(one.name), cell.column, _text(cell.value)] for one in families for cell in one.figures]
    return {FAMILIES: (FAMILY_COLUMNS, heads), FAMILY_FIGURES: (FAMILY_FIGURE_COLUMNS, figures)}


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


def _tables(entries: Iterable[CatalogueEntry]) -> Tables:
    tables: Tables = {name: (columns_of(name), []) for name in (*TABLES, PRICES, ORIGINS, FILES)}
    for entry in entries:
        named = [shielded(entry.number), shielded(entry.maker)]
        columns, rows = tables[entry.kind.value if entry.kind else UNKNOWN_KIND]
        rows.append([_identity(entry, column) for column in IDENTITY_COLUMNS])
        given = {cell.column: cell.value for cell in entry.figures}
        rows[-1] += [_text(given.get(column)) for column in columns[len(IDENTITY_COLUMNS) :]]
        tables[PRICES][1].extend([*named, price.currency, str(price.minor)] for price in entry.prices)
        tables[ORIGINS][1].extend(
            [*named, cell.column, cell.origin.value, shielded(cell.source)]
            for cell in entry.figures
            if cell.origin is not Origin.STATED or cell.source
        )
        tables[FILES][1].extend(
            [*named, shielded(one.title), one.matter, one.media, one.digest, str(one.size)] for one in entry.files
        )
    return {name: table for name, table in tables.items() if table[1]}


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
