"""The front of chain problems against plain enumeration, which shares no code with it but the meaning of a problem."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from random import Random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, problems, random_problem, shuffled
from spoutline.model.faults import Cancelled
from spoutline.search.columns import columns_of
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.front import Axes, FrontChain, LabelSetting, front, ideal, merged
from spoutline.search.graph import Item, Path, Problem
from spoutline.search.item_table import ItemsOf
from spoutline.search.listener import Listener

Weights = dict[str, tuple[int, ...]]  # by key: a figure for each axis, the tie last


def drawn_weights(problem: Problem, seed: int, axes: int) -> Weights:
    """Draw figures by the keys of the items; few distinct ones, so that many chains are equal."""
    random = Random(seed)
    most = random.choice((1, 3, 40))
    keys = sorted(item.key for layer in problem.layers for item in layer.items)
    return {key: tuple(random.randint(0, most) for _ in range(axes + 1)) for key in keys}


def axes_of(problem: Problem, weights: Weights, adds: tuple[bool, ...]) -> Axes:
    rows = np.array([weights[item.key] for item in ItemsOf(problem)], np.int64).reshape(-1, len(adds) + 1)
    return Axes.exact(rows[:, :-1], adds, rows[:, -1])


def weighed(path: Path, weights: Weights, adds: tuple[bool, ...]) -> tuple[tuple[int, ...], int]:
    """Weigh a chain from the meaning of the axes alone."""
    chosen = [weights[item.key] for item in path.items if item is not None]
    figures = tuple(
        sum(one[axis] for one in chosen) if add else max((one[axis] for one in chosen), default=0)
        for axis, add in enumerate(adds)
    )
    return figures, sum(one[-1] for one in chosen)


def front_by_enumeration(
    paths: list[Path], weights: Weights, adds: tuple[bool, ...]
) -> set[tuple[tuple[int, ...], int]]:
    """Hold every chain against every other: figures and least tie of those that none outdoes."""
    least: dict[tuple[int, ...], int] = {}
    for path in paths:
        figures, tie = weighed(path, weights, adds)
        least[figures] = min(least.get(figures, tie), tie)
    return {
        (one, tie)
        for one, tie in least.items()
        if not any(other != one and all(a <= b for a, b in zip(other, one, strict=True)) for other in least)
    }


def found_in(problem: Problem, axes: Axes, without: Sequence[tuple[int, ...]] = ()) -> list[FrontChain]:
    columns = columns_of(problem)
    assert columns is not None
    return front(columns, axes, Effort(), without=without)


def path_of(problem: Problem, chain: FrontChain) -> tuple[Item | None, ...]:
    items = ItemsOf(problem)
    return tuple(None if row < 0 else items[row] for row in chain.rows)


def shown(chains: list[FrontChain]) -> set[tuple[tuple[int, ...], int]]:
    assert len({one.figures for one in chains}) == len(chains)
    return {(one.figures, one.tie) for one in chains}


several = st.lists(st.booleans(), min_size=1, max_size=4).map(tuple)


@given(problems, st.integers(0, 10_000), several)
@settings(max_examples=up_to(240), deadline=None)
def test_front_is_that_of_plain_enumeration(problem: Problem, seed: int, adds: tuple[bool, ...]) -> None:
    weights = drawn_weights(problem, seed, len(adds))
    paths = enumerated(problem)
    chains = found_in(problem, axes_of(problem, weights, adds))
    assert shown(chains) == front_by_enumeration(paths, weights, adds)
    allowed = {path.items for path in paths}
    for one in chains:
        items = path_of(problem, one)
        assert items in allowed
        assert weighed(Path(0, items), weights, adds) == (one.figures, one.tie)


@given(problems, st.integers(0, 10_000), several)
@settings(max_examples=up_to(120), deadline=None)
def test_of_equals_the_first_by_layers_is_told_where_that_is_asked_for(
    problem: Problem, seed: int, adds: tuple[bool, ...]
) -> None:
    weights = drawn_weights(problem, seed, len(adds))
    paths = enumerated(problem)
    columns = columns_of(problem)
    assert columns is not None
    items = ItemsOf(problem)
    axes = replace(axes_of(problem, weights, adds), tie=items.places(np.arange(len(items))), is_by_layer=True)
    chains = front(columns, axes, Effort())
    assert {one.figures for one in chains} == {one for one, _ in front_by_enumeration(paths, weights, adds)}
    for one in chains:
        equal = [path for path in paths if weighed(path, weights, adds)[0] == one.figures]
        first = min(equal, key=lambda path: tuple("" if item is None else item.key for item in path.items))
        assert path_of(problem, one) == first.items


@given(problems, st.integers(0, 10_000), several, st.integers(1, 24))
@settings(max_examples=up_to(160), deadline=None)
def test_a_quick_look_finds_chains_that_count_and_spares_the_search_no_part_of_the_front(
    problem: Problem, seed: int, adds: tuple[bool, ...], width: int
) -> None:
    weights = drawn_weights(problem, seed, len(adds))
    paths = enumerated(problem)
    columns = columns_of(problem)
    assert columns is not None
    setting = LabelSetting(columns, axes_of(problem, weights, adds), Effort())
    quick = setting.quick_chains(width)
    allowed = {path.items for path in paths}
    assert all(path_of(problem, one) in allowed for one in quick)
    assert len(merged(quick)) == len(quick)
    setting.know(quick)
    assert shown(merged([*quick, *setting.chains()])) == front_by_enumeration(paths, weights, adds)
    told: list[list[FrontChain]] = []
    whole = front(columns, setting.axes, Effort(), told=told.append)
    assert shown(whole) == front_by_enumeration(paths, weights, adds)
    assert len(told) == (1 if not np.isneginf(columns.limits).any() else 0)


@given(problems, st.integers(0, 10_000), several, st.integers(1, 6))
@settings(max_examples=up_to(120), deadline=None)
def test_chains_that_do_not_count_give_way_to_those_that_they_outdid(
    problem: Problem, seed: int, adds: tuple[bool, ...], many: int
) -> None:
    weights = drawn_weights(problem, seed, len(adds))
    axes, left = axes_of(problem, weights, adds), enumerated(problem)
    banned: list[tuple[int, ...]] = []
    for _ in range(many):
        chains = found_in(problem, axes, banned)
        if not chains:
            break
        gone = Random(seed).choice(chains)
        banned.append(gone.rows)
        left = [path for path in left if path.items != path_of(problem, gone)]
        again = found_in(problem, axes, banned)
        assert shown(again) == front_by_enumeration(left, weights, adds)


@given(problems, st.integers(0, 10_000), several)
@settings(max_examples=up_to(60), deadline=None)
def test_what_is_known_elsewhere_leaves_out_only_what_it_outdoes(
    problem: Problem, seed: int, adds: tuple[bool, ...]
) -> None:
    weights = drawn_weights(problem, seed, len(adds))
    axes, columns = axes_of(problem, weights, adds), columns_of(problem)
    assert columns is not None
    whole = front(columns, axes, Effort())
    known = [one for at, one in enumerate(whole) if (at + seed) % 2]
    rest = front(columns, axes, Effort(), known=known)
    assert shown(merged([*known, *rest])) == shown(whole)
    assert not shown(rest) & shown(known)


@given(problems, st.integers(0, 10_000), several, st.integers(2, 9))
@settings(max_examples=up_to(120), deadline=None)
def test_a_coarse_front_is_of_real_chains_and_within_its_gap(
    problem: Problem, seed: int, adds: tuple[bool, ...], grain: int
) -> None:
    weights = drawn_weights(problem, seed, len(adds))
    paths, columns = enumerated(problem), columns_of(problem)
    assert columns is not None
    exact = axes_of(problem, weights, adds)
    chains = front(columns, exact.coarse([grain] * len(adds)), Effort())
    real = {weighed(path, weights, adds)[0] for path in paths}
    assert {one.figures for one in chains} <= real
    gap = grain * len(problem.layers)
    for wanted in real:
        assert any(
            all(a <= b + (gap if add else 0) for a, b, add in zip(one.figures, wanted, adds, strict=True))
            for one in chains
        )


@given(problems, st.integers(0, 10_000), several, st.integers(0, 1000))
@settings(max_examples=up_to(40), deadline=None)
def test_order_of_rows_never_changes_the_front(problem: Problem, seed: int, adds: tuple[bool, ...], order: int) -> None:
    weights, other = drawn_weights(problem, seed, len(adds)), shuffled(problem, order)
    assert shown(found_in(problem, axes_of(problem, weights, adds))) == shown(
        found_in(other, axes_of(other, weights, adds))
    )


@given(problems, st.integers(0, 10_000), several)
@settings(max_examples=up_to(40), deadline=None)
def test_no_chain_goes_below_the_ideal(problem: Problem, seed: int, adds: tuple[bool, ...]) -> None:
    weights, columns = drawn_weights(problem, seed, len(adds)), columns_of(problem)
    assert columns is not None
    least = ideal(columns, axes_of(problem, weights, adds))
    for path in enumerated(problem):
        assert least is not None
        assert all(a <= b for a, b in zip(least, weighed(path, weights, adds)[0], strict=True))


class _Stops(Listener):
    def should_stop(self) -> bool:
        return True


def test_a_listener_stops_it_and_a_bound_on_labels_ends_it() -> None:
    problem = random_problem(17, layers=4, items=5, ports=2, loads=1, tightness=3.0)
    axes, columns = axes_of(problem, drawn_weights(problem, 1, 2), (True, True)), columns_of(problem)
    assert columns is not None
    with pytest.raises(Cancelled):
        front(columns, axes, Effort(_Stops()))
    with pytest.raises(Exhausted):
        front(columns, axes, Effort(most=0))
