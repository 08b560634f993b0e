"""Rows of load sums for the model keep the very ways that the limits keep. Oracle: every way, summed and looked at."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from planning.test_chain_arcs import pairs, problems, whole_graph
from search.problems import random_problem
from spoutline.planning.refit.case_graphs import Way, case_graphs
from spoutline.planning.refit.chain_arcs import ArcGraph, within_limits
from spoutline.planning.refit.like_cases import LikeCases
from spoutline.planning.refit.sum_limits import SumLimit, binding_limits
from spoutline.search.graph import Problem


def ways_of(graph: ArcGraph) -> list[tuple[int, ...]]:
    """Return every way from start to end, by the numbers of its arcs."""
    found: list[tuple[tuple[int, int], tuple[int, ...]]] = [(graph.root, ())]
    for _ in graph.problem.layers:
        found = [
            (arc.end, (*way, number))
            for node, way in found
            for number, arc in enumerate(graph.arcs)
            if arc.start == node
        ]
    return [way for _, way in found]


def keeps(graph: ArcGraph, way: tuple[int, ...]) -> bool:
    items = [item for number in way if (item := graph.arcs[number].item) is not None]
    sums = [sum(item.loads[index] for item in items) for index in range(len(graph.problem.limits))]
    return all(total <= limit + 1e-9 for total, limit in zip(sums, graph.problem.limits, strict=True))


def keeps_rows(limits: tuple[SumLimit, ...], way: tuple[int, ...], graph: int = 0) -> bool:
    return all(sum(one.loads[graph][number] for number in way) <= one.limit + 1e-7 for one in limits)


@given(problems)
def test_rows_keep_the_ways_that_the_limits_keep(problem: Problem) -> None:
    graph = within_limits(whole_graph(problem))
    limits = binding_limits((graph,))
    for way in ways_of(graph):
        assert keeps_rows(limits, way) == keeps(graph, way)


tight = st.builds(
    random_problem,
    st.integers(0, 10_000),
    layers=st.just(3),
    items=st.just(3),
    ports=st.just(1),
    loads=st.just(2),
    tightness=st.just(0.7),
)


@given(tight, tight)
def test_rows_keep_the_ways_of_every_graph(first: Problem, second: Problem) -> None:
    """Nozzles of two design flows have a graph each, under the same limits."""
    graphs = (whole_graph(first), whole_graph(second))
    rows = binding_limits(graphs)
    for number, graph in enumerate(graphs):
        for way in ways_of(graph):
            assert keeps_rows(rows, way, number) == keeps(graph, way)


def test_a_limit_is_lowered_to_the_greatest_sum_of_all_graphs() -> None:
    """By hand: of 100 the first graph comes to 95, the second to 50 or past it."""
    first = pairs((100.0,), {"a": (90.0,)}, {"b": (5.0,)})
    second = pairs((100.0,), {"c": (40.0,)}, {"d": (10.0,), "e": (80.0,)})
    (limit,) = binding_limits((whole_graph(first), whole_graph(second)))
    assert limit.limit == 95.0


def test_a_load_that_frees_a_sum_does_not_drown_the_others() -> None:
    """By hand: ``free`` may go with both; of the others only 3 + 4 keeps 8, and no figure is far from the rest."""
    problem = pairs((8.0,), {"free": (-1e12,), "small": (3.0,)}, {"four": (4.0,), "six": (6.0,)})
    (limit,) = binding_limits((whole_graph(problem),))
    assert max(abs(load) for load in limit.loads[0]) < 10.0
    assert limit.limit == 7.0


def test_cases_are_alike_until_a_way_stands_for_one_of_them_only() -> None:
    graph = whole_graph(pairs((9.0,), {"a": (3.0,)}, {"b": (4.0,), "c": (6.0,)}))
    cases = [case_graphs((graph,), 1, 0) for _ in range(3)]
    alike = LikeCases(cases)
    (group,) = alike.groups()
    way = Way(0, (0, 1))
    assert (group.count, group.forbidden) == (3, frozenset())
    assert alike.shared_out([[way] * 3]) == (way,) * 3
    alike.forbid([None, way, None], lambda number, _: number != 2)
    assert [(one.count, one.forbidden) for one in alike.groups()] == [(1, frozenset()), (2, frozenset({way}))]
    alike.shared_out([[Way(0, (0, 2))], [way, way]])
    alike.forbid([None, way, None], lambda number, _: number != 2)
    assert [one.count for one in alike.groups()] == [1, 1, 1]


def test_cases_are_told_apart_at_once_where_a_way_keeps_its_limit_only_with_others() -> None:
    graph = whole_graph(pairs((9.0,), {"a": (3.0,)}, {"b": (4.0,), "c": (6.0,)}))
    alike = LikeCases([case_graphs((graph,), 1, 0) for _ in range(3)])
    way = Way(0, (0, 1))
    assert [one.count for one in alike.groups()] == [3]
    alike.forbid([way, None, None], lambda _number, _way: False, lambda _number, _way: False)
    assert [(one.count, one.forbidden) for one in alike.groups()] == [(1, frozenset({way}))] * 3
