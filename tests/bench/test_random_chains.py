"""Random chains whose limits bind on six sums at once, beside CP-SAT in the same run; a table is printed.

Run on request: ``pytest tests/bench/test_random_chains.py -s``. Processor milliseconds of one thread: the search alone,
the least of three; CP-SAT on the problem without dominated items, building its model and solving, once. Limits lie at
``tightness`` of the sums that a chain of mean items has. No time is asserted, only that both find the same cost.

Beside them near copies of a few parts, none of whose chains keeps its limits, and all by little: even lengths never
come to an odd sum, while prices of the limits see nothing of that. Where the sum is even, few chains keep the limits;
of those the first two are looked for, as the second cheapest set of a position is.
"""

from __future__ import annotations

import os
import time
from itertools import islice
from random import Random

import pytest

from bench.figures import tell
from search.cp_sat import cp_sat_optimum
from search.problems import near_copies
from spoutline.search.columns import columns_of
from spoutline.search.dominance import reduced
from spoutline.search.graph import NO_PORT, Item, Layer, Problem
from spoutline.search.item_table import ItemsOf, Names
from spoutline.search.optimum import best_chain, chains_in_order

PLACES, LOADS, PORTS = 5, 6, 2
SIZES = (400, 4_000)[: int(os.environ.get("BENCH_SIZES", "1"))]  # items a place; more on request
TIGHTNESS = (3.0, 1.2, 0.8, 0.6, 0.45, 0.3)
NEAR_COPIES = (40, 400, 4_000)  # of each of 25 parts
COMPARED = 400  # the largest number of items a place at which CP-SAT is asked as well


def random_chain(each: int, tightness: float, seed: int) -> Problem:
    """Return a chain of so many random items a place."""
    random = Random(seed)

    def item(place: int, number: int) -> Item:
        leaves = NO_PORT if place == PLACES - 1 else random.randrange(PORTS)
        loads = tuple(random.uniform(0.0, 10.0) for _ in range(LOADS))
        cost = round(random.lognormvariate(8.0, 0.6))
        return Item(f"{place}-{number:05}", cost, random.randrange(PORTS), leaves, loads)

    layers = tuple(Layer(str(place), tuple(item(place, number) for number in range(each))) for place in range(PLACES))
    mates = {port: frozenset({port}) for port in range(PORTS)}
    return Problem(0, layers, mates, (tightness * 5.0 * PLACES,) * LOADS)


@pytest.mark.timeout(3_600)
@pytest.mark.parametrize("each", SIZES)
@pytest.mark.parametrize("tightness", TIGHTNESS)
def test_random_chains(tightness: float, each: int) -> None:
    problem = random_chain(each, tightness, seed=3)
    columns, names = columns_of(problem), Names(ItemsOf(problem))
    assert columns is not None
    best_chain(columns, names)
    spent = []
    for _ in range(3):
        begun = time.process_time()
        found = best_chain(columns, names).chain
        spent.append((time.process_time() - begun) * 1e3)
    own, other, times = min(spent), "-", ""
    if each <= COMPARED:
        begun = time.process_time()
        assert cp_sat_optimum(reduced(problem)) == (found and found.cost)
        taken = (time.process_time() - begun) * 1e3
        other, times = f"{taken:.0f}", f"{taken / own:.0f}"
        tell(f"random chain, {tightness}", own)
        tell(f"CP-SAT, random chain, {tightness}", taken)
    fits = "fits" if found else "no chain"
    print(f"\n| {tightness} | {each:,} | {fits} | {own:.1f} | {other} | {times} |", end="")


@pytest.mark.timeout(3_600)
@pytest.mark.parametrize("each", NEAR_COPIES)
def test_near_copies_that_all_just_miss_a_limit(each: int) -> None:
    problem = near_copies(each, 41)
    columns, names = columns_of(problem), Names(ItemsOf(problem))
    assert columns is not None
    begun = time.process_time()
    found = best_chain(columns, names)
    own = (time.process_time() - begun) * 1e3
    assert found.is_proved
    assert found.chain is None
    tell(f"near copies, {25 * each}", own)
    other, times = "-", ""
    if each <= COMPARED:
        begun = time.process_time()
        assert cp_sat_optimum(reduced(problem)) is None
        taken = (time.process_time() - begun) * 1e3
        other, times = f"{taken:.0f}", f"{taken / own:.1f}"
    print(f"\n| near copies | {25 * each:,} | no chain | {own:.0f} | {other} | {times} |", end="")


@pytest.mark.timeout(3_600)
@pytest.mark.parametrize("each", NEAR_COPIES)
def test_the_first_two_of_near_copies_that_mostly_miss_a_limit(each: int) -> None:
    problem = near_copies(each, 26)
    columns, names = columns_of(problem), Names(ItemsOf(problem))
    assert columns is not None
    begun = time.process_time()
    first = best_chain(columns, names).chain
    found_first = (time.process_time() - begun) * 1e3
    assert first is not None
    begun = time.process_time()
    both = list(islice(chains_in_order(columns, names, least=(0, first.cost)), 2))
    found_second = (time.process_time() - begun) * 1e3
    assert both[0] == first
    tell(f"first of near copies, {25 * each}", found_first)
    tell(f"second of near copies, {25 * each}", found_second)
    other, times = "-", ""
    if each <= COMPARED:
        items = ItemsOf(problem)
        begun = time.process_time()
        assert cp_sat_optimum(problem, [tuple(items[row] for row in first.rows)]) == both[1].cost
        taken = (time.process_time() - begun) * 1e3
        other, times = f"{taken:.0f}", f"{taken / found_second:.1f}"
    print(f"\n| first | {25 * each:,} | fits | {found_first:.0f} | - | |", end="")
    print(f"\n| second | {25 * each:,} | fits | {found_second:.0f} | {other} | {times} |", end="")
