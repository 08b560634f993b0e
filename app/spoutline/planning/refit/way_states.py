"""The ways of a graph that keep its limits, told apart by states: a model needs no row for a sum then.

A state is an open port with what may still be added to each sum. Ways of like cases go through the same states, so that
every unit of a flow keeps the limits by itself, however the flow is parted into ways; and a solver sees the hull of the
ways that hold. States behind which the same is left are one. Where sums are too many, as where every near copy of
a part weighs something else, a limit stays a row.

Source: the state space of a resource-constrained path merged backwards into a reduced decision diagram (Bergman et al.,
Decision Diagrams for Optimization, 2016, chapter 3).
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Sequence

from spoutline.frozen import frozen
from spoutline.planning.refit.arc_passes import Node
from spoutline.planning.refit.chain_arcs import ArcGraph
from spoutline.search.bounds import within

_MOST_STEPS = 5_000  # of one graph before states are merged; real ones have some hundreds
_FREE = -math.inf  # whatever comes still keeps the limit
ROOT, END = 0, -1


@frozen
class Sums:
    """What adds up along the ways of a graph: a figure for each arc, and the most that they may come to."""

    most: float
    loads: tuple[float, ...]


@frozen
class Step:
    """From a state to one of the next layer by any arc of a class; a way begins at ``ROOT`` and ends at ``END``."""

    of: int
    start: int
    end: int


@frozen
class WayStates:
    """``classes`` are arcs, by number, that lead from the same states to the same; an arc in none is on no way."""

    classes: tuple[tuple[int, ...], ...]
    steps: tuple[Step, ...]

    @property
    def arcs(self) -> list[int]:
        """The arcs that are on some way, in their order."""
        return sorted(number for arcs in self.classes for number in arcs)

    def renumbered(self) -> WayStates:
        """Return the same where the arcs that are on no way are gone."""
        now = {number: place for place, number in enumerate(self.arcs)}
        return WayStates(tuple(tuple(now[one] for one in arcs) for arcs in self.classes), self.steps)


NO_WAY = WayStates((), ())
_State = tuple[float, ...]  # what the sums have come to
_Behind = tuple[tuple[int, int], ...]  # classes that lead on, and the numbers of the states that they lead to


@frozen
class _Class:
    """Arcs with the same ends and loads."""

    arcs: tuple[int, ...]
    start: Node
    end: Node
    loads: tuple[float, ...]


def way_states(graph: ArcGraph, sums: Sequence[Sums]) -> WayStates | None:
    """Return the states of all ways whose sums come to no more than they may; None where they are too many.

    Equal sets of ways give equal states, whatever the figures of the sums.
    """
    classes = _classes(graph, sums)
    layers = _spread(graph, classes, [one.most for one in sums])
    return None if layers is None else _reduced(graph, classes, layers)


def _classes(graph: ArcGraph, sums: Sequence[Sums]) -> list[_Class]:
    found: dict[tuple[Node, Node, tuple[float, ...]], list[int]] = defaultdict(list)
    for number, arc in enumerate(graph.arcs):
        found[arc.start, arc.end, tuple(one.loads[number] for one in sums)].append(number)
    return [_Class(tuple(numbers), *ends) for ends, numbers in found.items()]


_Moves = dict[tuple[Node, _State], list[tuple[int, _State]]]  # from a state by a class to another


def _spread(graph: ArcGraph, classes: Sequence[_Class], most: Sequence[float]) -> list[_Moves] | None:
    """Return, layer by layer, the states that are reached and what leads on; None where that is too much."""
    least, greatest = _still(graph, classes, len(most), min), _still(graph, classes, len(most), max)
    leaving: dict[Node, list[int]] = defaultdict(list)
    for number, one in enumerate(classes):
        if one.end in least:
            leaving[one.start].append(number)
    here = {(graph.root, (0.0,) * len(most)): None}
    layers: list[_Moves] = []
    steps = 0
    for _ in graph.problem.layers:
        moves: _Moves = {}
        after: dict[tuple[Node, _State], None] = {}
        for node, state in here:
            found = moves[node, state] = []
            for number in leaving[node]:
                one = classes[number]
                added = tuple(map(_added, state, one.loads, most, least[one.end], greatest[one.end]))
                if math.inf not in added:
                    found.append((number, added))
                    after[one.end, added] = None
            steps += len(found)
            if most and steps > _MOST_STEPS:
                return None
        layers.append(moves)
        here = after
    return layers


def _added(so_far: float, load: float, most: float, least: float, greatest: float) -> float:
    """Return a sum with one more load: infinite where it cannot be kept any more, ``_FREE`` where it always is."""
    total = so_far + load
    if not within(total + least, most):
        return math.inf
    return _FREE if total + greatest <= most else total


def _still(
    graph: ArcGraph, classes: Sequence[_Class], count: int, better: Callable[[float, float], float]
) -> dict[Node, list[float]]:
    """Return the least, or the greatest, that may still be added to each sum from every node that reaches the end."""
    depth = len(graph.problem.layers)
    known: dict[Node, list[float]] = {one.end: [0.0] * count for one in classes if one.end[0] == depth}
    for one in sorted(classes, key=lambda one: -one.start[0]):
        if one.end in known:
            behind = [load + still for load, still in zip(one.loads, known[one.end], strict=True)]
            known[one.start] = list(map(better, known.get(one.start, behind), behind))
    return known


def _reduced(graph: ArcGraph, classes: Sequence[_Class], layers: Sequence[_Moves]) -> WayStates:
    """Merge states behind which the same is left, last layer first, and number what is left from the root on."""
    depth = len(layers)
    behind: list[list[_Behind]] = [[] for _ in layers]  # of each layer, by number of the merged state
    number_of: dict[tuple[Node, _State], int] = {}
    for layer in reversed(range(depth)):
        after, number_of = number_of, {}
        known: dict[_Behind, int] = {}
        for state, moves in layers[layer].items():
            leads = [
                (of, END if layer + 1 == depth else after[classes[of].end, to])
                for of, to in moves
                if layer + 1 == depth or (classes[of].end, to) in after
            ]
            if leads:
                number_of[state] = known.setdefault(tuple(leads), len(known))
        behind[layer] = list(known)
    if not number_of:
        return NO_WAY
    return _numbered(classes, behind)


def _numbered(classes: Sequence[_Class], behind: Sequence[Sequence[_Behind]]) -> WayStates:
    """Give states their numbers as they are reached, and take classes together that lead the same ways."""
    steps: list[tuple[int, int, int]] = []
    here, count = {0: ROOT}, 1
    for of_layer in behind:
        after: dict[int, int] = {}
        for merged, number in here.items():
            for of, to in of_layer[merged]:
                if to != END and to not in after:
                    after[to] = count
                    count += 1
                steps.append((of, number, END if to == END else after[to]))
        here = after
    ways: dict[int, list[tuple[int, int]]] = defaultdict(list)
    for of, start, end in steps:
        ways[of].append((start, end))
    alike: dict[tuple[tuple[int, int], ...], list[int]] = defaultdict(list)
    for of, own in ways.items():
        alike[tuple(own)].extend(classes[of].arcs)
    ordered = sorted((min(arcs), tuple(sorted(arcs)), own) for own, arcs in alike.items())
    return WayStates(
        tuple(arcs for _, arcs, _ in ordered),
        tuple(Step(of, start, end) for of, (_, _, own) in enumerate(ordered) for start, end in own),
    )
