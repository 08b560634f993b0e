"""Totals are exact sums of list prices, recomputed here with decimals typed by hand."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from documents import plan_factory as factory
from documents.readers import cautions, story
from spoutline.documents.content.bill_content import bill_content
from spoutline.documents.content.blocks import Emphasis, Table
from spoutline.documents.content.totals import BillLine, position_lines, site_lines, total_of
from spoutline.model.part import PartKind
from spoutline.model.plan import AccessoryLine

PRICES = {
    "QW-W18": Decimal("23.45"),
    "QW-B7": Decimal("56.15"),
    "QW-C12": Decimal("89.90"),
    "QW-S2": Decimal("31.05"),
    "QW-N101": Decimal("71.90"),
    "QW-L1": Decimal("1.50"),
}


def test_a_position_costs_its_set_and_what_goes_with_it() -> None:
    total = total_of(position_lines(factory.fitting_plan(), "USD"))
    set_price = sum((PRICES[number] for number in factory.chain().numbers), Decimal(0))
    assert Decimal(total.minor) / 100 == set_price + 2 * PRICES["QW-L1"]
    assert total.longest_lead_time_days == 12


def test_the_site_counts_each_part_once_with_all_its_pieces() -> None:
    plan = factory.site_plan(
        factory.fitting_plan(), factory.fitting_plan(factory.position("1B")), factory.conflicting_plan()
    )
    lines = site_lines(plan)
    assert [line.part.number for line in lines] == ["QW-N101", "QW-S2", "QW-C12", "QW-W18", "QW-B7", "QW-L1"]
    assert [line.quantity for line in lines] == [2, 2, 2, 2, 2, 4]
    wanted = 2 * sum(PRICES.values(), Decimal(0)) + 2 * PRICES["QW-L1"]
    assert Decimal(total_of(lines).minor) / 100 == wanted


def test_a_part_without_a_price_is_named_and_not_counted_as_free() -> None:
    accessory = AccessoryLine(part=factory.label_part(None), quantity=1, reason="accessory_class_label")
    total = total_of(position_lines(factory.fitting_plan(accessories=(accessory,)), "USD"))
    assert total.unpriced == ("QW-L1",)
    assert Decimal(total.minor) / 100 == Decimal("272.45")


def test_the_totals_of_the_document_are_the_sums_of_their_columns() -> None:
    content = bill_content(factory.site_plan(), story(), cautions())
    tables = [block for block in content.blocks if isinstance(block, Table)]
    checked = 0
    for table in tables:
        if table.columns[-2].title != "Amount, USD":
            continue
        sums = [Decimal(row.cells[-2]) for row in table.rows if row.emphasis is not Emphasis.TOTAL]
        total = next(row for row in table.rows if row.emphasis is Emphasis.TOTAL)
        assert Decimal(total.cells[-2].replace(",", "")) == sum(sums)
        checked += 1
    assert checked == 2  # the whole site, and the one position with a set


@given(st.lists(st.tuples(st.integers(0, 10**9), st.integers(1, 99)), max_size=20))
def test_a_total_is_exact_for_any_prices(rows: list[tuple[int, int]]) -> None:
    part = factory.part("X", PartKind.CAP)
    lines = [BillLine(part=part, quantity=quantity, unit_minor=minor) for minor, quantity in rows]
    assert total_of(lines).minor == sum(minor * quantity for minor, quantity in rows)


def test_other_currencies_have_no_price_where_the_part_has_none() -> None:
    lines = position_lines(replace(factory.fitting_plan(), accessories=()), "EUR")
    assert total_of(lines).minor == 0
    assert len(total_of(lines).unpriced) == 5
