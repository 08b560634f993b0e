"""Plans kept for undo are bounded by bytes; those of the survey in hand stay."""

from __future__ import annotations

import pytest

from spoutline.bootstrap import Workbench
from spoutline.gui.models.kept_plans import KeptPlans, PlanKey, weight_of
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Survey


@pytest.fixture(scope="module")
def plan(bench: Workbench) -> StagedPlan:
    """Return some plan, whole."""
    from spoutline.bootstrap.demos import demo_survey

    survey = demo_survey("small_town")
    return StagedPlan.of(bench.plan_position(survey, survey.positions[0].label))


def key(survey: Survey, number: int) -> PlanKey:
    """Return the question of a position that nobody else asks."""
    first = survey.positions[0]
    filler = first.filler.model_copy(update={"distance_m": 1.5 + number / 1000})
    return PlanKey(survey.site, first.model_copy(update={"filler": filler}))


def test_the_oldest_go_once_the_bound_is_passed(survey: Survey, plan: StagedPlan) -> None:
    kept = KeptPlans(most_bytes=100)
    keys = [key(survey, number) for number in range(10)]
    for one in keys:
        kept.keep(one, plan, 20)
        kept.shorten([])
    assert kept.weight <= 100
    assert [kept.result(one) is not None for one in keys] == [False] * 5 + [True] * 5


def test_what_is_in_use_stays_whatever_it_takes(survey: Survey, plan: StagedPlan) -> None:
    kept = KeptPlans(most_bytes=100)
    keys = [key(survey, number) for number in range(10)]
    for one in keys:
        kept.keep(one, plan, 20)
    kept.shorten(keys[:8])
    assert all(kept.result(one) is plan for one in keys[:8])
    assert len(kept) == 8


def test_one_kept_twice_weighs_once(survey: Survey, plan: StagedPlan) -> None:
    kept = KeptPlans()
    for _ in range(3):
        kept.keep(key(survey, 1), plan, 20)
    assert (len(kept), kept.weight) == (1, 20)


def test_a_plan_weighs_its_bytes(plan: StagedPlan) -> None:
    assert weight_of(plan) > 10_000
