"""The chain problems of a case as a graph of arcs: put an item, or nothing, on an open port of a layer."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Iterable

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import Slot
from spoutline.planning.refit.case import Case
from spoutline.search.graph import Item, Layer, Problem

Node = tuple[int, int]  # layer, open port
ALLOWANCE = 1e-6  # of a limit; rounding of sums is far smaller


@frozen
class Arc:
    """Fill ``layer`` with ``item`` (None leaves an optional layer empty) while port ``before`` is open."""

    layer: int
    before: int
    after: int
    item: Item | None
    least_minor: int
    regrets: int

    @property
    def place(self) -> tuple[Node, Node, str]:
        """What no other arc of a graph has alike: its ends and the key of its item."""
        return self.start, self.end, "" if self.item is None else self.item.key

    @property
    def start(self) -> Node:
        """The node that the arc leaves."""
        return self.layer, self.before

    @property
    def end(self) -> Node:
        """The node that the arc reaches."""
        return self.layer + 1, self.after


@frozen
class ArcGraph:
    """All ways through one chain problem that may still matter."""

    problem: Problem
    arcs: tuple[Arc, ...]

    @property
    def root(self) -> Node:
        """The node at the dispenser's outlet."""
        return 0, self.problem.start


def arc_graph(case: Case, problem: Problem, least_minor: Callable[[str], int]) -> ArcGraph:
    """Return the graph of one problem of a case; ``least_minor`` is the least that a piece may cost."""
    return graph_of(problem, lambda layer, item: _regrets_of(item, layer.name, case), least_minor)


def narrowed(graph: ArcGraph, *, most_minor: int, most_regrets: int) -> ArcGraph:
    """Return the graph without arcs that lie only on ways dearer than ``most_minor`` or with more broken shoulds.

    What then lies on no way that keeps the limits goes too.
    """

    def cost(arc: Arc) -> int:
        return arc.least_minor

    def broken(arc: Arc) -> int:
        return arc.regrets

    costs = _from_start(graph, cost), _to_end(graph, cost), cost, most_minor
    breaks = _from_start(graph, broken), _to_end(graph, broken), broken, most_regrets

    def matters(arc: Arc) -> bool:
        return all(
            arc.start in before and arc.end in behind and before[arc.start] + weight(arc) + behind[arc.end] <= most
            for before, behind, weight, most in (costs, breaks)
        )

    return within_limits(ArcGraph(graph.problem, tuple(filter(matters, graph.arcs))))


def within_limits(graph: ArcGraph) -> ArcGraph:
    """Return the graph without arcs on which no way keeps the limits, each limit looked at on its own.

    What goes for one limit may leave another without a way, so it is done until nothing goes any more. The allowance is
    wider than that of the exact judgement: no way that keeps the limits is lost.
    """
    count = -1
    while len(graph.arcs) != count:
        count = len(graph.arcs)
        for index, limit in enumerate(graph.problem.limits):
            if not math.isinf(limit):
                graph = _within_limit(graph, index, limit)
    return graph


def _within_limit(graph: ArcGraph, index: int, limit: float) -> ArcGraph:
    def load(arc: Arc) -> float:
        return arc.item.loads[index] if arc.item is not None else 0.0

    before, behind = _from_start(graph, load), _to_end(graph, load)
    most = limit + ALLOWANCE * max(1.0, abs(limit))
    kept = (
        arc
        for arc in graph.arcs
        if arc.start in before and arc.end in behind and before[arc.start] + load(arc) + behind[arc.end] <= most
    )
    return ArcGraph(graph.problem, tuple(kept))


def graph_of(problem: Problem, broken: Callable[[Layer, Item], int], least_minor: Callable[[str], int]) -> ArcGraph:
    """Return every arc that can be reached; ``broken`` gives the broken should-rules of an item in a layer."""
    arcs: list[Arc] = []
    open_ports = {problem.start}
    for number, layer in enumerate(problem.layers):
        by_entry: dict[int, list[Item]] = defaultdict(list)
        for item in layer.items:
            if item.demands <= problem.start_bears:
                by_entry[item.entry].append(item)
        after: set[int] = set()
        for port in sorted(open_ports):
            if layer.optional:
                arcs.append(Arc(number, port, port, None, 0, 0))
                after.add(port)
            for entry in sorted(problem.mates.get(port, frozenset())):
                for item in by_entry.get(entry, ()):
                    arcs.append(Arc(number, port, item.exit, item, least_minor(item.key), broken(layer, item)))
                    after.add(item.exit)
        open_ports = after
    return ArcGraph(problem, tuple(arcs))


def _regrets_of(item: Item, layer_name: str, case: Case) -> int:
    """Return the broken should-rules of an item; a layer without a name holds adaptors and splitters."""
    slots = (Slot(layer_name),) if layer_name else (Slot.ADAPTOR, Slot.SPLITTER)
    found = (case.regrets(slot, PartRef.from_key(item.key)) for slot in slots)
    return next(regrets for regrets in found if regrets is not None)


def _from_start(graph: ArcGraph, weight: Callable[[Arc], float]) -> dict[Node, float]:
    return _least({graph.root: 0}, graph.arcs, weight, lambda arc: (arc.start, arc.end))


def _to_end(graph: ArcGraph, weight: Callable[[Arc], float]) -> dict[Node, float]:
    depth = len(graph.problem.layers)
    ends: dict[Node, float] = {arc.end: 0 for arc in graph.arcs if arc.layer + 1 == depth}
    return _least(ends, reversed(graph.arcs), weight, lambda arc: (arc.end, arc.start))


def _least(
    known: dict[Node, float],
    arcs: Iterable[Arc],
    weight: Callable[[Arc], float],
    ends: Callable[[Arc], tuple[Node, Node]],
) -> dict[Node, float]:
    """Return the least sum to every node; the arcs come layer by layer in the direction of travel."""
    for arc in arcs:
        near, far = ends(arc)
        if near in known:
            reached = known[near] + weight(arc)
            known[far] = min(known.get(far, reached), reached)
    return known
