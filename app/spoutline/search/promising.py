"""Which of many chains in the making are gone on with where a quick look must do: the best by several weightings."""

from __future__ import annotations

import numpy as np

from spoutline.search.columns import heads
from spoutline.search.item_table import Floats, Ints

_TOUCH = 1e-3  # of the other figures beside the one that a weighting looks at


def promising(port: Ints, hope: Floats, used: Floats, width: int) -> Ints:
    """Return the numbers of the labels that a quick look keeps, in rising order.

    Parameters
    ----------
    port
        By label: its open port. As many are kept at each.
    hope
        By label and axis: the least figure that it can come to.
    used
        By label: the greatest share of a limit that it must come to.
    width
        How many are kept at a port, about.
    """
    if len(port) <= width:
        return np.arange(len(port))
    low, high = hope.min(axis=0), hope.max(axis=0)
    figures = np.column_stack([(hope - low) / np.where(high > low, high - low, 1.0), used])
    scores = figures @ _weightings(figures.shape[1]).T
    each = max(1, width // scores.shape[1])
    order = np.argsort(port, kind="stable")
    kept = [_best(scores, some, each) for some in np.split(order, heads(port[order])[1:])]
    return np.unique(np.concatenate(kept))


def _weightings(count: int) -> Floats:
    """Return a row for each weighting: each figure nearly alone; all alike, with and without the shares of limits."""
    alone = np.eye(count) + _TOUCH
    all_alike = np.ones((1, count))
    axes_alike = all_alike.copy()
    axes_alike[0, -1] = _TOUCH
    return np.concatenate([alone, all_alike, axes_alike])


def _best(scores: Floats, some: Ints, each: int) -> Ints:
    if len(some) <= each:
        return some
    places = np.argsort(scores[some], axis=0, kind="stable")[:each]
    return some[np.unique(places)]
