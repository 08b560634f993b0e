"""The inspector is held against published figures before it judges anything."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from oracle.fluid_state import FluidState, fluid_state
from oracle.hanging import hang
from oracle.need import listing_class_of, refusals_owed
from oracle.numbers import GENERAL_UNITED_STATES
from oracle.pipe_flow import friction_factor, part_loss_pa
from oracle.sample_parts import (
    BREAKAWAY,
    CURB_HOSE,
    NOZZLE,
    SAMPLE_SET,
    SAMPLE_SITE,
    SWIVEL,
    WHIP_HOSE,
    sample_position,
    swapped,
)
from oracle.set_inspection import inspect_set
from spoutline.model.liquid import LiquidFamily, ListingClass
from spoutline.model.part import NozzleOperation, NozzleService, Part, PartStatus, Placement
from spoutline.model.port import Gender, Port, ThreadStandard


def test_friction_matches_the_documented_example() -> None:
    # fluids documentation: friction_factor(Re=1e5, eD=1e-4) = 0.0185138660775; Darcy for laminar flow is 64/Re.
    assert friction_factor(1e5, 1e-4) == pytest.approx(0.0185138660775, rel=1e-6)
    assert friction_factor(1000, 1e-4) == pytest.approx(0.064, rel=1e-12)


def test_loss_matches_the_pipeline_example_of_technical_paper_410() -> None:
    # Technical Paper 410, example 7.13, as quoted in the fluids documentation (secondary): fuel oil SG 0.815,
    # 2.7 mm2/s, 2 gal/s through 100 ft of 2 in schedule 40 (2.067 in, roughness 0.0018 in): 66 500 Pa. Tolerance 1.5 %.
    diameter_m, flow_m3_s = 2.067 * 0.0254, 2 * 3.785411784e-3
    velocity_m_s = 4 * flow_m3_s / (math.pi * diameter_m**2)
    factor = friction_factor(velocity_m_s * diameter_m / 2.7e-6, 0.0018 / 2.067)
    assert factor * 30.48 / diameter_m * 815 * velocity_m_s**2 / 2 == pytest.approx(66500, rel=0.015)


def test_fitting_loss_follows_the_definition_of_kv() -> None:
    # Definition of Kv: 1 m3/h of water (1000 kg/m3) at 1 bar for Kv 1.
    part = replace(SWIVEL, flow_coefficient_kv=1.0)
    assert part_loss_pa(part, 1 / 3600, FluidState(1000.0, 1e-6)) == pytest.approx(1e5, rel=1e-9)


def test_catenary_matches_two_published_cables() -> None:
    # Statics course (secondary): 140 m over 120 m, c = 61.45 m, sag 31.70 m.
    course = hang(100.0, 100.0, 120.0, 140.0)
    assert course is not None
    assert course.parameter_m == pytest.approx(61.45, abs=0.01)
    assert 100.0 - course.lowest_m == pytest.approx(31.70, abs=0.01)
    # Statics text (secondary): 625 ft wire of 2 lbf/ft, sag 25 ft, span 622.33 ft: T = 3931.25 lbf.
    wire = hang(50.0, 50.0, 622.33, 625.0)
    assert wire is not None
    assert 2 * wire.tension_end_m == pytest.approx(3931.25, rel=2e-3)  # span printed to 0.01 ft only
    assert hang(2.0, 1.0, 3.0, 3.1) is None


def test_viscosity_matches_the_printed_fuel_table() -> None:
    # DOE AFDC fuel table (secondary), 20 C, mm2/s: ethanol 1.50, gasoline 0.5-0.6, diesel 2.8-5.0; E85 about 1.3.
    assert fluid_state("gasoline", 100, 20).viscosity_m2_s == pytest.approx(1.50e-6, rel=1e-6)
    assert 0.5e-6 < fluid_state("gasoline", 0, 20).viscosity_m2_s < 0.6e-6
    assert 2.8e-6 < fluid_state("diesel", 0, 20).viscosity_m2_s < 5.0e-6
    assert fluid_state("gasoline", 85, 20).viscosity_m2_s == pytest.approx(1.3e-6, rel=0.02)
    # ISO 22241-1 (memory): 1087-1093 kg/m3 at 20 C.
    assert 1087 <= fluid_state("def", 0, 20).density_kg_m3 <= 1093


@pytest.mark.parametrize(
    ("family", "percent", "wanted"),
    [
        # UL 2586 1.4, 2586A 1.3, 2586B 1.3, verified scopes
        ("gasoline", 0, "E10"),
        ("gasoline", 10, "E10"),
        ("gasoline", 10.1, "E25"),
        ("gasoline", 25, "E25"),
        ("gasoline", 26, "E85"),
        ("gasoline", 85, "E85"),
        ("gasoline", 86, "no class"),
        ("diesel", 5, "B5"),
        ("diesel", 6, "B20"),
        ("diesel", 20, "B20"),
        ("diesel", 21, "no class"),
        ("diesel", 99, "no class"),
        ("diesel", 99.9, "B100"),
        ("diesel", 100, "B100"),
        ("kerosene", 0, "B5"),
        ("def", 0, None),
    ],
)
def test_classes_follow_the_published_scopes(family: str, percent: float, wanted: str | None) -> None:
    assert listing_class_of(LiquidFamily(family), percent) == wanted


def test_figures_are_the_published_ones() -> None:
    # Okla. 165:26-2-92: 18 ft; UL 567:2021 6.3: 100 to 350 lbf; UL 330: 70 000 ohm/ft; SAE J285: 0.840 in.
    numbers = GENERAL_UNITED_STATES
    assert numbers.hose_length_max_m == pytest.approx(5.4864)
    assert numbers.separation_least_n == pytest.approx(445, abs=0.5)
    assert numbers.separation_greatest_n == pytest.approx(1557, abs=0.5)
    assert numbers.hose_resistance_max_ohm_m == pytest.approx(229.7e3, rel=1e-3)
    assert numbers.gasoline_spout.greatest_m == pytest.approx(0.021336)


def test_the_sample_set_is_accepted() -> None:
    found = inspect_set(sample_position(), SAMPLE_SITE, SAMPLE_SET)
    assert found.accepted, found.musts


def test_gaps_and_wrong_vapour_owe_a_refusal() -> None:
    assert refusals_owed(sample_position(liquid={"family": "diesel", "blend_percent": 50})) == {"no_listing_class"}
    diesel = {"family": "diesel", "blend_percent": 5}
    assert refusals_owed(sample_position(liquid=diesel, vapour_wanted="balance")) == {"contradiction"}
    assert not refusals_owed(sample_position(liquid=diesel))


def _nozzle(**changes: object) -> Part:
    assert NOZZLE.nozzle is not None
    return replace(NOZZLE, nozzle=replace(NOZZLE.nozzle, **changes))  # type: ignore[arg-type]


def _breakaway(**changes: object) -> Part:
    assert BREAKAWAY.breakaway is not None
    return replace(BREAKAWAY, breakaway=replace(BREAKAWAY.breakaway, **changes))  # type: ignore[arg-type]


def _curb(**changes: object) -> Part:
    assert CURB_HOSE.hose is not None
    return replace(CURB_HOSE, hose=replace(CURB_HOSE.hose, **changes))  # type: ignore[arg-type]


G_MALE = Port(ThreadStandard.G, "3/4", Gender.MALE, SWIVEL.outlet.path) if SWIVEL.outlet else None


@pytest.mark.parametrize(
    ("part", "broken"),
    [
        (replace(SWIVEL, listings=frozenset({ListingClass.B5})), "listing class"),  # UL 567A 1.3
        (replace(SWIVEL, schemes=frozenset()), "listing scheme"),
        (replace(SWIVEL, status=PartStatus.DISCONTINUED), "status"),
        (replace(SWIVEL, prices=()), "price"),
        (replace(SWIVEL, temperature_minimum_c=-10.0), "temperature"),
        (replace(SWIVEL, maximum_pressure_pa=300e3), "pressure"),  # UL 2586 1.1: 50 psi
        (replace(SWIVEL, outlet=G_MALE), "joint"),  # 60 against 55 degrees
        (replace(SWIVEL, pull_strength_n=1400.0), "pull strength"),
        (replace(SWIVEL, resistance_ohm=None), "continuity"),
        (replace(SWIVEL, resistance_ohm=0.6e6), "part resistance"),  # UL 567A 12.2: 0.5 Mohm
        (_nozzle(spout_outside_diameter_m=0.02370), "spout"),  # SAE J285: car diesel size
        (_nozzle(spout_straight_length_m=0.060), "spout straight length"),  # 2.5 in
        (_nozzle(spring_distance_m=0.070), "spout spring"),  # 3.0 in
        (_nozzle(service=NozzleService.DIESEL_CAR), "service"),
        (_nozzle(operation=NozzleOperation.MANUAL), "operation"),  # NFPA 30A, secondary
        (_nozzle(hold_open=True), "hold-open"),
        (_nozzle(minimum_flow_m3_s=6.9e-4), "nozzle minimum flow"),
        (_nozzle(maximum_flow_m3_s=5e-4), "nozzle maximum flow"),
        (_nozzle(opening_pressure_pa=250e3), "nozzle opening pressure"),
        (_breakaway(separation_minimum_n=400.0), "separation window"),  # UL 567 6.3: 100 lbf
        (_breakaway(separation_maximum_n=1700.0), "separation window"),  # UL 567 6.3: 350 lbf
        (_breakaway(placements=frozenset({Placement.NOZZLE_END})), "breakaway place"),  # UL 567B 18
        (_breakaway(separation_minimum_n=450.0, seal_diameter_m=0.06), "service load"),
        (_curb(length_m=5.4), "hose length"),  # 18 ft with the whip hose
        (_curb(length_m=1.2), "reach"),
        (_curb(resistance_ohm_m=240e3), "part resistance"),  # 70 000 ohm/ft
    ],
)
def test_one_fault_is_found(part: Part, broken: str) -> None:
    assert broken in inspect_set(sample_position(), SAMPLE_SITE, swapped(part)).broken()


def test_a_fault_in_the_order_is_found() -> None:
    assert "chain" in inspect_set(sample_position(), SAMPLE_SITE, SAMPLE_SET[::-1]).broken()
    assert "chain" in inspect_set(sample_position(), SAMPLE_SITE, SAMPLE_SET[2:]).broken()
    # Okla. 165:26-2-91(d): with a retriever the breakaway lies below its clamp.
    assert "chain" in inspect_set(sample_position(retrieval="retractor"), SAMPLE_SITE, SAMPLE_SET).broken()


def test_a_short_whip_hose_cannot_turn() -> None:
    assert WHIP_HOSE.hose is not None
    stiff = replace(WHIP_HOSE, hose=replace(WHIP_HOSE.hose, minimum_bend_radius_m=0.3))
    assert "whip length" in inspect_set(sample_position(), SAMPLE_SITE, swapped(stiff)).broken()


def test_the_same_set_fails_where_more_is_asked() -> None:
    vapour_rules = SAMPLE_SITE.model_copy(update={"jurisdiction": "us_vapour_rules"})
    broken = inspect_set(sample_position(), vapour_rules, SAMPLE_SET).broken()
    assert {"low permeation", "enhanced conventional"} <= broken
    europe = SAMPLE_SITE.model_copy(update={"jurisdiction": "europe"})
    assert {"listing scheme", "separation window"} <= inspect_set(sample_position(), europe, SAMPLE_SET).broken()
    assert "no-pressure device" in inspect_set(sample_position(prepay=True), SAMPLE_SITE, SAMPLE_SET).broken()
    balance = sample_position(vapour_wanted="balance")
    assert {"path", "bellows", "vapour closing", "chain"} & inspect_set(balance, SAMPLE_SITE, SAMPLE_SET).broken()
