"""What the papers made so far could not show as it is written."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from spoutline.model.faults import InputNote

_FONTS = "spoutline.documents.pdf.other_fonts"


def printing_notes() -> tuple[InputNote, ...]:
    """Return notes of characters that no font has, each once; nothing where no paper was set in this process."""
    if _FONTS not in sys.modules:  # nothing was set yet: no need to load what sets
        return ()
    from spoutline.documents.pdf.other_fonts import missing_characters

    return missing_characters.take()
