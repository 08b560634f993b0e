"""Widths of the columns of a table: shared out as wished, but no title and no cell breaks within a word."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import stringWidth

from spoutline.documents.content import blocks
from spoutline.documents.pdf import styles
from spoutline.documents.unbroken import unbroken

_PADDING: Final = 9.5  # points beside a cell's text, and a hair more
_SPACES: Final = re.compile(r"[ \t\r\n]+")  # a space that does not break, as before a unit, is part of the word


def column_widths(block: blocks.Table, width_pt: float) -> list[float]:
    """Return the width of each column in points; together they are ``width_pt``.

    A column too narrow for the longest word of its title or of its cells takes what it lacks from those that have room
    to spare. Where there is not enough for the cells, the titles alone count; where there is not enough for these, all
    keep their share.
    """
    shares = sum(column.share for column in block.columns)
    wished = [width_pt * column.share / shares for column in block.columns]
    heads = styles.table_setting(block).heads
    titles = [_longest_word(column.title, heads[column.alignment]) + _PADDING for column in block.columns]
    cells = [max(title, _longest_cell_word(block, place) + _PADDING) for place, title in enumerate(titles)]
    return _shared(cells, wished) or _shared(titles, wished) or wished


def _shared(least: list[float], wished: list[float]) -> list[float] | None:
    """Return the wished widths moved so that each is at least ``least``; None where there is not enough in all."""
    lacking = sum(max(0.0, need - width) for need, width in zip(least, wished, strict=True))
    spare = sum(max(0.0, width - need) for need, width in zip(least, wished, strict=True))
    if lacking == 0:
        return wished
    if spare < lacking:
        return None
    return [
        need if width < need else width - lacking * (width - need) / spare
        for need, width in zip(least, wished, strict=True)
    ]


def _longest_cell_word(block: blocks.Table, place: int) -> float:
    alignment, setting = block.columns[place].alignment, styles.table_setting(block)
    texts = {(row.cells[place], row.emphasis is blocks.Emphasis.NONE) for row in block.rows}
    found = (
        _longest_word(unbroken(text), (setting.plain if is_plain else setting.strong)[alignment])
        for text, is_plain in texts
    )
    return max(found, default=0.0)


@lru_cache(maxsize=8192)
def _longest_word(text: str, style: ParagraphStyle) -> float:
    return float(max(stringWidth(word, style.fontName, style.fontSize) for word in _SPACES.split(text)))
