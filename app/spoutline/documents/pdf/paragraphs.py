"""Paragraphs that read and break their text once.

A table asks each cell for its height when it is measured, when it is broken over pages and when it is drawn, each time
at the same width; reportlab breaks the lines anew each time. Most cells are a few plain words in one line: these are
neither read for markup nor broken at all.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from typing import Any

from reportlab.lib.enums import TA_CENTER, TA_LEFT, TA_RIGHT
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.platypus import Flowable
from reportlab.platypus import Paragraph as _Paragraph

from spoutline.documents.content.blocks import Link
from spoutline.documents.pdf.fonts import shown
from spoutline.documents.pdf.scripts import Ink, SetLine, Sign, broken, has_other, line_of
from spoutline.documents.pdf.styles import ACCENT

_MARKUP = frozenset("<&\n\r\t")


class Paragraph(_Paragraph):  # type: ignore[misc]
    """A paragraph whose lines stay as they were broken for as long as its width stays."""

    _measured: tuple[float, tuple[float, float]] | None = None
    _words_pt: float | None = None

    def __init__(self, text: str | None, style: ParagraphStyle, **options: Any) -> None:  # noqa: ANN401  # reportlab's own
        plain = "frags" not in options and text is not None and _is_plain(text)
        if plain:
            options["frags"] = [_run(style).clone(text=text)]
        super().__init__(text, style, **options)
        other = has_other("".join(str(getattr(one, "text", "")) for one in self.frags))
        self._lines = _ScriptLines(self) if other else None
        self._words = text if plain and not other and not self.bulletText and is_simple(style) else None
        self._is_one_line = False

    def wrap(self, width_pt: float, height_pt: float) -> tuple[float, float]:
        """Return width and height at a width, as reportlab asks; lines that it dropped are broken again."""
        if self._lines is not None:
            self.width, self.height = width_pt, self._lines.height(width_pt)
            return self.width, self.height
        if self._words is not None and self._fits(self._words, width_pt):
            self.width, self.height = width_pt, float(self.style.leading)
            return self.width, self.height
        if self._measured is None or self._measured[0] != width_pt or not hasattr(self, "blPara"):
            self._measured = (width_pt, super().wrap(width_pt, height_pt))
        return self._measured[1]

    def split(self, width_pt: float, height_pt: float) -> list[Any]:
        """Return the paragraph in two where that helps, as reportlab asks."""
        if self._lines is None:
            if self._is_one_line:  # reportlab looks at the broken lines
                super().wrap(width_pt, height_pt)
            return list(super().split(width_pt, height_pt))
        first, rest = self._lines.parted(width_pt, height_pt)
        return [_Part(self.style, lines) for lines in (first, rest) if lines] if first else []

    def minWidth(self) -> float:  # noqa: N802  (reportlab's name)
        """Return the least width, as reportlab asks."""
        return float(super().minWidth()) if self._lines is None else 0.0

    def draw(self) -> None:
        """Write the lines on the canvas, as reportlab asks."""
        if self._words is not None and self._is_one_line:
            self._draw_line(self._words)
            return
        if self._lines is None:
            super().draw()
            return
        lines = self._lines.lines(self.width)
        _draw(self.canv, lines, self.style, self.width, self.height)
        if self.bulletText:
            bullet = line_of(str(self.bulletText), self.style.bulletFontName, self.style.bulletFontSize)
            bullet.draw(self.canv, self.style.bulletIndent, self.height - self.style.fontSize)

    def _fits(self, words: str, width_pt: float) -> bool:
        """Say whether plain words stand in one line; their width is measured once."""
        if self._words_pt is None:
            self._words_pt = float(stringWidth(words, self.style.fontName, self.style.fontSize))
        room = width_pt - self.style.leftIndent - self.style.rightIndent - self.style.firstLineIndent
        self._is_one_line = self._words_pt <= room
        return self._is_one_line

    def _draw_line(self, words: str) -> None:
        """Write one line where reportlab writes the first of a paragraph: its base line a font's size below the top."""
        style, canvas = self.style, self.canv
        left = style.leftIndent + style.firstLineIndent
        spare = self.width - style.rightIndent - left - (self._words_pt or 0.0)
        x = left + (spare if style.alignment == TA_RIGHT else spare / 2 if style.alignment == TA_CENTER else 0.0)
        text = canvas.beginText(x, self.height - style.fontSize)
        text.setFont(style.fontName, style.fontSize)
        text.setFillColor(style.textColor)
        text.textOut(words)
        canvas.drawText(text)


def linked_paragraph(pieces: Iterable[tuple[str, Link | None]], style: ParagraphStyle) -> Paragraph:
    """Return pieces of text, some of them links, as one paragraph; nothing in them is read as markup."""
    runs = []
    for number, (text, link) in enumerate(pieces):
        run = _run(style).clone(text=shown(text))
        if link is not None:
            run.textColor, run.link = ACCENT, [(number, f"#{link.anchor}")]
        runs.append(run)
    return Paragraph(None, style, frags=runs)


class _ScriptLines:
    """The lines of a paragraph in other scripts, broken once for each width."""

    def __init__(self, paragraph: Paragraph) -> None:
        self._style = paragraph.style
        self._signs = tuple(_signs(paragraph.frags))
        self._known: tuple[float, tuple[SetLine, ...]] | None = None

    def lines(self, width_pt: float) -> tuple[SetLine, ...]:
        style = self._style
        if self._known is None or self._known[0] != width_pt:
            room = max(width_pt - style.leftIndent - style.rightIndent, style.fontSize)
            self._known = width_pt, broken(self._signs, (max(room - style.firstLineIndent, style.fontSize), room))
        return self._known[1]

    def height(self, width_pt: float) -> float:
        return len(self.lines(width_pt)) * float(self._style.leading)

    def parted(self, width_pt: float, height_pt: float) -> tuple[tuple[SetLine, ...], tuple[SetLine, ...]]:
        lines = self.lines(width_pt)
        count = int(height_pt / self._style.leading)
        return lines[:count], lines[count:]


class _Part(Flowable):  # type: ignore[misc]
    """A part of a broken paragraph: its lines stay as they are."""

    def __init__(self, style: ParagraphStyle, lines: tuple[SetLine, ...]) -> None:
        super().__init__()
        self.style, self._lines = style, lines

    def wrap(self, width_pt: float, _height_pt: float) -> tuple[float, float]:
        """Return width and height, as reportlab asks."""
        self.width, self.height = width_pt, len(self._lines) * float(self.style.leading)
        return self.width, self.height

    def split(self, _width_pt: float, height_pt: float) -> list[Any]:
        """Return the part in two, as reportlab asks."""
        count = int(height_pt / self.style.leading)
        parts = (self._lines[:count], self._lines[count:])
        return [_Part(self.style, lines) for lines in parts if lines] if count else []

    def draw(self) -> None:
        """Write the lines on the canvas, as reportlab asks."""
        _draw(self.canv, self._lines, self.style, self.width, self.height)


def _signs(frags: Iterable[Any]) -> Iterator[Sign]:
    for frag in frags:
        if getattr(frag, "lineBreak", False):
            yield Sign("\n", Ink(frag.fontName, frag.fontSize, frag.textColor))
        ink = Ink(frag.fontName, frag.fontSize, frag.textColor, getattr(frag, "rise", 0.0))
        yield from (Sign(one, ink) for one in str(frag.text).replace("\n", " "))


def _draw(canvas: Any, lines: Sequence[SetLine], style: ParagraphStyle, width: float, height: float) -> None:  # noqa: ANN401
    """Write lines from the top; a line that reads from the right stands there, unless its column has another side."""
    canvas.saveState()
    y = height - style.fontSize
    for number, line in enumerate(lines):
        left = style.leftIndent + (style.firstLineIndent if number == 0 else 0.0)
        spare = width - style.rightIndent - left - line.width
        at_right = style.alignment == TA_RIGHT or (style.alignment == TA_LEFT and line.reads_from_right)
        line.draw(canvas, left + (spare if at_right else spare / 2 if style.alignment == TA_CENTER else 0.0), y)
        y -= style.leading
    canvas.restoreState()


def _is_plain(text: str) -> bool:
    """Return whether a text is already what reading its markup would give: one run, no white space outside."""
    return bool(text) and _MARKUP.isdisjoint(text) and text == text.strip() and "  " not in text


@lru_cache(maxsize=128)
def is_simple(style: ParagraphStyle) -> bool:
    """Say whether a style asks for nothing but a font, a colour and a side."""
    plain = style.backColor is None and not style.borderWidth and style.wordWrap is None and not style.textTransform
    return plain and style.alignment in (TA_LEFT, TA_CENTER, TA_RIGHT)


@lru_cache(maxsize=128)
def _run(style: ParagraphStyle) -> Any:  # noqa: ANN401  # reportlab tells no types
    """Return the run of text that reportlab's own reader makes of plain text in a style."""
    return _Paragraph("x", style).frags[0]
