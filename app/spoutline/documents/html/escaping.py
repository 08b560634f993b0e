"""Text made safe for HTML, with the direction in which it reads."""

from __future__ import annotations

import unicodedata
from html import escape
from typing import Final

from spoutline.documents.text_forms import FORMULA_INDEX, FORMULA_POWER
from spoutline.documents.unbroken import unbroken

_RIGHT_TO_LEFT: Final = frozenset({"R", "AL"})
# signs that nobody sees could turn the order of what stands around them
_UNSEEN: Final = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})
_JOINERS: Final = "\u200c\u200d"  # Arabic, Persian and Indic scripts are spelled with them


def plain(text: str) -> str:
    """Return user text without signs that nobody sees; lines stay."""
    if text.isascii() and text.isprintable():
        return text
    kept = (one for one in unicodedata.normalize("NFC", text) if one in "\n\t" or one in _JOINERS or _is_seen(one))
    return "".join(kept)


def _is_seen(character: str) -> bool:
    return unicodedata.category(character) not in _UNSEEN


def html_text(text: str) -> str:
    """Return user text for between two tags; every text passes here or through ``attribute``."""
    return escape(unbroken(plain(text)), quote=False).replace("\n", "<br>")


def attribute(text: str) -> str:
    """Return user text for inside a quoted attribute."""
    return escape(plain(text).replace("\n", " "), quote=True)


def formula_html(text: str) -> str:
    """Return a formula with raised powers and lowered indices, escaped."""
    lowered = FORMULA_INDEX.sub(r"\1<sub>\2</sub>", html_text(text))
    return FORMULA_POWER.sub(r"<sup>\1</sup>", lowered)


def direction(text: str) -> str:
    """Return the attribute that lets a text with a right-to-left script read in its own direction; else nothing."""
    has_right_to_left = not text.isascii() and any(unicodedata.bidirectional(one) in _RIGHT_TO_LEFT for one in text)
    return ' dir="auto"' if has_right_to_left else ""
