"""Pressure loss of the elements: published tables, properties, worked lines."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.drawn_elements import ELEMENTS, FLOWS, HOSES, STATES
from spoutline.calc.elements import AnnularRun, Element, FlowCoefficient, HoseRun, LossCoefficient
from spoutline.calc.friction import FlowRegime
from spoutline.calc.liquids import LiquidState, liquid_state
from spoutline.calc.losses import element_loss, element_loss_pa, velocity_m_s
from spoutline.calc.ranges import OutOfRange
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.quantity import Dimension

# Exact by definition (NIST SP 811): US gallon per minute, pound-force per square inch, inch, foot.
GPM, PSI, INCH, FOOT = 3.785411784e-3 / 60.0, 6894.757293168, 0.0254, 0.3048
E10, DIESEL, B20 = (
    Liquid(LiquidFamily.GASOLINE, 10.0),
    Liquid(LiquidFamily.DIESEL, 0.0),
    Liquid(LiquidFamily.DIESEL, 20.0),
)

# A separate computation of the same published equations with fluids 1.3.1 and scipy: psi over 12 ft at 0.01 mm.
SEPARATE_LOSSES = [
    (E10, 20, 2.70, 1.09, 3.51),
    (E10, -20, 3.05, 1.25, 3.91),
    (DIESEL, 20, 4.23, 1.77, 5.22),
    (DIESEL, 0, 4.95, 2.08, 5.99),
    (DIESEL, -20, 5.63, 2.12, 7.37),
    (B20, 0, 5.16, 2.17, 6.21),
]


@pytest.mark.parametrize(("liquid", "temperature_c", "five_eighths", "three_quarters", "one"), SEPARATE_LOSSES)
def test_hose_loss_agrees_with_a_separate_computation(
    liquid: Liquid, temperature_c: float, five_eighths: float, three_quarters: float, one: float
) -> None:
    state = liquid_state(liquid, temperature_c)
    for bore, gpm, psi in ((0.625, 10, five_eighths), (0.75, 10, three_quarters), (1.0, 40, one)):
        run = HoseRun(length_m=12 * FOOT, bore_m=bore * INCH, roughness_m=1e-5)
        assert element_loss_pa(run, gpm * GPM, state) / PSI == pytest.approx(psi, abs=0.006)


# Velocities at 10 gpm in 5/8, 3/4 and 1 in, by hand from Q/A.
@pytest.mark.parametrize(
    ("bore", "gpm", "expected"), [(0.625, 10, 3.19), (0.75, 10, 2.21), (1, 10, 1.25), (1, 40, 4.98)]
)
def test_velocity_is_flow_over_area(bore: float, gpm: float, expected: float) -> None:
    assert velocity_m_s(gpm * GPM, bore * INCH) == pytest.approx(expected, abs=0.006)


def test_cold_diesel_in_a_car_hose_is_marked_as_transition() -> None:
    run = HoseRun(length_m=12 * FOOT, bore_m=0.75 * INCH, roughness_m=1e-5)
    loss = element_loss(run, 10 * GPM, liquid_state(DIESEL, -20.0))
    assert loss.regime is FlowRegime.TRANSITION
    assert loss.reynolds == pytest.approx(2870, rel=0.01)  # v D / nu = 2.2135 x 0.01905 / 14.7e-6, by hand
    assert any("uncertain" in line.note for line in loss.lines)


@given(ELEMENTS, STATES, FLOWS, st.floats(1e-4, 2))
def test_loss_rises_strictly_with_flow(element: Element, state: LiquidState, flow: float, step: float) -> None:
    assert element_loss_pa(element, flow * (1 + step), state) > element_loss_pa(element, flow, state) > 0.0


@given(ELEMENTS, STATES, FLOWS)
def test_lines_end_in_the_loss_that_is_returned(element: Element, state: LiquidState, flow: float) -> None:
    loss = element_loss(element, flow, state)
    parts = [line.result.value for line in loss.lines if line.result.dimension is Dimension.PRESSURE]
    assert math.fsum(parts) == pytest.approx(loss.pressure_pa, rel=1e-12)
    assert loss.pressure_pa == element_loss_pa(element, flow, state)


@given(HOSES, STATES, FLOWS)
def test_twice_the_hose_loses_twice(hose: HoseRun, state: LiquidState, flow: float) -> None:
    double = HoseRun(
        length_m=2 * hose.length_m,
        bore_m=hose.bore_m,
        roughness_m=hose.roughness_m,
        coil_diameter_m=hose.coil_diameter_m,
        coiled_length_m=2 * hose.coiled_length_m,
    )
    assert element_loss_pa(double, flow, state) == pytest.approx(2 * element_loss_pa(hose, flow, state), rel=1e-12)


@given(st.floats(0.5, 50), STATES, FLOWS)
def test_twice_the_flow_through_a_fitting_loses_four_times(kv: float, state: LiquidState, flow: float) -> None:
    element = FlowCoefficient(kv)
    once, twice = (element_loss_pa(element, factor * flow, state) for factor in (1, 2))
    assert twice == pytest.approx(4 * once, rel=1e-12)


@given(HOSES, STATES, FLOWS)
def test_a_coil_never_loses_less_than_straight_hose(hose: HoseRun, state: LiquidState, flow: float) -> None:
    assume(hose.coil_diameter_m is not None)
    straight = HoseRun(length_m=hose.length_m, bore_m=hose.bore_m, roughness_m=hose.roughness_m)
    assert element_loss_pa(hose, flow, state) >= element_loss_pa(straight, flow, state) * (1 - 1e-12)


def test_ring_in_laminar_flow_follows_the_textbook_constant() -> None:
    # Textbook f Re = 95.25 at d/D = 0.5; p = f L/Dh rho v^2/2 by hand: Re = 1000, v = Re nu / Dh = 1 m/s.
    state = LiquidState(density_kg_m3=800.0, kinematic_viscosity_m2_s=1e-5, temperature_c=0.0)
    ring = AnnularRun(length_m=3.0, outer_diameter_m=0.02, inner_diameter_m=0.01, roughness_m=0.0)
    flow = 1.0 * math.pi / 4 * (0.02**2 - 0.01**2)
    assert element_loss_pa(ring, flow, state) == pytest.approx(95.25 / 1000 * 3.0 / 0.01 * 400.0, rel=1e-4)


def test_nothing_flows_without_loss_or_lines_that_divide_by_zero() -> None:
    state = liquid_state(E10, 20.0)
    run = HoseRun(length_m=3.0, bore_m=0.019, roughness_m=1e-5)
    loss = element_loss(run, 0.0, state)
    assert (loss.pressure_pa, loss.velocity_m_s, loss.reynolds) == (0.0, 0.0, 0.0)


@pytest.mark.parametrize(
    ("field", "make"),
    [
        ("length_m", lambda: HoseRun(length_m=-1.0, bore_m=0.019, roughness_m=1e-5)),
        ("bore_m", lambda: HoseRun(length_m=1.0, bore_m=0.0, roughness_m=1e-5)),
        ("roughness_m", lambda: HoseRun(length_m=1.0, bore_m=0.02, roughness_m=0.002)),
        (
            "coiled_length_m",
            lambda: HoseRun(length_m=1.0, bore_m=0.02, roughness_m=0, coil_diameter_m=0.5, coiled_length_m=2.0),
        ),
        ("coiled_length_m", lambda: HoseRun(length_m=1.0, bore_m=0.02, roughness_m=0.0, coiled_length_m=0.5)),
        ("coil_diameter_m", lambda: HoseRun(length_m=1.0, bore_m=0.02, roughness_m=0.0, coil_diameter_m=0.03)),
        ("gap", lambda: AnnularRun(length_m=1, outer_diameter_m=0.02, inner_diameter_m=0.02, roughness_m=0)),
        ("kv", lambda: FlowCoefficient(0.0)),
        ("k", lambda: LossCoefficient(-1.0, 0.02)),
        ("flow_m3_s", lambda: element_loss_pa(FlowCoefficient(3.0), -1e-4, liquid_state(E10, 20.0))),
        ("flow_m3_s", lambda: element_loss(FlowCoefficient(3.0), math.nan, liquid_state(E10, 20.0))),
        ("flow_m3_s", lambda: velocity_m_s(math.inf, 0.02)),
    ],
)
def test_impossible_elements_are_refused_by_name(field: str, make: object) -> None:
    assert callable(make)
    with pytest.raises(OutOfRange) as refused:
        make()
    assert refused.value.field == field
