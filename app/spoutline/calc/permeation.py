"""Gasoline that leaves through the wall of the hose."""

from __future__ import annotations

import math

from spoutline.calc.constants import SECONDS_PER_DAY, Constant
from spoutline.calc.ranges import RangeReason, require_between, require_positive
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.model.quantity import Dimension, Quantity

DOUBLING_STEP = Constant(
    "rise of temperature that doubles permeation",
    10.0,
    "K",
    "form A exp(B T) of the EPA on-road emission model; B = 0.0385 per F, that is ln 2 per 18 F",
    LimitStatus.MEMORY,
)
LOWEST_TEMPERATURE = Constant(
    "lowest temperature of the doubling rule", 0.0, "degC", "usual range", LimitStatus.JUDGEMENT
)
HIGHEST_TEMPERATURE = Constant(
    "highest temperature of the doubling rule", 45.0, "degC", "usual range", LimitStatus.JUDGEMENT
)
RATE_TEMPERATURE = Constant(
    "temperature at which the rate of a hose is stated",
    38.0,
    "degC",
    "permeation class of hoses",
    LimitStatus.SECONDARY,
)
DAYS_PER_YEAR = Constant("days per year", 365.0, "d", "calendar", LimitStatus.VERIFIED)


@frozen(kw_only=True)
class PermeationLoss:
    """What leaves through the wall; an estimate away from the test temperature."""

    inner_area_m2: float
    temperature_factor: float
    loss_kg_s: float
    yearly_loss_kg: float
    lines: tuple[WorkedLine, ...]


def permeation_applies(family: LiquidFamily) -> bool:
    """Say whether permeation matters: gasoline and its ethanol blends only.

    Parameters
    ----------
    family : LiquidFamily
        The liquid [-].

    Returns
    -------
    bool
        True for gasoline.

    Source: vapour pressure of the liquids; permeation rules address gasoline.
    """
    return family is LiquidFamily.GASOLINE


def permeation_loss(
    *,
    rate_kg_m2_s: float,
    bore_m: float,
    length_m: float,
    temperature_c: float,
    rate_temperature_c: float = RATE_TEMPERATURE.value,
) -> PermeationLoss:
    """Return what a hose loses through its wall: ``m = q pi D L 2^((t - t_ref) / 10 K)``.

    Parameters
    ----------
    rate_kg_m2_s : float
        Permeation rate on the inner area [kg/(m2.s)], 0 or more; 10 g/(m2.day) is 1.157e-7.
    bore_m : float
        Bore [m].
    length_m : float
        Length [m].
    temperature_c : float
        Temperature of the hose [degC], 0 to 45.
    rate_temperature_c : float
        Temperature at which the rate was measured [degC], 0 to 45; 38 where not given.

    Returns
    -------
    PermeationLoss
        Area [m2], factor [-], loss [kg/s] and [kg] in a year, lines.

    Raises
    ------
    OutOfRange
        A temperature outside 0 to 45, a negative rate, a bore or length not above zero.

    Source: EPA on-road emission model (form read, coefficient from memory); not proven for every elastomer.
    """
    require_between("rate_kg_m2_s", rate_kg_m2_s, Dimension.PERMEATION, low=0.0)
    require_positive("bore_m", bore_m, Dimension.DIAMETER)
    require_positive("length_m", length_m, Dimension.LENGTH)
    for field, value in (("temperature_c", temperature_c), ("rate_temperature_c", rate_temperature_c)):
        require_between(
            field,
            value,
            Dimension.TEMPERATURE,
            low=LOWEST_TEMPERATURE.value,
            high=HIGHEST_TEMPERATURE.value,
            reason=RangeReason.OUTSIDE_DATA,
        )
    area = _area_line(bore_m, length_m)
    factor = _factor_line(temperature_c, rate_temperature_c)
    loss = rate_kg_m2_s * area.result.value * factor.result.value
    loss_line = WorkedLine(
        formula="m = q A F",
        inputs=(Quantity("q", rate_kg_m2_s, Dimension.PERMEATION), area.result, factor.result),
        result=Quantity("m", loss, Dimension.MASS_RATE),
        source="rate on the inner area",
    )
    yearly = loss * SECONDS_PER_DAY.value * DAYS_PER_YEAR.value
    year_line = WorkedLine(
        formula="m_year = m t",
        inputs=(
            loss_line.result,
            Quantity("t", DAYS_PER_YEAR.value, Dimension.DAYS),
        ),
        result=Quantity("m_year", yearly, Dimension.MASS),
        source="a year of 365 days",
    )
    return PermeationLoss(
        inner_area_m2=area.result.value,
        temperature_factor=factor.result.value,
        loss_kg_s=loss,
        yearly_loss_kg=yearly,
        lines=(area, factor, loss_line, year_line),
    )


def _area_line(bore_m: float, length_m: float) -> WorkedLine:
    return WorkedLine(
        formula="A = pi D L",
        inputs=(Quantity("D", bore_m, Dimension.DIAMETER), Quantity("L", length_m, Dimension.LENGTH)),
        result=Quantity("A", math.pi * bore_m * length_m, Dimension.AREA),
        source="geometry",
    )


def _factor_line(temperature_c: float, rate_temperature_c: float) -> WorkedLine:
    factor = 2.0 ** ((temperature_c - rate_temperature_c) / DOUBLING_STEP.value)
    return WorkedLine(
        formula="F = 2^((t - t_ref) / dT)",
        inputs=(
            Quantity("t", temperature_c, Dimension.TEMPERATURE),
            Quantity("t_ref", rate_temperature_c, Dimension.TEMPERATURE),
            Quantity("dT", DOUBLING_STEP.value, Dimension.TEMPERATURE_DIFFERENCE),
        ),
        result=Quantity("F", factor, Dimension.RATIO),
        source=DOUBLING_STEP.origin,
        note="estimate",
    )
