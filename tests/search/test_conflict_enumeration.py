"""All minimal conflicts and corrections, held against every subset; their duality after Reiter (1987)."""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterable, Iterator
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from search.problems import enumerated, random_problem
from spoutline.model.faults import Cancelled
from spoutline.search.conflict_enumeration import (
    ConflictEnumeration,
    Ending,
    EnumerationBounds,
    MinimalConflict,
    MinimalCorrection,
)
from spoutline.search.graph import Path, Problem
from spoutline.search.listener import Listener

Group = frozenset[int]
hidden_conflicts = st.lists(st.frozensets(st.integers(0, 7), min_size=1, max_size=4), max_size=6)


def hiding(hidden: Iterable[Group]) -> Callable[[Group], bool]:
    known = tuple(hidden)
    return lambda group: not any(conflict <= group for conflict in known)


def subsets(demands: Iterable[int]) -> Iterator[Group]:
    members = tuple(demands)
    for size in range(len(members) + 1):
        yield from map(frozenset, itertools.combinations(members, size))


def least(groups: Iterable[Group]) -> set[Group]:
    """Return the groups that hold no other one."""
    known = list(groups)
    return {one for one in known if not any(other < one for other in known)}


def by_all_subsets(count: int, is_feasible: Callable[[Group], bool]) -> tuple[set[Group], set[Group]]:
    """Return minimal conflicts and minimal corrections from the definition: every subset is asked."""
    everything = frozenset(range(count))
    conflicts = least(group for group in subsets(everything) if not is_feasible(group))
    corrections = least(everything - group for group in subsets(everything) if is_feasible(group))
    return conflicts, corrections - {frozenset()}


def split(
    found: Iterable[MinimalConflict[int] | MinimalCorrection[int]],
) -> tuple[list[MinimalConflict[int]], list[MinimalCorrection[int]]]:
    all_found = list(found)
    return (
        [one for one in all_found if isinstance(one, MinimalConflict)],
        [one for one in all_found if isinstance(one, MinimalCorrection)],
    )


@given(hidden_conflicts, st.integers(1, 8), st.lists(st.integers(1, 9), min_size=8, max_size=8))
@settings(max_examples=up_to(400), deadline=None)
def test_all_are_found_once_and_corrections_in_the_order_of_their_costs(
    hidden: list[Group], count: int, costs: list[int]
) -> None:
    is_feasible = hiding(hidden)
    enumeration = ConflictEnumeration(tuple(range(count)), costs[:count], is_feasible)
    conflicts, corrections = split(enumeration.found())
    expected_conflicts, expected_corrections = by_all_subsets(count, is_feasible)
    assert enumeration.ending is Ending.COMPLETE
    assert [tuple(sorted(one.members)) for one in conflicts] == [one.members for one in conflicts]
    assert len(conflicts) == len(expected_conflicts)
    assert {frozenset(one.members) for one in conflicts} == expected_conflicts
    assert len(corrections) == len(expected_corrections)
    assert {frozenset(one.given_up) for one in corrections} == expected_corrections
    assert [one.cost for one in corrections] == sorted(
        sum(costs[place] for place in one.given_up) for one in corrections
    )


@given(hidden_conflicts, st.integers(1, 8))
@settings(max_examples=up_to(200), deadline=None)
def test_each_are_the_minimal_hitting_sets_of_the_others(hidden: list[Group], count: int) -> None:
    # Reiter, A theory of diagnosis from first principles, Artificial Intelligence 32 (1987), theorem 4.4
    found_conflicts, found_corrections = split(
        ConflictEnumeration(tuple(range(count)), [1] * count, hiding(hidden)).found()
    )
    conflicts = {frozenset(one.members) for one in found_conflicts}
    corrections = {frozenset(one.given_up) for one in found_corrections}

    def hitting(groups: set[Group]) -> set[Group]:
        return least(one for one in subsets(range(count)) if all(one & group for group in groups))

    if conflicts:
        assert corrections == hitting(conflicts)
        assert conflicts == hitting(corrections)
    else:
        assert not corrections


@given(st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_limits_of_small_chain_problems_against_every_chain(seed: int) -> None:
    # demands: the limits on three sums, and for each layer that the item of the lowest key is used
    problem = random_problem(seed, layers=3, items=3, ports=2, loads=3, tightness=0.15)
    free = Problem(problem.start, problem.layers, problem.mates, (float("inf"),) * 3)
    chains = tuple(enumerated(free))

    def keeps(path: Path, demand: int) -> bool:
        if demand < 3:
            total = sum(item.loads[demand] for item in path.items if item is not None)
            return total <= problem.limits[demand]
        item = path.items[demand - 3]
        return item is not None and item.key.endswith("-0")

    def is_feasible(group: Group) -> bool:
        return any(all(keeps(path, demand) for demand in group) for path in chains)

    costs = [Random(seed + place).randint(1, 5) for place in range(6)]
    conflicts, corrections = split(ConflictEnumeration(tuple(range(6)), costs, is_feasible).found())
    if not chains:
        assert [one.members for one in conflicts] == [()]
        assert corrections == []
        return
    expected = by_all_subsets(6, is_feasible)
    assert ({frozenset(one.members) for one in conflicts}, {frozenset(one.given_up) for one in corrections}) == expected


def test_each_bound_ends_it_and_is_told() -> None:
    # three pairs that cannot be had: three conflicts, and one of each pair makes eight corrections
    pairs = [frozenset({0, 1}), frozenset({2, 3}), frozenset({4, 5})]

    def ended(bounds: EnumerationBounds) -> tuple[Ending | None, int, int]:
        enumeration = ConflictEnumeration(tuple(range(6)), [1] * 6, hiding(pairs), bounds)
        conflicts, corrections = split(enumeration.found())
        return enumeration.ending, len(conflicts), len(corrections)

    assert ended(EnumerationBounds()) == (Ending.COMPLETE, 3, 8)
    assert ended(EnumerationBounds(conflicts=2))[:2] == (Ending.CONFLICTS, 2)
    ending, _, corrections = ended(EnumerationBounds(corrections=5))
    assert (ending, corrections) == (Ending.CORRECTIONS, 5)
    assert ended(EnumerationBounds(questions=1)) == (Ending.QUESTIONS, 0, 0)
    asked = iter([False] * 9 + [True] * 99)
    assert ended(EnumerationBounds(out_of_time=lambda: next(asked)))[0] is Ending.TIME


class StopsAfter(Listener):
    def __init__(self, questions: int) -> None:
        self.left = questions

    def on_expand(self, expanded: int) -> None:
        self.left -= 1

    def should_stop(self) -> bool:
        return self.left <= 0


def test_a_listener_can_stop_it() -> None:
    enumeration = ConflictEnumeration(tuple(range(6)), [1] * 6, hiding([frozenset({0, 5})]), listener=StopsAfter(2))
    with pytest.raises(Cancelled):
        list(enumeration.found())


def test_a_question_that_ends_for_want_of_time_ends_the_enumeration() -> None:
    times = iter([False, True, True])

    def is_feasible(group: Group) -> bool:
        raise Cancelled

    bounds = EnumerationBounds(out_of_time=lambda: next(times))
    enumeration = ConflictEnumeration((0, 1), [1, 1], is_feasible, bounds)
    assert list(enumeration.found()) == []
    assert enumeration.ending is Ending.TIME


def test_a_question_stopped_by_another_stays_stopped() -> None:
    def is_feasible(group: Group) -> bool:
        raise Cancelled

    with pytest.raises(Cancelled):
        list(ConflictEnumeration((0, 1), [1, 1], is_feasible).found())


def test_what_is_known_is_not_asked_again() -> None:
    asked: list[Group] = []
    is_feasible = hiding([frozenset({1, 4}), frozenset({2, 3}), frozenset({4, 5, 6})])

    def asking(group: Group) -> bool:
        asked.append(group)
        return is_feasible(group)

    list(ConflictEnumeration(tuple(range(8)), [1] * 8, asking).found())
    assert len(asked) == len(set(asked))


@pytest.mark.parametrize("costs", [[1], [1, 0], [1, -2]])
def test_costs_that_are_none_are_refused(costs: list[int]) -> None:
    with pytest.raises(ValueError, match="cost"):
        ConflictEnumeration((0, 1), costs, hiding([]))
