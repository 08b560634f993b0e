"""Density, viscosity, cold points, flash class and static figures of the liquids."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.water_iapws import water_viscosity_pa_s
from spoutline.calc.liquid_components import COMPONENTS, Component, ViscosityAnchor
from spoutline.calc.liquid_hazards import (
    ConductivityClass,
    FlashClass,
    class_of_flash_point,
    conductivity_s_m,
    flash_class,
    relative_permittivity,
)
from spoutline.calc.liquids import LiquidWarning, blend_shares, cold_limit_c, cold_points, liquid_state
from spoutline.calc.ranges import OutOfRange, RangeReason
from spoutline.calc.viscosity import viscosity_between_anchors_m2_s
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import Liquid, LiquidFamily

GASOLINE, DIESEL, DEF = LiquidFamily.GASOLINE, LiquidFamily.DIESEL, LiquidFamily.DEF
E85, B20, B100 = Liquid(GASOLINE, 85.0), Liquid(DIESEL, 20.0), Liquid(DIESEL, 100.0)
LIQUIDS = st.builds(Liquid, st.sampled_from(LiquidFamily).filter(lambda family: family is not DEF), st.floats(0, 100))

# A separate computation of the same published equations (ASTM D341, Arrhenius) with scipy: kg/m3 and mm2/s at -20, 0,
# 20 and 40 degC, printed to the digits given; None where the liquid is not computed.
COMPUTED_APART = [
    (Liquid(GASOLINE, 0), (776.5, 758.5, 740.5, 722.5), (0.900, 0.690, 0.550, 0.452)),
    (Liquid(GASOLINE, 10), (781.2, 763.3, 745.4, 727.5), (1.029, 0.773, 0.608, 0.495)),
    (Liquid(GASOLINE, 15), (783.5, 765.7, 747.8, 730.0), (1.100, 0.818, 0.639, 0.518)),
    (Liquid(GASOLINE, 25), (788.2, 770.5, 752.7, 735.0), (1.258, 0.917, 0.707, 0.567)),
    (E85, (816.4, 799.3, 782.1, 765.0), (2.810, 1.814, 1.290, 0.978)),
    (Liquid(DIESEL, 0), (869.9, 855.6, 841.5, 827.2), (14.7, 6.66, 3.74, 2.41)),
    (Liquid(DIESEL, 5), (871.7, 857.5, 843.3, 829.1), (15.2, 6.87, 3.85, 2.48)),
    (B20, (877.4, 863.1, 848.8, 834.6), (16.8, 7.53, 4.19, 2.68)),
    (B100, (None, 893.0, 878.4, 863.8), (None, 12.3, 6.60, 4.10)),
    (Liquid(LiquidFamily.KEROSENE, 0), (830.9, 816.1, 801.3, 786.5), (4.80, 2.75, 1.81, 1.30)),
    (Liquid(LiquidFamily.FUEL_OIL, 0), (879.5, 865.5, 851.5, 837.5), (18.9, 8.50, 4.71, 3.00)),
    (Liquid(DEF, 0), (None, 1099.6, 1090.0, 1080.4), (None, 2.20, 1.285, 0.852)),
]


@pytest.mark.parametrize(("liquid", "densities", "viscosities"), COMPUTED_APART)
def test_density_and_viscosity_agree_with_a_separate_computation(
    liquid: Liquid, densities: tuple[float | None, ...], viscosities: tuple[float | None, ...]
) -> None:
    for temperature, density, viscosity in zip((-20, 0, 20, 40), densities, viscosities, strict=True):
        if density is None or viscosity is None:
            with pytest.raises(OutOfRange) as refused:
                liquid_state(liquid, temperature)
            assert refused.value.reason is RangeReason.FROZEN
            continue
        state = liquid_state(liquid, temperature)
        assert state.density_kg_m3 == pytest.approx(density, abs=0.11)
        assert state.kinematic_viscosity_m2_s * 1e6 == pytest.approx(viscosity, rel=6e-3)


# US DOE Alternative Fuels Data Center, fuel properties table: ranges in mm2/s at -4 F and 68 F; ASTM D975 ranges at
# 40 degC as in Maryland 03.03.05.02; AFDC 1.9-6.0 for B100 at 40 degC.
@pytest.mark.parametrize(
    ("component", "temperature_c", "low", "high"),
    [
        (Component.GASOLINE, -20.0, 0.8, 1.0),
        (Component.GASOLINE, 20.0, 0.5, 0.6),
        (Component.DIESEL_2D, -20.0, 9.0, 24.0),
        (Component.DIESEL_2D, 20.0, 2.8, 5.0),
        (Component.DIESEL_2D, 40.0, 1.9, 4.1),
        (Component.DIESEL_1D, 40.0, 1.3, 2.4),
        (Component.BIODIESEL, 40.0, 1.9, 6.0),
    ],
)
def test_viscosity_lies_in_the_published_range(
    component: Component, temperature_c: float, low: float, high: float
) -> None:
    first, second = COMPONENTS[component].anchors
    viscosity = viscosity_between_anchors_m2_s(anchor_1=first, anchor_2=second, temperature_c=temperature_c)
    assert low <= viscosity * 1e6 <= high


# CoolProp 8.0.0, ethanol, mm2/s: the model must stay within 6 % from -20 to 40 degC.
@pytest.mark.parametrize(("temperature_c", "mm2_s"), [(-20, 3.544), (0, 2.255), (20, 1.512), (40, 1.061)])
def test_ethanol_lies_near_the_reference_equation(temperature_c: float, mm2_s: float) -> None:
    state = liquid_state(Liquid(GASOLINE, 100.0), temperature_c)
    assert state.kinematic_viscosity_m2_s * 1e6 == pytest.approx(mm2_s, rel=0.06)


# CoolProp 8.0.0: a soy ester lies between methyl linoleate and methyl oleate, mm2/s.
@pytest.mark.parametrize(("temperature_c", "low", "high"), [(20, 5.65, 7.38), (40, 3.71, 4.56)])
def test_biodiesel_lies_between_its_two_main_esters(temperature_c: float, low: float, high: float) -> None:
    assert low < liquid_state(B100, temperature_c).kinematic_viscosity_m2_s * 1e6 < high


# IAPWS R12-08 and IAPWS-95 densities: on water, for which D341 was not made, it errs by no more than 1.5 %.
@pytest.mark.parametrize(("temperature_c", "density"), [(10, 999.70), (20, 998.21), (30, 995.65)])
def test_anchor_equation_stays_near_water(temperature_c: float, density: float) -> None:
    anchors = [ViscosityAnchor(t, water_viscosity_pa_s(t, rho) / rho) for t, rho in ((0.01, 999.79), (40.0, 992.22))]
    ours = viscosity_between_anchors_m2_s(anchor_1=anchors[0], anchor_2=anchors[1], temperature_c=temperature_c)
    assert ours == pytest.approx(water_viscosity_pa_s(temperature_c, density) / density, rel=0.015)


def test_anchor_equation_returns_its_anchors() -> None:
    first, second = COMPONENTS[Component.DIESEL_2D].anchors
    for anchor in (first, second):
        ours = viscosity_between_anchors_m2_s(anchor_1=first, anchor_2=second, temperature_c=anchor.temperature_c)
        assert ours == pytest.approx(anchor.kinematic_viscosity_m2_s, rel=1e-9)


def test_anchors_at_one_temperature_are_refused() -> None:
    anchor = ViscosityAnchor(20.0, 1e-6)
    with pytest.raises(OutOfRange, match="contradicts"):
        viscosity_between_anchors_m2_s(anchor_1=anchor, anchor_2=anchor, temperature_c=0.0)


@given(LIQUIDS, st.floats(-30, 44), st.floats(0.5, 20))
def test_warmer_liquid_is_lighter_and_thinner(liquid: Liquid, temperature_c: float, rise: float) -> None:
    cold = max(temperature_c, cold_limit_c(liquid))
    warm = min(cold + rise, 45.0)
    if warm - cold < 0.1:
        return
    first, second = liquid_state(liquid, cold), liquid_state(liquid, warm)
    assert second.density_kg_m3 < first.density_kg_m3
    assert second.kinematic_viscosity_m2_s < first.kinematic_viscosity_m2_s


@given(LIQUIDS, st.floats(10, 45))
def test_blend_lies_between_its_components(liquid: Liquid, temperature_c: float) -> None:
    state = liquid_state(liquid, temperature_c)
    ends = [liquid_state(Liquid(liquid.family, percent), temperature_c) for percent in (0.0, 100.0)]
    for figure in ("density_kg_m3", "kinematic_viscosity_m2_s"):
        low, high = sorted(getattr(end, figure) for end in ends)
        assert low * (1 - 1e-12) <= getattr(state, figure) <= high * (1 + 1e-12)


def test_worked_lines_hold_the_numbers_used() -> None:
    state = liquid_state(Liquid(GASOLINE, 10.0), 20.0)
    results = [line.result.value for line in state.lines]
    assert state.density_kg_m3 in results
    assert state.kinematic_viscosity_m2_s in results
    # By hand with the table values: 0.9 (745 - 0.90 x 5) + 0.1 (793.7 - 0.85 x 5) = 666.45 + 78.945
    assert state.density_kg_m3 == pytest.approx(745.395, abs=1e-9)
    assert math.fsum(share.fraction for share in blend_shares(Liquid(GASOLINE, 10.0))) == 1.0


@pytest.mark.parametrize("temperature_c", [-30.1, 45.1, math.nan, math.inf])
def test_temperature_outside_the_data_names_field_and_range(temperature_c: float) -> None:
    with pytest.raises(OutOfRange) as refused:
        liquid_state(Liquid(GASOLINE, 0.0), temperature_c)
    assert refused.value.field == "temperature_c"
    if math.isfinite(temperature_c):
        assert (refused.value.low, refused.value.high) == (-30.0, 45.0)
        assert refused.value.missing == pytest.approx(0.1)


@pytest.mark.parametrize("liquid", [Liquid(GASOLINE, -1.0), Liquid(DIESEL, 101.0), Liquid(DEF, 1.0)])
def test_blend_that_does_not_exist_is_refused(liquid: Liquid) -> None:
    with pytest.raises(OutOfRange, match="blend_percent"):
        liquid_state(liquid, 20.0)


def test_def_is_computed_down_to_its_freezing_point() -> None:
    assert cold_limit_c(Liquid(DEF, 0.0)) == -11.5  # ISO 22241-3, from memory; sheets round to -11 degC (12 F)
    assert liquid_state(Liquid(DEF, 0.0), -11.5).density_kg_m3 > 1090.0
    with pytest.raises(OutOfRange, match="temperature_c"):
        liquid_state(Liquid(DEF, 0.0), -11.6)


# Maryland 03.03.05.02: cloud point of diesel at most -7 degC; B20 2-3 degC worse; AFDC: B100 clouds at -3 to 15 degC,
# pours down to -5 to 10 degC.
def test_cold_warnings_follow_the_published_points() -> None:
    assert liquid_state(Liquid(DIESEL, 0.0), -7.0).warnings == ()
    assert liquid_state(Liquid(DIESEL, 0.0), -7.1).warnings == (LiquidWarning.MAY_CLOUD,)
    assert cold_points(B20).cloud_c == pytest.approx(-4.0)
    assert liquid_state(B100, 12.0).warnings == (LiquidWarning.MAY_CLOUD,)
    assert liquid_state(B100, 0.0).warnings == (LiquidWarning.MAY_CLOUD, LiquidWarning.MAY_NOT_POUR)
    assert cold_limit_c(B100) == -5.0
    assert liquid_state(Liquid(GASOLINE, 10.0), -30.0).warnings == ()


@given(st.sampled_from([DIESEL, LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL]), st.floats(0, 100), st.floats(0, 100))
def test_more_biodiesel_never_stands_more_cold(family: LiquidFamily, first: float, second: float) -> None:
    less, more = sorted((first, second))
    assert cold_limit_c(Liquid(family, less)) <= cold_limit_c(Liquid(family, more)) + 1e-12


# 29 CFR 1910.106(a), older text: I below 37.8, II from 37.8, IIIA from 60, IIIB from 93 degC.
@pytest.mark.parametrize(
    ("flash_point_c", "expected"),
    [(37.7, "I"), (37.8, "II"), (59.9, "II"), (60.0, "IIIA"), (92.9, "IIIA"), (93.0, "IIIB")],
)
def test_flash_point_decides_the_class(flash_point_c: float, expected: str) -> None:
    assert class_of_flash_point(flash_point_c) is FlashClass(expected)


@pytest.mark.parametrize(
    ("liquid", "expected"),
    [
        (Liquid(GASOLINE, 10.0), FlashClass.I),
        (E85, FlashClass.I),
        (Liquid(GASOLINE, 100.0), FlashClass.I),
        (B20, FlashClass.II),
        (B100, FlashClass.IIIB),
        (Liquid(LiquidFamily.KEROSENE, 0.0), FlashClass.II),
        (Liquid(LiquidFamily.FUEL_OIL, 0.0), FlashClass.II),
        (Liquid(DEF, 0.0), FlashClass.NONE),
    ],
)
def test_usual_fuels_have_their_published_class(liquid: Liquid, expected: FlashClass) -> None:
    assert flash_class(liquid).flash_class is expected


def test_static_figures_tell_dry_fuels_from_alcohol_blends() -> None:
    diesel, gasoline = conductivity_s_m(Liquid(DIESEL, 0.0)), conductivity_s_m(Liquid(GASOLINE, 0.0))
    assert diesel.low_s_m == pytest.approx(0.1e-12)  # tanker safety guide table 3.1, pairing from memory
    assert gasoline.conductivity_class is ConductivityClass.NON_CONDUCTIVE
    # Paasi et al. 2009: E10 charges a little, E85 does not; no figure is published for E10
    assert conductivity_s_m(Liquid(GASOLINE, 10.0)).low_s_m is None
    assert conductivity_s_m(E85).conductivity_class is ConductivityClass.CONDUCTIVE
    assert conductivity_s_m(Liquid(DEF, 0.0)).conductivity_class is ConductivityClass.CONDUCTIVE
    assert conductivity_s_m(B100).conductivity_class is ConductivityClass.SEMI_CONDUCTIVE
    assert conductivity_s_m(Liquid(LiquidFamily.KEROSENE, 5.0)).low_s_m == pytest.approx(1e-12)


def test_permittivity_of_a_blend_is_a_judgement() -> None:
    assert relative_permittivity(Liquid(GASOLINE, 0.0)).value == 2.0  # NFPA 77 (2000)
    blend = relative_permittivity(Liquid(GASOLINE, 10.0))
    assert blend.status is LimitStatus.JUDGEMENT
    assert 2.0 < blend.value < 24.5
    assert relative_permittivity(B20).value == pytest.approx(2.1 + 0.2 * 1.1)
    assert relative_permittivity(Liquid(DEF, 0.0)).value == 80.0
