"""Where a check or rule has several cases to choose from, the worse one decides."""

from __future__ import annotations

import pytest

from rules.invented_parts import LITRE_PER_MINUTE, breakaway, chain, hose, nozzle, on_path, plain_set, swivel, whip
from rules.stations import changed, derived, position, site, tables
from spoutline.model.check import Check, CheckId, Outcome
from spoutline.model.finding import Severity
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import NozzleService
from spoutline.model.plan import HangingSet
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Climate, Filler, Supply, VapourStatus
from spoutline.rules.checks.run import checks_for
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.parts.figures import rise_m
from spoutline.rules.parts.part_rules import judge_part

DIESEL, DEF = LiquidFamily.DIESEL, LiquidFamily.DEF


def checks(hanging_set: HangingSet, asked: Requirement, rule_tables: RuleTables | None = None) -> dict[CheckId, Check]:
    return {check.id: check for check in checks_for(hanging_set, asked, rule_tables or tables())}


def diesel_set(**nozzle_fields: object) -> HangingSet:
    made = nozzle(
        liquids=frozenset({DIESEL}),
        service=NozzleService.DIESEL_CAR,
        spout_outside_diameter_m=0.0237,
        **nozzle_fields,
    )
    return plain_set(nozzle=made)


def weak_cold_diesel(**supply: float) -> Requirement:
    """Return a diesel position where the cold liquid is some six times as viscous as the hot one (AFDC fuel table)."""
    return derived(position(DIESEL, 0, supply=Supply(**supply)), site(climate=Climate(low_c=-20, high_c=40)))


def test_the_shut_off_is_held_to_the_lesser_flow() -> None:
    found = checks(diesel_set(), weak_cold_diesel(pressure_kpa=5))
    cold, hot = found[CheckId.FLOW_COLD].value, found[CheckId.FLOW_HOT].value
    assert cold is not None
    assert hot is not None
    assert cold < 0.99 * hot
    assert found[CheckId.NOZZLE_MINIMUM_FLOW].value == min(cold, hot)
    assert found[CheckId.NOZZLE_MAXIMUM_FLOW].value == max(cold, hot)


def test_the_opening_pressure_is_held_to_the_lesser_pressure() -> None:
    asked = weak_cold_diesel(pressure_kpa=100, wanted_flow_l_min=30)
    values = []
    for low, high in ((-20, -20), (40, 40)):
        one = derived(asked.position, site(climate=Climate(low_c=low, high_c=high)))
        value = checks(diesel_set(no_pressure_device=True, opening_pressure_pa=9e4), one)[
            CheckId.NOZZLE_OPENING_PRESSURE
        ].value
        assert value is not None
        values.append(value)
    both = checks(diesel_set(no_pressure_device=True, opening_pressure_pa=9e4), asked)
    assert abs(values[0] - values[1]) > 100.0
    assert both[CheckId.NOZZLE_OPENING_PRESSURE].value == pytest.approx(min(values), rel=1e-12)


def test_the_liquid_rises_to_the_highest_filler() -> None:
    fillers = (Filler(label="high tank", distance_m=1.5, height_m=3.0),)
    asked = derived(position(filler=Filler(distance_m=2.0, height_m=0.9), other_fillers=fillers))
    assert rise_m(asked) == pytest.approx(3.0 - 2.1)
    line = next(line for line in checks(plain_set(), asked)[CheckId.FLOW_COLD].lines if line.result.name == "p_h")
    assert line.result.value > 0.0


def test_the_narrowest_hose_has_the_velocity_that_counts() -> None:
    # continuity: 30 L/min in 16 mm is 2.487 m/s
    asked = derived(position(supply=Supply(maximum_flow_l_min=30)))
    narrow = plain_set(whip_hose=whip(bore_m=0.016))
    assert checks(narrow, asked)[CheckId.VELOCITY].value == pytest.approx(2.487, abs=5e-4)


def test_the_velocity_sheet_tells_the_pressure_of_an_instant_stop() -> None:
    # Joukowsky: rho c v with E10 at 20 degC (745.4 kg/m3), 300 and 500 m/s, 2.2135 m/s (10 gpm in 3/4 in)
    asked = derived(position(supply=Supply(maximum_flow_l_min=37.85411784)), site(climate=Climate(low_c=20, high_c=20)))
    lines = checks(plain_set(), asked)[CheckId.VELOCITY].lines
    assert [line.result.value for line in lines[1:]] == pytest.approx(
        [745.4 * 300 * 2.2135, 745.4 * 500 * 2.2135], rel=1e-3
    )


def test_the_lowest_of_the_curves_in_use_and_the_tightest_bend_count() -> None:
    near, far = Filler(label="near", distance_m=1.0, height_m=0.9), Filler(label="far", distance_m=2.2, height_m=0.9)
    for first, second in ((near, far), (far, near)):
        found = checks(plain_set(), derived(position(filler=first, other_fillers=(second,))))
        assert found[CheckId.GROUND_CLEARANCE_IN_USE].text == "near"  # the nearer the filler, the more hose hangs
        assert found[CheckId.BEND_RADIUS].text == "near"


def test_a_bond_is_a_must_for_fuel_and_advice_for_def() -> None:
    # UL 87C issue 4 dropped the continuity test of DEF hanging hardware (secondary)
    open_circuit = plain_set(curb_hose=hose(resistance_ohm_m=1e6))
    fuel = checks(open_circuit, derived(position()))
    urea = checks(open_circuit, derived(position(DEF, 0)))
    for check in (CheckId.RESISTANCE_TOTAL, CheckId.RESISTANCE_PARTS):
        assert (fuel[check].outcome, fuel[check].severity) == (Outcome.FAILS, Severity.MUST)
        assert (urea[check].outcome, urea[check].severity) == (Outcome.FAILS, Severity.ADVICE)


def test_a_spout_as_wide_as_the_wrong_filler_enters_it() -> None:
    made = nozzle(liquids=frozenset({DIESEL}), service=NozzleService.DIESEL_CAR, spout_outside_diameter_m=0.0237)
    for opening, enters in ((0.0237, True), (0.0238, True), (0.0236, False)):
        rows = changed(tables(), FILLER_GASOLINE_OPENING=opening)
        found = judge_part(made, Slot.NOZZLE, derived(position(DIESEL, 0)), rows)
        assert (RuleId.SPOUT_WRONG_FILLER in [finding.rule_id for finding in found]) is enters


def test_a_shut_off_just_above_the_greatest_flow_never_works() -> None:
    asked = derived(position(supply=Supply(maximum_flow_l_min=30)))
    for litres, works in ((30.0, True), (30.1, False)):
        found = judge_part(nozzle(minimum_flow_m3_s=litres * LITRE_PER_MINUTE), Slot.NOZZLE, asked, tables())
        assert (RuleId.NOZZLE_MINIMUM_FLOW not in [finding.rule_id for finding in found]) is works


@pytest.mark.parametrize(
    ("wanted", "path"),
    [(VapourStatus.BALANCE, FlowPath.BALANCE), (VapourStatus.VACUUM_ASSIST, FlowPath.VACUUM_ASSIST)],
)
def test_a_breakaway_closes_the_vapour_path_of_either_kind(wanted: VapourStatus, path: FlowPath) -> None:
    asked = derived(position(vapour_wanted=wanted))
    for closes in (False, True):
        part = on_path(breakaway(closes_vapour=closes), path)
        found = [finding.rule_id for finding in judge_part(part, Slot.BREAKAWAY, asked, tables())]
        assert (RuleId.BREAKAWAY_CLOSES_VAPOUR in found) is not closes


def test_the_weaker_of_two_hoses_decides_in_a_drive_off() -> None:
    for whip_n, curb_n in ((1500.0, 3000.0), (3000.0, 1500.0)):
        made = chain(
            (Slot.WHIP_HOSE, whip(pull_strength_n=whip_n)),
            (Slot.BREAKAWAY, breakaway()),
            (Slot.CURB_HOSE, hose(pull_strength_n=curb_n)),
            (Slot.SWIVEL, swivel(pull_strength_n=4000.0)),
            (Slot.NOZZLE, nozzle(pull_strength_n=4000.0)),
        )
        assert checks(made, derived(position()))[CheckId.BREAKAWAY_DRIVE_OFF].value == 1500.0
