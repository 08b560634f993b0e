"""A complete chain by the numbers of its items, and which of several as cheap comes first by names."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import Protocol

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.demand_bands import Part
from spoutline.search.enumeration import EMPTY, Chains
from spoutline.search.item_table import Ints

_MANY = 64  # chains as cheap, which are no longer kept to be put in order


class Named(Protocol):
    """Names of items by their number."""

    def __getitem__(self, row: int, /) -> str:
        """Return the name of an item."""
        ...

    def places(self, rows: Ints, /) -> Ints:
        """Return, for each of some items, a number that grows with its name among those of its layer."""
        ...


@frozen
class Chain:
    """A complete chain; ``rows`` are numbers of items as ``Columns.row`` counts them, ``EMPTY`` for an empty layer."""

    major: int
    cost: int
    rows: tuple[int, ...]


@dataclass
class Equals:
    """The cheapest chains met so far; ``are_all`` says whether none of them was left out because they were many."""

    met: list[tuple[Part, Chains]] = field(default_factory=list)
    cost: float = math.inf
    are_all: bool = True

    def take_in(self, cost: int, part: Part, found: Chains) -> None:
        """Take in some chains, the cheapest of which cost so much."""
        if cost > self.cost:
            return
        if cost < self.cost:
            self.met, self.cost = [], cost
        equal = found.cost == cost
        self.met.append((part, Chains(found.cost[equal], found.items[equal])))
        self.are_all = self.are_all and sum(len(some) for _, some in self.met) <= _MANY


def named(rows: tuple[int, ...], names: Named) -> tuple[str, ...]:
    """Return the names along a chain, an empty one for an empty layer."""
    return tuple("" if row == EMPTY else names[row] for row in rows)


def chain_of(part: Part, found: Chains, at: int) -> Chain:
    """Return one of the chains found in a part of the problem."""
    rows = part.columns.row
    return Chain(0, int(found.cost[at]), tuple(EMPTY if it == EMPTY else int(rows[it]) for it in found.items[at]))


def first_by_names(some: list[tuple[Part, Chains]], names: Named) -> Chain | None:
    """Return the cheapest of some chains, of equals the first by names; None for none."""
    least = min((int(found.cost.min()) for _, found in some), default=0)
    firsts = []
    for part, found in some:
        equal = found.items[found.cost == least]
        if len(equal):
            used, at = np.unique(equal, return_inverse=True)
            is_item = used != EMPTY
            places = np.where(is_item, 0, EMPTY)
            places[is_item] = names.places(part.columns.row[used[is_item]])
            first = np.lexsort(places[at.reshape(equal.shape)].T[::-1])[0]
            firsts.append(chain_of(part, Chains(np.array([least]), equal[[first]]), 0))
    return min(firsts, key=lambda chain: named(chain.rows, names), default=None)
