"""Standing, emissions and money of a conversion, against texts of the rules, hand work and a polynomial library."""

from __future__ import annotations

from decimal import Decimal

import pytest
from numpy.polynomial import Polynomial

from planning.conversion_sites import RESOURCES, context_for, position, rule_tables, site_of, vapour_tables
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_money import CostKind, MoneyGap
from spoutline.model.emission_sheet import EmissionGap, ShareOrigin
from spoutline.model.faults import InputFault
from spoutline.model.position_conversion import PositionOutcome
from spoutline.model.removal_standing import Standing, StandingReason
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.planning.conversion.money_sheet import cash_years, simple_payback
from spoutline.rules.conversion.standing import removal_standing
from spoutline.ruletables.conversion_steps import steps_from_toml
from spoutline.ruletables.vapour import vapour_tables_from_toml

GOING = position("1A", today="vacuum_assist")


def converted(catalogue: CatalogueStore, *positions: dict[str, object], **answers: object) -> SiteConversion:
    survey = site_of(*(positions or (GOING,)), **answers)
    return convert_site(survey, context_for(survey, catalogue))


# standing


@pytest.mark.parametrize(
    ("jurisdiction", "answers", "standing", "reason"),
    [
        # CARB pages on retail Phase II (secondary): mandatory at retail stations
        ("us_general", {"agency": "california_retail"}, Standing.NOT_ALLOWED, StandingReason.AGENCY_FORBIDS),
        ("us_vapour_rules", {}, Standing.NOT_ALLOWED, StandingReason.PROFILE_FORBIDS),
        # 40 CFR 51.126(b): the state revises its plan first, so the agency is asked
        ("us_general", {}, Standing.ASK, StandingReason.AGENCY_UNKNOWN),
        # 84 FR 3369: keep and maintain, or remove
        ("us_general", {"agency": "maryland"}, Standing.MAY_GO, StandingReason.AGENCY_ALLOWS),
        # 30 TAC 115.241: all done by 31 August 2018
        ("us_general", {"agency": "texas"}, Standing.MUST_GO, StandingReason.AGENCY_DEMANDS),
        # Directive 2009/126/EC, EU summary: existing stations in excess of 3000 m3, new ones of 500 m3 a year
        (
            "europe",
            {"emissions": {"gasoline_throughput_m3": 3001}},
            Standing.NOT_ALLOWED,
            StandingReason.ABOVE_THRESHOLD,
        ),
        ("europe", {"emissions": {"gasoline_throughput_m3": 3000}}, Standing.MAY_GO, StandingReason.BELOW_THRESHOLD),
        (
            "europe",
            {"station": "new_or_refurbished", "emissions": {"gasoline_throughput_m3": 501}},
            Standing.NOT_ALLOWED,
            StandingReason.ABOVE_THRESHOLD,
        ),
        (
            "europe",
            {
                "station": "new_or_refurbished",
                "under_living_quarters": True,
                "emissions": {"gasoline_throughput_m3": 101},
            },
            Standing.NOT_ALLOWED,
            StandingReason.ABOVE_THRESHOLD,
        ),
        ("europe", {}, Standing.ASK, StandingReason.THROUGHPUT_UNKNOWN),
    ],
)
def test_the_standing_follows_the_strictest_text(
    jurisdiction: str, answers: dict[str, object], standing: Standing, reason: StandingReason
) -> None:
    survey = site_of(GOING, jurisdiction=jurisdiction, **answers)
    found = removal_standing(survey, rule_tables(jurisdiction).jurisdiction, vapour_tables())
    assert found.standing is standing
    assert reason in {ground.reason for ground in found.grounds}
    assert all(ground.source for ground in found.grounds)


def test_a_site_that_keeps_its_recovery_is_not_concerned() -> None:
    survey = site_of(position("1A", today="balance", wanted="balance"), agency="california_retail")
    found = removal_standing(survey, rule_tables("us_general").jurisdiction, vapour_tables())
    assert found.standing is Standing.NOT_CONCERNED
    assert found.positions == ()


def test_nothing_is_planned_where_removal_is_not_allowed(catalogue: CatalogueStore) -> None:
    found = converted(catalogue, agency="california_retail")
    assert [one.outcome for one in found.positions] == [PositionOutcome.NOT_ALLOWED]
    assert found.sequence is None
    assert not found.plan_complete


def test_an_unknown_agency_is_refused_with_the_known_ones(catalogue: CatalogueStore) -> None:
    with pytest.raises(InputFault) as refused:
        converted(catalogue, agency="atlantis")
    assert "wisconsin" in refused.value.problems[0].wanted


# emissions

SHARES = [{"year": 2026, "share": 0.88}, {"year": 2027, "share": 0.96}]


def test_a_year_of_the_balance_is_throughput_times_rate_times_increment(catalogue: CatalogueStore) -> None:
    emissions = {"gasoline_throughput_m3": 5678.117676, "own_shares": SHARES, "in_use_efficiency": 0.7}
    sheet = converted(catalogue, emissions=emissions, sequence={"start_date": "2027-03-01"}).emissions
    assert sheet is not None
    year = next(one for one in sheet.years if one.year == 2027)
    assert year.origin is ShareOrigin.OWN
    # recalled form of EPA-457/B-12-001: (1 - 0.96) 0.7 - 0.0777 0.96 = -0.046592, by hand
    assert year.increment == pytest.approx(-0.046592, abs=1e-9)
    # 1 500 000 gal x 3.0152931 g/gal (published worked example at 59.5 degF and 8 psi) x increment, in kg
    assert year.displacement_kg == pytest.approx(1_500_000 * 3.0152931e-3 * -0.046592, rel=1e-6)
    assert sheet.reference_year == 2027
    assert sheet.crossing_year == 2018  # the recalled table crosses 0.9001 between 89.5 and 91.2 percent


def test_a_balance_system_never_turns_negative(catalogue: CatalogueStore) -> None:
    sheet = converted(catalogue, position("1A", today="balance"), agency="maryland").emissions
    assert sheet is not None
    assert sheet.break_even.result.value == 1.0
    assert all(one.increment > 0 for one in sheet.years)
    assert sheet.crossing_year is None


def test_assist_that_works_with_onboard_recovery_counts_as_balance(catalogue: CatalogueStore) -> None:
    sheet = converted(catalogue, emissions={"assist_works_with_onboard": True}).emissions
    assert sheet is not None
    assert sheet.assist_share == 0.0


def test_the_table_is_held_only_where_the_owner_chose_so(catalogue: CatalogueStore) -> None:
    start = {"start_date": "2027-03-01"}
    stopped = converted(catalogue, sequence=start).emissions
    assert stopped is not None
    assert stopped.years[-1].year == 2020
    assert EmissionGap.SHARES in stopped.gaps
    held = converted(catalogue, sequence=start, emissions={"after_table": "hold_last"}, money={"years": 5}).emissions
    assert held is not None
    assert held.years[-1].year == 2031
    assert held.years[-1].onboard_share == held.years[14].onboard_share == 0.936
    assert {one.origin for one in held.years if one.year > 2020} == {ShareOrigin.HELD}
    assert EmissionGap.SHARES_HELD in held.gaps


def test_without_a_throughput_no_mass_is_made_up(catalogue: CatalogueStore) -> None:
    sheet = converted(catalogue).emissions
    assert sheet is not None
    assert EmissionGap.THROUGHPUT in sheet.gaps
    assert all(one.displacement_kg is None and one.total_kg is None for one in sheet.years)


@pytest.mark.parametrize(
    ("basis", "factor"),
    [
        ("ap42", 1320e-6 * 1e3),  # AP-42 table 5.2-7 (memory): 1320 mg/L, in kg/m3
        ("epa_model", 3.0152931e-3 / 3.785411784e-3),  # published worked example, g/gal in kg/m3
    ],
)
def test_one_balance_uses_one_source(basis: str, factor: float, catalogue: CatalogueStore) -> None:
    emissions = {"gasoline_throughput_m3": 1000, "own_shares": SHARES, "basis": basis}
    sheet = converted(catalogue, emissions=emissions, sequence={"start_date": "2027-03-01"}).emissions
    assert sheet is not None
    year = next(one for one in sheet.years if one.year == 2027)
    assert year.displacement_kg == pytest.approx(1000 * factor * year.increment, rel=1e-6)
    others = {"ap42": "rate_constant", "epa_model": "ap42_displacement"}
    assert others[basis] not in {figure.id for figure in sheet.figures}


def test_fixed_factors_of_2013_by_hand(catalogue: CatalogueStore) -> None:
    # CARB revised factors (memory), lb/1000 gal: 0.04 (8.4 - 0.42) + 0.96 (0.42 - 0.021) = 0.70224;
    # spillage 0.61 - 0.24
    emissions = {"gasoline_throughput_m3": 3785.411784, "own_shares": SHARES, "basis": "carb"}  # 1 000 000 gal
    sheet = converted(catalogue, emissions=emissions, sequence={"start_date": "2027-03-01"}).emissions
    assert sheet is not None
    year = next(one for one in sheet.years if one.year == 2027)
    assert year.displacement_kg == pytest.approx(702.24 * 0.45359237, rel=1e-6)
    assert year.spillage_kg == pytest.approx(370.0 * 0.45359237, rel=1e-6)


def test_sensitivity_moves_the_result_the_way_physics_says(catalogue: CatalogueStore) -> None:
    emissions = {"gasoline_throughput_m3": 1000, "own_shares": SHARES}
    sheet = converted(catalogue, emissions=emissions, sequence={"start_date": "2027-03-01"}).emissions
    assert sheet is not None
    rows = {row.input_name: row for row in sheet.sensitivity}
    assert rows["in_use_efficiency"].increment_low < rows["in_use_efficiency"].increment_high
    assert rows["compatibility_slope"].increment_low > rows["compatibility_slope"].increment_high
    assert rows["onboard_share"].increment_low > rows["onboard_share"].increment_high
    pressure = rows["vapour_pressure"]
    assert pressure.change_low_kg is not None
    assert pressure.change_high_kg is not None
    assert abs(pressure.change_low_kg) < abs(pressure.change_high_kg)  # more vapour at a higher vapour pressure


def test_more_assist_than_recovery_is_refused_by_name(catalogue: CatalogueStore) -> None:
    kept = position("1B", today="balance", wanted="balance")
    with pytest.raises(InputFault) as refused:
        converted(catalogue, GOING, kept, agency="maryland", emissions={"assist_share": 0.9})
    assert "assist_share" in refused.value.problems[0].field


# money


def test_net_present_value_of_a_published_example() -> None:
    # example of a spreadsheet program's help for its NPV function, from memory: 10 %, 10 000 paid at the end of year 1,
    # then 3000, 4200 and 6800: 1188.44. With the cost at once and equal flows, the same discounting is held against a
    # polynomial in v = 1/1.1 below.
    flows = Polynomial([0, -10000, 3000, 4200, 6800])
    assert float(flows(1 / 1.1)) == pytest.approx(1188.44, abs=0.005)
    years = cash_years(Decimal(10000), Decimal(3000), Decimal(10), 4)
    annuity = Polynomial([-10000, 3000, 3000, 3000, 3000])
    assert float(years[-1].balance) == pytest.approx(float(annuity(1 / 1.1)), abs=1e-9)


def test_payback_by_hand() -> None:
    assert simple_payback(Decimal(9000), Decimal(3000)) == Decimal("3.0")
    assert simple_payback(Decimal(1000), Decimal(0)) is None
    assert simple_payback(Decimal(1000), Decimal(-5)) is None


def test_the_total_is_the_exact_sum_of_its_lines(catalogue: CatalogueStore) -> None:
    money = converted(
        catalogue,
        agency="wisconsin",
        money={
            "labour_rate_per_hour": "95.50",
            "upkeep_today_per_year": "3000",
            "upkeep_after_per_year": "900.25",
            "own_costs": [{"label": "tests", "amount": "1150.10", "eligible": True}],
            "grant": "500",
        },
    ).money
    assert money.complete
    assert money.total == sum((line.amount for line in money.costs if line.amount is not None), Decimal(0))
    assert money.yearly_saving == Decimal("2099.75")
    grant = next(line for line in money.costs if line.kind is CostKind.GRANT)
    assert grant.amount == Decimal(-500)
    # Wis. Stat. 285.31(6)(am): the lesser of half the eligible cost and 8000 USD
    eligible = sum((line.amount for line in money.costs if line.eligible and line.amount), Decimal(0))
    assert money.grant_possible == min(eligible / 2, Decimal(8000)).quantize(Decimal("0.01"))


def test_no_payback_is_shown_without_the_owners_own_figures(catalogue: CatalogueStore) -> None:
    money = converted(catalogue, agency="maryland", money={"upkeep_today_per_year": "3000"}).money
    assert {MoneyGap.LABOUR_RATE, MoneyGap.UPKEEP} <= set(money.gaps)
    assert not money.complete
    assert (money.payback_years, money.net_present_value, money.years) == (None, None, ())


# tables


def test_a_bad_row_of_the_tables_names_file_row_and_what_would_be_right() -> None:
    folder = RESOURCES / "rules" / "vapour"
    figures, shares, agencies = (
        (folder / name).read_text() for name in ("figures.toml", "onboard_shares.toml", "agencies.toml")
    )
    broken = figures.replace('status = "memory"', 'status = "rumour"', 1)
    with pytest.raises(InputFault) as refused:
        vapour_tables_from_toml(broken, shares.replace("year = 2007", "year = 2005"), agencies)
    fields = [problem.field for problem in refused.value.problems]
    assert any("status" in field for field in fields)
    assert "year" in fields
    missing = figures.replace('id = "onboard_rate"', 'id = "model_spillage"', 1)
    with pytest.raises(InputFault) as twice:
        vapour_tables_from_toml(missing, shares, agencies)
    assert {problem.field for problem in twice.value.problems} == {"onboard_rate", "model_spillage"}


def test_a_step_waits_only_for_steps_above_it() -> None:
    text = (RESOURCES / "conversion" / "steps.toml").read_text()
    with pytest.raises(InputFault) as refused:
        steps_from_toml(
            text.replace('after = ["ask_agency", "record_system"]', 'after = ["send_records"]'), "steps.toml"
        )
    assert refused.value.problems[0].field.endswith("after")
