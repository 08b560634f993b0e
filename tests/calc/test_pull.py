"""Load on the breakaway: worked by hand, and properties."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.calc.pull import (
    ServiceLoad,
    drive_off,
    filled_weight_line,
    service_load,
    service_margin,
)
from spoutline.calc.ranges import OutOfRange

MASSES, BORES, DENSITIES = st.floats(0.1, 3), st.floats(0.01, 0.04), st.floats(650, 1110)


def _load(weight: float = 8.458, length: float = 3.66, rigid: float = 1.9, **changed: float | None) -> ServiceLoad:
    usual: dict[str, float | None] = {
        "in_use_tension_n": None,
        "user_tug_n": 100.0,
        "pressure_pa": 344_738.0,
        "seal_diameter_m": 0.019,
    }
    return service_load(weight_n_m=weight, length_below_m=length, rigid_mass_kg=rigid, **{**usual, **changed})  # type: ignore[arg-type]


@given(MASSES, BORES, DENSITIES)
def test_filled_hose_weighs_its_mass_and_its_liquid(mass: float, bore: float, density: float) -> None:
    litres_m = math.pi / 4 * bore**2
    weight = filled_weight_line(hose_mass_kg_m=mass, bore_m=bore, density_kg_m3=density).result.value
    assert weight == pytest.approx(9.80665 * (mass + density * litres_m), rel=1e-12)


@given(MASSES, st.floats(1.001, 3), BORES, DENSITIES)
def test_heavier_hose_never_lowers_the_pull(mass: float, factor: float, bore: float, density: float) -> None:
    loads = [
        _load(weight=filled_weight_line(hose_mass_kg_m=kg_m, bore_m=bore, density_kg_m3=density).result.value)
        for kg_m in (mass, factor * mass)
    ]
    assert loads[1].total_n >= loads[0].total_n


def test_vapour_tube_takes_its_room_from_the_liquid() -> None:
    line = filled_weight_line(hose_mass_kg_m=0.8, bore_m=0.022, density_kg_m3=745.4, inner_tube_diameter_m=0.012)
    # 9.80665 (0.8 + 745.4 pi/4 (0.022^2 - 0.012^2)) = 9.797 N/m, by hand
    assert line.result.value == pytest.approx(9.797, abs=5e-3)


def test_service_load_of_the_worked_example() -> None:
    # By hand: 8.458 x 3.66 + 9.80665 x 1.9 = 49.6 N; 50 psi on a 19 mm seal 97.7 N; tug 100 N.
    load = _load()
    assert load.hanging_n == pytest.approx(49.6, abs=0.05)
    assert load.thrust_n == pytest.approx(97.7, abs=0.1)
    assert load.total_n == pytest.approx(247.3, abs=0.2)
    # 445 N (100 lbf) over that load: about 1.8
    margin = service_margin(separation_minimum_n=445.0, load=load)
    assert margin.ratio == pytest.approx(1.8, abs=0.01)
    assert margin.lines[-1].result.value == margin.ratio


def test_balanced_coupling_has_no_thrust() -> None:
    assert _load(seal_diameter_m=None).thrust_n == 0.0


@given(st.floats(0, 300))
def test_larger_of_hanging_weight_and_curve_tension_counts(tension: float) -> None:
    load = _load(in_use_tension_n=tension)
    assert load.weight_n == max(load.hanging_n, tension)
    assert load.total_n == pytest.approx(load.weight_n + load.user_tug_n + load.thrust_n)


# 1/cos by table: 0, 45 and 60 degrees cost a factor of 1, 1.4142 and 2; 1557 N is 350 lbf; 1.25 x 1557 = 1946 N.
@pytest.mark.parametrize(("degrees", "line_pull_n", "bear_n"), [(0, 1557, 1946), (45, 2202, 2752), (60, 3114, 3893)])
def test_slanting_pull_needs_more_force(degrees: float, line_pull_n: float, bear_n: float) -> None:
    result = drive_off(separation_n=1557.0, angle_rad=math.radians(degrees), strength_margin=1.25, arm_m=0.2)
    assert result.line_pull_n == pytest.approx(line_pull_n, abs=1)
    assert result.required_strength_n == pytest.approx(bear_n, abs=1)
    assert math.hypot(1557.0, result.side_load_n) == pytest.approx(result.line_pull_n)
    assert result.moment_n_m == pytest.approx(0.2 * result.side_load_n)


@given(st.floats(1, 5000), st.floats(0, 1.5), st.floats(0.001, 0.05))
def test_steeper_angle_never_pulls_less(force: float, angle: float, more: float) -> None:
    pulls = [drive_off(separation_n=force, angle_rad=a, strength_margin=1.0).line_pull_n for a in (angle, angle + more)]
    assert pulls[1] > pulls[0] >= force


@pytest.mark.parametrize(
    ("field", "call"),
    [
        ("angle_rad", lambda: drive_off(separation_n=1.0, angle_rad=math.pi / 2, strength_margin=1.0)),
        ("strength_margin", lambda: drive_off(separation_n=1.0, angle_rad=0.0, strength_margin=0.9)),
        ("separation_n", lambda: drive_off(separation_n=0.0, angle_rad=0.0, strength_margin=1.0)),
        ("hose_mass_kg_m", lambda: filled_weight_line(hose_mass_kg_m=-1.0, bore_m=0.02, density_kg_m3=800.0)),
        (
            "bore_m - inner_tube_diameter_m",
            lambda: filled_weight_line(
                hose_mass_kg_m=1.0, bore_m=0.02, density_kg_m3=800.0, inner_tube_diameter_m=0.02
            ),
        ),
        ("user_tug_n", lambda: _load(user_tug_n=-1.0)),
        ("in_use_tension_n", lambda: _load(in_use_tension_n=-1.0)),
        ("seal_diameter_m", lambda: _load(seal_diameter_m=0.0)),
        ("pressure_pa", lambda: _load(seal_diameter_m=None, pressure_pa=-1.0)),
        ("total_n", lambda: service_margin(separation_minimum_n=1.0, load=_load(0, 0, 0, user_tug_n=0, pressure_pa=0))),
    ],
)
def test_impossible_loads_are_refused_by_name(field: str, call: object) -> None:
    assert callable(call)
    with pytest.raises(OutOfRange) as refused:
        call()
    assert refused.value.field == field
