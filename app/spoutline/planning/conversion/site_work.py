"""What a conversion costs by its parts: dispensers that go together, and what concerns the whole site at each visit.

Only whole dispensers are parted from each other. What ties some of them together:

* a tank that changes its liquid where the new sets do not serve the old one, with every dispenser that it feeds; where
  no tank is known, all whose liquid changes. Sets that serve both hang over years, and the product changes at the end;
* an agency that wants the removal finished so many days after its start: all that lose recovery.

Hours of a task are shared equally among the dispensers or positions at which it is done, lost margin among the
positions that are worked on; the stops of the whole station, and the change of a product that follows the hardware, are
counted at every visit. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import ROUND_HALF_UP, Decimal
from itertools import pairwise

from spoutline.explain.writing.money import amount, decimals
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_money import CostKind
from spoutline.model.conversion_sequence import PlannedTask, Sequence
from spoutline.model.conversion_step import StepRole
from spoutline.model.position_conversion import PositionConversion, PositionOutcome
from spoutline.model.programme import SiteUnit, SiteWork, SplitHindrance
from spoutline.model.tank_change import ChangeWay, TankProblem

_SIXTY = Decimal(60)


def site_work(conversion: SiteConversion) -> SiteWork | None:
    """Return the cost of a conversion by its parts; None where nothing is done or a price is missing."""
    sequence = conversion.sequence
    if sequence is None or not conversion.money.complete:
        return None
    return _Parts(conversion, sequence).work()


class _Parts:
    """The dispensers of a site in groups that are never parted, with what each takes."""

    def __init__(self, conversion: SiteConversion, sequence: Sequence) -> None:
        self.conversion, self.sequence = conversion, sequence
        self.answers = conversion.survey.conversion.money
        self.worked_on = tuple(one for one in conversion.positions if one.outcome is PositionOutcome.CONVERTS)
        self.dispenser_of = {one.label: one.dispenser for one in conversion.survey.positions}
        changes = conversion.tank_changes
        self.within = {one.number for one in changes if one.way is ChangeWay.WITHIN_CHANGE}
        self.groups, self.ties = _groups(conversion, self.worked_on)
        self.minutes = {name: Decimal(0) for group in self.groups for name in group}
        self.own = dict(self.minutes)
        self.site_own = 0
        for task in sequence.tasks:
            self._share(task)

    def work(self) -> SiteWork:
        """Return what the units take and what is left for the visit."""
        units = tuple(map(self._unit, self.groups))
        lines = self.conversion.money.costs
        once = sum((one.amount or Decimal(0) for one in lines if one.kind is CostKind.OWN), Decimal(0))
        grant = -sum((one.amount or Decimal(0) for one in lines if one.kind is CostKind.GRANT), Decimal(0))
        aside = (CostKind.GRANT, CostKind.LOST_MARGIN)
        paid = sum((one.amount or Decimal(0) for one in lines if one.kind not in aside), Decimal(0))
        lost = next((one.amount for one in lines if one.kind is CostKind.LOST_MARGIN), None)
        in_units = sum((one.lost_margin or Decimal(0) for one in units), Decimal(0))
        return SiteWork(
            units=units,
            visit_cash=paid - once - sum((one.cash for one in units), Decimal(0)),
            once_cash=once,
            grant=grant,
            visit_lost_margin=None if lost is None else lost - in_units,
            visit_own_minutes=self.site_own + round(sum(self.own.values())) - sum(one.own_minutes for one in units),
            days=self.sequence.finish.day + 1,
            hindrance=self.ties if len(self.groups) == 1 else None,
        )

    def _share(self, task: PlannedTask) -> None:
        own = task.work_minutes if task.role is StepRole.OWNER else 0
        places = [name for name in (self.dispenser_of.get(one, one) for one in task.places) if name in self.minutes]
        if (task.phase is None and task.change not in self.within) or not places:
            self.site_own += own
            return
        for name in places:
            self.minutes[name] += Decimal(task.work_minutes) / len(places)
            self.own[name] += Decimal(own) / len(places)

    def _unit(self, group: tuple[str, ...]) -> SiteUnit:
        survey = self.conversion.survey
        here = [one for one in self.worked_on if one.position.dispenser in group]
        options = [one.followed(survey.conversion.follow) for one in here]
        bought = amount(sum(option.bought_minor for option in options if option), survey.site.currency)
        hours = sum((self.minutes[name] for name in group), Decimal(0)) / _SIXTY
        labour = self._rounded((self.answers.labour_rate_per_hour or Decimal(0)) * hours)
        tanks = (one.tank for one in self.conversion.tank_changes if not set(group).isdisjoint(one.dispensers))
        return SiteUnit(
            dispensers=group,
            tanks=tuple(sorted({tank for tank in tanks if tank})),
            cash=bought + labour,
            lost_margin=self._lost_margin(len(here)),
            own_minutes=int(sum((self.own[name] for name in group), Decimal(0))),
        )

    def _lost_margin(self, positions: int) -> Decimal | None:
        rate = self.answers.margin_lost_per_hour
        if rate is None:
            return None
        today = sum(one.exists_today for one in self.conversion.survey.positions)
        minutes = max(0, self.sequence.downtime_minutes - self.sequence.site_stop_minutes * today)
        return self._rounded(rate * minutes / _SIXTY * positions / len(self.worked_on))

    def _rounded(self, value: Decimal) -> Decimal:
        places = decimals(self.conversion.survey.site.currency)
        return value.quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_UP)


def _groups(
    conversion: SiteConversion, worked_on: tuple[PositionConversion, ...]
) -> tuple[tuple[tuple[str, ...], ...], SplitHindrance | None]:
    """Return the groups in the order of the survey, and what ties the dispensers together."""
    names = tuple(dict.fromkeys(one.position.dispenser for one in worked_on))
    ties = tuple(_ties(conversion, worked_on))
    head = {name: name for name in names}

    def head_of(name: str) -> str:
        while head[name] != name:
            name = head[name]
        return name

    for _, tied in ties:
        for one, other in pairwise(name for name in tied if name in head):
            head[head_of(other)] = head_of(one)
    groups: dict[str, list[str]] = {}
    for name in names:
        groups.setdefault(head_of(name), []).append(name)
    tied_by = next((why for why, tied in ties if len(tied) > 1), None)
    return tuple(map(tuple, groups.values())), SplitHindrance.ONE_DISPENSER if len(names) == 1 else tied_by


def _ties(
    conversion: SiteConversion, worked_on: Iterable[PositionConversion]
) -> Iterator[tuple[SplitHindrance, tuple[str, ...]]]:
    """Yield dispensers that are not parted, and why."""
    losing = tuple(dict.fromkeys(one.position.dispenser for one in worked_on if one.loses_recovery))
    if losing and conversion.standing.agency.finish_days is not None:
        yield SplitHindrance.AGENCY_FINISH, losing
    tanks: dict[str, list[str]] = {}  # a blend is drawn from two tanks, each of which other hoses draw from too
    tanks_of = {one.label: one.tanks for one in conversion.survey.positions}
    for change in conversion.tank_changes:
        if TankProblem.TANK_UNKNOWN in change.problems:
            yield SplitHindrance.TANK_UNKNOWN, change.dispensers
        elif change.way is ChangeWay.WITHIN_CHANGE:
            for tank in {tank for label in change.positions for tank in tanks_of[label]}:
                tanks.setdefault(tank, []).extend(change.dispensers)
    yield from ((SplitHindrance.ONE_TANK, tuple(dict.fromkeys(names))) for _, names in sorted(tanks.items()))
