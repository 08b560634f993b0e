"""Positions from a mapped sheet; what is wrong is told cell by cell, and nothing is taken unless all is right."""

from __future__ import annotations

import difflib
import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from enum import StrEnum

from pydantic import ValidationError

from spoutline.book.survey_faults import problems_of
from spoutline.model.answered import answers_of
from spoutline.model.faults import InputFault, InputNote, InputProblem
from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import Position
from spoutline.planning.survey_import.fields import ImportField
from spoutline.planning.survey_import.mapping import ColumnMapping
from spoutline.planning.survey_import.ports import outlet_notes, settle_outlet
from spoutline.planning.survey_import.sheet import Sheet, SheetRow
from spoutline.units.accepted import UnitSystem
from spoutline.units.quantities import parse

_YES = frozenset({"yes", "y", "true", "x", "1"})
_NO = frozenset({"no", "n", "false", "0"})
# What people write for a liquid beside the words of the survey; trade abbreviations, common practice, no source.
_LIQUID_WORDS = {
    "petrol": "gasoline",
    "gas": "gasoline",
    "unleaded": "gasoline",
    "regular": "gasoline",
    "premium": "gasoline",
    "midgrade": "gasoline",
    "dsl": "diesel",
    "gasoil": "diesel",
    "urea": "def",
    "aus 32": "def",
    "heating oil": "fuel_oil",
}
# E for ethanol in gasoline, B for biodiesel in diesel: the names that fuel labels carry (16 CFR 306.12)
_BLEND_NAME = re.compile(r"^\s*([EB])[\s-]?(\d{1,3})\s*$", re.IGNORECASE)
_FAMILIES = {"E": LiquidFamily.GASOLINE.value, "B": LiquidFamily.DIESEL.value}


def positions_from(
    sheet: Sheet,
    mapping: tuple[ColumnMapping, ...],
    system: UnitSystem,
    template: Position | None = None,
    *,
    decimal_comma: bool = False,
    tell: Callable[[InputNote], None] | None = None,
) -> tuple[Position, ...]:
    """Return one position for each row of the sheet.

    Parameters
    ----------
    sheet, mapping
        The table and which column answers what; an empty cell leaves the answer of ``template``, or the usual one.
    system
        Whose units a bare number takes where neither the cell nor the title names one.
    template
        A position whose answers hold where a row says nothing.
    decimal_comma
        Whether a comma in a figure is the decimal sign; nobody can see that in the table, so a person says it.
    tell
        Hears, by cell, how a size was understood and which path does not go with its thread.

    Raises
    ------
    InputFault
        With every faulty cell: its address, what stands there, what would be right. Labels must differ.
    """
    reader = _Reader(sheet, mapping, system, template, decimal_comma)
    reader.check_columns()
    found = [position for row in sheet.rows if (position := reader.position(row)) is not None]
    if reader.problems:
        raise InputFault(tuple(reader.problems))
    if tell is not None:
        for note in reader.notes:
            tell(note)
    return tuple(found)


class _Reader:
    """Walks the sheet to its end and gathers every problem."""

    def __init__(
        self,
        sheet: Sheet,
        mapping: tuple[ColumnMapping, ...],
        system: UnitSystem,
        template: Position | None,
        decimal_comma: bool,
    ) -> None:
        self.decimal_comma = decimal_comma
        self.sheet = sheet
        self.mapping = mapping
        self.system = system
        self.template = template
        self.problems: list[InputProblem] = []
        self.notes: list[InputNote] = []
        self._columns = {one.field.key: one.column for one in mapping if one.field is not None}
        self._labels: dict[str, str] = {}

    def check_columns(self) -> None:
        """Refuse a mapping that would leave a label or a liquid to a guess; the blend is asked for row by row."""
        needed = [("label", "the name of each position")]
        if self.template is None:
            needed.append(("liquid.family", "what each position sells"))
            if "liquid.family" in self._columns and not self._names_a_blend():
                needed.append(("liquid.blend_percent", "how much blend is in it"))
        missing = [(key, words) for key, words in needed if key not in self._columns]
        if missing:
            raise InputFault(
                tuple(
                    InputProblem(self.sheet.place, f"mapping, {key}", "nothing", f"map one column to {key}, {words}")
                    for key, words in missing
                )
            )

    def position(self, row: SheetRow) -> Position | None:
        """Return the position of a row; None where a cell is faulty."""
        before = len(self.problems)
        document: dict[str, object] = answers_of(self.template, mode="json") if self.template is not None else {}
        columns: dict[str, int] = {}
        for one in self.mapping:
            text = row.cells[one.column] if one.column < len(row.cells) else ""
            if one.field is None or (not text and one.field.key != "label"):
                continue
            columns[one.field.key] = one.column
            self._take(document, row, one, one.field, text)
        self._take_blend(document, row, columns)
        if len(self.problems) > before or not self._says_the_blend(row, document, columns):
            return None
        written = {key: row.cells[at] for key, at in columns.items()}
        settle_outlet(document, written)
        try:
            position = Position.model_validate(document)
        except ValidationError as fault:
            self.problems.extend(_cell_problems(self.sheet, row, fault, columns))
            return None
        self._check_label(position, self.sheet.address(row, self._columns["label"]))
        self.notes.extend(
            InputNote(self.sheet.address(row, columns[one.field]), one.field, one.value, one.told)
            for one in outlet_notes(position.outlet, written)
        )
        return position

    def _take(
        self, document: dict[str, object], row: SheetRow, one: ColumnMapping, field: ImportField, text: str
    ) -> None:
        address = self.sheet.address(row, one.column)
        untrusted = row.fault_of(one.column)
        if untrusted and field.path != ("notes",):
            self.problems.append(InputProblem(address, field.key, repr(text), untrusted))
            return
        try:
            if self.decimal_comma and field.dimension is not None:
                text = _with_point(text, field)
            put_value(document, field.path, value_of(text, field, one.unit, self.system))
        except InputFault as fault:
            self.problems.extend(InputProblem(address, field.key, each.value, each.wanted) for each in fault.problems)

    def _names_a_blend(self) -> bool:
        column = self._columns["liquid.family"]
        return any(column < len(row.cells) and blend_named(row.cells[column]) is not None for row in self.sheet.rows)

    def _take_blend(self, document: dict[str, object], row: SheetRow, columns: dict[str, int]) -> None:
        """Take the blend from a liquid written as E85 or B20; a column of blends must not say another."""
        at = columns.get("liquid.family")
        named = blend_named(row.cells[at]) if at is not None else None
        liquid = document.get("liquid")
        if named is None or at is None or not isinstance(liquid, dict):
            return
        if "liquid.blend_percent" not in columns:
            liquid["blend_percent"] = named
            columns["liquid.blend_percent"] = at
        elif liquid.get("blend_percent") not in (None, named):
            address = self.sheet.address(row, columns["liquid.blend_percent"])
            wanted = f"{row.cells[at]} says {named:g} %; let both say the same"
            self.problems.append(
                InputProblem(address, "liquid.blend_percent", f"{liquid['blend_percent']:g} %", wanted)
            )

    def _says_the_blend(self, row: SheetRow, document: dict[str, object], columns: Mapping[str, int]) -> bool:
        """Ask for the blend of every liquid that has one: an empty cell must not read as none."""
        liquid = document.get("liquid")
        family = liquid.get("family") if isinstance(liquid, dict) else None
        if self.template is not None or family == LiquidFamily.DEF or "liquid.blend_percent" in columns:
            return True
        column = self._columns.get("liquid.blend_percent", self._columns["liquid.family"])
        address = self.sheet.address(row, column)
        wanted = "write the percentage of ethanol or biodiesel, 0 for none"
        self.problems.append(InputProblem(address, "liquid.blend_percent", "nothing", wanted))
        return False

    def _check_label(self, position: Position, address: str) -> None:
        known = self._labels.setdefault(position.label, address)
        if known != address:
            wanted = f"every position needs a label of its own; {known} has the same"
            self.problems.append(InputProblem(address, "label", repr(position.label), wanted))


def blend_named(text: str) -> float | None:
    """Return the blend that a liquid written as E85 or B20 names; None for any other text."""
    found = _BLEND_NAME.match(text)
    return float(found[2]) if found else None


def value_of(text: str, field: ImportField, unit: str, system: UnitSystem) -> object:
    """Return the value of a cell for its field; raise ``InputFault`` with what would be right."""
    if field.yes_no:
        return _yes_no(text, field)
    if field.choices is not None:
        return _choice(text, field.choices, field)
    if field.dimension is not None:
        bare = text.replace("−", "-").strip()
        written = f"{bare} {unit}" if unit and not any(sign.isalpha() or sign in "%\"'" for sign in bare) else bare
        value = parse(written, field.dimension, system, field=field.key) / field.factor
        return round(value, 9)  # a conversion leaves binary dust behind the ninth decimal
    return text


def _with_point(text: str, field: ImportField) -> str:
    """Return a figure written with a decimal comma in the program's own way."""
    if "." in text and "," in text:
        raise InputFault((InputProblem("", field.key, repr(text), "write one decimal comma and no thousands points"),))
    return text.replace(",", ".")


def _yes_no(text: str, field: ImportField) -> bool:
    word = text.casefold()
    if word in _YES or word in _NO:
        return word in _YES
    raise InputFault((InputProblem("", field.key, repr(text), "write yes or no"),))


def _choice(text: str, choices: type[StrEnum], field: ImportField) -> str:
    """Return the value that a word stands for, whatever its case, with blanks or hyphens for underlines."""
    known = {member.value.casefold(): member.value for member in choices}
    word = " ".join(text.casefold().split())
    if field.key == "liquid.family":
        blend = _BLEND_NAME.match(text)
        word = _FAMILIES[blend[1].upper()] if blend else word
        word = _LIQUID_WORDS.get(word, word)
    word = word.replace(" ", "_").replace("-", "_")
    if word in known:
        return known[word]
    near = difflib.get_close_matches(word, known, n=1)
    hint = f"did you mean {known[near[0]]}? " if near else ""
    wanted = f"{hint}use one of: {', '.join(known.values())}"
    raise InputFault((InputProblem("", field.key, repr(text), wanted),))


def put_value(document: dict[str, object], path: tuple[str, ...], value: object) -> None:
    """Write a value into a survey's document at the end of ``path``."""
    *outer, last = path
    place = document
    for name in outer:
        inner = place.setdefault(name, {})
        if not isinstance(inner, dict):  # a survey's document has no other thing on the way to a field
            raise TypeError(f"{name} is no table")
        place = inner
    place[last] = value


def _cell_problems(
    sheet: Sheet, row: SheetRow, fault: ValidationError, columns: Mapping[str, int]
) -> list[InputProblem]:
    found = []
    for one in problems_of(fault, Position, "", whole="row"):
        # a rule over several fields is told at the first of them that has a column
        column = columns.get(one.field, next((at for name, at in columns.items() if name.startswith(one.field)), 0))
        found.append(replace(one, place=sheet.address(row, column)))
    return found
