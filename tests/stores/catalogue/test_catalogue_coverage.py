"""A complete chain of sound parts exists for every sensible combination of liquid, duty, vapour and retrieval."""

import itertools

import pytest

from catalogue_chains import can_make_up, outlet
from spoutline.model.liquid import DIESEL_CLASSES, GASOLINE_CLASSES, LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import HoseConstruction, NozzleOperation, NozzleService, Part, PartKind, Placement
from spoutline.model.port import FlowPath, ThreadStandard

L_MIN = 1 / 60_000  # m3/s

FUEL_CHAIN = (PartKind.WHIP_HOSE, PartKind.BREAKAWAY, PartKind.CURB_HOSE, PartKind.SWIVEL, PartKind.NOZZLE)
REEL_CHAIN = (PartKind.CURB_HOSE, PartKind.SWIVEL_BREAKAWAY, PartKind.NOZZLE)
VAPOUR_CHAIN = (PartKind.WHIP_HOSE, PartKind.BREAKAWAY, PartKind.CURB_HOSE, PartKind.NOZZLE)
VAPOUR_REEL_CHAIN = (PartKind.CURB_HOSE, PartKind.BREAKAWAY, PartKind.NOZZLE)

# The least that a nozzle must take: what the dispenser gives (L/min; common practice, no source), gasoline into cars
# at most 10 gpm (EPA fact sheet on 40 CFR 80.22(j))
CEILING_L_MIN = {"car": 37.85, "truck": 151.4, "marine": 94.6, "reel": 94.6}


def suits(
    *,
    scheme: ListingScheme,
    path: FlowPath,
    listing: ListingClass | None,
    family: LiquidFamily,
    services: set[NozzleService],
    least_flow_l_min: float,
    construction: HoseConstruction | None,
    at_nozzle: bool,
    low_permeation: bool = False,
    enhanced: bool = False,
    latch: tuple[bool, bool] = (False, False),
):
    """The filters in plain words; ``latch`` is hold-open and no-pressure device."""

    def of_nozzle(part: Part) -> bool:
        data = part.nozzle
        return (
            family in data.liquids
            and data.service in services
            and data.operation is NozzleOperation.AUTOMATIC
            and data.maximum_flow_m3_s >= least_flow_l_min * L_MIN
            and (data.hold_open, data.no_pressure_device) == latch
            and data.enhanced_conventional >= enhanced
            and data.bellows is (path is FlowPath.BALANCE)
        )

    def of_hose(part: Part) -> bool:
        built_in = path is not FlowPath.SINGLE and part.kind is PartKind.CURB_HOSE
        return (
            (construction is None or part.kind is PartKind.WHIP_HOSE or part.hose.construction is construction)
            and part.hose.built_in_swivel is built_in
            and part.hose.low_permeation >= low_permeation
        )

    def of_breakaway(part: Part) -> bool:
        place = Placement.NOZZLE_END if at_nozzle else Placement.DISPENSER_END
        return place in part.breakaway.placements and part.breakaway.closes_vapour is (path is not FlowPath.SINGLE)

    def judge(part: Part) -> bool:
        if scheme not in part.schemes or (listing is not None and listing not in part.listings):
            return False
        if listing is None and Material.STAINLESS_STEEL not in part.wetted_materials:
            return False
        if part.kind in (PartKind.ADAPTOR, PartKind.SPLITTER):
            return True
        if part.path is not path:
            return False
        return (
            (part.nozzle is None or of_nozzle(part))
            and (part.hose is None or of_hose(part))
            and (part.breakaway is None or of_breakaway(part))
        )

    return judge


RETRIEVALS = {"plain": None, "retractor": HoseConstruction.HARDWALL, "reel": HoseConstruction.SOFTWALL}


def built(scheme: ListingScheme, retrieval: str, duty: str) -> HoseConstruction | None:
    """Hardwall for fuel under UL listings (common practice, no source); softwall on European reels (EN 1360)."""
    if scheme is ListingScheme.UL:
        return HoseConstruction.HARDWALL
    return HoseConstruction.SOFTWALL if duty == "reel" else RETRIEVALS[retrieval]


LATCHES = ((False, False), (False, True), (True, True))
OUTLETS = {
    ListingScheme.UL: [outlet(ThreadStandard.NPT, "3/4"), outlet(ThreadStandard.NPT, "1")],
    ListingScheme.EN: [outlet(ThreadStandard.G, "3/4"), outlet(ThreadStandard.G, "1")],
}
DUTY_SERVICES = {
    "car": {NozzleService.DIESEL_CAR},
    "truck": {NozzleService.DIESEL_TRUCK},
    "marine": {NozzleService.DIESEL_CAR, NozzleService.DIESEL_TRUCK},
    "reel": {NozzleService.DIESEL_CAR, NozzleService.DIESEL_TRUCK},
}


def chain_for(retrieval: str, duty: str, path: FlowPath):
    at_nozzle = retrieval != "plain" or duty == "reel"
    if path is FlowPath.SINGLE:
        return (REEL_CHAIN if at_nozzle else FUEL_CHAIN), at_nozzle
    return (VAPOUR_REEL_CHAIN if at_nozzle else VAPOUR_CHAIN), at_nozzle


@pytest.mark.parametrize("scheme", ListingScheme)
@pytest.mark.parametrize("duty", CEILING_L_MIN)
@pytest.mark.parametrize("retrieval", RETRIEVALS)
def test_every_fuel_without_recovery_has_a_chain_for_every_outlet(sound, scheme, duty, retrieval):
    cases = [(LiquidFamily.GASOLINE, listing) for listing in GASOLINE_CLASSES]
    cases += itertools.product((LiquidFamily.DIESEL, LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL), DIESEL_CLASSES)
    chain, at_nozzle = chain_for(retrieval, duty, FlowPath.SINGLE)
    for (family, listing), start, latch in itertools.product(cases, OUTLETS[scheme], LATCHES):
        gasoline = family is LiquidFamily.GASOLINE
        judge = suits(
            scheme=scheme,
            path=FlowPath.SINGLE,
            listing=listing,
            family=family,
            services={NozzleService.GASOLINE} if gasoline else DUTY_SERVICES[duty],
            least_flow_l_min=CEILING_L_MIN["car" if gasoline and duty == "reel" else duty]
            * (1 if scheme is ListingScheme.UL else 0.85),
            construction=built(scheme, retrieval, duty),
            at_nozzle=at_nozzle,
            low_permeation=gasoline and scheme is ListingScheme.UL,
            enhanced=gasoline and scheme is ListingScheme.UL,
            latch=latch,
        )
        assert can_make_up(start, chain, sound, judge), (family, listing, start, latch)


@pytest.mark.parametrize("duty", CEILING_L_MIN)
@pytest.mark.parametrize("retrieval", RETRIEVALS)
@pytest.mark.parametrize(
    ("scheme", "path"),
    [
        (ListingScheme.UL, FlowPath.BALANCE),
        (ListingScheme.UL, FlowPath.VACUUM_ASSIST),
        (ListingScheme.EN, FlowPath.VACUUM_ASSIST),
    ],
)
def test_gasoline_with_recovery_has_a_chain_for_coaxial_and_split_outlets(sound, scheme, path, duty, retrieval):
    coaxial = {
        FlowPath.BALANCE: outlet(ThreadStandard.UN, "1-7/8-12", FlowPath.BALANCE),
        FlowPath.VACUUM_ASSIST: outlet(ThreadStandard.M, "34x1.5", FlowPath.VACUUM_ASSIST),
    }[path]
    chain, at_nozzle = chain_for(retrieval, duty, path)
    for listing, start, latch in itertools.product(GASOLINE_CLASSES, [coaxial, *OUTLETS[scheme]], LATCHES):
        judge = suits(
            scheme=scheme,
            path=path,
            listing=listing,
            family=LiquidFamily.GASOLINE,
            services={NozzleService.GASOLINE},
            least_flow_l_min=CEILING_L_MIN["car" if duty == "reel" else duty]
            * (1 if scheme is ListingScheme.UL else 0.85),
            construction=built(scheme, retrieval, duty),
            at_nozzle=at_nozzle,
            low_permeation=scheme is ListingScheme.UL,
            latch=latch,
        )
        assert can_make_up(start, chain, sound, judge), (listing, start, latch)


@pytest.mark.parametrize("scheme", ListingScheme)
@pytest.mark.parametrize("retrieval", RETRIEVALS)
def test_def_has_a_stainless_chain_for_every_outlet(sound, scheme, retrieval):
    chain, at_nozzle = chain_for(retrieval, "car", FlowPath.SINGLE)
    for start, latch in itertools.product(OUTLETS[scheme], LATCHES):
        judge = suits(
            scheme=scheme,
            path=FlowPath.SINGLE,
            listing=None,
            family=LiquidFamily.DEF,
            services={NozzleService.DEF},
            least_flow_l_min=40,  # ISO 22241-4 (memory)
            construction=RETRIEVALS[retrieval],
            at_nozzle=at_nozzle,
            latch=latch,
        )
        assert can_make_up(start, chain, sound, judge), (start, latch)


@pytest.mark.parametrize("path", [FlowPath.BALANCE, FlowPath.VACUUM_ASSIST])
def test_a_converted_outlet_takes_an_adaptor_that_closes_the_vapour_port(sound, path):
    start = {
        FlowPath.BALANCE: outlet(ThreadStandard.UN, "1-7/8-12", FlowPath.BALANCE),
        FlowPath.VACUUM_ASSIST: outlet(ThreadStandard.M, "34x1.5", FlowPath.VACUUM_ASSIST),
    }[path]
    ends = {
        (part.outlet.thread, part.outlet.size)
        for part in sound
        if part.kind is PartKind.ADAPTOR and part.inlet.path is path and part.adaptor.closes_vapour
    }
    assert {(ThreadStandard.NPT, "3/4"), (ThreadStandard.NPT, "1")} <= ends
    assert {(ThreadStandard.G, "3/4"), (ThreadStandard.G, "1")} <= ends
    judge = suits(
        scheme=ListingScheme.UL,
        path=FlowPath.SINGLE,
        listing=ListingClass.E10,
        family=LiquidFamily.GASOLINE,
        services={NozzleService.GASOLINE},
        least_flow_l_min=37.85,
        construction=None,
        at_nozzle=False,
        low_permeation=True,
        enhanced=True,
    )
    assert can_make_up(start, FUEL_CHAIN, sound, judge)
    assert not can_make_up(start, FUEL_CHAIN, sound, judge, adaptors=False)


def test_single_path_parts_never_reach_a_coaxial_outlet_without_adaptor(sound):
    start = outlet(ThreadStandard.UN, "1-7/8-12", FlowPath.BALANCE)
    assert not can_make_up(start, FUEL_CHAIN, sound, lambda part: part.path is FlowPath.SINGLE, adaptors=False)
