"""Chains of a few items by plain steps, and bounds worked out for several questions at once, against enumeration."""

from __future__ import annotations

from dataclasses import replace
from itertools import islice, product
from random import Random
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.cp_sat import cp_sat_optimum
from search.problems import enumerated, near_copies, problems, random_problem, shuffled
from spoutline.search import level_search
from spoutline.search.chain import named
from spoutline.search.columns import Columns, columns_of
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.few_items import FewItems
from spoutline.search.finder import Finder
from spoutline.search.graph import MAJOR, Path, Problem
from spoutline.search.ground import Ground
from spoutline.search.item_table import ItemsOf, Mask, Names, table_of
from spoutline.search.optimum import best_chain, chains_in_order

Place = tuple[int, tuple[str, ...]]  # cost, keys by layer


def place(path: Path) -> Place:
    return path.cost, tuple("" if item is None else item.key for item in path.items)


def coarse(problem: Problem) -> Problem:
    """Return the problem with many chains as cheap as each other."""
    layers = [
        replace(layer, items=tuple(replace(item, cost=item.cost // 30) for item in layer.items))
        for layer in problem.layers
    ]
    return replace(problem, layers=tuple(layers))


def few_of(problem: Problem, top: int, labels: float = 1e6, *, any_will_do: bool = False) -> tuple[FewItems, Names]:
    columns, names = columns_of(problem), Names(ItemsOf(problem))
    assert columns is not None
    ground = Ground.of(columns)
    effort = Effort(most=labels)
    return FewItems(ground.columns, ground.sums, top, effort, names, any_will_do=any_will_do), names


@given(problems, st.integers(0, 12), st.integers(0, 10_000))
@settings(max_examples=up_to(100), deadline=None)
def test_chains_up_to_a_cost_are_those_of_enumeration(problem: Problem, top: int, seed: int) -> None:
    problem = shuffled(coarse(problem), seed)
    wanted = sorted(one for one in map(place, enumerated(problem)) if one[0] <= top)
    few, names = few_of(problem, top)
    assert [(chain.cost, named(chain.rows, names)) for chain in few.in_order()] == wanted
    first = few_of(problem, top)[0].first()
    assert [(chain.cost, named(chain.rows, names)) for chain in (first,) if chain] == wanted[:1]
    one = few_of(problem, top, any_will_do=True)[0].first()
    assert (one is None) == (not wanted)
    assert one is None or (one.cost, named(one.rows, names)) in wanted


def test_more_labels_than_allowed_are_not_looked_at() -> None:
    problem = random_problem(29, layers=4, items=9, ports=1, loads=0, tightness=1.0)
    assert len(few_of(problem, 10**6)[0].in_order()) > 100
    with pytest.raises(Exhausted):
        few_of(problem, 10**6, labels=64)[0].in_order()


def test_near_copies_are_never_followed_by_plain_steps(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nearly all of them have floors as low as the cheapest chain: plain steps would go through them without end."""
    problem, seen = near_copies(60, 26), list[int]()

    class Watched(FewItems):
        def __init__(self, columns: Columns, *rest: Any, **named: Any) -> None:
            seen.append(len(columns))
            super().__init__(columns, *rest, **named)

    monkeypatch.setattr(level_search, "FewItems", Watched)
    columns, names = columns_of(problem), Names(ItemsOf(problem))
    assert columns is not None
    first = best_chain(columns, names).chain
    assert first is not None
    both = list(islice(chains_in_order(columns, names, least=(0, first.cost)), 2))
    assert both[0] == first
    items = ItemsOf(problem)
    assert cp_sat_optimum(problem, [tuple(items[row] for row in first.rows)]) == both[1].cost
    assert len(columns) > 1_000
    assert seen
    assert max(seen) < len(columns) / 4


def in_tables(problem: Problem) -> Problem:
    layers = []
    for layer in problem.layers:
        table = table_of(layer, len(problem.limits))
        assert table is not None
        layers.append(replace(layer, items=table))
    return replace(problem, layers=tuple(layers))


@given(problems, st.integers(0, 10_000), st.booleans())
@settings(max_examples=up_to(100), deadline=None)
def test_questions_foreseen_together_have_the_answers_of_each(problem: Problem, seed: int, dear: bool) -> None:
    random = Random(seed)
    costly = [
        replace(
            layer,
            items=tuple(replace(one, cost=one.cost + MAJOR * (dear and random.random() < 0.4)) for one in layer.items),
        )
        for layer in problem.layers
    ]
    problem = replace(problem, layers=tuple(costly))
    questions: list[list[Mask]] = [
        [np.array([random.random() < share for _ in layer.items], np.bool_) for layer in problem.layers]
        for share in (0.0, 0.5, 0.8, 1.0)
    ]
    for masks, finder in zip(questions, Finder(in_tables(problem)).among(questions), strict=True):
        some = [
            replace(layer, items=tuple(item for item, kept in zip(layer.items, mask, strict=True) if kept))
            for layer, mask in zip(problem.layers, masks, strict=True)
        ]
        chains = sorted(map(place, enumerated(replace(problem, layers=tuple(some)))))
        found = finder.cheapest().proven
        assert [place(one) for one in (found,) if one] == chains[:1]
        assert [place(one) for one in finder.in_order()] == chains
        without = [one for one in chains if one[0] < MAJOR // 2]
        assert not without or finder.least_cost() <= without[0][0] + 1e-6


def test_floors_of_several_questions_are_bounds_for_every_item() -> None:
    problem = random_problem(14, layers=4, items=6, ports=2, loads=2, tightness=0.8)
    columns = columns_of(problem)
    assert columns is not None
    count = sum(len(layer.items) for layer in problem.layers)
    items = np.array([[Random(at * 7 + one).random() < 0.7 for one in range(3)] for at in range(count)])
    names = Names(ItemsOf(problem))
    chains = enumerated(problem)
    assert chains
    for one, ground in enumerate(Ground.of(columns).among(items)):
        may = {names[row] for row in range(count) if items[row, one]}
        some = [chain for chain in chains if all(item is None or item.key in may for item in chain.items)]
        floors = {names[row]: floor for row, floor in zip(ground.columns.row.tolist(), ground.floors, strict=True)}
        for chain, item in product(some, range(len(problem.layers))):
            held = chain.items[item]
            if held is not None:
                assert floors[held.key] <= chain.cost + 1e-6
        assert ground.floor <= min((chain.cost for chain in some), default=np.inf) + 1e-6
