"""Plausible random parts, as many as a benchmark wants; the same seed gives the same parts."""

from __future__ import annotations

import random
from dataclasses import replace

from spoutline.model.liquid import DIESEL_CLASSES, GASOLINE_CLASSES, LiquidFamily, ListingScheme
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
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard

_L_MIN = 1 / 60_000  # m3/s
_FOOT = 0.3048  # m
_SHARES = (  # how a catalogue divides into kinds, per cent
    (PartKind.NOZZLE, 28),
    (PartKind.CURB_HOSE, 34),
    (PartKind.WHIP_HOSE, 10),
    (PartKind.BREAKAWAY, 11),
    (PartKind.SWIVEL, 6),
    (PartKind.SWIVEL_BREAKAWAY, 6),
    (PartKind.ADAPTOR, 5),
)
_MAKERS = ("Pebblewhisk Brothers", "Old Mistral Forge", "Hobnail and Fern", "Skylark Couplings")
_STAINLESS = (Material.STAINLESS_STEEL, Material.FKM, Material.PTFE)
_LIGHT = (Material.ALUMINIUM, Material.FKM)


def generated_parts(count: int, seed: int) -> tuple[Part, ...]:
    """Return ``count`` parts sorted by number, spread over kinds, sizes, classes and schemes."""
    chance = random.Random(seed)
    kinds = [kind for kind, _share in _SHARES]
    shares = [share for _kind, share in _SHARES]
    parts = (_part(chance, chance.choices(kinds, shares)[0], serial) for serial in range(count))
    return tuple(sorted(parts, key=lambda part: part.number))


def _part(chance: random.Random, kind: PartKind, serial: int) -> Part:
    scheme = ListingScheme.UL if chance.random() < 0.75 else ListingScheme.EN
    thread = ThreadStandard.NPT if scheme is ListingScheme.UL else ThreadStandard.G
    path = FlowPath.VACUUM_ASSIST if kind is not PartKind.ADAPTOR and chance.random() < 0.1 else FlowPath.SINGLE
    size = chance.choice(("3/4", "1")) if path is FlowPath.SINGLE else "34x1.5"
    thread = thread if path is FlowPath.SINGLE else ThreadStandard.M
    inlet, outlet = _genders(chance, kind)
    gasoline = path is not FlowPath.SINGLE or chance.random() < 0.5
    classes = (GASOLINE_CLASSES if gasoline else DIESEL_CLASSES)[: chance.randint(1, 3)]
    if kind is not PartKind.NOZZLE and path is FlowPath.SINGLE and chance.random() < 0.6:
        classes = (*GASOLINE_CLASSES, *DIESEL_CLASSES)
    dollars = round(chance.lognormvariate(4.2, 0.5) * 100)
    part = Part(
        number=f"GP-{kind.value[0].upper()}{serial:06d}",
        maker=chance.choice(_MAKERS),
        kind=kind,
        name=f"Generated {kind.value.replace('_', ' ')} {size}",
        status=chance.choices((PartStatus.ACTIVE, PartStatus.DISCONTINUED), (95, 5))[0],
        superseded_by=None,
        inlet=Port(thread=thread, size=size, gender=inlet, path=path),
        outlet=None
        if outlet is None
        else Port(thread=thread, size=_outlet_size(chance, kind, size), gender=outlet, path=path),
        listings=frozenset(classes),
        schemes=frozenset({scheme}),
        wetted_materials=chance.choice((_STAINLESS, _LIGHT)),
        temperature_minimum_c=chance.choice((-40.0, -29.0, -29.0, -20.0)),
        temperature_maximum_c=chance.choice((40.0, 52.0, 52.0, 60.0)),
        maximum_pressure_pa=chance.choice((350e3, 350e3, 500e3, 300e3)),
        flow_coefficient_kv=None,
        mass_kg=round(chance.uniform(0.2, 2.0), 3),
        resistance_ohm=round(chance.lognormvariate(1.0, 1.5), 2),
        length_m=round(chance.uniform(0.05, 0.15), 3),
        pull_strength_n=float(chance.choice((900, 2600, 3000, 3200, 3600))),
        prices=(Price(currency="EUR", minor=round(dollars * 0.92)), Price(currency="USD", minor=dollars)),
        lead_time_days=chance.randint(2, 60),
        pack_quantity=1,
    )
    return _with_kind(chance, part, gasoline=gasoline, large=size == "1")


def _genders(chance: random.Random, kind: PartKind) -> tuple[Gender, Gender | None]:
    if kind is PartKind.NOZZLE:
        return Gender.FEMALE, None
    if kind in (PartKind.CURB_HOSE, PartKind.WHIP_HOSE):
        return Gender.MALE, Gender.MALE
    if kind is PartKind.BREAKAWAY:
        return Gender.FEMALE, chance.choice((Gender.FEMALE, Gender.FEMALE, Gender.MALE))
    if kind is PartKind.ADAPTOR:
        return chance.choice(
            ((Gender.MALE, Gender.FEMALE), (Gender.FEMALE, Gender.MALE), (Gender.FEMALE, Gender.FEMALE))
        )
    return Gender.FEMALE, Gender.MALE


def _outlet_size(chance: random.Random, kind: PartKind, size: str) -> str:
    return chance.choice(("3/4", "1")) if kind is PartKind.ADAPTOR else size


def _with_kind(chance: random.Random, part: Part, *, gasoline: bool, large: bool) -> Part:
    """Add what the kind adds, with flow data that a part of this size has."""
    if part.kind in (PartKind.CURB_HOSE, PartKind.WHIP_HOSE):
        return _hose(chance, part, large=large)
    rigid = replace(part, flow_coefficient_kv=round(chance.uniform(14, 24) if large else chance.uniform(7, 14), 2))
    if part.kind is PartKind.NOZZLE:
        return _nozzle(chance, rigid, gasoline=gasoline, large=large)
    if part.kind is PartKind.ADAPTOR:
        return replace(rigid, adaptor=AdaptorData(closes_vapour=False, needs_vapour_return=False))
    if part.kind in (PartKind.BREAKAWAY, PartKind.SWIVEL_BREAKAWAY):
        rigid = replace(rigid, breakaway=_breakaway(chance, part))
    if part.kind in (PartKind.SWIVEL, PartKind.SWIVEL_BREAKAWAY):
        rigid = replace(rigid, swivel=SwivelData(planes=chance.randint(1, 2)))
    return rigid


def _nozzle(chance: random.Random, part: Part, *, gasoline: bool, large: bool) -> Part:
    if gasoline:
        service, low_mm, high_mm = NozzleService.GASOLINE, 20.3, 21.5
    elif large:
        service, low_mm, high_mm = NozzleService.DIESEL_TRUCK, 28.3, 32.0
    else:
        service, low_mm, high_mm = NozzleService.DIESEL_CAR, 23.55, 23.85
    device = chance.random() < 0.6
    data = NozzleData(
        operation=NozzleOperation.AUTOMATIC,
        service=service,
        liquids=frozenset({LiquidFamily.GASOLINE if gasoline else LiquidFamily.DIESEL}),
        spout_outside_diameter_m=round(chance.uniform(low_mm, high_mm), 2) / 1000,
        spout_straight_length_m=round(chance.uniform(60, 80), 1) / 1000,
        spring_distance_m=round(chance.uniform(72, 90), 1) / 1000,
        hold_open=device and chance.random() < 0.5,
        no_pressure_device=device,
        attitude_device=chance.random() < 0.5,
        bellows=False,
        misfill_interlock=False,
        enhanced_conventional=gasoline and part.path is FlowPath.SINGLE and chance.random() < 0.3,
        def_zone_evaluated=False,
        minimum_flow_m3_s=round(chance.uniform(8, 22), 1) * _L_MIN,
        maximum_flow_m3_s=round(chance.uniform(90, 200) if large else chance.uniform(38, 60), 1) * _L_MIN,
        opening_pressure_pa=round(chance.uniform(15e3, 35e3)) if device else None,
    )
    kv = round(chance.uniform(6, 14) if large else chance.uniform(2.6, 3.6), 2)
    return replace(part, flow_coefficient_kv=kv, length_m=0.3, nozzle=data)


def _hose(chance: random.Random, part: Part, *, large: bool) -> Part:
    curb = part.kind is PartKind.CURB_HOSE
    length_m = round(chance.randint(8, 50) * _FOOT if curb else chance.choice((9, 12, 18, 24, 36)) * 0.0254, 4)
    coaxial = part.path is not FlowPath.SINGLE
    bore_m = 0.024 if coaxial else 0.0254 if large else 0.01905
    mass_kg_m = round(chance.uniform(0.5, 1.2), 3)
    resistance_ohm_m = round(chance.lognormvariate(7, 2.5), 1)
    low_permeation = chance.random() < 0.4
    data = HoseData(
        construction=chance.choice(tuple(HoseConstruction)),
        bore_m=bore_m,
        length_m=length_m,
        outside_diameter_m=bore_m + 0.012,
        minimum_bend_radius_m=round(chance.uniform(0.08, 0.16), 3),
        mass_kg_m=mass_kg_m,
        resistance_ohm_m=resistance_ohm_m,
        permeation_kg_m2_s=(chance.uniform(3, 9) if low_permeation else chance.uniform(30, 100)) / 1000 / 86_400,
        low_permeation=low_permeation,
        built_in_swivel=coaxial and curb,
        inner_tube_bore_m=0.0065 if coaxial else None,
        inner_tube_outside_diameter_m=0.009 if coaxial else None,
    )
    return replace(
        part,
        hose=data,
        length_m=length_m,
        mass_kg=round(mass_kg_m * length_m + 0.4, 3),
        resistance_ohm=resistance_ohm_m * length_m,
    )


def _breakaway(chance: random.Random, part: Part) -> BreakawayData:
    low_n, high_n = chance.choice(((445, 890), (600, 1100), (800, 1400), (900, 1500), (350, 800), (1200, 1700)))
    at_nozzle = part.kind is PartKind.SWIVEL_BREAKAWAY or (
        part.outlet is not None and part.outlet.gender is Gender.MALE
    )
    reconnectable = chance.random() < 0.5
    return BreakawayData(
        separation_minimum_n=float(low_n),
        separation_maximum_n=float(high_n),
        reconnectable=reconnectable,
        closes_vapour=part.path is not FlowPath.SINGLE,
        omnidirectional=reconnectable,
        seal_diameter_m=chance.choice((None, 0.014, 0.018)),
        placements=frozenset({Placement.NOZZLE_END if at_nozzle else Placement.DISPENSER_END}),
    )
