from __future__ import annotations

import subprocess
import sys

import pytest

from spoutline.model.faults import InputFault
from spoutline.model.quantity import Dimension
from spoutline.units.accepted import UnitSystem
from spoutline.units.quantities import parse


@pytest.mark.parametrize(
    ("text", "dimension", "system", "core"),
    [
        # exact factors of NIST SP 811 appendix B: foot 0.3048 m, inch 25.4 mm; psi and gpm as quotients of exact units
        ("12 ft", Dimension.LENGTH, UnitSystem.SI, 3.6576),
        ("3.66 m", Dimension.LENGTH, UnitSystem.US, 3.66),
        ("12", Dimension.LENGTH, UnitSystem.US, 3.6576),
        ("12", Dimension.LENGTH, UnitSystem.SI, 12.0),
        ("12'", Dimension.LENGTH, UnitSystem.SI, 3.6576),
        ("30psi", Dimension.PRESSURE, UnitSystem.SI, 206842.7188),
        ("  10 GPM ", Dimension.FLOW, UnitSystem.SI, 6.30901964e-4),
        ("40 l/min", Dimension.FLOW, UnitSystem.US, 40e-3 / 60),
        ("3/4 in", Dimension.DIAMETER, UnitSystem.SI, 0.01905),
        ('1-1/4"', Dimension.DIAMETER, UnitSystem.SI, 0.03175),
        ("1 1/4 in", Dimension.DIAMETER, UnitSystem.SI, 0.03175),
        # feet and inches as a tape is read: 6 ft 2-1/2 in = 74.5 in of 0.0254 m
        ("7ft 2in", Dimension.LENGTH, UnitSystem.SI, 86 * 0.0254),
        ("6' 2-1/2\"", Dimension.LENGTH, UnitSystem.SI, 74.5 * 0.0254),
        ("6 ft 3/4 in", Dimension.LENGTH, UnitSystem.US, 72.75 * 0.0254),
        ("7 ft 6 1/2 in", Dimension.LENGTH, UnitSystem.US, 90.5 * 0.0254),
        ("7'6-1/2\"", Dimension.LENGTH, UnitSystem.SI, 90.5 * 0.0254),
        ("7'-6 1/2\"", Dimension.LENGTH, UnitSystem.US, 90.5 * 0.0254),
        ("7' 6.5\"", Dimension.LENGTH, UnitSystem.US, 90.5 * 0.0254),
        ("7′ 6½″", Dimension.LENGTH, UnitSystem.US, 90.5 * 0.0254),
        ("90 in", Dimension.LENGTH, UnitSystem.US, 90 * 0.0254),
        ("90 1/2 in", Dimension.LENGTH, UnitSystem.US, 90.5 * 0.0254),
        ("-1 ft 2 in", Dimension.LENGTH, UnitSystem.US, -14 * 0.0254),
        ("2.3 m", Dimension.LENGTH, UnitSystem.US, 2.3),
        (".84 in", Dimension.DIAMETER, UnitSystem.SI, 0.021336),
        ("-4 °F", Dimension.TEMPERATURE, UnitSystem.SI, -20.0),
        ("\N{MINUS SIGN}4 F", Dimension.TEMPERATURE, UnitSystem.SI, -20.0),
        ("70000 ohm/ft", Dimension.RESISTANCE_PER_LENGTH, UnitSystem.SI, 229658.79),
        ("0.5 Mohm", Dimension.RESISTANCE, UnitSystem.SI, 5e5),
        ("1e3 N", Dimension.FORCE, UnitSystem.US, 1000.0),
        ("2", Dimension.COUNT, UnitSystem.US, 2.0),
        ("5 %", Dimension.RATIO, UnitSystem.US, 0.05),
        ("2 weeks", Dimension.DAYS, UnitSystem.US, 14.0),
    ],
)
def test_what_a_practitioner_types_is_understood(
    text: str, dimension: Dimension, system: UnitSystem, core: float
) -> None:
    assert parse(text, dimension, system) == pytest.approx(core, rel=1e-7)


@pytest.mark.parametrize(
    ("text", "dimension", "wanted"),
    [
        ("", Dimension.LENGTH, "12.5 m"),
        ("long", Dimension.LENGTH, "12.5 m"),
        ("12 ft 6", Dimension.LENGTH, "ft"),
        ("6 ft 14 in", Dimension.LENGTH, "fewer than 12 inches"),
        ("6 ft 1/0 in", Dimension.LENGTH, "fewer than 12 inches"),
        ("12 psi", Dimension.LENGTH, "ft"),
        ("3,66 m", Dimension.LENGTH, "decimal point"),
        ("1,000 N", Dimension.FORCE, "decimal point"),
        ("3/0 in", Dimension.DIAMETER, "number"),
        ("1e999 m", Dimension.LENGTH, "number"),
        ("nan", Dimension.LENGTH, "number"),
        ("inf m", Dimension.LENGTH, "number"),
        ("5 mΩ", Dimension.RESISTANCE, "MΩ"),  # milli and mega differ by case only, so case is not forgiven here
        ("12.5 m; rm", Dimension.LENGTH, "units"),
        ("__import__('os')", Dimension.LENGTH, "number"),
        ("3 apples", Dimension.COUNT, "no unit"),
    ],
)
def test_what_is_no_quantity_is_refused_with_what_would_be_right(text: str, dimension: Dimension, wanted: str) -> None:
    with pytest.raises(InputFault) as caught:
        parse(text, dimension, UnitSystem.SI, field="the field")
    (problem,) = caught.value.problems
    assert problem.field == "the field"
    assert problem.value == repr(text)
    assert wanted in problem.wanted


def test_without_a_field_name_the_message_names_the_dimension() -> None:
    with pytest.raises(InputFault) as caught:
        parse("x", Dimension.RESISTANCE_PER_LENGTH, UnitSystem.SI)
    assert caught.value.problems[0].field == "resistance per length"


def test_importing_the_units_does_not_import_pint() -> None:
    code = "import sys, spoutline.units.display, spoutline.units.quantities; print('pint' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"
