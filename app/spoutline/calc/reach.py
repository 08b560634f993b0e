"""How much hose a filler asks for, how long a whip hose must be, and a hose held up by a cord."""

from __future__ import annotations

import math

from spoutline.calc.catenary import hang
from spoutline.calc.constants import Constant
from spoutline.calc.hanging_curve import CurvePoint, HangingCurve
from spoutline.calc.ranges import OutOfRange, RangeReason, require_between, require_finite, require_positive
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Quantity

CORNER_ALLOWANCE = Constant(
    "hose that a right-angle corner takes, in bend radii",
    0.5,
    "-",
    "round the corner of a vehicle",
    LimitStatus.JUDGEMENT,
)
ROUNDING = Constant(
    "rounding of a sum of legs against a typed distance", 1e-9, "m", "far below any tape", LimitStatus.JUDGEMENT
)


@frozen(kw_only=True)
class ReachLength:
    """A length of hose and rigid parts together, from outlet to filler."""

    length_m: float
    lines: tuple[WorkedLine, ...]


@frozen(kw_only=True)
class ClampedHang:
    """A hose held up at a clamp: two catenaries. ``second`` runs from the clamp to the end; x is from the start."""

    first: HangingCurve
    second: HangingCurve
    clamp_distance_m: float
    end_distance_m: float
    lowest_height_m: float
    cord_lift_n: float
    cord_side_pull_n: float
    lines: tuple[WorkedLine, ...]

    def points(self, count: int) -> tuple[CurvePoint, ...]:
        """Return ``count`` points on each of the two parts, the clamp once; x is the distance from the start."""
        toward_clamp = math.copysign(1.0, self.clamp_distance_m)
        toward_end = math.copysign(1.0, self.end_distance_m - self.clamp_distance_m)
        first = (CurvePoint(toward_clamp * point.x_m, point.height_m) for point in self.first.points(count))
        second = (
            CurvePoint(self.clamp_distance_m + toward_end * point.x_m, point.height_m)
            for point in self.second.points(count)[1:]
        )
        return (*first, *second)


def taut_length(
    *,
    distance_m: float,
    height_difference_m: float,
    plan_legs_m: tuple[float, ...] = (),
    bend_radius_m: float = 0.0,
) -> ReachLength:
    """Return the length that just reaches the filler, hose and rigid parts together.

    ``sqrt(s^2 + dh^2) + (r/2) per corner``, s the distance or the sum of the legs round the vehicle.

    Parameters
    ----------
    distance_m : float
        Horizontal distance from outlet to filler, straight [m], 0 or more.
    height_difference_m : float
        Height of the filler less that of the outlet [m], of either sign.
    plan_legs_m : tuple of float
        Legs of the way round the vehicle in plan [m]; empty for the straight way.
    bend_radius_m : float
        Least bend radius of the hose, for its corners [m], 0 or more.

    Returns
    -------
    ReachLength
        Taut length [m], lines.

    Raises
    ------
    OutOfRange
        Negative distance, leg or radius, or legs that are shorter than the straight distance.

    Source: shortest way on the vertical wall over the plan legs, geometry; half a bend radius per corner is judgement.
    """
    require_between("distance_m", distance_m, Dimension.LENGTH, low=0.0)
    require_finite("height_difference_m", height_difference_m, Dimension.LENGTH)
    require_between("bend_radius_m", bend_radius_m, Dimension.LENGTH, low=0.0)
    for number, leg in enumerate(plan_legs_m, start=1):
        require_positive(f"plan_legs_m[{number}]", leg, Dimension.LENGTH)
    way = math.fsum(plan_legs_m) if plan_legs_m else distance_m
    if way < distance_m - ROUNDING.value:
        raise OutOfRange(
            field="plan_legs_m",
            value=way,
            low=distance_m,
            high=None,
            dimension=Dimension.LENGTH,
            reason=RangeReason.CONTRADICTS,
        )
    corners = max(len(plan_legs_m) - 1, 0)
    length = math.hypot(way, height_difference_m) + corners * CORNER_ALLOWANCE.value * bend_radius_m
    line = WorkedLine(
        formula="L_taut = sqrt(s^2 + dh^2) + n r / 2",
        inputs=(
            Quantity("s", way, Dimension.LENGTH),
            Quantity("dh", height_difference_m, Dimension.LENGTH),
            Quantity("n", float(corners), Dimension.COUNT),
            Quantity("r", bend_radius_m, Dimension.LENGTH),
        ),
        result=Quantity("L_taut", length, Dimension.LENGTH),
        source=f"shortest way on the wall over the plan path, geometry; corner: {CORNER_ALLOWANCE.origin}",
        note="s is the sum of the legs round the vehicle" if plan_legs_m else "s is the straight distance",
    )
    return ReachLength(length_m=length, lines=(line,))


def needed_length(*, taut: ReachLength, slack_fraction: float, slack_minimum_m: float) -> ReachLength:
    """Return the taut length with slack, the greater of a share of it and a least slack.

    Parameters
    ----------
    taut : ReachLength
        Taut length [m].
    slack_fraction : float
        Slack as a share of the taut length [-], 0 or more.
    slack_minimum_m : float
        Least slack [m], 0 or more.

    Returns
    -------
    ReachLength
        Needed length [m], lines of the taut length included.

    Raises
    ------
    OutOfRange
        A negative slack.

    Source: engineering judgement; the figures are rows of the rule tables.
    """
    require_between("slack_fraction", slack_fraction, Dimension.RATIO, low=0.0)
    require_between("slack_minimum_m", slack_minimum_m, Dimension.LENGTH, low=0.0)
    length = taut.length_m + max(slack_fraction * taut.length_m, slack_minimum_m)
    line = WorkedLine(
        formula="L_needed = L_taut + max(k L_taut, s_min)",
        inputs=(
            Quantity("L_taut", taut.length_m, Dimension.LENGTH),
            Quantity("k", slack_fraction, Dimension.RATIO),
            Quantity("s_min", slack_minimum_m, Dimension.LENGTH),
        ),
        result=Quantity("L_needed", length, Dimension.LENGTH),
        source="slack so that the hose is never taut (engineering judgment)",
    )
    return ReachLength(length_m=length, lines=(*taut.lines, line))


def whip_length(*, bend_radius_m: float, turn_angle_rad: float, margin: float) -> ReachLength:
    """Return the least length of a whip hose that lets the breakaway turn into the line of a pull: ``m r phi``.

    Parameters
    ----------
    bend_radius_m : float
        Least bend radius of the whip hose [m].
    turn_angle_rad : float
        Angle from the outlet's direction to the pull [rad], 0 to pi.
    margin : float
        Factor on the arc [-], 1 or more.

    Returns
    -------
    ReachLength
        Least length [m], lines.

    Raises
    ------
    OutOfRange
        A radius not above zero, an angle outside 0 to pi, a margin below 1.

    Source: arc of the least bend radius, geometry; the margin is engineering judgement, a row of the rule tables.
    """
    require_positive("bend_radius_m", bend_radius_m, Dimension.LENGTH)
    require_between("turn_angle_rad", turn_angle_rad, Dimension.ANGLE, low=0.0, high=math.pi)
    require_between("margin", margin, Dimension.RATIO, low=1.0)
    length = margin * bend_radius_m * turn_angle_rad
    line = WorkedLine(
        formula="L_whip = m r phi",
        inputs=(
            Quantity("m", margin, Dimension.RATIO),
            Quantity("r", bend_radius_m, Dimension.LENGTH),
            Quantity("phi", turn_angle_rad, Dimension.ANGLE),
        ),
        result=Quantity("L_whip", length, Dimension.LENGTH),
        source="arc of the least bend radius, geometry; margin: engineering judgment",
        note="phi in radians",
    )
    return ReachLength(length_m=length, lines=(line,))


def hang_with_clamp(
    *,
    distance_m: float,
    start_height_m: float,
    end_height_m: float,
    length_m: float,
    weight_n_m: float,
    clamp_distance_m: float,
    clamp_height_m: float,
    clamp_fraction: float,
) -> ClampedHang:
    """Return a hose that a cord or hanger holds up at a clamp: two catenaries that meet there.

    Parameters
    ----------
    distance_m : float
        Horizontal distance from start to end [m], 0 or more.
    start_height_m : float
        Height of the start above the ground [m].
    end_height_m : float
        Height of the end above the ground [m].
    length_m : float
        Length of hose between the ends [m].
    weight_n_m : float
        Weight of the filled hose [N/m].
    clamp_distance_m : float
        Horizontal distance from start to clamp [m], negative on the side away from the end.
    clamp_height_m : float
        Height of the clamp above the ground [m].
    clamp_fraction : float
        Where along the hose the clamp sits [-], above 0 and below 1.

    Returns
    -------
    ClampedHang
        Both curves, lowest height [m], lift and side pull that the cord must give [N], lines.

    Raises
    ------
    OutOfRange
        Values outside what a hose can be, or ``CANNOT_REACH`` where a part of it is too short.

    Source: statics: two catenaries, balance of forces at the clamp.
    """
    require_between("distance_m", distance_m, Dimension.LENGTH, low=0.0)
    require_finite("clamp_distance_m", clamp_distance_m, Dimension.LENGTH)
    require_positive("clamp_fraction", clamp_fraction, Dimension.RATIO)
    require_positive("1 - clamp_fraction", 1.0 - clamp_fraction, Dimension.RATIO)
    onward = distance_m - clamp_distance_m
    first = hang(
        distance_m=abs(clamp_distance_m),
        start_height_m=start_height_m,
        end_height_m=clamp_height_m,
        length_m=clamp_fraction * length_m,
        weight_n_m=weight_n_m,
    )
    second = hang(
        distance_m=abs(onward),
        start_height_m=clamp_height_m,
        end_height_m=end_height_m,
        length_m=(1.0 - clamp_fraction) * length_m,
        weight_n_m=weight_n_m,
    )
    side_pull = math.copysign(second.horizontal_tension_n, onward) - math.copysign(
        first.horizontal_tension_n, clamp_distance_m
    )
    lift = _lift_line(first, second)
    return ClampedHang(
        first=first,
        second=second,
        clamp_distance_m=clamp_distance_m,
        end_distance_m=distance_m,
        lowest_height_m=min(first.lowest_height_m, second.lowest_height_m),
        cord_lift_n=lift.result.value,
        cord_side_pull_n=side_pull,
        lines=(*first.lines, *second.lines, lift),
    )


def _lift_line(first: HangingCurve, second: HangingCurve) -> WorkedLine:
    return WorkedLine(
        formula="F_cord = V1 + V2",
        inputs=(
            Quantity("V1", first.end_load_n, Dimension.FORCE),
            Quantity("V2", second.start_load_n, Dimension.FORCE),
        ),
        result=Quantity("F_cord", first.end_load_n + second.start_load_n, Dimension.FORCE),
        source="balance of vertical forces at the clamp",
        note="V is the downward load of each part of the hose on the clamp",
    )
