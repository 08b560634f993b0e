"""Lines of text in any script: reordered for scripts that read from the right, joined, and set from several fonts.

Words are broken into lines in the order in which they are read; each line is then put into the order in which it is
seen (Unicode Standard Annex 9, by python-bidi) and its runs are joined to glyphs (by HarfBuzz).
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from typing import Any, Final

from bidi import algorithm
from bidi.mirror import MIRRORED
from reportlab.lib.colors import Color
from reportlab.lib.textsplit import ALL_CANNOT_START
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import ShapedStr, shapeStr
from reportlab.pdfgen.canvas import Canvas

from spoutline.documents.pdf.fonts import in_typeface
from spoutline.documents.pdf.other_fonts import font_for
from spoutline.frozen import frozen

_RIGHT_TO_LEFT: Final = frozenset({"R", "AL"})
_FIRST_OTHER: Final = 0x590  # before it are Latin, Greek, Cyrillic and Armenian letters
_MARKS: Final = frozenset({"Mn", "Me"})
# scripts whose words are written without spaces: a line may end before any of their signs
_UNSPACED: Final = (
    (0x1100, 0x11FF),
    (0x2E80, 0x9FFF),
    (0xA960, 0xA97F),
    (0xAC00, 0xD7FF),
    (0xF900, 0xFAFF),
    (0xFE30, 0xFE4F),
    (0xFF00, 0xFFEF),
    (0x20000, 0x3FFFF),
)


@frozen
class Ink:
    """How a sign is set."""

    font: str
    size: float
    colour: Color | None = None
    rise: float = 0.0


@frozen
class Sign:
    """A character with the way it is set."""

    character: str
    ink: Ink


@frozen
class Run:
    """Signs of one font and one direction as they are seen, from the left; ``width`` in points."""

    text: str
    ink: Ink
    width: float


@frozen
class SetLine:
    """A line as it is seen."""

    runs: tuple[Run, ...]
    reads_from_right: bool = False

    @property
    def width(self) -> float:
        """Width in points."""
        return sum(run.width for run in self.runs)

    def draw(self, canvas: Canvas, x: float, y: float) -> None:
        """Write the line on the canvas from ``x`` on, at the base line ``y``."""
        for run in self.runs:
            text = canvas.beginText(x, y + run.ink.rise)
            text.setFont(run.ink.font, run.ink.size)
            if run.ink.colour is not None:
                text.setFillColor(run.ink.colour)
            text._textOut(run.text)  # the one way that keeps where glyphs were put
            canvas.drawText(text)
            x += run.width


@lru_cache(maxsize=8192)
def is_other(character: str) -> bool:
    """Say whether a character needs more than a glyph of the typeface: an order, joining, or another font."""
    if ord(character) < _FIRST_OTHER:
        return False
    return unicodedata.bidirectional(character) in _RIGHT_TO_LEFT or (
        not in_typeface(character) and font_for(character) is not None
    )


def has_other(text: str) -> bool:
    """Say whether a text is to be set here."""
    return not text.isascii() and any(map(is_other, text))


def reads_from_right(text: str) -> bool:
    """Return whether the first letter of a text is of a script that reads from the right (UAX 9, P2 and P3)."""
    return bool(algorithm.get_base_level(text))


def line_of(text: str, font: str, size: float) -> SetLine:
    """Return a text in one line."""
    return _seen(tuple(Sign(one, Ink(font, size)) for one in text), from_right=reads_from_right(text))


def text_width(text: str, font: str, size: float) -> float:
    """Return the width of a text in one line, in points."""
    return line_of(text, font, size).width if has_other(text) else float(pdfmetrics.stringWidth(text, font, size))


def draw_text(  # noqa: PLR0917  (as many as a text on a canvas has)
    canvas: Canvas, text: str, at: tuple[float, float], font: str, size: float, share: float = 0.0
) -> None:
    """Write a text in one line, in the colour of the canvas; ``share`` of it stands left of the place."""
    x, y = at
    if has_other(text):
        line = line_of(text, font, size)
        line.draw(canvas, x - line.width * share, y)
        return
    canvas.setFont(font, size)
    if share == 0.0:
        canvas.drawString(x, y, text)
    elif share == 1.0:
        canvas.drawRightString(x, y, text)
    else:
        canvas.drawCentredString(x, y, text)


def broken(signs: Sequence[Sign], widths: Iterable[float]) -> tuple[SetLine, ...]:
    """Return signs in lines of at most these widths in points; the last width holds for all further lines."""
    rooms = iter(widths)
    room = next(rooms)
    lines: list[SetLine] = []
    for hard in _hard_lines(signs):
        from_right = reads_from_right("".join(one.character for one in hard))
        line: list[Sign] = []
        used = 0.0
        for word in _pieces(hard, room):
            width = _width(word)
            if line and used + _width(_stripped(word)) > room:
                lines.append(_seen(_stripped(line), from_right=from_right))
                line, used = [], 0.0
                room = next(rooms, room)
            line += word
            used += width
        lines.append(_seen(_stripped(line), from_right=from_right))
        room = next(rooms, room)
    return tuple(lines)


def _hard_lines(signs: Sequence[Sign]) -> Iterator[list[Sign]]:
    line: list[Sign] = []
    for one in signs:
        if one.character == "\n":
            yield line
            line = []
        else:
            line.append(one)
    yield line


def _pieces(signs: Sequence[Sign], room: float) -> Iterator[list[Sign]]:
    """Yield what stays on one line, each with the spaces behind it; a word wider than a line is broken inside."""
    piece: list[Sign] = []
    for one in signs:
        if piece and _may_break(piece[-1].character, one.character):
            yield from _fitting(piece, room)
            piece = []
        piece.append(one)
    if piece:
        yield from _fitting(piece, room)


def _may_break(before: str, after: str) -> bool:
    if before == " ":
        return after != " "
    if after == " " or after in ALL_CANNOT_START or unicodedata.category(after) in _MARKS:
        return False
    return _is_unspaced(before) or _is_unspaced(after)


def _fitting(piece: list[Sign], room: float) -> Iterator[list[Sign]]:
    while len(piece) > 1 and _width(_stripped(piece)) > room:
        count = next((at for at in range(1, len(piece)) if _width(piece[: at + 1]) > room), len(piece))
        yield piece[:count]
        piece = piece[count:]
    yield piece


def _stripped(signs: Sequence[Sign]) -> tuple[Sign, ...]:
    kept = list(signs)
    while kept and kept[-1].character == " ":
        kept.pop()
    return tuple(kept)


def _width(signs: Sequence[Sign]) -> float:
    return sum(run.width for run in _runs(signs, [0] * len(signs)))


def _seen(signs: Sequence[Sign], *, from_right: bool) -> SetLine:
    """Return signs as they are seen: runs in the order of rule L2, each joined."""
    levels = _levels("".join(one.character for one in signs), from_right=from_right)
    runs = _runs(signs, levels)
    order = [levels[at] for at in _starts(signs, levels)]
    for level in range(max(order, default=0), 0, -1):
        at = 0
        while at < len(runs):
            end = at
            while end < len(runs) and order[end] >= level:
                end += 1
            if end > at:
                runs[at:end] = runs[at:end][::-1]
                order[at:end] = order[at:end][::-1]
            at = max(end, at + 1)
    return SetLine(tuple(runs), reads_from_right=from_right)


def _levels(text: str, *, from_right: bool) -> list[int]:
    """Return the resolved embedding level of each character (UAX 9, X1 to I2 and L1)."""
    storage = algorithm.get_empty_storage()
    storage["base_level"] = int(from_right)
    storage["base_dir"] = "R" if from_right else "L"
    algorithm.get_embedding_levels(text, storage)
    algorithm.explicit_embed_and_overrides(storage)
    algorithm.calc_level_runs(storage)
    algorithm.resolve_weak_types(storage, debug=False)
    algorithm.resolve_neutral_types(storage, debug=False)
    algorithm.resolve_implicit_levels(storage, debug=False)
    return [int(one["level"]) for one in storage["chars"]]


def _starts(signs: Sequence[Sign], levels: Sequence[int]) -> list[int]:
    """Return where each run of one level, font and ink begins."""
    keys = [(level, font_of(one), one.ink) for one, level in zip(signs, levels, strict=True)]
    return [at for at, key in enumerate(keys) if at == 0 or key != keys[at - 1]]


def font_of(sign: Sign) -> str:
    """Return the font that a sign is set from."""
    if ord(sign.character) in pdfmetrics.getFont(sign.ink.font).face.charToGlyph:
        return sign.ink.font
    return font_for(sign.character) or sign.ink.font


def _runs(signs: Sequence[Sign], levels: Sequence[int]) -> list[Run]:
    starts = _starts(signs, levels)
    runs = []
    for start, end in zip(starts, [*starts[1:], len(signs)], strict=True):
        first = signs[start]
        ink = Ink(font_of(first), first.ink.size, first.ink.colour, first.ink.rise)
        text = "".join(one.character for one in signs[start:end])
        runs.append(_run(text, ink, from_right=levels[start] % 2 == 1))
    return runs


@lru_cache(maxsize=4096)
def _run(text: str, ink: Ink, *, from_right: bool) -> Run:
    if any(unicodedata.bidirectional(one) in _RIGHT_TO_LEFT for one in text):
        shaped: Any = shapeStr(text, ink.font, ink.size, force=True)
        if isinstance(shaped, ShapedStr):
            width = sum(one.x_advance for one in shaped.__shapeData__) * ink.size / 1000
            return Run(shaped, ink, float(width))
    elif from_right:  # brackets and points between words: turned round, as HarfBuzz does between letters (UAX 9, L4)
        text = "".join(MIRRORED.get(one, one) for one in reversed(text))
    return Run(text, ink, float(pdfmetrics.stringWidth(text, ink.font, ink.size)))


@lru_cache(maxsize=4096)
def _is_unspaced(character: str) -> bool:
    code = ord(character)
    return any(first <= code <= last for first, last in _UNSPACED)
