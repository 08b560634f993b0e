"""Cost and margin: every step by hand arithmetic.

Margin percent is the gross margin of common accounting practice, (sales - cost of sales) / sales; a mark-up is the
share of the cost.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from planning.quoting_terms import list_of, terms_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.margin import LowMargin, Margin, margin_of, percent_of, sum_of
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceList
from spoutline.model.quotation_terms import Terms
from spoutline.model.quoted_option import QuotedLine
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.refit.priced_lines import quoted_line
from spoutline.planning.refit.quantities import PartQuantity

BREAKAWAY = "LS-B101"
LIST = list_of({BREAKAWAY: {1: "100.00"}})


@pytest.fixture(scope="module")
def breakaway(catalogue: CatalogueStore) -> Part:
    part = catalogue.part(PartRef(BREAKAWAY))
    assert part is not None
    return part


def line_of(part: Part, terms: Terms, *lists: PriceList, pieces: int = 4) -> QuotedLine:
    quantity = PartQuantity(part=part, fitted=pieces, spares=0, pack_rest=0, mass_kg=1.0)
    return quoted_line(quantity, Pricer(terms, PriceBook(lists or (LIST,), terms.heading.dated)))


def test_a_margin_is_a_share_of_the_price_and_a_mark_up_one_of_the_cost() -> None:
    # cost 75 sold at 100: 25 left, 25 % of the price (33 1/3 % of the cost)
    assert (Margin(Decimal(100), Decimal(75)).amount, Margin(Decimal(100), Decimal(75)).percent) == (25, 25)
    # 80 sold for 70: 10 lost, 100 * -10 / 70 = -14.2857… %
    assert percent_of(Margin(Decimal(70), Decimal(80))) == Decimal("-14.29")
    assert Margin(Decimal(0), Decimal(80)).percent is None, "nothing is asked, so there is no share of it"
    # 100 + 300 sold, 75 + 195 paid: 130 of 400 is 32.5 %, not the mean of 25 % and 35 %
    both = sum_of((Margin(Decimal(100), Decimal(75)), None, Margin(Decimal(300), Decimal(195))))
    assert (both.sold, both.cost, both.percent) == (400, 270, Decimal("32.5"))


@pytest.mark.parametrize(
    ("price", "cost", "floor", "low"),
    [
        ("100", "80", "20", None),
        ("100", "80.01", "20", LowMargin.BELOW_FLOOR),
        ("100", "100", None, None),
        ("100", "100", "0", None),
        ("99.99", "100", None, LowMargin.BELOW_COST),
        ("99.99", "100", "20", LowMargin.BELOW_COST),
        ("0", "0", "20", None),  # comes in an article that carries the price of all
        ("0", "3", None, LowMargin.BELOW_COST),
    ],
)
def test_what_is_below_cost_or_the_floor(price: str, cost: str, floor: str | None, low: LowMargin | None) -> None:
    margin = margin_of(Decimal(price), Decimal(cost), 7)
    assert margin is not None
    assert margin.low(None if floor is None else Decimal(floor)) is low


def test_a_buying_discount_always_changes_the_cost_whatever_the_price_rests_on(breakaway: Part) -> None:
    selling = {"method": "list_less_discount", "percent": 10}
    # list 100 less 10 % sells at 90; 25 % off buys at 75, 60 % off at 40
    for percent, cost, amount, share in ((25, 75, 60, "16.67"), (60, 40, 200, "55.56")):
        line = line_of(breakaway, terms_of(selling=selling, buying=[{"percent": percent}]))
        assert line.margin is not None
        assert (line.unit_price, line.cost, line.buying_percent) == (90, cost, percent)
        assert (line.margin.sold, line.margin.cost, line.margin.amount) == (360, 4 * cost, amount)
        assert percent_of(line.margin) == Decimal(share)


def test_cost_is_exchanged_and_a_margin_asked_on_the_price_comes_out(breakaway: Part) -> None:
    rate = {"currency": "EUR", "rate": "1.0850", "dated": "2026-11-24", "source": "invented"}
    terms = terms_of(
        exchange=[rate],
        buying=[{"group": "couplings", "percent": 32}, {"percent": 5}],
        selling={"method": "margin_on_price", "percent": 30},
    )
    line = line_of(breakaway, terms, list_of({BREAKAWAY: {1: "100.00"}}, currency="EUR"))
    # 100 EUR * 1.0850 = 108.50; less 32 % = 73.78; / 0.70 = 105.40: margin 31.62 each, 30 %
    assert (line.cost, line.unit_price) == (Decimal("73.78"), Decimal("105.40"))
    assert line.margin is not None
    assert (line.margin.amount, line.margin.percent) == (Decimal("126.48"), 30)


def test_without_buying_terms_the_cost_is_not_known_rather_than_the_list_price(breakaway: Part) -> None:
    line = line_of(breakaway, terms_of(selling={"percent": 10}, buying=[{"group": "hoses", "percent": 30}]))
    assert (line.unit_price, line.cost, line.margin, line.buying_percent) == (90, None, None, None)
    stated = line_of(breakaway, terms_of(selling={"percent": 10}, buying=[{"percent": 0}]))
    assert stated.margin is not None
    assert (stated.cost, stated.margin.low(None)) == (100, LowMargin.BELOW_COST)
    marked_up = line_of(breakaway, terms_of(selling={"method": "mark_up_on_cost", "percent": 25}))
    assert marked_up.margin is not None, "a mark-up on cost rests on a cost: the list price where nothing is taken off"
    assert (marked_up.unit_price, marked_up.cost, marked_up.margin.percent) == (125, 100, 20)


def test_a_persons_price_is_held_against_the_cost_of_the_list(breakaway: Part) -> None:
    override = {"part": BREAKAWAY, "unit_price": "60.00", "by": "R. Example"}
    line = line_of(breakaway, terms_of(buying=[{"percent": 25}], overrides=[override]))
    assert line.margin is not None
    assert (line.cost, line.margin.amount, line.margin.percent) == (75, -60, -25)
    unlisted = line_of(breakaway, terms_of(overrides=[override]), list_of({"LS-OTHER": {1: "1.00"}}))
    assert (unlisted.unit_price, unlisted.margin) == (60, None)
