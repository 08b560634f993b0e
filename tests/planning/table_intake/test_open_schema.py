"""The open schema of tables: it keeps the standard, and what keeps it is taken in without a question and comes back."""

from __future__ import annotations

import csv
from pathlib import Path

import jsonschema
import pytest

from spoutline.bootstrap import Workbench
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.part import PartKind
from spoutline.planning.table_intake.column_map import TableMap
from spoutline.planning.table_intake.intake import Intake
from spoutline.planning.table_intake.intake_fields import BY_KEY, FIELDS, CellKind
from spoutline.planning.table_intake.into_draft import open_supplier_table
from spoutline.planning.table_intake.open_schema import CURRENCIES, table_package
from spoutline.planning.table_intake.part_entries import merged

# What the standard at https://datapackage.org (data-package and table-schema, version 2) asks of the properties used
# here: names, types and constraints as it lists them (from memory of its text; no profile is fetched).
_TYPES = [
    "string",
    "number",
    "integer",
    "boolean",
    "object",
    "array",
    "list",
    "datetime",
    "date",
    "time",
    "year",
    "any",
]
STANDARD = {
    "type": "object",
    "required": ["resources"],
    "properties": {
        "name": {"type": "string", "pattern": "^[a-z0-9._-]+$"},
        "resources": {
            "type": "array",
            "minItems": 1,
            "items": {
                "type": "object",
                "required": ["name", "path"],
                "properties": {
                    "path": {"type": "string", "pattern": "^(?!/)(?!.*\\.\\.)"},
                    "schema": {
                        "type": "object",
                        "required": ["fields"],
                        "properties": {
                            "fields": {
                                "type": "array",
                                "minItems": 1,
                                "items": {
                                    "type": "object",
                                    "required": ["name"],
                                    "properties": {
                                        "name": {"type": "string"},
                                        "type": {"enum": _TYPES},
                                        "constraints": {
                                            "type": "object",
                                            "propertyNames": {
                                                "enum": [
                                                    *("required", "unique", "minLength", "maxLength", "minimum"),
                                                    *("maximum", "exclusiveMinimum", "exclusiveMaximum", "pattern"),
                                                    *("enum", "jsonSchema"),
                                                ]
                                            },
                                        },
                                        "trueValues": {"type": "array", "items": {"type": "string"}},
                                    },
                                },
                            },
                            "fieldsMatch": {
                                "type": "array",
                                "items": {"enum": ["exact", "equal", "subset", "superset", "partial"]},
                            },
                            "primaryKey": {"type": "array", "items": {"type": "string"}},
                            "missingValues": {"type": "array", "items": {"type": "string"}},
                        },
                    },
                },
            },
        },
    },
}


def columns_of(name: str) -> dict[str, dict[str, object]]:
    (schema,) = (one["schema"] for one in table_package()["resources"] if one["name"] == name)
    return {field["name"]: field for field in schema["fields"]}


def test_the_descriptor_keeps_the_standard() -> None:
    package = table_package()
    jsonschema.validate(package, STANDARD)
    for resource in package["resources"]:
        names = [field["name"] for field in resource["schema"]["fields"]]
        assert len(set(names)) == len(names)
        assert set(resource["schema"]["primaryKey"]) <= set(names)


def test_every_field_stands_in_the_table_of_parts_with_its_declared_bounds() -> None:
    columns = columns_of("parts")
    assert set(columns) == {
        *(field.key for field in FIELDS if field.cell is not CellKind.MONEY),
        *(f"price {currency}" for currency in CURRENCIES),
    }
    assert columns["bore_mm"]["constraints"] == {"exclusiveMinimum": 5, "maximum": 80}  # as model.part declares it
    assert columns["bore_mm"]["unit"] == "mm"
    assert columns["kind"]["constraints"] == {"enum": [kind.value for kind in PartKind]}


def cell(entry: CatalogueEntry, key: str) -> str:
    value = entry.figure(key) if BY_KEY[key].is_figure else getattr(entry, key)
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return " ".join(value) if isinstance(value, tuple) else str(value)


@pytest.fixture(scope="module")
def entries(workbench: Workbench) -> tuple[CatalogueEntry, ...]:
    kept = workbench.catalogues().shelf().entries(EditionRef("Demonstration"))
    return tuple(entry for number, entry in enumerate(kept) if number % 5 == 0 or entry.kind is PartKind.SEALANT)


def test_parts_written_by_the_schema_come_back_the_same_without_a_question(
    entries: tuple[CatalogueEntry, ...], tmp_path: Path
) -> None:
    assert {entry.kind for entry in entries} == set(PartKind)
    path, keys = tmp_path / "parts.csv", [key for key in columns_of("parts") if key in BY_KEY]
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow([*keys, *(f"price {currency}" for currency in CURRENCIES)])
        for entry in entries:
            prices = {price.currency: f"{price.minor / 100:.2f}" for price in entry.prices}
            writer.writerow([*(cell(entry, key) for key in keys), *(prices.get(one, "") for one in CURRENCIES)])
    opened = open_supplier_table(path, (), {}, {})
    assert [one.column.title for one in opened.mapping if one.field is None] == []
    intake = Intake(opened.table, opened.headings, opened.mapping, TableMap())
    lines = list(intake.lines())
    assert [report.problem() for report in intake.report.reports] == []
    made = [merged(line, None, TableMap()) for line in lines]
    assert [one.faults for one in made if one.faults] == []
    assert tuple(one.entry for one in made) == entries
