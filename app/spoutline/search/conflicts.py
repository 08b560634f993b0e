"""A minimal group of demands that cannot hold together, found by asking which can be dropped."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from typing import TypeVar

Demand = TypeVar("Demand", bound=Hashable)


def minimal_conflict(demands: Sequence[Demand], is_feasible: Callable[[frozenset[Demand]], bool]) -> tuple[Demand, ...]:
    """Return a conflict from which no member can be taken away.

    Dividing search (Junker's QuickXplain, AAAI 2004): few questions when the conflict is small beside the demands.
    Earlier demands are kept rather than later ones, so put first what a person can least change.

    Parameters
    ----------
    demands
        All demands in force, the hardest to change first.
    is_feasible
        Tells whether something satisfies exactly these demands; dropping demands never makes it false. Called
        about ``2 k log2(n / k)`` times for a conflict of ``k`` out of ``n``.

    Returns
    -------
    tuple
        Members in the order of ``demands``; empty when all demands together are feasible.
    """
    everything = tuple(demands)
    if is_feasible(frozenset(everything)):
        return ()
    if not everything or not is_feasible(frozenset()):
        return ()  # infeasible whatever is dropped: the demands are not to blame
    found = frozenset(_explained((), False, everything, is_feasible))
    return tuple(demand for demand in everything if demand in found)


# a function of its own: one inside that calls itself would be a circle, which keeps all that ``is_feasible`` holds, a
# whole search, until garbage is collected
def _explained(
    kept: tuple[Demand, ...],
    added: bool,
    open_demands: tuple[Demand, ...],
    is_feasible: Callable[[frozenset[Demand]], bool],
) -> tuple[Demand, ...]:
    if added and not is_feasible(frozenset(kept)):
        return ()
    if len(open_demands) == 1:
        return open_demands
    half = len(open_demands) // 2
    first, second = open_demands[:half], open_demands[half:]
    needed_of_second = _explained(kept + first, bool(first), second, is_feasible)
    needed_of_first = _explained(kept + needed_of_second, bool(needed_of_second), first, is_feasible)
    return needed_of_first + needed_of_second
