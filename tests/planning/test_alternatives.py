"""The shortest lead time and the single maker, each held against plans over catalogs that hold nothing else."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from types import SimpleNamespace
from typing import Any, cast

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bench.generated_parts import generated_parts
from examples import up_to
from planning.stores import ListStore
from planning.surveys import CAR, MARINA, TRUCK
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import Alternative, AlternativeKind, HangingSet, JudgedSet
from spoutline.model.requirement import RequirementId
from spoutline.model.survey import Survey
from spoutline.planning.sets.alternatives import AlternativeFinder, first_true, lead_time_days
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position, planned_position
from spoutline.planning.sets.set_query import Promise

SURVEYS = {"car": CAR, "truck": TRUCK, "marina": MARINA}
PARTS = generated_parts(1_500, seed=3)


@dataclass(frozen=True)
class Asked:
    """The best set over some parts, and what of good practice it gives up: parts' shoulds, lines of the whole set."""

    hung: HangingSet | None
    regrets: int = 0
    dropped: frozenset[RequirementId] = frozenset()

    def as_good_as(self, chosen: Asked) -> HangingSet | None:
        return self.hung if self.regrets <= chosen.regrets and self.dropped <= chosen.dropped else None


def best_over(parts: Iterable[Part], survey: Survey, tables: RuleTables) -> Asked:
    planned = planned_position(survey.positions[0], survey.site, PlanningContext(tables, ListStore(parts)))
    if planned.choice is None or planned.chooser is None:
        return Asked(None)
    hung = planned.choice.judged.hanging_set
    return Asked(hung, planned.chooser.regrets_of(hung), planned.choice.dropped)


def alternative(name: str, kind: AlternativeKind, tables: RuleTables) -> tuple[JudgedSet, Alternative | None]:
    survey = SURVEYS[name]
    plan = plan_position(survey.positions[0], survey.site, PlanningContext(tables, ListStore(PARTS)))
    assert plan.chosen is not None
    return plan.chosen, next((one for one in plan.alternatives if one.kind is kind), None)


@pytest.mark.parametrize("name", SURVEYS)
def test_no_set_as_good_comes_sooner_than_the_one_with_the_shorter_lead_time(name: str, us_tables: RuleTables) -> None:
    """Oracle: plans over the parts that come within so many days, one number of days after the other."""
    chosen, found = alternative(name, AlternativeKind.SHORTER_LEAD_TIME, us_tables)
    best = best_over(PARTS, SURVEYS[name], us_tables)
    assert found is not None
    longest = lead_time_days(found.judged.hanging_set)
    assert longest < lead_time_days(chosen.hanging_set)
    for days in range(2, longest + 1):
        sooner = [part for part in PARTS if part.lead_time_days <= days]
        hung = best_over(sooner, SURVEYS[name], us_tables).as_good_as(best)
        assert (hung and hung.refs) == (found.judged.hanging_set.refs if days == longest else None), days


@pytest.mark.parametrize("name", SURVEYS)
def test_no_maker_alone_has_a_cheaper_set_than_the_one_shown(name: str, us_tables: RuleTables) -> None:
    """Oracle: plans over the parts of each maker alone."""
    _, found = alternative(name, AlternativeKind.ONE_MAKER, us_tables)
    chosen = best_over(PARTS, SURVEYS[name], us_tables)
    makers = sorted({part.maker for part in PARTS})
    of_maker = ([part for part in PARTS if part.maker == maker] for maker in makers)
    alone = [best_over(parts, SURVEYS[name], us_tables).as_good_as(chosen) for parts in of_maker]
    hung = [one for one in alone if one is not None]
    best = min(hung, key=lambda one: (one.price_minor, one.refs), default=None)
    assert (best and best.refs) == (found and found.judged.hanging_set.refs)


def test_the_first_place_where_something_holds_is_found_from_the_front() -> None:
    for count in range(12):
        for first in range(count + 1):
            asked: list[int] = []

            def holds(at: int, first: int = first, asked: list[int] = asked) -> bool:
                asked.append(at)
                return at >= first

            assert first_true(count, holds) == first
            assert len(asked) == len(set(asked))
            assert asked[:1] == ([0] if count else [])


class Makers(AlternativeFinder):
    """Knows by maker what the search promises, and what the full checks let through of that, if anything."""

    def __init__(self, prices: dict[str, tuple[int, int | None]]) -> None:
        self.prices, self.regrets, self.query = prices, 0, cast("Any", None)

    def _promise(self, query: Any, most: float | None = None) -> Promise | None:
        promised, _ = self.prices[query]
        return None if most is not None and promised > most else Promise(0, promised)

    def _as_good(self, query: Any, most: float | None = None) -> Any:
        promised, accepted = self.prices[query]
        assert most is None or promised <= most, "it may have been left out"
        if accepted is None:
            return None
        return SimpleNamespace(hanging_set=SimpleNamespace(price_minor=accepted, refs=(query,)))


@given(st.lists(st.tuples(st.integers(1, 9), st.one_of(st.none(), st.integers(0, 3))), max_size=6))
@settings(max_examples=up_to(200), deadline=None)
def test_the_best_set_of_one_maker_is_found_whatever_full_checks_turn_down(drawn: list[tuple[int, int | None]]) -> None:
    """Oracle: the set of every maker."""
    prices = {f"M{at}": (price, None if more is None else price + more) for at, (price, more) in enumerate(drawn)}
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.planning.sets.alternatives._of_maker", lambda _, maker: maker)
        found = [(one.hanging_set.price_minor, one.hanging_set.refs) for one in Makers(prices)._of_makers(list(prices))]
    wanted = min(((price, (maker,)) for maker, (_, price) in prices.items() if price is not None), default=None)
    assert min(found, default=None) == wanted
