"""Today and another answer side by side as tree rows: a head for like positions, their parts and checks below."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_if_matrix_text import (
    MatrixLine,
    column_titles,
    part_lines,
    position_lines,
    sum_lines,
)
from spoutline.explain.plan.what_if_text import (
    SideBySide,
    broken_as_a_whole,
    check_rows,
    checks_title,
    difference_text,
    labels_text,
    no_set_reasons,
    part_rows,
    practice_sentences,
    price_text,
    then_word,
)
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.model.what_if import WhatIfEffect, WhatIfPosition, WhatIfResult
from spoutline.model.what_if_matrix import WhatIfMatrix

_TONES = {
    WhatIfEffect.LOSES_SET: Tone.BAD,
    WhatIfEffect.MUST_CHANGE: Tone.CAUTION,
    WhatIfEffect.MAY_STAY: Tone.NOTE,
    WhatIfEffect.PRICE_CHANGES: Tone.NOTE,
    WhatIfEffect.GETS_SET: Tone.GOOD,
    WhatIfEffect.NO_SET: Tone.BAD,
    WhatIfEffect.SAME: Tone.GOOD,
    WhatIfEffect.NONE_LASTS: Tone.BAD,
    WhatIfEffect.OTHER_LASTS: Tone.CAUTION,
    WhatIfEffect.LASTS: Tone.GOOD,
}


def tone_of(effect: WhatIfEffect) -> Tone:
    """Return the mark of what becomes of a position."""
    return _TONES[effect]


def what_if_titles(story: Story, found: WhatIfResult | None = None) -> tuple[str, ...]:
    """Return the titles of the columns, those of ``found`` where it is there."""
    then = story.word(Word.THEN) if found is None else then_word(found, story)
    return ("", story.word(Word.TODAY), then, story.word(Word.EFFECT))


def what_if_nodes(found: WhatIfResult, story: Story) -> tuple[Node, ...]:
    """Return one head for each group of positions of which the same is to be told."""
    return tuple(_head(group, found.currency, story) for group in found.grouped)


def _head(group: Sequence[WhatIfPosition], currency: str, story: Story) -> Node:
    one = group[0]
    told = story.word(one.effect)
    if one.difference_minor:
        told = f"{told} ({difference_text(one.difference_minor, currency, story)})"
    prices = (price_text(minor, currency, story) for minor in (one.price_before_minor, one.price_after_minor))
    return Node(
        cells=(labels_text(group), *prices, story.sentence(told)),
        record=one.label,
        tone=tone_of(one.effect),
        hint=story.sentence(story.word(one.effect)),
        is_head=True,
        children=tuple(_below(one, story)),
    )


def _below(one: WhatIfPosition, story: Story) -> Iterator[Node]:
    yield from _told(no_set_reasons(one, story))
    for row in part_rows(one, story):
        yield Node(cells=(row.name, row.today, row.then, story.sentence(row.remark)), hint=row.remark)
    broken = broken_as_a_whole(one, story)
    if broken:
        yield Node(cells=(story.word(Word.BROKEN_AS_A_WHOLE),), spans=True, is_head=True)
        yield from _told(broken)
    yield from _told(practice_sentences(one, story))
    checks = tuple(_check_node(row) for row in check_rows(one, story))
    if checks:
        yield Node(cells=(checks_title(one, story), "", "", ""), is_head=True, children=checks)


def _told(sentences: Iterable[str]) -> Iterator[Node]:
    yield from (Node(cells=(sentence,), spans=True, hint=sentence) for sentence in sentences)


def _check_node(row: SideBySide) -> Node:
    return Node(cells=(row.name, row.today, row.then, ""), hint=f"{row.name}: {row.today} → {row.then}")


def matrix_titles(found: WhatIfMatrix, story: Story) -> tuple[str, ...]:
    """Return the titles of the columns of several answers."""
    return ("", *column_titles(found, story))


def matrix_nodes(found: WhatIfMatrix, story: Story) -> tuple[Node, ...]:
    """Return the sums of several answers, then the positions, then what must be changed when."""
    below = ((PaperWord.POSITIONS, position_lines(found, story)), (Word.WHEN, part_lines(found, story)))
    sections = (
        Node(cells=(story.word(word),), record=word, is_head=True, children=tuple(map(_line_node, lines)))
        for word, lines in below
        if lines
    )
    return (*map(_line_node, sum_lines(found, story)), *sections)


def _line_node(line: MatrixLine) -> Node:
    return Node(cells=(line.name, line.today, *line.cells), record=line.name, hint=line.name)
