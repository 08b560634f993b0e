"""Columns of the quotations in the book and of the amounts of one of them."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.book.quotation_records import QuotationEntry
from spoutline.documents.quotation.figures import money
from spoutline.explain.quotation_words import QuotationWord as Word
from spoutline.explain.story import Story
from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.quotation import Quotation, QuotationStatus

_TONES = {
    QuotationStatus.DRAFT: Tone.NOTE,
    QuotationStatus.ISSUED: Tone.WORKING,
    QuotationStatus.ACCEPTED: Tone.GOOD,
    QuotationStatus.DECLINED: Tone.BAD,
    QuotationStatus.EXPIRED: Tone.CAUTION,
}


@dataclass(frozen=True, slots=True)
class AmountRow:
    """One line of the comparison: its title and one text for each option; ``differs`` where an option is another."""

    title: str
    cells: tuple[str, ...]
    differs: bool


def entry_columns(story: Story) -> tuple[Column[QuotationEntry], ...]:
    """Return the columns of the quotations in the book."""
    return (
        Column(title=tr("Number"), text=lambda one: f"{one.number} r{one.revision}"),
        Column(title=tr("Status"), text=lambda one: story.title(one.status), tone=lambda one: _TONES[one.status]),
        Column(title=tr("Customer"), text=lambda one: one.customer),
        Column(title=tr("Site"), text=lambda one: one.site),
        Column(title=tr("Stands until"), text=lambda one: one.valid_to.isoformat()),
    )


def amount_columns(quotation: Quotation) -> tuple[Column[AmountRow], ...]:
    """Return a column of titles and one for each option."""
    return (
        Column(
            title=quotation.terms.currency,
            text=lambda row: f"◆ {row.title}" if row.differs else row.title,
            hint=lambda row: tr("{0}: the options differ").format(row.title) if row.differs else row.title,
        ),
        *(_option_column(number, option.title) for number, option in enumerate(quotation.options)),
    )


def amount_rows(quotation: Quotation, story: Story) -> tuple[AmountRow, ...]:
    """Return the amounts of all options side by side."""
    currency, options = quotation.terms.currency, quotation.options
    rows = [
        (story.word(Word.GOODS), [option.goods_amount for option in options]),
        (story.word(Word.LABOUR), [option.labour_amount for option in options]),
        (story.word(Word.FREIGHT), [option.freight_amount for option in options]),
        *((tax.name, [option.taxes[at].amount for option in options]) for at, tax in enumerate(options[0].taxes)),
        (story.word(Word.TOTAL), [option.total for option in options]),
    ]
    if all(option.drive_offs for option in options):
        over = [option.drive_offs.over_years for option in options if option.drive_offs]
        rows.append((tr("Drive-offs expected, all years"), over))
    found = [
        AmountRow(title, tuple(money(amount, currency) for amount in amounts), len(set(amounts)) > 1)
        for title, amounts in rows
    ]
    numbers = tuple(str(len(option.lines)) for option in options)
    found.append(AmountRow(story.word(Word.PART_NUMBERS), numbers, len(set(numbers)) > 1))
    if all(option.commonality for option in options):
        common = [option.commonality for option in options if option.commonality]
        costs = tuple(money(one.costs, currency) for one in common)
        saves = tuple(money(one.saves, currency) for one in common)
        found.append(AmountRow(tr("Common sets cost more"), costs, False))
        found.append(AmountRow(tr("Stock that they save"), saves, False))
        if any(one.left_open for one in common):
            left = tuple(money(one.left_open, currency) for one in common)
            found.append(AmountRow(tr("Not proved: could at most still save"), left, False))
    return tuple(found)


def _option_column(number: int, title: str) -> Column[AmountRow]:
    return Column(title=title, text=lambda row: row.cells[number], is_number=True)
