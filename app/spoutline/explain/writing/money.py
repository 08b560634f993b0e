"""Prices: exact decimals from minor units, and their text."""

from __future__ import annotations

from decimal import Decimal

from spoutline.units.writing import Writing, currency_decimals


def amount(minor: int, currency: str) -> Decimal:
    """Return ``minor`` units of ``currency`` as an exact decimal of the major unit."""
    return Decimal(minor).scaleb(-decimals(currency))


def decimals(currency: str) -> int:
    """Return how many decimals prices of ``currency`` carry."""
    return currency_decimals(currency)


def money_text(minor: int, currency: str, *, with_currency: bool = True, writing: Writing | None = None) -> str:
    """Return a price such as ``1,234.50 USD``, as ``writing`` writes it; in English where none is given."""
    return (writing or Writing()).money(amount(minor, currency), currency, with_currency=with_currency)
