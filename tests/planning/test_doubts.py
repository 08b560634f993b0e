"""How sure verdicts are: the values at which they change, against hand calculations; what is measured is not listed.

Hand calculations use statics and geometry alone; the figures are those of the invented parts (lengths 0.3, 0.1, 3.0,
0.1 and 0.3 m, strengths 3000 N, rated 345 kPa and -29 C), the margins those of the rule rows named beside them.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from rules.invented_parts import breakaway, nozzle, plain_set, whip
from rules.stations import RESOURCES, position, site, tables
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.check import CheckId
from spoutline.model.doubt import Flip, Judged, PositionDoubts, Standing, StationDoubts, UnmeasuredFigure
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.model.plan import HangingSet, PlanStatus, PositionPlan
from spoutline.model.requirement import Requirement, RequirementId
from spoutline.model.site_figure import PlausibleRange, SiteFigure, SiteRanges
from spoutline.model.survey import DispenserType, Duty, Filler, Outlet, Position, Site, Supply, Survey
from spoutline.planning.sets.doubts import position_doubts, station_doubts, unmeasured
from spoutline.planning.sets.judgement import SetJudge
from spoutline.rules.derive.requirement import requirement_for
from spoutline.ruletables.site_ranges import load_site_ranges, site_ranges_from_toml

LITRE_PER_MINUTE = 1e-3 / 60
RANGES = load_site_ranges(RESOURCES)
WIDE = {  # SI: wide enough for every value worked out below
    SiteFigure.OUTLET_STRENGTH: (400.0, 4000.0),
    SiteFigure.SUPPLY_PRESSURE: (50e3, 1500e3),
    SiteFigure.SUPPLY_FLOW: (5 * LITRE_PER_MINUTE, 60 * LITRE_PER_MINUTE),
    SiteFigure.FILLER_DISTANCE: (0.5, 6.0),
    SiteFigure.CLIMATE_LOW: (-50.0, 5.0),
}


def ranges(**changed: tuple[float, float]) -> SiteRanges:
    ends = {**WIDE, **{SiteFigure[name]: pair for name, pair in changed.items()}}
    rows = tuple(
        replace(row, least=ends[row.figure][0], most=ends[row.figure][1]) if row.figure in ends else row
        for row in RANGES.rows
    )
    return SiteRanges("test", rows)


def planned(asked: Position, hanging_set: HangingSet, at: Site | None = None) -> PositionPlan:
    requirement = requirement_for(asked, at or site(), tables())
    assert isinstance(requirement, Requirement)
    return PositionPlan(
        position=asked,
        status=PlanStatus.FITS,
        requirement=requirement,
        refusal=None,
        chosen=SetJudge(requirement, tables()).judged(hanging_set),
        alternatives=(),
        conflict=None,
        counts=(),
        accessories=(),
    )


def doubts(
    asked: Position | None = None, hanging_set: HangingSet | None = None, at: Site | None = None, **changed: Any
) -> PositionDoubts:
    plan = planned(asked or position(), hanging_set or plain_set(), at)
    found = position_doubts(plan, at or site(), tables(), ranges(**changed))
    assert found is not None
    return found


def figure(found: PositionDoubts, named: SiteFigure) -> UnmeasuredFigure:
    return next(one for one in found.figures if one.figure is named)


def flip(found: PositionDoubts, named: SiteFigure, judged: Judged, after: Standing = Standing.FAILS) -> Flip:
    return next(one for one in figure(found, named).flips if one.judged is judged and one.after is after)


# values at which verdicts change


@settings(max_examples=up_to(20, fewest=5), deadline=None)
@given(st.floats(600.0, 1400.0))
def test_the_outlet_must_bear_the_greatest_pull_with_its_margin(greatest_n: float) -> None:
    # breakaway.strength_margin is 1.25: the outlet bears at least 1.25 x what separates an omnidirectional breakaway
    parts = plain_set(breakaway=breakaway(separation_maximum_n=greatest_n, omnidirectional=True))
    found = flip(doubts(hanging_set=parts), SiteFigure.OUTLET_STRENGTH, CheckId.BREAKAWAY_DRIVE_OFF)
    assert found.at_value == pytest.approx(1.25 * greatest_n, rel=1e-8)
    assert not found.above
    assert found.severity is Severity.MUST
    assert found.before is Standing.HOLDS


@settings(max_examples=up_to(20, fewest=5), deadline=None)
@given(st.floats(1.6, 2.9), st.floats(0.4, 1.4))
def test_the_reach_ends_where_the_straight_way_and_its_slack_take_the_whole_chain(
    outlet_m: float, fill_m: float
) -> None:
    # whip 0.3 + breakaway 0.1 + hose 3.0 + swivel 0.1 + nozzle 0.3; slack is the greater of 5 % and 0.15 m (reach.toml)
    length = 3.8
    taut = min(length / 1.05, length - 0.15)
    farthest = math.sqrt(taut**2 - (outlet_m - fill_m) ** 2)
    asked = position(outlet=Outlet(height_m=outlet_m), filler=Filler(height_m=fill_m))
    found = flip(doubts(asked), SiteFigure.FILLER_DISTANCE, CheckId.HOSE_REACH)
    assert found.above
    assert found.at_value == pytest.approx(farthest, rel=1e-8)


@pytest.mark.parametrize(("outlet_m", "fill_m"), [(2.1, 0.9), (2.6, 0.6)])
def test_a_further_filler_that_nobody_measured_ends_the_reach_where_the_main_one_would(
    outlet_m: float, fill_m: float
) -> None:
    # the same triangle as above, of the filler on the far side; the main one is measured and lies near
    taut = min(3.8 / 1.05, 3.8 - 0.15)
    farthest = math.sqrt(taut**2 - (outlet_m - fill_m) ** 2)
    near = Filler(label="near side", distance_m=0.8, height_m=0.9)
    asked = position(
        outlet=Outlet(height_m=outlet_m), filler=near, other_fillers=(Filler(label="far side", height_m=fill_m),)
    )
    found = doubts(asked)
    beside = [one for one in found.figures if one.filler]
    assert [(one.figure, one.filler) for one in beside] == [(SiteFigure.FILLER_DISTANCE, "far side")]
    assert not any(one.figure is SiteFigure.FILLER_DISTANCE and not one.filler for one in found.figures)
    ends = [one for one in beside[0].flips if one.judged is CheckId.HOSE_REACH]
    assert [one.above for one in ends] == [True]
    assert ends[0].at_value == pytest.approx(farthest, rel=1e-8)
    station = station_doubts([planned(asked, plain_set())], site(), tables(), ranges())
    line = next(one for one in station.lines if one.filler == "far side")
    assert line.figure is SiteFigure.FILLER_DISTANCE


def test_pressure_on_the_seal_takes_the_same_load_at_pressures_that_are_as_the_areas() -> None:
    # W + F_u + p pi D^2 / 4 = F_sep / 1.5 with all but p and D the same: p1 D1^2 = p2 D2^2
    pressures = []
    for diameter in (0.020, 0.025):
        parts = plain_set(breakaway=breakaway(seal_diameter_m=diameter))
        found = [
            one
            for one in figure(doubts(hanging_set=parts), SiteFigure.SUPPLY_PRESSURE).flips
            if one.judged is CheckId.BREAKAWAY_SERVICE_LOAD
        ]
        assert [one.severity for one in found] == [Severity.SHOULD, Severity.MUST]  # good practice first, then a must
        assert found[0].at_value < found[1].at_value
        # from the margin of 1.5 to parting in use, the thrust alone has grown: F_sep (1 - 1/1.5) = 500 / 3 N
        thrust = (found[1].at_value - found[0].at_value) * math.pi * diameter**2 / 4
        assert thrust == pytest.approx(500.0 / 3.0, rel=1e-7)
        pressures.append(found[0].at_value)
    assert pressures[0] * 0.020**2 == pytest.approx(pressures[1] * 0.025**2, rel=1e-8)


def test_flow_falls_short_where_the_dispenser_gives_less_than_is_wanted() -> None:
    asked = position(supply=Supply(pressure_kpa=300, wanted_flow_l_min=30))
    found = flip(doubts(asked), SiteFigure.SUPPLY_FLOW, CheckId.FLOW_COLD)
    assert found.at_value == pytest.approx(30 * LITRE_PER_MINUTE, rel=1e-8)
    assert not found.above


def test_the_pressure_that_opens_a_nozzle_falls_by_what_the_dispenser_gives_less() -> None:
    # p_nozzle = p_dispenser - losses at a fixed flow - rise: a pascal less at the outlet is one less at the nozzle
    asked = position(supply=Supply(maximum_flow_l_min=40, wanted_flow_l_min=30))
    opening = [60e3, 90e3]
    at = [
        flip(
            doubts(asked, plain_set(nozzle=nozzle(no_pressure_device=True, opening_pressure_pa=one))),
            SiteFigure.SUPPLY_PRESSURE,
            CheckId.NOZZLE_OPENING_PRESSURE,
        ).at_value
        for one in opening
    ]
    assert at[1] - at[0] == pytest.approx(30e3, rel=1e-6)


def test_lines_that_parts_are_held_to_without_a_check_are_looked_at_too() -> None:
    cold = doubts(at=Site(name="Quillmere Stop"))
    assert flip(cold, SiteFigure.CLIMATE_LOW, RequirementId.TEMPERATURE).at_value == pytest.approx(-29.0, abs=1e-5)
    found = flip(doubts(), SiteFigure.SUPPLY_PRESSURE, RequirementId.PRESSURE)
    assert found.at_value == pytest.approx(345e3, rel=2e-6)  # their rating; rules on parts let a millionth pass
    assert found.above


def test_a_verdict_that_fails_as_assumed_holds_beyond_the_same_value() -> None:
    parts = plain_set(breakaway=breakaway(separation_maximum_n=1700.0, omnidirectional=True))
    found = flip(doubts(hanging_set=parts), SiteFigure.OUTLET_STRENGTH, CheckId.BREAKAWAY_DRIVE_OFF, Standing.HOLDS)
    assert found.before is Standing.FAILS  # 1.25 x 1700 N = 2125 N is more than the 437.5 lbf that are assumed
    assert found.above
    assert found.at_value == pytest.approx(2125.0, rel=1e-8)


def test_on_either_side_of_the_value_the_checks_say_what_is_told() -> None:
    parts = plain_set(breakaway=breakaway(seal_diameter_m=0.02), whip=whip())
    for one in doubts(hanging_set=parts).figures:
        for told in one.flips:
            if told.judged is not CheckId.BREAKAWAY_DRIVE_OFF:
                continue
            for strength, stands in ((told.at_value - 0.01, Standing.FAILS), (told.at_value + 0.01, Standing.HOLDS)):
                asked = position(outlet=Outlet(pull_strength_n=strength))
                chosen = planned(asked, parts).chosen
                assert chosen is not None
                check = next(check for check in chosen.checks if check.id is told.judged)
                assert check.passes is (stands is Standing.HOLDS)


# ranges


def test_what_lies_beyond_the_range_is_not_told_and_what_is_assumed_belongs_to_it() -> None:
    narrow = figure(doubts(OUTLET_STRENGTH=(1900.0, 2100.0)), SiteFigure.OUTLET_STRENGTH)
    assert narrow.flips == ()
    beside = figure(doubts(OUTLET_STRENGTH=(2500.0, 3000.0)), SiteFigure.OUTLET_STRENGTH)
    assert beside.assumed == pytest.approx(437.5 * 4.4482216152605)  # outlet.pull_strength; NIST SP 811
    assert (beside.least, beside.most) == (beside.assumed, 3000.0)


def test_a_value_between_what_is_assumed_and_the_range_is_told_once() -> None:
    # 1.25 x 1700 N = 2125 N lies between the 1946 N that are assumed and a range that begins above it
    parts = plain_set(breakaway=breakaway(separation_maximum_n=1700.0, omnidirectional=True))
    found = figure(doubts(hanging_set=parts, OUTLET_STRENGTH=(2500.0, 3000.0)), SiteFigure.OUTLET_STRENGTH)
    assert [one.at_value for one in found.flips] == [pytest.approx(2125.0)]


def test_a_range_ends_where_nothing_can_be_worked_out() -> None:
    # two legs of 1.5 m round a corner: no filler further than 3 m straight away lies at their end
    asked = position(filler=Filler(plan_legs_m=(1.5, 1.5)))
    found = figure(doubts(asked, FILLER_DISTANCE=(0.5, 6.0)), SiteFigure.FILLER_DISTANCE)
    assert 2.0 <= found.most <= 3.0
    assert found.least == 0.5


def test_margins_are_the_least_in_the_range_and_the_worst_figure_is_named() -> None:
    found = doubts(OUTLET_STRENGTH=(1500.0, 2500.0))
    one = next(check for check in found.checks if check.check is CheckId.BREAKAWAY_DRIVE_OFF)
    assert one.figure is SiteFigure.OUTLET_STRENGTH
    assert one.least_margin == pytest.approx(1500.0 - 1.25 * 900.0)
    assert one.margin == pytest.approx(437.5 * 4.4482216152605 - 1.25 * 900.0)
    assert one.flips_by == ()
    untouched = next(check for check in found.checks if check.check is CheckId.RESISTANCE_TOTAL)
    assert untouched.figure is None
    assert untouched.least_margin == untouched.margin


def test_the_row_of_the_liquid_stands_before_that_of_the_duty_and_both_before_the_general_one() -> None:
    truck = position(LiquidFamily.DIESEL, 5, duty=Duty.TRUCK)
    of_def = position(LiquidFamily.DEF, 0, duty=Duty.TRUCK)
    flow = SiteFigure.SUPPLY_FLOW
    assert RANGES.of(flow, truck).duty is Duty.TRUCK
    assert RANGES.of(flow, of_def).family is LiquidFamily.DEF
    assert RANGES.of(flow, position()).duty is None
    assert RANGES.of(SiteFigure.HOOK_HEIGHT, truck).duty is None


def test_no_range_claims_a_standard_and_each_holds_what_is_usually_assumed() -> None:
    assert {row.status for row in RANGES.rows} <= {LimitStatus.COMMON_PRACTICE, LimitStatus.JUDGEMENT}
    usual = position()
    for one in SiteFigure:
        stated, row = one.stated_si(usual, Site(name="Quillmere Stop")), RANGES.of(one, usual)
        assert stated is None or row.least <= stated <= row.most, one


@pytest.mark.parametrize(
    ("change", "named"),
    [
        (('unit = "lbf"', 'unit = "gpm"'), "unit"),
        (("least = 200", "least = 900"), "least"),
        (('figure = "outlet.height_m"', 'figure = "outlet.colour"'), "figure"),
        (('figure = "hook.height_m"', 'figure = "hook.height_m"\nduty = "truck"'), "hook.height_m"),
    ],
)
def test_a_fault_of_the_table_is_named(change: tuple[str, str], named: str) -> None:
    text = (RESOURCES / "rules" / "site_ranges.toml").read_text(encoding="utf-8")
    assert change[0] in text
    with pytest.raises(InputFault) as fault:
        site_ranges_from_toml(text.replace(*change, 1), "site_ranges.toml")
    assert any(named in problem.field for problem in fault.value.problems)


# what is listed, and in which order


def test_a_measured_figure_is_not_listed_whatever_its_value() -> None:
    silent = unmeasured(position(), Site(name="Quillmere Stop"))
    assert {SiteFigure.OUTLET_STRENGTH, SiteFigure.FILLER_DISTANCE, SiteFigure.CLIMATE_LOW} <= set(silent)
    asked = position(
        outlet=Outlet(height_m=2.1, pull_strength_n=1946.0),
        filler=Filler(distance_m=2.0),
        supply=Supply(pressure_kpa=200.0),
    )
    given = unmeasured(asked, site())  # whose climate is answered
    assert not {
        *(SiteFigure.OUTLET_HEIGHT, SiteFigure.OUTLET_STRENGTH, SiteFigure.FILLER_DISTANCE),
        *(SiteFigure.SUPPLY_PRESSURE, SiteFigure.CLIMATE_LOW, SiteFigure.CLIMATE_HIGH),
    } & set(given)
    assert {SiteFigure.FILLER_HEIGHT, SiteFigure.SUPPLY_FLOW} <= set(given)
    assert {one.figure for one in doubts(asked).figures} == set(given)


def test_what_is_answered_as_not_known_is_listed_and_what_the_dispenser_type_says_is_not() -> None:
    unknown = position(outlet=Outlet(pull_strength_n=None))
    assert SiteFigure.OUTLET_STRENGTH in unmeasured(unknown, site())
    known = DispenserType(name="Thistle 2", outlet=Outlet(pull_strength_n=2500.0))
    assert SiteFigure.OUTLET_STRENGTH not in unmeasured(position(dispenser_type=known), site())


def test_figures_of_what_is_not_there_are_not_listed() -> None:
    assert not {SiteFigure.DRUM_DIAMETER, SiteFigure.RETRACTOR_FORCE} & set(unmeasured(position(), site()))
    on_reel = Position.model_validate({"label": "1", "duty": "reel"})
    found = set(unmeasured(on_reel, site()))
    assert SiteFigure.DRUM_DIAMETER in found
    assert SiteFigure.HOOK_HEIGHT not in found


def test_musts_come_first_then_more_verdicts_then_the_least_margin() -> None:
    found = doubts()
    ranks = [(-one.musts, -len(one.flips)) for one in found.figures]
    assert ranks == sorted(ranks)
    alike = [one for one in found.figures if not one.flips and one.nearest is not None]
    shares = [one.nearest.least_share for one in alike if one.nearest is not None]
    assert shares == sorted(shares, key=lambda share: share or 0.0)
    assert len(found.first) <= 3
    assert found.first == found.figures[: len(found.first)]


def test_a_position_without_a_set_has_no_doubts() -> None:
    plan = replace(planned(position(), plain_set()), chosen=None)
    assert position_doubts(plan, site(), tables(), RANGES) is None
    assert station_doubts((plan,), site(), tables(), RANGES) == StationDoubts(())


def test_a_station_adds_up_its_positions_and_equal_questions_get_equal_answers() -> None:
    plans = [planned(position(label=label), plain_set()) for label in ("1A", "1B")]
    measured = position(label="2A", outlet=Outlet(pull_strength_n=1946.0968))
    plans.append(planned(measured, plain_set()))
    found = station_doubts(plans, site(), tables(), ranges())
    assert [one.label for one in found.positions] == ["1A", "1B", "2A"]
    assert found.positions[0].figures == found.positions[1].figures
    line = next(line for line in found.lines if line.figure is SiteFigure.OUTLET_STRENGTH)
    assert line.labels == ("1A", "1B")  # at 2A it was measured
    assert line.flips == 2 * len(figure(found.positions[0], SiteFigure.OUTLET_STRENGTH).flips)
    assert [(-one.musts, -one.flips) for one in found.lines] == sorted((-one.musts, -one.flips) for one in found.lines)


def test_a_listener_can_stop_it() -> None:
    class Impatient:
        def on_progress(self, done: int, total: int) -> None:
            assert done <= total

        def should_stop(self) -> bool:
            return True

    with pytest.raises(Cancelled):
        station_doubts([planned(position(), plain_set())], site(), tables(), RANGES, Impatient())


def test_ranges_are_in_the_units_of_the_core() -> None:
    row = RANGES.of(SiteFigure.SUPPLY_PRESSURE, position())
    assert row.least == pytest.approx(25 * 6894.757293168)  # psi, NIST SP 811
    assert isinstance(row, PlausibleRange)
    survey: Survey = demo_survey("small_town")
    stated = SiteFigure.SUPPLY_FLOW.stated_si(survey.positions[0], survey.site)
    asked = survey.positions[0].supply.maximum_flow_l_min
    assert stated == (None if asked is None else pytest.approx(asked * LITRE_PER_MINUTE))
