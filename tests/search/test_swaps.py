"""Chains that differ from another in one item, beside all chains that enumeration knows."""

from __future__ import annotations

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, problems
from search.test_columns import in_columns, with_costs
from spoutline.search.graph import Item, Path, Problem, divided
from spoutline.search.item_table import ItemsOf
from spoutline.search.swaps import Swaps


def _ports(items: tuple[Item | None, ...]) -> list[tuple[int, int] | None]:
    return [None if item is None else (item.entry, item.exit) for item in items]


@given(problems, st.integers(0, 10_000))
@settings(max_examples=up_to(120), deadline=None)
def test_all_chains_that_differ_in_an_item_of_the_same_ports_are_told(problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    columns, _ = in_columns(costed)
    swaps, paths, items = Swaps(columns), enumerated(costed), ItemsOf(costed)
    row_of = {items[row].key: row for row in range(len(items))}

    def rows(path: Path) -> tuple[int, ...]:
        return tuple(-1 if item is None else row_of[item.key] for item in path.items)

    known = {rows(path): divided(path.cost)[1] for path in paths}
    for path in paths[:20]:
        told = {chain: cost for cost, chain in swaps.around(rows(path))}
        assert told.items() <= known.items()
        for other in paths:
            if sum(np.not_equal(rows(path), rows(other))) == 1 and _ports(path.items) == _ports(other.items):
                assert rows(other) in told
        cost, chain = swaps.lowered(divided(path.cost)[1], rows(path))
        assert known[chain] == cost
        assert all(other >= cost for other, _ in swaps.around(chain))


def test_a_chain_with_an_item_that_is_not_there_has_none_around() -> None:
    columns, _ = in_columns(Problem(0, (), {}, ()))
    assert not Swaps(columns).around((0,))
    assert Swaps(columns).lowered(7, (0,)) == (7, (0,))
