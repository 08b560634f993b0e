"""Many sites ranked over years under a yearly budget: what must go first, then what returns most per money spent."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from decimal import Decimal

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.programme import (
    Programme,
    ProgrammeYear,
    RankedSite,
    RankReason,
    SiteOutcome,
    SiteResult,
    Visit,
    YearReason,
)
from spoutline.model.removal_standing import Standing
from spoutline.planning.conversion.deadlines import deadlines_of
from spoutline.planning.conversion.placing import Place, Placer, work_of
from spoutline.planning.conversion.present_worth import present_worth
from spoutline.planning.conversion.programme_terms import ProgrammeTerms
from spoutline.planning.conversion.purse import Purse
from spoutline.planning.conversion.waiting import waiting_of


def programme_of(results: Iterable[SiteResult], terms: ProgrammeTerms, *, stopped: bool = False) -> Programme:
    """Return the ranked programme.

    Ready sites with a deadline within the years come first, the earliest before the others; then those whose recovery
    must go; then those with the greatest net present value per amount spent; then those without a known value, the
    cheapest first. Each year takes them in this order as far as its money reaches; a dearer site that no longer fits
    lets a cheaper one behind it through. The rank is a rule that people can follow, not a proof that no other choice
    returns more.

    Parameters
    ----------
    results
        One result for each site.
    terms
        Name, budget, years and what else the owner set.
    stopped
        Whether the run was stopped before all sites were looked at.

    Raises
    ------
    InputFault
        If ready sites have different currencies, so that one budget cannot pay them, or a deadline names no site.
    """
    found = sorted(results, key=lambda one: one.place)
    deadlines = deadlines_of(found, terms.deadlines or {}, terms.first_year)
    ready = [one for one in found if one.outcome is SiteOutcome.READY]
    reasons = {one.place: _rank_reason(one, deadlines.get(one.place), terms) for one in ready}
    ready.sort(key=lambda one: _rank_key(one, reasons[one.place], deadlines.get(one.place)))
    currencies = sorted({one.currency for one in ready})
    if len(currencies) > 1 and terms.budget is not None:
        wanted = "rank sites of one currency at a time: put them into folders of their own"
        raise InputFault((InputProblem("", "budget", ", ".join(currencies), wanted),))
    ranked = tuple(
        _ranked(rank, site, place, terms, reasons[site.place], deadlines.get(site.place))
        for rank, (site, place) in enumerate(zip(ready, _places(ready, terms), strict=True), start=1)
    )
    currency = currencies[0] if len(currencies) == 1 else ""
    return Programme(
        name=terms.name,
        currency=currency,
        budget=terms.budget,
        first_year=terms.first_year,
        carry_over=terms.carry_over,
        price_rise_percent=terms.price_rise_percent,
        interest_percent=terms.interest_percent,
        ranked=ranked,
        others=tuple(one for one in found if one.outcome is not SiteOutcome.READY),
        years=tuple(_years(ranked, terms, currency)),
        stopped=stopped,
    )


def _rank_reason(one: SiteResult, deadline: int | None, terms: ProgrammeTerms) -> RankReason:
    if deadline is not None and terms.first_year is not None and deadline < terms.first_year + terms.years:
        return RankReason.DEADLINE
    if one.standing is Standing.MUST_GO:
        return RankReason.MUST_GO
    return RankReason.CHEAPEST if _return_of(one) is None else RankReason.RETURN


def _return_of(one: SiteResult) -> Decimal | None:
    value, cost = one.net_present_value, one.cost
    return value / cost if value is not None and cost is not None and cost > 0 else None


def _rank_key(one: SiteResult, reason: RankReason, deadline: int | None) -> tuple[object, ...]:
    worth = _return_of(one)
    group = {RankReason.DEADLINE: 0, RankReason.MUST_GO: 1}.get(reason, 2)
    year = deadline if deadline is not None and reason is RankReason.DEADLINE else 0
    return (group, year, worth is None, -(worth or Decimal(0)), one.known_cost, one.place)


def _places(ready: Sequence[SiteResult], terms: ProgrammeTerms) -> Iterator[Place]:
    if terms.budget is None:
        yield from (Place(visits=(_at_once(one),), reason=YearReason.NO_LIMIT) for one in ready)
        return
    placer = Placer(Purse(terms.budget, terms.years, terms.carry_over), terms.price_rise_percent)
    yield from map(placer.place, ready)


def _at_once(site: SiteResult) -> Visit:
    work = work_of(site)
    if work is None:
        return Visit(year=1, cash=site.known_cost)
    return Visit(year=1, cash=work.cash - work.grant, lost_margin=work.lost_margin, own_minutes=work.own_minutes)


def _ranked(  # noqa: PLR0917  (what a line of the programme is made of)
    rank: int, site: SiteResult, place: Place, terms: ProgrammeTerms, reason: RankReason, deadline: int | None
) -> RankedSite:
    year = place.visits[-1].year if place.visits else None
    in_time = None
    if deadline is not None and terms.first_year is not None:
        in_time = year is not None and terms.first_year + year - 1 <= deadline
    return RankedSite(
        rank=rank,
        site=site,
        year=year,
        left_out=place.left_out,
        visits=place.visits,
        rank_reason=reason,
        year_reason=place.reason,
        short=place.short,
        dear_part=place.dear_part,
        deadline=deadline,
        in_time=in_time,
        waiting=waiting_of(site, year or 1, terms),
    )


def _years(ranked: Sequence[RankedSite], terms: ProgrammeTerms, currency: str) -> Iterator[ProgrammeYear]:
    visits = [visit for one in ranked for visit in one.visits]
    purse = None if terms.budget is None else Purse(terms.budget, terms.years, terms.carry_over)
    for visit in visits:
        if purse is not None:
            purse.pay(visit.year, visit.cash)
    for year in range(1, max((one.year for one in visits), default=0) + 1):
        here = [one for one in visits if one.year == year]
        spent = sum((one.cash for one in here), Decimal(0))
        calendar = None if terms.first_year is None else terms.first_year + year - 1
        finished = [one.site for one in ranked if one.year == year]
        done = [one.site for one in ranked if one.year is not None and one.year <= year]
        yield ProgrammeYear(
            year=year,
            spent=spent,
            sites=sum(any(visit.year == year for visit in one.visits) for one in ranked),
            change_kg=sum(one.change_in(calendar) or 0.0 for one in finished),
            available=None if purse is None else purse.available(year),
            left=None if purse is None else purse.left(year),
            lost_margin=_known_sum(one.lost_margin for one in here) if here else Decimal(0),
            own_minutes=sum(one.own_minutes for one in here),
            present_value=None
            if terms.interest_percent is None
            else present_worth(spent, terms.interest_percent, year - 1, currency),
            after_kg=sum(one.change_in(calendar) or 0.0 for one in done),
        )


def _known_sum(amounts: Iterable[Decimal | None]) -> Decimal | None:
    """Return the sum of what is known; None where nothing is."""
    known = [one for one in amounts if one is not None]
    return sum(known, Decimal(0)) if known else None
