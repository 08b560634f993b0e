"""How each row of published_hydraulics.csv is answered by the calculations."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

from scipy.optimize import brentq

from calc.water_iapws import water_viscosity_pa_s
from spoutline.calc.bond import (
    PartResistance,
    relaxation_time,
    series_resistance,
)
from spoutline.calc.catenary import hang, longest_clear_length
from spoutline.calc.elements import AnnularRun, Element, FlowCoefficient, HoseRun, LossCoefficient
from spoutline.calc.flow import solve_flow, static_pressure_line
from spoutline.calc.friction import (
    annulus_laminar_constant,
    coil_critical_reynolds,
    coil_friction_factor,
    friction_factor,
)
from spoutline.calc.hanging_curve import HangingCurve
from spoutline.calc.liquid_components import ViscosityAnchor
from spoutline.calc.liquids import LiquidState, liquid_state
from spoutline.calc.losses import element_loss, element_loss_pa, velocity_m_s
from spoutline.calc.permeation import PermeationLoss, permeation_loss
from spoutline.calc.pull import drive_off, filled_weight_line, pressure_thrust_line, service_load, service_margin
from spoutline.calc.reach import taut_length
from spoutline.calc.viscosity import viscosity_between_anchors_m2_s
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Window
from spoutline.units.unit_lines import to_core

Answer = float | bool
CV_PER_KV = 1.156099  # US gallons per minute at 1 psi over m3/h at 1 bar, from unit definitions
Case = dict[str, Any]

# Exact by definition: US gallon, pound-force per square inch, inch and foot (NIST SP 811 appendix B).
GPM = 3.785411784e-3 / 60.0
PSI = 4.4482216152605 / 0.0254**2
INCH, FOOT, POUND_FORCE = 0.0254, 0.3048, 4.4482216152605

LIQUIDS = {
    "E10": Liquid(LiquidFamily.GASOLINE, 10.0),
    "E85": Liquid(LiquidFamily.GASOLINE, 85.0),
    "diesel_2d": Liquid(LiquidFamily.DIESEL, 0.0),
    "B20": Liquid(LiquidFamily.DIESEL, 20.0),
    "DEF": Liquid(LiquidFamily.DEF, 0.0),
}
UNIT_SPELLINGS = {
    "gal_us": ("gal", Dimension.VOLUME, 1e3),
    "psi": ("psi", Dimension.PRESSURE, 1.0),
    "lbf": ("lbf", Dimension.FORCE, 1.0),
    "in": ("in", Dimension.DIAMETER, 1e3),
    "gpm_us": ("gpm", Dimension.FLOW, 1.0),
}
WATER = LiquidState(density_kg_m3=1000.0, kinematic_viscosity_m2_s=1e-6, temperature_c=20.0)


def state_of(case: Case) -> LiquidState:
    return liquid_state(LIQUIDS[case["fluid"]], case["t_c"])


def water_mm2_s(temperature_c: float, density: float) -> float:
    return water_viscosity_pa_s(temperature_c, density) / density * 1e6


def _unit(case: Case) -> float:
    spelling, dimension, shown_per_core = UNIT_SPELLINGS[case["from"]]
    return to_core(case["value"], spelling, dimension) * shown_per_core


def _anchored(case: Case) -> float:
    first, second = (ViscosityAnchor(t, mm2_s * 1e-6) for t, mm2_s in (case["p1"], case["p2"]))
    return viscosity_between_anchors_m2_s(anchor_1=first, anchor_2=second, temperature_c=case["t_c"]) * 1e6


def _in_specification(case: Case) -> float:
    value = state_of(case).kinematic_viscosity_m2_s * 1e6
    low, high = case["limits"]
    assert low <= value <= high
    return value


def _continuity(case: Case) -> bool:
    factors = [friction_factor(reynolds=case[key], relative_roughness=0.0) for key in ("re_below", "re_above")]
    return max(factors) / min(factors) <= case["max_ratio_of_f"]


def _friction_of_run(case: Case, flow: float) -> float:
    state = LiquidState(density_kg_m3=case["rho"], kinematic_viscosity_m2_s=case["nu_mm2_s"] * 1e-6, temperature_c=20.0)
    length = case.get("l_m", case.get("l_ft", 0.0) * FOOT)
    rough = case.get("roughness_m", case.get("roughness_in", 0.0) * INCH)
    loss = element_loss(HoseRun(length_m=length, bore_m=case["d_m"], roughness_m=rough), flow, state)
    assert loss.velocity_m_s is not None
    if "roughness_in" in case:
        return loss.pressure_pa
    return loss.pressure_pa / (length / case["d_m"] * state.density_kg_m3 * loss.velocity_m_s**2 / 2.0)


def _k_of_friction(case: Case) -> float:
    """Find the flow at which a smooth bore has this friction factor; K is loss over dynamic pressure there."""
    reynolds = brentq(lambda re: friction_factor(reynolds=re, relative_roughness=0.0) - case["f"], 1e4, 1e6, xtol=1e-9)
    velocity = reynolds * WATER.kinematic_viscosity_m2_s / case["d_m"]
    flow = velocity * math.pi * case["d_m"] ** 2 / 4.0
    run = HoseRun(length_m=case["l_m"], bore_m=case["d_m"], roughness_m=0.0)
    return element_loss_pa(run, flow, WATER) / (WATER.density_kg_m3 * velocity**2 / 2.0)


def _loss_of_k(case: Case) -> float:
    state = LiquidState(density_kg_m3=case["rho"], kinematic_viscosity_m2_s=1e-6, temperature_c=20.0)
    flow = case["v_m_s"] * math.pi * 0.02**2 / 4.0
    return element_loss_pa(LossCoefficient(case["k"], 0.02), flow, state)


def _k_of_cv(case: Case) -> float:
    flow = 1e-4
    velocity = velocity_m_s(flow, case["d_m"])
    loss = element_loss_pa(FlowCoefficient(case["cv"] / CV_PER_KV), flow, WATER)
    return loss / (WATER.density_kg_m3 * velocity**2 / 2.0)


def _loss_of_cv(case: Case) -> float:
    state = LiquidState(density_kg_m3=case["rho"], kinematic_viscosity_m2_s=1e-6, temperature_c=20.0)
    return element_loss_pa(FlowCoefficient(case["cv"] / CV_PER_KV), case["q_gpm"] * GPM, state)


def _coil(case: Case) -> float:
    return coil_friction_factor(
        reynolds=case["re"], bore_m=case["di_m"], coil_diameter_m=case["dc_m"], roughness_m=case["roughness_m"]
    )


def _coil_ratio(case: Case) -> float:
    straight = friction_factor(reynolds=case["re"], relative_roughness=case["roughness_m"] / case["di_m"])
    return _coil(case) / straight


def _ring_diameter(case: Case) -> float:
    ring = AnnularRun(length_m=1.0, outer_diameter_m=case["do_m"], inner_diameter_m=case["di_m"], roughness_m=0.0)
    loss = element_loss(ring, 1e-4, WATER)
    return next(line.result.value for line in loss.lines if line.result.name == "Dh")


def _hose(case: Case) -> HoseRun:
    length = case["l_m"] if "l_m" in case else case["l_ft"] * FOOT
    return HoseRun(length_m=length, bore_m=case["d_in"] * INCH, roughness_m=case["roughness_m"])


def _flow_of(case: Case) -> float:
    return float(case["q_gpm"] * GPM if "q_gpm" in case else case["q_l_min"] / 60e3)


def _reynolds(case: Case) -> float:
    run = HoseRun(length_m=1.0, bore_m=case["d_in"] * INCH, roughness_m=0.0)
    reynolds = element_loss(run, case["q_gpm"] * GPM, state_of(case)).reynolds
    assert reynolds is not None
    return reynolds


def _solved(case: Case) -> float:
    path: tuple[Element, ...] = tuple(
        FlowCoefficient(step["cv"] / CV_PER_KV)
        if "cv" in step
        else HoseRun(length_m=step["l_m"], bore_m=step["d_m"], roughness_m=case["roughness_m"])
        for step in case["path"]
    )
    solution = solve_flow(
        path, available_pressure_pa=case["available_psi"] * PSI, rise_m=case["rise_m"], state=state_of(case)
    )
    assert (solution.flow_m3_s == 0.0) == (solution.reason is not None)
    return solution.flow_m3_s / GPM


def _level_cable(case: Case) -> HangingCurve:
    return hang(
        distance_m=case["span_m"],
        start_height_m=100.0,
        end_height_m=100.0,
        length_m=case["length_m"],
        weight_n_m=case["w_n_m"],
    )


def _hose_curve(case: Case) -> HangingCurve:
    return hang(
        distance_m=case["d_m"],
        start_height_m=case["h1_m"],
        end_height_m=case["h2_m"],
        length_m=case["length_m"],
        weight_n_m=case.get("w_n_m", 1.0),
    )


def _tension_from_sag(case: Case) -> float:
    """Take the span from half length s and sag f, which the problem sheet gives: c = (s^2 - f^2) / 2f."""
    half, sag = case["length_ft"] * FOOT / 2.0, case["sag_ft"] * FOOT
    parameter = (half**2 - sag**2) / (2.0 * sag)
    curve = hang(
        distance_m=2.0 * parameter * math.asinh(half / parameter),
        start_height_m=0.0,
        end_height_m=0.0,
        length_m=2.0 * half,
        weight_n_m=case["w_lbf_ft"] * POUND_FORCE / FOOT,
    )
    return curve.end_tension_n / POUND_FORCE


def _end_difference(case: Case) -> float:
    curve = hang(
        distance_m=2.4,
        start_height_m=case["h1_m"],
        end_height_m=case["h2_m"],
        length_m=3.66,
        weight_n_m=case["w_n_m"],
    )
    return curve.start_tension_n - curve.end_tension_n


def _clear(case: Case) -> float:
    longest = longest_clear_length(
        distance_m=case["d_m"],
        start_height_m=case["h1_m"],
        end_height_m=case["h2_m"],
        clearance_m=case["clearance_m"],
    )
    assert longest is not None
    return longest


def _taut(case: Case) -> float:
    legs = tuple(case["plan_legs_m"])
    reach = taut_length(distance_m=0.0, height_difference_m=case["h2_m"] - case["h1_m"], plan_legs_m=legs)
    return reach.length_m


def _weight(case: Case) -> float:
    line = filled_weight_line(hose_mass_kg_m=case["hose_kg_m"], bore_m=case["d_m"], density_kg_m3=case["rho"])
    return line.result.value


def _hanging(case: Case) -> float:
    load = service_load(
        weight_n_m=_weight(case),
        length_below_m=case["length_m"],
        rigid_mass_kg=case["swivel_kg"] + case["nozzle_kg"],
        in_use_tension_n=None,
        user_tug_n=0.0,
        pressure_pa=0.0,
        seal_diameter_m=None,
    )
    return load.hanging_n


def _margin(case: Case) -> float:
    load = service_load(
        weight_n_m=0.0,
        length_below_m=0.0,
        rigid_mass_kg=0.0,
        in_use_tension_n=case["hanging_n"],
        user_tug_n=case["user_tug_n"],
        pressure_pa=case["pressure_pa"],
        seal_diameter_m=case["seal_d_m"],
    )
    return service_margin(separation_minimum_n=case["separation_min_n"], load=load).ratio


def _thrust(case: Case) -> float:
    line = pressure_thrust_line(pressure_pa=case["pressure_psi"] * PSI, seal_diameter_m=case["seal_d_m"])
    return line.result.value


def _line_pull(case: Case) -> float:
    result = drive_off(
        separation_n=case["separation_n"], angle_rad=math.radians(case["angle_deg"]), strength_margin=1.0
    )
    return result.line_pull_n


def _side_load(case: Case) -> float:
    angle = math.radians(case["angle_deg"])
    result = drive_off(separation_n=case["line_pull_n"] * math.cos(angle), angle_rad=angle, strength_margin=1.0)
    return result.side_load_n


def _series(case: Case) -> float:
    parts = tuple(
        PartResistance(
            f"part {number}",
            segment["ohm"] if "ohm" in segment else segment["ohm_per_m"] * segment["length_m"],
        )
        for number, segment in enumerate(case["segments"], start=1)
    )
    total = series_resistance(parts, joints=case["joints"], joint_allowance_ohm=case["joint_allowance_ohm"]).total_ohm
    assert total is not None
    return total


def _relaxation(case: Case) -> float:
    return relaxation_time(
        relative_permittivity=case["eps_r"], conductivity_s_m=case["conductivity_ps_m"] * 1e-12
    ).time_s


def _permeation(case: Case) -> PermeationLoss:
    return permeation_loss(
        rate_kg_m2_s=case.get("rate_g_m2_day", 0.0) * 1e-3 / 86400.0,
        bore_m=case["d_m"],
        length_m=case["length_m"],
        temperature_c=case.get("t_c", 38.0),
        rate_temperature_c=case.get("t_ref_c", 38.0),
    )


def _permeation_factor(case: Case) -> float:
    """The source gives exp(B dT) per Fahrenheit; ours doubles per 10 K: they must agree within the digits of B."""
    published = math.exp(case["b_per_f"] * case["dt_f"])
    ours = permeation_loss(
        rate_kg_m2_s=0.0,
        bore_m=0.02,
        length_m=1.0,
        temperature_c=20.0 + case["dt_f"] / 1.8,
        rate_temperature_c=20.0,
    ).temperature_factor
    assert math.isclose(ours, published, rel_tol=2e-4)
    return published


ANSWERS: dict[str, Callable[[Case], Answer]] = {
    **dict.fromkeys(("HYD-01", "HYD-02", "HYD-03", "HYD-04", "HYD-05"), _unit),
    **dict.fromkeys(("HYD-06", "HYD-12"), lambda case: state_of(case).density_kg_m3),
    **dict.fromkeys(
        ("HYD-07", "HYD-08", "HYD-09", "HYD-11"), lambda case: state_of(case).kinematic_viscosity_m2_s * 1e6
    ),
    "HYD-10": _in_specification,
    **dict.fromkeys(("HYD-13", "HYD-14"), _anchored),
    "HYD-15": lambda case: water_viscosity_pa_s(case["t_c"], 997.047) * 1e3,  # density of water at 25 degC, IAPWS-95
    "HYD-16": lambda case: state_of(case).density_kg_m3,
    **dict.fromkeys(
        ("HYD-17", "HYD-18", "HYD-19"),
        lambda case: friction_factor(reynolds=case["re"], relative_roughness=case["rel_roughness"]),
    ),
    "HYD-20": _continuity,
    "HYD-21": lambda case: _friction_of_run(case, case["q_l_min"] / 60e3),
    "HYD-22": lambda case: _friction_of_run(case, case["q_gal_s"] * GPM * 60.0),
    "HYD-23": _k_of_friction,
    "HYD-24": _loss_of_k,
    "HYD-25": _k_of_cv,
    "HYD-27": _loss_of_cv,
    "HYD-28": _coil,
    "HYD-29": _coil_ratio,
    "HYD-30": lambda case: coil_critical_reynolds(bore_m=case["di_m"], coil_diameter_m=case["dc_m"]),
    "HYD-31": _ring_diameter,
    "HYD-32": lambda case: annulus_laminar_constant(case["radius_ratio"]),
    "HYD-33": _reynolds,
    "HYD-34": lambda case: velocity_m_s(case["q_gpm"] * GPM, case["d_in"] * INCH),
    **dict.fromkeys(
        ("HYD-35", "HYD-36", "HYD-37", "HYD-38"),
        lambda case: element_loss_pa(_hose(case), _flow_of(case), state_of(case)) / PSI,
    ),
    "HYD-39": lambda case: static_pressure_line(case["rise_m"], state_of(case)).result.value,
    **dict.fromkeys(("HYD-40", "HYD-41", "HYD-42", "HYD-43"), _solved),
    "HYD-45": lambda case: _level_cable(case).parameter_m,
    "HYD-46": lambda case: 100.0 - _level_cable(case).lowest_height_m,
    "HYD-47": lambda case: _level_cable(case).end_tension_n,
    "HYD-48": lambda case: _hose_curve(case).parameter_m,
    "HYD-49": lambda case: _hose_curve(case).lowest_height_m,
    "HYD-50": _tension_from_sag,
    "HYD-51": lambda case: _hose_curve(case).least_bend_radius_m,
    "HYD-52": lambda case: _hose_curve(case).lowest_height_m,
    "HYD-53": lambda case: _hose_curve(case).lowest_at_m,
    "HYD-54": lambda case: _hose_curve(case).horizontal_tension_n,
    "HYD-55": lambda case: _hose_curve(case).start_tension_n,
    "HYD-56": lambda case: _hose_curve(case).end_tension_n,
    "HYD-57": _clear,
    "HYD-58": _end_difference,
    "HYD-59": lambda case: _hose_curve(case).parameter_m,
    "HYD-60": lambda case: _hose_curve(case).lowest_height_m,
    "HYD-61": _taut,
    "HYD-62": _weight,
    "HYD-63": _hanging,
    "HYD-64": _margin,
    "HYD-65": _thrust,
    "HYD-66": _line_pull,
    "HYD-67": _side_load,
    "HYD-68": _series,
    **dict.fromkeys(("HYD-70", "HYD-71", "HYD-72"), _relaxation),
    "HYD-74": lambda case: _permeation(case).inner_area_m2,
    **dict.fromkeys(("HYD-75", "HYD-76"), lambda case: _permeation(case).loss_kg_s * 86400.0 * 1e3),
    "HYD-77": _permeation_factor,
    "HYD-78": lambda case: Window(minimum=case["part_min_gpm"] * GPM, maximum=None).holds(case["computed_gpm"] * GPM),
}
