"""Sites of a programme with costs that are easy to add up by hand."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from spoutline.model.programme import Programme, RankedSite, SiteOutcome, SiteResult, SiteUnit, SiteWork, SplitHindrance
from spoutline.model.removal_standing import Standing
from spoutline.planning.conversion.programme import programme_of
from spoutline.planning.conversion.programme_terms import ProgrammeTerms


def work(*units: int, visit: int = 0, once: int = 0, grant: int = 0, why: SplitHindrance | None = None) -> SiteWork:
    """Return a site whose dispensers 1, 2, ... cost ``units`` each."""
    return SiteWork(
        units=tuple(
            SiteUnit(dispensers=(str(number),), cash=Decimal(cash), lost_margin=Decimal(7), own_minutes=10)
            for number, cash in enumerate(units, start=1)
        ),
        visit_cash=Decimal(visit),
        once_cash=Decimal(once),
        grant=Decimal(grant),
        visit_lost_margin=Decimal(3),
        visit_own_minutes=60,
        days=40,
        hindrance=why,
    )


def site(place: str, of: SiteWork | int, **changes: Any) -> SiteResult:
    parts = of if isinstance(of, SiteWork) else work(of)
    cost = parts.cash - parts.grant + (parts.lost_margin or 0)
    told = {
        "outcome": SiteOutcome.READY,
        "standing": Standing.MAY_GO,
        "currency": "USD",
        "cost": cost,
        "known_cost": cost,
        "net_present_value": Decimal(100),
        "work": parts,
        "name": place.upper(),
        **changes,
    }
    return SiteResult.model_validate({"place": f"{place}.json", **told})


def programme(*sites: SiteResult, budget: int | str | None, years: int = 3, **terms: Any) -> Programme:
    amount = None if budget is None else Decimal(budget)
    return programme_of(sites, ProgrammeTerms(name="test", budget=amount, years=years, **terms))


def of(found: Programme, place: str) -> RankedSite:
    return next(one for one in found.ranked if one.site.place == f"{place}.json")
