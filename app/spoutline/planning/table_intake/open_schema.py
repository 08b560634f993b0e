"""What a table of parts or prices may hold, as an open Data Package: other tools can check and make such tables by it.

Written from the declarations of figures. Data Package and Table Schema, https://datapackage.org, version 2. A table
that keeps it is taken in without a question: each column is named by its field, its numbers are in the unit it names.
"""

from __future__ import annotations

from typing import Any, Final

from spoutline.catalogue.table_schema import IDENTITY, TABLE_SCHEMA, csv_resource, numeric
from spoutline.planning.table_intake.intake_fields import FIELDS, CellKind, IntakeField

PACKAGE: Final = "https://datapackage.org/profiles/2.0/datapackage.json"
CURRENCIES: Final = ("USD", "EUR")
_TYPES: Final[dict[CellKind, str]] = {
    CellKind.TEXT: "string",
    CellKind.NUMBER: "number",
    CellKind.WHOLE: "integer",
    CellKind.MONEY: "number",
    CellKind.WORD: "string",
    CellKind.WORDS: "string",
    CellKind.YES_NO: "boolean",
    CellKind.PORT: "string",
    CellKind.DATE: "date",
}
_IN_PRICES: Final = ("number", "maker", "name", "item_number", "gtin", "supplier", "lead_days", "pack")

_Described = dict[str, Any]


def table_package() -> _Described:
    """Return the descriptor (``datapackage.json``) of a table of parts and of one of prices."""
    return {
        "$schema": PACKAGE,
        "name": "spoutline-tables",
        "description": (
            "Tables that `spoutline catalogue import` takes without a question. A part that lacks figures is not yet "
            "described; a price file needs number and price alone."
        ),
        "resources": [
            _resource("parts", tuple(field for field in FIELDS if field.cell is not CellKind.MONEY)),
            _resource("prices", tuple(field for field in FIELDS if field.key in _IN_PRICES)),
        ],
    }


def _resource(name: str, fields: tuple[IntakeField, ...]) -> _Described:
    schema = {
        "$schema": TABLE_SCHEMA,
        "fields": [*map(_field, fields), *map(_price, CURRENCIES)],
        "fieldsMatch": ["partial"],
        "primaryKey": ["maker", "number"],
        "missingValues": [""],
    }
    return csv_resource(name, schema)


def _price(currency: str) -> _Described:
    return {
        "name": f"price {currency}",
        "title": f"List price, {currency}",
        "type": "number",
        "description": f"list price of one piece in {currency}, at most two decimals; empty where there is none",
        "constraints": {"minimum": 0, "maximum": 10_000_000},
    }


def _field(field: IntakeField) -> _Described:
    own = next((dict(one) for one in IDENTITY if one["name"] == field.key), {})
    made: _Described = {"name": field.key, "title": field.title, "type": _TYPES[field.cell], **own}
    if field.is_figure:
        made["description"] = field.figures[0].column_meaning
        if field.cell in (CellKind.NUMBER, CellKind.WHOLE):
            made |= numeric(field.bounds, field.unit)
    made.setdefault("description", field.title)
    if field.cell is CellKind.YES_NO:
        made |= {"trueValues": ["yes"], "falseValues": ["no"]}
    words = [one.value for one in field.choices]
    if words and field.cell is CellKind.WORD:
        made["constraints"] = {"enum": words}
    elif words:
        one_of = "|".join(words)
        made["constraints"] = {"pattern": f"^(?:{one_of})(?: (?:{one_of}))*$"}
    return made
