"""Hand-built parts for the inspector's own tests: a plain single-path set that breaks nothing. Invented."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import (
    BreakawayData,
    HoseConstruction,
    HoseData,
    NozzleData,
    NozzleOperation,
    NozzleService,
    Part,
    PartKind,
    PartStatus,
    Placement,
    Price,
    SwivelData,
)
from spoutline.model.plan import SetLink
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.model.requirement import Slot
from spoutline.model.survey import Position, Site

MALE = Port(ThreadStandard.NPT, "3/4", Gender.MALE, FlowPath.SINGLE)
FEMALE = Port(ThreadStandard.NPT, "3/4", Gender.FEMALE, FlowPath.SINGLE)

_PLAIN = Part(
    number="ZZ-0",
    maker="Nowhere Works",
    kind=PartKind.SWIVEL,
    name="sample",
    status=PartStatus.ACTIVE,
    superseded_by=None,
    inlet=FEMALE,
    outlet=MALE,
    listings=frozenset({ListingClass.E10}),
    schemes=frozenset({ListingScheme.UL}),
    wetted_materials=(Material.ALUMINIUM, Material.FKM),
    temperature_minimum_c=-40.0,
    temperature_maximum_c=60.0,
    maximum_pressure_pa=345e3,
    flow_coefficient_kv=9.0,
    mass_kg=0.4,
    resistance_ohm=10.0,
    length_m=0.08,
    pull_strength_n=3000.0,
    prices=(Price(currency="USD", minor=5000),),
    lead_time_days=3,
    pack_quantity=1,
)


def hose(kind: PartKind, number: str, length_m: float) -> Part:
    """Return a 3/4 in hose with male ends."""
    data = HoseData(
        construction=HoseConstruction.HARDWALL,
        bore_m=0.01905,
        length_m=length_m,
        outside_diameter_m=0.029,
        minimum_bend_radius_m=0.09,
        mass_kg_m=0.65,
        resistance_ohm_m=50e3,
        permeation_kg_m2_s=None,
        low_permeation=False,
        built_in_swivel=False,
        inner_tube_bore_m=None,
        inner_tube_outside_diameter_m=None,
    )
    return replace(
        _PLAIN,
        kind=kind,
        number=number,
        inlet=MALE,
        outlet=MALE,
        length_m=length_m,
        hose=data,
        flow_coefficient_kv=None,
        mass_kg=0.65 * length_m,
        resistance_ohm=50e3 * length_m,
    )


SWIVEL = replace(_PLAIN, number="ZZ-SW", swivel=SwivelData(planes=2))
BREAKAWAY = replace(
    _PLAIN,
    number="ZZ-BA",
    kind=PartKind.BREAKAWAY,
    outlet=FEMALE,
    breakaway=BreakawayData(
        separation_minimum_n=700.0,
        separation_maximum_n=1200.0,
        reconnectable=False,
        closes_vapour=False,
        omnidirectional=False,
        seal_diameter_m=None,
        placements=frozenset({Placement.DISPENSER_END}),
    ),
)
NOZZLE = replace(
    _PLAIN,
    number="ZZ-NZ",
    kind=PartKind.NOZZLE,
    outlet=None,
    length_m=0.3,
    mass_kg=1.2,
    flow_coefficient_kv=3.0,
    nozzle=NozzleData(
        operation=NozzleOperation.AUTOMATIC,
        service=NozzleService.GASOLINE,
        liquids=frozenset({LiquidFamily.GASOLINE}),
        spout_outside_diameter_m=0.0206,
        spout_straight_length_m=0.070,
        spring_distance_m=0.0762,
        hold_open=False,
        no_pressure_device=False,
        attitude_device=False,
        bellows=False,
        misfill_interlock=False,
        enhanced_conventional=False,
        def_zone_evaluated=False,
        minimum_flow_m3_s=2e-4,
        maximum_flow_m3_s=7e-4,
        opening_pressure_pa=None,
    ),
)
CURB_HOSE = hose(PartKind.CURB_HOSE, "ZZ-CH", 2.4)
WHIP_HOSE = hose(PartKind.WHIP_HOSE, "ZZ-WH", 0.30)

SAMPLE_SET = (
    SetLink(slot=Slot.WHIP_HOSE, part=WHIP_HOSE),
    SetLink(slot=Slot.BREAKAWAY, part=BREAKAWAY),
    SetLink(slot=Slot.CURB_HOSE, part=CURB_HOSE),
    SetLink(slot=Slot.SWIVEL, part=SWIVEL),
    SetLink(slot=Slot.NOZZLE, part=NOZZLE),
)
SAMPLE_SITE = Site.model_validate({"name": "Sample", "jurisdiction": "us_general"})


def sample_position(**changes: object) -> Position:
    """Return a position on regular gasoline for cars with ``changes`` to its fields."""
    return Position.model_validate({"label": "1A", "liquid": {"family": "gasoline", "blend_percent": 10}} | changes)


def swapped(part: Part) -> tuple[SetLink, ...]:
    """Return the sample set with the part of this kind replaced."""
    return tuple(SetLink(slot=x.slot, part=part if x.part.kind is part.kind else x.part) for x in SAMPLE_SET)
