"""One position: requirement, candidates, the best set with its alternatives, or the conflict."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from spoutline.model.plan import (
    AccessoryLine,
    Alternative,
    AlternativeKind,
    Conflict,
    JudgedSet,
    PlanStatus,
    PositionPlan,
    Relaxation,
    SlotCount,
)
from spoutline.model.requirement import Refusal, RefusalStatus, Requirement, RequirementId
from spoutline.model.survey import Position, Site
from spoutline.planning.protocols import PartStore
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.alternatives import AlternativeFinder
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.conflicts import ConflictFinder, conflict_of_checks
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.pinned import pinned_in_the_way
from spoutline.planning.sets.pool import SLOT_KINDS, Pool, narrow_pool, whole_pool
from spoutline.planning.sets.staying import Choosing, choosing_for
from spoutline.planning.sets.supersession import successors_at
from spoutline.rules.derive.requirement import requirement_for

STATUS_OF = {
    RefusalStatus.NO_LISTING_CLASS: PlanStatus.NO_LISTING_CLASS,
    RefusalStatus.CONTRADICTION: PlanStatus.CONTRADICTION,
    RefusalStatus.NOT_ALLOWED: PlanStatus.NOT_ALLOWED,
    RefusalStatus.NO_SET: PlanStatus.NO_SET,
    RefusalStatus.OUT_OF_RANGE: PlanStatus.OUT_OF_RANGE,
}


@dataclass(frozen=True, slots=True)
class PlannedPosition:
    """A plan with the chooser behind it and its choice; both None where the plan has no set."""

    plan: PositionPlan
    choosing: Choosing | None = None
    choice: Choice | None = None

    @property
    def chooser(self) -> Chooser | None:
        """What chose the set, among the stand-ins that the search knows."""
        return self.choosing.chooser if self.choosing else None


def plan_position(
    position: Position, site: Site, context: PlanningContext, *, with_alternatives: bool = True
) -> PositionPlan:
    """Plan one position.

    Parameters
    ----------
    position, site
        From the survey.
    context
        Rule tables, part store and listener.
    with_alternatives
        False leaves out the search for alternatives.

    Returns
    -------
    PositionPlan
        With a chosen set, or a refusal, or a conflict: never without a reason.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    planned = planned_position(position, site, context)
    if not with_alternatives or planned.choosing is None or planned.choice is None:
        return planned.plan
    found = AlternativeFinder(planned.choosing.chooser, planned.choice).all()
    return replace(planned.plan, alternatives=tuple(_true_alternatives(found, planned.plan, planned.choosing, context)))


def _true_alternatives(
    found: tuple[Alternative, ...], plan: PositionPlan, choosing: Choosing, context: PlanningContext
) -> Iterator[Alternative]:
    """Yield the alternatives with true parts and prices; work, which weighs in the search, is no part of a price."""
    if choosing.staying is None or plan.chosen is None:
        yield from found
        return
    chosen_minor = plan.chosen.hanging_set.price_minor
    for one in found:
        judged = choosing.true_judged(one.judged, context)
        difference = judged.hanging_set.price_minor - chosen_minor
        if one.kind is not AlternativeKind.LOWEST_PRICE or difference < 0:
            yield replace(one, judged=judged, price_difference_minor=difference)


def planned_position(position: Position, site: Site, context: PlanningContext) -> PlannedPosition:
    """Plan one position without alternatives, and keep what another choice among its sets would need.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    requirement = requirement_for(position, site, context.tables)
    if isinstance(requirement, Refusal):
        return PlannedPosition(_plan(position, STATUS_OF[requirement.status], refusal=requirement))
    choosing = choosing_for(requirement, context)
    counts = slot_counts(requirement, choosing.new_pool, context.parts)
    choice = choosing.chooser.choose()
    if choice is None:
        conflict = conflict_of(requirement, context) or conflict_of_checks(choosing.chooser.last_refused)
        if conflict is not None:
            ways = (*_by_successors(requirement, context), *conflict.relaxations)
            asked_for = RequirementId.DECISION in conflict.requirements and position.decisions.pinned
            pinned = pinned_in_the_way(requirement, context) if asked_for else ()
            conflict = replace(conflict, relaxations=ways, pinned=pinned)
        return PlannedPosition(
            _plan(position, PlanStatus.DOES_NOT_FIT, requirement=requirement, conflict=conflict, counts=counts)
        )
    judged = choosing.true_judged(choice.judged, context)
    plan = _plan(
        position,
        PlanStatus.FITS,
        requirement=requirement,
        chosen=judged,
        counts=counts,
        accessories=accessory_lines(judged, requirement, context),
    )
    return PlannedPosition(plan, choosing, choice)


def chooser_for(requirement: Requirement, pool: Pool, context: PlanningContext) -> Chooser:
    """Return the chooser over ``pool`` for ``requirement``."""
    model = LoadModel(requirement, context.tables)
    return Chooser(
        ChainSearch(requirement, pool, model),
        SetJudge(requirement, context.tables, context.usual_prices),
        context.listener,
    )


def conflict_of(requirement: Requirement, context: PlanningContext) -> Conflict | None:
    """Explain over the whole catalogue why no set exists."""
    pool = whole_pool(requirement, context.tables, context.parts)
    return ConflictFinder(ChainSearch(requirement, pool, LoadModel(requirement, context.tables))).conflict()


def _by_successors(requirement: Requirement, context: PlanningContext) -> tuple[Relaxation, ...]:
    """Return the way out that parts kept give way to those that took their place; empty where that frees no set."""
    position, successions = successors_at(requirement.position, context.parts)
    updated = requirement_for(position, requirement.site, context.tables) if successions else None
    if updated is None or isinstance(updated, Refusal):
        return ()
    choosing = choosing_for(updated, context)
    choice = choosing.chooser.choose()
    if choice is None:
        return ()
    freed = choosing.true_judged(choice.judged, context).hanging_set
    return (
        Relaxation(
            requirement=RequirementId.DECISION,
            from_value=None,
            to_value=None,
            dimension=None,
            price_minor=freed.price_minor,
            parts=freed.refs,
            successions=successions,
        ),
    )


def slot_counts(requirement: Requirement, pool: Pool, parts: PartStore) -> tuple[SlotCount, ...]:
    """Return, per slot of the chain, how many parts the catalogue has and how many no must-rule forbids."""
    return tuple(
        SlotCount(
            slot=slot,
            in_catalogue=parts.count(SLOT_KINDS[slot]),
            remaining=pool.remaining(slot),
        )
        for slot in requirement.chain
    )


def counts_for(position: Position, site: Site, context: PlanningContext) -> tuple[SlotCount, ...]:
    """Return how far the answers given so far narrow each slot; empty where the requirement is refused."""
    requirement = requirement_for(position, site, context.tables)
    if isinstance(requirement, Refusal):
        return ()
    return slot_counts(requirement, narrow_pool(requirement, context.tables, context.parts), context.parts)


def _plan(
    position: Position,
    status: PlanStatus,
    *,
    requirement: Requirement | None = None,
    refusal: Refusal | None = None,
    chosen: JudgedSet | None = None,
    conflict: Conflict | None = None,
    counts: tuple[SlotCount, ...] = (),
    accessories: tuple[AccessoryLine, ...] = (),
) -> PositionPlan:
    return PositionPlan(
        position=position,
        status=status,
        requirement=requirement,
        refusal=refusal,
        chosen=chosen,
        alternatives=(),
        conflict=conflict,
        counts=counts,
        accessories=accessories,
    )
