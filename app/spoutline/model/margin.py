"""What is left of a price after its cost.

The margin is the amount sold less the cost, and its percentage is a share of the amount sold, not of the cost:
100 * (sold - cost) / sold. (A mark-up is the share of the cost; 25 % of margin is 33 1/3 % of mark-up.)
"""

from __future__ import annotations

from collections.abc import Iterable
from decimal import ROUND_HALF_UP, Context, Decimal, localcontext
from enum import StrEnum
from typing import Final

from spoutline.frozen import frozen

_EXACT: Final = Context(prec=80)  # more digits than price, rate, discount and quantity have together


class LowMargin(StrEnum):
    """Why a line is asked about before it is issued."""

    BELOW_COST = "below_cost"
    BELOW_FLOOR = "below_floor"


@frozen
class Margin:
    """Amount sold and its cost, both exact and in one currency."""

    sold: Decimal
    cost: Decimal

    @property
    def amount(self) -> Decimal:
        """What is left; below 0 where it is sold below cost."""
        with localcontext(_EXACT):
            return self.sold - self.cost

    @property
    def percent(self) -> Decimal | None:
        """The margin as a percentage of the amount sold; None where nothing is asked for it."""
        if not self.sold:
            return None
        with localcontext(_EXACT):
            return 100 * self.amount / self.sold

    def low(self, floor_percent: Decimal | None) -> LowMargin | None:
        """Return what is wrong with the margin: below cost, or below ``floor_percent``; None where it is neither."""
        if self.sold < self.cost:
            return LowMargin.BELOW_COST
        with localcontext(_EXACT):
            is_low = floor_percent is not None and 100 * self.amount < floor_percent * self.sold
        return LowMargin.BELOW_FLOOR if is_low else None


def margin_of(price: Decimal | None, cost: Decimal | None, quantity: int) -> Margin | None:
    """Return the margin of some pieces at a price and a cost each; None where one of them is not known."""
    if price is None or cost is None:
        return None
    with localcontext(_EXACT):
        return Margin(price * quantity, cost * quantity)


def sum_of(margins: Iterable[Margin | None]) -> Margin:
    """Return the margin of several together; those not known add nothing."""
    sold = cost = Decimal(0)
    with localcontext(_EXACT):
        for one in margins:
            if one is not None:
                sold, cost = sold + one.sold, cost + one.cost
    return Margin(sold, cost)


def percent_of(margin: Margin | None) -> Decimal | None:
    """Return the margin in percent of the amount sold, to a hundredth for reading; None where it is not known."""
    percent = None if margin is None else margin.percent
    return None if percent is None else percent.quantize(Decimal("0.01"), ROUND_HALF_UP)
