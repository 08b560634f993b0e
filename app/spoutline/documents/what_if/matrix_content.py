"""Several other answers side by side as a document of one page: what each costs, and what must be changed when."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Document,
    Heading,
    KeyValues,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.what_if.frame import what_if_document
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
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


def matrix_content(found: WhatIfMatrix, story: Story, dated: date | None = None) -> Document:
    """Return the paper; ``dated`` is printed where given, and no clock is read."""
    return what_if_document(found.before, found.columns, story, _blocks(found, story, dated), dated)


def _blocks(found: WhatIfMatrix, story: Story, dated: date | None) -> Iterator[Block]:
    yield Heading(f"{story.word(Word.TITLE)} · {matrix_title(found, story)}", 1)
    rows = [
        Named(story.word(PaperWord.POSITIONS), scope_text(found.columns[0], story)),
        Named(story.word(Word.TODAY), sets_head(found.before, story)),
    ]
    if dated is not None:
        rows.append(Named(story.word(PaperWord.DATE), story.day(dated)))
    yield KeyValues(tuple(rows))
    titles = column_titles(found, story)
    yield _table("", titles, sum_lines(found, story))
    yield Heading(story.word(PaperWord.POSITIONS), 2)
    yield _table(story.word(PaperWord.POSITION), titles, position_lines(found, story))
    yield Paragraph(legend_text(story), Role.NOTE)
    parts = part_lines(found, story)
    yield Heading(story.word(Word.WHEN), 2)
    if parts:
        yield _table(story.word(PaperWord.PLACE), titles, parts)
        yield Paragraph(part_legend(story), Role.NOTE)
    else:
        yield Paragraph(story.word(Word.NOTHING_LEAVES))
    yield Paragraph(f"{story.word(Word.NOTE)} {story.phrases.text['advice']}", Role.NOTE)


def _table(name: str, titles: Iterable[str], lines: Iterable[MatrixLine]) -> Table:
    columns = (Column(name, 3.2), *(Column(title, 1.2, Alignment.RIGHT) for title in titles))
    return Table(columns, tuple(Row((line.name, line.today, *line.cells)) for line in lines), tight=True)
