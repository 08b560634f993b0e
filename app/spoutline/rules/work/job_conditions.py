"""What is true of the work at a site, so that the caution sheet names it."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.calc.constants import WATER_FREEZES_C
from spoutline.model.caution import CautionCondition as Condition
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.liquid import LiquidFamily, is_flammable
from spoutline.model.plan import HangingSet, PositionPlan, SitePlan
from spoutline.model.survey import Duty, Position, Retrieval, VapourStatus
from spoutline.rules.derive.hose import is_on_reel

_DIESEL_FAMILY = frozenset({LiquidFamily.DIESEL, LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL})


def job_conditions(site_plan: SitePlan) -> frozenset[Condition]:
    """Return the conditions of every position of the site, with or without a set, and of its climate.

    A blend is told of where no listing for plain gasoline or diesel speaks any more: above the most ethanol of class
    E10, above the most biodiesel of class B20 (rows of the rule profile).
    """
    law = site_plan.jurisdiction
    found = {condition for plan in site_plan.positions for condition in _position_conditions(plan, law)}
    if site_plan.survey.site.climate.low_c < WATER_FREEZES_C.value:
        found.add(Condition.LOW_TEMPERATURE)
    return frozenset({Condition.ALWAYS, *found})


def _position_conditions(plan: PositionPlan, jurisdiction: Jurisdiction) -> Iterator[Condition]:
    position = plan.position
    yield from _liquid_conditions(position, jurisdiction)
    yield from _place_conditions(position)
    if position.vapour_wanted is not VapourStatus.NONE:
        yield Condition.VAPOUR_PRESENT
    elif position.vapour_today is not VapourStatus.NONE:
        yield Condition.VAPOUR_REMOVED
    if position.hold_open_wanted or (plan.requirement is not None and plan.requirement.hold_open):
        yield Condition.HOLD_OPEN
    if plan.chosen is not None:
        yield from _breakaway_conditions(plan.chosen.hanging_set)


def _liquid_conditions(position: Position, jurisdiction: Jurisdiction) -> Iterator[Condition]:
    family, blend = position.liquid.family, position.liquid.blend_percent
    if is_flammable(family):
        yield Condition.FLAMMABLE
    if family is LiquidFamily.GASOLINE:
        yield Condition.GASOLINE
        if blend > jurisdiction.number(LimitId.LISTING_E10_MAX):
            yield Condition.ETHANOL_ABOVE_10
    elif family in _DIESEL_FAMILY:
        yield Condition.DIESEL_FAMILY
        if blend > jurisdiction.number(LimitId.LISTING_B20_MAX):
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
