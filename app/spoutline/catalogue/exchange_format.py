"""What the exchange file holds: its tables, their columns and the ``datapackage.json`` that describes them."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Any, Final

from spoutline.catalogue.descriptions import COLUMNS
from spoutline.catalogue.price_lists import COLUMNS as PRICE_COLUMNS
from spoutline.catalogue.table_schema import IDENTITY_COLUMNS, TABLE_SCHEMA, UNKNOWN_KIND, csv_resource, table_schema
from spoutline.model.cross_reference import COLUMNS as REFERENCE_COLUMNS
from spoutline.model.cross_reference import NumberRelation
from spoutline.model.part import PartKind
from spoutline.model.part_file import FileMatter, MediaType, PartFile

DESCRIPTOR: Final = "datapackage.json"
FORMAT: Final = "spoutline-catalogue"
PACKAGE_SCHEMA: Final = "https://datapackage.org/profiles/2.0/datapackage.json"
VERSION: Final = 1
PRICES: Final = "prices"
ORIGINS: Final = "origins"
REFERENCES: Final = "cross_references"
LISTS: Final = "price_lists"
LIST_COLUMNS: Final = ("id", "maker", "supplier", "currency", "valid_from", "valid_to")
LIST_PRICES: Final = "list_prices"
LIST_PRICE_COLUMNS: Final = ("list", *PRICE_COLUMNS)
FILES: Final = "files"
FILE_COLUMNS: Final = ("number", "maker", "title", "matter", "media", "digest", "size")
_FILE_FOLDER: Final = "files/"
FILE_MEMBER: Final = re.compile(r"files/[0-9a-f]{64}\.(?:png|jpg|pdf)")
FAMILIES: Final = "families"
FAMILY_COLUMNS: Final = ("name", "kind")
FAMILY_FIGURES: Final = "family_figures"
FAMILY_FIGURE_COLUMNS: Final = ("family", "column", "value")
_PRICE_COLUMNS: Final = ("number", "maker", "currency", "price_minor")
_ORIGIN_COLUMNS: Final = ("number", "maker", "column", "origin", "source")
_BESIDE: Final = {
    PRICES: _PRICE_COLUMNS,
    ORIGINS: _ORIGIN_COLUMNS,
    REFERENCES: REFERENCE_COLUMNS,
    LISTS: LIST_COLUMNS,
    LIST_PRICES: LIST_PRICE_COLUMNS,
    FAMILIES: FAMILY_COLUMNS,
    FAMILY_FIGURES: FAMILY_FIGURE_COLUMNS,
    FILES: FILE_COLUMNS,
}
TABLES: Final[dict[str, PartKind | None]] = {**{kind.value: kind for kind in PartKind}, UNKNOWN_KIND: None}
MEMBERS: Final = frozenset({DESCRIPTOR, *(f"{name}.csv" for name in (*TABLES, *_BESIDE))})
_FORMULA: Final = re.compile(r"'*[=+\-@\t\r＝＋－＠]")
TEXTS: Final = frozenset(IDENTITY_COLUMNS) - {"lead_days", "pack", "discontinued_from"}


def columns_of(table: str) -> tuple[str, ...]:
    """Return the columns of a table of the file, in their order."""
    if table in _BESIDE:
        return _BESIDE[table]
    kind = TABLES[table]
    return (*IDENTITY_COLUMNS, *(() if kind is None else COLUMNS[kind]))


def shielded(text: str) -> str:
    """Return a text as its cell says it: behind an apostrophe where a spreadsheet would take it for a formula."""
    return f"'{text}" if _FORMULA.match(text) else text


def bare(text: str) -> str:
    """Return the text that a cell says; what ``shielded`` put before it is taken away."""
    return text[1:] if text.startswith("'") and _FORMULA.match(text) else text


def member_of(file: PartFile) -> str:
    """Return under which name of the archive a picture or document lies."""
    return f"{_FILE_FOLDER}{file.digest}{file.media.ending}"


def descriptor_of(tables: Iterable[str], fingerprint: str) -> dict[str, Any]:
    """Return the ``datapackage.json`` of tables, with the fingerprint of what they hold."""
    return {
        "$schema": PACKAGE_SCHEMA,
        "name": FORMAT,
        "format": FORMAT,
        "formatVersion": VERSION,
        "fingerprint": fingerprint,
        "description": (
            "A catalog of hanging hardware for motor-fuel dispensers: one table for each kind of part, prices in minor "
            "units (cents) of their currency, where figures came from unless somebody stated them, old numbers with "
            "the parts that they lead to, and families whose figures their parts have unless they have their own. A "
            "text that a spreadsheet would take for a formula stands behind an apostrophe, which is not part of it."
        ),
        "resources": [_resource(name) for name in tables],
    }


def _resource(name: str) -> dict[str, Any]:
    return csv_resource(name, table_schema(TABLES[name]) if name in TABLES else _schema_beside(name))


def _schema_beside(name: str) -> dict[str, Any]:
    columns = columns_of(name)
    fields: list[dict[str, Any]] = [
        {"name": column, "type": "integer" if column in ("price_minor", "size") else "string"} for column in columns
    ]
    key = _KEYS.get(name) or ["maker", "number", columns[2]]
    if name == FILES:
        for column, choices in (("matter", FileMatter), ("media", MediaType)):
            fields[columns.index(column)]["constraints"] = {"enum": [one.value for one in choices]}
    if name == REFERENCES:
        fields[columns.index("relation")]["constraints"] = {"enum": [one.value for one in NumberRelation]}
    return {"$schema": TABLE_SCHEMA, "fields": fields, "primaryKey": key, "missingValues": [""]}


_KEYS: Final = {
    REFERENCES: ["maker", "number"],
    LISTS: ["id"],
    LIST_PRICES: ["list", "number", "from_quantity"],
    FAMILIES: ["name"],
    FAMILY_FIGURES: ["family", "column"],
}
