"""The cheapest chain of a few items, followed depth first by plain steps: quicker there than looking at many at once.

Numpy takes some hundred calls for a chain, whatever the columns hold. Among a few dozen items that is most of the time.
"""

from __future__ import annotations

import math
from operator import add, itemgetter, le

from spoutline.search.bounds import within
from spoutline.search.chain import Chain, Named, named
from spoutline.search.columns import Columns
from spoutline.search.effort import Effort
from spoutline.search.enumeration import EMPTY
from spoutline.search.sums import Sums

_SPENT_AT_ONCE = 64  # labels between two questions to the listener


# Plain tuples, made and taken apart a hundred times for a chain:
# the item, the port then open, the least sums of both and what follows
_Way = tuple[int, int, list[float]]
# open port, cost, sums, what all bear, what any demands, items so far
_Label = tuple[int, int, list[float], float, float, tuple[int, ...]]
_STILL = itemgetter(2)


class FewItems:
    """The chains of a trimmed problem of few items that cost no more than ``top``.

    Parameters
    ----------
    columns
        The problem, its majors left aside.
    sums
        Bound every step; the last of its costs decides what is most promising.
    top
        The highest cost asked for.
    effort
        Counts the labels.
    names
        Names of the items as ``Columns.row`` counts them.
    any_will_do
        Whether the chain that is met first is enough.
    """

    def __init__(
        self, columns: Columns, sums: Sums, top: int, effort: Effort, names: Named, *, any_will_do: bool = False
    ) -> None:
        self._sums, self._effort, self._names, self._any_will_do = sums, effort, names, any_will_do
        self._start, self._limits = columns.start, columns.limits.tolist()
        self._figures: list[list[float]] = sums.figures(columns).tolist()
        self._cost: list[int] = columns.cost.tolist()
        self._row: list[int] = [*columns.row.tolist(), EMPTY]  # the last is that of an empty layer
        self._loads: list[list[float]] = columns.loads.tolist()
        self._exit: list[int] = columns.exit.tolist()
        self._bears: list[float] = columns.bears.tolist()
        self._demands: list[float] = columns.demands.tolist()
        self._meets: list[list[bool]] = columns.meets.tolist()
        self._optional: list[bool] = columns.optional.tolist()
        self._by_entry: list[dict[int, list[int]]] = [{} for _ in self._optional]
        for item, (layer, entry) in enumerate(zip(columns.layer.tolist(), columns.entry.tolist(), strict=True)):
            self._by_entry[layer].setdefault(entry, []).append(item)
        self._leading = sums.costs - 1
        self._ways: dict[tuple[int, int], list[_Way]] = {}
        self._best: Chain | None = None
        self._all: list[Chain] | None = None  # where more than the best are wanted
        self._labels = 0
        self._lower(top)

    def first(self) -> Chain | None:
        """Return the cheapest chain, of equals the first by names; None where there is none.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If more labels would have to be looked at than the effort allows.
        """
        self._follow_all()
        return self._best

    def in_order(self) -> list[Chain]:
        """Return all chains, cheapest first, equals by names.

        Raises
        ------
        Cancelled, Exhausted
            As of ``first``.
        """
        self._all = []
        self._follow_all()
        return sorted(self._all, key=lambda found: (found.cost, named(found.rows, self._names)))

    def _follow_all(self) -> None:
        self._effort.spend(1)
        self._follow((self._start, 0, [0.0] * len(self._sums.weigh), math.inf, 0.0, ()))

    def _lower(self, top: int) -> None:
        self._top = top
        self._most: list[float] = self._sums.most(top).tolist()

    def _ways_from(self, depth: int, port: int) -> list[_Way]:
        """Return the ways on from a layer and open port, the most promising first."""
        known = self._ways.get((depth, port))
        if known is not None:
            return known
        ways: list[_Way] = []
        if self._optional[depth]:
            rest = self._least(depth + 1, port)
            if rest is not None:
                ways.append((EMPTY, port, rest))
        meets = self._meets[port]
        for item in (item for entry, items in self._by_entry[depth].items() if meets[entry] for item in items):
            rest = self._least(depth + 1, self._exit[item])
            if rest is not None:
                ways.append((item, self._exit[item], list(map(add, self._figures[item], rest))))
        leading = self._leading
        ways.sort(key=lambda way: way[2][leading])
        self._ways[depth, port] = ways
        return ways

    def _least(self, depth: int, port: int) -> list[float] | None:
        """Return the least of each sum still to come before a layer; None where the chain cannot be ended."""
        if depth == len(self._optional):
            return [0.0] * len(self._sums.weigh)
        ways = self._ways_from(depth, port)
        if len(ways) < 2:
            return ways[0][2] if ways else None
        return list(map(min, *map(_STILL, ways)))

    def _follow(self, label: _Label) -> None:
        """Look at all that a label leads to; the first way on that promises too little ends it."""
        port, _, sums, _, _, items = label
        depth, leading = len(items), self._leading
        if depth == len(self._optional):
            self._end(label)
            return
        for way in self._ways_from(depth, port):
            if sums[leading] + way[2][leading] > self._most[leading]:
                return
            if self._may_take(way, label):
                self._count()
                self._follow(self._taken(way, label))
                if self._any_will_do and self._best is not None:
                    return

    def _count(self) -> None:
        self._labels += 1
        if self._labels % _SPENT_AT_ONCE == 0:
            self._effort.spend(_SPENT_AT_ONCE)

    def _may_take(self, way: _Way, label: _Label) -> bool:
        """Say whether the chain can still end within every limit after a way on."""
        item, _, still = way
        _, _, sums, bears, demands, _ = label
        if item != EMPTY and (self._bears[item] < demands or bears < self._demands[item]):
            return False
        return all(map(le, map(add, sums, still), self._most))

    def _taken(self, way: _Way, label: _Label) -> _Label:
        item, exit_, _ = way
        port, cost, sums, bears, demands, items = label
        if item == EMPTY:
            return port, cost, sums, bears, demands, (*items, item)
        return (
            exit_,
            cost + self._cost[item],
            list(map(add, sums, self._figures[item])),
            min(bears, self._bears[item]),
            max(demands, self._demands[item]),
            (*items, item),
        )

    def _end(self, label: _Label) -> None:
        """Take a complete chain in where it comes before the best one, or all are wanted."""
        _, cost, _, _, _, items = label
        if cost > self._top or not self._keeps_limits(items):
            return
        best = self._best
        found = Chain(0, cost, tuple([self._row[item] for item in items]))
        if self._all is not None:
            self._all.append(found)
        elif best is None or found.cost < best.cost:
            self._best = found
            self._lower(found.cost)
        elif named(found.rows, self._names) < named(best.rows, self._names):
            self._best = found

    def _keeps_limits(self, items: tuple[int, ...]) -> bool:
        """Say whether a chain keeps every limit to the letter, its loads added up from the start as the walk does."""
        total = [0.0] * len(self._limits)
        for item in items:
            if item != EMPTY:
                total = list(map(add, total, self._loads[item]))
        return all(map(within, total, self._limits))
