"""The rules of a jurisdiction as a document: every limit with its source, and what differs from where it was copied."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

import spoutline
from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Block,
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
from spoutline.explain.phrases.keeper_words import KeeperWord as Word
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.limit import Jurisdiction, Limit, LimitId, LimitStatus

_UNSURE = frozenset({LimitStatus.MEMORY, LimitStatus.COMMON_PRACTICE, LimitStatus.JUDGEMENT})


def rule_table_content(
    profile: Jurisdiction, parent: Jurisdiction | None, story: Story, dated: date | None = None
) -> Document:
    """Return the rules of a jurisdiction; ``parent`` is what an own one was copied from."""
    named = story.phrases.tell(profile.title)
    title = f"{story.word(Word.RULE_TABLE)}{story.writing.colon} {named}"
    return Document(
        title=title,
        subject=story.word(Word.RULE_TABLE_SUBJECT),
        author=f"Spoutline {spoutline.__version__}",
        language=story.phrases.language,
        paper=paper_for(profile.id if parent is None else parent.id),
        running_head=f"{story.word(Word.RULE_TABLE)} · {profile.id}",
        running_foot=story.day(dated) if dated else profile.edition,
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=(Heading(title, 1), *_blocks(profile, parent, story)),
    )


def _blocks(profile: Jurisdiction, parent: Jurisdiction | None, story: Story) -> Iterator[Block]:
    before = {} if parent is None else {limit.id: limit for limit in parent.limits}
    facts = [
        Named(story.word(PaperWord.JURISDICTION), f"{story.phrases.tell(profile.title)} ({profile.id})"),
        Named(story.word(PaperWord.RULES), profile.edition),
    ]
    if parent is not None:
        changed = sum(_differs(limit, before) for limit in profile.limits)
        facts.append(Named(story.word(Word.COPIED_FROM), f"{story.phrases.tell(parent.title)} ({parent.id})"))
        facts.append(Named(story.word(Word.CHANGED_ROWS), str(changed)))
    yield KeyValues(tuple(facts))
    yield Paragraph(story.word(PaperWord.LIMITS_NOTE), Role.NOTE)
    columns = (
        Column(story.word(PaperWord.LIMIT), 2.6),
        Column(story.word(PaperWord.VALUE), 1.8),
        Column(story.word(PaperWord.SOURCE), 3.6),
        Column(story.word(PaperWord.LIMIT_STATUS), 1.6),
    )
    yield Table(columns, tuple(_row(limit, before, story) for limit in profile.limits), dense=True)
    if profile.questions:
        yield Heading(story.word(Word.TO_ASK), 2)
        for question in profile.questions:
            yield Paragraph(story.phrases.tell(question))
    yield Paragraph(story.phrases.text["advice"], Role.NOTE)


def _differs(limit: Limit, before: dict[LimitId, Limit]) -> bool:
    """Say whether an own row is another than the one that it was copied from."""
    return bool(before) and before.get(limit.id) != limit


def _row(limit: Limit, before: dict[LimitId, Limit], story: Story) -> Row:
    value = story.limit_value(limit)
    if _differs(limit, before):
        old = before.get(limit.id)
        value += "\n" + story.word(Word.BEFORE).format(value="–" if old is None else story.limit_value(old))
    cells = (story.limit_title(limit), value, story.limit_source(limit), story.limit_status(limit.status))
    return Row(cells, Emphasis.FAULT if limit.status in _UNSURE else Emphasis.NONE)
