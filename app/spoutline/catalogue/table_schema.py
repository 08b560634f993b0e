"""What a table of parts holds, as an open Table Schema, written from the declaration of figures.

Other tools can check and make such tables by it: Data Package and Table Schema, https://datapackage.org, version 2.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Any, Final

from spoutline.catalogue.descriptions import COLUMNS
from spoutline.model.figure import Bounds, TableUnit
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.part_figures import PartFigure
from spoutline.model.part_identity import ITEM_NUMBER_LENGTH, MAKER_LENGTH, NUMBER_LENGTH

TABLE_SCHEMA: Final = "https://datapackage.org/profiles/2.0/tableschema.json"
UNKNOWN_KIND: Final = "unknown_kind"  # the table of parts whose kind nobody said yet

_Field = dict[str, Any]


def csv_resource(name: str, schema: _Field) -> _Field:
    """Return how a Data Package describes one of its CSV files."""
    return {
        "name": name,
        "type": "table",
        "path": f"{name}.csv",
        "scheme": "file",
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "schema": schema,
    }


def numeric(declared: Bounds, unit: TableUnit) -> _Field:
    """Return what a Table Schema says of a number: its bounds, and the unit where it is not that of the core."""
    bounds = {"exclusiveMinimum": declared.above, "minimum": declared.least, "maximum": declared.most}
    field: _Field = {"constraints": {name: bound for name, bound in bounds.items() if bound is not None}}
    return field | ({"unit": unit.value} if unit.value else {})


# the columns of every table that are no figure, in the order in which they are written
IDENTITY: Final[tuple[_Field, ...]] = (
    {
        "name": "number",
        "type": "string",
        "description": "the maker's number as it is",
        "constraints": {"required": True, "maxLength": NUMBER_LENGTH},
    },
    {
        "name": "maker",
        "type": "string",
        "description": "name of its maker; a number is unique within its maker",
        "constraints": {"required": True, "maxLength": MAKER_LENGTH},
    },
    {"name": "name", "type": "string", "description": "what the part is, in trade words"},
    {
        "name": "status",
        "type": "string",
        "description": "where the part stands in its maker's range; empty: active",
        "constraints": {"enum": [one.value for one in PartStatus]},
    },
    {"name": "discontinued_from", "type": "date", "description": "day from which it is no longer made"},
    {"name": "superseded_by", "type": "string", "description": "number of the part that took its place"},
    {"name": "superseded_by_maker", "type": "string", "description": "maker of that part where it is another one"},
    {
        "name": "item_number",
        "type": "string",
        "description": "the firm's own item number",
        "constraints": {"maxLength": ITEM_NUMBER_LENGTH},
    },
    {
        "name": "gtin",
        "type": "string",
        "description": "GTIN of 8, 12, 13 or 14 digits, its check digit right",
        "constraints": {"pattern": "^([0-9]{8}|[0-9]{12,14})$"},
    },
    {"name": "supplier", "type": "string", "description": "who supplies it"},
    {"name": "family", "type": "string", "description": "family of parts that it belongs to"},
    {
        "name": "lead_days",
        "type": "integer",
        "description": "lead time, days",
        "constraints": {"minimum": 0, "maximum": 400},
    },
    {
        "name": "pack",
        "type": "integer",
        "description": "pieces in a pack; the price is for one piece",
        "constraints": {"minimum": 1, "maximum": 1000},
    },
    {"name": "remark", "type": "string", "description": "for whoever keeps the catalog"},
)
IDENTITY_COLUMNS: Final = tuple(str(field["name"]) for field in IDENTITY)


def table_schema(kind: PartKind | None) -> dict[str, Any]:
    """Return the Table Schema of the parts of a kind, or of those whose kind nobody said yet.

    Figures are asked for in none: a part that lacks some is not yet described.
    """
    figures = () if kind is None else tuple(COLUMNS[kind].items())
    return {
        "$schema": TABLE_SCHEMA,
        "fields": [*map(dict, IDENTITY), *(_field(column, figure) for column, figure in figures)],
        "primaryKey": ["maker", "number"],
        "missingValues": [""],
    }


def _field(column: str, figure: PartFigure) -> _Field:
    declared = figure.declared
    field: _Field = {"name": column, "type": "string", "description": figure.column_meaning}
    if figure.value_type is bool:
        return field | {"type": "boolean", "trueValues": ["yes"], "falseValues": ["no"]}
    if figure.is_number:
        field["type"] = "integer" if figure.value_type is int else "number"
        field |= numeric(declared.bounds, declared.unit)
    elif issubclass(figure.value_type, StrEnum):
        words = [one.value for one in figure.choices]
        if figure.many:
            field |= {"type": "list", "delimiter": " ", "itemType": "string", "words": words}
        else:
            field["constraints"] = {"enum": words}
    return field
