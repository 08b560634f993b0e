"""A named conflict conflicts on its own, and no longer once any member is dropped."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from spoutline.search.conflicts import minimal_conflict

conflicts = st.lists(st.frozensets(st.integers(0, 11), min_size=1, max_size=4), max_size=4)


@given(conflicts, st.integers(1, 12))
def test_conflict_is_minimal(hidden: list[frozenset[int]], count: int) -> None:
    demands = tuple(range(count))

    def is_feasible(active: frozenset[int]) -> bool:
        return not any(conflict <= active for conflict in hidden)

    found = minimal_conflict(demands, is_feasible)
    if is_feasible(frozenset(demands)):
        assert found == ()
        return
    assert not is_feasible(frozenset(found))
    for member in found:
        assert is_feasible(frozenset(found) - {member})


def test_demands_that_are_not_to_blame_are_not_blamed() -> None:
    assert minimal_conflict((1, 2, 3), lambda active: False) == ()
