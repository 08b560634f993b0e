"""Plans kept for undo are bounded by bytes; those of the survey in hand stay."""

from __future__ import annotations

from dataclasses import replace

import pytest

from spoutline.bootstrap import Workbench
from spoutline.gui.models.kept_plans import KeptPlans, PlanKey, Together, weight_of
from spoutline.model.plan import Conflict, Relaxation
from spoutline.model.requirement import RequirementId
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Position, Survey


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


def together_keys(survey: Survey, labels: range) -> list[PlanKey]:
    """Return the keys of positions whose sets depend on each other and which differ in their labels alone."""
    positions = tuple(survey.positions[0].model_copy(update={"label": f"{number}"}) for number in labels)
    station = Together(positions)
    return [PlanKey(survey.site, position, station) for position in positions]


def test_positions_chosen_together_share_a_plan_where_all_of_them_ask_the_same(
    survey: Survey, plan: StagedPlan
) -> None:
    kept = KeptPlans()
    before, renamed, fewer = (together_keys(survey, labels) for labels in (range(3), range(10, 13), range(2)))
    kept.keep(before[0], plan)
    assert kept.result(together_keys(survey, range(3))[0]) is plan
    assert kept.shared(renamed[1]) is not None
    assert kept.result(fewer[0]) is None
    assert kept.shared(fewer[1]) is None


def test_a_position_is_gone_through_no_oftener_the_more_are_chosen_together(
    survey: Survey, plan: StagedPlan, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Keeping and looking up every position of a station grows with their number, not with its square."""
    hashed: list[Position] = []
    own_hash = Position.__hash__
    monkeypatch.setattr(Position, "__hash__", lambda one: hashed.append(one) or own_hash(one))

    def times(count: int) -> int:
        hashed.clear()
        kept, keys = KeptPlans(), together_keys(survey, range(count))
        for one in keys:
            kept.keep(one, plan)
        assert all(kept.result(one) for one in keys)
        return len(hashed)

    assert times(40) <= 2.5 * times(20)


def test_a_way_out_in_view_stays_while_somebody_looks_anew(survey: Survey, plan: StagedPlan) -> None:
    """A look that was given up is taken up again from the beginning: first what is in the way, then way by way."""
    way = Relaxation(
        requirement=RequirementId.HOSE_LENGTH,
        from_value=None,
        to_value=None,
        dimension=None,
        price_minor=None,
        parts=(),
    )
    obstacle = Conflict(requirements=(RequirementId.HOSE_LENGTH,), exclusions=(), relaxations=())
    ways = [replace(obstacle, relaxations=(way,) * count) for count in range(4)]
    kept, asked, told = KeptPlans(), key(survey, 1), []
    for found in (1, 2, 0, 1, 3):
        kept.keep(asked, StagedPlan(plan=plan.plan, is_explained=False, obstacle=ways[found]))
        known = kept.result(asked)
        assert isinstance(known, StagedPlan)
        assert known.obstacle is not None
        told.append(len(known.obstacle.relaxations))
    assert told == [1, 2, 2, 2, 3]


def test_other_sets_in_view_stay_while_somebody_looks_anew(survey: Survey, plan: StagedPlan, bench: Workbench) -> None:
    """A look that was given up begins anew with none; all the same none that is in view goes, under any label."""
    kept, asked, others = KeptPlans(), key(survey, 1), plan.others
    assert len(others) >= 3
    kinds = tuple(one.kind for one in others)

    def found(count: int) -> StagedPlan:
        return replace(plan, alternatives=None, found=others[:count], sought=kinds[count:])

    told = []
    for count in (0, 1, 2, 0, 1, 3):
        kept.keep(asked, found(count))
        known = kept.result(asked)
        assert isinstance(known, StagedPlan)
        assert known.sought == kinds[len(known.found) :]
        told.append(len(known.found))
    assert told == [0, 1, 2, 2, 2, 3]
    same = survey.positions[0].model_copy(update={"label": "like it"})
    alike = kept.shared(PlanKey(asked.site, asked.position.model_copy(update={"label": same.label})))
    assert alike is not None
    assert alike.plan.position.label == same.label
    assert [one.kind for one in alike.found] == list(kinds[:3])
    assert all(one.subject != asked.position.label for other in alike.found for one in other.judged.findings)
    kept.keep(asked, plan)
    whole = kept.keep(asked, found(1))
    assert (whole.alternatives, whole.found, whole.sought) == (plan.alternatives, (), ())


def test_what_was_read_anew_is_compared_with_each_key_of_before_once(
    survey: Survey, plan: StagedPlan, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Of a survey that was opened again the window looks for a thousand plans at a time."""
    kept, position = KeptPlans(), survey.positions[0]
    kept.keep(PlanKey(survey.site, position), plan)
    again = PlanKey(survey.site.model_copy(), position.model_copy())
    compared: list[object] = []
    equal = Position.__eq__

    def counted(one: Position, other: object) -> bool:
        compared.append(other)
        return equal(one, other)

    monkeypatch.setattr(Position, "__eq__", counted)
    assert kept.result(again) is plan
    assert len(compared) == 1
    assert kept.result(again) is plan
    assert len(compared) == 1
    other = PlanKey(survey.site, position.model_copy(update={"dispenser": "another"}))
    assert kept.result(other) is None
    assert kept.result(again) is plan
