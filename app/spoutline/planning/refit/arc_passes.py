"""Passes over the arcs of a graph: the least that a whole way through each arc adds up to, many figures at a time."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from spoutline.model.part_columns import Floats, Ints
from spoutline.search.columns import heads

Node = tuple[int, int]  # layer, open port


class ArcPasses:
    """The arcs of a graph, layer by layer.

    Parameters
    ----------
    root
        Where every way begins.
    ends
        The nodes that each arc leaves and reaches.
    depth
        Number of layers.
    """

    def __init__(self, root: Node, ends: Sequence[tuple[Node, Node]], depth: int) -> None:
        numbers = {root: 0}
        for node in (node for both in ends for node in both):
            numbers.setdefault(node, len(numbers))
        self._nodes = len(numbers)
        self._start = np.array([numbers[start] for start, _ in ends], np.int64)
        self._end = np.array([numbers[end] for _, end in ends], np.int64)
        layers = np.array([layer for (layer, _), _ in ends], np.int64)
        self._layers = [slice(*bounds) for bounds in pairwise(np.searchsorted(layers, range(depth + 1)).tolist())]
        self._last = np.unique(self._end[self._layers[-1]]) if depth else np.zeros(1, np.int64)

    def through(self, figures: Floats) -> Floats:
        """Return the least sum of a way from start to end through each arc, by column; infinite where there is none."""
        before, behind = self._before(figures), self.behind(figures)
        return np.asarray(before[self._start] + figures + behind[self._end])

    def least(self, figures: Floats) -> Floats:
        """Return the least sum of a way from start to end, by column; infinite where there is none."""
        return np.asarray(self.behind(figures)[0])

    def _before(self, figures: Floats) -> Floats:
        known = np.full((self._nodes, figures.shape[1]), np.inf)
        known[0] = 0.0
        for layer in self._layers:
            _lower(known, self._end[layer], known[self._start[layer]] + figures[layer])
        return known

    def behind(self, figures: Floats) -> Floats:
        """Return the least sum from each node, by its number, to the end."""
        known = np.full((self._nodes, figures.shape[1]), np.inf)
        known[self._last] = 0.0
        for layer in reversed(self._layers):
            _lower(known, self._start[layer], figures[layer] + known[self._end[layer]])
        return known


def _lower(known: Floats, nodes: Ints, sums: Floats) -> None:
    """Lower what is known of some nodes, no two of which are of different layers, to the least of some sums."""
    if len(nodes):
        order = np.argsort(nodes, kind="stable")
        first = heads(nodes[order])
        at = nodes[order[first]]
        known[at] = np.minimum(known[at], np.minimum.reduceat(sums[order], first, axis=0))
