"""A chain to be filled: layers of items joined by ports, each item with a cost and additive loads."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import field

from spoutline.frozen import frozen

NO_PORT = -1  # the open end after the last item of a chain
MAJOR = 10**20  # a part of a cost that outweighs any sum of what is less: whole multiples come first


@frozen
class Item:
    """One thing that may fill a layer.

    Parameters
    ----------
    key
        Identity, unique within the layer; also the tie-break, so that row order never decides.
    cost
        Whole number; the least sum is wanted. May hold whole multiples of ``MAJOR``.
    entry, exit
        Port numbers towards the start and the end of the chain.
    loads
        One figure per limit of the problem; they add up along the chain and may be negative.
    bears, demands
        What the item stands, and what it asks every other item (and the start) to stand.
    """

    key: str
    cost: int
    entry: int
    exit: int
    loads: tuple[float, ...]
    bears: float = math.inf
    demands: float = 0.0


@frozen
class Layer:
    """One place in the chain. An optional layer may stay empty; its neighbours then meet directly.

    ``items`` is a tuple, or a table that makes items when they are asked for.
    """

    name: str
    items: Sequence[Item]
    optional: bool = False


@frozen
class Problem:
    """Layers in order, the open port at the start, which ports meet, and the upper limits of the load sums.

    ``mates`` maps an exit port to the entry ports that it meets. Lower limits are written as negated loads.
    """

    start: int
    layers: tuple[Layer, ...]
    mates: Mapping[int, frozenset[int]]
    limits: tuple[float, ...]
    start_bears: float = math.inf


@frozen
class Path:
    """A complete chain: one item per layer, None where an optional layer stays empty."""

    cost: int
    items: tuple[Item | None, ...] = field(default_factory=tuple)

    @property
    def keys(self) -> tuple[str, ...]:
        """Keys of the items in chain order, empty layers left out."""
        return tuple(item.key for item in self.items if item is not None)


def divided(cost: int) -> tuple[int, int]:
    """Return the whole multiples of ``MAJOR`` in a cost, and the rest, which may be negative."""
    major = (cost + MAJOR // 2) // MAJOR
    return major, cost - major * MAJOR
