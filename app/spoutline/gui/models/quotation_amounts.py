"""The options of a quotation side by side: their amounts, and the parts in which they differ."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal

from spoutline.documents.quotation.alternates import alternate_texts, difference_of
from spoutline.documents.quotation.coverage import common_text, covers_text
from spoutline.documents.quotation.delivery import delivery_in, delivery_text
from spoutline.documents.quotation.figures import money, signed
from spoutline.documents.quotation.margin_figures import option_margin
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.escaping import tip
from spoutline.gui.models.record_table import Column
from spoutline.gui.wording import tr
from spoutline.model.margin import percent_of
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedAlternate, QuotedLine, QuotedOption

_TITLE_WIDTH = 14  # characters in a line of a column's title


@frozen
class AmountRow:
    """One line of the comparison: its title and one text for each option; ``differs`` where an option is another.

    ``hints`` say by how much an option differs from the first; ``about`` says more about the title; ``positions`` are
    the labels of the positions that the hint of a cell names.
    """

    title: str
    cells: tuple[str, ...]
    differs: bool
    hints: tuple[str, ...] = ()
    about: str = ""
    positions: tuple[tuple[str, ...], ...] = ()


def amount_columns(quotation: Quotation) -> tuple[Column[AmountRow], ...]:
    """Return a column of titles and one for each option."""
    return (
        Column(title=quotation.terms.currency, text=_marked, hint=_hint),
        *(_option_column(number, option.title) for number, option in enumerate(quotation.options)),
    )


def amount_rows(quotation: Quotation, story: Story) -> tuple[AmountRow, ...]:
    """Return the amounts of all options side by side, then the parts of which they order different numbers."""
    options = quotation.options
    return (
        *_charge_rows(quotation, story),
        *_margin_rows(quotation, story),
        *_coverage_rows(quotation, story),
        *_delivery_rows(quotation, story),
        *_alternate_rows(quotation, story),
        *_open_rows(options),
        *_count_rows(options, story),
        *_commonality_rows(quotation, story),
        *_replaced_rows(options, story),
        *_parts(options, story),
    )


def _charge_rows(quotation: Quotation, story: Story) -> Iterator[AmountRow]:
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
    for title, amounts in rows:
        yield _money_row(title, amounts, currency, story)


def _margin_rows(quotation: Quotation, story: Story) -> Iterator[AmountRow]:
    """Return cost and margin of the materials; nothing where no cost is known."""
    terms, options = quotation.terms, quotation.options
    if all(line.margin is None for option in options for line in option.lines):
        return
    about = story.word(Word.MARGIN_NOTE)
    margins = [option_margin(option, terms) for option in options]
    for word, amounts in (
        (Word.COST, [one.cost for one in margins]),
        (Word.MARGIN, [one.amount for one in margins]),
    ):
        row = _money_row(story.word(word), amounts, terms.currency, story)
        yield replace(row, about=f"{story.word(Word.INTERNAL)}. {about}")
    percents = [percent_of(one) for one in margins]
    cells = tuple("–" if one is None else story.writing.decimal(one, 2) for one in percents)
    yield AmountRow(story.word(Word.MARGIN_PERCENT), cells, len(set(cells)) > 1, about=about)
    left_out = [len(option.uncosted_lines) for option in options]
    if any(left_out):
        told = story.word(Word.COST_UNKNOWN)
        yield AmountRow(told[:1].upper() + told[1:], tuple(map(str, left_out)), len(set(left_out)) > 1)


def _money_row(title: str, amounts: Sequence[Decimal], currency: str, story: Story) -> AmountRow:
    first = amounts[0]
    return AmountRow(
        title,
        tuple(money(amount, currency, story.writing) for amount in amounts),
        len(set(amounts)) > 1,
        hints=tuple(
            tr("{0} against the first option").format(signed(amount - first, currency, story.writing))
            if amount != first
            else ""
            for amount in amounts
        ),
    )


def _coverage_rows(quotation: Quotation, story: Story) -> Iterator[AmountRow]:
    """Return how many hoses each option covers; where not all the same, what both come to on the common ones."""
    options, currency = quotation.options, quotation.terms.currency
    cells = tuple(f"{option.covered} / {len(option.positions)}" for option in options)
    hints = tuple(
        f"{story.word(Word.NOT_OFFERED)} {', '.join(one.label for one in option.without_set)}"
        if not option.is_complete
        else covers_text(option, story)
        for option in options
    )
    differs = any(option.on_common for option in options)
    left_out = tuple(tuple(one.label for one in option.without_set) for option in options)
    yield AmountRow(story.word(Word.HOSES_COVERED), cells, differs, hints=hints, positions=left_out)
    if differs:
        common = [option.on_common for option in options]
        yield AmountRow(
            tr("Difference, hoses both cover"),
            tuple(signed(one.difference, currency, story.writing) if one and one.labels else "–" for one in common),
            differs=True,
            hints=tuple(common_text(one, currency, story) if one else "" for one in common),
            about=story.word(Word.TOTAL_ON_COMMON),
        )


def _delivery_rows(quotation: Quotation, story: Story) -> Iterator[AmountRow]:
    """Return the longest lead time of each option and the earliest day on which all of it can be there."""
    found = [delivery_in(option, quotation) for option in quotation.options]
    hints = tuple(delivery_text(option, quotation, story) for option in quotation.options)
    days = tuple("–" if one is None else story.days(one.lead_days) for one in found)
    earliest = tuple("–" if one is None else story.day(one.earliest) for one in found)
    for word, cells in ((Word.LONGEST_LEAD, days), (Word.EARLIEST_DELIVERY, earliest)):
        yield AmountRow(story.word(word), cells, len(set(cells)) > 1, hints=hints)


def _alternate_rows(quotation: Quotation, story: Story) -> Iterator[AmountRow]:
    """Return what each alternate would make a line of each option cost more; it is in no total."""
    options, currency = quotation.options, quotation.terms.currency
    named = dict.fromkeys((one.line, one.part) for option in options for one in option.alternates)
    for line, part in named:
        cells, hints = [], []
        for option in options:
            mine = tuple(one for one in option.alternates if (one.line, one.part) == (line, part))
            cells.append(_alternate_cell(mine[0], currency, story) if mine else "–")
            told = alternate_texts(option.model_copy(update={"alternates": mine}), currency, story)
            hints.append("; ".join(told))
        words = tr("{0} instead of {1}").format(*told_apart((part, line)))
        about = story.word(Word.ALTERNATES_NOTE)
        yield AmountRow(words, tuple(cells), len(set(cells)) > 1, hints=tuple(hints), about=about)


def _alternate_cell(alternate: QuotedAlternate, currency: str, story: Story) -> str:
    return tr("does not fit") if alternate.misfits else difference_of(alternate, currency, story)


def _open_rows(options: Sequence[QuotedOption]) -> Iterator[AmountRow]:
    """Return how many prices the amounts leave out; nothing where they leave none."""
    for title, counts in (
        (tr("Prices missing in these amounts"), [len(option.open_lines) for option in options]),
        (tr("Prices that follow"), [len(option.following_lines) for option in options]),
    ):
        if any(counts):
            yield AmountRow(title, tuple(map(str, counts)), len(set(counts)) > 1)


def _count_rows(options: Sequence[QuotedOption], story: Story) -> Iterator[AmountRow]:
    numbers = tuple(str(len(option.lines)) for option in options)
    yield AmountRow(story.word(Word.PART_NUMBERS), numbers, len(set(numbers)) > 1)


def _commonality_rows(quotation: Quotation, story: Story) -> Iterator[AmountRow]:
    currency = quotation.terms.currency
    common = [option.commonality for option in quotation.options if option.commonality]
    if len(common) < len(quotation.options):
        return
    changed = tuple(signed(one.costs, currency, story.writing) for one in common)
    stocked = tuple(signed(-one.saves, currency, story.writing) for one in common)
    about = tr("What it changes that sets share part numbers, against each position chosen for itself")
    yield AmountRow(tr("Price, sets chosen together"), changed, False, about=about)
    yield AmountRow(tr("Stock, sets chosen together"), stocked, False, about=about)
    if any(one.left_open for one in common):
        left = tuple(money(one.left_open, currency, story.writing) for one in common)
        about = tr("The search was ended before the least cost was proved")
        yield AmountRow(tr("Still to save, at most"), left, False, about=about)


def _replaced_rows(options: Sequence[QuotedOption], story: Story) -> Iterator[AmountRow]:
    """Return the parts of the survey that their makers replaced, with how many positions get the successor."""
    places: dict[tuple[PartRef, PartRef], list[int]] = {}
    labels: dict[tuple[PartRef, PartRef], list[str]] = {}
    for at, option in enumerate(options):
        for one in option.superseded:
            pair = (one.before, one.now)
            places.setdefault(pair, [0] * len(options))[at] = len(one.positions)
            labels.setdefault(pair, []).extend(one.positions)
    for pair, counts in sorted(places.items()):
        cells = tuple(f"{count} ×" if count else "–" for count in counts)
        about = f"{story.word(Word.SUPERSEDED)}{story.writing.colon} {', '.join(dict.fromkeys(labels[pair]))}"
        yield AmountRow(" → ".join(told_apart(pair)), cells, len(set(counts)) > 1, about=about)


def _parts(options: Sequence[QuotedOption], story: Story) -> Iterator[AmountRow]:
    """Return the parts that differ below a row that says so; nothing where none does."""
    rows = tuple(_part_rows(options, story))
    if rows:
        yield AmountRow(f"{story.word(Word.PARTS_DIFFER)}:", ("",) * len(options), differs=False)
        yield from rows


def _part_rows(options: Sequence[QuotedOption], story: Story) -> Iterator[AmountRow]:
    """Return the parts of which the options order different numbers, kind by kind."""
    lines: dict[PartRef, QuotedLine] = {line.part: line for option in options for line in option.lines}
    order = {kind: place for place, kind in enumerate(PartKind)}
    ordered = [{line.part: line.ordered for line in option.lines} for option in options]
    for line in sorted(lines.values(), key=lambda one: (order[one.kind], one.part)):
        counts = [numbers.get(line.part, 0) for numbers in ordered]
        if len(set(counts)) > 1:
            yield AmountRow(
                f"{line.part_number} {story.word(line.kind)}",
                tuple(f"{count} ×" if count else "–" for count in counts),
                differs=True,
                about=f"{line.name_in(story.phrases.language)}; {line.maker}",
            )


def _marked(row: AmountRow) -> str:
    return f"◆ {row.title}" if row.differs else row.title


def _hint(row: AmountRow) -> str:
    about = f"\n{row.about}" if row.about else ""
    words = tr("{0}: the options differ").format(row.title) if row.differs else row.title
    return tip(f"{words}{about}")


def _option_column(number: int, title: str) -> Column[AmountRow]:
    return Column(
        title=_in_lines(title),
        text=lambda row: row.cells[number],
        hint=lambda row: tip(row.hints[number]) if row.hints else "",
        positions=lambda row: row.positions[number] if row.positions else (),
        is_number=True,
    )


def _in_lines(title: str) -> str:
    """Return a title in lines that a narrow column holds."""
    return "\n".join(textwrap.wrap(title, _TITLE_WIDTH, max_lines=3, placeholder="…"))
