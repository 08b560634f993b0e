"""Items and chains in the making that another can stand in for: where very many chains just miss a limit.

Near copies of a part make chains that differ by nothing that matters; below a cost these are as many as all products of
the copies, and no price of the limits tells them apart. One that costs no more, adds no more to any load, bears as much
and asks no more can take another's place in every chain, so that few are left at each port.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns, heads
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.front import Axes, FrontChain, front
from spoutline.search.item_table import Floats, Ints, Mask
from spoutline.search.passes import Passes
from spoutline.search.sums import Sums
from spoutline.search.undominated import Rows, undominated

_FEW = 256  # items of the same ports that are held against each other in one go


@frozen
class Found:
    """A chain within the limits: its cost, majors left aside, and its items as ``Columns.row`` counts them."""

    cost: int
    rows: tuple[int, ...]


def without_outdone(columns: Columns, effort: Effort) -> Columns:
    """Return the problem without items that another of their ports can stand in for, whole though not for every chain.

    A chain of the least cost is left, and one within the limits where there is any; of equal items the first stays.
    Loads must be finite, as ``Columns.trimmed`` leaves them.

    Raises
    ------
    Exhausted
        If more items would have to be held against each other than the effort allows.
    """
    asked = np.minimum(columns.bears, columns.demands.max(initial=0.0))  # nobody asks for more
    figures = np.column_stack([columns.cost, columns.loads, columns.demands, -asked])
    keeps = np.zeros(len(columns), np.bool_)
    for start, end in pairwise([*heads(columns.ports()).tolist(), len(columns)]):
        some = figures[start:end]
        if len(some) <= _FEW:
            effort.look(len(some) ** 2)
            keeps[start:end] = _not_outdone(some)
        else:
            nothing = np.zeros(len(some))
            keeps[start + undominated(Rows(some, nothing, np.zeros(some.shape[1], np.bool_)), effort)] = True
    return columns.only(keeps)


def _not_outdone(figures: Floats) -> Mask:
    """Say which of a few rows no other outdoes, of equal ones the first: each is held against each at once."""
    no_more = np.ones((len(figures), len(figures)), np.bool_)
    for column in figures.T:
        no_more &= column[:, None] <= column
    outdoes = no_more & ~no_more.T  # in something at least
    outdoes |= np.triu(no_more, 1)
    return np.asarray(~outdoes.any(axis=0))


def any_by_labels(columns: Columns, effort: Effort) -> Found | None:
    """Return a chain within the limits, whatever it costs; None where there is none.

    Raises
    ------
    Cancelled, Exhausted
        As of ``search.front.front``; labels are counted before it is known which another can stand in for.
    """
    return _first(columns, np.zeros(len(columns), np.int64), effort)


def may_have_chains(columns: Columns, effort: Effort) -> bool:
    """Say whether there may be a chain within the limits; False proves that there is none.

    Majors and costs are left aside, so that of each kind of items few are left. Where it takes more labels than the
    effort allows, it is not known.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    held = columns.at_no_cost().trimmed()
    if not held.can_be_filled():
        return False
    kept = held.only(Sums.of(held.limits).floor(held, Passes(held)) < np.inf)
    if not kept.can_be_filled():
        return False
    try:
        return any_by_labels(without_outdone(kept, effort), effort) is not None
    except Exhausted:
        return True


def cheapest_by_labels(columns: Columns, sums: Sums, most: int, effort: Effort) -> Found | None:
    """Return a chain of the least cost within the limits that costs no more than ``most``; None where there is none.

    Parameters
    ----------
    columns
        A trimmed problem.
    sums
        Sums that bound the cost of its chains: what exceeds one of them is dropped at once.

    Raises
    ------
    Cancelled, Exhausted
        As of ``any_by_labels``.
    """
    columns = sums.bounding(columns, most)
    return _first(columns, columns.cost, effort, [FrontChain((most + 1,), 0, ())])


def _first(columns: Columns, cost: Ints, effort: Effort, known: list[FrontChain] | None = None) -> Found | None:
    count = int(columns.row.max(initial=-1)) + 1
    figures, nothing = np.zeros((count, 1), np.int64), np.zeros(count, np.int64)
    figures[columns.row, 0] = cost
    found = front(columns, Axes.exact(figures, [True], nothing), effort, known=known or [])
    if not found:
        return None
    own = dict(zip(columns.row.tolist(), columns.cost.tolist(), strict=True))
    return Found(sum(own[row] for row in found[0].rows if row in own), found[0].rows)
