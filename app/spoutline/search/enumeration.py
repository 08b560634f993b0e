"""Every chain up to a cost, many at once: portions of labels are followed layer by layer, the first portion first.

A portion is expanded in one go against all items of the next layer; what it leads to is done before the rest of its
layer is taken up, so that what is held in memory grows with the number of layers and never with that of chains.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns
from spoutline.search.effort import Effort
from spoutline.search.item_table import Floats, Ints, Mask
from spoutline.search.passes import Passes
from spoutline.search.staircase import Staircases
from spoutline.search.sums import Sums, near

_PORTION = 1024  # labels expanded in one go
_FIRST_PORTION, _PORTION_GROWTH = 8, 1.3  # where one chain is asked for: straight to an end, and ever broader
_PAIRS = 1 << 18  # pairs of label and item looked at in one go, unless a single label has more
ChainTest = Callable[[Ints], Mask]  # of chains, by layer the numbers of their items as ``Columns.row`` counts them
EMPTY = -1  # instead of an item, where an optional layer stays empty


@frozen
class Chains:
    """Complete chains within every limit: their costs and, by layer, their items (``EMPTY``: none)."""

    cost: Ints
    items: Ints

    def __len__(self) -> int:
        return len(self.cost)


@frozen
class _Labels:
    """Chains filled up to one layer, a row each; ``sums`` are cost and eased loads."""

    port: Ints
    sums: Floats
    bears: Floats
    demands: Floats
    items: Ints

    @property
    def depth(self) -> int:
        return int(self.items.shape[1])

    def __len__(self) -> int:
        return len(self.port)


@frozen
class _Ways:
    """Ways on from labels: one more item each, ``promise`` the cost that no chain along the way goes below."""

    labels: _Labels
    label: Ints
    item: Ints
    promise: Floats

    def __len__(self) -> int:
        return len(self.label)

    def part(self, some: slice | Ints) -> _Ways:
        return _Ways(self.labels, self.label[some], self.item[some], self.promise[some])


@frozen
class _Group:
    """The items of one layer and entry, by what they still need of the leading sum."""

    entry: int
    items: Ints
    leading: Floats


class Enumeration:
    """The chains of a problem that cost no more than ``top``, which may be lowered meanwhile.

    Parameters
    ----------
    columns, passes
        A trimmed problem, its majors left aside, and the passes over it.
    sums
        Bound every step; the last of its costs decides what is most promising.
    top
        The highest cost asked for.
    effort
        Counts the labels.
    order
        By item, its place in an order of its layer: chains then come in the order of these places, an empty layer
        before any item. None: the most promising labels first.
    is_narrow
        Whether to begin with few labels at a time, of equals those first that ask least of the others' strength: a
        first chain is found sooner, all of them later.
    test
        Says which of some complete chains count; None for all.
    stairs
        A bound that is exact in one limit, for the same items and sums and this top or a higher one.
    """

    def __init__(
        self,
        columns: Columns,
        passes: Passes,
        sums: Sums,
        *,
        top: int,
        effort: Effort,
        order: Ints | None = None,
        is_narrow: bool = False,
        test: ChainTest | None = None,
        stairs: Staircases | None = None,
    ) -> None:
        self.columns, self.sums, self.top = columns, sums, top
        self._stairs = stairs
        self._effort, self._order, self._test = effort, order, test
        self._portion = float(_FIRST_PORTION if is_narrow else _PORTION)
        own = sums.figures(columns)
        self._to = passes.backward(own)
        self._still = own + self._to[columns.layer + 1, columns.exit]
        self._mix = np.concatenate([sums.weigh[:, None], sums.prices], axis=1).T
        self._base = np.concatenate(
            [np.column_stack([columns.cost, columns.eased]), np.zeros((1, 1 + len(columns.limits)))]
        )  # the last row is that of an empty layer
        self._leading = sums.costs - 1
        self._is_coupled = bool((columns.demands > 0.0).any())
        self._asks = np.append(columns.demands, 0.0) if is_narrow and self._is_coupled else None
        self._groups = self._grouped()

    def _grouped(self) -> list[list[_Group]]:
        columns = self.columns
        leading = self._still[:, self._leading]
        by_need = np.lexsort((leading, columns.entry, columns.layer))
        groups: list[list[_Group]] = [[] for _ in range(columns.depth)]
        key = columns.layer[by_need] * columns.meets.shape[1] + columns.entry[by_need]
        for items in np.split(by_need, np.flatnonzero(key[1:] != key[:-1]) + 1):
            if len(items):
                entry = int(columns.entry[items[0]])
                groups[int(columns.layer[items[0]])].append(_Group(entry, items, leading[items]))
        return groups

    def chains(self) -> Iterator[Chains]:
        """Yield the chains in portions; none is empty.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If more labels would have to be looked at than the effort allows.
        """
        stack = [self._root()]
        while stack:
            ways, size = stack.pop(), int(self._portion)
            self._portion = min(self._portion * _PORTION_GROWTH, float(_PORTION))
            if len(ways) > size:
                stack.append(ways.part(slice(size, None)))
                ways = ways.part(slice(0, size))
            labels = self._taken(ways)
            self._effort.spend(len(labels))
            if labels.depth == self.columns.depth:
                found = self._exact(labels)
                if len(found):
                    yield found
                continue
            further = self._further(labels)
            if further is not None:
                if len(further):
                    stack.append(further)
                continue
            half = len(ways) // 2  # too many pairs at once
            stack += [ways.part(slice(half, None)), ways.part(slice(0, half))]

    def _root(self) -> _Ways:
        none = np.zeros(1, np.int64)
        empty = _Labels(
            np.array([self.columns.start]),
            np.zeros((1, self._base.shape[1])),
            np.full(1, np.inf),
            np.zeros(1),
            np.zeros((1, 0), np.int64),
        )
        return _Ways(empty, none, np.full(1, EMPTY), np.full(1, -np.inf))

    def _taken(self, ways: _Ways) -> _Labels:
        """Return the labels at the ends of the ways that may still end below the top as it is now."""
        if not ways.labels.depth and ways.promise[0] == -np.inf:
            return ways.labels
        ways = ways.part(np.flatnonzero(ways.promise <= near(self.top)))
        before, item, columns = ways.labels, ways.item, self.columns
        port, bears, demands = before.port[ways.label], before.bears[ways.label], before.demands[ways.label]
        if len(columns):
            filled = item != EMPTY
            port = np.where(filled, columns.exit[item], port)
            bears = np.minimum(bears, np.where(filled, columns.bears[item], np.inf))
            demands = np.maximum(demands, np.where(filled, columns.demands[item], 0.0))
        sums = before.sums[ways.label] + self._base[item]
        items = np.concatenate([before.items[ways.label], item[:, None]], axis=1)
        return _Labels(port, sums, bears, demands, items)

    def _further(self, labels: _Labels) -> _Ways | None:
        """Return the ways on from the labels; None where several labels make too many pairs to look at."""
        depth = labels.depth
        slack = self.sums.most(self.top) - labels.sums @ self._mix
        label, item, still = [], [], []
        if self.columns.optional[depth]:
            rest = self._to[depth + 1][labels.port]
            stay = np.flatnonzero((rest <= slack).all(axis=1))
            label.append(stay)
            item.append(np.full(len(stay), EMPTY))
            still.append(rest[stay, self._leading])
        left = _PAIRS
        for group in self._groups[depth]:
            who = np.flatnonzero(self.columns.meets[labels.port, group.entry])
            count = np.searchsorted(group.leading, slack[who, self._leading], side="right")
            pairs_here = int(count.sum())
            self._effort.look(pairs_here)
            left -= pairs_here
            if left < 0 and len(labels) > 1:
                return None
            pairs = self._pairs(labels, slack, group.items, who, count)
            label.append(pairs[0])
            item.append(pairs[1])
            still.append(self._still[pairs[1], self._leading])
        if not label:
            label, item, still = [np.zeros(0, np.int64)], [np.zeros(0, np.int64)], [np.zeros(0)]
        at, what = np.concatenate(label), np.concatenate(item)
        promise = np.concatenate(still) - slack[at, self._leading] + self.top
        if self._stairs is not None and len(at):
            port = np.where(what == EMPTY, labels.port[at], np.append(self.columns.exit, 0)[what])
            promise = np.maximum(
                promise, self._stairs.promise(depth, at, what, port=port, sums=labels.sums, slack=slack)
            )
            some = promise <= near(self.top)
            at, what, promise = at[some], what[some], promise[some]
        return _Ways(labels, at, what, promise).part(self._sorted(at, what, promise))

    def _pairs(self, labels: _Labels, slack: Floats, items: Ints, who: Ints, count: Ints) -> tuple[Ints, Ints]:
        """Return the pairs of label and item that keep every sum and all strengths; ``count`` items by label may."""
        label = np.repeat(who, count)
        item = items[np.arange(len(label)) - np.repeat(np.cumsum(count) - count, count)]
        if self._is_coupled and len(label):
            columns = self.columns
            stands = (columns.bears[item] >= labels.demands[label]) & (columns.demands[item] <= labels.bears[label])
            label, item = label[stands], item[stands]
        for index in range(self._still.shape[1]):
            if index != self._leading and len(label):
                keeps = self._still[item, index] <= slack[label, index]
                label, item = label[keeps], item[keeps]
        return label, item

    def _sorted(self, label: Ints, item: Ints, promise: Floats) -> Ints:
        if self._order is None and self._asks is not None:
            return np.lexsort((self._asks[item], np.rint(promise)))
        if self._order is None:
            return np.argsort(promise, kind="stable")
        place = np.where(item == EMPTY, EMPTY, self._order[item]) if len(self._order) else item
        return np.lexsort((place, label))

    def _exact(self, labels: _Labels) -> Chains:
        """Return the chains that keep every limit to the letter, added up from the start as the walk does."""
        columns, items = self.columns, labels.items
        total = np.zeros((len(items), len(columns.limits)))
        loads = np.concatenate([columns.loads, np.zeros((1, len(columns.limits)))])
        for depth in range(items.shape[1]):
            total += loads[items[:, depth]]
        allowed = np.maximum(1e-9 * np.maximum(np.abs(total), np.abs(columns.limits)), 1e-9)
        cost = np.rint(labels.sums[:, 0]).astype(np.int64)
        good = (total <= columns.limits + allowed).all(axis=1) & (cost <= self.top)
        cost, items = cost[good], items[good]
        if self._test is None or not len(cost):
            return Chains(cost, items)
        counts = self._test(np.append(columns.row, EMPTY)[items])
        return Chains(cost[counts], items[counts])
