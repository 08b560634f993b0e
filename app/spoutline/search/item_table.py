"""Items of a layer as columns, so that thousands of them need not be made before one is looked at."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property
from itertools import accumulate, pairwise
from typing import TypeVar, overload

import numpy as np
from numpy.typing import NDArray

from spoutline.search.graph import MAJOR, Item, Layer, Problem, divided

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Mask = NDArray[np.bool_]
_LARGEST = 2**62
_Kept = TypeVar("_Kept", bound=np.generic)


@dataclass(frozen=True, eq=False)
class ItemTable(Sequence[Item]):
    """Items of one layer, a row each; an ``Item`` is made when it is asked for.

    Parameters
    ----------
    key_of
        Returns the key of a row.
    major, cost
        The whole multiples of ``graph.MAJOR`` in a cost, and the rest.
    entry, exit, loads, bears, demands
        As of ``Item``; ``loads`` has a row for each item.
    number, known
        What each row is called among items that several tables share, and those that were made already.
    is_sorted
        Whether the rows are known to come in the order of their keys.
    """

    key_of: Callable[[int], str]
    major: Ints
    cost: Ints
    entry: Ints
    exit: Ints
    loads: Floats
    bears: Floats
    demands: Floats
    number: Ints | None = None
    known: dict[int, Item] = field(default_factory=dict)
    is_sorted: bool = False

    def __len__(self) -> int:
        return len(self.cost)

    def only(self, mask: Mask) -> ItemTable:
        """Return some of the items, in their order; those that were made already are the same objects."""
        at = np.flatnonzero(mask)
        return ItemTable(
            key_of=lambda place: self.key_of(int(at[place])),
            major=self.major.take(at),
            cost=self.cost.take(at),
            entry=self.entry.take(at),
            exit=self.exit.take(at),
            loads=self.loads.take(at, axis=0),
            bears=self.bears.take(at),
            demands=self.demands.take(at),
            number=at if self.number is None else self.number.take(at),
            known=self.known,
            is_sorted=self.is_sorted,
        )

    def at_costs(self, major: Ints, cost: Ints) -> ItemTable:
        """Return the same items at other costs."""
        return replace(self, major=major, cost=cost, known={})

    def without_strengths(self) -> ItemTable:
        """Return the same items, which bear everything and ask nothing of others."""
        return replace(self, bears=np.full(len(self), math.inf), demands=np.zeros(len(self)), known={})

    def of_limits(self, which: list[int]) -> ItemTable:
        """Return the same items with some of their loads alone."""
        return replace(self, loads=self.loads[:, which], known={})

    @overload
    def __getitem__(self, at: int) -> Item: ...
    @overload
    def __getitem__(self, at: slice) -> Sequence[Item]: ...
    def __getitem__(self, at: int | slice) -> Item | Sequence[Item]:
        """Return an item, made anew unless all were asked for before."""
        if isinstance(at, slice):
            return self._all[at]
        return self._made([at])[0]

    def __iter__(self) -> Iterator[Item]:
        return iter(self._all)

    @cached_property
    def _all(self) -> tuple[Item, ...]:
        """Every item; the same objects each time."""
        return tuple(self._made(range(len(self))))

    def _made(self, rows: Sequence[int]) -> list[Item]:
        """Return the items of some rows, those alone made that are not known."""
        wanted = np.array(rows, np.int64)
        numbers = (wanted if self.number is None else self.number[wanted]).tolist()
        at = [row for row, number in zip(rows, numbers, strict=True) if number not in self.known]
        if at:
            self._make(at)
        return [self.known[number] for number in numbers]

    def _make(self, rows: Sequence[int]) -> None:
        at = np.array(rows, np.int64)
        columns = zip(
            (at if self.number is None else self.number[at]).tolist(),
            rows,
            self.major[at].tolist(),
            self.cost[at].tolist(),
            self.entry[at].tolist(),
            self.exit[at].tolist(),
            self.loads[at].tolist(),
            self.bears[at].tolist(),
            self.demands[at].tolist(),
            strict=True,
        )
        for number, row, major, cost, entry, exit_, loads, bears, demands in columns:
            whole = major * MAJOR + cost
            self.known[number] = Item(self.key_of(row), whole, entry, exit_, tuple(loads), bears, demands)


def table_of(layer: Layer, loads_count: int) -> ItemTable | None:
    """Return the items of a layer as a table; None where a cost is too large for whole numbers of 64 bits."""
    items = layer.items
    if isinstance(items, ItemTable):
        return items
    split = split_costs([item.cost for item in items])
    if split is None:
        return None
    return ItemTable(
        key_of=lambda at: items[at].key,
        major=split[0],
        cost=split[1],
        entry=np.array([item.entry for item in items], np.int64),
        exit=np.array([item.exit for item in items], np.int64),
        loads=np.array([item.loads for item in items], np.float64).reshape(len(items), loads_count),
        bears=np.array([item.bears for item in items], np.float64),
        demands=np.array([item.demands for item in items], np.float64),
    )


def joined(tables: Sequence[ItemTable], loads_count: int) -> ItemTable:
    """Return the items of several tables as one, in their order."""
    if not tables:
        whole, figures = np.zeros(0, np.int64), np.zeros(0)
        return ItemTable(_no_key, whole, whole, whole, whole, np.zeros((0, loads_count)), figures, figures)
    starts = [0, *accumulate(map(len, tables))]

    def key_of(at: int) -> str:
        which = bisect_right(starts, at) - 1
        return tables[which].key_of(at - starts[which])

    return ItemTable(
        key_of=key_of,
        major=np.concatenate([table.major for table in tables]),
        cost=np.concatenate([table.cost for table in tables]),
        entry=np.concatenate([table.entry for table in tables]),
        exit=np.concatenate([table.exit for table in tables]),
        loads=np.concatenate([table.loads for table in tables]),
        bears=np.concatenate([table.bears for table in tables]),
        demands=np.concatenate([table.demands for table in tables]),
    )


def joined_up(columns: Sequence[NDArray[_Kept]]) -> NDArray[_Kept]:
    """Return a column of every layer as one."""
    return np.concatenate(columns)


def apart(rows: Ints, problem: Problem) -> tuple[Mask, ...]:
    """Return, by layer, which of its items are among ``rows``, numbers as ``ItemsOf`` counts them."""
    ends = [0, *accumulate(len(layer.items) for layer in problem.layers)]
    among = np.zeros(ends[-1], np.bool_)
    among[rows] = True
    return tuple([among[low:high] for low, high in pairwise(ends)])


def some_of(problem: Problem, masks: Sequence[Mask]) -> Problem:
    """Return a problem whose layers are tables with some of their items alone."""
    pairs = zip(problem.layers, masks, strict=True)
    return replace(problem, layers=tuple(replace(one, items=_table(one).only(mask)) for one, mask in pairs))


def at_costs(problem: Problem, costs: Sequence[tuple[Ints, Ints]]) -> Problem:
    """Return a problem whose layers are tables with the same items at other costs."""
    pairs = zip(problem.layers, costs, strict=True)
    return replace(problem, layers=tuple(replace(one, items=_table(one).at_costs(*cost)) for one, cost in pairs))


def of_limits(problem: Problem, which: list[int]) -> Problem:
    """Return a problem of tables with some of the limits and the loads of these alone."""
    layers = [replace(layer, items=_table(layer).of_limits(which)) for layer in problem.layers]
    return replace(problem, layers=tuple(layers), limits=tuple(problem.limits[index] for index in which))


def at_strengths(problem: Problem, start_bears: float | None) -> Problem:
    """Return a problem of tables where the start bears so much; None to leave all strengths aside."""
    if start_bears is not None:
        return replace(problem, start_bears=start_bears)
    layers = tuple(replace(one, items=_table(one).without_strengths()) for one in problem.layers)
    return replace(problem, layers=layers, start_bears=math.inf)


def loads_of(layer: Layer) -> Floats:
    """Return the loads of the items of a layer that is a table, a row each."""
    return _table(layer).loads


def _table(layer: Layer) -> ItemTable:
    if not isinstance(layer.items, ItemTable):
        raise TypeError(f"the items of layer {layer.name!r} are no table")
    return layer.items


def _no_key(at: int) -> str:
    raise IndexError(at)


def split_costs(costs: list[int]) -> tuple[Ints, Ints] | None:
    """Return majors and the rest, which may be negative; None where either is too large."""
    if all(-_LARGEST < cost < _LARGEST for cost in costs):
        return np.zeros(len(costs), np.int64), np.array(costs, np.int64)
    pairs = [divided(cost) for cost in costs]
    if all(-_LARGEST < one < _LARGEST for pair in pairs for one in pair):
        majors, rest = zip(*pairs, strict=True)
        return np.array(majors, np.int64), np.array(rest, np.int64)
    return None


class ItemsOf:
    """The items of all layers of a problem, counted layer by layer; each made when it is asked for."""

    def __init__(self, problem: Problem) -> None:
        self._layers = problem.layers
        self._starts = [0, *accumulate(len(layer.items) for layer in problem.layers)]

    def __len__(self) -> int:
        return self._starts[-1]

    def __getitem__(self, row: int) -> Item:
        layer, at = self._place(row)
        return self._layers[layer].items[at]

    def key(self, row: int) -> str:
        """Return the key of an item."""
        layer, at = self._place(row)
        items = self._layers[layer].items
        return items.key_of(at) if isinstance(items, ItemTable) else items[at].key

    def places(self, rows: Ints) -> Ints:
        """Return, for each of some items, a number that grows with its key among those of its layer."""
        places = rows.copy()
        layers = np.searchsorted(self._starts, rows, side="right") - 1
        for layer in np.unique(layers).tolist():
            items = self._layers[layer].items
            if not (isinstance(items, ItemTable) and items.is_sorted):
                at = np.flatnonzero(layers == layer)
                by_key = sorted(range(len(at)), key=[self.key(row) for row in rows[at].tolist()].__getitem__)
                places[at[by_key]] = np.arange(len(at))
        return places

    def _place(self, row: int) -> tuple[int, int]:
        layer = bisect_right(self._starts, row) - 1
        return layer, row - self._starts[layer]


class Names:
    """The keys of the items of a problem by their number, for telling equals apart."""

    def __init__(self, items: ItemsOf) -> None:
        self._items = items

    def __getitem__(self, row: int) -> str:
        """Return the key of an item."""
        return self._items.key(row)

    def places(self, rows: Ints) -> Ints:
        """Return, for each of some items, a number that grows with its key among those of its layer."""
        return self._items.places(rows)
