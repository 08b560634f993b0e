"""What a conversion costs, and the cost against upkeep over the years."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum

from spoutline.frozen import frozen


class CostKind(StrEnum):
    """Lines of the cost of a conversion."""

    PARTS = "parts"
    ACCESSORIES = "accessories"
    LABOUR = "labour"
    OWN = "own"
    LOST_MARGIN = "lost_margin"
    GRANT = "grant"


@frozen(kw_only=True)
class CostLine:
    """One line; ``amount`` is None where a price is missing."""

    kind: CostKind
    label: str
    amount: Decimal | None
    eligible: bool = False


class MoneyGap(StrEnum):
    """What the money lacks, for the reader to supply."""

    LABOUR_RATE = "labour_rate"
    UPKEEP = "upkeep"
    MARGIN = "margin"
    UNPRICED_PARTS = "unpriced_parts"
    POSITIONS_OPEN = "positions_open"


@frozen(kw_only=True)
class CashYear:
    """One year of the comparison; year 0 is the conversion."""

    year: int
    flow: Decimal
    discounted: Decimal
    balance: Decimal


@frozen(kw_only=True)
class MoneySheet:
    """Cost against upkeep. Payback and value are None unless the owner gave the figures that they need."""

    currency: str
    costs: tuple[CostLine, ...]
    total: Decimal
    complete: bool
    yearly_saving: Decimal | None
    payback_years: Decimal | None
    discounted_payback_years: int | None
    net_present_value: Decimal | None
    discount_percent: Decimal
    years: tuple[CashYear, ...]
    gaps: tuple[MoneyGap, ...]
    grant_possible: Decimal | None
    renewal_total: Decimal
