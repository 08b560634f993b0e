"""The one embedded typeface, and text made safe for it."""

from __future__ import annotations

import unicodedata
from functools import lru_cache
from pathlib import Path
from typing import Final
from xml.sax.saxutils import escape

from spoutline import assets
from spoutline.documents.pdf.unbroken import unbroken
from spoutline.model.faults import StoreFault

REGULAR: Final = "DejaVuSans"
BOLD: Final = "DejaVuSans-Bold"
_MISSING: Final = "\u25a1"  # a white square stands for a character that the typeface lacks
_CONTROL = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})


def register_fonts() -> None:
    """Make both weights known to reportlab; safe to call again.

    Raises
    ------
    StoreFault
        A font file that comes with the program is missing.
    """
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFError, TTFont

    known = set(pdfmetrics.getRegisteredFontNames())
    for name in (REGULAR, BOLD):
        if name not in known:
            path = _font_file(name)
            try:
                pdfmetrics.registerFont(TTFont(name, str(path)))
            except (TTFError, OSError) as fault:
                raise StoreFault(f"The font {path} cannot be read: {fault}") from fault
    pdfmetrics.registerFontFamily(REGULAR, normal=REGULAR, bold=BOLD, italic=REGULAR, boldItalic=BOLD)


def markup(text: str) -> str:
    """Return user text for a place that reads markup: printable characters only, markup signs escaped.

    A figure keeps its unit on its line.
    Every text that enters a paragraph passes here, and nowhere else.
    """
    return escape(unbroken(printable(text))).replace("\n", "<br/>")


def printable(text: str) -> str:
    """Return text with control characters dropped and characters that the typeface lacks shown as a square."""
    if text.isascii() and text.isprintable():
        return text  # the typeface holds all of ASCII
    return "".join(map(_printable_character, unicodedata.normalize("NFC", text)))


def _printable_character(character: str) -> str:
    if character == "\n":
        return character
    if character == "\t":
        return " "
    if unicodedata.category(character) in _CONTROL:
        return ""
    return character if ord(character) in _characters() else _MISSING


@lru_cache(maxsize=1)
def _characters() -> frozenset[int]:
    """Return the code points that both weights hold."""
    from reportlab.pdfbase import pdfmetrics

    register_fonts()
    regular, bold = (pdfmetrics.getFont(name).face.charToGlyph for name in (REGULAR, BOLD))
    return frozenset(regular) & frozenset(bold)


def _font_file(name: str) -> Path:
    return assets.resources_folder() / "fonts" / f"{name}.ttf"
