"""What a quotation made anew means in money: every expectation is added up by hand from the amounts given here."""

from __future__ import annotations

from decimal import Decimal

from planning.quoting_terms import terms_of
from spoutline.model.charge import Charge
from spoutline.model.part import PartKind
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_pins import Pins
from spoutline.model.quotation_terms import BreakawayWish, HoseWish
from spoutline.model.quoted_option import QuotedLine, QuotedOption, TaxLine
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.refit.money_change import AmountKind, OptionMoney, money_change

SURVEY = Survey(site=Site(name="Hollow Ford"), positions=(Position(label="1A"),))


def line(number: str, pieces: int, price: str | None, maker: str = "Larkspindle Couplings") -> QuotedLine:
    unit = None if price is None else Decimal(price)
    return QuotedLine(
        part_number=number, maker=maker, kind=PartKind.SWIVEL, name="Swivel", fitted=pieces, spares=0, pack_rest=0,
        pack=1, unit_price=unit, amount=None if unit is None else unit * pieces, cost=None, list_id="a",
        list_currency="USD", list_price=unit, from_quantity=1, gap=None, gap_detail="", override_by="",
        override_reason="", lead_time_days=3, mass_kg=1.0,
    )  # fmt: skip


def option(title: str, *lines: QuotedLine, freight: str = "0", tax: str = "0", labour: str = "0") -> QuotedOption:
    goods = sum((one.amount or Decimal(0) for one in lines), Decimal(0))
    net = goods + Decimal(freight) + Decimal(labour)
    taxes = (TaxLine(name="Sales tax", percent=Decimal(8), on=(Charge.GOODS,), base=goods, amount=Decimal(tax)),)
    return QuotedOption(
        title=title, breakaway=BreakawayWish.ANY, hose=HoseWish.ANY, positions=(), lines=lines, labour=(),
        goods_amount=goods, labour_amount=Decimal(labour), freight_amount=Decimal(freight),
        taxes=taxes if Decimal(tax) else (), rounding_amount=Decimal(0), total=net + Decimal(tax), commonality=None,
        drive_offs=None, superseded=(),
    )  # fmt: skip


def quotation(*options: QuotedOption, currency: str = "USD") -> Quotation:
    pins = Pins(
        survey=SURVEY, survey_id=None, survey_revision=None, survey_fingerprint="", catalogue_edition="1",
        rules_edition="1", jurisdiction_id="us_general", jurisdiction_title="", program_version="0", parts=(),
        prices=(), limits=(),
    )  # fmt: skip
    return Quotation(terms=terms_of(currency=currency), options=options, pins=pins)


def added_up(one: OptionMoney) -> Decimal:
    steps = [line.amount for line in one.lines] + [amount.amount for amount in one.amounts]
    return sum((step.difference for step in steps if step.difference is not None), Decimal(0))


def test_lines_and_amounts_that_change_add_up_to_the_change_of_the_total() -> None:
    # 2 x 10.00 + 1 x 5.00 + 4 x 1.25 = 30.00, freight 12.00, tax 2.40: 44.40
    before = option("Single-use", line("A", 2, "10.00"), line("B", 1, "5.00"), line("D", 4, "1.25"), freight="12.00",
                    tax="2.40")  # fmt: skip
    # 3 x 9.50 + 1 x 7.50 + 4 x 1.25 = 41.00, freight 15.00, tax 3.28, labor 6.00: 65.28
    after = option("Single-use", line("A", 3, "9.50"), line("C", 1, "7.50"), line("D", 4, "1.25"), freight="15.00",
                   tax="3.28", labour="6.00")  # fmt: skip
    (one,) = money_change(quotation(before), quotation(after)).options
    assert (one.total.before, one.total.after, one.total.difference) == (
        Decimal("44.40"),
        Decimal("65.28"),
        Decimal("20.88"),
    )
    assert [
        (line.part.number, line.pieces_before, line.pieces_after, line.amount.difference) for line in one.lines
    ] == [
        ("A", 2, 3, Decimal("8.50")),
        ("B", 1, 0, Decimal("-5.00")),
        ("C", 0, 1, Decimal("7.50")),
    ]
    assert one.lines[0].price.difference == Decimal("-0.50")
    assert {(one.kind, one.name): one.amount.difference for one in one.amounts} == {
        (AmountKind.LABOUR, ""): Decimal("6.00"),
        (AmountKind.FREIGHT, ""): Decimal("3.00"),
        (AmountKind.TAX, "Sales tax"): Decimal("0.88"),
    }
    assert added_up(one) == one.total.difference


def test_equal_quotations_change_nothing() -> None:
    made = quotation(option("Single-use", line("A", 2, "10.00")))
    assert money_change(made, made).is_nothing


def test_options_that_come_and_go_have_no_difference() -> None:
    before, after = (quotation(option(title, line("A", 1, "10.00"))) for title in ("Old", "New"))
    found = {one.title: (one.total.before, one.total.after) for one in money_change(before, after).options}
    assert found == {"New": (None, Decimal("10.00")), "Old": (Decimal("10.00"), None)}
    assert all(one.total.difference is None for one in money_change(before, after).options)
    assert not money_change(before, after).is_nothing


def test_a_missing_price_is_no_amount_of_nought() -> None:
    before = quotation(option("Single-use", line("A", 1, "10.00")))
    (one,) = money_change(before, quotation(option("Single-use", line("A", 1, None)))).options
    assert one.lines[0].amount.after is None
    assert one.lines[0].amount.difference is None
    assert one.missing == 1


def test_two_makers_of_one_number_are_two_lines() -> None:
    before = quotation(option("Single-use", line("A", 1, "10.00"), line("A", 1, "4.00", "Quillmere Forgeworks")))
    after = quotation(option("Single-use", line("A", 1, "10.00"), line("A", 2, "4.00", "Quillmere Forgeworks")))
    (one,) = money_change(before, after).options
    assert [(line.part.maker, line.amount.difference) for line in one.lines] == [
        ("Quillmere Forgeworks", Decimal("4.00"))
    ]


def test_amounts_of_two_currencies_are_not_compared() -> None:
    made = option("Single-use", line("A", 1, "10.00"))
    change = money_change(quotation(made), quotation(made, currency="EUR"))
    assert not change.is_comparable
    assert not change.is_nothing
