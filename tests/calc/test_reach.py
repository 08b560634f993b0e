"""Taut and needed lengths, whip hose, and a hose on a cord."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import minimize_scalar

from spoutline.calc.catenary import hang
from spoutline.calc.ranges import OutOfRange, RangeReason
from spoutline.calc.reach import hang_with_clamp, needed_length, taut_length, whip_length

METRES = st.floats(0.0, 20.0)


@given(METRES, st.floats(-5, 5))
def test_straight_way_is_pythagoras(distance: float, rise: float) -> None:
    reach = taut_length(distance_m=distance, height_difference_m=rise)
    assert reach.length_m == pytest.approx(math.sqrt(distance**2 + rise**2), abs=1e-9)


def test_way_round_one_corner_is_the_shortest_over_the_unrolled_wall() -> None:
    # Shortest polyline from (0, h1) over the corner at any height to the filler: found by scipy over that height.
    first, second, start, end = 1.2, 1.8, 2.0, 0.9
    found = minimize_scalar(
        lambda h: math.hypot(first, h - start) + math.hypot(second, end - h), bounds=(0, 3), method="bounded"
    )
    ours = taut_length(distance_m=0.0, height_difference_m=end - start, plan_legs_m=(first, second))
    assert ours.length_m == pytest.approx(found.fun, rel=1e-9)


def test_each_corner_takes_half_a_bend_radius() -> None:
    # engineering judgement: half a bend radius for each right-angle corner
    lengths = [
        taut_length(distance_m=0, height_difference_m=-1.1, plan_legs_m=(1.2, 1.8, 0.6), bend_radius_m=radius).length_m
        for radius in (0.0, 0.3)
    ]
    assert lengths[1] - lengths[0] == pytest.approx(0.3)


def test_legs_shorter_than_the_straight_distance_contradict_it() -> None:
    with pytest.raises(OutOfRange) as refused:
        taut_length(distance_m=3.0, height_difference_m=0.0, plan_legs_m=(1.0, 1.0))
    assert refused.value.reason is RangeReason.CONTRADICTS
    assert refused.value.field == "plan_legs_m"


@given(st.floats(0.1, 20), st.floats(0, 0.5), st.floats(0, 1))
def test_slack_is_the_greater_of_share_and_least(distance: float, share: float, least: float) -> None:
    taut = taut_length(distance_m=distance, height_difference_m=0.0)
    needed = needed_length(taut=taut, slack_fraction=share, slack_minimum_m=least)
    assert needed.length_m >= taut.length_m * (1 + share) - 1e-12
    assert needed.length_m >= taut.length_m + least - 1e-12
    assert needed.lines[0] == taut.lines[0]


def test_whip_hose_covers_the_arc_of_its_turn() -> None:
    # Quarter turn at 80 mm radius is 125.7 mm of arc; with a margin of 1.5 188.5 mm, by hand.
    whip = whip_length(bend_radius_m=0.08, turn_angle_rad=math.pi / 2, margin=1.5)
    assert whip.length_m == pytest.approx(0.1885, abs=1e-4)
    assert whip_length(bend_radius_m=0.08, turn_angle_rad=0.0, margin=1.0).length_m == 0.0


@pytest.mark.parametrize(
    ("field", "call"),
    [
        ("distance_m", lambda: taut_length(distance_m=-1.0, height_difference_m=0.0)),
        ("plan_legs_m[2]", lambda: taut_length(distance_m=0, height_difference_m=0, plan_legs_m=(1.0, 0.0))),
        ("bend_radius_m", lambda: whip_length(bend_radius_m=0.0, turn_angle_rad=1.0, margin=1.0)),
        ("turn_angle_rad", lambda: whip_length(bend_radius_m=0.1, turn_angle_rad=3.2, margin=1.0)),
        ("margin", lambda: whip_length(bend_radius_m=0.1, turn_angle_rad=1.0, margin=0.9)),
    ],
)
def test_impossible_reach_is_refused_by_name(field: str, call: object) -> None:
    assert callable(call)
    with pytest.raises(OutOfRange) as refused:
        call()
    assert refused.value.field == field


@given(st.floats(0.3, 3), st.floats(0.3, 0.7), st.floats(0.05, 0.95), st.floats(1.05, 2))
def test_cord_and_ends_carry_the_whole_hose(distance: float, fraction: float, place: float, slack: float) -> None:
    clamp_distance, clamp_height = place * distance, 2.4
    first = math.hypot(clamp_distance, clamp_height - 2.0) / fraction
    second = math.hypot(distance - clamp_distance, clamp_height - 1.1) / (1 - fraction)
    length = slack * max(first, second)
    clamped = hang_with_clamp(
        distance_m=distance,
        start_height_m=2.0,
        end_height_m=1.1,
        length_m=length,
        weight_n_m=10.0,
        clamp_distance_m=clamp_distance,
        clamp_height_m=clamp_height,
        clamp_fraction=fraction,
    )
    carried = clamped.first.start_load_n + clamped.second.end_load_n + clamped.cord_lift_n
    assert carried == pytest.approx(10.0 * length, rel=1e-6)
    points = clamped.points(30)
    assert points[0] == (0.0, 2.0)
    assert points[29] == pytest.approx((clamp_distance, clamp_height))
    assert points[-1] == pytest.approx((distance, 1.1))
    assert clamped.lowest_height_m <= min(point.height_m for point in points) + 1e-9
    # horizontal balance at the clamp: the cord gives the difference of the two horizontal tensions
    assert clamped.cord_side_pull_n == pytest.approx(
        clamped.second.horizontal_tension_n - clamped.first.horizontal_tension_n
    )


def test_clamp_above_the_outlet_lifts_the_hose_clear() -> None:
    # A loop of 3.6 m would drag below 1.1 m hook height; held up in the middle it does not: two doubled falls.
    free = hang(distance_m=0.3, start_height_m=2.1, end_height_m=1.1, length_m=3.6, weight_n_m=10.0)
    held = hang_with_clamp(
        distance_m=0.3,
        start_height_m=2.1,
        end_height_m=1.1,
        length_m=3.6,
        weight_n_m=10.0,
        clamp_distance_m=0.0,
        clamp_height_m=2.4,
        clamp_fraction=0.5,
    )
    assert held.lowest_height_m > free.lowest_height_m
    assert held.first.is_doubled
    assert held.first.lowest_height_m == pytest.approx((2.1 + 2.4 - 1.8) / 2)


def test_clamp_that_cannot_be_reached_is_refused() -> None:
    with pytest.raises(OutOfRange) as refused:
        hang_with_clamp(
            distance_m=0.3,
            start_height_m=2.1,
            end_height_m=1.1,
            length_m=3.0,
            weight_n_m=10.0,
            clamp_distance_m=2.0,
            clamp_height_m=2.4,
            clamp_fraction=0.5,
        )
    assert refused.value.reason is RangeReason.CANNOT_REACH
