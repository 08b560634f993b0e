"""What is bought of a set sold made up: the article once, with the mass of all its parts and their drive-off cost."""

from __future__ import annotations

from decimal import Decimal
from types import SimpleNamespace
from typing import cast

import pytest

from planning.quoting_terms import terms_of
from planning.stores import ListStore
from planning.surveys import ALL_THAT_FIT
from planning.test_made_up import article, made_parts, planned
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.planning.pack.pick_list import parts_of
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.refit.drive_off import drive_off_estimate
from spoutline.planning.refit.quantities import part_quantities


@pytest.fixture(scope="module")
def plan(catalogue: CatalogueStore, us_tables: RuleTables) -> PositionPlan:
    """Return the plan of a car's hose whose whole set is an article at 100 USD."""
    survey = ALL_THAT_FIT["car"]
    alone = planned(survey.positions[0], survey.site, us_tables, catalogue, with_alternatives=False).chosen
    assert alone is not None
    pieces = tuple(link.part for link in alone.hanging_set.links)
    store = ListStore(tuple(made_parts(article(pieces))))
    made = planned(survey.positions[0], survey.site, us_tables, store, with_alternatives=False)
    assert made.chosen is not None
    return made


def bought(plan: PositionPlan) -> tuple[Part, ...]:
    assert plan.chosen is not None
    return plan.chosen.hanging_set.bought


def test_the_article_is_ordered_once_with_the_mass_of_all_its_parts(plan: PositionPlan) -> None:
    quantities = part_quantities([plan], terms_of())
    ordered = {one.part.number: one for one in quantities if one.part.article is not None}
    assert set(ordered) == {"KIT 7"}
    assert ordered["KIT 7"].fitted == 1
    assert ordered["KIT 7"].mass_kg == pytest.approx(sum(part.mass_kg for part in bought(plan)))
    (carried,) = (part for part, _ in parts_of(plan) if part.article is not None)
    assert carried.number == "KIT 7"
    assert carried.mass_kg == pytest.approx(ordered["KIT 7"].mass_kg)


def test_what_comes_in_the_article_has_no_price_of_its_own_and_the_whole_is_bought_after_a_drive_off(
    plan: PositionPlan,
) -> None:
    day, first = terms_of().heading.dated, bought(plan)[0]
    step = PriceBreak(from_quantity=1, unit_price=Decimal(90))
    row = PriceRow(part_number="KIT 7", discount_group="", breaks=(step,))
    listed = PriceList(id="own", maker=first.maker, currency="USD", valid_from=day, valid_to=None, rows=(row,))
    drive_offs = {"per_position_year": 2, "years": 1, "single_use_hours": 0, "reconnectable_hours": 0}
    selling = {"method": "list_less_discount", "percent": 0}
    pricer = Pricer(terms_of(drive_offs=drive_offs, selling=selling), PriceBook((listed,), day))
    prices = [pricer.unit_price(part, 1) for part in bought(plan)]
    assert [getattr(one, "list_price", None) for one in prices] == [Decimal(90), *[Decimal(0)] * (len(prices) - 1)]
    estimate = drive_off_estimate(cast(SitePlan, SimpleNamespace(positions=(plan,))), pricer)
    assert estimate is not None
    breakaway = next(part.breakaway for part in bought(plan) if part.breakaway is not None)
    assert not breakaway.reconnectable
    assert estimate.per_year == 180  # two separations a year, the article of 90 bought anew at each, no labor
