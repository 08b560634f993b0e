"""Plans kept by what was asked: those of the survey in hand all stay, of the others only so many bytes."""

from __future__ import annotations

import pickle
from collections.abc import Collection
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.plan import Conflict
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Position, Site
from spoutline.planning.sets.relabel import relabelled_stage, same_question, same_site

MOST_BYTES = 32 * 2**20
SET_BYTES = 80_000  # about what a set with its checks takes, until the whole plan is weighed
_TROUBLE_BYTES = 1_000  # a sentence in place of a plan


class Together:
    """Positions whose sets depend on each other; none where each position has its own.

    The window looks for the plan of every position after every plan that comes. So what is asked is made comparable
    once: a model of pydantic works its hash out anew each time, and a station of a thousand positions has a thousand.
    """

    __slots__ = ("_hash", "_question", "positions")

    def __init__(self, positions: tuple[Position, ...] = ()) -> None:
        self.positions, self._hash = positions, hash(positions)
        self._question: Together | None = None

    @property
    def question(self) -> Together:
        """The same positions without the names of things."""
        if self._question is None:
            self._question = Together(tuple(map(same_question, self.positions)))
        return self._question

    def __hash__(self) -> int:
        return self._hash

    def __eq__(self, other: object) -> bool:
        return self is other or (
            isinstance(other, Together) and self._hash == other._hash and self.positions == other.positions
        )


ALONE = Together()


class PlanKey:
    """What the plan of a position depends on, with the positions on whose sets its set depends.

    Keys that were found equal share a token, so that models are compared once: what was read from the book anew is
    looked for under every key of before.
    """

    __slots__ = ("_hash", "_question", "_token", "position", "site", "together")

    def __init__(self, site: Site, position: Position, together: Together = ALONE) -> None:
        self.site, self.position, self.together = site, position, together
        self._hash = hash((site, position, together))
        self._token = object()
        self._question: PlanKey | None = None

    @property
    def question(self) -> PlanKey:
        """What is asked, whoever asks it: equal ones have the same plan under another label."""
        if self._question is None:
            self._question = PlanKey(same_site(self.site), same_question(self.position), self.together.question)
        return self._question

    def __hash__(self) -> int:
        return self._hash

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, PlanKey) or self._hash != other._hash:
            return False
        if self._token is other._token:
            return True
        is_equal = self.position == other.position and self.site == other.site and self.together == other.together
        if is_equal:
            self._token = other._token
        return is_equal


def weight_of(staged: StagedPlan) -> int:
    """Return about how many bytes a plan takes: as many as its pickle, which is within a factor of three."""
    return len(pickle.dumps(staged, protocol=pickle.HIGHEST_PROTOCOL))


@frozen
class _Kept:
    result: StagedPlan | str
    weight: int


class KeptPlans:
    """What is known of plans, or why there is none, by what was asked; positions that ask the same share it.

    Plans of former answers are what undo shows at once; where they take more than ``most_bytes`` the oldest go.
    """

    def __init__(self, most_bytes: int = MOST_BYTES) -> None:
        self._most_bytes = most_bytes
        self._kept: dict[PlanKey, _Kept] = {}
        self._askers: dict[PlanKey, PlanKey] = {}  # by the question alone, one who asked it
        self.weight = 0

    def __len__(self) -> int:
        return len(self._kept)

    def result(self, key: PlanKey) -> StagedPlan | str | None:
        """Return what is known of the plan, why there is none, or None where nobody has looked yet."""
        kept = self._kept.get(key)
        return kept.result if kept is not None else None

    def shared(self, key: PlanKey) -> StagedPlan | None:
        """Return what another position that asks the same knows, under the label of this one, and keep it."""
        asker = self._askers.get(key.question)
        kept = self._kept.get(asker) if asker is not None else None
        if kept is None or not isinstance(kept.result, StagedPlan) or asker == key:
            return None
        return self.keep(key, relabelled_stage(kept.result, key.position), kept.weight)

    def keep(self, key: PlanKey, staged: StagedPlan, weight: int = SET_BYTES) -> StagedPlan:
        """Keep what was found for a position, with about how many bytes it takes; return it as it is kept.

        What was known before stays the very same value, so that nobody who shows it need look again.
        """
        known = self.result(key)
        now = staged if not isinstance(known, StagedPlan) else _grown(known, staged)
        self._put(key, _Kept(now, weight))
        question = key.question
        asker = self.result(self._askers.get(question, key))
        if not isinstance(asker, StagedPlan) or now.is_whole or not asker.is_whole:
            self._askers[question] = key
        return now

    def keep_trouble(self, key: PlanKey, trouble: str) -> None:
        """Keep why a position cannot be planned."""
        self._put(key, _Kept(trouble, _TROUBLE_BYTES))

    def forget(self, key: PlanKey) -> None:
        """Keep nothing of a question, whoever asked it."""
        asked = key.question
        for one in tuple(self._kept):
            if one.question == asked:
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

    def _put(self, key: PlanKey, kept: _Kept) -> None:
        self._drop(key)
        self._kept[key] = kept
        self.weight += kept.weight

    def _drop(self, key: PlanKey) -> None:
        kept = self._kept.pop(key, None)
        if kept is None:
            return
        self.weight -= kept.weight
        question = key.question
        if self._askers.get(question) == key:
            del self._askers[question]


def _grown(known: StagedPlan, more: StagedPlan) -> StagedPlan:
    """Return what both say of the same question, the values of ``known`` where it has them."""
    is_listed = known.alternatives is not None or more.alternatives is not None
    begun = known if len(known.sought) < len(more.sought) else more
    return replace(
        more,
        plan=known.plan if known.is_explained or not more.is_explained else more.plan,
        is_explained=known.is_explained or more.is_explained,
        obstacle=None if known.is_explained or more.is_explained else _with_more_ways(known.obstacle, more.obstacle),
        counts=more.counts if known.counts is None else known.counts,
        alternatives=more.alternatives if known.alternatives is None else known.alternatives,
        found=() if is_listed else begun.found,
        sought=() if is_listed else begun.sought,
    )


def _with_more_ways(known: Conflict | None, more: Conflict | None) -> Conflict | None:
    """Return what tells more ways out: whoever looks anew begins without those that are in view already."""
    if known is None or more is None:
        return more or known
    return known if len(known.relaxations) > len(more.relaxations) else more
