"""A table of nothing but numbers and prices: told by its cells where its titles tell nothing, or there are none."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from spoutline.planning.table_intake.raw_table import RawRow

_MONEY: Final = r"(?:[$€£]|\b[A-Z]{3}\b)?"
_AMOUNT: Final = re.compile(rf"{_MONEY}\s*[0-9][0-9.,'\u00a0\u202f ]*{_MONEY}")
# an amount and no number of a part: with cents, or with its currency
_STATED: Final = re.compile(r"[$€£A-Z]|[.,][0-9]{2}(?![0-9])")


def places_of_prices(rows: Sequence[RawRow]) -> tuple[int, int] | None:
    """Return the columns of numbers and of prices of a table that has these two alone; None where it is not sure.

    A column of prices holds amounts from its first row or the second on, some of them with cents or a currency; the
    other one holds no number twice. Source: common practice, no source.
    """
    filled = sorted({place for row in rows for place, text in enumerate(row.cells) if text})
    if len(filled) != 2:
        return None
    first, last = filled
    sure = [pair for pair in ((first, last), (last, first)) if _are_prices(rows, *pair)]
    return sure[0] if len(sure) == 1 else None


def is_amount(text: str) -> bool:
    """Say whether a text is an amount of money, or a number that may be one."""
    return _AMOUNT.fullmatch(text.strip()) is not None


def _are_prices(rows: Sequence[RawRow], number: int, price: int) -> bool:
    below = rows[0 if is_amount(rows[0].cell(price)) else 1 :]
    numbers, prices = [row.cell(number) for row in below], [row.cell(price) for row in below]
    return (
        len(below) > 0
        and all(numbers)
        and len(set(numbers)) == len(numbers)
        and all(map(is_amount, prices))
        and any(map(_STATED.search, prices))
    )
