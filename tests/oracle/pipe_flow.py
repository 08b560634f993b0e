"""Pressure loss and delivered flow by the inspector's own code: Darcy-Weisbach, Colebrook, Kv, scipy root."""

from __future__ import annotations

import math

from scipy.optimize import brentq

from oracle.fluid_state import FluidState
from oracle.numbers import GRAVITY_M_S2
from spoutline.model.part import HoseData, Part
from spoutline.model.port import FlowPath

ROUGHNESS_M = 1e-5  # smooth rubber, published table (secondary)


def friction_factor(reynolds: float, relative_roughness: float) -> float:
    """Return the Darcy factor: 64/Re, Colebrook by iteration, and a straight line between Re 2000 and 4000."""
    if reynolds <= 2000:
        return 64 / reynolds
    if reynolds < 4000:
        share = (reynolds - 2000) / 2000
        return 0.032 + share * (friction_factor(4000, relative_roughness) - 0.032)
    root = 7.0
    for _ in range(60):
        root = -2 * math.log10(relative_roughness / 3.7 + 2.51 * root / reynolds)
    return 1 / root**2


def bore_of(hose: HoseData, path: FlowPath) -> tuple[float, float]:
    """Return area (m2) and hydraulic diameter (m) of the liquid passage of a hose."""
    if path is FlowPath.SINGLE:
        return math.pi * hose.bore_m**2 / 4, hose.bore_m
    assert hose.inner_tube_bore_m is not None
    assert hose.inner_tube_outside_diameter_m is not None
    if path is FlowPath.BALANCE:
        return math.pi * hose.inner_tube_bore_m**2 / 4, hose.inner_tube_bore_m
    inner = hose.inner_tube_outside_diameter_m
    return math.pi * (hose.bore_m**2 - inner**2) / 4, hose.bore_m - inner


def part_loss_pa(part: Part, flow_m3_s: float, state: FluidState) -> float:
    """Return the pressure that one part takes at ``flow_m3_s``; 0 where a fitting states no flow coefficient."""
    if flow_m3_s <= 0:
        return 0.0
    if part.hose is not None:
        assert part.path is not None
        area, diameter = bore_of(part.hose, part.path)
        velocity = flow_m3_s / area
        reynolds = velocity * diameter / state.viscosity_m2_s
        factor = friction_factor(reynolds, ROUGHNESS_M / diameter)
        return factor * part.hose.length_m / diameter * state.density_kg_m3 * velocity**2 / 2
    if part.flow_coefficient_kv is None:
        return 0.0
    return 1e5 * (flow_m3_s * 3600 / part.flow_coefficient_kv) ** 2 * state.density_kg_m3 / 1000


def chain_loss_pa(parts: tuple[Part, ...], flow_m3_s: float, state: FluidState) -> float:
    """Return the loss of all parts in series, Pa."""
    return sum(part_loss_pa(part, flow_m3_s, state) for part in parts)


def solved_flow_m3_s(parts: tuple[Part, ...], pressure_pa: float, rise_m: float, state: FluidState) -> float:
    """Return the flow driven by ``pressure_pa`` to a filler ``rise_m`` above the outlet; 0 where it cannot climb."""
    available = pressure_pa - state.density_kg_m3 * GRAVITY_M_S2 * rise_m
    if available <= 0:
        return 0.0
    high = 1e-4
    while chain_loss_pa(parts, high, state) < available:
        high *= 2
        if high > 1.0:
            return high
    return float(brentq(lambda q: chain_loss_pa(parts, q, state) - available, 0.0, high, xtol=1e-12))
