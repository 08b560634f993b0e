"""The next chain by labels, beside plain enumeration and CP-SAT: none is left out, and none comes too early."""

from __future__ import annotations

from itertools import islice

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.cp_sat import cp_sat_optimum
from search.problems import copied_problems, enumerated, near_copies, problems
from search.test_columns import in_columns, place, placed, with_costs
from spoutline.search.chain import Chain, Named
from spoutline.search.columns import Columns
from spoutline.search.dominance import reduced
from spoutline.search.effort import Effort
from spoutline.search.graph import Path, Problem
from spoutline.search.item_table import ItemsOf
from spoutline.search.listener import Listener
from spoutline.search.multipliers import priced
from spoutline.search.next_chain import NextChain
from spoutline.search.optimum import best_chain, chains_in_order
from spoutline.search.passes import Passes
from spoutline.search.sums import Sums


def next_chain_of(columns: Columns, names: Named, *, with_prices: bool) -> NextChain | None:
    """Return what finds the chains of a problem without majors; None where prices tell that there is none."""
    level = columns.only(columns.major == 0).trimmed()
    sums = Sums.of(level.limits)
    if not level.can_be_filled():
        return None
    if with_prices:
        found = priced(level, Passes(level), level.most_cost())
        if found.bound == np.inf:
            return None
        sums = Sums.of(level.limits, found.prices)
    return NextChain(level, sums, sums.floor(level, Passes(level)), names.places(level.row))


@pytest.mark.parametrize("with_prices", [False, True])
@given(problem=problems | copied_problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(120), deadline=None)
def test_chains_come_one_by_one_in_the_order_of_enumeration(problem: Problem, seed: int, with_prices: bool) -> None:
    costed = with_costs(problem, seed)
    columns, names = in_columns(costed)
    at_no_major = [path for path in enumerated(costed) if all(_is_without_major(columns, costed, path))]
    wanted = sorted(map(place, at_no_major))[:40]
    search = next_chain_of(columns, names, with_prices=with_prices)
    if search is None:
        assert not wanted
        return
    most = 1_000_000
    for cost, keys in wanted:
        if seed % 2:
            assert search.next(cost - 1, Effort()) is None  # none is as cheap that was not told
        found = search.next(most, Effort())
        assert found is not None
        assert placed(Chain(0, found.cost, found.rows), names) == (cost, keys)
        search.tell(found.rows)
    if len(wanted) < 40:
        assert search.next(most, Effort()) is None


def _is_without_major(columns: Columns, problem: Problem, path: Path) -> list[bool]:
    items, majors = ItemsOf(problem), dict(zip(columns.row.tolist(), columns.major.tolist(), strict=True))
    free = {items[row].key for row, major in majors.items() if major == 0}
    return [item is None or item.key in free for item in path.items]


@pytest.mark.parametrize(
    ("labels", "passes", "most_at_once"), [(0, 0, 0), (2, 4, 30), (8, 2, 500_000), (0, 16, 500_000)]
)
@given(problem=problems | copied_problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_whether_labels_or_costs_find_the_next_never_shows(
    labels: int, passes: int, most_at_once: int, problem: Problem, seed: int
) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    columns, names = in_columns(costed)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.level_search._QUICK_LABELS", labels)
        patch.setattr("spoutline.search.level_order._ORDER_LABELS", labels)
        patch.setattr("spoutline.search.level_search.MANY_MORE", 1)
        patch.setattr("spoutline.search.level_order.MANY_MORE", 1)
        patch.setattr("spoutline.search.level_search.ITEMS", (1, 4, 1_000)[seed % 3])
        patch.setattr("spoutline.search.level_order.ITEMS", (1, 4, 1_000)[seed % 3])
        patch.setattr("spoutline.search.level_order._TOLD", 30)
        patch.setattr("spoutline.search.level_search.STAND_INS", (0, most_at_once))
        patch.setattr("spoutline.search.level_order.STAND_INS", (0, most_at_once))
        patch.setattr("spoutline.search.level_order._PASSES", passes)
        assert [placed(chain, names) for chain in chains_in_order(columns, names)] == wanted
        best = best_chain(columns, names).chain
        assert [placed(one, names) for one in (best,) if one] == wanted[:1]


class _Labels(Listener):
    labels = 0

    def on_expand(self, expanded: int) -> None:
        self.labels = expanded


def test_the_second_of_near_copies_that_few_chains_of_keep_the_limits_is_that_of_cp_sat() -> None:
    for each in (4, 40):
        problem = near_copies(each, 40)
        columns, names = in_columns(problem)
        items = ItemsOf(problem)
        told: list[tuple[int, ...]] = []
        for chain in islice(chains_in_order(columns, names), 3):
            before = [tuple(items[row] for row in rows) for rows in told]
            assert chain.cost == cp_sat_optimum(problem if told else reduced(problem), before)
            told.append(chain.rows)


def test_the_second_of_very_many_near_copies_is_soon_known() -> None:
    """By cost alone it takes millions of labels, since all chains that just miss a limit cost less."""
    problem, listener = near_copies(400, 26), _Labels()
    columns, names = in_columns(problem)
    assert len(list(islice(chains_in_order(columns, names, listener), 3))) == 3
    assert listener.labels < 400_000
