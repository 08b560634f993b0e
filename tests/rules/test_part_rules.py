"""Each rule on a part: a near miss breaks exactly that one, and its neighbour on the right side breaks none."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from rules.invented_parts import (
    LITRE_PER_MINUTE,
    adaptor,
    breakaway,
    hose,
    nozzle,
    on_path,
    splitter,
    swivel,
    swivel_breakaway,
    whip,
)
from rules.stations import changed, derived, position, site, tables
from spoutline.model.finding import Finding, Severity
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import (
    HoseConstruction,
    NozzleOperation,
    NozzleService,
    Part,
    PartKind,
    PartStatus,
    Placement,
    Price,
)
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.requirement import RequirementId as Asked
from spoutline.model.survey import (
    Climate,
    Decisions,
    Duty,
    Outlet,
    Retrieval,
    Supply,
    VapourStatus,
)
from spoutline.rules.conversion.demands import with_agency_demands
from spoutline.rules.declared.registry import RULES, RuleId
from spoutline.rules.parts.part_rules import KIND_OF_SLOT, judge_part, part_rules_for
from spoutline.ruletables.load import load_vapour_tables

RESOURCES = Path(__file__).parents[2] / "resources"
INCH = 0.0254  # exact, NIST SP 811
POUND_FORCE = 4.4482216152605  # N, NIST SP 811
PSI = 6894.757293168  # Pa, NIST SP 811
GRAM_PER_DAY = 1e-3 / 86400.0
DIESEL, DEF = LiquidFamily.DIESEL, LiquidFamily.DEF
SLOT_OF = {kind: slot for slot, kind in KIND_OF_SLOT.items()}


def verdict(part: Part, requirement: Requirement | None = None, rule_tables: RuleTables | None = None) -> list[Finding]:
    found = judge_part(part, SLOT_OF[part.kind], requirement or derived(position()), rule_tables or tables())
    for finding in found:
        rule = RULES[RuleId(finding.rule_id)]
        assert {fact.name for fact in finding.facts} <= set(rule.facts)
        assert set(finding.limit_ids) <= set(rule.limits)
        assert finding.subject == part.number
        assert finding.source
    return list(found)


def broken(part: Part, requirement: Requirement | None = None, rule_tables: RuleTables | None = None) -> list[str]:
    return [finding.rule_id for finding in verdict(part, requirement, rule_tables)]


def diesel_nozzle(inches: float, service: NozzleService, **fields: Any) -> Part:
    wide: dict[str, Any] = {
        "spout_outside_diameter_m": inches * INCH,
        "service": service,
        "liquids": frozenset({DIESEL}),
    }
    return nozzle(listings=frozenset({ListingClass.B20}), maximum_flow_m3_s=200 * LITRE_PER_MINUTE, **wide, **fields)


@pytest.mark.parametrize("part", [nozzle(), hose(), whip(), breakaway(), swivel()], ids=lambda part: part.kind)
def test_a_suitable_part_breaks_nothing(part: Part) -> None:
    assert broken(part) == []


def test_a_latch_on_an_overhead_hose_without_attitude_device_is_refused() -> None:
    # IFC 2306.7.6, exception (memory)
    overhead = derived(position(hold_open_wanted=True, overhead=True))
    latch: dict[str, Any] = {"hold_open": True, "no_pressure_device": True, "opening_pressure_pa": 2e4}
    assert broken(nozzle(**latch), overhead) == [RuleId.LATCH_WITHOUT_ATTITUDE_DEVICE]
    assert broken(nozzle(**latch, attitude_device=True), overhead) == []
    assert broken(nozzle(**latch), derived(position(hold_open_wanted=True))) == []


@pytest.mark.parametrize(("stated", "serves"), [(True, True), (False, False), (None, False)])
@pytest.mark.parametrize("make", [swivel, breakaway, hose, whip, adaptor], ids=lambda make: make.__name__)
def test_def_takes_only_parts_that_their_maker_offers_for_it(
    make: Callable[..., Part], stated: bool | None, serves: bool
) -> None:
    # ISO 22241-3, from memory: equipment that carried fuel, or is made for it, contaminates DEF
    part = make(wetted_materials=(Material.STAINLESS_STEEL,), offered_for_def=stated)
    assert (RuleId.PART_DEF_OFFER not in broken(part, derived(position(DEF, 0)))) is serves
    assert RuleId.PART_DEF_OFFER not in broken(part)  # gasoline asks nothing of the kind


@pytest.mark.parametrize(
    ("part", "rule"),
    [
        (nozzle(status=PartStatus.DISCONTINUED), RuleId.PART_STATUS),
        (nozzle(status=PartStatus.SUPERSEDED, superseded_by="XX-N2"), RuleId.PART_STATUS),
        (nozzle(prices=(Price(currency="EUR", minor=1),)), RuleId.PART_PRICE),
        (hose(schemes=frozenset({ListingScheme.EN})), RuleId.PART_SCHEME),
        (hose(listings=frozenset({ListingClass.E25})), RuleId.PART_CLASS),
        (swivel(temperature_minimum_c=-9.0), RuleId.TEMPERATURE_RANGE),
        (swivel(temperature_maximum_c=34.0), RuleId.TEMPERATURE_RANGE),
        (swivel(maximum_pressure_pa=49 * PSI), RuleId.PRESSURE_RATING),  # 50 psi: UL 2586A 1.1
        (hose(resistance_ohm_m=None), RuleId.CONTINUITY_KNOWN),
        (swivel(resistance_ohm=None), RuleId.CONTINUITY_KNOWN),
        (swivel(resistance_ohm=0.51e6), RuleId.PART_RESISTANCE),  # 0.5 megohm: UL 567A 12.2 (secondary)
        (hose(resistance_ohm_m=70100 / 0.3048), RuleId.PART_RESISTANCE),  # 70 000 ohm per ft: UL 330 (memory)
        (swivel(pull_strength_n=None), RuleId.PULL_STRENGTH_KNOWN),
        (swivel(flow_coefficient_kv=None), RuleId.FLOW_DATA_KNOWN),
        (nozzle(service=NozzleService.DIESEL_CAR), RuleId.NOZZLE_SERVICE),
        (nozzle(liquids=frozenset({DIESEL})), RuleId.NOZZLE_LIQUID),
        (nozzle(spout_outside_diameter_m=0.841 * INCH), RuleId.SPOUT_DIAMETER),  # 0.840 in: 40 CFR 1090.1550
        (nozzle(spout_outside_diameter_m=0.806 * INCH), RuleId.SPOUT_DIAMETER),  # 0.807 in: SAE J285:2007
        (nozzle(spout_straight_length_m=2.49 * INCH), RuleId.SPOUT_STRAIGHT_LENGTH),  # 2.5 in: 40 CFR 1090.1550
        (nozzle(spring_distance_m=2.9 * INCH), RuleId.SPOUT_SPRING_DISTANCE),  # 3.0 in: 40 CFR 1090.1550
        (nozzle(operation=NozzleOperation.MANUAL, minimum_flow_m3_s=None), RuleId.AUTOMATIC_SHUT_OFF),
        (nozzle(hold_open=True), RuleId.LATCH_UNWANTED),
        (nozzle(maximum_flow_m3_s=37 * LITRE_PER_MINUTE), RuleId.NOZZLE_MAXIMUM_FLOW),  # 10 gpm = 37.85 L/min
        (nozzle(minimum_flow_m3_s=None), RuleId.NOZZLE_MINIMUM_FLOW_KNOWN),
        (nozzle(no_pressure_device=True), RuleId.NOZZLE_OPENING_PRESSURE_KNOWN),
        (breakaway(placements=frozenset({Placement.NOZZLE_END})), RuleId.BREAKAWAY_PLACEMENT),
        (breakaway(separation_minimum_n=99 * POUND_FORCE), RuleId.SEPARATION_WINDOW),  # 100 lbf: UL 567 6.3
        (breakaway(separation_maximum_n=351 * POUND_FORCE), RuleId.SEPARATION_WINDOW),  # 350 lbf: UL 567 6.3
        (breakaway(pull_strength_n=1.24 * 900), RuleId.BREAKAWAY_OWN_STRENGTH),  # margin 1.25: judgement
        (hose(length_m=18.01 * 0.3048), RuleId.HOSE_SINGLE_LENGTH),  # 18 ft: Okla. 165:26-2-92; NFPA 30A
        (whip(length_m=0.18), RuleId.WHIP_LENGTH),  # 1.2 x 0.1 m x pi/2 = 0.188 m
        (hose(bore_m=0.0106), RuleId.HOSE_VELOCITY),  # 10 gpm through 10.6 mm is 7.15 m/s, 7 m/s (memory)
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_a_near_miss_breaks_exactly_one_rule(part: Part, rule: RuleId) -> None:
    assert broken(part) == [rule]


@pytest.mark.parametrize(
    "part",
    [
        nozzle(spout_outside_diameter_m=0.840 * INCH),  # SPOUT-01: the maximum itself passes
        nozzle(spout_outside_diameter_m=0.807 * INCH),  # SPOUT-08
        nozzle(spout_straight_length_m=2.5 * INCH),  # SPOUT-03
        nozzle(spring_distance_m=3.0 * INCH),  # SPOUT-04
        nozzle(spring_distance_m=None),
        nozzle(maximum_flow_m3_s=37.9 * LITRE_PER_MINUTE),  # SPOUT-06
        breakaway(separation_minimum_n=445, separation_maximum_n=1557, pull_strength_n=2000),  # BREAK-03, BREAK-04
        hose(length_m=5.4864),  # HOSE-02
        hose(resistance_ohm_m=70000 / 0.3048),  # OHM-01
        swivel(resistance_ohm=0.5e6),  # OHM-02
        swivel(maximum_pressure_pa=50 * PSI),  # LIST-12
        swivel(temperature_minimum_c=-10.0, temperature_maximum_c=35.0),
    ],
    ids=str,
)
def test_a_published_limit_itself_passes(part: Part) -> None:
    assert broken(part) == []


def test_a_part_of_another_kind_gets_that_one_finding() -> None:
    found = judge_part(nozzle(), Slot.SWIVEL, derived(position()), tables())
    assert [finding.rule_id for finding in found] == [RuleId.PART_IN_SLOT]
    assert part_rules_for(PartKind.CAP) == ()


def test_a_refused_part_and_a_late_part_are_left_out() -> None:
    decided = derived(position(decisions=Decisions(refused=("XX-N1",), longest_lead_time_days=4)))
    assert broken(nozzle(), decided) == [RuleId.PART_REFUSED, RuleId.PART_LEAD_TIME]
    assert broken(nozzle("XX-N9", lead_time_days=4), decided) == []


def test_a_listing_goes_before_the_material_table() -> None:
    # bare aluminium is not suitable for E85 (DOE handbook, memory), yet plated parts may be listed for it
    e85 = derived(position(blend=85))
    listed = swivel(listings=frozenset({ListingClass.E85}), wetted_materials=(Material.ALUMINIUM,))
    found = verdict(listed, e85)
    assert [(one.rule_id, one.severity) for one in found] == [(RuleId.MATERIAL_AGAINST_LISTING, Severity.ADVICE)]
    unlisted = swivel(listings=frozenset(), wetted_materials=(Material.ALUMINIUM,))
    assert RuleId.MATERIAL_UNSUITABLE in broken(unlisted, e85)


def test_an_unlisted_adaptor_is_judged_by_its_materials() -> None:
    def fitting(material: Material) -> Part:
        return adaptor(listings=frozenset(), schemes=frozenset(), wetted_materials=(material,))

    e85 = derived(position(blend=85))
    # steel suits E85, aluminium and zinc do not (DOE E85 handbook, memory); copper asks for care
    assert broken(fitting(Material.CARBON_STEEL), e85) == [RuleId.ADAPTOR_ADDS_JOINT]
    assert broken(fitting(Material.ZINC), e85) == [RuleId.MATERIAL_UNSUITABLE, RuleId.ADAPTOR_ADDS_JOINT]
    assert broken(fitting(Material.COPPER_BRONZE), e85) == [RuleId.MATERIAL_CAUTION, RuleId.ADAPTOR_ADDS_JOINT]
    half_listed = adaptor(wetted_materials=(Material.CARBON_STEEL,))
    assert RuleId.PART_CLASS in broken(half_listed, e85)


@pytest.mark.parametrize(
    "material", [Material.CARBON_STEEL, Material.ZINC, Material.BRASS, Material.COPPER_BRONZE, Material.ALUMINIUM]
)
def test_def_bars_the_metals_that_spoil_it(material: Material) -> None:
    # DEF-05: carbon steel, zinc, copper and alloys, aluminium and alloys (ISO 22241-3, memory)
    urea = derived(position(DEF, 0, in_flammable_zone=False))
    assert broken(swivel(wetted_materials=(material,), offered_for_def=True), urea) == [RuleId.MATERIAL_UNSUITABLE]
    assert broken(swivel(wetted_materials=(Material.STAINLESS_STEEL, Material.PTFE), offered_for_def=True), urea) == []


def test_def_asks_neither_class_nor_scheme_and_bonds_as_advice() -> None:
    urea = derived(position(DEF, 0))
    part = swivel(
        listings=frozenset(),
        schemes=frozenset(),
        wetted_materials=(Material.STAINLESS_STEEL,),
        resistance_ohm=None,
        offered_for_def=True,
    )
    found = verdict(part, urea)
    assert [(one.rule_id, one.severity) for one in found] == [(RuleId.CONTINUITY_KNOWN, Severity.ADVICE)]


def test_a_def_nozzle_in_the_zone_was_evaluated_for_it() -> None:
    zone = derived(position(DEF, 0, in_flammable_zone=True))
    spout: dict[str, Any] = {
        "service": NozzleService.DEF,
        "liquids": frozenset({DEF}),
        "spout_outside_diameter_m": 0.019,
    }
    made: dict[str, Any] = {"wetted_materials": (Material.STAINLESS_STEEL,), "misfill_interlock": True}
    assert broken(nozzle(**spout, **made), zone) == [RuleId.DEF_ZONE_NOZZLE]
    assert broken(nozzle(**spout, **made, def_zone_evaluated=True), zone) == []


def test_a_def_spout_keeps_to_nineteen_millimetres_and_wants_an_interlock() -> None:
    urea = derived(position(DEF, 0, in_flammable_zone=False))
    made: dict[str, Any] = {
        "service": NozzleService.DEF,
        "liquids": frozenset({DEF}),
        "wetted_materials": (Material.STAINLESS_STEEL,),
    }
    # SPOUT-14: 19 mm nominal (ISO 22241-4, memory)
    assert broken(nozzle(spout_outside_diameter_m=0.019, misfill_interlock=True, **made), urea) == []
    assert broken(nozzle(spout_outside_diameter_m=0.019, **made), urea) == [RuleId.MISFILL_INTERLOCK]
    fat = broken(nozzle(spout_outside_diameter_m=0.0206, misfill_interlock=True, **made), urea)
    assert fat == [RuleId.SPOUT_DIAMETER, RuleId.SPOUT_OWN_FILLER]


@pytest.mark.parametrize(
    ("inches", "rules"),
    [
        (0.929, []),  # SPOUT-09
        (0.937, []),  # SPOUT-10
        (0.928, [RuleId.SPOUT_DIAMETER]),
        (0.938, [RuleId.SPOUT_DIAMETER]),
        (0.840, [RuleId.SPOUT_DIAMETER, RuleId.SPOUT_WRONG_FILLER]),  # fits a car gasoline filler: never offered
        (1.125, [RuleId.SPOUT_DIAMETER, RuleId.SPOUT_OWN_FILLER]),  # a 1-1/8 in truck spout: never for cars
    ],
)
def test_a_car_diesel_spout_enters_its_own_filler_and_no_gasoline_filler(inches: float, rules: list[RuleId]) -> None:
    assert broken(diesel_nozzle(inches, NozzleService.DIESEL_CAR), derived(position(DIESEL, 20))) == rules


@pytest.mark.parametrize(
    ("inches", "rules"),
    [(1.122, []), (1.250, []), (1.121, [RuleId.SPOUT_DIAMETER]), (1.251, [RuleId.SPOUT_DIAMETER])],  # SPOUT-11, -12
)
def test_a_truck_diesel_spout_keeps_its_window(inches: float, rules: list[RuleId]) -> None:
    truck = derived(position(DIESEL, 20, duty=Duty.TRUCK))
    assert broken(diesel_nozzle(inches, NozzleService.DIESEL_TRUCK), truck) == rules


def test_a_diesel_spout_between_the_two_windows_serves_no_boat() -> None:
    boat = derived(position(DIESEL, 20, duty=Duty.MARINE))
    assert broken(diesel_nozzle(0.93, NozzleService.DIESEL_CAR), boat) == []
    assert broken(diesel_nozzle(1.0, NozzleService.DIESEL_CAR), boat) == [RuleId.SPOUT_DIAMETER]


def test_a_wished_latch_comes_with_the_device() -> None:
    latched = derived(position(hold_open_wanted=True))
    assert broken(nozzle(), latched) == [RuleId.LATCH_MISSING, RuleId.NO_PRESSURE_DEVICE]
    assert broken(nozzle(hold_open=True), latched) == [RuleId.NO_PRESSURE_DEVICE]
    assert broken(nozzle(hold_open=True, no_pressure_device=True, opening_pressure_pa=2e4), latched) == []


def test_a_single_use_breakaway_breaks_the_wish_for_one_that_can_be_reconnected() -> None:
    wanted = derived(position(reconnectable_wanted=True))
    assert broken(breakaway(reconnectable=False), wanted) == [RuleId.BREAKAWAY_RECONNECTABLE]
    assert broken(breakaway(reconnectable=True), wanted) == []
    assert broken(breakaway(reconnectable=False)) == []


def test_an_agency_asks_for_both_where_no_vapour_is_recovered_and_for_nothing_where_it_is() -> None:
    # N.J.A.C. 7:27-16.3: both come with the removal of recovery
    vapour = load_vapour_tables(RESOURCES)
    new_jersey = vapour.agency("new_jersey")
    assert new_jersey is not None
    asked = with_agency_demands(tables("us_general"), new_jersey)
    removed = derived(position(), rule_tables=asked)
    assert removed.enhanced_conventional and removed.low_permeation
    assert broken(nozzle(), removed, asked) == [RuleId.ENHANCED_CONVENTIONAL]
    unmarked = hose(low_permeation=False, permeation_kg_m2_s=5 * GRAM_PER_DAY)
    assert broken(unmarked, removed, asked) == [RuleId.HOSE_LOW_PERMEATION]
    sources = {line.id: line.source for line in removed.lines}
    for line in (Asked.ENHANCED_CONVENTIONAL, Asked.LOW_PERMEATION):
        assert "New Jersey" in sources[line] and "N.J.A.C. 7:27-16.3" in sources[line]
    kept = derived(position(vapour_today=VapourStatus.BALANCE, vapour_wanted=VapourStatus.BALANCE), rule_tables=asked)
    assert not kept.enhanced_conventional and not kept.low_permeation
    assert not derived(position(DIESEL, 5), rule_tables=asked).low_permeation
    unknown = vapour.agency("unknown")
    assert unknown is not None
    assert with_agency_demands(tables("us_general"), unknown) is tables("us_general")


def test_the_local_vapour_rules_ask_for_enhanced_nozzle_and_tight_hose() -> None:
    local = tables("us_vapour_rules")
    exempt = derived(position(), rule_tables=local)
    assert broken(nozzle(), exempt, local) == [RuleId.ENHANCED_CONVENTIONAL]
    # PERM-01: 10 g/m2 day (UL 330, CARB; memory)
    tight = hose(low_permeation=True, permeation_kg_m2_s=10 * GRAM_PER_DAY)
    assert broken(tight, exempt, local) == []
    assert broken(replace_hose(tight, 10.1 * GRAM_PER_DAY), exempt, local) == [RuleId.HOSE_PERMEATION_RATE]
    assert broken(replace_hose(tight, None), exempt, local) == [RuleId.HOSE_PERMEATION_RATE]
    unmarked = hose(low_permeation=False, permeation_kg_m2_s=5 * GRAM_PER_DAY)
    assert broken(unmarked, exempt, local) == [RuleId.HOSE_LOW_PERMEATION]


def replace_hose(part: Part, rate: float | None) -> Part:
    assert part.hose is not None
    return replace(part, hose=replace(part.hose, permeation_kg_m2_s=rate))


def test_a_hose_of_the_european_standard_ends_at_fifteen_percent_oxygenate() -> None:
    europe = tables("europe")  # LIST-10: EN 1360:2013 scope
    made = hose(
        schemes=frozenset({ListingScheme.EN}),
        listings=frozenset({ListingClass.E25}),
        prices=(Price(currency="EUR", minor=100),),
        maximum_pressure_pa=1.6e6,
    )
    at = site(currency="EUR", climate=Climate(low_c=0, high_c=30))
    assert broken(made, derived(position(blend=15), at, europe), europe) == []
    found = verdict(made, derived(position(blend=15.1), at, europe), europe)
    assert [(one.rule_id, one.severity) for one in found] == [(RuleId.OXYGENATE_LIMIT, Severity.SHOULD)]


def test_balance_parts_need_bellows_a_closing_breakaway_and_a_hose_with_swivel() -> None:
    balance = derived(position(vapour_wanted=VapourStatus.BALANCE))
    path = FlowPath.BALANCE
    tubes: dict[str, Any] = {"inner_tube_bore_m": 0.016, "inner_tube_outside_diameter_m": 0.019, "bore_m": 0.032}
    assert broken(on_path(nozzle(), path), balance) == [RuleId.BELLOWS]
    assert broken(on_path(nozzle(bellows=True), path), balance) == []
    assert broken(on_path(breakaway(), path), balance) == [RuleId.BREAKAWAY_CLOSES_VAPOUR]
    assert broken(on_path(breakaway(closes_vapour=True), path), balance) == []
    assert broken(on_path(hose(**tubes), path), balance) == [RuleId.HOSE_BUILT_IN_SWIVEL]
    assert broken(on_path(hose(built_in_swivel=True, **tubes), path), balance) == []
    assert broken(on_path(hose(built_in_swivel=True), path), balance) == [RuleId.FLOW_DATA_KNOWN]


def test_paths_are_never_mixed() -> None:
    balance = derived(position(vapour_wanted=VapourStatus.BALANCE))
    assert broken(on_path(nozzle(bellows=True), FlowPath.VACUUM_ASSIST), balance) == [RuleId.PART_PATH]
    assert broken(nozzle(bellows=True), balance) == [RuleId.PART_PATH]
    assert broken(on_path(nozzle(), FlowPath.BALANCE)) == [RuleId.PART_PATH]


def test_an_adaptor_that_leaves_the_vapour_path_closes_its_port() -> None:
    coaxial = Outlet(thread=ThreadStandard.UN, size="1-7/8-12", path=FlowPath.BALANCE)
    conversion = derived(position(vapour_today=VapourStatus.BALANCE, outlet=coaxial))
    inlet = Port(ThreadStandard.UN, "1-7/8-12", Gender.MALE, FlowPath.BALANCE)
    assert broken(adaptor(inlet=inlet), conversion) == [RuleId.ADAPTOR_CLOSES_VAPOUR, RuleId.ADAPTOR_ADDS_JOINT]
    assert broken(adaptor(inlet=inlet, closes_vapour=True), conversion) == [RuleId.ADAPTOR_ADDS_JOINT]
    foreign = replace(inlet, path=FlowPath.VACUUM_ASSIST)
    assert RuleId.PART_PATH in broken(adaptor(inlet=foreign, closes_vapour=True), conversion)


def test_a_splitter_finds_a_vapour_return() -> None:
    single = position(vapour_wanted=VapourStatus.BALANCE)
    assert broken(splitter(), derived(single)) == [RuleId.SPLITTER_VAPOUR_RETURN]
    piped = position(vapour_wanted=VapourStatus.BALANCE, outlet=Outlet(vapour_return_available=True))
    assert broken(splitter(), derived(piped)) == []


def test_swivels_turn_as_the_duty_asks_and_hoses_suit_their_retrieval() -> None:
    truck = derived(position(duty=Duty.TRUCK))
    found = verdict(swivel(planes=1), truck)  # common practice, no source
    assert [(one.rule_id, one.severity) for one in found] == [(RuleId.SWIVEL_PLANES, Severity.SHOULD)]
    assert broken(swivel(planes=1)) == []
    reel = derived(position(retrieval=Retrieval.REEL))  # common practice, no source
    assert broken(hose(construction=HoseConstruction.SOFTWALL), reel) == [RuleId.HOSE_CONSTRUCTION]
    assert broken(hose(), reel) == []
    assert broken(swivel_breakaway(), reel) == []
    assert broken(hose(construction=HoseConstruction.SOFTWALL)) == [RuleId.HOSE_CONSTRUCTION]  # hangs free


@pytest.mark.parametrize(("drum_m", "winds"), [(0.21, True), (0.2, True), (0.199, False)])
def test_a_hose_winds_onto_a_drum_that_keeps_its_bend_radius(drum_m: float, winds: bool) -> None:
    # geometry: the hose of the tests bends to a radius of 0.1 m, half the diameter of a 0.2 m drum at its center line
    reel = derived(position(retrieval=Retrieval.REEL, reel={"drum_diameter_m": drum_m}))
    assert broken(hose(), reel) == ([] if winds else [RuleId.HOSE_DRUM])
    assert broken(whip(), reel) == []  # only what winds up counts


def test_a_separation_window_outside_the_law_is_a_should_for_def() -> None:
    weak = breakaway(separation_minimum_n=300, wetted_materials=(Material.STAINLESS_STEEL,), offered_for_def=True)
    found = verdict(weak, derived(position(DEF, 0)))
    assert [(one.rule_id, one.severity) for one in found] == [(RuleId.SEPARATION_WINDOW, Severity.SHOULD)]


def test_more_supply_pressure_asks_for_a_higher_rating() -> None:
    strong = derived(position(supply=Supply(pressure_kpa=400)))
    assert broken(swivel(maximum_pressure_pa=399e3), strong) == [RuleId.PRESSURE_RATING]
    assert broken(swivel(maximum_pressure_pa=400e3), strong) == []


def test_a_reel_drum_tighter_than_two_bores_gives_no_flow_figure() -> None:
    tight = derived(position(retrieval=Retrieval.REEL, reel={"drum_diameter_m": 0.06}))
    wide_bore = hose(minimum_bend_radius_m=0.03, bore_m=0.038)
    assert broken(wide_bore, tight) == [RuleId.FLOW_DATA_KNOWN]


def test_an_empty_row_asks_nothing() -> None:
    silent = changed(tables(), FLOW_VELOCITY_MAX=None, BOND_HOSE_MAX=None, BOND_DEVICE_MAX=None)
    requirement = derived(position(), rule_tables=silent)
    assert broken(hose(bore_m=0.008, resistance_ohm_m=1e7), requirement, silent) == []
    assert broken(swivel(resistance_ohm=1e7), requirement, silent) == []


def test_every_part_rule_is_broken_by_some_part_of_this_file() -> None:
    text = Path(__file__).read_text(encoding="utf-8")
    first = list(RuleId).index(RuleId.PART_IN_SLOT)
    last = list(RuleId).index(RuleId.JOINT_THREAD)
    assert [rule for rule in list(RuleId)[first:last] if f"RuleId.{rule.name}" not in text] == []
