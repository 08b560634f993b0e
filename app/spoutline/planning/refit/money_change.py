"""What a quotation made anew means in money beside the one before: totals, and the lines and amounts that change."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedLine, QuotedOption

_NOTHING = Decimal(0)


class AmountKind(StrEnum):
    """What an option asks for beside the lines of its parts."""

    LABOUR = "labour"
    FREIGHT = "freight"
    TAX = "tax"
    ROUNDING = "rounding"


@frozen(kw_only=True)
class MoneyStep:
    """An amount then and now; None where a price is missing, nought where there was or is nothing."""

    before: Decimal | None
    after: Decimal | None

    @property
    def difference(self) -> Decimal | None:
        """What it comes to more, below 0 where less; None where one side is not known."""
        return None if self.before is None or self.after is None else self.after - self.before


@frozen(kw_only=True)
class LineMoney:
    """A part of which pieces or price change: ``line`` as it is now, or as it was where it goes."""

    line: QuotedLine
    pieces_before: int
    pieces_after: int
    price: MoneyStep
    amount: MoneyStep

    @property
    def part(self) -> PartRef:
        """The part."""
        return self.line.part


@frozen(kw_only=True)
class AmountMoney:
    """An amount beside the lines that changes; ``name`` is that of a tax."""

    kind: AmountKind
    amount: MoneyStep
    name: str = ""


@frozen(kw_only=True)
class OptionMoney:
    """One option: its total, and what changes of it. ``missing`` counts the lines without a price now.

    The differences of lines and amounts add up to that of the total, unless a price is missing on either side. A total
    is None where one of the quotations lacks the option.
    """

    title: str
    total: MoneyStep
    lines: tuple[LineMoney, ...]
    amounts: tuple[AmountMoney, ...]
    missing: int


@frozen(kw_only=True)
class MoneyChange:
    """Every option of two quotations beside each other; amounts of two currencies have no difference."""

    currency_before: str
    currency_after: str
    options: tuple[OptionMoney, ...]

    @property
    def is_comparable(self) -> bool:
        """Whether both quotations are in one currency."""
        return self.currency_before == self.currency_after

    @property
    def is_nothing(self) -> bool:
        """Whether no amount of any option changes."""
        return self.is_comparable and all(
            one.total.difference == 0 and not one.lines and not one.amounts for one in self.options
        )


@frozen
class Foreseen:
    """A quotation that nobody keeps yet, and what it means beside the one before."""

    quotation: Quotation
    change: MoneyChange


def money_change(before: Quotation, after: Quotation) -> MoneyChange:
    """Return what a quotation means in money beside an earlier one; options are told apart by their titles."""
    old = {option.title: option for option in before.options}
    new = {option.title: option for option in after.options}
    titles = dict.fromkeys((*new, *old))
    return MoneyChange(
        currency_before=before.terms.currency,
        currency_after=after.terms.currency,
        options=tuple(_option(title, old.get(title), new.get(title)) for title in titles),
    )


def _option(title: str, before: QuotedOption | None, after: QuotedOption | None) -> OptionMoney:
    total = MoneyStep(before=before.total if before else None, after=after.total if after else None)
    if before is None or after is None:
        return OptionMoney(title=title, total=total, lines=(), amounts=(), missing=0)
    return OptionMoney(
        title=title,
        total=total,
        lines=tuple(_lines(before, after)),
        amounts=tuple(_amounts(before, after)),
        missing=sum(line.unit_price is None for line in after.lines),
    )


def _lines(before: QuotedOption, after: QuotedOption) -> Iterator[LineMoney]:
    old, new = ({line.part: line for line in option.lines} for option in (before, after))
    for part in sorted(old.keys() | new.keys()):
        was, now = old.get(part), new.get(part)
        line = now or was
        if line is None or (was is not None and now is not None and _is_same(was, now)):
            continue
        yield LineMoney(
            line=line,
            pieces_before=was.ordered if was is not None else 0,
            pieces_after=now.ordered if now is not None else 0,
            price=MoneyStep(before=was.unit_price if was else None, after=now.unit_price if now else None),
            amount=MoneyStep(before=_amount(was), after=_amount(now)),
        )


def _is_same(was: QuotedLine, now: QuotedLine) -> bool:
    return (was.ordered, was.unit_price, was.amount) == (now.ordered, now.unit_price, now.amount)


def _amount(line: QuotedLine | None) -> Decimal | None:
    return _NOTHING if line is None else line.amount


def _amounts(before: QuotedOption, after: QuotedOption) -> Iterator[AmountMoney]:
    taxes_before, taxes_after = (_taxes(option) for option in (before, after))
    steps = (
        (AmountKind.LABOUR, "", before.labour_amount, after.labour_amount),
        (AmountKind.FREIGHT, "", before.freight_amount, after.freight_amount),
        *(
            (AmountKind.TAX, name, taxes_before.get(name, _NOTHING), taxes_after.get(name, _NOTHING))
            for name in dict.fromkeys((*taxes_before, *taxes_after))
        ),
        (AmountKind.ROUNDING, "", before.rounding_amount, after.rounding_amount),
    )
    for kind, name, was, now in steps:
        if was != now:
            yield AmountMoney(kind=kind, name=name, amount=MoneyStep(before=was, after=now))


def _taxes(option: QuotedOption) -> dict[str, Decimal]:
    """Return the amount of each tax by its name; two of one name together."""
    found: dict[str, Decimal] = {}
    for tax in option.taxes:
        found[tax.name] = found.get(tax.name, _NOTHING) + tax.amount
    return found
