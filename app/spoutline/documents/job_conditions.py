"""What is true of the work at a site, so that the caution sheet names it."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.liquid import LiquidFamily, is_flammable
from spoutline.model.plan import HangingSet, PositionPlan, SitePlan
from spoutline.model.survey import Duty, Position, Retrieval, VapourStatus
from spoutline.rules.derive.hose import is_on_reel
from spoutline.ruletables.cautionwords import CautionCondition as Condition

_FREEZING_C = 0.0
_STANDARD_ETHANOL_PERCENT = 10.0
_BIODIESEL_BLEND_PERCENT = 20.0
_DIESEL_FAMILY = frozenset({LiquidFamily.DIESEL, LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL})


def job_conditions(site_plan: SitePlan) -> frozenset[Condition]:
    """Return the conditions of every position of the site, with or without a set, and of its climate."""
    found = {condition for plan in site_plan.positions for condition in _position_conditions(plan)}
    if site_plan.survey.site.climate.low_c < _FREEZING_C:
        found.add(Condition.LOW_TEMPERATURE)
    return frozenset({Condition.ALWAYS, *found})


def _position_conditions(plan: PositionPlan) -> Iterator[Condition]:
    position = plan.position
    yield from _liquid_conditions(position)
    yield from _place_conditions(position)
    if position.vapour_wanted is not VapourStatus.NONE:
        yield Condition.VAPOUR_PRESENT
    elif position.vapour_today is not VapourStatus.NONE:
        yield Condition.VAPOUR_REMOVED
    if position.hold_open_wanted or (plan.requirement is not None and plan.requirement.hold_open):
        yield Condition.HOLD_OPEN
    if plan.chosen is not None:
        yield from _breakaway_conditions(plan.chosen.hanging_set)


def _liquid_conditions(position: Position) -> Iterator[Condition]:
    family, blend = position.liquid.family, position.liquid.blend_percent
    if is_flammable(family):
        yield Condition.FLAMMABLE
    if family is LiquidFamily.GASOLINE:
        yield Condition.GASOLINE
        if blend > _STANDARD_ETHANOL_PERCENT:
            yield Condition.ETHANOL_ABOVE_10
    elif family in _DIESEL_FAMILY:
        yield Condition.DIESEL_FAMILY
        if blend > _BIODIESEL_BLEND_PERCENT:
            yield Condition.BIODIESEL_ABOVE_20
    else:
        yield Condition.DEF


def _place_conditions(position: Position) -> Iterator[Condition]:
    if is_on_reel(position):
        yield Condition.REEL
    if position.retrieval is Retrieval.RETRACTOR:
        yield Condition.RETRACTOR
    if position.overhead:
        yield Condition.OVERHEAD
    if position.duty is Duty.MARINE:
        yield Condition.MARINE


def _breakaway_conditions(hanging_set: HangingSet) -> Iterator[Condition]:
    for link in hanging_set.links:
        if link.part.breakaway is not None:
            yield Condition.BREAKAWAY
            reconnectable = link.part.breakaway.reconnectable
            yield Condition.RECONNECTABLE_BREAKAWAY if reconnectable else Condition.SINGLE_USE_BREAKAWAY
