"""What no text and no measure of a person's document may hold, whichever field it stands in."""

from __future__ import annotations

import re
from typing import Final

from pydantic import BaseModel, ValidationInfo, field_validator

SMALLEST_MEASURE: Final = 1e-9  # in the unit of any field; nothing on a station is measured finer
# NUL; signs that turn the reading direction of what follows (Unicode Standard Annex 9, explicit formatting characters);
# halves of a sign. Other controls are data, and are made visible or dropped where they are shown.
_HIDDEN: Final = re.compile("[\x00\u202a-\u202e\u2066-\u2069\ud800-\udfff]")

_FREE: Final = "notes"  # a remark may be pasted from anywhere and names nothing


class PlainValues(BaseModel):
    """A document whose texts show all that they hold and whose numbers are measures."""

    @field_validator("*", mode="after")
    @classmethod
    def _is_plain(cls, value: object, info: ValidationInfo) -> object:
        for one in value if isinstance(value, tuple) else (value,):
            if isinstance(one, str) and info.field_name != _FREE and (found := _HIDDEN.search(one)):
                raise ValueError(f"leave out the hidden sign U+{ord(found[0]):04X}, character {found.start() + 1}")
            if isinstance(one, float) and 0 < abs(one) < SMALLEST_MEASURE:
                if one is value and not cls._must_be_positive(info.field_name or ""):
                    return 0.0  # what is left of a conversion: 32 degrees Fahrenheit come out as 6e-14 Celsius
                raise ValueError(f"a number of at least {SMALLEST_MEASURE:g} is needed")
        return value

    @classmethod
    def _must_be_positive(cls, name: str) -> bool:
        return any(getattr(bound, "gt", None) == 0 for bound in cls.model_fields[name].metadata)
