"""The sets of one position that no other outdoes: searched, then held to every check."""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import partial

import numpy as np

from spoutline.calc.permeation import HIGHEST_TEMPERATURE, LOWEST_TEMPERATURE, permeation_applies
from spoutline.frozen import frozen
from spoutline.model.check import CheckId
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Severity
from spoutline.model.front import ADDS, FrontAxis, FrontPoint, LeftOut, PositionFront
from spoutline.model.part import Part
from spoutline.model.part_columns import Mask
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan
from spoutline.model.requirement import Requirement, RequirementId
from spoutline.model.survey import Position, Site
from spoutline.planning.sets.assembled import Assembled
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.in_use import tension_test
from spoutline.planning.sets.plan_position import planned_position
from spoutline.planning.sets.pool import SlotParts
from spoutline.planning.sets.staying import Choosing
from spoutline.planning.weighing.alike import alike_of
from spoutline.planning.weighing.measures import Measured, Measures
from spoutline.planning.weighing.sources import Found, Group, Source, coarse, rows_of, shifted
from spoutline.planning.weighing.yearly import YearlyCost
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.enumeration import ChainTest
from spoutline.search.finder import Finder
from spoutline.search.front import Axes, FrontChain, merged
from spoutline.search.listener import Listener

_MOST_LABELS = 40_000_000  # looked at for an exact front; beyond it a coarse one is made, its gap stated
_WORK = 10  # times what one question of a position may cost: a front is all that is asked, and Stop is at hand
_SHARES = (0.0, 0.01, 0.05, 0.2)  # gap of the fronts tried, of the least figure of each axis
_ROUNDS = 24  # of looking for what takes the place of sets that full checks turned down
_QUICK = 12  # sets of a first quick look that are held to their checks and shown
_HANDED_EVERY = 32  # sets held to their checks between two parts of the answer

Told = Callable[[PositionFront], None]


@frozen
class FrontQuestion:
    """What is asked of a position.

    ``free`` leaves out the parts that a person asked for, so that others can take their places. ``yearly_cost`` says
    what parts cost in a year.
    """

    axes: tuple[FrontAxis, ...]
    free: bool = False
    yearly_cost: YearlyCost | None = None


def axes_at(requirement: Requirement, *, yearly: bool) -> tuple[FrontAxis, ...]:
    """Return the axes on which sets of a position can be weighed.

    Permeation is worked out for gasoline within the range of its temperature rule; a yearly cost needs ``yearly``, that
    figures for it are stated.
    """
    middle = (requirement.temperature_low_c + requirement.temperature_high_c) / 2.0
    permeates = permeation_applies(requirement.liquid.family) and (
        LOWEST_TEMPERATURE.value <= middle <= HIGHEST_TEMPERATURE.value
    )
    left = {*(() if permeates else (FrontAxis.PERMEATION,)), *(() if yearly else (FrontAxis.YEARLY,))}
    return tuple(axis for axis in FrontAxis if axis not in left)


def position_front(
    position: Position, site: Site, context: PlanningContext, asked: FrontQuestion, told: Told | None = None
) -> PositionFront:
    """Return the sets of a position that no other outdoes on the axes asked for.

    Sets keep every must. Where departures from good practice are no axis, sets count that depart no further than the
    plan's own. Which sets count, what they are judged by and the plan's own set are those of ``planned_position``.

    Parameters
    ----------
    position, site
        From the survey.
    context
        Rule tables, part store and listener.
    asked
        Axes, all of them among ``axes_at``; an axis that a position does not have leaves it without points.
    told
        Is handed the front as far as it is known: the plan's own set, some that a quick look finds, and then those of
        the front as they pass their checks. Sets shown before all are found may be outdone by later ones.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    pins = position.decisions.pinned if asked.free else ()
    if pins:
        position = position.model_copy(update={"decisions": position.decisions.model_copy(update={"pinned": ()})})
    planned = planned_position(position, site, context)
    empty = PositionFront(
        plan=planned.plan,
        axes=asked.axes,
        currency=site.currency,
        points=(),
        planned=None,
        planned_figures=None,
        most_departures=None,
        least=None,
        gap=(0,) * len(asked.axes),
        pins_left_out=len(pins),
    )
    if planned.choosing is None or planned.choice is None or planned.plan.requirement is None:
        return empty
    there = axes_at(planned.plan.requirement, yearly=asked.yearly_cost is not None)
    if any(axis not in there for axis in asked.axes):
        return empty
    return _Weighing(planned.plan, planned.choosing, planned.choice, context, asked, empty, there).front(told)


@dataclass
class _Weighing:
    """The front of one position in the making."""

    plan: PositionPlan
    choosing: Choosing
    choice: Choice
    context: PlanningContext
    asked: FrontQuestion
    empty: PositionFront
    there: tuple[FrontAxis, ...]
    _sources: tuple[Source, ...] = field(init=False)
    _accepted: list[tuple[Found, FrontPoint]] = field(init=False, default_factory=list)
    _turned_down: dict[int, list[tuple[int, ...]]] = field(init=False, default_factory=dict)  # by source: chains
    _tests: dict[int, ChainTest | None] = field(init=False, default_factory=dict)  # by source
    _early: dict[tuple[int, tuple[int, ...]], FrontPoint | None] = field(init=False, default_factory=dict)  # by key
    _gap: tuple[int, ...] = field(init=False)

    def __post_init__(self) -> None:
        """Measure every part once for each design flow."""
        chooser = self.choosing.chooser
        requirement = chooser.search.requirement
        self.listener = self.context.listener or Listener()
        staying = self.choosing.staying

        def true_part(key: PartRef) -> Part | None:
            unit = None if staying is None else staying.unit_of(key)
            return None if unit is None else unit.part

        cost = self.asked.yearly_cost
        if cost is not None:
            cost = replace(cost, basis=replace(cost.basis, permeates=FrontAxis.PERMEATION in self.there))
            self.empty = replace(self.empty, yearly=cost.basis)
        keys, model = chooser.installed_keys, chooser.search.model
        self.measures = Measures(requirement, model, self.there, keys, cost, true_part)
        self._gap = self.empty.gap
        self._least: tuple[int, ...] | None = None
        self.departures = len(self.choice.dropped) + chooser.regrets_of(self.choice.judged.hanging_set)
        self._sources = tuple(self._all_sources(chooser))
        self._plan_point = self._point_of_plan()

    # what is searched

    def _all_sources(self, chooser: Chooser) -> Iterator[Source]:
        soft = {one.requirement for one in chooser.search.model.set_limits if one.severity is Severity.SHOULD}
        by_practice = FrontAxis.PRACTICE in self.asked.axes
        most = None if by_practice else self.departures
        measured: dict[int, Measured] = {}
        lines = self._lines_that_bind(chooser, sorted(soft))
        for size in range(len(soft) + 1 if most is None else min(len(soft), most) + 1):
            for group in map(frozenset, itertools.combinations(sorted(soft), size)):
                query = chooser.query(group)
                for at, (one, finder) in enumerate(chooser.search.finders_of(query)):
                    if at not in measured:
                        measured[at] = self.measures.measured(one)
                    left = None if most is None else most - size
                    yield self._source(group, (one, finder), measured[at], left, widens=group <= lines[at])

    @staticmethod
    def _lines_that_bind(chooser: Chooser, soft: Sequence[RequirementId]) -> list[Group]:
        """Return, by design flow, the lines whose should-limits shut some chain out, by their bounds."""
        whole = [finder for _, finder in chooser.search.finders_of(chooser.query(frozenset()))]
        found: list[set[RequirementId]] = [set() for _ in whole]
        for line in soft:
            freed = chooser.search.finders_of(chooser.query(frozenset({line})))
            for at, (_, finder) in enumerate(freed):
                lost = zip(whole[at].limits, finder.limits, whole[at].binding(), strict=True)
                if any(held < free and binds for held, free, binds in lost):
                    found[at].add(line)
        return [frozenset(one) for one in found]

    def _source(
        self,
        group: Group,
        problem: tuple[Assembled, Finder],
        measured: Measured,
        most_regrets: int | None,
        *,
        widens: bool,
    ) -> Source:
        (one, finder), axes = problem, self.asked.axes
        may = np.logical_and.reduce([measured.known[axis] for axis in axes])
        return Source(
            group,
            one,
            finder,
            measured,
            may,
            Axes.exact(
                np.column_stack([measured.figures[axis] for axis in axes]),
                [axis in ADDS for axis in axes],
                measured.figures[FrontAxis.PRICE],
            ),
            np.array([len(group) if axis is FrontAxis.PRACTICE else 0 for axis in axes], np.int64),
            widens,
            most_regrets,
        )

    # the front

    def front(self, told: Told | None) -> PositionFront:
        """Return the front; ``told`` is handed it as it grows."""
        open_figures: list[tuple[int, ...]] = []
        if told is not None:
            told(self._so_far())
        for last in range(_ROUNDS):
            found = self._searched(told)
            turned_down = self._judge(found, told)
            if not turned_down:
                break
            if last == _ROUNDS - 1:
                open_figures = [one.chain.figures for one in turned_down]
        return self._as_known(self._points(), 0, self._still_open(open_figures))

    def _searched(self, told: Told | None) -> list[Found]:
        """Return the chains of the front that were not judged yet, exact where the labels suffice."""
        for share in _SHARES:
            most = None if share == _SHARES[-1] else _MOST_LABELS
            try:
                effort = Effort(self.listener, most, most_work=_WORK * self.listener.most_work)
                return self._searched_with(share, effort, told)
            except Exhausted:
                if most is None:
                    raise  # not even a coarse front: none is shown as if it were one
        return []

    def _searched_with(self, share: float, effort: Effort, told: Told | None) -> list[Found]:
        known = [found for found, _ in self._accepted]
        fresh: list[Found] = []
        gaps = np.zeros(len(self.asked.axes), np.int64)
        for number, source in self._in_order():
            if not source.widens and not self._turned_down:
                continue  # it holds the chains of a group with fewer lines, unless a full check forbade some there
            axes, gap = coarse(source, share)
            gaps = np.maximum(gaps, gap)
            begins = not known and not fresh
            chains = source.finder.front(
                axes,
                effort,
                may=source.may,
                most_major=source.most_regrets,
                without=self._turned_down.get(number, ()),
                known=[shifted(one.chain, -source.offset) for one in (*known, *fresh)],
                told=partial(self._hand_over, number, source, told) if begins else None,
            )
            fresh += [Found(number, source, shifted(one, source.offset)) for one in chains]
        self._gap = tuple(np.maximum(self._gap, gaps).tolist())
        if self._least is None and fresh:  # what is turned down later only raises it
            every = np.array([one.chain.figures for one in fresh])
            self._least = tuple((every.min(axis=0) - gaps).tolist())
        best = {(one.figures, one.tie) for one in merged(one.chain for one in (*known, *fresh))}
        return [one for one in fresh if (one.chain.figures, one.chain.tie) in best]

    def _in_order(self) -> list[tuple[int, Source]]:
        """Return the sources with their numbers, first those of the plan's own set, which spare the others most."""
        numbered = enumerate(self._sources)
        return sorted(numbered, key=lambda one: (one[1].group != self.choice.dropped, one[0]))

    def _hand_over(self, number: int, source: Source, told: Told | None, chains: Sequence[FrontChain]) -> None:
        """Hold some chains of a quick look to their checks and tell of those that pass."""
        if told is None:
            return
        for at in itertools.islice(_spread(len(chains)), _QUICK):
            one = Found(number, source, shifted(chains[at], source.offset))
            if one.key not in self._early:
                hanging_set = self._hanging_sets((one,))[0] if self._may_hold(one) else None
                self._early[one.key] = None if hanging_set is None else self._point(one, hanging_set)
        told(self._so_far())

    def _so_far(self) -> PositionFront:
        """Return the answer before the search has ended: the plan's own set, and those that a quick look found."""
        found = {one.figures: one for one in self._early.values() if one is not None}
        if self._plan_point is not None:
            found[self._plan_point.figures] = self._plan_point
        points = [
            one
            for one in found.values()
            if not any(_is_no_more(other, one.figures) for other in found if other != one.figures)
        ]
        return self._as_known(points, None, ())

    # checks

    def _judge(self, found: Sequence[Found], told: Told | None) -> list[Found]:
        """Hold sets to their full checks; return those that are turned down."""
        sets = self._hanging_sets(found)
        shown = self._shown(found, sets)
        turned_down: list[Found] = []
        rest = [at for at in _spread(len(found)) if at not in shown]
        for done, at in enumerate((*sorted(shown), *rest), 1):
            if self.listener.should_stop():
                raise Cancelled
            one = found[at]
            if one.key in self._early:
                point = self._early[one.key]
            else:
                point = self._point(one, sets[at]) if self._may_hold(one) else None
            if point is None:
                turned_down.append(one)
                self._turned_down.setdefault(one.number, []).append(one.chain.rows)
            else:
                self._accepted.append((one, point))
            if told is not None and done >= len(shown) and (done - len(shown)) % _HANDED_EVERY == 0:
                told(self._as_known(self._points(), len(found) - done, ()))
        return turned_down

    def _shown(self, found: Sequence[Found], sets: Sequence[HangingSet]) -> set[int]:
        """Return the places of what is shown already: what a quick look found, and the plan's own set."""
        mine = self.choice.judged.hanging_set.identity
        both = zip(found, sets, strict=True)
        return {at for at, (one, its_set) in enumerate(both) if one.key in self._early or its_set.identity == mine}

    def _may_hold(self, one: Found) -> bool:
        """Say whether a chain is not known, without a full check, to be torn from its breakaway by a taut hose."""
        if one.number not in self._tests:
            model = self.choosing.chooser.search.model
            self._tests[one.number] = tension_test(one.source.assembled, model, one.source.group)
        test = self._tests[one.number]
        return test is None or bool(test(np.array([one.chain.rows]))[0])

    def _hanging_sets(self, found: Sequence[Found]) -> list[HangingSet]:
        search = self.choosing.chooser.search
        return [search.paths.hanging_set(one.source.finder.path_of(one.chain.rows)) for one in found]

    def _point(self, one: Found, hanging_set: HangingSet) -> FrontPoint | None:
        """Return the point of a set; None where a full check forbids it."""
        judged = self.choosing.chooser.accepted_or_none(hanging_set, one.source.group)
        if judged is None:
            return None
        return self._made(one, self.choosing.true_judged(judged, self.context))

    def _made(self, one: Found, true: JudgedSet) -> FrontPoint:
        return FrontPoint(
            figures=one.chain.figures,
            judged=true,
            all_figures=self._all_figures(one),
            yearly={part: int(added[_items_of(one)].sum()) for part, added in one.source.measured.yearly.items()},
            given_up=tuple(sorted(one.source.group)),
            flow_m3_s=_flow_of(true),
            alike=tuple(
                alike_of(true.hanging_set, self.choosing.new_pool, lambda parts, row: self._same(one, parts, row))
            ),
        )

    def _all_figures(self, one: Found) -> dict[FrontAxis, int | None]:
        rows = _items_of(one)
        measured, given_up = one.source.measured, len(one.source.group)
        figures: dict[FrontAxis, int | None] = {}
        for axis in self.there:
            own = measured.figures[axis][rows]
            total = int(own.sum()) if axis in ADDS else int(own.max(initial=0))
            total += given_up if axis is FrontAxis.PRACTICE else 0
            figures[axis] = total if measured.known[axis][rows].all() else None
        return figures

    def _same(self, one: Found, parts: SlotParts, row: int) -> Mask:
        """Say which parts of a slot add the same to the chosen axes that are no figure of the part itself."""
        same = np.ones(len(parts.columns), np.bool_)
        for axis in self.asked.axes:
            if axis is FrontAxis.PRICE:
                prices = parts.prices(self.empty.currency)
                same &= prices == prices[row]
            elif axis is FrontAxis.LEAD:
                days = parts.columns.number("lead_time_days")
                same &= days == days[row]
            elif axis is FrontAxis.PRACTICE:
                same &= parts.regrets == parts.regrets[row]
            elif axis is FrontAxis.YEARLY:
                same &= np.arange(len(same)) == row  # a price of terms: never taken as equal unseen
        return same

    # the answer

    def _points(self) -> list[FrontPoint]:
        return [point for _, point in self._accepted]

    def _as_known(
        self, points: Iterable[FrontPoint], unchecked: int | None, open_figures: Iterable[tuple[int, ...]]
    ) -> PositionFront:
        points = sorted(points, key=lambda point: (point.figures, point.price_minor))
        chosen = self.plan.chosen
        wanted = chosen.hanging_set.identity if chosen else ()
        planned = next((at for at, one in enumerate(points) if one.judged.hanging_set.identity == wanted), None)
        return replace(
            self.empty,
            points=tuple(points),
            planned=planned,
            planned_figures=self._plan_point.figures if self._plan_point is not None else None,
            most_departures=None if FrontAxis.PRACTICE in self.asked.axes else self.departures,
            least=self._least,
            left_out=tuple(self._left_out()),
            gap=self._gap,
            turned_down=sum(map(len, self._turned_down.values())),
            open_figures=tuple(open_figures),
            unchecked=unchecked,
        )

    def _point_of_plan(self) -> FrontPoint | None:
        """Return the plan's own set as a point; None where a part of it states no figure."""
        choice, chosen = self.choice, self.plan.chosen
        for number, source in enumerate(self._sources):
            rows = rows_of(choice.judged.hanging_set, source.assembled) if source.group == choice.dropped else None
            if rows is not None and chosen is not None:
                figures = self._all_figures(Found(number, source, FrontChain((), 0, rows)))
                mine = tuple(one for axis in self.asked.axes if (one := figures[axis]) is not None)
                found = Found(number, source, FrontChain(mine, 0, rows))
                return self._made(found, chosen) if len(mine) == len(self.asked.axes) else None
        return None

    def _left_out(self) -> Iterator[LeftOut]:
        """Yield how many parts that break no must state no figure for a chosen axis."""
        source = self._sources[0] if self._sources else None
        if source is None:
            return
        start = 0
        counts: dict[tuple[FrontAxis, str], set[str]] = {}
        for place in source.assembled.places:
            for parts, rows in place.portions:
                for axis in self.asked.axes:
                    unknown = ~source.measured.known[axis][start : start + len(rows)]
                    if unknown.any():
                        keys = counts.setdefault((axis, parts.slot), set())
                        keys.update(parts.columns.key_at(row) for row in rows[unknown].tolist())
                start += len(rows)
        slots = {parts.slot for place in source.assembled.places for parts, _ in place.portions}
        for (axis, slot), keys in sorted(counts.items()):
            yield LeftOut(axis=axis, slot=next(one for one in slots if one == slot), count=len(keys))

    def _still_open(self, figures: Iterable[tuple[int, ...]]) -> list[tuple[int, ...]]:
        """Return figures that no accepted set is as good as."""
        known = [point.figures for _, point in self._accepted]
        return sorted(one for one in set(figures) if not any(_is_no_more(other, one) for other in known))


def _items_of(one: Found) -> list[int]:
    return [row for row in one.chain.rows if row >= 0]


def _is_no_more(one: tuple[int, ...], other: tuple[int, ...]) -> bool:
    return all(a <= b for a, b in zip(one, other, strict=True))


def _spread(count: int) -> Iterator[int]:
    """Yield so many places, ends first, then ever closer together: what is seen first shows the whole span."""
    seen: set[int] = set()
    step = max(1, count - 1)
    while len(seen) < count:
        for at in range(0, count, step):
            if at not in seen:
                seen.add(at)
                yield at
        step = max(1, step // 2)


def _flow_of(judged: JudgedSet) -> float | None:
    return next((check.value for check in judged.checks if check.id is CheckId.FLOW_HOT), None)
