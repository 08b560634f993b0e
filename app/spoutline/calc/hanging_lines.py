"""The worked lines of a hanging hose: the forms of the catenary that close with rounded figures."""

from __future__ import annotations

import math

from spoutline.calc.hanging_curve import HangingCurve
from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Dimension, Quantity

CATENARY_SOURCE = "catenary, statics textbook; inelastic, no bending stiffness"


def catenary_lines(curve: HangingCurve, *, inside: bool) -> tuple[WorkedLine, ...]:
    """Return how parameter, lowest point and tensions of a curve are worked out.

    Parameters
    ----------
    curve : HangingCurve
        A curve with its figures [m, N], not a doubled hose.
    inside : bool
        The vertex lies between the ends.

    Returns
    -------
    tuple of WorkedLine
        One line per figure, in the order in which a hand would take them.

    Source: catenary, statics textbooks.
    """
    distance = Quantity("d", curve.distance_m, Dimension.LENGTH)
    rise = Quantity("dh", curve.end_height_m - curve.start_height_m, Dimension.LENGTH)
    length = Quantity("L", curve.length_m, Dimension.LENGTH)
    weight = Quantity("w", curve.weight_n_m, Dimension.WEIGHT_PER_LENGTH)
    parameter = Quantity("a", curve.parameter_m, Dimension.LENGTH)
    vertex = Quantity("x0", curve.vertex_at_m, Dimension.LENGTH)
    pull = Quantity("H", curve.horizontal_tension_n, Dimension.FORCE)
    to_vertex = _length_to_vertex(curve, (distance, rise, length, parameter, vertex))
    half = to_vertex.result
    return (
        _line(
            "a = d / (2 z), sinh(z) / z = sqrt(L^2 - dh^2) / d",
            (distance, rise, length),
            parameter,
            note="a = bend radius at x0",
        ),
        _line("x0 = d / 2 - a artanh(dh / L)", (distance, parameter, rise, length), vertex),
        to_vertex,
        _lowest_line(curve, half, vertex, parameter, inside=inside),
        _line("H = w a", (weight, parameter), pull),
        _line(
            "T1 = sqrt(H^2 + (w s1)^2)",
            (pull, weight, half),
            Quantity("T1", curve.start_tension_n, Dimension.FORCE),
        ),
        _line(
            "T2 = sqrt(H^2 + (w (L - s1))^2)",
            (pull, weight, length, half),
            Quantity("T2", curve.end_tension_n, Dimension.FORCE),
        ),
    )


def bend_lines(curve: HangingCurve) -> tuple[WorkedLine, ...]:
    """Return the worked lines of the bend radius at the lowest point and at both ends; none for a doubled hose.

    Parameters
    ----------
    curve : HangingCurve
        A curve that ``hang`` returned.

    Returns
    -------
    tuple of WorkedLine
        Parameter, vertex, length to it, then the radii at the start and at the end [m].

    Source: radius of curvature of the catenary, ``a cosh^2((x - x0)/a) = (a^2 + s^2)/a`` with ``s`` from the vertex.
    """
    if curve.is_doubled:
        return ()
    a, length = curve.parameter_m, curve.length_m
    half = next(line.result for line in curve.lines if line.result.name == "s1")
    inputs = (Quantity("a", a, Dimension.LENGTH), half)
    start = _line(
        "r1 = (a^2 + s1^2) / a",
        inputs,
        Quantity("r1", (a**2 + half.value**2) / a, Dimension.LENGTH),
        note="bend radius at the dispenser's end",
    )
    end = _line(
        "r2 = (a^2 + (L - s1)^2) / a",
        (*inputs, Quantity("L", length, Dimension.LENGTH)),
        Quantity("r2", (a**2 + (length - half.value) ** 2) / a, Dimension.LENGTH),
        note="bend radius at the nozzle's end",
    )
    return (*curve.lines[:3], start, end)


def _line(formula: str, inputs: tuple[Quantity, ...], result: Quantity, *, note: str = "") -> WorkedLine:
    return WorkedLine(formula=formula, inputs=inputs, result=result, source=CATENARY_SOURCE, note=note)


def _length_to_vertex(
    curve: HangingCurve, given: tuple[Quantity, Quantity, Quantity, Quantity, Quantity]
) -> WorkedLine:
    """Return the hose from the start to the vertex as a worked line, negative where the vertex lies before it.

    Of the two exact forms the one is written that closes with rounded figures: sinh multiplies their error where the
    hose hangs steep, and the tanh form takes the difference of two large figures where it is nearly taut.
    """
    distance, rise, length, parameter, vertex = given
    ratio = curve.vertex_at_m / curve.parameter_m
    result = Quantity("s1", curve.parameter_m * math.sinh(ratio), Dimension.LENGTH)
    note = "s1 is the hose from the start to x0"
    if abs(ratio) > 1.0:
        return _line("s1 = (L - dh / tanh(d / (2 a))) / 2", (length, rise, distance, parameter), result, note=note)
    return _line("s1 = a sinh(x0 / a)", (parameter, vertex), result, note=note)


def _lowest_line(
    curve: HangingCurve, half: Quantity, vertex: Quantity, parameter: Quantity, *, inside: bool
) -> WorkedLine:
    start = Quantity("h1", curve.start_height_m, Dimension.LENGTH)
    lowest = Quantity("h_low", curve.lowest_height_m, Dimension.LENGTH)
    if inside:
        return _line("h_low = h1 - s1 tanh(x0 / (2 a))", (start, half, vertex, parameter), lowest)
    return _line(
        "h_low = min(h1, h2)",
        (start, Quantity("h2", curve.end_height_m, Dimension.LENGTH), vertex),
        lowest,
        note="the vertex lies outside the span: the lower end is the lowest point",
    )
