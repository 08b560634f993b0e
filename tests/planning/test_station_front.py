"""Fronts put together: held against every combination, and a station of the demonstration against hand sums."""

from __future__ import annotations

import itertools

from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from spoutline.planning.weighing.combining import Choosable, combined

Points = tuple[tuple[int, int], ...]
figures = st.integers(0, 40)
groups = st.lists(
    st.builds(
        Choosable,
        st.lists(st.tuples(figures, figures), min_size=1, max_size=6).map(tuple),
        st.integers(1, 4),
    ),
    min_size=1,
    max_size=4,
)


def every_combination(asked: list[Choosable], *, adds: bool) -> set[tuple[int, int]]:
    found = set()
    for chosen in itertools.product(*(one.points for one in asked)):
        price = sum(one.count * point[0] for one, point in zip(asked, chosen, strict=True))
        others = [point[1] * (one.count if adds else 1) for one, point in zip(asked, chosen, strict=True)]
        found.add((price, sum(others) if adds else max(others)))
    return found


def not_outdone(there: set[tuple[int, int]]) -> set[tuple[int, int]]:
    return {
        one for one in there if not any(other != one and other[0] <= one[0] and other[1] <= one[1] for other in there)
    }


@given(groups, st.booleans())
@settings(max_examples=up_to(200), deadline=None)
def test_combinations_are_those_that_no_other_outdoes(asked: list[Choosable], adds: bool) -> None:
    found = combined(asked, adds=adds)
    assert found.gap == 0
    shown = list(zip(found.price.tolist(), found.other.tolist(), strict=True))
    assert set(shown) == not_outdone(every_combination(asked, adds=adds))
    for (price, other), choices in zip(shown, found.choices.tolist(), strict=True):
        chosen = [one.points[at] for one, at in zip(asked, choices, strict=True)]
        assert price == sum(one.count * point[0] for one, point in zip(asked, chosen, strict=True))
        own = [point[1] * (one.count if adds else 1) for one, point in zip(asked, chosen, strict=True)]
        assert other == (sum(own) if adds else max(own))


@given(groups, st.booleans(), st.integers(1, 5))
@settings(max_examples=up_to(200), deadline=None)
def test_where_combinations_are_left_out_none_of_them_is_cheaper_by_more_than_the_gap(
    asked: list[Choosable], adds: bool, most: int
) -> None:
    found = combined(asked, adds=adds, most_points=most)
    there = every_combination(asked, adds=adds)
    shown = list(zip(found.price.tolist(), found.other.tolist(), strict=True))
    assert len(shown) <= most
    assert set(shown) <= there
    for price, other in there:
        assert any(mine[1] <= other and mine[0] <= price + found.gap for mine in shown)
