"""Which dispensers are worked on together: the fewest phases that keep the station selling."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from spoutline.frozen import frozen

_MOST_DISPENSERS = 200  # the exact search goes one level deep for each dispenser
_MOST_NODES = 50_000  # beyond this the fewest number is no longer proved, and the plan says so


@frozen(kw_only=True)
class DispenserLoad:
    """A dispenser and how many positions of each grade go out of service with it."""

    name: str
    grades: Mapping[str, int]


@frozen(kw_only=True)
class Overload:
    """A dispenser that alone takes more of a grade out of service than allowed; ``least_share`` would allow it."""

    dispenser: str
    grade: str
    least_share: float


@frozen(kw_only=True)
class Grouping:
    """Phases in the order of the survey; ``proved`` where no smaller number of phases exists."""

    phases: tuple[tuple[str, ...], ...]
    overloads: tuple[Overload, ...]
    proved: bool


def grouped(
    loads: Sequence[DispenserLoad], positions_of_grade: Mapping[str, int], *, most_share: float, crews: int
) -> Grouping:
    """Return the fewest phases such that no phase takes more than ``most_share`` of a grade out of service.

    Parameters
    ----------
    loads
        The dispensers that are worked on.
    positions_of_grade
        Positions of each grade on the whole site.
    most_share
        Greatest share of a grade out of service, above 0 to 1.
    crews
        Crews: no more dispensers are opened at a time, since an open dispenser without a crew only loses sales.
    """
    most = {grade: math.floor(most_share * count + 1e-9) for grade, count in positions_of_grade.items()}
    overloads = tuple(
        Overload(dispenser=load.name, grade=grade, least_share=count / positions_of_grade[grade])
        for load in loads
        for grade, count in load.grades.items()
        if count > most[grade]
    )
    alone = {overload.dispenser for overload in overloads}
    free = [load for load in loads if load.name not in alone]
    packer = _Packer(free, most, crews)
    packed, proved = packer.fewest()
    order = {load.name: place for place, load in enumerate(loads)}
    phases = [*packed, *([name] for name in order if name in alone)]
    ordered = sorted((tuple(sorted(phase, key=order.__getitem__)) for phase in phases), key=lambda one: order[one[0]])
    return Grouping(phases=tuple(ordered), overloads=overloads, proved=proved)


@dataclass
class _Bin:
    names: list[str] = field(default_factory=list)
    used: Counter[str] = field(default_factory=Counter)


class _Packer:
    """Packs dispensers into phases: first fit of the largest first, then a bounded exact search."""

    def __init__(self, loads: Iterable[DispenserLoad], most: Mapping[str, int], crews: int) -> None:
        self.most = most
        self.crews = crews
        self.loads = sorted(loads, key=lambda load: -self._size(load))
        self._nodes = 0

    def fewest(self) -> tuple[list[list[str]], bool]:
        """Return the phases and whether their number is proved to be the least."""
        best = self._first_fit()
        bound = self._least_possible()
        while len(best) > bound:
            if len(self.loads) > _MOST_DISPENSERS:
                return best, False
            self._nodes = 0
            better = self._pack(0, [], len(best) - 1)
            if better is None:
                return best, self._nodes <= _MOST_NODES
            best = better
        return best, True

    def _size(self, load: DispenserLoad) -> float:
        return max((count / self.most[grade] for grade, count in load.grades.items() if count), default=0.0)

    def _least_possible(self) -> int:
        totals: Counter[str] = Counter()
        for load in self.loads:
            totals.update(load.grades)
        by_grade = (math.ceil(count / self.most[grade]) for grade, count in totals.items() if count)
        return max(*by_grade, math.ceil(len(self.loads) / self.crews), 0, 0)

    def _fits(self, load: DispenserLoad, place: _Bin) -> bool:
        return len(place.names) < self.crews and all(
            place.used[grade] + count <= self.most[grade] for grade, count in load.grades.items()
        )

    def _first_fit(self) -> list[list[str]]:
        bins: list[_Bin] = []
        for load in self.loads:
            place = next((one for one in bins if self._fits(load, one)), None)
            if place is None:
                place = _Bin()
                bins.append(place)
            place.names.append(load.name)
            place.used.update(load.grades)
        return [one.names for one in bins]

    def _pack(self, index: int, bins: list[_Bin], most_bins: int) -> list[list[str]] | None:
        """Place the dispensers from ``index`` on into at most ``most_bins`` phases; None where that fails."""
        if index == len(self.loads):
            return [list(one.names) for one in bins]
        self._nodes += 1
        if self._nodes > _MOST_NODES:
            return None
        load = self.loads[index]
        tried: set[tuple[int, tuple[tuple[str, int], ...]]] = set()
        for place in bins:
            state = (len(place.names), tuple(sorted(place.used.items())))
            if state in tried or not self._fits(load, place):
                continue
            tried.add(state)
            place.names.append(load.name)
            place.used.update(load.grades)
            found = self._pack(index + 1, bins, most_bins)
            if found is not None:
                return found
            place.names.pop()
            place.used.subtract(load.grades)
        if len(bins) < most_bins:
            bins.append(_Bin([load.name], Counter(load.grades)))
            found = self._pack(index + 1, bins, most_bins)
            if found is not None:
                return found
            bins.pop()
        return None
