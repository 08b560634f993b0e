"""A list price held against what parts of its kind usually cost, so that a mistyped one is asked about."""

from __future__ import annotations

from collections.abc import Iterable
from statistics import median

import numpy as np

from spoutline.model.finding import Finding, SubjectKind, Verdict
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.part import HOSES, Part
from spoutline.model.part_columns import PartColumns
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.verdicts import finding

LEAST_PRICED = 5  # parts of a kind, below which they have no usual price


def comparable_price(part: Part, currency: str) -> float | None:
    """Return the price that parts of a kind are compared by, minor units: of a hose for each metre; None without one.

    The price of an article sold made up is of parts of several kinds, and compared with none.

    Parameters: ``part``; ``currency``, ISO 4217.
    """
    price = part.price_minor(currency)
    if price is None or part.article is not None:
        return None
    return price / part.hose.length_m if part.hose is not None else float(price)


def middle_price(parts: Iterable[Part], currency: str) -> float | None:
    """Return the median price of parts of one kind; None where too few have a price above nothing to tell.

    Parameters: ``parts`` of one kind; ``currency``, ISO 4217.
    """
    prices = [price for part in parts if (price := comparable_price(part, currency))]
    return median(prices) if len(prices) >= LEAST_PRICED else None


def middle_price_of(parts: PartColumns, currency: str) -> float | None:
    """Return the median price of parts of one kind in columns, as ``middle_price`` does.

    Parameters: ``parts`` of one kind; ``currency``, ISO 4217.
    """
    price = parts.price_minor(currency)
    comparable = price / parts.number("hose.length_m") if parts.kind in HOSES else price
    known = comparable[(comparable > 0.0) & ~(parts.inside_article("inlet") | parts.inside_article("outlet"))]
    if len(known) < LEAST_PRICED:
        return None
    below, above = (len(known) - 1) // 2, len(known) // 2
    ordered = np.partition(known, (below, above))  # numpy's own median loads masked arrays
    return float((ordered[below] + ordered[above]) / 2)


def price_question(part: Part, currency: str, middle: float | None, tables: RuleTables) -> Finding | None:
    """Return the question that a price far from the middle of its kind puts; None where it is usual or has no measure.

    Parameters: ``part``; ``currency``; ``middle`` as ``middle_price`` gives it; ``tables``, how far is far.
    Source: engineering judgement.
    """
    price, factor = comparable_price(part, currency), tables.jurisdiction.number(LimitId.PRICE_USUAL_FACTOR)
    if price is None or middle is None or middle / factor <= price <= middle * factor:
        return None
    return finding(
        RuleId.PRICE_UNUSUAL,
        tables,
        SubjectKind.PART,
        part.number,
        Fact("kind", part.kind),
        Quantity("price_ratio", price / middle, Dimension.RATIO),
        Quantity("price_factor", factor, Dimension.RATIO),
        verdict=Verdict.QUESTION,
        limits=(LimitId.PRICE_USUAL_FACTOR,),
    )
