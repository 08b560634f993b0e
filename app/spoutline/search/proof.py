"""Why no chain keeps all limits: prices at which every chain exceeds them, and for which other items that holds."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.columns import Columns
from spoutline.search.item_table import Floats, Mask
from spoutline.search.multipliers import priced
from spoutline.search.passes import Passes

_ROOM = 1e-6  # of the limits weighed by the prices: for rounding, and for what a sum may exceed its limit by
_PORTION = 1 << 22  # figures looked at in one go


@frozen
class Proof:
    """Prices of the limits, none negative, at which every chain of some items costs more than keeping the limits pays.

    Strengths are left aside. Where no limit has a price, the items do not join up to a chain at all.
    """

    prices: Floats

    def holds(self, columns: Columns, passes: Passes, masks: Mask) -> Mask:
        """Say whether the items of each column of ``masks``, a row each, hold no chain within the limits either.

        Parameters
        ----------
        columns, passes
            All the items, and the passes over them; a limit that has a price must be one of theirs.
        masks
            By item and question.
        """
        priced_ones = self.prices > 0.0
        prices, limits = self.prices[priced_ones], columns.limits[priced_ones]
        figures = _eased(columns, priced_ones) @ prices
        least = [np.zeros(0)]
        step = max(1, _PORTION // max(1, len(columns)))
        for start in range(0, masks.shape[1], step):
            some = np.where(masks[:, start : start + step], figures[:, None], np.inf)
            least.append(passes.backward(some)[0, columns.start])
        return np.asarray(np.concatenate(least) > prices @ limits + _room(prices, limits))


def proof_of_none(columns: Columns, passes: Passes) -> Proof | None:
    """Return why no chain keeps the limits; None where some chain may, or where strengths must be looked at to tell.

    First whether items join up, then each limit by itself, then prices of all. Parameters: all the items, and the
    passes over them.
    """
    count = len(columns.limits)
    if np.isneginf(columns.limits).any():
        return None  # nothing is told by prices of a limit that nothing keeps
    held = ~np.isposinf(columns.limits)
    kept = columns.only(np.asarray((columns.loads[:, held] < np.inf).all(axis=1)))
    whole = np.ones((len(kept), 1), np.bool_)
    if kept is not columns:
        passes = Passes(kept)
    nothing_and_loads = np.column_stack([np.zeros(len(kept)), kept.loads[:, held]])
    joins_up, *of_loads = passes.backward(nothing_and_loads)[0, kept.start]
    if not kept.can_be_filled() or joins_up == np.inf:
        return Proof(np.zeros(count))
    least = np.array(of_loads)
    alone = np.flatnonzero(least > kept.limits[held] + 2.0 * _ROOM * np.maximum(np.abs(kept.limits[held]), 1.0))
    if len(alone):
        prices = np.zeros(count)
        prices[np.flatnonzero(held)[alone[0]]] = 1.0
        return _held_by(Proof(prices), kept, passes, whole)
    binding = kept.binding()
    if not binding.any():
        return None
    trimmed = replace(kept, cost=np.zeros(len(kept), np.int64)).trimmed()
    found = priced(trimmed, Passes(trimmed))
    if found.bound < np.inf or len(found.prices) != np.count_nonzero(binding):
        return None
    prices = np.zeros(count)
    prices[binding] = found.prices / found.prices.max(initial=1e-300)
    return _held_by(Proof(prices), kept, passes, whole)


def _eased(columns: Columns, which: Mask) -> Floats:
    """Return some loads raised for bounds, as ``Columns.trimmed`` does; what is raised for all items is for some."""
    loads, limits = columns.loads[:, which], columns.limits[which]
    most = columns.most(np.where(loads < np.inf, loads, -np.inf))
    total = most.sum(axis=0)
    spare = np.where(total > limits, limits - (total - most), -np.inf)
    return np.maximum(loads, spare[columns.layer])


def _held_by(proof: Proof, columns: Columns, passes: Passes, whole: Mask) -> Proof | None:
    """Return a proof if it holds with room for rounding."""
    return proof if proof.holds(columns, passes, whole)[0] else None


def _room(prices: Floats, limits: Floats) -> float:
    return float(_ROOM * (prices @ np.maximum(np.abs(limits), 1.0)))
