"""The one embedded typeface, and text made safe for it."""

from __future__ import annotations

import unicodedata
from functools import lru_cache
from pathlib import Path
from typing import Final
from xml.sax.saxutils import escape

from spoutline import assets
from spoutline.documents.pdf.other_fonts import font_for, missing_characters
from spoutline.documents.unbroken import unbroken
from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded

REGULAR: Final = "DejaVuSans"
BOLD: Final = "DejaVuSans-Bold"
# how a character is printed that no font has: readable, and to be looked up
_NUMBER: Final = "U+{:04X}"
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
                raise StoreFault(Worded("The font {path} cannot be read: {reason}", path=path, reason=fault)) from fault
    pdfmetrics.registerFontFamily(REGULAR, normal=REGULAR, bold=BOLD, italic=REGULAR, boldItalic=BOLD)


def markup(text: str) -> str:
    """Return user text for a place that reads markup: printable characters only, markup signs escaped.

    A figure keeps its unit on its line.
    Every text that enters a paragraph passes here, or through ``shown``.
    """
    return escape(shown(text)).replace("\n", "<br/>")


def shown(text: str) -> str:
    """Return user text as words for the page, outside markup: printable, each figure on one line with its unit."""
    return unbroken(printable(text))


def printable(text: str) -> str:
    """Return text with control characters dropped; what no font has stands there by its numbers, in brackets."""
    if text.isascii() and text.isprintable():
        return text  # the typeface holds all of ASCII
    if unicodedata.is_normalized("NFC", text) and _ordinary().issuperset(text):
        return text
    shown, lacking = [], ""
    for character in map(_seen, unicodedata.normalize("NFC", text)):
        if character and not _has(character):
            missing_characters.add(character)
            lacking += character
            continue
        if lacking and character:
            shown.append(_numbers(lacking))
            lacking = ""
        shown.append(character)
    return "".join([*shown, _numbers(lacking)])


def _seen(character: str) -> str:
    if character == "\t":
        return " "
    return "" if character != "\n" and unicodedata.category(character) in _CONTROL else character


def _has(character: str) -> bool:
    return character == "\n" or in_typeface(character) or font_for(character) is not None


def in_typeface(character: str) -> bool:
    """Say whether both weights of the embedded typeface hold a character."""
    return ord(character) in _characters()


def _numbers(characters: str) -> str:
    return f"[{' '.join(_NUMBER.format(ord(one)) for one in characters)}]" if characters else ""


@lru_cache(maxsize=1)
def _characters() -> frozenset[int]:
    """Return the code points that both weights hold."""
    from reportlab.pdfbase import pdfmetrics

    register_fonts()
    regular, bold = (pdfmetrics.getFont(name).face.charToGlyph for name in (REGULAR, BOLD))
    return frozenset(regular) & frozenset(bold)


@lru_cache(maxsize=1)
def _ordinary() -> frozenset[str]:
    """Return the characters that are printed as they stand."""
    held = map(chr, _characters())
    return frozenset({"\n", *(one for one in held if unicodedata.category(one) not in _CONTROL)})


def _font_file(name: str) -> Path:
    return assets.resources_folder() / "fonts" / f"{name}.ttf"
