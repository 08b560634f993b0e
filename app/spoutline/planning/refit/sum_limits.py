"""Limits of load sums as rows of a model: only those that some way exceeds, with figures of one order of magnitude.

A search reads a load of minus 10¹² Pa as "free of this limit"; a solver with a tolerance of 10⁻⁶ would no longer see
the others beside it. So each load is raised as far as no way through its arc is lost by it, and each limit is lowered
to the greatest sum that keeps it. The ways within the limits stay the same, and cases whose ways are the same get the
same rows.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Sequence

from spoutline.frozen import frozen
from spoutline.planning.refit.arc_passes import Node
from spoutline.planning.refit.chain_arcs import ArcGraph, arc_loads
from spoutline.search.bounds import within

_MOST_SUMS = 10_000  # at one port; the ways of real stations come to some hundreds


@frozen
class SumLimit:
    """What the sum over a way must not exceed; ``loads`` has a figure for each arc of each graph."""

    limit: float
    loads: tuple[tuple[float, ...], ...]


def binding_limits(graphs: Sequence[ArcGraph], which: Iterable[int] | None = None) -> tuple[SumLimit, ...]:
    """Return the limits that some way of some graph of a case exceeds; of some of them alone where these are given."""
    return tuple(_as_row(graphs, index) for index in (exceeded_limits(graphs) if which is None else which))


def exceeded_limits(graphs: Sequence[ArcGraph]) -> list[int]:
    """Return the limits, by number, that some way of some graph exceeds."""
    limits = graphs[0].problem.limits
    held = [index for index, limit in enumerate(limits) if not math.isinf(limit)]
    greatest = [-graph.passes().least(-arc_loads(graph, held)) for graph in graphs if graph.arcs]
    return [index for at, index in enumerate(held) if any(one[at] > limits[index] for one in greatest)]


def loads_of(graph: ArcGraph, index: int) -> tuple[float, ...]:
    """Return what each arc adds to the sum of a limit."""
    return tuple(arc.item.loads[index] if arc.item is not None else 0.0 for arc in graph.arcs)


def _as_row(graphs: Sequence[ArcGraph], index: int) -> SumLimit:
    pairs = [(graph, list(loads_of(graph, index))) for graph in graphs]
    lowered = _lowered(graphs[0].problem.limits[index], pairs)
    return SumLimit(lowered, tuple(_raised(graph, of_graph, lowered) for graph, of_graph in pairs))


def _lowered(limit: float, pairs: Sequence[tuple[ArcGraph, list[float]]]) -> float:
    """Return the greatest sum of a way that keeps a limit, of all graphs; the limit itself where there are too many."""
    kept = -math.inf
    for graph, loads in pairs:
        sums = _sums_of_ways(graph, loads)
        if sums is None:
            return limit
        kept = max((total for total in sums if total > kept and within(total, limit)), default=kept)
    return limit if math.isinf(kept) else kept


def _sums_of_ways(graph: ArcGraph, loads: Sequence[float]) -> frozenset[float] | None:
    """Return every sum over a way from start to end; None where there are too many."""
    sums: dict[Node, set[float]] = defaultdict(set, {graph.root: {0.0}})
    for arc, load in zip(graph.arcs, loads, strict=True):
        after = sums[arc.end]
        after.update([total + load for total in sums[arc.start]])
        if len(after) > _MOST_SUMS:
            return None
    depth = len(graph.problem.layers)
    return frozenset(total for (layer, _), found in sums.items() if layer == depth for total in found)


def _raised(graph: ArcGraph, loads: Sequence[float], limit: float) -> tuple[float, ...]:
    """Return the loads raised until the greatest way through each arc comes to the limit, layer after layer.

    A way has one arc in each layer, so that the arcs of one layer do not meet; what a layer has gained is counted by
    the next.
    """
    raised = list(loads)
    for layer in range(len(graph.problem.layers)):
        before, behind = _greatest_from_start(graph, raised), _greatest_to_end(graph, raised)
        for number, arc in enumerate(graph.arcs):
            if arc.layer == layer and arc.start in before and arc.end in behind:
                raised[number] = max(raised[number], limit - before[arc.start] - behind[arc.end])
    return tuple(raised)


def _greatest_from_start(graph: ArcGraph, loads: Sequence[float]) -> dict[Node, float]:
    known = {graph.root: 0.0}
    for arc, load in zip(graph.arcs, loads, strict=True):
        if arc.start in known:
            reached = known[arc.start] + load
            known[arc.end] = max(known.get(arc.end, reached), reached)
    return known


def _greatest_to_end(graph: ArcGraph, loads: Sequence[float]) -> dict[Node, float]:
    depth = len(graph.problem.layers)
    known = {arc.end: 0.0 for arc in graph.arcs if arc.layer + 1 == depth}
    for arc, load in zip(reversed(graph.arcs), reversed(loads), strict=True):
        if arc.end in known:
            reached = known[arc.end] + load
            known[arc.start] = max(known.get(arc.start, reached), reached)
    return known
