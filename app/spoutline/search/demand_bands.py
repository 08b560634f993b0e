"""The greatest demand of a chain couples all its layers: each band of it is a problem of its own."""

from __future__ import annotations

import math

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns
from spoutline.search.enumeration import Chains
from spoutline.search.item_table import Floats, Mask
from spoutline.search.passes import Passes
from spoutline.search.sums import Sums

_BANDS = 8


@frozen
class Part:
    """The chains whose greatest demand lies in one band, as a problem of its own; none costs less than ``floor``."""

    columns: Columns
    passes: Passes
    floor: float
    over: float  # the greatest demand of a chain is more than this,
    most: float  # and no more than this

    @classmethod
    def whole(cls, columns: Columns, floors: Floats) -> Part:
        """Return all chains, whatever their greatest demand; with the floors of the items."""
        return cls(columns, Passes(columns), least(columns, floors), -math.inf, math.inf)

    def holds(self, found: Chains) -> Mask:
        """Say which chains of the problem have their greatest demand in the band."""
        greatest = np.append(self.columns.demands, 0.0)[found.items].max(axis=1, initial=0.0)
        return np.asarray((greatest > self.over) & (greatest <= self.most))


def parts_by_band(columns: Columns, sums: Sums) -> list[Part]:
    """Return the problems of the bands, the lowest floor first."""
    parts = []
    for over, most in _bands(columns.demands):
        some = columns.only(_of_band(columns, over, most))
        if some.can_be_filled():
            passes = Passes(some)
            parts.append(Part(some, passes, least(some, sums.floor(some, passes)), over, most))
    return sorted(parts, key=lambda part: (part.floor, part.most))


def least(columns: Columns, floors: Floats) -> float:
    """Return a cost that no chain goes below, by the floors of the items; a chain of empty layers costs nothing."""
    return float(floors.min(initial=0.0 if columns.optional.all() else np.inf))


def _bands(demands: Floats) -> list[tuple[float, float]]:
    """Return bands (from above, up to) that hold every demand, the first of them nothing but no demand."""
    asked = np.unique(demands[demands > 0.0])
    tops = asked if len(asked) <= _BANDS else np.array([part[-1] for part in np.array_split(asked, _BANDS)])
    return list(zip([-math.inf, 0.0, *tops.tolist()], [0.0, *tops.tolist()], strict=False))


def _of_band(columns: Columns, over: float, most: float) -> Mask:
    """Return which items a chain may hold whose greatest demand lies in the band.

    All others must bear more than ``over``; nothing need bear what it asks itself.
    """
    demands, bears = columns.demands, columns.bears
    may = (demands <= most) & ((bears > over) | (demands > over))
    asking = np.unique(columns.layer[demands > 0.0])
    if len(asking) == 1 and not columns.optional[asking[0]]:
        may &= (columns.layer != asking[0]) | (demands > over)
    return may
