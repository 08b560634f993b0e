"""Requirements of the whole chain: order, joints, length, load, bond and flow."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from oracle.breach import MUST, SHOULD, Breach, Inspection, is_near
from oracle.fluid_state import fluid_state
from oracle.hanging import hang
from oracle.need import Need, need_of
from oracle.numbers import GRAVITY_M_S2
from oracle.part_inspection import inspect_part
from oracle.pipe_flow import bore_of, chain_loss_pa, solved_flow_m3_s
from spoutline.model.part import Part
from spoutline.model.plan import SetLink
from spoutline.model.port import FlowPath, Gender, Port
from spoutline.model.requirement import Slot
from spoutline.model.survey import Duty, Position, Retrieval, Site

CONNECTORS = (Slot.ADAPTOR, Slot.SPLITTER)
FLOW_BAND = 0.01  # what two honest calculations from the same formulas may differ by
LOAD_BAND = 0.10  # the pull of a nearly taut hose is known less well
REACH_BAND_M = 0.01
CLEARANCE_BAND_M = 0.005
GENDERS = frozenset(Gender)


def inspect_set(position: Position, site: Site, links: Sequence[SetLink]) -> Inspection:
    """Inspect a chain against the position; the site's jurisdiction picks the figures."""
    need = need_of(position, site)
    breaches = [breach for link in links for breach in inspect_part(link.part, link.slot, need)]
    breaches += _order(links, need)
    breaches += _joints(links, need)
    if not any(b.requirement in ("chain", "kind") for b in breaches):
        breaches += chain_breaches(links, need)
    used = {
        (number, maker)
        for link in links
        for number, maker in ((link.part.number, link.part.maker), (link.part.number, ""))
    }
    pinned = {one.number for one in position.decisions.pinned if (one.number, one.maker) not in used}
    breaches += [Breach("decision", MUST, number, "is pinned and not used") for number in sorted(pinned)]
    solid = tuple(b for b in breaches if not b.near)
    doubtful = frozenset(b.requirement for b in breaches if b.near and b.severity is MUST)
    return Inspection(solid, doubtful, frozenset(b.requirement for b in breaches if b.near) - doubtful)


def chain_breaches(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """Yield what a chain in the right order breaks as a whole, quickest calculation first."""
    for inspect in (_path, _length, _whip, _bond, _strength, _clearance, _load, _velocity, _flow):
        yield from inspect(links, need)


def _order(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    for link in links:
        if link.slot is Slot.ADAPTOR:
            yield Breach("adaptor", SHOULD, link.part.number, "one more joint that can leak")
    slots = tuple(link.slot for link in links if link.slot not in CONNECTORS)
    if slots not in need.chains:
        yield Breach("chain", MUST, "set", " - ".join(slots))
    if any(link.slot is Slot.SPLITTER for link in links[1:]):
        yield Breach("chain", MUST, "set", "a splitter belongs at the dispenser outlet")


def ports_mate(upstream: Port, downstream: Port) -> bool:
    """Two ends make up when thread standard, size and path agree and the genders differ.

    A 60 degree NPT never mates a 55 degree G thread, however close their diameters (ASME B1.20.1, ISO 228-1).
    """
    same = (upstream.thread, upstream.size, upstream.path) == (downstream.thread, downstream.size, downstream.path)
    return same and {upstream.gender, downstream.gender} == GENDERS


def _joints(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    outlet = need.position.outlet
    previous = Port(outlet.thread, outlet.size, outlet.gender, outlet.path)
    for link in links:
        if link.part.inlet is None or not ports_mate(previous, link.part.inlet):
            yield Breach("joint", MUST, link.part.number, f"{previous} does not take {link.part.inlet}")
        if link.part.outlet is None:
            return
        previous = link.part.outlet


def _path(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    for link in links:
        part = link.part
        paths = {port.path for port in (part.inlet, part.outlet) if port is not None}
        if link.slot not in CONNECTORS and paths != {need.path}:
            yield Breach("path", MUST, part.number, f"{sorted(paths)} instead of {need.path}")
        if link.slot not in CONNECTORS or part.inlet is None or part.outlet is None:
            continue
        narrows = part.inlet.path is not FlowPath.SINGLE and part.outlet.path is FlowPath.SINGLE
        if narrows and not (part.adaptor is not None and part.adaptor.closes_vapour):
            yield Breach("vapour closing", MUST, part.number, "leaves the dispenser's vapour path open")
        widens = part.inlet.path is FlowPath.SINGLE and part.outlet.path is not FlowPath.SINGLE
        if widens and not need.position.outlet.vapour_return_available:
            yield Breach("vapour return", MUST, part.number, "no vapour return pipe to join")


def _hoses(links: Sequence[SetLink]) -> list[Part]:
    return [link.part for link in links if link.part.hose is not None]


def _hose_total_m(links: Sequence[SetLink]) -> float:
    return sum(part.hose.length_m for part in _hoses(links) if part.hose)


def coiled_m(need: Need) -> float:
    """Length that stays on the drum of a reel when the filler is reached."""
    if need.position.retrieval is not Retrieval.REEL and need.position.duty is not Duty.REEL:
        return 0.0
    return math.pi * need.position.reel.drum_diameter_m * need.position.reel.turns_left


def _length(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    total = _hose_total_m(links)
    if need.length_max_m is not None and total > need.length_max_m + 1e-6:
        yield Breach("hose length", MUST, "set", f"{total:.3f} m of hose exceed {need.length_max_m:.3f} m")
    rigid = sum(link.part.length_m for link in links if link.part.hose is None)
    radius = max((part.hose.minimum_bend_radius_m for part in _hoses(links) if part.hose), default=0.0)
    corners = max((max(len(f.plan_legs_m) - 1, 0) for f in need.position.fillers), default=0)
    have, want = total + rigid - coiled_m(need), need.reach_m + 0.5 * radius * corners
    if have < want + REACH_BAND_M:
        near = abs(have - want) <= REACH_BAND_M or (corners > 0 and have >= need.reach_m)
        if near or have < want:
            yield Breach("reach", MUST, "set", f"{have:.2f} m of hose and fittings for {want:.2f} m", near)


def _whip(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """A whip hose must be able to turn its breakaway into the pull: a quarter turn from down or from the lane."""
    whip = next((link.part for link in links if link.slot is Slot.WHIP_HOSE), None)
    if whip is None or whip.hose is None:
        return
    arc = need.numbers.whip_margin * math.pi / 2 * whip.hose.minimum_bend_radius_m
    if whip.hose.length_m < arc:
        yield Breach("whip length", MUST, whip.number, f"{whip.hose.length_m:.2f} m cannot turn {arc:.2f} m of arc")


def _clearance(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """At rest on the hook and with the nozzle in a filler the hose stays clear of the ground (common practice).

    A filler below the clearance, as in a boat, is left out; so are hoses that a cord or a drum takes up.
    """
    position = need.position
    if position.retrieval is not Retrieval.NONE or position.duty is Duty.REEL:
        return
    total = _hose_total_m(links) + sum(x.part.length_m for x in links[:-1] if x.part.hose is None)
    ends = [("at rest", position.hook.height_m, position.hook.distance_m)]
    ends += [
        (f"at {filler.label}", filler.height_m, math.fsum(filler.plan_legs_m) or filler.distance_m)
        for filler in position.fillers
        if filler.height_m >= need.numbers.ground_clearance_m
    ]
    for name, height_m, distance_m in ends:
        curve = hang(position.outlet.height_m, height_m, distance_m, total)
        if curve is not None and curve.lowest_m < need.numbers.ground_clearance_m:
            near = abs(curve.lowest_m - need.numbers.ground_clearance_m) < CLEARANCE_BAND_M
            yield Breach("ground clearance", SHOULD, "set", f"{curve.lowest_m:.2f} m above ground {name}", near)


def filled_weight_n(part: Part, density_kg_m3: float) -> float:
    """Weight of a part with the liquid in it, N; the liquid inside fittings is neglected."""
    mass = part.mass_kg
    if part.hose is not None:
        assert part.path is not None
        area, _ = bore_of(part.hose, part.path)
        mass += part.hose.length_m * area * density_kg_m3
    return mass * GRAVITY_M_S2


def _breakaway_at(links: Sequence[SetLink]) -> int:
    return next(i for i, link in enumerate(links) if link.part.breakaway is not None)


def _end_tension_n(links: Sequence[SetLink], need: Need, density_kg_m3: float) -> float:
    """Greatest pull at the breakaway's end of the chain with the nozzle in a filler, as a catenary of even weight."""
    if need.position.retrieval is not Retrieval.NONE or need.position.duty is Duty.REEL:
        return 0.0
    length = _hose_total_m(links) + sum(link.part.length_m for link in links if link.part.hose is None)
    curb = next(link.part for link in links if link.slot is Slot.CURB_HOSE)
    weight_n_m = filled_weight_n(curb, density_kg_m3) / curb.length_m
    height, tensions = need.position.outlet.height_m, [0.0]
    for filler in need.position.fillers:
        curve = hang(height, filler.height_m, math.fsum(filler.plan_legs_m) or filler.distance_m, length)
        if curve is not None:
            tensions.append(weight_n_m * (curve.tension_end_m if need.at_nozzle else curve.tension_start_m))
    return max(tensions)


def _load(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """n1 = least separation force / (load + tug + thrust); below 1 it parts in service.

    The load is the filled weight below the breakaway or the pull of the hanging hose, whichever is greater.
    """
    at = _breakaway_at(links)
    data, number, severity = links[at].part.breakaway, links[at].part.number, SHOULD if need.is_def else MUST
    assert data is not None
    liquid = need.position.liquid
    density = fluid_state(liquid.family.value, liquid.blend_percent, need.cold_c).density_kg_m3
    weight = sum(filled_weight_n(link.part, density) for link in links[at + 1 :])
    load = max(weight, _end_tension_n(links, need, density))
    thrust = 0.0 if data.seal_diameter_m is None else need.supply_pressure_pa * math.pi / 4 * data.seal_diameter_m**2
    ratio = data.separation_minimum_n / (load + need.numbers.user_tug_n + thrust)
    if ratio < 1 + LOAD_BAND:
        yield Breach("service load", severity, number, f"n1 = {ratio:.2f}", is_near(ratio, 1, LOAD_BAND))
    margin = need.numbers.service_margin
    if ratio < margin * (1 + LOAD_BAND):
        yield Breach("service margin", SHOULD, number, f"n1 = {ratio:.2f}", is_near(ratio, margin, LOAD_BAND))


def _strength(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """Everything must outlast the breakaway, its own ends too: 1.25 times its greatest separation force.

    DEF is no exception: a hose that holds longer than its dispenser pulls the dispenser over.
    """
    data = links[_breakaway_at(links)].part.breakaway
    assert data is not None
    demand = need.numbers.strength_margin * data.separation_maximum_n
    for link in links:
        strength = link.part.pull_strength_n
        if strength is None or strength < demand - 1.0:
            yield Breach("pull strength", MUST, link.part.number, f"{strength} N against {demand:.0f} N")
    outlet = need.position.outlet.pull_strength_n
    bears = need.numbers.outlet_strength_n if outlet is None else outlet
    if bears < demand - 1.0:
        yield Breach("outlet strength", MUST, "outlet", f"{bears:.0f} N against {demand:.0f} N")


def _bond(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """Continuity from dispenser to spout; for DEF only advice (UL 87C issue 4, secondary)."""
    severity = SHOULD if need.is_def else MUST
    total, numbers = len(links) * need.numbers.joint_resistance_ohm, need.numbers
    for link in links:
        part, hose = link.part, link.part.hose
        resistance = part.resistance_ohm
        if hose is not None:
            resistance = None if hose.resistance_ohm_m is None else hose.resistance_ohm_m * hose.length_m
            greatest = numbers.hose_resistance_max_ohm_m
            if greatest is not None and (hose.resistance_ohm_m or 0.0) > greatest * 1.001:
                yield Breach("part resistance", severity, part.number, f"{hose.resistance_ohm_m:.0f} ohm/m")
        elif resistance is not None and resistance > numbers.device_resistance_max_ohm:
            yield Breach("part resistance", severity, part.number, f"{resistance:.0f} ohm")
        if resistance is None:
            yield Breach("continuity", severity, part.number, "resistance not stated")
        total += resistance or 0.0
    if total > numbers.total_resistance_max_ohm:
        near = is_near(total, numbers.total_resistance_max_ohm, 0.001)
        yield Breach("total resistance", severity, "set", f"{total:.0f} ohm", near)


def delivered_flows_m3_s(links: Sequence[SetLink], need: Need) -> tuple[float, float]:
    """Return the flow at the nozzle, cold and hot, capped by dispenser and road limit."""
    parts = tuple(link.part for link in links)
    rise = max(filler.height_m for filler in need.position.fillers) - need.position.outlet.height_m
    cap = need.supply_flow_m3_s if need.road_limit_m3_s is None else min(need.supply_flow_m3_s, need.road_limit_m3_s)
    liquid = need.position.liquid
    flows = []
    for temperature in (need.cold_c, need.hot_c):
        state = fluid_state(liquid.family.value, liquid.blend_percent, temperature)
        flows.append(min(cap, solved_flow_m3_s(parts, need.supply_pressure_pa, rise, state)))
    return flows[0], flows[1]


def _flow(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    last = links[-1].part
    nozzle = last.nozzle
    assert nozzle is not None
    flows = delivered_flows_m3_s(links, need)
    slowest = min(flows)
    if nozzle.minimum_flow_m3_s is None:
        if need.automatic:
            yield Breach("nozzle minimum flow", MUST, last.number, "no least flow stated for the shut-off")
    elif slowest < nozzle.minimum_flow_m3_s * (1 + FLOW_BAND):
        near = is_near(slowest, nozzle.minimum_flow_m3_s, FLOW_BAND)
        yield Breach("nozzle minimum flow", MUST, last.number, f"{slowest * 6e4:.1f} L/min", near)
    if max(flows) > nozzle.maximum_flow_m3_s * (1 + 1e-3):
        near = is_near(max(flows), nozzle.maximum_flow_m3_s, FLOW_BAND)
        yield Breach("nozzle maximum flow", MUST, last.number, f"{max(flows) * 6e4:.1f} L/min", near)
    if slowest < need.wanted_flow_m3_s * (1 - 1e-6):
        near = is_near(slowest, need.wanted_flow_m3_s, FLOW_BAND)
        yield Breach("wanted flow", SHOULD, "set", f"{slowest * 6e4:.1f} L/min", near)
    yield from _opening_pressure(links, need)


def _velocity(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """At the dispenser's greatest flow the liquid should not run faster than 7 m/s (pipe guidance, memory)."""
    limit = need.road_limit_m3_s
    greatest = need.supply_flow_m3_s if limit is None else min(need.supply_flow_m3_s, limit)
    for part in _hoses(links):
        assert part.hose is not None
        assert part.path is not None
        velocity = greatest / bore_of(part.hose, part.path)[0]
        if velocity > need.numbers.velocity_max_m_s:
            yield Breach("velocity", SHOULD, part.number, f"{velocity:.1f} m/s")


def _opening_pressure(links: Sequence[SetLink], need: Need) -> Iterator[Breach]:
    """At the design flow enough pressure must be left at the nozzle inlet to open its device.

    Turns on a drum take up to 2.2 times what straight hose takes (published correlations spread that far): doubtful.
    """
    last = links[-1].part
    nozzle = last.nozzle
    assert nozzle is not None
    if nozzle.opening_pressure_pa is None:
        return
    liquid, design = need.position.liquid, max(need.wanted_flow_m3_s, nozzle.minimum_flow_m3_s or 0.0)
    rise = max(filler.height_m for filler in need.position.fillers) - need.position.outlet.height_m
    upstream = tuple(link.part for link in links[:-1])
    for temperature in (need.cold_c, need.hot_c):
        state = fluid_state(liquid.family.value, liquid.blend_percent, temperature)
        static = state.density_kg_m3 * GRAVITY_M_S2 * rise
        left = need.supply_pressure_pa - static - chain_loss_pa(upstream, design, state)
        of_hoses = chain_loss_pa(tuple(_hoses(links)), design, state)
        on_drum = 1.2 * of_hoses * min(coiled_m(need) / _hose_total_m(links), 1.0)
        if left - on_drum < nozzle.opening_pressure_pa * (1 + FLOW_BAND):
            near = on_drum > 0 or is_near(left, nozzle.opening_pressure_pa, FLOW_BAND)
            yield Breach("nozzle opening pressure", MUST, last.number, f"{left:.0f} Pa at the inlet", near)
            return
