"""Rounding of money: to a step, in one of four ways, exactly."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import ROUND_DOWN, ROUND_HALF_EVEN, ROUND_HALF_UP, ROUND_UP, Context, Decimal, localcontext

from spoutline.explain.writing.money import decimals
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quotation_terms import RoundingMode, Terms
from spoutline.model.worded import Worded

_WAYS = {
    RoundingMode.HALF_UP: ROUND_HALF_UP,
    RoundingMode.HALF_EVEN: ROUND_HALF_EVEN,
    RoundingMode.UP: ROUND_UP,
    RoundingMode.DOWN: ROUND_DOWN,
}
# enough digits for any sum of amounts that terms admit, with room for a quotient before it is rounded
EXACT = Context(prec=60)


def rounded(amount: Decimal, step: Decimal, mode: RoundingMode) -> Decimal:
    """Return ``amount`` at the multiple of ``step`` that ``mode`` asks for.

    Parameters
    ----------
    amount, step
        In the same currency; ``step`` above zero.
    mode
        ``up`` goes away from zero, ``down`` towards it; the others take the nearer multiple and differ at a half.

    Source: the four ways are those of the General Decimal Arithmetic specification (IBM, version 1.70), from memory.
    """
    with localcontext(EXACT):
        steps = (amount / step).quantize(Decimal(1), rounding=_WAYS[mode])
        return (steps * step).quantize(step) if step.as_tuple().exponent else steps * step


def coin(currency: str) -> Decimal:
    """Return the smallest unit of ``currency``, such as 0.01."""
    return Decimal(1).scaleb(-decimals(currency))


def minor_units(amount: Decimal, currency: str) -> int:
    """Return a whole number of the currency's smallest units; raise ``ValueError`` where ``amount`` holds a rest."""
    with localcontext(EXACT):
        units = amount.scaleb(decimals(currency))
    if units != units.to_integral_value():
        raise ValueError(
            Worded(
                "{amount} {currency} is no whole number of {coin}",
                amount=amount,
                currency=currency,
                coin=coin(currency),
            )
        )
    return int(units)


def exact_sum(amounts: Iterable[Decimal]) -> Decimal:
    """Return the sum of amounts without any rounding."""
    with localcontext(EXACT):
        return sum(amounts, start=Decimal(0))


def check_steps(terms: Terms) -> None:
    """Raise ``InputFault`` where a rounding step or an override cannot be paid in coins of the quotation's currency."""
    smallest = coin(terms.currency)
    amounts = [
        ("rounding.unit_step", terms.rounding.unit_step),
        ("rounding.total_step", terms.rounding.total_step),
        *((f"overrides[{at}].unit_price", one.unit_price) for at, one in enumerate(terms.overrides)),
        ("stock_price", terms.stock_price),
    ]
    wanted = Worded(
        "it must be a multiple of {smallest}, the smallest unit of {currency}",
        smallest=smallest,
        currency=terms.currency,
    )
    problems = tuple(
        InputProblem("", field, str(amount), wanted)
        for field, amount in amounts
        if amount is not None and amount % smallest
    )
    if problems:
        raise InputFault(problems)
