"""Read what a person types as a quantity: a number with or without a unit."""

from __future__ import annotations

import math
import re

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quantity import Dimension
from spoutline.model.worded import Worded
from spoutline.units.accepted import ACCEPTED, UnitSystem, shown_unit
from spoutline.units.unit_lines import to_core

_NUMBER = re.compile(
    r"""^\s*(?P<sign>[+-]?)\s*
        (?:(?P<whole>\d+)[\s-]+(?P<top>\d+)/(?P<bottom>\d+)   # 1-1/4
          |(?P<only_top>\d+)/(?P<only_bottom>\d+)             # 3/4
          |(?P<decimal>(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)  # 3.66
        )\s*(?P<unit>[^\d\s.,].*?)?\s*$""",
    re.VERBOSE,
)
_FEET_AND_INCHES = re.compile(
    r"""^\s*(?P<sign>[+-]?)\s*(?P<feet>\d+)\s*(?:ft\.?|feet|foot|')\s*[-,]?\s*
        (?P<inches>(?:\d+[\s-]+)?\d+/\d+|\d+\.?\d*|\.\d+)\s*(?:in\.?|inch|inches|"|'')\s*$""",
    re.VERBOSE | re.IGNORECASE,
)
_INCHES_TO_A_FOOT = 12.0
_COMMA_DECIMAL = re.compile(r"\d,\d")
# signs that keyboards, spreadsheets and word processors set for a minus, for feet and for inches
_PLAIN_SIGNS = str.maketrans(
    {
        "\N{MINUS SIGN}": "-",
        "\N{NON-BREAKING HYPHEN}": "-",
        "\N{EN DASH}": "-",
        "\N{NO-BREAK SPACE}": " ",
        "\N{NARROW NO-BREAK SPACE}": " ",
        "\N{FRACTION SLASH}": "/",
        "\N{PRIME}": "'",
        "\N{RIGHT SINGLE QUOTATION MARK}": "'",
        "\N{DOUBLE PRIME}": '"',
        "\N{RIGHT DOUBLE QUOTATION MARK}": '"',
    }
)
# one-character fractions down to eighths, as keyboards and spreadsheets set them
_SMALL_FRACTIONS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_FOOT_EXAMPLE = "7 ft 6 1/2 in"


def parse(text: str, dimension: Dimension, system: UnitSystem, *, field: str = "") -> float:
    """Return the SI value of what a person typed.

    Parameters
    ----------
    text
        A number, with a unit (``12 ft``, ``3.66 m``, ``3/4 in``, ``7' 6-1/2"``) or bare, then in the unit that
        ``system`` shows.
    dimension
        What the number measures; decides which units are understood.
    system
        The system whose shown unit a bare number takes.
    field
        Name of the field for the message; the dimension's name where empty.

    Raises
    ------
    InputFault
        The text is no number, uses a decimal comma, or carries a unit of another dimension.
    """
    name = field or dimension.value.replace("_", " ")
    written = _plain(text)
    if _COMMA_DECIMAL.search(written):
        # 1,234 is one thing in one country and another in the next, so neither is guessed
        raise _fault(
            name,
            text,
            Worded(
                "write a decimal point and no thousands separator, for example {example}",
                example=example(dimension, system),
            ),
        )
    if dimension is Dimension.LENGTH and (both := _FEET_AND_INCHES.match(written)):
        feet, inches = (
            to_core(_number_in(both[name]), unit, dimension) for name, unit in (("feet", "ft"), ("inches", "in"))
        )
        if inches >= to_core(_INCHES_TO_A_FOOT, "in", dimension) or not math.isfinite(feet):
            raise _fault(name, text, "write fewer than 12 inches behind the feet, for example 6 ft 2 in")
        return -(feet + inches) if both["sign"] == "-" else feet + inches
    match = _NUMBER.match(written)
    number = _number_of(match) if match else None
    if match is None or number is None:
        raise _fault(
            name, text, Worded("write a number and a unit, for example {example}", example=example(dimension, system))
        )
    unit = _accepted_spelling((match["unit"] or "").strip() or shown_unit(dimension, system), dimension)
    if unit is None:
        spellings = _spellings(dimension)
        wanted = (
            Worded("use one of the units {spellings}", spellings=", ".join(spellings))
            if spellings
            else "write the number with no unit"
        )
        raise _fault(name, text, wanted)
    value = to_core(number, unit, dimension)
    if not math.isfinite(value):
        raise _fault(name, text, "write a number of ordinary size")
    return value


def _plain(text: str) -> str:
    written = text.translate(_PLAIN_SIGNS)
    for sign, fraction in _SMALL_FRACTIONS.items():
        written = written.replace(sign, f" {fraction}")
    return written.strip()


def _number_in(text: str) -> float:
    """Return a number that is known to be written as one; a fraction over nothing is none and counts as infinite."""
    match = _NUMBER.match(text)
    number = _number_of(match) if match else None
    return math.inf if number is None else number


def _number_of(match: re.Match[str]) -> float | None:
    sign = -1.0 if match["sign"] == "-" else 1.0
    if match["decimal"] is not None:
        number = float(match["decimal"])
        return sign * number if math.isfinite(number) else None
    top, bottom = int(match["top"] or match["only_top"]), int(match["bottom"] or match["only_bottom"])
    return sign * (int(match["whole"] or 0) + top / bottom) if bottom else None


def _accepted_spelling(unit: str, dimension: Dimension) -> str | None:
    """Return the listed spelling of ``unit``; letter case is forgiven only where no other unit is meant."""
    listed = ACCEPTED[dimension]
    if unit in listed:
        return unit
    # a small m is milli and must never be read as mega; the other way round nothing plausible is meant
    alike = [
        known
        for known in listed
        if known.casefold() == unit.casefold() and not (unit.startswith("m") and known.startswith("M"))
    ]
    expressions = {listed[known] for known in alike}
    return alike[0] if len(expressions) == 1 else None


def _spellings(dimension: Dimension) -> list[str]:
    return [spelling for spelling in ACCEPTED[dimension] if spelling]


def example(dimension: Dimension, system: UnitSystem) -> str:
    """Return a figure as it may be typed in ``system``."""
    if dimension is Dimension.LENGTH and system is UnitSystem.US:
        return _FOOT_EXAMPLE
    unit = shown_unit(dimension, system)
    return f"12.5 {unit}" if unit else "12"


def _fault(field: str, text: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(place="", field=field, value=repr(text), wanted=wanted),))
