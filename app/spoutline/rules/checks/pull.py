"""Checks of the pull on the breakaway: it holds in service and is the first to part in a drive-off."""

from __future__ import annotations

import math
from enum import StrEnum

from spoutline.calc.pull import DriveOff, ServiceLoad, drive_off, service_load, service_margin
from spoutline.frozen import frozen
from spoutline.model.check import Bound, Check, CheckId, WorkedLine
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.model.part import BreakawayData
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Slot
from spoutline.rules.chain.hanging import hang_in_use
from spoutline.rules.chain.set_view import SetView
from spoutline.rules.checks.holding import bound_of, held, judgement_bound
from spoutline.rules.derive.turn import turn_angle_rad
from spoutline.rules.parts.figures import hose_weight_line
from spoutline.rules.verdicts import limit_source

OUTLET_WORD = "outlet"  # the dispenser outlet among the parts that a drive-off pulls at
_UNWANTED_PARTING = Bound(value=1.0, source="statics: below this it parts in use", status=LimitStatus.JUDGEMENT)


class DriveOffText(StrEnum):
    """Words that the drive-off check carries where no weakest part can be named."""

    NEVER_PARTS = "never_parts"  # pulled across its axis
    TOO_OBLIQUE = "too_oblique"
    STRENGTH_UNKNOWN = "strength_unknown"


@frozen
class _Bearer:
    """What a drive-off pulls at: its name and what it bears, N."""

    name: str
    strength_n: float | None


def breakaway_service_load(view: SetView) -> Check | None:
    """Hold separation over service load (ratio) against the margin; below 1 it parts in use: a must.

    Source: statics; margin and tug are engineering judgement.
    """
    place = view.breakaway_index
    data = None if place is None else view.links[place].part.breakaway
    if place is None or data is None:
        return None
    load, weight_lines = _load(view, place, data)
    margin = service_margin(separation_minimum_n=data.separation_minimum_n, load=load)
    parts_in_use = margin.ratio < 1.0
    bound = bound_of(LimitId.BREAKAWAY_SERVICE_MARGIN, view.jurisdiction)
    return held(
        CheckId.BREAKAWAY_SERVICE_LOAD,
        Severity.MUST if parts_in_use else Severity.SHOULD,
        margin.ratio,
        Dimension.RATIO,
        lower=_UNWANTED_PARTING if parts_in_use else bound,
        facts=(
            Quantity("service_load", load.total_n, Dimension.FORCE),
            Quantity("separation_minimum", data.separation_minimum_n, Dimension.FORCE),
        ),
        lines=(*weight_lines, *margin.lines),
    )


def _load(view: SetView, place: int, data: BreakawayData) -> tuple[ServiceLoad, tuple[WorkedLine, ...]]:
    below = [link.part for link in view.links[place + 1 :]]
    hose = next((part for part in below if part.hose is not None), None)
    weight_line = None if hose is None else hose_weight_line(hose, view.states.cold)
    length = 0.0 if hose is None or hose.hose is None else hose.hose.length_m
    load = service_load(
        weight_n_m=0.0 if weight_line is None else weight_line.result.value,
        length_below_m=length,
        rigid_mass_kg=math.fsum(part.mass_kg for part in below if part.hose is None),
        in_use_tension_n=_tension_in_use_n(view, place),
        user_tug_n=view.jurisdiction.number(LimitId.PULL_USER_TUG),
        pressure_pa=view.requirement.supply_pressure_pa,
        seal_diameter_m=data.seal_diameter_m,
    )
    return load, () if weight_line is None else (weight_line,)


def _tension_in_use_n(view: SetView, place: int) -> float | None:
    """Return the greatest tension of the hanging chain where the breakaway sits; None where nothing hangs.

    Along a catenary the tension falls by weight per metre times the drop, so the height at the breakaway gives it.
    """
    length = view.hanging_length_m
    weight = view.hanging_weight_n / length
    along = min(view.length_before_m(place), length)
    hangs = hang_in_use(view.requirement.position, length_m=length, weight_n_m=weight)
    tensions = (
        hang.curve.start_tension_n - weight * (hang.curve.start_height_m - hang.curve.point_at(along).height_m)
        for hang in hangs
    )
    return max(tensions, default=None)


def left_angle_rad(view: SetView) -> float:
    """Return the angle (rad) of a drive-off pull to the breakaway's axis that the whip hose cannot turn away.

    None is left at the nozzle, where the breakaway hangs in the line itself, or with a whip hose that is long enough.

    Parameters: ``view``. Source: arc of the whip hose's bend radius, geometry.
    """
    whip = view.hanging_set.part_in(Slot.WHIP_HOSE)
    if view.requirement.breakaway_at_nozzle or whip is None or whip.hose is None:
        return view.requirement.drive_off_angle_rad
    turned = whip.hose.length_m / whip.hose.minimum_bend_radius_m
    return max(0.0, turn_angle_rad(view.requirement.position) - turned)


def breakaway_drive_off(view: SetView) -> Check | None:
    """Hold what the weakest part bears (N), the breakaway's own halves included, against what it asks.

    Source: statics; the margin is engineering judgement.
    """
    place = view.breakaway_index
    data = None if place is None else view.links[place].part.breakaway
    if place is None or data is None:
        return None
    angle = 0.0 if data.omnidirectional else left_angle_rad(view)
    angle_fact = Quantity("angle", angle, Dimension.ANGLE)
    greatest = view.jurisdiction.number(LimitId.BREAKAWAY_ANGLE_MAX)
    if angle >= math.pi / 2.0:
        return _across(angle_fact)
    loads = drive_off(
        separation_n=data.separation_maximum_n,
        angle_rad=angle,
        strength_margin=view.jurisdiction.number(LimitId.BREAKAWAY_STRENGTH_MARGIN),
    )
    return _weakest_check(view, _bearers(view), loads, angle_fact, too_oblique=angle > greatest)


def _across(angle: Quantity) -> Check:
    return held(
        CheckId.BREAKAWAY_DRIVE_OFF,
        Severity.MUST,
        None,
        Dimension.FORCE,
        text=DriveOffText.NEVER_PARTS,
        facts=(angle,),
        fails=True,
    )


def _bearers(view: SetView) -> list[_Bearer]:
    outlet = _Bearer(OUTLET_WORD, view.requirement.outlet_pull_strength_n)
    return [outlet, *(_Bearer(link.part.number, link.part.pull_strength_n) for link in view.links)]


def _weakest_check(
    view: SetView, bearers: list[_Bearer], loads: DriveOff, angle: Quantity, *, too_oblique: bool
) -> Check:
    unknown = tuple(Fact("unknown", bearer.name) for bearer in bearers if bearer.strength_n is None)
    known = [(bearer.strength_n, bearer.name) for bearer in bearers if bearer.strength_n is not None]
    strength, weakest = min(known)
    row = view.jurisdiction.limit(LimitId.BREAKAWAY_STRENGTH_MARGIN)
    demand = judgement_bound(loads.required_strength_n, f"separation force with margin; {limit_source(row)}")
    fails = strength < demand.value * (1.0 - 1e-9) or too_oblique
    text: str = DriveOffText.TOO_OBLIQUE if too_oblique else weakest
    if unknown and not fails:
        text = DriveOffText.STRENGTH_UNKNOWN
    return held(
        CheckId.BREAKAWAY_DRIVE_OFF,
        Severity.MUST,
        None if unknown and not fails else strength,
        Dimension.FORCE,
        lower=demand,
        text=text,
        facts=(angle, Fact("weakest", weakest), *unknown),
        lines=loads.lines,
        fails=True if fails else None,
    )
