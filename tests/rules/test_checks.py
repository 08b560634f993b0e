"""The checks of a set against figures worked out by hand, from published examples or by another library."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import fluids
import pytest
from scipy.optimize import brentq

from rules.invented_parts import (
    LITRE_PER_MINUTE,
    breakaway,
    chain,
    hose,
    nozzle,
    on_path,
    plain_set,
    swivel,
    swivel_breakaway,
    whip,
)
from rules.stations import changed, derived, position, site, tables
from spoutline.model.check import Check, CheckId, Outcome
from spoutline.model.finding import Severity
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import HoseConstruction, NozzleOperation, Part
from spoutline.model.plan import HangingSet
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Quantity
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Climate, Duty, Filler, Hook, Outlet, Reel, Retrieval, Supply, VapourStatus
from spoutline.rules.chain.hanging import longest_at_rest_m, longest_in_use_m
from spoutline.rules.checks.holding import held
from spoutline.rules.checks.run import checks_for
from spoutline.rules.parts.figures import (
    PartFigures,
    design_flow_m3_s,
    elements_of,
    loss_pa,
    part_figures,
    states_for,
)

GRAVITY = 9.80665  # m/s2, exact
PSI = 6894.757293168  # Pa, NIST SP 811
GPM = 6.30901964e-5  # m3/s, NIST SP 811
GRAM_PER_DAY = 1e-3 / 86400.0
DIESEL = LiquidFamily.DIESEL


def all_checks(
    hanging_set: HangingSet, requirement: Requirement | None = None, rule_tables: RuleTables | None = None
) -> dict[CheckId, Check]:
    found = checks_for(hanging_set, requirement or derived(position()), rule_tables or tables())
    order = [check.id for check in found]
    assert order == sorted(order, key=list(CheckId).index)
    assert len(set(order)) == len(order)
    return {check.id: check for check in found}


def quantity(check: Check, name: str) -> float:
    return next(fact.value for fact in check.facts if isinstance(fact, Quantity) and fact.name == name)


def with_parts(**parts: Part) -> HangingSet:
    return plain_set(**parts)


def test_a_set_that_suits_passes_every_check_with_worked_lines() -> None:
    checks = all_checks(with_parts(curb_hose=hose(length_m=2.5)))
    assert {check.outcome for check in checks.values()} == {Outcome.PASSES, Outcome.INFORMATION}
    assert all(check.passes for check in checks.values())
    for check_id in (CheckId.HOSE_REACH, CheckId.BREAKAWAY_SERVICE_LOAD, CheckId.FLOW_COLD, CheckId.RESISTANCE_TOTAL):
        assert checks[check_id].lines
        assert all(line.source for line in checks[check_id].lines)


@pytest.mark.parametrize(
    ("family", "blend", "solid_c"),
    [(DIESEL, 100, -5.0), (LiquidFamily.DEF, 0, -11.5)],  # AFDC, pour point of B100; ISO 22241-3 (memory)
)
def test_a_liquid_colder_than_it_moves_gets_no_verdict_of_flow(
    family: LiquidFamily, blend: float, solid_c: float
) -> None:
    frozen = derived(position(family, blend), site(climate=Climate(low_c=solid_c - 0.1, high_c=30)))
    check = all_checks(plain_set(), frozen)[CheckId.FLOW_COLD]
    assert (check.outcome, check.value, check.lower) == (Outcome.INFORMATION, None, None)
    assert check.text == "solid"
    assert quantity(check, "solid_point") == solid_c
    moving = derived(position(family, blend), site(climate=Climate(low_c=solid_c, high_c=30)))
    assert all_checks(plain_set(), moving)[CheckId.FLOW_COLD].outcome is not Outcome.INFORMATION


def test_hoses_count_toward_the_limit_and_rigid_parts_toward_the_reach() -> None:
    checks = all_checks(plain_set())
    assert checks[CheckId.HOSE_LENGTH].value == pytest.approx(0.3 + 3.0)
    assert checks[CheckId.HOSE_REACH].value == pytest.approx(0.3 + 0.1 + 3.0 + 0.1 + 0.3)


def test_two_hoses_that_each_keep_the_limit_can_break_it_together() -> None:
    long = with_parts(curb_hose=hose(length_m=5.4))  # HOSE-02: 5.4864 m
    check = all_checks(long)[CheckId.HOSE_LENGTH]
    assert (check.outcome, check.severity) == (Outcome.FAILS, Severity.MUST)
    assert check.margin == pytest.approx(5.4864 - 5.7)


def test_a_hose_that_falls_short_of_a_filler_fails() -> None:
    # 3-4-5 triangle: taut 5 m, slack 5 % of it: 5.25 m; the chain has 3.8 m
    asked = derived(position(outlet=Outlet(height_m=2.0), filler=Filler(distance_m=4.0, height_m=-1.0)))
    check = all_checks(plain_set(), asked)[CheckId.HOSE_REACH]
    assert check.outcome is Outcome.FAILS
    assert check.margin == pytest.approx(3.8 - 5.25)


def test_a_corner_round_the_vehicle_takes_half_a_bend_radius_of_the_hose() -> None:
    # engineering judgement of the reference: half a bend radius (0.1 m) for the one corner
    round_it = Filler(distance_m=1.5, height_m=1.0, plan_legs_m=(1.0, 1.0))
    check = all_checks(plain_set(), derived(position(filler=round_it)))[CheckId.HOSE_REACH]
    assert check.value == pytest.approx(3.8 - 0.05)


def test_turns_that_stay_on_the_drum_reach_no_filler() -> None:
    # one turn of 0.5 m diameter is 1.571 m of hose (circumference); 3 m of hose leave 1.429 m and the rigid parts
    asked = derived(
        position(
            LiquidFamily.FUEL_OIL,
            0,
            duty=Duty.REEL,
            retrieval=Retrieval.REEL,
            reel=Reel(drum_diameter_m=0.5, turns_left=1),
        )
    )
    check = all_checks(nozzle_end(), asked)[CheckId.HOSE_REACH]
    rigid = sum(part.length_m for part in (swivel_breakaway(), nozzle()))
    assert check.value == pytest.approx(3.0 - math.pi * 0.5 + rigid)
    # more turns than there is hose leave nothing, and never less than nothing
    wound = derived(position(DIESEL, 0, retrieval=Retrieval.REEL, reel=Reel(drum_diameter_m=0.5, turns_left=9)))
    assert all_checks(nozzle_end(), wound)[CheckId.HOSE_REACH].value == pytest.approx(rigid)


def test_the_hanging_curve_of_the_reference_case() -> None:
    # reference case of the catenary: d 2.4, h1 2.0, h2 0.9, L 3.66 m gives a low point of 0.2209 m
    asked = derived(position(outlet=Outlet(height_m=2.0), filler=Filler(distance_m=2.4, height_m=0.9)))
    reference = with_parts(curb_hose=hose(length_m=3.66 - 0.5))
    check = all_checks(reference, asked)[CheckId.GROUND_CLEARANCE_IN_USE]
    assert check.value == pytest.approx(0.2209, abs=5e-5)
    # the same case: 3.7721 m is the longest that keeps 0.15 m
    clear = changed(tables(), GROUND_CLEARANCE=0.15)
    assert longest_in_use_m(asked, clear.jurisdiction) == pytest.approx(3.7721, abs=5e-5)


def test_the_longest_clear_chain_is_where_the_rest_check_turns() -> None:
    asked = derived(position(hook=Hook(distance_m=0.4, height_m=1.1)))
    longest = longest_at_rest_m(asked, tables().jurisdiction)
    assert longest is not None
    for length, outcome in ((longest - 0.01, Outcome.PASSES), (longest + 0.01, Outcome.FAILS)):
        check = all_checks(with_parts(curb_hose=hose(length_m=length - 0.5)), asked)[CheckId.GROUND_CLEARANCE_AT_REST]
        assert (check.outcome, check.severity) == (outcome, Severity.SHOULD)


def nozzle_end(**fields: Any) -> HangingSet:
    curb = fields.pop("curb_hose", None) or hose()
    return chain(
        (Slot.CURB_HOSE, curb),
        (Slot.SWIVEL_BREAKAWAY, fields.pop("swivel_breakaway", None) or swivel_breakaway()),
        (Slot.NOZZLE, fields.pop("nozzle", None) or nozzle()),
    )


def test_a_retractor_lifts_the_hose_and_a_reel_leaves_nothing_hanging() -> None:
    cord = derived(position(retrieval=Retrieval.RETRACTOR))
    free = all_checks(with_parts(curb_hose=hose(length_m=4.0)))[CheckId.GROUND_CLEARANCE_AT_REST]
    held_up = all_checks(nozzle_end(curb_hose=hose(length_m=4.0)), cord)[CheckId.GROUND_CLEARANCE_AT_REST]
    assert free.value is not None
    assert held_up.value is not None
    assert held_up.value > free.value
    longest = longest_at_rest_m(cord, tables().jurisdiction)
    plain = longest_at_rest_m(derived(position()), tables().jurisdiction)
    assert longest is not None
    assert plain is not None
    assert longest > plain
    reel = derived(position(retrieval=Retrieval.REEL))
    wound = nozzle_end(curb_hose=hose(construction=HoseConstruction.SOFTWALL))
    assert all_checks(wound, reel)[CheckId.GROUND_CLEARANCE_AT_REST].outcome is Outcome.INFORMATION
    assert all_checks(wound, reel)[CheckId.BEND_RADIUS].value == pytest.approx(0.25)  # half the drum of 0.5 m
    assert longest_at_rest_m(reel, tables().jurisdiction) == math.inf


def test_a_hose_longer_than_its_two_falls_says_how_much_lies_on_the_ground() -> None:
    place = position(DIESEL, 0, duty=Duty.TRUCK)
    check = all_checks(with_parts(curb_hose=hose(length_m=12.0)), derived(place))[CheckId.GROUND_CLEARANCE_AT_REST]
    hanging = quantity(check, "hanging_length")
    # the falls from outlet and hook stand all but upright: what is more than both lies on the ground; geometry
    falls = place.outlet.height_m + place.hook.height_m
    assert quantity(check, "length_below_ground") == pytest.approx(hanging - falls, rel=0.03)
    assert quantity(check, "length_below_ground") <= hanging - falls


def test_a_hose_that_hangs_clear_says_nothing_of_the_ground() -> None:
    check = all_checks(with_parts(curb_hose=hose(length_m=2.4)))[CheckId.GROUND_CLEARANCE_AT_REST]
    assert check.value is not None
    assert check.value > 0.0
    assert not any(fact.name == "length_below_ground" for fact in check.facts)


def test_a_hose_drawn_off_a_reel_says_how_much_of_it_drags() -> None:
    reel = Reel(drum_diameter_m=0.5, turns_left=1)
    place = position(DIESEL, 0, retrieval=Retrieval.REEL, reel=reel)
    wound = nozzle_end(curb_hose=hose(length_m=12.0, construction=HoseConstruction.SOFTWALL))
    check = all_checks(wound, derived(place))[CheckId.GROUND_CLEARANCE_IN_USE]
    assert check.outcome is Outcome.INFORMATION
    # one turn of pi x 0.5 m stays on the drum; at least the two heights hang, and what drags is no more than the rest
    free = 12.0 - math.pi * 0.5 + sum(link.part.length_m for link in wound.links if link.slot is Slot.SWIVEL_BREAKAWAY)
    assert 0.0 < quantity(check, "length_below_ground") <= free - place.outlet.height_m - place.filler.height_m


def test_a_boat_below_the_quay_is_not_asked_for_clearance_in_use() -> None:
    boat = derived(position(DIESEL, 0, duty=Duty.MARINE, filler=Filler(distance_m=2.0, height_m=-1.5)))
    assert all_checks(plain_set(), boat)[CheckId.GROUND_CLEARANCE_IN_USE].outcome is Outcome.INFORMATION


def test_the_service_margin_of_the_reference_example() -> None:
    # 445 N (100 lbf), 49 N hanging, 100 N tug, no thrust: 2.98; with 50 psi on a 19 mm seal (98 N): 1.8
    asked = derived(position(retrieval=Retrieval.RETRACTOR, supply=Supply(pressure_kpa=50 * PSI / 1e3)))
    heavy = nozzle(mass_kg=49 / GRAVITY)
    balanced = swivel_breakaway(separation_minimum_n=445)
    short = hose(length_m=2.6)
    check = all_checks(nozzle_end(nozzle=heavy, swivel_breakaway=balanced, curb_hose=short), asked)
    assert check[CheckId.BREAKAWAY_SERVICE_LOAD].value == pytest.approx(445 / 149)
    sealed = swivel_breakaway(separation_minimum_n=445, seal_diameter_m=0.019)
    check = all_checks(nozzle_end(nozzle=heavy, swivel_breakaway=sealed, curb_hose=short), asked)
    assert check[CheckId.BREAKAWAY_SERVICE_LOAD].value == pytest.approx(1.8, abs=0.005)


def gasoline_density(temperature_c: float) -> float:
    """E10 by volume fractions: 745 - 0.90 (t - 15) and 793.7 - 0.85 (t - 15) kg/m3 (DOE AFDC, secondary)."""
    return 0.9 * (745 - 0.90 * (temperature_c - 15)) + 0.1 * (793.7 - 0.85 * (temperature_c - 15))


def test_the_load_below_a_dispenser_end_breakaway_is_hose_swivel_and_nozzle_filled() -> None:
    # the filler straight below the outlet: the hanging weight is the greater load
    asked = derived(position(filler=Filler(distance_m=0.5, height_m=1.0)))
    per_metre = GRAVITY * (0.65 + gasoline_density(-10) * math.pi / 4 * 0.01905**2)
    hanging = 3.0 * per_metre + GRAVITY * (0.5 + 1.2)
    check = all_checks(plain_set(), asked)[CheckId.BREAKAWAY_SERVICE_LOAD]
    assert check.value == pytest.approx(500 / (hanging + 100), rel=1e-6)
    assert check.severity is Severity.SHOULD


def test_a_nearly_taut_hose_pulls_more_than_its_weight() -> None:
    # catenary solved by scipy; the tension at the breakaway is the outlet's less weight per metre times the drop
    outlet_m, filler_m, distance = 2.1, 2.0, 3.40
    asked = derived(position(outlet=Outlet(height_m=outlet_m), filler=Filler(distance_m=distance, height_m=filler_m)))
    per_metre = GRAVITY * (0.65 + gasoline_density(-10) * math.pi / 4 * 0.01905**2)
    length = 3.5
    weight = (3.3 * per_metre + GRAVITY * 1.0) / length
    rise = filler_m - outlet_m
    stretch = math.sqrt(length**2 - rise**2) / distance
    a = distance / 2 / brentq(lambda z: math.sinh(z) / z - stretch, 1e-6, 10)
    x0 = distance / 2 - a * math.atanh(rise / length)
    x = x0 + a * math.asinh(0.3 / a - math.sinh(x0 / a))
    tension = weight * a * math.cosh((x - x0) / a)
    hanging = 3.0 * per_metre + GRAVITY * 1.7
    assert tension > hanging
    check = all_checks(plain_set(), asked)[CheckId.BREAKAWAY_SERVICE_LOAD]
    assert check.value == pytest.approx(500 / (tension + 100), rel=1e-6)


@pytest.mark.parametrize(
    ("least_n", "outcome", "severity"),
    [
        (500, Outcome.PASSES, Severity.SHOULD),
        (160, Outcome.FAILS, Severity.SHOULD),
        (130, Outcome.FAILS, Severity.MUST),
    ],
)
def test_a_breakaway_that_parts_in_use_is_a_must_and_a_thin_margin_a_should(
    least_n: float, outcome: Outcome, severity: Severity
) -> None:
    # load about 142 N: 160 N is above it and below 1.5 times it (margin: engineering judgement)
    check = all_checks(with_parts(breakaway=breakaway(separation_minimum_n=least_n)))[CheckId.BREAKAWAY_SERVICE_LOAD]
    assert (check.outcome, check.severity) == (outcome, severity)


def test_every_part_bears_the_drive_off_with_margin() -> None:
    # 350 lbf = 1557 N asks 1946 N at 0 degrees (statics; 1.25 is engineering judgement)
    strong = derived(position(outlet=Outlet(pull_strength_n=5000)))
    full = breakaway(separation_maximum_n=1557)
    check = all_checks(with_parts(breakaway=full), strong)[CheckId.BREAKAWAY_DRIVE_OFF]
    assert check.lower is not None
    assert check.lower.value == pytest.approx(1946, abs=0.5)
    assert (check.outcome, check.value) == (Outcome.PASSES, 3000)
    weak = all_checks(with_parts(breakaway=full, swivel=swivel(pull_strength_n=1900)), strong)
    assert weak[CheckId.BREAKAWAY_DRIVE_OFF].outcome is Outcome.FAILS
    assert weak[CheckId.BREAKAWAY_DRIVE_OFF].text == "XX-S1"


def test_the_dispenser_outlet_is_among_the_parts_that_bear() -> None:
    frail = derived(position(outlet=Outlet(pull_strength_n=1000)))
    check = all_checks(plain_set(), frail)[CheckId.BREAKAWAY_DRIVE_OFF]
    assert (check.outcome, check.text) == (Outcome.FAILS, "outlet")


def test_a_whip_too_short_to_turn_leaves_an_angle_that_multiplies_the_pull() -> None:
    # 1557 N at 60 degrees asks 3893 N: a whip of 0.1 m bend radius and pi/6 x 0.1 m length turns 30 of 90 degrees
    strong = derived(position(outlet=Outlet(pull_strength_n=5000)))
    short = with_parts(
        whip_hose=whip(length_m=0.1 * math.pi / 6 + 1e-9, pull_strength_n=5000),
        breakaway=breakaway(separation_maximum_n=1557, pull_strength_n=5000),
        curb_hose=hose(pull_strength_n=5000),
        swivel=swivel(pull_strength_n=5000),
        nozzle=nozzle(pull_strength_n=5000),
    )
    checks = all_checks(short, strong)
    bound = checks[CheckId.BREAKAWAY_DRIVE_OFF].lower
    assert bound is not None
    assert bound.value == pytest.approx(3893, abs=1)
    assert checks[CheckId.BREAKAWAY_DRIVE_OFF].outcome is Outcome.PASSES
    assert checks[CheckId.WHIP_LENGTH].outcome is Outcome.FAILS


@pytest.mark.parametrize(("length_m", "text"), [(0.04, "too_oblique"), (0.3, "outlet")])
def test_a_pull_beyond_sixty_degrees_fails_unless_the_coupling_parts_any_way(length_m: float, text: str) -> None:
    # advice above 45 and failure above 60 degrees: engineering judgement
    axial = with_parts(whip_hose=whip(length_m=length_m))
    assert all_checks(axial)[CheckId.BREAKAWAY_DRIVE_OFF].text == text
    anyhow = with_parts(whip_hose=whip(length_m=length_m), breakaway=breakaway(omnidirectional=True))
    assert all_checks(anyhow)[CheckId.BREAKAWAY_DRIVE_OFF].outcome is Outcome.PASSES


def test_a_filler_above_the_outlet_can_pull_the_coupling_across() -> None:
    high = derived(position(outlet=Outlet(height_m=1.0), filler=Filler(distance_m=0.5, height_m=2.5)))
    check = all_checks(with_parts(whip_hose=whip(length_m=0.05)), high)[CheckId.BREAKAWAY_DRIVE_OFF]
    assert (check.outcome, check.text) == (Outcome.FAILS, "never_parts")


def test_the_resistance_of_the_reference_example() -> None:
    # 3.96 m at 50 kilo-ohm per m + 3010 ohm + 5 joints of 1 ohm = 201 kilo-ohm
    example = with_parts(
        whip_hose=whip(length_m=0.3, resistance_ohm_m=50e3),
        curb_hose=hose(length_m=3.66, resistance_ohm_m=50e3),
        breakaway=breakaway(resistance_ohm=1000),
        swivel=swivel(resistance_ohm=2000),
        nozzle=nozzle(resistance_ohm=10),
    )
    check = all_checks(example)[CheckId.RESISTANCE_TOTAL]
    assert check.value == pytest.approx(3.96 * 50e3 + 3010 + 5)
    assert check.outcome is Outcome.PASSES


def test_parts_can_each_pass_and_the_whole_fail() -> None:
    # OHM-07: 18 ft at 70 000 ohm per ft is 1.26 megohm, above the 1 megohm guidance
    limit = 70000 / 0.3048
    long = with_parts(
        whip_hose=whip(length_m=0.3, resistance_ohm_m=limit),
        curb_hose=hose(length_m=5.4864 - 0.3, resistance_ohm_m=limit),
    )
    checks = all_checks(long)
    assert checks[CheckId.RESISTANCE_PARTS].outcome is Outcome.PASSES
    assert checks[CheckId.RESISTANCE_PARTS].value == pytest.approx(1.0)
    assert checks[CheckId.RESISTANCE_TOTAL].outcome is Outcome.FAILS
    assert checks[CheckId.RESISTANCE_TOTAL].value == pytest.approx(1_260_000, rel=1e-4)


def test_unknown_data_are_never_a_pass() -> None:
    unknown = all_checks(with_parts(curb_hose=hose(resistance_ohm_m=None)))
    assert unknown[CheckId.RESISTANCE_TOTAL].outcome is Outcome.UNKNOWN
    assert unknown[CheckId.RESISTANCE_PARTS].outcome is Outcome.UNKNOWN
    limp = all_checks(with_parts(swivel=swivel(pull_strength_n=None)))
    assert limp[CheckId.BREAKAWAY_DRIVE_OFF].outcome is Outcome.UNKNOWN
    blind = all_checks(with_parts(nozzle=nozzle(flow_coefficient_kv=None, minimum_flow_m3_s=None)))
    for check_id in (CheckId.FLOW_COLD, CheckId.FLOW_HOT, CheckId.NOZZLE_MINIMUM_FLOW, CheckId.NOZZLE_MAXIMUM_FLOW):
        assert blind[check_id].outcome is Outcome.UNKNOWN
        assert not blind[check_id].passes
    mute = all_checks(with_parts(nozzle=nozzle(no_pressure_device=True, opening_pressure_pa=None)))
    assert mute[CheckId.NOZZLE_OPENING_PRESSURE].outcome is Outcome.UNKNOWN


def test_the_solved_flow_balances_losses_worked_out_by_another_library() -> None:
    # Darcy-Weisbach with Colebrook from the fluids library; Kv by its definition; liquid data of the reference
    pressure = 30 * PSI
    asked = derived(
        position(supply=Supply(pressure_kpa=pressure / 1e3, maximum_flow_l_min=200), duty=Duty.MARINE),
        site(climate=Climate(low_c=20, high_c=20)),
    )
    check = all_checks(plain_set(), asked)[CheckId.FLOW_COLD]
    flow = quantity(check, "solved_flow")
    density, viscosity = 745.4, 0.608e-6  # E10 at 20 degC
    speed = flow / (math.pi / 4 * 0.01905**2)
    factor = fluids.friction_factor(Re=speed * 0.01905 / viscosity, eD=1e-5 / 0.01905)
    lost = factor * 3.3 / 0.01905 * density * speed**2 / 2
    for kv in (9.0, 9.0, 3.0):
        lost += 1e5 * density / 1000 * (flow * 3600 / kv) ** 2
    lost += density * GRAVITY * (0.9 - 2.1)
    assert lost == pytest.approx(pressure, rel=2e-3)


def test_gasoline_into_cars_is_capped_by_law_whatever_the_pressure_gives() -> None:
    strong = derived(position(supply=Supply(pressure_kpa=345, maximum_flow_l_min=90)))
    checks = all_checks(plain_set(), strong)
    assert quantity(checks[CheckId.FLOW_HOT], "solved_flow") > 10 * GPM
    assert checks[CheckId.FLOW_HOT].value == pytest.approx(10 * GPM)  # SPOUT-05: 10 gpm
    assert checks[CheckId.GASOLINE_FLOW_LIMIT].outcome is Outcome.PASSES
    assert checks[CheckId.GASOLINE_FLOW_LIMIT].text == "capped"
    assert CheckId.GASOLINE_FLOW_LIMIT not in all_checks(plain_set(), derived(position(duty=Duty.TRUCK)))


@pytest.mark.parametrize("supply_l_min", [30, 37.8])
def test_a_dispenser_that_gives_less_than_the_law_allows_is_what_sets_the_flow(supply_l_min: float) -> None:
    # the least of pressure, dispenser and law decides (40 CFR 1090.1550: the limit may be met anywhere in the system)
    held_back = derived(position(supply=Supply(pressure_kpa=345, maximum_flow_l_min=supply_l_min)))
    checks = all_checks(plain_set(), held_back)
    assert quantity(checks[CheckId.GASOLINE_FLOW_LIMIT], "solved_flow") > 10 * GPM
    assert checks[CheckId.GASOLINE_FLOW_LIMIT].value == pytest.approx(supply_l_min / 60_000)
    assert {checks[name].text for name in (CheckId.GASOLINE_FLOW_LIMIT, CheckId.FLOW_HOT)} == {"capped"}


def test_pressure_and_losses_set_the_flow_where_they_give_the_least() -> None:
    weak = derived(position(supply=Supply(pressure_kpa=14, maximum_flow_l_min=90)))
    checks = all_checks(plain_set(), weak)
    assert checks[CheckId.GASOLINE_FLOW_LIMIT].value < 10 * GPM
    assert checks[CheckId.GASOLINE_FLOW_LIMIT].text == "solved"


def test_a_weak_supply_falls_short_of_the_wish_and_then_of_the_shut_off() -> None:
    slow = all_checks(plain_set(), derived(position(supply=Supply(pressure_kpa=10))))
    assert (slow[CheckId.FLOW_COLD].outcome, slow[CheckId.FLOW_COLD].severity) == (Outcome.FAILS, Severity.SHOULD)
    assert slow[CheckId.NOZZLE_MINIMUM_FLOW].outcome is Outcome.PASSES
    faint = all_checks(plain_set(), derived(position(supply=Supply(pressure_kpa=0.5), filler=Filler(height_m=2.4))))
    assert faint[CheckId.NOZZLE_MINIMUM_FLOW].outcome is Outcome.FAILS
    assert faint[CheckId.NOZZLE_MINIMUM_FLOW].severity is Severity.MUST
    assert faint[CheckId.FLOW_COLD].text == "nothing_flows"


def test_the_opening_pressure_is_what_upstream_parts_leave() -> None:
    # E10 at 20 degC; upstream of the nozzle: 3.3 m of 3/4 in and two parts of Kv 9 at 30 L/min, filler 1.2 m lower
    asked = derived(
        position(supply=Supply(pressure_kpa=100, wanted_flow_l_min=30)), site(climate=Climate(low_c=20, high_c=20))
    )
    made = nozzle(no_pressure_device=True, opening_pressure_pa=90e3)
    check = all_checks(with_parts(nozzle=made), asked)[CheckId.NOZZLE_OPENING_PRESSURE]
    flow = 30 * LITRE_PER_MINUTE
    speed = flow / (math.pi / 4 * 0.01905**2)
    factor = fluids.friction_factor(Re=speed * 0.01905 / 0.608e-6, eD=1e-5 / 0.01905)
    lost = factor * 3.3 / 0.01905 * 745.4 * speed**2 / 2 + 2 * 1e5 * 0.7454 * (flow * 3600 / 9) ** 2
    assert check.value == pytest.approx(100e3 + 745.4 * GRAVITY * 1.2 - lost, rel=1e-3)
    assert check.outcome is Outcome.PASSES
    stiff = nozzle(no_pressure_device=True, opening_pressure_pa=110e3)
    assert all_checks(with_parts(nozzle=stiff), asked)[CheckId.NOZZLE_OPENING_PRESSURE].outcome is Outcome.FAILS


def test_the_design_flow_is_the_wish_or_the_least_flow_of_the_nozzle() -> None:
    asked = derived(position())  # wanted 30 L/min, common practice
    assert design_flow_m3_s(nozzle(), asked, tables()) == pytest.approx(30 * LITRE_PER_MINUTE)
    thirsty = nozzle(minimum_flow_m3_s=33 * LITRE_PER_MINUTE)
    assert design_flow_m3_s(thirsty, asked, tables()) == pytest.approx(33 * LITRE_PER_MINUTE)


def test_a_manual_nozzle_has_no_least_flow_to_check() -> None:
    manual = nozzle(operation=NozzleOperation.MANUAL, minimum_flow_m3_s=None)
    assert CheckId.NOZZLE_MINIMUM_FLOW not in all_checks(with_parts(nozzle=manual))


def test_the_velocity_of_the_reference_table() -> None:
    # 10 gpm in 3/4 in: 2.21 m/s
    check = all_checks(plain_set(), derived(position(supply=Supply(maximum_flow_l_min=37.85411784))))[CheckId.VELOCITY]
    assert check.value == pytest.approx(2.21, abs=0.005)


def test_the_yearly_permeation_of_the_reference_example() -> None:
    # 3.66 m of 3/4 in at 10 g/m2 day: 0.63 g a day at 20 degC (EPA temperature rule, memory)
    rate = 10 * GRAM_PER_DAY
    made = with_parts(whip_hose=whip(permeation_kg_m2_s=rate), curb_hose=hose(length_m=3.36, permeation_kg_m2_s=rate))
    mild = derived(position(), site(climate=Climate(low_c=5, high_c=35)))
    check = all_checks(made, mild)[CheckId.PERMEATION]
    assert quantity(check, "yearly_loss") == pytest.approx(0.63e-3 * 365, rel=0.01)
    assert quantity(check, "yearly_loss_low_permeation") == pytest.approx(0.63e-3 * 365, rel=0.01)
    assert check.outcome is Outcome.INFORMATION
    local = tables("us_vapour_rules")
    tight = all_checks(made, derived(position(), rule_tables=local), local)[CheckId.PERMEATION]
    assert (tight.outcome, tight.severity) == (Outcome.PASSES, Severity.MUST)
    assert CheckId.PERMEATION not in all_checks(plain_set(), derived(position(DIESEL, 0)))


def test_coaxial_liquid_runs_inside_for_balance_and_in_the_ring_for_vacuum_assist() -> None:
    # areas by geometry: inner tube 16 mm bore, 19 mm outside, in a 32 mm hose; ring pi/4 (32^2 - 19^2) mm2
    tubes: dict[str, Any] = {"bore_m": 0.032, "inner_tube_bore_m": 0.016, "inner_tube_outside_diameter_m": 0.019}
    flow = 30 * LITRE_PER_MINUTE
    for path, status, area_mm2 in (
        (FlowPath.BALANCE, VapourStatus.BALANCE, math.pi / 4 * 16**2),
        (FlowPath.VACUUM_ASSIST, VapourStatus.VACUUM_ASSIST, math.pi / 4 * (32**2 - 19**2)),
    ):
        asked = derived(position(vapour_wanted=status))
        curb = on_path(hose(built_in_swivel=True, **tubes), path)
        weight = part_figures(curb, Slot.CURB_HOSE, asked, tables(), states_for(asked).cold).filled_weight_n
        assert weight == pytest.approx(3 * GRAVITY * (0.65 + gasoline_density(-10) * area_mm2 * 1e-6), rel=1e-6)
        assert loss_pa(curb, Slot.CURB_HOSE, asked, flow, states_for(asked).cold) > 0
    missing = on_path(hose(built_in_swivel=True), FlowPath.BALANCE)
    asked = derived(position(vapour_wanted=VapourStatus.BALANCE))
    assert elements_of(missing, Slot.CURB_HOSE, asked) is None
    assert loss_pa(missing, Slot.CURB_HOSE, asked, flow, states_for(asked).cold) == math.inf


def test_turns_left_on_the_drum_lose_more_than_straight_hose() -> None:
    reel = derived(position(DIESEL, 0, retrieval=Retrieval.REEL))
    plain = derived(position(DIESEL, 0))
    flow, state = 30 * LITRE_PER_MINUTE, states_for(reel).cold
    curb = hose(construction=HoseConstruction.SOFTWALL)
    assert loss_pa(curb, Slot.CURB_HOSE, reel, flow, state) > loss_pa(curb, Slot.CURB_HOSE, plain, flow, state)


def test_figures_and_checks_agree() -> None:
    asked = derived(position())
    made = plain_set()
    figures: list[PartFigures] = [
        part_figures(link.part, link.slot, asked, tables(), states_for(asked).cold) for link in made.links
    ]
    checks = all_checks(made, asked)
    assert sum(one.hose_length_m for one in figures) == checks[CheckId.HOSE_LENGTH].value
    assert sum(one.reach_m for one in figures) == pytest.approx(checks[CheckId.HOSE_REACH].value)
    joints = 5 * 1.0
    resistance = sum(one.resistance_ohm or math.nan for one in figures) + joints
    assert resistance == pytest.approx(checks[CheckId.RESISTANCE_TOTAL].value)
    bound = checks[CheckId.BREAKAWAY_DRIVE_OFF].lower
    assert bound is not None
    assert max(one.pull_demand_n for one in figures) == pytest.approx(bound.value)


def test_the_force_class_and_the_swivel_type_are_words_with_facts() -> None:
    checks = all_checks(plain_set())
    assert checks[CheckId.BREAKAWAY_FORCE_CLASS].text == "inside_window"
    assert quantity(checks[CheckId.BREAKAWAY_FORCE_CLASS], "separation_minimum") == 500
    assert checks[CheckId.SWIVEL_TYPE].text == "two_plane"
    outside = all_checks(with_parts(breakaway=breakaway(separation_maximum_n=1600)))[CheckId.BREAKAWAY_FORCE_CLASS]
    assert (outside.outcome, outside.text) == (Outcome.FAILS, "outside_window")
    # 350 lbf is 1556.9 N
    assert outside.margin == pytest.approx(1556.9 - 1600, abs=0.1)
    truck = derived(position(duty=Duty.TRUCK))
    single = all_checks(with_parts(swivel=swivel(planes=1)), truck)[CheckId.SWIVEL_TYPE]
    assert (single.outcome, single.severity) == (Outcome.FAILS, Severity.SHOULD)


def test_the_spout_check_agrees_with_the_spout_rules() -> None:
    assert all_checks(plain_set())[CheckId.SPOUT_DIAMETER].outcome is Outcome.PASSES
    fat = all_checks(with_parts(nozzle=nozzle(spout_outside_diameter_m=0.0236)))[CheckId.SPOUT_DIAMETER]
    assert fat.outcome is Outcome.FAILS
    assert fat.margin is not None
    assert fat.margin < 0


def test_a_limit_met_exactly_passes() -> None:
    from spoutline.model.quantity import Dimension
    from spoutline.rules.checks.holding import judgement_bound

    for value, outcome in ((1.0, Outcome.PASSES), (1.0 + 1e-12, Outcome.PASSES), (1.0 + 1e-6, Outcome.FAILS)):
        bound = judgement_bound(1.0, "test")
        check = held(CheckId.VELOCITY, Severity.SHOULD, value, Dimension.VELOCITY, upper=bound)
        assert check.outcome is outcome
    assert replace(check, outcome=Outcome.UNKNOWN).passes is False
