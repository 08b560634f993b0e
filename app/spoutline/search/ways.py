"""The walk over plain rows: complete chains, cheapest first, each label told by what a chain so far has and lacks.

Rows are tuples and their figures lists: a problem of some dozens of items is read, bounded and walked through in the
time that it would take to make values of them.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterable, Iterator, Mapping, Sequence
from math import inf
from operator import add, gt, itemgetter, le
from typing import Any

from spoutline.frozen import frozen
from spoutline.search.bounds import within
from spoutline.search.effort import Effort

_ASK_EVERY = 64  # labels between two questions to the listener
_PAIRS_EACH = 4_096  # that columns look at while one label is expanded here

Name = str | int  # tells items of one layer apart, and which of equals comes first
# name, cost, entry, exit, loads, what it bears and demands, what it stands for
Row = tuple[Name, int, int, int, Sequence[float], float, float, Any]
_ToCome = tuple[int, Sequence[float]]  # least cost and least loads to the end of the chain, each taken on its own
# promise, name, row or None to stay empty, exit, loads to come
_Step = tuple[int, Name, Row | None, int, Sequence[float]]
# layer to fill, open port, cost, loads, what all bear, what any demands, what was chosen, names so far
_Label = tuple[int, int, int, Sequence[float], float, float, tuple[Any, ...], tuple[Name, ...]]
_Standing = tuple[int, float, float, Sequence[float]]  # cost, bears, demands, loads
_PROMISED = itemgetter(0, 1)


@frozen
class Ways:
    """A chain problem as plain rows.

    Parameters
    ----------
    start, start_bears
        Open port at the start, and what is borne there.
    layers
        The rows of each, and whether it may stay empty.
    mates
        By exit the entries that it meets.
    limits
        Upper limits of the load sums.
    no_name
        Stands for an empty layer among the names: it comes before any.
    """

    start: int
    layers: Sequence[tuple[Sequence[Row], bool]]
    mates: Mapping[int, Iterable[int]]
    limits: Sequence[float]
    no_name: Name
    start_bears: float = inf


def walked(
    ways: Ways, effort: Effort, most_cost: int | None = None, *, every: bool
) -> Iterator[tuple[int, tuple[Any, ...]]]:
    """Yield cost and content of the chains within the limits, cheapest first; None stands for an empty layer.

    Equal promises are taken up by their names so far, so that of equal chains, and of equal labels at a state, the
    first by its names is met first. Each state keeps one place in the queue: when its cheapest way on is taken, the
    next one replaces it, so that the queue grows with the labels that are expanded and never with the number of rows.

    Parameters
    ----------
    ways
        The chain to fill.
    effort
        Counts labels, and ends the walk.
    most_cost
        Chains that cost more are left out.
    every
        Whether every chain is wanted; without it labels that another at the same state outdoes are not followed.

    Raises
    ------
    Cancelled, Exhausted
        As of ``Effort``.
    """
    walk = _Walk(ways)
    if ways.start not in walk.to_come[0]:
        return
    depth, next_step = len(ways.layers), walk.next_step
    queue: list[tuple[int, tuple[Name, ...], int, _Step, _Label]] = []  # promise, names (no two alike), rank
    met: dict[tuple[int, int], list[_Standing]] = {}

    def enqueue(label: _Label, rank: int) -> None:
        found = next_step(label, rank)
        if found is None:
            return
        at, step = found
        promise = label[2] + step[0]
        if most_cost is None or promise <= most_cost:
            heapq.heappush(queue, (promise, (*label[7], step[1]), at, step, label))

    effort.spend(0)
    enqueue((0, ways.start, 0, (0.0,) * len(ways.limits), ways.start_bears, 0.0, (), ()), 0)
    expanded = 0
    while queue:
        _, _, rank, step, label = heapq.heappop(queue)
        expanded += 1
        if expanded % _ASK_EVERY == 0:
            effort.spend(_ASK_EVERY)
            effort.look(_ASK_EVERY * _PAIRS_EACH)
        child = _taken(label, step)
        enqueue(label, rank + 1)
        if child[0] == depth:
            yield child[2], child[6]
        elif every or _is_admitted(met.setdefault(child[:2], []), (child[2], child[4], child[5], child[3])):
            enqueue(child, 0)


def _taken(label: _Label, step: _Step) -> _Label:
    """Return the label after a step."""
    layer, _, cost, loads, bears, demands, chosen, names = label
    _, name, row, exit_, _ = step
    if row is None:
        return layer + 1, exit_, cost, loads, bears, demands, (*chosen, None), (*names, name)
    return (
        layer + 1,
        exit_,
        cost + row[1],
        list(map(add, loads, row[4])),
        min(bears, row[5]),
        max(demands, row[6]),
        (*chosen, row[7]),
        (*names, name),
    )


def _is_admitted(met: list[_Standing], standing: _Standing) -> bool:
    """Take a standing in, or say that one met before at the same state outdoes it: less of everything but strength."""
    cost, bears, demands, loads = standing
    for known in met:
        is_outdone = known[0] <= cost and known[1] >= bears and known[2] <= demands
        if is_outdone and not any(map(gt, known[3], loads)):
            return False
    met.append(standing)
    return True


class _Walk:
    """State of one walk: the bounds and the ordered ways on from each (layer, port), built when first needed."""

    def __init__(self, ways: Ways) -> None:
        self._ways = ways
        self.to_come = _to_come(ways)
        self._steps: dict[tuple[int, int], list[_Step]] = {}
        self._by_entry: dict[int, dict[int, list[Row]]] = {}

    def _rows_by_entry(self, layer: int) -> dict[int, list[Row]]:
        if layer not in self._by_entry:
            gathered: dict[int, list[Row]] = {}
            for row in self._ways.layers[layer][0]:
                gathered.setdefault(row[2], []).append(row)
            self._by_entry[layer] = gathered
        return self._by_entry[layer]

    def steps(self, layer: int, port: int) -> list[_Step]:
        """Return the ways on, cheapest promise first; sorted once per (layer, port)."""
        known = self._steps.get((layer, port))
        if known is not None:
            return known
        found: list[_Step] = []
        after = self.to_come[layer + 1]
        if self._ways.layers[layer][1] and port in after:
            cost, loads = after[port]
            found.append((cost, self._ways.no_name, None, port, loads))
        by_entry = self._rows_by_entry(layer)
        for entry in self._ways.mates.get(port, ()):
            for row in by_entry.get(entry, ()):
                rest = after.get(row[3])
                if rest is not None:
                    found.append((row[1] + rest[0], row[0], row, row[3], rest[1]))
        found.sort(key=_PROMISED)
        self._steps[layer, port] = found
        return found

    def next_step(self, label: _Label, rank: int) -> tuple[int, _Step] | None:
        """Return the first way on from ``rank`` upwards that may end within the limits, and its rank; None for none."""
        layer, port, _, loads, bears, demands, _, _ = label
        limits = self._ways.limits
        steps = self.steps(layer, port)
        for candidate in range(rank, len(steps)):
            step = steps[candidate]
            row, sums = step[2], map(add, loads, step[4])
            if row is None:
                if _keep(sums, limits):
                    return candidate, step
            elif row[5] >= demands and bears >= row[6] and _keep(map(add, sums, row[4]), limits):
                return candidate, step
        return None


def _keep(sums: Iterable[float], limits: Sequence[float]) -> bool:
    """Say whether every sum keeps its limit. Called once per step looked at."""
    found = list(sums)
    return all(map(le, found, limits)) or all(map(within, found, limits))


def _to_come(ways: Ways) -> list[dict[int, _ToCome]]:
    """Return, by layer and port that may be open there, what is still to come at least; ports without an end left out.

    There is one layer more than the chain has: the last row must close the chain, or end on any port.
    """
    opens = [{ways.start}]
    for rows, is_optional in ways.layers:
        exits = {row[3] for row in rows}
        opens.append(exits | opens[-1] if is_optional else exits)
    nothing: _ToCome = 0, (0.0,) * len(ways.limits)
    after = dict.fromkeys(opens.pop(), nothing)
    found = [after]
    for rows, is_optional in reversed(ways.layers):
        entries = _by_entry(rows, after)
        here: dict[int, _ToCome] = {}
        for port in opens.pop():
            best = after.get(port) if is_optional else None
            for entry in ways.mates.get(port, ()):
                option = entries.get(entry)
                if option is not None:
                    best = option if best is None else _least(best, option)
            if best is not None:
                here[port] = best
        after = here
        found.append(after)
    found.reverse()
    return found


def _by_entry(rows: Sequence[Row], after: Mapping[int, _ToCome]) -> dict[int, _ToCome]:
    """Gather rows by entry port, so that the work grows with the number of rows, not with pairs of them."""
    gathered: dict[int, _ToCome] = {}
    for _, cost, entry, exit_, loads, _, _, _ in rows:
        rest = after.get(exit_)
        if rest is not None:
            way = cost + rest[0], list(map(add, loads, rest[1]))
            known = gathered.get(entry)
            gathered[entry] = way if known is None else _least(known, way)
    return gathered


def _least(one: _ToCome, other: _ToCome) -> _ToCome:
    return min(one[0], other[0]), list(map(min, one[1], other[1]))
