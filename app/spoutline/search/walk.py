"""Exact best-first walk: complete chains, cheapest first, within the limits."""

from __future__ import annotations

import heapq
from collections.abc import Iterator

from spoutline.frozen import frozen
from spoutline.search.bounds import Bounds, ToCome, backward, within
from spoutline.search.dominance import Frontier, Standing, reduced
from spoutline.search.effort import Effort
from spoutline.search.graph import Item, Path, Problem
from spoutline.search.listener import Listener

_ASK_EVERY = 64  # labels between two questions to the listener
_PAIRS_EACH = 4_096  # that columns look at while one label is expanded here


@frozen
class _Step:
    """One way on from a state: an item, or None to leave an optional layer empty, which has no name."""

    item: Item | None
    name: str
    promise: int  # own cost plus the least still to come
    exit: int
    rest: ToCome


@frozen
class _Label:
    """A chain filled up to ``layer`` (exclusive)."""

    layer: int
    port: int
    cost: int
    loads: tuple[float, ...]
    bears: float
    demands: float
    items: tuple[Item | None, ...]
    names: tuple[str, ...]


class _Walk:
    """State of one walk: the bounds and the ordered ways on from each (layer, port), built when first needed."""

    def __init__(self, problem: Problem, bounds: Bounds) -> None:
        self.problem = problem
        self.bounds = bounds
        self._steps: dict[tuple[int, int], tuple[_Step, ...]] = {}
        self._by_entry: dict[int, dict[int, list[Item]]] = {}

    def _items_by_entry(self, layer: int) -> dict[int, list[Item]]:
        if layer not in self._by_entry:
            gathered: dict[int, list[Item]] = {}
            for item in self.problem.layers[layer].items:
                gathered.setdefault(item.entry, []).append(item)
            self._by_entry[layer] = gathered
        return self._by_entry[layer]

    def steps(self, layer: int, port: int) -> tuple[_Step, ...]:
        """Return the ways on, cheapest promise first; sorted once per (layer, port)."""
        known = self._steps.get((layer, port))
        if known is not None:
            return known
        found: list[_Step] = []
        if self.problem.layers[layer].optional:
            rest = self.bounds.at[layer + 1].get(port)
            if rest is not None:
                found.append(_Step(None, "", rest.cost, port, rest))
        by_entry = self._items_by_entry(layer)
        for entry in self.problem.mates.get(port, frozenset()):
            for item in by_entry.get(entry, ()):
                rest = self.bounds.after(layer, item)
                if rest is not None:
                    found.append(_Step(item, item.key, item.cost + rest.cost, item.exit, rest))
        found.sort(key=lambda step: (step.promise, step.name))
        self._steps[layer, port] = tuple(found)
        return self._steps[layer, port]

    def admits(self, label: _Label, step: _Step) -> bool:
        """Say whether the chain can still end within the limits after this step. Called once per step looked at."""
        item = step.item
        if item is not None and (item.bears < label.demands or label.bears < item.demands):
            return False
        own = item.loads if item is not None else None
        for index, limit in enumerate(self.problem.limits):
            load = label.loads[index] + step.rest.loads[index] + (own[index] if own is not None else 0.0)
            if not within(load, limit):
                return False
        return True

    def next_step(self, label: _Label, rank: int) -> int | None:
        """Return the rank of the first admissible way on from ``rank`` upwards; None where there is none."""
        steps = self.steps(label.layer, label.port)
        for candidate in range(rank, len(steps)):
            if self.admits(label, steps[candidate]):
                return candidate
        return None

    def take(self, label: _Label, step: _Step) -> _Label:
        """Return the label after ``step``."""
        item = step.item
        items, names = (*label.items, item), (*label.names, step.name)
        if item is None:
            return _Label(label.layer + 1, step.exit, label.cost, label.loads, label.bears, label.demands, items, names)
        return _Label(
            label.layer + 1,
            step.exit,
            label.cost + item.cost,
            tuple(so_far + own for so_far, own in zip(label.loads, item.loads, strict=True)),
            min(label.bears, item.bears),
            max(label.demands, item.demands),
            items,
            names,
        )


def best_first(problem: Problem, listener: Listener | None = None, most_labels: int | None = None) -> Iterator[Path]:
    """Yield every complete chain within the limits, cheapest first.

    Each state keeps one place in the queue: when its cheapest way on is taken, the next one replaces it, so the queue
    grows with the number of expanded labels and never with the number of items.

    Parameters
    ----------
    problem
        The chain to fill; the order of rows does not matter.
    listener
        Watches and may stop the walk.
    most_labels
        Labels that may be expanded; None for as many as the listener's work allows.

    Yields
    ------
    Path
        Equal costs come in the order of their keys along the chain, an empty layer before any key.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    Exhausted
        If more labels would have to be expanded.
    """
    return _walked(problem, Effort(listener or Listener(), most_labels), None)


def cheapest(
    problem: Problem, listener: Listener | None = None, most_labels: int | None = None, most_cost: int | None = None
) -> Path | None:
    """Return the first chain of ``best_first``; None where no chain exists, or none that costs ``most_cost`` at most.

    Chains that another dominates are not followed, so that a problem without a chain is known as such soon: its cost
    grows with the number of unlike sums of the binding loads, not with the number of chains. The items of the path
    carry the loads of those limits only that can bind.

    Parameters and errors are those of ``best_first``.
    """
    return cheapest_of_reduced(reduced(problem), listener, most_labels, most_cost)


def cheapest_of_reduced(
    problem: Problem, listener: Listener | None = None, most_labels: int | None = None, most_cost: int | None = None
) -> Path | None:
    """Return the same of a problem without the items that another dominates, and without limits that cannot bind.

    Parameters and errors are those of ``best_first``.
    """
    return next(_walked(problem, Effort(listener or Listener(), most_labels), {}, most_cost), None)


def _walked(
    problem: Problem,
    effort: Effort,
    frontiers: dict[tuple[int, int], Frontier] | None,
    most_cost: int | None = None,
) -> Iterator[Path]:
    """Walk best-first up to a cost; with ``frontiers`` labels that another at the same state dominates are dropped.

    Equal promises are taken up by their keys so far, so that of equal chains, and of equal labels at a state, the first
    by its keys is met first.
    """
    walk = _Walk(problem, backward(problem))
    if problem.start not in walk.bounds.at[0]:
        return
    depth = len(problem.layers)
    root = _Label(0, problem.start, 0, (0.0,) * len(problem.limits), problem.start_bears, 0.0, (), ())
    queue: list[tuple[int, tuple[str, ...], int, _Label]] = []  # promise, keys (no two alike), rank

    def enqueue(label: _Label, rank: int) -> None:
        found = walk.next_step(label, rank)
        if found is not None:
            step = walk.steps(label.layer, label.port)[found]
            if most_cost is not None and label.cost + step.promise > most_cost:
                return
            heapq.heappush(queue, (label.cost + step.promise, (*label.names, step.name), found, label))

    def is_dominated(label: _Label) -> bool:
        if frontiers is None:
            return False
        standing = Standing(label.cost, label.loads, label.bears, label.demands)
        return not frontiers.setdefault((label.layer, label.port), Frontier()).admits(standing)

    effort.spend(0)
    enqueue(root, 0)
    expanded = 0
    while queue:
        _, _, rank, label = heapq.heappop(queue)
        expanded += 1
        if expanded % _ASK_EVERY == 0:
            effort.spend(_ASK_EVERY)
            effort.look(_ASK_EVERY * _PAIRS_EACH)
        child = walk.take(label, walk.steps(label.layer, label.port)[rank])
        enqueue(label, rank + 1)
        if child.layer == depth:
            yield Path(child.cost, child.items)
        elif not is_dominated(child):
            enqueue(child, 0)
