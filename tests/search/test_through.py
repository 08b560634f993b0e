"""Chains through one item: held against enumeration of all chains."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, near_copies, problems, shuffled
from spoutline.model.faults import Cancelled
from spoutline.search.dominance import reduced
from spoutline.search.finder import Finder
from spoutline.search.graph import Item, Layer, Path, Problem
from spoutline.search.item_table import Ints, Mask
from spoutline.search.listener import Listener
from spoutline.search.through import Through, holding
from spoutline.search.walk import best_first

TOO_DEAR = 10**45  # costs too large for whole numbers of 64 bits: items are then looked at one by one


@pytest.fixture(autouse=True, scope="module")
def _in_columns() -> Iterator[None]:
    """Let all problems be looked at in columns, however few items they have."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.through._FEW_ITEMS", 0)
        yield


def at_costs_times(problem: Problem, factor: int) -> Problem:
    """Return the same chains at other costs, in the same order."""
    layers = [
        replace(layer, items=tuple(replace(item, cost=item.cost * factor) for item in layer.items))
        for layer in problem.layers
    ]
    return replace(problem, layers=tuple(layers))


def in_order(problem: Problem, layer: int, key: str) -> list[tuple[int, tuple[str, ...]]]:
    """Return cost and keys, "" for an empty layer, of all chains that hold an item, in their order."""
    chains = (path for path in enumerated(problem) if (held := path.items[layer]) is not None and held.key == key)
    return sorted((path.cost, names(path)) for path in chains)


def names(path: Path) -> tuple[str, ...]:
    """Return the key of each layer, "" where it stays empty."""
    return tuple("" if item is None else item.key for item in path.items)


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
    through = Through(problem).layer(layer)
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
    path = Through(problem).layer(layer).cheapest_of(keys, most_cost=most_cost)
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
    bound = Through(problem).layer(layer).least_costs()
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
    assert Through(free).layer(layer).least_costs() == least_by_item(free, layer)


def test_an_item_that_by_itself_rules_out_every_chain_is_not_named() -> None:
    def hose(key: str, *, load: float, demands: float = 0.0) -> Item:
        return Item(key, 10, 1, 2, (load,), demands=demands)

    whip = Layer("whip", (Item("w", 5, 0, 3, (1.0,)),))
    hoses = Layer("hose", (hose("light", load=4.0), hose("heavy", load=9.5), hose("strong", load=4.0, demands=7.0)))
    mates = {0: frozenset({0}), 3: frozenset({1})}
    problem = Problem(0, (whip, hoses), mates, (10.0,), start_bears=6.0)
    assert Through(problem).layer(1).least_costs() == {"light": 15}  # 9.5 + 1 is above 10, and 7 above 6


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


@given(problems, st.integers(0, 4), st.integers(0, 9))
@settings(max_examples=up_to(200), deadline=None)
def test_all_chains_through_each_item_come_in_order_the_first_of_them_first(
    problem: Problem, place: int, seed: int
) -> None:
    layer = place % len(problem.layers)
    through = Through(shuffled(problem, seed)).layer(layer)
    for item in problem.layers[layer].items:
        wanted = in_order(problem, layer, item.key)
        first = through.cheapest(item.key)
        assert (None if first is None else (first.cost, names(first))) == next(iter(wanted), None)
        assert [(path.cost, names(path)) for path, _ in through.in_order(item.key)] == wanted


@given(problems, st.integers(0, 4))
@settings(max_examples=up_to(100), deadline=None)
def test_many_chains_around_one_item_do_not_hide_those_around_another(problem: Problem, place: int) -> None:
    layer = place % len(problem.layers)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.held_items._BLOCK", 2)
        patch.setattr("spoutline.search.held_items._MOST_BLOCKS", 2)
        through = Through(problem).layer(layer)
        for item in problem.layers[layer].items:
            found = [(path.cost, names(path)) for path, _ in through.in_order(item.key)]
            assert found == in_order(problem, layer, item.key)


@pytest.mark.parametrize("proof", [0, 20_000])
@given(problem=problems, place=st.integers(0, 4))
@settings(max_examples=up_to(80), deadline=None)
def test_where_labels_are_many_at_once_the_first_chains_are_the_same(proof: int, problem: Problem, place: int) -> None:
    layer = place % len(problem.layers)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.held_items._QUICK_LABELS", 0)
        patch.setattr("spoutline.search.held_items._PROOF_LABELS", proof)
        through = Through(problem).layer(layer)
        for item in problem.layers[layer].items:
            found = through.cheapest(item.key)
            wanted = in_order(problem, layer, item.key)
            assert (None if found is None else (found.cost, names(found))) == next(iter(wanted), None)


def test_a_test_of_chains_is_asked_about_each_by_the_numbers_of_its_items() -> None:
    problem = near_copies(3, 40)
    layer, item = 2, problem.layers[2].items[4]
    starts = [sum(len(one.items) for one in problem.layers[:place]) for place in range(5)]
    keys = [one.key for of_layer in problem.layers for one in of_layer.items]
    asked: list[tuple[str, ...]] = []

    def test(chains: Ints) -> Mask:
        asked.extend(tuple(keys[row] for row in chain) for chain in chains.tolist())
        return np.asarray(chains[:, 0] == starts[0])

    found = list(Through(problem).layer(layer).in_order(item.key, test=test))
    assert [path.keys for path, _ in found] == asked
    assert [passes for _, passes in found] == [path.keys[0] == keys[0] for path, _ in found]
    assert any(passes for _, passes in found)


@given(problems, st.integers(0, 4))
@settings(max_examples=up_to(200), deadline=None)
def test_items_in_columns_are_told_the_same_of_as_items_one_by_one(problem: Problem, place: int) -> None:
    layer = place % len(problem.layers)
    assume(any(item.cost for one in problem.layers for item in one.items))  # nothing times too much is not too dear
    columns, plain = Through(problem), Through(at_costs_times(problem, TOO_DEAR))
    assert columns.columns is not None
    assert plain.columns is None
    least = columns.layer(layer).least_costs()
    assert {key: cost * TOO_DEAR for key, cost in least.items()} == plain.layer(layer).least_costs()
    for item in problem.layers[layer].items:
        found = [columns.layer(layer).cheapest(item.key), plain.layer(layer).cheapest(item.key)]
        assert len({one and names(one) for one in found}) == 1


@given(problems, st.integers(0, 9))
@settings(max_examples=up_to(300), deadline=None)
def test_the_items_that_no_other_is_before_are_those_of_the_reduced_problem(problem: Problem, seed: int) -> None:
    wanted = [{item.key for item in layer.items} for layer in reduced(problem).layers]
    assert [set(keys) for _, keys in Through(shuffled(problem, seed)).unmatched()] == wanted


@pytest.mark.parametrize("majors", [False, True])
@pytest.mark.parametrize("reach", [40, 46])
def test_near_copies_asked_for_together_get_what_each_gets_alone(reach: int, majors: bool) -> None:
    problem = near_copies(8, reach, majors=majors)
    through = Through(problem).layer(3)
    for item in problem.layers[3].items:
        alone = holding(problem, 3, item.key)
        wanted = None if alone is None else Finder(alone).cheapest().proven
        found = through.cheapest(item.key)
        assert (found and (found.cost, found.keys)) == (wanted and (wanted.cost, wanted.keys))


def test_what_was_stopped_is_asked_again() -> None:
    class Impatient(Listener):
        patience = 3

        def should_stop(self) -> bool:
            self.patience -= 1
            return self.patience < 0

    problem = near_copies(4, 40)
    key = problem.layers[1].items[7].key
    through, afresh = Through(problem).layer(1), Through(problem).layer(1)
    with pytest.raises(Cancelled):
        through.cheapest(key, Impatient())
    assert through.cheapest(key) == afresh.cheapest(key)
    with pytest.raises(Cancelled):
        list(through.in_order(key, Impatient()))
    assert list(through.in_order(key)) == list(afresh.in_order(key))
