"""Prices as text: exact decimals from minor units, the same in every locale."""

from __future__ import annotations

from decimal import Decimal
from typing import Final

# ISO 4217 minor-unit exponents other than 2 (from memory of the published list; the catalogue itself uses two decimals)
_EXPONENTS: Final = {
    **dict.fromkeys(("BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV"), 0),
    **dict.fromkeys(("XAF", "XOF", "XPF"), 0),
    **dict.fromkeys(("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"), 3),
}


def amount(minor: int, currency: str) -> Decimal:
    """Return ``minor`` units of ``currency`` as an exact decimal of the major unit."""
    return Decimal(minor).scaleb(-decimals(currency))


def decimals(currency: str) -> int:
    """Return how many decimals prices of ``currency`` carry (ISO 4217)."""
    return _EXPONENTS.get(currency, 2)


def money_text(minor: int, currency: str, *, with_currency: bool = True) -> str:
    """Return a price such as ``1,234.50 USD``; digits grouped in threes, decimal point, code behind."""
    text = f"{amount(minor, currency):,.{decimals(currency)}f}"
    return f"{text} {currency}" if with_currency else text
