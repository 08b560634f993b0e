"""Show SI values in the unit system that a person chose, and read numbers typed beside a shown unit."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.model.quantity import Dimension, Quantity
from spoutline.units.accepted import UnitSystem, shown_unit
from spoutline.units.conversion import from_core, to_core
from spoutline.units.figures import figure

_SCALED = {Dimension.RESISTANCE, Dimension.RESISTANCE_PER_LENGTH}
_WITHOUT_GAP = {"°"}  # 45° is written without a space (SI brochure 5.4.3); every other unit takes one


@dataclass(frozen=True, slots=True)
class Display:
    """Turns SI floats of the core into text and back, in one unit system."""

    system: UnitSystem

    def unit(self, dimension: Dimension) -> str:
        """Return the unit in which ``dimension`` is shown; empty for a bare number."""
        return shown_unit(dimension, self.system)

    def number(self, value: float, dimension: Dimension) -> float:
        """Return the SI ``value`` in the shown unit, unrounded."""
        return from_core(value, self.unit(dimension), dimension)

    def from_shown(self, number: float, dimension: Dimension) -> float:
        """Return the SI value of a ``number`` given in the shown unit."""
        return to_core(number, self.unit(dimension), dimension)

    def show(self, value: float, dimension: Dimension, *, digits: int | None = None, prefixed: bool = True) -> str:
        """Return ``value`` with its unit.

        Parameters
        ----------
        value
            SI value in the unit that the dimension names.
        dimension
            What the value measures.
        digits
            Significant digits, trailing zeros kept; None shows up to four and drops trailing zeros.
        prefixed
            Whether a large resistance is shown in kilo-ohm or megohm; not beside a field that asks for ohm.

        Raises
        ------
        ValueError
            The value is not finite.
        """
        shown = self.number(value, dimension)
        unit = self.unit(dimension)
        if dimension is Dimension.TEMPERATURE:
            shown = round(shown, 9) + 0.0  # the offset leaves noise near zero, which would show as 1e-14 degrees
        if prefixed and dimension in _SCALED:
            shown, unit = _scaled(shown, unit)
        text = figure(shown, digits=digits)
        if dimension is Dimension.DAYS and text == "1":
            unit = "day"
        if not unit:
            return text
        return f"{text}{unit}" if unit in _WITHOUT_GAP else f"{text} {unit}"

    def show_quantity(self, quantity: Quantity, *, digits: int | None = None) -> str:
        """Return a quantity's value with its unit; its name is left to the caller."""
        return self.show(quantity.value, quantity.dimension, digits=digits)


def _scaled(shown: float, unit: str) -> tuple[float, str]:
    """Return a resistance in ohm, kilo-ohm or megohm, whichever keeps the figure between 1 and 1000."""
    # the comparison is made on the rounded figure, so that 999 999 ohm shows as 1 megohm and not as 1000 kilo-ohm
    for factor, prefix in ((1e6, "M"), (1e3, "k")):
        if abs(shown) >= factor * 0.99995:
            return shown / factor, f"{prefix}{unit}"
    return shown, unit
