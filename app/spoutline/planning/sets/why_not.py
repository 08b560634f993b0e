"""Why a part is not the one chosen: the rules it breaks here, or the best set that holds it."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.part import Part
from spoutline.model.plan import PartVerdict, PlanStatus
from spoutline.model.requirement import Refusal, Requirement
from spoutline.model.survey import Position, Site
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.left_open import not_decided, not_proven, reasons_open
from spoutline.planning.sets.part_here import findings_here, forbids, places_for
from spoutline.planning.sets.plan_position import conflict_of, plan_position
from spoutline.planning.sets.staying import choosing_for
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.effort import Exhausted


def why_not(position: Position, site: Site, part: Part, context: PlanningContext) -> PartVerdict:
    """Judge ``part`` at ``position``.

    Returns
    -------
    PartVerdict
        Findings in the slot where the part breaks least; where no must is broken, the best set that holds the part,
        or the conflict that keeps it out of every set, or that this takes too much work to say.
    """
    requirement = requirement_for(position, site, context.tables)
    if isinstance(requirement, Refusal):
        return PartVerdict(
            part=part,
            position=position,
            slots=(),
            findings=requirement.findings,
            in_chosen_set=False,
            best_set_with_it=None,
        )
    slots = places_for(part, requirement)
    findings = findings_here(part, slots, requirement, context)
    verdict = PartVerdict(
        part=part, position=position, slots=slots, findings=findings, in_chosen_set=False, best_set_with_it=None
    )
    if not slots or any(forbids(finding) for finding in findings):
        return verdict
    return _with_sets(verdict, site, context)


def _with_sets(verdict: PartVerdict, site: Site, context: PlanningContext) -> PartVerdict:
    """Plan the position as it is, and once more with the part pinned."""
    position, part = verdict.position, verdict.part.ref
    plan = plan_position(position, site, context, with_alternatives=False)
    if plan.status is PlanStatus.FITS and plan.chosen and part in plan.chosen.hanging_set.refs:
        return replace(verdict, in_chosen_set=True, best_set_with_it=plan.chosen.hanging_set)
    others = tuple(one for one in position.decisions.pinned if not one.names(part))
    decisions = position.decisions.model_copy(update={"pinned": (*others, part)})
    pinned = requirement_for(position.model_copy(update={"decisions": decisions}), site, context.tables)
    if isinstance(pinned, Refusal):
        return verdict
    choosing = choosing_for(pinned, context)
    try:
        choice = choosing.chooser.choose()
    except Exhausted:
        return replace(verdict, left_open=not_decided(choosing.chooser).findings)
    if choice is None:
        return _without_set(verdict, pinned, context)
    best = choosing.true_judged(choice.judged, context).hanging_set
    open_without = plan.refusal.findings if plan.status is PlanStatus.NOT_DECIDED and plan.refusal is not None else ()
    doubts = not_proven(choosing.chooser, choice, with_work=choosing.staying is not None)
    return replace(verdict, best_set_with_it=best, left_open=(*open_without, *doubts))


def _without_set(verdict: PartVerdict, pinned: Requirement, context: PlanningContext) -> PartVerdict:
    """Return a verdict with what keeps the part out of every set, as far as that is found out."""
    try:
        return replace(verdict, conflict=conflict_of(pinned, context))
    except Exhausted:
        return replace(verdict, left_open=reasons_open(pinned))
