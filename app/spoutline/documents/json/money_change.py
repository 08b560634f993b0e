"""What a quotation made anew means in money, as a stable JSON document: what `quotation preview --json` prints.

Amounts are texts, exact and in the currency of their quotation; a difference is null where a price is missing or the
currencies are two.
"""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from spoutline.documents.json.head import Record
from spoutline.planning.refit.money_change import AmountKind, MoneyChange, MoneyStep, OptionMoney


class StepRecord(Record):
    """An amount before and after, and what it comes to more."""

    before: Decimal | None
    after: Decimal | None
    difference: Decimal | None


class ChangedLineRecord(Record):
    """One part of which pieces or price change."""

    part_number: str
    maker: str
    name: str
    pieces_before: int
    pieces_after: int
    unit_price: StepRecord
    amount: StepRecord


class ChangedAmountRecord(Record):
    """An amount beside the lines; ``name`` is that of a tax, empty for others."""

    kind: AmountKind
    name: str
    amount: StepRecord


class OptionMoneyRecord(Record):
    """One option; ``missing_prices`` counts its lines without a price now."""

    title: str
    total: StepRecord
    missing_prices: int
    lines: tuple[ChangedLineRecord, ...]
    amounts: tuple[ChangedAmountRecord, ...]


class MoneyChangeDocument(Record):
    """The whole; nothing of it is in the book."""

    format: Literal["spoutline-quotation-preview"] = "spoutline-quotation-preview"
    version: Literal[1] = 1
    quotation: str
    revision: int
    currency_before: str
    currency_after: str
    options: tuple[OptionMoneyRecord, ...]


def money_change_json(change: MoneyChange, number: str, revision: int) -> str:
    """Return the document as indented text that ends in a line break; equal text for equal arguments."""
    document = MoneyChangeDocument(
        quotation=number,
        revision=revision,
        currency_before=change.currency_before,
        currency_after=change.currency_after,
        options=tuple(_option(one, is_comparable=change.is_comparable) for one in change.options),
    )
    return document.model_dump_json(indent=2) + "\n"


def _option(option: OptionMoney, *, is_comparable: bool) -> OptionMoneyRecord:
    def step(one: MoneyStep) -> StepRecord:
        return StepRecord(before=one.before, after=one.after, difference=one.difference if is_comparable else None)

    return OptionMoneyRecord(
        title=option.title,
        total=step(option.total),
        missing_prices=option.missing,
        lines=tuple(
            ChangedLineRecord(
                part_number=one.line.part_number,
                maker=one.line.maker,
                name=one.line.name,
                pieces_before=one.pieces_before,
                pieces_after=one.pieces_after,
                unit_price=step(one.price),
                amount=step(one.amount),
            )
            for one in option.lines
        ),
        amounts=tuple(
            ChangedAmountRecord(kind=one.kind, name=one.name, amount=step(one.amount)) for one in option.amounts
        ),
    )
