"""The least cost still to come for what is left of one limit: a bound that is exact in that limit.

Prices bound a chain as if a part of an item could be had. Where very many items lie about a limit that binds, chains
that fall just short of it are as many as all products of them, and no price tells them apart. How the least cost falls
as more of one limit may be used is a staircase, and staircases of the layers add up from the end of the chain
(Nemhauser and Ullmann, Management Science 15, 1969); the other limits stay priced.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from spoutline.search.columns import Columns, heads
from spoutline.search.item_table import Floats, Ints
from spoutline.search.passes import Passes
from spoutline.search.sums import Sums

_MOST_STEPS = 4_096  # more are joined, always downwards, so that a bound stays one
_PAIRS = 1 << 20  # of items and steps added in one go
_Steps = tuple[Floats, Floats]  # rising loads, and the falling costs that they allow


class Staircases:
    """For each layer and open port, the least cost still to come against what is left of the limit that weighs most.

    Parameters
    ----------
    columns, passes
        A trimmed problem and the passes over it.
    sums
        With the limits priced; the limit of the greatest price is taken out of the leading sum.
    top
        What no chain that is asked for costs more than: steps that no such chain takes are left out.
    """

    def __init__(self, columns: Columns, passes: Passes, sums: Sums, top: float) -> None:
        leading = sums.costs - 1
        prices, weight = sums.prices[leading], np.abs(columns.eased).max(axis=0, initial=0.0)
        self._limit = int((prices * weight).argmax())
        self._price = float(prices[self._limit])
        others = prices.copy()
        others[self._limit] = 0.0
        given = others * columns.limits
        # by the limits that stay priced, and room for what a sum may exceed them
        self._given = float(given.sum() + 3e-9 * (np.abs(given).sum() + others.sum()))
        self._weights = np.append(1.0, others)
        self._load = np.append(columns.eased[:, self._limit], 0.0)  # the last is that of an empty layer
        self._cost = np.append(columns.cost + columns.eased @ others, 0.0)
        self._columns, self._left_row = columns, sums.costs + self._limit
        most = sums.most(top)
        self._most_leading, self._at_start = float(most[leading]), most[[self._left_row]]
        self._so_far = passes.forward(sums.figures(columns)[:, [leading]])[:, :, 0]
        opens, nothing = len(columns.meets), np.zeros(0)
        self._at: list[list[_Steps]] = [[(nothing, nothing)] * opens for _ in range(columns.depth)]
        self._at.append([(np.zeros(1), np.zeros(1))] * opens)
        for depth in range(columns.depth - 1, -1, -1):
            self._fill(depth)

    def floor(self) -> float:
        """Return a cost that no chain up to the top goes below; infinite where there is no such chain."""
        return float(self._still(0, np.full(1, self._columns.start), self._at_start)[0]) - self._given

    def promise(self, depth: int, label: Ints, item: Ints, *, port: Ints, sums: Floats, slack: Floats) -> Floats:
        """Return the cost that no chain goes below that holds an item after a label.

        Parameters
        ----------
        depth
            Of the labels, whose next layer the items are of.
        label, item
            Numbers of both, pair by pair; the last item there is, or one below 0, for an empty layer.
        port
            By pair, the port that is then open.
        sums
            By label, the cost and the loads so far.
        slack
            By label, what is left of every sum.
        """
        so_far = sums @ self._weights
        still = self._still(depth + 1, port, slack[label, self._left_row] - self._load[item])
        return np.asarray(so_far[label] + self._cost[item] + still - self._given)

    def _still(self, depth: int, port: Ints, left: Floats) -> Floats:
        """Return the least cost still to come from open ports before a layer, with so much left of the limit."""
        least = np.full(len(port), np.inf)
        for one in np.unique(port).tolist():
            loads, costs = self._at[depth][one]
            who = np.flatnonzero(port == one)
            step = np.searchsorted(loads, left[who], side="right") - 1
            reached = step >= 0
            least[who[reached]] = costs[step[reached]]
        return least

    def _fill(self, depth: int) -> None:
        columns, after = self._columns, self._at[depth + 1]
        low, high = np.searchsorted(columns.layer, [depth, depth + 1]).tolist()
        entry, exit_ = columns.entry[low:high], columns.exit[low:high]
        ways: dict[int, list[_Steps]] = {}
        bounds = heads(entry * len(columns.meets) + exit_)
        for start, end in pairwise([*bounds.tolist(), high - low]):
            own = _steps(self._load[low + start : low + end], self._cost[low + start : low + end])
            ways.setdefault(int(entry[start]), []).append(_added(own, after[int(exit_[start])]))
        by_entry = {one: _joined(some) for one, some in ways.items()}
        for port in range(len(columns.meets)):
            met = [steps for one, steps in by_entry.items() if columns.meets[port, one]]
            if columns.optional[depth]:
                met.append(after[port])
            self._at[depth][port] = self._wanted(_joined(met), float(self._so_far[depth, port]))

    def _wanted(self, steps: _Steps, so_far: float) -> _Steps:
        """Return the steps that some chain up to the top may take, few enough of them."""
        loads, costs = steps
        may = so_far + costs + self._price * loads <= self._most_leading
        loads, costs = loads[may], costs[may]
        if len(loads) > _MOST_STEPS:
            first = np.linspace(0, len(loads), _MOST_STEPS, endpoint=False).astype(np.int64)
            loads, costs = loads[first], np.minimum.reduceat(costs, first)
        return loads, costs


def _steps(loads: Floats, costs: Floats) -> _Steps:
    """Return the pairs that no other pair outdoes, as a staircase."""
    order = np.lexsort((costs, loads))
    loads, costs = loads[order], costs[order]
    lower = np.ones(len(costs), np.bool_)
    lower[1:] = costs[1:] < np.minimum.accumulate(costs)[:-1]
    return loads[lower], costs[lower]


def _joined(some: list[_Steps]) -> _Steps:
    if not some:
        return np.zeros(0), np.zeros(0)
    return some[0] if len(some) == 1 else _steps(*(np.concatenate(parts) for parts in zip(*some, strict=True)))


def _added(one: _Steps, other: _Steps) -> _Steps:
    """Return the staircase of all sums of two."""
    size = max(1, _PAIRS // max(1, len(other[0])))
    parts = [
        _steps(*((own[at : at + size, None] + theirs).ravel() for own, theirs in zip(one, other, strict=True)))
        for at in range(0, len(one[0]), size)
    ]
    return _joined(parts)
