"""By what a part is known: its maker's number as it is, the firm's own item number, a trade item number."""

from __future__ import annotations

import re
import unicodedata
from typing import Annotated, Final

from pydantic import AfterValidator, StringConstraints

from spoutline.model.plain_values import hidden_sign
from spoutline.model.worded import Worded

NUMBER_LENGTH: Final = 80
ITEM_NUMBER_LENGTH: Final = 60
MAKER_LENGTH: Final = 120
MADE_UP_LENGTH: Final = MAKER_LENGTH + NUMBER_LENGTH + 1  # of a joint inside an article: its maker and a number
GTIN_LENGTHS: Final = (8, 12, 13, 14)  # GTIN-8, -12, -13, -14 (GS1 General Specifications)
_NUMBER_SIGNS: Final = frozenset(" /.-+")
_PLAIN_NUMBER: Final = re.compile(r"(?=.*[A-Za-z0-9])[A-Za-z0-9/.+-]+(?: [A-Za-z0-9/.+-]+)*")  # as nearly all are


def number_fault(number: str) -> str:
    """Return what would be right in place of a maker's number; empty for one that may stand.

    Letters of any script with the marks that belong to them, digits, single blanks inside, ``/ . - +``.
    """
    if len(number) <= NUMBER_LENGTH and _PLAIN_NUMBER.fullmatch(number):
        return ""
    told = hidden_sign(number)
    if not any(sign.isalnum() for sign in number):
        told = told or "write the number that the maker gives the part: it holds a letter or a digit"
    elif len(number) > NUMBER_LENGTH:
        told = told or Worded(
            "a number has at most {number_length} signs; this one has {count}",
            number_length=NUMBER_LENGTH,
            count=len(number),
        )
    elif number != number.strip(" ") or "  " in number:
        told = told or "leave out blanks at the ends, and more than one in a row"
    for sign in number if not told else "":
        if sign not in _NUMBER_SIGNS and unicodedata.category(sign)[0] not in "LM" and not sign.isdecimal():
            shown = f"{sign!r}" if sign.isprintable() else f"U+{ord(sign):04X}"
            return Worded("a number holds letters, digits, blanks and / . - +; this one has {shown}", shown=shown)
    return told


def made_up_fault(joint: str) -> str:
    """Return what would be right in place of the name of a joint inside an article; empty for one that may stand."""
    if joint and joint.isprintable() and len(joint) <= MADE_UP_LENGTH:
        return hidden_sign(joint)
    return Worded(
        "write maker and number of the article, 1 to {made_up_length} signs on one line", made_up_length=MADE_UP_LENGTH
    )


def gtin_check_digit(digits: str) -> int:
    """Return the check digit that ends a trade item number whose other digits these are.

    From the right the digits count three times and once in turn; the check digit makes the sum a multiple of ten.

    Source: GS1 General Specifications, "Standard check digit calculations for GS1 data structures" (clause 7.9, number
    of the clause from memory).
    """
    total = sum(int(digit) * (3 if place % 2 == 0 else 1) for place, digit in enumerate(reversed(digits)))
    return -total % 10


def gtin_fault(gtin: str) -> str:
    """Return what would be right in place of a trade item number; empty for one that may stand."""
    if not (gtin.isascii() and gtin.isdigit()) or len(gtin) not in GTIN_LENGTHS:
        return "a GTIN has 8, 12, 13 or 14 digits and nothing else"
    wanted = gtin_check_digit(gtin[:-1])
    return (
        ""
        if int(gtin[-1]) == wanted
        else Worded("its check digit must be {wanted}; compare it with the label", wanted=wanted)
    )


def _right_number(number: str) -> str:
    told = number_fault(number)
    if told:
        raise ValueError(told)
    return number


def _right_gtin(gtin: str) -> str:
    told = gtin_fault(gtin) if gtin else ""
    if told:
        raise ValueError(told)
    return gtin


def _composed(text: str) -> str:
    """Write accents in the one form that looks as they do (Unicode NFC): two spellings of a number are one."""
    return unicodedata.normalize("NFC", text)


def _shown_whole(text: str) -> str:
    told = hidden_sign(text) or next(
        (
            Worded("leave out the hidden sign U+{ord:04X}", ord=ord(sign))
            for sign in text
            if unicodedata.category(sign) in ("Cc", "Cf")
        ),
        "",
    )
    if told:
        raise ValueError(told)
    return text


_STRIPPED = StringConstraints(strip_whitespace=True)
MakerNumber = Annotated[str, _STRIPPED, AfterValidator(_composed), AfterValidator(_right_number)]
MakerName = Annotated[
    str,
    StringConstraints(strip_whitespace=True, min_length=1, max_length=MAKER_LENGTH),
    AfterValidator(_composed),
    AfterValidator(_shown_whole),
]
OwnItemNumber = Annotated[
    str,
    StringConstraints(strip_whitespace=True, max_length=ITEM_NUMBER_LENGTH),
    AfterValidator(_composed),
    AfterValidator(_shown_whole),
]
Gtin = Annotated[str, _STRIPPED, AfterValidator(_right_gtin)]
ShownText = Annotated[str, _STRIPPED, AfterValidator(_composed), AfterValidator(_shown_whole)]
