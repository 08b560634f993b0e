"""The chains of one problem, majors left aside: bounds first, then every chain below a cost, which rises.

Few items lie on any chain below a cost that rises from the floor, so that looking at all of those is quick however
many items there are. Which strength is asked for couples all layers; each band of it is a problem of its own. Where
very many chains just miss a limit, those that another can stand in for are dropped (``search.stand_ins``).
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Iterable, Iterator
from contextlib import contextmanager, suppress

import numpy as np

from spoutline.search.chain import Chain, Equals, Named, chain_of, first_by_names, named
from spoutline.search.columns import Columns
from spoutline.search.demand_bands import Part, least, parts_by_band
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.enumeration import Chains, ChainTest, Enumeration
from spoutline.search.few_items import FewItems
from spoutline.search.ground import Ground
from spoutline.search.item_table import Floats, Ints
from spoutline.search.multipliers import priced
from spoutline.search.next_chain import NextChain
from spoutline.search.staircase import Staircases
from spoutline.search.stand_ins import any_by_labels, cheapest_by_labels, without_outdone
from spoutline.search.sums import Sums, near
from spoutline.search.swaps import Rows, Swaps

QUICK_ITEMS, _QUICK_LABELS = 32, 4_000  # what is tried before the limits are priced
FEW_LABELS, _MORE_ITEMS = 250, 128  # with which that is done by plain steps, and once more
_MOST_FEW = 256  # items that plain steps go through sooner than columns
ITEMS, GROWTH = 64, 1.7  # items below the first cost, and how their number grows
_LOOK_LABELS, _STEP_BACK, _STEP_ON = 16_000, 4, 2  # labels below a raised cost, and the steps where they are more
_LEAP, _LEAP_ITEMS = 64, 4.0  # the step and the items where a raised cost adds no labels
_MANY_LABELS, MANY_MORE = 16_000, 4  # after which chains that another can stand in for are dropped; until next time
STAND_INS = (200_000, 500_000)  # labels for that, at least and most: those left are all held, against each other
_SHARES = (0.125, 0.25, 0.5, 1.0)  # of what lies between the floor and a chain that was found


class TooMany(Exception):
    """A quick look would have been at too many labels."""


class LevelSearch:
    """One problem, majors left aside."""

    def __init__(
        self,
        ground: Ground,
        names: Named,
        effort: Effort,
        test: ChainTest | None = None,
        *,
        any_will_do: bool = False,
        any_of_equals: bool = False,
        most_cost: int | None = None,
        least_cost: int | None = None,
    ) -> None:
        self._names, self._effort, self._test, self._any_will_do = names, effort, test, any_will_do
        self._any_of_equals = any_of_equals
        self._ground = ground
        self._columns, self._sums, self._floors = ground.columns, ground.sums, ground.floors
        self._highest = self._columns.most_cost()
        if most_cost is not None:
            self._highest = min(self._highest, most_cost)
        self._is_priced = False
        self._is_dense = False  # too many labels for prices alone
        self._many_labels: float = _MANY_LABELS
        self._incumbent: Chain | None = None
        self._first: Chain | None = None  # of the chains of one cost by names, where that is known
        self._none_below = -math.inf  # or there is, and the incumbent is as cheap
        self.floor = ground.floor
        self._least_cost = least_cost  # which no chain is known to go below
        if least_cost is not None:
            self._none_below, self.floor = least_cost - 1, max(self.floor, least_cost)

    @property
    def met_many_labels(self) -> bool:
        """Whether very many labels lay below the costs looked at."""
        return self._many_labels > _MANY_LABELS

    def best_so_far(self) -> Chain | None:
        """Return the cheapest chain found until now."""
        return self._incumbent

    def first(self) -> Chain | None:
        """Return the cheapest chain, of several the first by names; None where there is none.

        Raises
        ------
        Exhausted
            If the labels were used up; what was found until then stays.
        """
        found = self._found()
        if self._incumbent is None:
            return None
        self.floor = self._incumbent.cost
        if self._any_of_equals:
            return self._incumbent
        known = found or self._first
        return known if known and known.cost == self.floor else self._first_of_equals(self._incumbent.cost)

    def any(self) -> Chain | None:
        """Return the chain that is met first."""
        self._found()
        return self._incumbent

    def _found(self) -> Chain | None:
        """Make the cheapest chain, or any, the incumbent; return the first of equals where that is known as well."""
        if self._has_nothing_left():
            return None
        found = self._found_quickly(QUICK_ITEMS)
        if found is None and self._incumbent is None and self._test is None:
            with suppress(TooMany), self._few_labels(FEW_LABELS):
                found = self._first_of_few(self._threshold(_MORE_ITEMS))
        if found is None:
            self._price()
            if self._has_nothing_left():
                return None
            found = self._found_quickly(ITEMS)
        if found is None:
            self._rise()
        return found

    def _has_nothing_left(self) -> bool:
        """Say whether the floors tell that there is no chain of interest."""
        return not self._columns.can_be_filled() or self.floor > near(self._highest)

    def _by_labels(self, told: Iterable[Rows] = ()) -> NextChain:
        """Return what finds the first chain without some that were told."""
        search = NextChain(self._columns, self._sums, self._floors, self._names.places(self._columns.row))
        for rows in told:
            search.tell(rows)
        return search

    def _keep(self, floors: Floats) -> None:
        """Leave out the items that no chain within the limits holds."""
        holds = floors < np.inf
        self._columns, self._floors = self._columns.only(holds), floors[holds]
        self.floor = max(self.floor, least(self._columns, self._floors))

    def _price(self) -> None:
        """Price the limits, which raises the floors."""
        self._is_priced = True
        passes = self._ground.passes
        found = priced(self._columns, passes, self._highest)
        if found.bound == np.inf:
            self._keep(np.full(len(self._floors), np.inf))
            return
        self._sums = Sums.of(self._columns.limits, found.prices)
        self._keep(np.maximum(self._floors, self._sums.floor(self._columns, passes)))

    def _threshold(self, items: float) -> int:
        """Return a cost that the floors of about so many items stay below; in the end the highest of any chain."""
        if items >= len(self._floors):
            return self._highest
        return min(self._highest, math.floor(float(np.partition(self._floors, int(items))[int(items)])))

    def _limit(self, equals: Equals | None = None) -> int:
        """Return the highest cost that is still of interest, that of the incumbent where ``equals`` are gathered."""
        if self._incumbent is None:
            return self._highest
        return self._incumbent.cost - (equals is None or not equals.are_all)

    def _found_quickly(self, items: int) -> Chain | None:
        """Look among the items of the lowest floors; return the first of the cheapest chains where that is found."""
        if not self._columns.can_be_filled():
            return None
        top, cheapest = self._threshold(items), list[tuple[Part, Chains]]()
        if self._incumbent is not None:
            top = min(top, self._incumbent.cost)
        if top <= self._none_below:
            return None
        if self._test is None:
            with suppress(TooMany), self._few_labels(FEW_LABELS):
                return self._first_of_few(top)
        try:
            with self._few_labels():
                for part in self._parts(top, in_bands=False):
                    search = self._enumeration(part, top, is_narrow=self._any_will_do)
                    for found in search.chains():
                        search.top = int(found.cost.min())
                        cheapest.append((part, found))
                        self._incumbent = chain_of(part, found, int(found.cost.argmin()))
                        if self._any_will_do:
                            return self._incumbent
        except TooMany:
            return None
        self._none_below = top
        return first_by_names(cheapest, self._names)

    def _first_of_few(self, top: int) -> Chain | None:
        """Do so by plain steps, with no test of what is found."""
        found = self._few(top).first()
        self._incumbent = found or self._incumbent
        self._none_below = top
        return found

    def _few(self, top: int) -> FewItems:
        """Return the items of floors up to ``top``; raise ``TooMany`` where near copies make them more than a few."""
        may = self._floors <= near(top)
        if np.count_nonzero(may) > _MOST_FEW:
            raise TooMany
        some = self._columns.only(may)
        return FewItems(some, self._sums, top, self._effort, self._names, any_will_do=self._any_will_do)

    def _first_of_equals(self, cost: int) -> Chain:
        """Return the first chain of this cost by names; there is one."""
        if not self._is_dense:
            try:
                with self._few_labels():
                    return next(self._by_names(cost, in_bands=False))
            except TooMany:
                self._is_dense = True
        if self._test is None:  # what it turns down labels know nothing of
            with suppress(TooMany), self._few_labels(STAND_INS[1]):
                found = self._by_labels().next(cost, self._effort)
                if found is not None:
                    return Chain(0, found.cost, found.rows)
        return next(self._by_names(cost, only_first=True))

    @contextmanager
    def _few_labels(self, labels: float = _QUICK_LABELS) -> Iterator[None]:
        """Let what is done within look at few labels, and raise ``TooMany`` where that is not enough."""
        whole = self._effort
        self._effort = whole.portion(labels)
        try:
            yield
        except Exhausted as exhausted:
            whole.go_on_from(self._effort)
            if whole.is_used_up:
                raise
            raise TooMany from exhausted
        finally:
            whole.go_on_from(self._effort)
            self._effort = whole

    def _rise(self) -> None:
        """Raise the cost until a chain is found; below one that was found before there is an end to it."""
        whole = self._columns, self._floors
        try:
            self._raise_cost()
        finally:
            self._columns, self._floors = whole

    def _raise_cost(self) -> None:
        """Do so; where too many labels lie below a cost a nearer one is tried: a few items may raise it by too much."""
        items, step, labels = float(ITEMS), self._first_step(), _LOOK_LABELS
        low, in_bands, before, at_first = self._none_below, step < math.inf, 0, self._effort.labels
        while self._columns.can_be_filled() and low < self._limit():
            near_by = max(low, self.floor)
            top = int(min(self._threshold(items), near_by + step, self._limit()))
            if top > low:
                begun = self._effort.labels
                try:
                    with self._few_labels(labels if in_bands else _QUICK_LABELS):
                        self._look_below(top, in_bands=in_bands)
                except TooMany:
                    if self._is_told_by_stand_ins(self._effort.labels - at_first):
                        return
                    if in_bands:
                        step, labels = max(1, math.ceil((top - near_by) / _STEP_BACK)), int(labels * GROWTH) + 1
                    in_bands = self._is_dense = True
                    continue
                looked_at = self._effort.labels - begun
                is_far = looked_at <= 1.1 * before + 1  # none was added
                low, step = top, (_LEAP if is_far else _STEP_ON) * step
                items *= _LEAP_ITEMS if is_far else 1.0
                before = looked_at
            if self._any_will_do and self._incumbent is not None:
                return
            self.floor = max(self.floor, min(top, self._limit()))
            items *= GROWTH

    def _first_step(self) -> float:
        """Return by how much to raise a cost that no chain goes below first; infinite where that is not known.

        Where chains begin so far above the floors, those that pass a test begin as far above them, and labels are many.
        """
        if self._least_cost is None or self._test is None:
            return math.inf
        return max(1.0, (self._least_cost - float(self._floors.min())) / 2)

    def _is_told_by_stand_ins(self, labels: int) -> bool:
        """Say whether all is known without the chains that another can stand in for, of which there are many here.

        Asked again as ``labels`` are looked at, with as many as that each time until these are all it may have.
        """
        if labels < self._many_labels:
            return False
        self._many_labels = MANY_MORE * labels if labels < STAND_INS[1] else math.inf
        kept = without_outdone(self._columns, self._effort)
        if self._test is None:
            self._floors = self._floors[np.isin(self._columns.row, kept.row)]
            self._columns = kept
        try:
            return self._is_settled(kept, min(max(labels, STAND_INS[0]), STAND_INS[1]))
        except TooMany:
            return False

    def _is_settled(self, columns: Columns, labels: int) -> bool:
        """Say whether there is no chain, or the cheapest is the incumbent; where any chain will do, any is.

        It is asked in steps of so many labels.
        """
        if self._incumbent is None:
            with self._few_labels(labels):
                found = any_by_labels(columns, self._effort)
            if found is None:
                return True
        if self._test is not None:
            return False  # what it says of a chain another chain cannot stand in for
        if self._incumbent is None and found is not None and found.cost <= self._highest:
            self._incumbent = Chain(0, found.cost, found.rows)
        if self._any_will_do:
            return True
        if self._incumbent is not None:
            self._incumbent = Chain(0, *Swaps(columns).lowered(self._incumbent.cost, self._incumbent.rows))
        low = min(max(self._none_below, self.floor), self._limit())
        for share in _SHARES:  # the nearer the cost, the fewer labels
            most = math.ceil(low + share * (self._limit() - low))
            some = columns.only(self._floors <= near(most))
            with self._few_labels(labels):
                found = cheapest_by_labels(some, self._sums, most, self._effort)
            if found is not None:
                self._incumbent = Chain(0, found.cost, found.rows)
                break
            self.floor = max(self.floor, most + 1)
        return True

    def _look_below(self, top: int, *, in_bands: bool) -> None:
        """Make the cheapest chain up to ``top`` the incumbent, unless that is as cheap; keep the first of equals."""
        equals = None if self._incumbent or self._any_will_do or self._any_of_equals else Equals()
        for part in self._parts(top, in_bands=in_bands, only_first=True):
            limit = min(top, self._limit(equals))
            if part.floor > near(limit):
                continue
            search = self._enumeration(part, limit, is_narrow=True)
            for found in search.chains():
                cost = int(found.cost.min())
                if cost <= self._limit():
                    self._incumbent = chain_of(part, found, int(found.cost.argmin()))
                    if self._any_will_do:
                        return
                if equals is not None:
                    equals.take_in(cost, part, found)
                search.top = self._limit(equals)
        if equals is not None and equals.are_all:
            self._first = first_by_names(equals.met, self._names)

    def _by_names(self, cost: int, *, in_bands: bool = True, only_first: bool = False) -> Iterator[Chain]:
        """Yield the chains of exactly this cost, by names; ``only_first`` says that none is cheaper."""
        ways = [self._part_by_names(part, cost) for part in self._parts(cost, in_bands=in_bands, only_first=only_first)]
        yield from heapq.merge(*ways, key=lambda chain: named(chain.rows, self._names))

    def _part_by_names(self, part: Part, cost: int) -> Iterator[Chain]:
        order = self._names.places(part.columns.row)
        for found in self._enumeration(part, cost, order, is_narrow=True).chains():
            for at in np.flatnonzero(part.holds(found) & (found.cost == cost)):
                yield chain_of(part, found, int(at))

    def _enumeration(self, part: Part, top: int, order: Ints | None = None, *, is_narrow: bool = False) -> Enumeration:
        return Enumeration(
            part.columns,
            part.passes,
            self._sums,
            top=top,
            effort=self._effort,
            order=order,
            is_narrow=is_narrow,
            test=self._test,
            stairs=self._stairs(part, top),
        )

    def _stairs(self, part: Part, top: int) -> Staircases | None:
        """Return a bound that is exact in one limit, where labels are many and a limit has a price."""
        if not self._is_dense or not self._sums.prices[self._sums.costs - 1].any():
            return None
        return Staircases(part.columns, part.passes, self._sums, top)

    def _parts(self, top: int, *, in_bands: bool = True, only_first: bool = False) -> list[Part]:
        """Return the problems of the bands, with the items of floors up to ``top`` alone, the lowest floor first.

        Without bands it is one problem, whose strengths are looked at in its chains alone. Where ``only_first``, for
        the cheapest chains, items that are in none of these are left out; by sums alone, so that no test may count.
        """
        low = self._floors <= near(top)
        some, floors = self._columns.only(low), self._floors[low]
        if only_first and self._test is None:
            some = some.not_outdone(nor_equalled=self._any_of_equals)
        if not in_bands and some.can_be_filled():
            return [Part.whole(some, floors)]
        return parts_by_band(some, self._sums) if in_bands else []
