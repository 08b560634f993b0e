"""What each part adds to the sums of a chain, line by line as the checks show it.

The search takes the same quantities of whole kinds at once from ``rules.parts.sums``.
"""

from __future__ import annotations

import math
from functools import lru_cache

from spoutline.calc.constants import STANDARD_GRAVITY
from spoutline.calc.elements import AnnularRun, Element, FlowCoefficient, HoseRun
from spoutline.calc.friction import GREATEST_RELATIVE_ROUGHNESS, LEAST_COIL_RATIO, SMOOTH_RUBBER_ROUGHNESS
from spoutline.calc.liquids import HIGHEST_TEMPERATURE, LiquidState, cold_limit_c, liquid_state
from spoutline.calc.losses import element_loss_pa
from spoutline.calc.pull import drive_off, filled_weight_line
from spoutline.calc.reach import CORNER_ALLOWANCE
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.part import HoseData, Part
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.derive.flow import road_limit_m3_s
from spoutline.rules.derive.hose import is_on_reel, worst_reach

BREAKAWAY_SLOTS = (Slot.BREAKAWAY, Slot.SWIVEL_BREAKAWAY)


@frozen(kw_only=True)
class PartFigures:
    """One part's share of every sum that a chain is held to. SI units in the names.

    ``hose_length_m`` counts toward the length limit, ``reach_m`` toward the fillers: a hose's length less what the
    corners round a vehicle take, ``corners_m``, and what stays on a drum, or a rigid part's length.
    ``filled_weight_n`` includes the liquid. Unknown figures are None, never zero. ``pull_demand_n`` is what every other
    part has to bear because of this breakaway.
    """

    hose_length_m: float
    rigid_length_m: float
    corners_m: float
    reach_m: float
    filled_weight_n: float
    resistance_ohm: float | None
    pull_strength_n: float | None
    pull_demand_n: float


@frozen
class LiquidStates:
    """The liquid at the cold and at the hot end of the climate, within its data."""

    cold: LiquidState
    hot: LiquidState

    @property
    def both(self) -> tuple[LiquidState, LiquidState]:
        """Cold first."""
        return (self.cold, self.hot)


def states_for(requirement: Requirement) -> LiquidStates:
    """Return the liquid at both ends of the climate, or at the ends of its data where the climate goes beyond them.

    Parameters: ``requirement``, liquid and temperatures in degrees Celsius. A finding of the position names the
    temperatures used where they are not the climate's.
    """
    low = max(requirement.temperature_low_c, cold_limit_c(requirement.liquid))
    high = min(requirement.temperature_high_c, HIGHEST_TEMPERATURE.value)
    return LiquidStates(_state(requirement.liquid, low), _state(requirement.liquid, high))


_state = lru_cache(maxsize=64)(liquid_state)  # every set of a position is checked with the same two


def rise_m(requirement: Requirement) -> float:
    """Return the height (m) of the highest filler above the outlet, negative where all lie lower.

    Parameters: ``requirement``, its position.
    """
    outlet_m = requirement.position.outlet.height_m
    return max(filler.height_m for filler in requirement.position.fillers) - outlet_m


def flow_ceiling_m3_s(requirement: Requirement, tables: RuleTables) -> float:
    """Return the greatest flow (m3/s) that can reach the nozzle: the dispenser's, or the road limit where less.

    Parameters: ``requirement``; ``tables``, the road limit. Source: 40 CFR 1090.1550 for gasoline.
    """
    road_limit = road_limit_m3_s(requirement.position, tables.jurisdiction)
    supply = requirement.supply_flow_m3_s
    return supply if road_limit is None else min(supply, road_limit)


def design_flow_m3_s(nozzle: Part, requirement: Requirement, tables: RuleTables) -> float:
    """Return the flow (m3/s) at which the nozzle's opening pressure must still be there.

    The wanted flow as far as the dispenser gives it, or the nozzle's least flow where that is more.

    Parameters: ``nozzle``; ``requirement``; ``tables``, the road limit.
    """
    least = nozzle.nozzle.minimum_flow_m3_s if nozzle.nozzle else None
    wanted = min(requirement.wanted_flow_m3_s, flow_ceiling_m3_s(requirement, tables))
    return max(wanted, least or 0.0)


def liquid_passage_m(hose: HoseData, path: FlowPath) -> tuple[float, float] | None:
    """Return outer and inner diameter (m) of the passage that the liquid fills; as ``passage_m``.

    Parameters: ``hose``; ``path`` of the hose.
    """
    return passage_m(hose.bore_m, hose.inner_tube_bore_m, hose.inner_tube_outside_diameter_m, path)


def passage_m(
    bore_m: float, tube_bore_m: float | None, tube_outside_m: float | None, path: FlowPath
) -> tuple[float, float] | None:
    """Return outer and inner diameter (m) of the passage that the liquid fills; inner 0 for a round bore.

    Balance: liquid inside the inner tube. Vacuum assist: liquid in the ring round it. None where the hose lacks the
    sizes of its inner tube, or where they leave a way so narrow that no friction is known at its roughness.

    Parameters: bore, bore and outside diameter of the inner tube (m), None where not known; ``path`` of the hose.
    Source: UL 330 clause 4 note (both orders exist; naming from memory).
    """
    if path is FlowPath.SINGLE:
        return bore_m, 0.0
    outer, inner = (tube_bore_m, 0.0) if path is FlowPath.BALANCE else (bore_m, tube_outside_m)
    if outer is None or inner is None:
        return None
    too_narrow = GREATEST_RELATIVE_ROUGHNESS.value * (outer - inner) < SMOOTH_RUBBER_ROUGHNESS.value
    return None if too_narrow else (outer, inner)


def passage_area_m2(hose: HoseData, path: FlowPath) -> float | None:
    """Return the area (m2) of the passage that the liquid fills; None where sizes are missing.

    Parameters: ``hose``; ``path`` of the hose. Source: geometry.
    """
    passage = liquid_passage_m(hose, path)
    return None if passage is None else math.pi / 4.0 * (passage[0] ** 2 - passage[1] ** 2)


def elements_of(part: Part, slot: Slot, requirement: Requirement) -> tuple[Element, ...] | None:
    """Return what the liquid passes in a part; None where the part lacks a figure for it.

    Parameters: ``part``; ``slot``, a curb hose may lie on a reel; ``requirement``, path and reel.
    Source: roughness of a smooth rubber bore (secondary); Kv by the maker.
    """
    if part.hose is None:
        return None if part.flow_coefficient_kv is None else (FlowCoefficient(part.flow_coefficient_kv),)
    passage = liquid_passage_m(part.hose, part.path or FlowPath.SINGLE)
    if passage is None:
        return None
    outer, inner = passage
    length, roughness = part.hose.length_m, SMOOTH_RUBBER_ROUGHNESS.value
    if inner > 0.0:
        return (AnnularRun(length_m=length, outer_diameter_m=outer, inner_diameter_m=inner, roughness_m=roughness),)
    coiled = coiled_length_m(length, slot, requirement)
    drum = requirement.position.reel.drum_diameter_m if coiled > 0.0 else None
    if drum is not None and drum < LEAST_COIL_RATIO.value * outer:
        return None
    return (
        HoseRun(length_m=length, bore_m=outer, roughness_m=roughness, coil_diameter_m=drum, coiled_length_m=coiled),
    )


def coiled_length_m(length_m: float, slot: Slot, requirement: Requirement) -> float:
    """Return how much (m) of a curb hose stays on the drum when the filler is reached; 0 without a reel.

    Parameters: ``length_m`` of the hose; ``slot``; ``requirement``, drum diameter in m and turns left.
    """
    if slot is not Slot.CURB_HOSE or not is_on_reel(requirement.position):
        return 0.0
    reel = requirement.position.reel
    return min(reel.turns_left * math.pi * reel.drum_diameter_m, length_m)


def loss_pa(part: Part, slot: Slot, requirement: Requirement, flow_m3_s: float, state: LiquidState) -> float:
    """Return the pressure loss (Pa) of a part at a flow; infinite where the part lacks a figure for it.

    Parameters: ``part`` and ``slot``; ``requirement``; ``flow_m3_s``; ``state`` of the liquid.
    """
    elements = elements_of(part, slot, requirement)
    if elements is None:
        return math.inf
    return math.fsum(element_loss_pa(element, flow_m3_s, state) for element in elements)


def part_resistance_ohm(part: Part) -> float | None:
    """Return the end-to-end resistance (ohm) of a part; a hose may state it per metre instead. None: unknown.

    Parameters: ``part``.
    """
    if part.resistance_ohm is not None:
        return part.resistance_ohm
    if part.hose is None or part.hose.resistance_ohm_m is None:
        return None
    return part.hose.resistance_ohm_m * part.hose.length_m


def hose_weight_line(part: Part, state: LiquidState) -> WorkedLine | None:
    """Return the weight per metre (N/m) of a filled hose as a worked line; None for a part that is no hose.

    Couplings count with the hose: the part's mass over its length where that is more than the hose alone. A coaxial
    hose without sizes of its inner tube is taken as full, which is the heavier case.

    Parameters: ``part``; ``state``, density of the liquid. Source: statics.
    """
    hose = part.hose
    if hose is None:
        return None
    outer, inner = liquid_passage_m(hose, part.path or FlowPath.SINGLE) or (hose.bore_m, 0.0)
    return filled_weight_line(
        hose_mass_kg_m=max(hose.mass_kg_m, part.mass_kg / hose.length_m),
        bore_m=outer,
        density_kg_m3=state.density_kg_m3,
        inner_tube_diameter_m=inner,
    )


def filled_weight_n(part: Part, state: LiquidState) -> float:
    """Return the weight (N) of a part with its liquid; the little liquid in a rigid part is left out.

    Parameters: ``part``; ``state``, density of the liquid. Source: statics.
    """
    line = hose_weight_line(part, state)
    if line is None or part.hose is None:
        return STANDARD_GRAVITY.value * part.mass_kg
    return line.result.value * part.hose.length_m


def pull_demand_n(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> float:
    """Return the pull (N) that all other parts and the outlet must bear because of a breakaway; 0 for other parts.

    Parameters: ``part`` and ``slot``; ``requirement``, the angle left in a drive-off; ``tables``, the margin.
    Source: statics; the margin is engineering judgement.
    """
    if part.breakaway is None or slot not in BREAKAWAY_SLOTS:
        return 0.0
    return drive_off(
        separation_n=part.breakaway.separation_maximum_n,
        angle_rad=requirement.drive_off_angle_rad,
        strength_margin=tables.jurisdiction.number(LimitId.BREAKAWAY_STRENGTH_MARGIN),
    ).required_strength_n


def corner_allowance_m(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> float:
    """Return what the corners round the vehicle take (m) off the curb hose; 0 for the straight way.

    Parameters: ``part`` and ``slot``; ``requirement``, the filler that asks for most; ``tables``, the slack.
    Source: half a bend radius per corner, engineering judgement.
    """
    if part.hose is None or slot is not Slot.CURB_HOSE:
        return 0.0
    corners = worst_reach(requirement.position, tables.jurisdiction).corners
    return CORNER_ALLOWANCE.value * corners * part.hose.minimum_bend_radius_m


def part_figures(
    part: Part, slot: Slot, requirement: Requirement, tables: RuleTables, state: LiquidState
) -> PartFigures:
    """Return one part's share of every sum of the chain.

    Parameters: ``part`` and ``slot``; ``requirement``; ``tables``; ``state``, the cold liquid, which is the heavier.
    """
    hose_length = part.hose.length_m if part.hose else 0.0
    rigid_length = 0.0 if part.hose else part.length_m
    corners = corner_allowance_m(part, slot, requirement, tables)
    taken = corners + coiled_length_m(hose_length, slot, requirement)
    is_fitting = slot in (Slot.ADAPTOR, Slot.SPLITTER)  # never counted on: adaptors must not serve to lengthen a hose
    return PartFigures(
        hose_length_m=hose_length,
        rigid_length_m=rigid_length,
        corners_m=corners,
        reach_m=0.0 if is_fitting else hose_length + rigid_length - taken,
        filled_weight_n=filled_weight_n(part, state),
        resistance_ohm=part_resistance_ohm(part),
        pull_strength_n=part.pull_strength_n,
        pull_demand_n=pull_demand_n(part, slot, requirement, tables),
    )
