"""A station planned for a refit: every distinct question once, then, where asked, the sets of all chosen together."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from spoutline.frozen import frozen
from spoutline.model.conversion_step import StepTable
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.plan import JudgedSet, PositionPlan, SitePlan
from spoutline.model.refit import ChangedSet, Commonality, RefitPlan, Supersession
from spoutline.model.survey import Position, Survey
from spoutline.planning.pricing.sellable import Sellable
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.refit.case import Case
from spoutline.planning.refit.commonality import NODE_LIMIT, common_sets
from spoutline.planning.refit.ladders import Ladder, Ladders
from spoutline.planning.refit.stock_figures import bought_in, figures_of
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.context import PlanningContext, stop_listener
from spoutline.planning.sets.plan_position import PlannedPosition, planned_position, with_other_sets
from spoutline.planning.sets.plan_site import provenance_of
from spoutline.planning.sets.relabel import relabelled, same_question


@frozen(kw_only=True)
class Stocking:
    """That sets are to be chosen together: the price of a part number in minor units, and prices by quantity.

    After ``node_limit`` nodes of the search the best choice found so far stands, and says how much it leaves open.
    """

    price_minor: int
    ladder: Callable[[Sellable], Ladder]
    node_limit: int = NODE_LIMIT


def stocking_at_list_price(price_minor: int | None, currency: str) -> Stocking | None:
    """Return that sets are chosen together at catalogue prices; None where a part number is worth nothing."""
    if price_minor is None:
        return None
    return Stocking(price_minor=price_minor, ladder=lambda part: ((1, part.price_minor(currency) or 0),))


@dataclass
class _Question:
    """A distinct question, the positions that ask it, and the plan that answers all of them."""

    positions: list[Position]
    context: PlanningContext
    planned: PlannedPosition

    @property
    def case(self) -> Case | None:
        """What is needed to choose the set again; None where there is none."""
        planned = self.planned
        if planned.chooser is None or planned.choice is None:
            return None
        return Case(planned.chooser, planned.choice, len(self.positions))


def plan_refit(
    survey: Survey,
    tables: RuleTables,
    parts: PartStore,
    *,
    parts_for: Callable[[Position], PartStore] | None = None,
    stocking: Stocking | None = None,
    supersessions: tuple[Supersession, ...] = (),
    steps: StepTable | None = None,
    progress: Progress | None = None,
    with_alternatives: bool = False,
) -> RefitPlan:
    """Plan every position of ``survey``; choose sets together where ``stocking`` is given.

    A set that is changed for the sake of the station has no alternatives of its own.

    ``parts_for`` narrows the parts of a position; positions that ask the same must get the same parts.

    Raises
    ------
    Cancelled
        If ``progress`` asks to stop.
    StoreFault
        Sets are to be chosen together and no optimum can be proved.
    """
    listener = stop_listener(progress)
    contexts: dict[int, PlanningContext] = {}  # by parts: what a context knows of their prices serves every position

    def context_for(position: Position) -> PlanningContext:
        chosen_from = parts if parts_for is None else parts_for(position)
        if id(chosen_from) not in contexts:
            contexts[id(chosen_from)] = PlanningContext(tables, chosen_from, listener, survey.conversion, steps)
        return contexts[id(chosen_from)]

    questions = _planned(
        survey, context_for, progress, keeps_choosers=stocking is not None, with_alternatives=with_alternatives
    )
    commonality = None if stocking is None else _together(questions, survey, parts, stocking, progress)
    by_question = {same_question(question.positions[0]): question.planned.plan for question in questions}
    site_plan = SitePlan(
        survey=survey,
        jurisdiction=tables.jurisdiction,
        positions=tuple(relabelled(by_question[same_question(one)], one) for one in survey.positions),
        provenance=provenance_of(survey, tables, parts),
    )
    return RefitPlan(site_plan=site_plan, supersessions=supersessions, commonality=commonality)


def _planned(
    survey: Survey,
    context_for: Callable[[Position], PlanningContext],
    progress: Progress | None,
    *,
    keeps_choosers: bool,
    with_alternatives: bool,
) -> list[_Question]:
    """Plan each distinct question once.

    What chose a set holds the candidates of its question, some megabytes of a large catalogue: a station of a thousand
    questions keeps them only where its sets are chosen again together.
    """
    known: dict[Position, _Question] = {}
    for done, position in enumerate(survey.positions):
        _report(progress, done, len(survey.positions))
        asked = same_question(position)
        if asked in known:
            known[asked].positions.append(position)
        else:
            context = context_for(position)
            planned = planned_position(position, survey.site, context)
            if with_alternatives:
                planned = with_other_sets(planned, context)
            if planned.chooser is not None:
                planned.chooser.search.forget_loads()
            kept = planned if keeps_choosers else PlannedPosition(planned.plan)
            known[asked] = _Question([position], context, kept)
    _report(progress, len(survey.positions), len(survey.positions))
    return list(known.values())


def _report(progress: Progress | None, done: int, total: int) -> None:
    if progress is not None:
        progress.on_progress(done, total)
        if progress.should_stop():
            raise Cancelled


def _together(
    questions: list[_Question], survey: Survey, parts: PartStore, stocking: Stocking, progress: Progress | None
) -> Commonality:
    """Choose the sets of all questions together, put them into the plans, and say what that costs and saves."""
    pairs = [(question, case) for question in questions if (case := question.case)]
    cases = [case for _, case in pairs]
    ladders = Ladders(stocking.ladder, parts)
    stop = progress.should_stop if progress is not None else bool
    common = common_sets(cases, stocking.price_minor, ladders, stop, stocking.node_limit)
    before = [bought_in(case, case.choice.judged.hanging_set) for case in cases]
    after = [bought_in(case, judged.hanging_set) for case, judged in zip(cases, common.judged, strict=True)]
    counts = [case.positions for case in cases]
    changed: list[ChangedSet] = []
    for (question, case), judged in zip(pairs, common.judged, strict=True):
        changed.extend(_changes(question, case, judged))
        plan = _with_set(question.planned, judged, question.context)
        question.planned = replace(question.planned, plan=plan)
    places = {position.label: number for number, position in enumerate(survey.positions)}
    return Commonality(
        stock_price_minor=stocking.price_minor,
        alone=figures_of(before, counts, ladders),
        together=figures_of(after, counts, ladders),
        changed=tuple(sorted(changed, key=lambda change: places[change.label])),
        rounds=common.rounds,
        floor_minor=common.floor_minor,
    )


def _changes(question: _Question, case: Case, judged: JudgedSet) -> Sequence[ChangedSet]:
    before, after = case.choice.judged.hanging_set, judged.hanging_set
    if before.refs == after.refs:
        return ()
    difference = after.price_minor - before.price_minor
    return [
        ChangedSet(label=position.label, before=before.refs, after=after.refs, price_difference_minor=difference)
        for position in question.positions
    ]


def _with_set(planned: PlannedPosition, found: JudgedSet, context: PlanningContext) -> PositionPlan:
    plan = planned.plan
    if plan.requirement is None or planned.choosing is None or planned.choice is None:
        return plan
    if found.hanging_set.identity == planned.choice.judged.hanging_set.identity:
        return plan
    judged = planned.choosing.true_judged(found, context)
    return replace(plan, chosen=judged, accessories=accessory_lines(judged, plan.requirement, context), alternatives=())
