"""Prices from list to customer: every step by hand arithmetic, every gap named."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from planning.quoting_terms import DAY, list_of, terms_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.faults import InputFault
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.price_gap import GapReason
from spoutline.model.pricing import PriceGap, PriceList, UnitPrice
from spoutline.model.quotation_terms import RoundingMode, Terms
from spoutline.planning.pricing.discount_names import check_discount_names
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.rounding import check_steps, minor_units, rounded
from spoutline.planning.pricing.selling import Pricer

BREAKAWAY = "LS-B101"

# Table of the class java.math.RoundingMode in the Java SE documentation, from memory.
VALUES = ("5.5", "2.5", "1.6", "1.1", "1.0", "-1.0", "-1.1", "-1.6", "-2.5", "-5.5")
ROUNDED = {
    RoundingMode.UP: (6, 3, 2, 2, 1, -1, -2, -2, -3, -6),
    RoundingMode.DOWN: (5, 2, 1, 1, 1, -1, -1, -1, -2, -5),
    RoundingMode.HALF_UP: (6, 3, 2, 1, 1, -1, -1, -2, -3, -6),
    RoundingMode.HALF_EVEN: (6, 2, 2, 1, 1, -1, -1, -2, -2, -6),
}


@pytest.fixture(scope="module")
def breakaway(catalogue: CatalogueStore) -> Part:
    part = catalogue.part(PartRef(BREAKAWAY))
    assert part is not None
    return part


def pricer_of(terms: Terms, *lists: PriceList) -> Pricer:
    return Pricer(terms, PriceBook(lists, terms.heading.dated))


def price_of(part: Part, quantity: int, terms: Terms, *lists: PriceList) -> Decimal:
    found = pricer_of(terms, *lists).unit_price(part, quantity)
    assert isinstance(found, UnitPrice), found
    return found.unit_price


def gap_of(part: Part, quantity: int, terms: Terms, *lists: PriceList) -> PriceGap:
    found = pricer_of(terms, *lists).unit_price(part, quantity)
    assert isinstance(found, PriceGap), found
    return found


@pytest.mark.parametrize("mode", list(RoundingMode))
def test_each_way_of_rounding_is_the_published_one(mode: RoundingMode) -> None:
    assert tuple(int(rounded(Decimal(value), Decimal(1), mode)) for value in VALUES) == ROUNDED[mode]


def test_a_step_of_five_cents_rounds_to_its_multiples() -> None:
    assert rounded(Decimal("10.024"), Decimal("0.05"), RoundingMode.HALF_UP) == Decimal("10.00")
    assert rounded(Decimal("10.025"), Decimal("0.05"), RoundingMode.HALF_UP) == Decimal("10.05")
    assert rounded(Decimal("10.001"), Decimal("0.05"), RoundingMode.UP) == Decimal("10.05")


def test_a_step_that_no_coin_pays_is_refused() -> None:
    with pytest.raises(InputFault, match=r"rounding\.unit_step: 0\.001 .* multiple of 0\.01"):
        check_steps(terms_of(rounding={"unit_step": Decimal("0.001")}))
    with pytest.raises(InputFault, match="multiple of 1"):  # ISO 4217: the yen has no minor unit
        check_steps(terms_of(currency="JPY", rounding={"unit_step": "0.5", "total_step": 1}))
    with pytest.raises(ValueError, match="no whole number"):
        minor_units(Decimal("1.005"), "USD")


def test_the_list_price_less_the_discount_is_the_price(breakaway: Part) -> None:
    terms = terms_of(selling={"method": "list_less_discount", "percent": 10})
    assert price_of(breakaway, 1, terms, list_of({BREAKAWAY: {1: "40.90"}})) == Decimal("36.81")


def test_a_margin_of_20_percent_is_a_mark_up_of_25_percent(breakaway: Part) -> None:
    """Definition: margin is profit over price, mark-up profit over cost; m = u / (1 + u)."""
    prices = list_of({BREAKAWAY: {1: "100.00"}})
    buying = [{"percent": 40}]
    margin = terms_of(buying=buying, selling={"method": "margin_on_price", "percent": 20})
    mark_up = terms_of(buying=buying, selling={"method": "mark_up_on_cost", "percent": 25})
    assert price_of(breakaway, 1, margin, prices) == price_of(breakaway, 1, mark_up, prices) == Decimal("75.00")


def test_a_margin_of_100_percent_is_refused() -> None:
    with pytest.raises(ValueError, match="below 100"):
        terms_of(selling={"method": "margin_on_price", "percent": 100})


def test_the_discount_that_names_most_holds(breakaway: Part) -> None:
    prices = list_of({BREAKAWAY: {1: "100.00"}})
    buying = [
        {"percent": 10},
        {"group": "couplings", "percent": 20},
        {"maker": breakaway.maker, "percent": 30},
        {"maker": breakaway.maker, "group": "couplings", "percent": 40},
    ]
    costs = []
    for known in range(1, 5):
        found = pricer_of(terms_of(buying=buying[:known]), prices).unit_price(breakaway, 1)
        assert isinstance(found, UnitPrice)
        costs.append(found.cost)
    assert costs == [90, 80, 70, 60]


def test_an_exception_for_a_kind_changes_the_selling_percentage(breakaway: Part) -> None:
    selling = {"percent": 0, "exceptions": [{"kind": "breakaway", "percent": 50}, {"kind": "nozzle", "percent": 90}]}
    assert price_of(breakaway, 1, terms_of(selling=selling), list_of({BREAKAWAY: {1: "80.00"}})) == 40


def test_the_quantity_ordered_decides_the_break(breakaway: Part) -> None:
    prices = list_of({BREAKAWAY: {1: "10.00", 12: "9.00", 24: "8.00"}})
    found = [price_of(breakaway, quantity, terms_of(), prices) for quantity in (1, 11, 12, 23, 24, 500)]
    assert found == [10, 10, 9, 9, 8, 8]


def test_a_list_in_another_currency_is_reckoned_at_the_rate(breakaway: Part) -> None:
    rate = [{"currency": "EUR", "rate": "1.0850", "dated": DAY, "source": "a bank"}]
    euro = list_of({BREAKAWAY: {1: "37.66"}}, currency="EUR")
    # 37.66 EUR x 1.0850 = 40.8611 USD
    assert price_of(breakaway, 1, terms_of(exchange=rate), euro) == Decimal("40.86")
    dollar = list_of({BREAKAWAY: {1: "40.90"}}, list_id="list-b")
    assert price_of(breakaway, 1, terms_of(exchange=rate), euro, dollar) == Decimal("40.90")


def test_of_two_valid_lists_the_later_one_holds(breakaway: Part) -> None:
    old = list_of({BREAKAWAY: {1: "10.00"}}, list_id="old")
    new = list_of({BREAKAWAY: {1: "11.00"}}, list_id="new", valid_from=date(2026, 7, 1))
    assert price_of(breakaway, 1, terms_of(), old, new) == 11


def test_a_list_is_valid_on_its_first_and_its_last_day(breakaway: Part) -> None:
    prices = list_of({BREAKAWAY: {1: "10.00"}}, valid_from=DAY, valid_to=DAY)
    assert price_of(breakaway, 1, terms_of(), prices) == 10


def test_every_kind_of_gap_is_named(breakaway: Part) -> None:
    named = {BREAKAWAY: {1: "10.00"}}
    assert gap_of(breakaway, 1, terms_of(), list_of(named, maker="Nobody")).reason is GapReason.NO_LIST
    expired = gap_of(breakaway, 1, terms_of(), list_of(named, valid_to=date(2026, 11, 24)))
    assert (expired.reason, expired.detail) == (GapReason.EXPIRED, "list-a, 2026-11-24")
    early = list_of(named, valid_from=date(2026, 11, 26))
    assert gap_of(breakaway, 1, terms_of(), early).reason is GapReason.NOT_YET_VALID
    assert gap_of(breakaway, 1, terms_of(), list_of({"LS-B999": {1: "1"}})).reason is GapReason.NOT_LISTED
    assert gap_of(breakaway, 1, terms_of(), list_of(named, currency="EUR")).reason is GapReason.NO_EXCHANGE_RATE
    coarse = terms_of(rounding={"unit_step": 1})
    assert gap_of(breakaway, 1, coarse, list_of({BREAKAWAY: {1: "0.49"}})).reason is GapReason.ROUNDS_TO_NOTHING
    free = terms_of(selling={"percent": 100})  # given away on purpose
    assert price_of(breakaway, 1, free, list_of(named)) == 0
    packs = list_of({BREAKAWAY: {10: "9.00"}})
    assert gap_of(breakaway, 9, terms_of(), packs).reason is GapReason.BELOW_LEAST_QUANTITY
    assert price_of(breakaway, 10, terms_of(), packs) == 9


def test_a_discount_for_a_maker_or_group_that_no_list_knows_is_refused_by_name(breakaway: Part) -> None:
    lists = (list_of({breakaway.number: {1: "10"}}, maker="Larkspindle Couplings", group="couplings"),)
    sound = terms_of(
        buying=[{"percent": 5}, {"maker": "Larkspindle Couplings", "group": "couplings", "percent": 9}],
        selling={"exceptions": [{"group": "couplings", "percent": 3}, {"kind": "nozzle", "percent": 4}]},
    )
    check_discount_names(sound, lists)
    slips = terms_of(
        buying=[{"maker": "Larkspindel Couplings", "percent": 5}, {"group": "hoses", "percent": 9}],
        selling={"exceptions": [{"group": "nozzels", "percent": 3}]},
    )
    with pytest.raises(InputFault) as caught:
        check_discount_names(slips, lists)
    fields = [problem.field for problem in caught.value.problems]
    assert fields == ["buying[0].maker", "buying[1].group", "selling.exceptions[0].group"]
    assert "Larkspindle Couplings" in caught.value.problems[0].wanted
    check_discount_names(slips, ())  # where no list is at hand every price is missing, which is told part by part
