"""What parts cost by quantity, worked out once for all questions of a station, mostly without making a part."""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise

import numpy as np

from spoutline.model.part_columns import Floats, Ints, PartColumns
from spoutline.model.part_ref import PartRef
from spoutline.planning.pricing.sellable import PartRow, Sellable
from spoutline.planning.protocols import PartStore

Ladder = tuple[tuple[int, int], ...]  # (from quantity, price of one piece in minor units), rising by quantity


class Ladders:
    """The prices by quantity of the parts of a store."""

    def __init__(self, of: Callable[[Sellable], Ladder], parts: PartStore) -> None:
        self._of = of
        self._parts = parts
        self._known: dict[str, Ladder] = {}
        self._rows: dict[int, tuple[PartColumns, Floats]] = {}  # by the columns, which are kept alive

    def __call__(self, key: str) -> Ladder:
        """Return the prices of a part by its key; one price of nothing for a part that the store has not."""
        if key not in self._known:
            part = self._parts.part(PartRef.from_key(key))
            self._known[key] = self._of(part) if part is not None else ((1, 0),)
        return self._known[key]

    def figures(self, columns: PartColumns, rows: Ints) -> Floats:
        """Return the least price of some rows at any quantity, that of the first step, and the dearest; minor units.

        Three columns; where a price rises with the quantity, the dearest is infinite.
        """
        if id(columns) not in self._rows:
            self._rows[id(columns)] = columns, np.full((len(columns), 3), np.nan)
        found = self._rows[id(columns)][1]
        for row in rows[np.isnan(found[rows, 0])].tolist():
            ladder = self._of_row(columns, row)
            prices = [price for _, price in ladder]
            rises = any(later > earlier for earlier, later in pairwise(prices))
            found[row] = min(prices), prices[0], math.inf if rises else prices[0]
        return found[rows]

    def _of_row(self, columns: PartColumns, row: int) -> Ladder:
        key = columns.key_at(row)
        if key not in self._known:
            self._known[key] = self._of(PartRow(columns, row))
        return self._known[key]
