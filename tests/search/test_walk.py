"""The walk is exact: same chains in the same order of cost as enumeration and as an independent integer solver."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import seeds, up_to
from search.problems import enumerated, integer_optimum, problems, random_problem, shuffled
from spoutline.model.faults import Cancelled
from spoutline.search.bounds import backward
from spoutline.search.graph import NO_PORT, Item, Layer, Problem
from spoutline.search.listener import Listener
from spoutline.search.walk import best_first, cheapest


@given(problems)
@settings(max_examples=up_to(400), deadline=None)
def test_walk_yields_exactly_the_chains_of_enumeration_cheapest_first(problem: Problem) -> None:
    walked = list(best_first(problem))
    assert [path.cost for path in walked] == sorted(path.cost for path in enumerated(problem))
    assert sorted(path.keys for path in walked) == sorted(path.keys for path in enumerated(problem))


@given(problems)
@settings(max_examples=up_to(400), deadline=None)
def test_cheapest_leaves_out_only_what_is_outdone(problem: Problem) -> None:
    best = cheapest(problem)
    costs = [path.cost for path in enumerated(problem)]
    assert (best.cost if best else None) == min(costs, default=None)
    if best is not None:
        assert best.keys in {path.keys for path in enumerated(problem)}


@given(problems, st.integers(0, 1000))
@settings(max_examples=up_to(150), deadline=None)
def test_order_of_rows_never_changes_the_result(problem: Problem, seed: int) -> None:
    assert [path.keys for path in best_first(problem)] == [path.keys for path in best_first(shuffled(problem, seed))]
    best, again = cheapest(problem), cheapest(shuffled(problem, seed))
    assert (best and best.keys) == (again and again.keys)


@given(problems)
@settings(max_examples=up_to(150), deadline=None)
def test_bounds_are_never_above_what_any_chain_needs(problem: Problem) -> None:
    start = backward(problem).at[0].get(problem.start)
    for path in enumerated(problem):
        assert start is not None
        assert start.cost <= path.cost
        for index in range(len(problem.limits)):
            assert start.loads[index] <= sum(item.loads[index] for item in path.items if item is not None) + 1e-9


@pytest.mark.parametrize("seed", seeds(25))
def test_cheapest_agrees_with_an_independent_integer_solver(seed: int) -> None:
    # Oracle: HiGHS through scipy.optimize.milp, on chains too large to enumerate (25^5 choices).
    problem = random_problem(seed, layers=5, items=25, ports=4, loads=3, tightness=(0.15, 0.35, 0.6)[seed % 3])
    best = cheapest(problem)
    assert (best.cost if best else None) == integer_optimum(problem)


@given(problems)
@settings(max_examples=up_to(150), deadline=None)
def test_a_looser_limit_never_makes_the_best_dearer(problem: Problem) -> None:
    looser = Problem(
        problem.start, problem.layers, problem.mates, tuple(limit + 3 for limit in problem.limits), problem.start_bears
    )
    best, better = cheapest(problem), cheapest(looser)
    if best is not None:
        assert better is not None
        assert better.cost <= best.cost


@given(problems)
@settings(max_examples=up_to(150), deadline=None)
def test_fewer_items_never_make_the_best_cheaper(problem: Problem) -> None:
    first = problem.layers[0]
    fewer = Problem(
        problem.start,
        (Layer(first.name, first.items[:-1], first.optional), *problem.layers[1:]),
        problem.mates,
        problem.limits,
        problem.start_bears,
    )
    best, worse = cheapest(problem), cheapest(fewer)
    if worse is not None:
        assert best is not None
        assert best.cost <= worse.cost


def test_a_weak_item_before_or_after_a_demanding_one_is_refused() -> None:
    weak = Item("weak", 1, 0, 0, (), bears=2.0)
    strong = Item("strong", 5, 0, 0, (), bears=9.0)
    demanding = Item("demanding", 1, 0, 0, (), demands=3.0)
    end = Item("end", 1, 0, NO_PORT, (), bears=math.inf)
    mates = {0: frozenset({0})}
    hose = Layer("hose", (weak, strong))
    for layers in ((hose, Layer("breakaway", (demanding,))), (Layer("breakaway", (demanding,)), hose)):
        best = cheapest(Problem(0, (*layers, Layer("end", (end,))), mates, ()))
        assert best is not None
        assert "strong" in best.keys


def test_a_listener_can_stop_the_walk() -> None:
    class Impatient(Listener):
        def should_stop(self) -> bool:
            return True

    items = tuple(Item(str(number), number, 0, 0, ()) for number in range(40))
    problem = Problem(0, (Layer("a", items), Layer("b", items), Layer("c", items)), {0: frozenset({0})}, ())
    with pytest.raises(Cancelled):
        list(best_first(problem, Impatient()))
