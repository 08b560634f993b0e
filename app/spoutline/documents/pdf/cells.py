"""The cells of a table: plain texts broken into lines once, all else as paragraphs.

A table of many rows holds the same few texts over and over; how a text breaks at a width is found out once. Lines go
straight to the page, with no paragraph object, no state to save and no coordinates to move for each cell.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import Any, Protocol

from reportlab.lib.colors import Color
from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.pdfgen.canvas import Canvas

from spoutline.documents.content.blocks import Link
from spoutline.documents.pdf.fonts import markup, shown
from spoutline.documents.pdf.formulas import formula_markup, is_formed
from spoutline.documents.pdf.links import lay_link
from spoutline.documents.pdf.paragraphs import Paragraph, is_simple, linked_paragraph
from spoutline.documents.pdf.scripts import has_other
from spoutline.documents.pdf.styles import ACCENT
from spoutline.frozen import frozen

_KEPT = 8192  # texts whose lines are remembered
_ENDLESS = 1e6
_OTHER_SPACE = frozenset("\n\r\t")
_LINK_BELOW = 1 / 8  # of the size: how far a link reaches below its base line


class Cell(Protocol):
    """What stands in one cell, already broken to the width of its column."""

    @property
    def height(self) -> float:
        """Height in points."""

    def draw(self, writer: LineWriter, left: float, top: float) -> None:
        """Write it with its upper left corner there, in points."""

    def parted(self, room_pt: float) -> tuple[Cell | None, Cell | None]:
        """Return what fits into ``room_pt`` from the top, and the rest; None for nothing."""


class LineWriter:
    """Writes lines on a canvas; those that follow each other share one text object and name a font once."""

    def __init__(self, canvas: Canvas) -> None:
        self.canvas = canvas
        self._text: Any = None
        self._style: ParagraphStyle | None = None
        self._colour: Color | None = None
        self._written: dict[tuple[Any, ...], tuple[str, int]] = canvas.__dict__.setdefault("_written_lines", {})

    def line(self, words: str, style: ParagraphStyle, colour: Color, at: tuple[float, float]) -> None:
        """Write words with their base line at a place, in points."""
        if self._text is None:
            self._text, self._style, self._colour = self.canvas.beginText(), None, None
        text = self._text
        if style is not self._style:
            text.setFont(style.fontName, style.fontSize, style.leading)
            self._style = style
        if colour is not self._colour:
            text.setFillColor(colour)
            self._colour = colour
        text.setTextOrigin(*at)
        # what the words become in the document, cut into the parts of its font, is found out once; they may begin in
        # another part than the one that the last words ended in
        key = (words, style, text._curSubset)
        if key not in self._written:
            self._written[key] = text._formatText(words), text._curSubset
        code, text._curSubset = self._written[key]
        text._code.append(code)

    def close(self) -> None:
        """Put what was written on the page; it stands before whatever is drawn next."""
        if self._text is not None:
            self.canvas.drawText(self._text)
            self._text = None


@frozen
class PlainCell:
    """Lines of one style; ``spare`` is the room in points that each line leaves."""

    lines: tuple[str, ...]
    spare: tuple[float, ...]
    style: ParagraphStyle

    @property
    def height(self) -> float:
        """Height in points."""
        return len(self.lines) * float(self.style.leading)

    def draw(self, writer: LineWriter, left: float, top: float) -> None:
        """Write the lines; the base line of the first is a font's size below the top, as reportlab has it."""
        style = self.style
        at_right = style.alignment == TA_RIGHT
        y = top - style.fontSize
        for words, spare in zip(self.lines, self.spare, strict=True):
            writer.line(words, style, style.textColor, (left + spare if at_right else left, y))
            y -= style.leading

    def parted(self, room_pt: float) -> tuple[Cell | None, Cell | None]:
        """Return the lines that fit, and the others."""
        count = max(int(room_pt / self.style.leading), 0)
        parts = (
            PlainCell(lines, spare, self.style) if lines else None
            for lines, spare in ((self.lines[:count], self.spare[:count]), (self.lines[count:], self.spare[count:]))
        )
        return next(parts), next(parts)


@frozen
class LinkedLine:
    """One line of pieces, each with its width in points and the anchor that it leads to, empty for none."""

    pieces: tuple[tuple[str, float, str], ...]
    spare: float
    style: ParagraphStyle

    @property
    def height(self) -> float:
        """Height in points."""
        return float(self.style.leading)

    def draw(self, writer: LineWriter, left: float, top: float) -> None:
        """Write the pieces one behind the other, and lay a link over each that leads anywhere."""
        style = self.style
        x, y = left + (self.spare if style.alignment == TA_RIGHT else 0.0), top - style.fontSize
        bottom = y - style.fontSize * _LINK_BELOW
        for words, width, anchor in self.pieces:
            writer.line(words, style, ACCENT if anchor else style.textColor, (x, y))
            if anchor:
                lay_link(writer.canvas, anchor, (x, bottom, x + width, bottom + style.leading))
            x += width

    def parted(self, room_pt: float) -> tuple[Cell | None, Cell | None]:
        """Return the line where it belongs."""
        return (self, None) if room_pt >= self.height else (None, self)


class ParagraphCell:
    """A paragraph, for formulas, other scripts and links over several lines."""

    def __init__(self, paragraph: Any, width_pt: float) -> None:  # noqa: ANN401  # reportlab tells no types
        self._paragraph, self._width_pt = paragraph, width_pt
        self.height = float(paragraph.wrap(width_pt, _ENDLESS)[1])

    def draw(self, writer: LineWriter, left: float, top: float) -> None:
        """Draw the paragraph behind what was written before."""
        writer.close()
        self._paragraph.drawOn(writer.canvas, left, top - self.height)

    def parted(self, room_pt: float) -> tuple[Cell | None, Cell | None]:
        """Return the paragraph in two where it can be parted."""
        if room_pt >= self.height:
            return self, None
        parts = self._paragraph.split(self._width_pt, room_pt)
        if len(parts) < 2:
            return None, self
        first, rest = (ParagraphCell(part, self._width_pt) for part in parts)
        return first, rest


def text_cell(text: str, style: ParagraphStyle, width_pt: float, *, formula: bool = False) -> Cell | None:
    """Return a text for a cell of ``width_pt`` points; nothing for an empty one.

    A ``formula`` has raised powers and lowered indices.
    """
    if not text:
        return None
    if (plain := _plain(shown(text), style, width_pt, formula=formula)) is not None:
        return plain
    told = formula_markup(text) if formula else markup(text)
    return ParagraphCell(Paragraph(told, style), width_pt)


def linked_cell(pieces: Iterable[tuple[str, Link | None]], style: ParagraphStyle, width_pt: float) -> Cell:
    """Return pieces of text, some of them links, for a cell of ``width_pt`` points."""
    told = tuple(pieces)
    one_line = _linked_line(told, style, width_pt)
    return one_line or ParagraphCell(linked_paragraph(told, style), width_pt)


@lru_cache(maxsize=_KEPT)
def _plain(words: str, style: ParagraphStyle, width_pt: float, *, formula: bool) -> PlainCell | None:
    """Return a text as plain lines; None where it needs more than words in one style."""
    if not _is_words(words) or not is_simple(style) or has_other(words) or (formula and is_formed(words)):
        return None
    room = width_pt - style.leftIndent - style.rightIndent - style.firstLineIndent
    lines = (words,) if _width(words, style) <= room else _broken(words, style, width_pt)
    return PlainCell(lines, tuple(room - _width(line, style) for line in lines), style)


def _linked_line(pieces: tuple[tuple[str, Link | None], ...], style: ParagraphStyle, width_pt: float) -> Cell | None:
    told = [(shown(text), link.anchor if link is not None else "") for text, link in pieces]
    whole = "".join(words for words, _ in told)
    if not _is_words(whole) or not is_simple(style) or has_other(whole):
        return None
    measured = tuple((words, _width(words, style), anchor) for words, anchor in told)
    spare = width_pt - sum(width for _, width, _ in measured)
    return LinkedLine(measured, spare, style) if spare >= 0 else None


def _is_words(text: str) -> bool:
    """Say whether a text is words with one space between them: what breaking would leave of it."""
    return bool(text) and _OTHER_SPACE.isdisjoint(text) and text == text.strip() and "  " not in text


def _broken(words: str, style: ParagraphStyle, width_pt: float) -> tuple[str, ...]:
    """Return the lines that reportlab breaks words into."""
    paragraph = linked_paragraph(((words, None),), style)  # signs of markup in it are words like others
    paragraph.wrap(width_pt, _ENDLESS)
    return tuple(" ".join(line) for _, line in paragraph.blPara.lines)


@lru_cache(maxsize=_KEPT)
def _width(words: str, style: ParagraphStyle) -> float:
    return float(stringWidth(words, style.fontName, style.fontSize))
