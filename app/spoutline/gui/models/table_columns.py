"""Columns of the tables: parts of the set, catalogue parts, surveys of the book, rows of local rules, the bill."""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable

from spoutline.book.records import SurveyEntry
from spoutline.documents.content.totals import BillLine
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_differs import what_differs
from spoutline.frozen import frozen
from spoutline.gui.local_days import moment_text
from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.limit import Limit, LimitStatus
from spoutline.model.part import Part
from spoutline.model.part_ref import any_names
from spoutline.model.plan import PositionPlan, SetLink


@frozen
class SetRow:
    """One part of the set in hand; ``decision`` says whether a person keeps it."""

    place: int
    link: SetLink
    currency: str
    is_kept: bool


def set_rows(plan: PositionPlan) -> tuple[SetRow, ...]:
    """Return the parts of the chosen set in chain order; none where there is no set."""
    if plan.chosen is None:
        return ()
    chosen = plan.chosen.hanging_set
    kept = plan.position.decisions.pinned
    return tuple(
        SetRow(place, link, chosen.currency, any_names(kept, link.part.ref))
        for place, link in enumerate(chosen.links, 1)
    )


def set_columns(story: Story) -> tuple[Column[SetRow], ...]:
    """Return the columns of the set in hand."""

    def set_name(row: SetRow) -> str:
        return story.part_name(row.link.part)

    return (
        Column(title=tr("No."), text=lambda row: str(row.place), sort=lambda row: row.place, is_number=True),
        Column(title=tr("Place"), text=lambda row: story.title(row.link.slot), sort=lambda row: row.place),
        Column(
            title=tr("Part"),
            text=lambda row: f"{row.link.part.number}  {tr('(kept)')}" if row.is_kept else row.link.part.number,
            hint=lambda row: str(row.link.part.ref),
        ),
        Column(
            title=tr("Name"),
            text=set_name,
            hint=set_name,
        ),
        Column(
            title=tr("Price"),
            text=lambda row: (
                story.word(PaperWord.STAYS)
                if row.link.kept
                else story.money(row.link.price_minor(row.currency), row.currency)
            ),
            sort=lambda row: row.link.price_minor(row.currency) or 0,
            is_number=True,
        ),
    )


def part_columns(story: Story, currency: str, parts: Iterable[Part]) -> tuple[Column[Part], ...]:
    """Return the columns of the catalogue parts listed."""
    differs = what_differs(parts, story, with_kind=False)

    def hint(part: Part) -> str:
        return f"{story.part_name(part)}\n{differs[part.ref]}"

    return (
        Column(title=tr("Part"), text=lambda part: part.number),
        Column(title=tr("Kind"), text=lambda part: story.title(part.kind)),
        Column(title=tr("Differs in"), text=lambda part: differs[part.ref], hint=hint, leads=True),
        Column(title=tr("Maker"), text=lambda part: part.maker),
        Column(
            title=tr("Price"),
            text=lambda part: story.money(part.price_minor(currency), currency),
            sort=lambda part: part.price_minor(currency) or 0,
            is_number=True,
        ),
    )


def survey_columns(cannot_be_read: Container[int] = ()) -> tuple[Column[SurveyEntry], ...]:
    """Return the columns of the surveys in the book; ``cannot_be_read`` holds the ids of those that could not be."""
    return (
        Column(
            title=tr("Site"),
            text=lambda entry: f"{entry.name}  {tr('(cannot be read)')}" if entry.id in cannot_be_read else entry.name,
            tone=lambda entry: Tone.BAD if entry.id in cannot_be_read else None,
        ),
        Column(
            title=tr("Saves"), text=lambda entry: str(entry.revision), sort=lambda entry: entry.revision, is_number=True
        ),
        Column(
            title=tr("Changed"),
            text=lambda entry: moment_text(entry.changed_at),
            sort=lambda entry: entry.changed_at.timestamp(),
        ),
    )


_UNREAD = (LimitStatus.MEMORY, LimitStatus.SECONDARY)


def limit_columns(before: Callable[[Limit], Limit | None], story: Story) -> tuple[Column[Limit], ...]:
    """Return the columns of the rows of local rules, figures as their source prints them.

    ``before`` returns the row of the parent where it differs.
    """

    def title(limit: Limit) -> str:
        return story.phrases.tell(limit.title)

    def was(limit: Limit) -> str:
        parent = before(limit)
        return "" if parent is None else f"{parent.printed} {parent.printed_unit}".strip() or tr("no figure")

    def source(limit: Limit) -> str:
        return story.source_told(", ".join(item for item in (limit.source, limit.clause, limit.edition) if item))

    return (
        Column(title=tr("Limit"), text=title, hint=lambda limit: f"{title(limit)}\n{limit.id}"),
        Column(
            title=tr("Value"), text=lambda limit: f"{limit.printed} {limit.printed_unit}".strip() or tr("no figure")
        ),
        Column(title=tr("Copied from"), text=was, tone=lambda limit: Tone.CAUTION if before(limit) else None),
        Column(
            title=tr("Standing"),
            text=lambda limit: story.limit_status(limit.status),
            tone=lambda limit: Tone.QUESTION if limit.status in _UNREAD else Tone.NOTE,
        ),
        Column(
            title=tr("Source"),
            text=source,
            hint=lambda limit: story.limit_note(limit) or story.source_told(limit.source),
        ),
    )


def bill_columns(story: Story, currency: str) -> tuple[Column[BillLine], ...]:
    """Return the columns of the site's parts list."""

    def bill_name(row: BillLine) -> str:
        return story.part_name(row.part)

    return (
        Column(title=tr("Part"), text=lambda row: row.part.number),
        Column(
            title=tr("Name"), text=lambda row: story.part_name(row.part), hint=lambda row: story.part_name(row.part)
        ),
        Column(title=tr("Qty"), text=lambda row: str(row.quantity), sort=lambda row: row.quantity, is_number=True),
        Column(
            title=tr("Price, {currency}").format(currency=currency),
            text=lambda row: _bare_money(story, row.unit_minor, currency),
            sort=lambda row: row.unit_minor or 0,
            is_number=True,
        ),
        Column(
            title=tr("Amount, {currency}").format(currency=currency),
            text=lambda row: _bare_money(story, row.sum_minor, currency),
            sort=lambda row: row.sum_minor or 0,
            is_number=True,
        ),
    )


def _bare_money(story: Story, minor: int | None, currency: str) -> str:
    """Return an amount whose currency stands in the column's title; without a price, the words for that."""
    return story.money(None, currency) if minor is None else story.bare_money(minor, currency)
