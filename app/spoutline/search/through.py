"""Chains that hold one given item: what does not depend on the item is worked out once for all items of a problem."""

from __future__ import annotations

import math
from collections.abc import Collection, Container, Iterator
from dataclasses import replace
from functools import cached_property
from typing import TYPE_CHECKING

from spoutline.frozen import frozen
from spoutline.search.bounds import backward, before_entries, forward, within
from spoutline.search.dominance import reduced
from spoutline.search.finder import Finder
from spoutline.search.graph import MAJOR, Item, Layer, Path, Problem, divided
from spoutline.search.listener import Listener

if TYPE_CHECKING:
    from spoutline.search.chain import Chain
    from spoutline.search.columns import Columns
    from spoutline.search.enumeration import ChainTest
    from spoutline.search.held_items import HeldItems
    from spoutline.search.item_table import Floats, ItemsOf, Mask, Names

_EXACT = float(2**53)  # whole numbers up to here are exact as floats
_FEW_ITEMS = 500  # so many are looked at one by one sooner than in columns


def holding(problem: Problem, layer: int, key: str) -> Problem | None:
    """Return the problem whose ``layer`` holds the item ``key`` and nothing else; None where it has no such item."""
    return _holding_one_of(problem, layer, {key})


def _holding_one_of(problem: Problem, layer: int, keys: Container[str]) -> Problem | None:
    """Return the problem whose ``layer`` holds one of the items ``keys``; None where it has none of them."""
    items = tuple(one for one in problem.layers[layer].items if one.key in keys)
    if not items:
        return None
    layers = list(problem.layers)
    layers[layer] = Layer(layers[layer].name, items)
    return replace(problem, layers=tuple(layers))


class Through:
    """One problem, about each item of which something is asked."""

    def __init__(self, problem: Problem) -> None:
        self.problem = problem
        self._made: dict[int, Item | None] = {-1: None}  # by number; below 0 for an empty layer

    def layer(self, layer: int) -> ThroughLayer:
        """Return what answers for the items of a layer."""
        return ThroughLayer(self, layer)

    def unmatched(self) -> Iterator[tuple[Layer, list[str]]]:
        """Yield each layer with the keys of its items that no other is before; see ``outmatched.unmatched``."""
        if self.columns is None:
            for layer in reduced(self.problem).layers:
                yield layer, [item.key for item in layer.items]
            return
        rows = self.columns.row[self.may_stand_first].tolist()
        keys: list[list[str]] = [[] for _ in self.problem.layers]
        for layer, row in zip(self.columns.layer[self.may_stand_first].tolist(), rows, strict=True):
            keys[layer].append(self.names[row])
        yield from zip(self.problem.layers, keys, strict=True)

    @cached_property
    def columns(self) -> Columns | None:
        """All items, those that ask more than the start bears included; None for few, or where costs are not exact."""
        if sum(len(layer.items) for layer in self.problem.layers) <= _FEW_ITEMS:
            return None
        from spoutline.search.columns import columns_of  # numpy is loaded where it is used

        columns = columns_of(replace(self.problem, start_bears=math.inf))
        return columns if columns is not None and columns.is_exact() else None

    @cached_property
    def may_stand_first(self) -> Mask:
        """Which items of the columns the first of all chains may hold."""
        from spoutline.search.item_table import joined_up, table_of
        from spoutline.search.outmatched import unmatched

        columns, count = self._known_columns, len(self.problem.limits)
        tables = [table for layer in self.problem.layers if (table := table_of(layer, count)) is not None]
        entry, exit_ = joined_up([table.entry for table in tables]), joined_up([table.exit for table in tables])
        return unmatched(columns, self.names.places(columns.row), entry[columns.row], exit_[columns.row])

    @cached_property
    def names(self) -> Names:
        """The keys of the items by their number."""
        from spoutline.search.item_table import Names

        return Names(self.items)

    @cached_property
    def items(self) -> ItemsOf:
        """The items by their number."""
        from spoutline.search.item_table import ItemsOf

        return ItemsOf(self.problem)

    def held(self, layer: int) -> HeldItems:
        """Return the search for chains through items of a layer."""
        from spoutline.search.held_items import HeldItems

        columns = self._known_columns
        bears_all = columns.demands <= self.problem.start_bears
        return HeldItems(columns.only(bears_all), self.names, layer, self.may_stand_first[bears_all])

    def path(self, chain: Chain) -> Path:
        """Return a chain with its items."""
        for row in chain.rows:
            if row not in self._made:
                self._made[row] = self.items[row]
        items = tuple([self._made[row] for row in chain.rows])
        return Path(chain.major * MAJOR + chain.cost, items)

    @property
    def _known_columns(self) -> Columns:
        if self.columns is None:
            raise ValueError("a cost is too large for whole numbers of 64 bits")
        return self.columns

    @cached_property
    def least(self) -> tuple[Floats, Floats, Floats] | None:
        """The least majors, cost and loads of all chains through each item, each limit left aside.

        Infinite where no chain of meeting ports holds it; None where they are not exact.
        """
        import numpy as np

        from spoutline.search.passes import Passes

        columns = self.columns
        if columns is None:
            return None
        dearest = float(columns.most(np.abs(columns.cost[:, None]).astype(np.float64)).sum())
        majors = float(columns.most(columns.major[:, None].astype(np.float64)).sum())
        weight = 2.0 * dearest + 1.0  # a major outweighs all the rest, either way
        if weight * (majors + 1.0) >= _EXACT:
            return None
        sums = Passes(columns).through(np.column_stack([columns.major * weight + columns.cost, columns.loads]))
        major = np.rint(sums[:, 0] / weight)
        with np.errstate(invalid="ignore"):
            return major, sums[:, 0] - major * weight, sums[:, 1:]


@frozen
class HeldPlace:
    """An item by its number among those of all layers, and by layer which items a chain that holds it may hold."""

    row: int
    masks: tuple[Mask, ...]


class ThroughLayer:
    """Answers for each item of one layer by itself.

    Parameters
    ----------
    whole
        The chain to fill.
    layer
        Place of the layer in the chain. Where it is optional, only chains that fill it count.
    """

    def __init__(self, whole: Through, layer: int) -> None:
        self.layer = layer
        self._whole = whole

    def least_costs(self) -> dict[str, int]:
        """Return, by item, a cost that no chain through it goes below; items that no chain can hold are left out.

        One pass forward and one backward. Each limit is looked at by itself, so an item that is named may still turn
        out to be in no chain.
        """
        whole = self._whole
        if whole.least is None or whole.columns is None:
            return _least_costs_plainly(self._reduced, self.layer)
        import numpy as np

        columns, (major, cost, loads) = whole.columns, whole.least
        of_layer = (columns.layer == self.layer) & (columns.demands <= whole.problem.start_bears)
        at = np.flatnonzero(of_layer & np.isfinite(cost))
        at = at[_within(loads[at], columns.limits)]
        found = zip(columns.row[at].tolist(), major[at].tolist(), cost[at].tolist(), strict=True)
        return {whole.names[row]: int(majors) * MAJOR + int(rest) for row, majors, rest in found}

    def place_of(self, key: str) -> HeldPlace | None:
        """Return where the item ``key`` is; None where the layer has none."""
        row = self._rows.get(key)
        if row is None:
            return None
        import numpy as np

        layers = self._whole.problem.layers
        masks = [np.ones(len(layer.items), np.bool_) for layer in layers]
        masks[self.layer] = np.array([one == row for one in self._rows.values()], np.bool_)
        return HeldPlace(row, tuple(masks))

    def cheapest(self, key: str, listener: Listener | None = None) -> Path | None:
        """Return the first of the cheapest chains through the item ``key``; None where no chain holds it.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If it takes more work than a question may to say.
        """
        if self._whole.columns is None:
            return self.cheapest_of({key}, listener)
        row = self._rows.get(key)
        found = None if row is None else self._held.first(row, listener)
        return None if found is None else self._whole.path(found)

    def in_order(
        self, key: str, listener: Listener | None = None, test: ChainTest | None = None
    ) -> Iterator[tuple[Path, bool]]:
        """Yield all chains through the item ``key``, cheapest first, equals by keys, and whether each passes a test.

        ``test`` is asked about the items as ``ItemsOf`` of the whole problem counts them; without it all pass.

        Raises
        ------
        Cancelled, Exhausted
            As of ``cheapest``.
        """
        import numpy as np

        whole = self._whole
        if whole.columns is None:
            problem = holding(whole.problem, self.layer, key)
            for path in () if problem is None else Finder(problem).in_order(listener):
                yield path, True
        elif key in self._rows:
            for found in self._held.in_order(self._rows[key], listener):
                passes = [True] * len(found) if test is None else test(np.array([one.rows for one in found])).tolist()
                yield from zip(map(whole.path, found), passes, strict=True)

    def cheapest_of(
        self, keys: Collection[str], listener: Listener | None = None, most_cost: int | None = None
    ) -> Path | None:
        """Return the first of the cheapest chains through any of the items ``keys``; None where no chain holds one.

        It is one search, however many they are. With ``most_cost``, chains that cost more are left out.

        Raises
        ------
        Cancelled, Exhausted
            As of ``cheapest``.
        """
        if self._whole.columns is None:
            problem = _holding_one_of(self._reduced, self.layer, keys)
            return None if problem is None else Finder(problem).cheapest(listener, most_cost).proven
        import numpy as np

        rows = np.array([self._rows[key] for key in keys if key in self._rows], np.int64)
        most = None if most_cost is None else divided(most_cost)
        found = self._held.first_of(rows, listener, most)
        return None if found is None else self._whole.path(found)

    @cached_property
    def _rows(self) -> dict[str, int]:
        """The numbers of the layer's items by their keys."""
        layers = self._whole.problem.layers
        start = sum(len(layer.items) for layer in layers[: self.layer])
        rows = range(start, start + len(layers[self.layer].items))
        return {self._whole.names[row]: row for row in rows}

    @cached_property
    def _reduced(self) -> Problem:
        """What a first chain may hold, and all items of the layer, to be looked at one by one."""
        return reduced(self._whole.problem, whole_layer=self.layer)

    @cached_property
    def _held(self) -> HeldItems:
        return self._whole.held(self.layer)


def _within(loads: Floats, limits: Floats) -> Mask:
    """Say which rows keep every limit, as ``bounds.within`` does of a single load."""
    import numpy as np

    with np.errstate(invalid="ignore"):
        allowed = np.maximum(1e-9 * np.maximum(np.abs(loads), np.abs(limits)), 1e-9)
        return np.asarray(((loads <= limits) | (np.abs(loads - limits) <= allowed)).all(axis=1))


def _least_costs_plainly(problem: Problem, at: int) -> dict[str, int]:
    """Return what ``ThroughLayer.least_costs`` does, item by item, whatever items cost."""
    entries = before_entries(problem, forward(problem, at))
    bounds = backward(problem)
    least: dict[str, int] = {}
    for item in problem.layers[at].items:
        so_far, rest = entries.get(item.entry), bounds.after(at, item)
        if so_far is None or rest is None or item.demands > problem.start_bears:
            continue
        through = so_far.with_item(item)
        loads = (one + still for one, still in zip(through.loads, rest.loads, strict=True))
        if all(map(within, loads, problem.limits)):
            least[item.key] = through.cost + rest.cost
    return least
