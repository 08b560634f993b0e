"""Which of many rows nothing else outdoes: the least in every column, looked at in portions."""

from __future__ import annotations

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.effort import Effort
from spoutline.search.item_table import Floats, Ints, Mask

_FIRST = 64  # rows that all others are held against one by one,
_FEW = 128  # while there are more than these
_PORTION = 512  # rows held against those kept, in one go
_KEPT = 256  # kept rows that they are held against, in one go
_FIRST_KNOWN = 8  # known rows that many are held against at first
_PAIRS = 1 << 20  # of rows and known ones looked at in one go


@frozen
class Rows:
    """Rows to be held against each other.

    A row outdoes another where it is no more in any column of ``figures`` and either less in one of the columns that
    ``decisive`` names or no more in ``tie``. Of rows that outdo each other the first stays.

    Parameters
    ----------
    figures
        A row each; less is better.
    tie
        What decides between rows that are equal in all decisive columns.
    decisive
        By column: a lead in it stays a lead whatever else is added to both rows.
    outdoes
        Which rows may outdo others; None for all.
    """

    figures: Floats
    tie: Floats
    decisive: Mask
    outdoes: Mask | None = None


def undominated(rows: Rows, effort: Effort | None = None) -> Ints:
    """Return the numbers of the rows that no other outdoes, in rising order.

    Raises
    ------
    Exhausted
        If more rows would have to be held against each other than ``effort`` allows.
    """
    figures = rows.figures
    count = len(figures)
    if count < 2:
        return np.arange(count)
    # sums of scaled columns never fall where no column does, rounding included: whatever outdoes a row comes before it
    low, high = figures.min(axis=0), figures.max(axis=0)
    spread = np.where(np.isfinite(high - low) & (high > low), high - low, 1.0)
    with np.errstate(invalid="ignore"):
        score = np.nan_to_num((figures - low) / spread, nan=0.0).sum(axis=1)
    order = _by_score(figures, rows.tie, score)
    figures, tie = np.ascontiguousarray(figures[order].T), rows.tie[order]
    may = np.ones(count, np.bool_) if rows.outdoes is None else rows.outdoes[order]
    left = _left_by_the_first(figures, tie, rows.decisive, may)
    order, figures, tie, may = order[left], figures.take(left, axis=1), tie[left], may[left]
    kept = np.zeros(0, np.int64)
    killers = np.zeros(0, np.int64)
    for start in range(0, len(order), _PORTION):
        alive = np.arange(start, min(start + _PORTION, len(order)))
        if effort is not None:
            effort.look(len(alive) * (len(killers) + len(alive)))
        for block in range(0, len(killers), _KEPT):
            alive = alive[~_outdone(figures, tie, rows.decisive, killers[block : block + _KEPT], alive)]
        own = alive[may[alive]]
        alive = alive[~_outdone(figures, tie, rows.decisive, own, alive, earlier=True)]
        kept = np.concatenate([kept, alive])
        killers = np.concatenate([killers, alive[may[alive]]])
    return np.sort(order[kept])


def _by_score(figures: Floats, tie: Floats, score: Floats) -> Ints:
    """Return the numbers of the rows by score, equals by their figures from the first on, then by what decides."""
    order = np.argsort(score, kind="stable")
    sorted_ = score[order]
    same = np.flatnonzero(sorted_[1:] == sorted_[:-1])
    equal = np.union1d(same, same + 1)  # places, which rows of equal scores share among themselves
    some = order[equal]
    order[equal] = some[np.lexsort((some, tie[some], *figures[some].T[::-1], score[some]))]
    return order


def _left_by_the_first(figures: Floats, tie: Floats, decisive: Mask, may: Mask) -> Ints:
    """Return the rows that none of the first ones left outdoes, one after another; that mostly leaves few rows."""
    rest, met = np.arange(len(tie)), [np.zeros(0, np.int64)]
    for _ in range(_FIRST):
        if len(rest) <= _FEW:
            break
        at = int(may.argmax())
        if not may[at]:
            break
        own = figures[:, at, None]
        outdone: Mask = np.asarray((own <= figures).all(axis=0))
        outdone[: at + 1] = True
        some = np.flatnonzero(outdone[at + 1 :]) + at + 1
        leads = (tie[at] <= tie[some]) | (own < figures.take(some, axis=1))[decisive].any(axis=0)
        outdone[some] = leads
        met.append(rest[: at + 1])
        left = np.flatnonzero(~outdone)
        rest, tie, may, figures = rest[left], tie[left], may[left], figures.take(left, axis=1)
    return np.concatenate([*met, rest])


def _outdone(figures: Floats, tie: Floats, decisive: Mask, by: Ints, what: Ints, *, earlier: bool = False) -> Mask:
    """Return which rows of ``what`` one of ``by`` outdoes; ``earlier`` counts those alone that come before it."""
    if not len(by) or not len(what):
        return np.zeros(len(what), np.bool_)
    no_more = by[:, None] < what if earlier else np.ones((len(by), len(what)), np.bool_)
    for column in figures:
        no_more &= column[by][:, None] <= column[what]
    who, whom = np.nonzero(no_more)
    first, second = by[who], what[whom]
    leads = tie[first] <= tie[second]
    for column in figures[decisive]:
        leads |= column[first] < column[second]
    outdone = np.zeros(len(what), np.bool_)
    outdone[whom[leads]] = True
    return outdone


def not_outdone(figures: Floats, tie: Floats, known: Floats, known_tie: Floats) -> Ints:
    """Return the numbers of the rows that none of the ``known`` rows outdoes, every column decisive, in rising order.

    Parameters
    ----------
    figures, tie
        A row each, as of ``Rows``.
    known, known_tie
        What they are held against.
    """
    alive = np.arange(len(figures))
    start, size = 0, _FIRST_KNOWN
    while start < len(known) and len(alive):
        some, ties = known[start : start + size], known_tie[start : start + size]
        no_more = np.ones((len(some), len(alive)), np.bool_)
        for own, other in zip(some.T, figures[alive].T, strict=True):
            no_more &= own[:, None] <= other
        who, whom = np.nonzero(no_more)
        leads = (ties[who] <= tie[alive[whom]]) | (some[who] < figures[alive[whom]]).any(axis=1)
        gone = np.zeros(len(alive), np.bool_)
        gone[whom[leads]] = True
        alive = alive[~gone]
        start += size
        size = max(_FIRST_KNOWN, min(_KEPT, _PAIRS // max(1, len(alive))))
    return alive
