"""What a scanned code of a package says: trade item number, batch, serial number, count; or a number as it was typed.

Source: GS1 General Specifications: application identifiers, element strings and their lengths (section 3 and figure
7.8.5-2, "Element strings with predefined length using GS1 application identifiers"), check digits (7.9), symbology
identifiers (7.8.2 after ISO/IEC 15424); GS1 Digital Link Standard: URI Syntax. Numbers of clauses from memory.
"""

from __future__ import annotations

import re
from typing import Final
from urllib.parse import unquote, urlsplit

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_identity import GTIN_LENGTHS, gtin_fault
from spoutline.model.worded import Worded

SEPARATOR: Final = "\x1d"  # what ends an element string of variable length (FNC1, sent as the group separator)
SHOWN_SEPARATOR: Final = "\N{SYMBOL FOR GROUP SEPARATOR}"  # the same where a field cannot hold it
LONGEST_CODE: Final = 300

_SYMBOLOGY: Final = re.compile(r"^\](?P<code>[A-Za-z])(?P<modifier>[0-9])")
# symbology identifiers whose data are element strings: GS1-128, GS1 DataBar, Data Matrix, QR Code, DotCode
_GS1: Final = frozenset({"C1", "e0", "e1", "e2", "d2", "Q3", "J1"})
_BRACKETED: Final = re.compile(r"\((\d{2,4})\)")
_LINK_PAIR: Final = re.compile(r"/(\d{2,4})/([^/]*)")
# digits behind the identifier where its length is predefined
_PREDEFINED: Final = {
    **{"00": 18, "01": 14, "02": 14, "03": 14, "04": 16, "20": 2},
    **{f"{number}": 6 for number in range(11, 20)},
}
_PREDEFINED_3: Final = ("41", 13)
_PREDEFINED_4: Final = (("31", "32", "33", "34", "35", "36"), 6)
_LONGEST: Final = {"10": 20, "21": 20, "30": 8, "37": 8}
_CHARACTERS: Final = re.compile(r"[!-~]+")  # letters, digits and signs of ISO/IEC 646; no blank
_MOST: Final = 100_000


@frozen(kw_only=True)
class ScannedItem:
    """What a code says. ``number`` is what to look a part up by: the trade item number where it has one.

    ``count`` is how many pieces the code stands for; None where it does not say.
    """

    number: str
    is_gtin: bool = False
    lot: str = ""
    serial: str = ""
    count: int | None = None


def scanned_item(text: str) -> ScannedItem:
    """Return what a code says, as a scanner types it that stands in for a keyboard; a typed number is one too.

    Element strings are read as scanned, with the group separator or its picture (U+241D) behind those of variable
    length, and as printed below a bar code, with the identifiers in brackets.

    Raises
    ------
    InputFault
        There is nothing, or the code is damaged: a check digit, a length or an identifier is wrong.
    """
    written = text.strip().replace(SHOWN_SEPARATOR, SEPARATOR)
    if not written.strip(SEPARATOR) or len(written) > LONGEST_CODE:
        wanted = Worded("scan a code or type a part number, of 1 to {most} signs", most=LONGEST_CODE)
        raise _refused(text, wanted)
    found = _SYMBOLOGY.match(written)
    if found is not None:
        body = written[found.end() :]
        if found["code"] + found["modifier"] in _GS1:
            return _of_elements(_elements(body, text), text)
        return _plain(body, text)
    if written.startswith("("):
        return _of_elements(_bracketed(written, text), text)
    if written.lower().startswith(("http://", "https://")):
        return _of_elements(_linked(written, text), text)
    if written.startswith(SEPARATOR) or _looks_scanned(written):
        return _of_elements(_elements(written, text), text)
    return _plain(written, text)


def _plain(written: str, text: str) -> ScannedItem:
    number = written.strip()
    if not number:
        raise _refused(text, "the code holds nothing behind its sign")
    is_gtin = number.isascii() and number.isdigit() and len(number) in GTIN_LENGTHS and not gtin_fault(number)
    return ScannedItem(number=number, is_gtin=is_gtin)


def _looks_scanned(written: str) -> bool:
    """Say whether a text without a sign of its own is element strings that begin with a sound trade item number."""
    return (
        written[:2] in ("01", "02") and written[2:16].isdigit() and len(written) >= 16 and not gtin_fault(written[2:16])
    )


def _elements(body: str, text: str) -> dict[str, str]:
    """Return the element strings of scanned data by their identifiers."""
    found: dict[str, str] = {}
    rest = body
    while rest := rest.lstrip(SEPARATOR):
        identifier, length = _identifier(rest, text)
        rest = rest[len(identifier) :]
        if length is None:
            value, _, rest = rest.partition(SEPARATOR)
        else:
            value, rest = rest[:length], rest[length:]
        _add(found, identifier, value, text)
    return found


def _identifier(rest: str, text: str) -> tuple[str, int | None]:
    """Return the identifier at the beginning, and how many digits follow it; None where a separator ends them."""
    if not (rest[:2].isascii() and rest[:2].isdigit()):
        raise _refused(
            text, Worded("an application identifier of digits is needed in place of {found!r}", found=rest[:4])
        )
    if rest[:2] in _PREDEFINED:
        return rest[:2], _PREDEFINED[rest[:2]]
    if rest[:2] == _PREDEFINED_3[0]:
        return rest[:3], _PREDEFINED_3[1]
    if rest[:2] in _PREDEFINED_4[0]:
        return rest[:4], _PREDEFINED_4[1]
    return rest[:2], None  # the others are of variable length; what is not read here may have a longer identifier


def _bracketed(written: str, text: str) -> dict[str, str]:
    pieces = _BRACKETED.split(written)
    found: dict[str, str] = {}
    if pieces[0].strip():
        raise _refused(text, "the code must begin with an application identifier in brackets, such as (01)")
    for identifier, value in zip(pieces[1::2], pieces[2::2], strict=True):
        _add(found, identifier, value.strip().strip(SEPARATOR), text)
    if not found:
        raise _refused(text, "the code must begin with an application identifier in brackets, such as (01)")
    return found


def _linked(written: str, text: str) -> dict[str, str]:
    try:
        path = urlsplit(written).path
    except ValueError:
        path = ""
    at = re.search(r"/0[12]/", path)
    if at is None:
        raise _refused(text, "the address in the code names no trade item number (/01/ and 14 digits)")
    found: dict[str, str] = {}
    for pair in _LINK_PAIR.finditer(path, at.start()):
        value = unquote(pair[2])
        _add(found, pair[1], value.zfill(14) if pair[1] in ("01", "02") else value, text)
    return found


def _add(found: dict[str, str], identifier: str, value: str, text: str) -> None:
    """Keep one element string; raise ``InputFault`` where it cannot be one."""
    length = _PREDEFINED.get(identifier)
    if length is not None and not (value.isascii() and value.isdigit() and len(value) == length):
        wanted = Worded(
            "{length} digits must follow the application identifier {identifier}", length=length, identifier=identifier
        )
        raise _refused(text, wanted)
    longest = _LONGEST.get(identifier)
    if longest is not None and not (0 < len(value) <= longest and _CHARACTERS.fullmatch(value)):
        wanted = Worded(
            "1 to {longest} signs without blanks must follow the application identifier {identifier}",
            longest=longest,
            identifier=identifier,
        )
        raise _refused(text, wanted)
    if found.get(identifier, value) != value:
        raise _refused(text, Worded("the application identifier {identifier} stands twice", identifier=identifier))
    found[identifier] = value


def _of_elements(found: dict[str, str], text: str) -> ScannedItem:
    number = found.get("01") or found.get("02")
    if number is None:
        raise _refused(text, "the code names no trade item number: application identifier 01 or 02 is needed")
    if told := gtin_fault(number):
        raise _refused(text, told)
    return ScannedItem(
        number=number,
        is_gtin=True,
        lot=found.get("10", ""),
        serial=found.get("21", ""),
        count=_count(found.get("37") or found.get("30"), text),
    )


def _count(written: str | None, text: str) -> int | None:
    if written is None:
        return None
    if not (written.isascii() and written.isdigit()) or not 0 < int(written) <= _MOST:
        raise _refused(text, Worded("the count in the code must be a whole number from 1 to {most}", most=_MOST))
    return int(written)


def _refused(text: str, wanted: str) -> InputFault:
    shown = text.replace(SEPARATOR, SHOWN_SEPARATOR)
    return InputFault((InputProblem("", "code", repr(shown if len(shown) <= 80 else f"{shown[:79]}…"), wanted),))
