"""All chains of one problem, majors left aside, in the order of cost, equals by names.

They are told by portions of costs that rise, as ``search.level_search`` looks for the cheapest; where those of one
portion take too many labels, one after the other is found by labels.
"""

from __future__ import annotations

import math
from collections.abc import Generator, Iterator

import numpy as np

from spoutline.search.chain import Chain, chain_of, named
from spoutline.search.demand_bands import Part
from spoutline.search.enumeration import Chains
from spoutline.search.item_table import Ints
from spoutline.search.level_search import (
    FEW_LABELS,
    GROWTH,
    ITEMS,
    MANY_MORE,
    QUICK_ITEMS,
    STAND_INS,
    LevelSearch,
    TooMany,
)
from spoutline.search.swaps import Rows

_KEPT = 1_000  # chains put in order at once
_ORDER_LABELS, _PASSES, _FURTHER = 16_000, 64, 8  # looked at by cost; labels for each without told; steps of the cost
_TOLD = 128  # chains left out one by one where the next is found by labels


class LevelOrder(LevelSearch):
    """One problem, majors left aside, whose chains are told one after the other."""

    def in_order(self) -> Iterator[Chain]:
        """Yield every chain, cheapest first, equals by names."""
        least_cost = self._least_cost
        told = dict[Rows, None]()
        if self._test is not None or least_cost is None:
            if (first := self.first()) is None:
                return
            yield first
            least_cost, told = first.cost, {first.rows: None}
        low = yield from self._first_in_order(least_cost - 1, told)
        if not self._is_priced:
            self._price()
        items = float(ITEMS)
        labels = math.inf if self._test is not None else _ORDER_LABELS
        while low < self._highest:
            top = max(low + 1, self._threshold(items))
            try:
                with self._few_labels(labels):
                    top, found = self._cheaper_half(low, top)
            except TooMany:
                low, may_go_on = yield from self._told_by_labels(low, told, _PASSES * labels)
                labels = MANY_MORE * labels + 1 if may_go_on else math.inf
                continue
            items *= GROWTH
            for chain in self._by_names(top) if found is None else found:
                if chain.rows not in told:
                    yield chain
                    if len(told) <= _TOLD:
                        told[chain.rows] = None
            if len(told) > _TOLD:
                labels = math.inf  # which are too many to be left out one by one
            low = top

    def _first_in_order(self, low: int, told: dict[Rows, None]) -> Generator[Chain, None, int]:
        """Yield the chains among the items of the lowest floors by plain steps, but those ``told``; none with a test.

        Up to ``low`` there are none; returns the cost up to which all are now told.
        """
        top = max(low + 1, self._threshold(QUICK_ITEMS))
        if self._test is not None or not self._columns.can_be_filled():
            return low
        try:
            with self._few_labels(FEW_LABELS):
                found = self._few(top).in_order()
        except TooMany:
            return low
        yield from (one for one in found if one.cost > low and one.rows not in told)
        return top

    def _cheaper_half(self, low: int, top: int) -> tuple[int, list[Chain] | None]:
        """Return a cost up to ``top`` and the chains up to it; None where those of the very next cost are too many."""
        found = self._between(low, top)
        while found is None and top > low + 1:
            top = (low + top) // 2
            found = self._between(low, top)
        return top, found

    def _told_by_labels(
        self, low: int, told: dict[Rows, None], labels: float
    ) -> Generator[Chain, None, tuple[int, bool]]:
        """Yield the chains after those ``told``, as many as are found with about so many labels.

        Up to ``low`` all were told before; returns the cost of which this is now true, and whether none takes too many.
        """
        search, step, begun = self._by_labels(told), 1, self._effort.labels
        while low < self._highest and self._effort.labels - begun <= labels:
            try:
                with self._few_labels(STAND_INS[1]):
                    found = search.next(min(low + step, self._highest), self._effort)
            except TooMany:
                return low, False
            if found is None:
                low, step = low + step, _FURTHER * step
                continue
            yield Chain(0, found.cost, found.rows)
            told[found.rows] = None
            search.tell(found.rows)
            low = found.cost - 1
        return low, True

    def _between(self, low: int, top: int) -> list[Chain] | None:
        """Return the chains dearer than ``low`` and up to ``top`` in order; None where they are too many for that."""
        if not self._is_dense:
            try:
                with self._few_labels():
                    return self._between_in(self._parts(top, in_bands=False), low, top)
            except TooMany:
                self._is_dense = True
        return self._between_in(self._parts(top), low, top)

    def _between_in(self, parts: list[Part], low: int, top: int) -> list[Chain] | None:
        count = 0
        kept: list[tuple[Part, Chains, Ints]] = []
        for part in parts:
            for found in self._enumeration(part, top).chains():
                chosen = np.flatnonzero(part.holds(found) & (found.cost > low))
                count += len(chosen)
                if count > _KEPT:
                    return None
                kept.append((part, found, chosen))
        chains = [chain_of(part, found, int(at)) for part, found, chosen in kept for at in chosen]
        return sorted(chains, key=lambda chain: (chain.cost, named(chain.rows, self._names)))
