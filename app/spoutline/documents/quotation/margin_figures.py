"""Amounts of margins, rounded for reading to the coin of the currency."""

from __future__ import annotations

from decimal import Decimal

from spoutline.model.margin import Margin
from spoutline.model.quotation_terms import Terms
from spoutline.model.quoted_option import QuotedLine, QuotedOption
from spoutline.planning.pricing.rounding import coin, rounded


def in_coin(amount: Decimal, terms: Terms) -> Decimal:
    """Return an amount to the coin of the quotation's currency, as its terms round."""
    return rounded(amount, coin(terms.currency), terms.rounding.mode)


def line_margin(line: QuotedLine, terms: Terms) -> Margin | None:
    """Return the margin of a line with its cost to the coin, so that rows and differences agree as they are read."""
    margin = line.margin
    return None if margin is None else Margin(in_coin(margin.sold, terms), in_coin(margin.cost, terms))


def option_margin(option: QuotedOption, terms: Terms) -> Margin:
    """Return the margin of an option, sold and cost to the coin."""
    margin = option.margin
    return Margin(in_coin(margin.sold, terms), in_coin(margin.cost, terms))
