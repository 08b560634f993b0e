"""What a quotation made anew means in money, in words: a row for each total, line and amount that changes."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from spoutline.documents.quotation.figures import money, signed
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.part_ref import told_apart
from spoutline.planning.refit.money_change import AmountKind, AmountMoney, MoneyChange, MoneyStep, OptionMoney

_NONE = "–"
_WORDS = {
    AmountKind.LABOUR: Word.LABOUR,
    AmountKind.FREIGHT: Word.FREIGHT,
    AmountKind.ROUNDING: Word.ROUNDING,
}


@frozen
class MoneyRow:
    """One row: what it is about, what it was and is, and the difference with its sign; dashes for what is not known."""

    title: str
    before: str
    after: str
    difference: str


@frozen
class OptionRows:
    """The total of an option and what changes of it; ``missing`` says that lines are without a price now."""

    total: MoneyRow
    details: tuple[MoneyRow, ...]
    missing: str


def money_rows(change: MoneyChange, story: Story) -> tuple[OptionRows, ...]:
    """Return the rows of every option, in the order of the quotation made last."""
    return tuple(_option(option, change, story) for option in change.options)


def total_text(rows: OptionRows, currency: str, story: Story) -> str:
    """Return what an option comes to in one line."""
    one = rows.total
    missing = f"; {rows.missing}" if rows.missing else ""
    return f"{one.title}{story.writing.colon} {one.before} → {one.after} {currency} ({one.difference}){missing}"


def _option(option: OptionMoney, change: MoneyChange, story: Story) -> OptionRows:
    names = told_apart(one.part for one in option.lines)
    lines = (
        _row(f"{name} {one.line.name_in(story.phrases.language)}, {_pieces(one.pieces_before, one.pieces_after)}",
             one.amount, change, story)
        for name, one in zip(names, option.lines, strict=True)
    )  # fmt: skip
    amounts = (_row(_amount_title(one, story), one.amount, change, story) for one in option.amounts)
    missing = f"{story.word(Word.NO_PRICE)}{story.writing.colon} {option.missing}" if option.missing else ""
    return OptionRows(_row(option.title, option.total, change, story), (*lines, *amounts), missing)


def _pieces(before: int, after: int) -> str:
    return f"{before} ×" if before == after else f"{before} → {after} ×"


def _amount_title(one: AmountMoney, story: Story) -> str:
    return one.name if one.kind is AmountKind.TAX else story.word(_WORDS[one.kind])


def _row(title: str, step: MoneyStep, change: MoneyChange, story: Story) -> MoneyRow:
    def told(amount: Decimal | None, currency: str) -> str:
        return _NONE if amount is None else money(amount, currency, story.writing)

    before, after = told(step.before, change.currency_before), told(step.after, change.currency_after)
    difference = step.difference if change.is_comparable else None
    if not change.is_comparable and step.before is not None:
        before = f"{before} {change.currency_before}"
    return MoneyRow(
        title, before, after, _NONE if difference is None else signed(difference, change.currency_after, story.writing)
    )


def money_lines(change: MoneyChange, story: Story) -> Iterator[str]:
    """Return the whole as lines of a terminal, what changes of an option set in below its total."""
    for rows in money_rows(change, story):
        yield total_text(rows, change.currency_after, story)
        for one in rows.details:
            yield f"  {one.title}{story.writing.colon} {one.before} → {one.after} ({one.difference})"
    if change.is_nothing:
        yield story.phrases.text["money_same"]
