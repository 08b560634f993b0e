"""Amounts and percentages of a quotation as text."""

from __future__ import annotations

from decimal import Decimal

from spoutline.explain.writing.money import decimals
from spoutline.units.writing import Writing


def money(amount: Decimal, currency: str, writing: Writing) -> str:
    """Return an amount without its currency: grouped in threes, with the currency's decimals or as many as it has."""
    places = max(decimals(currency), -_exponent(amount))
    return writing.decimal(amount, places)


def signed(amount: Decimal, currency: str, writing: Writing) -> str:
    """Return a difference with its sign."""
    return f"{'+' if amount > 0 else ''}{money(amount, currency, writing)}"


def plain(number: Decimal, writing: Writing) -> str:
    """Return a number without grouping and without closing zeros."""
    text = f"{number:f}"
    return writing.figure(text.rstrip("0").rstrip(".") if "." in text else text)


def _exponent(amount: Decimal) -> int:
    """Return the exponent of the last digit that is not nought."""
    exponent = amount.normalize().as_tuple().exponent
    return exponent if isinstance(exponent, int) else 0
