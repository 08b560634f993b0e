"""Parts that differ in their maker alone: sets with them are one point."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

import numpy as np
from numpy.typing import NDArray

from spoutline.model.front import Alike
from spoutline.model.part_columns import LEAD_TIME, MAKER, NUMBER_END, NUMBER_START, NUMBER_TEXT, PRICE, Mask
from spoutline.model.plan import HangingSet
from spoutline.planning.sets.choice import ALL_LINES
from spoutline.planning.sets.pool import Pool, SlotParts

_NAMES = frozenset({MAKER, NUMBER_TEXT, NUMBER_START, NUMBER_END, LEAD_TIME})  # what may differ, beside prices
SameFigures = Callable[[SlotParts, int], Mask]  # portion and row: which parts add the same to every chosen axis


def alike_of(hanging_set: HangingSet, pool: Pool, same: SameFigures) -> Iterator[Alike]:
    """Yield the parts of other makers that could take the place of one of a set at the same point.

    They are equal in every declared figure, in ports and status, break no must and add the same to the chosen axes.
    """
    for link in hanging_set.links:
        found = pool.found(link.slot, link.part.ref)
        if found is None or link.kept:
            continue
        portion, row = found
        mask = portion.allowed(ALL_LINES) & same(portion, row) & ~portion.columns.by_maker(link.part.maker)
        for name, column in portion.columns.arrays.items():
            if name in _NAMES or name.startswith(PRICE) or not mask.any():
                continue
            mask &= _equal(column, row)
        for ref in portion.refs(mask):
            yield Alike(slot=link.slot, part=link.part.ref, other=ref)


def _equal(column: NDArray[Any], row: int) -> Mask:
    own = column[row]
    if column.ndim > 1:
        return np.asarray((column == own).all(axis=1), np.bool_)
    if column.dtype.kind == "f" and np.isnan(own):
        return np.asarray(np.isnan(column), np.bool_)
    return np.asarray(column == own, np.bool_)
