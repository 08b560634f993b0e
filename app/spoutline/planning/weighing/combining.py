"""Fronts of several positions put together: the price of all against one other figure."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Ints, Mask

MOST_POINTS = 4_000  # kept from one position to the next


@frozen
class Choosable:
    """What one of several groups can take: ``points`` are price and other figure of each, for ``count`` positions."""

    points: tuple[tuple[int, int], ...]
    count: int


@frozen
class Combined:
    """Combinations that no other outdoes: price, other figure and which point each group takes.

    ``gap`` says by how much a combination with the same other figure could at most be cheaper; 0 where none was left
    out.
    """

    price: Ints
    other: Ints
    choices: Ints
    gap: int


def combined(groups: Sequence[Choosable], *, adds: bool, most_points: int = MOST_POINTS) -> Combined:
    """Return the combinations of one point of each group that no other combination outdoes.

    Prices add up; so do the other figures where ``adds``, otherwise the greatest of them counts. Where more than
    ``most_points`` would have to be kept, those that others stand for at the least loss of price are left out, and the
    losses of all groups together are the gap.
    """
    price, other = np.zeros(1, np.int64), np.zeros(1, np.int64)
    choices, gap = np.zeros((1, 0), np.int64), 0
    for group in groups:
        own = np.array(group.points, np.int64).reshape(-1, 2)
        times = group.count
        every = (price[:, None] + times * own[:, 0]).ravel()
        more = own[:, 1]
        both = other[:, None] + times * more if adds else np.maximum(other[:, None], more)
        before, point = np.divmod(np.arange(len(every)), max(1, len(own)))
        kept = _lower_left(every, both.ravel())
        kept, lost = _thinned(every, kept, most_points)
        gap += lost
        price, other = every[kept], both.ravel()[kept]
        choices = np.concatenate([choices[before[kept]], point[kept][:, None]], axis=1)
    return Combined(price, other, choices, gap)


def _lower_left(price: Ints, other: Ints) -> Ints:
    """Return the places that no other outdoes, the least other figure first; of equals the first."""
    order = np.lexsort((np.arange(len(price)), price, other))
    if not len(order):
        return order
    cheapest = np.minimum.accumulate(price[order])
    better: Mask = np.ones(len(order), np.bool_)
    better[1:] = price[order][1:] < cheapest[:-1]
    return order[better]


def _thinned(price: Ints, places: Ints, most: int) -> tuple[Ints, int]:
    """Return at most so many of places whose prices fall, and what leaving out the others may lose in price.

    A place that is left out has one before it, no more in the other figure and dearer by the loss at most.
    """
    if len(places) <= most:
        return places, 0
    low, high = 0, int(price[places[0]] - price[places[-1]])
    while low < high:
        middle = (low + high) // 2
        if len(_standing(price, places, middle)) <= most:
            high = middle
        else:
            low = middle + 1
    return _standing(price, places, low), low


def _standing(price: Ints, places: Ints, loss: int) -> Ints:
    falling = price[places]
    kept, at = [], 0
    while at < len(places):
        kept.append(at)
        at = int(np.searchsorted(-falling, loss - falling[at], side="right"))
    return places[np.array(kept, np.int64)]
