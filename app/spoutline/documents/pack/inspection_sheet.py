"""The inspection plan: what is looked at at each position, how often, by which source, and when it is next due."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from spoutline.documents.content.blocks import Block, Column, Heading, Paragraph, Role, Row, Table
from spoutline.documents.pack.cover import sets_note
from spoutline.documents.pack.setting_words import sourced
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.inspection import DueItem
from spoutline.model.plan import SitePlan
from spoutline.model.record import WearEntry

_LABELS_SHOWN = 12


def inspection_blocks(
    site_plan: SitePlan, due: Iterable[DueItem], wear: Iterable[WearEntry], story: Story
) -> Iterator[Block]:
    """Return the plan, items due together told once with their positions, then the wear log.

    Positions without a set are named, so that nobody takes them for forgotten.
    """
    yield Heading(story.word(Word.INSPECTION), 1)
    yield Paragraph(story.word(Word.INSPECTION_LEAD), Role.LEAD)
    yield sets_note(site_plan, story)
    bare = ", ".join(plan.position.label for plan in site_plan.positions if plan.chosen is None)
    if bare:
        yield Paragraph(story.phrases.fill("nothing_to_inspect", positions=bare), Role.NOTE)
    columns = (
        Column(story.word(Word.NEXT_DUE), 1.1),
        Column(story.word(Word.EVERY), 0.8),
        Column(story.word(Word.WHAT), 3.6),
        Column(story.word(Word.POSITIONS), 1.8),
        Column(story.word(Word.LAST_DONE), 1.1),
        Column(story.word(Word.SOURCE), 2.2),
    )
    yield Table(columns, tuple(_due_row(group, story) for group in due_groups(due)), dense=True)
    entries = sorted(wear, key=lambda entry: (entry.done_on, entry.position))
    if not entries:
        return
    yield Heading(story.word(Word.WEAR_LOG), 2)
    heads = (Word.DATE, Word.POSITION, Word.TAKEN_OFF, Word.FITTED, Word.REASON, Word.NOTE)
    rows = tuple(
        Row(
            (
                story.day(entry.done_on),
                entry.position,
                str(entry.removed),
                str(entry.fitted),
                story.word(entry.reason),
                entry.note,
            )
        )
        for entry in entries
    )
    yield Table(tuple(Column(story.word(word), 1.0) for word in heads), rows)


def due_groups(due: Iterable[DueItem]) -> tuple[tuple[DueItem, ...], ...]:
    """Return items that are due on one day for several positions together, earliest first."""

    def day(one: DueItem) -> tuple[str, str, str]:
        return (one.next_due.isoformat(), one.item.id.value, one.last_done.isoformat() if one.last_done else "")

    return tuple(tuple(group) for _, group in groupby(sorted(due, key=day), key=day))


def item_text(due: DueItem, story: Story) -> str:
    """Return what is looked at, with the bounds of the figure that is read."""
    text = story.word(due.item.id)
    if due.dimension is None:
        return text
    low = None if due.lower is None else due.lower.value
    high = None if due.upper is None else due.upper.value
    return f"{text} {story.window(low, high, due.dimension)}"


def positions_text(group: tuple[DueItem, ...]) -> str:
    """Return the positions of a group; a long list is cut and says how many more there are."""
    labels = [one.position for one in group]
    more = len(labels) - _LABELS_SHOWN
    return ", ".join(labels) if more <= 0 else f"{', '.join(labels[:_LABELS_SHOWN])} +{more}"


def _due_row(group: tuple[DueItem, ...], story: Story) -> Row:
    first = group[0]
    return Row(
        (
            story.day(first.next_due),
            story.word(first.item.interval),
            item_text(first, story),
            positions_text(group),
            story.day(first.last_done) if first.last_done else "–",
            sourced(first.item.source, first.item.status, story),
        )
    )
