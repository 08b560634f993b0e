"""What a person writes of hose cut to length: lengths in the article's unit, amounts with their currency."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from typing import Final

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.planning.keeping.cut_lengths import LengthUnit
from spoutline.units.decimals import exact_decimal

_AMOUNT: Final = re.compile(r"(?P<amount>.+?)\s+(?P<currency>[A-Za-z]{3})$")
_FEET: Final = re.compile(r"(?:(?P<feet>\d+)\s*(?:ft|'))?\s*(?:(?P<inches>\d+)\s*(?:in|\"))?\s*$")
_MOST: Final = Decimal(10_000_000)
_LONGEST: Final = 1_000  # no hose is as long, in any unit


def read_length(text: str, unit: LengthUnit, field: str) -> Fraction:
    """Return a length in ``unit``: a number, with the unit or without; of feet inches too (``8 ft 6 in``).

    Raise ``InputFault`` for anything else.
    """
    bare = text.strip()
    if unit is LengthUnit.FOOT and (found := _FEET.match(bare)) and (found["feet"] or found["inches"]):
        return Fraction(int(found["feet"] or 0)) + Fraction(int(found["inches"] or 0), 12)
    value = _decimal(bare.removesuffix(unit.value).strip())
    if value is None or not 0 <= value <= _LONGEST:
        wanted = Worded(
            "write a length in {unit}, such as {given}",
            unit=unit,
            given="8 ft 6 in" if unit is LengthUnit.FOOT else "2.50",
        )
        raise InputFault((InputProblem("", field, repr(text), wanted),))
    return Fraction(value)


def read_amounts(text: str, field: str) -> dict[str, Decimal]:
    """Return amounts by currency: ``12.50 USD; 11 EUR``; raise ``InputFault`` for anything else."""
    found: dict[str, Decimal] = {}
    for piece in filter(None, (one.strip() for one in text.split(";"))):
        match = _AMOUNT.match(piece)
        value = None if match is None else _decimal(match["amount"])
        if match is None or value is None or not 0 <= value <= _MOST:
            wanted = "write an amount and its currency, such as 12.50 USD; several with a semicolon between"
            raise InputFault((InputProblem("", field, repr(piece), wanted),))
        found[match["currency"].upper()] = value
    return found


def _decimal(text: str) -> Decimal | None:
    try:
        return exact_decimal(text)
    except InputFault:
        return None
