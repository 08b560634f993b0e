"""Numbers as plain text: ASCII digits, decimal point, hyphen-minus; ``units.writing`` gives them a language's form."""

from __future__ import annotations

import math

_LARGEST_PLAIN = 1e9
_SMALLEST_PLAIN = 1e-6


def figure(value: float, *, digits: int | None = None, most: int = 4) -> str:
    """Return ``value`` with a sensible number of significant digits.

    Parameters
    ----------
    value
        A finite number.
    digits
        Significant digits to print, trailing zeros kept; None prints up to ``most`` and drops trailing zeros. Digits
        before the decimal point are never rounded away.
    most
        Significant digits where ``digits`` is None.

    Raises
    ------
    ValueError
        The value is not finite, or fewer than one digit is asked.
    """
    if not math.isfinite(value):
        raise ValueError(f"{value!r} cannot be shown as a figure")
    if digits is not None and digits < 1:
        raise ValueError(f"digits must be 1 or more, not {digits}")
    significant = most if digits is None else digits
    if value == 0:
        return "0" if digits is None or digits == 1 else f"{0:.{digits - 1}f}"
    if not _SMALLEST_PLAIN <= abs(value) < _LARGEST_PLAIN:
        return f"{value:.{significant - 1}e}"
    decimals = max(0, significant - 1 - math.floor(math.log10(abs(value))))
    text = f"{value:.{decimals}f}"
    if digits is None and "." in text:
        text = text.rstrip("0").rstrip(".")
    return text


def fixed_figure(value: float, decimals: int) -> str:
    """Return ``value`` rounded to ``decimals`` places, trailing zeros dropped; raise ``ValueError`` if not finite."""
    if not math.isfinite(value):
        raise ValueError(f"{value!r} cannot be shown as a figure")
    text = f"{value:.{decimals}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
