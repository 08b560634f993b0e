"""Answers about one chain problem, by whichever way is quicker; both give the same chains in the same order.

The walk is quick where few items or loose limits let it go nearly straight to the end; it is given a number of labels.
What it does not finish with them is left to the columns, which cost some milliseconds whatever binds.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import suppress
from dataclasses import replace
from functools import cached_property, partial
from itertools import islice
from typing import TYPE_CHECKING

from spoutline.search import walk
from spoutline.search.answer import Count, Decision, PathAnswer
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.graph import MAJOR, Path, Problem, divided
from spoutline.search.listener import Listener
from spoutline.search.shared_items import SharedItems, Together, items_of, shared_of

if TYPE_CHECKING:
    from spoutline.search.chain import Chain
    from spoutline.search.columns import Columns
    from spoutline.search.enumeration import ChainTest
    from spoutline.search.front import Axes, FrontChain
    from spoutline.search.ground import Ground
    from spoutline.search.item_table import Ints, Mask

_FEW_ITEMS = 500  # more than these are only read by the walk's own bounds for longer than the columns take
_ITEMS_IN_ORDER = 500  # likewise, where more than one chain is asked for
_CHEAPEST_LABELS = 512
_ORDER_LABELS = 512
_TESTED_LABELS = 1_000_000  # about a second
_ROUNDED = 1e-6  # by which a bound on a cost, a whole number, may lie too high for rounding


class Finder:
    """Finds chains of one problem."""

    def __init__(self, problem: Problem) -> None:
        self._shared = shared_of(problem)
        self._limits = problem.limits
        self._count = sum(len(layer.items) for layer in problem.layers)
        self._known: Callable[[], Ground] | None = None

    @property
    def problem(self) -> Problem:
        """The chain to fill."""
        return replace(self._shared.problem, limits=self._limits)

    @property
    def is_of_few(self) -> bool:
        """Whether items are so few that any chain is mostly looked for as long as the cheapest."""
        return self._count <= _FEW_ITEMS

    def within(self, limits: tuple[float, ...]) -> Finder:
        """Return a finder for the same items and other limits of their sums, at next to no cost."""
        return self._other(self._shared, limits, self._count)

    def only(self, masks: Sequence[Mask]) -> Finder:
        """Return a finder for some of the items of each layer, all of which are tables of items.

        Where some were left out before, the masks are of all items all the same, and hold none of those.
        """
        from spoutline.search.item_table import joined_up, some_of

        whole, kept = self._shared, joined_up(masks)
        some = SharedItems(
            lambda: some_of(whole.of.problem, masks),
            lambda: None if whole.rows is None else whole.rows.only(kept[whole.rows.row]),
            lambda: whole.items,
            whole.of,
        )
        return self._other(some, self._limits, int(kept.sum()))

    def among(self, questions: Sequence[Sequence[Mask]]) -> list[Finder]:
        """Return what ``only`` does for the masks of each question; bounds are worked out for all of them together.

        Nothing is worked out before the first of them is asked.
        """
        from spoutline.search.item_table import joined_up

        finders = [self.only(masks) for masks in questions]
        if self._columns() is not None:
            together = Together(lambda: self.lowest, [joined_up(masks) for masks in questions])
            for at, finder in enumerate(finders):
                finder._known = partial(together.ground, at)
        return finders

    def of_limits(self, which: Sequence[bool]) -> Finder:
        """Return a finder for the same items, all of which are tables, with some of the limits and their sums alone."""
        from spoutline.search.item_table import of_limits

        whole, at = self._shared, [index for index, wanted in enumerate(which) if wanted]
        some = SharedItems(
            lambda: of_limits(whole.problem, at),
            lambda: None if whole.rows is None else whole.rows.of_limits(at),
            lambda: whole.items,
        )
        return self._other(some, tuple(self._limits[index] for index in at), self._count)

    def hopeful(self) -> tuple[Mask, ...] | None:
        """Return, by layer, which items chains within the limits may hold; None where that is not known soon.

        Each limit is looked at by itself, once for all finders of the same loads.
        """
        alone = self._shared.alone
        if alone is None:
            return None
        from spoutline.search.item_table import apart

        return apart(alone.hopeful(self._limits), self._shared.problem)

    def at_costs(self, costs: Sequence[tuple[Ints, Ints]]) -> Finder:
        """Return a finder for the same items at other costs: by layer majors and the rest, in the items' order."""
        from spoutline.search.item_table import at_costs, joined_up

        whole = self._shared
        major, rest = (joined_up([layer[which] for layer in costs]) for which in (0, 1))
        costed = at_costs(whole.problem, costs)
        return self._other(
            SharedItems(
                lambda: costed,
                lambda: None if whole.rows is None else whole.rows.at_costs(major, rest),
                lambda: items_of(costed),
                alone=lambda: whole.alone,
            ),
            self._limits,
            self._count,
        )

    def front(
        self,
        axes: Axes,
        effort: Effort,
        *,
        may: Mask,
        most_major: int | None = None,
        without: Iterable[tuple[int, ...]] = (),
        known: Iterable[FrontChain] = (),
        told: Callable[[list[FrontChain]], None] | None = None,
    ) -> list[FrontChain]:
        """Return the chains that no other within the limits outdoes on some axes; see ``search.front.front``.

        Parameters
        ----------
        axes, may
            Figures of the items, and which of them may be used, as ``ItemsOf`` counts them.
        most_major
            Whole multiples of ``MAJOR`` that a chain may cost; None for any number.

        Raises
        ------
        Cancelled, Exhausted
            As of ``search.front.front``.
        ValueError
            If a cost is too large for whole numbers of 64 bits.
        """
        from spoutline.search.front import front

        columns = self._shared.rows
        if columns is None:
            raise ValueError("a cost is too large for whole numbers of 64 bits")
        columns = columns.with_limits(self._limits).only(may[columns.row])
        if most_major is not None:
            columns = columns.only(columns.major <= most_major)
            columns = columns.with_load(columns.major, most_major)
        return front(columns, axes, effort, without=without, known=known, told=told)

    def binding(self) -> tuple[bool, ...]:
        """Say of each limit whether some chain of items could exceed it; all may where that cannot be told."""
        alone = self._shared.alone
        return (True,) * len(self._limits) if alone is None else alone.binding(self._limits)

    def columns(self) -> Columns | None:
        """Return the items as columns with these limits; None where sums of costs would not be exact in them."""
        return self._columns()

    def with_strengths(self, start_bears: float | None) -> Finder:
        """Return a finder for the same items where the start bears so much; None to leave all strengths aside."""
        from spoutline.search.item_table import at_strengths

        whole = self._shared
        made = SharedItems(
            lambda: at_strengths(whole.problem, start_bears),
            lambda: None if whole.rows is None else whole.rows.at_strengths(start_bears),
            lambda: whole.items,
        )
        return self._other(made, self._limits, self._count)

    @property
    def limits(self) -> tuple[float, ...]:
        """The upper limits of the load sums."""
        return self._limits

    def path_of(self, rows: Sequence[int]) -> Path:
        """Return the chain of some items, by layer, as ``ItemsOf`` counts them; below 0 for an empty layer."""
        items = [None if row < 0 else self._shared.items[row] for row in rows]
        return Path(sum(item.cost for item in items if item is not None), tuple(items))

    def _other(self, shared: SharedItems, limits: tuple[float, ...], count: int) -> Finder:
        other = Finder.__new__(Finder)
        other._shared, other._limits, other._count, other._known = shared, limits, count, None
        return other

    def cheapest(
        self, listener: Listener | None = None, most_cost: int | None = None, fewest_majors: int = 0
    ) -> PathAnswer:
        """Return the first chain of ``in_order``, much quicker than that, or what is known where that takes too much.

        With ``most_cost``, chains that cost more are left out. Where it is known that every chain costs so many majors,
        that spares looking for any with fewer.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        return self._cheapest(listener, most_cost, fewest_majors)

    def one_of_the_cheapest(self, listener: Listener | None = None) -> PathAnswer:
        """Return a chain that costs as little as the ``cheapest``, whichever is met first; quicker where many do.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        columns, fewest = None if self.is_of_few else self._columns(), 0
        if columns is not None:
            from spoutline.search import column_walk

            with suppress(Exhausted):
                found = column_walk.one_without_majors(columns, self._shared.names, listener, _CHEAPEST_LABELS)
                if found is not None:
                    return PathAnswer.decided(self.path_of(found))
                fewest = 1
        return self._cheapest(listener, fewest_majors=fewest, any_of_equals=True)

    def _cheapest(
        self,
        listener: Listener | None,
        most_cost: int | None = None,
        fewest_majors: int = 0,
        *,
        any_of_equals: bool = False,
    ) -> PathAnswer:
        if self.is_of_few and self._known is None:
            with suppress(Exhausted):
                return PathAnswer.decided(self._walked(listener, most_cost, any_of_equals=any_of_equals))
        columns = self._columns()
        if columns is None:
            try:
                return PathAnswer.decided(walk.cheapest(self.problem, listener, most_cost=most_cost))
            except Exhausted:
                return PathAnswer(None, Decision.UNDECIDED, None)
        from spoutline.search.optimum import best_chain

        most = None if most_cost is None else divided(most_cost)
        found = best_chain(
            columns,
            self._shared.names,
            listener,
            most=most,
            fewest=fewest_majors,
            any_of_equals=any_of_equals,
            lowest=lambda: self.lowest,
        )
        path = None if found.chain is None else self._path(found.chain)
        if found.is_proved:
            return PathAnswer.decided(path)
        floor = found.floor_major * MAJOR + math.ceil(found.floor_cost - _ROUNDED) if found.is_bounded else None
        # of equally cheap ones, which comes first by name may be open: that is nothing that anybody asks
        is_cheapest = path is not None and floor is not None and floor >= path.cost
        return PathAnswer(path, Decision.DECIDED if is_cheapest else Decision.UNDECIDED, floor)

    def any_chain(self, listener: Listener | None = None) -> Path | None:
        """Return any chain, whatever it costs, mostly much sooner than the ``cheapest``; None where there is none.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If none was found and it would take more work than a question may to say that there is none.
        """
        if self.is_of_few:
            with suppress(Exhausted):
                return self._walked(listener)
        columns = self._columns()
        return self.cheapest(listener).proven if columns is None else self._any_of(columns, listener)

    def any_chain_with(self, layer: int, items: Mask, listener: Listener | None = None) -> Path | None:
        """Return any chain with one of some items in a layer; None where there is none.

        Parameters
        ----------
        layer
            Place of the layer; where it is optional, only chains that fill it count.
        items
            Which of the layer's items, those that were left out before counted as well.

        Raises
        ------
        Cancelled, Exhausted
            As of ``any_chain``.
        ValueError
            If a cost is too large for whole numbers of 64 bits.
        """
        columns = self._columns()
        if columns is None:
            raise ValueError("a cost is too large for whole numbers of 64 bits")
        own = columns.layer == layer
        may = ~own
        first = sum(len(before.items) for before in self._shared.of.problem.layers[:layer])
        may[own] = items[columns.row[own] - first]
        optional = columns.optional.copy()
        optional[layer] = False
        return self._any_of(replace(columns.only(may), optional=optional), listener)

    def _any_of(self, columns: Columns, listener: Listener | None) -> Path | None:
        from spoutline.search.optimum import any_chain

        found = any_chain(columns, self._shared.names, listener)
        return None if found is None else self._path(found)

    def count(self, most: int, listener: Listener | None = None) -> Count:
        """Return how many chains there are, whatever they cost; ``most`` where there are as many or more.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        columns = self._columns()
        if columns is None:
            return self._counted_in_order(most, listener)
        from spoutline.search.counting import count_chains

        return count_chains(columns, self._shared.names, most, listener)

    def _walked(
        self, listener: Listener | None, most_cost: int | None = None, *, any_of_equals: bool = False
    ) -> Path | None:
        """Return the cheapest chain by the walk; raise ``Exhausted`` where that takes many labels."""
        rows = self._shared.rows
        if rows is None:
            return walk.cheapest(self.problem, listener, _CHEAPEST_LABELS, most_cost)
        from spoutline.search import column_walk

        columns = rows.with_limits(self._limits)
        found = column_walk.cheapest(
            columns, self._shared.names, listener, _CHEAPEST_LABELS, most_cost, any_of_equals=any_of_equals
        )
        return None if found is None else self.path_of(found)

    def _counted_in_order(self, most: int, listener: Listener | None) -> Count:
        found = 0
        try:
            for _ in islice(self.in_order(listener), most):
                found += 1
        except Exhausted:
            return Count(found, Decision.UNDECIDED)
        return Count(found, Decision.DECIDED)

    def passing(
        self, test: ChainTest, listener: Listener | None = None, least_cost: int | None = None
    ) -> Iterator[Path]:
        """Yield the chains of ``in_order`` that pass a test, as many as are met with some labels.

        What is not known in columns is not tested. With ``least_cost``, no chain is known to cost less, tested or not.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            After the last that is met, unless it is known that there is no other.
        """
        columns = self._columns()
        if columns is None:
            yield from self.in_order(listener)
            return
        from spoutline.search.optimum import chains_in_order

        least = None if least_cost is None else divided(least_cost)
        chains = chains_in_order(
            columns, self._shared.names, listener, test, _TESTED_LABELS, least=least, lowest=lambda: self.lowest
        )
        yield from map(self._path, chains)

    def in_order(self, listener: Listener | None = None, least_cost: int | None = None) -> Iterator[Path]:
        """Yield every chain within the limits, cheapest first; equals by keys along the chain, an empty layer first.

        With ``least_cost``, no chain is known to cost less, which spares looking there.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            After the last that is met with the work that a question may take, unless there is no other.
        """
        last: Path | None = None
        if self._count <= _ITEMS_IN_ORDER:
            try:
                for last in walk.best_first(self.problem, listener, _ORDER_LABELS):
                    yield last
                return
            except Exhausted:
                pass
        columns = self._columns()
        if columns is None:
            rest = walk.best_first(self.problem, listener)
        else:
            from spoutline.search.optimum import chains_in_order

            least = None if least_cost is None else divided(least_cost)
            rest = map(
                self._path,
                chains_in_order(columns, self._shared.names, listener, least=least, lowest=lambda: self.lowest),
            )
        for path in rest:
            if last is None or _place(path) > _place(last):
                yield path

    def _columns(self) -> Columns | None:
        columns = self._shared.columns
        return None if columns is None else columns.with_limits(self._limits)

    @cached_property
    def lowest(self) -> Ground:
        """What bounds tell of the items that cost no major, worked out once.

        Raises
        ------
        ValueError
            If a cost is too large for whole numbers of 64 bits.
        """
        if self._known is not None:
            return self._known()
        from spoutline.search.ground import Ground
        from spoutline.search.optimum import without_majors

        columns = self._columns()
        if columns is None:
            raise ValueError("a cost is too large for whole numbers of 64 bits")
        return Ground.of(without_majors(columns))

    def least_cost(self) -> float:
        """Return what no chain without majors costs less than, where bounds tell it at next to no cost; else 0."""
        return self.lowest.floor if self._known is not None else 0.0

    def _path(self, chain: Chain) -> Path:
        items = self._shared.items
        return Path(chain.major * MAJOR + chain.cost, tuple(None if row < 0 else items[row] for row in chain.rows))


def _place(path: Path) -> tuple[int, tuple[str, ...]]:
    return path.cost, tuple("" if item is None else item.key for item in path.items)
