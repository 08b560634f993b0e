"""Groups of demands of which nothing is known yet, the cheapest to come by first."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field


@dataclass
class UnknownGroups:
    """What conflicts and corrections leave open; groups of demands are bits, by the place of each demand.

    A conflict settles every group that holds all of it, a correction every group that holds nothing of it.

    Parameters
    ----------
    costs
        What giving up each demand costs, above 0.
    """

    costs: Sequence[int]
    conflicts: list[int] = field(default_factory=list)
    corrections: list[int] = field(default_factory=list)
    _best: tuple[int, int] | None = None  # cost, given up

    def cheapest(self) -> int | None:
        """Return what to give up, at the least cost, to come to a group of which nothing is known; None for none.

        What is given up meets every conflict and holds no correction. Branch and bound over the members of conflicts;
        the same conflicts and corrections in the same order give the same answer.
        """
        self._best = None
        self._try(0, 0, 0)
        return None if self._best is None else self._best[1]

    def _try(self, given_up: int, kept: int, cost: int) -> None:
        """Look for a better choice that gives up these demands and keeps those."""
        if any(correction & ~given_up == 0 for correction in self.corrections):
            return
        if self._best is not None and cost + self._floor(given_up, kept) >= self._best[0]:
            return
        unmet = [conflict & ~kept for conflict in self.conflicts if not conflict & given_up]
        if not unmet:
            self._best = cost, given_up
            return
        fewest = min(unmet, key=lambda members: (members.bit_count(), members))
        for place in sorted(places_of(fewest), key=lambda one: (self.costs[one], one)):
            self._try(given_up | 1 << place, kept, cost + self.costs[place])
            kept |= 1 << place

    def _floor(self, given_up: int, kept: int) -> int:
        """Return what is at least still to be given up: conflicts without a common member cost one member each."""
        floor, seen = 0, 0
        for conflict in self.conflicts:
            members = conflict & ~kept
            if conflict & given_up or members & seen:
                continue
            seen |= members
            floor += min((self.costs[place] for place in places_of(members)), default=0)
        return floor


def places_of(members: int) -> Iterator[int]:
    """Yield the places of the bits that are set, the lowest first."""
    while members:
        lowest = members & -members
        yield lowest.bit_length() - 1
        members ^= lowest
