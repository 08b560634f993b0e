"""The chains through each of many items of one layer, items of the same ports asked for together.

Whatever may stand around an item may stand around one that is better in everything. One search for an item as good as
the best of a lot in each figure finds what stands first around any of them: all that it leaves room for are answered by
it. The others are parted by what it breaks for them, so that no part of the lot meets it again. What comes next around
those that were answered together is looked for once as well.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import islice, pairwise
from typing import TypeVar

import numpy as np
from numpy.typing import ArrayLike, NDArray

from spoutline.search.chain import Chain, Named
from spoutline.search.columns import Columns, heads
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.enumeration import EMPTY
from spoutline.search.item_table import Floats, Ints, Mask
from spoutline.search.listener import Listener
from spoutline.search.optimum import Answer, best_chain, chains_in_order
from spoutline.search.stand_ins import may_have_chains

_Kind = TypeVar("_Kind", bound=np.generic)
_BLOCK = 64  # chains around the items of a lot that are looked for in one go
_QUICK_LABELS = 2000  # looked at before it is asked whether there is a chain at all,
_PROOF_LABELS = 20_000  # and at most for that
_MOST_BLOCKS = 32  # with more, an item is looked at by itself
_MOST_OPEN = 8  # lots left undecided, after which no more is looked for


class HeldItems:
    """The items of one layer, each to be held in it; what one search tells of others is known from then on.

    Parameters
    ----------
    columns
        The problem; ``is_exact`` must hold.
    names
        Names of the items as ``Columns.row`` counts them.
    layer
        Where the items are held. Where it is optional, only chains that fill it count.
    around
        Which items of the other layers the first chain of all may hold.
    """

    def __init__(self, columns: Columns, names: Named, layer: int, around: Mask) -> None:
        optional = columns.optional.copy()
        optional[layer] = False
        self._columns = replace(columns, optional=optional)
        self._is_own = columns.layer == layer
        self._around = around & ~self._is_own
        self._names, self._layer = names, layer
        at = np.flatnonzero(self._is_own)
        bounds = [*heads(columns.ports()[at]).tolist(), len(at)]
        self._lots = [at[start:end] for start, end in pairwise(bounds)]
        self._lot_of = {row: number for number, lot in enumerate(self._lots) for row in columns.row[lot].tolist()}
        self._known: dict[int, Chain | None] = {}
        self._further: dict[int, _Further] = {}  # of those that were answered together
        self._open = set[int]()  # lots of which it is known that they take too much
        # the last row of each is that of an empty layer
        self._loads = np.concatenate([columns.loads, np.zeros((1, len(columns.limits)))])
        self._bears, self._demands = np.append(columns.bears, np.inf), np.append(columns.demands, 0.0)
        self._place = {row: place for place, row in enumerate(columns.row.tolist())} | {EMPTY: -1}

    def first(self, row: int, listener: Listener | None = None) -> Chain | None:
        """Return the first chain through an item, as ``Columns.row`` counts it; None where no chain holds it.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If that takes more work than a question may; the same is then said of all of its lot, without a search.
        """
        if row not in self._lot_of:
            return None
        while row not in self._known:
            number = self._lot_of[row]
            if number in self._open or len(self._open) >= _MOST_OPEN:
                raise Exhausted
            try:
                self._settle(number, listener)
            except Exhausted:
                self._open.add(number)
                raise
        return self._known[row]

    def in_order(self, row: int, listener: Listener | None = None) -> Iterator[list[Chain]]:
        """Yield all chains through an item, some at a time, in the order of ``optimum.best_chain``.

        Raises
        ------
        Cancelled, Exhausted
            As of ``first``.
        """
        if self.first(row, listener) is None:
            return
        known = 0
        for seen, around in enumerate(self._further[row].blocks(listener), 1):
            found = self._fitting(around, row)
            known += len(found)
            yield found
            if seen == _MOST_BLOCKS:
                break
        else:
            return
        alone = self._columns.only(~self._is_own | (self._columns.row == row))
        rest = islice(chains_in_order(alone, self._names, listener), known, None)
        while block := list(islice(rest, _BLOCK)):
            yield block

    def first_of(
        self, rows: Ints, listener: Listener | None = None, most: tuple[int, int] | None = None
    ) -> Chain | None:
        """Return the first of all chains through any of some items, by one search; None where no chain holds one.

        ``most`` are majors and cost that the chain may have, as of ``optimum.best_chain``.

        Raises
        ------
        Cancelled, Exhausted
            As of ``first``.
        """
        wanted = np.isin(self._columns.row, rows) & self._is_own
        if not wanted.any():
            return None
        return _proven(best_chain(self._columns.only(self._around | wanted), self._names, listener, most=most))

    def _settle(self, number: int, listener: Listener | None) -> None:
        """Answer some items of a lot, or part it; all of them where it is a single item."""
        lot = self._lots[number]
        found = self._first(self._with_best_of(lot, self._around), listener)
        if found is None:
            self._known |= dict.fromkeys(self._columns.row[lot].tolist())
            return
        broken = self._broken(self._places([found], lot))
        fits = ~broken.any(axis=1)
        self._answer(found, lot[fits])
        self._lots[number] = lot[:0]
        for part in self._parted(lot[~fits], broken[~fits], in_halves=not fits.any()):
            self._lot_of |= dict.fromkeys(self._columns.row[part].tolist(), len(self._lots))
            self._lots.append(part)

    def _first(self, columns: Columns, listener: Listener | None) -> Chain | None:
        """Return the first chain; that an item as good as many just misses a limit is soon known."""
        quick = best_chain(columns, self._names, listener, _QUICK_LABELS)
        if quick.is_proved:
            return quick.chain
        if quick.chain is None and not may_have_chains(columns, Effort(listener or Listener(), _PROOF_LABELS)):
            return None
        return _proven(best_chain(columns, self._names, listener))

    def _answer(self, around: Chain, lot: Ints) -> None:
        if len(lot):
            further = _Further(self._with_best_of(lot, ~self._is_own), self._names)
            for at, row in zip(lot.tolist(), self._columns.row[lot].tolist(), strict=True):
                self._known[row], self._further[row] = self._with_item(around, at), further

    def _with_best_of(self, lot: Ints, around: Mask) -> Columns:
        """Return the problem whose layer holds one item that costs nothing, as good as the best of a lot in each."""
        whole = self._columns
        kept = around.copy()
        kept[lot[0]] = True
        at = int(np.count_nonzero(kept[: lot[0]]))
        some = whole.only(kept)
        return replace(
            some,
            major=_with(some.major, at, 0),
            cost=_with(some.cost, at, 0),
            loads=(loads := _with(some.loads, at, whole.loads[lot].min(axis=0))),
            eased=loads,
            bears=_with(some.bears, at, whole.bears[lot].max()),
            demands=_with(some.demands, at, whole.demands[lot].min()),
        )

    def _places(self, around: list[Chain], lot: Ints) -> Ints:
        """Return the places of the items of chains, a chain a row; those of a lot stand in some of them, or in one."""
        places = np.array([[self._place[row] for row in chain.rows] for chain in around], np.int64)
        places = np.repeat(places, max(1, len(lot) // len(places)), axis=0)
        places[:, self._layer] = lot
        return places

    def _broken(self, places: Ints) -> Mask:
        """Say, by chain, which limits it breaks, and whether the held item is too weak or asks too much."""
        limits, own = self._columns.limits, places[:, self._layer]
        total = np.zeros((len(places), len(limits)))
        for of_layer in places.T:  # added up from the start, as each search does
            total += self._loads[of_layer]
        allowed = np.maximum(1e-9 * np.maximum(np.abs(total), np.abs(limits)), 1e-9)
        others = np.delete(places, self._layer, axis=1)
        weak = self._bears[own] < self._demands[others].max(axis=1, initial=0.0)
        asks = self._demands[own] > self._bears[others].min(axis=1, initial=np.inf)
        return np.column_stack([total > limits + allowed, weak, asks])

    def _fitting(self, around: list[Chain], row: int) -> list[Chain]:
        """Return the chains of an item with what stands around others, where that leaves room for it."""
        at = self._place[row]
        fits = ~self._broken(self._places(around, np.array([at]))).any(axis=1)
        return [self._with_item(around[number], at) for number in np.flatnonzero(fits).tolist()]

    def _with_item(self, around: Chain, at: int) -> Chain:
        """Return a chain whose item of the layer costs nothing with another in its place."""
        columns, layer = self._columns, self._layer
        rows = (*around.rows[:layer], int(columns.row[at]), *around.rows[layer + 1 :])
        return Chain(around.major + int(columns.major[at]), around.cost + int(columns.cost[at]), rows)

    def _parted(self, lot: Ints, broken: Mask, *, in_halves: bool) -> Iterator[Ints]:
        """Yield the parts of a lot by the first thing that is broken, in halves where that is the same for all."""
        if not len(lot):
            return
        first = broken.argmax(axis=1)
        reasons = np.unique(first).tolist()
        if in_halves and len(reasons) == 1:
            order = np.argsort(self._figure(reasons[0])[lot], kind="stable")
            yield from np.array_split(lot[order], 2)
            return
        yield from (lot[first == reason] for reason in reasons)

    def _figure(self, reason: int) -> Floats:
        """Return what of each item something is broken by, less being better."""
        columns, count = self._columns, len(self._columns.limits)
        if reason < count:
            return np.asarray(columns.loads[:, reason])
        return -columns.bears if reason == count else columns.demands


def _proven(answer: Answer) -> Chain | None:
    if not answer.is_proved:
        raise Exhausted
    return answer.chain


def _with(column: NDArray[_Kind], at: int, value: ArrayLike) -> NDArray[_Kind]:
    """Return a column with one of its rows changed."""
    other = column.copy()
    other[at] = value
    return other


class _Further:
    """All chains of a problem in order, looked for as far as somebody asks."""

    def __init__(self, columns: Columns, names: Named) -> None:
        self._columns, self._names = columns, names
        self._known: list[list[Chain]] = []
        self._rest: Iterator[Chain] | None = None

    def blocks(self, listener: Listener | None) -> Iterator[list[Chain]]:
        """Yield the chains, some at a time; none is empty."""
        number = 0
        while number < len(self._known) or self._looked_for(listener):
            yield self._known[number]
            number += 1

    def _looked_for(self, listener: Listener | None) -> bool:
        """Look for further chains, and say whether there are any."""
        if self._rest is None:
            self._known = []
            self._rest = chains_in_order(self._columns, self._names, listener)
        try:
            found = list(islice(self._rest, _BLOCK))
        except BaseException:
            self._rest = None  # a search that was stopped begins anew
            raise
        if found:
            self._known.append(found)
        return bool(found)
