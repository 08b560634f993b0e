"""Conversion factors against NIST SP 811 appendix B and the definitions behind it.

The figures are exact by definition (inch 25.4 mm, avoirdupois pound 0.45359237 kg, US gallon 231 cubic inches, standard
gravity 9.80665 m/s2) or quotients of such; they were written down from memory of SP 811, not from a copy of it.
"""

from __future__ import annotations

import math

import pint
import pytest

from spoutline.model.quantity import Dimension
from spoutline.units.accepted import ACCEPTED, CORE_EXPRESSION
from spoutline.units.unit_lines import from_core, to_core

PUBLISHED = [
    # written, unit, dimension, core value, relative tolerance; source beside each
    (1.0, "gal", Dimension.VOLUME, 3.785411784e-3, 1e-12),  # SP 811 B.8, gallon (US), exact: 231 in3
    (1.0, "psi", Dimension.PRESSURE, 6894.757293168, 1e-10),  # SP 811 B.8, prints 6.894757 E+03
    (1.0, "lbf", Dimension.FORCE, 4.4482216152605, 1e-13),  # SP 811 B.8, pound-force, exact
    (0.75, "in", Dimension.DIAMETER, 0.01905, 1e-12),  # SP 811 B.8, inch, exact
    (10.0, "gpm", Dimension.FLOW, 6.30901964e-4, 1e-12),  # gallon per minute, from the exact gallon
    (1.0, "ft", Dimension.LENGTH, 0.3048, 1e-15),  # SP 811 B.8, foot, exact
    (1.0, "lb", Dimension.MASS, 0.45359237, 1e-15),  # SP 811 B.8, pound (avoirdupois), exact
    (1.0, "bar", Dimension.PRESSURE, 1e5, 1e-15),  # SP 811 B.8, bar, exact
    (1.0, "cSt", Dimension.KINEMATIC_VISCOSITY, 1e-6, 1e-12),  # SP 811 B.8, centistokes, exact
    (1.0, "°", Dimension.ANGLE, math.pi / 180.0, 1e-15),  # SP 811 B.8, degree, exact
    (1.0, "Ω/ft", Dimension.RESISTANCE_PER_LENGTH, 3.280840, 1e-6),  # 1/0.3048
    (1.0, "lbf·ft", Dimension.TORQUE, 1.355818, 1e-6),  # SP 811 B.8, foot pound-force, prints 1.355818
    (1.0, "lb/ft³", Dimension.DENSITY, 16.01846, 1e-6),  # SP 811 B.8, pound per cubic foot, prints 1.601846 E+01
    (1.0, "lb/ft", Dimension.MASS_PER_LENGTH, 1.488164, 1e-6),  # SP 811 B.8, pound per foot, prints 1.488164
    (1.0, "lbf/ft", Dimension.WEIGHT_PER_LENGTH, 14.59390, 1e-6),  # SP 811 B.8, pound-force per foot
    (1.0, "ft/s", Dimension.VELOCITY, 0.3048, 1e-15),  # exact
    (1.0, "ft²", Dimension.AREA, 0.09290304, 1e-12),  # SP 811 B.8, square foot, exact
    (86400.0, "g/m²·day", Dimension.PERMEATION, 1e-3, 1e-12),  # a day has 86 400 s
    (1.156099, "Cv", Dimension.FLOW_COEFFICIENT, 1.0, 1e-6),  # Cv = 1.156099 Kv, from the definitions of both
]


@pytest.mark.parametrize(("written", "unit", "dimension", "core", "tolerance"), PUBLISHED)
def test_factor_is_the_published_one(
    written: float, unit: str, dimension: Dimension, core: float, tolerance: float
) -> None:
    assert to_core(written, unit, dimension) == pytest.approx(core, rel=tolerance)
    assert from_core(core, unit, dimension) == pytest.approx(written, rel=tolerance)


@pytest.mark.parametrize(
    ("fahrenheit", "celsius"),
    # t/degC = (t/degF - 32)/1.8, SP 811 B.8; -40 is the point where the scales meet, 212 degF is the boiling point
    [(32.0, 0.0), (212.0, 100.0), (-40.0, -40.0), (100.4, 38.0)],
)
def test_fahrenheit_follows_its_definition(fahrenheit: float, celsius: float) -> None:
    assert to_core(fahrenheit, "°F", Dimension.TEMPERATURE) == pytest.approx(celsius, abs=1e-9)
    assert from_core(celsius, "°F", Dimension.TEMPERATURE) == pytest.approx(fahrenheit, abs=1e-9)


def test_kelvin_is_a_shift_of_273_15() -> None:
    # SP 811 B.8: T/K = t/degC + 273.15, exact
    assert to_core(273.15, "K", Dimension.TEMPERATURE) == pytest.approx(0.0, abs=1e-9)
    assert from_core(-273.15, "K", Dimension.TEMPERATURE) == pytest.approx(0.0, abs=1e-9)


def test_a_temperature_difference_has_no_offset() -> None:
    # SP 811 B.8: an interval of 1 degF is 1/1.8 K
    assert to_core(18.0, "°F", Dimension.TEMPERATURE_DIFFERENCE) == pytest.approx(10.0, rel=1e-12)
    assert to_core(10.0, "°C", Dimension.TEMPERATURE_DIFFERENCE) == pytest.approx(10.0, rel=1e-12)


def test_every_accepted_unit_is_what_the_unit_library_makes_of_it() -> None:
    # pint reads the same expressions with definitions of its own; it checks their dimensions too
    units = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
    for dimension, spellings in ACCEPTED.items():
        for spelling, expression in spellings.items():
            for value in (-40.0, 1.0, 212.0):
                theirs = units.Quantity(value, expression).to(CORE_EXPRESSION[dimension]).magnitude
                assert to_core(value, spelling, dimension) == pytest.approx(theirs, rel=2e-15, abs=1e-12), expression
                back = units.Quantity(value, CORE_EXPRESSION[dimension]).to(expression).magnitude
                assert from_core(value, spelling, dimension) == pytest.approx(back, rel=2e-15, abs=1e-12), expression
