"""Requirements that one part meets or breaks by itself."""

from __future__ import annotations

from collections.abc import Iterator

from oracle.breach import MUST, SHOULD, Breach
from oracle.need import Need
from oracle.suitability import TABLE
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import NozzleData, NozzleOperation, Part, PartKind, PartStatus, Placement
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Slot
from spoutline.model.survey import Duty, Retrieval

LISTED_KINDS = frozenset(
    {
        PartKind.NOZZLE,
        PartKind.SWIVEL,
        PartKind.SWIVEL_BREAKAWAY,
        PartKind.CURB_HOSE,
        PartKind.WHIP_HOSE,
        PartKind.BREAKAWAY,
    }
)
KINDS_OF_SLOT = {slot: PartKind(slot.value) for slot in Slot}
TOLERANCE_M = 1e-6


def inspect_part(part: Part, slot: Slot, need: Need) -> Iterator[Breach]:
    """Yield what ``part`` breaks in ``slot``."""
    if part.kind is not KINDS_OF_SLOT[slot]:
        yield Breach("kind", MUST, part.number, f"a {part.kind} cannot serve as {slot}")
        return
    yield from _offer(part, need)
    yield from _listing(part, need)
    yield from _climate_and_pressure(part, need)
    if part.nozzle is not None:
        yield from _nozzle(part, part.nozzle, need)
    if part.hose is not None:
        yield from _hose(part, slot, need)
    if part.breakaway is not None:
        yield from _breakaway(part, need)
    if slot in (Slot.SWIVEL, Slot.SWIVEL_BREAKAWAY) and (part.swivel is None or part.swivel.planes < need.planes):
        yield Breach("swivel planes", SHOULD, part.number, f"fewer than {need.planes} planes of rotation")


def _offer(part: Part, need: Need) -> Iterator[Breach]:
    decisions = need.position.decisions
    if part.status is not PartStatus.ACTIVE:
        yield Breach("status", MUST, part.number, f"is {part.status}")
    if part.price_minor(need.site.currency) is None:
        yield Breach("price", MUST, part.number, f"has no price in {need.site.currency}")
    if any(one.number == part.number and one.maker in ("", part.maker) for one in decisions.refused):
        yield Breach("decision", MUST, part.number, "was refused")
    longest = decisions.longest_lead_time_days
    if longest is not None and part.lead_time_days > longest:
        yield Breach("lead time", MUST, part.number, f"{part.lead_time_days} days exceed {longest}")


def _listing(part: Part, need: Need) -> Iterator[Breach]:
    """A listing beats the material table; DEF has no class: its maker's offer and its materials decide."""
    listed = False
    if need.listing_class is not None:
        has_class = need.listing_class in {c.value for c in part.listings}
        has_scheme = need.numbers.scheme in {s.value for s in part.schemes}
        listed = has_class and has_scheme
        if part.kind in LISTED_KINDS and not has_class:
            yield Breach("listing class", MUST, part.number, f"not listed for {need.listing_class}")
        if part.kind in LISTED_KINDS and not has_scheme:
            yield Breach("listing scheme", MUST, part.number, f"no {need.numbers.scheme} listing")
    if need.is_def and part.nozzle is None and part.offered_for_def is not True:
        yield Breach("DEF offer", MUST, part.number, "its maker does not offer it for DEF")
    if listed:
        return
    if need.listing_class is not None and part.kind in LISTED_KINDS:
        return
    for material in part.wetted_materials:
        letter = TABLE[material.value, need.column]
        if letter == "N":
            yield Breach("materials", MUST, part.number, f"{material} is unsuitable for {need.column}")
        elif letter == "C":
            yield Breach("materials", SHOULD, part.number, f"{material} wants care with {need.column}")


def _climate_and_pressure(part: Part, need: Need) -> Iterator[Breach]:
    climate = need.site.climate
    if part.temperature_minimum_c > climate.low_c or part.temperature_maximum_c < climate.high_c:
        yield Breach("temperature", MUST, part.number, "its range does not cover the climate")
    if part.maximum_pressure_pa < max(need.supply_pressure_pa, need.numbers.pressure_rating_pa) * (1 - 1e-3):
        yield Breach("pressure", MUST, part.number, f"bears only {part.maximum_pressure_pa:.0f} Pa")


def _nozzle(part: Part, nozzle: NozzleData, need: Need) -> Iterator[Breach]:
    family = need.position.liquid.family
    band = dict(need.spouts).get(nozzle.service)
    if family not in nozzle.liquids or band is None:
        yield Breach("service", MUST, part.number, f"a {nozzle.service} nozzle is not made for {family} here")
    windows = [band for _, band in need.spouts] if band is None else [band]
    diameter = nozzle.spout_outside_diameter_m
    if not any(w.least_m - TOLERANCE_M <= diameter <= w.greatest_m + TOLERANCE_M for w in windows):
        yield Breach("spout", MUST, part.number, f"spout of {diameter * 1e3:.2f} mm")
    if family is LiquidFamily.GASOLINE:
        yield from _gasoline_spout(part, nozzle, need)
    yield from _shut_off(part, nozzle, need)
    if need.path is FlowPath.BALANCE and not nozzle.bellows:
        yield Breach("bellows", MUST, part.number, "a balance nozzle needs bellows")
    if need.enhanced and not nozzle.enhanced_conventional:
        yield Breach("enhanced conventional", MUST, part.number, "an enhanced conventional nozzle is asked for")
    if need.is_def and need.position.in_flammable_zone and not nozzle.def_zone_evaluated:
        yield Breach("DEF zone", MUST, part.number, "not evaluated for the flammable zone")
    least = need.supply_flow_m3_s if need.road_limit_m3_s is None else min(need.supply_flow_m3_s, need.road_limit_m3_s)
    if nozzle.maximum_flow_m3_s < least * (1 - 1e-3):
        yield Breach("nozzle maximum flow", MUST, part.number, "the dispenser gives more than it takes")


def _gasoline_spout(part: Part, nozzle: NozzleData, need: Need) -> Iterator[Breach]:
    straight, spring = need.numbers.gasoline_straight_m, need.numbers.gasoline_spring_m
    if straight is not None and nozzle.spout_straight_length_m < straight - TOLERANCE_M:
        yield Breach("spout straight length", MUST, part.number, f"{nozzle.spout_straight_length_m * 1e3:.1f} mm")
    found = nozzle.spring_distance_m
    if spring is not None and (found is None or abs(found - spring) > 1e-3):
        yield Breach("spout spring", MUST, part.number, "retaining spring not 3.0 in from the tip")


def _shut_off(part: Part, nozzle: NozzleData, need: Need) -> Iterator[Breach]:
    if need.automatic and nozzle.operation is not NozzleOperation.AUTOMATIC:
        yield Breach("operation", MUST, part.number, "automatic shut-off is asked for")
    if nozzle.hold_open != need.hold_open:
        yield Breach("hold-open", MUST, part.number, "latch" if nozzle.hold_open else "no latch")
    overhead = need.position.overhead and not need.numbers.hold_open_overhead
    if nozzle.hold_open and overhead and not nozzle.attitude_device:
        yield Breach("attitude device", MUST, part.number, "a latch on an overhead hose without one")
    if need.device and not nozzle.no_pressure_device:
        yield Breach("no-pressure device", MUST, part.number, "none fitted")


def _hose(part: Part, slot: Slot, need: Need) -> Iterator[Breach]:
    hose = part.hose
    assert hose is not None
    if need.construction is not None and slot is Slot.CURB_HOSE and hose.construction is not need.construction:
        yield Breach("hose construction", MUST, part.number, f"{hose.construction} instead of {need.construction}")
    on_reel = need.position.retrieval is Retrieval.REEL or need.position.duty is Duty.REEL
    bend_across = 2 * hose.minimum_bend_radius_m
    if on_reel and slot is Slot.CURB_HOSE and bend_across > need.position.reel.drum_diameter_m + TOLERANCE_M:
        yield Breach("drum", MUST, part.number, "bends wider than the drum")
    if need.path is not FlowPath.SINGLE and slot is Slot.CURB_HOSE and not hose.built_in_swivel:
        yield Breach("built-in swivel", MUST, part.number, "a coaxial hose turns in its own swivel")
    if need.numbers.low_permeation and need.position.liquid.family is LiquidFamily.GASOLINE:
        rate = hose.permeation_kg_m2_s
        if not hose.low_permeation:
            yield Breach("low permeation", MUST, part.number, "not a low-permeation hose")
        elif rate is None or rate > need.numbers.permeation_max_kg_m2_s * (1 + 1e-6):
            yield Breach("permeation", MUST, part.number, "more than 10 g/m2.day, or untested")
    oxygenate = need.numbers.oxygenate_max_percent
    ethanol = need.position.liquid.blend_percent if need.position.liquid.family is LiquidFamily.GASOLINE else 0.0
    if oxygenate is not None and ethanol > oxygenate:
        yield Breach("oxygenate limit", SHOULD, part.number, f"EN 1360 ends at {oxygenate:g} % oxygenates")
    if need.length_max_m is not None and hose.length_m > need.length_max_m + TOLERANCE_M:
        yield Breach("hose length", MUST, part.number, f"{hose.length_m:.2f} m")


def _breakaway(part: Part, need: Need) -> Iterator[Breach]:
    data = part.breakaway
    assert data is not None
    severity = SHOULD if need.is_def else MUST
    low, high = need.numbers.separation_least_n, need.numbers.separation_greatest_n
    if data.separation_minimum_n < low - 0.5 or data.separation_maximum_n > high + 0.5:
        window = f"{data.separation_minimum_n:.0f}-{data.separation_maximum_n:.0f} N"
        yield Breach("separation window", severity, part.number, window)
    place = Placement.NOZZLE_END if need.at_nozzle else Placement.DISPENSER_END
    if len(need.chains) == 1 and place not in data.placements:
        yield Breach("breakaway place", MUST, part.number, f"not marked for the {place}")
    if need.path is not FlowPath.SINGLE and not data.closes_vapour:
        yield Breach("vapour closing", MUST, part.number, "leaves the vapour path open when it parts")
