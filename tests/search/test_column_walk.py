"""The walk over columns: what it leaves out is held against the words that say what may be left out, pair by pair."""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import copied_problems, enumerated, problems
from search.test_columns import in_columns, place, with_costs
from spoutline.search import column_walk
from spoutline.search.columns import Columns
from spoutline.search.graph import MAJOR, Item, Problem
from spoutline.search.item_table import ItemsOf


def stands_in(columns: Columns, items: ItemsOf, one: int, other: int) -> bool:
    """Say whether an item may take the place of another in every chain, and comes first: the definition, in floats."""
    first, second = (items[int(columns.row[row])] for row in (one, other))
    meets_alike = all(
        getattr(columns, name)[one] == getattr(columns, name)[other] for name in ("layer", "entry", "exit")
    )
    adds_no_more = all(own <= theirs for own, theirs in zip(columns.loads[one], columns.loads[other], strict=True))
    is_no_weaker = first.bears >= second.bears and first.demands <= second.demands
    return meets_alike and adds_no_more and is_no_weaker and (first.cost, first.key) < (second.cost, second.key)


@given(problems | copied_problems, st.integers(0, 10_000))
@settings(max_examples=up_to(120), deadline=None)
def test_an_item_is_left_out_exactly_where_another_may_take_its_place(problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    columns, names = in_columns(costed)
    kept = columns.trimmed()
    items, rows = ItemsOf(costed), range(len(kept))
    outdone = {other for one, other in itertools.product(rows, rows) if stands_in(kept, items, one, other)}
    assert column_walk._not_outdone(kept, names).tolist() == [row not in outdone for row in rows]


@pytest.mark.parametrize("above", [None, -1, 0, MAJOR])
@given(problem=problems | copied_problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(80), deadline=None)
def test_the_first_chain_is_that_of_enumeration(above: int | None, problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    columns, names = in_columns(costed)
    wanted = sorted(map(place, enumerated(costed)))[:1]
    most = None if above is None else (wanted[0][0] if wanted else 0) + above
    found = column_walk.cheapest(columns, names, most_cost=most)
    items: list[Item | None] = [None if row < 0 else ItemsOf(costed)[row] for row in found or ()]
    told = [(sum(one.cost for one in items if one), tuple("" if one is None else one.key for one in items))]
    assert (told if found is not None else []) == [one for one in wanted if most is None or one[0] <= most]
