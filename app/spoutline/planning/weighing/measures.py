"""What each part adds to each axis, as whole numbers; figures come from where the checks and estimates take them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

import numpy as np

from spoutline.model.front import UNIT_OF, FrontAxis
from spoutline.model.part import Part
from spoutline.model.part_columns import LEAD_TIME, Floats, Ints, Mask
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import Requirement
from spoutline.planning.sets.assembled import Assembled, LayerParts
from spoutline.planning.sets.loads import Load, LoadModel
from spoutline.planning.sets.pool import SlotParts
from spoutline.rules.parts.figures import BREAKAWAY_SLOTS
from spoutline.rules.parts.sums import is_hose, yearly_permeation_kg

YearlyCost = Callable[[Part], int | None]  # of one position in a year, minor units; None where it cannot be told
_MOST = 2**52  # above any figure; stands for none


@dataclass(frozen=True, slots=True)
class Measured:
    """Figures of the items of a problem, layer by layer: by axis what each adds, and where it states a figure."""

    figures: Mapping[FrontAxis, Ints]
    known: Mapping[FrontAxis, Mask]


@dataclass(frozen=True)
class Measures:
    """Measures parts for one position.

    Parameters
    ----------
    requirement, model
        The position and its loads.
    axes
        Those that this position has.
    staying
        Names under which the search knows parts that hang there: nobody waits for them.
    yearly_cost
        What separations with a breakaway are expected to cost; None where nothing states it.
    """

    requirement: Requirement
    model: LoadModel
    axes: tuple[FrontAxis, ...]
    staying: frozenset[PartRef]
    yearly_cost: YearlyCost | None
    _yearly: dict[PartRef, int | None] = field(default_factory=dict)

    def measured(self, one: Assembled) -> Measured:
        """Return the figures of all items of a problem."""
        columns = [self._place(place, one.flow_m3_s) for place in one.places]
        figures: dict[FrontAxis, Ints] = {}
        known: dict[FrontAxis, Mask] = {}
        for axis in self.axes:
            found = np.concatenate([np.zeros(0), *(column[axis] for column in columns)])
            known[axis] = np.isfinite(found)
            figures[axis] = np.where(known[axis], found, _MOST).astype(np.int64)
        return Measured(figures, known)

    def _place(self, place: LayerParts, flow_m3_s: float) -> dict[FrontAxis, Floats]:
        return {
            axis: np.concatenate(
                [
                    np.zeros(0),
                    *(self._of(axis, parts, rows, flow_m3_s, above=place.above) for parts, rows in place.portions),
                ]
            )
            for axis in self.axes
        }

    def _of(self, axis: FrontAxis, parts: SlotParts, rows: Ints, flow_m3_s: float, *, above: bool) -> Floats:
        """Return what some parts add to an axis, in its whole units; not finite where a part states none."""
        match axis:
            case FrontAxis.FLOW:
                lost = self.model.loads(parts.columns, parts.slot, flow_m3_s)
                return np.rint(lost.column(Load.WANTED_FLOW_HOT, above_breakaway=above)[rows])
            case FrontAxis.PERMEATION:
                if not is_hose(parts.columns):
                    return np.zeros(len(rows))
                return np.rint(yearly_permeation_kg(parts.columns, self.requirement)[rows] / UNIT_OF[axis][1])
            case FrontAxis.YEARLY:
                return self._yearly_costs(parts, rows)
            case _:
                return self._stated(axis, parts, rows)

    def _stated(self, axis: FrontAxis, parts: SlotParts, rows: Ints) -> Floats:
        """Return what parts state themselves, or what their rules say of them."""
        match axis:
            case FrontAxis.PRICE:
                return parts.prices(self.requirement.site.currency)[rows].astype(np.float64)
            case FrontAxis.LEAD:
                days = parts.columns.number(LEAD_TIME)[rows].astype(np.float64)
                return np.where(parts.columns.is_one_of(self.staying)[rows], 0.0, days)
            case FrontAxis.MASS:
                return np.rint(parts.columns.number("mass_kg")[rows] / UNIT_OF[axis][1])
            case _:
                return parts.regrets[rows].astype(np.float64)

    def _yearly_costs(self, parts: SlotParts, rows: Ints) -> Floats:
        if parts.slot not in BREAKAWAY_SLOTS or self.yearly_cost is None:
            return np.zeros(len(rows))
        refs = [parts.columns.ref_at(row) for row in rows.tolist()]
        missing = [ref for ref in refs if ref not in self._yearly]
        for ref, part in parts.source(missing).items():
            self._yearly[ref] = self.yearly_cost(part)
        costs = [self._yearly[ref] for ref in refs]
        return np.array([np.nan if one is None else one for one in costs], np.float64)
