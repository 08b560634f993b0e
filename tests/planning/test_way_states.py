"""States hold the very ways that keep the limits. Oracle: every way of a graph, summed and looked at."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from planning.test_chain_arcs import pairs, problems, whole_graph
from planning.test_like_cases import keeps, ways_of
from search.problems import enumerated
from spoutline.planning.refit.case_graphs import CaseGraphs, case_graphs
from spoutline.planning.refit.chain_arcs import ArcGraph
from spoutline.planning.refit.like_cases import LikeCases
from spoutline.planning.refit.mixed_integer import MixedIntegerModel
from spoutline.planning.refit.way_states import END, ROOT, Sums, WayStates, way_states
from spoutline.search.graph import Problem

MOST_REGRETS = 2


def ways_through(states: WayStates) -> list[tuple[int, ...]]:
    """Return every way from state to state, by the numbers of its arcs."""

    def from_state(state: int) -> Iterator[tuple[int, ...]]:
        if state == END:
            yield ()
            return
        for step in states.steps:
            if step.start == state:
                for rest in from_state(step.end):
                    yield from ((arc, *rest) for arc in states.classes[step.of])

    return list(from_state(ROOT))


def places(case: CaseGraphs) -> list[tuple[object, ...]]:
    """Return the ways of a case of one graph by what fills each layer, in whatever order."""
    arcs = case.graphs[0].arcs
    return sorted(tuple(arcs[number].place for number in way) for way in ways_through(case.states[0]))


def with_regrets(graph: ArcGraph, seed: int) -> ArcGraph:
    """Return the graph with some broken should-rules for every arc that has an item."""
    broken = [0 if arc.item is None else number * seed % 3 for number, arc in enumerate(graph.arcs)]
    return ArcGraph(
        graph.problem, tuple(replace(arc, regrets=own) for arc, own in zip(graph.arcs, broken, strict=True))
    )


@given(problems, st.integers(0, 7))
def test_states_hold_the_ways_that_keep_limits_and_regrets(problem: Problem, seed: int) -> None:
    graph = with_regrets(whole_graph(problem), seed)
    case = case_graphs((graph,), 1, MOST_REGRETS)
    assert case.limits == ()  # few items: each sum is kept by states
    assert case.most_regrets is None
    kept = [
        tuple(graph.arcs[number].place for number in way)
        for way in ways_of(graph)
        if keeps(graph, way) and sum(graph.arcs[number].regrets for number in way) <= MOST_REGRETS
    ]
    assert places(case) == sorted(kept)


@given(problems)
def test_no_two_states_have_the_same_behind_them(problem: Problem) -> None:
    graph = whole_graph(problem)
    sums = [
        Sums(limit, tuple(arc.item.loads[index] if arc.item else 0.0 for arc in graph.arcs))
        for index, limit in enumerate(problem.limits)
    ]
    states = way_states(graph, sums)
    assert states is not None
    behind: dict[int, list[tuple[int, int]]] = {}
    for step in states.steps:
        behind.setdefault(step.start, []).append((step.of, step.end))
    assert len({tuple(sorted(own)) for own in behind.values()}) == len(behind)
    assert len(set(ways_through(states))) == len(ways_through(states))


def test_limits_that_keep_the_same_ways_give_the_same_states() -> None:
    """By hand: of 3 + 4, 3 + 6 and 5 + 6 both limits keep the first two, and 5 + 4 as well."""
    found = [
        case_graphs((whole_graph(pairs((limit,), {"a": (3.0,), "b": (5.0,)}, {"c": (4.0,), "d": (6.0,)})),), 1, 0)
        for limit in (9.0, 10.9)
    ]
    assert found[0].states == found[1].states
    assert len(LikeCases(found).groups()) == 1


def test_a_case_that_nothing_fits_has_no_state() -> None:
    case = case_graphs((whole_graph(pairs((5.0,), {"a": (3.0,)}, {"b": (4.0,)})),), 1, 0)
    assert case.states == (WayStates((), ()),)
    assert case.graphs[0].arcs == ()


def test_sums_without_number_stay_rows() -> None:
    """120 items in each of two places, no two sums alike: as where every near copy of a part weighs something else."""
    first = {f"a{number}": (number / 7.0,) for number in range(120)}
    second = {f"b{number}": (number * number / 11.0,) for number in range(120)}
    case = case_graphs((whole_graph(pairs((600.0,), first, second)),), 1, 0)
    assert len(case.limits) == 1
    assert len(case.graphs[0].arcs) == 240
    few = dict(list(first.items())[:20]), dict(list(second.items())[:20])
    assert case_graphs((whole_graph(pairs((20.0,), *few)),), 1, 0).limits == ()


def at_limits(problem: Problem, times: float) -> Problem:
    """Return the problem with limits so many times as wide, and nothing that asks anything of another."""
    layers = tuple(
        replace(layer, items=tuple(replace(item, bears=math.inf, demands=0.0) for item in layer.items))
        for layer in problem.layers
    )
    return replace(problem, layers=layers, limits=tuple(limit * times for limit in problem.limits))


@given(problems, st.integers(0, 80), st.sampled_from([(1.0, 1.0), (1.0, 0.8), (1.0, 1.0, 0.7)]), st.booleans())
@settings(max_examples=up_to(60))
def test_a_model_is_as_cheap_as_the_cheapest_combination_of_ways(
    problem: Problem, stock_price: int, times: tuple[float, ...], with_rows: bool
) -> None:
    """Some cases are alike, others keep less: each combination of the ways of all is looked at.

    Where all limits are rows, like cases are asked for what they keep together, so that the answer may be cheaper.
    """
    own = [at_limits(problem, one) for one in times]
    chains = [list(enumerated(one)) for one in own]
    if not all(chains) or math.prod(map(len, chains)) > 20_000:
        return
    prices = {item.key: item.cost for layer in problem.layers for item in layer.items}
    with pytest.MonkeyPatch.context() as patch:
        if with_rows:
            patch.setattr("spoutline.planning.refit.way_states._MOST_STEPS", 0)
        cases = [case_graphs((whole_graph(one),), 1, 0) for one in own]
    alike = LikeCases(cases)
    answer = MixedIntegerModel(alike.groups(), lambda key: ((1, prices[key]),), stock_price).solve(2000)
    best = min(
        sum(path.cost for path in chosen) + stock_price * len({key for path in chosen for key in path.keys})
        for chosen in product(*chains)
    )
    assert answer.is_proved
    assert answer.floor_minor <= best + 1e-6
    if not with_rows:
        assert answer.floor_minor == pytest.approx(best)
        assert answer.ways is not None
        ways = alike.shared_out(answer.ways)
        kept = [{path.keys for path in of_case} for of_case in chains]
        assert all(way.path(case).keys in keys for way, case, keys in zip(ways, cases, kept, strict=True))
