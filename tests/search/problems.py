"""Random chains, and two oracles that share no code with the walk: plain enumeration and a mixed-integer program."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator
from dataclasses import replace
from random import Random

from hypothesis import strategies as st

from spoutline.search.graph import MAJOR, NO_PORT, Item, Layer, Path, Problem


def random_problem(seed: int, *, layers: int, items: int, ports: int, loads: int, tightness: float) -> Problem:
    """Return a chain of random items; some loads are negative; limits lie at ``tightness`` of the usual sums."""
    random = Random(seed)
    made = []
    for depth in range(layers):
        last = depth == layers - 1
        made.append(
            Layer(
                f"layer {depth}",
                tuple(
                    Item(
                        f"{depth}-{number}",
                        random.randint(0, 60),
                        random.randrange(ports),
                        NO_PORT if last else random.randrange(ports),
                        tuple(random.uniform(-2.0, 10.0) for _ in range(loads)),
                        bears=random.choice((2.0, 4.0, 6.0, math.inf)),
                        demands=random.choice((0.0, 0.0, 0.0, 3.0, 5.0)),
                    )
                    for number in range(random.randint(1, items))
                ),
                optional=not last and random.random() < 0.4,
            )
        )
    mates = {
        exit_: frozenset(entry for entry in range(ports) if random.random() < 0.6) for exit_ in (*range(ports), NO_PORT)
    }
    limits = tuple(tightness * 4.0 * layers for _ in range(loads))
    return Problem(0, tuple(made), mates, limits, start_bears=random.choice((4.0, math.inf)))


def near_copies(each: int, reach: int, *, majors: bool = False) -> Problem:
    """Return parts of even lengths, many near copies of each, whose sum may be ``reach`` and no other length."""
    random = Random(3)

    def layer(place: int, *, last: bool) -> Layer:
        items = []
        for length in (2, 6, 8, 12, 20):
            usual, lost = random.randint(800, 3_000), random.uniform(1.0, 4.0)
            for copy in range(each):
                cost = round(usual * random.uniform(0.9, 1.2)) + (MAJOR if majors and length > 6 and copy % 2 else 0)
                loads = (length, -length, lost * random.uniform(1.0, 1.1), random.uniform(1.0, 2.0))
                items.append(Item(f"{place}-{length:02}-{copy:04}", cost, 0, NO_PORT if last else 0, loads))
        return Layer(str(place), tuple(items))

    layers = tuple(layer(place, last=place == 4) for place in range(5))
    return Problem(0, layers, {0: frozenset({0})}, (reach + 0.5, 0.5 - reach, 14.0, 7.6))


def keeps_everything(problem: Problem, items: tuple[Item | None, ...]) -> bool:
    """Judge a complete choice from the meaning of the problem alone."""
    chosen = [item for item in items if item is not None]
    port = problem.start
    for item in chosen:
        if item.entry not in problem.mates.get(port, frozenset()):
            return False
        port = item.exit
    for index, limit in enumerate(problem.limits):
        if sum(item.loads[index] for item in chosen) > limit + 1e-9:
            return False
    for one in chosen:
        if one.demands > problem.start_bears:
            return False
        if any(other is not one and other.bears < one.demands for other in chosen):
            return False
    return True


def enumerated(problem: Problem) -> list[Path]:
    """Return every chain, by trying every choice of every layer."""
    choices = [(*layer.items, None) if layer.optional else layer.items for layer in problem.layers]
    return [
        Path(sum(item.cost for item in items if item is not None), items)
        for items in itertools.product(*choices)
        if keeps_everything(problem, items)
    ]


def shuffled(problem: Problem, seed: int) -> Problem:
    """Return the same problem with its rows in another order."""
    random = Random(seed)
    layers = []
    for layer in problem.layers:
        items = list(layer.items)
        random.shuffle(items)
        layers.append(Layer(layer.name, tuple(items), layer.optional))
    return Problem(problem.start, tuple(layers), problem.mates, problem.limits, problem.start_bears)


def arcs_of(problem: Problem) -> Iterator[tuple[int, int, int, Item | None]]:
    """Yield (layer, port before, port after, item) for every step of the layered graph."""
    ports = {problem.start, NO_PORT} | {item.exit for layer in problem.layers for item in layer.items}
    for depth, layer in enumerate(problem.layers):
        for port in sorted(ports):
            if layer.optional:
                yield depth, port, port, None
            for item in layer.items:
                if item.entry in problem.mates.get(port, frozenset()):
                    yield depth, port, item.exit, item


def integer_optimum(problem: Problem) -> int | None:
    """Return the least cost by HiGHS (scipy.optimize.milp) on the arcs of the layered graph; None if infeasible.

    Strengths: for every pair of layers and demanding item d, d and an item weaker than d exclude each other.
    """
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp
    from scipy.sparse import lil_matrix

    arcs = [arc for arc in arcs_of(problem) if arc[3] is None or arc[3].demands <= problem.start_bears]
    if not arcs:
        return None
    nodes = sorted(
        {(depth, before) for depth, before, _, _ in arcs} | {(depth + 1, after) for depth, _, after, _ in arcs}
    )
    index = {node: row for row, node in enumerate(nodes)}
    depth_end = len(problem.layers)
    if (0, problem.start) not in index:
        return None
    flow = lil_matrix((len(nodes), len(arcs)))
    balance_low, balance_high = np.zeros(len(nodes)), np.zeros(len(nodes))
    for column, (depth, before, after, _) in enumerate(arcs):
        flow[index[depth, before], column] += 1
        flow[index[depth + 1, after], column] -= 1
    for node, row in index.items():
        if node == (0, problem.start):
            balance_low[row] = balance_high[row] = 1
        elif node[0] == depth_end:
            balance_low[row] = -1
    rows = [LinearConstraint(flow.tocsr(), balance_low, balance_high)]
    for number, limit in enumerate(problem.limits):
        loads = np.array([0.0 if arc[3] is None else arc[3].loads[number] for arc in arcs])
        rows.append(LinearConstraint(loads, -np.inf, limit))
    thresholds = sorted({arc[3].demands for arc in arcs if arc[3] is not None and arc[3].demands > 0})
    for threshold in thresholds:
        for demanding in range(depth_end):
            asks = np.array(
                [
                    1.0 if arc[0] == demanding and arc[3] is not None and arc[3].demands >= threshold else 0.0
                    for arc in arcs
                ]
            )
            for weak in range(depth_end):
                if weak == demanding or not asks.any():
                    continue
                fails = np.array(
                    [1.0 if arc[0] == weak and arc[3] is not None and arc[3].bears < threshold else 0.0 for arc in arcs]
                )
                if fails.any():
                    rows.append(LinearConstraint(asks + fails, -np.inf, 1))
    costs = np.array([0 if arc[3] is None else arc[3].cost for arc in arcs], dtype=float)
    solved = milp(costs, constraints=rows, integrality=np.ones(len(arcs)), bounds=Bounds(0, 1))
    return round(float(solved.fun)) if solved.status == 0 else None


problems = st.builds(
    random_problem,
    st.integers(0, 10_000_000),
    layers=st.integers(1, 5),
    items=st.integers(1, 5),
    ports=st.integers(1, 4),
    loads=st.integers(0, 4),
    tightness=st.sampled_from((0.2, 0.5, 0.8, 1.0, 3.0)),
)


def with_copies(problem: Problem, seed: int) -> Problem:
    """Return a problem with two near copies of each item: a little dearer or cheaper, loads alike or a little more."""
    random = Random(seed)

    def near(item: Item, number: int) -> Item:
        more = random.choice((0.0, 0.0, 0.01, 0.3))
        loads = tuple(load + more for load in item.loads)
        return replace(item, key=f"{item.key}-{number}", cost=max(0, item.cost + random.randint(-3, 3)), loads=loads)

    layers = (
        replace(one, items=tuple(copy for item in one.items for copy in (item, near(item, 2), near(item, 3))))
        for one in problem.layers
    )
    return replace(problem, layers=tuple(layers))


copied_problems = st.builds(
    with_copies,
    st.builds(
        random_problem,
        st.integers(0, 10_000_000),
        layers=st.integers(2, 4),
        items=st.integers(1, 2),
        ports=st.integers(1, 2),
        loads=st.integers(1, 3),
        tightness=st.sampled_from((0.5, 0.8, 1.0)),
    ),
    st.integers(0, 10_000),
)
