"""What a question that takes too much work is answered: the best found and a floor, and never that there is nothing.

The instances come from outside: whole numbers whose windows hold no sum of the items' parity, which proves that no
chain keeps them; and random chains with windows of micrometers on two sums, of which CP-SAT says what the cheapest
costs.
"""

from __future__ import annotations

import ast
from contextlib import suppress
from pathlib import Path
from random import Random

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import spoutline.search
from search.cp_sat import cp_sat_optimum
from search.problems import enumerated, random_problem
from spoutline.search.answer import Count, Decision, PathAnswer, cheapest_of
from spoutline.search.columns import Columns, columns_of
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.finder import Finder
from spoutline.search.graph import NO_PORT, Item, Layer, Problem
from spoutline.search.graph import Path as ChainPath
from spoutline.search.held_items import HeldItems
from spoutline.search.item_table import ItemsOf, Names
from spoutline.search.listener import MOST_WORK, Listener, Sparing

LITTLE = 2_000_000.0


class Allowing(Listener):
    """Lets a question cost so much, and adds up what was looked at."""

    def __init__(self, work: float) -> None:
        self.most_work, self.labels = work, 0

    def on_expand(self, expanded: int) -> None:
        self.labels = max(self.labels, expanded)


def of_even_figures(each: int, *, sums: int, wanted_is_odd: bool, seed: int = 1) -> Problem:
    """Return items of even whole figures, unlike each other in all of them, whose sums must be one number each."""
    random, places, spread = Random(seed), 5, 100_000

    def item(place: int, number: int) -> Item:
        figures = [2.0 * random.randrange(spread) for _ in range(sums)]
        loads = tuple(one for figure in figures for one in (figure, -figure))
        return Item(f"{place}-{number:04}", random.randrange(1_000, 9_000), 0, NO_PORT if place == 4 else 0, loads)

    layers = tuple(Layer(str(place), tuple(item(place, number) for number in range(each))) for place in range(places))
    wanted = places * spread + (1 if wanted_is_odd else 0)
    room = 0.5  # less than the step between two whole numbers
    return Problem(0, layers, {0: frozenset({0})}, (wanted + room, room - wanted) * sums)


def in_micrometres(each: int, seed: int) -> Problem:
    """Return lengths whose sum must be that of one chain to within five micrometers, and the same of another figure."""
    random, places = Random(seed), 4

    def item(place: int, number: int) -> Item:
        figures = (round(random.uniform(0.5, 3.0), 5), round(random.uniform(0.2, 2.0), 5))
        loads = tuple(one for figure in figures for one in (figure, -figure))
        return Item(f"{place}-{number:04}", random.randrange(1_000, 9_000), 0, NO_PORT if place == 3 else 0, loads)

    layers = tuple(Layer(str(place), tuple(item(place, number) for number in range(each))) for place in range(places))
    chain = [random.choice(layer.items) for layer in layers]
    wanted = [sum(one.loads[at] for one in chain) for at in (0, 2)]
    room = 5e-6
    limits = tuple(one for figure in wanted for one in (figure + room, room - figure))
    return Problem(0, layers, {0: frozenset({0})}, limits)


def columns_and_names(problem: Problem) -> tuple[Columns, Names]:
    columns = columns_of(problem)
    assert columns is not None
    return columns, Names(ItemsOf(problem))


IMPOSSIBLE = of_even_figures(60, sums=2, wanted_is_odd=True)


def test_what_parity_proves_impossible_is_left_open_and_never_called_possible() -> None:
    finder, listener = Finder(IMPOSSIBLE), Allowing(LITTLE)
    found = finder.cheapest(listener)
    assert (found.path, found.decision) == (None, Decision.UNDECIDED)
    least = sum(min(item.cost for item in layer.items) for layer in IMPOSSIBLE.layers)
    assert found.floor is not None
    assert found.floor >= least - 1
    with pytest.raises(Exhausted):
        _ = found.proven
    for ask in (
        finder.any_chain,
        lambda it: list(finder.in_order(it)),
        lambda it: finder.one_of_the_cheapest(it).proven,
    ):
        with pytest.raises(Exhausted):
            ask(Allowing(LITTLE))
    assert finder.count(10, Allowing(LITTLE)) == Count(0, Decision.UNDECIDED)


def test_items_held_in_a_layer_are_left_open_each_lot_once() -> None:
    columns, names = columns_and_names(IMPOSSIBLE)
    listener = Allowing(LITTLE)
    held = HeldItems(columns, names, 2, np.ones(len(columns), np.bool_))
    rows = columns.row[columns.layer == 2].tolist()
    for row in rows:
        with pytest.raises(Exhausted):
            held.first(row, listener)
    calls = listener.labels
    with pytest.raises(Exhausted):
        held.first(rows[0], listener)
    assert listener.labels == calls  # what is known to take too much is not looked for again
    with pytest.raises(Exhausted):
        held.first_of(np.array(rows), Allowing(LITTLE))


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize("work", [30_000.0, 300_000.0, 3_000_000.0])
def test_the_floor_lies_at_the_cheapest_or_below_and_what_is_found_at_it_or_above(seed: int, work: float) -> None:
    problem = in_micrometres(24, seed)
    wanted = cp_sat_optimum(problem)
    assert wanted is not None  # the chain that the windows were laid around
    found = Finder(problem).cheapest(Allowing(work))
    if found.decision is Decision.DECIDED:
        assert found.path is not None
        assert found.path.cost == wanted
        return
    assert found.floor is not None
    assert found.floor <= wanted
    assert found.path is None or found.path.cost >= wanted


@pytest.mark.parametrize("seed", range(4))
def test_with_the_work_that_a_question_may_take_it_is_what_the_oracle_says(seed: int) -> None:
    problem = in_micrometres(24, seed)
    assert Finder(problem).cheapest(Allowing(1.0)).decision is Decision.UNDECIDED
    found = Finder(problem).cheapest()
    assert found.decision is Decision.DECIDED
    assert found.path is not None
    assert found.path.cost == cp_sat_optimum(problem)


@given(st.integers(0, 10_000), st.sampled_from([0.3, 0.6, 1.0]), st.sampled_from([1.0, 40_000.0, 120_000.0]))
def test_with_any_work_small_chains_are_answered_truly_or_left_open(seed: int, tightness: float, work: float) -> None:
    problem = random_problem(seed, layers=4, items=7, ports=2, loads=2, tightness=tightness)
    there = enumerated(problem)
    finder, listener = Finder(problem), Allowing(work)
    found = finder.cheapest(listener)
    least = min((path.cost for path in there), default=None)
    if found.decision is Decision.DECIDED:
        assert (found.path and found.path.cost) == least
    elif least is not None:
        assert found.floor is None or found.floor <= least
        assert found.path is None or found.path.cost >= least
    counted = finder.count(1_000, listener)
    assert counted.number <= len(there)
    assert counted.decision is Decision.UNDECIDED or counted.number == min(1_000, len(there))
    with suppress(Exhausted):
        assert (finder.any_chain(listener) is not None) == bool(there)


def test_the_same_question_has_the_same_answer() -> None:
    problem = in_micrometres(60, 3)
    assert Finder(problem).cheapest(Allowing(LITTLE)) == Finder(problem).cheapest(Allowing(LITTLE))


def test_several_answers_are_one() -> None:
    def answer(cost: int | None, floor: int | None, decision: Decision = Decision.UNDECIDED) -> PathAnswer:
        return PathAnswer(None if cost is None else ChainPath(cost, ()), decision, floor)

    decided = answer(7, 7, Decision.DECIDED)
    assert cheapest_of([decided, answer(None, 9)], 100) == decided  # what is open would come after it
    assert cheapest_of([decided, answer(9, 6)], 100) == answer(7, 6)
    assert cheapest_of([decided, answer(None, None)], 100) == answer(7, None)
    assert cheapest_of([answer(None, 101)], 100) == PathAnswer.decided(None)  # dearer than anybody asks for
    assert cheapest_of([answer(None, 100)], 100) == answer(None, 100)


def test_no_effort_is_without_an_end() -> None:
    assert Effort().most_work == MOST_WORK == Listener().most_work
    effort = Effort(Sparing(Allowing(4_000.0), 0.25))
    assert effort.most_work == 1_000.0
    portion = effort.portion(10.0)
    assert portion.most_work == 250.0
    with pytest.raises(Exhausted):
        portion.look(251.0)
    effort.go_on_from(portion)
    effort.look(700.0)
    with pytest.raises(Exhausted):
        effort.look(50.0)


def test_only_a_front_asks_for_more_work_than_a_question_may_take() -> None:
    """Whoever sets the work of an effort by himself could set it to no end."""
    app, asking = Path(spoutline.search.__path__[0]).parents[0], set[str]()
    for path in sorted(app.rglob("*.py")):
        text = path.read_text("utf-8")
        for node in ast.walk(ast.parse(text)) if "most_work" in text else ():
            is_given = isinstance(node, ast.Call) and any(one.arg == "most_work" for one in node.keywords)
            is_set = isinstance(node, ast.Attribute) and node.attr == "most_work" and isinstance(node.ctx, ast.Store)
            if is_given or is_set:
                asking.add(path.relative_to(app).as_posix())
    assert asking == {"planning/weighing/position_front.py", "search/effort.py", "search/listener.py"}
