"""All minimal conflicts among demands, and all minimal corrections, the cheapest of these first.

A minimal conflict cannot be met, and could once any member is dropped. A minimal correction is a group that, given up,
lets all the rest be met, and no part of which would do. Each conflict meets each correction, so that either are the
minimal hitting sets of the others (Reiter, Artificial Intelligence 32, 1987). Groups that nothing is known of are
asked, and each answer settles all groups above or below (MARCO: Liffiton, Previti, Malik, Marques-Silva, Constraints
21, 2016); the cheapest to come by is asked first, so that corrections come in the order of their costs.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import dataclass, field
from enum import Enum, auto
from typing import Generic, TypeVar

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled, Undecided
from spoutline.search.conflicts import minimal_conflict
from spoutline.search.listener import Listener
from spoutline.search.unknown_groups import UnknownGroups, places_of

Demand = TypeVar("Demand", bound=Hashable)


class Ending(Enum):
    """Why an enumeration came to its end."""

    COMPLETE = auto()  # there are no others
    CONFLICTS = auto()  # as many as were asked for
    CORRECTIONS = auto()
    QUESTIONS = auto()  # as many as may be asked
    TIME = auto()
    UNDECIDED = auto()  # a question takes more work than one may


@frozen
class EnumerationBounds:
    """Where an enumeration ends although there may be more; None for no bound.

    ``out_of_time`` is looked at before each question, and where a question ends in ``Cancelled``.
    """

    conflicts: int | None = None
    corrections: int | None = None
    questions: int | None = None
    out_of_time: Callable[[], bool] | None = None


@frozen
class MinimalConflict(Generic[Demand]):
    """Demands that cannot be met together, in the order of all demands; none where nothing can be met at all."""

    members: tuple[Demand, ...]


@frozen
class MinimalCorrection(Generic[Demand]):
    """Demands to give up, in the order of all demands, and what they cost together."""

    given_up: tuple[Demand, ...]
    cost: int


class _Ended(Exception):
    """A bound was reached in the middle of a question."""

    def __init__(self, ending: Ending) -> None:
        super().__init__(ending)
        self.ending = ending


@dataclass
class ConflictEnumeration(Generic[Demand]):
    """Finds conflicts and corrections of ``demands``.

    Parameters
    ----------
    demands
        All different, the hardest to change first: where a choice is left, a conflict names earlier ones.
    costs
        What giving up each costs, above 0, in the same order.
    is_feasible
        Tells whether something meets exactly these demands; dropping demands never makes it false.
    bounds
        Where to end.
    listener
        May end the enumeration; told how many questions were asked.
    """

    demands: Sequence[Demand]
    costs: Sequence[int]
    is_feasible: Callable[[frozenset[Demand]], bool]
    bounds: EnumerationBounds = field(default_factory=EnumerationBounds)
    listener: Listener = field(default_factory=Listener)
    ending: Ending | None = None
    questions: int = 0

    def __post_init__(self) -> None:
        """Refuse costs that are no costs."""
        if len(self.costs) != len(self.demands) or len(set(self.demands)) != len(self.demands):
            raise ValueError("demands must be all different, with a cost for each")
        if any(cost <= 0 for cost in self.costs):
            raise ValueError("giving up a demand must cost something")
        self._place = {demand: place for place, demand in enumerate(self.demands)}
        self._all = (1 << len(self.demands)) - 1
        self._met: list[int] = []  # groups known to be met, none inside another
        self._unmet: list[int] = []  # groups known not to be met, none around another

    def found(self) -> Iterator[MinimalConflict[Demand] | MinimalCorrection[Demand]]:
        """Yield conflicts and corrections as they are found; ``ending`` says afterwards why there were no more.

        Nothing where all demands can be met together.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        unknown = UnknownGroups(self.costs)
        try:
            while True:
                given_up = unknown.cheapest()
                if given_up is None:
                    self.ending = Ending.COMPLETE
                    return
                kept = self._all & ~given_up
                if self._is_met(kept):
                    if not given_up:
                        self.ending = Ending.COMPLETE
                        return
                    unknown.corrections.append(given_up)
                    yield MinimalCorrection(self._named(given_up), sum(self.costs[one] for one in places_of(given_up)))
                    self._end_at(len(unknown.corrections), self.bounds.corrections, Ending.CORRECTIONS)
                    continue
                members = self._shrunk(kept)
                unknown.conflicts.append(members)
                yield MinimalConflict(self._named(members))
                self._end_at(len(unknown.conflicts), self.bounds.conflicts, Ending.CONFLICTS)
        except _Ended as ended:
            self.ending = ended.ending

    def _end_at(self, count: int, bound: int | None, ending: Ending) -> None:
        if bound is not None and count >= bound:
            raise _Ended(ending)

    def _shrunk(self, kept: int) -> int:
        members = minimal_conflict(self._named(kept), lambda group: self._is_met(self._bits(group)))
        return self._bits(members)

    def _is_met(self, group: int) -> bool:
        """Return whether a group can be met; from what is known where that says so, by a question otherwise."""
        if any(group & ~met == 0 for met in self._met):
            return True
        if any(unmet & ~group == 0 for unmet in self._unmet):
            return False
        answer = self._asked(group)
        if answer:
            self._met = [*(one for one in self._met if one & ~group), group]
        else:
            self._unmet = [*(one for one in self._unmet if group & ~one), group]
        return answer

    def _asked(self, group: int) -> bool:
        if self.listener.should_stop():
            raise Cancelled
        if self.bounds.out_of_time is not None and self.bounds.out_of_time():
            raise _Ended(Ending.TIME)
        self._end_at(self.questions, self.bounds.questions, Ending.QUESTIONS)
        self.questions += 1
        self.listener.on_expand(self.questions)
        try:
            return self.is_feasible(frozenset(self._named(group)))
        except Undecided:
            raise _Ended(Ending.UNDECIDED) from None
        except Cancelled:
            if self.listener.should_stop() or self.bounds.out_of_time is None or not self.bounds.out_of_time():
                raise
            raise _Ended(Ending.TIME) from None

    def _named(self, group: int) -> tuple[Demand, ...]:
        return tuple(self.demands[place] for place in places_of(group))

    def _bits(self, group: frozenset[Demand] | tuple[Demand, ...]) -> int:
        bits = 0
        for demand in group:
            bits |= 1 << self._place[demand]
        return bits
