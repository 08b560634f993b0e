"""The commissioning form: a page for each position, to be filled in on screen or by hand."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from enum import StrEnum

from spoutline.documents.content.blocks import (
    Block,
    ChoiceBox,
    Column,
    Columns,
    FormTable,
    Heading,
    KeyValues,
    PageBreak,
    Paragraph,
    Role,
    ScanCode,
    TextBox,
)
from spoutline.documents.pack.form_fields import (
    NOT_CHOSEN,
    FormField,
    ItemField,
    PartField,
    field_name,
    item_field,
    part_field,
    planned_text,
)
from spoutline.documents.pack.setting_words import liquid_text, tag_of
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import HangingSet, PositionPlan, SitePlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import SWAP_REASONS, ItemResult, RecordItem, RecordItemId
from spoutline.rules.work.records import record_items
from spoutline.units.display import Display

_HEAD_SHARE = 0.82
_MOST_LINES = 2


def form_blocks(site_plan: SitePlan, story: Story, namesakes: tuple[PartRef, ...] = ()) -> Iterator[Block]:
    """Return a page for each position that has a set.

    A part is shown with its maker where another one of the site or of ``namesakes`` has its number.
    """
    known = (*site_plan.refs, *namesakes)
    plans = [plan for plan in site_plan.positions if plan.chosen is not None]
    for number, plan in enumerate(plans, start=1):
        if number > 1:
            yield PageBreak()
        yield from _position_form(number, plan, site_plan, story, known)


def limit_text(item: RecordItem, story: Story) -> str:
    """Return what an item's reading must keep; empty for a trial."""
    if item.dimension is None:
        return ""
    low = None if item.lower is None else item.lower.value
    high = None if item.upper is None else item.upper.value
    return story.window(low, high, item.dimension, typed=True)


def reading_text(value: float, dimension: Dimension, display: Display) -> str:
    """Return an SI value of a reading as the position sheet writes it, so that two can be compared at sight."""
    return display.reading(value, dimension)


def expected_text(item: RecordItem, story: Story) -> str:
    """Return what was computed for an item; empty for a trial."""
    if item.dimension is None or item.expected is None:
        return ""
    if item.id is RecordItemId.CLEARANCE and item.expected <= 0.0:
        return story.phrases.text["on_ground"]  # no clearance is left to measure
    return reading_text(item.expected, item.dimension, story.display)


def _position_form(
    number: int, plan: PositionPlan, site_plan: SitePlan, story: Story, known: tuple[PartRef, ...]
) -> Iterator[Block]:
    tag = str(tag_of(plan, site_plan))
    yield Heading(f"{story.word(Word.FORM)}{story.writing.colon} {plan.position.label}", 1)
    head = KeyValues(
        (
            Named(story.word(Word.SITE), site_plan.survey.site.name),
            Named(story.word(Word.DISPENSER), plan.position.dispenser),
            Named(story.word(Word.LIQUID), liquid_text(plan.position, story)),
            Named(story.phrases.text["sets_title"], sets_head(replace(site_plan, positions=(plan,)), story)),
        )
    )
    lead = Paragraph(story.word(Word.FORM_LEAD), Role.NOTE)
    yield Columns((head, lead), (ScanCode(tag, story.word(Word.SCAN)),), _HEAD_SHARE)
    asked = [item for item in record_items(plan) if item.applies]
    yield _readings_table(number, [item for item in asked if item.dimension is not None], story)
    yield _trials_table(number, [item for item in asked if item.dimension is None], story)
    if plan.chosen is not None:
        yield Heading(story.word(Word.AS_BUILT), 2)
        yield _parts_table(number, plan.chosen.hanging_set, story, known)
    yield Heading(story.word(Word.SIGNATURE), 2)
    yield _people_table(number, story)
    notes = ((FormField.INSTRUMENTS, Word.INSTRUMENTS, 1.0), (FormField.REMARKS, Word.REMARKS, 1.6))
    yield FormTable(
        tuple(Column(story.word(word), share) for _, word, share in notes),
        (tuple(_text(number, field, story.word(word), lines=_MOST_LINES) for field, word, _ in notes),),
    )
    yield _origin_table(number, tag, plan, story, known)


def _readings_table(number: int, items: Iterable[RecordItem], story: Story) -> FormTable:
    columns = (
        Column(story.word(Word.WHAT), 3.2),
        Column(story.word(Word.EXPECTED), 1.1),
        Column(story.word(Word.LIMIT), 1.9),
        Column(story.word(Word.READING), 1.4),
        Column("", 0.9),
        Column(story.word(Word.NOTE), 1.8),
    )
    return FormTable(columns, tuple(_reading_row(number, item, story) for item in items))


def _reading_row(number: int, item: RecordItem, story: Story) -> tuple[str | TextBox | ChoiceBox, ...]:
    title = story.word(item.id)
    unit = story.display.asked_unit(item.dimension) if item.dimension is not None else ""
    reading = TextBox(item_field(number, item.id, ItemField.READING), f"{title}, {unit}")
    return (title, expected_text(item, story), limit_text(item, story), reading, unit, _note_box(number, item, story))


def _trials_table(number: int, items: Iterable[RecordItem], story: Story) -> FormTable:
    """Return what is tried; it has neither figure nor limit, so that its words keep to one line."""
    columns = (
        Column(story.word(Word.WHAT), 5.6),
        Column(story.word(Word.RESULT), 1.6),
        Column(story.word(Word.NOTE), 3.1),
    )
    options = _choices(ItemResult, story)
    rows: tuple[tuple[str | TextBox | ChoiceBox, ...], ...] = tuple(
        (
            story.word(item.id),
            ChoiceBox(item_field(number, item.id, ItemField.RESULT), story.word(item.id), options, NOT_CHOSEN),
            _note_box(number, item, story),
        )
        for item in items
    )
    return FormTable(columns, rows)


def _note_box(number: int, item: RecordItem, story: Story) -> TextBox:
    tip = f"{story.word(item.id)}{story.writing.colon} {story.word(Word.NOTE)}"
    return TextBox(item_field(number, item.id, ItemField.NOTE), tip)


def _parts_table(number: int, hanging_set: HangingSet, story: Story, known: tuple[PartRef, ...]) -> FormTable:
    columns = (
        Column(story.word(Word.NUMBER), 0.4),
        Column(story.word(Word.PLACE), 1.3),
        Column(story.word(Word.PLANNED), 1.0),
        Column(story.word(Word.FITTED), 1.5),
        Column(story.word(Word.REASON), 1.5),
        Column(story.word(Word.SERIAL), 1.5),
        Column(story.word(Word.SERVICE_UNTIL), 1.2),
    )
    reasons = _choices(SWAP_REASONS, story)
    shown = told_apart(hanging_set.refs, known)
    rows: tuple[tuple[str | TextBox | ChoiceBox, ...], ...] = tuple(
        (
            str(place),
            story.word(link.slot),
            shown[place - 1],
            TextBox(
                part_field(number, place, PartField.FITTED),
                f"{story.word(link.slot)}{story.writing.colon} {story.word(Word.FITTED)}",
                shown[place - 1],
            ),
            ChoiceBox(
                part_field(number, place, PartField.REASON),
                f"{story.word(link.slot)}{story.writing.colon} {story.word(Word.REASON)}",
                reasons,
                NOT_CHOSEN,
            ),
            *(
                TextBox(part_field(number, place, field), f"{story.word(link.slot)}: {story.word(word)}")
                for field, word in ((PartField.SERIAL, Word.SERIAL), (PartField.SERVICE_UNTIL, Word.SERVICE_UNTIL))
            ),
        )
        for place, link in enumerate(hanging_set.links, start=1)
    )
    return FormTable(columns, rows)


def _choices(members: Iterable[StrEnum], story: Story) -> tuple[tuple[str, str], ...]:
    return ((NOT_CHOSEN, " "), *((member.value, story.word(member)) for member in members))


def _people_table(number: int, story: Story) -> FormTable:
    fields = (
        (FormField.DONE_BY, Word.DONE_BY),
        (FormField.LICENCE, Word.LICENCE),
        (FormField.DONE_ON, Word.DONE_ON),
        (FormField.SIGNED_BY, Word.SIGNED_BY),
    )
    columns = tuple(Column(story.word(word), 1.0) for _, word in fields)
    return FormTable(columns, (tuple(_text(number, field, story.word(word)) for field, word in fields),))


def _origin_table(number: int, tag: str, plan: PositionPlan, story: Story, known: tuple[PartRef, ...]) -> FormTable:
    """Return what the form was made from, in fields that nobody sees or changes, so that it can be read back."""
    planned = planned_text(plan.chosen.hanging_set.refs, known) if plan.chosen is not None else ""
    made_from = (
        (FormField.TAG, story.word(Word.REVISION), tag),
        (FormField.PLANNED, story.word(Word.PLANNED), planned),
        (FormField.LANGUAGE, "", story.phrases.language),
        (FormField.UNITS, "", story.display.system.value),
    )
    row = tuple(
        TextBox(field_name(number, field), tip or field.value, value, read_only=True, hidden=True)
        for field, tip, value in made_from
    )
    return FormTable(tuple(Column("", 1.0) for _ in row), (row,))


def _text(number: int, field: FormField, tip: str, *, lines: int = 1) -> TextBox:
    return TextBox(field_name(number, field), tip, lines=lines)
