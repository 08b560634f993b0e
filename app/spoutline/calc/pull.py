"""Load on the breakaway in service and in a drive-off."""

from __future__ import annotations

import math

from spoutline.calc.constants import STANDARD_GRAVITY
from spoutline.calc.ranges import require_between, require_positive
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Dimension, Quantity

_STATICS = "statics"


@frozen(kw_only=True)
class ServiceLoad:
    """What pulls at the breakaway while fuelling. ``weight_n`` is the larger of free hanging and in-use tension."""

    hanging_n: float
    weight_n: float
    user_tug_n: float
    thrust_n: float
    total_n: float
    lines: tuple[WorkedLine, ...]


@frozen(kw_only=True)
class ServiceMargin:
    """Least separation force over service load: below 1 the coupling parts unwanted."""

    ratio: float
    lines: tuple[WorkedLine, ...]


@frozen(kw_only=True)
class DriveOff:
    """What a vehicle that drives off does to the parts before the coupling separates."""

    line_pull_n: float
    side_load_n: float
    required_strength_n: float
    moment_n_m: float
    lines: tuple[WorkedLine, ...]


def filled_weight_line(
    *, hose_mass_kg_m: float, bore_m: float, density_kg_m3: float, inner_tube_diameter_m: float = 0.0
) -> WorkedLine:
    """Return the weight of filled hose as a worked line: ``w = g (m + rho pi (D^2 - d^2) / 4)``.

    Parameters
    ----------
    hose_mass_kg_m : float
        Mass of the empty hose [kg/m].
    bore_m : float
        Bore of the passage that the liquid fills [m].
    density_kg_m3 : float
        Density of the liquid [kg/m3].
    inner_tube_diameter_m : float
        Outside diameter of a vapour tube inside the liquid [m]; 0 for none.

    Returns
    -------
    WorkedLine
        The line whose result is the weight [N/m].

    Raises
    ------
    OutOfRange
        A mass, bore or density not above zero, or an inner tube that fills the bore.

    Source: weight of a filled tube, standard gravity.
    """
    require_positive("hose_mass_kg_m", hose_mass_kg_m, Dimension.MASS_PER_LENGTH)
    require_positive("bore_m", bore_m, Dimension.DIAMETER)
    require_positive("density_kg_m3", density_kg_m3, Dimension.DENSITY)
    require_between("inner_tube_diameter_m", inner_tube_diameter_m, Dimension.DIAMETER, low=0.0)
    require_positive("bore_m - inner_tube_diameter_m", bore_m - inner_tube_diameter_m, Dimension.DIAMETER)
    liquid_kg_m = density_kg_m3 * math.pi * (bore_m**2 - inner_tube_diameter_m**2) / 4.0
    ring = inner_tube_diameter_m > 0.0
    inner = (Quantity("d", inner_tube_diameter_m, Dimension.DIAMETER),) if ring else ()
    return WorkedLine(
        formula="w = g (m + rho pi (D^2 - d^2) / 4)" if ring else "w = g (m + rho pi D^2 / 4)",
        inputs=(
            Quantity("m", hose_mass_kg_m, Dimension.MASS_PER_LENGTH),
            Quantity("rho", density_kg_m3, Dimension.DENSITY),
            Quantity("D", bore_m, Dimension.DIAMETER),
            *inner,
        ),
        result=Quantity("w", STANDARD_GRAVITY.value * (hose_mass_kg_m + liquid_kg_m), Dimension.WEIGHT_PER_LENGTH),
        source=_STATICS,
        note="g is standard gravity",
    )


def hanging_weight_line(*, weight_n_m: float, length_below_m: float, rigid_mass_kg: float) -> WorkedLine:
    """Return what hangs below a coupling when nothing supports the nozzle: ``W = w L + g m``.

    Parameters
    ----------
    weight_n_m : float
        Weight of the filled hose [N/m], 0 where no hose hangs below.
    length_below_m : float
        Hose below the coupling [m], 0 or more.
    rigid_mass_kg : float
        Mass of swivel, nozzle and other rigid parts below [kg], 0 or more.

    Returns
    -------
    WorkedLine
        The line whose result is the weight [N].

    Raises
    ------
    OutOfRange
        A negative value.

    Source: statics.
    """
    require_between("weight_n_m", weight_n_m, Dimension.WEIGHT_PER_LENGTH, low=0.0)
    require_between("length_below_m", length_below_m, Dimension.LENGTH, low=0.0)
    require_between("rigid_mass_kg", rigid_mass_kg, Dimension.MASS, low=0.0)
    return WorkedLine(
        formula="W = w L + g m",
        inputs=(
            Quantity("w", weight_n_m, Dimension.WEIGHT_PER_LENGTH),
            Quantity("L", length_below_m, Dimension.LENGTH),
            Quantity("m", rigid_mass_kg, Dimension.MASS),
        ),
        result=Quantity("W", weight_n_m * length_below_m + STANDARD_GRAVITY.value * rigid_mass_kg, Dimension.FORCE),
        source=_STATICS,
        note="g is standard gravity",
    )


def pressure_thrust_line(*, pressure_pa: float, seal_diameter_m: float) -> WorkedLine:
    """Return the thrust of line pressure on a coupling that is not balanced: ``F_p = p pi D^2 / 4``.

    Parameters
    ----------
    pressure_pa : float
        Line pressure at the coupling [Pa], 0 or more.
    seal_diameter_m : float
        Diameter of the seal on which the pressure acts [m].

    Returns
    -------
    WorkedLine
        The line whose result is the thrust [N].

    Raises
    ------
    OutOfRange
        Negative pressure, or a diameter that is not above zero.

    Source: pressure times area.
    """
    require_between("pressure_pa", pressure_pa, Dimension.PRESSURE, low=0.0)
    require_positive("seal_diameter_m", seal_diameter_m, Dimension.DIAMETER)
    return WorkedLine(
        formula="F_p = p pi D^2 / 4",
        inputs=(
            Quantity("p", pressure_pa, Dimension.PRESSURE),
            Quantity("D", seal_diameter_m, Dimension.DIAMETER),
        ),
        result=Quantity("F_p", pressure_pa * math.pi * seal_diameter_m**2 / 4.0, Dimension.FORCE),
        source="pressure times area",
    )


def service_load(
    *,
    weight_n_m: float,
    length_below_m: float,
    rigid_mass_kg: float,
    in_use_tension_n: float | None,
    user_tug_n: float,
    pressure_pa: float,
    seal_diameter_m: float | None,
) -> ServiceLoad:
    """Return what pulls at the breakaway in service: ``F = max(W, T) + F_u + F_p``.

    Parameters
    ----------
    weight_n_m : float
        Weight of the filled hose below the coupling [N/m], 0 where no hose hangs below.
    length_below_m : float
        Hose below the coupling [m], 0 or more.
    rigid_mass_kg : float
        Mass of swivel, nozzle and other rigid parts below [kg], 0 or more.
    in_use_tension_n : float or None
        Tension of the hanging curve at the coupling with the nozzle in the filler [N]; None where there is none.
    user_tug_n : float
        Pull of the person at the nozzle [N], 0 or more.
    pressure_pa : float
        Line pressure at the coupling [Pa], 0 or more.
    seal_diameter_m : float or None
        Seal diameter of a coupling that is not balanced [m]; None for a balanced one.

    Returns
    -------
    ServiceLoad
        Forces [N], lines.

    Raises
    ------
    OutOfRange
        A negative value, or a seal diameter that is not above zero.

    Source: statics; the tug is engineering judgement, a row of the rule tables.
    """
    require_between("user_tug_n", user_tug_n, Dimension.FORCE, low=0.0)
    hanging = hanging_weight_line(weight_n_m=weight_n_m, length_below_m=length_below_m, rigid_mass_kg=rigid_mass_kg)
    lines = [hanging]
    weight = hanging.result
    if in_use_tension_n is not None:
        require_between("in_use_tension_n", in_use_tension_n, Dimension.FORCE, low=0.0)
        if in_use_tension_n > weight.value:
            weight = Quantity("T", in_use_tension_n, Dimension.FORCE)
    thrust = Quantity("F_p", 0.0, Dimension.FORCE)
    if seal_diameter_m is not None:
        lines.append(pressure_thrust_line(pressure_pa=pressure_pa, seal_diameter_m=seal_diameter_m))
        thrust = lines[-1].result
    else:
        require_between("pressure_pa", pressure_pa, Dimension.PRESSURE, low=0.0)
    total = weight.value + user_tug_n + thrust.value
    lines.append(
        WorkedLine(
            formula=f"F = {weight.name} + F_u + F_p",
            inputs=(weight, Quantity("F_u", user_tug_n, Dimension.FORCE), thrust),
            result=Quantity("F", total, Dimension.FORCE),
            source="statics; tug: engineering judgment",
            note="" if seal_diameter_m is not None else "pressure-balanced coupling: no thrust",
        )
    )
    return ServiceLoad(
        hanging_n=hanging.result.value,
        weight_n=weight.value,
        user_tug_n=user_tug_n,
        thrust_n=thrust.value,
        total_n=total,
        lines=tuple(lines),
    )


def service_margin(*, separation_minimum_n: float, load: ServiceLoad) -> ServiceMargin:
    """Return how far the least separation force lies above the service load: ``n = F_sep,min / F``.

    Parameters
    ----------
    separation_minimum_n : float
        Least force at which the coupling parts [N].
    load : ServiceLoad
        Load in service [N].

    Returns
    -------
    ServiceMargin
        Ratio [-], lines of the load included.

    Raises
    ------
    OutOfRange
        A separation force or load that is not above zero.

    Source: definition; which ratio is enough is engineering judgement, a row of the rule tables.
    """
    require_positive("separation_minimum_n", separation_minimum_n, Dimension.FORCE)
    require_positive("total_n", load.total_n, Dimension.FORCE)
    ratio = separation_minimum_n / load.total_n
    line = WorkedLine(
        formula="n = F_sep,min / F",
        inputs=(
            Quantity("F_sep,min", separation_minimum_n, Dimension.FORCE),
            Quantity("F", load.total_n, Dimension.FORCE),
        ),
        result=Quantity("n", ratio, Dimension.RATIO),
        source="definition",
    )
    return ServiceMargin(ratio=ratio, lines=(*load.lines, line))


def drive_off(*, separation_n: float, angle_rad: float, strength_margin: float, arm_m: float = 0.0) -> DriveOff:
    """Return the loads of a drive-off on a coupling that separates along its axis.

    ``F_line = F_sep / cos(theta)``, ``F_side = F_line sin(theta)``, ``F_bear = m F_line``, ``M = F_side arm``.

    Parameters
    ----------
    separation_n : float
        Greatest separation force [N].
    angle_rad : float
        Angle of the pull to the axis that the coupling cannot turn away [rad], 0 to below pi/2.
    strength_margin : float
        Factor by which every part must bear more [-], 1 or more.
    arm_m : float
        Distance from a rigid outlet to the coupling [m], 0 with a whip hose.

    Returns
    -------
    DriveOff
        Line pull, side load, strength that every part must have [N], moment at the outlet [N.m], lines.

    Raises
    ------
    OutOfRange
        An angle of 90 degrees or more (the coupling never parts), a force not above zero, a margin below 1.

    Source: statics; the margin is engineering judgement, a row of the rule tables.
    """
    require_positive("separation_n", separation_n, Dimension.FORCE)
    require_between("angle_rad", angle_rad, Dimension.ANGLE, low=0.0, high=math.nextafter(math.pi / 2.0, 0.0))
    require_between("strength_margin", strength_margin, Dimension.RATIO, low=1.0)
    require_between("arm_m", arm_m, Dimension.LENGTH, low=0.0)
    angle = Quantity("theta", angle_rad, Dimension.ANGLE)
    line_pull = Quantity("F_line", separation_n / math.cos(angle_rad), Dimension.FORCE)
    side = Quantity("F_side", line_pull.value * math.sin(angle_rad), Dimension.FORCE)
    bear = Quantity("F_bear", strength_margin * line_pull.value, Dimension.FORCE)
    moment = Quantity("M", side.value * arm_m, Dimension.TORQUE)
    separation = Quantity("F_sep", separation_n, Dimension.FORCE)
    margin = Quantity("m", strength_margin, Dimension.RATIO)
    lines = [
        WorkedLine(
            formula="F_line = F_sep / cos(theta)", inputs=(separation, angle), result=line_pull, source=_STATICS
        ),
        WorkedLine(formula="F_side = F_line sin(theta)", inputs=(line_pull, angle), result=side, source=_STATICS),
        WorkedLine(
            formula="F_bear = m F_line",
            inputs=(margin, line_pull),
            result=bear,
            source="margin: engineering judgment",
        ),
    ]
    if arm_m > 0.0:
        arm = Quantity("x", arm_m, Dimension.LENGTH)
        lines.append(WorkedLine(formula="M = F_side x", inputs=(side, arm), result=moment, source=_STATICS))
    return DriveOff(
        line_pull_n=line_pull.value,
        side_load_n=side.value,
        required_strength_n=bear.value,
        moment_n_m=moment.value,
        lines=tuple(lines),
    )
