"""A price that cannot be is asked about: in the catalogue, and with every set that it decided."""

from __future__ import annotations

from dataclasses import replace

import pytest

from planning.stores import ListStore
from planning.surveys import CAR
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind, Price
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.usual_prices import UsualPrices
from spoutline.rules.declared.registry import RuleId


@pytest.fixture(scope="module")
def every_part(catalogue: CatalogueStore) -> tuple[Part, ...]:
    return tuple(part for kind in PartKind for part in catalogue.candidates(CandidateFilter(kind=kind)))


def mispriced(parts: tuple[Part, ...], number: str, usd_minor: int) -> ListStore:
    price = Price(currency="USD", minor=usd_minor)
    return ListStore(replace(one, prices=(price,)) if one.number == number else one for one in parts)


def asked_about(store: ListStore, tables: RuleTables) -> list[Finding]:
    chosen = plan_position(CAR.positions[0], CAR.site, PlanningContext(tables, store), with_alternatives=False).chosen
    assert chosen is not None
    return [one for one in chosen.findings if one.rule_id == RuleId.PRICE_UNUSUAL]


def test_a_slipped_price_that_decides_a_set_is_asked_about(every_part: tuple[Part, ...], us_tables: RuleTables) -> None:
    # 40.90 typed as 1.00: nobody sells a breakaway for a dollar
    (found,) = asked_about(mispriced(every_part, "LS-B101", 100), us_tables)
    assert (found.subject, found.severity, found.verdict) == ("LS-B101", Severity.SHOULD, Verdict.QUESTION)
    assert asked_about(ListStore(every_part), us_tables) == []


def test_no_price_of_the_catalogue_is_asked_about(every_part: tuple[Part, ...], us_tables: RuleTables) -> None:
    # whoever wrote the invented prices looked at each of them
    assert list(UsualPrices(ListStore(every_part)).all_questions(us_tables)) == []


@pytest.mark.parametrize("usd_minor", [409, 409_000])  # 40.90 with the point slipped by one place and by two
def test_a_slipped_decimal_point_is_found(usd_minor: int, every_part: tuple[Part, ...], us_tables: RuleTables) -> None:
    found = list(UsualPrices(mispriced(every_part, "LS-B101", usd_minor)).all_questions(us_tables))
    assert [one.part.number for one in found] == ["LS-B101"]


def test_hoses_are_compared_by_the_metre(every_part: tuple[Part, ...], us_tables: RuleTables) -> None:
    hoses = [one for one in every_part if one.kind is PartKind.CURB_HOSE and one.hose and one.price_minor("USD")]
    longest = max(hoses, key=lambda one: one.length_m)
    usual = UsualPrices(ListStore(every_part))
    assert usual.question(longest, "USD", us_tables) is None
    least = min(one.price_minor("USD") or 0 for one in hoses)  # usual for a short hose, not for the longest
    given_away = replace(longest, prices=(Price(currency="USD", minor=least),))
    assert usual.question(given_away, "USD", us_tables) is not None


def test_a_kind_with_few_prices_has_no_usual_one(every_part: tuple[Part, ...], us_tables: RuleTables) -> None:
    few = [one for one in every_part if one.kind is PartKind.BREAKAWAY][:4]
    odd = replace(few[0], prices=(Price(currency="USD", minor=1),))
    assert list(UsualPrices(ListStore((odd, *few[1:]))).all_questions(us_tables)) == []
