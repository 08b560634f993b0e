"""Several other answers side by side as lines of a terminal."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence

from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_if_matrix_text import (
    MatrixLine,
    column_titles,
    legend_text,
    matrix_title,
    part_legend,
    part_lines,
    position_lines,
    sum_lines,
)
from spoutline.explain.plan.what_if_text import scope_text
from spoutline.model.what_if_matrix import WhatIfMatrix

_WIDTH = 110
_COLUMN = 16  # letters of a column's title
_NAME = 44  # letters of the first column; longer names take further lines


def matrix_lines(found: WhatIfMatrix, story: Story) -> Iterator[str]:
    """Yield what each answer costs, then position by position, then what must be changed when."""
    scope = scope_text(found.columns[0], story)
    yield f"{story.word(Word.TITLE)} · {matrix_title(found, story)} ({scope})"
    yield f"{story.word(Word.TODAY)}{story.writing.colon} {sets_head(found.before, story)}"
    titles = tuple(_title_lines(column_titles(found, story)))
    parts = part_lines(found, story)
    sections = (
        ("", sum_lines(found, story), ""),
        (story.word(PaperWord.POSITIONS), position_lines(found, story), legend_text(story)),
        (story.word(Word.WHEN), parts, part_legend(story) if parts else story.word(Word.NOTHING_LEAVES)),
    )
    widths = _widths((*titles, *(line for _, lines, _ in sections for line in lines)))
    for title, lines, legend in sections:
        yield ""
        if title:
            yield title
        if lines:
            yield from (text for one in titles for text in _row(one, widths))
        yield from (text for line in lines for text in _row(line, widths))
        yield from textwrap.wrap(legend, _WIDTH)
    yield ""
    yield from textwrap.wrap(story.word(Word.NOTE), _WIDTH)


def _title_lines(titles: Sequence[str]) -> Iterator[MatrixLine]:
    """Yield the titles of the columns, long ones over several lines."""
    broken = [textwrap.wrap(title, _COLUMN) for title in titles]
    for place in range(max(map(len, broken))):
        first, *others = (lines[place] if place < len(lines) else "" for lines in broken)
        yield MatrixLine("", first, tuple(others))


def _widths(lines: Sequence[MatrixLine]) -> tuple[int, ...]:
    return tuple(max(map(len, column)) for column in zip(*((line.today, *line.cells) for line in lines), strict=True))


def _row(line: MatrixLine, widths: Sequence[int]) -> Iterator[str]:
    """Yield a row, its name broken over several lines where it is long."""
    first, *more = textwrap.wrap(line.name, _NAME) or [""]
    cells = "  ".join(f"{cell:>{width}}" for cell, width in zip((line.today, *line.cells), widths, strict=True))
    yield f"  {first:<{_NAME}}  {cells}".rstrip()
    yield from (f"  {text}" for text in more)
