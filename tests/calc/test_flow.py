"""The flow that a path delivers, its curve, and the surge of a stop."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.drawn_elements import ELEMENTS, STATES
from spoutline.calc.elements import Element, FlowCoefficient, HoseRun, LossCoefficient
from spoutline.calc.flow import NoFlowReason, flow_curve, solve_flow, surge_of_stop
from spoutline.calc.liquids import LiquidState, liquid_state
from spoutline.calc.losses import element_loss_pa
from spoutline.calc.ranges import OutOfRange, RangeReason
from spoutline.model.liquid import Liquid, LiquidFamily

PATHS = st.lists(ELEMENTS, min_size=1, max_size=6).map(tuple)
PRESSURES = st.floats(1e3, 5e5)
E10_STATE = liquid_state(Liquid(LiquidFamily.GASOLINE, 10.0), 20.0)


@given(PATHS, PRESSURES, st.floats(-3, 3), STATES)
def test_solved_flow_balances_the_pressure(
    path: tuple[Element, ...], pressure: float, rise: float, state: LiquidState
) -> None:
    solution = solve_flow(path, available_pressure_pa=pressure, rise_m=rise, state=state)
    static = state.density_kg_m3 * 9.80665 * rise
    if pressure <= static:
        assert (solution.flow_m3_s, solution.reason) == (0.0, NoFlowReason.HEAD_EXCEEDS_PRESSURE)
        return
    lost = math.fsum(element_loss_pa(element, solution.flow_m3_s, state) for element in path)
    assert lost + static == pytest.approx(pressure, abs=1.0)
    assert abs(solution.residual_pa) < 1.0
    assert solution.reason is None


@given(PATHS, PRESSURES, STATES)
def test_solved_flow_agrees_with_the_root_of_scipy(
    path: tuple[Element, ...], pressure: float, state: LiquidState
) -> None:
    ours = solve_flow(path, available_pressure_pa=pressure, rise_m=0.0, state=state).flow_m3_s
    theirs = brentq(lambda q: sum(element_loss_pa(e, q, state) for e in path) - pressure, 0.0, 10.0, xtol=1e-14)
    assert ours == pytest.approx(theirs, rel=1e-6)


@given(st.floats(0.1, 30), st.floats(0.01, 10), PRESSURES, STATES)
def test_more_hose_never_flows_more(length: float, more: float, pressure: float, state: LiquidState) -> None:
    flows = [
        solve_flow(
            (HoseRun(length_m=metres, bore_m=0.019, roughness_m=1e-5), FlowCoefficient(3.0)),
            available_pressure_pa=pressure,
            rise_m=0.0,
            state=state,
        ).flow_m3_s
        for metres in (length, length + more)
    ]
    assert flows[1] <= flows[0]


@given(PATHS, PRESSURES, st.floats(1.001, 3), STATES)
def test_more_pressure_flows_more(
    path: tuple[Element, ...], pressure: float, factor: float, state: LiquidState
) -> None:
    less, more = (
        solve_flow(path, available_pressure_pa=p, rise_m=0.0, state=state).flow_m3_s
        for p in (pressure, factor * pressure)
    )
    assert more > less


@given(PATHS, st.floats(-2, 2), STATES)
def test_flow_curve_passes_through_the_working_point(
    path: tuple[Element, ...], rise: float, state: LiquidState
) -> None:
    pressure = 2e5
    flow = solve_flow(path, available_pressure_pa=pressure, rise_m=rise, state=state).flow_m3_s
    points = flow_curve(path, rise_m=rise, state=state, flows=(0.0, flow / 2, flow, 2 * flow))
    pressures = [point.pressure_pa for point in points]
    assert points[2].pressure_pa == pytest.approx(pressure, abs=1.0)
    assert points[0].pressure_pa == pytest.approx(state.density_kg_m3 * 9.80665 * rise)
    assert pressures == sorted(pressures)


def test_pressure_falls_from_element_to_element_down_to_the_open_end() -> None:
    path = (HoseRun(length_m=3.66, bore_m=0.01905, roughness_m=1e-5), FlowCoefficient(10.0), FlowCoefficient(3.0))
    solution = solve_flow(path, available_pressure_pa=2e5, rise_m=0.5, state=E10_STATE)
    losses = [loss.pressure_pa for loss in solution.losses]
    inlet = solution.available_pressure_pa - solution.static_pressure_pa
    before = [inlet - math.fsum(losses[:index]) for index in range(len(path) + 1)]
    assert before == sorted(before, reverse=True)
    assert before[0] == pytest.approx(2e5 - 745.395 * 9.80665 * 0.5)
    assert before[-1] == pytest.approx(0.0, abs=1.0)


def test_kv_alone_gives_its_own_definition_back() -> None:
    # Kv is m3/h of water (1000 kg/m3) at 1 bar, by definition.
    water = LiquidState(density_kg_m3=1000.0, kinematic_viscosity_m2_s=1e-6, temperature_c=20.0)
    solution = solve_flow((FlowCoefficient(3.6),), available_pressure_pa=1e5, rise_m=0.0, state=water)
    assert solution.flow_m3_s == pytest.approx(1e-3, rel=1e-9)


@pytest.mark.parametrize("path", [(), (LossCoefficient(0.0, 0.02),)])
def test_path_without_loss_is_refused(path: tuple[Element, ...]) -> None:
    with pytest.raises(OutOfRange) as refused:
        solve_flow(path, available_pressure_pa=1e5, rise_m=0.0, state=E10_STATE)
    assert refused.value.reason is RangeReason.NO_RESISTANCE


def test_negative_pressure_is_refused() -> None:
    with pytest.raises(OutOfRange, match="available_pressure_pa"):
        solve_flow((FlowCoefficient(3.0),), available_pressure_pa=-1.0, rise_m=0.0, state=E10_STATE)


def test_surge_of_an_instant_stop_is_some_bar() -> None:
    # Joukowsky: 745.4 kg/m3 x 300 and 500 m/s x 2.2135 m/s = 4.95 and 8.25 bar, by hand.
    surge = surge_of_stop(velocity_m_s=2.2135, state=E10_STATE)
    assert surge.low_pa == pytest.approx(4.95e5, rel=1e-3)
    assert surge.high_pa == pytest.approx(8.25e5, rel=1e-3)
