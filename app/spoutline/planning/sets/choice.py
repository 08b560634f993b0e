"""Which set: the cheapest that keeps every must, after as many shoulds as can be kept together."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import islice

from spoutline.frozen import frozen
from spoutline.model.check import Check, CheckId, Outcome
from spoutline.model.finding import Severity
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.requirement import RequirementId
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.loads import CHECK_LINES
from spoutline.planning.sets.set_query import Held, Promise, SetQuery
from spoutline.search.answer import Decision
from spoutline.search.effort import Exhausted
from spoutline.search.graph import Path
from spoutline.search.listener import Listener, Sparing

ALL_LINES = frozenset(RequirementId)
_PATIENCE = 60  # sets turned down one after another by a check that the search cannot bound
_MOST_OPEN = 3  # groups of lines given up that were left open, after which no other is asked about
_SPARED = 1 / 8  # of the work that a question may take, once one of a position has been left open
_Rank = tuple[int, int, tuple[PartRef, ...]]  # shoulds broken, price, parts


@frozen
class Choice:
    """The chosen set and the should-lines that had to be given up for any set to exist.

    ``floor`` is None where it is proven that no other set comes before it: else no set goes below that, lines given up
    counted among the shoulds.
    """

    judged: JudgedSet
    dropped: frozenset[RequirementId]
    floor: Promise | None = None


@dataclass(slots=True)
class _Asked:
    """What is known of the sets for which some lines are given up: whether the best was found, or that there is none.

    Of ``fewest_regrets`` it is known that no set breaks fewer should-rules of its parts.
    """

    is_answered: bool = False
    fewest_regrets: int = 0


class TurnedDown(Exhausted):
    """Full checks turned down so many sets in a row that no more are looked at: nothing is shown about the others."""


class Chooser:
    """Pulls sets from the search and keeps those whose full checks agree with the limits asked for.

    ``installed_keys`` are the parts of the search that stand for parts that hang there and may stay.
    """

    installed_keys: frozenset[PartRef] = frozenset()

    def __init__(self, search: ChainSearch, judge: SetJudge, listener: Listener | None = None) -> None:
        self.search = search
        self.judge = judge
        self.listener = listener
        self.looked_at = 0
        self.last_refused: JudgedSet | None = None  # by a full check, since a choice was last asked for
        self.turned_down = 0  # sets that the bounds let through and a full check did not
        self._open: dict[frozenset[RequirementId], Promise] = {}  # by lines given up: what no set goes below
        self._unshown: dict[frozenset[RequirementId], Promise] = {}  # the same where full checks turned many sets down

    def query(self, dropped: frozenset[RequirementId], holds: Held | None = None) -> SetQuery:
        """Return the query for every line, its should-limits on the ``dropped`` lines left out."""
        limits = self.search.model.set_limits
        kept = tuple(limit for limit in limits if limit.severity is Severity.MUST or limit.requirement not in dropped)
        return SetQuery(ALL_LINES, kept, holds=holds)

    def choose(self, holds: Held | None = None) -> Choice | None:
        """Return the set that breaks no must and the fewest shoulds, the cheapest of those; None without such a set.

        With ``holds``, only sets that hold that part count. Where some question takes too much work, the best set found
        is returned with what no set goes below.

        Should-limits on the whole set are few, so every group of them is a candidate to give up, smallest first, until
        it alone weighs more than the best found; broken should-rules of parts count one each.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        Exhausted
            If no set was found and it would take too much work to say that there is none.
        """
        limits = self.search.model.set_limits
        soft = sorted({limit.requirement for limit in limits if limit.severity is Severity.SHOULD})
        groups = [frozenset(group) for size in range(len(soft) + 1) for group in itertools.combinations(soft, size)]
        self.last_refused = None
        self._open.clear()
        self._unshown.clear()
        asked = {group: _Asked() for group in groups}
        best: tuple[_Rank, Choice] | None = None
        # sets that break a single should are soon looked through, and their price bounds all others
        for group, most in (*((one, 0) for one in groups[: len(soft) + 1]), *((one, None) for one in groups)):
            if best is not None and best[0][0] < len(group):
                break
            if holds is None and best is None and len(group) == 1 and not self._may_give_up(soft):
                break
            if len(self._open) >= _MOST_OPEN:
                self._open[group] = Promise(len(group), 0)
                break
            judged = self._better(group, asked[group], best and best[0], most, holds)
            if judged is None:
                continue
            rank = self._rank(judged.hanging_set, len(group))
            if best is None or rank < best[0]:
                best = rank, Choice(judged, group)
        return self._with_floor(best)

    def _with_floor(self, best: tuple[_Rank, Choice] | None) -> Choice | None:
        """Return the best choice with what no set goes below, where a set that was not found may come before it."""
        floor = min((*self._open.values(), *self._unshown.values()), default=None)
        if best is None:
            if floor is not None:
                raise Exhausted
            return None
        rank, choice = best
        return choice if floor is None or floor >= rank[:2] else replace(choice, floor=floor)

    def _leave_open(self, dropped: frozenset[RequirementId], floor: Promise) -> None:
        """Remember what is known of the sets for which some lines are given up, and spare work from now on."""
        self._open[dropped] = _promise_of(floor, dropped)
        self.spare_work()

    def spare_work(self) -> None:
        """Let further questions take a share of the work, since one was left open: the others mostly are as hard."""
        if not isinstance(self.listener, Sparing):
            self.listener = Sparing(self.listener or Listener(), _SPARED)

    def _better(
        self,
        dropped: frozenset[RequirementId],
        asked: _Asked,
        best: _Rank | None,
        most_regrets: int | None,
        holds: Held | None,
    ) -> JudgedSet | None:
        """Return the best accepted set with some lines given up, of those whose parts break so many shoulds at most.

        None where there is none, where it was returned before, or where it would come after the best one found.
        """
        query, most_price = self.query(dropped, holds), None
        if best is not None:
            left = best[0] - len(dropped)
            most_price = best[1] if most_regrets is None or left <= most_regrets else None
            most_regrets = left if most_regrets is None else min(left, most_regrets)
        if asked.is_answered or (most_regrets is not None and most_regrets < asked.fewest_regrets):
            return None
        if holds is not None and not self._may_improve(query, len(dropped), best):
            return None
        most = None if most_regrets is None else self.search.most_cost(query, most_regrets, most_price)
        query = replace(query, most_cost=most, fewest_regrets=asked.fewest_regrets)
        answer = self.search.answer(query, self.listener)
        found, self._open = answer.hanging_set, {one: it for one, it in self._open.items() if one != dropped}
        asked.is_answered = found is not None or most_regrets is None
        if answer.decision is Decision.UNDECIDED:
            self._leave_open(dropped, answer.promise)
        else:
            asked.fewest_regrets = (most_regrets or 0) + 1
        if found is None:
            return None
        try:
            return self._first_from(found, query, dropped)
        except TurnedDown:
            self._unshown[dropped] = _promise_of(answer.promise, dropped)
            return None
        except Exhausted:
            self._leave_open(dropped, answer.promise)
            return None

    def _may_give_up(self, lines: Iterable[RequirementId]) -> bool:
        """Say whether there may be a set with these lines given up, which is known at next to no cost."""
        return self.search.may_have_sets(self.query(frozenset(lines)))

    def _may_improve(self, query: SetQuery, given_up: int, best: _Rank | None) -> bool:
        """Say whether a set that holds the part of ``query`` may come before the best one found, by bounds alone."""
        promise = self.search.promise(query)
        if promise is None:
            return False
        return best is None or (given_up + promise.regrets, promise.price_minor) <= best[:2]

    def regrets_of(self, hanging_set: HangingSet) -> int:
        """Return how many should-rules the parts of a set break."""
        return sum(self.search.pool.regrets_of(link.slot, link.part.ref) for link in hanging_set.links)

    def _rank(self, hanging_set: HangingSet, given_up: int) -> _Rank:
        return given_up + self.regrets_of(hanging_set), hanging_set.price_minor, hanging_set.refs

    def first(self, query: SetQuery, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        """Return the best accepted set for ``query``.

        The quick search answers unless a full check turns its set down, which is rare; only then are the sets walked
        through in order, and only so far. A hose so nearly taut that its tension decides is the one known case: those
        that it turns down are left out of the walk. Raise ``Exhausted`` where it takes too much work to say, of which
        ``TurnedDown`` is the case that ``last_refused`` gives a reason for.
        """
        try:
            best = self.search.cheapest(query, self.listener)
            return None if best is None else self._first_from(best, query, dropped)
        except TurnedDown:
            raise
        except Exhausted:
            self.spare_work()
            raise

    def _first_from(self, best: HangingSet, query: SetQuery, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        """Return the best accepted set for ``query``, whose best one is known before full checks."""
        judged = self._accepted_or_none(best, dropped)
        if judged is not None:
            return judged
        if not _parts_in_use(self.judge.judged(best), dropped):
            return next(self.accepted(query, dropped), None)
        if query.holds is not None:
            return self._first_held(query, dropped)
        return next(self._accepted_of(self.search.sets_in_use(query, dropped, self.listener), dropped), None)

    def _first_held(self, query: SetQuery, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        """Return the first accepted set that holds the part of ``query``, as ``accepted`` does.

        Sets whose hose is known to part their breakaway are counted and not judged, but for the last. Where they are
        many, the others are looked for by a search of their own. Raise ``Exhausted`` where that does not tell.
        """
        unjudged: Path | None = None
        count = 0
        for path, may_hold in islice(self.search.held_in_use(query, dropped, self.listener), _PATIENCE):
            count += 1
            unjudged = None if may_hold else path
            judged = self._accepted_or_none(self.search.paths.hanging_set(path), dropped) if may_hold else None
            if judged is not None:
                return judged
        if unjudged is not None:
            # what is told where there is no set
            self._accepted_or_none(self.search.paths.hanging_set(unjudged), dropped)
        return self._held_after_many(query, dropped) if count == _PATIENCE else None

    def _held_after_many(self, query: SetQuery, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        """Return the first accepted set that holds the part of ``query``, those that hang too taut left out."""
        refused = self.last_refused
        for count, hanging_set in enumerate(self.search.held_sets_in_use(query, dropped, self.listener)):
            judged = self._accepted_or_none(hanging_set, dropped)
            if judged is not None:
                return judged
            if count >= _PATIENCE:
                raise Exhausted
        self.last_refused = refused
        return None

    def accepted_or_none(self, hanging_set: HangingSet, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        """Return a set that the search found with its checks; None where one of them forbids it."""
        return self._accepted_or_none(hanging_set, dropped)

    def _accepted_or_none(self, hanging_set: HangingSet, dropped: frozenset[RequirementId]) -> JudgedSet | None:
        self.looked_at += 1
        judged = self.judge.judged(hanging_set)
        if is_turned_down(judged, dropped):
            self.turned_down += 1
            self.last_refused = judged
            return None
        return judged

    def accepted(self, query: SetQuery, dropped: frozenset[RequirementId]) -> Iterator[JudgedSet]:
        """Yield the sets whose checks hold, in the order of the search.

        Raise ``TurnedDown`` where so many in a row are turned down that it would take too much work to go on.
        """
        yield from self._accepted_of(self.search.sets(query, self.listener), dropped)

    def _accepted_of(self, sets: Iterator[HangingSet], dropped: frozenset[RequirementId]) -> Iterator[JudgedSet]:
        refused = 0
        for hanging_set in sets:
            if refused >= _PATIENCE:
                raise TurnedDown
            judged = self._accepted_or_none(hanging_set, dropped)
            refused = refused + 1 if judged is None else 0
            if judged is not None:
                yield judged


def _promise_of(floor: Promise, dropped: frozenset[RequirementId]) -> Promise:
    """Return what no set goes below for which some lines are given up, these counted among the shoulds."""
    return Promise(floor.regrets + len(dropped), floor.price_minor)


def is_turned_down(judged: JudgedSet, dropped: frozenset[RequirementId]) -> bool:
    """Say whether a full check forbids a set that the search let through, the ``dropped`` should-lines given up."""
    return any(_turns_down(check, dropped) for check in judged.checks)


def _parts_in_use(judged: JudgedSet, dropped: frozenset[RequirementId]) -> bool:
    """Say whether the load in service turns a set down, which the search can only bound by the weight that hangs."""
    return any(check.id is CheckId.BREAKAWAY_SERVICE_LOAD and _turns_down(check, dropped) for check in judged.checks)


def _turns_down(check: Check, dropped: frozenset[RequirementId]) -> bool:
    """Say whether a check forbids the set: a must that fails or cannot be shown, or a should still in force."""
    if check.outcome in (Outcome.PASSES, Outcome.INFORMATION):
        return False
    if check.severity is Severity.MUST:
        return True
    line = CHECK_LINES.get(check.id)
    return check.severity is Severity.SHOULD and line is not None and line not in dropped
