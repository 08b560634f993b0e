"""Chains counted without being put in order, against plain enumeration."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, near_copies, problems
from search.test_columns import in_columns, with_costs
from spoutline.model.faults import Cancelled
from spoutline.search.answer import Count, Decision
from spoutline.search.counting import count_chains, from_one
from spoutline.search.finder import Finder
from spoutline.search.graph import Problem
from spoutline.search.level_order import LevelOrder
from spoutline.search.listener import Listener
from spoutline.search.optimum import any_chain


@pytest.mark.parametrize("labels", [0, 5, 20_000])
@given(problem=problems, seed=st.integers(0, 10_000), most=st.integers(1, 40))
@settings(max_examples=up_to(80), deadline=None)
def test_as_many_are_counted_as_there_are(labels: int, problem: Problem, seed: int, most: int) -> None:
    costed = with_costs(problem, seed)
    there_are = len(enumerated(costed))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.counting._QUICK_LABELS", labels)
        columns, names = in_columns(costed)
        assert count_chains(columns, names, most) == Count(min(most, there_are), Decision.DECIDED)
        assert Finder(costed).count(most) == Count(min(most, there_are), Decision.DECIDED)


@given(problem=problems, seed=st.integers(0, 10_000), most=st.integers(1, 40))
@settings(max_examples=up_to(200), deadline=None)
def test_what_is_reached_from_one_chain_are_chains(problem: Problem, seed: int, most: int) -> None:
    costed = with_costs(problem, seed)
    chains = enumerated(costed)
    columns, names = in_columns(costed)
    if not chains:
        return
    first = any_chain(columns, names)
    assert first is not None
    reached = from_one(columns.trimmed(), first.rows, most, Listener())
    keys = {tuple("" if row < 0 else names[row] for row in rows) for rows in reached}
    assert len(keys) == len(reached)
    assert keys <= {tuple("" if item is None else item.key for item in path.items) for path in chains}


@pytest.mark.parametrize("majors", [False, True])
def test_of_near_copies_one_chain_leads_to_very_many(majors: bool, monkeypatch: pytest.MonkeyPatch) -> None:
    """Lengths add up to 30 in chains of five; each is one of many copies, so that no order of them is needed."""
    columns, names = in_columns(near_copies(60, 30, majors=majors))
    monkeypatch.setattr("spoutline.search.counting._QUICK_LABELS", 0)
    monkeypatch.setattr(LevelOrder, "in_order", None)
    assert count_chains(columns, names, 101) == Count(101, Decision.DECIDED)


@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(80), deadline=None)
def test_any_chain_with_some_items_of_a_layer_is_found_where_there_is_one(problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    chains = enumerated(costed)
    finder = Finder(costed)
    for place, layer in enumerate(costed.layers):
        used = {item.key for path in chains if (item := path.items[place]) is not None}
        for at, item in enumerate(layer.items):
            found = finder.any_chain_with(place, np.arange(len(layer.items)) == at)
            assert (found is not None) == (item.key in used)
            assert found is None or (found.items[place] == item and found.items in [path.items for path in chains])


def test_counting_can_be_stopped() -> None:
    columns, names = in_columns(near_copies(60, 30))
    with pytest.raises(Cancelled):
        count_chains(columns, names, 101, _Stopping())


class _Stopping(Listener):
    def should_stop(self) -> bool:
        return True
