"""How far a whip hose has to turn before the breakaway lies in the line of a drive-off."""

from __future__ import annotations

import math

from spoutline.model.survey import OutletDirection, Position


def turn_angle_rad(position: Position) -> float:
    """Return the angle (rad) that a whip hose has to turn so that the breakaway lies in the line of a drive-off.

    A vehicle that drives off pulls the hose level with the filler, along its lane. An outlet that points down stands at
    a right angle to that, and one that points sideways faces the lane and not along it, so both ask for a quarter turn.
    A filler above an outlet that points down pulls the hose upward: the angle grows by the rise of the taut line.

    Parameters: ``position``, outlet and fillers. Source: geometry, engineering judgement.
    """
    quarter = math.pi / 2.0
    if position.outlet.direction is OutletDirection.SIDEWAYS:
        return quarter
    rises = (
        math.atan2(filler.height_m - position.outlet.height_m, filler.distance_m)
        for filler in position.fillers
        if filler.height_m > position.outlet.height_m
    )
    return quarter + max(rises, default=0.0)
