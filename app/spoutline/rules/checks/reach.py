"""Checks of length and of the hanging curve: limit, reach, ground clearance, bend radius, whip hose."""

from __future__ import annotations

import math
from enum import StrEnum

from spoutline.calc.hanging_curve import HangingCurve
from spoutline.calc.hanging_lines import bend_lines
from spoutline.calc.reach import ClampedHang, whip_length
from spoutline.model.check import Check, CheckId, WorkedLine
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId
from spoutline.model.part import Part
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Slot
from spoutline.model.survey import Retrieval
from spoutline.rules.chain.hanging import FillerHang, fillers_above, hang_at_rest, hang_in_use
from spoutline.rules.chain.order import FITTING_SLOTS
from spoutline.rules.chain.set_view import SetView
from spoutline.rules.checks.holding import bound_of, held, judgement_bound, part_bound, stated
from spoutline.rules.derive.hose import is_on_reel, length_limit_id
from spoutline.rules.derive.turn import turn_angle_rad
from spoutline.rules.parts.figures import coiled_length_m

_SUM = "sum along the chain"
BELOW_GROUND = "length_below_ground"  # the fact that says how much hose lies on the ground, or hangs below it


class HangText(StrEnum):
    """Words that the hanging checks carry."""

    ON_REEL = "on_reel"  # the reel takes the hose up: nothing hangs
    SHORT_OF_HOOK = "short_of_hook"
    TAUT = "taut"  # no slack hangs at any filler
    FILLER_LOW = "filler_low"  # every filler lies lower than the clearance
    CORD_OUT = "cord_out"  # too short for the cord to come home; worked out without it
    ON_CORD = "on_cord"
    FREE = "free"


def hose_length(view: SetView) -> Check:
    """Hold whip and curb hose together (m) against the jurisdiction's limit. Source: NFPA 30A 6.5; Okla. 165:26."""
    row = length_limit_id(view.requirement.position, view.requirement.site)
    hoses = tuple(
        Quantity(link.slot, figure.hose_length_m, Dimension.LENGTH)
        for link, figure in zip(view.links, view.figures, strict=True)
        if figure.hose_length_m > 0.0
    )
    total = Quantity("L_hose", view.hose_length_m, Dimension.LENGTH)
    line = WorkedLine(formula="L_hose = sum(L_i)", inputs=hoses, result=total, source=_SUM)
    return held(
        CheckId.HOSE_LENGTH,
        Severity.MUST,
        total.value,
        Dimension.LENGTH,
        upper=bound_of(row, view.jurisdiction),
        lines=(line,),
    )


def hose_reach(view: SetView) -> Check:
    """Hold hoses and rigid parts together (m) against what the furthest filler asks. Source: geometry."""
    needed = view.views.worst_reach
    lengths = tuple(
        Quantity(link.slot, figure.hose_length_m + figure.rigid_length_m, Dimension.LENGTH)
        for link, figure in zip(view.links, view.figures, strict=True)
        if link.slot not in FITTING_SLOTS
    )
    taken = _taken(view)
    line = WorkedLine(
        formula="".join(("L = sum(L_i)", *(f" - {quantity.name}" for quantity in taken))),
        inputs=(*lengths, *taken),
        result=Quantity("L", view.reach_m, Dimension.LENGTH),
        source=_SUM,
        note="hoses, breakaway, swivel and nozzle; an adapter is not counted on to lengthen them",
    )
    return held(
        CheckId.HOSE_REACH,
        Severity.MUST,
        view.reach_m,
        Dimension.LENGTH,
        lower=judgement_bound(needed.needed_m, "taut length to the filler and slack"),
        text=needed.filler,
        facts=(Fact("filler", needed.filler), Quantity("taut_length", needed.taut_m, Dimension.LENGTH)),
        lines=(*needed.lines, line),
    )


def _taken(view: SetView) -> tuple[Quantity, ...]:
    """Return the lengths (m) that never reach a filler: round the corners, and turns that stay on the drum."""
    requirement = view.requirement
    corners = sum(figure.corners_m for figure in view.figures)
    drum = sum(
        coiled_length_m(figure.hose_length_m, link.slot, requirement)
        for link, figure in zip(view.links, view.figures, strict=True)
    )
    named = (("L_corners", corners), ("L_drum", drum))
    return tuple(Quantity(name, value, Dimension.LENGTH) for name, value in named if value > 0.0)


def ground_clearance_at_rest(view: SetView) -> Check:
    """Hold the lowest point (m) with the nozzle on its hook against the clearance. Source: catenary; practice."""
    check, position = CheckId.GROUND_CLEARANCE_AT_REST, view.requirement.position
    if is_on_reel(position):
        return stated(check, Severity.SHOULD, None, Dimension.LENGTH, text=HangText.ON_REEL)
    length = view.hanging_length_m
    curve = hang_at_rest(position, length_m=length, weight_n_m=view.hanging_weight_n / length)
    bound = bound_of(LimitId.GROUND_CLEARANCE, view.jurisdiction)
    facts = (Quantity("hanging_length", length, Dimension.LENGTH),)
    if curve is None:
        return held(
            check,
            Severity.SHOULD,
            None,
            Dimension.LENGTH,
            lower=bound,
            text=HangText.SHORT_OF_HOOK,
            facts=facts,
            fails=True,
        )
    return held(
        check,
        Severity.SHOULD,
        curve.lowest_height_m,
        Dimension.LENGTH,
        lower=bound,
        text=_rest_text(view, curve),
        facts=(*facts, *_below_ground(curve)),
        lines=(_weight_line(view), *curve.lines),
    )


def _below_ground(curve: HangingCurve | ClampedHang) -> tuple[Quantity, ...]:
    """Return how much hose (m) of the curve comes below the ground, which is what lies on it; nothing where none does.

    Where the filler lies below the ground, as a boat's below a quay, that much hangs down beside it instead.
    """
    parts = (curve.first, curve.second) if isinstance(curve, ClampedHang) else (curve,)
    below_m = sum(part.length_below_m(0.0) for part in parts)
    return (Quantity(BELOW_GROUND, below_m, Dimension.LENGTH),) if below_m > 0.0 else ()


def _weight_line(view: SetView) -> WorkedLine:
    """Return the even weight (N/m) that the curve hangs with: hoses, liquid and fittings spread over the length."""
    weight = Quantity("W", view.hanging_weight_n, Dimension.FORCE)
    length = Quantity("L", view.hanging_length_m, Dimension.LENGTH)
    return WorkedLine(
        formula="w = W / L",
        inputs=(weight, length),
        result=Quantity("w", weight.value / length.value, Dimension.WEIGHT_PER_LENGTH),
        source="statics",
        note="W is the weight of hoses, liquid and fittings up to the nozzle's inlet, spread evenly",
    )


def _rest_text(view: SetView, curve: HangingCurve | ClampedHang) -> HangText:
    if isinstance(curve, ClampedHang):
        return HangText.ON_CORD
    return HangText.CORD_OUT if view.requirement.position.retrieval is Retrieval.RETRACTOR else HangText.FREE


def _use_hangs(view: SetView) -> tuple[FillerHang, ...]:
    """Return how the chain hangs at each filler; on a reel, all that can come off the drum."""
    length = view.hanging_length_m
    wound = math.fsum(
        coiled_length_m(figure.hose_length_m, link.slot, view.requirement)
        for link, figure in zip(view.links, view.figures, strict=True)
    )
    if length <= wound:
        return ()
    return hang_in_use(view.requirement.position, length_m=length - wound, weight_n_m=view.hanging_weight_n / length)


def _lowest(view: SetView) -> tuple[Quantity, ...]:
    """Return how much hose (m) comes below the ground at the filler where most does."""
    low = max(_use_hangs(view), key=lambda hang: hang.curve.length_below_m(0.0), default=None)
    return () if low is None else _below_ground(low.curve)


def ground_clearance_in_use(view: SetView) -> Check:
    """Hold the lowest point (m) at the worst filler against the clearance. Source: catenary; common practice."""
    check, position = CheckId.GROUND_CLEARANCE_IN_USE, view.requirement.position
    if is_on_reel(position):
        return stated(check, Severity.SHOULD, None, Dimension.LENGTH, text=HangText.ON_REEL, facts=_lowest(view))
    bound = bound_of(LimitId.GROUND_CLEARANCE, view.jurisdiction)
    asked = fillers_above(position, 0.0 if bound is None else bound.value)
    if not asked:
        return stated(check, Severity.SHOULD, None, Dimension.LENGTH, text=HangText.FILLER_LOW, facts=_lowest(view))
    hangs = [hang for hang in _use_hangs(view) if hang.filler in asked]
    if not hangs:
        return stated(check, Severity.SHOULD, None, Dimension.LENGTH, text=HangText.TAUT)
    worst = min(hangs, key=lambda hang: hang.curve.lowest_height_m)
    return held(
        check,
        Severity.SHOULD,
        worst.curve.lowest_height_m,
        Dimension.LENGTH,
        lower=bound,
        text=worst.filler.label,
        facts=(Fact("filler", worst.filler.label), *_below_ground(worst.curve)),
        lines=(_weight_line(view), *worst.curve.lines),
    )


def bend_radius(view: SetView) -> Check | None:
    """Hold the tightest bend in use (m), or the drum's, against the curb hose's own radius: advice.

    At rest the two falls of a hose hang close together and its stiffness widens the bow, so the ideal curve says
    nothing there. Source: the radius of a catenary at its vertex equals its parameter.
    """
    hose = view.curb_hose
    if hose is None or hose.hose is None:
        return None
    position = view.requirement.position
    if is_on_reel(position):
        radius = Quantity("r", position.reel.drum_diameter_m / 2.0, Dimension.LENGTH)
        drum = Quantity("D_drum", position.reel.drum_diameter_m, Dimension.LENGTH)
        line = WorkedLine(formula="r = D_drum / 2", inputs=(drum,), result=radius, source="geometry")
        return _bend(hose, radius.value, (line,), HangText.ON_REEL)
    hangs = [hang for hang in _use_hangs(view) if not hang.curve.is_doubled]
    if not hangs:
        return stated(CheckId.BEND_RADIUS, Severity.ADVICE, None, Dimension.LENGTH, text=HangText.TAUT)
    worst = min(hangs, key=lambda hang: hang.curve.least_bend_radius_m)
    return _bend(hose, worst.curve.least_bend_radius_m, bend_lines(worst.curve), worst.filler.label)


def _bend(hose: Part, radius_m: float, lines: tuple[WorkedLine, ...], text: str) -> Check | None:
    if hose.hose is None:
        return None
    return held(
        CheckId.BEND_RADIUS,
        Severity.ADVICE,
        radius_m,
        Dimension.LENGTH,
        lower=part_bound(hose.hose.minimum_bend_radius_m, hose),
        text=text,
        lines=lines,
    )


def whip_hose_length(view: SetView) -> Check | None:
    """Hold the whip hose (m) against the arc that turns the breakaway into line. Source: geometry; judgement."""
    part = view.hanging_set.part_in(Slot.WHIP_HOSE)
    if part is None or part.hose is None:
        return None
    needed = whip_length(
        bend_radius_m=part.hose.minimum_bend_radius_m,
        turn_angle_rad=turn_angle_rad(view.requirement.position),
        margin=view.jurisdiction.number(LimitId.BEND_ANGLE_MARGIN),
    )
    return held(
        CheckId.WHIP_LENGTH,
        Severity.MUST,
        part.hose.length_m,
        Dimension.LENGTH,
        lower=judgement_bound(needed.length_m, "arc of the whip hose's bend radius with margin"),
        lines=needed.lines,
    )
