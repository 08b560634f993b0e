"""The pressure that a tight vapour space still holds after five minutes."""

from __future__ import annotations

import math

from spoutline.calc.constants import Constant
from spoutline.calc.ranges import require_positive
from spoutline.calc.vapour_displacement import US_GALLON
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.vapour_figures import VapourFigure

INCH_OF_WATER = Constant("inch of water", 249.089, "Pa", "conventional value", LimitStatus.SECONDARY)


def pressure_decay_line(*, ullage_m3: float, start: VapourFigure, decay: VapourFigure, nozzles: int = 0) -> WorkedLine:
    """Return the least pressure after five minutes: ``P = P_0 exp(-k / V)``.

    Parameters
    ----------
    ullage_m3 : float
        Vapour space of the tanks under test [m3].
    start : VapourFigure
        Pressure at the start, in inches of water.
    decay : VapourFigure
        The constant k for the system and its nozzles, in US gallons.
    nozzles : int
        Nozzles that recover vapour, for which the constant stands.

    Returns
    -------
    WorkedLine
        Least pressure [Pa].

    Raises
    ------
    OutOfRange
        A vapour space not above zero.

    Source: TP-201.3 as read in a public certification exhibit.
    """
    require_positive("ullage_m3", ullage_m3, Dimension.VOLUME)
    gallons = ullage_m3 / US_GALLON.value
    least = start.value * math.exp(-decay.value / gallons)
    return WorkedLine(
        formula=f"P = P_0 exp(-k / V), k = {decay.value:g} gal",
        inputs=(
            Quantity("P_0", start.value * INCH_OF_WATER.value, Dimension.PRESSURE),
            Quantity("V", ullage_m3, Dimension.VOLUME),
            Quantity("N", nozzles, Dimension.COUNT),
        ),
        result=Quantity("P", least * INCH_OF_WATER.value, Dimension.PRESSURE),
        source=decay.origin,
        note=f"{least:.3f} inches of water",
    )
