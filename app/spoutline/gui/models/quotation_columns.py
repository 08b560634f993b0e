"""Columns of the quotations in the book, of their steps, and of what a change of catalogue or prices touches."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal

from spoutline.book.quotation_records import QuotationEntry, QuotationEvent, StoredQuotation
from spoutline.explain.plan.story import Story
from spoutline.explain.writing.money import decimals
from spoutline.frozen import frozen
from spoutline.gui.escaping import tip
from spoutline.gui.local_days import day_text, moment_text
from spoutline.gui.models.node_tree import Node
from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.price_gap import GapReason
from spoutline.model.quotation_status import QuotationStatus
from spoutline.planning.refit.touched import Touch, TouchedPart

TONES = {
    QuotationStatus.DRAFT: Tone.NOTE,
    QuotationStatus.ISSUED: Tone.WORKING,
    QuotationStatus.ACCEPTED: Tone.GOOD,
    QuotationStatus.DECLINED: Tone.BAD,
    QuotationStatus.EXPIRED: Tone.CAUTION,
}


@frozen
class TouchedQuotation:
    """An open quotation with the parts that are not what they were when it was made."""

    stored: StoredQuotation
    parts: tuple[TouchedPart, ...]


def entry_columns(story: Story) -> tuple[Column[QuotationEntry], ...]:
    """Return the columns of the quotations in the book."""
    return (
        Column(title=tr("Number"), text=_number, hint=lambda one: tip(_number(one))),
        Column(title=tr("Status"), text=lambda one: story.title(one.status), tone=lambda one: TONES[one.status]),
        Column(title=tr("Customer"), text=lambda one: one.customer, hint=lambda one: tip(one.customer)),
        Column(title=tr("Site"), text=lambda one: one.site, hint=lambda one: tip(one.site)),
        Column(
            title=tr("Total"),
            text=lambda one: _lowest(one.total_low, one.total_high, story, _places(one)),
            hint=lambda one: tip(_total(one, story)),
            sort=lambda one: float(one.total_low or 0),
            is_number=True,
        ),
        Column(
            title=tr("Margin, %"),
            text=lambda one: _lowest(one.margin_low, one.margin_high, story, 1),
            hint=lambda one: tip(_range(one.margin_low, one.margin_high, story, 2)),
            sort=lambda one: float("-inf") if one.margin_low is None else float(one.margin_low),
            is_number=True,
        ),
        Column(
            title=tr("Day"),
            text=_day,
            hint=lambda one: tip(_day(one)),
            sort=lambda one: 0 if one.dated is None else one.dated.toordinal(),
        ),
        Column(
            title=tr("Valid through"),
            text=lambda one: day_text(one.valid_to),
            hint=lambda one: tip(day_text(one.valid_to)),
            sort=lambda one: one.valid_to.toordinal(),
        ),
        Column(
            title=tr("Follow up"),
            text=_follow_up,
            hint=lambda one: tip(_follow_up(one)),
            sort=lambda one: float("inf") if one.follow_up is None else one.follow_up.toordinal(),
        ),
    )


def _number(entry: QuotationEntry) -> str:
    return f"{entry.number} r{entry.revision}"


def _day(entry: QuotationEntry) -> str:
    return "–" if entry.dated is None else day_text(entry.dated)


def _follow_up(entry: QuotationEntry) -> str:
    return "–" if entry.follow_up is None else day_text(entry.follow_up)


def _places(entry: QuotationEntry) -> int:
    return decimals(entry.currency) if entry.currency else 2


def _lowest(low: Decimal | None, high: Decimal | None, story: Story, places: int) -> str:
    """Return the lowest of the options, with a sign that there are others; the hint tells the whole range."""
    if low is None:
        return "–"
    return f"{story.writing.decimal(low, places)}{'' if low == high else ' …'}"


def _total(entry: QuotationEntry, story: Story) -> str:
    told = _range(entry.total_low, entry.total_high, story, _places(entry))
    return f"{told} {entry.currency}".rstrip()


def _range(low: Decimal | None, high: Decimal | None, story: Story, places: int) -> str:
    if low is None or high is None:
        return "–"
    told = [story.writing.decimal(one, places) for one in dict.fromkeys((low, high))]
    return " … ".join(told)


def event_columns(story: Story) -> tuple[Column[QuotationEvent], ...]:
    """Return the columns of the steps of one quotation."""
    return (
        Column(title=tr("Rev."), text=lambda one: str(one.revision), is_number=True),
        Column(title=tr("Step"), text=lambda one: story.title(one.status), tone=lambda one: TONES[one.status]),
        Column(title=tr("When"), text=lambda one: moment_text(one.at), sort=lambda one: one.at.timestamp()),
        Column(title=tr("Who"), text=lambda one: one.by or "–", hint=lambda one: tip(one.by)),
        Column(title=tr("Note"), text=_event_note, hint=lambda one: tip(_event_note(one))),
    )


def _event_note(event: QuotationEvent) -> str:
    """Return which option was ordered, and what was noted."""
    return "; ".join(text for text in (event.option, event.note) if text)


def touched_nodes(touched: Iterable[TouchedQuotation], story: Story) -> tuple[Node, ...]:
    """Return one head for each touched quotation, its parts and what happened to them below it."""
    return tuple(_touched_node(one, story) for one in touched)


def _touched_node(one: TouchedQuotation, story: Story) -> Node:
    stored = one.stored
    number = f"{stored.quotation.terms.heading.number} r{stored.revision}, {story.word(stored.status)}"
    words = tr("{0} parts") if len(one.parts) != 1 else tr("{0} part")
    return Node(
        cells=(number, words.format(len({part.part for part in one.parts}))),
        record=one,
        tone=Tone.CAUTION,
        hint=tip(f"{stored.quotation.terms.customer.name}; {stored.quotation.pins.survey.site.name}"),
        children=tuple(
            Node(cells=(part.part.number, text), record=one, hint=tip(f"{part.part}: {text}"))
            for part in one.parts
            for text in _touch_texts(part, story)
        ),
    )


def _touch_texts(part: TouchedPart, story: Story) -> Iterator[str]:
    match part.touch:
        case Touch.GONE:
            yield tr("no longer in the catalog")
        case Touch.SUPERSEDED:
            yield tr("replaced by its maker: {0}").format(part.detail) if part.detail else tr("replaced by its maker")
        case Touch.DISCONTINUED:
            yield tr("no longer made")
        case Touch.DATA:
            yield tr("the catalog states otherwise: {0}").format(part.detail.replace("_", " "))
        case Touch.PRICE:
            yield tr("list price: {0}").format(part.detail)
        case Touch.PRICE_GONE:
            reason, _, detail = part.detail.partition(": ")
            words = story.word(GapReason(reason))
            yield f"{words} ({detail})" if detail else words
