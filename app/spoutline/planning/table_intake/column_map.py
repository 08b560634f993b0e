"""Which column of a supplier's table holds what: suggested, corrected, remembered as TOML, recognised again."""

from __future__ import annotations

import difflib
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any, Final, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_text
from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import PartKind
from spoutline.model.plain_values import PlainValues
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.fields import normal
from spoutline.planning.table_intake.headings import ALIKE, Column, Headings, all_units
from spoutline.planning.table_intake.intake_fields import (
    CellKind,
    IntakeField,
    TableSubject,
    fields_of,
    known_names,
    names_its_unit,
)
from spoutline.planning.table_intake.raw_table import TextEncoding, column_letters
from spoutline.planning.table_intake.repairs import Repair
from spoutline.planning.table_intake.text_patterns import PATTERN_IDS
from spoutline.units.accepted import ACCEPTED, UnitSystem, shown_unit

_MOST_COLUMNS: Final = 200
CURRENCIES: Final = ("USD", "EUR", "GBP", "CAD", "CHF", "AUD", "MXN")  # those that a title may name


@frozen
class MappedColumn:
    """A column and the field that it fills; None leaves it out. Unit and currency hold for cells that name none."""

    column: Column
    field: IntakeField | None
    unit: str = ""
    currency: str = ""

    @property
    def place(self) -> int:
        """The column counted from 0."""
        return self.column.place

    @property
    def slot(self) -> str:
        """Under which name the text of its cells goes: the field's key, a price's with its currency."""
        if self.field is None:
            return ""
        is_money = self.field.cell is CellKind.MONEY and self.currency
        return f"{self.field.key}_{self.currency.lower()}" if is_money else self.field.key


class MapColumn(BaseModel):
    """A column as a map remembers it: by its title."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    title: str = Field(max_length=300, description="Title of the column.")
    head: str = Field("", max_length=300, description="What stands over several titles.")
    field: str = Field("", max_length=60, description="What it holds; empty leaves it out.")
    unit: str = Field("", max_length=20, description="Unit of numbers without one.")
    currency: str = Field("", pattern="^([A-Z]{3})?$", description="Currency of prices, ISO 4217.")


class TableMap(PlainValues):
    """How the tables of a supplier are read: what a person said once, remembered."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    format: Literal["spoutline-table-map"] = "spoutline-table-map"
    version: Literal[1] = 1
    subject: TableSubject = Field(TableSubject.PARTS, description="What the rows of the table are.")
    supplier: str = Field("", max_length=120, description="Who sends such tables; stands in every part.")
    maker: str = Field("", max_length=120, description="Maker of rows that name none.")
    kind: PartKind | None = Field(None, description="Kind of rows that name none.")
    currency: str = Field("", pattern="^([A-Z]{3})?$", description="Currency of prices that name none, ISO 4217.")
    sheet: str = Field("", max_length=100, description="Sheet of a workbook.")
    encoding: TextEncoding = Field(TextEncoding.AUTOMATIC, description="Of text files.")
    units: UnitSystem | None = Field(None, description="Whose units bare numbers have where no title names one.")
    decimal_comma: bool = Field(False, description="Whether a comma in a number is the decimal sign.")
    fingerprint: str = Field("", max_length=64, description="Tells tables with just these titles.")
    pattern: tuple[str, ...] = Field(
        (), max_length=60, description="Patterns that the keeper confirmed for the texts of this supplier."
    )
    column: tuple[MapColumn, ...] = Field((), max_length=_MOST_COLUMNS)
    repair: tuple[Repair, ...] = Field((), max_length=5_000)

    @property
    def titles(self) -> dict[str, str]:
        """The titles that it knows, with their fields."""
        return {one.title: one.field for one in self.column}

    def recognises(self, headings: Headings) -> bool:
        """Say whether the titles are those of the table that this map was made for."""
        return bool(self.fingerprint) and headings.has_titles and headings.fingerprint == self.fingerprint


def suggested(headings: Headings, remembered: TableMap | None = None) -> tuple[MappedColumn, ...]:
    """Return what the columns hold: as remembered, else as their names say; each field once, but prices by currency."""
    known = {(normal(one.head), normal(one.title)): one for one in remembered.column} if remembered else {}
    subject = remembered.subject if remembered else TableSubject.PARTS
    by_title = {title: one for (_head, title), one in known.items()}
    made: dict[int, MappedColumn] = {}
    taken: set[tuple[str, str]] = set()
    for column in headings.columns:
        kept = known.get((normal(column.head), normal(column.title))) or by_title.get(normal(column.title))
        if kept is not None and (column.title or column.head):
            field = fields_of(subject).by_key.get(kept.field)
            one = MappedColumn(column, field, kept.unit or column.unit, kept.currency or column.currency)
            made[column.place] = one
            taken.add(_claim(one))
    for near in (False, True):
        for column in headings.columns:
            if column.place in made:
                continue
            found = _named(column, taken, subject, near=near)
            if found is not None:
                made[column.place] = found
                taken.add(_claim(found))
    for column in headings.columns:
        if column.means and column.place not in made:
            one = MappedColumn(column, fields_of(subject).by_key[column.means], currency=column.currency)
            if _claim(one) not in taken:
                made[column.place] = one
    return tuple(made.get(column.place, MappedColumn(column, None)) for column in headings.columns)


def _claim(one: MappedColumn) -> tuple[str, str]:
    if one.field is None:
        return "", ""
    return one.field.key, one.currency if one.field.cell is CellKind.MONEY else ""


def _named(column: Column, taken: set[tuple[str, str]], subject: TableSubject, *, near: bool) -> MappedColumn | None:
    names = known_names(subject)
    for name in column.names:
        alike = difflib.get_close_matches(name, names, n=1, cutoff=ALIKE) if near and len(name) > 3 else [name]
        field = names.get(alike[0]) if alike else None
        if field is not None:
            one = MappedColumn(column, field, _unit_for(column, field), column.currency)
            if _claim(one) not in taken:
                return one
    return None


def _unit_for(column: Column, field: IntakeField) -> str:
    if not field.needs_unit or field.dimension is None:
        return ""
    if column.unit in ACCEPTED[field.dimension]:
        return column.unit
    return own_unit(field) if names_its_unit(column.title, field) else ""


def own_unit(field: IntakeField) -> str:
    """Return the unit in which a field is kept, as people write it."""
    if field.unit.value or field.dimension is None:
        return field.unit.value
    return shown_unit(field.dimension, UnitSystem.SI)


def corrected(
    mapping: tuple[MappedColumn, ...],
    choices: Mapping[str, str],
    place: str,
    subject: TableSubject = TableSubject.PARTS,
) -> tuple[MappedColumn, ...]:
    """Return ``mapping`` with a person's corrections: a column's letters or title to ``field``, or to nothing.

    A unit or a currency may stand behind the field (``bore_mm in mm``, ``price in EUR``). Raise ``InputFault`` for
    columns, fields and units that are not there, with the nearest known name.
    """
    problems: list[InputProblem] = []
    chosen: dict[int, MappedColumn] = {}
    by_key = fields_of(subject).by_key
    for name, said in choices.items():
        columns = [one for one in mapping if name in (column_letters(one.place), one.column.title)]
        key, _, measured = said.partition(" in ")
        key, measured = key.strip(), measured.strip()
        if len(columns) != 1:
            known = ", ".join(f"{column_letters(one.place)} ({one.column.title})" for one in mapping)
            problems.append(
                InputProblem(place, "mapping, column", repr(name), Worded("name one column of: {known}", known=known))
            )
        elif key and key not in by_key:
            near = difflib.get_close_matches(key, by_key, n=1)
            hint = Worded("did you mean {near}? ", near=near[0]) if near else ""
            problems.append(
                InputProblem(
                    place,
                    "mapping, field",
                    repr(key),
                    Worded("{hint}use one of: {by_key}", hint=hint, by_key=", ".join(by_key)),
                )
            )
        else:
            field = by_key.get(key)
            is_money = field is not None and field.cell is CellKind.MONEY
            if measured and not is_money and measured not in all_units():
                problems.append(InputProblem(place, "mapping, unit", repr(measured), "write a unit, such as mm or psi"))
            unit, currency = ("", measured) if is_money else (measured, "")
            old = columns[0]
            chosen[old.place] = MappedColumn(old.column, field, unit or old.unit, currency or old.currency)
    if problems:
        raise InputFault(tuple(problems))
    given = {_claim(one) for one in chosen.values()} - {("", "")}
    return tuple(
        chosen.get(one.place) or (replace(one, field=None) if _claim(one) in given else one) for one in mapping
    )


def with_column(
    mapping: tuple[MappedColumn, ...],
    place: int,
    key: str,
    measure: str = "",
    subject: TableSubject = TableSubject.PARTS,
) -> tuple[MappedColumn, ...]:
    """Return ``mapping`` where the column at ``place`` holds ``key``, or nothing where that is empty.

    ``measure`` is the unit of its numbers, of prices their currency; where empty the one that its titles name. Another
    column that held the same is left out.
    """
    field = fields_of(subject).by_key.get(key)
    old = next(one for one in mapping if one.place == place)
    if field is None:
        made = replace(old, field=None)
    elif field.cell is CellKind.MONEY:
        made = MappedColumn(old.column, field, "", measure or old.column.currency)
    else:
        unit = measure or _unit_for(old.column, field)
        made = MappedColumn(old.column, field, unit if unit in measures(field) else "", "")
    claim = _claim(made)
    return tuple(
        made if one.place == place else replace(one, field=None) if claim[0] and _claim(one) == claim else one
        for one in mapping
    )


def measures(field: IntakeField) -> tuple[str, ...]:
    """Return the units, of prices the currencies, that a column may be in; nothing for a field without."""
    if field.cell is CellKind.MONEY:
        return CURRENCIES
    if not field.needs_unit or field.dimension is None:
        return ()
    return tuple(unit for unit in ACCEPTED[field.dimension] if unit)


def unit_in_use(mapped: MappedColumn | None, field: IntakeField, table_map: TableMap) -> str:
    """Return the unit of numbers of a column that name none: the column's, else that of the table; empty for none."""
    unit = "" if mapped is None else mapped.unit
    if unit or table_map.units is None or field.dimension is None or not field.needs_unit:
        return unit
    return shown_unit(field.dimension, table_map.units)


def said_otherwise(table_map: TableMap, said: Mapping[str, object], place: str) -> TableMap:
    """Return a map with some of its values said otherwise, checked as a whole; raise ``InputFault``."""
    given = {name: getattr(table_map, name) for name in TableMap.model_fields} | dict(said)
    try:
        return TableMap.model_validate(given)
    except ValidationError as fault:
        raise InputFault(tuple(_problem(one, place) for one in fault.errors(include_url=False))) from fault


def remembering(base: TableMap, headings: Headings, mapping: tuple[MappedColumn, ...]) -> TableMap:
    """Return the map that remembers this mapping for tables with these headings."""
    columns = tuple(
        MapColumn(
            title=one.column.title,
            head=one.column.head,
            field=one.field.key if one.field else "",
            unit=one.unit,
            currency=one.currency,
        )
        for one in mapping
        if one.column.title or one.column.head
    )
    return base.model_copy(update={"fingerprint": headings.fingerprint, "column": columns})


def read_map(path: Path) -> TableMap:
    """Return the map in a TOML file; raise ``InputFault`` with every fault."""
    needed = "a readable map file is needed"
    return map_from_toml(bounded_text(path, BOUNDS.toml_bytes, "--map", needed), str(path))


def map_from_toml(text: str, place: str) -> TableMap:
    """Return the map in a TOML text; raise ``InputFault`` with every fault."""
    table = toml_table(text, place, "map")
    try:
        found = TableMap.model_validate(table)
    except ValidationError as fault:
        raise InputFault(tuple(_problem(one, place) for one in fault.errors(include_url=False)[:50])) from fault
    known = (
        (fields_of(found.subject).by_key, "column.field", [one.field for one in found.column]),
        (PATTERN_IDS, "pattern", found.pattern),
    )
    wrong = tuple(
        InputProblem(place, field, repr(name), Worded("use one of: {names}", names=", ".join(names)))
        for names, field, said in known
        for name in said
        if name and name not in names
    )
    if wrong:
        raise InputFault(wrong)
    return found


def _problem(error: Any, place: str) -> InputProblem:  # noqa: ANN401 - details of a validation error
    field = ".".join(str(step) for step in error["loc"]) or "map"
    return InputProblem(place, field, repr(error["input"])[:60], error["msg"].removeprefix("Value error, "))


def map_to_toml(table_map: TableMap) -> str:
    """Return a map as TOML text that reads back the same."""
    document = table_map.model_dump(mode="json", exclude_defaults=True)
    document = {"format": table_map.format, "version": table_map.version, **document}
    columns = document.pop("column", ())
    document.pop("repair", None)
    repairs = [{"do": one.do, **one.model_dump(exclude_defaults=True)} for one in table_map.repair]
    lines = [f"{name} = {_value(value)}" for name, value in document.items() if value is not None]
    for name, entries in (("column", columns), ("repair", repairs)):
        for entry in entries:
            lines += ["", f"[[{name}]]", *(f"{key} = {_value(value)}" for key, value in entry.items())]
    return "\n".join(lines) + "\n"


def _value(value: object) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, int | float):
        return str(value)
    if isinstance(value, list | tuple):
        return f"[{', '.join(_value(one) for one in value)}]"
    escaped = "".join(
        {"\\": "\\\\", '"': '\\"'}.get(sign, sign if sign.isprintable() else f"\\U{ord(sign):08X}")
        for sign in str(value)
    )
    return f'"{escaped}"'
