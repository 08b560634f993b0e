"""What the owner of many sites sets for a programme over years."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from spoutline.frozen import frozen


@frozen(kw_only=True)
class ProgrammeTerms:
    """What the owner of many sites sets.

    ``budget`` is the money of a year (None: no limit), ``first_year`` the calendar year of the first (None: years are
    only counted), ``carry_over`` whether what a year leaves goes to the next. Price rise and interest in percent a
    year; None: none is counted. ``deadlines`` are calendar years by the file or the name of a site; they go before what
    surveys say.
    """

    name: str
    budget: Decimal | None
    years: int
    first_year: int | None = None
    carry_over: bool = False
    price_rise_percent: Decimal | None = None
    interest_percent: Decimal | None = None
    deadlines: Mapping[str, int] | None = None
