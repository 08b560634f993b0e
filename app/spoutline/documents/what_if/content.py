"""Today and another answer side by side as a document: sums, sets, parts, checks, and why nothing fits."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Document,
    Emphasis,
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
from spoutline.explain.plan.what_if_text import (
    NOTHING,
    broken_as_a_whole,
    check_rows,
    checks_title,
    counted_part,
    labels_text,
    no_set_reasons,
    notes,
    part_rows,
    practice_sentences,
    price_then_word,
    scope_text,
    set_text,
    summary_text,
    then_word,
    title_text,
)
from spoutline.model.what_if import PartCount, WhatIfEffect, WhatIfPosition, WhatIfResult

_FAULTS = (WhatIfEffect.LOSES_SET, WhatIfEffect.NO_SET, WhatIfEffect.NONE_LASTS)


def what_if_content(found: WhatIfResult, story: Story, dated: date | None = None) -> Document:
    """Return the paper; ``dated`` is printed where given, and no clock is read."""
    return what_if_document(found.before, (found,), story, _blocks(found, story, dated), dated)


def _blocks(found: WhatIfResult, story: Story, dated: date | None) -> Iterator[Block]:
    yield Heading(title_text(found, story), 1)
    yield Paragraph(summary_text(found, story), Role.LEAD)
    yield KeyValues(tuple(_head(found, story, dated)))
    yield _positions_table(found, story)
    for note in notes(found, story):
        yield Paragraph(note)
    yield Paragraph(story.word(Word.NOTE), Role.NOTE)
    yield from _order(found, story)
    for group in found.grouped:
        yield from _group(group, found, story)
    yield Paragraph(story.phrases.text["advice"], Role.NOTE)


def _head(found: WhatIfResult, story: Story, dated: date | None) -> Iterator[Named]:
    before, after = found.before.provenance, found.made_from
    yield Named(story.word(PaperWord.SITE), found.before.survey.site.name)
    yield Named(story.word(PaperWord.POSITIONS), scope_text(found, story))
    yield Named(story.word(Word.TODAY), sets_head(found.before, story))
    rules, edition = found.before.jurisdiction, story.edition(before.catalogue_edition)
    told = [story.phrases.tell(rules.title)]
    if found.jurisdiction.id != rules.id:
        told.append(story.phrases.tell(found.jurisdiction.title))
    yield Named(story.word(PaperWord.JURISDICTION), " → ".join(told))
    editions = dict.fromkeys((edition, story.edition(after.catalogue_edition)))
    yield Named(story.word(PaperWord.CATALOGUE), " → ".join(editions))
    if dated is not None:
        yield Named(story.word(PaperWord.DATE), story.day(dated))


def _positions_table(found: WhatIfResult, story: Story) -> Table:
    currency, totals = found.currency, found.totals
    columns = (
        Column(story.word(PaperWord.POSITION), 1.3),
        Column(story.word(Word.TODAY), 2.4),
        Column(then_word(found, story), 2.4),
        Column(f"{story.word(Word.PRICE_TODAY)}, {currency}", 1.25, Alignment.RIGHT),
        Column(f"{price_then_word(found, story)}, {currency}", 1.25, Alignment.RIGHT),
        Column(f"{story.word(Word.DIFFERENCE)}, {currency}", 1.25, Alignment.RIGHT),
        Column(story.word(Word.EFFECT), 1.7),
    )
    rows = []
    for group in found.grouped:
        one = group[0]
        prices = (one.price_before_minor, one.price_after_minor, one.difference_minor)
        rows.append(
            Row(
                (
                    labels_text(group),
                    set_text(one.before, story),
                    set_text(one.after, story),
                    *(_times(minor, len(group), currency, story) for minor in prices),
                    story.word(one.effect),
                ),
                Emphasis.FAULT if one.effect in _FAULTS else Emphasis.NONE,
            )
        )
    sums = (totals.before_minor, totals.after_minor, totals.difference_minor)
    told = (story.bare_money(minor, currency) for minor in sums)
    rows.append(Row((story.word(PaperWord.TOTAL), "", "", *told, ""), Emphasis.TOTAL))
    return Table(columns, tuple(rows), dense=True)


def _times(minor: int | None, count: int, currency: str, story: Story) -> str:
    """Return an amount of one position, with the number of positions where they are several."""
    if minor is None:
        return NOTHING
    each = story.bare_money(minor, currency)
    return f"{count} × {each}" if count > 1 else each


def _order(found: WhatIfResult, story: Story) -> Iterator[Block]:
    """Yield what goes and what comes, all positions together."""
    if not found.leaving and not found.coming:
        yield Paragraph(story.word(Word.NOTHING_LEAVES))
        return
    for word, parts in ((Word.LEAVING, found.leaving), (Word.COMING, found.coming)):
        if parts:
            yield Heading(story.word(word), 2)
            yield _parts_table(parts, found.currency, story)


def _parts_table(parts: Sequence[PartCount], currency: str, story: Story) -> Table:
    columns = (
        Column(story.word(PaperWord.QUANTITY), 0.5, Alignment.RIGHT),
        Column(story.word(PaperWord.PART_NAME), 5.0),
        Column(story.word(PaperWord.UNIT_PRICE), 1.0, Alignment.RIGHT),
    )
    return Table(columns, tuple(Row(counted_part(one, currency, story)) for one in parts), dense=True, whole=True)


def _group(group: Sequence[WhatIfPosition], found: WhatIfResult, story: Story) -> Iterator[Block]:
    one = group[0]
    yield Heading(f"{labels_text(group)}{story.writing.colon} {story.word(one.effect)}", 2)
    if len(group) > 1:
        yield Paragraph(story.word(Word.ONE_OF), Role.NOTE)
    reasons = no_set_reasons(one, story)
    if reasons:
        yield Bullets(reasons)
    parts = tuple(part_rows(one, story))
    if parts:
        titles = (story.word(PaperWord.PLACE), story.word(Word.TODAY), then_word(found, story), story.word(Word.EFFECT))
        shares = (1.3, 1.3, 1.3, 4.0)
        columns = tuple(Column(title, share) for title, share in zip(titles, shares, strict=True))
        rows = tuple(Row((part.name, part.today, part.then, part.remark)) for part in parts)
        yield Table(columns, rows, dense=True, whole=True)
    broken = broken_as_a_whole(one, story)
    if broken:
        yield Paragraph(story.word(Word.BROKEN_AS_A_WHOLE), Role.LEAD)
        yield Bullets(broken)
    practice = tuple(practice_sentences(one, story))
    if practice:
        yield Bullets(practice)
    yield from _checks(one, then_word(found, story), story)


def _checks(one: WhatIfPosition, then: str, story: Story) -> Iterator[Block]:
    rows = tuple(Row((row.name, row.today, row.then)) for row in check_rows(one, story))
    if not rows:
        if one.before.chosen is not None and one.after.chosen is not None:
            yield Paragraph(story.word(Word.NO_CHECKS))
        return
    columns = (
        Column(checks_title(one, story), 2.0),
        Column(story.word(Word.TODAY), 3.0),
        Column(then, 3.0),
    )
    yield Table(columns, rows, dense=True)
