"""A plan as it comes: each stage says what the whole plan says, sets first; who stops asking costs nothing more."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from random import Random
from typing import Any

import pytest

from examples import each_with_seeds, stations
from planning.surveys import CAR, MARINA, REEL, TIGHT, TOO_FAR, TRUCK, survey_of
from planning.test_plan_position import deciding
from spoutline.bootstrap.demos import demo_survey
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.plan import AlternativeKind, Conflict, PlanStatus, PositionPlan
from spoutline.model.staged_plan import LOOKED_FOR_IN_TURN, StagedPlan
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.sets.alternatives import AlternativeFinder
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position, plan_stages
from spoutline.planning.sets.relabel import same_question
from spoutline.search.listener import Listener

NO_LISTING = survey_of(liquid={"family": "diesel", "blend_percent": 60})
BASES = {"car": CAR, "truck": TRUCK, "reel": REEL, "too_far": TOO_FAR, "no_listing": NO_LISTING, **TIGHT}


@pytest.fixture
def context(catalogue: CatalogueStore, us_tables: RuleTables) -> PlanningContext:
    return PlanningContext(us_tables, catalogue)


def held_together(position: Position, site: Site, context: PlanningContext) -> list[StagedPlan]:
    """Return the stages of a position after holding them against the plan that is made all at once."""
    whole, stages = plan_position(position, site, context), list(plan_stages(position, site, context))
    assert stages[-1].is_whole
    assert stages[-1].whole == whole
    assert not any(one.is_whole for one in stages[:-1])
    for one in stages:
        assert _is_said_by(one, whole)
    return stages


def _is_said_by(staged: StagedPlan, whole: PositionPlan) -> bool:
    """Say whether a stage says of the whole plan what it knows, and nothing else."""
    unexplained = {} if staged.is_explained else {"conflict": None}
    return (
        _is_in(staged.obstacle, whole.conflict)
        and staged.plan == replace(whole, counts=(), alternatives=(), left_open=(), **unexplained)
        and staged.counts in (None, whole.counts)
        and staged.alternatives in (None, whole.alternatives)
        and set(staged.found) <= set(whole.alternatives)
        and {one.kind for one in whole.alternatives if one not in staged.others} <= set(staged.sought)
    )


def _is_in(obstacle: Conflict | None, whole: Conflict | None) -> bool:
    """Say whether what is told of an obstacle is in the whole of it: the first of its ways out, and all else."""
    if obstacle is None or whole is None:
        return obstacle is None
    return obstacle == replace(whole, relaxations=whole.relaxations[: len(obstacle.relaxations)])


def distinct(survey: Survey) -> Iterator[Position]:
    """Yield a position for each question of a survey."""
    yield from {same_question(one): one for one in survey.positions}.values()


@pytest.mark.parametrize("name", stations("refit_48"))
def test_the_stages_of_each_demo_compose_to_its_plan(name: str, context: PlanningContext) -> None:
    survey = demo_survey(name)
    for position in distinct(survey):
        held_together(position, survey.site, context)


def drawn(base: Survey, random: Random) -> Survey:
    """Return a survey with other distances, pressure and lead time than ``base``, of which some leave no set."""
    longest = random.choice([None, 3, 10, 40])
    survey = base if longest is None else deciding(base, longest_lead_time_days=longest)
    position = survey.positions[0]
    filler = position.filler.model_copy(update={"distance_m": round(random.uniform(1.0, 5.5), 2)})
    supply = position.supply.model_copy(update={"pressure_kpa": random.choice([8, 30, 140, 210])})
    changed = position.model_copy(update={"filler": filler, "supply": supply, "prepay": random.random() < 0.5})
    return survey.model_copy(update={"positions": (changed,)})


@pytest.mark.parametrize(("name", "seed"), each_with_seeds(BASES, 6))
def test_the_stages_of_random_positions_compose_to_their_plans(name: str, seed: int, context: PlanningContext) -> None:
    survey = drawn(BASES[name], Random(seed))
    held_together(survey.positions[0], survey.site, context)


def test_a_set_comes_before_its_counts_and_these_before_other_sets(context: PlanningContext) -> None:
    first, counted, *_, whole = held_together(CAR.positions[0], CAR.site, context)
    assert first.plan.chosen is not None
    assert first.plan.chosen.checks
    assert (first.counts, first.alternatives) == (None, None)
    assert counted.counts
    assert counted.alternatives is None
    assert whole.alternatives
    assert counted.plan is first.plan  # what shows it need not look again
    assert whole.plan is first.plan


@pytest.mark.parametrize("survey", [CAR, TRUCK, REEL, MARINA])
def test_other_sets_come_one_by_one_each_behind_those_before(
    survey: Survey, context: PlanningContext, monkeypatch: pytest.MonkeyPatch
) -> None:
    looked_for: list[AlternativeKind] = []
    really = AlternativeFinder._looked_for

    def noted(finder: AlternativeFinder, kind: AlternativeKind, look: Any) -> Any:
        looked_for.append(kind)
        return really(finder, kind, look)

    monkeypatch.setattr(AlternativeFinder, "_looked_for", noted)
    stages = plan_stages(survey.positions[0], survey.site, context)
    first, counted = next(stages), next(stages)
    assert first.sought == counted.sought
    assert not looked_for
    known, left = (), first.sought
    for staged in stages:
        if staged.is_whole:
            break
        kind, left = left[0], left[1:]
        assert looked_for[-1] is kind  # the others are looked for when somebody asks on
        assert staged.sought == left
        assert staged.others[: len(known)] == known
        assert {one.kind for one in staged.others[len(known) :]} <= {kind}
        known = staged.others
    assert tuple(looked_for) == first.sought
    assert staged.others[: len(known)] == known
    assert staged.alternatives == tuple(sorted(staged.others, key=lambda one: list(AlternativeKind).index(one.kind)))
    assert (staged.found, staged.sought) == ((), ())


def test_each_kind_of_other_set_has_its_turn() -> None:
    assert sorted(LOOKED_FOR_IN_TURN) == sorted(AlternativeKind)
    assert LOOKED_FOR_IN_TURN[-1] is AlternativeKind.NEXT_CHEAPEST


def test_that_nothing_fits_comes_before_the_reasons(context: PlanningContext) -> None:
    first, counted, *growing, whole = held_together(TOO_FAR.positions[0], TOO_FAR.site, context)
    assert first.plan.status is PlanStatus.DOES_NOT_FIT
    assert not any(one.is_explained for one in (first, counted, *growing))
    assert (first.plan.conflict, first.obstacle, counted.obstacle) == (None, None, None)
    assert whole.plan.conflict is not None
    assert whole.obstacle is None
    assert whole.alternatives == ()
    told = [one.obstacle for one in growing if one.obstacle is not None]
    assert [len(one.relaxations) for one in told] == [0, 1, 2]  # hose length, then reach
    assert told[-1] == whole.plan.conflict


def test_a_refused_position_is_answered_at_once(context: PlanningContext) -> None:
    (only,) = held_together(NO_LISTING.positions[0], NO_LISTING.site, context)
    assert only.plan.refusal is not None


class _StopWhenTold(Listener):
    def __init__(self) -> None:
        self.is_told = False

    def should_stop(self) -> bool:
        return self.is_told


@pytest.mark.parametrize(
    ("survey", "taken"), [(CAR, 1), (CAR, 2), (CAR, 3), (CAR, 6), *((TOO_FAR, taken) for taken in range(1, 6))]
)
def test_whoever_asks_to_stop_between_two_stages_gets_no_more(
    survey: Survey, taken: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    listener = _StopWhenTold()
    stages = plan_stages(survey.positions[0], survey.site, PlanningContext(us_tables, catalogue, listener))
    for _ in range(taken):
        next(stages)
    listener.is_told = True
    with pytest.raises(Cancelled):
        next(stages)
