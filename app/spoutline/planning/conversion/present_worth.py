"""Money of other years: price rise, present worth, and what waiting a year costs.

Factors are those of NIST Handbook 135 (Life-Cycle Costing Manual, chapter 3, from memory): a single amount after ``t``
years is worth ``1 / (1 + i)^t`` today; an amount that rises by ``r`` a year is ``(1 + r)^t`` times as much.
"""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal, localcontext

from spoutline.explain.writing.money import decimals

_PRECISION = 34


def risen(amount: Decimal, percent: Decimal | None, years: int, currency: str) -> Decimal:
    """Return an amount after ``years`` of a price rise in percent a year, rounded to the currency; None: no rise."""
    return rounded(amount * _growth(percent, years), currency)


def present_worth(amount: Decimal, percent: Decimal | None, years: int, currency: str) -> Decimal:
    """Return what an amount paid after ``years`` is worth today, rounded to the currency; None: no interest."""
    with localcontext() as context:
        context.prec = _PRECISION
        return rounded(amount / _growth(percent, years), currency)


def rounded(amount: Decimal, currency: str) -> Decimal:
    """Return an amount in the decimals of its currency, halves up."""
    return amount.quantize(Decimal(1).scaleb(-decimals(currency)), rounding=ROUND_HALF_UP)


def _growth(percent: Decimal | None, years: int) -> Decimal:
    with localcontext() as context:
        context.prec = _PRECISION
        return (1 + (percent or Decimal(0)) / 100) ** years
