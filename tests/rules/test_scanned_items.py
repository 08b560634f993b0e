"""What scanned codes say, after the GS1 General Specifications and the GS1 Digital Link standard.

The numbers are those of published examples, as remembered: 9506000134352 of the Digital Link standard and its tools,
6291041500213 of GS1's page on check digits, 036000291452 of the literature on the Universal Product Code, 73513537 of
that on EAN-8, 38425876095074 of the documentation of python-stdnum. Each check digit is worked by hand beside.
"""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from spoutline.model.faults import InputFault
from spoutline.model.part_identity import gtin_check_digit
from spoutline.model.scanned_item import SEPARATOR, SHOWN_SEPARATOR, ScannedItem, scanned_item

GTIN_13, GTIN_14 = "9506000134352", "38425876095074"


@pytest.mark.parametrize(
    ("number", "told"),
    [
        (GTIN_13, "3*(5+6+0+1+4+5) = 63; 9+0+0+0+3+3 = 15; 78"),
        (GTIN_14, "3*(3+4+5+7+0+5+7) = 93; 8+2+8+6+9+0 = 33; 126"),
        ("6291041500213", "3*(2+1+4+5+0+1) = 39; 6+9+0+1+0+2 = 18; 57"),
        ("036000291452", "3*(0+6+0+2+1+5) = 42; 3+0+0+9+4 = 16; 58"),
        ("73513537", "3*(7+5+3+3) = 54; 3+1+5 = 9; 63"),
    ],
)
def test_numbers_of_each_length_are_trade_item_numbers(number: str, told: str) -> None:
    # the last figure of the working beside each number is the sum that its check digit makes a multiple of ten
    assert (int(told.rsplit("; ", 1)[1]) + int(number[-1])) % 10 == 0
    assert scanned_item(f" {number}\r\n") == ScannedItem(number=number, is_gtin=True)
    wrong = f"{number[:-1]}{(int(number[-1]) + 1) % 10}"
    assert not scanned_item(wrong).is_gtin  # it may be a number of a part


@pytest.mark.parametrize(
    "code",
    [
        f"]C10109506000134352 10ABC123{SEPARATOR}21S-42{SEPARATOR}3712".replace(" ", ""),
        f"0109506000134352{SEPARATOR}10ABC123{SEPARATOR}21S-42{SEPARATOR}3712",
        f"{SEPARATOR}010950600013435210ABC123{SEPARATOR}21S-42{SEPARATOR}3712",
        f"]d2010950600013435210ABC123{SHOWN_SEPARATOR}21S-42{SHOWN_SEPARATOR}3712",
        f"]Q30109506000134352371 2{SEPARATOR}21S-42{SEPARATOR}10ABC123".replace(" ", ""),
        "(01)09506000134352(10)ABC123(21)S-42(37)12",
    ],
)
def test_element_strings_are_read_as_scanned_and_as_printed(code: str) -> None:
    assert scanned_item(code) == ScannedItem(
        number="09506000134352", is_gtin=True, lot="ABC123", serial="S-42", count=12
    )


def test_an_expiry_date_and_what_is_not_read_is_passed_over() -> None:
    # documentation of python-stdnum, gs1_128: (01)38425876095074(17)181119(37)1
    assert scanned_item("(01)38425876095074(17)181119(37)1") == ScannedItem(number=GTIN_14, is_gtin=True, count=1)
    assert scanned_item("]C1013842587609507417181119371").count == 1
    # 3103: net weight in kilograms, six digits behind four; 400: order number of the customer, of variable length
    weighed = scanned_item(f"]C101095060001343523103001750400ORDER9{SEPARATOR}10L7")
    assert (weighed.number, weighed.lot) == ("09506000134352", "L7")


def test_an_address_of_a_qr_code_names_the_item() -> None:
    # GS1 Digital Link Standard: URI Syntax, an example of its own with batch and serial number
    code = "https://id.gs1.org/01/09506000134352/10/ABC%2F123/21/12345?17=290331"
    assert scanned_item(code) == ScannedItem(number="09506000134352", is_gtin=True, lot="ABC/123", serial="12345")
    assert scanned_item("https://example.com/some/path/01/9506000134352").number == "09506000134352"


@pytest.mark.parametrize("code", ["QW-N103", "Quillmere Forgeworks QW-N103", "12345", "01AB", "]A0QW-N103"])
def test_what_is_typed_is_a_number(code: str) -> None:
    assert scanned_item(code) == ScannedItem(number=code.removeprefix("]A0"))


@pytest.mark.parametrize(
    ("code", "wanted"),
    [
        ("", "scan a code"),
        (SHOWN_SEPARATOR, "scan a code"),
        ("x" * 301, "scan a code"),
        ("]C1", "no trade item number"),
        ("]C1010950600013435", "14 digits"),
        ("]C10109506000134353", "check digit must be 2"),
        ("(01)0950600013435X", "14 digits"),
        ("(10)ABC", "no trade item number"),
        ("(ABC)", "in brackets"),
        (f"]C10109506000134352{SEPARATOR}AB12", "application identifier"),
        ("(01)09506000134352(10)AB 12", "without blanks"),
        (f"(01)09506000134352(10){'A' * 21}", "1 to 20 signs"),
        ("(01)09506000134352(37)0", "from 1 to"),
        ("(01)09506000134352(37)1x", "from 1 to"),
        ("(01)09506000134352(01)06291041500213", "stands twice"),
        ("https://example.com/about", "names no trade item number"),
        ("]A0", "nothing behind its sign"),
    ],
)
def test_a_damaged_code_is_refused_with_what_is_wrong(code: str, wanted: str) -> None:
    with pytest.raises(InputFault, match=wanted):
        scanned_item(code)


@settings(max_examples=up_to(200))
@given(
    body=st.text("0123456789", min_size=13, max_size=13),
    lot=st.text("ABCDEFGHIJ0123456789-./", min_size=1, max_size=20),
    serial=st.text("ABCDEFGHIJ0123456789-./", min_size=1, max_size=20),
    count=st.integers(1, 99_999),
)
def test_whatever_is_in_a_code_comes_out_of_it(body: str, lot: str, serial: str, count: int) -> None:
    gtin = f"{body}{gtin_check_digit(body)}"
    whole = ScannedItem(number=gtin, is_gtin=True, lot=lot, serial=serial, count=count)
    assert scanned_item(f"]C101{gtin}10{lot}{SEPARATOR}21{serial}{SEPARATOR}37{count}") == whole
    assert scanned_item(f"(01){gtin}(21){serial}(37){count}(10){lot}") == whole
