"""The next chain in order where very many chains just miss a limit: by labels, with the chains told before left out.

What begins a chain that was told takes no other's place; all else is dropped that another can stand in for, which costs
no more, adds no more to any load, is as strong, and of equals comes first by names. A told chain with one item changed
for another of its ports mostly is the next chain, or costs hardly more, which bounds what is looked at.
"""

from __future__ import annotations

from heapq import heappop, heappush

import numpy as np

from spoutline.search.columns import Columns
from spoutline.search.effort import Effort
from spoutline.search.front import Axes, FrontChain, front
from spoutline.search.item_table import Floats, Ints
from spoutline.search.stand_ins import Found
from spoutline.search.sums import Sums, near
from spoutline.search.swaps import Rows, Swaps


class NextChain:
    """Finds the chains of a problem one by one, in the order of cost and names.

    Parameters
    ----------
    columns
        A trimmed problem, its majors left aside.
    sums
        Sums that bound the cost of its chains.
    floors
        By item, a cost that no chain that holds it goes below.
    places
        By item, a number that grows with its name among those of its layer; none is negative.
    """

    def __init__(self, columns: Columns, sums: Sums, floors: Floats, places: Ints) -> None:
        self._columns, self._sums, self._floors = columns, sums, floors
        self._places = np.zeros(int(columns.row.max(initial=-1)) + 1, np.int64)
        self._places[columns.row] = places
        self._swaps, self._told = Swaps(columns), dict[Rows, None]()
        self._neighbours: list[tuple[int, Rows]] = []  # of told chains, a heap

    def tell(self, rows: Rows) -> None:
        """Leave a chain out from now on: it was told."""
        self._told[rows] = None
        for found in self._swaps.around(rows):
            heappush(self._neighbours, found)

    def next(self, most: int, effort: Effort) -> Found | None:
        """Return the first chain that was not told and costs no more than ``most``; None for none.

        Raises
        ------
        Cancelled, Exhausted
            As of ``search.front.front``.
        """
        while self._neighbours and self._neighbours[0][1] in self._told:
            heappop(self._neighbours)
        if self._neighbours:
            most = min(most, self._neighbours[0][0])
        columns = self._sums.bounding(self._columns.only(self._floors <= near(most)), most)
        cost = np.zeros((len(self._places), 1), np.int64)
        cost[columns.row, 0] = columns.cost
        axes = Axes(cost, np.ones(1, np.bool_), self._places, np.ones(1, np.int64), is_by_layer=True)
        found = front(columns, axes, effort, without=self._told, known=[FrontChain((most + 1,), 0, ())])
        return Found(found[0].figures[0], found[0].rows) if found else None
