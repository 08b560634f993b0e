"""What lies on a van or in a store, and what of it would do in place of a missing part."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.model.finding import Finding
from spoutline.model.part import Part
from spoutline.model.plan import JudgedSet


@dataclass(frozen=True, slots=True, kw_only=True)
class StockLine:
    """A part number with the pieces at hand."""

    number: str
    quantity: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock:
    """A stock list as entered; each number stands once."""

    lines: tuple[StockLine, ...]

    def quantity(self, number: str) -> int:
        """Return the pieces at hand of a part number; 0 where the list has none."""
        return next((line.quantity for line in self.lines if line.number == number), 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class SwapOption:
    """A stocked part in place of a missing one.

    ``judged`` is the best set that holds it, made of the planned parts and the stock, with all findings and checks;
    None where no set with it keeps every must. ``taken_out`` and ``put_in`` are the part numbers that then change.
    ``findings`` are the rules that the part itself breaks here.
    """

    part: Part
    quantity: int
    judged: JudgedSet | None
    taken_out: tuple[str, ...]
    put_in: tuple[str, ...]
    findings: tuple[Finding, ...]
