"""In which year a site is done: whole where a year pays it, else in visits of whole dispensers, else saved up for."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from spoutline.frozen import frozen
from spoutline.model.programme import LeftOut, Shortage, SiteResult, SiteUnit, SiteWork, Visit, YearReason
from spoutline.planning.conversion.present_worth import risen
from spoutline.planning.conversion.purse import Purse


@frozen(kw_only=True)
class Place:
    """The visits of a site and why they lie there; without visits, why it is left out."""

    visits: tuple[Visit, ...] = ()
    reason: YearReason | None = None
    short: Shortage | None = None
    left_out: LeftOut | None = None
    dear_part: SiteUnit | None = None


def work_of(site: SiteResult) -> SiteWork | None:
    """Return the cost of a site by its parts; one part where only its sum is known, None where that is not known."""
    if site.work is not None:
        return site.work
    if site.cost is None:
        return None
    zero = Decimal(0)
    whole = SiteUnit(dispensers=(), cash=site.cost)
    return SiteWork(
        units=(whole,), visit_cash=zero, once_cash=zero, grant=zero, visit_lost_margin=None, visit_own_minutes=0, days=0
    )


class Placer:
    """Places one site after the other into years whose money it spends.

    Parameters
    ----------
    purse
        The money of the years.
    price_rise_percent
        Percent a year, from the second year on; None: prices stay.
    """

    def __init__(self, purse: Purse, price_rise_percent: Decimal | None) -> None:
        self.purse, self.rise = purse, price_rise_percent

    def place(self, site: SiteResult) -> Place:
        """Return where a site comes, and spend its money there.

        The first year whose budget and rest pay the whole site; else visits of whole dispensers; where money is carried
        over, one visit in the year in which enough is saved, unless several visits finish before that.
        """
        work = work_of(site)
        if work is None:
            return Place(left_out=LeftOut.COST_UNKNOWN)
        years = range(1, self.purse.years + 1)
        costs = {year: self.visit(site, work, work.units, year, first=True, last=True) for year in years}
        within = next((y for y in years if costs[y].cash <= min(self.purse.room(y), self.purse.budget)), None)
        if within is not None:
            return self._paid((costs[within],), YearReason.FIRST if within == 1 else YearReason.LATER, costs)
        dear = [one.cash > self.purse.budget for one in costs.values()]
        if any(dear) and len(work.units) > 1 and (visits := self._in_parts(site, work)):
            return self._paid(visits, YearReason.IN_PARTS if len(visits) > 1 else YearReason.SAVED_UP, costs)
        saved = next((year for year in years if costs[year].cash <= self.purse.room(year)), None)
        if saved is not None:
            return self._paid((costs[saved],), YearReason.SAVED_UP, costs)
        return self._left_out(site, work, is_dear=dear[0])

    def visit(
        self, site: SiteResult, work: SiteWork, units: Sequence[SiteUnit], year: int, *, first: bool, last: bool
    ) -> Visit:
        """Return a visit to some units of a site, at the prices of its year."""
        paid = sum((one.cash for one in units), work.visit_cash + (work.once_cash if first else Decimal(0)))
        lost = work.visit_lost_margin
        whole = first and last
        return Visit(
            year=year,
            dispensers=() if whole else tuple(name for one in units for name in one.dispensers),
            cash=risen(paid, self.rise, year - 1, site.currency) - (work.grant if last else Decimal(0)),
            lost_margin=None if lost is None else sum((one.lost_margin or Decimal(0) for one in units), lost),
            own_minutes=work.visit_own_minutes + sum(one.own_minutes for one in units),
        )

    def _in_parts(self, site: SiteResult, work: SiteWork) -> tuple[Visit, ...]:
        """Return the visits that finish a site within the years, the earliest that do; none where the years end before.

        A visit that only fills what a year has left costs all that concerns the whole site once more: of the starts
        that finish in the same year, the one with the fewest visits is taken.
        """
        found: list[tuple[Visit, ...]] = []
        for first in range(1, self.purse.years + 1):
            visits = self._in_parts_from(first, site, work)
            if not visits or (found and first > found[0][-1].year):  # with less money no later start does better
                break
            found.append(visits)
        return min(found, key=lambda visits: (visits[-1].year, len(visits), visits[0].year), default=())

    def _in_parts_from(self, start: int, site: SiteResult, work: SiteWork) -> tuple[Visit, ...]:
        """Return the visits from a year on, each as full as its money lets it be; none where they do not finish."""
        left, visits = list(work.units), list[Visit]()
        for year in range(start, self.purse.years + 1):
            room = self._room_after(visits, year)
            taken: list[SiteUnit] = []
            for unit in left:
                tried = self.visit(site, work, [*taken, unit], year, first=not visits, last=len(taken) + 1 == len(left))
                if tried.cash <= room:
                    taken.append(unit)
            if taken:
                left = [one for one in left if one not in taken]
                visits.append(self.visit(site, work, taken, year, first=not visits, last=not left))
            if not left:
                return tuple(visits)
        return ()

    def _room_after(self, visits: Sequence[Visit], year: int) -> Decimal:
        purse = self.purse.copy()
        for one in visits:
            purse.pay(one.year, one.cash)
        return purse.room(year)

    def _paid(self, visits: tuple[Visit, ...], reason: YearReason, whole: dict[int, Visit]) -> Place:
        first = visits[0]
        short = None
        if first.year > 1:
            before = first.year - 1
            asked = whole[before].cash
            short = Shortage(year=before, left=max(self.purse.room(before), Decimal(0)), asked=asked)
        for one in visits:
            self.purse.pay(one.year, one.cash)
        return Place(visits=visits, reason=reason, short=short)

    def _left_out(self, site: SiteResult, work: SiteWork, *, is_dear: bool) -> Place:
        """Return why no year takes a site: it never could, or the years were spent before its turn."""
        saved = self.purse.budget * (self.purse.years if self.purse.carry_over else 1)
        if len(work.units) == 1:
            whole = self.visit(site, work, work.units, 1, first=True, last=True)
            never = is_dear and whole.cash > saved
            return Place(left_out=LeftOut.DEARER_THAN_A_YEAR if never else LeftOut.BEYOND_THE_YEARS)
        alone = [(one, self.visit(site, work, [one], 1, first=False, last=False)) for one in work.units]
        dear = next((one for one, visit in alone if visit.cash > saved), None)
        if is_dear and dear is not None:
            return Place(left_out=LeftOut.PART_DEARER, dear_part=dear)
        return Place(left_out=LeftOut.BEYOND_THE_YEARS)
