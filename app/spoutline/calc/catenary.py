"""The hose hanging between two points as a catenary: inelastic, without bending stiffness."""

from __future__ import annotations

import math
from dataclasses import replace
from functools import lru_cache

from spoutline.calc.constants import Constant
from spoutline.calc.hanging_curve import HangingCurve
from spoutline.calc.hanging_lines import catenary_lines
from spoutline.calc.ranges import OutOfRange, RangeReason, require_between, require_finite, require_positive
from spoutline.calc.root import bracketed_root
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Quantity

DOUBLED_BELOW = Constant(
    "distance over length below which the hose hangs doubled", 1e-6, "-", "numerical limit", LimitStatus.JUDGEMENT
)
DOUBLED_SOURCE = "two straight falls, statics"


def hang(
    *, distance_m: float, start_height_m: float, end_height_m: float, length_m: float, weight_n_m: float
) -> HangingCurve:
    """Return the curve of a hose that hangs between two points.

    ``sinh(z)/z = sqrt(L^2 - dh^2)/d``, ``a = d/(2 z)``, vertex ``x0 = d/2 - a artanh(dh/L)``, ``H = w a``,
    ``T = H cosh((x - x0)/a)``.

    Parameters
    ----------
    distance_m : float
        Horizontal distance between the ends [m], 0 or more; below 1e-6 of the length the hose hangs doubled.
    start_height_m : float
        Height of the start above the ground [m].
    end_height_m : float
        Height of the end above the ground [m].
    length_m : float
        Length of hose between the ends [m].
    weight_n_m : float
        Weight of the filled hose [N/m].

    Returns
    -------
    HangingCurve
        Parameter [m], lowest point [m], tensions [N], lines.

    Raises
    ------
    OutOfRange
        A negative distance, a weight or length not above zero, or ``CANNOT_REACH`` with the missing length.

    Source: catenary, statics textbooks (worked examples of a statics course in the tests).
    """
    require_between("distance_m", distance_m, Dimension.LENGTH, low=0.0)
    require_finite("start_height_m", start_height_m, Dimension.LENGTH)
    require_finite("end_height_m", end_height_m, Dimension.LENGTH)
    require_positive("length_m", length_m, Dimension.LENGTH)
    require_positive("weight_n_m", weight_n_m, Dimension.WEIGHT_PER_LENGTH)
    straight = math.hypot(distance_m, end_height_m - start_height_m)
    if length_m <= straight:
        raise OutOfRange(
            field="length_m",
            value=length_m,
            low=straight,
            high=None,
            dimension=Dimension.LENGTH,
            reason=RangeReason.CANNOT_REACH,
        )
    if distance_m < DOUBLED_BELOW.value * length_m:
        return _doubled(distance_m, start_height_m, end_height_m, length_m, weight_n_m)
    return _catenary(distance_m, start_height_m, end_height_m, length_m, weight_n_m)


def longest_clear_length(
    *, distance_m: float, start_height_m: float, end_height_m: float, clearance_m: float
) -> float | None:
    """Return the longest hose that hangs clear of the ground.

    With ``s1 = h1 - c`` and ``s2 = h2 - c``: ``a (arcosh(1 + s1/a) + arcosh(1 + s2/a)) = d``, then
    ``L = sqrt(s1^2 + 2 a s1) + sqrt(s2^2 + 2 a s2)``.

    Parameters
    ----------
    distance_m : float
        Horizontal distance between the ends [m], 0 or more.
    start_height_m : float
        Height of the start above the ground [m].
    end_height_m : float
        Height of the end above the ground [m].
    clearance_m : float
        Least height of the hose above the ground [m].

    Returns
    -------
    float or None
        Longest length [m]; None where an end itself is not above the clearance.

    Raises
    ------
    OutOfRange
        A negative distance or a value that is not a finite number.

    Source: catenary, statics textbooks.
    """
    require_between("distance_m", distance_m, Dimension.LENGTH, low=0.0)
    require_finite("clearance_m", clearance_m, Dimension.LENGTH)
    require_finite("start_height_m", start_height_m, Dimension.LENGTH)
    require_finite("end_height_m", end_height_m, Dimension.LENGTH)
    start, end = start_height_m - clearance_m, end_height_m - clearance_m
    if start <= 0.0 or end <= 0.0:
        return None
    if distance_m < DOUBLED_BELOW.value * (start + end):
        return start + end

    def span_m(parameter: float) -> float:
        # arcosh(1 + s/a) as 2 arsinh(sqrt(s/2a)): keeps its digits on a nearly taut hose
        return 2.0 * parameter * sum(math.asinh(math.sqrt(depth / (2.0 * parameter))) for depth in (start, end))

    low = high = distance_m
    while span_m(high) < distance_m:
        high *= 2.0
    while span_m(low) > distance_m:
        low /= 2.0
    parameter = (
        high
        if low == high
        else bracketed_root(lambda a: span_m(a) - distance_m, low=low, high=high, tolerance=1e-15 * high)
    )
    return sum(math.sqrt(depth**2 + 2.0 * parameter * depth) for depth in (start, end))


@lru_cache(maxsize=64)  # several checks of a set look at the same curve
def _catenary(distance: float, start: float, end: float, length: float, weight: float) -> HangingCurve:
    rise = end - start
    straight = math.hypot(distance, rise)
    # log(sqrt(L^2 - dh^2)/d), written so that it keeps its digits when the hose is nearly taut
    stretch = 0.5 * math.log1p((length - straight) * (length + straight) / distance**2)
    parameter = distance / (2.0 * _half_span_over_parameter(stretch))
    vertex = distance / 2.0 - parameter * math.atanh(rise / length)
    vertex_height = start - 2.0 * parameter * math.sinh(vertex / (2.0 * parameter)) ** 2
    inside = 0.0 <= vertex <= distance
    lowest_at = vertex if inside else (0.0 if start <= end else distance)
    lowest = vertex_height if inside else min(start, end)
    horizontal = weight * parameter
    start_tension = horizontal * math.cosh(vertex / parameter)
    end_tension = horizontal * math.cosh((distance - vertex) / parameter)
    curve = HangingCurve(
        distance_m=distance,
        start_height_m=start,
        end_height_m=end,
        length_m=length,
        weight_n_m=weight,
        parameter_m=parameter,
        vertex_at_m=vertex,
        lowest_height_m=lowest,
        lowest_at_m=lowest_at,
        horizontal_tension_n=horizontal,
        start_tension_n=start_tension,
        end_tension_n=end_tension,
        lines=(),
    )
    return replace(curve, lines=catenary_lines(curve, inside=inside))


def _half_span_over_parameter(stretch: float) -> float:
    """Solve ``log(sinh(z)/z) = stretch`` for z > 0."""

    def excess(z: float) -> float:
        return _log_sinh_over(z) - stretch

    high = 1.0
    while excess(high) < 0.0:
        high *= 2.0
    low = min(1e-9, math.sqrt(6.0 * stretch) / 2.0)
    return bracketed_root(excess, low=low, high=high, tolerance=1e-15 * high)


def _log_sinh_over(z: float) -> float:
    if z < 0.02:  # series: the closed form loses its digits near 0; the next term is below 1e-14 here
        return z**2 / 6.0 - z**4 / 180.0 + z**6 / 2835.0
    return z + math.log1p(-math.exp(-2.0 * z)) - math.log(2.0 * z)


def _doubled(distance: float, start: float, end: float, length: float, weight: float) -> HangingCurve:
    lowest = (start + end - length) / 2.0
    heights = (Quantity("h1", start, Dimension.LENGTH), Quantity("h2", end, Dimension.LENGTH))
    low = WorkedLine(
        formula="h_low = (h1 + h2 - L) / 2",
        inputs=(*heights, Quantity("L", length, Dimension.LENGTH)),
        result=Quantity("h_low", lowest, Dimension.LENGTH),
        source=DOUBLED_SOURCE,
    )
    tensions = tuple(
        WorkedLine(
            formula=f"T{number} = w (h{number} - h_low)",
            inputs=(Quantity("w", weight, Dimension.WEIGHT_PER_LENGTH), height, low.result),
            result=Quantity(f"T{number}", weight * (height.value - lowest), Dimension.FORCE),
            source=DOUBLED_SOURCE,
        )
        for number, height in enumerate(heights, start=1)
    )
    return HangingCurve(
        distance_m=distance,
        start_height_m=start,
        end_height_m=end,
        length_m=length,
        weight_n_m=weight,
        parameter_m=0.0,
        vertex_at_m=distance / 2.0,
        lowest_height_m=lowest,
        lowest_at_m=distance / 2.0,
        horizontal_tension_n=0.0,
        start_tension_n=tensions[0].result.value,
        end_tension_n=tensions[1].result.value,
        lines=(low, *tensions),
    )
