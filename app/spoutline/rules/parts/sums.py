"""What parts add to the sums of a chain, of one part or of a whole kind in columns: the search takes its loads here.

The checks show the same quantities worked out line by line (``rules.parts.figures``); a test holds both together. What
costs much, the friction in a hose, is worked out by ``calc`` once for each passage that the hoses have.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np

from spoutline.calc.constants import BAR, KV_REFERENCE_DENSITY, SECONDS_PER_HOUR, STANDARD_GRAVITY
from spoutline.calc.elements import AnnularRun, HoseRun
from spoutline.calc.friction import LEAST_COIL_RATIO, SMOOTH_RUBBER_ROUGHNESS
from spoutline.calc.liquids import LiquidState
from spoutline.calc.losses import element_loss_pa
from spoutline.calc.permeation import permeation_loss
from spoutline.calc.reach import CORNER_ALLOWANCE
from spoutline.frozen import frozen
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.part import HOSES
from spoutline.model.part_columns import Floats, Ints, Mask, PartView
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.derive.hose import is_on_reel, worst_reach
from spoutline.rules.parts.figures import BREAKAWAY_SLOTS, flow_ceiling_m3_s, passage_m

_PASSAGES = "passages"
_PATHS = (FlowPath.SINGLE, FlowPath.BALANCE, FlowPath.VACUUM_ASSIST)


@frozen
class Passages:
    """What the liquid fills in hoses: the distinct passages (outer and inner diameter, m), and which each hose has.

    None stands for hoses that lack the sizes of their inner tube, or whose sizes leave hardly a way.
    """

    distinct: tuple[tuple[float, float] | None, ...]
    which: Ints

    def of_each(self, work: Callable[[float, float], float], unknown: float = math.nan) -> Floats:
        """Return ``work`` of outer and inner diameter for each hose, called once for each passage."""
        values = [unknown if passage is None else work(*passage) for passage in self.distinct]
        return np.asarray(np.array(values, np.float64)[self.which])


def passages(part: PartView) -> Passages:
    """Return the passages of hoses; those of columns are worked out once.

    Parameters: ``part``, hoses.
    """
    if _PASSAGES not in part.derived:
        part.derived[_PASSAGES] = _passages(part)
    found: Passages = part.derived[_PASSAGES]
    return found


def _passages(part: PartView) -> Passages:
    sizes = [part.number(f"hose.{name}") for name in ("bore_m", "inner_tube_bore_m", "inner_tube_outside_diameter_m")]
    end = part.has_port("outlet")
    paths = [np.where(end, part.on_path("outlet", one), part.on_path("inlet", one)) for one in _PATHS]
    known: dict[tuple[float, float, float, int], int] = {}
    columns = [np.atleast_1d(known_or(size, -1.0)).tolist() for size in sizes]
    numbers = np.atleast_1d(paths[1] * 1 + paths[2] * 2).tolist()
    which = [known.setdefault(row, len(known)) for row in zip(*columns, numbers, strict=True)]
    distinct = tuple(
        passage_m(bore, _known(tube), _known(outside), _PATHS[path]) for bore, tube, outside, path in known
    )
    return Passages(distinct, np.array(which, np.int64).reshape(np.shape(sizes[0]))[()])


def _known(size_m: float) -> float | None:
    return None if size_m < 0.0 else size_m


def known_or(figure: Floats, otherwise: float) -> Floats:
    """Return a figure, or ``otherwise`` where it is not known.

    Parameters: ``figure``, NaN where it is not known; ``otherwise`` in the unit of the figure.
    """
    return np.where(np.isnan(figure), otherwise, figure)


def is_hose(part: PartView) -> bool:
    """Say whether these are hoses.

    Parameters: ``part``.
    """
    return part.kind in HOSES


def resistance_ohm(part: PartView) -> Floats:
    """Return resistance (ohm) end to end, NaN where unknown; a hose may state it per metre instead.

    Parameters: ``part``.
    """
    own = part.number("resistance_ohm")
    if not is_hose(part):
        return own
    return np.where(np.isnan(own), part.number("hose.resistance_ohm_m") * part.number("hose.length_m"), own)


def coiled_m(part: PartView, slot: Slot, requirement: Requirement) -> Floats:
    """Return how much (m) of curb hoses stays on the drum when the filler is reached; 0 without a reel.

    Parameters: ``part`` and ``slot``; ``requirement``, drum diameter in m and turns left.
    """
    length = part.number("hose.length_m")
    if slot is not Slot.CURB_HOSE or not is_on_reel(requirement.position):
        return np.zeros_like(length)
    reel = requirement.position.reel
    return np.minimum(reel.turns_left * math.pi * reel.drum_diameter_m, length)


def has_flow_data(part: PartView, slot: Slot, requirement: Requirement) -> Mask:
    """Say where a part has what its loss of pressure is worked out from.

    Parameters: ``part`` and ``slot``, a curb hose may lie on a reel; ``requirement``, the drum.
    """
    if not is_hose(part):
        return ~np.isnan(part.number("flow_coefficient_kv"))
    found = passages(part)
    known = found.of_each(lambda _outer, _inner: 1.0, 0.0) > 0.0
    is_wound = coiled_m(part, slot, requirement) > 0.0
    if not np.any(is_wound):
        return known
    drum = requirement.position.reel.drum_diameter_m
    too_tight = found.of_each(lambda outer, inner: float(not inner and not _winds(outer, drum)), 0.0) > 0.0
    return known & ~(too_tight & is_wound)


def _winds(outer_m: float, drum_m: float) -> bool:
    return drum_m >= LEAST_COIL_RATIO.value * outer_m


def loss_pa(part: PartView, slot: Slot, requirement: Requirement, flow_m3_s: float, state: LiquidState) -> Floats:
    """Return the pressure loss (Pa) at a flow; infinite where a part lacks a figure for it.

    Parameters: ``part`` and ``slot``; ``requirement``; ``flow_m3_s``; ``state`` of the liquid.
    Source: as ``calc.losses``; roughness of a smooth rubber bore (secondary); Kv by the maker.
    """
    if not flow_m3_s > 0.0:
        return np.zeros_like(part.number("mass_kg"))
    if not is_hose(part):
        ratio = flow_m3_s * SECONDS_PER_HOUR.value / part.number("flow_coefficient_kv")
        lost = BAR.value * state.density_kg_m3 / KV_REFERENCE_DENSITY.value * ratio**2
    else:
        lost = _hose_loss_pa(part, slot, requirement, flow_m3_s, state)
    return np.where(has_flow_data(part, slot, requirement), lost, np.inf)


def _hose_loss_pa(part: PartView, slot: Slot, requirement: Requirement, flow_m3_s: float, state: LiquidState) -> Floats:
    found, length, wound = passages(part), part.number("hose.length_m"), coiled_m(part, slot, requirement)
    rough, drum = SMOOTH_RUBBER_ROUGHNESS.value, requirement.position.reel.drum_diameter_m

    def of_metre(outer: float, inner: float) -> float:
        if inner > 0.0:
            ring = AnnularRun(length_m=1.0, outer_diameter_m=outer, inner_diameter_m=inner, roughness_m=rough)
            return element_loss_pa(ring, flow_m3_s, state)
        return element_loss_pa(HoseRun(length_m=1.0, bore_m=outer, roughness_m=rough), flow_m3_s, state)

    def of_wound_metre(outer: float, inner: float) -> float:
        if inner > 0.0:  # the ring of a coaxial hose is taken as straight
            return of_metre(outer, inner)
        if not _winds(outer, drum):
            return math.inf
        run = HoseRun(length_m=1.0, bore_m=outer, roughness_m=rough, coil_diameter_m=drum, coiled_length_m=1.0)
        return element_loss_pa(run, flow_m3_s, state)

    straight = found.of_each(of_metre) * (length - wound)
    if not np.any(wound > 0.0):
        return straight
    coil = found.of_each(of_wound_metre)
    return straight + np.where(wound > 0.0, np.where(np.isinf(coil), 0.0, coil) * wound, 0.0)


def filled_weight_n(part: PartView, state: LiquidState) -> Floats:
    """Return the weight (N) with its liquid; the little liquid in a rigid part is left out.

    A coaxial hose without sizes of its inner tube is taken as full, which is the heavier case.

    Parameters: ``part``; ``state``, density of the liquid. Source: statics.
    """
    mass = part.number("mass_kg")
    if not is_hose(part):
        return STANDARD_GRAVITY.value * mass
    length, found = part.number("hose.length_m"), passages(part)
    outer, inner = found.of_each(lambda outer, _inner: outer), found.of_each(lambda _outer, inner: inner, 0.0)
    outer = np.where(np.isnan(outer), part.number("hose.bore_m"), outer)
    empty_kg_m = np.maximum(part.number("hose.mass_kg_m"), mass / length)
    liquid_kg_m = state.density_kg_m3 * math.pi * (outer**2 - inner**2) / 4.0
    return STANDARD_GRAVITY.value * (empty_kg_m + liquid_kg_m) * length


def yearly_permeation_kg(hoses: PartView, requirement: Requirement) -> Floats:
    """Return what leaves through the walls of hoses in a year (kg), at the middle of the climate; NaN where unknown.

    Parameters: ``hoses``; ``requirement``, whose middle temperature lies within the range of the temperature rule.
    Source: as ``calc.permeation``; the rate is the maker's.
    """
    middle_c = (requirement.temperature_low_c + requirement.temperature_high_c) / 2.0
    of_one = permeation_loss(rate_kg_m2_s=1.0, bore_m=1.0, length_m=1.0, temperature_c=middle_c).yearly_loss_kg
    size = hoses.number("hose.bore_m") * hoses.number("hose.length_m")
    return np.asarray(of_one * hoses.number("hose.permeation_kg_m2_s") * size)


def pull_demand_n(part: PartView, slot: Slot, requirement: Requirement, tables: RuleTables) -> Floats:
    """Return the pull (N) that all other parts and the outlet must bear because of breakaways; 0 for other parts.

    Parameters: ``part`` and ``slot``; ``requirement``, the angle left in a drive-off; ``tables``, the margin.
    Source: statics; the margin is engineering judgement.
    """
    if slot not in BREAKAWAY_SLOTS:
        return np.zeros_like(part.number("mass_kg"))
    margin = tables.jurisdiction.number(LimitId.BREAKAWAY_STRENGTH_MARGIN)
    along_the_line = part.number("breakaway.separation_maximum_n") / math.cos(requirement.drive_off_angle_rad)
    return margin * along_the_line


def corner_allowance_m(part: PartView, slot: Slot, requirement: Requirement, tables: RuleTables) -> Floats:
    """Return what the corners round the vehicle take (m) off the curb hose; 0 for the straight way.

    Parameters: ``part`` and ``slot``; ``requirement``, the filler that asks for most; ``tables``, the slack.
    Source: half a bend radius per corner, engineering judgement.
    """
    if slot is not Slot.CURB_HOSE:
        return np.zeros_like(part.number("mass_kg"))
    corners = worst_reach(requirement.position, tables.jurisdiction).corners
    return CORNER_ALLOWANCE.value * corners * part.number("hose.minimum_bend_radius_m")


def design_flow_m3_s(nozzle: PartView, requirement: Requirement, tables: RuleTables) -> Floats:
    """Return the flow (m3/s) at which the nozzle's opening pressure must still be there.

    The wanted flow as far as the dispenser gives it, or the nozzle's least flow where that is more.

    Parameters: ``nozzle``; ``requirement``; ``tables``, the road limit.
    """
    wanted = min(requirement.wanted_flow_m3_s, flow_ceiling_m3_s(requirement, tables))
    return np.maximum(wanted, known_or(nozzle.number("nozzle.minimum_flow_m3_s"), 0.0))
