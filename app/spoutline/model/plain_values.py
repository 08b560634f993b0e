"""What no text and no measure of a person's document may hold, whichever field it stands in."""

from __future__ import annotations

import re
from typing import Final

from pydantic import BaseModel, ValidationInfo, field_validator

from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded

SMALLEST_MEASURE: Final = 1e-9  # in the unit of any field; nothing on a station is measured finer
REPLACEMENT: Final = "\ufffd"  # the sign that stands for one that cannot be shown (Unicode Standard, 23.8)
# NUL; halves of a sign; every sign that shows nothing (Unicode Standard, 5.21 and DerivedCoreProperties.txt,
# Default_Ignorable_Code_Point: what sets the reading direction, zero-width blanks, tags) but those that the spelling of
# some languages and pictures needs: joiners (U+200C, U+200D, U+034F), Hangul fillers and variation selectors. Other
# controls, line breaks and tabs among them, are data, and are made visible or dropped where they are shown.
_HIDDEN: Final = re.compile(
    "[\x00\xad\u061c\u17b4\u17b5\u180e\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff0-\ufffb"
    "\U0001bca0-\U0001bca3\U0001d173-\U0001d17a\U000e0000-\U000e00ff\U000e01f0-\U000e0fff\ud800-\udfff]"
)

FREE_FIELDS: Final = frozenset({"notes"})  # a remark may be pasted from anywhere: its hidden signs are made visible


def hidden_sign(text: str) -> str:
    """Return what to do about the first hidden sign of a text; empty where it has none."""
    found = _HIDDEN.search(text)
    return (
        Worded("leave out the hidden sign U+{ord:04X}, character {start}", ord=ord(found[0]), start=found.start() + 1)
        if found
        else ""
    )


def without_hidden_signs(text: str) -> str:
    """Return a text with each hidden sign made visible."""
    return _HIDDEN.sub(REPLACEMENT, text)


def measures_nothing(number: float) -> bool:
    """Say whether a number is what is left of a conversion or a fault, and no measure of anything."""
    return 0 < abs(number) < SMALLEST_MEASURE


class PlainValues(BaseModel):
    """A document whose texts show all that they hold and whose numbers are measures.

    A hidden sign is refused in what something is named by, and made visible in a remark.
    """

    @field_validator("*", mode="after")
    @classmethod
    def _is_plain(cls, value: object, info: ValidationInfo) -> object:
        if isinstance(value, str) and info.field_name in FREE_FIELDS:
            return without_hidden_signs(value)
        for one in value if isinstance(value, tuple) else (value,):
            for text in (one.number, one.maker) if isinstance(one, PartRef) else (one,):
                if isinstance(text, str) and (told := hidden_sign(text)):
                    raise ValueError(told)
            if isinstance(one, float) and measures_nothing(one):
                if one is value and not cls._must_be_positive(info.field_name or ""):
                    return 0.0  # what is left of a conversion: 32 degrees Fahrenheit come out as 6e-14 Celsius
                raise ValueError(
                    Worded("a number of at least {smallest_measure:g} is needed", smallest_measure=SMALLEST_MEASURE)
                )
        return value

    @classmethod
    def _must_be_positive(cls, name: str) -> bool:
        return any(getattr(bound, "gt", None) == 0 for bound in cls.model_fields[name].metadata)
