"""What the parts bought for a station cost at the quantities of all together, and how many part numbers they are."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence

from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.refit import StockFigures
from spoutline.planning.refit.case import Case
from spoutline.planning.refit.ladders import Ladder


def bought_in(case: Case, hanging_set: HangingSet) -> tuple[PartRef, ...]:
    """Return the parts of a set that are bought: what hangs there and stays is neither bought nor stocked."""
    return tuple(part for part in hanging_set.refs if part not in case.installed)


def figures_of(
    sets: Sequence[Sequence[PartRef]], positions: Sequence[int], ladder: Callable[[str], Ladder]
) -> StockFigures:
    """Return what the parts bought cost, each set for its number of positions, at the quantities of all together."""
    pieces: Counter[str] = Counter()
    for parts, count in zip(sets, positions, strict=True):
        for part in parts:
            pieces[part.key] += count
    cost = sum(price_at(ladder(key), quantity) * quantity for key, quantity in pieces.items())
    return StockFigures(sets_minor=cost, part_numbers=len(pieces))


def price_at(ladder: Ladder, quantity: int) -> int:
    """Return the price of one piece at a quantity; below the first step the first step holds."""
    return next((price for start, price in reversed(ladder) if start <= quantity), ladder[0][1])
