"""Named cases: the survey as each would have it, and that each is worked out as its own survey would be."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest
from pydantic import ValidationError

from planning.conversion_sites import context_for, position, site_of
from spoutline.bootstrap.demos import demo_survey
from spoutline.catalogue.store import CatalogueStore
from spoutline.explain.conversion.case_words import emission_change_kg
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_case import ConversionCase
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey, VapourStatus
from spoutline.planning.conversion.cases import CaseResult, case_results, survey_of_case
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.planning.conversion.typed_cases import typed_cases

E0, E10, B5 = (
    {"family": family, "blend_percent": percent}
    for family, percent in (("gasoline", 0), ("gasoline", 10), ("diesel", 5))
)
MONEY = {"upkeep_today_per_year": "4200", "upkeep_after_per_year": "1300"}


def station(**conversion: Any) -> Survey:
    """Return two islands that lose recovery, a marine hose, gasoline without ethanol, and diesel."""
    return site_of(
        position("1A", dispenser="1", island="West", today="balance", liquid=E10),
        position("2A", dispenser="2", island="West", today="balance", liquid=E10),
        position("3A", dispenser="3", today="balance", liquid=E10),
        position("4A", dispenser="4", liquid=E10, duty="marine"),
        position("5A", dispenser="5", liquid=E0),
        position("6A", dispenser="6", liquid=B5),
        money=MONEY,
        **conversion,
    )


def case(**changes: Any) -> ConversionCase:
    return ConversionCase.model_validate({"name": "x", **changes})


def changed(survey: Survey) -> dict[str, Any]:
    return {one.label: one for one in survey.positions}


def test_recovery_stays_on_the_islands_named_and_its_upkeep_with_it() -> None:
    found = survey_of_case(station(), case(keep_islands=("West",)))
    wanted = {one.label: one.vapour_wanted for one in found.positions}
    assert [label for label, status in wanted.items() if status is VapourStatus.BALANCE] == ["1A", "2A"]
    # by hand: 2 of 3 hoses keep it: 1300 + (4200 - 1300) * 2 / 3 = 3233.33
    assert found.conversion.money.upkeep_after_per_year == Decimal("3233.33")
    by_dispenser = survey_of_case(station(), case(keep_islands=("3",)))  # a dispenser that names no island
    assert changed(by_dispenser)["3A"].vapour_wanted is VapourStatus.BALANCE
    assert by_dispenser.conversion.money.upkeep_after_per_year == Decimal("2266.67")


def test_where_the_agency_demands_retention_nothing_goes_and_nothing_is_saved() -> None:
    found = survey_of_case(station(), case(retention=True))
    assert all(one.vapour_wanted is one.vapour_today for one in found.positions)
    assert found.conversion.money.upkeep_after_per_year == 4200


def test_a_blend_comes_where_less_was_sold_but_not_for_boats_nor_without_ethanol() -> None:
    found = changed(survey_of_case(station(), case(ethanol_percent=15, biodiesel_percent=20)))
    assert {label: one.liquid.blend_percent for label, one in found.items()} == {
        **dict.fromkeys(("1A", "2A", "3A"), 15),
        **{"4A": 10, "5A": 0, "6A": 20},
    }
    assert found["1A"].liquid_today.blend_percent == 10  # what is sold today is said, so that the tank changes
    assert found["6A"].liquid_today.blend_percent == 5
    assert found["4A"].liquid_today is None


def test_a_sale_ends_the_years_and_changes_nothing_else() -> None:
    survey = station(cases=[{"name": "x", "sold_after_years": 5}])
    found = survey_of_case(survey, survey.conversion.cases[0])
    assert found.conversion.money.years == 5
    assert found.positions == survey.positions
    assert found.conversion.money.upkeep_after_per_year == 1300


@pytest.mark.parametrize(
    ("changes", "named"),
    [
        ({"keep_islands": ("East",)}, "name an island of the station: West, 3"),
        ({"keep_islands": ("6",)}, "no hose there is to lose recovery"),
        ({"ethanol_percent": 10}, "gasoline with less ethanol"),
        ({"biodiesel_percent": 5}, "diesel with less biodiesel"),
    ],
)
def test_what_the_station_does_not_have_is_told(changes: dict[str, Any], named: str) -> None:
    with pytest.raises(InputFault, match=named):
        survey_of_case(station(), case(**changes))


def test_cases_have_names_of_their_own_and_change_something() -> None:
    with pytest.raises(ValidationError, match="changes nothing"):
        case()
    with pytest.raises(ValidationError, match="a name of its own"):
        station(cases=[{"name": "x", "retention": True}, {"name": "x", "sold_after_years": 5}])


def test_cases_are_read_as_typed() -> None:
    first, second = typed_cases(["West stays = keep:West+3, e15", "Sold=sold:5,B20,retention"], "--case")
    assert (first.name, first.keep_islands, first.ethanol_percent) == ("West stays", ("West", "3"), 15)
    assert (second.sold_after_years, second.biodiesel_percent, second.retention) == (5, 20, True)


@pytest.mark.parametrize(
    "typed", ["", "x", "x=", "=E15", "x=E", "x=E150", "x=sold:0", "x=sold:five", "x=E15,E10", "x=keep:", "x=moved"]
)
def test_a_case_that_cannot_be_read_is_named(typed: str) -> None:
    with pytest.raises(InputFault, match="--case"):
        typed_cases([typed], "--case")
    with pytest.raises(InputFault, match="is there already"):
        typed_cases(["x=E15", "x=B20"], "--case")


CASES = typed_cases(["One stays=keep:1", "Retained=retention", "E15 too=E15", "Sold early=sold:5"], "--case")


@pytest.fixture(scope="module")
def results(catalogue: CatalogueStore) -> dict[str, CaseResult]:
    survey = demo_survey("conversion_assist")

    def convert(other: Survey) -> SiteConversion:
        return convert_site(other, context_for(other, catalogue))

    found = case_results(survey, convert(survey), CASES, convert)
    return {"" if one.case is None else one.case.name: one for one in found}


# Uniform present value factors at 6 % of the tables in engineering economy handbooks (from memory): 5 and 10 years.
UNIFORM_PRESENT_VALUE = {5: Decimal("4.2124"), 10: Decimal("7.3601")}


def test_the_value_of_each_case_is_that_of_the_handbook(results: dict[str, CaseResult]) -> None:
    # saving a year: 4200 - 1300 = 2900; 5 of 7 hoses lose recovery: 2900 * 5 / 7 = 2071.43; none: 0
    for name, saving, years in (
        ("", "2900", 10),
        ("Sold early", "2900", 5),
        ("One stays", "2071.43", 10),
        ("Retained", "0", 10),
    ):
        money = results[name].conversion.money
        assert money.net_present_value is not None
        by_table = Decimal(saving) * UNIFORM_PRESENT_VALUE[years] - money.total
        assert abs(money.net_present_value - by_table) <= Decimal(saving) * Decimal("0.00005") + Decimal("0.05")


def test_a_case_is_worked_out_as_a_survey_of_its_own(results: dict[str, CaseResult], catalogue: CatalogueStore) -> None:
    data = demo_survey("conversion_assist").model_dump(mode="json")
    for one in data["positions"]:
        if one["dispenser"] == "1":
            one["vapour_wanted"] = one["vapour_today"]
    by_hand = Survey.model_validate(data)
    alone = convert_site(by_hand, context_for(by_hand, catalogue))
    found = results["One stays"]
    assert found.changed == ("1A regular", "1B regular")
    assert found.conversion.positions == alone.positions
    assert found.conversion.sequence == alone.sequence
    assert found.conversion.money.costs == alone.money.costs
    assert emission_change_kg(found.conversion) == emission_change_kg(alone)


def test_where_recovery_stays_no_emission_changes(results: dict[str, CaseResult]) -> None:
    assert emission_change_kg(results["Retained"].conversion) == 0.0
    base, one_stays = (emission_change_kg(results[name].conversion) for name in ("", "One stays"))
    assert base is not None
    assert one_stays is not None
    assert one_stays / base == pytest.approx(5 / 7, rel=0.02)  # gasoline is taken to be sold alike at every hose


def test_each_conversion_says_which_case_it_is(results: dict[str, CaseResult]) -> None:
    assert results[""].conversion.case is None
    assert [one.conversion.case.name for one in results.values() if one.conversion.case] == [one.name for one in CASES]
