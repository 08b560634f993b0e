"""A proof that no chain keeps all limits holds against every chain, and so does what it says of other items."""

from __future__ import annotations

import math
from dataclasses import replace
from random import Random

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, problems, random_problem
from spoutline.search.columns import Columns, columns_of
from spoutline.search.finder import Finder
from spoutline.search.graph import NO_PORT, Item, Layer, Problem
from spoutline.search.item_table import ItemsOf
from spoutline.search.passes import Passes
from spoutline.search.proof import Proof, proof_of_none

SHARES = (-0.5, 0.05, 0.15, 0.3, 1.0, math.inf)  # of the usual sums


def proof_of(items: Columns) -> Proof | None:
    return proof_of_none(items, Passes(items))


def bearing_all(problem: Problem) -> Problem:
    """Return the problem with strengths left aside."""
    layers = tuple(
        replace(one, items=tuple(replace(item, bears=math.inf, demands=0.0) for item in one.items))
        for one in problem.layers
    )
    return replace(problem, layers=layers, start_bears=math.inf)


def limited(problem: Problem, random: Random) -> Problem:
    return replace(problem, limits=tuple(limit * random.choice(SHARES) for limit in problem.limits))


def without(problem: Problem, left_out: set[str]) -> Problem:
    layers = tuple(
        replace(one, items=tuple(item for item in one.items if item.key not in left_out)) for one in problem.layers
    )
    return replace(problem, layers=layers)


def columns(problem: Problem) -> Columns:
    found = columns_of(problem)
    assert found is not None
    return found


@given(problems, st.integers(0, 10_000))
@settings(max_examples=up_to(150), deadline=None)
def test_what_is_proved_holds_for_every_chain(problem: Problem, seed: int) -> None:
    problem = bearing_all(limited(problem, Random(seed)))
    if proof_of(columns(problem)) is not None:
        assert not enumerated(problem)


@given(problems, st.integers(0, 10_000))
@settings(max_examples=up_to(150), deadline=None)
def test_what_a_proof_says_of_other_items_holds_for_every_chain(problem: Problem, seed: int) -> None:
    random = Random(seed)
    whole = bearing_all(limited(problem, random))
    keys = [item.key for layer in whole.layers for item in layer.items]
    given_up = set(random.sample(keys, len(keys) // 2))
    proof = proof_of(columns(without(whole, given_up)))
    if proof is None:
        return
    every, items = columns(whole), ItemsOf(whole)
    asked = [set(random.sample(keys, random.randint(0, len(keys)))) for _ in range(6)]
    masks = np.array([[items.key(row) not in left_out for left_out in asked] for row in every.row.tolist()])
    holds = proof.holds(every, Passes(every), masks.reshape(len(every), len(asked)))
    for left_out, proved in zip(asked, holds.tolist(), strict=True):
        if proved:
            assert not enumerated(without(whole, left_out))
    assert proof.holds(every, Passes(every), masks[:, :0]).shape == (0,)


@given(st.integers(0, 10_000))
@settings(max_examples=up_to(100), deadline=None)
def test_one_limit_alone_is_always_proved(seed: int) -> None:
    # with one limit, the least sum of every chain tells all: enumeration finds none exactly where there is a proof
    problem = random_problem(seed, layers=3, items=3, ports=2, loads=1, tightness=0.2)
    problem = bearing_all(limited(problem, Random(seed)))
    free = enumerated(replace(problem, limits=(math.inf,)))
    proof = proof_of(columns(problem))
    assert (proof is not None) == (not enumerated(problem))
    if not free:
        assert proof is not None
        assert not proof.prices.any()


def test_limits_that_only_together_cannot_be_kept_have_prices_both() -> None:
    # long and light, or short and heavy: each limit can be kept, their mean of 2.5 is below every chain's 3
    layer = Layer("one", tuple(Item(f"{at}", at, 0, NO_PORT, (float(at), 6.0 - at, 1.0)) for at in range(7)))
    proof = proof_of(columns(Problem(0, (layer,), {0: frozenset({0})}, (2.5, 2.5, 9.0))))
    assert proof is not None
    assert (proof.prices > 0.0).tolist() == [True, True, False]


def test_what_no_price_proves_is_not_proved() -> None:
    # each sum is 0, 2, 4 or 6 and the other the rest of 6: mixed they keep both limits, none does by itself
    layers = tuple(
        Layer(name, (Item("a", 0, 0, end, (0.0, 2.0)), Item("b", 0, 0, end, (2.0, 0.0))))
        for name, end in (("one", 0), ("two", 0), ("three", NO_PORT))
    )
    problem = Problem(0, layers, {0: frozenset({0})}, (3.5, 3.5))
    assert proof_of(columns(problem)) is None
    assert Finder(problem).any_chain() is None
    endless = replace(problem, limits=(-math.inf, 4.0))
    assert proof_of(columns(endless)) is None


def test_a_load_without_end_is_no_way_within_a_limit_that_has_a_price() -> None:
    layer = Layer("one", (Item("a", 0, 0, NO_PORT, (math.inf, 0.0)), Item("b", 0, 0, NO_PORT, (2.0, 0.0))))
    held = columns(Problem(0, (layer,), {0: frozenset({0})}, (1.0, 1.0)))
    proof = proof_of(held)
    assert proof is not None
    assert proof.prices.tolist() == [1.0, 0.0]
    assert proof.holds(held, Passes(held), np.array([[True], [False]])).tolist() == [True]
    assert not Proof(np.array([0.0, 1.0])).holds(held, Passes(held), np.ones((2, 1), np.bool_))[0]
