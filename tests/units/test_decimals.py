"""Amounts are read exactly as they are written, or refused."""

from __future__ import annotations

from decimal import Decimal

import pytest

from spoutline.model.faults import InputFault
from spoutline.units.decimals import exact_decimal


# the values are those of the decimal numeral itself; binary floats hold none of the first three
@pytest.mark.parametrize(
    ("text", "whole", "thousandths"),
    [("0.1", 0, 100), (" 12.305 ", 12, 305), (".5", 0, 500), ("7.", 7, 0), ("+3", 3, 0), ("-0.25", 0, -250)],
)
def test_a_number_is_read_exactly(text: str, whole: int, thousandths: int) -> None:
    assert exact_decimal(text) == whole + Decimal(thousandths) / 1000


@pytest.mark.parametrize("text", ["1,234", "1,234.50", "12,5", "1.234,50"])
def test_a_comma_is_refused_as_nobody_can_know_its_meaning(text: str) -> None:
    with pytest.raises(InputFault, match=r"price: .* decimal point and no thousands separator"):
        exact_decimal(text, field="price")


@pytest.mark.parametrize("text", ["", "  ", "free", "1e3", "NaN", "Infinity", "1_000", "--1", "1 000", "٣", "0x10"])
def test_what_is_no_plain_number_is_refused(text: str) -> None:
    with pytest.raises(InputFault, match="write a number"):
        exact_decimal(text)


def test_an_empty_text_is_called_nothing() -> None:
    with pytest.raises(InputFault) as caught:
        exact_decimal(" ")
    assert caught.value.problems[0].value == "nothing"
