"""Invented parts that suit a plain E10 car position, and how to change one figure of them."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import (
    AdaptorData,
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
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.model.requirement import Slot

LITRE_PER_MINUTE = 1e-3 / 60
MALE = Port(ThreadStandard.NPT, "3/4", Gender.MALE, FlowPath.SINGLE)
FEMALE = Port(ThreadStandard.NPT, "3/4", Gender.FEMALE, FlowPath.SINGLE)

_PLAIN = Part(
    number="XX-0",
    maker="Thistledown Brass",
    kind=PartKind.SWIVEL,
    name="invented part",
    status=PartStatus.ACTIVE,
    superseded_by=None,
    inlet=FEMALE,
    outlet=MALE,
    listings=frozenset({ListingClass.E10}),
    schemes=frozenset({ListingScheme.UL}),
    wetted_materials=(Material.STAINLESS_STEEL, Material.FKM),
    temperature_minimum_c=-29.0,
    temperature_maximum_c=52.0,
    maximum_pressure_pa=345e3,
    flow_coefficient_kv=9.0,
    mass_kg=0.5,
    resistance_ohm=10.0,
    length_m=0.1,
    pull_strength_n=3000.0,
    prices=(Price(currency="USD", minor=5000),),
    lead_time_days=5,
    pack_quantity=1,
)


def nozzle(number: str = "XX-N1", **fields: Any) -> Part:
    """Return an automatic gasoline nozzle for cars; fields of ``NozzleData`` and ``Part`` may be changed."""
    data = NozzleData(
        operation=NozzleOperation.AUTOMATIC,
        service=NozzleService.GASOLINE,
        liquids=frozenset({LiquidFamily.GASOLINE}),
        spout_outside_diameter_m=0.0206,
        spout_straight_length_m=0.066,
        spring_distance_m=0.0762,
        hold_open=False,
        no_pressure_device=False,
        attitude_device=False,
        bellows=False,
        misfill_interlock=False,
        enhanced_conventional=False,
        def_zone_evaluated=False,
        minimum_flow_m3_s=12 * LITRE_PER_MINUTE,
        maximum_flow_m3_s=50 * LITRE_PER_MINUTE,
        opening_pressure_pa=None,
    )
    part = replace(
        _PLAIN, number=number, kind=PartKind.NOZZLE, outlet=None, flow_coefficient_kv=3.0, mass_kg=1.2, length_m=0.3
    )
    return _changed(replace(part, nozzle=data), "nozzle", fields)


def hose(number: str = "XX-H1", kind: PartKind = PartKind.CURB_HOSE, length_m: float = 3.0, **fields: Any) -> Part:
    """Return a 3/4 in hardwall hose; fields of ``HoseData`` and ``Part`` may be changed."""
    data = HoseData(
        construction=HoseConstruction.HARDWALL,
        bore_m=0.01905,
        length_m=length_m,
        outside_diameter_m=0.03,
        minimum_bend_radius_m=0.1,
        mass_kg_m=0.65,
        resistance_ohm_m=1000.0,
        permeation_kg_m2_s=6e-7,
        low_permeation=False,
        built_in_swivel=False,
        inner_tube_bore_m=None,
        inner_tube_outside_diameter_m=None,
    )
    part = replace(
        _PLAIN,
        number=number,
        kind=kind,
        inlet=MALE,
        outlet=MALE,
        flow_coefficient_kv=None,
        mass_kg=0.65 * length_m,
        resistance_ohm=None,
        length_m=length_m,
    )
    return _changed(replace(part, hose=data), "hose", fields)


def whip(number: str = "XX-W1", length_m: float = 0.3, **fields: Any) -> Part:
    """Return a short hose for above the breakaway."""
    return hose(number, PartKind.WHIP_HOSE, length_m, **fields)


def breakaway(number: str = "XX-B1", **fields: Any) -> Part:
    """Return a breakaway of 500 to 900 N, balanced against pressure, female at both ends."""
    return _changed(
        replace(_PLAIN, number=number, kind=PartKind.BREAKAWAY, outlet=FEMALE, breakaway=_SEPARATION),
        "breakaway",
        fields,
    )


def swivel(number: str = "XX-S1", **fields: Any) -> Part:
    """Return a two-plane swivel."""
    return _changed(replace(_PLAIN, number=number, swivel=SwivelData(planes=2)), "swivel", fields)


def swivel_breakaway(number: str = "XX-J1", **fields: Any) -> Part:
    """Return a swivel-breakaway for the nozzle end."""
    data = replace(_SEPARATION, placements=frozenset({Placement.NOZZLE_END}))
    part = replace(_PLAIN, number=number, kind=PartKind.SWIVEL_BREAKAWAY, swivel=SwivelData(planes=2), breakaway=data)
    return _changed(part, "breakaway", fields)


def adaptor(number: str = "XX-A1", **fields: Any) -> Part:
    """Return an adaptor from 1 in to 3/4 in NPT."""
    inlet = Port(ThreadStandard.NPT, "1", Gender.MALE, FlowPath.SINGLE)
    data = AdaptorData(closes_vapour=False, needs_vapour_return=False)
    part = replace(_PLAIN, number=number, kind=PartKind.ADAPTOR, inlet=inlet, outlet=FEMALE, adaptor=data)
    return _changed(part, "adaptor", fields)


def splitter(number: str = "XX-P1", **fields: Any) -> Part:
    """Return a splitter from one path to balance."""
    outlet = Port(ThreadStandard.UN, "1-7/8-12", Gender.FEMALE, FlowPath.BALANCE)
    data = AdaptorData(closes_vapour=False, needs_vapour_return=True)
    part = replace(_PLAIN, number=number, kind=PartKind.SPLITTER, inlet=MALE, outlet=outlet, adaptor=data)
    return _changed(part, "adaptor", fields)


_SEPARATION = BreakawayData(
    separation_minimum_n=500.0,
    separation_maximum_n=900.0,
    reconnectable=False,
    closes_vapour=False,
    omnidirectional=False,
    seal_diameter_m=None,
    placements=frozenset({Placement.DISPENSER_END}),
)


def _changed(part: Part, data_name: str, fields: dict[str, Any]) -> Part:
    """Put each field where it belongs: a field of the kind's own data first, else of the part."""
    data = getattr(part, data_name)
    own = {name: value for name, value in fields.items() if name in type(data).__dataclass_fields__}
    others = {name: value for name, value in fields.items() if name not in own}
    return replace(part, **{data_name: replace(data, **own)}, **others)


def on_path(part: Part, path: FlowPath) -> Part:
    """Return the part with every port on a coaxial path of its usual thread."""
    thread, size = {
        FlowPath.BALANCE: (ThreadStandard.UN, "1-7/8-12"),
        FlowPath.VACUUM_ASSIST: (ThreadStandard.M, "34x1.5"),
    }[path]
    ports: dict[str, Any] = {
        side: None if port is None else Port(thread, size, port.gender, path)
        for side, port in (("inlet", part.inlet), ("outlet", part.outlet))
    }
    return replace(part, **ports)


def chain(*links: tuple[Slot, Part]) -> HangingSet:
    """Return a set of the parts in order."""
    return HangingSet(
        links=tuple(SetLink(slot=slot, part=part) for slot, part in links),
        price_minor=sum(part.price_minor("USD") or 0 for _, part in links),
        currency="USD",
    )


def plain_set(**parts: Part) -> HangingSet:
    """Return the five parts of a plain car position, some of them replaced by slot name."""
    usual = {
        Slot.WHIP_HOSE: whip(),
        Slot.BREAKAWAY: breakaway(),
        Slot.CURB_HOSE: hose(),
        Slot.SWIVEL: swivel(),
        Slot.NOZZLE: nozzle(),
    }
    return chain(*((slot, parts.get(slot.value, part)) for slot, part in usual.items()))
