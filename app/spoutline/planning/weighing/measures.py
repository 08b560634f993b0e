"""What each part adds to each axis, as whole numbers; figures come from where the checks and estimates take them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.front import UNIT_OF, FrontAxis
from spoutline.model.part_columns import LEAD_TIME, Floats, Ints, Mask
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import Requirement
from spoutline.model.yearly_cost import YearlyPart
from spoutline.planning.sets.assembled import Assembled, LayerParts
from spoutline.planning.sets.loads import Load, LoadModel
from spoutline.planning.sets.pool import SlotParts
from spoutline.planning.weighing.yearly import TruePart, YearlyCost
from spoutline.rules.parts.sums import is_hose, yearly_permeation_kg

_MOST = 2**52  # above any figure; stands for none


@frozen
class Measured:
    """Figures of the items of a problem, layer by layer: by axis what each adds, and where it states a figure.

    ``yearly`` holds the parts of the sum that the yearly cost is.
    """

    figures: Mapping[FrontAxis, Ints]
    known: Mapping[FrontAxis, Mask]
    yearly: Mapping[YearlyPart, Ints]


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
        What parts cost in a year; None where that is not weighed.
    true_part
        The part behind a name of what hangs there; None for any other.
    """

    requirement: Requirement
    model: LoadModel
    axes: tuple[FrontAxis, ...]
    staying: frozenset[PartRef]
    yearly_cost: YearlyCost | None
    true_part: TruePart

    def measured(self, one: Assembled) -> Measured:
        """Return the figures of all items of a problem."""
        columns = [self._place(place, one.flow_m3_s) for place in one.places]
        figures: dict[FrontAxis, Ints] = {}
        known: dict[FrontAxis, Mask] = {}
        for axis in self.axes:
            found = np.concatenate([np.zeros(0), *(column[axis] for column in columns)])
            known[axis] = np.isfinite(found)
            figures[axis] = np.where(known[axis], found, _MOST).astype(np.int64)
        return Measured(figures, known, self._yearly_parts(one))

    def _yearly_parts(self, one: Assembled) -> dict[YearlyPart, Ints]:
        if self.yearly_cost is None:
            return {}
        portions = [portion for place in one.places for portion in place.portions]
        found = [self.yearly_cost.of(parts, rows, self.requirement, self.true_part) for parts, rows in portions]
        return {
            part: np.nan_to_num(np.concatenate([np.zeros(0), *(own[part] for own in found)])).astype(np.int64)
            for part in self.yearly_cost.basis.parts
        }

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
        if self.yearly_cost is None:
            return np.zeros(len(rows))
        return sum(
            self.yearly_cost.of(parts, rows, self.requirement, self.true_part).values(), start=np.zeros(len(rows))
        )
