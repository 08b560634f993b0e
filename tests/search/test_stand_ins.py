"""Where very many chains just miss a limit: what another can stand in for is dropped, and no answer changes by it."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.cp_sat import cp_sat_optimum
from search.problems import copied_problems, enumerated, near_copies, problems
from search.test_columns import in_columns, place, placed, with_costs
from spoutline.search.dominance import reduced
from spoutline.search.effort import Effort
from spoutline.search.graph import MAJOR, NO_PORT, Item, Layer, Problem, divided
from spoutline.search.listener import Listener
from spoutline.search.optimum import any_chain, best_chain, chains_in_order
from spoutline.search.stand_ins import any_by_labels, cheapest_by_labels, may_have_chains, without_outdone
from spoutline.search.sums import Sums


@given(problems, st.integers(0, 10_000), st.integers(-3, 3))
@settings(max_examples=up_to(80), deadline=None)
def test_labels_find_what_enumeration_finds(problem: Problem, seed: int, above: int) -> None:
    costed = with_costs(problem, seed)
    columns, _ = in_columns(costed)
    level = columns.only(columns.major == 0).trimmed()
    costs = sorted(
        path.cost for path in enumerated(costed) if all(one is None or one.cost < MAJOR // 2 for one in path.items)
    )
    for kept in (level, without_outdone(level, Effort())):
        found = any_by_labels(kept, Effort())
        assert (found is not None) == bool(costs)
        assert found is None or found.cost in costs
        most = (costs[0] if costs else 0) + above
        cheapest = cheapest_by_labels(kept, Sums.of(kept.limits), most, Effort())
        assert (cheapest and cheapest.cost) == (costs[0] if costs and costs[0] <= most else None)


@pytest.mark.parametrize("few", [0, 256])
@given(problem=problems | copied_problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(80), deadline=None)
def test_an_item_is_left_out_exactly_where_another_is_no_worse_in_anything(
    few: int, problem: Problem, seed: int
) -> None:
    columns, _ = in_columns(with_costs(problem, seed))
    level = columns.only(columns.major == 0).trimmed()
    asked = max(level.demands.tolist(), default=0.0)
    ends = list(zip(level.layer.tolist(), level.entry.tolist(), level.exit.tolist(), strict=True))
    figures = [
        (int(level.cost[row]), *level.loads[row].tolist(), float(level.demands[row]), -min(level.bears[row], asked))
        for row in range(len(level))
    ]
    wanted = [
        int(level.row[row])
        for row, own in enumerate(figures)
        if not any(
            ends[one] == ends[row]
            and all(less <= more for less, more in zip(other, own, strict=True))
            and (other != own or one < row)  # of equal ones the first stays
            for one, other in enumerate(figures)
        )
    ]
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.stand_ins._FEW", few)
        assert without_outdone(level, Effort()).row.tolist() == wanted


@given(problems)
@settings(max_examples=up_to(200), deadline=None)
def test_whether_there_may_be_chains_is_known_with_labels_enough_and_never_denied_with_few(problem: Problem) -> None:
    columns, _ = in_columns(problem)
    is_one = bool(enumerated(problem))
    assert may_have_chains(columns, Effort()) == is_one
    for labels in (0, 2):
        assert may_have_chains(columns, Effort(most=labels)) >= is_one


@pytest.mark.parametrize("labels", [0, 3])
@given(problem=problems | copied_problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_whether_labels_are_many_never_shows(labels: int, problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.level_search._QUICK_LABELS", labels)
        patch.setattr("spoutline.search.level_search._LOOK_LABELS", labels)
        patch.setattr("spoutline.search.level_search.QUICK_ITEMS", 1)
        patch.setattr("spoutline.search.level_order.QUICK_ITEMS", 1)
        patch.setattr("spoutline.search.level_search.ITEMS", 2)
        patch.setattr("spoutline.search.level_order.ITEMS", 2)
        patch.setattr("spoutline.search.level_search._MANY_LABELS", labels)
        patch.setattr("spoutline.search.level_search.MANY_MORE", 1)
        patch.setattr("spoutline.search.level_order.MANY_MORE", 1)
        columns, names = in_columns(costed)
        best = best_chain(columns, names).chain
        assert [placed(one, names) for one in (best,) if one] == wanted[:1]
        assert (any_chain(columns, names) is not None) == bool(wanted)
        assert [placed(chain, names) for chain in chains_in_order(columns, names)] == wanted
        for most in (*({cost for cost, _ in wanted}), -60):  # what is dearer than asked for does not count
            within = best_chain(columns, names, most=divided(most)).chain
            assert [placed(one, names) for one in (within,) if one] == [one for one in wanted if one[0] <= most][:1]
        counted = chains_in_order(columns, names, test=lambda rows: rows.sum(axis=1) % 3 == 0)
        assert [placed(chain, names) for chain in counted] == [
            placed(chain, names) for chain in chains_in_order(columns, names) if sum(chain.rows) % 3 == 0
        ]


def test_a_part_goes_where_another_of_its_ports_can_stand_in() -> None:
    # by hand: "worse" is outdone by "plain", "again" equals it and comes later, the others lead in something
    first = Layer(
        "first",
        (
            Item("plain", 5, 0, 0, (2.0,), bears=5.0, demands=1.0),
            Item("again", 5, 0, 0, (2.0,), bears=5.0, demands=1.0),
            Item("worse", 6, 0, 0, (2.0,), bears=4.0, demands=1.0),
            Item("light", 6, 0, 0, (1.0,), bears=5.0, demands=1.0),
            Item("strong", 6, 0, 0, (2.0,), bears=9.0, demands=1.0),
            Item("mild", 6, 0, 0, (2.0,), bears=5.0, demands=0.0),
            Item("other end", 9, 0, 1, (9.0,), bears=1.0, demands=1.0),
        ),
    )
    last = Layer("last", (Item("end", 1, 0, NO_PORT, (1.0,)), Item("other", 1, 1, NO_PORT, (1.0,), demands=8.0)))
    columns, names = in_columns(Problem(0, (first, last), {0: frozenset({0}), 1: frozenset({1})}, (4.0,)))
    left = {names[row] for row in without_outdone(columns, Effort()).row.tolist()}
    assert left == {"plain", "light", "strong", "mild", "other end", "end", "other"}


class _Labels(Listener):
    labels = 0

    def on_expand(self, expanded: int) -> None:
        self.labels = expanded


@pytest.mark.parametrize("majors", [False, True])
def test_that_near_copies_all_just_miss_a_limit_is_soon_known(majors: bool) -> None:
    """By hand: even lengths never come to an odd sum. Without stand-ins this is not known after a million labels."""
    problem, listener = near_copies(400, 41, majors=majors), _Labels()
    found = best_chain(*in_columns(problem), listener)
    assert found.is_proved
    assert found.chain is None
    assert listener.labels < 400_000
    columns, names = in_columns(problem)
    assert any_chain(columns, names, listener) is None
    assert listener.labels < 400_000


def test_the_cheapest_of_near_copies_that_few_chains_of_keep_the_limits_is_that_of_cp_sat() -> None:
    for each in (4, 12):
        problem = near_copies(each, 40)
        found = best_chain(*in_columns(problem))
        assert (found.chain and found.chain.cost) == cp_sat_optimum(reduced(problem))


def test_a_chain_that_costs_more_than_asked_for_is_none_however_many_labels_there_are(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Oracle: CP-SAT tells the least cost."""
    monkeypatch.setattr("spoutline.search.level_search._QUICK_LABELS", 0)
    monkeypatch.setattr("spoutline.search.level_search._LOOK_LABELS", 0)
    monkeypatch.setattr("spoutline.search.level_search._MANY_LABELS", 0)
    problem = near_copies(8, 40)
    least = cp_sat_optimum(reduced(problem))
    assert least is not None
    columns, names = in_columns(problem)
    found = best_chain(columns, names, most=(0, least)).chain
    assert found is not None
    assert found.cost == least
    assert best_chain(columns, names, most=(0, least - 1)).chain is None
