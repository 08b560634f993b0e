"""What need not be looked at when only the cheapest chain is wanted: idle limits, dominated items, dominated labels."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from spoutline.search.graph import Item, Layer, Problem


@dataclass(frozen=True, slots=True)
class Standing:
    """What decides whether one thing can take the place of another: less of everything but strength."""

    cost: int
    loads: tuple[float, ...]
    bears: float
    demands: float

    def dominates(self, other: Standing) -> bool:
        """Say whether whatever ends well after ``other`` ends as well, and no dearer, after this."""
        return (
            self.cost <= other.cost
            and self.bears >= other.bears
            and self.demands <= other.demands
            and all(own <= theirs for own, theirs in zip(self.loads, other.loads, strict=True))
        )


def standing_of(item: Item) -> Standing:
    """Return the standing of an item."""
    return Standing(item.cost, item.loads, item.bears, item.demands)


@dataclass(slots=True)
class Frontier:
    """The standings met at one state that nothing met before dominates."""

    met: list[Standing] = field(default_factory=list)

    def admits(self, standing: Standing) -> bool:
        """Take ``standing`` in and return True, or return False where something met before dominates it."""
        if any(known.dominates(standing) for known in self.met):
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
    kept = tuple(index for index, limit in enumerate(problem.limits) if _can_exceed(problem, index, limit))
    return Problem(
        problem.start,
        tuple(
            Layer(layer.name, tuple(_kept_items(layer, kept, is_whole=place == whole_layer)), layer.optional)
            for place, layer in enumerate(problem.layers)
        ),
        problem.mates,
        tuple(problem.limits[index] for index in kept),
        problem.start_bears,
    )


def _kept_items(layer: Layer, limits: tuple[int, ...], *, is_whole: bool) -> Iterable[Item]:
    items = _with_loads(layer.items, limits)
    return items if is_whole else _not_dominated(items)


def _can_exceed(problem: Problem, index: int, limit: float) -> bool:
    most = 0.0
    for layer in problem.layers:
        loads = [item.loads[index] for item in layer.items]
        if layer.optional:
            loads.append(0.0)
        most += max(loads, default=0.0)
    return most > limit


def _with_loads(items: Sequence[Item], kept: tuple[int, ...]) -> Iterable[Item]:
    return (
        Item(
            item.key,
            item.cost,
            item.entry,
            item.exit,
            tuple(item.loads[index] for index in kept),
            item.bears,
            item.demands,
        )
        for item in items
    )


def _not_dominated(items: Iterable[Item]) -> Iterable[Item]:
    frontiers: dict[tuple[int, int], Frontier] = {}
    for item in sorted(items, key=lambda one: (one.cost, one.key)):
        if frontiers.setdefault((item.entry, item.exit), Frontier()).admits(standing_of(item)):
            yield item
