"""The electrical path from dispenser to spout tip, and how fast charge leaves."""

from __future__ import annotations

import math

from spoutline.calc.constants import VACUUM_PERMITTIVITY
from spoutline.calc.ranges import require_between, require_positive
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Dimension, Quantity


@frozen
class PartResistance:
    """End-to-end resistance of one part [ohm]; None where nothing is stated."""

    name: str
    resistance_ohm: float | None


@frozen(kw_only=True)
class SeriesResistance:
    """The whole path. ``total_ohm`` is None as soon as one part is unknown: unknown is never zero."""

    total_ohm: float | None
    known_ohm: float
    unknown: tuple[str, ...]
    lines: tuple[WorkedLine, ...]


@frozen(kw_only=True)
class Duration:
    """A time with the lines that it came from."""

    time_s: float
    lines: tuple[WorkedLine, ...]


def series_resistance(
    parts: tuple[PartResistance, ...], *, joints: int, joint_allowance_ohm: float
) -> SeriesResistance:
    """Return the resistance from dispenser to spout tip: ``R = sum(R_i) + n R_joint``.

    Parameters
    ----------
    parts : tuple of PartResistance
        Every part in order [ohm]; None where nothing is stated.
    joints : int
        Joints made up [-], 0 or more.
    joint_allowance_ohm : float
        Allowance for each joint [ohm], 0 or more.

    Returns
    -------
    SeriesResistance
        Total [ohm], None with the names of the parts where one is unknown.

    Raises
    ------
    OutOfRange
        A negative resistance or count.

    Source: resistances in series; the joint allowance is engineering judgement, a row of the rule tables.
    """
    require_between("joints", float(joints), Dimension.COUNT, low=0.0)
    require_between("joint_allowance_ohm", joint_allowance_ohm, Dimension.RESISTANCE, low=0.0)
    known = []
    for part in parts:
        if part.resistance_ohm is not None:
            require_between("resistance_ohm", part.resistance_ohm, Dimension.RESISTANCE, low=0.0)
            known.append(Quantity(part.name, part.resistance_ohm, Dimension.RESISTANCE))
    unknown = tuple(part.name for part in parts if part.resistance_ohm is None)
    total = math.fsum(quantity.value for quantity in known) + joints * joint_allowance_ohm
    line = WorkedLine(
        formula="R = sum(R_i) + n R_joint",
        inputs=(
            *known,
            Quantity("n", float(joints), Dimension.COUNT),
            Quantity("R_joint", joint_allowance_ohm, Dimension.RESISTANCE),
        ),
        result=Quantity("R at least" if unknown else "R", total, Dimension.RESISTANCE),
        source="resistances in series; joint: engineering judgment",
        note="a part states nothing: the total cannot be shown" if unknown else "",
    )
    return SeriesResistance(total_ohm=None if unknown else total, known_ohm=total, unknown=unknown, lines=(line,))


def relaxation_time(*, relative_permittivity: float, conductivity_s_m: float) -> Duration:
    """Return how fast a liquid at rest in a bonded vessel loses charge: ``tau = eps0 eps_r / kappa``.

    Parameters
    ----------
    relative_permittivity : float
        Relative permittivity of the liquid [-], 1 or more.
    conductivity_s_m : float
        Conductivity of the liquid [S/m]; 1 pS/m is 1e-12 S/m.

    Returns
    -------
    Duration
        Relaxation time [s], lines.

    Raises
    ------
    OutOfRange
        A permittivity below 1, or a conductivity that is not above zero.

    Source: NFPA 77 (2000) annex, extract (secondary): 0.36 s at 50 pS/m and permittivity 2.
    """
    require_between("relative_permittivity", relative_permittivity, Dimension.RATIO, low=1.0)
    require_positive("conductivity_s_m", conductivity_s_m, Dimension.CONDUCTIVITY)
    time = VACUUM_PERMITTIVITY.value * relative_permittivity / conductivity_s_m
    line = WorkedLine(
        formula="tau = eps0 eps_r / kappa",
        inputs=(
            Quantity("eps_r", relative_permittivity, Dimension.RATIO),
            Quantity("kappa", conductivity_s_m, Dimension.CONDUCTIVITY),
        ),
        result=Quantity("tau", time, Dimension.TIME),
        source="charge relaxation, NFPA 77 (2000) annex (secondary)",
        note=f"eps0 = {VACUUM_PERMITTIVITY.value:.10g} F/m, {VACUUM_PERMITTIVITY.source}",
    )
    return Duration(time_s=time, lines=(line,))


def residence_time(*, bore_m: float, length_m: float, flow_m3_s: float) -> Duration:
    """Return how long the liquid stays in a hose: ``t = pi D^2 L / (4 Q)``.

    Against three relaxation times it tells whether charge made upstream arrives at the nozzle.

    Parameters
    ----------
    bore_m : float
        Bore [m].
    length_m : float
        Length [m].
    flow_m3_s : float
        Flow [m3/s], above 0.

    Returns
    -------
    Duration
        Residence time [s], lines.

    Raises
    ------
    OutOfRange
        A value that is not above zero.

    Source: volume over flow.
    """
    require_positive("bore_m", bore_m, Dimension.DIAMETER)
    require_positive("length_m", length_m, Dimension.LENGTH)
    require_positive("flow_m3_s", flow_m3_s, Dimension.FLOW)
    time = math.pi * bore_m**2 * length_m / (4.0 * flow_m3_s)
    line = WorkedLine(
        formula="t = pi D^2 L / (4 Q)",
        inputs=(
            Quantity("D", bore_m, Dimension.DIAMETER),
            Quantity("L", length_m, Dimension.LENGTH),
            Quantity("Q", flow_m3_s, Dimension.FLOW),
        ),
        result=Quantity("t", time, Dimension.TIME),
        source="volume over flow",
    )
    return Duration(time_s=time, lines=(line,))
