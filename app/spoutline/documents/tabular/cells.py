"""Cells of a table for spreadsheets: text stays text, figures stay figures."""

from __future__ import annotations

import unicodedata
from decimal import Decimal
from typing import Final

Cell = str | int | Decimal | float | None

# a spreadsheet takes a text that starts so for a formula (OWASP, CSV injection)
_FORMULA_STARTS: Final = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")
_SHIELD: Final = "'"


def shielded(text: str) -> str:
    """Return text that no spreadsheet takes for a formula: an apostrophe in front where it starts like one."""
    return f"{_SHIELD}{text}" if text.lstrip(" \n").startswith(_FORMULA_STARTS) else text


def without_controls(text: str) -> str:
    """Return text without the control characters that a workbook cannot hold; line breaks stay."""
    return "".join(sign for sign in text if sign in "\n\t" or unicodedata.category(sign) not in ("Cc", "Cs"))
