"""Chains through one item: held against enumeration of all chains."""

from __future__ import annotations

import math
from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, problems
from spoutline.search.graph import Item, Layer, Path, Problem
from spoutline.search.through import ThroughLayer, holding
from spoutline.search.walk import best_first


def least_by_item(problem: Problem, layer: int) -> dict[str, int]:
    """Return the cost of the cheapest of all chains that hold each item of a layer."""
    least: dict[str, int] = {}
    for path in enumerated(problem):
        item = path.items[layer]
        if item is not None:
            least[item.key] = min(least.get(item.key, path.cost), path.cost)
    return least


@given(problems, st.integers(0, 4))
@settings(max_examples=up_to(300), deadline=None)
def test_each_item_of_a_layer_gets_the_cheapest_of_all_chains_that_hold_it(problem: Problem, place: int) -> None:
    layer = place % len(problem.layers)
    through = ThroughLayer(problem, layer)
    found: dict[str, Path] = {}
    for item in problem.layers[layer].items:
        path = through.cheapest(item.key)
        if path is not None:
            found[item.key] = path
            held = path.items[layer]
            assert held is not None
            assert held.key == item.key
    assert {key: path.cost for key, path in found.items()} == least_by_item(problem, layer)


@given(problems, st.integers(0, 4), st.sets(st.integers(0, 8)), st.one_of(st.none(), st.integers(0, 60)))
@settings(max_examples=up_to(300), deadline=None)
def test_some_items_of_a_layer_get_the_cheapest_of_all_chains_that_hold_one_of_them(
    problem: Problem, place: int, places: set[int], most_cost: int | None
) -> None:
    layer = place % len(problem.layers)
    keys = {item.key for number, item in enumerate(problem.layers[layer].items) if number in places}
    costs = [cost for key, cost in least_by_item(problem, layer).items() if key in keys]
    path = ThroughLayer(problem, layer).cheapest_of(keys, most_cost=most_cost)
    within = [cost for cost in costs if most_cost is None or cost <= most_cost]
    assert (None if path is None else path.cost) == min(within, default=None)
    if path is not None:
        held = path.items[layer]
        assert held is not None
        assert held.key in keys


@given(problems, st.integers(0, 4))
@settings(max_examples=up_to(300), deadline=None)
def test_the_bound_is_never_above_the_cost_and_leaves_out_no_item_that_a_chain_holds(
    problem: Problem, place: int
) -> None:
    layer = place % len(problem.layers)
    bound = ThroughLayer(problem, layer).least_costs()
    for key, cost in least_by_item(problem, layer).items():
        assert bound[key] <= cost


@given(problems, st.integers(0, 4))
@settings(max_examples=up_to(150), deadline=None)
def test_where_only_ports_count_the_bound_is_the_cost(problem: Problem, place: int) -> None:
    layers = tuple(
        replace(layer, items=tuple(replace(item, loads=(), bears=math.inf, demands=0.0) for item in layer.items))
        for layer in problem.layers
    )
    free = replace(problem, layers=layers, limits=(), start_bears=math.inf)
    layer = place % len(layers)
    assert ThroughLayer(free, layer).least_costs() == least_by_item(free, layer)


def test_an_item_that_by_itself_rules_out_every_chain_is_not_named() -> None:
    def hose(key: str, *, load: float, demands: float = 0.0) -> Item:
        return Item(key, 10, 1, 2, (load,), demands=demands)

    whip = Layer("whip", (Item("w", 5, 0, 3, (1.0,)),))
    hoses = Layer("hose", (hose("light", load=4.0), hose("heavy", load=9.5), hose("strong", load=4.0, demands=7.0)))
    mates = {0: frozenset({0}), 3: frozenset({1})}
    problem = Problem(0, (whip, hoses), mates, (10.0,), start_bears=6.0)
    assert ThroughLayer(problem, 1).least_costs() == {"light": 15}  # 9.5 + 1 is above 10, and 7 above 6


@given(problems, st.integers(0, 4))
@settings(max_examples=up_to(150), deadline=None)
def test_the_narrowed_problem_has_exactly_the_chains_that_hold_the_item(problem: Problem, place: int) -> None:
    layer = place % len(problem.layers)
    for item in problem.layers[layer].items:
        narrowed = holding(problem, layer, item.key)
        assert narrowed is not None
        wanted = sorted(path.keys for path in enumerated(problem) if path.items[layer] is item)
        assert sorted(path.keys for path in best_first(narrowed)) == wanted
    assert holding(problem, layer, "no such item") is None
