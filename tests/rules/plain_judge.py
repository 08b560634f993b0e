"""What a part breaks by itself, a second time: plain numbers, one part at a time, written from the rules' statements.

It shares nothing with ``rules.parts``, neither columns nor helpers, so that a slip in the words of a rule, or in what
columns make of a figure, shows as a difference. What a position asks is taken from its requirement, and limits from
the profile; both are held against the standards elsewhere. Figures bear the rounding with which tables are written.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from spoutline.calc.friction import LEAST_COIL_RATIO
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId as L
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily, ListingScheme
from spoutline.model.material import Suitability
from spoutline.model.part import (
    BREAKAWAYS,
    HOSES,
    NozzleOperation,
    NozzleService,
    Part,
    PartKind,
    PartStatus,
    Placement,
)
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Duty, OutletDirection, Retrieval
from spoutline.rules.declared.rule_ids import RuleId as R

Judged = tuple[R, Severity]

_SPOUTS = {
    NozzleService.GASOLINE: (L.SPOUT_GASOLINE_OD_MIN, L.SPOUT_GASOLINE_OD_MAX),
    NozzleService.DIESEL_CAR: (L.SPOUT_DIESEL_CAR_OD_MIN, L.SPOUT_DIESEL_CAR_OD_MAX),
    NozzleService.DIESEL_TRUCK: (L.SPOUT_DIESEL_TRUCK_OD_MIN, L.SPOUT_DIESEL_TRUCK_OD_MAX),
    NozzleService.DEF: (L.SPOUT_DEF_OD_MIN, L.SPOUT_DEF_OD_MAX),
}
_MUST, _SHOULD, _ADVICE = Severity.MUST, Severity.SHOULD, Severity.ADVICE
_SHARE = 1e-9  # what binary rounding may add to a product or a quotient
_NARROWEST_M = 0.2e-3  # a rubber tube of 0.01 mm roughness: the Moody chart ends at 0.05 of the diameter
_FITTINGS = (PartKind.ADAPTOR, PartKind.SPLITTER)


def plainly_broken(part: Part, slot: Slot, asked: Requirement, tables: RuleTables) -> Iterator[Judged]:
    """Yield every rule that a part of the kind of ``slot`` breaks there, with its severity; once for each material."""
    yield from _sold(part, asked)
    yield from _listed(part, asked, tables)
    yield from _stands(part, asked)
    yield from _path_of_part(part, asked)
    yield from _known(part, slot, asked)
    if part.kind is PartKind.NOZZLE:
        yield from _filler(part, asked, tables)
        yield from _shut_off(part, asked)
        yield from _nozzle_flow(part, asked, tables)
    if part.kind in HOSES:
        yield from _hose(part, slot, asked, tables)
        yield from _hose_current_and_flow(part, asked, tables)
    if part.kind in BREAKAWAYS:
        yield from _breakaway(part, asked, tables)
    if part.swivel is not None and asked.swivel_planes is not None and part.swivel.planes < asked.swivel_planes:
        yield R.SWIVEL_PLANES, _SHOULD
    if part.kind in (*BREAKAWAYS, PartKind.SWIVEL) and _above(part.resistance_ohm, tables, L.BOND_DEVICE_MAX):
        yield R.PART_RESISTANCE, asked.bonding_severity
    if part.kind is PartKind.ADAPTOR:
        yield R.ADAPTOR_ADDS_JOINT, _SHOULD
    needs_return = part.kind is PartKind.SPLITTER and part.adaptor is not None and part.adaptor.needs_vapour_return
    if needs_return and not asked.position.outlet.vapour_return_available:
        yield R.SPLITTER_VAPOUR_RETURN, _MUST


def _limit(tables: RuleTables, row: L) -> float | None:
    return tables.jurisdiction.optional_number(row)


def _above(value: float | None, tables: RuleTables, row: L) -> bool:
    most = _limit(tables, row)
    return value is not None and most is not None and value > most * (1 + _SHARE)


def _sold(part: Part, asked: Requirement) -> Iterator[Judged]:
    decisions = asked.position.decisions
    if part.status is not PartStatus.ACTIVE:
        yield R.PART_STATUS, _MUST
    if not any(price.currency == asked.site.currency for price in part.prices):
        yield R.PART_PRICE, _MUST
    if any(one.number == part.number and one.maker in ("", part.maker) for one in decisions.refused):
        yield R.PART_REFUSED, _MUST
    if decisions.longest_lead_time_days is not None and part.lead_time_days > decisions.longest_lead_time_days:
        yield R.PART_LEAD_TIME, _MUST


def _listed(part: Part, asked: Requirement, tables: RuleTables) -> Iterator[Judged]:
    """A listing for the class goes before the table of materials; a fitting without any is judged by its materials."""
    is_def, wanted = asked.liquid.family is LiquidFamily.DEF, asked.listing_class
    if wanted is not None and (part.listings or part.kind not in _FITTINGS):
        if asked.scheme not in part.schemes:
            yield R.PART_SCHEME, _MUST
        if wanted not in part.listings:
            yield R.PART_CLASS, _MUST
    if is_def and part.kind is not PartKind.NOZZLE and part.offered_for_def is not True:
        yield R.PART_DEF_OFFER, _MUST
    for material in part.wetted_materials:
        suits = tables.materials.verdict(material, asked.material_column).suitability
        if wanted in part.listings:
            if suits is Suitability.UNSUITABLE:
                yield R.MATERIAL_AGAINST_LISTING, _ADVICE
        elif suits is Suitability.UNSUITABLE:
            yield R.MATERIAL_UNSUITABLE, _MUST
        elif suits is Suitability.CAUTION:
            yield R.MATERIAL_CAUTION, _SHOULD if is_def else _ADVICE


def _stands(part: Part, asked: Requirement) -> Iterator[Judged]:
    rounding_k, rounding = 1e-6, 1e-6  # degrees Fahrenheit; psi and bar
    too_cold = asked.temperature_low_c < part.temperature_minimum_c - rounding_k
    if too_cold or asked.temperature_high_c > part.temperature_maximum_c + rounding_k:
        yield R.TEMPERATURE_RANGE, _MUST
    if part.maximum_pressure_pa < asked.pressure_pa * (1 - rounding):
        yield R.PRESSURE_RATING, _MUST


def _path_of_part(part: Part, asked: Requirement) -> Iterator[Judged]:
    ends = [port.path for port in (part.inlet, part.outlet) if port is not None]
    if part.kind not in _FITTINGS:
        if any(path is not asked.path for path in ends):
            yield R.PART_PATH, _MUST
        return
    if part.inlet is None or part.outlet is None or part.adaptor is None:
        return
    if part.outlet.path is not asked.path or part.inlet.path not in (asked.path, asked.outlet.path):
        yield R.PART_PATH, _MUST
    leaves_vapour = part.inlet.path is not FlowPath.SINGLE and part.outlet.path is FlowPath.SINGLE
    if leaves_vapour and not part.adaptor.closes_vapour:
        yield R.ADAPTOR_CLOSES_VAPOUR, _MUST


def _known(part: Part, slot: Slot, asked: Requirement) -> Iterator[Judged]:
    """What nobody states is never taken as good."""
    per_metre = None if part.hose is None else part.hose.resistance_ohm_m
    if part.resistance_ohm is None and per_metre is None:
        yield R.CONTINUITY_KNOWN, asked.bonding_severity
    if part.pull_strength_n is None:
        yield R.PULL_STRENGTH_KNOWN, _MUST
    if part.hose is None:
        if part.flow_coefficient_kv is None:
            yield R.FLOW_DATA_KNOWN, _MUST
        return
    passage, reel = _passage(part), asked.position.reel
    lies_on_drum = slot is Slot.CURB_HOSE and _is_on_reel(asked) and reel.turns_left > 0
    tightest_m = reel.drum_diameter_m / LEAST_COIL_RATIO.value  # wound tighter, no formula tells the loss of a bore
    if passage is None or (lies_on_drum and passage[1] == 0 and passage[0] > tightest_m):
        yield R.FLOW_DATA_KNOWN, _MUST


def _is_on_reel(asked: Requirement) -> bool:
    return asked.position.duty is Duty.REEL or asked.position.retrieval is Retrieval.REEL


def _passage(part: Part) -> tuple[float, float] | None:
    """Outer and inner diameter (m) of what the liquid fills: bore, inner tube, or ring round the inner tube."""
    hose, port = part.hose, part.outlet or part.inlet
    assert hose is not None
    if port is None or port.path is FlowPath.SINGLE:
        return hose.bore_m, 0.0
    ends = hose.bore_m, hose.inner_tube_outside_diameter_m
    outer, inner = (hose.inner_tube_bore_m, 0.0) if port.path is FlowPath.BALANCE else ends
    if outer is None or inner is None or outer - inner < _NARROWEST_M:
        return None
    return outer, inner


def _filler(part: Part, asked: Requirement, tables: RuleTables) -> Iterator[Judged]:
    nozzle, family, rounding_m = part.nozzle, asked.liquid.family, 1e-9
    assert nozzle is not None
    spout = nozzle.spout_outside_diameter_m
    if nozzle.service not in asked.nozzle_services:
        yield R.NOZZLE_SERVICE, _MUST
    if family not in nozzle.liquids:
        yield R.NOZZLE_LIQUID, _MUST
    services = [nozzle.service] if nozzle.service in asked.nozzle_services else list(asked.nozzle_services)
    lows = [_limit(tables, _SPOUTS[one][0]) for one in services]
    tops = [_limit(tables, _SPOUTS[one][1]) for one in services]
    least = -math.inf if None in lows else min(low for low in lows if low is not None)
    most = math.inf if None in tops else max(top for top in tops if top is not None)
    if not least - rounding_m <= spout <= most + rounding_m:
        yield R.SPOUT_DIAMETER, _MUST
    if family is LiquidFamily.GASOLINE:
        ends = (
            (R.SPOUT_STRAIGHT_LENGTH, nozzle.spout_straight_length_m, L.SPOUT_GASOLINE_STRAIGHT_MIN),
            (R.SPOUT_SPRING_DISTANCE, nozzle.spring_distance_m, L.SPOUT_GASOLINE_SPRING_DISTANCE),
        )
        for rule, size, row in ends:
            wanted = _limit(tables, row)
            if size is not None and wanted is not None and size < wanted - rounding_m:
                yield rule, _MUST
    yield from _openings(spout, asked, tables, rounding_m)
    if family is LiquidFamily.DEF and not nozzle.misfill_interlock:
        yield R.MISFILL_INTERLOCK, _ADVICE
    if asked.def_zone and not nozzle.def_zone_evaluated:
        yield R.DEF_ZONE_NOZZLE, _MUST
    if asked.path is FlowPath.BALANCE and not nozzle.bellows:
        yield R.BELLOWS, _MUST


def _openings(spout: float, asked: Requirement, tables: RuleTables, rounding_m: float) -> Iterator[Judged]:
    """A diameter bars diesel spouts from gasoline fillers and every fuel spout from DEF fillers; its own it enters."""
    family, is_car = asked.liquid.family, asked.position.duty is Duty.CAR
    gasoline, of_def = L.FILLER_GASOLINE_OPENING, L.FILLER_DEF_OPENING
    own = {
        LiquidFamily.DEF: of_def,
        LiquidFamily.GASOLINE: gasoline if is_car else None,
    }.get(family, L.FILLER_DIESEL_CAR_OPENING if is_car else None)
    wrong = {LiquidFamily.DEF: (), LiquidFamily.GASOLINE: (of_def,)}.get(family, (of_def, gasoline))
    for row in wrong:
        opening = _limit(tables, row)
        if opening is not None and spout <= opening + 1e-9:
            yield R.SPOUT_WRONG_FILLER, _MUST
    opening = None if own is None else _limit(tables, own)
    if opening is not None and spout > opening + rounding_m:
        yield R.SPOUT_OWN_FILLER, _MUST


def _shut_off(part: Part, asked: Requirement) -> Iterator[Judged]:
    nozzle = part.nozzle
    assert nozzle is not None
    if asked.automatic and nozzle.operation is not NozzleOperation.AUTOMATIC:
        yield R.AUTOMATIC_SHUT_OFF, _MUST
    if asked.hold_open and not nozzle.hold_open:
        yield R.LATCH_MISSING, _MUST
    if nozzle.hold_open and not asked.hold_open:
        yield R.LATCH_UNWANTED, _MUST
    if asked.attitude_device and nozzle.hold_open and not nozzle.attitude_device:
        yield R.LATCH_WITHOUT_ATTITUDE_DEVICE, _MUST
    if asked.no_pressure_device and not nozzle.no_pressure_device:
        yield R.NO_PRESSURE_DEVICE, _MUST
    if asked.enhanced_conventional and not nozzle.enhanced_conventional:
        yield R.ENHANCED_CONVENTIONAL, _MUST


def _ceiling_m3_s(asked: Requirement, tables: RuleTables) -> float:
    """What the dispenser gives, or what the law lets flow into a road vehicle's gasoline tank where that is less."""
    # pumps for heavy vehicles or boats alone are exempt: 61 FR 33033
    into_road_tank = asked.liquid.family is LiquidFamily.GASOLINE and asked.position.duty in (Duty.CAR, Duty.REEL)
    most = _limit(tables, L.FLOW_GASOLINE_ROAD_MAX) if into_road_tank else None
    return asked.supply_flow_m3_s if most is None else min(asked.supply_flow_m3_s, most)


def _nozzle_flow(part: Part, asked: Requirement, tables: RuleTables) -> Iterator[Judged]:
    nozzle, ceiling = part.nozzle, _ceiling_m3_s(asked, tables)
    assert nozzle is not None
    if nozzle.maximum_flow_m3_s < ceiling * (1 - _SHARE):
        yield R.NOZZLE_MAXIMUM_FLOW, _MUST
    if nozzle.minimum_flow_m3_s is not None and nozzle.minimum_flow_m3_s > ceiling * (1 + _SHARE):
        yield R.NOZZLE_MINIMUM_FLOW, _MUST
    if nozzle.operation is NozzleOperation.AUTOMATIC and nozzle.minimum_flow_m3_s is None:
        yield R.NOZZLE_MINIMUM_FLOW_KNOWN, _MUST
    if nozzle.no_pressure_device and nozzle.opening_pressure_pa is None:
        yield R.NOZZLE_OPENING_PRESSURE_KNOWN, _MUST


def _hose(part: Part, slot: Slot, asked: Requirement, tables: RuleTables) -> Iterator[Judged]:
    hose, rounding_m = part.hose, 1e-6
    assert hose is not None
    if slot is Slot.CURB_HOSE:
        if asked.hose_construction is not None and hose.construction is not asked.hose_construction:
            yield R.HOSE_CONSTRUCTION, _MUST
        if _is_on_reel(asked) and 2 * (hose.minimum_bend_radius_m - rounding_m) > asked.position.reel.drum_diameter_m:
            yield R.HOSE_DRUM, _MUST
        if asked.path is not FlowPath.SINGLE and not hose.built_in_swivel:
            yield R.HOSE_BUILT_IN_SWIVEL, _MUST
    if asked.low_permeation:
        if not hose.low_permeation:
            yield R.HOSE_LOW_PERMEATION, _MUST
        most, rate = asked.permeation_max_kg_m2_s, hose.permeation_kg_m2_s
        if most is not None and (rate is None or rate > most * (1 + _SHARE)):
            yield R.HOSE_PERMEATION_RATE, _MUST
    if asked.hose_length.maximum is not None and hose.length_m > asked.hose_length.maximum + rounding_m:
        yield R.HOSE_SINGLE_LENGTH, _MUST
    if slot is Slot.WHIP_HOSE:
        margin = tables.jurisdiction.number(L.BEND_ANGLE_MARGIN)
        if hose.length_m < margin * hose.minimum_bend_radius_m * _turn_rad(asked) - rounding_m:
            yield R.WHIP_LENGTH, _MUST


def _turn_rad(asked: Requirement) -> float:
    """A quarter turn into the line of a drive-off, and more by the rise of the steepest way to a higher filler."""
    outlet, rise = asked.position.outlet, 0.0
    if outlet.direction is not OutletDirection.SIDEWAYS:
        for filler in asked.position.fillers:
            rise = max(rise, math.atan2(filler.height_m - outlet.height_m, filler.distance_m))
    return math.pi / 2 + rise


def _hose_current_and_flow(part: Part, asked: Requirement, tables: RuleTables) -> Iterator[Judged]:
    hose, passage, most = part.hose, _passage(part), _limit(tables, L.FLOW_VELOCITY_MAX)
    assert hose is not None
    if passage is not None and most is not None:
        area_m2 = math.pi / 4 * (passage[0] ** 2 - passage[1] ** 2)
        if _ceiling_m3_s(asked, tables) / area_m2 > most:
            yield R.HOSE_VELOCITY, _SHOULD
    oxygenates = _limit(tables, L.HOSE_OXYGENATE_MAX)
    too_much = oxygenates is not None and asked.liquid.blend_percent > oxygenates
    if too_much and asked.liquid.family is LiquidFamily.GASOLINE and ListingScheme.EN in part.schemes:
        yield R.OXYGENATE_LIMIT, _SHOULD
    per_metre = hose.resistance_ohm_m
    if per_metre is None and part.resistance_ohm is not None:
        per_metre = part.resistance_ohm / hose.length_m
    if _above(per_metre, tables, L.BOND_HOSE_MAX):
        yield R.PART_RESISTANCE, asked.bonding_severity


def _breakaway(part: Part, asked: Requirement, tables: RuleTables) -> Iterator[Judged]:
    data, rounding_n = part.breakaway, 0.5  # standards print pounds-force and whole newtons side by side
    assert data is not None
    place = Placement.NOZZLE_END if asked.breakaway_at_nozzle else Placement.DISPENSER_END
    if place not in data.placements:
        yield R.BREAKAWAY_PLACEMENT, _MUST
    if asked.position.reconnectable_wanted and not data.reconnectable:
        yield R.BREAKAWAY_RECONNECTABLE, _MUST
    low, high = asked.separation.minimum, asked.separation.maximum
    ends = (data.separation_minimum_n, data.separation_maximum_n)
    if any(low is not None and end < low - rounding_n for end in ends) or any(
        high is not None and end > high + rounding_n for end in ends
    ):
        yield R.SEPARATION_WINDOW, _SHOULD if asked.liquid.family is LiquidFamily.DEF else _MUST
    if asked.path is not FlowPath.SINGLE and not data.closes_vapour:
        yield R.BREAKAWAY_CLOSES_VAPOUR, _MUST
    margin = tables.jurisdiction.number(L.BREAKAWAY_STRENGTH_MARGIN)
    demand_n = margin * data.separation_maximum_n / math.cos(asked.drive_off_angle_rad)
    if part.pull_strength_n is not None and part.pull_strength_n < demand_n * (1 - _SHARE):
        yield R.BREAKAWAY_OWN_STRENGTH, _MUST
