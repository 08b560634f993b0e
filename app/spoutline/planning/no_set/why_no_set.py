"""Why a position has no set: every conflict with its reasons, and every way out as a trial of the survey."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace

from spoutline.model.faults import Cancelled, Undecided
from spoutline.model.finding import Finding
from spoutline.model.no_set import (
    AskedAnswer,
    Concession,
    ConflictReasons,
    Demand,
    DemandKind,
    FigureReason,
    NoSetEnding,
    NoSetReasons,
    SlotReason,
    Trial,
)
from spoutline.model.plan import Conflict, PlanStatus, PositionPlan
from spoutline.model.requirement import RequirementId
from spoutline.model.survey import Survey
from spoutline.planning.no_set.concessions import ORDER, concession_of, cost_of
from spoutline.planning.no_set.giving_up import after_giving_up, with_position
from spoutline.planning.no_set.listening import NoSetListening
from spoutline.planning.no_set.nearest import asked_for, gap_reason, slot_reasons
from spoutline.planning.no_set.questions import Questions, Searched, lines_of
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.supersession import successors_at
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.search.conflict_enumeration import (
    ConflictEnumeration,
    Ending,
    EnumerationBounds,
    MinimalConflict,
)
from spoutline.search.listener import Listener

_ENDINGS = {
    Ending.COMPLETE: NoSetEnding.COMPLETE,
    Ending.CONFLICTS: NoSetEnding.CONFLICTS,
    Ending.CORRECTIONS: NoSetEnding.WAYS,
    Ending.QUESTIONS: NoSetEnding.QUESTIONS,
    Ending.TIME: NoSetEnding.TIME,
    Ending.UNDECIDED: NoSetEnding.UNDECIDED,
}
# The answers that each contradiction is about; a rule that is not named here is told of whatever is in the conflict.
_ANSWERS_OF: dict[str, frozenset[AskedAnswer]] = {
    RuleId.CLASS_GAP: frozenset({AskedAnswer.LIQUID}),
    RuleId.VAPOUR_FOR_NON_GASOLINE: frozenset({AskedAnswer.LIQUID, AskedAnswer.VAPOUR}),
    RuleId.VAPOUR_RECOVERY_PROHIBITED: frozenset({AskedAnswer.VAPOUR}),
    RuleId.VAPOUR_REMOVAL_NOT_ALLOWED: frozenset({AskedAnswer.VAPOUR}),
    RuleId.PATH_ON_THREAD: frozenset({AskedAnswer.OUTLET}),
    RuleId.GEOMETRY_IMPOSSIBLE: frozenset({AskedAnswer.FILLERS}),
}
_BEYOND = (Concession.RULE, Concession.PARTS)  # what nobody at the station gives up


def why_no_set(
    plan: PositionPlan, survey: Survey, context: PlanningContext, listening: NoSetListening | None = None
) -> NoSetReasons:
    """Return everything that keeps a position from a set, and what would free one. The survey is not changed.

    Parameters
    ----------
    plan
        Of the position, without a set.
    survey
        That the plan was made from.
    context
        Rule tables, parts, and a listener that may stop the searches.
    listening
        Bounds, and who is told.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    return _Search(plan, survey, context, listening or NoSetListening()).all()


class _UntilTimeIsOver(Listener):
    """Ends a search when its listener asks to, or when time is over."""

    def __init__(self, inner: Listener | None, out_of_time: Callable[[], bool]) -> None:
        self._inner, self._out_of_time = inner, out_of_time

    def should_stop(self) -> bool:
        return self._out_of_time() or (self._inner is not None and self._inner.should_stop())


class _Search:
    def __init__(self, plan: PositionPlan, survey: Survey, context: PlanningContext, listening: NoSetListening) -> None:
        self.plan, self.survey, self.listening = plan, survey, listening
        self.position, self.site = plan.position, survey.site
        timed = context
        if listening.out_of_time is not None:
            timed = replace(context, listener=_UntilTimeIsOver(context.listener, listening.out_of_time))
        self.context = context
        self.questions = Questions(self.position, self.site, timed)
        self.concessions = {one: concession_of(one, self.position, self.site) for one in self.questions.demands}

    def all(self) -> NoSetReasons:
        conflicts: list[ConflictReasons] = []
        trials: list[Trial] = []
        lacking: list[tuple[Demand, ...]] = []
        if self.plan.chosen is not None:
            return NoSetReasons(
                position=self.position, conflicts=(), trials=(), lacking=(), ending=NoSetEnding.COMPLETE
            )
        try:
            ending = self._look(conflicts, trials, lacking)
        except Cancelled:
            if not self._is_out_of_time():
                raise
            ending = NoSetEnding.TIME
        except Undecided:
            ending = NoSetEnding.UNDECIDED
        if not conflicts and self.plan.conflict is not None:
            conflicts.append(self._of_plan(self.plan.conflict, by_checks=ending is NoSetEnding.COMPLETE))
        return NoSetReasons(
            position=self.position,
            conflicts=tuple(conflicts),
            trials=tuple(trials),
            lacking=tuple(lacking),
            ending=ending,
        )

    def _look(
        self, conflicts: list[ConflictReasons], trials: list[Trial], lacking: list[tuple[Demand, ...]]
    ) -> NoSetEnding:
        """Add conflicts, ways out and what is lacking as they are found; return why there are no more."""
        trials += self._told(self._by_successors())
        if self.questions.as_answered is None:
            conflicts += map(self._reasons_told, self._contradicting())
        self.questions.look_ahead()
        enumeration = self._enumeration(self.questions.is_met)
        for found in enumeration.found():
            if isinstance(found, MinimalConflict):
                if self._is_told(found.members):
                    conflicts.append(self._reasons_told(found.members))
            elif self._heaviest(found.given_up) in _BEYOND:
                if self.questions.as_answered is None:
                    return NoSetEnding.ANSWERS  # what comes after costs as much or more: no way out among it
                lacking.append(found.given_up)
            else:
                trials += self._told(self._trial(found.given_up))
        return NoSetEnding.COMPLETE if enumeration.ending is None else _ENDINGS[enumeration.ending]

    def _is_out_of_time(self) -> bool:
        """Say whether it is time that ended a search, and nobody who asked to stop."""
        out_of_time, listener = self.listening.out_of_time, self.context.listener
        return out_of_time is not None and out_of_time() and not (listener is not None and listener.should_stop())

    def _is_told(self, members: tuple[Demand, ...]) -> bool:
        """Say whether a conflict is told: where answers contradict each other, they are told apart from all others."""
        return self.questions.as_answered is not None or all(one.kind is not DemandKind.ANSWER for one in members)

    def _contradicting(self) -> Iterator[tuple[Demand, ...]]:
        """Yield the answers that contradict each other, whatever parts there are; few, so that no bound is kept."""
        answers = [one for one in self.questions.demands if one.kind is DemandKind.ANSWER]
        enumeration = ConflictEnumeration(answers, self._costs(answers), self.questions.is_derived)
        yield from (found.members for found in enumeration.found() if isinstance(found, MinimalConflict))

    def _reasons_told(self, members: tuple[Demand, ...]) -> ConflictReasons:
        if self.listening.on_obstacle is not None:
            self.listening.on_obstacle(members)
        found = self._reasons(members)
        if self.listening.on_conflict is not None:
            self.listening.on_conflict(found)
        return found

    def _costs(self, demands: Iterable[Demand]) -> list[int]:
        return [cost_of(self.concessions[one]) for one in demands]

    def _enumeration(self, is_met: Callable[[frozenset[Demand]], bool]) -> ConflictEnumeration[Demand]:
        listening = self.listening
        return ConflictEnumeration(
            self.questions.demands,
            self._costs(self.questions.demands),
            is_met,
            EnumerationBounds(listening.most, listening.most, listening.questions, listening.out_of_time),
            self.context.listener or Listener(),
        )

    def _told(self, trials: Iterable[Trial]) -> Iterator[Trial]:
        for trial in trials:
            if self.listening.on_trial is not None:
                self.listening.on_trial(trial)
            yield trial

    def _heaviest(self, given_up: Iterable[Demand]) -> Concession:
        return max((self.concessions[one] for one in given_up), key=ORDER.index)

    # conflicts

    def _reasons(self, members: tuple[Demand, ...]) -> ConflictReasons:
        """Return a conflict with what it leaves of each slot, and what figures of sets come nearest."""
        is_gap = all(self.concessions[one] in _BEYOND for one in members)
        contradicting = self.questions.as_answered is None and any(one.kind is DemandKind.ANSWER for one in members)
        if contradicting or not self.questions.variants:
            return ConflictReasons(demands=members, slots=(), figures=(), findings=self._contradictions(members))
        variant = self.questions.variants[0]  # as answered, or as near to it as can be
        searched, lines = self.questions.searched(variant, frozenset(members)), lines_of(members)
        wanted = [one.part for one in members if one.kind is DemandKind.PINNED and one.part is not None]
        own = asked_for(searched.search, self.context.parts.parts(wanted), lines)
        if own:  # what they break says it all
            return ConflictReasons(demands=members, slots=(), figures=(), is_gap=is_gap, asked_for=own)
        gaps = tuple(self._gap(searched, lines))
        figures = () if gaps else tuple(self._figures(searched, lines))
        slots = gaps or slot_reasons(searched.search, lines)
        if figures and all(one.left for one in slots):
            slots = ()  # the figures say it all
        return ConflictReasons(demands=members, slots=slots, figures=figures, is_gap=is_gap)

    def _contradictions(self, members: tuple[Demand, ...]) -> tuple[Finding, ...]:
        """Return what was found about these answers."""
        answers = {one.answer for one in members}
        found = self.plan.refusal.findings if self.plan.refusal else ()
        return tuple(one for one in found if not answers.isdisjoint(_ANSWERS_OF.get(one.rule_id, frozenset(answers))))

    def _gap(self, searched: Searched, lines: frozenset[RequirementId]) -> Iterator[SlotReason]:
        if RequirementId.JOINTS not in lines:
            return
        slot = searched.reach.first_gap(lines)
        if slot is None:
            return
        outlet = next(searched.finder.unmet_outlet(), None)
        at_outlet = outlet is not None and slot is searched.search.requirement.chain[0]
        yield gap_reason(searched.search, slot, outlet.nearest if outlet is not None and at_outlet else ())

    def _figures(self, searched: Searched, lines: frozenset[RequirementId]) -> Iterator[FigureReason]:
        """Yield what all other lines allow of each figure; those of the conflict alone where that is no set."""
        everything = lines_of(self.questions.demands)
        for line in RequirementId:
            if line not in lines:
                continue
            found = searched.finder.figure(line, everything - {line}) or searched.finder.figure(line, lines - {line})
            if found is not None:
                yield FigureReason(
                    line=line, asked=found.asked, attained=found.needed, dimension=found.dimension, nearest=found.frees
                )

    def _of_plan(self, conflict: Conflict, *, by_checks: bool) -> ConflictReasons:
        """Return the conflict that the plan told, where the search found none or came to no end."""
        demands = tuple(Demand(kind=DemandKind.LINE, line=line) for line in conflict.requirements)
        return ConflictReasons(demands=demands, slots=(), figures=(), by_checks=by_checks)

    # ways out

    def _trial(self, given_up: tuple[Demand, ...]) -> Iterator[Trial]:
        """Yield the trial of giving demands up; nothing where full checks turn down what it frees."""
        freed = self.questions.freed(given_up)
        if freed is None:
            return
        ordered = tuple(
            sorted(given_up, key=lambda one: (ORDER.index(self.concessions[one]), one.part or "", str(one.line)))
        )
        line, figure = None, None
        for demand in ordered:
            if demand.line is not None and figure is None:
                figure = freed.searched.finder.figure(demand.line, freed.lines)
                line = demand.line if figure is not None else None
        answers = freed.variant.answers
        needed = {line: figure.needed} if line is not None and figure is not None else {}
        after = after_giving_up(self.survey, self.position.label, ordered, answers, needed)
        hanging_set = figure.frees if figure is not None else freed.hanging_set
        if after is not None:
            planned = self._planned(after)
            if planned is None or planned.chosen is None:
                return
            hanging_set = planned.chosen.hanging_set
        yield Trial(
            given_up=ordered,
            concession=self._heaviest(ordered),
            answers=answers,
            line=line,
            asked=figure.asked if figure is not None else None,
            needed=figure.needed if figure is not None else None,
            dimension=figure.dimension if figure is not None else None,
            freed=hanging_set,
            after=after,
        )

    def _by_successors(self) -> Iterator[Trial]:
        """Yield the trial in which parts asked for give way to those that took their place."""
        position, successions = successors_at(self.position, self.context.parts)
        if not successions:
            return
        after = with_position(self.survey, position)
        planned = self._planned(after)
        if planned is None or planned.chosen is None:
            return
        yield Trial(
            given_up=tuple(Demand(kind=DemandKind.PINNED, part=one.before) for one in successions),
            concession=Concession.ASKED_PART,
            answers=(),
            line=None,
            asked=None,
            needed=None,
            dimension=None,
            freed=planned.chosen.hanging_set,
            after=after,
            successions=successions,
        )

    def _planned(self, survey: Survey) -> PositionPlan | None:
        position = survey.position(self.position.label)
        if position is None:
            return None
        plan = plan_position(position, survey.site, self.context, with_alternatives=False)
        return plan if plan.status is PlanStatus.FITS else None
