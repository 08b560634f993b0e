"""The record of a position: what was measured, tried and fitted, with photos and who answers for it."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Mapping, Sequence

from spoutline.documents.content.blocks import (
    Block,
    Bullets,
    Column,
    Emphasis,
    Heading,
    KeyValues,
    Paragraph,
    Picture,
    Role,
    Row,
    SignatureLines,
    Table,
)
from spoutline.documents.pack.commissioning_form import expected_text, limit_text
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.record import (
    CommissioningRecord,
    JudgedEntry,
    JudgedRecord,
    ReadingVerdict,
    RecordItemId,
    UnreadField,
)
from spoutline.units.meter_readings import MeterReading, reading_as_shown

_MARKS = {
    ReadingVerdict.WITHIN: "✓",
    ReadingVerdict.UNUSUAL: "!",
    ReadingVerdict.OUTSIDE: "✗",
    ReadingVerdict.OPEN: "?",
}
_FAULTS = frozenset({ReadingVerdict.OUTSIDE, ReadingVerdict.OPEN})


def record_blocks(judged: JudgedRecord, photos: Mapping[str, bytes], story: Story, sets_note: Block) -> Iterator[Block]:
    """Return the record; ``photos`` are the pictures by SHA-256, ``sets_note`` says which sets it is held against."""
    record = judged.record
    yield Heading(f"{story.word(Word.RECORD)}{story.writing.colon} {record.position}", 1)
    yield Paragraph(story.word(Word.RECORD_LEAD), Role.LEAD)
    yield KeyValues(tuple(_head_rows(record, story)))
    yield sets_note
    if any(one.verdict is ReadingVerdict.OUTSIDE for one in judged.entries):
        yield Paragraph(f"✗ {story.word(Word.OUT_OF_LIMIT)}")
    if record.unread:
        yield Paragraph(f"? {story.word(Word.ASKED_AGAIN)}:")
        yield Bullets(tuple(unread_text(one, story) for one in record.unread))
    yield _entries_table(judged, story)
    yield Heading(story.word(Word.AS_BUILT), 2)
    yield from _parts_blocks(record, story)
    if record.remarks:
        yield Heading(story.word(Word.REMARKS), 2)
        yield Paragraph(record.remarks)
    if record.photos:
        yield Heading(story.word(Word.PHOTOS), 2)
    for photo in record.photos:
        caption = ": ".join(item for item in (photo.name, photo.caption) if item)
        if photo.sha256 in photos:
            yield Picture(photos[photo.sha256], caption)
        else:
            yield Paragraph(f"{caption} ({photo.sha256})", Role.NOTE)
    yield SignatureLines((story.word(Word.SIGNATURE), story.word(Word.DATE)))


def records_digest(records: Sequence[CommissioningRecord]) -> str:
    """Return the SHA-256 of the canonical JSON of records, one behind the other: changed ones have another."""
    return hashlib.sha256("\n".join(record.model_dump_json() for record in records).encode()).hexdigest()


def entered_text(one: JudgedEntry, story: Story) -> str:
    """Return what was entered for an item."""
    entry = one.entry
    if entry is None:
        return story.word(Word.NOT_ENTERED)
    parts = []
    if one.item.dimension is not None and (entry.reading is not None or entry.over_range):
        reading = MeterReading(value=entry.reading, over_range=entry.over_range)
        shown = reading_as_shown(reading, one.item.dimension, story.display)
        parts.append(shown if entry.reading is not None else f"{shown} ({story.word(Word.OPEN_CIRCUIT)})")
    if entry.result is not None:
        parts.append(story.word(entry.result))
    return ", ".join(parts) or story.word(Word.NOT_ENTERED)


def unread_text(one: UnreadField, story: Story) -> str:
    """Return a field that is asked for again: what it is of, its name in the form, what stood there, what is right."""
    item = next((item for item in RecordItemId if f"_{item.value}_" in one.field), None)
    title = f"{story.word(item)} ({one.field})" if item is not None else one.field
    return f"{title} = {one.value!r}: {one.wanted}"


def verdict_text(verdict: ReadingVerdict, story: Story) -> str:
    """Return the verdict with a mark that reads without colour."""
    return f"{_MARKS[verdict]} {story.word(verdict)}"


def _head_rows(record: CommissioningRecord, story: Story) -> Iterator[Named]:
    missing = story.word(Word.NOT_ENTERED)
    yield Named(story.word(Word.SITE), record.site)
    yield Named(story.word(Word.POSITION), record.position)
    yield Named(story.word(Word.REVISION), record.plan_revision)
    yield Named(story.word(Word.DONE_ON), story.day(record.done_on) if record.done_on else missing)
    yield Named(story.word(Word.DONE_BY), record.done_by or missing)
    yield Named(story.word(Word.LICENCE), record.licence or missing)
    yield Named(story.word(Word.INSTRUMENTS), record.instruments or missing)
    yield Named(story.word(Word.SIGNED_BY), record.signed_by or missing)


def _entries_table(judged: JudgedRecord, story: Story) -> Table:
    columns = (
        Column(story.word(Word.WHAT), 2.8),
        Column(story.word(Word.READING), 1.3),
        Column(story.word(Word.EXPECTED), 1.1),
        Column(story.word(Word.LIMIT), 1.4),
        Column(story.word(Word.VERDICT), 1.7),
        Column(story.word(Word.NOTE), 1.5),
    )
    rows = tuple(
        Row(
            (
                story.word(one.item.id),
                entered_text(one, story),
                expected_text(one.item, story),
                limit_text(one.item, story),
                verdict_text(one.verdict, story),
                one.entry.note if one.entry is not None else "",
            ),
            Emphasis.FAULT if one.verdict in _FAULTS else Emphasis.NONE,
        )
        for one in judged.entries
        if one.item.applies or one.entry is not None
    )
    return Table(columns, rows)


def _parts_blocks(record: CommissioningRecord, story: Story) -> Iterator[Block]:
    changes = {change.planned: change for change in record.changes}
    columns = (
        Column(story.word(Word.NUMBER), 0.4),
        Column(story.word(Word.PLANNED), 1.4),
        Column(story.word(Word.FITTED), 1.4),
        Column(story.word(Word.REASON), 1.8),
        Column(story.word(Word.SERIAL), 1.4),
        Column(story.word(Word.SERVICE_UNTIL), 1.2),
    )
    rows = []
    for number, planned in enumerate(record.parts, start=1):
        change = changes.get(planned)
        reason = "" if change is None else "; ".join(text for text in (story.word(change.reason), change.note) if text)
        fitted = str(planned) if change is None else ", ".join(map(str, change.fitted)) or story.phrases.text["nothing"]
        mark = record.mark(number)
        until = story.day(mark.service_until) if mark.service_until is not None else ""
        rows.append(Row((str(number), str(planned), fitted, reason, mark.serial, until)))
    if rows:
        yield Table(columns, tuple(rows))
    if not record.changes:
        yield Paragraph(story.word(Word.NO_CHANGES), Role.NOTE)
