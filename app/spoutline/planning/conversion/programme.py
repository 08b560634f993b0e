"""Many sites ranked over years under a yearly budget: what must go first, then what returns most per money spent."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from decimal import Decimal

from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.position_conversion import PositionOutcome
from spoutline.model.programme import LeftOut, Programme, ProgrammeYear, RankedSite, SiteOutcome, SiteResult
from spoutline.model.removal_standing import Standing


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgrammeTerms:
    """What the owner of many sites sets: a name, the money of a year (None: no limit), the number of years."""

    name: str
    budget: Decimal | None
    years: int


def site_result(conversion: SiteConversion, place: str) -> SiteResult:
    """Return what a programme needs of a site's conversion."""
    money, sheet = conversion.money, conversion.emissions
    reference = None
    if sheet is not None:
        reference = next((one for one in sheet.years if one.year == sheet.reference_year), None)
    kinds = dict.fromkeys(kind for one in conversion.positions for kind in one.kinds)
    return SiteResult(
        place=place,
        name=conversion.survey.site.name,
        outcome=_outcome(conversion),
        standing=conversion.standing.standing,
        kinds=tuple(kinds),
        positions=len(conversion.positions),
        converted=sum(one.outcome is PositionOutcome.CONVERTS for one in conversion.positions),
        currency=money.currency,
        cost=money.total if money.complete else None,
        known_cost=money.total,
        yearly_saving=money.yearly_saving,
        net_present_value=money.net_present_value,
        payback_years=money.payback_years,
        change_kg=reference.total_kg if reference else None,
        work_minutes=conversion.sequence.work_minutes if conversion.sequence else 0,
    )


def _outcome(conversion: SiteConversion) -> SiteOutcome:
    outcomes = {one.outcome for one in conversion.positions}
    if conversion.standing.standing is Standing.NOT_ALLOWED or PositionOutcome.NOT_ALLOWED in outcomes:
        return SiteOutcome.NOT_ALLOWED
    if not outcomes <= {PositionOutcome.CONVERTS, PositionOutcome.NOTHING_TO_DO}:
        return SiteOutcome.OPEN
    return SiteOutcome.READY if PositionOutcome.CONVERTS in outcomes else SiteOutcome.NOTHING_TO_DO


def programme_of(results: Iterable[SiteResult], terms: ProgrammeTerms, *, stopped: bool = False) -> Programme:
    """Return the ranked programme.

    Ready sites whose recovery must go come first, then those with the greatest net present value per amount spent,
    then those without a known value, the cheapest first. Each year takes them in this order as far as the budget
    reaches; a dearer site that no longer fits lets a cheaper one behind it through. The rank is a rule that people can
    follow, not a proof that no other choice returns more.

    Parameters
    ----------
    results
        One result for each site.
    terms
        Name, budget, years.
    stopped
        Whether the run was stopped before all sites were looked at.

    Raises
    ------
    InputFault
        If ready sites have different currencies, so that one budget cannot pay them.
    """
    found = sorted(results, key=lambda one: one.place)
    ready = sorted((one for one in found if one.outcome is SiteOutcome.READY), key=_rank_key)
    currencies = sorted({one.currency for one in ready})
    if len(currencies) > 1 and terms.budget is not None:
        wanted = "rank sites of one currency at a time: put them into folders of their own"
        raise InputFault((InputProblem("", "budget", ", ".join(currencies), wanted),))
    ranked = _placed(ready, terms)
    return Programme(
        name=terms.name,
        currency=currencies[0] if len(currencies) == 1 else "",
        budget=terms.budget,
        ranked=ranked,
        others=tuple(one for one in found if one.outcome is not SiteOutcome.READY),
        years=tuple(_years(ranked)),
        stopped=stopped,
    )


def _rank_key(one: SiteResult) -> tuple[bool, bool, Decimal, Decimal, str]:
    value, cost = one.net_present_value, one.cost
    known = value is not None and cost is not None and cost > 0
    worth = value / cost if value is not None and cost is not None and cost > 0 else Decimal(0)
    return (one.standing is not Standing.MUST_GO, not known, -worth, one.known_cost, one.place)


def _placed(ready: Sequence[SiteResult], terms: ProgrammeTerms) -> tuple[RankedSite, ...]:
    left = [terms.budget] * terms.years
    found: list[RankedSite] = []
    for rank, site in enumerate(ready, start=1):
        year, reason = _year_for(site, left, terms)
        if year is not None and site.cost is not None:
            remaining = left[year - 1]
            if remaining is not None:
                left[year - 1] = remaining - site.cost
        found.append(RankedSite(rank=rank, site=site, year=year, left_out=reason))
    return tuple(found)


def _year_for(site: SiteResult, left: list[Decimal | None], terms: ProgrammeTerms) -> tuple[int | None, LeftOut | None]:
    if terms.budget is None:
        return 1, None
    if site.cost is None:
        return None, LeftOut.COST_UNKNOWN
    if site.cost > terms.budget:
        return None, LeftOut.DEARER_THAN_A_YEAR
    for year, remaining in enumerate(left, start=1):
        if remaining is not None and site.cost <= remaining:
            return year, None
    return None, LeftOut.BEYOND_THE_YEARS


def _years(ranked: tuple[RankedSite, ...]) -> Iterable[ProgrammeYear]:
    for year in sorted({one.year for one in ranked if one.year is not None}):
        here = [one.site for one in ranked if one.year == year]
        yield ProgrammeYear(
            year=year,
            spent=sum((one.known_cost for one in here), Decimal(0)),
            sites=len(here),
            change_kg=sum(one.change_kg or 0.0 for one in here),
        )
