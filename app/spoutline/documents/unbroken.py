"""Figures that keep their unit on the same line."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from spoutline.units.accepted import SHOWN

_NO_BREAK: Final = "\N{NO-BREAK SPACE}"
_PREFIXED: Final = ("kΩ", "MΩ", "kΩ/m", "MΩ/m", "kΩ/ft", "MΩ/ft", "day")
_UNITS: Final = sorted({*_PREFIXED, *(unit for pair in SHOWN.values() for unit in pair if unit)}, key=len, reverse=True)
_UNIT_BEHIND: Final = rf"(?:{'|'.join(map(re.escape, _UNITS))})(?![\w/²³·])"
# a fraction stays with its whole inches; feet may end a line
_FIGURE: Final = re.compile(rf"(?<=\d) (?={_UNIT_BEHIND}|\d+/\d+ in(?!\w))")


@lru_cache(maxsize=8192)  # a large bill says the same few texts in many cells
def unbroken(text: str) -> str:
    """Return ``text`` with a no-break space between each figure and its unit, so that no line ends between the two."""
    return _FIGURE.sub(_NO_BREAK, text)
