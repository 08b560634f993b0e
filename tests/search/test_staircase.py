"""The bound that is exact in one limit: never above a chain, equal to the best where nothing else binds."""

from __future__ import annotations

import math
from random import Random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.cp_sat import cp_sat_optimum
from search.problems import enumerated, problems
from spoutline.search.columns import Columns, columns_of
from spoutline.search.dominance import reduced
from spoutline.search.graph import NO_PORT, Item, Layer, Problem
from spoutline.search.item_table import ItemsOf, Names
from spoutline.search.listener import Listener
from spoutline.search.multipliers import priced
from spoutline.search.optimum import best_chain
from spoutline.search.passes import Passes
from spoutline.search.staircase import Staircases
from spoutline.search.sums import Sums


def trimmed(problem: Problem) -> Columns:
    columns = columns_of(problem)
    assert columns is not None
    return columns.trimmed()


def floor_of(columns: Columns, prices: list[float], top: float) -> float:
    sums = Sums.of(columns.limits, np.array(prices))
    return Staircases(columns, Passes(columns), sums, top).floor()


def without_strengths(problem: Problem) -> Problem:
    """Return the problem in which nothing is asked to bear anything: the bound leaves that aside."""
    layers = tuple(
        Layer(
            layer.name,
            tuple(Item(one.key, one.cost, one.entry, one.exit, one.loads) for one in layer.items),
            layer.optional,
        )
        for layer in problem.layers
    )
    return Problem(problem.start, layers, problem.mates, problem.limits)


@pytest.mark.parametrize("steps", [4_096, 3])
@given(problem=problems, prices=st.lists(st.floats(0.0, 20.0), min_size=8, max_size=8), above=st.integers(0, 100))
@settings(max_examples=up_to(60), deadline=None)
def test_the_bound_is_never_above_a_chain_within_the_limits(
    steps: int, problem: Problem, prices: list[float], above: int
) -> None:
    columns = trimmed(problem)
    if not len(columns.limits):
        return
    best = min((path.cost for path in enumerated(problem)), default=None)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.staircase._MOST_STEPS", steps)
        patch.setattr("spoutline.search.staircase._PAIRS", steps)
        floor = floor_of(columns, prices[: len(columns.limits)], (best or 0) + above)
    assert best is None or floor <= best + 1e-6


@given(problems, st.floats(0.1, 20.0))
@settings(max_examples=up_to(60), deadline=None)
def test_with_one_limit_the_bound_is_the_least_cost(problem: Problem, price: float) -> None:
    free = without_strengths(problem)
    single = Problem(free.start, free.layers, free.mates, (*free.limits[:1], *[math.inf] * (len(free.limits) - 1)))
    columns = trimmed(single)
    if not len(columns.limits):
        return
    best = min((path.cost for path in enumerated(single)), default=None)
    top = 1_000.0
    floor = floor_of(columns, [price], top)
    assert floor == (math.inf if best is None or best > top else pytest.approx(best))


def dense_problem(each: int) -> Problem:
    """Return rows of items whose cost is nearly what their length is worth, cut to no common measure, often alike."""
    random = Random(5)

    def layer(name: str, low: int, high: int, *, last: bool) -> Layer:
        items = []
        for number in range(each):
            length = random.randint(low, high) * 0.0254
            cost = round(465 * length + random.randint(0, 12)) * 10**6 + random.randint(1_000, 9_000)
            loads = (-length, random.uniform(0.0, 10.0))
            items.append(Item(f"{name}{number:04}", cost, 0, NO_PORT if last else 0, loads))
        return Layer(name, tuple(items))

    rows = (
        layer("a", 9, 36, last=False),
        layer("b", 2, 6, last=False),
        layer("c", 96, 600, last=False),
        layer("d", 2, 6, last=True),
    )
    return Problem(0, rows, {0: frozenset({0})}, (-6.866, 30.0))


class _Labels(Listener):
    labels = 0

    def on_expand(self, expanded: int) -> None:
        self.labels = expanded


def test_very_many_items_about_a_limit_take_few_labels() -> None:
    """Oracle: CP-SAT. Without the bound some hundred thousand chains that fall just short are looked at."""
    small = dense_problem(60)
    answer = best_chain(trimmed_columns(small), Names(ItemsOf(small)))
    assert answer.chain is not None
    assert answer.chain.cost == cp_sat_optimum(reduced(small))
    large, listener = dense_problem(3_000), _Labels()
    found = best_chain(trimmed_columns(large), Names(ItemsOf(large)), listener)
    assert found.is_proved
    assert found.chain is not None
    assert listener.labels < 60_000


def trimmed_columns(problem: Problem) -> Columns:
    columns = columns_of(problem)
    assert columns is not None
    return columns


def test_prices_of_a_problem_bound_it_no_better_than_its_staircase() -> None:
    columns = trimmed(dense_problem(200))
    passes = Passes(columns)
    found = priced(columns, passes)
    assert floor_of(columns, found.prices.tolist(), 1e12) > found.bound
