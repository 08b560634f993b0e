"""Show SI values in the unit system that a person chose, and read numbers typed beside a shown unit."""

from __future__ import annotations

from dataclasses import field, replace

from spoutline.frozen import frozen
from spoutline.model.language import Language
from spoutline.model.quantity import Dimension, Quantity
from spoutline.units.accepted import UnitSystem, shown_unit
from spoutline.units.feet_inches import (
    LEAST_STEP,
    exact_tape_text,
    is_shorter_than_tape_tells,
    tape_text,
    tape_text_at_least,
    tape_text_at_most,
)
from spoutline.units.figures import figure, fixed_figure
from spoutline.units.quantities import example
from spoutline.units.unit_lines import from_core, to_core
from spoutline.units.writing import Writing

_SCALED = {Dimension.RESISTANCE, Dimension.RESISTANCE_PER_LENGTH}
_SHOWN_DIGITS, _READ_DIGITS = 4, 3
_MILLIMETRE_DECIMALS = 3  # of a metre: a metric tape is read to the millimetre
_DAYS, _DAY = "days", "day"
_WITHOUT_GAP = {"°"}  # 45° is written without a space (SI brochure 5.4.3); every other unit takes one


@frozen
class Display:
    """Turns SI floats of the core into text and back, in one unit system, written as one language writes numbers."""

    system: UnitSystem
    writing: Writing = field(default_factory=Writing)

    def written(self, language: Language) -> Display:
        """Return the same display with numbers as ``language`` writes them."""
        return replace(self, writing=Writing(language))

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
            Significant digits, trailing zeros kept; None shows up to four and drops trailing zeros. A length has the
            digits that a tape gives: to the millimetre, or feet, inches and sixteenths of an inch.
        prefixed
            Whether a large resistance is shown in kilo-ohm or megohm; not beside a field that asks for ohm.

        Raises
        ------
        ValueError
            The value is not finite.
        """
        if dimension is Dimension.LENGTH and digits is None:
            return self._length(value)
        shown, unit = self._shown(value, dimension, prefixed=prefixed)
        return self._joined(figure(shown, digits=digits), unit)

    def exact(self, value: float, dimension: Dimension) -> str:
        """Return ``value`` with its unit and every digit that it has, as it is typed in any language."""
        if self.on_a_tape(dimension):
            return exact_tape_text(value)
        return f"{self.number(value, dimension):.10g} {self.unit(dimension)}".strip()

    def at_least(self, value: float, dimension: Dimension) -> str:
        """Return the least figure to type where ``value`` is the least that is taken; errors as ``show``."""
        return tape_text_at_least(value) if self.on_a_tape(dimension) else self.show(value, dimension)

    def at_most(self, value: float, dimension: Dimension) -> str:
        """Return the greatest figure to type where ``value`` is the most that is taken; errors as ``show``."""
        return tape_text_at_most(value) if self.on_a_tape(dimension) else self.show(value, dimension)

    def example(self, dimension: Dimension) -> str:
        """Return a figure as it may be typed."""
        return example(dimension, self.system)

    def on_a_tape(self, dimension: Dimension) -> bool:
        """Say whether figures of ``dimension`` are told in feet, inches and fractions of an inch."""
        return dimension is Dimension.LENGTH and self.system is UnitSystem.US

    def asked_unit(self, dimension: Dimension) -> str:
        """Return the unit told at a field; a resistance also takes the prefix that a meter shows, a length both."""
        if self.on_a_tape(dimension):
            return "ft, in"
        unit = self.unit(dimension)
        return f"{unit}, k{unit}, M{unit}" if dimension is Dimension.RESISTANCE else unit

    def least_step(self, value: float, dimension: Dimension) -> str:
        """Return the step below which a length that is not nothing cannot be told on a tape; empty for others."""
        return LEAST_STEP if self.on_a_tape(dimension) and value and is_shorter_than_tape_tells(value) else ""

    def _length(self, value: float) -> str:
        if self.system is UnitSystem.US:
            return tape_text(value)
        text = fixed_figure(value, _MILLIMETRE_DECIMALS)
        return self._joined(figure(value) if text == "0" else text, self.unit(Dimension.LENGTH))

    def reading(self, value: float, dimension: Dimension) -> str:
        """Return ``value`` with its unit, in as many digits as a limit or a result is read in.

        Three significant digits; a diameter to the hundredth of a millimetre or the thousandth of an inch, as the
        standards for spouts give it; a length as ``show`` gives it. Digits before the decimal point always stay.
        Arguments and errors as ``show``.
        """
        if dimension is Dimension.LENGTH:
            return self._length(value)
        return self._joined(*self._read(value, dimension))

    def read_decimals(self, value: float, dimension: Dimension) -> int | None:
        """Return how many decimals ``reading`` gives ``value``; None where prefixes or inches forbid it."""
        if self.on_a_tape(dimension):
            return None
        text, unit = self._read(value, dimension)
        if "e" in text or unit != self.unit(dimension):
            return None
        return len(text.partition(".")[2])

    def to_decimals(self, value: float, dimension: Dimension, decimals: int) -> str:
        """Return ``value`` with its unit, rounded to ``decimals`` places; errors as ``show``.

        On a tape there are no decimals: the value is told to the sixteenth of an inch.
        """
        if self.on_a_tape(dimension):
            return tape_text(value)
        shown, unit = self._shown(value, dimension, prefixed=False)
        return self._joined(fixed_figure(shown, decimals), unit)

    def _read(self, value: float, dimension: Dimension) -> tuple[str, str]:
        shown, unit = self._shown(value, dimension, digits=_READ_DIGITS)
        if dimension is Dimension.LENGTH:  # metric: the digits of a tape
            return fixed_figure(shown, _MILLIMETRE_DECIMALS), unit
        if dimension is Dimension.DIAMETER:
            text = fixed_figure(shown, 2 if self.system is UnitSystem.SI else 3)
            if text != "0":
                return text, unit
        return figure(shown, most=_READ_DIGITS), unit

    def _shown(
        self, value: float, dimension: Dimension, *, prefixed: bool = True, digits: int = _SHOWN_DIGITS
    ) -> tuple[float, str]:
        shown, unit = self.number(value, dimension), self.unit(dimension)
        if dimension is Dimension.TEMPERATURE:
            shown = round(shown, 9) + 0.0  # the offset leaves noise near zero, which would show as 1e-14 degrees
        return _scaled(shown, unit, digits) if prefixed and dimension in _SCALED else (shown, unit)

    def _joined(self, text: str, unit: str) -> str:
        """Return a figure with its unit behind."""
        if unit == _DAYS and text == "1":
            unit = _DAY
        text = self.writing.figure(text)
        if not unit:
            return text
        return f"{text}{unit}" if unit in _WITHOUT_GAP else f"{text} {unit}"

    def show_quantity(self, quantity: Quantity, *, digits: int | None = None) -> str:
        """Return a quantity's value with its unit; its name is left to the caller."""
        return self.show(quantity.value, quantity.dimension, digits=digits)


def _scaled(shown: float, unit: str, digits: int) -> tuple[float, str]:
    """Return a resistance in ohm, kilo-ohm or megohm, whichever keeps the figure between 1 and 1000."""
    # the comparison is made on the rounded figure, so that 999 999 ohm shows as 1 megohm and not as 1000 kilo-ohm
    for factor, prefix in ((1e6, "M"), (1e3, "k")):
        if abs(shown) >= factor * (1.0 - 0.5 * 10.0**-digits):
            return shown / factor, f"{prefix}{unit}"
    return shown, unit
