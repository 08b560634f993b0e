"""Other sets that differ in kind from the chosen one, each the best of its kind by an exact search of its own."""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterable, Iterator, Sequence
from dataclasses import replace

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part import BREAKAWAYS, HOSES, PartKind
from spoutline.model.part_columns import LEAD_TIME, Mask
from spoutline.model.plan import Alternative, AlternativeKind, HangingSet, JudgedSet
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembled import Keep
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.pool import SlotParts
from spoutline.planning.sets.set_query import Objective, Promise, SetQuery
from spoutline.search.effort import Exhausted

_FITTINGS = (Slot.ADAPTOR, Slot.SPLITTER)
_DAYS_FORESEEN = 4  # lead times, from the shortest on, whose bounds are worked out together
_WORTH_SHOWING = 0.05  # a lighter set, or one with less loss, is shown when it gains at least this share


@frozen
class _Idea:
    """A kind of difference, the query that asks for it, and whether the answer is worth showing.

    ``most`` is what an answer that is worth it has at most of what the query minimises; None for any amount.
    """

    kind: AlternativeKind
    query: SetQuery
    worth: Callable[[HangingSet], bool]
    most: float | None = None


@frozen
class _Promised:
    """What the best set for a query promises, of those that have ``most`` at most of what it minimises."""

    promise: Promise
    most: int | None
    query: SetQuery


def _always(_: HangingSet) -> bool:
    return True


def _narrowed(query: SetQuery, keep: Keep) -> SetQuery:
    """Return ``query`` with one more condition on the parts."""
    before = query.keep
    return replace(query, keep=lambda parts: before(parts) & keep(parts))


def _of_kinds(parts: SlotParts, kinds: tuple[PartKind, ...], path: str, *, wanted: bool) -> Mask:
    """Say which parts of some kinds have a figure as wanted; others always do."""
    return parts.columns.flag(path) == wanted if parts.columns.kind in kinds else parts.inside


def mass_kg(hanging_set: HangingSet) -> float:
    """Return the dry mass of the set, kg."""
    return sum(link.part.mass_kg for link in hanging_set.links)


def lead_time_days(hanging_set: HangingSet) -> int:
    """Return the lead time of the set, days: that of its slowest part."""
    return max(link.part.lead_time_days for link in hanging_set.links)


def _breakaway_idea(chosen: HangingSet, query: SetQuery) -> Iterator[_Idea]:
    part = chosen.part_in(Slot.BREAKAWAY) or chosen.part_in(Slot.SWIVEL_BREAKAWAY)
    if part is None or part.breakaway is None:
        return
    other = not part.breakaway.reconnectable
    kind = AlternativeKind.RECONNECTABLE if other else AlternativeKind.SINGLE_USE
    yield _Idea(
        kind,
        _narrowed(query, lambda parts: _of_kinds(parts, BREAKAWAYS, "breakaway.reconnectable", wanted=other)),
        _always,
    )


def _permeation_idea(chosen: HangingSet, query: SetQuery) -> Iterator[_Idea]:
    if any(link.part.hose and not link.part.hose.low_permeation for link in chosen.links):
        yield _Idea(
            AlternativeKind.LOW_PERMEATION,
            _narrowed(query, lambda parts: _of_kinds(parts, HOSES, "hose.low_permeation", wanted=True)),
            _always,
        )


def _adaptor_idea(chosen: HangingSet, query: SetQuery) -> Iterator[_Idea]:
    if any(link.slot in _FITTINGS for link in chosen.links):
        yield _Idea(
            AlternativeKind.WITHOUT_ADAPTOR,
            _narrowed(query, lambda parts: parts.inside & (parts.slot not in _FITTINGS)),
            _always,
        )


class AlternativeFinder:
    """Finds the alternatives of one chosen set."""

    def __init__(self, chooser: Chooser, choice: Choice) -> None:
        self.chooser = chooser
        self.choice = choice
        self.query = chooser.query(choice.dropped)
        self.chosen = choice.judged.hanging_set
        self.regrets = chooser.regrets_of(self.chosen)
        self.left_open: list[AlternativeKind] = []  # kinds of which it took too much work to say

    def all(self) -> tuple[Alternative, ...]:
        """Return one alternative per kind, in the order of ``AlternativeKind``; equal sets are named once."""
        seen = {self.chosen.refs}
        found: list[Alternative] = []
        for kind, judged in self._candidates():
            parts = judged.hanging_set.refs
            if parts not in seen:
                seen.add(parts)
                difference = judged.hanging_set.price_minor - self.chosen.price_minor
                found.append(Alternative(kind=kind, judged=judged, price_difference_minor=difference))
        order = list(AlternativeKind)
        return tuple(sorted(found, key=lambda alternative: order.index(alternative.kind)))

    def _candidates(self) -> Iterator[tuple[AlternativeKind, JudgedSet]]:
        """Yield what differs in kind first, so that the plain second-best is named only where it differs in none."""
        of_parts = (
            *_breakaway_idea(self.chosen, self.query),
            *_permeation_idea(self.chosen, self.query),
            *_adaptor_idea(self.chosen, self.query),
        )
        sooner, of_makers = self._sooner_queries(), self._maker_queries()
        foreseen = (*(idea.query for idea in of_parts), *sooner[:_DAYS_FORESEEN], *of_makers)
        self.chooser.search.foresee(foreseen)
        for idea in (*of_parts, *self._lighter_idea(), *self._less_loss_idea()):
            yield from self._decided(idea.kind, self._of_idea(idea))
        yield from self._decided(AlternativeKind.LOWEST_PRICE, self._lowest_price())
        yield from self._decided(AlternativeKind.SHORTER_LEAD_TIME, self._sooner(sooner))
        yield from self._decided(AlternativeKind.ONE_MAKER, self._one_maker(of_makers))
        yield from self._decided(AlternativeKind.NEXT_CHEAPEST, self._next_cheapest())

    def _decided(
        self, kind: AlternativeKind, found: Iterator[tuple[AlternativeKind, JudgedSet]]
    ) -> Iterator[tuple[AlternativeKind, JudgedSet]]:
        """Yield what is found of a kind; where that takes too much work, the kind is left open."""
        try:
            yield from found
        except Exhausted:
            self.left_open.append(kind)
            self.chooser.spare_work()

    def _of_idea(self, idea: _Idea) -> Iterator[tuple[AlternativeKind, JudgedSet]]:
        judged = self._as_good(idea.query, idea.most)
        if judged is not None and idea.worth(judged.hanging_set):
            yield idea.kind, judged

    def _as_good(self, query: SetQuery, most: float | None = None) -> JudgedSet | None:
        """Return the best set for ``query`` that breaks no more shoulds than the chosen one.

        Where it has more than ``most`` of what the query minimises, it may be left out.
        """
        judged = self.chooser.first(self._within(query, most), self.choice.dropped)
        if judged is None or self.chooser.regrets_of(judged.hanging_set) > self.regrets:
            return None
        return judged

    def _within(self, query: SetQuery, most: float | None = None) -> SetQuery:
        """Return ``query`` for sets that break no more shoulds than the chosen one and have no more than ``most``."""
        return replace(query, most_cost=self.chooser.search.most_cost(query, self.regrets, most))

    def _promise(self, query: SetQuery, most: float | None = None) -> Promise | None:
        """Return what the best set for ``query`` that is as good breaks and costs, full checks left aside.

        None where there is none, or none that has ``most`` at most of what the query minimises.
        """
        return self.chooser.search.cheapest_promise(self._within(query, most), self.chooser.listener)

    def _lighter_idea(self) -> Iterator[_Idea]:
        most = mass_kg(self.chosen) * (1 - _WORTH_SHOWING)
        query = replace(self.query, objective=Objective.MASS)
        yield _Idea(AlternativeKind.LIGHTER, query, lambda found: mass_kg(found) <= most, most)

    def _less_loss_idea(self) -> Iterator[_Idea]:
        loss_pa = self.chooser.search.model.loss_of_pa
        most = loss_pa(self.chosen) * (1 - _WORTH_SHOWING)
        query = replace(self.query, objective=Objective.PRESSURE_LOSS)
        yield _Idea(AlternativeKind.LOWER_PRESSURE_LOSS, query, lambda found: loss_pa(found) <= most, most)

    def _lowest_price(self) -> Iterator[tuple[AlternativeKind, JudgedSet]]:
        """Give up every should: what keeping them costs becomes visible."""
        everything = frozenset(RequirementId)
        query = replace(self.chooser.query(everything), regrets_weigh=False)
        cheaper = self.chooser.search.most_cost(query, 0, self.chosen.price_minor - 1)
        judged = self.chooser.first(replace(query, most_cost=cheaper), everything)
        if judged is not None and judged.hanging_set.price_minor < self.chosen.price_minor:
            yield AlternativeKind.LOWEST_PRICE, judged

    def _sooner_queries(self) -> list[SetQuery]:
        """Return what asks for each lead time that a part has and that is shorter than that of the chosen set."""
        now = lead_time_days(self.chosen)
        met = [parts.columns.number(LEAD_TIME)[parts.inside] for parts in self.chooser.search.pool.all_portions()]
        days = (int(one) for one in np.unique(np.concatenate(met)).tolist() if one < now)
        return [_within_days(self.query, longest) for longest in days]

    def _sooner(self, queries: Sequence[SetQuery]) -> Iterator[tuple[AlternativeKind, JudgedSet]]:
        """Find the shortest lead time that still gives a set."""
        first = first_true(len(queries), lambda at: self._promise(queries[at]) is not None)
        if first == len(queries):
            return
        rest = queries[first:]
        at = first_true(len(rest), lambda at: self._as_good(rest[at]) is not None)  # by all checks, mostly the first
        best = self._as_good(rest[at]) if at < len(rest) else None
        if best is not None:
            yield AlternativeKind.SHORTER_LEAD_TIME, best

    def _maker_queries(self) -> list[SetQuery]:
        """Return what asks for each maker of nozzles alone; nothing where the chosen set is of one maker."""
        if len({link.part.maker for link in self.chosen.links}) == 1:
            return []
        nozzles = self.chooser.search.pool.portions(Slot.NOZZLE)
        makers = sorted({maker for parts in nozzles for maker in parts.columns.makers_of(parts.inside)})
        return [_of_maker(self.query, maker) for maker in makers]

    def _one_maker(self, queries: Sequence[SetQuery]) -> Iterator[tuple[AlternativeKind, JudgedSet]]:
        found = list(self._of_makers(sorted(queries, key=self.chooser.search.least_cost)))
        if found:
            best = min(found, key=lambda judged: (judged.hanging_set.price_minor, judged.hanging_set.refs))
            yield AlternativeKind.ONE_MAKER, best

    def _of_makers(self, queries: Sequence[SetQuery]) -> Iterator[JudgedSet]:
        """Yield the best set of each maker, the cheapest by promise first; none that is dearer than one before.

        A maker is first asked for what costs no more than another promised: mostly the full checks let that through.
        """
        asked, dearer = list[_Promised](), list[SetQuery]()
        for query in queries:
            cheapest = min((one.promise.price_minor for one in asked), default=None)
            promise = self._promise(query, cheapest)
            if promise is None:
                dearer.append(query)
            else:
                asked.append(_Promised(promise, cheapest, query))
        least = yield from self._kept_promises(asked, None)
        if asked and (least is None or any(least > one.promise.price_minor for one in asked)):
            promises = ((self._promise(query, least), query) for query in dearer)
            rest = [_Promised(promise, least, query) for promise, query in promises if promise is not None]
            yield from self._kept_promises(rest, least)

    def _kept_promises(self, asked: Iterable[_Promised], least: int | None) -> Generator[JudgedSet, None, int | None]:
        """Yield the best sets of some queries that full checks let through, none dearer than one before or ``least``.

        Returns the least price so far.
        """
        for one in sorted(asked, key=lambda one: one.promise):
            if least is not None and one.promise.regrets == self.regrets and one.promise.price_minor > least:
                continue
            judged = self._as_good(one.query, one.most)
            if judged is not None:
                price_minor = judged.hanging_set.price_minor
                least = price_minor if least is None else min(least, price_minor)
                yield judged
        return least

    def _next_cheapest(self) -> Iterator[tuple[AlternativeKind, JudgedSet]]:
        for judged in self.chooser.accepted(self.query, self.choice.dropped):
            if judged.hanging_set.refs != self.chosen.refs:
                yield AlternativeKind.NEXT_CHEAPEST, judged
                return


def first_true(count: int, holds: Callable[[int], bool]) -> int:
    """Return the first of so many places where something holds that from then on always does; ``count`` for none.

    The first places are asked first, by ever longer steps: there the fewest parts are looked at.
    """
    low, high, step = 0, count, 1
    while low < high:
        middle = min(low + step, high) - 1 if high == count else (low + high) // 2
        if holds(middle):
            high = middle
        else:
            low, step = middle + 1, 2 * step
    return low


def _within_days(query: SetQuery, longest: int) -> SetQuery:
    return _narrowed(query, lambda parts: parts.columns.number(LEAD_TIME) <= longest)


def _of_maker(query: SetQuery, maker: str) -> SetQuery:
    return _narrowed(query, lambda parts: parts.columns.by_maker(maker))
