"""The sums that bound a chain: its cost, its cost with the limits priced, and each load by itself."""

from __future__ import annotations

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns
from spoutline.search.item_table import Floats
from spoutline.search.passes import Passes

_ROUNDING = 1e-11  # of a cost: sums of a few floats stay far within it


@frozen
class Sums:
    """Weighed sums of cost and loads; the first ``costs`` of them bound the cost, the best last.

    A sum is ``weigh * cost + prices @ loads``: no chain within the limits and a given cost exceeds ``most`` of it. The
    sums after the first ``costs`` are the loads as they are.
    """

    weigh: Floats
    prices: Floats  # by sum and limit
    limits: Floats
    costs: int

    @classmethod
    def of(cls, limits: Floats, prices: Floats | None = None) -> Sums:
        """Return the sums for these limits; with their prices where known."""
        rows = [np.zeros(len(limits))] if prices is None else [np.zeros(len(limits)), prices]
        weigh = np.append(np.ones(len(rows)), np.zeros(len(limits)))
        return cls(weigh, np.concatenate([np.array(rows), np.eye(len(limits))]), limits, len(rows))

    def most(self, cost: float) -> Floats:
        """Return what no chain within the limits that costs no more exceeds, with room for rounding."""
        room = 3e-9 * (np.abs(self.prices) @ np.abs(self.limits)) + 2e-9 * (1.0 + self.prices.sum(axis=1))
        room += _ROUNDING * self.weigh * abs(cost)
        return np.asarray(self.weigh * cost + self.prices @ self.limits + room)

    def figures(self, columns: Columns) -> Floats:
        """Return what each item adds to each sum."""
        of_cost = columns.cost[:, None] + columns.eased @ self.prices[: self.costs].T
        return np.concatenate([of_cost, columns.eased], axis=1)

    def bounding(self, columns: Columns, cost: float) -> Columns:
        """Return a problem that drops at once what exceeds a sum of priced loads, for chains that cost no more."""
        figures, highest = self.figures(columns), self.most(cost)
        for priced in range(1, self.costs):
            columns = columns.with_load(figures[:, priced], float(highest[priced]))
        return columns

    def floor(self, columns: Columns, passes: Passes) -> Floats:
        """Return, by item, a cost that no chain within the limits that holds it goes below; infinite without one."""
        over = passes.through(self.figures(columns)) - self.most(0.0)
        keeps = (over[:, self.costs :] <= 0.0).all(axis=1)
        return np.where(keeps, over[:, : self.costs].max(axis=1), np.inf)


def near(cost: float) -> float:
    """Return a cost with room for the rounding of floors."""
    return cost + 1e-6 + _ROUNDING * abs(cost)
