from __future__ import annotations

import math

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from spoutline.model.quantity import Dimension, Quantity
from spoutline.units.accepted import ACCEPTED, CORE_EXPRESSION, SHOWN, UnitSystem
from spoutline.units.display import Display
from spoutline.units.figures import figure
from spoutline.units.quantities import parse
from spoutline.units.unit_lines import to_core

SI = Display(UnitSystem.SI)
US = Display(UnitSystem.US)
ordinary = st.floats(min_value=-1e6, max_value=1e6, allow_nan=False)


@pytest.mark.parametrize("dimension", list(Dimension))
def test_every_dimension_has_a_core_unit_and_a_shown_unit_that_can_be_typed(dimension: Dimension) -> None:
    assert dimension in CORE_EXPRESSION
    assert set(SHOWN[dimension]) <= set(ACCEPTED[dimension])


@pytest.mark.parametrize(
    ("value", "dimension", "in_si", "in_us"),
    [
        # left and right are the pairs that the published texts print side by side
        (0.021336, Dimension.DIAMETER, "21.34 mm", "0.84 in"),  # 0.840 in (21.34 mm), 40 CFR 1090.1550
        (5.4864, Dimension.LENGTH, "5.486 m", "18 ft"),  # 18 ft, exact foot
        (6.30901964e-4, Dimension.FLOW, "37.85 L/min", "10 gpm"),  # EPA fact sheet: 10 gpm (37.9 L/min)
        (344737.86, Dimension.PRESSURE, "344.7 kPa", "50 psi"),  # UL scopes: 50 psi (345 kPa)
        (1556.8776, Dimension.FORCE, "1557 N", "350 lbf"),  # UL 567: 350 lbf (1557 N)
        (-20.0, Dimension.TEMPERATURE, "-20 °C", "-4 °F"),  # definition of the Fahrenheit scale
        (38.0, Dimension.TEMPERATURE, "38 °C", "100.4 °F"),
        (-160.0 / 9.0, Dimension.TEMPERATURE, "-17.78 °C", "0 °F"),
        (10.0, Dimension.TEMPERATURE_DIFFERENCE, "10 K", "18 °F"),
        (0.5e6, Dimension.RESISTANCE, "500 kΩ", "500 kΩ"),  # UL 567A: 0.5 megohm
        (1e6, Dimension.RESISTANCE, "1 MΩ", "1 MΩ"),
        (70000 / 0.3048, Dimension.RESISTANCE_PER_LENGTH, "229.7 kΩ/m", "70 kΩ/ft"),  # 70 000 ohm/ft (229.7 kohm/m)
        # 10 g x 0.09290304 m2/ft2 / 453.59237 g/lb, SP 811 B.8
        (0.01 / 86400, Dimension.PERMEATION, "10 g/m²·day", "0.002048 lb/ft²·day"),
        (1e-3 / 86400, Dimension.MASS_RATE, "1 g/day", "0.002205 lb/day"),  # 1 / 453.59237
        (1e-6, Dimension.KINEMATIC_VISCOSITY, "1 mm²/s", "1 cSt"),  # SP 811 B.8, exact
        (math.pi / 4, Dimension.ANGLE, "45°", "45°"),
        (1.0, Dimension.DAYS, "1 day", "1 day"),
        (14.0, Dimension.DAYS, "14 days", "14 days"),
        (15.0, Dimension.PERCENT, "15 %", "15 %"),
        (2.0, Dimension.COUNT, "2", "2"),
        (1.25, Dimension.RATIO, "1.25", "1.25"),
    ],
)
def test_a_value_is_shown_as_the_texts_print_it(value: float, dimension: Dimension, in_si: str, in_us: str) -> None:
    assert SI.show(value, dimension) == in_si
    assert US.show(value, dimension) == in_us


@pytest.mark.parametrize(
    ("metres", "shown"),
    [
        # inches of 0.0254 m (NIST SP 811 appendix B, exact), counted on a tape of sixteenths by hand
        (90.5 * 0.0254, "7 ft 6 1/2 in"),
        (86 * 0.0254, "7 ft 2 in"),
        (8 * 0.3048, "8 ft"),
        (0.75 * 0.0254, "3/4 in"),
        (11.9999 * 0.0254, "1 ft"),
        (12.5 * 0.0254, "1 ft 1/2 in"),
        (2.3, "7 ft 6 9/16 in"),  # 90.551 in
        (0.1953, "7 11/16 in"),  # 7.689 in
        (-13.75 * 0.0254, "-1 ft 1 3/4 in"),
        (0.0, "0 in"),
        (0.0001, "0.0039 in"),  # under half a sixteenth: not told as nothing
    ],
)
def test_a_length_is_told_as_a_tape_reads_in_us_units(metres: float, shown: str) -> None:
    assert US.show(metres, Dimension.LENGTH) == US.reading(metres, Dimension.LENGTH) == shown


@pytest.mark.parametrize(
    ("metres", "shown"), [(0.1953, "0.195 m"), (2.2987, "2.299 m"), (12.0, "12 m"), (0.05, "0.05 m")]
)
def test_a_length_is_told_to_the_millimetre_in_si_units(metres: float, shown: str) -> None:
    assert SI.show(metres, Dimension.LENGTH) == SI.reading(metres, Dimension.LENGTH) == shown


@given(value=st.floats(min_value=-30.0, max_value=30.0))
def test_a_length_on_a_tape_reads_back_within_half_a_sixteenth(value: float) -> None:
    half = 0.0254 / 32 * (1 + 1e-9)
    assert abs(parse(US.show(value, Dimension.LENGTH), Dimension.LENGTH, UnitSystem.US) - value) <= half


@given(value=st.floats(min_value=0.0, max_value=30.0))
@example(value=0.0002)  # less than a sixteenth of an inch
def test_a_bound_told_on_a_tape_is_one_that_may_be_typed(value: float) -> None:
    least, most = (
        parse(told(value, Dimension.LENGTH), Dimension.LENGTH, UnitSystem.US) for told in (US.at_least, US.at_most)
    )
    assert most <= value + 1e-8
    assert least >= value - 1e-8


@given(value=st.floats(min_value=-30.0, max_value=30.0), system=st.sampled_from(list(UnitSystem)))
def test_a_length_with_every_digit_reads_back_as_it_was(value: float, system: UnitSystem) -> None:
    text = Display(system).exact(value, Dimension.LENGTH)
    assert parse(text, Dimension.LENGTH, system) == pytest.approx(value, rel=1e-9, abs=5e-10)


def test_digits_keep_trailing_zeros() -> None:
    assert US.show(0.021336, Dimension.DIAMETER, digits=3) == "0.840 in"
    assert SI.show(0.0, Dimension.FORCE, digits=3) == "0.00 N"


def test_a_quantity_is_shown_with_the_unit_of_its_dimension() -> None:
    assert SI.show_quantity(Quantity("bore", 0.01905, Dimension.DIAMETER)) == "19.05 mm"


def test_a_resistance_just_under_a_megohm_does_not_show_a_thousand_kilo_ohm() -> None:
    assert SI.show(999_999.0, Dimension.RESISTANCE) == "1 MΩ"
    assert SI.show(999.0, Dimension.RESISTANCE) == "999 Ω"


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_what_is_no_number_is_never_shown(value: float) -> None:
    with pytest.raises(ValueError, match="cannot be shown"):
        SI.show(value, Dimension.LENGTH)


def test_no_digit_at_all_is_refused() -> None:
    with pytest.raises(ValueError, match="digits"):
        figure(1.0, digits=0)


@given(value=ordinary, digits=st.one_of(st.none(), st.integers(min_value=1, max_value=9)))
def test_a_figure_is_plain_ascii_and_reads_back_near_the_value(value: float, digits: int | None) -> None:
    text = figure(value, digits=digits)
    assert text.isascii()
    assert "," not in text
    assert text != "-0"
    assert float(text) == pytest.approx(value, rel=10.0 ** (1 - (digits or 4)), abs=1e-30)


@given(value=ordinary, dimension=st.sampled_from(list(Dimension)), system=st.sampled_from(list(UnitSystem)))
def test_what_is_shown_in_a_system_comes_back_as_the_same_si_value(
    value: float, dimension: Dimension, system: UnitSystem
) -> None:
    display = Display(system)
    assert display.from_shown(display.number(value, dimension), dimension) == pytest.approx(value, rel=1e-12, abs=1e-9)


@given(
    value=st.floats(min_value=1e-3, max_value=1e5),
    dimension=st.sampled_from([one for one in Dimension if one not in (Dimension.TEMPERATURE, Dimension.LENGTH)]),
)
def test_the_two_systems_agree_on_what_they_show(value: float, dimension: Dimension) -> None:
    read_back = {
        system: parse(Display(system).show(value, dimension, digits=9), dimension, system) for system in UnitSystem
    }
    assert read_back[UnitSystem.SI] == pytest.approx(read_back[UnitSystem.US], rel=1e-7)
    assert read_back[UnitSystem.SI] == pytest.approx(value, rel=1e-7)


@given(smaller=ordinary, larger=ordinary, dimension=st.sampled_from(list(Dimension)))
def test_no_system_turns_the_order_of_two_values_round(smaller: float, larger: float, dimension: Dimension) -> None:
    low, high = sorted((smaller, larger))
    assert US.number(low, dimension) <= US.number(high, dimension)


@given(value=st.floats(min_value=-1e3, max_value=1e3), dimension=st.sampled_from(list(Dimension)))
def test_every_accepted_spelling_of_one_unit_means_the_same(value: float, dimension: Dimension) -> None:
    by_expression: dict[str, float] = {}
    for spelling, expression in ACCEPTED[dimension].items():
        assert by_expression.setdefault(expression, to_core(value, spelling, dimension)) == to_core(
            value, spelling, dimension
        )
