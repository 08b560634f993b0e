"""A chain problem as columns: a row for each item, sorted by layer and ports, so that numpy looks at all at once."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Any

import numpy as np
from numpy.typing import NDArray

from spoutline.frozen import frozen
from spoutline.search.graph import Problem
from spoutline.search.item_table import Floats, Ints, ItemTable, Mask, table_of

_HELD_AGAINST = 64  # cheapest items of a group
_EXACT = float(2**53)  # whole numbers up to here are exact as floats


@frozen
class Columns:
    """A chain problem whose rows are items.

    Open ports that meet the same entries have one number, and so have entries that meet the same open ports: what an
    item meets decides, not what it is called.

    Parameters
    ----------
    start
        Number of the open port at the start.
    meets
        Whether an open port (first axis) meets an entry port (second axis).
    optional
        By layer.
    limits
        Upper limits of the load sums.
    layer, entry, exit
        Where an item may stand; rows are sorted by these three.
    major, cost
        The whole multiples of ``graph.MAJOR`` in an item's cost, and the rest. Fewer majors come before any cost.
    loads
        A row for each item and a column for each limit.
    eased
        The same for bounds: raised where no chain that holds the item can exceed the limit either way.
    bears, demands
        As of ``Item``. Items that ask more than the start bears are left out.
    row
        Number of the item among those that the columns were made of.
    """

    start: int
    meets: Mask
    optional: Mask
    limits: Floats
    layer: Ints
    entry: Ints
    exit: Ints
    major: Ints
    cost: Ints
    loads: Floats
    eased: Floats
    bears: Floats
    demands: Floats
    row: Ints

    def __len__(self) -> int:
        return len(self.row)

    @property
    def depth(self) -> int:
        """Number of layers."""
        return len(self.optional)

    def ports(self) -> Ints:
        """Return a number of the layer and ports of each item; it grows from row to row."""
        opens, entries = self.meets.shape
        return np.asarray((self.layer * entries + self.entry) * opens + self.exit)

    def only(self, mask: Mask) -> Columns:
        """Return the problem with those items alone."""
        if mask.all():
            return self
        at = np.flatnonzero(mask)  # rows are taken by number several times as quickly as by truth values
        loads = self.loads.take(at, axis=0)
        return Columns(
            start=self.start,
            meets=self.meets,
            optional=self.optional,
            limits=self.limits,
            layer=self.layer.take(at),
            entry=self.entry.take(at),
            exit=self.exit.take(at),
            major=self.major.take(at),
            cost=self.cost.take(at),
            loads=loads,
            eased=loads if self.eased is self.loads else self.eased.take(at, axis=0),
            bears=self.bears.take(at),
            demands=self.demands.take(at),
            row=self.row.take(at),
        )

    def can_be_filled(self) -> bool:
        """Say whether every layer that must be filled has an item."""
        filled = self.optional.copy()
        filled[self.layer] = True
        return bool(filled.all())

    def most(self, figures: Floats) -> Floats:
        """Return, by layer (first axis) and column of ``figures``, the most that the layer adds to a chain."""
        most = np.full((self.depth, figures.shape[1]), -np.inf)
        first = heads(self.layer)
        if len(first):
            most[self.layer[first]] = np.maximum.reduceat(figures, first)
        most[self.optional] = np.maximum(most[self.optional], 0.0)
        return np.where(np.isneginf(most), 0.0, most)

    def most_cost(self) -> int:
        """Return what no chain costs more than, majors left aside."""
        return int(self.most(self.cost[:, None].astype(np.float64)).sum())

    def is_exact(self) -> bool:
        """Say whether costs of chains are whole numbers that floats hold exactly, and majors count upwards."""
        if not len(self):
            return True
        least_and_most = self.most(np.abs(self.cost[:, None]).astype(np.float64)).sum()
        return bool(least_and_most < _EXACT and self.major.min() >= 0)

    def with_limits(self, limits: tuple[float, ...]) -> Columns:
        """Return the same items with other limits of the same load sums."""
        return replace(self, limits=np.array(limits, np.float64))

    def of_limits(self, which: list[int]) -> Columns:
        """Return the same items with some of the limits and their load sums alone."""
        loads = self.loads[:, which]
        eased = loads if self.eased is self.loads else self.eased[:, which]
        return replace(self, loads=loads, eased=eased, limits=self.limits[which])

    def at_costs(self, major: Ints, cost: Ints) -> Columns:
        """Return the same items at other costs, given as ``row`` counts the items."""
        return replace(self, major=major[self.row], cost=cost[self.row])

    def at_no_cost(self) -> Columns:
        """Return the same items, none of which costs anything."""
        nothing = np.zeros(len(self), np.int64)
        return replace(self, major=nothing, cost=nothing)

    def at_strengths(self, start_bears: float | None) -> Columns:
        """Return the items that ask no more than the start bears; None to leave all strengths aside."""
        if start_bears is not None:
            return self.only(self.demands <= start_bears)
        return replace(self, bears=np.full(len(self), np.inf), demands=np.zeros(len(self)))

    def with_load(self, load: Ints | Floats, limit: float) -> Columns:
        """Return the problem with one load sum more."""
        column = load[:, None].astype(np.float64)
        return replace(
            self,
            loads=np.concatenate([self.loads, column], axis=1),
            eased=np.concatenate([self.eased, column], axis=1),
            limits=np.append(self.limits, limit),
        )

    def not_outdone(self, *, nor_equalled: bool = False) -> Columns:
        """Return the problem without items that a dearer chain alone could hold.

        Such an item costs more than another with the same ports, which adds no more to any load, bears as much and asks
        no more. Each is held against the cheapest of its ports alone: that finds most, and some are left. With
        ``nor_equalled``, items at the same cost go as well: a chain of the least cost is left, but not each of them.
        """
        keeps = np.ones(len(self), np.bool_)
        figures = np.column_stack([self.loads, self.demands, -self.bears])
        opens, entries = self.meets.shape
        first = heads((self.layer * entries + self.entry) * opens + self.exit)
        for start, end in pairwise([*first.tolist(), len(self)]):
            cost, own, kept = self.cost[start:end], figures[start:end], keeps[start:end]
            for one in np.argsort(cost, kind="stable")[:_HELD_AGAINST].tolist():
                if kept[one]:
                    dearer = cost >= cost[one] if nor_equalled else cost > cost[one]
                    kept &= ~(dearer & (own >= own[one]).all(axis=1))
                    kept[one] = True
        return self.only(keeps)

    def binding(self) -> Mask:
        """Say which limits some chain of items could exceed, ports left aside."""
        held = ~np.isposinf(self.limits)
        kept = self.only(np.asarray((self.loads[:, held] < np.inf).all(axis=1)))
        binds = np.zeros(len(self.limits), np.bool_)
        binds[held] = kept.most(kept.loads[:, held]).sum(axis=0) > self.limits[held]
        return binds | (held & (self.loads >= np.inf).any(axis=0))

    def trimmed(self) -> Columns:
        """Return the problem without limits that no chain can exceed, its loads eased for bounds.

        A load that keeps its limit whatever else is chosen counts, for bounds, as the most that still does: a figure
        far below all others would otherwise make every bound on its sum worthless.
        """
        held = np.flatnonzero(~np.isposinf(self.limits))
        loads, limits, kept = self.loads.take(held, axis=1), self.limits[held], self
        known = np.asarray((loads < np.inf).all(axis=1))
        if not known.all():
            kept, loads = self.only(known), loads.compress(known, axis=0)
        most = kept.most(loads)
        total = most.sum(axis=0)
        binds = np.flatnonzero(total > limits)
        spare = (limits - (total - most)).take(binds, axis=1)
        loads = loads.take(binds, axis=1)
        return replace(kept, loads=loads, eased=np.maximum(loads, spare.take(kept.layer, axis=0)), limits=limits[binds])


def heads(keys: Ints) -> Ints:
    """Return where each run of equal keys begins."""
    if not len(keys):
        return np.zeros(0, np.int64)
    begins = np.empty(len(keys), np.bool_)
    begins[0] = True
    np.not_equal(keys[1:], keys[:-1], out=begins[1:])
    return begins.nonzero()[0]


def columns_of(problem: Problem) -> Columns | None:
    """Return the problem as columns; None where a cost is too large for whole numbers of 64 bits.

    ``row`` counts the items layer by layer, as ``item_table.ItemsOf`` does.
    """
    tables = [table_of(layer, len(problem.limits)) for layer in problem.layers]
    known = [table for table in tables if table is not None]
    if len(known) < len(tables):
        return None
    layer = np.repeat(np.arange(len(known)), [len(table) for table in known]).astype(np.int64)
    entry_port, exit_port = _joined(known, "entry"), _joined(known, "exit")
    start, meets, entry, exit_ = _ports(problem, entry_port, exit_port)
    demands = _joined(known, "demands")
    order = np.lexsort((exit_, entry, layer))
    order = order[demands[order] <= problem.start_bears]
    loads = _joined(known, "loads").take(order, axis=0) if known else np.zeros((0, len(problem.limits)))
    return Columns(
        start=start,
        meets=meets,
        optional=np.array([one.optional for one in problem.layers], np.bool_),
        limits=np.array(problem.limits, np.float64),
        layer=layer.take(order),
        entry=entry.take(order),
        exit=exit_.take(order),
        major=_joined(known, "major").take(order),
        cost=_joined(known, "cost").take(order),
        loads=loads,
        eased=loads,
        bears=_joined(known, "bears").take(order),
        demands=demands.take(order),
        row=order.astype(np.int64),
    )


def _joined(tables: list[ItemTable], name: str) -> NDArray[Any]:
    return np.concatenate([getattr(table, name) for table in tables]) if tables else np.zeros(0)


def _ports(problem: Problem, entry: Ints, exit_: Ints) -> tuple[int, Mask, Ints, Ints]:
    """Return the start, which numbers meet, and the numbers of the items' entries and exits."""
    opens, entries = np.union1d(exit_, [problem.start]).astype(np.int64), np.unique(entry).astype(np.int64)
    places = {port: at for at, port in enumerate(entries.tolist())}
    meets = np.zeros((len(opens), max(1, len(entries))), np.bool_)
    for at, port in enumerate(opens.tolist()):
        meets[at, [places[other] for other in problem.mates.get(port, ()) if other in places]] = True
    meets, open_number = _merged(meets)
    merged, entry_number = _merged(meets.T)
    own_entry = entry_number[np.searchsorted(entries, entry)] if len(entry) else np.zeros(0, np.int64)
    own_exit = open_number[np.searchsorted(opens, exit_)] if len(exit_) else np.zeros(0, np.int64)
    return int(open_number[np.searchsorted(opens, problem.start)]), merged.T, own_entry, own_exit


def _merged(rows: Mask) -> tuple[Mask, Ints]:
    """Return the distinct rows, and the number that each row has among them."""
    keys = [row.tobytes() for row in rows]
    order = sorted(set(keys))
    places = {key: at for at, key in enumerate(order)}
    return rows[[keys.index(key) for key in order]], np.array([places[key] for key in keys], np.int64)
