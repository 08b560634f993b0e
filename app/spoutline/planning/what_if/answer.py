"""What one other answer does to a station, position by position, before anybody accepts it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.survey import Position, Survey
from spoutline.model.what_if import OF_THE_STATION, WhatIf, WhatIfPosition, WhatIfQuestion, WhatIfResult
from spoutline.planning.protocols import Progress
from spoutline.planning.refit.station_plan import station_plan
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.plan_site import provenance_of
from spoutline.planning.sets.relabel import relabelled, same_question
from spoutline.planning.what_if.answers import changed_survey, touched_positions
from spoutline.planning.what_if.comparing import Comparing


@frozen
class WhatIfListening:
    """Who is told: how far the work is, and each position as soon as it is known."""

    progress: Progress | None = None
    on_position: Callable[[WhatIfPosition], None] | None = None


def what_if(
    before: SitePlan, asked: WhatIf, context: PlanningContext, listening: WhatIfListening | None = None
) -> WhatIfResult:
    """Return what becomes of a station under another answer.

    Parameters
    ----------
    before
        The sets of today: planned, agreed or built.
    asked
        The other answer.
    context
        Rule tables and parts by which the survey with the other answer is planned.
    listening
        Told of progress, and of each position in turn.

    Raises
    ------
    InputFault
        The survey does not admit the answer, or no position is meant.
    Cancelled
        If the listener asks to stop.
    """
    listening = listening or WhatIfListening()
    survey = before.survey
    changed = changed_survey(survey, asked)
    comparing = Comparing(context, other_edition=asked.question is WhatIfQuestion.CATALOGUE)
    known = {plan.position.label: plan for plan in before.positions}
    touched = [one.label for one in touched_positions(survey, asked) if one.label in known]
    plans = _together(changed, context, listening) if survey.site.stock_price else None
    found: dict[str, WhatIfPosition] = {}
    for after in _watched(plans or _alone(changed, touched, context), len(touched), listening):
        label = after.position.label
        if label not in known or not _is_of_interest(label, known[label], after, touched, asked):
            continue
        found[label] = comparing.position(known[label], after)
        if listening.on_position is not None:
            listening.on_position(found[label])
    return WhatIfResult(
        asked=asked,
        before=before,
        changed=changed,
        positions=tuple(found[one.label] for one in survey.positions if one.label in found),
        untouched=sum(one.label not in found for one in survey.positions),
        jurisdiction=context.tables.jurisdiction,
        made_from=provenance_of(changed, context.tables, context.parts),
    )


def _is_of_interest(label: str, before: PositionPlan, after: PositionPlan, touched: list[str], asked: WhatIf) -> bool:
    """Say whether a position is shown: it is touched, or its set changes because those of the station hang together."""
    if label in touched:
        return True
    if asked.question in OF_THE_STATION:
        return False  # other positions of the station were not asked about
    return _identity(before) != _identity(after)


def _identity(plan: PositionPlan) -> object:
    return plan.chosen and plan.chosen.hanging_set.identity


def _alone(changed: Survey, touched: list[str], context: PlanningContext) -> Iterator[PositionPlan]:
    """Yield the plans of positions that depend on no other; equal questions are planned once."""
    known: dict[Position, PositionPlan] = {}
    for position in changed.positions:
        if position.label not in touched:
            continue
        question = same_question(position)
        if question not in known:
            known[question] = plan_position(position, changed.site, context, with_alternatives=False)
        yield relabelled(known[question], position)


def _together(changed: Survey, context: PlanningContext, listening: WhatIfListening) -> Iterator[PositionPlan]:
    """Yield the plans of a station whose sets are chosen together: any may change with any answer."""
    site_plan = station_plan(changed, context.tables, context.parts, listening.progress, steps=context.steps)
    yield from (replace(plan, alternatives=()) for plan in site_plan.positions)


def _watched(plans: Iterator[PositionPlan], total: int, listening: WhatIfListening) -> Iterator[PositionPlan]:
    """Yield the plans, telling before each how far the work is and asking whether it goes on."""
    progress = listening.progress
    done = 0
    while True:
        if progress is not None:
            if progress.should_stop():
                raise Cancelled
            progress.on_progress(min(done, total), total)
        plan = next(plans, None)
        if plan is None:
            return
        done += 1
        yield plan
