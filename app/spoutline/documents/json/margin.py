"""Cost and margin of a quotation as a stable JSON document: what `quotation margin --json` prints.

Amounts are texts, exact and in the currency of the quotation; percentages are rounded to a hundredth.
"""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from spoutline.documents.json.head import Record
from spoutline.model.margin import LowMargin, Margin, percent_of
from spoutline.model.quotation import MarginWord, Quotation
from spoutline.model.quoted_option import QuotedOption


class MarginRecord(Record):
    """Amount sold, its cost, the margin, and ``percent`` = 100 (sold - cost) / sold, null where nothing is asked."""

    sold: Decimal
    cost: Decimal
    margin: Decimal
    percent: Decimal | None


class LineRecord(Record):
    """One line; ``margin`` is null where price or cost is not known, ``low`` says why it is asked about."""

    part_number: str
    maker: str
    quantity: int
    list_price: Decimal | None
    list_currency: str
    buying_percent: Decimal | None
    unit_cost: Decimal | None
    unit_price: Decimal | None
    margin: MarginRecord | None
    low: LowMargin | None


class OptionRecord(Record):
    """One option: the margin of its materials, without ``uncosted`` lines whose price or cost is not known."""

    title: str
    margin: MarginRecord
    uncosted: int
    lines: tuple[LineRecord, ...]


class MarginDocument(Record):
    """A whole quotation; ``lowest`` and ``highest`` are those of its options, of which one is ordered."""

    format: Literal["spoutline-margin"] = "spoutline-margin"
    version: Literal[1] = 1
    internal: Literal[True] = True
    quotation: str
    revision: int
    currency: str
    least_margin_percent: Decimal | None
    lowest: MarginRecord
    highest: MarginRecord
    options: tuple[OptionRecord, ...]
    words: tuple[MarginWord, ...]


def margin_json(quotation: Quotation, revision: int) -> str:
    """Return the document as indented text that ends in a line break; equal text for equal arguments."""
    terms = quotation.terms
    margins = sorted((option.margin for option in quotation.options), key=lambda one: one.amount)
    document = MarginDocument(
        quotation=terms.heading.number,
        revision=revision,
        currency=terms.currency,
        least_margin_percent=terms.selling.least_margin_percent,
        lowest=_record(margins[0]),
        highest=_record(margins[-1]),
        options=tuple(_option(option, terms.selling.least_margin_percent) for option in quotation.options),
        words=quotation.margin_words,
    )
    return document.model_dump_json(indent=2) + "\n"


def _record(margin: Margin) -> MarginRecord:
    return MarginRecord(sold=margin.sold, cost=margin.cost, margin=margin.amount, percent=percent_of(margin))


def _option(option: QuotedOption, least: Decimal | None) -> OptionRecord:
    low = {line.part: why for line, why in option.low_lines(least)}
    lines = tuple(
        LineRecord(
            part_number=line.part_number,
            maker=line.maker,
            quantity=line.ordered,
            list_price=line.list_price,
            list_currency=line.list_currency,
            buying_percent=line.buying_percent,
            unit_cost=line.cost,
            unit_price=line.unit_price,
            margin=None if line.margin is None else _record(line.margin),
            low=low.get(line.part),
        )
        for line in option.lines
    )
    return OptionRecord(
        title=option.title, margin=_record(option.margin), uncosted=len(option.uncosted_lines), lines=lines
    )
