"""The sections about one option: its parts, its labour, its amounts, and what goes where."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

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
from spoutline.documents.quotation.alternates import alternate_blocks
from spoutline.documents.quotation.coverage import covers_text
from spoutline.documents.quotation.delivery import delivery_text
from spoutline.documents.quotation.figures import money, plain
from spoutline.documents.quotation.places import islands_by_label, liquids_by_label, shown_parts
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.part_ref import told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedLine, QuotedOption, QuotedPosition

_RIGHT = Alignment.RIGHT


def option_blocks(number: int, option: QuotedOption, quotation: Quotation, story: Story) -> Iterator[Block]:
    """Return everything about one option; ``number`` counts from 1."""
    currency = quotation.terms.currency
    title = (
        option.title
        if len(quotation.options) == 1
        else f"{story.word(Word.OPTION)} {number}{story.writing.colon} {option.title}"
    )
    yield Heading(title, 2)
    yield Paragraph(covers_text(option, story), Role.NOTE)
    yield _lines(option, currency, story)
    if told := delivery_text(option, quotation, story):
        yield Paragraph(told, Role.NOTE)
    yield from _line_notes(option, story)
    yield from alternate_blocks(option, currency, story)
    if option.labour:
        yield _labour(option, currency, story)
    yield _amounts(option, currency, story)


def position_blocks(number: int, option: QuotedOption, quotation: Quotation, story: Story) -> Iterator[Block]:
    """Return which parts go to which position; positions with the same liquid and set share a row."""
    several = len(quotation.options) > 1
    head = story.word(Word.POSITIONS)
    yield Heading(
        f"{head}{story.writing.colon} {story.word(Word.OPTION)} {number}, {option.title}" if several else head, 2
    )
    island_at = islands_by_label(quotation)
    is_told = any(island_at.values())
    columns = (
        Column(story.word(Word.POSITION), 3.2),
        Column(story.word(Word.DISPENSER), 1.0),
        *((Column(story.word(Word.ISLAND), 0.8),) if is_told else ()),
        Column(story.word(Word.LIQUID), 1.3),
        Column(story.word(Word.SET), 3.3),
    )
    liquids = liquids_by_label(quotation, story)
    alike: dict[tuple[str, str, Emphasis], list[QuotedPosition]] = {}
    for position in option.positions:
        parts = shown_parts(position, story, quotation.parts)
        fault = Emphasis.NONE if position.part_numbers else Emphasis.FAULT
        liquid_here = liquids.get(position.label, position.liquid)
        alike.setdefault((liquid_here, parts or story.word(position.status), fault), []).append(position)
    yield Table(
        columns,
        tuple(
            Row(
                (
                    _joined(one.label for one in same),
                    _joined(one.dispenser for one in same),
                    *((_joined(island_at[one.label] for one in same),) if is_told else ()),
                    liquid,
                    shown,
                ),
                fault,
            )
            for (liquid, shown, fault), same in alike.items()
        ),
    )


def _joined(names: Iterable[str]) -> str:
    return ", ".join(dict.fromkeys(filter(None, names)))


def _lines(option: QuotedOption, currency: str, story: Story) -> Table:
    columns = (
        Column(story.word(Word.LINE), 0.4, _RIGHT),
        Column(story.word(Word.PART_NUMBER), 1.1),
        Column(story.word(Word.PART_NAME), 2.8),
        Column(story.word(Word.FITTED), 0.65, _RIGHT),
        Column(story.word(Word.SPARES), 0.72, _RIGHT),
        Column(story.word(Word.PACK_REST), 0.6, _RIGHT),
        Column(story.word(Word.ORDERED), 0.82, _RIGHT),
        Column(f"{story.word(Word.UNIT_PRICE)}, {currency}", 1.0, _RIGHT),
        Column(f"{story.word(Word.AMOUNT)}, {currency}", 1.1, _RIGHT),
    )
    rows = []
    for number, line in enumerate(option.lines, start=1):
        each, amount = _price_cells(line, currency, story)
        pieces = (line.fitted, line.spares, line.pack_rest, line.ordered)
        name = f"{line.name_in(story.phrases.language)}; {line.maker}"
        cells = (str(number), line.part_number, name, *map(str, pieces), each, amount)
        rows.append(Row(cells, Emphasis.FAULT if line.is_open else Emphasis.NONE))
    goods = money(option.goods_amount, currency, story.writing)
    rows.append(Row((story.word(Word.GOODS), *([""] * (len(columns) - 2)), goods), Emphasis.TOTAL))
    return Table(columns, tuple(rows))


def _price_cells(line: QuotedLine, currency: str, story: Story) -> tuple[str, str]:
    if line.unit_price is None or line.amount is None:
        return story.word(Word.NO_PRICE if line.is_open else Word.PRICE_FOLLOWS), ""
    return money(line.unit_price, currency, story.writing), money(line.amount, currency, story.writing)


def _line_notes(option: QuotedOption, story: Story) -> Iterator[Block]:
    for line in option.open_lines:
        yield Paragraph(gap_text(line, story), Role.NOTE)
    for line in option.lines:
        if line.override_by:
            reason = f": {line.override_reason}" if line.override_reason else ""
            yield Paragraph(
                f"{line.part_number}{story.writing.colon} {story.word(Word.OVERRIDDEN)} {line.override_by}{reason}",
                Role.NOTE,
            )
    for part in option.superseded:
        labels = ", ".join(part.positions)
        pair = " → ".join(told_apart((part.before, part.now)))
        text = f"{story.word(Word.SUPERSEDED)}{story.writing.colon} {pair} ({labels})"
        yield Paragraph(text, Role.NOTE)

    if option.unlike_plan:
        yield Paragraph(unlike_text(option, story), Role.NOTE)


def unlike_text(option: QuotedOption, story: Story) -> str:
    """Return where an option hangs other parts than the plan of the survey, and what may be why."""
    reasons = ", ".join(story.word(Word(f"unlike_{one.value}")) for one in option.unlike_because)
    return f"{story.word(Word.UNLIKE_PLAN)}{story.writing.colon} {', '.join(option.unlike_plan)} ({reasons})"


def gap_text(line: QuotedLine, story: Story) -> str:
    """Return why a line has no price."""
    reason = story.word(line.gap) if line.gap else story.word(Word.NO_PRICE)
    detail = f" ({line.gap_detail})" if line.gap_detail else ""
    return f"{line.part_number}: {reason}{detail}"


def _labour(option: QuotedOption, currency: str, story: Story) -> Table:
    columns = (
        Column(story.word(Word.TASK), 3.2),
        Column(story.word(Word.COUNT), 1.2, _RIGHT),
        Column(story.word(Word.HOURS_EACH), 0.8, _RIGHT),
        Column(story.word(Word.HOURS), 0.8, _RIGHT),
        Column(f"{story.word(Word.RATE)}, {currency}", 1.0, _RIGHT),
        Column(f"{story.word(Word.AMOUNT)}, {currency}", 1.1, _RIGHT),
    )
    rows = [
        Row(
            (
                line.title,
                f"{line.count} {story.word(line.per)}" if line.count > 1 else story.word(line.per),
                plain(line.hours_each, story.writing),
                plain(line.hours, story.writing),
                money(line.hourly_rate, currency, story.writing),
                money(line.amount, currency, story.writing),
            )
        )
        for line in option.labour
    ]
    total = (story.word(Word.LABOUR), "", "", "", "", money(option.labour_amount, currency, story.writing))
    return Table(columns, (*rows, Row(total, Emphasis.TOTAL)), whole=True)


def _amounts(option: QuotedOption, currency: str, story: Story) -> Table:
    columns = (
        Column(story.word(Word.SUMMARY), 5.0),
        Column(f"{story.word(Word.AMOUNT)}, {currency}", 1.3, _RIGHT),
    )
    rows = [
        Row((story.word(word), money(amount, currency, story.writing)))
        for word, amount in (
            (Word.GOODS, option.goods_amount),
            (Word.LABOUR, option.labour_amount),
            (Word.FREIGHT, option.freight_amount),
            (Word.NET, option.net_amount),
        )
    ]
    for tax in option.taxes:
        on = f"{story.word(Word.TAX_BASE)} {money(tax.base, currency, story.writing)}"
        rows.append(
            Row((f"{tax.name}, {plain(tax.percent, story.writing)} % {on}", money(tax.amount, currency, story.writing)))
        )
    if option.rounding_amount:
        rows.append(Row((story.word(Word.ROUNDING), money(option.rounding_amount, currency, story.writing))))
    total = (f"{story.word(Word.TOTAL)}, {currency}", money(option.total, currency, story.writing))
    return Table(columns, (*rows, Row(total, Emphasis.TOTAL)), whole=True)
