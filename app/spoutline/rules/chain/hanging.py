"""How the chain hangs: at rest on its hook and in use at each filler, and the longest chain that hangs clear."""

from __future__ import annotations

import math

from spoutline.calc.catenary import hang, longest_clear_length
from spoutline.calc.hanging_curve import HangingCurve
from spoutline.calc.ranges import OutOfRange
from spoutline.calc.reach import ClampedHang, hang_with_clamp
from spoutline.frozen import frozen
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Filler, Position, Retrieval
from spoutline.rules.derive.hose import is_on_reel

_NEAREST_M = 1e-4  # how near the bisection comes to the longest clear chain


@frozen
class FillerHang:
    """The chain between the outlet and one filler."""

    filler: Filler
    curve: HangingCurve


def hang_at_rest(position: Position, *, length_m: float, weight_n_m: float) -> HangingCurve | ClampedHang | None:
    """Return how a chain of this length (m) and weight (N/m) hangs with the nozzle on its hook.

    A retractor's cord holds the clamp at its own height, taken midway between outlet and hook, since the survey does
    not say where. Where the chain is too short for the cord to come home, it hangs as without a cord, which is lower.
    None on a reel, which takes the hose up, and where the chain does not come to the hook.

    Parameters: ``position``, outlet, hook and retractor; ``length_m`` from outlet to nozzle inlet; ``weight_n_m``.
    """
    if is_on_reel(position):
        return None
    hook, outlet_m = position.hook, position.outlet.height_m
    if position.retrieval is Retrieval.RETRACTOR:
        try:
            return hang_with_clamp(
                distance_m=hook.distance_m,
                start_height_m=outlet_m,
                end_height_m=hook.height_m,
                length_m=length_m,
                weight_n_m=weight_n_m,
                clamp_distance_m=hook.distance_m / 2.0,
                clamp_height_m=position.retractor.height_m,
                clamp_fraction=position.retractor.clamp_fraction,
            )
        except OutOfRange:
            pass  # the cord cannot come home: without it the chain hangs lower, so the answer stays on the safe side
    try:
        return hang(
            distance_m=hook.distance_m,
            start_height_m=outlet_m,
            end_height_m=hook.height_m,
            length_m=length_m,
            weight_n_m=weight_n_m,
        )
    except OutOfRange:
        return None


def hang_in_use(position: Position, *, length_m: float, weight_n_m: float) -> tuple[FillerHang, ...]:
    """Return how the chain hangs with the nozzle in each filler that it reaches with slack.

    Round a vehicle the hose hangs against its flank, a wall that is unrolled over the legs in plan: there the legs
    together are the distance. A cord is left out, which is the lower case.

    Parameters: ``position``, outlet and fillers; ``length_m`` from outlet to nozzle inlet; ``weight_n_m`` in N/m.
    """
    hangs: list[FillerHang] = []
    for filler in position.fillers:
        try:
            curve = hang(
                distance_m=way_m(filler),
                start_height_m=position.outlet.height_m,
                end_height_m=filler.height_m,
                length_m=length_m,
                weight_n_m=weight_n_m,
            )
        except OutOfRange:
            continue  # taut, or reached by the nozzle's own length only: no curve hangs
        hangs.append(FillerHang(filler, curve))
    return tuple(hangs)


def longest_at_rest_m(requirement: Requirement, jurisdiction: Jurisdiction) -> float | None:
    """Return the longest chain (m, outlet to nozzle inlet) that hangs clear of the ground at rest.

    Infinite on a reel; None where the hook or outlet itself is too low. The curve of an inelastic chain does not depend
    on its weight, so one length holds for all parts.

    Parameters: ``requirement``, its position; ``jurisdiction``, the clearance.
    """
    position = requirement.position
    if is_on_reel(position):
        return math.inf
    clearance = jurisdiction.number(LimitId.GROUND_CLEARANCE)
    plain = longest_clear_length(
        distance_m=position.hook.distance_m,
        start_height_m=position.outlet.height_m,
        end_height_m=position.hook.height_m,
        clearance_m=clearance,
    )
    if plain is None or position.retrieval is not Retrieval.RETRACTOR:
        return plain
    return _longest_on_cord_m(position, clearance, plain)


def _longest_on_cord_m(position: Position, clearance_m: float, plain_m: float) -> float:
    """Bisect: a longer chain never hangs higher."""

    def clear(length_m: float) -> bool:
        curve = hang_at_rest(position, length_m=length_m, weight_n_m=1.0)
        return curve is not None and curve.lowest_height_m >= clearance_m

    low, high = plain_m, plain_m * 2.0
    while clear(high):
        low, high = high, high * 2.0
    while high - low > _NEAREST_M:
        middle = (low + high) / 2.0
        low, high = (middle, high) if clear(middle) else (low, middle)
    return low


def longest_in_use_m(requirement: Requirement, jurisdiction: Jurisdiction) -> float:
    """Return the longest chain (m, outlet to nozzle inlet) that hangs clear at every filler; infinite on a reel.

    Fillers that lie no higher than the clearance themselves are left out, such as a boat's below a quay.

    Parameters: ``requirement``, its position; ``jurisdiction``, the clearance.
    """
    position = requirement.position
    if is_on_reel(position):
        return math.inf
    clearance = jurisdiction.number(LimitId.GROUND_CLEARANCE)
    lengths = (
        longest_clear_length(
            distance_m=way_m(filler),
            start_height_m=position.outlet.height_m,
            end_height_m=filler.height_m,
            clearance_m=clearance,
        )
        for filler in fillers_above(position, clearance)
    )
    return min((length for length in lengths if length is not None), default=math.inf)


def way_m(filler: Filler) -> float:
    """Return the horizontal way (m) from outlet to filler: straight, or the legs round the vehicle together.

    Parameters: ``filler``.
    """
    return math.fsum(filler.plan_legs_m) if filler.plan_legs_m else filler.distance_m


def fillers_above(position: Position, clearance_m: float) -> tuple[Filler, ...]:
    """Return the fillers at which a clearance (m) can be asked for at all.

    Parameters: ``position``; ``clearance_m``.
    """
    return tuple(filler for filler in position.fillers if filler.height_m > clearance_m)
