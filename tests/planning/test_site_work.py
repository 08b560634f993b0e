"""The cost of a conversion by its parts: nothing is lost or counted twice, and what belongs together stays together."""

from __future__ import annotations

from decimal import Decimal
from random import Random
from typing import Any

import pytest

from bench.generated_sites_conversion import generated_site
from planning.conversion_sites import PLAIN_CHAIN, context_for, installed, position, site_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_money import CostKind
from spoutline.model.conversion_step import StepRole
from spoutline.model.position_conversion import PositionOutcome
from spoutline.model.programme import SiteWork, SplitHindrance
from spoutline.model.survey import Survey
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.planning.conversion.site_result import site_result
from spoutline.planning.conversion.site_work import site_work

E10 = {"family": "gasoline", "blend_percent": 10}
E15 = {"family": "gasoline", "blend_percent": 15}
B5 = {"family": "diesel", "blend_percent": 5}
MONEY = {
    "labour_rate_per_hour": "90",
    "margin_lost_per_hour": "12.50",
    "grant": "300",
    "own_costs": [{"label": "permit", "amount": "450"}],
}


def converted(survey: Survey, catalogue: CatalogueStore) -> SiteConversion:
    return convert_site(survey, context_for(survey, catalogue))


def changed(survey: Survey, **answers: Any) -> Survey:
    data = survey.model_dump(mode="json")
    data["conversion"].update(answers)
    return Survey.model_validate(data)


def removal(agency: str, **answers: Any) -> Survey:
    """Return a station of several dispensers that loses recovery everywhere."""
    return changed(generated_site(3, Random(5)), agency=agency, money=MONEY, **answers)


def work_of(conversion: SiteConversion) -> SiteWork:
    found = site_work(conversion)
    assert found is not None
    return found


def dispensers_of(conversion: SiteConversion) -> list[str]:
    converts = (one for one in conversion.positions if one.outcome is PositionOutcome.CONVERTS)
    return sorted({one.position.dispenser for one in converts})


@pytest.fixture(scope="module")
def maryland(catalogue: CatalogueStore) -> SiteConversion:
    return converted(removal("maryland"), catalogue)


def test_the_parts_add_up_to_the_cost_of_the_site(maryland: SiteConversion) -> None:
    work, lines = work_of(maryland), maryland.money.costs
    assert work.lost_margin is not None
    assert work.cash - work.grant + work.lost_margin == maryland.money.total
    assert (work.once_cash, work.grant) == (450, 300)
    assert work.lost_margin == sum(one.amount or 0 for one in lines if one.kind is CostKind.LOST_MARGIN)
    assert maryland.sequence is not None
    own = sum(one.work_minutes for one in maryland.sequence.tasks if one.role is StepRole.OWNER)
    assert work.own_minutes == own > 0


def test_every_dispenser_is_in_one_unit_with_its_parts_and_hours(maryland: SiteConversion) -> None:
    work = work_of(maryland)
    assert sorted(name for unit in work.units for name in unit.dispensers) == dispensers_of(maryland)
    assert len(work.units) == len(dispensers_of(maryland)) > 1
    assert maryland.sequence is not None
    for unit in work.units:
        (name,) = unit.dispensers
        here = [one for one in maryland.positions if one.position.dispenser == name]
        labels = {one.position.label for one in here}
        bought = sum(option.bought_minor for one in here if (option := one.good_practice))
        # hours by hand: what is done at the dispenser whole, what is done at positions by how many of them are here
        minutes = Decimal(0)
        for task in maryland.sequence.tasks:
            if task.phase is not None and task.places:
                at = [place for place in task.places if place == name or place in labels]
                minutes += Decimal(task.work_minutes) * len(at) / len(task.places)
        assert unit.cash == Decimal(bought) / 100 + (minutes / 60 * 90).quantize(Decimal("0.01"))


def test_an_agency_that_limits_the_days_of_the_work_keeps_the_removal_in_one_visit(catalogue: CatalogueStore) -> None:
    # Connecticut: finished within 100 days after its start (CGS 22a-174e, secondary)
    work = work_of(converted(removal("connecticut"), catalogue))
    assert len(work.units) == 1
    assert work.hindrance is SplitHindrance.AGENCY_FINISH


def changing(label: str, dispenser: str, liquid: dict[str, Any], tank: str) -> dict[str, Any]:
    chain = installed(*PLAIN_CHAIN)
    return position(label, dispenser=dispenser, liquid=liquid, liquid_today=E10, installed=chain, tank=tank)


def units(catalogue: CatalogueStore, *positions: dict[str, Any]) -> SiteWork:
    survey = site_of(*positions, money={"labour_rate_per_hour": "90"}, sequence={"tanks_underground": True})
    return work_of(converted(survey, catalogue))


def test_a_tank_whose_new_sets_do_not_serve_the_old_liquid_is_never_parted(catalogue: CatalogueStore) -> None:
    # a gasoline spout of 21.34 mm and a diesel spout of 23.6 mm are two spouts (SAE J285): no set serves both
    three = (changing("1A", "1", B5, "1"), changing("2A", "2", B5, "2"), changing("3A", "3", B5, "1"))
    found = units(catalogue, *three)
    assert [one.dispensers for one in found.units] == [("1", "3"), ("2",)]
    assert [one.tanks for one in found.units] == [("1",), ("2",)]
    alone = units(catalogue, three[0], three[2])
    assert alone.hindrance is SplitHindrance.ONE_TANK
    unknown = units(catalogue, changing("1A", "1", B5, ""), changing("2A", "2", B5, ""))
    assert (len(unknown.units), unknown.hindrance) == (1, SplitHindrance.TANK_UNKNOWN)


def test_sets_that_serve_both_liquids_may_hang_over_years(catalogue: CatalogueStore) -> None:
    found = units(catalogue, changing("1A", "1", E15, "1"), changing("2A", "2", E15, "1"))
    assert [one.dispensers for one in found.units] == [("1",), ("2",)]
    # the change of the product is counted at each visit: 240 minutes, and 45 + 5 + 15 at both positions, 90 an hour
    assert found.visit_cash >= Decimal(240 + 2 * 65) / 60 * 90
    one = units(catalogue, changing("1A", "1", E15, "1"))
    assert one.hindrance is SplitHindrance.ONE_DISPENSER


def test_without_the_price_of_work_there_are_no_parts(catalogue: CatalogueStore) -> None:
    found = converted(changed(removal("maryland"), money={}), catalogue)
    assert site_work(found) is None
    assert site_result(found, "a.json").cost is None


def test_the_change_of_each_known_year_goes_with_the_site(maryland: SiteConversion) -> None:
    sheet, result = maryland.emissions, site_result(maryland, "a.json")
    assert sheet is not None
    known = {one.year: one.total_kg for one in sheet.years if one.total_kg is not None}
    assert known
    assert {one.year: one.kg for one in result.yearly} == known
    assert result.change_kg == known[sheet.reference_year or 0] == result.change_in(sheet.reference_year)
    assert result.change_in(1990) == result.change_kg  # not known by itself: that of the reference year


def test_the_deadline_of_the_survey_goes_with_the_site(catalogue: CatalogueStore) -> None:
    assert site_result(converted(removal("maryland", deadline_year=2029), catalogue), "a.json").deadline_year == 2029
