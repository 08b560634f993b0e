"""Viscosity of water at normal pressure: an outside reference for the viscosity equation of the calculations."""

from __future__ import annotations

import math

# IAPWS R12-08, release on the viscosity of ordinary water, tables 1 and 2 (coefficients from memory; the value at
# 25 degC is a row of published_hydraulics.csv and proves them).
_IDEAL = (1.67752, 2.20462, 0.6366564, -0.241605)
_RESIDUAL = {
    (0, 0): 5.20094e-1,
    (1, 0): 8.50895e-2,
    (2, 0): -1.08374,
    (3, 0): -2.89555e-1,
    (0, 1): 2.22531e-1,
    (1, 1): 9.99115e-1,
    (2, 1): 1.88797,
    (3, 1): 1.26613,
    (5, 1): 1.20573e-1,
    (0, 2): -2.81378e-1,
    (1, 2): -9.06851e-1,
    (2, 2): -7.72479e-1,
    (3, 2): -4.89837e-1,
    (4, 2): -2.57040e-1,
    (0, 3): 1.61913e-1,
    (1, 3): 2.57399e-1,
    (0, 4): -3.25372e-2,
    (3, 4): 6.98452e-2,
    (4, 5): 8.72102e-3,
    (3, 6): -4.35673e-3,
    (5, 6): -5.93264e-4,
}


def water_viscosity_pa_s(temperature_c: float, density_kg_m3: float) -> float:
    """Dynamic viscosity of liquid water."""
    t = (temperature_c + 273.15) / 647.096
    rho = density_kg_m3 / 322.0
    ideal = 100.0 * math.sqrt(t) / sum(h / t**i for i, h in enumerate(_IDEAL))
    residual = sum(h * (1.0 / t - 1.0) ** i * (rho - 1.0) ** j for (i, j), h in _RESIDUAL.items())
    return ideal * math.exp(rho * residual) * 1e-6
