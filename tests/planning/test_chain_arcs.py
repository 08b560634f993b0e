"""The arcs of a chain problem: what is left out lies on no chain that keeps the limits. Oracle: every chain, tried."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from search.problems import enumerated, random_problem
from spoutline.planning.refit.case_columns import CaseProblem
from spoutline.planning.refit.chain_arcs import Arc, ArcGraph, graph_of, narrowed, within_limits
from spoutline.planning.refit.outdone_items import stand_ins
from spoutline.search.columns import columns_of
from spoutline.search.graph import NO_PORT, Item, Layer, Path, Problem
from spoutline.search.item_table import table_of


def whole_graph(problem: Problem) -> ArcGraph:
    costs = {item.key: item.cost for layer in problem.layers for item in layer.items}
    return graph_of(problem, lambda _, item: (costs[item.key], 0))


def runs_through(path: Path, graph: ArcGraph) -> bool:
    """Say whether every step of a path is an arc of the graph."""
    known = {(arc.layer, arc.before, arc.item): arc for arc in graph.arcs}
    port = graph.problem.start
    for layer, item in enumerate(path.items):
        arc: Arc | None = known.get((layer, port, item))
        if arc is None:
            return False
        port = arc.after
    return True


def ways(graph: ArcGraph) -> list[tuple[Item | None, ...]]:
    """Return every way from start to end."""
    found: list[tuple[int, tuple[Item | None, ...]]] = [(graph.problem.start, ())]
    for layer in range(len(graph.problem.layers)):
        found = [
            (arc.after, (*items, arc.item))
            for port, items in found
            for arc in graph.arcs
            if arc.layer == layer and arc.before == port
        ]
    return [items for _, items in found]


problems = st.builds(
    random_problem,
    st.integers(0, 10_000),
    layers=st.integers(2, 4),
    items=st.integers(1, 4),
    ports=st.integers(1, 3),
    loads=st.integers(0, 3),
    tightness=st.floats(0.3, 1.2),
)


@given(problems)
def test_no_chain_within_the_limits_is_lost(problem: Problem) -> None:
    graph = within_limits(whole_graph(problem))
    for path in enumerated(problem):
        assert runs_through(path, graph)


@given(problems)
def test_what_is_left_keeps_each_limit_on_some_way(problem: Problem) -> None:
    """An arc stays for a limit only where some way through it keeps that limit."""
    graph = within_limits(whole_graph(problem))
    left = ways(graph)
    for arc in graph.arcs:
        through = [items for items in left if items[arc.layer] is arc.item]
        for index, limit in enumerate(problem.limits):
            sums = [sum(item.loads[index] for item in items if item is not None) for items in through]
            assert min(sums) <= limit + 1e-5 * max(1.0, abs(limit))


Loads = dict[str, tuple[float, ...]]


def pairs(limits: tuple[float, ...], first: Loads, second: Loads) -> Problem:
    """Return a chain of two places in which everything fits on everything."""
    layers = tuple(
        Layer(name, tuple(Item(key, 1, 0, 0, loads) for key, loads in items.items()))
        for name, items in (("first", first), ("second", second))
    )
    return Problem(0, layers, {0: frozenset({0})}, limits)


def test_what_one_limit_takes_away_is_counted_by_the_limits_before_it() -> None:
    """Only ``light`` lets ``long`` keep the first limit, and the second limit takes ``light`` away: 0 + 20 > 10."""
    problem = pairs(
        (10.0, 10.0),
        {"light": (0.0, 20.0), "heavy": (8.0, 0.0)},
        {"long": (5.0, 0.0), "short": (0.0, 0.0)},
    )
    left = within_limits(whole_graph(problem))
    assert [arc.item.key for arc in left.arcs if arc.item is not None] == ["heavy", "short"]


def test_a_sum_on_its_limit_stays_although_binary_sums_are_not_exact() -> None:
    """0.1 + 0.2 is above 0.3 in binary arithmetic (IEEE 754), and not in decimal."""
    left = within_limits(whole_graph(pairs((0.3,), {"a": (0.1,)}, {"b": (0.2,)})))
    assert len(left.arcs) == 2


@given(problems, st.integers(0, 120))
def test_no_chain_cheap_enough_is_lost(problem: Problem, most: int) -> None:
    graph = narrowed(within_limits(whole_graph(problem)), most_minor=most, most_regrets=0)
    for path in enumerated(problem):
        assert runs_through(path, graph) or path.cost > most


def as_case_problem(problem: Problem, regrets_of: dict[str, int]) -> CaseProblem:
    """Return a problem whose items cost what they cost whatever the quantity, and break what is said."""
    items = [item for layer in problem.layers for item in layer.items]
    tables = tuple(
        replace(layer, items=found)
        for layer in problem.layers
        if (found := table_of(layer, len(problem.limits))) is not None
    )
    tabled = replace(problem, layers=tables)
    columns = columns_of(tabled)
    assert columns is not None
    cost = np.array([float(item.cost) for item in items])
    return CaseProblem(
        problem=tabled,
        columns=columns,
        prices=np.column_stack([cost, cost, cost]),
        is_bought=np.ones(len(items), np.bool_),
        regrets=np.array([float(regrets_of[item.key]) for item in items]),
    )


@given(problems)
def test_no_chain_that_may_be_best_is_lost_in_columns(problem: Problem) -> None:
    """Each chain is kept where it costs and breaks just as much as it may. Oracle: every chain, tried."""
    keys = sorted({item.key for layer in problem.layers for item in layer.items})
    broken = {key: at % 3 for at, key in enumerate(keys)}
    case = as_case_problem(problem, broken)
    for path in enumerated(problem):
        regrets = sum(broken[item.key] for item in path.items if item is not None)
        layers = case.narrowed(most_minor=path.cost, most_regrets=regrets).problem.layers
        for item, layer in zip(path.items, layers, strict=True):
            assert item is None or item.key in [one.key for one in layer.items]


many_alike = st.builds(
    random_problem,
    st.integers(0, 10_000),
    layers=st.integers(1, 3),
    items=st.integers(3, 6),
    ports=st.just(1),
    loads=st.integers(0, 2),
    tightness=st.floats(0.5, 2.0),
)


@given(many_alike)
def test_without_items_that_another_stands_for_no_set_is_dearer(problem: Problem) -> None:
    """However many should-rules may be broken. Oracle: every chain, tried."""
    keys = sorted({item.key for layer in problem.layers for item in layer.items})
    broken = {key: at % 2 for at, key in enumerate(keys)}
    left_out = stand_ins([as_case_problem(problem, broken)])
    assert not set(left_out) & set(left_out.values())
    found = [
        (sum(broken[key] for key in path.keys), path.cost, bool(left_out.keys() & set(path.keys)))
        for path in enumerated(problem)
    ]
    for most in range(len(problem.layers) + 1):
        whole = min((cost for regrets, cost, _ in found if regrets <= most), default=None)
        assert min((cost for regrets, cost, is_out in found if regrets <= most and not is_out), default=None) == whole


def test_an_item_that_is_before_another_in_one_case_alone_stands_for_it_in_none() -> None:
    """By hand: ``b`` is dearer than ``a`` and no better, but in the second case alone it may hang without ``a``."""
    ends = (0, NO_PORT)
    items = [Item("a", 3, *ends, (1.0,)), Item("b", 4, *ends, (1.0,)), Item("c", 5, *ends, (0.5,))]
    both, alone = (
        as_case_problem(Problem(0, (Layer("one", tuple(some)),), {0: frozenset({0})}, (0.7,)), dict.fromkeys("abc", 0))
        for some in (items, items[1:])
    )
    assert stand_ins([both]) == {"b": "a"}  # ``c`` costs more and weighs less
    assert stand_ins([both, alone]) == {}


@given(problems)
def test_a_floor_in_columns_is_no_higher_than_the_cheapest_chain(problem: Problem) -> None:
    """Without limits the floor is the price of the cheapest chain itself. Oracle: every chain, tried."""
    keys = {item.key: 0 for layer in problem.layers for item in layer.items}
    free = replace(problem, limits=tuple(math.inf for _ in problem.limits), start_bears=math.inf)
    layers = tuple(
        replace(layer, items=tuple(replace(item, demands=0.0) for item in layer.items)) for layer in free.layers
    )
    least = as_case_problem(replace(free, layers=layers), keys).least_minor()
    costs = [path.cost for path in enumerated(replace(free, layers=layers))]
    assert least == min(costs, default=math.inf)


def test_the_steepest_fall_is_that_of_what_a_chain_may_hold() -> None:
    """By hand: ``b`` falls from 9 to 6, ``d`` from 4 to 1 but meets nothing, and ``c`` is not bought."""
    layer = Layer("first", tuple(Item(key, 1, entry, 1, ()) for key, entry in zip("abcd", (0, 0, 0, 5), strict=True)))
    case = as_case_problem(Problem(0, (layer,), {0: frozenset({0})}, ()), dict.fromkeys("abcd", 0))
    prices = np.array([[10.0, 10.0, 10.0], [6.0, 9.0, 9.0], [1.0, 9.0, 9.0], [1.0, 4.0, 4.0]])
    bought = np.array([True, True, False, True])
    assert replace(case, prices=prices, is_bought=bought).steepest_fall() == Fraction(2, 3)
