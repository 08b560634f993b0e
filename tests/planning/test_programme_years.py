"""A programme over calendar years: present worth, waiting, carry-over, split sites, deadlines; sums by hand."""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from planning.programme_sites import of, programme, site, work
from spoutline.model.faults import InputFault
from spoutline.model.programme import (
    LeftOut,
    RankedSite,
    RankReason,
    SplitHindrance,
    YearlyChange,
    YearReason,
)
from spoutline.planning.conversion.present_worth import present_worth, risen
from spoutline.planning.conversion.typed_terms import typed_budget, typed_deadlines, typed_percent, typed_year

# Single present value and single compound amount factors of the compound interest tables that every engineering economy
# handbook prints (from memory of the 5 % and 3 % tables), to four decimals.
SINGLE_PRESENT_VALUE = {1: "0.9524", 2: "0.9070", 3: "0.8638", 4: "0.8227", 5: "0.7835", 10: "0.6139"}
COMPOUND_AMOUNT = {1: "1.0300", 2: "1.0609", 3: "1.0927", 4: "1.1255", 5: "1.1593", 10: "1.3439"}


def test_the_factors_are_those_of_the_tables() -> None:
    for years, factor in SINGLE_PRESENT_VALUE.items():
        found = present_worth(Decimal(1_000_000), Decimal(5), years, "USD") / 1_000_000
        assert abs(found - Decimal(factor)) <= Decimal("0.00005"), years
    for years, factor in COMPOUND_AMOUNT.items():
        found = risen(Decimal(1_000_000), Decimal(3), years, "USD") / 1_000_000
        assert abs(found - Decimal(factor)) <= Decimal("0.00005"), years
    assert present_worth(Decimal("12.345"), None, 7, "USD") == Decimal("12.35")  # no interest: only rounded, halves up
    assert risen(Decimal("12.5"), None, 7, "JPY") == Decimal(13)  # a currency without decimals


def test_waiting_costs_dearer_parts_and_missed_upkeep_less_the_interest() -> None:
    one = site("a", 10_000, yearly_saving=Decimal(2100), change_kg=-50.0)
    terms = {"first_year": 2027, "price_rise_percent": Decimal(3), "interest_percent": Decimal(5)}
    waiting = of(programme(one, budget=20_000, **terms), "a").waiting
    assert waiting is not None
    # by hand: 10,300 a year later; (10,300 - 10,000) / 1.05 = 285.71; 10,000 - 10,000 / 1.05 = 476.19; 2,100 / 1.05
    assert (waiting.price, waiting.interest, waiting.upkeep) == (Decimal("285.71"), Decimal("476.19"), Decimal(2000))
    # and as one sum: (10,000 (0.03 - 0.05) + 2,100) / 1.05 = 1,809.52
    assert waiting.money == Decimal("1809.52")
    assert waiting.kg == 50.0  # what the conversion would have saved that year


def test_waiting_without_stated_figures_costs_the_upkeep_alone_and_tells_where_that_is_open() -> None:
    waiting = of(programme(site("a", 500, yearly_saving=Decimal(40)), budget=500), "a").waiting
    assert waiting is not None
    assert (waiting.price, waiting.interest, waiting.money, waiting.kg) == (0, 0, 40, None)
    open_one = of(programme(site("a", 500), budget=500, interest_percent=Decimal(5)), "a").waiting
    assert open_one is not None
    assert open_one.money is None
    assert open_one.interest == Decimal("23.81")  # 500 - 500 / 1.05


def test_prices_rise_from_the_second_year_and_a_grant_does_not() -> None:
    sites = (site("a", 100), site("b", work(100, grant=40), net_present_value=Decimal(1)))
    found = programme(*sites, budget=100, years=2, first_year=2027, price_rise_percent=Decimal(3))
    assert [one.visits[0].cash for one in found.ranked] == [100, Decimal("63.00")]  # 100 * 1.03 - 40
    assert [found.calendar_year(one.year or 0) for one in found.ranked] == [2027, 2028]
    assert [(one.spent, one.left, one.available) for one in found.years] == [(100, 0, 100), (63, 37, 100)]


def test_a_year_is_worth_what_its_money_is_on_the_first_day_of_the_first() -> None:
    found = programme(site("a", 100), site("b", 100), budget=100, interest_percent=Decimal(5))
    assert [one.present_value for one in found.years] == [100, Decimal("95.24")]  # 0.9524
    assert programme(site("a", 100), budget=100).years[0].present_value is None  # none stated, none counted


def test_unspent_money_is_carried_over_only_on_request() -> None:
    sites = (site("a", 60), site("b", 140, net_present_value=Decimal(1)))
    without = programme(*sites, budget=100)
    assert of(without, "b").left_out is LeftOut.DEARER_THAN_A_YEAR
    found = programme(*sites, budget=100, carry_over=True)
    assert (of(found, "b").year, of(found, "b").year_reason) == (2, YearReason.SAVED_UP)
    assert [(one.available, one.left) for one in found.years] == [(100, 40), (140, 0)]  # 100 - 60; 40 + 100 - 140


def test_no_year_takes_what_is_saved_for_a_later_one() -> None:
    # 250 is saved up by the third year, out of 300: 50 are left for all the others, in any year
    sites = (
        site("dear", work(250), net_present_value=Decimal(2000)),
        site("b", 60, net_present_value=Decimal(90)),
        site("c", 47, net_present_value=Decimal(8)),
    )
    found = programme(*sites, budget=100, carry_over=True)
    assert [one.year for one in found.ranked] == [3, None, 1]
    assert of(found, "b").left_out is LeftOut.BEYOND_THE_YEARS


def test_a_site_dearer_than_a_year_is_split_by_whole_dispensers() -> None:
    # year 1: visit 10 + once 5 + 40 + 40 = 95 of 100; year 2: 10 + 40 - grant 20 = 30
    found = of(programme(site("a", work(40, 40, 40, visit=10, once=5, grant=20)), budget=100), "a")
    assert [(one.year, one.dispensers, one.cash) for one in found.visits] == [(1, ("1", "2"), 95), (2, ("3",), 30)]
    assert (found.year, found.year_reason) == (2, YearReason.IN_PARTS)
    assert [one.lost_margin for one in found.visits] == [3 + 14, 3 + 7]  # the station stands still at each visit
    assert [one.own_minutes for one in found.visits] == [60 + 20, 60 + 10]


def test_no_visit_is_made_only_because_a_year_has_a_little_left() -> None:
    # year 1 has 95 - 55 = 40 left: one dispenser (10 + 30). Three dispensers are done a year sooner for it ...
    first = site("first", 55, net_present_value=Decimal(900))
    three = site("a", work(30, 30, 30, visit=10), net_present_value=Decimal(1))
    found = of(programme(first, three, budget=95), "a")
    assert [(one.year, one.dispensers) for one in found.visits] == [(1, ("1",)), (2, ("2", "3"))]
    # ... four are not: 1 + 2 + 1 end in year 3 as 2 + 2 do from year 2 on, with a visit of 10 less
    four = site("a", work(30, 30, 30, 30, visit=10), net_present_value=Decimal(1))
    found = of(programme(first, four, budget=95), "a")
    assert [(one.year, one.dispensers) for one in found.visits] == [(2, ("1", "2")), (3, ("3", "4"))]


def test_money_is_saved_up_for_one_visit_unless_several_finish_before() -> None:
    # 190 in one visit: 200 are there in year 2; 90 + 10 and 90 + 10 would end in year 2 as well, with a visit more
    once = of(programme(site("a", work(90, 90, visit=10)), budget=100, carry_over=True), "a")
    assert [(one.year, one.dispensers, one.cash) for one in once.visits] == [(2, (), 190)]
    assert once.year_reason is YearReason.SAVED_UP


def test_what_cannot_be_split_is_told_with_the_reason() -> None:
    one_tank = of(programme(site("a", work(140, why=SplitHindrance.ONE_TANK)), budget=100), "a")
    assert one_tank.left_out is LeftOut.DEARER_THAN_A_YEAR
    assert one_tank.site.work is not None
    assert one_tank.site.work.hindrance is SplitHindrance.ONE_TANK
    part = of(programme(site("a", work(20, 95, visit=10)), budget=100), "a")  # 95 + 10 > 100
    assert part.left_out is LeftOut.PART_DEARER
    assert part.dear_part is not None
    assert part.dear_part.dispensers == ("2",)


def test_no_site_is_begun_that_the_years_do_not_finish() -> None:
    sites = (site("a", work(80, 80, 80, visit=10)), site("b", 90, net_present_value=Decimal(1)))
    found = programme(*sites, budget=100, years=2)
    assert of(found, "a").visits == ()
    assert of(found, "a").left_out is LeftOut.BEYOND_THE_YEARS
    assert of(found, "b").year == 1  # the money is there for the next


def test_a_deadline_goes_first_and_is_told_whether_it_is_kept() -> None:
    sites = (
        site("rich", 100, net_present_value=Decimal(900)),
        site("late", 100, deadline_year=2028),
        site("soon", 100, deadline_year=2030),
        site("far", 100, deadline_year=2040, net_present_value=Decimal(5)),
    )
    found = programme(*sites, budget=100, years=4, first_year=2027, deadlines={"soon": 2027})
    assert [one.site.place for one in found.ranked] == ["soon.json", "late.json", "rich.json", "far.json"]
    assert [one.deadline for one in found.ranked] == [2027, 2028, None, 2040]  # what is named goes before the survey
    assert [one.rank_reason for one in found.ranked][:3] == [RankReason.DEADLINE] * 2 + [RankReason.RETURN]
    assert [one.in_time for one in found.ranked] == [True, True, None, True]
    missed = programme(*sites, budget=100, first_year=2027, deadlines={"RICH": 2027, "soon.json": 2027})
    assert [of(missed, name).in_time for name in ("rich", "soon")] == [True, False]
    assert of(missed, "soon").year == 2
    assert of(programme(*sites, budget=100), "late").in_time is None  # no first year: not looked at


@pytest.mark.parametrize(("named", "first_year"), [({"x": 2028}, 2027), ({"TWIN": 2028}, 2027), ({"a": 2028}, None)])
def test_a_deadline_that_names_no_site_or_several_is_refused(named: dict[str, int], first_year: int | None) -> None:
    sites = (site("a", 1), site("b", 1, name="TWIN"), site("c", 1, name="TWIN"))
    with pytest.raises(InputFault, match="deadline"):
        programme(*sites, budget=10, first_year=first_year, deadlines=named)


def test_emissions_of_a_year_are_those_of_all_sites_done_by_its_figures() -> None:
    yearly = tuple(YearlyChange(year=year, kg=kg) for year, kg in ((2027, -10.0), (2028, -30.0)))
    sites = (
        site("a", 100, yearly=yearly, change_kg=-10.0),
        site("b", 100, change_kg=4.0, net_present_value=Decimal(1)),
    )
    found = programme(*sites, budget=100, first_year=2027)
    assert [one.after_kg for one in found.years] == [-10.0, -26.0]  # -30 + 4: b has its reference year only
    assert [one.change_kg for one in found.years] == [-10.0, 4.0]


units_drawn = st.lists(st.integers(1, 90), min_size=1, max_size=4)
sites_drawn = st.lists(st.tuples(units_drawn, st.integers(0, 20), st.integers(0, 900)), min_size=1, max_size=6)


@settings(deadline=None, max_examples=up_to(80))
@given(sites_drawn, st.integers(60, 140), st.integers(1, 4), st.booleans(), st.integers(0, 6))
def test_no_year_overspends_no_dispenser_is_parted_and_no_earlier_year_had_room(
    drawn: list[tuple[list[int], int, int]], budget: int, years: int, carry: bool, rise: int
) -> None:
    sites = [
        site(f"s{number}", work(*units, visit=visit), net_present_value=Decimal(value))
        for number, (units, visit, value) in enumerate(drawn)
    ]
    found = programme(*sites, budget=budget, years=years, carry_over=carry, price_rise_percent=Decimal(rise))
    spent = [Decimal(0)] * years
    for one in found.ranked:
        assert one.site.work is not None
        if one.visits:
            _check_visits(one, Decimal(rise))
        if one.year_reason in (YearReason.FIRST, YearReason.LATER):
            # brute force: no earlier year could have paid it beside what ranks before it
            for year in range(1, one.visits[0].year):
                cost = (one.site.work.cash * (1 + Decimal(rise) / 100) ** (year - 1)).quantize(Decimal("0.01"))
                tried = list(spent)
                tried[year - 1] += cost
                assert cost > budget or not _is_paid(tried, budget, carry=carry)
        for visit in one.visits:
            spent[visit.year - 1] += visit.cash
        assert _is_paid(spent, budget, carry=carry)


def _check_visits(one: RankedSite, rise: Decimal) -> None:
    assert one.site.work is not None
    units = {unit.dispensers[0]: unit.cash for unit in one.site.work.units}
    seen = [name for visit in one.visits for name in visit.dispensers] or list(units)
    assert sorted(seen) == sorted(units)  # each dispenser once and whole
    assert all(before.year < after.year for before, after in pairwise(one.visits))
    for visit in one.visits:
        paid = sum((units[name] for name in visit.dispensers or units), one.site.work.visit_cash)
        assert abs(visit.cash - paid * (1 + rise / 100) ** (visit.year - 1)) <= Decimal("0.005")


def _is_paid(spent: list[Decimal], budget: int, *, carry: bool) -> bool:
    if not carry:
        return all(one <= budget for one in spent)
    return all(sum(spent[:year], Decimal(0)) <= budget * year for year in range(1, len(spent) + 1))


@pytest.mark.parametrize("typed", ["", "  "])
def test_what_is_left_empty_sets_nothing(typed: str) -> None:
    assert typed_budget(typed, "x") is typed_percent(typed, "x") is typed_year(typed, "x") is None
    assert typed_deadlines([typed], "x") == {}


@pytest.mark.parametrize(
    ("read", "typed"),
    [
        *((typed_budget, one) for one in ("-5", "0", "much", "1,000", "nan", "inf", "1e3", "1" * 40)),
        *((typed_percent, one) for one in ("-1", "51", "three", "3,5", "nan", "%")),
        *((typed_year, one) for one in ("27", "1999", "2201", "02027", "2027.0", "x", "２０２７")),
    ],
)
def test_terms_that_cannot_be_read_are_named(read: Any, typed: str) -> None:
    with pytest.raises(InputFault, match="--it"):
        read(typed, "--it")


def test_typed_terms_are_read_as_written() -> None:
    assert typed_percent(" 2.5 % ", "x") == Decimal("2.5")
    assert typed_deadlines(["a=b.json = 2028", "c=2030"], "x") == {"a=b.json": 2028, "c": 2030}
    for bad in ("2028", "a=", "=2028", "a=28"):
        with pytest.raises(InputFault, match="--it"):
            typed_deadlines([bad], "--it")
    with pytest.raises(InputFault, match="another year"):
        typed_deadlines(["a=2028", "a=2029"], "--it")
