"""Annex on request: why no set fits. For each position its obstacles with the numbers, then a table of ways out."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.grouping import LikePositions
from spoutline.documents.content.position_section import short_labels
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.no_set_text import Reason
from spoutline.explain.plan.story import Story
from spoutline.model.funnel import SetReasons
from spoutline.model.no_set import NoSetReasons, Trial
from spoutline.model.part_ref import told_apart


def no_set_blocks(
    groups: Sequence[LikePositions], reasons: Mapping[str, SetReasons | NoSetReasons], story: Story
) -> Iterator[Block]:
    """Return the annex; ``reasons`` are by the label of a position, of which those against a set are told."""
    found = ((like, reasons.get(like.plan.position.label)) for like in groups)
    told = [(like, one) for like, one in found if isinstance(one, NoSetReasons)]
    if not told:
        return
    yield PageBreak(unless_left=0.5)
    yield Heading(story.phrases.text["no_set_annex"], 1)
    yield Paragraph(story.phrases.text["no_set_note"], Role.NOTE)
    for like, one in told:
        yield Heading(short_labels(like.positions, story), 2)
        yield from reasons_against(one, story)


def reasons_against(found: NoSetReasons, story: Story) -> Iterator[Block]:
    """Yield what keeps one position from a set, every way out, and whether that is all."""
    for conflict in found.conflicts:
        reason = story.conflict_reason(conflict)
        yield Paragraph(reason.text, Role.LEAD)
        yield Bullets(tuple(" ".join(_flat(behind)) for behind in reason.behind))
    if found.trials:
        yield Paragraph(story.phrases.text["no_set_ways"], Role.LEAD)
        rows = tuple(_row(number, trial, found, story) for number, trial in enumerate(found.trials, 1))
        yield Table(_columns(story), rows, dense=True)
    yield Bullets(story.no_set_closing(found))


def _flat(reason: Reason) -> Iterator[str]:
    """Yield a sentence and all that stands behind it, in reading order."""
    yield reason.text if reason.text.endswith(".") else f"{reason.text}."
    for one in reason.behind:
        yield from _flat(one)


def _columns(story: Story) -> tuple[Column, ...]:
    text = story.phrases.text
    return (
        Column(story.word(Word.NUMBER), 0.4, Alignment.RIGHT),
        Column(text["no_set_way"], 4.2),
        Column(text["no_set_means"], 1.4),
        Column(story.word(Word.PARTS), 2.2),
        Column(story.word(Word.PRICE), 1.2, Alignment.RIGHT),
    )


def _row(number: int, trial: Trial, found: NoSetReasons, story: Story) -> Row:
    told = story.trial(trial, found.position)
    return Row((str(number), told.text, told.concession, ", ".join(told_apart(trial.freed.refs)), told.price))
