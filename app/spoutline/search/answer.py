"""What a search answers: a chain or that there is none, and whether that is decided."""

from __future__ import annotations

import math
from collections.abc import Iterable
from enum import Enum, auto

from spoutline.frozen import frozen
from spoutline.search.effort import Exhausted
from spoutline.search.graph import Path


class Decision(Enum):
    """Whether an answer is proven, or the best that was found with the work that a question may take."""

    DECIDED = auto()
    UNDECIDED = auto()


@frozen
class PathAnswer:
    """The cheapest chain, or None where there is none; undecided, the best one found or None where none was.

    ``floor`` is a cost that no chain goes below; None where there is no chain, or where no such cost is known.
    """

    path: Path | None
    decision: Decision
    floor: int | None

    @staticmethod
    def decided(path: Path | None) -> PathAnswer:
        """Return a proven answer."""
        return PathAnswer(path, Decision.DECIDED, None if path is None else path.cost)

    @property
    def proven(self) -> Path | None:
        """The answer where it is proven.

        Raises
        ------
        Exhausted
            Where it is not.
        """
        if self.decision is Decision.UNDECIDED:
            raise Exhausted
        return self.path


def cheapest_of(answers: Iterable[PathAnswer], most_cost: float) -> PathAnswer:
    """Return the answer to several problems together, of chains that cost ``most_cost`` or less."""
    found = list(answers)
    paths = [one.path for one in found if one.path is not None and one.path.cost <= most_cost]
    best = min(paths, key=lambda path: (path.cost, path.keys), default=None)
    floors = [one.floor for one in found if one.decision is Decision.UNDECIDED]
    known = [floor for floor in floors if floor is not None]
    if len(known) == len(floors) and min(known, default=math.inf) >= (most_cost + 1 if best is None else best.cost):
        return PathAnswer.decided(best)  # what is open would come after it, or costs too much
    floor = min(known) if len(known) == len(floors) else None
    return PathAnswer(best, Decision.UNDECIDED, floor)


@frozen
class Count:
    """How many chains there are; undecided, how many there are at least."""

    number: int
    decision: Decision
