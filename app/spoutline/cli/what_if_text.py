"""Another answer as lines of a terminal."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence

from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_if_text import (
    SideBySide,
    broken_as_a_whole,
    check_rows,
    checks_title,
    counted_part,
    difference_text,
    labels_text,
    no_set_reasons,
    notes,
    part_rows,
    practice_sentences,
    price_text,
    price_then_word,
    scope_text,
    set_text,
    summary_text,
    then_word,
    title_text,
)
from spoutline.model.what_if import WhatIfPosition, WhatIfResult

_WIDTH = 110


def what_if_lines(found: WhatIfResult, story: Story) -> Iterator[str]:
    """Yield today and then side by side: the sums, what goes and comes, then position by position."""
    colon, currency, totals = story.writing.colon, found.currency, found.totals
    yield f"{title_text(found, story)} ({scope_text(found, story)})"
    yield f"{story.word(Word.TODAY)}{colon} {sets_head(found.before, story)}"
    yield ""
    yield from textwrap.wrap(summary_text(found, story), _WIDTH)
    yield (
        f"{story.word(Word.PRICE_TODAY)}{colon} {story.money(totals.before_minor, currency)}; "
        f"{story.inside(price_then_word(found, story))}{colon} {story.money(totals.after_minor, currency)}; "
        f"{story.inside(story.word(Word.DIFFERENCE))}{colon} {story.signed_money(totals.difference_minor, currency)}"
    )
    for note in (*notes(found, story), story.word(Word.NOTE)):
        yield from textwrap.wrap(note, _WIDTH)
    for word, parts in ((Word.LEAVING, found.leaving), (Word.COMING, found.coming)):
        if parts:
            yield ""
            yield story.word(word)
            for one in parts:
                quantity, name, price = counted_part(one, currency, story)
                yield f"  {quantity:>3} × {name}  {price}"
    if not found.leaving and not found.coming:
        yield story.word(Word.NOTHING_LEAVES)
    for group in found.grouped:
        yield ""
        yield from _group_lines(group, found, story)


def _group_lines(group: Sequence[WhatIfPosition], found: WhatIfResult, story: Story) -> Iterator[str]:
    one, colon, currency = group[0], story.writing.colon, found.currency
    yield f"{labels_text(group)}{colon} {story.word(one.effect)}"
    today_word, other_word = story.word(Word.TODAY), then_word(found, story)
    width = max(len(today_word), len(other_word))
    then = price_text(one.price_after_minor, currency, story)
    if one.difference_minor is not None:
        then = f"{then} ({difference_text(one.difference_minor, currency, story)})"
    for word, plan, price in (
        (today_word, one.before, price_text(one.price_before_minor, currency, story)),
        (other_word, one.after, then),
    ):
        yield f"  {word:<{width}}  {set_text(plan, story)}  {price}"
    yield from _sentences("", no_set_reasons(one, story))
    yield from _part_lines(story.word(PaperWord.PARTS), tuple(part_rows(one, story)))
    yield from _sentences(story.word(Word.BROKEN_AS_A_WHOLE), broken_as_a_whole(one, story))
    yield from _sentences("", tuple(practice_sentences(one, story)))
    yield from _check_lines(checks_title(one, story), tuple(check_rows(one, story)), colon)


def _sentences(title: str, sentences: Sequence[str]) -> Iterator[str]:
    if sentences and title:
        yield f"  {title}"
    for sentence in sentences:
        yield from textwrap.wrap(sentence, _WIDTH, initial_indent="  - ", subsequent_indent="    ")


def _part_lines(title: str, rows: Sequence[SideBySide]) -> Iterator[str]:
    if not rows:
        return
    yield f"  {title}"
    name, today, then = (max(len(getattr(row, side)) for row in rows) for side in ("name", "today", "then"))
    for row in rows:
        line = f"{row.name:<{name}}  {row.today:<{today}} → {row.then:<{then}}  {row.remark}"
        yield from textwrap.wrap(line, _WIDTH, initial_indent="    ", subsequent_indent="      ")


def _check_lines(title: str, rows: Sequence[SideBySide], colon: str) -> Iterator[str]:
    if rows:
        yield f"  {title}"
    for row in rows:
        line = f"{row.name}{colon} {row.today} → {row.then}"
        yield from textwrap.wrap(line, _WIDTH, initial_indent="    ", subsequent_indent="      ")
