"""The way between a written unit and the SI unit of the core, from the exact definitions of the units."""

from __future__ import annotations

import math
from fractions import Fraction
from functools import cache

from spoutline.frozen import frozen
from spoutline.model.quantity import Dimension
from spoutline.units.accepted import ACCEPTED, CORE_EXPRESSION

# Exact by definition, NIST SP 811 appendix B, from memory: inch 25.4 mm, gallon 231 cubic inches, avoirdupois pound
# 0.45359237 kg, standard gravity 9.80665 m/s2, Julian year 365.25 days. A registry of units would give the same
# within its rounding and takes a second to build; a test holds both against each other.
_INCH, _POUND = Fraction("0.0254"), Fraction("0.45359237")
_FOOT, _POUND_FORCE = 12 * _INCH, _POUND * Fraction("9.80665")
_DAY = 86_400
_IN_BASE_UNITS: dict[str, Fraction] = {
    "meter": Fraction(1),
    "inch": _INCH,
    "foot": _FOOT,
    "liter": Fraction(1, 1000),
    "gallon": 231 * _INCH**3,
    "gram": Fraction(1, 1000),
    "pound": _POUND,
    "ounce": _POUND / 16,
    "newton": Fraction(1),
    "pound_force": _POUND_FORCE,
    "pascal": Fraction(1),
    "bar": Fraction(100_000),
    "psi": _POUND_FORCE / _INCH**2,
    "stokes": Fraction(1, 10_000),
    "kelvin": Fraction(1),
    "degC": Fraction(1),
    "degF": Fraction(5, 9),
    "delta_degC": Fraction(1),
    "delta_degF": Fraction(5, 9),
    "ohm": Fraction(1),
    "siemens": Fraction(1),
    "radian": Fraction(1),
    "degree": Fraction(math.pi) / 180,
    "second": Fraction(1),
    "minute": Fraction(60),
    "hour": Fraction(3600),
    "day": Fraction(_DAY),
    "week": Fraction(7 * _DAY),
    "year": Fraction(1461 * _DAY, 4),
    "percent": Fraction(1, 100),
    "dimensionless": Fraction(1),
}
_PREFIXES = {
    "pico": Fraction(1, 10**12),
    "milli": Fraction(1, 1000),
    "centi": Fraction(1, 100),
    "kilo": Fraction(1000),
    "mega": Fraction(10**6),
}
_ZERO_ABOVE_CORE = {"degC": 0.0, "degF": -32.0, "kelvin": -273.15}  # what is added to a reading before it is scaled
_ROOT = "0.5"  # the one exponent that is no whole number, of a pressure drop in a flow coefficient


@frozen
class UnitLine:
    """The straight line from a unit to the core's unit: ``core = (value + offset) * numerator / denominator``.

    One of numerator and denominator is 1, so that exact definitions (1 ft = 0.3048 m, 1 mm = m/1000) stay exact.
    """

    numerator: float
    denominator: float
    offset: float

    def to_core(self, value: float) -> float:
        """Return ``value`` in the unit of the core."""
        return (value + self.offset) * self.numerator / self.denominator

    def from_core(self, value: float) -> float:
        """Return a core value in this unit."""
        return value * self.denominator / self.numerator - self.offset


@cache
def unit_line(unit: str, dimension: Dimension) -> UnitLine:
    """Return the line from ``unit`` to the core's unit of ``dimension``.

    Parameters
    ----------
    unit
        A spelling listed in ``ACCEPTED`` for the dimension.
    dimension
        What the number measures.

    Raises
    ------
    KeyError
        The spelling is not listed for this dimension.
    """
    written = ACCEPTED[dimension][unit]
    core = CORE_EXPRESSION[dimension]
    if written == core:
        return UnitLine(1.0, 1.0, 0.0)
    offset = _ZERO_ABOVE_CORE[written] if dimension is Dimension.TEMPERATURE else 0.0
    factor, under_root = (own / other for own, other in zip(_factors(written), _factors(core), strict=True))
    if under_root == 1 and factor.numerator == 1:
        return UnitLine(1.0, float(factor.denominator), offset)
    return UnitLine(float(factor) * math.sqrt(under_root), 1.0, offset)


def _factors(expression: str) -> tuple[Fraction, Fraction]:
    """Return what an expression of ``units.accepted`` is in base units: a factor, and one to take the root of."""
    factor, under_root = Fraction(1), Fraction(1)
    for nth, divided in enumerate(expression.split("/")):
        for power in divided.split("*") if "**" not in divided else [divided]:
            name, _, exponent = power.partition("**")
            unit = _in_base_units(name)
            if exponent == _ROOT:
                under_root *= 1 / unit if nth else unit
            else:
                factor *= unit ** (-int(exponent or 1) if nth else int(exponent or 1))
    return factor, under_root


def _in_base_units(name: str) -> Fraction:
    if name in _IN_BASE_UNITS:
        return _IN_BASE_UNITS[name]
    prefix = next(one for one in _PREFIXES if name.startswith(one))
    return _PREFIXES[prefix] * _IN_BASE_UNITS[name.removeprefix(prefix)]


def to_core(value: float, unit: str, dimension: Dimension) -> float:
    """Return ``value``, written in ``unit``, in the unit of the core; raise ``KeyError`` for an unlisted spelling."""
    return unit_line(unit, dimension).to_core(value)


def from_core(value: float, unit: str, dimension: Dimension) -> float:
    """Return a core value in ``unit``; raise ``KeyError`` for an unlisted spelling."""
    return unit_line(unit, dimension).from_core(value)
