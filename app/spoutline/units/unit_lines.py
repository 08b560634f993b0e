"""The way between a written unit and the SI unit of the core, by one pint registry made when first needed."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING, Any

from spoutline.model.quantity import Dimension
from spoutline.units.accepted import ACCEPTED, CORE_EXPRESSION

if TYPE_CHECKING:
    import pint


@dataclass(frozen=True, slots=True)
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
def registry() -> pint.UnitRegistry[Any]:
    """Return the one unit registry; importing pint and building it costs about a third of a second."""
    import pint

    return pint.UnitRegistry(autoconvert_offset_to_baseunit=True)


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
    units = registry()
    if dimension is Dimension.TEMPERATURE:
        zero_of_core = float(units.Quantity(0.0, core).to(written).magnitude)
        degree = float(units.Quantity(1.0, "delta_degF" if written == "degF" else "kelvin").to("kelvin").magnitude)
        return UnitLine(degree, 1.0, -zero_of_core)
    factor = float(units.Quantity(1.0, written).to(core).magnitude)
    inverse = float(units.Quantity(1.0, core).to(written).magnitude)
    if inverse > 1.0 and inverse == round(inverse):
        return UnitLine(1.0, inverse, 0.0)
    return UnitLine(factor, 1.0, 0.0)


def to_core(value: float, unit: str, dimension: Dimension) -> float:
    """Return ``value``, written in ``unit``, in the unit of the core; raise ``KeyError`` for an unlisted spelling."""
    return unit_line(unit, dimension).to_core(value)


def from_core(value: float, unit: str, dimension: Dimension) -> float:
    """Return a core value in ``unit``; raise ``KeyError`` for an unlisted spelling."""
    return unit_line(unit, dimension).from_core(value)
