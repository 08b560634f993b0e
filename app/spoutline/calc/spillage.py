"""How much gasoline is spilt at the nozzle, for each volume dispensed."""

from __future__ import annotations

from spoutline.calc.constants import Constant
from spoutline.calc.ranges import require_between, require_positive
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Quantity

PUMP_SPILL = Constant(
    "spillage at a pump, non-road", 3.6e-3, "kg", "EPA NONROAD constants, per fill", LimitStatus.VERIFIED
)


def spillage_line(*, spillage_kg_m3: float, avoided_share: float, program_reduction: float) -> WorkedLine:
    """Return the spillage per volume: ``(1 - P) (1 - T_spill) s``.

    Parameters
    ----------
    spillage_kg_m3 : float
        Spillage per volume dispensed [kg/m3].
    avoided_share : float
        Share that the vehicles avoid [-], 0 to 1.
    program_reduction : float
        What a program at the nozzle takes off [-], 0 to 1.

    Returns
    -------
    WorkedLine
        Mass per volume dispensed [kg/m3].

    Raises
    ------
    OutOfRange
        A share outside 0 to 1, a negative spillage.

    Source: EPA on-road refueling calculator.
    """
    require_between("spillage_kg_m3", spillage_kg_m3, Dimension.EMISSION_FACTOR, low=0.0)
    for field, value in (("avoided_share", avoided_share), ("program_reduction", program_reduction)):
        require_between(field, value, Dimension.RATIO, low=0.0, high=1.0)
    return WorkedLine(
        formula="s = (1 - P) (1 - T_spill) s_0",
        inputs=(
            Quantity("P", program_reduction, Dimension.RATIO),
            Quantity("T_spill", avoided_share, Dimension.RATIO),
            Quantity("s_0", spillage_kg_m3, Dimension.EMISSION_FACTOR),
        ),
        result=Quantity(
            "s", (1.0 - program_reduction) * (1.0 - avoided_share) * spillage_kg_m3, Dimension.EMISSION_FACTOR
        ),
        source="EPA on-road refueling calculator",
    )


def spillage_per_fill_line(*, loss_kg: float, fill_m3: float) -> WorkedLine:
    """Return a fixed loss per fill as a loss per volume.

    Parameters
    ----------
    loss_kg : float
        Loss per fill [kg], 0 or more.
    fill_m3 : float
        Volume of a fill [m3].

    Returns
    -------
    WorkedLine
        Mass per volume dispensed [kg/m3].

    Raises
    ------
    OutOfRange
        A negative loss, a fill not above zero.

    Source: EPA NONROAD constants (3.6 g per fill at a pump).
    """
    require_between("loss_kg", loss_kg, Dimension.MASS, low=0.0)
    require_positive("fill_m3", fill_m3, Dimension.VOLUME)
    return WorkedLine(
        formula="s = m / V",
        inputs=(Quantity("m", loss_kg, Dimension.MASS), Quantity("V", fill_m3, Dimension.VOLUME)),
        result=Quantity("s", loss_kg / fill_m3, Dimension.EMISSION_FACTOR),
        source=PUMP_SPILL.origin,
    )
