"""The pull in many hoses that hang in use, at once: the catenary of ``calc.catenary`` over columns."""

from __future__ import annotations

import functools
import math

import numpy as np

from spoutline.calc.catenary import DOUBLED_BELOW
from spoutline.model.part_columns import Floats
from spoutline.model.survey import Position
from spoutline.rules.chain.hanging import way_m

_STEPS = 12  # of Newton's method: it closes in from above at the latest from the second on, the digits doubling
_SERIES_BELOW = 0.02


def tensions_in_use_n(position: Position, *, length_m: Floats, weight_n_m: Floats, along_m: Floats) -> Floats:
    """Return the greatest tension (N) of each of many chains with the nozzle in any filler; NaN where none hangs.

    Parameters: ``position``, outlet and fillers; by chain ``length_m`` from outlet to nozzle inlet, ``weight_n_m`` in
    N/m, and the place looked at, ``along_m`` from the outlet. Source: as ``calc.catenary``.
    """
    tensions = [
        _tensions_n(way_m(filler), filler.height_m - position.outlet.height_m, length_m, weight_n_m, along_m)
        for filler in position.fillers
    ]
    return functools.reduce(np.fmax, tensions, np.full_like(length_m, np.nan))


def _tensions_n(distance_m: float, rise_m: float, length_m: Floats, weight_n_m: Floats, along_m: Floats) -> Floats:
    """Return the tension of hoses that hang between two points; NaN for one that does not reach with slack.

    ``T = w sqrt(a^2 + (s0 - s)^2)`` at ``s`` metres of hose from the start, with ``s0 = (L - dh coth z)/2`` from the
    start to the lowest point, ``a = d/(2 z)`` and ``sinh(z)/z = sqrt(L^2 - dh^2)/d``.
    """
    straight = math.hypot(distance_m, rise_m)
    reaches = length_m > straight
    length = np.where(reaches, length_m, 2.0 * straight + 1.0)
    parameter, lean = np.zeros_like(length), np.ones_like(length)  # as one that hangs doubled has them
    spans = distance_m >= DOUBLED_BELOW.value * length
    if spans.any():
        stretch = 0.5 * np.log1p((length[spans] - straight) * (length[spans] + straight) / distance_m**2)
        half_span = _half_spans_over_parameter(stretch)
        parameter[spans], lean[spans] = distance_m / (2.0 * half_span), 1.0 / np.tanh(half_span)
    to_lowest = (length - rise_m * lean) / 2.0
    return np.where(reaches, weight_n_m * np.hypot(parameter, to_lowest - along_m), np.nan)


def _half_spans_over_parameter(stretch: Floats) -> Floats:
    """Solve ``log(sinh(z)/z) = stretch`` for z > 0 by Newton's method; the left side is convex and rises."""
    z = np.sqrt(6.0 * stretch)
    for _ in range(_STEPS):
        near = z < _SERIES_BELOW  # closed forms lose their digits there; the next terms are below 1e-14
        far = np.where(near, 1.0, z)
        value = np.where(
            near,
            z**2 / 6.0 - z**4 / 180.0 + z**6 / 2835.0,
            far + np.log1p(-np.exp(-2.0 * far)) - np.log(2.0 * far),
        )
        slope = np.where(near, z / 3.0 - z**3 / 45.0 + 2.0 * z**5 / 945.0, 1.0 / np.tanh(far) - 1.0 / far)
        z = z - (value - stretch) / slope
    return z
