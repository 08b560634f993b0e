"""The walk over a problem in columns: what another item can stand in for is left out before any item is made."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from spoutline.search.columns import Columns, heads
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.enumeration import EMPTY
from spoutline.search.graph import MAJOR
from spoutline.search.item_table import Floats, Ints, Mask, Names
from spoutline.search.listener import Listener
from spoutline.search.passes import Passes
from spoutline.search.stand_ins import without_outdone
from spoutline.search.sums import Sums
from spoutline.search.ways import Row, Ways, walked

_FEW = 500  # items whose walk is soon at its end


def cheapest(
    columns: Columns,
    names: Names,
    listener: Listener | None = None,
    most_labels: int | None = None,
    most_cost: int | None = None,
    *,
    any_of_equals: bool = False,
) -> tuple[int, ...] | None:
    """Return the items of the first chain of the walk; None where there is none that costs ``most_cost`` at most.

    They are by layer, as ``Columns.row`` counts them; ``EMPTY`` for an empty layer.

    Parameters
    ----------
    columns
        The chain to fill, of few items: each is held against all others.
    names
        Names of the items as ``Columns.row`` counts them.
    listener, most_labels, most_cost
        As of ``walk.cheapest``.
    any_of_equals
        Whether any of the chains of the least cost will do, whatever its names.

    Raises
    ------
    Cancelled, Exhausted
        As of ``walk.cheapest``.
    """
    kept = columns.trimmed()
    if not kept.can_be_filled():
        return None
    kept = kept.only(_not_outdone(kept, None if any_of_equals else names))
    return _walked(kept, names, listener, most_labels, most_cost)


def one_without_majors(
    columns: Columns, names: Names, listener: Listener | None = None, most_labels: int | None = None
) -> tuple[int, ...] | None:
    """Return the items of one of the cheapest chains that cost no major, whatever its names; None where there is none.

    It is for costs that few items alone are good at, such as a load that a limit of another load is opposed to:
    those that another can stand in for are left out, however many they are. Parameters and result as of ``cheapest``.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    Exhausted
        If many items are left, or more labels would have to be looked at.
    """
    if np.isneginf(columns.limits).any():
        return None
    kept = columns.only(columns.major == 0).trimmed()
    if not kept.can_be_filled():
        return None
    kept = kept.only(Sums.of(kept.limits).floor(kept, Passes(kept)) < np.inf)
    if not kept.can_be_filled():
        return None
    kept = without_outdone(kept, Effort(listener or Listener()))
    if len(kept) > _FEW:
        raise Exhausted
    return _walked(kept, names, listener, most_labels)


def _walked(
    kept: Columns,
    names: Names,
    listener: Listener | None,
    most_labels: int | None,
    most_cost: int | None = None,
) -> tuple[int, ...] | None:
    """Return the items of the first chain of the walk over what is left of the columns."""
    found = next(
        walked(_ways_of(kept, names), Effort(listener or Listener(), most_labels), most_cost, every=False), None
    )
    return None if found is None else tuple(EMPTY if row is None else row for row in found[1])


def _not_outdone(columns: Columns, names: Names | None) -> Mask:
    """Say which items no other of their ports can stand in for, one that comes before them by cost and then by name.

    Without names, any of equal cost comes first.

    It says the same as ``dominance.reduced``, but that ports which meet the same are one.
    """
    one, other = _pairs_alike(columns.ports())
    for figures in _figures(columns):
        no_more = figures[one] <= figures[other]
        one, other = one[no_more], other[no_more]
    place = np.zeros(len(columns), np.int64)
    if names is not None:
        are_tied = _are_tied(columns, one, other)
        tied = np.unique(np.concatenate((one[are_tied], other[are_tied])))
        place[tied] = names.places(columns.row[tied])  # mostly few: names are looked up where nothing else decides
    rank = np.zeros(len(columns), np.int64)
    rank[np.lexsort((place, columns.cost, columns.major))] = np.arange(len(columns))
    keeps = np.ones(len(columns), np.bool_)
    keeps[other[rank[one] < rank[other]]] = False
    return keeps


def _pairs_alike(keys: Ints) -> tuple[Ints, Ints]:
    """Return all ordered pairs of rows with equal keys, which lie side by side; each row is paired with itself too."""
    count = len(keys)
    first = heads(keys)
    sizes = np.empty_like(first)
    np.subtract(first[1:], first[:-1], out=sizes[:-1])
    sizes[-1:] = count - first[-1:]
    others = sizes.repeat(sizes)  # by row
    one = np.arange(count).repeat(others)
    before = others.cumsum() - others - first.repeat(sizes)
    return one, np.arange(len(one)) - before.repeat(others)


def _are_tied(columns: Columns, one: Ints, other: Ints) -> Mask:
    """Say of which pairs of items costs do not tell which comes first."""
    major, cost = columns.major, columns.cost
    return np.asarray((one != other) & (major[one] == major[other]) & (cost[one] == cost[other]))


def _figures(columns: Columns) -> list[Floats]:
    """Return what an item must have no more of than one that it stands in for, cost left aside."""
    return [*columns.loads.T, columns.demands, -columns.bears]


def _ways_of(columns: Columns, names: Names) -> Ways:
    """Return a problem in columns as plain rows, which stand for the numbers of its items."""
    major, cost = columns.major, columns.cost.tolist()
    rows: list[Row] = list(
        zip(
            names.places(columns.row).tolist(),
            [one * MAJOR + rest for one, rest in zip(major.tolist(), cost, strict=True)] if major.any() else cost,
            columns.entry.tolist(),
            columns.exit.tolist(),
            columns.loads.tolist(),
            columns.bears.tolist(),
            columns.demands.tolist(),
            columns.row.tolist(),
            strict=True,
        )
    )
    ends = np.searchsorted(columns.layer, np.arange(columns.depth + 1)).tolist()
    return Ways(
        columns.start,
        [(rows[low:high], fits) for (low, high), fits in zip(pairwise(ends), columns.optional.tolist(), strict=True)],
        {port: [entry for entry, fits in enumerate(met) if fits] for port, met in enumerate(columns.meets.tolist())},
        columns.limits.tolist(),
        EMPTY,
    )
