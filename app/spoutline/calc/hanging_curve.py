"""The shape of a hanging hose: its points, its loads, its least bend radius, what lies below a height."""

from __future__ import annotations

import math
from typing import NamedTuple

from spoutline.calc.ranges import require_between, require_finite
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Dimension


class CurvePoint(NamedTuple):
    """A point of the hose: horizontal distance from the start, height above the ground."""

    x_m: float
    height_m: float


@frozen(kw_only=True)
class HangingCurve:
    """A hanging hose, start at x = 0. ``parameter_m`` equals the bend radius at the vertex; 0 for a doubled hose.

    ``vertex_at_m`` may lie outside the span: then an end is lowest and ``lowest_at_m`` is 0 or the distance.
    """

    distance_m: float
    start_height_m: float
    end_height_m: float
    length_m: float
    weight_n_m: float
    parameter_m: float
    vertex_at_m: float
    lowest_height_m: float
    lowest_at_m: float
    horizontal_tension_n: float
    start_tension_n: float
    end_tension_n: float
    lines: tuple[WorkedLine, ...]

    @property
    def is_doubled(self) -> bool:
        """True where both ends lie above one another, so that the hose hangs in two straight falls."""
        return self.parameter_m == 0.0

    @property
    def start_load_n(self) -> float:
        """Downward load on the start, negative where the hose lifts it [N]."""
        if self.is_doubled:
            return self.start_tension_n
        return self.horizontal_tension_n * math.sinh(self.vertex_at_m / self.parameter_m)

    @property
    def end_load_n(self) -> float:
        """Downward load on the end, negative where the hose lifts it [N]."""
        if self.is_doubled:
            return self.end_tension_n
        return self.horizontal_tension_n * math.sinh((self.distance_m - self.vertex_at_m) / self.parameter_m)

    @property
    def least_bend_radius_m(self) -> float:
        """Least radius of curvature of the hanging part [m]: ``a cosh^2`` at the point nearest the vertex."""
        if self.is_doubled:
            return 0.0
        nearest = min(max(self.vertex_at_m, 0.0), self.distance_m)
        return self.parameter_m * math.cosh((nearest - self.vertex_at_m) / self.parameter_m) ** 2

    def points(self, count: int) -> tuple[CurvePoint, ...]:
        """Return ``count`` points at equal steps along the hose, both ends included."""
        _require_count(count)
        inner = (self.point_at(self.length_m * step / (count - 1)) for step in range(1, count - 1))
        return (
            CurvePoint(0.0, self.start_height_m),
            *inner,
            CurvePoint(self.distance_m, self.end_height_m),
        )

    def point_at(self, along_m: float) -> CurvePoint:
        """Return the point ``along_m`` metres of hose from the start."""
        require_between("along_m", along_m, Dimension.LENGTH, low=0.0, high=self.length_m)
        if self.is_doubled:
            fall = self.start_height_m - self.lowest_height_m
            if along_m <= fall:
                return CurvePoint(0.0, self.start_height_m - along_m)
            return CurvePoint(self.distance_m, self.lowest_height_m + along_m - fall)
        a, x0 = self.parameter_m, self.vertex_at_m
        x = x0 + a * math.asinh(along_m / a - math.sinh(x0 / a))
        # product form of a (cosh((x - x0)/a) - cosh(x0/a)): keeps its digits on a nearly taut hose
        return CurvePoint(x, self.start_height_m + 2 * a * math.sinh(x / (2 * a)) * math.sinh((x - 2 * x0) / (2 * a)))

    def length_below_m(self, height_m: float) -> float:
        """Return how much hose of the ideal curve lies below a height [m]; for the ground, how much drags."""
        require_finite("height_m", height_m, Dimension.LENGTH)
        if height_m <= self.lowest_height_m:
            return 0.0
        return self._below_on_side_m(height_m, at_start=True) + self._below_on_side_m(height_m, at_start=False)

    def _below_on_side_m(self, height_m: float, *, at_start: bool) -> float:
        """Signed length from the vertex toward one end, as far as it lies below the height."""
        end_height = self.start_height_m if at_start else self.end_height_m
        if self.is_doubled:
            return min(height_m, end_height) - self.lowest_height_m
        a = self.parameter_m
        to_end = a * math.sinh((self.vertex_at_m if at_start else self.distance_m - self.vertex_at_m) / a)
        depth = height_m - self._vertex_height_m()
        to_height = math.sqrt(depth**2 + 2.0 * a * depth)
        return min(to_height, to_end)

    def _vertex_height_m(self) -> float:
        return (
            self.start_height_m - 2.0 * self.parameter_m * math.sinh(self.vertex_at_m / (2.0 * self.parameter_m)) ** 2
        )


def _require_count(count: int) -> None:
    require_between("count", float(count), Dimension.COUNT, low=2.0)
