"""The hanging hose against independent solutions, identities and published examples."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq, minimize

from spoutline.calc.catenary import hang, longest_clear_length
from spoutline.calc.hang_sketch import SketchKind, sketch_of
from spoutline.calc.hanging_curve import HangingCurve
from spoutline.calc.ranges import OutOfRange, RangeReason


def _hang(distance: float, start: float, end: float, slack: float, weight: float = 10.0) -> HangingCurve:
    straight = math.hypot(distance, end - start)
    return hang(
        distance_m=distance,
        start_height_m=start,
        end_height_m=end,
        length_m=straight * (1 + slack) + 1e-6,
        weight_n_m=weight,
    )


CURVES = st.builds(
    _hang,
    st.floats(0.05, 20),
    st.floats(0.3, 6),
    st.floats(-3, 6),
    st.floats(1e-4, 3),
    st.floats(1, 40),
)


@given(CURVES)
def test_parameter_agrees_with_the_root_of_scipy(curve: HangingCurve) -> None:
    # The textbook equation sqrt(L^2 - dh^2) = 2 a sinh(d / 2a), solved in a and not in z.
    wanted = math.sqrt(curve.length_m**2 - (curve.end_height_m - curve.start_height_m) ** 2)
    half = curve.distance_m / 2
    low = half / 300.0
    a = brentq(lambda a: 2 * a * math.sinh(half / a) / wanted - 1, low, 1e6, xtol=1e-14, rtol=1e-14)
    assert curve.parameter_m == pytest.approx(a, rel=1e-5)


@given(CURVES)
def test_curve_starts_and_ends_where_it_should_and_has_its_length(curve: HangingCurve) -> None:
    a, x0 = curve.parameter_m, curve.vertex_at_m

    def height(x: float) -> float:
        return curve.start_height_m + a * (math.cosh((x - x0) / a) - math.cosh(x0 / a))

    assume(curve.distance_m / a < 40)
    assert height(curve.distance_m) == pytest.approx(curve.end_height_m, abs=1e-6)
    length = quad(lambda x: math.hypot(1, math.sinh((x - x0) / a)), 0, curve.distance_m, limit=400)[0]
    assert length == pytest.approx(curve.length_m, rel=1e-6)


@given(CURVES)
def test_tensions_differ_by_the_weight_of_the_height_difference(curve: HangingCurve) -> None:
    difference = curve.weight_n_m * (curve.start_height_m - curve.end_height_m)
    scale = max(curve.start_tension_n, curve.end_tension_n)
    assert curve.start_tension_n - curve.end_tension_n == pytest.approx(difference, abs=1e-7 * scale + 1e-9)


@given(CURVES)
def test_ends_carry_the_weight_of_the_hose(curve: HangingCurve) -> None:
    weight = curve.weight_n_m * curve.length_m
    assert curve.start_load_n + curve.end_load_n == pytest.approx(weight, rel=1e-6)
    for tension, load in ((curve.start_tension_n, curve.start_load_n), (curve.end_tension_n, curve.end_load_n)):
        assert tension == pytest.approx(math.hypot(curve.horizontal_tension_n, load), rel=1e-9)


@given(CURVES, st.floats(0.001, 2))
def test_longer_hose_never_raises_the_lowest_point(curve: HangingCurve, more: float) -> None:
    longer = hang(
        distance_m=curve.distance_m,
        start_height_m=curve.start_height_m,
        end_height_m=curve.end_height_m,
        length_m=curve.length_m + more,
        weight_n_m=curve.weight_n_m,
    )
    assert longer.lowest_height_m <= curve.lowest_height_m + 1e-9
    assert longer.horizontal_tension_n < curve.horizontal_tension_n


@given(CURVES, st.floats(1.01, 5))
def test_heavier_hose_pulls_more_and_hangs_the_same(curve: HangingCurve, factor: float) -> None:
    heavier = hang(
        distance_m=curve.distance_m,
        start_height_m=curve.start_height_m,
        end_height_m=curve.end_height_m,
        length_m=curve.length_m,
        weight_n_m=factor * curve.weight_n_m,
    )
    assert heavier.start_tension_n == pytest.approx(factor * curve.start_tension_n, rel=1e-12)
    assert heavier.lowest_height_m == curve.lowest_height_m


@given(CURVES)
def test_no_point_lies_below_the_lowest_and_steps_are_equal(curve: HangingCurve) -> None:
    points = curve.points(61)
    assert points[0] == (0.0, curve.start_height_m)
    assert points[-1] == (curve.distance_m, curve.end_height_m)
    assert min(point.height_m for point in points) >= curve.lowest_height_m - 1e-6
    chords = [math.dist(a, b) for a, b in itertools.pairwise(points)]
    step = curve.length_m / 60
    assert max(chords) <= step * (1 + 1e-6) + 1e-6
    assert math.fsum(chords) <= curve.length_m * (1 + 1e-6)


def test_chain_of_links_comes_to_rest_on_the_catenary() -> None:
    # A chain of 60 rigid links, its potential energy minimised by scipy: statics without the catenary formula.
    distance, start, end, length, links = 2.4, 2.0, 0.9, 3.66, 60
    step = length / links

    def joints(angles: list[float]) -> tuple[list[float], list[float]]:
        x, y = [0.0], [start]
        for angle in angles:
            x.append(x[-1] + step * math.cos(angle))
            y.append(y[-1] + step * math.sin(angle))
        return x, y

    def energy(angles: list[float]) -> float:
        _, y = joints(angles)
        return step * sum((a + b) / 2 for a, b in itertools.pairwise(y))

    constraints = (
        {"type": "eq", "fun": lambda angles: joints(angles)[0][-1] - distance},
        {"type": "eq", "fun": lambda angles: joints(angles)[1][-1] - end},
    )
    first = [-1.2 + 2.2 * number / links for number in range(links)]
    found = minimize(energy, first, constraints=constraints, method="SLSQP", options={"maxiter": 300, "ftol": 1e-10})
    lowest = min(joints(list(found.x))[1])
    curve = hang(distance_m=distance, start_height_m=start, end_height_m=end, length_m=length, weight_n_m=10.0)
    assert curve.lowest_height_m == pytest.approx(lowest, abs=0.004)


def test_doubled_hose_hangs_in_two_falls() -> None:
    # Statics: both falls carry their own weight; (2.2 + 1.2 - 3.0)/2 = 0.2 m.
    curve = hang(distance_m=0.0, start_height_m=2.2, end_height_m=1.2, length_m=3.0, weight_n_m=10.0)
    assert curve.is_doubled
    assert (curve.start_tension_n, curve.end_tension_n) == pytest.approx((20.0, 10.0))
    assert curve.point_at(1.0) == pytest.approx((0.0, 1.2))
    assert curve.point_at(2.5) == pytest.approx((0.0, 0.7))
    assert curve.length_below_m(0.5) == pytest.approx(0.6)
    assert curve.least_bend_radius_m == 0.0


@given(st.floats(0.5, 3), st.floats(0.5, 3), st.floats(0.1, 3))
def test_narrow_catenary_runs_into_the_doubled_hose(start: float, end: float, slack: float) -> None:
    length = abs(start - end) + slack
    narrow, doubled = (
        hang(distance_m=d, start_height_m=start, end_height_m=end, length_m=length, weight_n_m=10.0)
        for d in (2e-6 * length, 0.0)
    )
    assert narrow.lowest_height_m == pytest.approx(doubled.lowest_height_m, abs=1e-4)
    assert narrow.start_tension_n == pytest.approx(doubled.start_tension_n, rel=1e-3, abs=1e-3)


@given(st.floats(0.0, 8), st.floats(0.3, 4), st.floats(0.3, 4), st.floats(0.0, 0.25))
def test_longest_clear_hose_just_keeps_its_clearance(distance: float, start: float, end: float, clear: float) -> None:
    longest = longest_clear_length(distance_m=distance, start_height_m=start, end_height_m=end, clearance_m=clear)
    assert longest is not None
    assume(longest > math.hypot(distance, end - start) * (1 + 1e-9))
    curve = hang(distance_m=distance, start_height_m=start, end_height_m=end, length_m=longest, weight_n_m=10.0)
    assert curve.lowest_height_m == pytest.approx(clear, abs=1e-6)


@pytest.mark.parametrize(("start", "end"), [(2.0, 0.15), (0.1, 1.0)])
def test_no_hose_clears_the_ground_from_an_end_that_does_not(start: float, end: float) -> None:
    assert longest_clear_length(distance_m=2.4, start_height_m=start, end_height_m=end, clearance_m=0.15) is None


def test_dragging_length_is_the_part_of_the_curve_below_the_ground() -> None:
    curve = hang(distance_m=2.0, start_height_m=1.0, end_height_m=1.0, length_m=3.5, weight_n_m=10.0)
    a, x0 = curve.parameter_m, curve.vertex_at_m
    low = curve.lowest_height_m
    assert low < 0
    half = a * math.acosh(1 - low / a)  # where the curve crosses the ground
    below = quad(lambda x: math.cosh((x - x0) / a), x0 - half, x0 + half)[0]
    assert curve.length_below_m(0.0) == pytest.approx(below, rel=1e-9)
    assert curve.length_below_m(low) == 0.0
    assert curve.length_below_m(5.0) == pytest.approx(3.5, rel=1e-9)


def test_hose_below_a_quay_counts_only_what_lies_below_the_level() -> None:
    curve = hang(distance_m=3.0, start_height_m=1.0, end_height_m=-2.0, length_m=4.4, weight_n_m=10.0)
    steps = 20_000
    points = curve.points(steps + 1)
    counted = sum(1 for point in points if point.height_m < 0.0) * curve.length_m / steps
    assert curve.length_below_m(0.0) == pytest.approx(counted, abs=1e-3)


def test_taut_hose_tells_the_missing_length() -> None:
    with pytest.raises(OutOfRange) as refused:
        hang(distance_m=3.0, start_height_m=2.0, end_height_m=0.9, length_m=3.1, weight_n_m=10.0)
    assert refused.value.reason is RangeReason.CANNOT_REACH
    assert refused.value.missing == pytest.approx(math.hypot(3.0, 1.1) - 3.1)  # straight distance 3.195 m


@pytest.mark.parametrize(
    ("field", "changed"),
    [
        ("distance_m", {"distance_m": -0.1}),
        ("length_m", {"length_m": 0.0}),
        ("weight_n_m", {"weight_n_m": -1.0}),
        ("start_height_m", {"start_height_m": math.nan}),
    ],
)
def test_impossible_geometry_is_refused_by_name(field: str, changed: dict[str, float]) -> None:
    usual = {"distance_m": 2.4, "start_height_m": 2.0, "end_height_m": 0.9, "length_m": 3.66, "weight_n_m": 10.0}
    with pytest.raises(OutOfRange) as refused:
        hang(**{**usual, **changed})
    assert refused.value.field == field


@pytest.mark.parametrize("count", [1, 0])
def test_a_curve_needs_two_points(count: int) -> None:
    with pytest.raises(OutOfRange, match="count"):
        _hang(2.0, 2.0, 1.0, 0.3).points(count)


def test_bend_radius_of_a_curve_without_inner_vertex_is_that_of_its_end() -> None:
    # Published statics example: 20.7 m between (0, 10) and (20, 15), vertex outside the span; radius a cosh^2(x/a).
    curve = hang(distance_m=20.0, start_height_m=10.0, end_height_m=15.0, length_m=20.7, weight_n_m=10.0)
    assert curve.vertex_at_m < 0.0
    assert curve.least_bend_radius_m == pytest.approx(
        curve.parameter_m * math.cosh(curve.vertex_at_m / curve.parameter_m) ** 2
    )


@given(CURVES, st.floats(0.05, 1.5))
def test_drawn_hose_keeps_ends_length_and_bend(curve: HangingCurve, radius: float) -> None:
    count = 400
    drawn = sketch_of(curve, minimum_bend_radius_m=radius, count=count)
    assert drawn.is_approximate == (curve.least_bend_radius_m < radius)
    assert drawn.points[0] == pytest.approx((0.0, curve.start_height_m), abs=1e-6)
    assert drawn.points[-1] == pytest.approx((curve.distance_m, curve.end_height_m), abs=1e-6)
    if drawn.kind is not SketchKind.ARC:
        assert drawn.points == curve.points(count)
        return
    step = curve.length_m / (count - 1)
    assert min(point.height_m for point in drawn.points) >= drawn.lowest_height_m - 1e-9
    assert min(point.height_m for point in drawn.points) <= drawn.lowest_height_m + step
    # a chord of a step on a circle of the least radius is the shortest there can be
    chords = [math.dist(a, b) for a, b in zip(drawn.points, drawn.points[1:], strict=False)]
    assert min(chords) >= 2 * radius * math.sin(min(step / (2 * radius), math.pi / 2)) - 1e-6
    assert max(chords) <= step + 1e-6


def test_narrow_hook_draws_a_wide_bow() -> None:
    # d = 2 r: two plumb falls and half a circle; lowest = h1 - (L - pi r + dh)/2 - r, by hand: -0.0354 m.
    curve = hang(distance_m=0.5, start_height_m=2.1, end_height_m=1.1, length_m=3.5, weight_n_m=10.0)
    drawn = sketch_of(curve, minimum_bend_radius_m=0.25, count=50)
    assert drawn.kind is SketchKind.ARC
    assert drawn.lowest_height_m == pytest.approx(2.1 - (3.5 - math.pi * 0.25 + 1.0) / 2 - 0.25, abs=1e-9)
