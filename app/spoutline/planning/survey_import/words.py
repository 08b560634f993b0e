"""What people write into a cell of a position, read as the answer to its field."""

from __future__ import annotations

import difflib
import re
from enum import StrEnum

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.liquid import LiquidFamily
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.fields import ImportField
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


def blend_named(text: str) -> float | None:
    """Return the blend that a liquid written as E85 or B20 names; None for any other text."""
    found = _BLEND_NAME.match(text)
    return float(found[2]) if found else None


def liquid_word(text: str) -> str:
    """Return the word of the survey for what people write for a liquid; any other text without case and blanks."""
    blend = _BLEND_NAME.match(text)
    word = _FAMILIES[blend[1].upper()] if blend else " ".join(text.casefold().split())
    return _LIQUID_WORDS.get(word, word)


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


def _yes_no(text: str, field: ImportField) -> bool:
    word = text.casefold()
    if word in _YES or word in _NO:
        return word in _YES
    raise InputFault((InputProblem("", field.key, repr(text), "write yes or no"),))


def _choice(text: str, choices: type[StrEnum], field: ImportField) -> str:
    """Return the value that a word stands for, whatever its case, with blanks or hyphens for underlines."""
    known = {member.value.casefold(): member.value for member in choices}
    word = liquid_word(text) if field.key == "liquid.family" else " ".join(text.casefold().split())
    word = word.replace(" ", "_").replace("-", "_")
    if word in known:
        return known[word]
    near = difflib.get_close_matches(word, known, n=1)
    hint = Worded("did you mean {known}? ", known=known[near[0]]) if near else ""
    wanted = Worded("{hint}use one of: {values}", hint=hint, values=", ".join(known.values()))
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
