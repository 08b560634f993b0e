"""What no text and no measure of a person's document may hold, whichever field it stands in."""

from __future__ import annotations

import re
from typing import Final

from pydantic import BaseModel, ValidationInfo, field_validator

from spoutline.model.part_ref import PartRef

SMALLEST_MEASURE: Final = 1e-9  # in the unit of any field; nothing on a station is measured finer
REPLACEMENT: Final = "\ufffd"  # the sign that stands for one that cannot be shown (Unicode Standard, 23.8)
# NUL; every sign that sets or turns the reading direction and shows nothing itself, the marks LRM, RLM and ALM among
# them (Unicode Standard Annex 9, table of explicit formatting characters); halves of a sign. Other controls are data,
# and are made visible or dropped where they are shown.
_HIDDEN: Final = re.compile("[\x00\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ud800-\udfff]")
_HALVES: Final = re.compile("[\ud800-\udfff]")  # no file and no database can hold them

FREE_FIELDS: Final = frozenset({"notes"})  # a remark may be pasted from anywhere and names nothing


def hidden_sign(text: str, field: str = "") -> str:
    """Return what to do about the first hidden sign of a text; empty where it has none.

    ``field`` is the name of the field that holds the text: free remarks may hold what nothing is named by.
    """
    found = (_HALVES if field in FREE_FIELDS else _HIDDEN).search(text)
    return f"leave out the hidden sign U+{ord(found[0]):04X}, character {found.start() + 1}" if found else ""


def without_hidden_signs(text: str, field: str = "") -> str:
    """Return a text with each hidden sign made visible."""
    return (_HALVES if field in FREE_FIELDS else _HIDDEN).sub(REPLACEMENT, text)


def measures_nothing(number: float) -> bool:
    """Say whether a number is what is left of a conversion or a fault, and no measure of anything."""
    return 0 < abs(number) < SMALLEST_MEASURE


class PlainValues(BaseModel):
    """A document whose texts show all that they hold and whose numbers are measures."""

    @field_validator("*", mode="after")
    @classmethod
    def _is_plain(cls, value: object, info: ValidationInfo) -> object:
        for one in value if isinstance(value, tuple) else (value,):
            for text in (one.number, one.maker) if isinstance(one, PartRef) else (one,):
                if isinstance(text, str) and (told := hidden_sign(text, info.field_name or "")):
                    raise ValueError(told)
            if isinstance(one, float) and measures_nothing(one):
                if one is value and not cls._must_be_positive(info.field_name or ""):
                    return 0.0  # what is left of a conversion: 32 degrees Fahrenheit come out as 6e-14 Celsius
                raise ValueError(f"a number of at least {SMALLEST_MEASURE:g} is needed")
        return value

    @classmethod
    def _must_be_positive(cls, name: str) -> bool:
        return any(getattr(bound, "gt", None) == 0 for bound in cls.model_fields[name].metadata)
