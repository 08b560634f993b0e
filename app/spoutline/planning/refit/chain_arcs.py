"""The chain problems of a case as a graph of arcs: put an item, or nothing, on an open port of a layer."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Sequence
from itertools import compress

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Floats
from spoutline.planning.refit.arc_passes import ArcPasses, Node
from spoutline.search.graph import Item, Problem

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

    def passes(self) -> ArcPasses:
        """Return what passes over the arcs."""
        return ArcPasses(self.root, [(arc.start, arc.end) for arc in self.arcs], len(self.problem.layers))


def narrowed(graph: ArcGraph, *, most_minor: int, most_regrets: int) -> ArcGraph:
    """Return the graph without arcs that lie only on ways dearer than ``most_minor`` or with more broken shoulds.

    What then lies on no way that keeps the limits goes too.
    """
    figures = np.array([(arc.least_minor, arc.regrets) for arc in graph.arcs], np.float64).reshape(-1, 2)
    return _kept(graph, figures, [most_minor, most_regrets])


def within_limits(graph: ArcGraph) -> ArcGraph:
    """Return the graph without arcs on which no way keeps the limits, each limit looked at on its own.

    What goes for one limit may leave another without a way, so it is done until nothing goes any more. The allowance is
    wider than that of the exact judgement: no way that keeps the limits is lost.
    """
    return _kept(graph, np.zeros((len(graph.arcs), 0)), [])


def _kept(graph: ArcGraph, figures: Floats, most: Sequence[float]) -> ArcGraph:
    """Return the graph without arcs on which no way keeps the limits, or has a sum of a figure within ``most``."""
    held = [index for index, limit in enumerate(graph.problem.limits) if not math.isinf(limit)]
    limits = np.array([graph.problem.limits[index] for index in held])
    allowed = np.concatenate([limits + ALLOWANCE * np.maximum(1.0, np.abs(limits)), most])
    figures = np.column_stack([arc_loads(graph, held), figures])
    while graph.arcs:
        keeps = np.asarray((graph.passes().through(figures) <= allowed).all(axis=1))
        if keeps.all():
            break
        graph, figures = ArcGraph(graph.problem, tuple(compress(graph.arcs, keeps.tolist()))), figures[keeps]
    return graph


def arc_loads(graph: ArcGraph, which: Sequence[int]) -> Floats:
    """Return what each arc adds to some of the limits' sums: a row for each arc, a column for each limit."""
    nothing = (0.0,) * len(graph.problem.limits)
    loads = np.array([nothing if arc.item is None else arc.item.loads for arc in graph.arcs], np.float64)
    return loads.reshape(len(graph.arcs), len(nothing))[:, list(which)]


def graph_of(problem: Problem, figures: Callable[[int, Item], tuple[int, int]]) -> ArcGraph:
    """Return every arc that can be reached.

    ``figures`` gives, of an item in a layer by its number, the least that a piece may cost and its broken should-rules.
    """
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
                    arcs.append(Arc(number, port, item.exit, item, *figures(number, item)))
                    after.add(item.exit)
        open_ports = after
    return ArcGraph(problem, tuple(arcs))
