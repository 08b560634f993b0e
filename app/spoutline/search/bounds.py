"""Passes over a chain problem: per layer and open port, the least cost and loads still to come, or so far."""

from __future__ import annotations

import math

from spoutline.frozen import frozen
from spoutline.search.graph import NO_PORT, Item, Layer, Problem


@frozen
class ToCome:
    """Least cost and least loads from a state to the end of the chain, each taken on its own; never too high."""

    cost: int
    loads: tuple[float, ...]


@frozen
class Bounds:
    """``at[layer][port]`` for every open port from which the end can be reached at all."""

    at: tuple[dict[int, ToCome], ...]

    def after(self, layer: int, item: Item) -> ToCome | None:
        """Return what is still to come once ``item`` fills ``layer``; None where the chain cannot be ended."""
        return self.at[layer + 1].get(item.exit)


def _least(one: ToCome | None, other: ToCome) -> ToCome:
    if one is None:
        return other
    return ToCome(min(one.cost, other.cost), tuple(map(min, one.loads, other.loads)))


def _per_entry(layer: Layer, after: dict[int, ToCome]) -> dict[int, ToCome]:
    """Gather the items by entry port, so that the work grows with the number of items, not with pairs of them."""
    gathered: dict[int, tuple[int, list[float]]] = {}
    for item in layer.items:
        rest = after.get(item.exit)
        if rest is None:
            continue
        cost = item.cost + rest.cost
        loads = [own + still for own, still in zip(item.loads, rest.loads, strict=True)]
        known = gathered.get(item.entry)
        if known is None:
            gathered[item.entry] = (cost, loads)
            continue
        least = known[1]
        for index, load in enumerate(loads):
            least[index] = min(least[index], load)
        if cost < known[0]:
            gathered[item.entry] = (cost, least)
    return {entry: ToCome(cost, tuple(loads)) for entry, (cost, loads) in gathered.items()}


def backward(problem: Problem) -> Bounds:
    """Compute the bounds for every layer, last to first.

    Parameters
    ----------
    problem
        The chain to fill.

    Returns
    -------
    Bounds
        ``at[0]`` holds the start port exactly when some chain of meeting ports exists, limits left aside.
    """
    nothing = ToCome(0, (0.0,) * len(problem.limits))
    exits = {problem.start, NO_PORT} | {item.exit for layer in problem.layers for item in layer.items}
    # The last item must close the chain, or end on any port: nothing is still to come in either case.
    at: list[dict[int, ToCome]] = [dict.fromkeys(exits, nothing)]
    for layer in reversed(problem.layers):
        after = at[-1]
        entries = _per_entry(layer, after)
        here: dict[int, ToCome] = {}
        for port in exits:
            best = after.get(port) if layer.optional else None
            for entry in problem.mates.get(port, frozenset()):
                option = entries.get(entry)
                if option is not None:
                    best = _least(best, option)
            if best is not None:
                here[port] = best
        at.append(here)
    at.reverse()
    return Bounds(tuple(at))


@frozen
class SoFar:
    """Least cost and least loads from the start of the chain to a state, each taken on its own; never too high."""

    cost: int
    loads: tuple[float, ...]

    def with_item(self, item: Item) -> SoFar:
        """Return what is needed once ``item`` is added."""
        return SoFar(self.cost + item.cost, tuple(one + own for one, own in zip(self.loads, item.loads, strict=True)))


def forward(problem: Problem, layers: int) -> dict[int, SoFar]:
    """Return, for every port that may be open after the first ``layers`` layers, the least that leads there."""
    here = {problem.start: SoFar(0, (0.0,) * len(problem.limits))}
    for layer in problem.layers[:layers]:
        entries = before_entries(problem, here)
        after = dict(here) if layer.optional else {}
        for item in layer.items:
            so_far = entries.get(item.entry)
            if so_far is not None:
                after[item.exit] = _lesser(after.get(item.exit), so_far.with_item(item))
        here = after
    return here


def before_entries(problem: Problem, open_ports: dict[int, SoFar]) -> dict[int, SoFar]:
    """Return, for every entry port that meets an open port, the least that leads to it."""
    entries: dict[int, SoFar] = {}
    for port, so_far in open_ports.items():
        for entry in problem.mates.get(port, frozenset()):
            entries[entry] = _lesser(entries.get(entry), so_far)
    return entries


def _lesser(one: SoFar | None, other: SoFar) -> SoFar:
    if one is None:
        return other
    return SoFar(min(one.cost, other.cost), tuple(map(min, one.loads, other.loads)))


def within(load: float, limit: float) -> bool:
    """Say whether a load sum keeps its limit; sums of floats get a relative allowance of 1e-9."""
    return load <= limit or math.isclose(load, limit, rel_tol=1e-9, abs_tol=1e-9)
