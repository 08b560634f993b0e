"""How many chains a problem has, up to a number: in no order, and whatever they cost.

Chains in order are dear where very many just miss a limit; to count them, one will do to begin with. Where another item
may take an item's place in it, there is another chain, and so on from that: near copies of parts make many.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator
from itertools import islice

import numpy as np

from spoutline.search.answer import Count, Decision
from spoutline.search.chain import Named
from spoutline.search.columns import Columns
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.enumeration import EMPTY, Enumeration
from spoutline.search.ground import Ground
from spoutline.search.item_table import Floats, Ints, Mask
from spoutline.search.level_order import LevelOrder
from spoutline.search.listener import Listener
from spoutline.search.optimum import any_chain
from spoutline.search.passes import Passes
from spoutline.search.sums import Sums

_QUICK_LABELS = 20_000  # looked at before one chain is looked for and others from it
_Rows = tuple[int, ...]  # the items of a chain by layer, ``EMPTY`` for an empty layer


def count_chains(columns: Columns, names: Named, most: int, listener: Listener | None = None) -> Count:
    """Return how many chains keep the limits; ``most`` where there are as many or more.

    Parameters
    ----------
    columns
        The chain to fill; ``is_exact`` must hold.
    names
        Names of the items as ``Columns.row`` counts them.
    most
        Where counting ends; at least one.
    listener
        Told of the labels looked at; may stop the search.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    if np.isneginf(columns.limits).any():
        return Count(0, Decision.DECIDED)
    listener, columns = listener or Listener(), columns.trimmed()
    soon = _soon_counted(columns, most, listener)
    if soon is not None:
        return Count(soon, Decision.DECIDED)
    least = 0
    try:
        first = any_chain(columns, names, listener)
        if first is None:
            return Count(0, Decision.DECIDED)
        least = 1
        least = min(most, len(from_one(columns, first.rows, most, listener)))
        if least == most:
            return Count(most, Decision.DECIDED)
        in_order = LevelOrder(Ground.of(columns), names, Effort(listener)).in_order()
        return Count(sum(1 for _ in islice(in_order, most)), Decision.DECIDED)
    except Exhausted:
        return Count(least, Decision.UNDECIDED)


def _soon_counted(columns: Columns, most: int, listener: Listener) -> int | None:
    """Return how many there are where few labels tell; None where they do not."""
    held = columns.at_no_cost()
    if not held.can_be_filled():
        return 0
    sums = Sums.of(held.limits)
    held = held.only(sums.floor(held, Passes(held)) < np.inf)
    if not held.can_be_filled():
        return 0
    count, effort = 0, Effort(listener, _QUICK_LABELS)
    try:
        for found in Enumeration(held, Passes(held), sums, top=0, effort=effort, is_narrow=True).chains():
            count += len(found)
            if count >= most:
                return most
    except Exhausted:
        return None
    return count


def from_one(columns: Columns, first: _Rows, most: int, listener: Listener) -> set[_Rows]:
    """Return chains that are reached from one by another item in one layer at a time: ``most`` or more, or all such.

    ``columns`` must be trimmed, and ``first`` a chain within their limits, as ``Columns.row`` counts its items.
    """
    neighbours = _Neighbours(columns)
    found, ahead, effort = {first}, deque([first]), Effort(listener)
    while ahead and len(found) < most:
        new = list(dict.fromkeys(rows for rows in neighbours.of(ahead.popleft()) if rows not in found))
        effort.spend(len(new))
        found.update(new)
        ahead.extend(new)
    return found


class _Neighbours:
    """Which chains differ from one in a single layer."""

    def __init__(self, columns: Columns) -> None:
        self._columns = columns
        # the last row of each is that of an empty layer
        self._loads = np.concatenate([columns.loads, np.zeros((1, len(columns.limits)))])
        self._bears, self._demands = np.append(columns.bears, np.inf), np.append(columns.demands, 0.0)
        self._place = {row: place for place, row in enumerate(columns.row.tolist())} | {EMPTY: EMPTY}

    def of(self, rows: _Rows) -> Iterator[_Rows]:
        """Yield the chains within the limits that have another item in one layer than the chain ``rows``."""
        chain = np.array([self._place[row] for row in rows])
        for depth in range(len(chain)):
            others = self._others(chain, depth)
            for at in others[self._fits(chain, depth, others)].tolist():
                yield (*rows[:depth], EMPTY if at == EMPTY else int(self._columns.row[at]), *rows[depth + 1 :])

    def _others(self, chain: Ints, depth: int) -> Ints:
        """Return the items, or ``EMPTY``, that the layer could have by ports and strengths."""
        columns = self._columns
        before, after = _filled(chain[:depth]), _filled(chain[depth + 1 :])
        port = int(columns.exit[before[-1]]) if len(before) else columns.start
        rest = np.append(before, after)
        demands, bears = self._demands[rest].max(initial=0.0), self._bears[rest].min(initial=np.inf)
        first, last = np.searchsorted(columns.layer, [depth, depth + 1])
        at = np.arange(first, last)
        may: Mask = columns.meets[port, columns.entry[at]] & (self._bears[at] >= demands) & (self._demands[at] <= bears)
        if len(after):
            may &= columns.meets[columns.exit[at], columns.entry[after[0]]]
        found = at[may & (at != chain[depth])]
        is_open = not len(after) or bool(columns.meets[port, columns.entry[after[0]]])
        return np.append(found, EMPTY) if columns.optional[depth] and chain[depth] != EMPTY and is_open else found

    def _fits(self, chain: Ints, depth: int, others: Ints) -> Mask:
        """Say with which of the others in a layer the chain keeps every limit, added up from the start."""
        limits = self._columns.limits  # all finite, as the loads are
        total: Floats = np.zeros((len(others), len(limits)))
        for layer, at in enumerate(chain.tolist()):
            total += self._loads[others] if layer == depth else self._loads[at]
        return np.asarray(
            (total <= limits + 1e-9 * np.maximum(np.maximum(np.abs(total), np.abs(limits)), 1.0)).all(axis=1)
        )


def _filled(chain: Ints) -> Ints:
    return np.asarray(chain[chain != EMPTY])
