"""What need not be looked at when only the cheapest chain is wanted: idle limits, dominated items, dominated labels."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from spoutline.frozen import frozen
from spoutline.search.graph import Item, Layer, Problem
from spoutline.search.item_table import ItemTable


@frozen
class Standing:
    """What decides whether one thing can take the place of another: less of everything but strength."""

    cost: int
    loads: tuple[float, ...]
    bears: float
    demands: float

    def dominates(self, other: Standing) -> bool:
        """Say whether whatever ends well after ``other`` ends as well, and no dearer, after this."""
        if self.cost > other.cost or self.bears < other.bears or self.demands > other.demands:
            return False
        # a loop, since this is asked more often than anything else and mostly ends at the first load
        for own, theirs in zip(self.loads, other.loads, strict=True):  # noqa: SIM110
            if own > theirs:
                return False
        return True


@dataclass(slots=True)
class Frontier:
    """The standings met at one state that nothing met before dominates."""

    met: list[Standing] = field(default_factory=list)

    def admits(self, standing: Standing) -> bool:
        """Take ``standing`` in and return True, or return False where something met before dominates it."""
        for known in self.met:
            if known.dominates(standing):
                return False
        self.met.append(standing)
        return True


def reduced(problem: Problem, whole_layer: int | None = None) -> Problem:
    """Return a smaller problem with a cheapest chain of the same cost, or none exactly where ``problem`` has none.

    Limits that no chain can exceed are left out, and so is every item that another of its layer with the same ports
    dominates. The order of rows does not matter: of equals the first key stays.

    Parameters
    ----------
    problem
        The chain to fill.
    whole_layer
        A layer that keeps all its items, because each of them will be asked for by itself.
    """
    most = [_most_loads(layer, len(problem.limits)) for layer in problem.layers]
    limits = tuple(
        index
        for index, limit in enumerate(problem.limits)
        if limit < math.inf and sum(one[index] for one in most) > limit
    )
    known: dict[tuple[int, ...], tuple[Item, ...]] = {}
    layers = []
    for place, layer in enumerate(problem.layers):
        if place == whole_layer:
            items = tuple(_with_loads(item, _loads_of(item, limits)) for item in layer.items)
        else:
            # what may come between two slots is mostly the same everywhere: the same objects need one look
            same = tuple(map(id, layer.items))
            if same not in known:
                known[same] = tuple(_not_dominated(layer.items, limits))
            items = known[same]
        layers.append(Layer(layer.name, items, layer.optional))
    return Problem(
        problem.start,
        tuple(layers),
        problem.mates,
        tuple(problem.limits[index] for index in limits),
        problem.start_bears,
    )


def _most_loads(layer: Layer, count: int) -> list[float]:
    """Return the most that a layer adds to each of so many loads."""
    items = layer.items
    if isinstance(items, ItemTable) and len(items):
        most: list[float] = items.loads.max(axis=0).tolist()
    else:
        most = [max((item.loads[index] for item in items), default=0.0) for index in range(count)]
    return [max(load, 0.0) for load in most] if layer.optional else most


def _loads_of(item: Item, limits: tuple[int, ...]) -> tuple[float, ...]:
    loads = item.loads
    return tuple([loads[index] for index in limits])


def _with_loads(item: Item, loads: tuple[float, ...]) -> Item:
    return Item(item.key, item.cost, item.entry, item.exit, loads, item.bears, item.demands)


def _not_dominated(items: Sequence[Item], limits: tuple[int, ...]) -> Iterator[Item]:
    """Yield the items that no other dominates, with the loads of ``limits`` alone, cheapest first."""
    frontiers: dict[tuple[int, int], Frontier] = {}
    for item in sorted(items, key=_by_cost):
        loads = _loads_of(item, limits)
        standing = Standing(item.cost, loads, item.bears, item.demands)
        ports = (item.entry, item.exit)
        frontier = frontiers.get(ports)
        if frontier is None:
            frontier = frontiers[ports] = Frontier()
        if frontier.admits(standing):
            yield _with_loads(item, loads)


def _by_cost(item: Item) -> tuple[int, str]:
    return item.cost, item.key
