"""The cheapest sets for today's answers that also keep every must of a later liquid: both requirements at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Severity, Verdict
from spoutline.model.part_columns import Mask
from spoutline.model.plan import HangingSet, JudgedSet, PlanStatus, PositionPlan, SitePlan
from spoutline.model.requirement import Refusal, Requirement, RequirementId
from spoutline.model.survey import Position, Site, Survey
from spoutline.model.what_if import WhatIf, WhatIfEffect, WhatIfPosition, WhatIfResult
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.left_open import not_decided, not_proven
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.plan_site import provenance_of
from spoutline.planning.sets.pool import Pool, SlotParts, whole_pool
from spoutline.planning.sets.relabel import relabelled, same_question
from spoutline.planning.sets.staying import Choosing, RefitChooser, choosing_for
from spoutline.planning.what_if.answer import WhatIfListening
from spoutline.planning.what_if.answers import changed_survey, touched_positions
from spoutline.planning.what_if.comparing import Comparing
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.effort import Exhausted


def lasting_sets(
    before: SitePlan, asked: WhatIf, context: PlanningContext, listening: WhatIfListening | None = None
) -> WhatIfResult:
    """Return the cheapest sets that also last for a later answer, against the plain ones of ``before``.

    Shoulds are those of today alone. ``changed`` of the result is the survey that asks for the parts of these sets.
    Positions are looked at one by one, also where a station's sets are chosen together.

    Raises
    ------
    InputFault
        The survey does not admit the later answer, or no position is meant.
    Cancelled
        If the listener asks to stop.
    """
    listening = listening or WhatIfListening()
    survey, later = before.survey, changed_survey(before.survey, asked)
    touched = [one.label for one in touched_positions(survey, asked)]
    plans = [plan for plan in before.positions if plan.position.label in touched]
    found: list[WhatIfPosition] = []
    known: dict[tuple[Position, Position], PositionPlan] = {}
    for done, plan in enumerate(plans):
        if listening.progress is not None:
            if listening.progress.should_stop():
                raise Cancelled
            listening.progress.on_progress(done, len(plans))
        changed = _position(later, plan.position.label)
        key = (same_question(plan.position), same_question(changed))
        if key not in known:
            known[key] = _lasting_plan(plan.position, changed, survey, context)
        found.append(_compared(plan, relabelled(known[key], plan.position), changed, survey.site, context))
        if listening.on_position is not None:
            listening.on_position(found[-1])
    return WhatIfResult(
        asked=asked,
        before=before,
        changed=_asking_for(survey, found),
        positions=tuple(found),
        untouched=len(survey.positions) - len(found),
        jurisdiction=context.tables.jurisdiction,
        made_from=provenance_of(later, context.tables, context.parts),
    )


def _position(survey: Survey, label: str) -> Position:
    return next(one for one in survey.positions if one.label == label)


def _lasting_plan(position: Position, changed: Position, survey: Survey, context: PlanningContext) -> PositionPlan:
    """Return the plan of a position whose set keeps every must of both; without a set where there is none."""
    site = survey.site
    now, then = (requirement_for(one, site, context.tables) for one in (position, changed))
    refused = next((one for one in (now, then) if isinstance(one, Refusal)), None)
    plan = PositionPlan(
        position=position,
        status=PlanStatus.DOES_NOT_FIT,
        requirement=None if isinstance(now, Refusal) else now,
        refusal=refused,
        chosen=None,
        alternatives=(),
        conflict=None,
        counts=(),
        accessories=(),
    )
    if isinstance(now, Refusal) or isinstance(then, Refusal):
        return plan
    choosing = _lasting_choosing(now, then, context)
    try:
        choice = choosing.chooser.choose()
    except Exhausted:
        return replace(plan, status=PlanStatus.NOT_DECIDED, refusal=not_decided(choosing.chooser))
    if choice is None:
        return plan
    judged = choosing.true_judged(choice.judged, context)
    doubts = not_proven(choosing.chooser, choice, with_work=choosing.staying is not None)
    judged = replace(judged, findings=(*judged.findings, *doubts)) if doubts else judged
    return replace(plan, status=PlanStatus.FITS, chosen=judged, accessories=accessory_lines(judged, now, context))


def _lasting_choosing(now: Requirement, then: Requirement, context: PlanningContext) -> Choosing:
    """Return what chooses among the parts that break no must of either requirement."""
    choosing = choosing_for(now, context)
    pool = choosing.chooser.search.pool.only(_Lasting(whole_pool(then, context.tables, context.parts)).keep)
    chooser = LastingChooser(
        ChainSearch(now, pool, LoadModel(now, context.tables)), choosing.chooser.judge, context.listener
    )
    chooser.installed_keys = choosing.chooser.installed_keys
    chooser.choosing, chooser.later = choosing, SetJudge(then, context.tables, context.usual_prices)
    return replace(choosing, chooser=chooser)


@frozen
class _Lasting:
    """The parts that break no must of the later requirement, by the rows of the same columns."""

    later: Pool

    def keep(self, one: SlotParts) -> Mask:
        """Say which rows last; parts that hang there already are judged with the whole set."""
        for portion in self.later.portions(one.slot):
            if portion.columns is one.columns:
                return portion.free
        return one.inside


class LastingChooser(RefitChooser):
    """A chooser that takes only sets that keep every must of a later requirement too, by a full check of each."""

    choosing: Choosing
    later: SetJudge

    def _accepted_or_none(self, hanging_set: HangingSet, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        judged = super()._accepted_or_none(hanging_set, dropped)
        if judged is None:
            return None
        staying = self.choosing.staying
        true_set = hanging_set if staying is None else staying.true_set(hanging_set)
        later = self.later.judged(true_set)
        if keeps_musts(later):
            return judged
        self.turned_down += 1
        self.last_refused = later
        return None


def keeps_musts(judged: JudgedSet) -> bool:
    """Say whether no must is broken, by a rule or by a check; an unproved must is broken."""
    broken = any(one.severity is Severity.MUST and one.verdict is Verdict.BROKEN for one in judged.findings)
    return not broken and all(check.passes or check.severity is not Severity.MUST for check in judged.checks)


def _compared(
    before: PositionPlan, lasting: PositionPlan, changed: Position, site: Site, context: PlanningContext
) -> WhatIfPosition:
    """Return the plain set against the lasting one; a part of the plain set must go by what the later liquid asks."""
    then = requirement_for(changed, site, context.tables)
    later = replace(lasting, requirement=None if isinstance(then, Refusal) else then)
    found = Comparing(context).position(before, later)
    return replace(found, after=lasting, effect=_effect(before, lasting))


def _effect(before: PositionPlan, lasting: PositionPlan) -> WhatIfEffect:
    if lasting.chosen is None:
        return WhatIfEffect.NO_SET if before.chosen is None else WhatIfEffect.NONE_LASTS
    if before.chosen is not None and before.chosen.hanging_set.refs == lasting.chosen.hanging_set.refs:
        return WhatIfEffect.LASTS
    return WhatIfEffect.OTHER_LASTS


def _asking_for(survey: Survey, found: Sequence[WhatIfPosition]) -> Survey:
    """Return the survey that asks for the parts of the lasting sets, where they are others than those of today."""
    wanted = {
        one.label: tuple(dict.fromkeys(one.after.chosen.hanging_set.refs))
        for one in found
        if one.effect is WhatIfEffect.OTHER_LASTS and one.after.chosen is not None
    }
    positions = (
        one.model_copy(update={"decisions": one.decisions.model_copy(update={"pinned": wanted[one.label]})})
        if one.label in wanted
        else one
        for one in survey.positions
    )
    return survey.model_copy(update={"positions": tuple(positions)})
