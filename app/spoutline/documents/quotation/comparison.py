"""The options side by side, what differs from the first one marked by a sign and a figure, not by colour alone."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from decimal import Decimal

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Emphasis,
    Heading,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.quotation.coverage import covers_text
from spoutline.documents.quotation.delivery import delivery_in
from spoutline.documents.quotation.figures import money, signed
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import DriveOffEstimate, QuotedOption


def comparison_blocks(quotation: Quotation, story: Story) -> Iterator[Block]:
    """Return the options table and the parts that differ; nothing for a single option."""
    if len(quotation.options) == 1 and quotation.options[0].drive_offs is None:
        return
    yield Heading(story.word(Word.OPTIONS), 2)
    yield _amounts(quotation, story)
    if len(quotation.options) > 1:
        yield Paragraph(story.word(Word.OPTIONS_NOTE), Role.NOTE)
    if any(option.drive_offs for option in quotation.options):
        yield Paragraph(story.word(Word.DRIVE_OFFS_NOTE), Role.NOTE)
    if len(quotation.options) > 1:
        yield from _parts(quotation.options, story)


def _amounts(quotation: Quotation, story: Story) -> Table:
    options, currency = quotation.options, quotation.terms.currency
    columns = (
        Column(currency, 2.2),
        *(Column(f"{n}. {option.title}", 1.6, Alignment.RIGHT) for n, option in enumerate(options, start=1)),
    )
    rows = [
        _row(story.word(word), options, amount, currency, story)
        for word, amount in (
            (Word.GOODS, lambda option: option.goods_amount),
            (Word.LABOUR, lambda option: option.labour_amount),
            (Word.FREIGHT, lambda option: option.freight_amount),
        )
    ]
    for number, tax in enumerate(options[0].taxes):
        rows.append(_row(tax.name, options, _tax(number), currency, story))
    total = _row(story.word(Word.TOTAL), options, lambda option: option.total, currency, story)
    rows.append(Row(total.cells, Emphasis.TOTAL))
    rows.append(_covered_row(options, story))
    rows.extend(_delivery_rows(quotation, story))
    if any(option.on_common for option in options):
        rows.append(_common_row(options, currency, story))
    rows.extend(_drive_off_rows(options, currency, story))
    return Table(columns, tuple(rows))


def _covered_row(options: Sequence[QuotedOption], story: Story) -> Row:
    """Return how many of the hoses each option covers; marked where that is another number or other hoses."""
    cells = [covers_text(option, story) for option in options]
    marked = [
        f"{story.word(Word.DIFFERS)} {cell}" if option.on_common is not None else cell
        for option, cell in zip(options[1:], cells[1:], strict=True)
    ]
    return Row((story.word(Word.HOSES_COVERED), cells[0], *marked))


def _delivery_rows(quotation: Quotation, story: Story) -> Iterator[Row]:
    """Return the longest lead time of each option and the earliest day on which all of it can be there."""
    found = [delivery_in(option, quotation) for option in quotation.options]
    told = (
        (Word.LONGEST_LEAD, [story.days(one.lead_days) if one else "–" for one in found]),
        (Word.EARLIEST_DELIVERY, [story.day(one.earliest) if one else "–" for one in found]),
    )
    for word, cells in told:
        marked = [cell if cell == cells[0] else f"{story.word(Word.DIFFERS)} {cell}" for cell in cells[1:]]
        yield Row((story.word(word), cells[0], *marked))


def _common_row(options: Sequence[QuotedOption], currency: str, story: Story) -> Row:
    """Return the totals for the hoses that an option and the first one both cover, with the difference."""
    cells = [story.word(Word.TOTAL_ON_COMMON), ""]
    for option in options[1:]:
        common = option.on_common
        if common is None or not common.labels:
            cells.append("–" if common is not None else "")
            continue
        own, first = (money(one, currency, story.writing) for one in (common.own_total, common.first_total))
        cells.append(f"{own} / {first}\n{signed(common.difference, currency, story.writing)}")
    return Row(tuple(cells))


def _tax(number: int) -> Callable[[QuotedOption], Decimal]:
    return lambda option: option.taxes[number].amount


def _drive_off_rows(options: Sequence[QuotedOption], currency: str, story: Story) -> Iterator[Row]:
    estimates = [option.drive_offs for option in options]
    first = next((one for one in estimates if one is not None), None)
    if first is None or not all(estimates):
        return

    def of(option: QuotedOption) -> DriveOffEstimate:
        return option.drive_offs or first

    yield _row(story.word(Word.DRIVE_OFFS_YEAR), options, lambda option: of(option).per_year, currency, story)
    years = f"{story.word(Word.DRIVE_OFFS_YEARS)} {first.years} {story.word(Word.YEARS)}"
    yield _row(years, options, lambda option: of(option).over_years, currency, story)
    both = story.word(Word.TOTAL_WITH_DRIVE_OFFS)
    row = _row(both, options, lambda option: option.total + of(option).over_years, currency, story)
    yield Row(row.cells, Emphasis.TOTAL)


def _row(
    title: str,
    options: Sequence[QuotedOption],
    amount: Callable[[QuotedOption], Decimal],
    currency: str,
    story: Story,
) -> Row:
    first = amount(options[0])
    cells = [title, money(first, currency, story.writing)]
    for option in options[1:]:
        own = amount(option)
        shown = money(own, currency, story.writing)
        difference = f"{story.word(Word.DIFFERS)} {shown}\n{signed(own - first, currency, story.writing)}"
        cells.append(shown if own == first else difference)
    return Row(tuple(cells))


def _parts(options: Sequence[QuotedOption], story: Story) -> Iterator[Block]:
    """Return, for each kind in which the options differ, the part numbers and pieces ordered."""
    parts = frozenset(line.part for option in options for line in option.lines)
    rows = []
    for kind in PartKind:
        cells = [_numbers(option, kind, parts) for option in options]
        if len(set(cells)) > 1:
            marked = [cell if cell == cells[0] else f"{story.word(Word.DIFFERS)} {cell or '–'}" for cell in cells[1:]]
            rows.append(Row((story.title(kind), cells[0] or "–", *marked)))
    if rows:
        yield Heading(story.word(Word.PARTS_DIFFER), 2)
        titles = (Column(f"{n}. {option.title}", 2.0) for n, option in enumerate(options, start=1))
        yield Table((Column(story.word(Word.KIND), 1.2), *titles), tuple(rows))


def _numbers(option: QuotedOption, kind: PartKind, parts: frozenset[PartRef]) -> str:
    lines = [line for line in option.lines if line.kind is kind]
    shown = told_apart((line.part for line in lines), parts)
    return "\n".join(f"{line.ordered} × {name}" for line, name in zip(lines, shown, strict=True))
