"""The length of chain that one filler asks for."""

from __future__ import annotations

from spoutline.calc.reach import needed_length, taut_length
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.survey import Filler


@frozen(kw_only=True)
class ReachNeeded:
    """Lengths in m of hoses and rigid parts together, from the dispenser outlet to the filler.

    ``corners`` counts the bends round the vehicle. What a corner takes depends on the hose that lies round it and is
    taken off that hose's own reach, so that the need is one number for every hose.
    """

    filler: str
    taut_m: float
    needed_m: float
    corners: int
    lines: tuple[WorkedLine, ...]


def corners_of(filler: Filler) -> int:
    """Return how many corners the way round the vehicle has.

    Parameters: ``filler``, its legs in plan.
    """
    return max(len(filler.plan_legs_m) - 1, 0)


def reach_needed(
    filler: Filler, *, outlet_height_m: float, slack_fraction: float, slack_minimum_m: float
) -> ReachNeeded:
    """Return the length that a filler asks for, taut and with slack.

    Parameters: ``filler``, distance, height and legs in m; ``outlet_height_m`` above the same ground;
    ``slack_fraction`` of the taut length and ``slack_minimum_m``, the greater of which counts.
    Raises ``OutOfRange`` where the legs are shorter than the straight way.
    Source: geometry; slack is engineering judgement.
    """
    taut = taut_length(
        distance_m=filler.distance_m,
        height_difference_m=filler.height_m - outlet_height_m,
        plan_legs_m=filler.plan_legs_m,
    )
    needed = needed_length(taut=taut, slack_fraction=slack_fraction, slack_minimum_m=slack_minimum_m)
    return ReachNeeded(
        filler=filler.label,
        taut_m=taut.length_m,
        needed_m=needed.length_m,
        corners=corners_of(filler),
        lines=needed.lines,
    )
