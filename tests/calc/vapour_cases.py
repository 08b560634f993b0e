"""How each row of published_vapour.csv is answered by the program. Rows of status memory test a recalled form."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal
from pathlib import Path
from typing import Any

from spoutline.calc.emissions import factor_kg_m3, mixed_factor_line, yearly_change_line
from spoutline.calc.spillage import spillage_line, spillage_per_fill_line
from spoutline.calc.vapour import (
    break_even_line,
    compatibility_factor_line,
    recovery_increment,
)
from spoutline.calc.vapour_decay import INCH_OF_WATER, pressure_decay_line
from spoutline.calc.vapour_displacement import (
    GRAM_PER_GALLON,
    RateFigures,
    TemperatureFigures,
    celsius,
    dispensed_temperature_line,
    displacement_rate,
    fahrenheit,
    fleet_displacement_line,
    linear_displacement_rate,
    pump_temperature_line,
    tank_difference_line,
)
from spoutline.model.conversion_answers import StationKind
from spoutline.model.quantity import Dimension
from spoutline.model.vapour_figures import OnboardShare, VapourFigureId, VapourTables
from spoutline.planning.conversion.money_sheet import grant_of
from spoutline.rules.conversion.standing import recovery_needed, recovery_threshold
from spoutline.ruletables.load import load_vapour_tables
from spoutline.units.unit_lines import from_core

Case = dict[str, Any]
Id = VapourFigureId

GALLON_M3 = 3.785411784e-3  # exact, 231 cubic inches
PSI_PA = 6894.757293168  # exact pound-force and inch
TABLES: VapourTables = load_vapour_tables(Path(__file__).resolve().parents[2] / "resources")
SLOPE = TABLES.figure(Id.COMPATIBILITY_SLOPE)
RATES = RateFigures(
    constant=TABLES.figure(Id.RATE_CONSTANT),
    difference=TABLES.figure(Id.RATE_DIFFERENCE),
    dispensed=TABLES.figure(Id.RATE_DISPENSED),
    vapour_pressure=TABLES.figure(Id.RATE_VAPOUR_PRESSURE),
)
TEMPERATURES = TemperatureFigures(
    dispensed_constant=TABLES.figure(Id.DISPENSED_CONSTANT),
    dispensed_slope=TABLES.figure(Id.DISPENSED_SLOPE),
    difference_slope=TABLES.figure(Id.DIFFERENCE_SLOPE),
    difference_constant=TABLES.figure(Id.DIFFERENCE_CONSTANT),
    difference_maximum=TABLES.figure(Id.DIFFERENCE_MAXIMUM),
)


def grams_per_gallon(rate_kg_m3: float) -> float:
    return rate_kg_m3 * GALLON_M3 * 1e3


def kg_m3(value_g_per_gal: float) -> float:
    return value_g_per_gal * 1e-3 / GALLON_M3


def _refuelling_temperature(case: Case) -> float:
    line = dispensed_temperature_line(ambient_c=celsius(case["ambient_f"]), figures=TEMPERATURES)
    return fahrenheit(line.result.value)


def _tank_difference(case: Case) -> float:
    dispensed = celsius(case["refuelling_temperature_f"])
    return tank_difference_line(dispensed_c=dispensed, figures=TEMPERATURES).result.value * 1.8


def _rate(dispensed_f: float, difference_f: float, rvp_psi: float) -> float:
    found = displacement_rate(
        dispensed_c=celsius(dispensed_f),
        difference_c=difference_f / 1.8,
        vapour_pressure_pa=rvp_psi * PSI_PA,
        figures=RATES,
    )
    return grams_per_gallon(found.rate_kg_m3)


def _on_road(case: Case) -> float:
    dispensed_f = _refuelling_temperature(case)
    return _rate(dispensed_f, _tank_difference({"refuelling_temperature_f": dispensed_f}), case["rvp_psi"])


def _pump_temperature(case: Case) -> float:
    return fahrenheit(pump_temperature_line(ambient_c=celsius(case["ambient_f"])).result.value)


def _as_coded_for_pumps(case: Case) -> float:
    """The routine for pumps feeds dispensed minus ambient, and not tank minus dispensed, into the exponential."""
    dispensed_f = _pump_temperature(case)
    return _rate(dispensed_f, dispensed_f - case["ambient_f"], case["rvp_psi"])


def _linear(case: Case) -> float:
    found = linear_displacement_rate(
        dispensed_c=celsius(case["dispensed_f"]),
        difference_c=(case["tank_f"] - case["dispensed_f"]) / 1.8,
        vapour_pressure_pa=case["rvp_psi"] * PSI_PA,
    )
    return grams_per_gallon(found.rate_kg_m3)


def _fleet(case: Case) -> float:
    line = fleet_displacement_line(
        uncontrolled_kg_m3=kg_m3(case["uncontrolled_g_per_gal"]),
        onboard_kg_m3=kg_m3(case["orvr_g_per_gal"]),
        onboard_share=case["orvr_share"],
        program_reduction=case["program_reduction"],
    )
    return grams_per_gallon(line.result.value)


def _mass_for_energy(case: Case) -> float:
    volume = case["energy_kj"] / case["kj_per_gal"] * GALLON_M3
    line = yearly_change_line(throughput_m3=volume, rate_kg_m3=kg_m3(case["g_per_gal"]), increment=1.0)
    return line.result.value * 1e3


def _spillage(case: Case) -> float:
    line = spillage_line(
        spillage_kg_m3=kg_m3(case["spill_g_per_gal"]),
        avoided_share=case["spill_adjustment"],
        program_reduction=case["program_reduction"],
    )
    return grams_per_gallon(line.result.value)


def _spill_per_fill(case: Case) -> float:
    line = spillage_per_fill_line(loss_kg=case["loss_g_per_fill"] * 1e-3, fill_m3=case["fill_gal"] * GALLON_M3)
    return grams_per_gallon(line.result.value)


def _factor(figure_id: VapourFigureId) -> Callable[[Case], float]:
    def answer(case: Case) -> float:
        figure = TABLES.figure(figure_id)
        assert figure.value == case["mg_per_l"]
        return from_core(factor_kg_m3(figure), "lb/1000 gal", Dimension.EMISSION_FACTOR)

    return answer


def _increment(case: Case) -> float:
    return recovery_increment(
        recovered_share=case["q_sii"],
        assist_share=case["q_siiva"],
        onboard_share=case["q_orvr"],
        in_use_efficiency=case["eta_iusii"],
        slope=SLOPE,
    ).value


def _break_even(case: Case) -> float:
    return break_even_line(
        recovered_share=case["q_sii"],
        assist_share=case["q_siiva"],
        in_use_efficiency=case["eta_iusii"],
        slope=SLOPE,
    ).result.value


def _exceeds(case: Case) -> float:
    row: OnboardShare = next(row for row in TABLES.shares if row.year == case["year"])
    return float(row.gasoline > case["bound"])


def _station_change(case: Case) -> float:
    line = yearly_change_line(
        throughput_m3=case["gal_per_year"] * GALLON_M3,
        rate_kg_m3=kg_m3(case["uncontrolled_g_per_gal"]),
        increment=case["increment"],
    )
    return line.result.value * 1e-3


def _carb_sum(case: Case) -> float:
    ids = (Id.CARB_WITHOUT_ONBOARD, Id.CARB_ONBOARD, Id.CARB_SPILLAGE)
    figures = [TABLES.figure(one) for one in ids]
    assert [figure.value for figure in figures] == [case["non_orvr"], case["orvr"], case["spill"]]
    without, onboard, spill = map(factor_kg_m3, figures)
    line = mixed_factor_line(
        without_kg_m3=without,
        onboard_kg_m3=onboard,
        onboard_share=case["q_orvr"],
        spillage_kg_m3=spill,
        source="test",
    )
    return from_core(line.result.value, "lb/1000 gal", Dimension.EMISSION_FACTOR)


# constants of the decay limit by nozzles; 500.887 and 562.455 were read in a public certification exhibit
_DECAY = {"1-6": 500.887, "13-18": 562.455}


def _decay(case: Case) -> float:
    from dataclasses import replace

    start, one = TABLES.figure(Id.DECAY_START), TABLES.figure(Id.DECAY_STAGE_ONE)
    assert start.value == case["initial_in_wc"]
    assert one.value == _DECAY["1-6"]
    line = pressure_decay_line(
        ullage_m3=case["ullage_gal"] * GALLON_M3, start=start, decay=replace(one, value=_DECAY[case["nozzles"]])
    )
    return line.result.value / INCH_OF_WATER.value


def _grant(case: Case) -> float:
    share, most = (Decimal(str(TABLES.value(one))) for one in (Id.GRANT_SHARE, Id.GRANT_MAXIMUM))
    return float(grant_of(Decimal(str(case["eligible_cost_usd"])), share, most))


def _national_saving(case: Case) -> float:
    assert TABLES.value(Id.UPKEEP_SAVING) == case["saving_usd_per_station"]
    return float(case["stations"] * TABLES.value(Id.UPKEEP_SAVING))


def _eu(case: Case) -> float:
    station = StationKind.EXISTING if case["kind"] == "existing" else StationKind.NEW_OR_REFURBISHED
    threshold = recovery_threshold(station, under_living_quarters=case["under_living_quarters"], vapour=TABLES)
    return float(recovery_needed(case["m3_per_year"], threshold))


def _permeation_saved(case: Case) -> float:
    before, after = TABLES.value(Id.HOSE_PERMEATION), TABLES.value(Id.HOSE_PERMEATION_LOW)
    assert (before, after) == (case["from_g_m2_day"], case["to_g_m2_day"])
    return 1.0 - after / before


def _texas_notice(case: Case) -> float:
    agency = TABLES.agency({"TX": "texas"}[case["state"]])
    assert agency is not None
    assert agency.notice_days is not None
    return float(agency.notice_days)


ANSWERS: dict[str, Callable[[Case], float]] = {
    "VAP-01": _refuelling_temperature,
    "VAP-02": _tank_difference,
    "VAP-03": _on_road,
    "VAP-04": lambda case: from_core(kg_m3(case["g_per_gal"]), "mg/L", Dimension.EMISSION_FACTOR),
    "VAP-05": _fleet,
    "VAP-06": _mass_for_energy,
    "VAP-07": _spillage,
    "VAP-08": _pump_temperature,
    "VAP-09": _as_coded_for_pumps,
    "VAP-10": _linear,
    "VAP-11": _spill_per_fill,
    "VAP-12": _factor(Id.AP42_DISPLACEMENT),
    "VAP-13": lambda case: from_core(case["mg_per_l"] * 1e-3, "lb/1000 gal", Dimension.EMISSION_FACTOR),
    "VAP-14": _factor(Id.AP42_SPILLAGE),
    "VAP-15": lambda case: compatibility_factor_line(onboard_share=case["q_orvr"], slope=SLOPE).result.value,
    "VAP-16": _increment,
    "VAP-17": _increment,
    "VAP-18": _increment,
    "VAP-19": _break_even,
    "VAP-21": _exceeds,
    "VAP-22": _station_change,
    "VAP-23": _carb_sum,
    "VAP-24": _decay,
    "VAP-25": _decay,
    "VAP-26": _grant,
    "VAP-27": _national_saving,
    "VAP-28": _eu,
    "VAP-29": _eu,
    "VAP-30": _permeation_saved,
    "VAP-31": _texas_notice,
}

assert abs(GRAM_PER_GALLON.value - 1e-3 / GALLON_M3) < 1e-15
