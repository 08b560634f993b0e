"""What parts cost in a year at one position, as a sum: wear, drive-offs, permeation and spares, by stated figures."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from decimal import ROUND_HALF_UP, Decimal, localcontext
from fractions import Fraction

import numpy as np

from spoutline.calc.liquids import liquid_state
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.part_columns import Floats, Ints
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import Terms
from spoutline.model.requirement import Requirement
from spoutline.model.worded import Worded
from spoutline.model.yearly_cost import LiquidUnit, ServiceLife, YearlyBasis, YearlyPart
from spoutline.planning.pricing.rounding import EXACT, coin
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.protocols import PartStore
from spoutline.planning.refit.drive_off import yearly_cost_of
from spoutline.planning.sets.pool import SLOT_KINDS, SlotParts
from spoutline.rules.parts.figures import BREAKAWAY_SLOTS
from spoutline.rules.parts.sums import is_hose, yearly_permeation_kg

# definitions: the US gallon is 231 cubic inches of 25.4 mm (NIST Handbook 44, appendix C), the liter 1 cubic decimeter
_CUBIC_METERS = {LiquidUnit.GALLON: 231 * 0.0254**3, LiquidUnit.LITER: 1e-3}
_SOLD_AT_C = 15.0  # temperature of the volumes that liquid is sold by (ISO 5024: 15 °C)

DriveOffCost = Callable[[Part], int | None]  # of one position in a year, minor units; None where it cannot be told
TruePart = Callable[[PartRef], Part | None]  # what hangs there, by the name under which the search knows it


@dataclass(frozen=True)
class YearlyCost:
    """Tells what parts cost in a year, minor units of ``currency``.

    Parameters
    ----------
    basis
        The stated figures.
    currency
        Of the site.
    drive_offs
        What separations with a breakaway are expected to cost; None where nothing states it.
    """

    basis: YearlyBasis
    currency: str
    drive_offs: DriveOffCost | None = None
    _known: dict[PartRef, int | None] = field(default_factory=dict)

    def of(
        self, parts: SlotParts, rows: Ints, requirement: Requirement, true_part: TruePart
    ) -> dict[YearlyPart, Floats]:
        """Return what some parts of a slot add to each part of the sum, whole numbers; NaN where one states none."""
        found = {part: np.zeros(len(rows)) for part in self.basis.parts}
        prices = self._prices(parts, rows, true_part)
        kind = SLOT_KINDS[parts.slot]
        years = self.basis.years_of(kind)
        if YearlyPart.WEAR in found and years is not None:
            found[YearlyPart.WEAR] = _shares(prices, 1 / Fraction(years))
        kept = dict(self.basis.spares).get(kind)
        if YearlyPart.SPARES in found and kept is not None and self.basis.interest_percent is not None:
            found[YearlyPart.SPARES] = _shares(prices, Fraction(kept) * Fraction(self.basis.interest_percent) / 10_000)
        if YearlyPart.PERMEATION in found and is_hose(parts.columns):
            found[YearlyPart.PERMEATION] = self._lost(parts, rows, requirement)
        if YearlyPart.DRIVE_OFFS in found and parts.slot in BREAKAWAY_SLOTS:
            found[YearlyPart.DRIVE_OFFS] = self._driven_off(parts, rows, true_part)
        return found

    def _prices(self, parts: SlotParts, rows: Ints, true_part: TruePart) -> Floats:
        """Return list prices; nothing for a part that comes in an article under another number."""
        prices = np.nan_to_num(parts.columns.price_minor(self.currency)[rows], nan=0.0)
        for place, row in enumerate(rows.tolist()):
            hanging = true_part(parts.columns.ref_at(row)) if parts.breaches == () else None
            if hanging is not None:
                prices[place] = hanging.price_minor(self.currency) or 0
        return prices

    def _lost(self, parts: SlotParts, rows: Ints, requirement: Requirement) -> Floats:
        """Return the price of the liquid lost through the walls of hoses."""
        price = float((self.basis.liquid_price or Decimal(0)) / coin(self.currency))
        density = liquid_state(requirement.liquid, _SOLD_AT_C).density_kg_m3
        per_kg = price / (density * _CUBIC_METERS[self.basis.liquid_unit])
        return np.floor(yearly_permeation_kg(parts.columns, requirement)[rows] * per_kg + 0.5)

    def _driven_off(self, parts: SlotParts, rows: Ints, true_part: TruePart) -> Floats:
        refs = [parts.columns.ref_at(row) for row in rows.tolist()]
        missing = [ref for ref in refs if ref not in self._known]
        for ref, part in parts.source(missing).items():
            self._known[ref] = None if self.drive_offs is None else self.drive_offs(true_part(ref) or part)
        costs = [self._known[ref] for ref in refs]
        return np.array([np.nan if one is None else one for one in costs], np.float64)


def _shares(prices: Floats, share: Fraction) -> Floats:
    """Return a share of prices in whole minor units, half of one rounded up."""
    above, below = share.numerator, share.denominator
    return np.array([(2 * int(price) * above + below) // (2 * below) for price in prices.tolist()], np.float64)


def yearly_basis(terms: Terms | None, usual: Iterable[ServiceLife]) -> YearlyBasis:
    """Return the figures that a yearly cost rests on: those of the terms, service lives else as is ``usual``."""
    lives = {one.kind: one for one in usual}
    if terms is None:
        return YearlyBasis(lives=tuple(lives.values()))
    for one in terms.service_lives:
        lives[one.kind] = ServiceLife(kind=one.kind, years=one.years, source="")
    return YearlyBasis(
        lives=tuple(lives.values()),
        drive_offs_per_position=terms.drive_offs.per_position_year if terms.drive_offs is not None else None,
        liquid_price=terms.yearly.liquid_price,
        liquid_unit=terms.yearly.liquid_unit,
        interest_percent=terms.yearly.interest_percent,
        spares=tuple((one.kind, one.percent) for one in terms.spares),
    )


def yearly_cost(basis: YearlyBasis, pricer: Pricer | None, parts: PartStore, currency: str) -> YearlyCost:
    """Return what tells the yearly cost of parts in minor units of ``currency``; ``pricer`` has the terms, if any.

    Raises
    ------
    InputFault
        The terms are in another currency.
    """
    if pricer is None:
        return YearlyCost(basis, currency)
    terms = pricer.terms
    if terms.currency != currency:
        right = Worded("weigh a yearly cost on terms in {currency}, the currency of the site", currency=currency)
        raise InputFault((InputProblem("terms", "currency", repr(terms.currency), right),))
    drive_offs = terms.drive_offs
    if drive_offs is None:
        return YearlyCost(basis, currency)
    step = coin(currency)

    def cost_of(part: Part) -> int | None:
        bought = part if part.comes_with is None else parts.part(part.comes_with)
        with localcontext(EXACT):
            cost = None if bought is None else yearly_cost_of(part, bought, drive_offs, pricer)
            return None if cost is None else int((cost / step).quantize(Decimal(1), rounding=ROUND_HALF_UP))

    return YearlyCost(basis, currency, cost_of)
