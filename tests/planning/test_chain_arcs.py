"""The arcs of a chain problem: what is left out lies on no chain that keeps the limits. Oracle: every chain, tried."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from search.problems import enumerated, random_problem
from spoutline.planning.refit.chain_arcs import Arc, ArcGraph, graph_of, narrowed, within_limits
from spoutline.search.graph import Item, Layer, Path, Problem


def whole_graph(problem: Problem) -> ArcGraph:
    costs = {item.key: item.cost for layer in problem.layers for item in layer.items}
    return graph_of(problem, lambda _layer, _item: 0, costs.__getitem__)


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
