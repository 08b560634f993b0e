"""The hanging hose as an inelastic catenary, by the inspector's own code on scipy's root finder."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from scipy.optimize import brentq


@dataclass(frozen=True, slots=True)
class Hanging:
    """Lowest height above ground and end tensions per unit weight (multiply by N/m)."""

    lowest_m: float
    parameter_m: float
    tension_start_m: float
    tension_end_m: float


@lru_cache(maxsize=50_000)  # chains of other parts are often as long
def hang(height_start_m: float, height_end_m: float, distance_m: float, length_m: float) -> Hanging | None:
    """Return the curve of a line of ``length_m`` between two points; None where it is too short to reach.

    Tensions are given as T / w, which for a catenary is the height above its directrix.
    """
    rise = height_end_m - height_start_m
    if length_m**2 <= distance_m**2 + rise**2:
        return None
    if distance_m < 1e-6 * length_m:
        lowest = (height_start_m + height_end_m - length_m) / 2
        return Hanging(lowest, 0.0, height_start_m - lowest, height_end_m - lowest)
    ratio = math.sqrt(length_m**2 - rise**2) / distance_m

    def excess(z: float) -> float:
        log_sinh = z + math.log1p(-math.exp(-2 * z)) - math.log(2)
        return log_sinh - math.log(z) - math.log(ratio)

    z = float(brentq(excess, 1e-9, 2 * math.log(2 * ratio) + 10, xtol=1e-14))
    a = distance_m / (2 * z)
    low_x = distance_m / 2 - a * math.atanh(rise / length_m)
    if 0 <= low_x <= distance_m:
        lowest = height_start_m - a * (math.cosh(low_x / a) - 1)
    else:
        lowest = min(height_start_m, height_end_m)
    return Hanging(lowest, a, a * math.cosh(low_x / a), a * math.cosh((distance_m - low_x) / a))


def taut_length_m(distance_m: float, rise_m: float, plan_legs_m: tuple[float, ...], corner_radius_m: float) -> float:
    """Return the shortest way from outlet to filler, straight or round a vehicle by its legs in plan, m.

    Half the bend radius is added for each corner between two legs (engineering judgement).
    """
    if not plan_legs_m:
        return math.hypot(distance_m, rise_m)
    return math.hypot(sum(plan_legs_m), rise_m) + 0.5 * corner_radius_m * (len(plan_legs_m) - 1)
