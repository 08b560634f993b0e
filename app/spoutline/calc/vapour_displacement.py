"""How much vapour a litre of gasoline pushes out of a vehicle's tank."""

from __future__ import annotations

import math

from spoutline.calc.constants import Constant
from spoutline.calc.ranges import RangeReason, require_between, require_positive
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.vapour_figures import VapourFigure

US_GALLON = Constant("US gallon", 3.785411784e-3, "m3", "231 cubic inches, exact", LimitStatus.VERIFIED)
POUND = Constant("pound", 0.45359237, "kg", "avoirdupois pound, exact", LimitStatus.VERIFIED)
PSI = Constant("pound-force per square inch", 6894.757293168, "Pa", "exact pound-force and inch", LimitStatus.VERIFIED)
PUMP_REFERENCE = Constant(
    "non-road pump: reference temperature", 62.0, "degF", "EPA NONROAD evaporative routine", LimitStatus.VERIFIED
)
PUMP_SHARE = Constant(
    "non-road pump: share of the ambient difference", 0.6, "-", "EPA NONROAD evaporative routine", LimitStatus.VERIFIED
)
_LINEAR_SOURCE = "older linear form, kept as a comment in the EPA NONROAD routine"
GRAM_PER_GALLON = Constant(
    "one gram per US gallon", 1e-3 / US_GALLON.value, "kg/m3", "exact gallon", LimitStatus.VERIFIED
)


@frozen(kw_only=True)
class RateFigures:
    """Coefficients of the exponential form, written for degrees Fahrenheit, psi and grams per gallon."""

    constant: VapourFigure
    difference: VapourFigure
    dispensed: VapourFigure
    vapour_pressure: VapourFigure


@frozen(kw_only=True)
class TemperatureFigures:
    """Coefficients of the two temperature relations, written for degrees Fahrenheit."""

    dispensed_constant: VapourFigure
    dispensed_slope: VapourFigure
    difference_slope: VapourFigure
    difference_constant: VapourFigure
    difference_maximum: VapourFigure


@frozen(kw_only=True)
class Displacement:
    """Vapour pushed out per volume dispensed, with the lines it came from."""

    rate_kg_m3: float
    lines: tuple[WorkedLine, ...]


def fahrenheit(temperature_c: float) -> float:
    """Return a temperature in degrees Fahrenheit, in which the published forms are written.

    Parameters
    ----------
    temperature_c : float
        Temperature [degC].

    Returns
    -------
    float
        Temperature in degrees Fahrenheit.

    Source: definition of the Fahrenheit scale.
    """
    return temperature_c * 1.8 + 32.0


def celsius(temperature_f: float) -> float:
    """Return a temperature in degrees Celsius.

    Parameters
    ----------
    temperature_f : float
        Temperature [degF].

    Returns
    -------
    float
        Temperature [degC].

    Source: definition of the Fahrenheit scale.
    """
    return (temperature_f - 32.0) / 1.8


def dispensed_temperature_line(*, ambient_c: float, figures: TemperatureFigures) -> WorkedLine:
    """Return the temperature of the gasoline as dispensed, from the air's: ``T_D = a + b T`` in degrees Fahrenheit.

    Parameters
    ----------
    ambient_c : float
        Temperature of the air [degC], -40 to 50.
    figures : TemperatureFigures
        Constant and slope.

    Returns
    -------
    WorkedLine
        Dispensed temperature [degC].

    Raises
    ------
    OutOfRange
        A temperature outside -40 to 50.

    Source: EPA on-road refueling calculator (2008 California study).
    """
    require_between("ambient_c", ambient_c, Dimension.TEMPERATURE, low=-40.0, high=50.0)
    constant, slope = figures.dispensed_constant, figures.dispensed_slope
    dispensed_f = constant.value + slope.value * fahrenheit(ambient_c)
    return WorkedLine(
        formula=f"T_D = {constant.value:g} + {slope.value:g} T, in °F",
        inputs=(Quantity("T", ambient_c, Dimension.TEMPERATURE),),
        result=Quantity("T_D", celsius(dispensed_f), Dimension.TEMPERATURE),
        source=constant.origin,
    )


def pump_temperature_line(*, ambient_c: float) -> WorkedLine:
    """Return the dispensed temperature at a pump that serves non-road vehicles and boats.

    Parameters
    ----------
    ambient_c : float
        Temperature of the air [degC], -40 to 50.

    Returns
    -------
    WorkedLine
        Dispensed temperature [degC].

    Raises
    ------
    OutOfRange
        A temperature outside -40 to 50.

    Source: EPA NONROAD evaporative routine.
    """
    require_between("ambient_c", ambient_c, Dimension.TEMPERATURE, low=-40.0, high=50.0)
    reference = PUMP_REFERENCE.value
    dispensed_f = reference + PUMP_SHARE.value * (fahrenheit(ambient_c) - reference)
    return WorkedLine(
        formula=f"T_D = {reference:g} + {PUMP_SHARE.value:g} (T - {reference:g}), in °F",
        inputs=(Quantity("T", ambient_c, Dimension.TEMPERATURE),),
        result=Quantity("T_D", celsius(dispensed_f), Dimension.TEMPERATURE),
        source=PUMP_REFERENCE.origin,
    )


def pump_difference_line(*, ambient_c: float, dispensed_c: float) -> WorkedLine:
    """Return the difference of temperature that the non-road form takes: dispensed minus air.

    It belongs to ``pump_temperature_line``; the bounded difference of the on-road form does not go with it.

    Parameters
    ----------
    ambient_c : float
        Temperature of the air [degC], -40 to 50.
    dispensed_c : float
        Dispensed temperature [degC].

    Returns
    -------
    WorkedLine
        Difference of temperature [K], negative where the gasoline comes cooler than the air.

    Raises
    ------
    OutOfRange
        A temperature outside -40 to 50.

    Source: EPA NONROAD evaporative routine, as coded.
    """
    require_between("ambient_c", ambient_c, Dimension.TEMPERATURE, low=-40.0, high=50.0)
    return WorkedLine(
        formula="dT = T_D - T",
        inputs=(
            Quantity("T_D", dispensed_c, Dimension.TEMPERATURE),
            Quantity("T", ambient_c, Dimension.TEMPERATURE),
        ),
        result=Quantity("dT", dispensed_c - ambient_c, Dimension.TEMPERATURE_DIFFERENCE),
        source=PUMP_REFERENCE.origin,
        note="dispensed minus air, as the non-road form takes it",
    )


def tank_difference_line(*, dispensed_c: float, figures: TemperatureFigures) -> WorkedLine:
    """Return tank minus dispensed temperature, held to the range of the published form (0 to its maximum).

    Parameters
    ----------
    dispensed_c : float
        Dispensed temperature [degC].
    figures : TemperatureFigures
        Slope, constant and greatest value.

    Returns
    -------
    WorkedLine
        Difference of temperature [K].

    Source: EPA on-road refueling calculator; its form bounds the difference, the numbers are from a port.
    """
    slope, constant, most = figures.difference_slope, figures.difference_constant, figures.difference_maximum
    difference_f = min(max(slope.value * fahrenheit(dispensed_c) + constant.value, 0.0), most.value)
    return WorkedLine(
        formula=f"dT = {slope.value:g} T_D - {-constant.value:g}, in °F, from 0 to {most.value:g}",
        inputs=(Quantity("T_D", dispensed_c, Dimension.TEMPERATURE),),
        result=Quantity("dT", difference_f / 1.8, Dimension.TEMPERATURE_DIFFERENCE),
        source=slope.origin,
        note="the bounds belong to the published form",
    )


def displacement_rate(
    *, dispensed_c: float, difference_c: float, vapour_pressure_pa: float, figures: RateFigures
) -> Displacement:
    """Return the uncontrolled displacement: ``exp(A + B dT + C T_D + D RVP)`` in g/gal, °F and psi.

    Parameters
    ----------
    dispensed_c : float
        Dispensed temperature [degC], -30 to 50.
    difference_c : float
        Difference of temperature [K], -30 to 30: tank minus dispensed in the on-road form, dispensed minus air in the
        non-road form.
    vapour_pressure_pa : float
        Reid vapour pressure [Pa], 20 to 110 kPa.
    figures : RateFigures
        The coefficients.

    Returns
    -------
    Displacement
        Mass per volume dispensed [kg/m3].

    Raises
    ------
    OutOfRange
        A value outside its range.

    Source: EPA NONROAD evaporative routine and on-road refueling calculator (public code).
    """
    _require_rate_inputs(dispensed_c, difference_c, vapour_pressure_pa)
    exponent = (
        figures.constant.value
        + figures.difference.value * difference_c * 1.8
        + figures.dispensed.value * fahrenheit(dispensed_c)
        + figures.vapour_pressure.value * vapour_pressure_pa / PSI.value
    )
    coefficients = (figures.constant, figures.difference, figures.dispensed, figures.vapour_pressure)
    written = " ".join(
        f"{figure.value:+g}{symbol}" for figure, symbol in zip(coefficients, ("", " dT", " T_D", " RVP"), strict=True)
    )
    return _displacement(
        math.exp(exponent),
        f"r = exp({written}), in g/gal, °F and psi",
        _rate_inputs(dispensed_c, difference_c, vapour_pressure_pa),
        figures.constant.origin,
    )


def linear_displacement_rate(*, dispensed_c: float, difference_c: float, vapour_pressure_pa: float) -> Displacement:
    """Return the uncontrolled displacement by the older linear form, as a comparison.

    Parameters
    ----------
    dispensed_c : float
        Dispensed temperature [degC], -30 to 50.
    difference_c : float
        Tank minus dispensed temperature [K], -30 to 30.
    vapour_pressure_pa : float
        Reid vapour pressure [Pa], 20 to 110 kPa.

    Returns
    -------
    Displacement
        Mass per volume dispensed [kg/m3].

    Raises
    ------
    OutOfRange
        A value outside its range, or a combination for which the form gives nothing above zero.

    Source: comment in the EPA NONROAD evaporative routine.
    """
    _require_rate_inputs(dispensed_c, difference_c, vapour_pressure_pa)
    grams = (
        -5.909 - 0.0949 * difference_c * 1.8 + 0.0884 * fahrenheit(dispensed_c) + 0.485 * vapour_pressure_pa / PSI.value
    )
    require_positive("displacement_rate", grams, Dimension.RATIO)
    return _displacement(
        grams,
        "r = -5.909 - 0.0949 dT + 0.0884 T_D + 0.485 RVP (older form, for comparison), in g/gal, °F and psi",
        _rate_inputs(dispensed_c, difference_c, vapour_pressure_pa),
        _LINEAR_SOURCE,
    )


def fleet_displacement_line(
    *, uncontrolled_kg_m3: float, onboard_kg_m3: float, onboard_share: float, program_reduction: float
) -> WorkedLine:
    """Return the displacement of a mixed fleet: ``(1 - P) (r (1 - T) + r_onboard T)``.

    Parameters
    ----------
    uncontrolled_kg_m3 : float
        Displacement of a vehicle without onboard recovery [kg/m3].
    onboard_kg_m3 : float
        Displacement of a vehicle with it [kg/m3].
    onboard_share : float
        Share of gasoline into vehicles with onboard recovery [-], 0 to 1.
    program_reduction : float
        What recovery at the nozzle takes off [-], 0 to 1.

    Returns
    -------
    WorkedLine
        Mass per volume dispensed [kg/m3].

    Raises
    ------
    OutOfRange
        A share outside 0 to 1, a negative rate.

    Source: EPA on-road refueling calculator.
    """
    for field, value in (("onboard_share", onboard_share), ("program_reduction", program_reduction)):
        require_between(field, value, Dimension.RATIO, low=0.0, high=1.0)
    for field, value in (("uncontrolled_kg_m3", uncontrolled_kg_m3), ("onboard_kg_m3", onboard_kg_m3)):
        require_between(field, value, Dimension.EMISSION_FACTOR, low=0.0)
    mixed = uncontrolled_kg_m3 * (1.0 - onboard_share) + onboard_kg_m3 * onboard_share
    return WorkedLine(
        formula="r_fleet = (1 - P) (r (1 - T) + r_onboard T)",
        inputs=(
            Quantity("P", program_reduction, Dimension.RATIO),
            Quantity("r", uncontrolled_kg_m3, Dimension.EMISSION_FACTOR),
            Quantity("T", onboard_share, Dimension.RATIO),
            Quantity("r_onboard", onboard_kg_m3, Dimension.EMISSION_FACTOR),
        ),
        result=Quantity("r_fleet", (1.0 - program_reduction) * mixed, Dimension.EMISSION_FACTOR),
        source="EPA on-road refueling calculator",
    )


def _displacement(grams_per_gallon: float, formula: str, inputs: tuple[Quantity, ...], source: str) -> Displacement:
    rate = grams_per_gallon * GRAM_PER_GALLON.value
    line = WorkedLine(
        formula=formula, inputs=inputs, result=Quantity("r", rate, Dimension.EMISSION_FACTOR), source=source
    )
    return Displacement(rate_kg_m3=rate, lines=(line,))


def _rate_inputs(dispensed_c: float, difference_c: float, vapour_pressure_pa: float) -> tuple[Quantity, ...]:
    return (
        Quantity("dT", difference_c, Dimension.TEMPERATURE_DIFFERENCE),
        Quantity("T_D", dispensed_c, Dimension.TEMPERATURE),
        Quantity("RVP", vapour_pressure_pa, Dimension.PRESSURE),
    )


def _require_rate_inputs(dispensed_c: float, difference_c: float, vapour_pressure_pa: float) -> None:
    outside = RangeReason.OUTSIDE_DATA
    require_between("dispensed_c", dispensed_c, Dimension.TEMPERATURE, low=-30.0, high=50.0, reason=outside)
    require_between(
        "difference_c", difference_c, Dimension.TEMPERATURE_DIFFERENCE, low=-30.0, high=30.0, reason=outside
    )
    require_between("vapour_pressure_pa", vapour_pressure_pa, Dimension.PRESSURE, low=2e4, high=1.1e5, reason=outside)
