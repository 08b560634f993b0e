"""Other sets that differ in kind from the chosen one, each the best of its kind by an exact search of its own."""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import partial
from types import MappingProxyType

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part import BREAKAWAYS, HOSES, PartKind
from spoutline.model.part_columns import LEAD_TIME, Mask
from spoutline.model.plan import Alternative, AlternativeKind, HangingSet, JudgedSet
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.staged_plan import LOOKED_FOR_IN_TURN
from spoutline.planning.sets.assembled import Keep
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.pool import SlotParts
from spoutline.planning.sets.set_query import Objective, Promise, SetQuery
from spoutline.search.effort import Exhausted

_FITTINGS = (Slot.ADAPTOR, Slot.SPLITTER)
_DAYS_FORESEEN = 4  # lead times, from the shortest on, whose bounds are worked out together
_WORTH_SHOWING = 0.05  # a lighter set, or one with less loss, is shown when it gains at least this share


@frozen
class _Promised:
    """What the best set for a query promises, of those that have ``most`` at most of what it minimises."""

    promise: Promise
    most: int | None
    query: SetQuery


def _narrowed(query: SetQuery, keep: Keep) -> SetQuery:
    """Return ``query`` with one more condition on the parts."""
    before = query.keep
    return replace(query, keep=lambda parts: before(parts) & keep(parts))


def _of_kinds(parts: SlotParts, kinds: tuple[PartKind, ...], path: str, *, wanted: bool) -> Mask:
    """Say which parts of some kinds have a figure as wanted; others always do."""
    return parts.columns.flag(path) == wanted if parts.columns.kind in kinds else parts.inside


def _breakaways(parts: SlotParts, *, reconnectable: bool) -> Mask:
    return _of_kinds(parts, BREAKAWAYS, "breakaway.reconnectable", wanted=reconnectable)


_KEPT_OF: Mapping[AlternativeKind, Keep] = MappingProxyType(  # which parts a kind asks for
    {
        AlternativeKind.RECONNECTABLE: partial(_breakaways, reconnectable=True),
        AlternativeKind.SINGLE_USE: partial(_breakaways, reconnectable=False),
        AlternativeKind.LOW_PERMEATION: lambda parts: _of_kinds(parts, HOSES, "hose.low_permeation", wanted=True),
        AlternativeKind.WITHOUT_ADAPTOR: lambda parts: parts.inside & (parts.slot not in _FITTINGS),
    }
)


def mass_kg(hanging_set: HangingSet) -> float:
    """Return the dry mass of the set, kg."""
    return sum(link.part.mass_kg for link in hanging_set.links)


def lead_time_days(hanging_set: HangingSet) -> int:
    """Return the lead time of the set, days: that of its slowest part."""
    return max(link.part.lead_time_days for link in hanging_set.links)


def kinds_looked_for(chosen: HangingSet) -> tuple[AlternativeKind, ...]:
    """Return in what ways another set may differ from a chosen one, in the order in which they are looked for."""
    return tuple(kind for kind in LOOKED_FOR_IN_TURN if _may_differ(chosen, kind))


def _may_differ(chosen: HangingSet, kind: AlternativeKind) -> bool:
    match kind:
        case AlternativeKind.RECONNECTABLE | AlternativeKind.SINGLE_USE:
            part = chosen.part_in(Slot.BREAKAWAY) or chosen.part_in(Slot.SWIVEL_BREAKAWAY)
            is_other = kind is AlternativeKind.RECONNECTABLE
            return part is not None and part.breakaway is not None and part.breakaway.reconnectable != is_other
        case AlternativeKind.LOW_PERMEATION:
            return any(link.part.hose and not link.part.hose.low_permeation for link in chosen.links)
        case AlternativeKind.WITHOUT_ADAPTOR:
            return any(link.slot in _FITTINGS for link in chosen.links)
        case AlternativeKind.SHORTER_LEAD_TIME:
            return lead_time_days(chosen) > 0
        case AlternativeKind.ONE_MAKER:
            return len({link.part.maker for link in chosen.links}) > 1
        case _:
            return True


class AlternativeFinder:
    """Finds the alternatives of one chosen set."""

    def __init__(self, chooser: Chooser, choice: Choice) -> None:
        self.chooser = chooser
        self.choice = choice
        self.query = chooser.query(choice.dropped)
        self.chosen = choice.judged.hanging_set
        self.kinds = kinds_looked_for(self.chosen)
        self.regrets = chooser.regrets_of(self.chosen)
        self.left_open: list[AlternativeKind] = []  # kinds of which it took too much work to say

    def found(self) -> Iterator[tuple[AlternativeKind, Alternative | None]]:
        """Yield each kind in turn, with its set as soon as that is known.

        None where there is none that is worth it, where that was left open, and where the same set came of a kind
        before: equal sets are named once, and the plain next cheapest only where it differs in no other kind.
        """
        seen = {self.chosen.refs}
        for kind, look in self._asked():
            judged = self._looked_for(kind, look)
            if judged is None or judged.hanging_set.refs in seen:
                yield kind, None
                continue
            seen.add(judged.hanging_set.refs)
            difference = judged.hanging_set.price_minor - self.chosen.price_minor
            yield kind, Alternative(kind=kind, judged=judged, price_difference_minor=difference)

    def _asked(self) -> Iterator[tuple[AlternativeKind, Callable[[], JudgedSet | None]]]:
        """Yield each kind in turn with what looks for its set."""
        of_parts = {kind: _narrowed(self.query, _KEPT_OF[kind]) for kind in self.kinds if kind in _KEPT_OF}
        sooner, of_makers = self._sooner_queries(), self._maker_queries()
        self.chooser.search.foresee((*of_parts.values(), *sooner[:_DAYS_FORESEEN], *of_makers))
        looks: dict[AlternativeKind, Callable[[], JudgedSet | None]] = {
            **{kind: partial(self._as_good, query) for kind, query in of_parts.items()},
            AlternativeKind.LIGHTER: self._lighter,
            AlternativeKind.LOWER_PRESSURE_LOSS: self._less_loss,
            AlternativeKind.LOWEST_PRICE: self._lowest_price,
            AlternativeKind.SHORTER_LEAD_TIME: partial(self._sooner, sooner),
            AlternativeKind.ONE_MAKER: partial(self._one_maker, of_makers),
            AlternativeKind.NEXT_CHEAPEST: self._next_cheapest,
        }
        yield from ((kind, looks[kind]) for kind in self.kinds)

    def _looked_for(self, kind: AlternativeKind, look: Callable[[], JudgedSet | None]) -> JudgedSet | None:
        """Return the set of a kind; where it takes too much work to find, the kind is left open."""
        try:
            return look()
        except Exhausted:
            self.left_open.append(kind)
            self.chooser.spare_work()
            return None

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

    def _lighter(self) -> JudgedSet | None:
        most = mass_kg(self.chosen) * (1 - _WORTH_SHOWING)
        found = self._as_good(replace(self.query, objective=Objective.MASS), most)
        return found if found is not None and mass_kg(found.hanging_set) <= most else None

    def _less_loss(self) -> JudgedSet | None:
        loss_pa = self.chooser.search.model.loss_of_pa
        most = loss_pa(self.chosen) * (1 - _WORTH_SHOWING)
        found = self._as_good(replace(self.query, objective=Objective.PRESSURE_LOSS), most)
        return found if found is not None and loss_pa(found.hanging_set) <= most else None

    def _lowest_price(self) -> JudgedSet | None:
        """Give up every should: what keeping them costs becomes visible."""
        everything = frozenset(RequirementId)
        query = replace(self.chooser.query(everything), regrets_weigh=False)
        cheaper = self.chooser.search.most_cost(query, 0, self.chosen.price_minor - 1)
        judged = self.chooser.first(replace(query, most_cost=cheaper), everything)
        is_cheaper = judged is not None and judged.hanging_set.price_minor < self.chosen.price_minor
        return judged if is_cheaper else None

    def _sooner_queries(self) -> list[SetQuery]:
        """Return what asks for each lead time that a part has and that is shorter than that of the chosen set."""
        now = lead_time_days(self.chosen)
        met = [parts.columns.number(LEAD_TIME)[parts.inside] for parts in self.chooser.search.pool.all_portions()]
        days = (int(one) for one in np.unique(np.concatenate(met)).tolist() if one < now)
        return [_within_days(self.query, longest) for longest in days]

    def _sooner(self, queries: Sequence[SetQuery]) -> JudgedSet | None:
        """Find the shortest lead time that still gives a set."""
        first = first_true(len(queries), lambda at: self._promise(queries[at]) is not None)
        if first == len(queries):
            return None
        rest = queries[first:]
        at = first_true(len(rest), lambda at: self._as_good(rest[at]) is not None)  # by all checks, mostly the first
        return self._as_good(rest[at]) if at < len(rest) else None

    def _maker_queries(self) -> list[SetQuery]:
        """Return what asks for each maker of nozzles alone; nothing where the chosen set is of one maker."""
        if AlternativeKind.ONE_MAKER not in self.kinds:
            return []
        nozzles = self.chooser.search.pool.portions(Slot.NOZZLE)
        makers = sorted({maker for parts in nozzles for maker in parts.columns.makers_of(parts.inside)})
        return [_of_maker(self.query, maker) for maker in makers]

    def _one_maker(self, queries: Sequence[SetQuery]) -> JudgedSet | None:
        found = self._of_makers(sorted(queries, key=self.chooser.search.least_cost))
        return min(found, key=lambda judged: (judged.hanging_set.price_minor, judged.hanging_set.refs), default=None)

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

    def _next_cheapest(self) -> JudgedSet | None:
        accepted = self.chooser.accepted(self.query, self.choice.dropped)
        return next((judged for judged in accepted if judged.hanging_set.refs != self.chosen.refs), None)


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
