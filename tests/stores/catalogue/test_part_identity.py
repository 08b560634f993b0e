"""By what a part is known: makers' numbers as they are, and trade item numbers with their check digit."""

from __future__ import annotations

import pytest
from pydantic import ValidationError

from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.part_identity import gtin_check_digit, gtin_fault, number_fault


@pytest.mark.parametrize(
    "number",
    ["QW-N101", "4711", "11AP-0300", "3/4 X 9.5+R", "АБ-12", "ホース 12", "Ü.7", "हि-3", "٤٥", "A" * 80],
)
def test_a_makers_number_may_be_as_it_is(number: str) -> None:
    assert number_fault(number) == ""
    assert CatalogueEntry(number=number, maker="Fernmoor Works").number == number


@pytest.mark.parametrize(
    ("number", "told"),
    [
        ("", "letter or a digit"),
        ("- /", "letter or a digit"),
        ("A" * 81, "at most 80"),
        ("A  1", "blanks"),
        ("A_1", "'_'"),
        ("A\u20101", "'\u2010'"),  # a hyphen that looks like the usual one (Unicode, General Punctuation)
        ("A\u202e1", "U+202E"),
        ("A\u200b1", "U+200B"),
        ("A\t1", "U+0009"),
        ("=A1", "'='"),
    ],
)
def test_any_other_sign_is_named(number: str, told: str) -> None:
    assert told in number_fault(number)
    with pytest.raises(ValidationError):
        CatalogueEntry(number=number, maker="Fernmoor Works")


def test_two_spellings_of_an_accent_are_one_number() -> None:
    """Unicode Standard Annex 15: E and a combining acute accent compose to the letter U+00C9."""
    composed, apart = "\u00c9-1", "E\u0301-1"
    assert CatalogueEntry(number=apart, maker="Fernmoor Works").number == composed


# GTIN-13: the worked example of GS1's page "How to calculate a check digit manually" (from memory); GTIN-12: the sample
# number of the literature on the Universal Product Code; the others by hand after the rule:
# 7*3 + 3 + 5*3 + 1 + 3*3 + 5 + 3*3 = 63, so 7; the 13 digits weigh 57 and the 1 in front three times one: 60, so 0
@pytest.mark.parametrize(
    ("digits", "check"),
    [
        ("629104150021", 3),
        ("03600029145", 2),
        ("7351353", 7),
        ("1629104150021", 0),
    ],
)
def test_the_check_digit_is_that_of_the_standard(digits: str, check: int) -> None:
    assert gtin_check_digit(digits) == check
    assert gtin_fault(f"{digits}{check}") == ""
    assert f"must be {check}" in gtin_fault(f"{digits}{(check + 1) % 10}")


@pytest.mark.parametrize("gtin", ["123", "12345678901", "6291041500213 ", "629104150021x", "٦٢٩١٠٤١٥٠٠٢١٣"])
def test_what_is_no_trade_item_number_is_told(gtin: str) -> None:
    assert "8, 12, 13 or 14 digits" in gtin_fault(gtin)
