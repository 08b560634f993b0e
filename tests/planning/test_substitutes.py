"""What else could hang in a place: held against every chain of small catalogues, judged by rules and checks alone.

The oracle (``planning.enumeration``) knows nothing of bounds, held parts or the order in which they are tried.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from examples import each_with_seeds
from planning.enumeration import Weighing, chains, forbids, should_lines_broken, small_catalogue
from planning.stores import ListStore
from planning.surveys import ALL_THAT_FIT, CAR, TIGHT, TOO_FAR, survey_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.substitute import Misfit, Substitute, Substitutes
from spoutline.model.survey import Survey
from spoutline.planning.sets.context import PlanningContext, stop_listener
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.pool import SLOT_KINDS
from spoutline.planning.sets.substitutes import Listening, substitutes
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part

SURVEYS = {**ALL_THAT_FIT, **TIGHT}


def plan_of(survey: Survey, context: PlanningContext) -> PositionPlan:
    return plan_position(survey.positions[0], survey.site, context, with_alternatives=False)


def part_in(plan: PositionPlan, slot: Slot) -> str:
    assert plan.chosen is not None
    part = plan.chosen.hanging_set.part_in(slot)
    assert part is not None
    return part.number


def enumerated_by_part(
    requirement: Requirement, tables: RuleTables, store: ListStore
) -> dict[tuple[Slot, str], tuple[int, int]]:
    """Return (shoulds broken, price) of the best of all chains that hold each part in each slot."""
    weighing = Weighing(requirement, tables)
    best: dict[tuple[Slot, str], tuple[int, int]] = {}
    for hanging_set in chains(requirement, store):
        by_parts = weighing.by_parts(hanging_set)
        places = {(link.slot, link.part.number) for link in hanging_set.links}
        if by_parts is None or all(place in best and by_parts >= best[place] for place in places):
            continue
        by_checks = weighing.by_checks(hanging_set)
        if by_checks is None:
            continue
        found = (by_parts[0] + by_checks, by_parts[1])
        for place in places:
            best[place] = min(best.get(place, found), found)
    return best


def weighed(judged: JudgedSet, requirement: Requirement, tables: RuleTables) -> tuple[int, int]:
    regrets = sum(
        one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN
        for link in judged.hanging_set.links
        for one in judge_part(link.part, link.slot, requirement, tables)
    )
    return len(should_lines_broken(judged.checks)) + regrets, judged.hanging_set.price_minor


@pytest.mark.parametrize(("name", "seed"), each_with_seeds(SURVEYS, 3))
def test_every_place_lists_exactly_the_parts_of_enumeration_each_with_its_best_set(
    name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey = SURVEYS[name]
    requirement = requirement_for(survey.positions[0], survey.site, us_tables)
    assert isinstance(requirement, Requirement)
    store = small_catalogue(catalogue, requirement, us_tables, seed)
    best = enumerated_by_part(requirement, us_tables, store)
    plan = plan_of(survey, PlanningContext(us_tables, store))
    assert (plan.chosen is None) is (not best)
    if plan.chosen is None:
        return
    chosen = plan.chosen.hanging_set
    for link in chosen.links:
        answer = substitutes(plan, link.part.ref, PlanningContext(us_tables, store), with_misfits=True)
        found = {one.part.number: weighed(one.judged, requirement, us_tables) for one in answer.fitting}
        assert found == {
            number: rank for (slot, number), rank in best.items() if slot is link.slot and number not in chosen.numbers
        }
        base = weighed(plan.chosen, requirement, us_tables)
        for one in answer.fitting:
            rank = found[one.part.number]
            assert one.price_difference_minor == rank[1] - base[1]
            assert len(one.given_up) - len(one.kept) == rank[0] - base[0]
        assert answer.misfits is not None
        of_kind = {part.number for part in store.all if part.kind is SLOT_KINDS[link.slot]}
        assert {one.part.number for one in answer.misfits} == of_kind - set(found) - set(chosen.numbers)


def answer_for(
    survey: Survey, slot: Slot, context: PlanningContext, **options: bool
) -> tuple[PositionPlan, Substitutes]:
    plan = plan_of(survey, context)
    return plan, substitutes(plan, PartRef(part_in(plan, slot)), context, **options)


@pytest.fixture
def context(catalogue: CatalogueStore, us_tables: RuleTables) -> PlanningContext:
    return PlanningContext(us_tables, catalogue)


def changes_tell_the_difference(one: Substitute, answer: Substitutes) -> bool:
    """Say whether the changes name just the parts in which the two sets differ, the parts in hand left out."""
    before, after = set(answer.chosen.numbers), set(one.judged.hanging_set.numbers)
    gone = {change.taken_out.number for change in one.changes if change.taken_out}
    come = {change.put_in.number for change in one.changes if change.put_in}
    return gone == before - after - {answer.part.number} and come == after - before - {one.part.number}


@pytest.mark.parametrize("slot", [Slot.WHIP_HOSE, Slot.BREAKAWAY, Slot.CURB_HOSE, Slot.SWIVEL, Slot.NOZZLE])
def test_over_the_whole_catalogue_every_set_keeps_every_must_and_tells_what_else_changes(
    slot: Slot, context: PlanningContext
) -> None:
    plan, answer = answer_for(CAR, slot, context, with_misfits=True)
    assert answer.fitting
    assert answer.misfits
    for one in answer.fitting:
        assert one.judged.hanging_set.part_in(slot) == one.part
        assert not any(map(forbids, (*one.judged.findings, *one.judged.checks)))
        assert changes_tell_the_difference(one, answer)
    of_kind = context.parts.count(SLOT_KINDS[slot])
    assert len(answer.fitting) + len(answer.misfits) + 1 == of_kind
    assert plan.chosen is not None


def adaptors(hanging_set: HangingSet) -> set[str]:
    return {link.part.number for link in hanging_set.links if link.slot is Slot.ADAPTOR}


def test_an_adaptor_that_goes_and_another_that_comes_are_both_told(context: PlanningContext) -> None:
    _, first = answer_for(CAR, Slot.BREAKAWAY, context)
    needy = next(one for one in first.fitting if adaptors(one.judged.hanging_set))
    wish = {"pinned": [needy.part.number]}
    _, answer = answer_for(
        survey_of(liquid={"family": "gasoline", "blend_percent": 10}, decisions=wish), Slot.BREAKAWAY, context
    )
    held = adaptors(answer.chosen)
    exchanged = [one for one in answer.fitting if adaptors(one.judged.hanging_set) - held]
    assert exchanged
    assert all(changes_tell_the_difference(one, answer) for one in exchanged)


def test_a_misfit_tells_the_first_must_it_breaks_or_the_lines_that_leave_no_set_with_it(
    context: PlanningContext,
) -> None:
    _, answer = answer_for(CAR, Slot.CURB_HOSE, context, with_misfits=True)
    assert answer.misfits is not None
    own, together = [], []
    for one in answer.misfits:
        (own if one.finding else together).append(one)
    assert own
    assert together
    for one in own:
        assert one.finding is not None
        assert (one.finding.severity, one.finding.verdict) == (Severity.MUST, Verdict.BROKEN)
    # hoses longer than NFPA 30A 6.5.1 allows (5.5 m, 18 ft) pass the part rules only where whip and curb hose share it
    assert all(one.lines for one in together)


def test_a_part_kept_by_choice_may_go_and_other_choices_stand(context: PlanningContext) -> None:
    _, answer = answer_for(CAR, Slot.SWIVEL, context)
    swivel = answer.fitting[-1].part.number  # the last that anybody would choose, so that only the wish keeps it
    wish = {"pinned": [swivel]}
    _, answer = answer_for(
        survey_of(liquid={"family": "gasoline", "blend_percent": 10}, decisions=wish), Slot.NOZZLE, context
    )
    other = answer.fitting[0]
    pinned = survey_of(
        liquid={"family": "gasoline", "blend_percent": 10},
        decisions={"pinned": [swivel, other.part.number]},
    )
    kept, again = answer_for(pinned, Slot.NOZZLE, context)
    assert part_in(kept, Slot.NOZZLE) == other.part.number
    assert all(swivel in one.judged.hanging_set.numbers for one in again.fitting)
    home = next(one for one in again.fitting if one.part.number == answer.part.number)
    assert home.price_difference_minor == -other.price_difference_minor
    assert home.given_up == other.kept
    assert home.kept == other.given_up


def test_a_refused_part_is_a_misfit_by_that_decision(context: PlanningContext) -> None:
    _, answer = answer_for(CAR, Slot.NOZZLE, context)
    refused = answer.fitting[0].part.number
    survey = survey_of(liquid={"family": "gasoline", "blend_percent": 10}, decisions={"refused": [refused]})
    _, again = answer_for(survey, Slot.NOZZLE, context, with_misfits=True)
    assert refused not in {one.part.number for one in again.fitting}
    assert again.misfits is not None
    (misfit,) = [one for one in again.misfits if one.part.number == refused]
    assert misfit.finding is not None
    assert misfit.finding.rule_id == "part_refused"


def test_results_come_as_they_are_found_and_the_work_can_be_stopped(context: PlanningContext) -> None:
    class AfterThree:
        def __init__(self) -> None:
            self.done: list[tuple[int, int]] = []

        def on_progress(self, done: int, total: int) -> None:
            self.done.append((done, total))

        def should_stop(self) -> bool:
            return len(found) >= 3

    found: list[Substitute] = []
    plan, whole = answer_for(CAR, Slot.NOZZLE, context)
    progress = AfterThree()
    stopping = replace(context, listener=stop_listener(progress))
    with pytest.raises(Cancelled):
        substitutes(plan, whole.part.ref, stopping, Listening(progress, found.append))
    assert len(found) == 3
    assert all(one in whole.fitting for one in found)
    assert progress.done[0][0] == 0
    assert all(total >= len(whole.fitting) for _, total in progress.done)


def test_misfits_are_told_as_they_are_found(context: PlanningContext) -> None:
    told: list[Misfit] = []
    plan = plan_of(CAR, context)
    answer = substitutes(
        plan, PartRef(part_in(plan, Slot.SWIVEL)), context, Listening(on_misfit=told.append), with_misfits=True
    )
    assert tuple(told) == answer.misfits


def test_a_position_without_a_set_or_a_part_outside_it_is_refused(context: PlanningContext) -> None:
    with pytest.raises(InputFault, match="no set"):
        substitutes(plan_of(TOO_FAR, context), PartRef("QW-N103"), context)
    with pytest.raises(InputFault, match="name a part of the set"):
        substitutes(plan_of(CAR, context), PartRef("QW-N999"), context)


def test_the_order_of_the_catalogue_rows_does_not_matter(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    requirement = requirement_for(CAR.positions[0], CAR.site, us_tables)
    assert isinstance(requirement, Requirement)
    drawn = small_catalogue(catalogue, requirement, us_tables, seed=5)
    assert PartKind.NOZZLE in {part.kind for part in drawn.all}
    backwards = ListStore(drawn.all)
    backwards.all = tuple(reversed(drawn.all))
    _, one = answer_for(CAR, Slot.NOZZLE, PlanningContext(us_tables, drawn))
    _, other = answer_for(CAR, Slot.NOZZLE, PlanningContext(us_tables, backwards))
    assert one == other
