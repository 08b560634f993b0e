"""What a limit tells by itself, and answers kept from question to question, held against plain enumeration."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, problems
from search.test_columns import in_tables, place, with_costs
from spoutline.planning.sets.assembled import Assembled, LayerParts
from spoutline.search.alone import LimitsAlone
from spoutline.search.columns import columns_of
from spoutline.search.finder import Finder
from spoutline.search.graph import MAJOR, NO_PORT, Item, Layer, Path, Problem
from spoutline.search.item_table import ItemsOf
from spoutline.search.listener import Listener

Limits = tuple[float, ...]


def drawn_limits(problem: Problem, random: Random, times: int) -> list[Limits]:
    """Return limits of several questions, many of which share some of theirs."""
    choices = [(limit, 0.5 * limit, 0.2 * limit, 1e6, np.inf, -np.inf) for limit in problem.limits]
    return [tuple(float(random.choice(choice)) for choice in choices) for _ in range(times)]


@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_limits_asked_one_after_another_tell_what_each_tells_first(problem: Problem, seed: int) -> None:
    columns = columns_of(problem)
    assert columns is not None
    alone, items = LimitsAlone(columns), ItemsOf(problem)
    for limits in drawn_limits(problem, Random(seed), 4):
        anew, asked = LimitsAlone(columns), replace(problem, limits=limits)
        hopeful = alone.hopeful(limits).tolist()
        assert hopeful == anew.hopeful(limits).tolist()
        assert alone.binding(limits) == anew.binding(limits)
        keys = {items.key(row) for row in hopeful}
        for path in enumerated(asked):
            assert all(item is None or item.key in keys for item in path.items)
        at = [index for index, binds in enumerate(alone.binding(limits)) if binds]
        freed = replace(asked, limits=tuple(limit if index in at else np.inf for index, limit in enumerate(limits)))
        assert sorted(map(place, enumerated(freed))) == sorted(map(place, enumerated(asked)))


@pytest.mark.parametrize("few", [0, 10_000])
@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_what_was_answered_before_never_shows(few: int, problem: Problem, seed: int) -> None:
    random, costed = Random(seed), in_tables(with_costs(problem, seed))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.finder._FEW_ITEMS", few)
        layers = tuple(LayerParts(layer, (), above=False) for layer in costed.layers)
        assembled = Assembled(Finder(costed), 0.0, layers)
        for limits in drawn_limits(costed, random, 8):
            if random.random() < 0.3:
                assembled.may_hold(limits)
            wanted = min(map(place, enumerated(replace(costed, limits=limits))), default=None)
            most = random.choice((None, MAJOR // 2, 100, (wanted or (50, ()))[0], (wanted or (50, ()))[0] - 1))
            found = assembled.cheapest(limits, None, most, 0).proven
            if wanted is not None and most is not None and wanted[0] > most:
                wanted = None
            assert (found and place(found)) == wanted


def test_limits_that_no_chain_exceeds_make_no_other_question(monkeypatch: pytest.MonkeyPatch) -> None:
    searched: list[Limits] = []
    cheapest = Finder.cheapest

    def counted(finder: Finder, listener: Listener | None = None, *bounds: int) -> Path | None:
        searched.append(finder.limits)
        return cheapest(finder, listener, *bounds)

    monkeypatch.setattr(Finder, "cheapest", counted)
    first = Layer("first", (Item("light", 5, 0, 0, (3.0, 1.0)), Item("heavy", 1, 0, 0, (6.0, 1.0))))
    last = Layer("last", (Item("end", 2, 0, NO_PORT, (2.0, 1.0)),))
    problem = in_tables(Problem(0, (first, last), {0: frozenset({0})}, (5.0, 9.0)))
    assembled = Assembled(Finder(problem), 0.0, tuple(LayerParts(one, (), above=False) for one in problem.layers))
    found = [assembled.cheapest(limits, None, None, 0).proven for limits in ((5.0, 9.0), (5.0, 2.5), (5.0, np.inf))]
    assert [path and path.cost for path in found] == [7, 7, 7]
    assert len(searched) == 1
    assert assembled.cheapest((5.0, 2.5), None, 6, 0).proven is None
    assert len(searched) == 1
    assert assembled.cheapest((5.0, 1.5), None, None, 0).proven is None
    assert assembled.cheapest((7.0, 2.5), None, None, 0).proven is not None
    assert len(searched) == 2
