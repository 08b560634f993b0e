"""Chains that hold one given item: what does not depend on the item is worked out once for its whole layer."""

from __future__ import annotations

from collections.abc import Container
from dataclasses import replace

from spoutline.search.bounds import backward, before_entries, forward, within
from spoutline.search.dominance import reduced
from spoutline.search.finder import Finder
from spoutline.search.graph import Layer, Path, Problem
from spoutline.search.listener import Listener


def holding(problem: Problem, layer: int, key: str) -> Problem | None:
    """Return the problem whose ``layer`` holds the item ``key`` and nothing else; None where it has no such item."""
    return _holding_one_of(problem, layer, {key})


def _holding_one_of(problem: Problem, layer: int, keys: Container[str]) -> Problem | None:
    """Return the problem whose ``layer`` holds one of the items ``keys``; None where it has none of them."""
    items = tuple(one for one in problem.layers[layer].items if one.key in keys)
    if not items:
        return None
    layers = list(problem.layers)
    layers[layer] = Layer(layers[layer].name, items)
    return replace(problem, layers=tuple(layers))


class ThroughLayer:
    """Answers for each item of one layer by itself.

    Parameters
    ----------
    problem
        The chain to fill.
    layer
        Place of the layer in the chain. Where it is optional, only chains that fill it count.
    """

    def __init__(self, problem: Problem, layer: int) -> None:
        self.layer = layer
        self._problem = reduced(problem, whole_layer=layer)

    def least_costs(self) -> dict[str, int]:
        """Return, by item, a cost that no chain through it goes below; items that no chain can hold are left out.

        One pass forward and one backward. Each limit is looked at by itself, so an item that is named may still turn
        out to be in no chain.
        """
        problem = self._problem
        entries = before_entries(problem, forward(problem, self.layer))
        bounds = backward(problem)
        least: dict[str, int] = {}
        for item in problem.layers[self.layer].items:
            so_far, rest = entries.get(item.entry), bounds.after(self.layer, item)
            if so_far is None or rest is None or item.demands > problem.start_bears:
                continue
            through = so_far.with_item(item)
            loads = (one + still for one, still in zip(through.loads, rest.loads, strict=True))
            if all(map(within, loads, problem.limits)):
                least[item.key] = through.cost + rest.cost
        return least

    def cheapest(self, key: str, listener: Listener | None = None) -> Path | None:
        """Return a cheapest chain through the item ``key``; None where no chain holds it.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        problem = holding(self._problem, self.layer, key)
        return None if problem is None else Finder(problem).cheapest(listener)

    def cheapest_of(
        self, keys: Container[str], listener: Listener | None = None, most_cost: int | None = None
    ) -> Path | None:
        """Return a cheapest chain through any of the items ``keys``; None where no chain holds one of them.

        It is one search, however many they are. With ``most_cost``, chains that cost more are left out.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        problem = _holding_one_of(self._problem, self.layer, keys)
        return None if problem is None else Finder(problem).cheapest(listener, most_cost)
