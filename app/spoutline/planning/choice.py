"""Which set: the cheapest that keeps every must, after as many shoulds as can be kept together."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from dataclasses import dataclass

from spoutline.model.check import Check, Outcome
from spoutline.model.finding import Severity
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.requirement import RequirementId
from spoutline.planning.assembly import ChainSearch, Wish
from spoutline.planning.judgement import SetJudge
from spoutline.planning.loads import CHECK_LINES
from spoutline.search.listener import Listener

ALL_LINES = frozenset(RequirementId)


@dataclass(frozen=True, slots=True)
class Choice:
    """The chosen set and the should-lines that had to be given up for any set to exist."""

    judged: JudgedSet
    dropped: frozenset[RequirementId]


class Chooser:
    """Pulls sets from the search and keeps those whose full checks agree with the limits asked for."""

    def __init__(self, search: ChainSearch, judge: SetJudge, listener: Listener | None = None) -> None:
        self.search = search
        self.judge = judge
        self.listener = listener
        self.looked_at = 0
        self.turned_down = 0  # sets that the bounds let through and a full check did not

    def wish(self, dropped: frozenset[RequirementId]) -> Wish:
        """Return the wish for every line, its should-limits on the ``dropped`` lines left out."""
        limits = self.search.model.set_limits
        kept = tuple(limit for limit in limits if limit.severity is Severity.MUST or limit.requirement not in dropped)
        return Wish(ALL_LINES, kept)

    def choose(self) -> Choice | None:
        """Return the cheapest set that breaks no must and the fewest should-lines; None where no set keeps the musts.

        Should-limits on the whole set are few, so the groups to give up are tried smallest first; broken should-rules
        on single parts are weighed within each search.
        """
        soft = sorted(
            {limit.requirement for limit in self.search.model.set_limits if limit.severity is Severity.SHOULD}
        )
        for size in range(len(soft) + 1):
            found = [
                Choice(judged, frozenset(group))
                for group in itertools.combinations(soft, size)
                if (judged := self.first(self.wish(frozenset(group)), frozenset(group))) is not None
            ]
            if found:
                return min(found, key=lambda choice: self._rank(choice.judged.hanging_set))
        return None

    def _rank(self, hanging_set: HangingSet) -> tuple[int, int, tuple[str, ...]]:
        regrets = {
            (candidate.slot, candidate.part.number): candidate.regrets
            for judged in self.search.pool.slots.values()
            for candidate in judged
        }
        count = sum(regrets[link.slot, link.part.number] for link in hanging_set.links)
        return count, hanging_set.price_minor, hanging_set.numbers

    def first(self, wish: Wish, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        """Return the best accepted set for ``wish``.

        The quick search answers unless a full check turns its set down, which is rare; only then are the sets walked
        through in order.
        """
        best = self.search.cheapest(wish, self.listener)
        if best is None:
            return None
        judged = self._accepted_or_none(best, dropped)
        return judged if judged is not None else next(self.accepted(wish, dropped), None)

    def _accepted_or_none(self, hanging_set: HangingSet, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        self.looked_at += 1
        judged = self.judge.judged(hanging_set)
        if is_turned_down(judged, dropped):
            self.turned_down += 1
            return None
        return judged

    def accepted(self, wish: Wish, dropped: frozenset[RequirementId]) -> Iterator[JudgedSet]:
        """Yield the sets whose checks hold, in the order of the search."""
        for hanging_set in self.search.sets(wish, self.listener):
            judged = self._accepted_or_none(hanging_set, dropped)
            if judged is not None:
                yield judged


def is_turned_down(judged: JudgedSet, dropped: frozenset[RequirementId]) -> bool:
    """Say whether a full check forbids a set that the search let through, the ``dropped`` should-lines given up."""
    return any(_turns_down(check, dropped) for check in judged.checks)


def _turns_down(check: Check, dropped: frozenset[RequirementId]) -> bool:
    """Say whether a check forbids the set: a must that fails or cannot be shown, or a should still in force."""
    if check.outcome in (Outcome.PASSES, Outcome.INFORMATION):
        return False
    if check.severity is Severity.MUST:
        return True
    line = CHECK_LINES.get(check.id)
    return check.severity is Severity.SHOULD and line is not None and line not in dropped
