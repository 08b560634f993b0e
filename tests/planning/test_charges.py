"""Quantities, labour, freight and tax by hand arithmetic; supersessions and drive-offs."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planning.quoting_terms import list_of, terms_of
from planning.stores import ListStore
from planning.surveys import CAR
from planning.test_commonality import station
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.limit import RuleTables
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import SitePlan
from spoutline.model.quotation_terms import OptionTerms, Singles, SparesRule
from spoutline.planning.pricing.charges import amounts_of, labour_lines
from spoutline.planning.pricing.price_book import PriceBook
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.refit.drive_off import drive_off_estimate
from spoutline.planning.refit.part_stores import OfferedParts, OfferedPrices, keeps
from spoutline.planning.refit.priced_lines import quoted_line
from spoutline.planning.refit.quantities import PartQuantity, part_quantities
from spoutline.planning.refit.spares import spare_pieces, spread_spares
from spoutline.planning.refit.station import plan_refit
from spoutline.planning.sets.supersession import with_successors


@pytest.fixture(scope="module")
def plan(catalogue: CatalogueStore, us_tables: RuleTables) -> SitePlan:
    """Plan five positions on three dispensers."""
    survey = station(("car", "truck"), (3, 2))
    names = ("1", "1", "2", "2", "3")
    positions = [one.model_copy(update={"dispenser": name}) for one, name in zip(survey.positions, names, strict=True)]
    return plan_refit(survey.model_copy(update={"positions": tuple(positions)}), us_tables, catalogue).site_plan


@pytest.mark.parametrize(
    ("fitted", "percent", "spares"),
    [(48, "5", 3), (40, "5", 2), (1, "5", 1), (10, "0", 0), (3, "100", 3), (200, "0.5", 1)],
)
def test_spares_are_rounded_up_to_whole_pieces(fitted: int, percent: str, spares: int) -> None:
    assert spare_pieces(fitted, Decimal(percent)) == spares


def counted(**fitted: int) -> dict[PartRef, int]:
    return {PartRef(number): count for number, count in fitted.items()}


@pytest.mark.parametrize(
    ("fitted", "percent", "singles", "spares"),
    [
        # by hand: 5 % of 21 is 1.05, two pieces; 10 and 8 are the two highest averages, before 10/2 = 5
        ({"A": 10, "B": 8, "C": 2, "D": 1}, "5", "none", {"A": 1, "B": 1, "C": 0, "D": 0}),
        # 5 % of 18 is 0.9, so A has one at most and the other goes to the next largest
        ({"A": 18, "B": 2, "C": 1}, "5", "none", {"A": 1, "B": 1, "C": 0}),
        # 15 % of 21 is 3.15, four pieces; of A 1.8, of B 0.9, of C 0.45, so that they have 2, 1 and 1 at most
        ({"A": 12, "B": 6, "C": 3}, "15", "none", {"A": 2, "B": 1, "C": 1}),
        # the usual textbook example of highest averages: eight seats for 100, 80, 30 and 20 (thousand) are 4, 3, 1, 0
        ({"A": 100, "B": 80, "C": 30, "D": 20}, "3.4", "none", {"A": 4, "B": 3, "C": 1, "D": 0}),
        # none for a part of which there is only one, unless wanted
        ({"A": 1, "B": 1, "C": 1}, "5", "none", {"A": 0, "B": 0, "C": 0}),
        ({"A": 1, "B": 1, "C": 1}, "5", "share", {"A": 1, "B": 0, "C": 0}),
        ({"A": 3, "B": 1}, "100", "none", {"A": 3, "B": 0}),
        ({"A": 3, "B": 1}, "100", "share", {"A": 3, "B": 1}),
        # equal counts: the earlier number first
        ({"B": 4, "A": 4}, "5", "none", {"A": 1, "B": 0}),
        ({"A": 10}, "0", "share", {"A": 0}),
    ],
)
def test_spares_go_by_the_station_and_to_the_parts_of_which_there_are_most(
    fitted: dict[str, int], percent: str, singles: str, spares: dict[str, int]
) -> None:
    rule = SparesRule(kind=PartKind.NOZZLE, percent=Decimal(percent), singles=Singles(singles))
    assert spread_spares(counted(**fitted), rule) == counted(**spares)


@given(counts=st.lists(st.integers(2, 60), min_size=1, max_size=6), tenths=st.integers(0, 1000))
def test_spares_are_the_largest_quotients_of_the_counts(counts: list[int], tenths: int) -> None:
    """Highest averages told otherwise: of all count / 1, count / 2, … as far as a part may have, the largest win."""
    fitted = {PartRef(f"X-{at}"): count for at, count in enumerate(counts)}
    rule = SparesRule(kind=PartKind.NOZZLE, percent=Decimal(tenths) / 10)
    quotients = sorted(
        (-Fraction(count, share), -count, ref)
        for ref, count in fitted.items()
        for share in range(1, -(-count * tenths // 1000) + 1)
    )
    won = [ref for _, _, ref in quotients[: -(-sum(counts) * tenths // 1000)]]
    assert spread_spares(fitted, rule) == {ref: won.count(ref) for ref in fitted}


def test_a_stations_spares_are_rounded_once_for_all_its_nozzles(plan: SitePlan) -> None:
    """Five hoses for cars and trucks have nozzles of two kinds: 20 % are one in all, and not one of each."""
    terms = terms_of(spares=[{"kind": "nozzle", "percent": 20}])
    nozzles = [one for one in part_quantities(plan.positions, terms) if one.part.kind is PartKind.NOZZLE]
    assert sorted(one.fitted for one in nozzles) == [2, 3]
    assert [one.spares for one in sorted(nozzles, key=lambda one: one.fitted)] == [0, 1]


def test_orders_are_whole_packs_and_sealant_goes_by_joints(plan: SitePlan) -> None:
    packs = {}
    positions = []
    for one in plan.positions:
        assert one.chosen is not None
        accessories = tuple(replace(line, part=replace(line.part, pack_quantity=4)) for line in one.accessories)
        positions.append(replace(one, accessories=accessories))
        packs.update({line.part.number: 4 for line in accessories})
    found = {one.part.number: one for one in part_quantities(positions, terms_of(consumables={"sealant_joints": 10}))}
    joints = sum(joint.seal.value == "sealant" for one in plan.positions if one.chosen for joint in one.chosen.joints)
    sealants = [one for one in found.values() if one.part.kind.value == "sealant"]
    assert len(sealants) == 1
    assert sealants[0].fitted == -(-joints // 10)
    for number in packs:
        assert found[number].ordered % 4 == 0
        assert 0 <= found[number].pack_rest < 4


def test_labour_counts_positions_dispensers_and_the_site(plan: SitePlan) -> None:
    tasks = [
        {"title": "a", "per": "position", "hours": "0.4"},
        {"title": "b", "per": "dispenser", "hours": "0.5"},
        {"title": "c", "per": "site", "hours": "2"},
        {"title": "d", "per": "position", "hours": "1", "kinds": ["splitter"]},
    ]
    lines = labour_lines(plan.positions, terms_of(labour={"hourly_rate": "50.05", "tasks": tasks}))
    # 5 x 0.4 h = 2 h, 3 x 0.5 h = 1.5 h, 2 h, no splitter anywhere; 1.5 h x 50.05 = 75.075
    assert [(one.title, one.count, one.hours, one.amount) for one in lines] == [
        ("a", 5, Decimal("2.0"), Decimal("100.10")),
        ("b", 3, Decimal("1.5"), Decimal("75.08")),
        ("c", 1, Decimal("2"), Decimal("100.10")),
    ]


def test_tax_on_the_whole_and_by_line_differ_as_they_should(catalogue: CatalogueStore) -> None:
    """Three lines of 0.05 at 10 percent: 0.015 rounds to 0.02 as a whole, 0.005 to 0.01 three times by line."""
    part = catalogue.part(PartRef("LS-B101"))
    assert part is not None
    parts = [replace(part, number=f"LS-B10{number}") for number in range(1, 4)]
    prices = list_of({one.number: {1: "0.05"} for one in parts})
    totals = []
    for way in ("whole", "line"):
        terms = terms_of(rounding={"tax": way}, taxes=[{"name": "tax", "percent": 10}])
        pricer = Pricer(terms, PriceBook([prices], terms.heading.dated))
        lines = [
            quoted_line(PartQuantity(part=one, mass_kg=one.mass_kg, fitted=1, spares=0, pack_rest=0), pricer)
            for one in parts
        ]
        totals.append(amounts_of(lines, (), terms).total)
    assert totals == [Decimal("0.17"), Decimal("0.18")]


def test_the_total_is_rounded_to_its_own_step_and_says_by_how_much(catalogue: CatalogueStore) -> None:
    part = catalogue.part(PartRef("LS-B101"))
    assert part is not None
    terms = terms_of(rounding={"total_step": "0.05"})
    pricer = Pricer(terms, PriceBook([list_of({"LS-B101": {1: "3.33"}})], terms.heading.dated))
    line = quoted_line(PartQuantity(part=part, mass_kg=part.mass_kg, fitted=1, spares=0, pack_rest=0), pricer)
    amounts = amounts_of([line], (), terms)
    assert (amounts.total, amounts.rounding) == (Decimal("3.35"), Decimal("0.02"))


def test_a_named_person_may_set_a_price_or_let_it_follow(catalogue: CatalogueStore) -> None:
    part = catalogue.part(PartRef("LS-B101"))
    assert part is not None
    piece = PartQuantity(part=part, mass_kg=part.mass_kg, fitted=2, spares=0, pack_rest=0)

    def line(*overrides: dict[str, str]):
        terms = terms_of(overrides=list(overrides))
        return quoted_line(piece, Pricer(terms, PriceBook([], terms.heading.dated)))

    assert line().is_open
    set_by_hand = line({"part": "LS-B101", "unit_price": "12.50", "by": "Odile Farrow"})
    assert (set_by_hand.amount, set_by_hand.is_open) == (Decimal("25.00"), False)
    follows = line({"part": "LS-B101", "by": "Odile Farrow"})
    assert (follows.amount, follows.is_open) == (None, False)
    with pytest.raises(ValueError, match="by"):
        terms_of(overrides=[{"part": "LS-B101", "unit_price": "12.50", "by": " "}])


def test_superseded_pinned_parts_give_way_to_their_successors(catalogue: CatalogueStore) -> None:
    part = catalogue.part(PartRef("LS-B101"))
    assert part is not None
    old = replace(part, number="LS-B001", status=PartStatus.SUPERSEDED, superseded_by="LS-B002")
    middle = replace(part, number="LS-B002", status=PartStatus.SUPERSEDED, superseded_by="LS-B101")
    ring = replace(part, number="LS-B003", status=PartStatus.SUPERSEDED, superseded_by="LS-B003")
    store = ListStore([part, old, middle, ring])
    decisions = CAR.positions[0].decisions.model_copy(
        update={"pinned": tuple(map(PartRef, ("LS-B001", "LS-B003", "LS-B101")))}
    )
    position = CAR.positions[0].model_copy(update={"decisions": decisions})
    updated, found = with_successors(CAR.model_copy(update={"positions": (position,)}), store)
    assert updated.positions[0].decisions.pinned == (PartRef("LS-B101", part.maker), PartRef("LS-B003"))
    assert [(one.before.number, one.now.number, one.positions) for one in found] == [("LS-B001", "LS-B101", ("1A",))]


def test_drive_offs_cost_what_the_terms_say(plan: SitePlan, catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """0.1 a year for each of 5 positions: each a breakaway of 40.00 and an hour at 60.00, so 0.5 x 100.00 = 50.00."""
    drive_offs = {"per_position_year": "0.1", "years": 4, "single_use_hours": 1, "reconnectable_hours": "0.5"}
    terms = terms_of(
        labour={"hourly_rate": 60},
        drive_offs={**drive_offs, "reconnectable_replaced_percent": 25},
        options=[{"title": "x"}],
    )
    survey = plan.survey
    prices = OfferedPrices(Pricer(terms, PriceBook([], terms.heading.dated)))  # no list: those of the catalogue
    for breakaway, per_year in (("single_use", "50.00"), ("reconnectable", "20.00")):
        # reconnectable: a quarter of 40.00 and half an hour, so 0.5 x (10.00 + 30.00) = 20.00
        option = OptionTerms.model_validate({"title": "x", "breakaway": breakaway})
        store = OfferedParts(catalogue, keeps(option, survey.positions[0].liquid.family), prices)
        refit = plan_refit(survey, us_tables, store).site_plan
        parts = {link.part for one in refit.positions if one.chosen for link in one.chosen.hanging_set.links}
        couplings = [part for part in parts if part.breakaway]
        assert all(part.breakaway.reconnectable is (breakaway == "reconnectable") for part in couplings)
        listed = {part.number: {1: "40.00"} for part in couplings}
        lists = [list_of(listed, maker=maker) for maker in {part.maker for part in couplings}]
        estimate = drive_off_estimate(refit, Pricer(terms, PriceBook(lists, terms.heading.dated)))
        assert estimate is not None
        assert (estimate.events_per_year, estimate.per_year) == (Decimal("0.5"), Decimal(per_year))
        assert estimate.over_years == 4 * Decimal(per_year)
    assert drive_off_estimate(plan, Pricer(terms, PriceBook([], terms.heading.dated))) is None
