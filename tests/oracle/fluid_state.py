"""Density and viscosity by the inspector's own code.

Density: linear in temperature, volume-weighted. Viscosity: ASTM D341 through two anchors, blends by the Arrhenius rule.
Anchors: DOE AFDC fuel table (secondary), typical values for B100, kerosene, fuel oil and DEF (memory).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

from scipy.optimize import brentq


@dataclass(frozen=True, slots=True)
class Component:
    """One pure component: density at 15 C, its slope, and two anchors (C, mm2/s)."""

    density_15_kg_m3: float
    slope_kg_m3_k: float
    cold: tuple[float, float]
    warm: tuple[float, float]


GASOLINE = Component(745.0, -0.90, (-20, 0.90), (20, 0.55))
ETHANOL = Component(793.7, -0.85, (-20, 3.435), (20, 1.50))
DIESEL = Component(845.0, -0.71, (-20, 14.7), (20, 3.74))
BIODIESEL = Component(882.0, -0.73, (20, 6.6), (40, 4.1))
KEROSENE = Component(805.0, -0.74, (-20, 4.8), (40, 1.30))
FUEL_OIL = Component(855.0, -0.70, (0, 8.5), (40, 3.0))
UREA_SOLUTION = Component(1092.4, -0.48, (0, 2.20), (20, 1.285))
BASES = {"gasoline": GASOLINE, "diesel": DIESEL, "kerosene": KEROSENE, "fuel_oil": FUEL_OIL, "def": UREA_SOLUTION}


def _walther_number(viscosity_mm2_s: float) -> float:
    v = viscosity_mm2_s
    return v + 0.7 + math.exp(-1.47 - 1.84 * v - 0.51 * v * v)


def _double_log(viscosity_mm2_s: float) -> float:
    return math.log10(math.log10(_walther_number(viscosity_mm2_s)))


def component_viscosity_mm2_s(component: Component, temperature_c: float) -> float:
    """Return the kinematic viscosity at ``temperature_c`` by ASTM D341 (secondary), mm2/s."""
    (t1, v1), (t2, v2) = component.cold, component.warm
    x1, x2 = math.log10(t1 + 273.15), math.log10(t2 + 273.15)
    slope = (_double_log(v1) - _double_log(v2)) / (x2 - x1)
    target = _double_log(v1) - slope * (math.log10(temperature_c + 273.15) - x1)
    return float(brentq(lambda v: _double_log(v) - target, 0.22, 5e4, xtol=1e-12))


@dataclass(frozen=True, slots=True)
class FluidState:
    """Density and kinematic viscosity at one temperature."""

    density_kg_m3: float
    viscosity_m2_s: float


@cache
def fluid_state(family: str, blend_percent: float, temperature_c: float) -> FluidState:
    """Return the state of a blend; the blend component is ethanol in gasoline and biodiesel elsewhere."""
    base = BASES[family]
    added = ETHANOL if family == "gasoline" else BIODIESEL
    share = blend_percent / 100
    parts = ((base, 1 - share), (added, share))
    density = sum(x * (c.density_15_kg_m3 + c.slope_kg_m3_k * (temperature_c - 15)) for c, x in parts)
    log_viscosity = sum(x * math.log(component_viscosity_mm2_s(c, temperature_c)) for c, x in parts if x > 0)
    return FluidState(density, math.exp(log_viscosity) * 1e-6)
