"""How the hanging hose is drawn: the catenary, or straight falls with an arc where the hose cannot bend so tight."""

from __future__ import annotations

import math
from enum import StrEnum

from spoutline.calc.hanging_curve import CurvePoint, HangingCurve
from spoutline.calc.ranges import require_between, require_positive
from spoutline.calc.root import bracketed_root
from spoutline.frozen import frozen
from spoutline.model.quantity import Dimension


class SketchKind(StrEnum):
    """What the drawn curve is."""

    EXACT = "exact"  # the catenary
    ARC = "arc"  # approximate: two straight falls and an arc of the least bend radius
    TOO_TIGHT = "too_tight"  # no such arc fits: the catenary is drawn, the hose would have to bend tighter than it may


@frozen(kw_only=True)
class HangSketch:
    """Points of the drawn hose with its lowest height."""

    kind: SketchKind
    points: tuple[CurvePoint, ...]
    lowest_height_m: float

    @property
    def is_approximate(self) -> bool:
        """True unless the curve is the catenary of a hose that may bend so."""
        return self.kind is not SketchKind.EXACT


def sketch_of(curve: HangingCurve, *, minimum_bend_radius_m: float, count: int) -> HangSketch:
    """Return the points to draw for a hanging hose of a given least bend radius.

    Where the catenary bends tighter, two straight falls of equal slope phi (from the vertical) meet an arc of the
    least bend radius: ``(L - r (pi - 2 phi)) sin(phi) + 2 r cos(phi) = d``.

    Parameters
    ----------
    curve : HangingCurve
        The hanging hose [m].
    minimum_bend_radius_m : float
        Least bend radius of the hose [m].
    count : int
        Points [-], 2 or more.

    Returns
    -------
    HangSketch
        Points and lowest height [m], with what kind of curve it is.

    Raises
    ------
    OutOfRange
        A radius not above zero or fewer than two points.

    Source: engineering judgement: a stiff hose hangs wider and a little higher than the catenary.
    """
    require_positive("minimum_bend_radius_m", minimum_bend_radius_m, Dimension.LENGTH)
    require_between("count", float(count), Dimension.COUNT, low=2.0)
    if curve.least_bend_radius_m >= minimum_bend_radius_m:
        return HangSketch(kind=SketchKind.EXACT, points=curve.points(count), lowest_height_m=curve.lowest_height_m)
    bend = _bend_of(curve, minimum_bend_radius_m)
    if bend is None:
        return HangSketch(kind=SketchKind.TOO_TIGHT, points=curve.points(count), lowest_height_m=curve.lowest_height_m)
    points = tuple(bend.point_at(curve, curve.length_m * step / (count - 1)) for step in range(count))
    return HangSketch(kind=SketchKind.ARC, points=points, lowest_height_m=bend.lowest_height_m(curve))


@frozen
class _Bend:
    """Two straight falls of one slope and the arc between them."""

    slope_rad: float  # from the vertical; negative where the falls lean outward
    first_fall_m: float
    radius_m: float

    @property
    def arc_m(self) -> float:
        return self.radius_m * (math.pi - 2.0 * self.slope_rad)

    def lowest_height_m(self, curve: HangingCurve) -> float:
        drop = self.first_fall_m * math.cos(self.slope_rad) + self.radius_m * (1.0 - math.sin(self.slope_rad))
        return curve.start_height_m - drop

    def point_at(self, curve: HangingCurve, along_m: float) -> CurvePoint:
        sine, cosine = math.sin(self.slope_rad), math.cos(self.slope_rad)
        if along_m <= self.first_fall_m:
            return CurvePoint(along_m * sine, curve.start_height_m - along_m * cosine)
        if along_m >= self.first_fall_m + self.arc_m:
            back = curve.length_m - along_m
            return CurvePoint(curve.distance_m - back * sine, curve.end_height_m - back * cosine)
        # angle of the radius, from the horizontal on the start side round the bottom
        turned = self.slope_rad + (along_m - self.first_fall_m) / self.radius_m
        centre_x = self.first_fall_m * sine + self.radius_m * cosine
        centre_height = self.lowest_height_m(curve) + self.radius_m
        return CurvePoint(centre_x - self.radius_m * math.cos(turned), centre_height - self.radius_m * math.sin(turned))


def _bend_of(curve: HangingCurve, radius_m: float) -> _Bend | None:
    def falls_m(slope: float) -> float:
        return curve.length_m - radius_m * (math.pi - 2.0 * slope)

    def excess_m(slope: float) -> float:
        return falls_m(slope) * math.sin(slope) + 2.0 * radius_m * math.cos(slope) - curve.distance_m

    # excess rises with the slope as long as there is any straight fall
    low = max(-math.pi / 2.0, (math.pi - curve.length_m / radius_m) / 2.0)
    if low >= math.pi / 2.0 or excess_m(low) >= 0.0:
        return None
    slope = bracketed_root(excess_m, low=low, high=math.pi / 2.0)
    difference = (curve.end_height_m - curve.start_height_m) / math.cos(slope)
    first, second = (falls_m(slope) - difference) / 2.0, (falls_m(slope) + difference) / 2.0
    if first < 0.0 or second < 0.0:
        return None
    return _Bend(slope, first, radius_m)
