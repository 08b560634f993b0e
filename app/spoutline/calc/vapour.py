"""What recovery at the nozzle adds to onboard recovery, and the share of vehicles at which it adds nothing."""

from __future__ import annotations

from spoutline.calc.ranges import RangeReason, require_between
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.vapour_figures import VapourFigure

FORM_SOURCE = "EPA-457/B-12-001 (Aug 2012), increment of recovery at the nozzle; form recalled, not read [memory]"
ALGEBRA_SOURCE = "algebra on the increment"
OWN_DEFINITION = "definition of this program"


@frozen(kw_only=True)
class Increment:
    """What recovery at the nozzle adds, as a share of the uncontrolled displacement; negative where it does harm."""

    value: float
    compatibility_factor: float
    lines: tuple[WorkedLine, ...]


def compatibility_factor_line(*, onboard_share: float, slope: VapourFigure) -> WorkedLine:
    """Return the rise of tank vent emissions that vacuum assist causes at vehicles with onboard recovery.

    Parameters
    ----------
    onboard_share : float
        Share of gasoline into vehicles with onboard recovery [-], 0 to 1.
    slope : VapourFigure
        Rise per share, with its source and status.

    Returns
    -------
    WorkedLine
        The factor as a share of uncontrolled displacement [-].

    Raises
    ------
    OutOfRange
        A share outside 0 to 1.

    Source: EPA-457/B-12-001 (Aug 2012), form and constant from memory.
    """
    _require_share("onboard_share", onboard_share)
    return WorkedLine(
        formula="CF = c Q_onboard",
        inputs=(_share("c", slope.value), _share("Q_onboard", onboard_share)),
        result=_share("CF", slope.value * onboard_share),
        source=slope.origin,
    )


def recovery_increment(
    *,
    recovered_share: float,
    assist_share: float,
    onboard_share: float,
    in_use_efficiency: float,
    slope: VapourFigure,
) -> Increment:
    """Return what recovery at the nozzle adds: ``Q_nozzle (1 - Q_onboard) eta - Q_assist CF``.

    Parameters
    ----------
    recovered_share : float
        Share of the gasoline pumped through recovery equipment [-], 0 to 1; 1 for a station that has it everywhere.
    assist_share : float
        Share pumped through vacuum assist that works against onboard recovery [-], 0 to ``recovered_share``.
    onboard_share : float
        Share of gasoline into vehicles with onboard recovery [-], 0 to 1.
    in_use_efficiency : float
        Efficiency at the nozzle on a vehicle without onboard recovery [-], 0 to 1.
    slope : VapourFigure
        Rise of vent emissions per onboard share.

    Returns
    -------
    Increment
        Share of the uncontrolled displacement [-], compatibility factor [-], lines.

    Raises
    ------
    OutOfRange
        A share outside 0 to 1, or more assist than recovery.

    Source: EPA-457/B-12-001 (Aug 2012), form from memory; the efficiency of onboard recovery cancels out.
    """
    for field, value in (
        ("recovered_share", recovered_share),
        ("onboard_share", onboard_share),
        ("in_use_efficiency", in_use_efficiency),
    ):
        _require_share(field, value)
    _require_assist(assist_share, recovered_share)
    factor = compatibility_factor_line(onboard_share=onboard_share, slope=slope)
    value = recovered_share * (1.0 - onboard_share) * in_use_efficiency - assist_share * factor.result.value
    line = WorkedLine(
        formula="increment = Q_nozzle (1 - Q_onboard) eta - Q_assist CF",
        inputs=(
            _share("Q_nozzle", recovered_share),
            _share("Q_onboard", onboard_share),
            _share("eta", in_use_efficiency),
            _share("Q_assist", assist_share),
            factor.result,
        ),
        result=_share("increment", value),
        source=FORM_SOURCE,
        note="positive: removal raises emissions by this share of the uncontrolled displacement",
    )
    return Increment(value=value, compatibility_factor=factor.result.value, lines=(factor, line))


def break_even_line(
    *, recovered_share: float, assist_share: float, in_use_efficiency: float, slope: VapourFigure
) -> WorkedLine:
    """Return the onboard share at which the increment is zero: ``Q_nozzle eta / (Q_nozzle eta + c Q_assist)``.

    Parameters
    ----------
    recovered_share : float
        Share pumped through recovery equipment [-], above 0 and at most 1.
    assist_share : float
        Share pumped through vacuum assist that works against onboard recovery [-], 0 to ``recovered_share``.
    in_use_efficiency : float
        Efficiency at the nozzle [-], above 0 and at most 1.
    slope : VapourFigure
        Rise of vent emissions per onboard share.

    Returns
    -------
    WorkedLine
        The break-even share [-]; 1 without vacuum assist, so that the increment never turns negative there.

    Raises
    ------
    OutOfRange
        A share outside its range; nothing recovered has no break-even.

    Source: algebra on the increment.
    """
    for field, value in (("recovered_share", recovered_share), ("in_use_efficiency", in_use_efficiency)):
        _require_share(field, value)
        require_between(field, value, Dimension.RATIO, low=1e-9)
    _require_assist(assist_share, recovered_share)
    recovered = recovered_share * in_use_efficiency
    return WorkedLine(
        formula="Q* = Q_nozzle eta / (Q_nozzle eta + c Q_assist)",
        inputs=(
            _share("Q_nozzle", recovered_share),
            _share("eta", in_use_efficiency),
            _share("c", slope.value),
            _share("Q_assist", assist_share),
        ),
        result=_share("Q*", recovered / (recovered + slope.value * assist_share)),
        source=ALGEBRA_SOURCE,
    )


def program_difference_line(
    *, onboard_share: float, onboard_efficiency: float, recovered_share: float, in_use_efficiency: float
) -> WorkedLine:
    """Return what onboard recovery alone controls beyond what recovery at the nozzle alone controls.

    Parameters
    ----------
    onboard_share : float
        Share of gasoline into vehicles with onboard recovery [-], 0 to 1.
    onboard_efficiency : float
        Efficiency of onboard recovery [-], 0 to 1.
    recovered_share : float
        Share pumped through recovery equipment [-], 0 to 1.
    in_use_efficiency : float
        Efficiency at the nozzle [-], 0 to 1.

    Returns
    -------
    WorkedLine
        Difference of the two controlled shares [-].

    Raises
    ------
    OutOfRange
        A share outside 0 to 1.

    Source: definition of this program; no published equation is claimed.
    """
    for field, value in (
        ("onboard_share", onboard_share),
        ("onboard_efficiency", onboard_efficiency),
        ("recovered_share", recovered_share),
        ("in_use_efficiency", in_use_efficiency),
    ):
        _require_share(field, value)
    return WorkedLine(
        formula="D = Q_onboard eta_onboard - Q_nozzle eta",
        inputs=(
            _share("Q_onboard", onboard_share),
            _share("eta_onboard", onboard_efficiency),
            _share("Q_nozzle", recovered_share),
            _share("eta", in_use_efficiency),
        ),
        result=_share("D", onboard_share * onboard_efficiency - recovered_share * in_use_efficiency),
        source=OWN_DEFINITION,
    )


def _share(name: str, value: float) -> Quantity:
    return Quantity(name, value, Dimension.RATIO)


def _require_share(field: str, value: float) -> None:
    require_between(field, value, Dimension.RATIO, low=0.0, high=1.0)


def _require_assist(assist_share: float, recovered_share: float) -> None:
    _require_share("assist_share", assist_share)
    require_between(
        "assist_share", assist_share, Dimension.RATIO, low=0.0, high=recovered_share, reason=RangeReason.CONTRADICTS
    )
