"""Paragraphs that read and break their text once.

A table asks each cell for its height when it is measured, when it is broken over pages and when it is drawn, each time
at the same width; reportlab breaks the lines anew each time.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from typing import Any

from reportlab.lib.enums import TA_CENTER, TA_LEFT, TA_RIGHT
from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import Flowable
from reportlab.platypus import Paragraph as _Paragraph

from spoutline.documents.pdf.scripts import Ink, SetLine, Sign, broken, has_other, line_of

_MARKUP = frozenset("<&\n\r\t")


class Paragraph(_Paragraph):  # type: ignore[misc]
    """A paragraph whose lines stay as they were broken for as long as its width stays."""

    _measured: tuple[float, tuple[float, float]] | None = None

    def __init__(self, text: str | None, style: ParagraphStyle, **options: Any) -> None:  # noqa: ANN401  # reportlab's own
        if "frags" not in options and text is not None and _is_plain(text):
            options["frags"] = [_run(style).clone(text=text)]
        super().__init__(text, style, **options)

        self._lines = (
            _ScriptLines(self) if has_other("".join(str(getattr(one, "text", "")) for one in self.frags)) else None
        )

    def wrap(self, width_pt: float, height_pt: float) -> tuple[float, float]:
        """Return width and height at a width, as reportlab asks; lines that it dropped are broken again."""
        if self._lines is not None:
            self.width, self.height = width_pt, self._lines.height(width_pt)
            return self.width, self.height
        if self._measured is None or self._measured[0] != width_pt or not hasattr(self, "blPara"):
            self._measured = (width_pt, super().wrap(width_pt, height_pt))
        return self._measured[1]

    def split(self, width_pt: float, height_pt: float) -> list[Any]:
        """Return the paragraph in two where that helps, as reportlab asks."""
        if self._lines is None:
            return list(super().split(width_pt, height_pt))
        first, rest = self._lines.parted(width_pt, height_pt)
        return [_Part(self.style, lines) for lines in (first, rest) if lines] if first else []

    def minWidth(self) -> float:  # noqa: N802  (reportlab's name)
        """Return the least width, as reportlab asks."""
        return float(super().minWidth()) if self._lines is None else 0.0

    def draw(self) -> None:
        """Write the lines on the canvas, as reportlab asks."""
        if self._lines is None:
            super().draw()
            return
        lines = self._lines.lines(self.width)
        _draw(self.canv, lines, self.style, self.width, self.height)
        if self.bulletText:
            bullet = line_of(str(self.bulletText), self.style.bulletFontName, self.style.bulletFontSize)
            bullet.draw(self.canv, self.style.bulletIndent, self.height - self.style.fontSize)


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
    return bool(text) and _MARKUP.isdisjoint(text) and text == text.strip()


@lru_cache(maxsize=128)
def _run(style: ParagraphStyle) -> Any:  # noqa: ANN401  # reportlab tells no types
    """Return the run of text that reportlab's own reader makes of plain text in a style."""
    return _Paragraph("x", style).frags[0]
