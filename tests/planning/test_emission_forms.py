"""The displacement of a station goes by one published form taken whole: non-road for boats, on-road for the rest."""

from __future__ import annotations

import math
from typing import Any

import pytest

from planning.conversion_sites import vapour_tables
from spoutline.calc.vapour_displacement import GRAM_PER_GALLON, PSI, celsius
from spoutline.model.conversion_answers import EmissionBasis
from spoutline.model.vapour_figures import VapourFigureId
from spoutline.planning.conversion.emission_inputs import EmissionInputs, displacement_of


def inputs(**changes: Any) -> EmissionInputs:
    plain: dict[str, Any] = {
        "recovered_share": 1.0,
        "assist_share": 0.0,
        "in_use_efficiency": 0.75,
        "slope": vapour_tables().figure(VapourFigureId.COMPATIBILITY_SLOPE),
        "throughput_m3": None,
        "basis": EmissionBasis.EPA_MODEL,
        "marine": False,
        "enhanced_nozzles": False,
    }
    return EmissionInputs(**{**plain, **changes})


def rate_g_per_gal(ambient_f: float, rvp_psi: float, *, marine: bool) -> float:
    asked = inputs(ambient_c=celsius(ambient_f), vapour_pressure_pa=rvp_psi * PSI.value, marine=marine)
    return displacement_of(asked, vapour_tables()).rate_kg_m3 / GRAM_PER_GALLON.value


def test_boats_go_by_the_non_road_form() -> None:
    # computed from the formula read in the EPA NONROAD evaporative routine: 75 degF, RVP 9 psi, 3.842488 g/gal
    assert rate_g_per_gal(75.0, 9.0, marine=True) == pytest.approx(3.842488, rel=1e-6)
    # the same formula by hand at 90 degF: T_D = 62 + 0.6 (90 - 62), dT = T_D - 90
    dispensed = 62 + 0.6 * (90 - 62)
    by_hand = math.exp(-1.2798 - 0.0049 * (dispensed - 90) + 0.0203 * dispensed + 0.1315 * 9.0)
    assert rate_g_per_gal(90.0, 9.0, marine=True) == pytest.approx(by_hand, rel=1e-6)


def test_vehicles_go_by_the_on_road_form() -> None:
    # published result of a third-party port of the EPA on-road model: 59.5 degF, RVP 8 psi, 3.0152931 g/gal
    assert rate_g_per_gal(59.5, 8.0, marine=False) == pytest.approx(3.0152931, rel=1e-6)


def test_the_lines_of_a_marina_name_the_non_road_form_alone() -> None:
    asked = inputs(ambient_c=30.0, vapour_pressure_pa=6e4, marine=True)
    dispensed, difference, *_ = displacement_of(asked, vapour_tables()).lines
    assert {dispensed.source, difference.source} == {"EPA NONROAD evaporative routine"}
    # tank as warm as the air: gasoline at 62 + 0.6 (86 - 62) = 76.4 degF comes 9.6 degF cooler than the air
    assert difference.result.value == pytest.approx(-9.6 / 1.8)
