"""Which set is chosen among those that a search offers: fewest broken shoulds, of sets and parts alike, then price.

The search is a table written by hand, so each expectation can be read off it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from types import SimpleNamespace
from typing import Any, cast

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.model.check import CheckId, Outcome
from spoutline.model.finding import Severity
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.choice import Chooser
from spoutline.planning.sets.loads import Load, SetLimit
from spoutline.planning.sets.set_query import REGRET, Held, Promise, SetAnswer, SetQuery
from spoutline.search.answer import Decision
from spoutline.search.effort import Exhausted

LINES = (RequirementId.REACH, RequirementId.FLOW, RequirementId.GROUND_CLEARANCE)
HELD = Held(Slot.NOZZLE, PartRef("any"))
MAJOR = 10**9  # a broken should-rule of a part, as the table counts


@dataclass(frozen=True)
class Offer:
    """A set of one nozzle that breaks so many should-rules of parts, and some should-lines of the whole set.

    A full check may turn it down all the same.
    """

    number: str
    regrets: int
    price_minor: int
    breaks: frozenset[RequirementId] = frozenset()
    is_turned_down: bool = False

    @property
    def hanging_set(self) -> HangingSet:
        part = SimpleNamespace(number=self.number, ref=PartRef(self.number))
        link = cast("Any", SimpleNamespace(slot=Slot.NOZZLE, part=part))
        return HangingSet(links=(link,), price_minor=self.price_minor, currency="USD")

    @property
    def cost(self) -> int:
        return self.regrets * MAJOR + self.price_minor

    @property
    def rank(self) -> tuple[int, int, str]:
        return len(self.breaks) + self.regrets, self.price_minor, self.number


def should_limit(line: RequirementId) -> SetLimit:
    return SetLimit(Load.REACH, line, Severity.SHOULD, 1.0, Dimension.LENGTH)


@dataclass
class Table:
    """Offers sets in the order of a search: fewest broken rules of parts, then price, then number."""

    offers: tuple[Offer, ...]
    lines: tuple[RequirementId, ...] = LINES[:1]
    model: SimpleNamespace = field(init=False)

    def __post_init__(self) -> None:
        self.model = SimpleNamespace(set_limits=tuple(map(should_limit, self.lines)))

    def found(self, query: SetQuery) -> list[Offer]:
        kept = {limit.requirement for limit in query.limits}
        found = [one for one in self.offers if not one.breaks & kept]
        assert all(one.regrets >= query.fewest_regrets for one in found), "it is not known"
        return sorted(found, key=lambda one: (one.cost, one.number))

    def cheapest(self, query: SetQuery, _listener: object) -> HangingSet | None:
        allowed = [one for one in self.found(query) if query.most_cost is None or one.cost <= query.most_cost]
        return allowed[0].hanging_set if allowed else None

    def answer(self, query: SetQuery, listener: object) -> SetAnswer:
        best = self.cheapest(query, listener)
        return SetAnswer(best, Decision.DECIDED, None)

    def sets(self, query: SetQuery, _listener: object) -> Iterator[HangingSet]:
        yield from (one.hanging_set for one in self.found(query))

    def most_cost(self, _query: SetQuery, most_regrets: int, most: float | None = None) -> int:
        return most_regrets * MAJOR + (MAJOR // 2 if most is None else int(most))

    def may_have_sets(self, query: SetQuery) -> bool:
        return bool(self.found(query))

    def promise(self, query: SetQuery) -> Promise | None:
        return next((Promise(one.regrets, one.price_minor) for one in self.found(query)), None)

    @property
    def pool(self) -> SimpleNamespace:
        broken = {PartRef(one.number): one.regrets for one in self.offers}
        return SimpleNamespace(regrets_of=lambda _slot, ref: broken[ref])

    def judged(self, found: HangingSet) -> Any:
        (offer,) = (one for one in self.offers if one.number == found.numbers[0])
        failed = SimpleNamespace(id=CheckId.HOSE_REACH, severity=Severity.MUST, outcome=Outcome.FAILS)
        return SimpleNamespace(hanging_set=found, checks=(failed,) if offer.is_turned_down else ())


@dataclass
class Hazy(Table):
    """Leaves questions open by turns: a bound that lies below the best by some, and a set that is not the best."""

    seed: int = 0
    open_questions: int = field(default=0, init=False)

    def answer(self, query: SetQuery, listener: object) -> SetAnswer:
        self.seed, is_open = divmod(self.seed, 2)
        if not is_open:
            return super().answer(query, listener)
        self.open_questions += 1
        self.seed, below = divmod(self.seed, 3)
        self.seed, shown = divmod(self.seed, 2)
        allowed = [one for one in self.found(query) if query.most_cost is None or one.cost <= query.most_cost]
        floor = min((one.regrets * REGRET + one.price_minor for one in allowed), default=0) - below
        return SetAnswer(allowed[-1].hanging_set if allowed and shown else None, Decision.UNDECIDED, floor)


def chosen(table: Table, holds: Held | None) -> str | None:
    choice = Chooser(cast("Any", table), cast("Any", table)).choose(holds)
    return choice.judged.hanging_set.numbers[0] if choice else None


offers = st.builds(
    Offer,
    number=st.just(""),
    regrets=st.integers(0, 3),
    price_minor=st.integers(1, 4),
    breaks=st.frozensets(st.sampled_from(LINES)),
    is_turned_down=st.booleans(),
)


@given(st.lists(offers, max_size=8), st.sampled_from([None, HELD]))
def test_of_all_sets_the_first_is_chosen_that_full_checks_let_through(some: list[Offer], holds: Held | None) -> None:
    """Held against all sets in a row: those turned down left out, by all broken shoulds, price and number."""
    numbered = tuple(replace(one, number=f"N{place}") for place, one in enumerate(some))
    wanted = min((one for one in numbered if not one.is_turned_down), key=lambda one: one.rank, default=None)
    assert chosen(Table(numbered, LINES), holds) == (wanted and wanted.number)


@pytest.mark.parametrize("holds", [None, HELD], ids=["any set", "sets that hold a part"])
@pytest.mark.parametrize(
    ("keeping", "giving_up", "best"),
    [
        (Offer("K", 0, 900), Offer("G", 0, 100), "K"),  # none broken comes before one broken, whatever the price
        (Offer("K", 1, 900), Offer("G", 0, 100), "G"),  # one broken each: the price decides
        (Offer("K", 1, 100), Offer("G", 0, 900), "K"),
        (Offer("K", 2, 100), Offer("G", 0, 900), "G"),  # two rules of parts weigh more than one line of the set
        (Offer("K", 1, 500), Offer("G", 0, 500), "G"),  # all alike: the part number decides
        (Offer("K", 1, 500), Offer("L", 0, 500), "K"),
        (None, Offer("G", 3, 500), "G"),
        (None, None, None),
    ],
)
def test_shoulds_of_set_and_parts_weigh_alike_then_price_then_number(
    keeping: Offer | None, giving_up: Offer | None, best: str | None, holds: Held | None
) -> None:
    reach = frozenset(LINES[:1])
    dropped = giving_up and replace(giving_up, breaks=reach)
    assert chosen(Table(tuple(one for one in (keeping, dropped) if one)), holds) == best


@given(st.lists(offers, max_size=6), st.integers(0, 2**40))
def test_what_was_left_open_is_told_with_a_floor_that_no_set_goes_below(some: list[Offer], seed: int) -> None:
    """Held against all sets: what is chosen is never called the best where it is not, nor said to be missing."""
    numbered = tuple(replace(one, number=f"N{place}") for place, one in enumerate(some))
    wanted = min((one for one in numbered if not one.is_turned_down), key=lambda one: one.rank, default=None)
    table = Hazy(numbered, LINES, seed=seed)
    try:
        choice = Chooser(cast("Any", table), cast("Any", table)).choose()
    except Exhausted:
        assert table.open_questions
        return
    if choice is None:
        assert wanted is None
        return
    assert wanted is not None
    found = next(one for one in numbered if one.number == choice.judged.hanging_set.numbers[0])
    rank = len(choice.dropped) + found.regrets, found.price_minor
    if choice.floor is None:
        assert rank == wanted.rank[:2]
    else:
        assert table.open_questions
        assert choice.floor <= wanted.rank[:2]
        assert choice.floor < rank
