"""Which items of a problem in columns no other outmatches: all that the first of its chains may hold."""

from __future__ import annotations

import numpy as np

from spoutline.search.columns import Columns
from spoutline.search.item_table import Floats, Ints, Mask
from spoutline.search.undominated import Rows, undominated


def unmatched(columns: Columns, places: Ints, entry: Ints, exit_: Ints) -> Mask:
    """Say of each item whether none of its layer and ports comes before it and is no worse in any figure that counts.

    Of equal costs the first by name comes first. The first chain of all is one of the items that are left, and there is
    one exactly where there was one. It says the same as ``dominance.reduced``, of all layers at once.

    Parameters
    ----------
    columns
        The problem. Load sums that can not exceed their limit do not count.
    places
        By item: a number that grows with its name among those of its layer.
    entry, exit_
        By item: its ports as they are called; in the columns, ports that meet the same are one.
    """
    counts = _can_exceed(columns)
    own = np.column_stack([columns.loads[:, counts], columns.demands, -columns.bears])
    figures = np.column_stack([_by_cost(columns).astype(np.float64), *map(_finite, own.T)])
    decisive = np.arange(figures.shape[1]) == 0  # a lower cost; of equal ones the name decides
    order = np.lexsort((exit_, entry, columns.layer))
    layer, entry, exit_ = columns.layer[order], entry[order], exit_[order]
    changes = (layer[1:] != layer[:-1]) | (entry[1:] != entry[:-1]) | (exit_[1:] != exit_[:-1])
    keeps = np.zeros(len(columns), np.bool_)
    known: dict[tuple[bytes, bytes], Ints] = {}  # what may come between two slots is mostly the same everywhere
    for group in np.split(order, np.flatnonzero(changes) + 1):
        some, place = figures[group], np.argsort(np.argsort(places[group])).astype(np.float64)
        same = some.tobytes(), place.tobytes()
        if same not in known:
            known[same] = undominated(Rows(some, place, decisive))
        keeps[group[known[same]]] = True
    return keeps


def _can_exceed(columns: Columns) -> Mask:
    most = np.zeros(len(columns.limits))
    for of_layer in columns.most(columns.loads):
        most += of_layer
    return np.asarray(~np.isposinf(columns.limits) & (most > columns.limits))


def _finite(figures: Floats) -> Floats:
    """Return figures in the same order, none of which is infinite."""
    if np.isfinite(figures).all():
        return figures
    return np.unique(figures, return_inverse=True)[1].astype(np.float64)


def _by_cost(columns: Columns) -> Ints:
    """Return numbers that grow with the cost, majors first; equal costs have equal ones."""
    order = np.lexsort((columns.cost, columns.major))
    major, cost = columns.major[order], columns.cost[order]
    rises = (major[1:] != major[:-1]) | (cost[1:] != cost[:-1])
    ranks = np.zeros(len(columns), np.int64)
    ranks[order[1:]] = np.cumsum(rises)
    return ranks
