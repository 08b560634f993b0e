"""A station's yearly emissions at the nozzle, before and after a conversion, each balance within one source."""

from __future__ import annotations

import itertools
from collections.abc import Sequence

from spoutline.calc.ranges import require_between, require_positive
from spoutline.calc.vapour_displacement import POUND, US_GALLON
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.vapour_figures import VapourFigure

_UNITS = {
    "mg/L": 1e-3,
    "g/gal": 1e-3 / US_GALLON.value,
    "lb/1000 gal": POUND.value / (1000.0 * US_GALLON.value),
}


@frozen
class YearValue:
    """A value at the end of a year."""

    year: int
    value: float


@frozen(kw_only=True)
class Crossing:
    """Where a yearly series passes from above zero to zero or below: the first such year, and the moment before it.

    ``moment`` is on the straight line between the two years, ends of years being whole numbers.
    """

    year: int
    moment: float


def factor_kg_m3(figure: VapourFigure) -> float:
    """Return a published emission factor as mass per volume dispensed.

    Parameters
    ----------
    figure : VapourFigure
        A row in mg/L, g/gal or lb/1000 gal.

    Returns
    -------
    float
        Factor [kg/m3].

    Source: exact pound and US gallon.
    """
    return figure.value * _UNITS[figure.unit]


def yearly_change_line(*, throughput_m3: float, rate_kg_m3: float, increment: float) -> WorkedLine:
    """Return what removal changes in a year: ``m = V r increment``; positive is more vapour.

    Parameters
    ----------
    throughput_m3 : float
        Gasoline dispensed in a year [m3].
    rate_kg_m3 : float
        Uncontrolled displacement [kg/m3], 0 or more.
    increment : float
        What recovery at the nozzle adds [-], -1 to 1.

    Returns
    -------
    WorkedLine
        Change of mass in a year [kg].

    Raises
    ------
    OutOfRange
        A throughput not above zero, a negative rate, an increment outside -1 to 1.

    Source: throughput x rate x increment.
    """
    require_positive("throughput_m3", throughput_m3, Dimension.VOLUME)
    require_between("rate_kg_m3", rate_kg_m3, Dimension.EMISSION_FACTOR, low=0.0)
    require_between("increment", increment, Dimension.RATIO, low=-1.0, high=1.0)
    return WorkedLine(
        formula="m = V r increment",
        inputs=(
            Quantity("V", throughput_m3, Dimension.VOLUME),
            Quantity("r", rate_kg_m3, Dimension.EMISSION_FACTOR),
            Quantity("increment", increment, Dimension.RATIO),
        ),
        result=Quantity("m", throughput_m3 * rate_kg_m3 * increment, Dimension.MASS),
        source="throughput, rate and increment of this sheet",
    )


def factor_change_line(*, throughput_m3: float, before_kg_m3: float, after_kg_m3: float, source: str) -> WorkedLine:
    """Return what a change of factor makes in a year: ``m = V (f_after - f_before)``.

    Parameters
    ----------
    throughput_m3 : float
        Gasoline dispensed in a year [m3].
    before_kg_m3 : float
        Factor today [kg/m3], 0 or more.
    after_kg_m3 : float
        Factor afterwards [kg/m3], 0 or more.
    source : str
        Where the two factors come from.

    Returns
    -------
    WorkedLine
        Change of mass in a year [kg].

    Raises
    ------
    OutOfRange
        A throughput not above zero, a negative factor.

    Source: definition of an emission factor.
    """
    require_positive("throughput_m3", throughput_m3, Dimension.VOLUME)
    for field, value in (("before_kg_m3", before_kg_m3), ("after_kg_m3", after_kg_m3)):
        require_between(field, value, Dimension.EMISSION_FACTOR, low=0.0)
    return WorkedLine(
        formula="m = V (f_after - f_before)",
        inputs=(
            Quantity("V", throughput_m3, Dimension.VOLUME),
            Quantity("f_after", after_kg_m3, Dimension.EMISSION_FACTOR),
            Quantity("f_before", before_kg_m3, Dimension.EMISSION_FACTOR),
        ),
        result=Quantity("m", throughput_m3 * (after_kg_m3 - before_kg_m3), Dimension.MASS),
        source=source,
    )


def mixed_factor_line(
    *, without_kg_m3: float, onboard_kg_m3: float, onboard_share: float, spillage_kg_m3: float, source: str
) -> WorkedLine:
    """Return displacement and spillage of a mixed fleet by fixed factors.

    Parameters
    ----------
    without_kg_m3 : float
        Fuelling a vehicle without onboard recovery [kg/m3], 0 or more.
    onboard_kg_m3 : float
        Fuelling a vehicle with it [kg/m3], 0 or more.
    onboard_share : float
        Share of gasoline into vehicles with onboard recovery [-], 0 to 1.
    spillage_kg_m3 : float
        Spillage [kg/m3], 0 or more.
    source : str
        Where the factors come from.

    Returns
    -------
    WorkedLine
        Sum of the factors [kg/m3].

    Raises
    ------
    OutOfRange
        A share outside 0 to 1, a negative factor.

    Source: weighted mean of the published factors.
    """
    require_between("onboard_share", onboard_share, Dimension.RATIO, low=0.0, high=1.0)
    for field, value in (
        ("without_kg_m3", without_kg_m3),
        ("onboard_kg_m3", onboard_kg_m3),
        ("spillage_kg_m3", spillage_kg_m3),
    ):
        require_between(field, value, Dimension.EMISSION_FACTOR, low=0.0)
    total = (1.0 - onboard_share) * without_kg_m3 + onboard_share * onboard_kg_m3 + spillage_kg_m3
    return WorkedLine(
        formula="f = (1 - Q) f_without + Q f_onboard + f_spill",
        inputs=(
            Quantity("Q", onboard_share, Dimension.RATIO),
            Quantity("f_without", without_kg_m3, Dimension.EMISSION_FACTOR),
            Quantity("f_onboard", onboard_kg_m3, Dimension.EMISSION_FACTOR),
            Quantity("f_spill", spillage_kg_m3, Dimension.EMISSION_FACTOR),
        ),
        result=Quantity("f", total, Dimension.EMISSION_FACTOR),
        source=source,
    )


def crossing_of(series: Sequence[YearValue]) -> Crossing | None:
    """Return where a yearly series first comes from above zero to zero or below; None where it never does.

    Parameters
    ----------
    series : Sequence[YearValue]
        Values of any unit, years rising.

    Returns
    -------
    Crossing or None
        The first year at or below zero after one above, and the moment on the line between them.

    Source: straight line between two years.
    """
    for before, after in itertools.pairwise(series):
        if before.value > 0.0 >= after.value:
            years = after.year - before.year
            moment = before.year + years * before.value / (before.value - after.value)
            return Crossing(year=after.year, moment=moment)
    return None
