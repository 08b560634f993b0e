"""Checks of single parts held up as a whole: the spout, the swivel's kind, the breakaway's force class."""

from __future__ import annotations

from enum import StrEnum

from spoutline.model.check import Bound, Check, CheckId, Outcome
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId
from spoutline.model.liquid import is_flammable
from spoutline.model.part import Part
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Slot
from spoutline.model.survey import Duty
from spoutline.rules.chain.set_view import SetView
from spoutline.rules.checks.holding import bound_of, held, stated
from spoutline.rules.derive.nozzle import SPOUT_LIMITS
from spoutline.rules.parts.devices import FORCE_ROUNDING_N
from spoutline.rules.parts.look import findings_of
from spoutline.rules.parts.nozzles import (
    spout_enters_own_filler,
    spout_in_window,
    spout_stays_out_of_wrong_filler,
)

_PLANES_ROW = {
    Duty.CAR: LimitId.SWIVEL_PLANES_CAR,
    Duty.TRUCK: LimitId.SWIVEL_PLANES_TRUCK,
    Duty.MARINE: LimitId.SWIVEL_PLANES_MARINE,
    Duty.REEL: LimitId.SWIVEL_PLANES_REEL,
}


class SwivelType(StrEnum):
    """The word that the swivel check carries."""

    SINGLE_PLANE = "single_plane"
    TWO_PLANE = "two_plane"
    BUILT_IN = "built_in"
    MISSING = "missing"


class ForceClass(StrEnum):
    """The word that the force class check carries; the window itself stands in the facts."""

    INSIDE_WINDOW = "inside_window"
    OUTSIDE_WINDOW = "outside_window"


def spout_diameter(view: SetView) -> Check | None:
    """Hold the spout (m) against its window and the fillers. Source: 40 CFR 1090.1550, SAE J285, ISO 22241-4."""
    nozzle = view.nozzle
    return None if nozzle is None else view.of_part("spout", nozzle, lambda: _spout_of(nozzle, view))


def _spout_of(nozzle: Part, view: SetView) -> Check | None:
    if nozzle.nozzle is None:
        return None
    rules = (spout_in_window, spout_stays_out_of_wrong_filler, spout_enters_own_filler)
    broken = findings_of(nozzle, Slot.NOZZLE, view.requirement, view.tables, rules)
    low, high = SPOUT_LIMITS[nozzle.nozzle.service]
    openings = [
        Quantity(f"opening_{fact.value}", quantity.value, Dimension.DIAMETER)
        for found in broken
        for quantity in found.facts
        for fact in found.facts
        if isinstance(quantity, Quantity) and quantity.name == "opening" and isinstance(fact, Fact)
    ]
    return held(
        CheckId.SPOUT_DIAMETER,
        Severity.MUST,
        nozzle.nozzle.spout_outside_diameter_m,
        Dimension.DIAMETER,
        lower=bound_of(low, view.jurisdiction),
        upper=bound_of(high, view.jurisdiction),
        text=nozzle.nozzle.service,
        facts=(Fact("service", nozzle.nozzle.service), *openings),
        fails=bool(broken),
    )


def swivel_type(view: SetView) -> Check | None:
    """Hold the planes of the swivel against the duty's. Source: common practice, no source."""
    requirement = view.requirement
    duty = Fact("duty", requirement.position.duty)
    if requirement.path is not FlowPath.SINGLE:
        return stated(
            CheckId.SWIVEL_TYPE, Severity.SHOULD, None, Dimension.COUNT, text=SwivelType.BUILT_IN, facts=(duty,)
        )
    part = view.hanging_set.part_in(Slot.SWIVEL) or view.hanging_set.part_in(Slot.SWIVEL_BREAKAWAY)
    row = _PLANES_ROW[requirement.position.duty]
    planes = part.swivel.planes if part is not None and part.swivel is not None else None
    text = SwivelType.MISSING
    if planes is not None:
        text = SwivelType.TWO_PLANE if planes > 1 else SwivelType.SINGLE_PLANE
    return held(
        CheckId.SWIVEL_TYPE,
        Severity.SHOULD,
        None if planes is None else float(planes),
        Dimension.COUNT,
        lower=bound_of(row, view.jurisdiction),
        text=text,
        facts=(duty,),
    )


def breakaway_force_class(view: SetView) -> Check | None:
    """Hold both ends of the separation window (N) against the profile's. Source: UL 567 6.3; EN 13617-2."""
    place = view.breakaway_index
    data = None if place is None else view.links[place].part.breakaway
    if data is None:
        return None
    lower = bound_of(LimitId.BREAKAWAY_SEPARATION_MIN, view.jurisdiction)
    upper = bound_of(LimitId.BREAKAWAY_SEPARATION_MAX, view.jurisdiction)
    margin = min(_room_above(data.separation_minimum_n, lower), _room_below(data.separation_maximum_n, upper))
    inside = margin >= -FORCE_ROUNDING_N
    return Check(
        id=CheckId.BREAKAWAY_FORCE_CLASS,
        severity=Severity.MUST if is_flammable(view.requirement.liquid.family) else Severity.SHOULD,
        outcome=Outcome.PASSES if inside else Outcome.FAILS,
        value=data.separation_maximum_n,
        dimension=Dimension.FORCE,
        lower=lower,
        upper=upper,
        margin=margin,
        text=ForceClass.INSIDE_WINDOW if inside else ForceClass.OUTSIDE_WINDOW,
        facts=(
            Quantity("separation_minimum", data.separation_minimum_n, Dimension.FORCE),
            Quantity("separation_maximum", data.separation_maximum_n, Dimension.FORCE),
        ),
    )


def _room_above(value: float, bound: Bound | None) -> float:
    return float("inf") if bound is None else value - bound.value


def _room_below(value: float, bound: Bound | None) -> float:
    return float("inf") if bound is None else bound.value - value
