"""Chains that differ from another in one item: near the cheapest of all where items have near copies."""

from __future__ import annotations

import numpy as np

from spoutline.search.columns import Columns
from spoutline.search.enumeration import EMPTY
from spoutline.search.item_table import Ints

_KEPT = 64  # chains that differ in an item of one layer, the cheapest
Rows = tuple[int, ...]


class Swaps:
    """Changes single items of chains for others of their ports.

    Parameters
    ----------
    columns
        A problem, its majors left aside; chains are told by ``row`` of its items, ``EMPTY`` for an empty layer.
    """

    def __init__(self, columns: Columns) -> None:
        self._columns, self._ports = columns, columns.ports()
        self._at = np.full(int(columns.row.max(initial=-1)) + 1, -1)
        self._at[columns.row] = np.arange(len(columns))

    def around(self, rows: Rows) -> list[tuple[int, Rows]]:
        """Return costs and items of chains within the limits that differ from one in an item; the cheapest of them.

        There is none of a chain that holds an item which the problem has not.
        """
        filled = [row for row in rows if row != EMPTY]
        if any(row >= len(self._at) or self._at[row] < 0 for row in filled):
            return []
        items, found = self._at[np.array(filled, np.int64)], list[tuple[int, Rows]]()
        for at in items.tolist():
            depth = int(self._columns.layer[at])
            for cost, row in self._others(at, items[items != at]):
                found.append((cost, (*rows[:depth], row, *rows[depth + 1 :])))
        return found

    def lowered(self, cost: int, rows: Rows) -> tuple[int, Rows]:
        """Return a chain within the limits that no change of one item makes cheaper, come to from one step by step."""
        while True:
            least = min(self.around(rows), default=(cost, rows))
            if least[0] >= cost:
                return cost, rows
            cost, rows = least

    def _others(self, at: int, beside: Ints) -> list[tuple[int, int]]:
        columns = self._columns
        low, high = np.searchsorted(self._ports, [self._ports[at], self._ports[at] + 1]).tolist()
        fits = (columns.loads[low:high] + columns.loads[beside].sum(axis=0) <= columns.limits).all(axis=1)
        fits &= columns.bears[low:high] >= columns.demands[beside].max(initial=0.0)
        fits &= columns.demands[low:high] <= columns.bears[beside].min(initial=np.inf)
        some = low + np.flatnonzero(fits)
        best = some[np.argsort(columns.cost[some], kind="stable")[:_KEPT]]
        costs = columns.cost[best] + columns.cost[beside].sum()
        return list(zip(costs.tolist(), columns.row[best].tolist(), strict=True))
