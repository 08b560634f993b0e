"""What the front of a position is searched in: the sets of one design flow that may give up the same should-lines."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np

from spoutline.model.part_columns import Ints, Mask
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembled import Assembled
from spoutline.planning.weighing.measures import Measured
from spoutline.search.finder import Finder
from spoutline.search.front import Axes, FrontChain

Group = frozenset[RequirementId]  # should-lines of the whole set that need not be kept


@dataclass(frozen=True, eq=False, slots=True)
class Source:
    """Sets of one design flow that may give up the same should-lines."""

    group: Group
    assembled: Assembled
    finder: Finder
    measured: Measured
    may: Mask
    axes: Axes
    offset: Ints  # what giving up the lines adds to each axis
    widens: bool  # giving up each of its lines lets in chains that its limits shut out
    most_regrets: int | None


@dataclass(frozen=True, eq=False, slots=True)
class Found:
    """A chain of the front with where it was found."""

    number: int  # of its source
    source: Source
    chain: FrontChain  # figures with the offset

    @property
    def key(self) -> tuple[int, tuple[int, ...]]:
        """What tells it from the other chains of a position."""
        return self.number, self.chain.rows


def rows_of(hanging_set: HangingSet, assembled: Assembled) -> tuple[int, ...] | None:
    """Return the numbers of the items of a set, as a problem counts them; None where it has not all of them."""
    numbers: dict[tuple[Slot, PartRef], int] = {}
    wanted = {(link.slot, link.part.ref) for link in hanging_set.links}
    start = 0
    for place in assembled.places:
        for parts, rows in place.portions:
            for slot, ref in wanted:
                row = parts.row_of(ref) if parts.slot is slot else None
                at = -1 if row is None else int(np.searchsorted(rows, row))
                if row is not None and at < len(rows) and rows[at] == row:
                    numbers[slot, ref] = start + at
            start += len(rows)
    return tuple(numbers.values()) if len(numbers) == len(wanted) else None


def coarse(source: Source, share: float) -> tuple[Axes, Ints]:
    """Return axes on which a share of the largest part counts as nothing, and the gap that this leaves."""
    if share == 0.0:
        return source.axes, np.zeros(len(source.axes.adds), np.int64)
    layers = len(source.assembled.places)
    known = np.where(source.may[:, None], source.axes.figures, 0)
    most = known.max(axis=0, initial=0)
    grain = [
        max(1, math.ceil(share * int(one) / layers)) if add else 1
        for one, add in zip(most, source.axes.adds, strict=True)
    ]
    gap = np.array([one * layers if one > 1 else 0 for one in grain], np.int64)
    return source.axes.coarse(grain), gap


def shifted(chain: FrontChain, by: Ints) -> FrontChain:
    """Return a chain with other figures: those of its source with what giving up its lines adds, or the way back."""
    return replace(chain, figures=tuple(int(one) for one in np.array(chain.figures) + by))
