"""Prices in currencies of no and of three decimals: ISO 4217 gives JPY none, KWD three, USD two minor digits."""

from __future__ import annotations

from decimal import Decimal

import pytest

from spoutline.explain.writing.money import amount
from spoutline.planning.table_intake.cell_values import CellFault, read_money


@pytest.mark.parametrize(
    ("text", "currency", "minor"),
    [("5000", "JPY", 5000), ("12.345", "KWD", 12345), ("12.5", "USD", 1250), ("1,234.50", "USD", 123450)],
)
def test_a_price_is_in_the_minor_units_of_its_currency(text: str, currency: str, minor: int) -> None:
    read = read_money(text, currency)
    assert (read.currency, read.minor) == (currency, minor)
    assert amount(minor, currency) == Decimal(text.split(maxsplit=1)[0].replace(",", ""))


def test_more_decimals_than_the_currency_has_are_asked_about() -> None:
    for text, currency, places in (("12.5", "JPY", 0), ("1.2345", "KWD", 3), ("1.234", "USD", 2)):
        with pytest.raises(CellFault, match=f"a price in {currency} has at most {places} decimals"):
            read_money(text, currency)
