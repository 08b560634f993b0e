"""Darcy friction factor in straight, annular and coiled passages, continuous in the Reynolds number."""

from __future__ import annotations

import math
from collections.abc import Callable
from enum import StrEnum

from spoutline.calc.constants import Constant
from spoutline.calc.ranges import require_between, require_positive
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension

LAMINAR_UP_TO = Constant(
    "Reynolds number up to which flow is laminar", 2000.0, "-", "handbook practice", LimitStatus.JUDGEMENT
)
TURBULENT_FROM = Constant(
    "Reynolds number from which flow is turbulent", 4000.0, "-", "handbook practice", LimitStatus.JUDGEMENT
)
LAMINAR_ROUND = Constant(
    "f Re of laminar flow in a round bore", 64.0, "-", "Hagen-Poiseuille, exact", LimitStatus.VERIFIED
)
LAMINAR_SLIT = Constant("f Re of laminar flow in a slit", 96.0, "-", "Hagen-Poiseuille, exact", LimitStatus.VERIFIED)
GREATEST_RELATIVE_ROUGHNESS = Constant(
    "greatest relative roughness of the Colebrook equation", 0.05, "-", "Moody chart", LimitStatus.MEMORY
)
SMOOTH_RUBBER_ROUGHNESS = Constant(
    "roughness of a smooth rubber bore", 1.0e-5, "m", "published roughness table, smooth rubber", LimitStatus.SECONDARY
)
COIL_BLEND = Constant(
    "width of the bridge over a step of a coil correlation",
    0.1,
    "-",
    "share of the Reynolds number",
    LimitStatus.JUDGEMENT,
)
SCHMIDT_SWITCH = Constant(
    "Reynolds number at which the turbulent coil correlation changes form",
    2.2e4,
    "-",
    "Schmidt 1967",
    LimitStatus.SECONDARY,
)
LEAST_COIL_RATIO = Constant(
    "least coil diameter in bores", 2.0, "-", "a tighter coil is no coil of hose", LimitStatus.JUDGEMENT
)
SLIT_GAP = Constant(
    "1 - d/D below which a ring counts as a slit",
    1e-3,
    "-",
    "there the formula loses its digits",
    LimitStatus.JUDGEMENT,
)

STRAIGHT_SOURCE = "64/Re up to Re 2000; Colebrook 1939 from Re 4000; straight line between (engineering judgment)"
ANNULUS_SOURCE = "laminar: exact for concentric tubes; Colebrook on the hydraulic diameter from Re 4000, +-10 %"
COIL_SOURCE = "larger of straight and Schmidt 1967 coil factor, steps bridged over +-10 % of Re; estimate, +-25 %"


class FlowRegime(StrEnum):
    """How the liquid flows; in transition the loss is uncertain by 20 percent."""

    LAMINAR = "laminar"
    TRANSITION = "transition"
    TURBULENT = "turbulent"


def regime_of(reynolds: float) -> FlowRegime:
    """Return the regime of a straight passage.

    Parameters
    ----------
    reynolds : float
        Reynolds number [-].

    Returns
    -------
    FlowRegime
        Laminar up to 2000, turbulent from 4000.

    Source: handbook practice; the bounds are engineering judgement.
    """
    if reynolds <= LAMINAR_UP_TO.value:
        return FlowRegime.LAMINAR
    return FlowRegime.TURBULENT if reynolds >= TURBULENT_FROM.value else FlowRegime.TRANSITION


def friction_factor(*, reynolds: float, relative_roughness: float, laminar_constant: float = 64.0) -> float:
    """Return the Darcy friction factor of a straight passage.

    ``f = C / Re`` up to Re 2000, ``1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re sqrt(f)))`` from Re 4000, and a straight
    line in Re between: continuous, and the loss rises strictly with flow.

    Parameters
    ----------
    reynolds : float
        Reynolds number [-], above 0.
    relative_roughness : float
        Roughness over diameter [-], 0 to 0.05.
    laminar_constant : float
        ``f Re`` of laminar flow [-]: 64 in a round bore.

    Returns
    -------
    float
        Darcy friction factor [-].

    Raises
    ------
    OutOfRange
        Reynolds number not above zero, roughness outside 0 to 0.05, constant outside 64 to 96.

    Source: Hagen-Poiseuille; Colebrook 1939 by the exact solution of Clamond 2009; the bridge is engineering judgement.
    """
    require_positive("reynolds", reynolds, Dimension.RATIO)
    require_between(
        "relative_roughness", relative_roughness, Dimension.RATIO, low=0.0, high=GREATEST_RELATIVE_ROUGHNESS.value
    )
    require_between(
        "laminar_constant", laminar_constant, Dimension.RATIO, low=LAMINAR_ROUND.value, high=LAMINAR_SLIT.value
    )
    return trusted_friction_factor(reynolds, relative_roughness, laminar_constant)


def trusted_friction_factor(reynolds: float, relative_roughness: float, laminar_constant: float) -> float:
    """Return the friction factor of arguments that an element has already checked; the search calls this per part.

    Parameters
    ----------
    reynolds : float
        Reynolds number [-], above 0.
    relative_roughness : float
        Roughness over diameter [-].
    laminar_constant : float
        ``f Re`` of laminar flow [-].

    Returns
    -------
    float
        Darcy friction factor [-].

    Source: as ``friction_factor``.
    """
    return trusted_friction_curve(relative_roughness, laminar_constant)(reynolds)


def trusted_friction_curve(relative_roughness: float, laminar_constant: float) -> Callable[[float], float]:
    """Return the friction factor by Reynolds number of one passage, for whoever asks it many times.

    Parameters
    ----------
    relative_roughness : float
        Roughness over diameter [-].
    laminar_constant : float
        ``f Re`` of laminar flow [-].

    Returns
    -------
    callable
        Friction factor [-] of a Reynolds number [-] above 0.

    Source: as ``friction_factor``.
    """
    from fluids.friction import Clamond

    low, high = LAMINAR_UP_TO.value, TURBULENT_FROM.value

    def factor(reynolds: float) -> float:
        if reynolds <= low:
            return laminar_constant / reynolds
        if reynolds >= high:
            return float(Clamond(reynolds, relative_roughness))
        return _bridge(reynolds, low, high, laminar_constant / low, float(Clamond(high, relative_roughness)))

    return factor


def annulus_laminar_constant(diameter_ratio: float) -> float:
    """Return ``f Re`` of laminar flow between concentric tubes.

    ``64 (1 - r)^2 / (1 + r^2 + (1 - r^2) / ln r)``: 64 at r = 0 up to 96 for a slit.

    Parameters
    ----------
    diameter_ratio : float
        Outside diameter of the inner tube over inside diameter of the outer one [-], above 0 and below 1.

    Returns
    -------
    float
        ``f Re`` with the hydraulic diameter [-].

    Raises
    ------
    OutOfRange
        Ratio outside 0 to 1.

    Source: textbook solution of laminar flow in a concentric annulus; table value 95.25 at r = 0.5 (memory).
    """
    require_positive("diameter_ratio", diameter_ratio, Dimension.RATIO)
    gap = 1.0 - diameter_ratio
    require_positive("1 - diameter_ratio", gap, Dimension.RATIO)
    # close to a slit the two terms below cancel: their difference is of third order in the gap
    if gap < SLIT_GAP.value:
        return LAMINAR_SLIT.value
    below = 1.0 + diameter_ratio**2 + (1.0 - diameter_ratio**2) / math.log(diameter_ratio)
    return LAMINAR_ROUND.value * gap**2 / below


def coil_critical_reynolds(*, bore_m: float, coil_diameter_m: float) -> float:
    """Return the Reynolds number at which flow in a coil turns turbulent; later than in a straight bore.

    Parameters
    ----------
    bore_m : float
        Bore [m].
    coil_diameter_m : float
        Diameter of the coil's centre line [m], at least two bores.

    Returns
    -------
    float
        Critical Reynolds number [-].

    Raises
    ------
    OutOfRange
        A bore not above zero or a tighter coil.

    Source: Schmidt 1967 as given in the fluids library.
    """
    from fluids.friction import helical_Re_crit

    require_positive("bore_m", bore_m, Dimension.DIAMETER)
    require_between("coil_diameter_m", coil_diameter_m, Dimension.DIAMETER, low=LEAST_COIL_RATIO.value * bore_m)
    return float(helical_Re_crit(bore_m, coil_diameter_m, Method="Schmidt"))


def coil_friction_factor(*, reynolds: float, bore_m: float, coil_diameter_m: float, roughness_m: float) -> float:
    """Return the Darcy friction factor of hose wound on a drum: the larger of the straight and the coil factor.

    Parameters
    ----------
    reynolds : float
        Reynolds number [-], above 0.
    bore_m : float
        Bore [m].
    coil_diameter_m : float
        Diameter of the coil's centre line [m], at least two bores.
    roughness_m : float
        Roughness of the bore [m].

    Returns
    -------
    float
        Darcy friction factor [-], an estimate within 25 percent.

    Raises
    ------
    OutOfRange
        Values outside what a coil of hose can be.

    Source: Schmidt 1967 as given in the fluids library; bridges over its steps are engineering judgement.
    """
    require_positive("reynolds", reynolds, Dimension.RATIO)
    require_positive("bore_m", bore_m, Dimension.DIAMETER)
    require_between(
        "roughness_m", roughness_m, Dimension.LENGTH, low=0.0, high=GREATEST_RELATIVE_ROUGHNESS.value * bore_m
    )
    require_between("coil_diameter_m", coil_diameter_m, Dimension.DIAMETER, low=LEAST_COIL_RATIO.value * bore_m)
    return trusted_coil_friction_factor(reynolds, bore_m, coil_diameter_m, roughness_m)


def trusted_coil_friction_factor(reynolds: float, bore_m: float, coil_diameter_m: float, roughness_m: float) -> float:
    """Return the coil friction factor of arguments that an element has already checked.

    Parameters
    ----------
    reynolds : float
        Reynolds number [-], above 0.
    bore_m : float
        Bore [m].
    coil_diameter_m : float
        Diameter of the coil's centre line [m].
    roughness_m : float
        Roughness of the bore [m].

    Returns
    -------
    float
        Darcy friction factor [-].

    Source: as ``coil_friction_factor``.
    """
    straight = trusted_friction_factor(reynolds, roughness_m / bore_m, LAMINAR_ROUND.value)
    return max(straight, _schmidt(reynolds, bore_m, coil_diameter_m, roughness_m))


def _schmidt(reynolds: float, bore_m: float, coil_diameter_m: float, roughness_m: float) -> float:
    from fluids.friction import helical_laminar_fd_Schmidt, helical_turbulent_fd_Schmidt

    critical = coil_critical_reynolds(bore_m=bore_m, coil_diameter_m=coil_diameter_m)

    def turbulent(at: float) -> float:
        return float(helical_turbulent_fd_Schmidt(at, bore_m, coil_diameter_m, roughness_m))

    def laminar(at: float) -> float:
        return float(helical_laminar_fd_Schmidt(at, bore_m, coil_diameter_m))

    low, high = (1.0 - COIL_BLEND.value) * critical, (1.0 + COIL_BLEND.value) * critical
    if reynolds <= low:
        return laminar(reynolds)
    if reynolds < high:
        return _bridge(reynolds, low, high, laminar(low), turbulent(high))
    low, high = (1.0 - COIL_BLEND.value) * SCHMIDT_SWITCH.value, (1.0 + COIL_BLEND.value) * SCHMIDT_SWITCH.value
    if low < reynolds < high:
        return _bridge(reynolds, low, high, turbulent(low), turbulent(high))
    return turbulent(reynolds)


def _bridge(reynolds: float, low: float, high: float, factor_low: float, factor_high: float) -> float:
    return factor_low + (factor_high - factor_low) * (reynolds - low) / (high - low)
