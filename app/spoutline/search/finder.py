"""Answers about one chain problem, by whichever way is quicker; both give the same chains in the same order.

The walk is quick where few items or loose limits let it go nearly straight to the end; it is given a number of labels.
What it does not finish with them is left to the columns, which cost some milliseconds whatever binds.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from spoutline.search import walk
from spoutline.search.effort import Exhausted
from spoutline.search.graph import MAJOR, Path, Problem
from spoutline.search.listener import Listener

if TYPE_CHECKING:
    from spoutline.search.columns import Columns
    from spoutline.search.item_table import ItemsOf, Names
    from spoutline.search.optimum import Chain

_FEW_ITEMS = 600  # more than these are only read by the walk's own bounds for longer than the columns take
_CHEAPEST_LABELS = 512
_ORDER_LABELS = 512


@dataclass
class _Shared:
    """What problems that differ in their limits alone have in common, made when first needed."""

    problem: Problem

    @cached_property
    def items(self) -> ItemsOf:
        from spoutline.search.item_table import ItemsOf

        return ItemsOf(self.problem)

    @cached_property
    def names(self) -> Names:
        from spoutline.search.item_table import Names

        return Names(self.items)

    @cached_property
    def count(self) -> int:
        return sum(len(layer.items) for layer in self.problem.layers)

    @cached_property
    def columns(self) -> Columns | None:
        from spoutline.search.columns import columns_of  # numpy is loaded where it is used

        columns = columns_of(self.problem)
        return columns if columns is not None and columns.is_exact() else None


class Finder:
    """Finds chains of one problem."""

    def __init__(self, problem: Problem) -> None:
        self.problem = problem
        self._shared = _Shared(problem)

    def within(self, limits: tuple[float, ...]) -> Finder:
        """Return a finder for the same items and other limits of their sums, at next to no cost."""
        other = Finder(replace(self.problem, limits=limits))
        other._shared = self._shared
        return other

    def cheapest(self, listener: Listener | None = None) -> Path | None:
        """Return the first chain of ``in_order``, much quicker than that; None where no chain exists.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        if self._shared.count <= _FEW_ITEMS:
            try:
                return walk.cheapest(self.problem, listener, _CHEAPEST_LABELS)
            except Exhausted:
                pass
        columns = self._columns()
        if columns is None:
            return walk.cheapest(self.problem, listener)
        from spoutline.search.optimum import best_chain

        found = best_chain(columns, self._shared.names, listener).chain
        return None if found is None else self._path(found)

    def in_order(self, listener: Listener | None = None) -> Iterator[Path]:
        """Yield every chain within the limits, cheapest first; equals by keys along the chain, an empty layer first.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        last: Path | None = None
        try:
            for last in walk.best_first(self.problem, listener, _ORDER_LABELS):
                yield last
            return
        except Exhausted:
            pass
        columns = self._columns()
        if columns is None:
            rest = walk.best_first(self.problem, listener)
        else:
            from spoutline.search.optimum import chains_in_order

            rest = map(self._path, chains_in_order(columns, self._shared.names, listener))
        for path in rest:
            if last is None or _place(path) > _place(last):
                yield path

    def _columns(self) -> Columns | None:
        columns = self._shared.columns
        return None if columns is None else columns.with_limits(self.problem.limits)

    def _path(self, chain: Chain) -> Path:
        items = self._shared.items
        return Path(chain.major * MAJOR + chain.cost, tuple(None if row < 0 else items[row] for row in chain.rows))


def _place(path: Path) -> tuple[int, tuple[str, ...]]:
    return path.cost, tuple("" if item is None else item.key for item in path.items)
