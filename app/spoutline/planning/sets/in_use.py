"""What no sum of a chain tells: the tension of the hanging hose in use, for many chains at once."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from spoutline.model.limit import LimitId
from spoutline.model.part_columns import Floats, Ints, Mask
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembled import Assembled, LayerParts
from spoutline.planning.sets.loads import Load, LoadModel
from spoutline.planning.sets.pool import SlotParts
from spoutline.rules.chain.tensions import tensions_in_use_n
from spoutline.rules.parts.figures import BREAKAWAY_SLOTS
from spoutline.rules.parts.sums import filled_weight_n
from spoutline.search.enumeration import ChainTest

_ROOM = 1e-6  # of the tension: the full check has the last word


def tension_test(one: Assembled, model: LoadModel, dropped: frozenset[RequirementId]) -> ChainTest | None:
    """Return what says which chains of a problem the hose's tension in use does not tear from their breakaway.

    A nearly taut hose pulls harder than its weight. A chain that does not pass is turned down by its full check; one
    that passes may still be. None for chains without a breakaway.

    Parameters
    ----------
    one
        The problem, whose items are numbered layer by layer.
    model
        Loads and requirement.
    dropped
        Lines given up: without the margin of the service load the breakaway must hold all the same.
    """
    depth = next((depth for depth, place in enumerate(one.places) if _is_breakaway(place)), None)
    if depth is None:
        return None
    hanging_m = _of_items(one, lambda parts: _hanging_m(parts, model, one.flow_m3_s))
    weight_n = _of_items(one, lambda parts: _hanging_n(parts, model))
    margin = model.tables.jurisdiction.number(LimitId.BREAKAWAY_SERVICE_MARGIN)
    ratio = 1.0 if RequirementId.SERVICE_LOAD in dropped else max(1.0, margin)
    allowed_n = _of_items(one, lambda parts: _allowed_n(parts, model, ratio))

    def holds(chains: Ints) -> Mask:
        length_m = hanging_m[chains].sum(axis=1)
        tension_n = tensions_in_use_n(
            model.requirement.position,
            length_m=length_m,
            weight_n_m=weight_n[chains].sum(axis=1) / length_m,
            along_m=np.minimum(hanging_m[chains[:, :depth]].sum(axis=1), length_m),
        )
        return ~(tension_n * (1.0 - _ROOM) > allowed_n[chains[:, depth]])

    return holds


def _is_breakaway(place: LayerParts) -> bool:
    return any(parts.slot in BREAKAWAY_SLOTS for parts, _ in place.portions)


def _of_items(one: Assembled, figure: Callable[[SlotParts], Floats]) -> Floats:
    """Return a figure of every item, and after them 0 for an empty layer."""
    known = {id(parts): figure(parts) for place in one.places for parts, _ in place.portions}
    columns = [known[id(parts)][rows] for place in one.places for parts, rows in place.portions]
    return np.concatenate([*columns, np.zeros(1)])


def _hanging_m(parts: SlotParts, model: LoadModel, flow_m3_s: float) -> Floats:
    return model.loads(parts.columns, parts.slot, flow_m3_s).column(Load.CLEARANCE, above_breakaway=False)


def _hanging_n(parts: SlotParts, model: LoadModel) -> Floats:
    """Return what each adds to the weight that hangs between outlet and nozzle."""
    weight_n = filled_weight_n(parts.columns, model.states.cold)
    return np.zeros_like(weight_n) if parts.slot is Slot.NOZZLE else weight_n


def _allowed_n(parts: SlotParts, model: LoadModel, ratio: float) -> Floats:
    if parts.slot not in BREAKAWAY_SLOTS:
        return np.full(len(parts.columns), np.inf)
    return model.tension_allowed_n(parts.columns, ratio)
