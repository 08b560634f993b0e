"""One position: requirement, candidates, the best set with its alternatives, or the conflict."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import partial

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Finding
from spoutline.model.plan import (
    Alternative,
    AlternativeKind,
    Conflict,
    PlanStatus,
    PositionPlan,
    Relaxation,
    SlotCount,
)
from spoutline.model.requirement import Refusal, RefusalStatus, Requirement, RequirementId
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Position, Site
from spoutline.planning.protocols import PartStore
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.alternatives import AlternativeFinder
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.conflicts import ConflictFinder, conflict_of_checks
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.left_open import alternatives_open, not_decided, not_proven, reasons_open
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.pinned import pinned_in_the_way
from spoutline.planning.sets.pool import SLOT_KINDS, Pool, narrow_pool, whole_pool
from spoutline.planning.sets.staying import Choosing, choosing_for
from spoutline.planning.sets.supersession import successors_at
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.effort import Exhausted

STATUS_OF = {
    RefusalStatus.NO_LISTING_CLASS: PlanStatus.NO_LISTING_CLASS,
    RefusalStatus.CONTRADICTION: PlanStatus.CONTRADICTION,
    RefusalStatus.NOT_ALLOWED: PlanStatus.NOT_ALLOWED,
    RefusalStatus.NO_SET: PlanStatus.NO_SET,
    RefusalStatus.OUT_OF_RANGE: PlanStatus.OUT_OF_RANGE,
    RefusalStatus.NOT_DECIDED: PlanStatus.NOT_DECIDED,
}


@frozen
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
    return with_other_sets(planned, context).plan if with_alternatives else planned.plan


def plan_stages(position: Position, site: Site, context: PlanningContext) -> Iterator[StagedPlan]:
    """Yield what is known of one position as it stands: first its set, last its other sets.

    Other sets come kind by kind in turn. Where none fits, that comes first, then counts, what is in the way, and each
    way out. The last value is whole, and its plan is that of ``plan_position``; whoever needs no more stops asking.

    Raises
    ------
    Cancelled
        If the listener asks to stop, in a search or between two stages.
    """
    looked = _looked_for(position, site, context)
    if looked.requirement is None or looked.choosing is None:
        yield StagedPlan.of(looked.planned.plan)
        return
    has_set, is_open = looked.planned.choice is not None, looked.planned.plan.refusal is not None
    others = _OtherSets(looked.planned, context)
    yield (staged := StagedPlan(plan=looked.planned.plan, is_explained=has_set or is_open, sought=others.kinds))
    _may_go_on(context)
    yield (staged := replace(staged, counts=slot_counts(looked.requirement, looked.choosing.new_pool, context.parts)))
    _may_go_on(context)
    if is_open:
        yield replace(staged, alternatives=())
        return
    if has_set:
        for kind, found in others.found():
            left = staged.sought[staged.sought.index(kind) + 1 :]
            staged = replace(staged, sought=left, found=staged.found if found is None else (*staged.found, found))
            if left:
                yield staged
                _may_go_on(context)
        yield replace(staged, alternatives=_in_order(staged.found), found=(), left_open=others.left_open)
        return
    reasons = _Reasons(looked, context)
    for conflict in reasons.found():
        yield (staged := replace(staged, obstacle=conflict))
        _may_go_on(context)
    plan = replace(staged.plan, conflict=staged.obstacle)
    yield replace(staged, plan=plan, is_explained=True, obstacle=None, alternatives=(), left_open=reasons.left_open)


def _may_go_on(context: PlanningContext) -> None:
    if context.listener is not None and context.listener.should_stop():
        raise Cancelled


def with_other_sets(planned: PlannedPosition, context: PlanningContext) -> PlannedPosition:
    """Return a planned position with its alternatives.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    others = _OtherSets(planned, context)
    found = _in_order(one for _, one in others.found() if one is not None)
    return replace(planned, plan=replace(planned.plan, alternatives=found, left_open=others.left_open))


def _in_order(others: Iterable[Alternative]) -> tuple[Alternative, ...]:
    order = list(AlternativeKind)
    return tuple(sorted(others, key=lambda one: order.index(one.kind)))


class _OtherSets:
    """The alternatives of a planned position, with true parts and prices; none where it has no set."""

    def __init__(self, planned: PlannedPosition, context: PlanningContext) -> None:
        self._planned, self._context = planned, context
        self._finder: AlternativeFinder | None = None
        if planned.choosing is not None and planned.choice is not None:
            self._finder = AlternativeFinder(planned.choosing.chooser, planned.choice)

    @property
    def kinds(self) -> tuple[AlternativeKind, ...]:
        """What is looked for, in turn."""
        return self._finder.kinds if self._finder is not None else ()

    @property
    def left_open(self) -> tuple[Finding, ...]:
        """What is told of the kinds of which it took too much work to say, once all were looked for."""
        if self._finder is None:
            return self._planned.plan.left_open
        return alternatives_open(self._finder.chooser.search.requirement, self._finder.left_open)

    def found(self) -> Iterator[tuple[AlternativeKind, Alternative | None]]:
        """Yield each kind in turn, with its set as soon as that is known; None where there is none to show."""
        for kind, found in self._finder.found() if self._finder is not None else ():
            yield kind, None if found is None else self._true(found)

    def _true(self, found: Alternative) -> Alternative | None:
        """Return an alternative with true parts and prices; work, which weighs in the search, is no part of a price."""
        choosing, chosen = self._planned.choosing, self._planned.plan.chosen
        if choosing is None or choosing.staying is None or chosen is None:
            return found
        judged = choosing.true_judged(found.judged, self._context)
        difference = judged.hanging_set.price_minor - chosen.hanging_set.price_minor
        if found.kind is AlternativeKind.LOWEST_PRICE and difference >= 0:
            return None
        return replace(found, judged=judged, price_difference_minor=difference)


@frozen
class _Looked:
    """A position for which a set was looked for, not yet counted; a refused one has no requirement."""

    planned: PlannedPosition
    requirement: Requirement | None = None
    choosing: Choosing | None = None


def planned_position(position: Position, site: Site, context: PlanningContext) -> PlannedPosition:
    """Plan one position without alternatives, and keep what another choice among its sets would need.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    looked = _looked_for(position, site, context)
    if looked.requirement is None or looked.choosing is None:
        return looked.planned
    counts = slot_counts(looked.requirement, looked.choosing.new_pool, context.parts)
    is_told = looked.planned.choice is not None or looked.planned.plan.refusal is not None
    planned = looked.planned if is_told else _with_reasons(looked, context)
    return replace(planned, plan=replace(planned.plan, counts=counts))


def _looked_for(position: Position, site: Site, context: PlanningContext) -> _Looked:
    """Look for the set of a position: with it, refused, or as one that does not fit, the reasons still unknown."""
    requirement = requirement_for(position, site, context.tables)
    plan = partial(_plan, position)
    if isinstance(requirement, Refusal):
        return _Looked(PlannedPosition(plan(STATUS_OF[requirement.status], refusal=requirement)))
    choosing = choosing_for(requirement, context)
    try:
        choice = choosing.chooser.choose()
    except Exhausted:
        refusal = not_decided(choosing.chooser)
        found = plan(STATUS_OF[refusal.status], requirement=requirement, refusal=refusal)
        return _Looked(PlannedPosition(found), requirement, choosing)
    if choice is None:
        return _Looked(PlannedPosition(plan(PlanStatus.DOES_NOT_FIT, requirement=requirement)), requirement, choosing)
    judged = choosing.true_judged(choice.judged, context)
    doubts = not_proven(choosing.chooser, choice, with_work=choosing.staying is not None)
    judged = replace(judged, findings=(*judged.findings, *doubts)) if doubts else judged
    fitting = replace(
        plan(PlanStatus.FITS, requirement=requirement),
        chosen=judged,
        accessories=accessory_lines(judged, requirement, context),
    )
    return _Looked(PlannedPosition(fitting, choosing, choice), requirement, choosing)


def _with_reasons(looked: _Looked, context: PlanningContext) -> PlannedPosition:
    """Return a position that no set fits with why that is so and what would help."""
    reasons = _Reasons(looked, context)
    told = tuple(reasons.found())
    plan = replace(looked.planned.plan, conflict=told[-1] if told else None, left_open=reasons.left_open)
    return PlannedPosition(plan)


@dataclass
class _Reasons:
    """Why no set fits a position, as far as that is found out; ``left_open`` says afterwards that it was not all."""

    looked: _Looked
    context: PlanningContext
    left_open: tuple[Finding, ...] = ()

    def found(self) -> Iterator[Conflict]:
        """Yield what is in the way, then the same with each way out as it is found."""
        requirement, choosing = self.looked.requirement, self.looked.choosing
        if requirement is None or choosing is None:
            return
        finder = _conflict_finder(choosing.new_pool.whole(), choosing.chooser.search.model, self.context)
        conflict: Conflict | None = None
        try:
            found = finder.conflict(with_relaxations=False)
            conflict = found or conflict_of_checks(choosing.chooser.last_refused)
            if conflict is None:
                return
            asked_for = RequirementId.DECISION in conflict.requirements and requirement.position.decisions.pinned
            pinned = pinned_in_the_way(requirement, self.context) if asked_for else ()
            yield (conflict := replace(conflict, pinned=pinned))
            ways = _by_successors(requirement, self.context)
            for way in itertools.chain(ways, finder.relaxations(found.requirements) if found is not None else ()):
                yield (conflict := replace(conflict, relaxations=(*conflict.relaxations, way)))
        except Exhausted:
            self.left_open = reasons_open(requirement)


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
    return _conflict_finder(pool, LoadModel(requirement, context.tables), context).conflict()


def _conflict_finder(pool: Pool, model: LoadModel, context: PlanningContext) -> ConflictFinder:
    return ConflictFinder(ChainSearch(model.requirement, pool, model), context.listener)


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
) -> PositionPlan:
    """Return the plan of a position without a set, whose reasons are still to be found."""
    return PositionPlan(
        position=position,
        status=status,
        requirement=requirement,
        refusal=refusal,
        chosen=None,
        alternatives=(),
        conflict=None,
        counts=(),
        accessories=(),
    )
