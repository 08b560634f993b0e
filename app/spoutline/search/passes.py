"""Passes over a problem in columns: the least of many figures at once, to the end of the chain and from its start."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns, heads
from spoutline.search.item_table import Floats, Ints


@frozen
class _Layer:
    """The groups of one layer: items with the same entry and exit, the groups of one entry side by side."""

    groups: slice
    exits: Ints
    heads: Ints  # where the groups of each entry begin
    entries: Ints
    entry_of: Ints  # by group: which of ``entries``
    gap: Floats  # by open port and entry: nothing where they meet, else infinite


class Passes:
    """Least sums over all chains of meeting ports, limits left aside; the work grows with the number of items.

    Figures are arrays with a row for each item and a column for each kind of sum; every kind is minimised on its own.
    """

    def __init__(self, columns: Columns) -> None:
        self.columns = columns
        first = heads(columns.ports())
        self._first, count = first, len(columns)
        self._last = np.append(first[1:], count)
        layer, entry, exits = columns.layer.take(first), columns.entry.take(first), columns.exit.take(first)
        # what entries there are, layer by layer, is told of all layers at once: they are mostly of a few groups
        at = heads(layer * columns.meets.shape[1] + entry)
        entry_of = np.zeros(len(first), np.int64)
        entry_of[at[1:]] = 1
        entry_of = entry_of.cumsum()
        entries, gap = entry.take(at), np.where(columns.meets, 0.0, np.inf)
        depths = np.arange(columns.depth + 1)
        groups_of, entries_of = layer.searchsorted(depths).tolist(), layer.take(at).searchsorted(depths).tolist()
        self._layers = [
            _Layer(
                slice(low, high),
                exits[low:high],
                at[start:end] - low,
                entries[start:end],
                entry_of[low:high] - start,
                gap.take(entries[start:end], axis=1),
            )
            for (low, high), (start, end) in zip(pairwise(groups_of), pairwise(entries_of), strict=True)
        ]

    def _least(self, figures: Floats) -> Floats:
        if not len(self._first):
            return np.zeros((0, figures.shape[1]))
        return np.minimum.reduceat(figures, self._first)

    def backward(self, figures: Floats) -> Floats:
        """Return, by layer and open port, the least still to come; a layer more than there are, where nothing is."""
        return self._backward(self._least(figures))

    def _backward(self, least: Floats) -> Floats:
        columns = self.columns
        to = np.zeros((columns.depth + 1, len(columns.meets), least.shape[1]))
        for depth in range(columns.depth - 1, -1, -1):
            layer = self._layers[depth]
            if len(layer.exits):
                ways = least[layer.groups] + to[depth + 1].take(layer.exits, axis=0)
                by_entry = np.minimum.reduceat(ways, layer.heads)
                np.minimum.reduce(layer.gap[:, :, None] + by_entry, axis=1, out=to[depth])
            else:
                to[depth] = np.inf
            if columns.optional[depth]:
                np.minimum(to[depth], to[depth + 1], out=to[depth])
        return to

    def forward(self, figures: Floats) -> Floats:
        """Return, by layer and open port, the least until there; a layer more than there are, for the chain's end."""
        return self._forward(self._least(figures))

    def _forward(self, least: Floats) -> Floats:
        columns = self.columns
        so_far = np.full((columns.depth + 1, len(columns.meets), least.shape[1]), np.inf)
        so_far[0, columns.start] = 0.0
        for depth, layer in enumerate(self._layers):
            if columns.optional[depth]:
                so_far[depth + 1] = so_far[depth]
            if len(layer.exits):
                ways = self._before(layer, so_far[depth]).take(layer.entry_of, axis=0) + least[layer.groups]
                np.minimum.at(so_far[depth + 1], layer.exits, ways)
        return so_far

    @staticmethod
    def _before(layer: _Layer, so_far: Floats) -> Floats:
        """Return, by entry of a layer, the least until there."""
        return np.asarray(np.minimum.reduce(layer.gap[:, :, None] + so_far[:, None, :], axis=0))

    def through(self, figures: Floats) -> Floats:
        """Return, by item, the least sums of all chains that hold it."""
        columns = self.columns
        least = self._least(figures)
        to, so_far = self._backward(least), self._forward(least)
        into = np.full((columns.depth, columns.meets.shape[1], figures.shape[1]), np.inf)
        for depth, layer in enumerate(self._layers):
            if len(layer.exits):
                into[depth, layer.entries] = self._before(layer, so_far[depth])
        return np.asarray(figures + into[columns.layer, columns.entry] + to[columns.layer + 1, columns.exit])

    def least_path(self, figures: Floats) -> tuple[float, list[int]]:
        """Return the least sum of one figure over all chains, and the items of such a chain; infinite without one."""
        columns = self.columns
        least = self._least(figures[:, None])
        to = self._backward(least)[:, :, 0]
        port, path = columns.start, []
        value = float(to[0, port])
        if value == np.inf:
            return value, []
        for depth, layer in enumerate(self._layers):
            stay = to[depth + 1, port] if columns.optional[depth] else np.inf
            if not len(layer.exits):
                continue
            ways = layer.gap[port][layer.entry_of] + least[layer.groups, 0] + to[depth + 1][layer.exits]
            best = int(ways.argmin())
            if stay <= ways[best]:
                continue
            group = layer.groups.start + best
            first, last = self._first[group], self._last[group]
            path.append(int(first + figures[first:last].argmin()))
            port = int(layer.exits[best])
        return value, path
