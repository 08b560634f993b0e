"""Friction factors against outside solutions, and their continuity."""

from __future__ import annotations

import math

import fluids
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from spoutline.calc.friction import (
    FlowRegime,
    annulus_laminar_constant,
    coil_critical_reynolds,
    coil_friction_factor,
    friction_factor,
    regime_of,
)
from spoutline.calc.ranges import OutOfRange

ROUGHNESS = st.floats(0.0, 0.05)


@given(st.floats(4000, 1e7), ROUGHNESS)
def test_turbulent_factor_solves_the_colebrook_equation(reynolds: float, roughness: float) -> None:
    def residual(root: float) -> float:  # root = 1/sqrt(f); Colebrook 1939, solved here by scipy's Brent
        return root + 2.0 * math.log10(roughness / 3.7 + 2.51 * root / reynolds)

    root = brentq(residual, 1.0, 40.0, xtol=1e-13)
    assert friction_factor(reynolds=reynolds, relative_roughness=roughness) == pytest.approx(root**-2, rel=1e-9)


@given(st.floats(0.01, 2000), ROUGHNESS)
def test_laminar_factor_is_hagen_poiseuille(reynolds: float, roughness: float) -> None:
    assert friction_factor(reynolds=reynolds, relative_roughness=roughness) == pytest.approx(64 / reynolds, rel=1e-12)


@given(st.floats(1, 1e6), ROUGHNESS, st.floats(64, 96))
def test_factor_is_continuous(reynolds: float, roughness: float, constant: float) -> None:
    near = [
        friction_factor(reynolds=re, relative_roughness=roughness, laminar_constant=constant)
        for re in (reynolds, reynolds * (1 + 1e-9))
    ]
    assert near[1] == pytest.approx(near[0], rel=1e-7)


@given(st.floats(1, 1e6), st.floats(1e-4, 2.0), ROUGHNESS, st.floats(64, 96))
def test_loss_rises_strictly_with_flow(reynolds: float, step: float, roughness: float, constant: float) -> None:
    def loss(re: float) -> float:  # in units of rho nu^2 L / (2 D^3)
        return re**2 * friction_factor(reynolds=re, relative_roughness=roughness, laminar_constant=constant)

    assert loss(reynolds * (1 + step)) > loss(reynolds)


@pytest.mark.parametrize("ratio", [0.01, 0.1, 0.3, 0.5, 0.7, 0.9])
def test_annulus_constant_follows_from_the_velocity_profile(ratio: float) -> None:
    # Profile of laminar flow between concentric tubes, outer radius 1: u = 1 - r^2 - (1 - k^2) ln(r)/ln(k), in units
    # of G/(4 mu); integrated here by scipy.
    def speed(radius: float) -> float:
        return 1 - radius**2 - (1 - ratio**2) * math.log(radius) / math.log(ratio)

    flow = quad(lambda radius: 2 * math.pi * radius * speed(radius), ratio, 1.0)[0]
    mean = flow / (math.pi * (1 - ratio**2))
    # f = G Dh / (rho v^2/2) and Re = v Dh / nu give f Re = 2 G Dh^2 / (mu v), with G = 4 mu and Dh = 2 (1 - k)
    assert annulus_laminar_constant(ratio) == pytest.approx(2 * 4 * (2 * (1 - ratio)) ** 2 / mean, rel=1e-8)


@given(st.floats(1e-6, 1 - 1e-9))
def test_annulus_constant_lies_between_round_and_slit(ratio: float) -> None:
    assert 64.0 < annulus_laminar_constant(ratio) <= 96.0 * (1 + 1e-6)


COILS = st.tuples(st.floats(0.01, 0.03), st.floats(2.0, 200.0), st.floats(0.0, 5e-5))


@given(COILS, st.floats(1, 2e5))
def test_coil_factor_is_continuous_and_never_below_straight(coil: tuple[float, float, float], reynolds: float) -> None:
    bore, ratio, roughness = coil
    near = [
        coil_friction_factor(reynolds=re, bore_m=bore, coil_diameter_m=ratio * bore, roughness_m=roughness)
        for re in (reynolds, reynolds * (1 + 1e-9))
    ]
    assert near[1] == pytest.approx(near[0], rel=1e-6)
    assert near[0] >= friction_factor(reynolds=reynolds, relative_roughness=roughness / bore)


@given(COILS, st.floats(1, 2e5), st.floats(1e-4, 1.0))
def test_coil_loss_rises_strictly_with_flow(coil: tuple[float, float, float], reynolds: float, step: float) -> None:
    bore, ratio, roughness = coil

    def loss(re: float) -> float:
        return re**2 * coil_friction_factor(
            reynolds=re, bore_m=bore, coil_diameter_m=ratio * bore, roughness_m=roughness
        )

    assert loss(reynolds * (1 + step)) > loss(reynolds)


@pytest.mark.parametrize("reynolds", [500.0, 1900.0, 1e4, 3e4, 1e5])
def test_coil_factor_agrees_with_the_fluids_library_away_from_its_steps(reynolds: float) -> None:
    ours = coil_friction_factor(reynolds=reynolds, bore_m=0.02, coil_diameter_m=0.5, roughness_m=1e-5)
    assert ours == pytest.approx(fluids.friction_factor_curved(reynolds, 0.02, 0.5, roughness=1e-5), rel=1e-9)


def test_laminar_coil_stays_within_the_spread_of_other_correlations() -> None:
    # White 1929 and Mori-Nakayama 1965 lie about 11 % below Schmidt 1967 at Re 1000 (fluids library).
    ours = coil_friction_factor(reynolds=1000.0, bore_m=0.01905, coil_diameter_m=0.5, roughness_m=1e-5)
    for method in ("White", "Mori Nakayama laminar"):
        other = fluids.friction_factor_curved(1000.0, 0.01905, 0.5, laminar_method=method)
        assert ours == pytest.approx(other, rel=0.15)


def test_regimes_meet_at_the_handbook_bounds() -> None:
    assert regime_of(2000.0) is FlowRegime.LAMINAR
    assert regime_of(2001.0) is regime_of(3999.0) is FlowRegime.TRANSITION
    assert regime_of(4000.0) is FlowRegime.TURBULENT


@pytest.mark.parametrize(
    ("field", "call"),
    [
        ("reynolds", lambda: friction_factor(reynolds=0.0, relative_roughness=0.0)),
        ("reynolds", lambda: friction_factor(reynolds=math.nan, relative_roughness=0.0)),
        ("relative_roughness", lambda: friction_factor(reynolds=1e5, relative_roughness=0.06)),
        ("laminar_constant", lambda: friction_factor(reynolds=1e3, relative_roughness=0.0, laminar_constant=60.0)),
        ("diameter_ratio", lambda: annulus_laminar_constant(0.0)),
        ("1 - diameter_ratio", lambda: annulus_laminar_constant(1.0)),
        ("coil_diameter_m", lambda: coil_critical_reynolds(bore_m=0.02, coil_diameter_m=0.03)),
    ],
)
def test_values_outside_the_range_are_refused_by_name(field: str, call: object) -> None:
    assert callable(call)
    with pytest.raises(OutOfRange) as refused:
        call()
    assert refused.value.field == field
