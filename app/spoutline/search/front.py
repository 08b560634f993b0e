"""The whole front of a chain problem: every chain that no other outdoes in several figures at once.

Labels are set layer by layer. A label is a chain filled up to some layer; what couples it to the rest is its open
port, its loads, what it bears and what it asks others to bear. Of two labels at one port, one that is no more on any
axis and couples no worse takes the other's place. Loads count only as far as they can still break a limit.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field, replace

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns, heads
from spoutline.search.effort import Effort
from spoutline.search.enumeration import EMPTY
from spoutline.search.item_table import Floats, Ints, Mask
from spoutline.search.passes import Passes
from spoutline.search.promising import promising
from spoutline.search.undominated import Rows, not_outdone, undominated

_PAIRS = 1 << 17  # pairs of label and item looked at in one go, unless a single label has more
_WIDTH = 64  # labels at a port that a first quick look goes on with
_RELATIVE, _ABSOLUTE = 1e-9, 1e-9  # allowance of load sums, as in ``bounds.within``


@frozen
class Axes:
    """What chains are weighed by: whole numbers of items, less is better.

    Parameters
    ----------
    figures
        A row for each item as ``Columns.row`` counts them, a column for each axis.
    adds
        By axis: whether figures add up along the chain; otherwise the greatest of them counts, none below 0.
    tie
        By item, adding up: of chains that are equal on all axes, the one with least of it is meant.
    grain
        By axis: chains whose figures differ by less in a layer may stand for each other; 1 tells all apart.
    is_by_layer
        Whether the first layer in which ``tie`` differs decides instead of its sum, an empty layer before any item;
        none may be negative.
    """

    figures: Ints
    adds: Mask
    tie: Ints
    grain: Ints
    is_by_layer: bool = False

    @classmethod
    def exact(cls, figures: Ints, adds: Sequence[bool], tie: Ints) -> Axes:
        """Return axes on which all chains are told apart."""
        return cls(figures, np.array(adds, np.bool_), tie, np.ones(len(adds), np.int64))

    def coarse(self, grain: Sequence[int]) -> Axes:
        """Return the same axes with other grains."""
        return replace(self, grain=np.maximum(1, np.array(grain, np.int64)))


@frozen
class FrontChain:
    """A chain of the front: its figures by axis, its tie, and its items by layer (``EMPTY``: none)."""

    figures: tuple[int, ...]
    tie: int
    rows: tuple[int, ...]


@frozen
class _Labels:
    """Chains filled up to one layer, a row each."""

    port: Ints
    axes: Ints
    tie: Ints
    loads: Floats
    bears: Floats
    demands: Floats
    items: Ints
    trail: Ints  # which of the chains that do not count it begins, as a number of its layer; below 0 for none

    def __len__(self) -> int:
        return len(self.port)

    def part(self, some: Ints | Mask) -> _Labels:
        return _Labels(
            self.port[some],
            self.axes[some],
            self.tie[some],
            self.loads[some],
            self.bears[some],
            self.demands[some],
            self.items[some],
            self.trail[some],
        )


@frozen
class _Rest:
    """What is still to come, by layer and open port: the least of axes, tie and loads, and the most of loads."""

    axes: Floats
    tie: Floats
    loads: Floats
    most: Floats


def ideal(columns: Columns, axes: Axes) -> tuple[int, ...] | None:
    """Return figures that no chain of meeting ports goes below on any axis; None where ports leave no chain."""
    setting = LabelSetting(columns, axes, Effort())
    least = setting.rest.axes[0, columns.start]
    return None if not np.isfinite(least).all() else tuple(int(one) for one in least)


def front(
    columns: Columns,
    axes: Axes,
    effort: Effort,
    *,
    without: Iterable[tuple[int, ...]] = (),
    known: Iterable[FrontChain] = (),
    told: Callable[[list[FrontChain]], None] | None = None,
) -> list[FrontChain]:
    """Return the chains that no other chain within the limits outdoes on the axes, in the order of their figures.

    A chain outdoes another where it is no more on any axis and less on one. Of chains that are equal on all axes one is
    returned, that with the least tie. With a grain of more than 1 a chain may be left out where another one is returned
    that is at most ``grain`` times the number of layers more on any axis that adds up.

    Parameters
    ----------
    columns
        The chain to fill, costs left aside; any majors too.
    axes
        What the chains are weighed by.
    effort
        Counts labels; may end the search.
    without
        Chains that do not count, by their items as ``Columns.row`` counts them.
    known
        Chains found elsewhere: what one of them outdoes or equals is left out, they themselves are not returned.
    told
        Makes the search begin with a quick look, and is handed what that finds: chains within the limits, none outdoing
        another, most of the front but not surely. They spare the search what they outdo and come before their equals.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    Exhausted
        If more labels would have to be looked at than the effort allows.
    """
    if np.isneginf(columns.limits).any():
        return []
    setting = LabelSetting(columns, axes, effort, tuple(without), tuple(known))
    if told is None:
        return setting.chains()
    quick = setting.quick_chains(_WIDTH)
    told(quick)
    setting.know(quick)
    return merged([*quick, *setting.chains()])


@dataclass
class LabelSetting:
    """One problem whose front is asked for."""

    whole: Columns
    axes: Axes
    effort: Effort
    without: tuple[tuple[int, ...], ...] = ()
    known: tuple[FrontChain, ...] = ()
    columns: Columns = field(init=False)
    rest: _Rest = field(init=False)

    def __post_init__(self) -> None:
        """Leave out what cannot bind or be part of the front, and look ahead."""
        trimmed = self.whole.trimmed()
        self.columns = trimmed
        self._take_figures()
        if len(trimmed):
            self.columns = trimmed.only(self._worth_looking_at())
            self._take_figures()
        self._trails = self._banned_trails()
        self._width: int | None = None
        self.know(())
        self.rest = self._looked_ahead()
        columns = self.columns
        self._most_demand = _from_the_end(columns, columns.demands, np.maximum, 0.0)
        self._least_bears = _from_the_end(columns, columns.bears, np.minimum, np.inf)

    def _take_figures(self) -> None:
        rows = self.columns.row
        nothing = np.zeros((1, self.axes.figures.shape[1]), np.int64)
        self._figures = np.concatenate([self.axes.figures[rows], nothing])  # the last row is that of an empty layer
        self._tie = np.append(self.axes.tie[rows], 0)
        columns = self.columns
        self._loads = np.concatenate([columns.eased, np.zeros((1, len(columns.limits)))])
        self._bears = np.append(columns.bears, np.inf)
        self._demands = np.append(columns.demands, 0.0)

    def _worth_looking_at(self) -> Mask:
        """Say which items no other of their layer and ports outdoes: in no axis more, coupling no worse."""
        columns = self.columns
        opens, entries = columns.meets.shape
        first = heads((columns.layer * entries + columns.entry) * opens + columns.exit)
        banned = {row for chain in self.without for row in chain}
        may = np.array([int(row) not in banned for row in columns.row.tolist()], np.bool_)
        later = _from_the_end(columns, columns.demands, np.maximum, 0.0)[0]
        keeps = np.zeros(len(columns), np.bool_)
        for start, end in zip(first.tolist(), [*first[1:].tolist(), len(columns)], strict=True):
            some = np.arange(start, end)
            keeps[some[self._best(some, some, may[some], np.minimum(columns.bears[some], later))]] = True
        return keeps

    def _best(self, some: Ints, items: Ints, may: Mask, bears: Floats) -> Ints:
        figures = np.column_stack(
            [self._grained(self._figures[items]), self._loads[items], self._demands[some], -bears]
        )
        return undominated(
            Rows(figures, self._tie[items].astype(np.float64), self._decisive(figures.shape[1]), may), self.effort
        )

    def _grained(self, figures: Ints) -> Floats:
        return np.where(self.axes.adds, figures // self.axes.grain * self.axes.grain, figures).astype(np.float64)

    def _decisive(self, columns: int) -> Mask:
        decisive = np.zeros(columns, np.bool_)
        decisive[: len(self.axes.adds)] = self.axes.adds
        return decisive

    def _banned_rows(self) -> Ints:
        """Return the chains that do not count, by the rows of the columns in hand."""
        place = {row: at for at, row in enumerate(self.columns.row.tolist())} | {EMPTY: EMPTY}
        found = [[place[row] for row in chain] for chain in self.without if all(row in place for row in chain)]
        return np.array(found, np.int64).reshape(len(found), self.columns.depth)

    def _banned_trails(self) -> list[Ints]:
        """Return, by layer, what leads one item further along the chains that do not count, sorted."""
        chains = self._banned_rows()
        trails: list[Ints] = []
        before = np.zeros(len(chains), np.int64)
        for depth in range(self.columns.depth):
            keys, before = np.unique(self._step(before, chains[:, depth]), return_inverse=True)
            trails.append(keys)
        return trails

    def _step(self, before: Ints, item: Ints) -> Ints:
        return before * (len(self.columns) + 1) + item + 1

    def _trail(self, before: Ints, item: Ints, depth: int) -> Ints:
        """Return the trails of labels that had other ones before an item."""
        keys = self._trails[depth]
        if not len(keys):
            return np.full(len(item), -1)
        wanted = self._step(before, item)
        at = np.minimum(np.searchsorted(keys, wanted), len(keys) - 1)
        return np.where((before >= 0) & (keys[at] == wanted), at, -1)

    def _looked_ahead(self) -> _Rest:
        columns, adds = self.columns, self.axes.adds
        figures, count = self._figures[:-1], len(adds)
        loads = self._loads[:-1]
        tie = self._tie[:-1] * (not self.axes.is_by_layer)
        summed = np.column_stack([figures * adds, tie, loads, -loads]).astype(np.float64)
        to = Passes(columns).backward(summed)
        axes = to[:, :, :count].copy()
        for axis in np.flatnonzero(~adds).tolist():
            axes[:, :, axis] = _least_greatest(columns, figures[:, axis])
        limits = len(columns.limits)
        return _Rest(axes, to[:, :, count], to[:, :, count + 1 : count + 1 + limits], -to[:, :, count + 1 + limits :])

    def know(self, chains: Iterable[FrontChain]) -> None:
        """Leave out from now on what some chains outdo or equal."""
        self.known = (*self.known, *chains)
        figures = np.array([one.figures for one in self.known], np.float64).reshape(-1, len(self.axes.adds))
        self._known_rows = figures, np.array([one.tie for one in self.known], np.float64)

    def quick_chains(self, width: int) -> list[FrontChain]:
        """Return chains within the limits that go on from about ``width`` labels at a port, none outdoing another."""
        self._width = width
        try:
            return self.chains()
        finally:
            self._width = None

    def chains(self) -> list[FrontChain]:
        """Return the front; see ``front``."""
        columns = self.columns
        if not columns.can_be_filled() or not np.isfinite(self.rest.axes[0, columns.start]).all():
            return []
        labels = _Labels(
            np.array([columns.start]),
            np.zeros((1, len(self.axes.adds)), np.int64),
            np.zeros(1, np.int64),
            np.zeros((1, len(columns.limits))),
            np.full(1, np.inf),
            np.zeros(1),
            np.zeros((1, 0), np.int64),
            np.zeros(1, np.int64),
        )
        for depth in range(columns.depth):
            labels = self._next(labels, depth)
        return self._ended(labels)

    def _next(self, labels: _Labels, depth: int) -> _Labels:
        """Return the labels one layer further on that may still lead to the front."""
        grown: list[_Labels] = []
        if self.columns.optional[depth]:
            every = np.arange(len(labels))
            grown.append(self._taken(labels, every, np.full(len(labels), EMPTY), depth))
        for items in self._by_entry(depth):
            entry = int(self.columns.entry[items[0]])
            who = np.flatnonzero(self.columns.meets[labels.port, entry])
            step = max(1, _PAIRS // len(items))
            for start in range(0, len(who), step):
                some = who[start : start + step]
                self.effort.spend(len(some) * len(items))
                taken = self._taken(labels, np.repeat(some, len(items)), np.tile(items, len(some)), depth)
                grown.append(taken)
        if not grown:
            return labels.part(np.zeros(0, np.int64))
        return self._told_apart(self._thinned(_joined(grown), depth) if len(grown) > 1 else grown[0])

    def _told_apart(self, labels: _Labels) -> _Labels:
        """Return the labels with ties that stay small where these are places in an order of all labels."""
        if not self.axes.is_by_layer:
            return labels
        return replace(labels, tie=np.unique(labels.tie, return_inverse=True)[1].reshape(-1).astype(np.int64))

    def _tied(self, before: Ints, item: Ints) -> Ints:
        """Return the ties of labels with one more item."""
        if not self.axes.is_by_layer:
            return np.asarray(before + self._tie[item])
        most = int(self._tie.max(initial=0)) + 2
        return np.asarray(before * most + np.where(item == EMPTY, 0, self._tie[item] + 1))

    def _by_entry(self, depth: int) -> list[Ints]:
        columns = self.columns
        low, high = np.searchsorted(columns.layer, [depth, depth + 1]).tolist()
        rows = np.arange(low, high)
        return [part for part in np.split(rows, heads(columns.entry[low:high])[1:]) if len(part)]

    def _taken(self, labels: _Labels, who: Ints, item: Ints, depth: int) -> _Labels:
        """Return labels with one more item each, those alone that may lead to the front."""
        columns, rest = self.columns, self.rest
        filled = item != EMPTY
        if len(columns):
            stands = self._bears[item] >= labels.demands[who]
            stands &= self._demands[item] <= labels.bears[who]
            port = np.where(filled, columns.exit[item], labels.port[who])
        else:
            stands, port = np.ones(len(item), np.bool_), labels.port[who]
        stands &= np.isfinite(rest.tie[depth + 1, port])
        who, item, port = who[stands], item[stands], port[stands]
        loads = labels.loads[who] + self._loads[item]
        keeps = (loads + rest.loads[depth + 1, port] <= self._highest(columns.limits)).all(axis=1)
        who, item, port, loads = who[keeps], item[keeps], port[keeps], loads[keeps]
        own, adds = self._figures[item], self.axes.adds
        before = labels.axes[who]
        axes = np.where(adds, before + own, np.maximum(before, own))
        least = rest.axes[depth + 1, port].astype(np.int64)
        axes = np.where(adds, axes, np.maximum(axes, least))  # what must still come at least counts already
        found = _Labels(
            port,
            axes,
            self._tied(labels.tie[who], item),
            np.maximum(loads, columns.limits - rest.most[depth + 1, port]),
            np.minimum(np.minimum(labels.bears[who], self._bears[item]), self._most_demand[depth + 1]),
            np.maximum(np.maximum(labels.demands[who], self._demands[item]), self._least_bears[depth + 1]),
            np.concatenate([labels.items[who], item[:, None]], axis=1),
            self._trail(labels.trail[who], item, depth),
        )
        return self._thinned(self._not_known(found, depth), depth)

    def _highest(self, limits: Floats) -> Floats:
        return limits + np.maximum(_RELATIVE * np.abs(limits), _ABSOLUTE)

    def _not_known(self, labels: _Labels, depth: int) -> _Labels:
        """Return the labels without those that no chain of can come before the known ones."""
        if not self.known or not len(labels):
            return labels
        tie = labels.tie + self.rest.tie[depth + 1, labels.port]
        self.effort.look(len(labels) * len(self.known))
        return labels.part(not_outdone(self._hope(labels, depth), tie, *self._known_rows))

    def _hope(self, labels: _Labels, depth: int) -> Floats:
        """Return, by label and axis, the least figure that a chain of it can come to."""
        least = self.rest.axes[depth + 1, labels.port]
        return np.asarray(np.where(self.axes.adds, labels.axes + least, np.maximum(labels.axes, least)))

    def _promising(self, labels: _Labels, depth: int, width: int) -> _Labels:
        limits = self.columns.limits
        loads = labels.loads + self.rest.loads[depth + 1, labels.port]
        shares = loads / np.where(np.abs(limits) > _ABSOLUTE, np.abs(limits), 1.0)
        used = shares.max(axis=1) if len(limits) else np.zeros(len(labels))
        return labels.part(promising(labels.port, self._hope(labels, depth), used, width))

    def _thinned(self, labels: _Labels, depth: int) -> _Labels:
        """Return the labels that no other at the same port outdoes; of a quick look those gone on with."""
        if len(labels) < 2:
            return labels
        if self._width is not None:
            return self._promising(labels, depth, self._width)
        may = labels.trail < 0  # what begins a chain that does not count takes no other's place
        figures = np.column_stack([self._grained(labels.axes), labels.loads, labels.demands, -labels.bears])
        figures = figures[:, (figures != figures[0]).any(axis=0) | (np.arange(figures.shape[1]) < len(self.axes.adds))]
        decisive, tie = self._decisive(figures.shape[1]), labels.tie.astype(np.float64)
        order = np.argsort(labels.port, kind="stable")
        kept = []
        for some in np.split(order, heads(labels.port[order])[1:]):
            kept.append(some[undominated(Rows(figures[some], tie[some], decisive, may[some]), self.effort)])
        return labels.part(np.sort(np.concatenate(kept)))

    def _ended(self, labels: _Labels) -> list[FrontChain]:
        """Return the front of complete chains, every limit kept to the letter."""
        columns, items = self.columns, labels.items
        total = np.zeros((len(items), len(columns.limits)))
        loads = np.concatenate([columns.loads, np.zeros((1, len(columns.limits)))])
        for depth in range(items.shape[1]):
            total += loads[items[:, depth]]
        allowed = np.maximum(_RELATIVE * np.maximum(np.abs(total), np.abs(columns.limits)), _ABSOLUTE)
        good: Mask = np.asarray((total <= columns.limits + allowed).all(axis=1))
        if self.columns.depth:
            good &= labels.trail < 0
        labels = labels.part(good)
        figures = labels.axes.astype(np.float64)
        every = np.ones(figures.shape[1], np.bool_)
        best = labels.part(undominated(Rows(figures, labels.tie.astype(np.float64), every), self.effort))
        return sorted((self._chain(best, at) for at in range(len(best))), key=lambda one: (one.figures, one.rows))

    def _chain(self, labels: _Labels, at: int) -> FrontChain:
        rows = self.columns.row
        chosen = tuple(EMPTY if item == EMPTY else int(rows[item]) for item in labels.items[at].tolist())
        return FrontChain(tuple(labels.axes[at].tolist()), int(labels.tie[at]), chosen)


def merged(chains: Iterable[FrontChain]) -> list[FrontChain]:
    """Return the front of chains of several problems, in the order of their figures; of equals the first stays."""
    found = list(chains)
    if not found:
        return []
    figures = np.array([one.figures for one in found], np.float64)
    tie = np.array([one.tie for one in found], np.float64)
    best = undominated(Rows(figures, tie, np.ones(figures.shape[1], np.bool_)))
    return sorted((found[at] for at in best.tolist()), key=lambda one: one.figures)


def _joined(parts: Sequence[_Labels]) -> _Labels:
    return _Labels(
        np.concatenate([one.port for one in parts]),
        np.concatenate([one.axes for one in parts]),
        np.concatenate([one.tie for one in parts]),
        np.concatenate([one.loads for one in parts]),
        np.concatenate([one.bears for one in parts]),
        np.concatenate([one.demands for one in parts]),
        np.concatenate([one.items for one in parts]),
        np.concatenate([one.trail for one in parts]),
    )


def _from_the_end(columns: Columns, figure: Floats, best: np.ufunc, nothing: float) -> Floats:
    """Return, by layer, the best of a figure over the items of this layer and all that come after it."""
    found = np.full(columns.depth + 1, nothing)
    first = heads(columns.layer)
    if len(first):
        found[columns.layer[first]] = best.reduceat(figure, first)
    return np.asarray(best.accumulate(found[::-1])[::-1])


def _least_greatest(columns: Columns, figure: Ints) -> Floats:
    """Return, by layer and open port, the least that the greatest figure still to come can be."""
    to = np.zeros((columns.depth + 1, len(columns.meets)))
    bounds = np.searchsorted(columns.layer, np.arange(columns.depth + 1))
    for depth in range(columns.depth - 1, -1, -1):
        rows = slice(int(bounds[depth]), int(bounds[depth + 1]))
        ways = np.maximum(figure[rows], to[depth + 1][columns.exit[rows]])
        by_entry = np.full(columns.meets.shape[1], np.inf)
        np.minimum.at(by_entry, columns.entry[rows], ways)
        to[depth] = np.where(columns.meets, by_entry, np.inf).min(axis=1)
        if columns.optional[depth]:
            np.minimum(to[depth], to[depth + 1], out=to[depth])
    return to
