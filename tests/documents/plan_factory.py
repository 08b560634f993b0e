"""Hand-built plans: every figure here is typed in, none comes from the program's own planning."""

from __future__ import annotations

import math
from dataclasses import replace

from spoutline.model.check import Bound, Check, CheckId, Outcome, WorkedLine
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.limit import Jurisdiction, Limit, LimitId, LimitStatus
from spoutline.model.liquid import Liquid, LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material, MaterialColumn
from spoutline.model.part import (
    AccessoryData,
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
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import (
    AccessoryLine,
    Alternative,
    AlternativeKind,
    Conflict,
    Exclusion,
    HangingSet,
    Joint,
    JudgedSet,
    PlanStatus,
    PositionPlan,
    Provenance,
    Relaxation,
    SetLink,
    SitePlan,
)
from spoutline.model.port import FlowPath, Gender, Port, Seal, ThreadStandard
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import (
    Refusal,
    RefusalStatus,
    Requirement,
    RequirementId,
    RequirementLine,
    Slot,
    WayOut,
    Window,
)
from spoutline.model.survey import (
    Climate,
    Duty,
    Filler,
    Hook,
    Position,
    Reel,
    Retractor,
    Retrieval,
    Site,
    Survey,
    SurveyLiquid,
    VapourStatus,
)

FEMALE = Port(ThreadStandard.NPT, "3/4", Gender.FEMALE, FlowPath.SINGLE)
MALE = Port(ThreadStandard.NPT, "3/4", Gender.MALE, FlowPath.SINGLE)

SPOUT_SOURCE = "40 CFR 1090.1550"


def part(
    number: str,
    kind: PartKind,
    *,
    name: str = "invented part",
    usd_minor: int | None = 1000,
    inlet: Port | None = None,
    outlet: Port | None = None,
    length_m: float = 0.1,
    lead_time_days: int = 3,
    **data: object,
) -> Part:
    """Return an invented part; ``data`` are the fields of its kind."""
    base = Part(
        number=number,
        maker="Quillwater",
        kind=kind,
        name=name,
        status=PartStatus.ACTIVE,
        superseded_by=None,
        inlet=inlet,
        outlet=outlet,
        listings=frozenset({ListingClass.E10}),
        schemes=frozenset({ListingScheme.UL}),
        wetted_materials=(Material.FKM, Material.STAINLESS_STEEL),
        temperature_minimum_c=-29.0,
        temperature_maximum_c=52.0,
        maximum_pressure_pa=345e3,
        flow_coefficient_kv=8.0,
        mass_kg=0.6,
        resistance_ohm=10.0,
        length_m=length_m,
        pull_strength_n=3000.0,
        prices=() if usd_minor is None else (Price(currency="USD", minor=usd_minor),),
        lead_time_days=lead_time_days,
        pack_quantity=1,
    )
    return replace(base, **data)  # type: ignore[arg-type]


def hose(number: str, kind: PartKind, length_m: float, *, usd_minor: int, name: str = "3/4 in hose") -> Part:
    data = HoseData(
        construction=HoseConstruction.HARDWALL,
        bore_m=0.01905,
        length_m=length_m,
        outside_diameter_m=0.0285,
        minimum_bend_radius_m=0.11,
        mass_kg_m=0.65,
        resistance_ohm_m=120.0,
        permeation_kg_m2_s=5.787e-7,
        low_permeation=False,
        built_in_swivel=False,
        inner_tube_bore_m=None,
        inner_tube_outside_diameter_m=None,
    )
    return part(
        number,
        kind,
        name=name,
        usd_minor=usd_minor,
        inlet=MALE,
        outlet=MALE,
        length_m=length_m,
        flow_coefficient_kv=None,
        hose=data,
    )


def whip_hose() -> Part:
    return hose("QW-W18", PartKind.WHIP_HOSE, 0.4572, usd_minor=2345, name="Whip hose 18 in")


def curb_hose() -> Part:
    return hose("QW-C12", PartKind.CURB_HOSE, 3.6576, usd_minor=8990, name="Curb hose 12 ft")


def breakaway() -> Part:
    data = BreakawayData(
        separation_minimum_n=600.0,
        separation_maximum_n=1100.0,
        reconnectable=True,
        closes_vapour=False,
        omnidirectional=False,
        seal_diameter_m=0.019,
        placements=frozenset({Placement.DISPENSER_END}),
    )
    return part(
        "QW-B7",
        PartKind.BREAKAWAY,
        name="Reconnectable breakaway",
        usd_minor=5615,
        inlet=FEMALE,
        outlet=FEMALE,
        length_m=0.14,
        lead_time_days=12,
        breakaway=data,
    )


def swivel() -> Part:
    return part(
        "QW-S2",
        PartKind.SWIVEL,
        name="Two-plane swivel",
        usd_minor=3105,
        inlet=FEMALE,
        outlet=MALE,
        length_m=0.09,
        swivel=SwivelData(planes=2),
    )


def nozzle(*, name: str = "Automatic gasoline nozzle") -> Part:
    data = NozzleData(
        operation=NozzleOperation.AUTOMATIC,
        service=NozzleService.GASOLINE,
        liquids=frozenset({LiquidFamily.GASOLINE}),
        spout_outside_diameter_m=0.0208,
        spout_straight_length_m=0.066,
        spring_distance_m=0.0762,
        hold_open=False,
        no_pressure_device=False,
        attitude_device=False,
        bellows=False,
        misfill_interlock=False,
        enhanced_conventional=False,
        def_zone_evaluated=False,
        minimum_flow_m3_s=11 / 60000,
        maximum_flow_m3_s=50 / 60000,
        opening_pressure_pa=None,
    )
    return part(
        "QW-N101",
        PartKind.NOZZLE,
        name=name,
        usd_minor=7190,
        inlet=FEMALE,
        length_m=0.3,
        flow_coefficient_kv=3.2,
        nozzle=data,
    )


def label_part(usd_minor: int | None = 150) -> Part:
    data = AccessoryData(
        fits_diameter_minimum_m=None,
        fits_diameter_maximum_m=None,
        label_classes=frozenset({ListingClass.E10}),
        label_def=False,
    )
    return part("QW-L1", PartKind.LABEL, name="Label E10", usd_minor=usd_minor, length_m=0.0, accessory=data)


def chain(*, last: Part | None = None) -> HangingSet:
    links = (
        SetLink(slot=Slot.WHIP_HOSE, part=whip_hose()),
        SetLink(slot=Slot.BREAKAWAY, part=breakaway()),
        SetLink(slot=Slot.CURB_HOSE, part=curb_hose()),
        SetLink(slot=Slot.SWIVEL, part=swivel()),
        SetLink(slot=Slot.NOZZLE, part=last or nozzle()),
    )
    # 23.45 + 56.15 + 89.90 + 31.05 + 71.90, added by hand
    return HangingSet(links=links, price_minor=27245, currency="USD")


def joints() -> tuple[Joint, ...]:
    ends = (("", "QW-W18"), ("QW-W18", "QW-B7"), ("QW-B7", "QW-C12"), ("QW-C12", "QW-S2"), ("QW-S2", "QW-N101"))
    return tuple(
        Joint(
            upstream=up,
            downstream=down,
            upstream_port=FEMALE if number % 2 == 0 else MALE,
            downstream_port=MALE if number % 2 == 0 else FEMALE,
            seal=Seal.SEALANT,
        )
        for number, (up, down) in enumerate(ends)
    )


def spout_check() -> Check:
    # spout window of unleaded gasoline, SAE J285:2007 as reported: 20.50 to 21.34 mm; margin 20.8 - 20.5 = 0.3 mm
    return Check(
        id=CheckId.SPOUT_DIAMETER,
        severity=Severity.MUST,
        outcome=Outcome.PASSES,
        value=0.0208,
        dimension=Dimension.DIAMETER,
        lower=Bound(value=0.0205, source="SAE J285:2007", status=LimitStatus.SECONDARY),
        upper=Bound(value=0.02134, source=SPOUT_SOURCE, status=LimitStatus.SECONDARY),
        margin=0.0003,
    )


def flow_check(check_id: CheckId, flow_l_min: float) -> Check:
    flow = flow_l_min / 60000
    velocity = flow / (math.pi / 4 * 0.01905**2)
    line = WorkedLine(
        formula="v = 4 Q / (pi D^2)",
        inputs=(Quantity("Q", flow, Dimension.FLOW), Quantity("D", 0.01905, Dimension.DIAMETER)),
        result=Quantity("v", velocity, Dimension.VELOCITY),
        source="continuity",
        note="full bore",
    )
    return Check(
        id=check_id,
        severity=Severity.SHOULD,
        outcome=Outcome.PASSES,
        value=flow,
        dimension=Dimension.FLOW,
        lower=Bound(value=30 / 60000, source="flow wanted at a car", status=LimitStatus.COMMON_PRACTICE),
        upper=None,
        margin=flow - 30 / 60000,
        lines=(line,),
    )


def resistance_check() -> Check:
    return Check(
        id=CheckId.RESISTANCE_TOTAL,
        severity=Severity.MUST,
        outcome=Outcome.UNKNOWN,
        value=None,
        dimension=Dimension.RESISTANCE,
        lower=None,
        upper=Bound(value=1e6, source="NFPA 77", status=LimitStatus.MEMORY),
        margin=None,
    )


def advice_finding() -> Finding:
    return Finding(
        rule_id="outlet_strength_assumed",
        severity=Severity.ADVICE,
        verdict=Verdict.QUESTION,
        subject_kind=SubjectKind.POSITION,
        subject="1A",
        facts=(Quantity("outlet_pull_strength", 1946.0, Dimension.FORCE),),
        limit_ids=(LimitId.OUTLET_PULL_STRENGTH,),
        source="assumed",
    )


def judged(hanging_set: HangingSet | None = None) -> JudgedSet:
    return JudgedSet(
        hanging_set=hanging_set or chain(),
        joints=joints(),
        findings=(),
        checks=(
            spout_check(),
            resistance_check(),
            flow_check(CheckId.FLOW_COLD, 35.0),
            flow_check(CheckId.FLOW_HOT, 37.0),
        ),
    )


def position(label: str = "1A", **changes: object) -> Position:
    values: dict[str, object] = {
        "label": label,
        "dispenser": "1",
        "liquid": SurveyLiquid(family=LiquidFamily.GASOLINE, blend_percent=10),
        "filler": Filler(label="near side", distance_m=2.0, height_m=0.9),
        "hook": Hook(distance_m=0.35, height_m=1.1),
    }
    return Position(**{**values, **changes})  # type: ignore[arg-type]


def site(**changes: object) -> Site:
    values: dict[str, object] = {
        "name": "Bramblefork Fuels",
        "address": "3 Mill Lane\nBramblefork",
        "customer": "Bramblefork Cooperative (invented)",
        "climate": Climate(low_c=-10, high_c=40),
    }
    return Site(**{**values, **changes})  # type: ignore[arg-type]


def requirement_line() -> RequirementLine:
    return RequirementLine(
        id=RequirementId.LISTING_CLASS,
        severity=Severity.MUST,
        rule_id="asks_listing_class",
        facts=(
            Fact("family", "gasoline"),
            Quantity("blend_percent", 10.0, Dimension.PERCENT),
            Fact("listing_class", "E10"),
        ),
        limit_ids=(LimitId.LISTING_E10_MAX,),
        source="UL 2586 1.4",
    )


def requirement(where: Position, at: Site) -> Requirement:
    return Requirement(
        site=at,
        position=where,
        liquid=Liquid(where.liquid.family, where.liquid.blend_percent),
        listing_class=ListingClass.E10,
        scheme=ListingScheme.UL,
        material_column=MaterialColumn.E10,
        nozzle_services=frozenset({NozzleService.GASOLINE}),
        spout=Window(minimum=0.0205, maximum=0.02134),
        path=FlowPath.SINGLE,
        outlet=FEMALE,
        chain=(Slot.WHIP_HOSE, Slot.BREAKAWAY, Slot.CURB_HOSE, Slot.SWIVEL, Slot.NOZZLE),
        breakaway_at_nozzle=False,
        separation=Window(minimum=445.0, maximum=1557.0),
        swivel_planes=1,
        hose_construction=None,
        low_permeation=False,
        permeation_max_kg_m2_s=None,
        automatic=True,
        hold_open=False,
        attitude_device=False,
        no_pressure_device=False,
        enhanced_conventional=False,
        def_zone=False,
        bonding_severity=Severity.MUST,
        temperature_low_c=at.climate.low_c,
        temperature_high_c=at.climate.high_c,
        pressure_pa=345e3,
        supply_pressure_pa=207e3,
        supply_flow_m3_s=40 / 60000,
        wanted_flow_m3_s=30 / 60000,
        hose_length=Window(minimum=2.6, maximum=5.4864),
        whip_length_min_m=0.3,
        drive_off_angle_rad=0.0,
        outlet_pull_strength_n=1946.0,
        lines=(requirement_line(),),
        findings=(advice_finding(),),
    )


def fitting_plan(where: Position | None = None, at: Site | None = None, **changes: object) -> PositionPlan:
    where = where or position()
    at = at or site()
    alternative = Alternative(kind=AlternativeKind.LIGHTER, judged=judged(), price_difference_minor=1250)
    plan = PositionPlan(
        position=where,
        status=PlanStatus.FITS,
        requirement=requirement(where, at),
        refusal=None,
        chosen=judged(),
        alternatives=(alternative,),
        conflict=None,
        counts=(),
        accessories=(AccessoryLine(part=label_part(), quantity=2, reason="accessory_class_label"),),
    )
    return replace(plan, **changes)  # type: ignore[arg-type]


def conflicting_plan(label: str = "2A", at: Site | None = None) -> PositionPlan:
    where = position(label)
    conflict = Conflict(
        requirements=(RequirementId.REACH, RequirementId.HOSE_LENGTH),
        exclusions=(
            Exclusion(
                slot=Slot.CURB_HOSE,
                requirement=RequirementId.HOSE_LENGTH,
                rule_id="hose_single_length",
                excluded=3,
                nearest=(PartRef("QW-C20"), PartRef("QW-C22")),
            ),
        ),
        relaxations=(
            Relaxation(
                requirement=RequirementId.HOSE_LENGTH,
                from_value=5.4864,
                to_value=6.096,
                dimension=Dimension.LENGTH,
                price_minor=31250,
                parts=(PartRef("QW-W18"), PartRef("QW-B7"), PartRef("QW-C20")),
            ),
        ),
    )
    return PositionPlan(
        position=where,
        status=PlanStatus.DOES_NOT_FIT,
        requirement=requirement(where, at or site()),
        refusal=None,
        chosen=None,
        alternatives=(),
        conflict=conflict,
        counts=(),
        accessories=(),
    )


def refused_plan(label: str = "3A") -> PositionPlan:
    where = position(label, liquid=SurveyLiquid(family=LiquidFamily.DIESEL, blend_percent=50), duty=Duty.TRUCK)
    gap = Finding(
        rule_id="class_gap",
        severity=Severity.MUST,
        verdict=Verdict.BROKEN,
        subject_kind=SubjectKind.POSITION,
        subject=label,
        facts=(
            Fact("family", "diesel"),
            Quantity("blend_percent", 50.0, Dimension.PERCENT),
            Quantity("covered_up_to", 20.0, Dimension.PERCENT),
            Quantity("covered_from", 99.9, Dimension.PERCENT),
        ),
        limit_ids=(LimitId.LISTING_B20_MAX,),
        source="UL 2586B 1.3",
    )
    refusal = Refusal(
        status=RefusalStatus.NO_LISTING_CLASS,
        findings=(gap,),
        ways_out=(WayOut.USE_B20_OR_LESS, WayOut.ASK_AUTHORITY_AND_MAKER),
        lines=(requirement_line(),),
    )
    return PositionPlan(
        position=where,
        status=PlanStatus.NO_LISTING_CLASS,
        requirement=None,
        refusal=refusal,
        chosen=None,
        alternatives=(),
        conflict=None,
        counts=(),
        accessories=(),
    )


def limit_row(limit_id: LimitId, title: str, value: float, dimension: Dimension, status: LimitStatus) -> Limit:
    return Limit(
        id=limit_id,
        title=title,
        value=value,
        dimension=dimension,
        printed=str(value),
        printed_unit="",
        source="UL 2586",
        clause="1.4",
        edition="2021",
        status=status,
    )


def jurisdiction(jurisdiction_id: str = "us_general") -> Jurisdiction:
    rows = (
        limit_row(LimitId.LISTING_E10_MAX, "Class E10 up to", 10.0, Dimension.PERCENT, LimitStatus.VERIFIED),
        limit_row(LimitId.LISTING_B20_MAX, "Class B20 up to", 20.0, Dimension.PERCENT, LimitStatus.VERIFIED),
        limit_row(LimitId.OUTLET_PULL_STRENGTH, "Outlet bears", 1946.0, Dimension.FORCE, LimitStatus.MEMORY),
        limit_row(LimitId.GROUND_CLEARANCE, "Ground clearance", 0.1, Dimension.LENGTH, LimitStatus.COMMON_PRACTICE),
    )
    return Jurisdiction(
        id=jurisdiction_id, title="United States, general", edition="2026-11", built_in=True, limits=rows
    )


def site_plan(*plans: PositionPlan, at: Site | None = None, jurisdiction_id: str = "us_general") -> SitePlan:
    at = at or site()
    made = plans or (fitting_plan(at=at), conflicting_plan(at=at), refused_plan())
    return SitePlan(
        survey=Survey(site=at, positions=tuple(plan.position for plan in made)),
        jurisdiction=jurisdiction(jurisdiction_id),
        positions=made,
        provenance=Provenance(
            catalogue_edition="2026-11 test",
            rules_edition="2026-11",
            jurisdiction_id=jurisdiction_id,
            survey_fingerprint="0123456789abcdef",
            program_version="0.1.0",
        ),
    )


def reel_position(label: str = "R1") -> Position:
    return position(
        label,
        duty=Duty.REEL,
        retrieval=Retrieval.REEL,
        reel=Reel(drum_diameter_m=0.5, turns_left=0.5),
        liquid=SurveyLiquid(family=LiquidFamily.DIESEL, blend_percent=5),
    )


def retractor_position(label: str = "T1") -> Position:
    return position(label, retrieval=Retrieval.RETRACTOR, retractor=Retractor(height_m=2.4, clamp_fraction=0.5))


def vapour_removed_position(label: str = "V1") -> Position:
    return position(label, vapour_today=VapourStatus.BALANCE)
