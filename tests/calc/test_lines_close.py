"""Worked lines followed by hand: the printed, rounded figures put into the printed formula give the printed result.

The formulas are written out here once more, from statics textbooks (catenary) and the definition of Kv, and fed with
figures rounded as they are shown.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from spoutline.calc.catenary import hang
from spoutline.calc.elements import FlowCoefficient
from spoutline.calc.hanging_curve import HangingCurve
from spoutline.calc.hanging_lines import bend_lines
from spoutline.calc.liquids import liquid_state
from spoutline.calc.losses import element_loss
from spoutline.calc.permeation import permeation_loss
from spoutline.model.check import WorkedLine
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.quantity import Quantity
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

Figures = dict[str, float]

BY_HAND: dict[str, Callable[[Figures], float]] = {
    "x0 = d / 2 - a artanh(dh / L)": lambda q: q["d"] / 2 - q["a"] * math.atanh(q["dh"] / q["L"]),
    "s1 = (L - dh / tanh(d / (2 a))) / 2": lambda q: (q["L"] - q["dh"] / math.tanh(q["d"] / (2 * q["a"]))) / 2,
    "s1 = a sinh(x0 / a)": lambda q: q["a"] * math.sinh(q["x0"] / q["a"]),
    "h_low = h1 - s1 tanh(x0 / (2 a))": lambda q: q["h1"] - q["s1"] * math.tanh(q["x0"] / (2 * q["a"])),
    "h_low = min(h1, h2)": lambda q: min(q["h1"], q["h2"]),
    "H = w a": lambda q: q["w"] * q["a"],
    "T1 = sqrt(H^2 + (w s1)^2)": lambda q: math.hypot(q["H"], q["w"] * q["s1"]),
    "T2 = sqrt(H^2 + (w (L - s1))^2)": lambda q: math.hypot(q["H"], q["w"] * (q["L"] - q["s1"])),
    "r1 = (a^2 + s1^2) / a": lambda q: (q["a"] ** 2 + q["s1"] ** 2) / q["a"],
    "r2 = (a^2 + (L - s1)^2) / a": lambda q: (q["a"] ** 2 + (q["L"] - q["s1"]) ** 2) / q["a"],
    "p = p1 (rho / rho_w) (Q / Q1)^2": lambda q: q["p1"] * q["rho"] / q["rho_w"] * (q["Q"] / q["Q1"]) ** 2,
}
LENGTHS = {"x0", "s1", "h_low"}


def printed(quantity: Quantity, display: Display) -> float:
    """Return the figure that stands on the sheet: four significant digits in the unit shown."""
    shown = display.number(quantity.value, quantity.dimension)
    return float(f"{shown:.4g}")


def assert_closes(line: WorkedLine, system: UnitSystem) -> None:
    """Fail where the rounded figures do not give the result to the digits that their rounding leaves."""
    display = Display(system)
    figures = {quantity.name: printed(quantity, display) for quantity in line.inputs}
    result = printed(line.result, display)
    by_hand = BY_HAND[line.formula](figures)
    # a length that is a difference closes to the rounding of the lengths that it was taken from
    size = max(abs(figure) for figure in figures.values()) if line.result.name in LENGTHS else abs(result)
    assert by_hand == pytest.approx(result, abs=2.5e-3 * size), (line.formula, figures, result)


CURVES = [
    hang(distance_m=0.35, start_height_m=2.3, end_height_m=1.1, length_m=3.233, weight_n_m=11.35),  # steep, on its hook
    hang(distance_m=1.8, start_height_m=2.3, end_height_m=0.9, length_m=3.233, weight_n_m=11.35),  # in use
    hang(distance_m=3.0, start_height_m=2.1, end_height_m=2.1, length_m=3.05, weight_n_m=8.0),  # nearly taut
    hang(distance_m=2.5, start_height_m=3.0, end_height_m=0.5, length_m=3.6, weight_n_m=8.0),  # vertex past the end
]


@pytest.mark.parametrize("system", list(UnitSystem))
@pytest.mark.parametrize("curve", CURVES)
def test_lines_of_the_hanging_curve_close_by_hand(curve: HangingCurve, system: UnitSystem) -> None:
    lines = [line for line in (*curve.lines, *bend_lines(curve)) if not line.formula.startswith("a = d / (2 z)")]
    assert len(lines) == 10
    for line in lines:
        assert_closes(line, system)


def test_bend_radius_at_each_end_is_that_of_the_curve_drawn() -> None:
    """The circle through three near points of the curve has the radius of its bend (geometry)."""
    for curve in CURVES:
        *_, start, end = bend_lines(curve)
        for radius, at in ((start.result.value, 0.0), (end.result.value, curve.length_m)):
            step = 1e-3 if at == 0.0 else -1e-3
            one, two, three = (curve.point_at(at + step * place) for place in range(3))
            sides = [
                math.dist((p.x_m, p.height_m), (q.x_m, q.height_m)) for p, q in ((one, two), (two, three), (one, three))
            ]
            area = (
                abs(
                    (two.x_m - one.x_m) * (three.height_m - one.height_m)
                    - (three.x_m - one.x_m) * (two.height_m - one.height_m)
                )
                / 2
            )
            assert radius == pytest.approx(math.prod(sides) / (4 * area), rel=2e-2)
            assert radius >= curve.least_bend_radius_m * (1 - 1e-12)


@pytest.mark.parametrize("system", list(UnitSystem))
def test_loss_of_a_part_with_kv_closes_in_the_units_shown(system: UnitSystem) -> None:
    state = liquid_state(Liquid(LiquidFamily.GASOLINE, 10.0), 15.0)
    (line,) = element_loss(FlowCoefficient(3.2), 76.03e-3 / 60, state).lines
    assert_closes(line, system)
    assert "bar" not in line.formula + line.note


@pytest.mark.parametrize("system", list(UnitSystem))
def test_yearly_permeation_closes_in_the_units_shown(system: UnitSystem) -> None:
    loss = permeation_loss(rate_kg_m2_s=0.085 / 86400, bore_m=0.01905, length_m=2.743, temperature_c=7.5)
    display = Display(system)
    rate, year = loss.lines[2:]
    figures = {quantity.name: printed(quantity, display) for quantity in rate.inputs}
    assert figures["q"] * figures["A"] * figures["F"] == pytest.approx(printed(rate.result, display), rel=2e-3)
    daily, days = (printed(quantity, display) for quantity in year.inputs)
    grams = 1000.0 if system is UnitSystem.SI else 1.0  # kg of the year over g of the day
    assert daily * days / grams == pytest.approx(printed(year.result, display), rel=2e-3)
