"""Plans kept by what was asked: those of the survey in hand all stay, of the others only so many bytes."""

from __future__ import annotations

import pickle
from collections.abc import Collection
from dataclasses import dataclass

from spoutline.model.plan import PositionPlan
from spoutline.model.survey import Position, Site
from spoutline.planning.sets.relabel import relabelled, same_question, same_site

MOST_BYTES = 32 * 2**20
_TROUBLE_BYTES = 1_000  # a sentence in place of a plan
PlanKey = tuple[Site, Position]


def weight_of(plan: PositionPlan) -> int:
    """Return about how many bytes a plan takes: as many as its pickle, which is within a factor of three."""
    return len(pickle.dumps(plan, protocol=pickle.HIGHEST_PROTOCOL))


@dataclass(frozen=True, slots=True)
class _Kept:
    result: PositionPlan | str
    weight: int


class KeptPlans:
    """Plans, or why there is none, by site and position; positions that ask the same share one.

    Plans of former answers are what undo shows at once; where they take more than ``most_bytes`` the oldest go.
    """

    def __init__(self, most_bytes: int = MOST_BYTES) -> None:
        self._most_bytes = most_bytes
        self._kept: dict[PlanKey, _Kept] = {}
        self._askers: dict[PlanKey, PlanKey] = {}  # by the question alone, one who asked it
        self.weight = 0

    def __len__(self) -> int:
        return len(self._kept)

    def result(self, key: PlanKey) -> PositionPlan | str | None:
        """Return the plan, why there is none, or None where nobody has looked yet."""
        kept = self._kept.get(key)
        return kept.result if kept is not None else None

    def shared(self, key: PlanKey) -> PositionPlan | None:
        """Return the plan of another position that asks the same, under the label of this one, and keep it."""
        asker = self._askers.get(_question(key))
        kept = self._kept.get(asker) if asker is not None else None
        if kept is None or not isinstance(kept.result, PositionPlan):
            return None
        plan = relabelled(kept.result, key[1])
        self.keep(key, plan, kept.weight)
        return plan

    def keep(self, key: PlanKey, result: PositionPlan | str, weight: int = _TROUBLE_BYTES) -> None:
        """Keep what was found for a position, with about how many bytes it takes."""
        self._drop(key)
        self._kept[key] = _Kept(result, weight)
        self.weight += weight
        if isinstance(result, PositionPlan):
            self._askers[_question(key)] = key

    def forget(self, key: PlanKey) -> None:
        """Keep nothing of a question, whoever asked it."""
        asked = _question(key)
        for one in tuple(self._kept):
            if _question(one) == asked:
                self._drop(one)

    def shorten(self, in_use: Collection[PlanKey]) -> None:
        """Let the oldest go until the bound is kept; what is in use stays, whatever it takes."""
        if self.weight <= self._most_bytes:
            return
        used = set(in_use)
        for key in tuple(self._kept):
            if self.weight <= self._most_bytes:
                return
            if key not in used:
                self._drop(key)

    def clear(self) -> None:
        """Keep nothing."""
        self._kept.clear()
        self._askers.clear()
        self.weight = 0

    def _drop(self, key: PlanKey) -> None:
        kept = self._kept.pop(key, None)
        if kept is None:
            return
        self.weight -= kept.weight
        question = _question(key)
        if self._askers.get(question) == key:
            del self._askers[question]


def _question(key: PlanKey) -> PlanKey:
    return same_site(key[0]), same_question(key[1])
