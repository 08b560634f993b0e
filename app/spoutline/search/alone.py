"""Each limit of a problem looked at by itself: whether a chain could exceed it, and which items are on none within it.

What a limit tells by itself holds whatever other limits are asked beside it: it is worked out once for all questions.
"""

from __future__ import annotations

from functools import cached_property
from math import inf

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns
from spoutline.search.item_table import Floats, Ints, Mask
from spoutline.search.passes import Passes

ROOM = 4e-9  # of a limit, and beside it: for rounding, and for what a sum may exceed its limit by


@frozen
class _Told:
    """What one limit tells; ``holds`` says by row which items chains within it may hold, None for each."""

    binds: bool
    holds: Mask | None


_NO_LIMIT = _Told(binds=False, holds=None)


class LimitsAlone:
    """What limits tell of the items of one problem, each by itself; the limits of the columns themselves do not count.

    Costs and strengths are left aside.
    """

    def __init__(self, columns: Columns) -> None:
        self._columns = columns
        self._known: dict[tuple[int, float], _Told] = {}  # by load and limit

    def binding(self, limits: tuple[float, ...]) -> tuple[bool, ...]:
        """Say which limits some chain of items could exceed, ports left aside."""
        return tuple(told.binds for told in self._told(limits))

    def hopeful(self, limits: tuple[float, ...]) -> Ints:
        """Return the numbers of the items that join up to a chain, and that chains within each limit may hold."""
        masks = [told.holds for told in self._told(limits) if told.holds is not None]
        may = np.logical_and.reduce(masks) if masks else self._joined
        return self._columns.row[may]

    @cached_property
    def _passes(self) -> Passes:
        return Passes(self._columns)

    @cached_property
    def _joined(self) -> Mask:
        """Which items are on any chain of meeting ports."""
        return self._passes.through(np.zeros((len(self._columns), 1)))[:, 0] < np.inf

    def _told(self, limits: tuple[float, ...]) -> list[_Told]:
        keys = list(enumerate(limits))
        asked = [key for key in keys if key[1] != inf and key not in self._known]
        if asked:
            self._ask(np.array([load for load, _ in asked]), np.array([limit for _, limit in asked]))
        return [_NO_LIMIT if key[1] == inf else self._known[key] for key in keys]

    def _ask(self, which: Ints, limits: Floats) -> None:
        """Look at some loads within these limits, all at once."""
        columns = self._columns
        loads = columns.loads[:, which]
        known = loads < np.inf
        most = columns.most(np.where(known, loads, -np.inf))
        total = most.sum(axis=0)
        binds = ~np.isposinf(limits) & ((total > limits) | ~known.all(axis=0))
        holds = np.ones(loads.shape, np.bool_)
        if binds.any():
            # for bounds a load counts as the most that keeps the limit whatever else is chosen, as ``Columns.trimmed``
            spare = np.where(total > limits, limits - (total - most), -np.inf)[:, binds]
            eased = np.maximum(loads[:, binds], spare[columns.layer])
            asked = limits[binds]
            room = np.where(np.isinf(asked), 0.0, ROOM * np.maximum(np.abs(asked), 1.0))
            holds[:, binds] = self._passes.through(eased) <= asked + room
        for at, (load, limit) in enumerate(zip(which.tolist(), limits.tolist(), strict=True)):
            self._known[load, limit] = _Told(bool(binds[at]), holds[:, at] if binds[at] else None)
