"""What another answer does: held against every chain of small catalogues, listing classes read part by part, hand sums.

The oracle (``planning.enumeration``) knows nothing of plans, bounds or comparisons: it joins ports, asks the rules and
checks of the requirement with the other answer, and weighs.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from itertools import islice

import pytest

from planning.enumeration import Weighing, chains, small_catalogue
from planning.stores import ListStore
from planning.surveys import CAR, CAR_E85, CAR_RETRACTOR, MARINA, REEL, TOO_FAR, TRUCK, survey_of
from planning.test_substitutes import weighed
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.answered import same_answers
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.coverage_kinds import OutletKind
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily, ListingClass
from spoutline.model.part import Part, PartKind, Price
from spoutline.model.plan import HangingSet, SitePlan
from spoutline.model.port import FlowPath, Gender, ThreadStandard
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Duty, Outlet, Survey, SurveyLiquid, VapourStatus
from spoutline.model.what_if import PartFate, WhatIf, WhatIfEffect, WhatIfQuestion, WhatIfResult
from spoutline.planning.protocols import PartStore
from spoutline.planning.refit.station_plan import station_plan
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_site import plan_site
from spoutline.planning.what_if.answer import WhatIfListening, what_if
from spoutline.planning.what_if.answers import changed_survey, touched_positions, value_named
from spoutline.rules.chain.joints import mates
from spoutline.rules.derive.requirement import requirement_for


def blend(name: str, *labels: str) -> WhatIf:
    return WhatIf(WhatIfQuestion.BLEND, value_named(WhatIfQuestion.BLEND, name, "blend"), labels)


def duty(value: Duty, *labels: str) -> WhatIf:
    return WhatIf(WhatIfQuestion.DUTY, value, labels)


CASES = {
    "car_e25": (CAR, blend("E25")),
    "car_e85": (CAR, blend("E85")),
    "car_e5": (CAR, blend("E5")),
    "e85_car_e10": (CAR_E85, blend("E10")),
    "car_truck": (CAR, duty(Duty.TRUCK)),
    "car_one_inch": (CAR, WhatIf(WhatIfQuestion.OUTLET, OutletKind.NPT_1)),
    "car_balance": (CAR, WhatIf(WhatIfQuestion.VAPOUR, VapourStatus.BALANCE)),
    "retractor_e85": (CAR_RETRACTOR, blend("E85")),
    "truck_b100": (TRUCK, blend("B100")),
    "reel_b20": (REEL, blend("B20")),
    "marina_e85": (MARINA, blend("E85")),
    "too_far_e85": (TOO_FAR, blend("E85")),
}

WITHOUT_SET = ("car_balance", "too_far_e85")  # the catalog has none for them by one of the answers


def asked_of(survey: Survey, asked: WhatIf, tables: RuleTables, parts: PartStore) -> WhatIfResult:
    return what_if(plan_site(survey, tables, parts), asked, PlanningContext(tables, parts))


def meets(hanging_set: HangingSet, requirement: Requirement) -> bool:
    """Say whether the parts stand in the order asked for and their ports meet, from the outlet on."""
    if tuple(link.slot for link in hanging_set.links if link.slot is not Slot.ADAPTOR) != requirement.chain:
        return False
    ports = [requirement.outlet, *(link.part.outlet for link in hanging_set.links)]
    inlets = [link.part.inlet for link in hanging_set.links]
    return all(one and other and mates(one, other) for one, other in zip(ports, inlets, strict=False))


def small_store(survey: Survey, changed: Survey, tables: RuleTables, catalogue: CatalogueStore) -> ListStore:
    """Return the parts that hang by either answer, and two more of each kind, so that every chain is soon weighed."""
    hanging = [
        part
        for one in (survey, changed)
        for plan in plan_site(one, tables, catalogue).positions
        if plan.chosen is not None
        for part in plan.chosen.hanging_set.bought
    ]
    requirement = requirement_for(changed.positions[0], changed.site, tables)
    assert isinstance(requirement, Requirement)
    drawn = small_catalogue(catalogue, requirement, tables, seed=1).all
    more = [part for kind in PartKind for part in islice((one for one in drawn if one.kind is kind), 2)]
    return ListStore({part.ref: part for part in (*hanging, *more)}.values())


@pytest.mark.parametrize("name", CASES)
def test_the_other_set_is_the_best_of_enumeration_and_todays_stays_only_where_rules_and_checks_let_it(
    name: str, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey, asked = CASES[name]
    changed = changed_survey(survey, asked)
    requirement = requirement_for(changed.positions[0], changed.site, us_tables)
    assert isinstance(requirement, Requirement)
    store = small_store(survey, changed, us_tables, catalogue)
    weighing = Weighing(requirement, us_tables)

    def weight(hanging_set: HangingSet) -> tuple[int, int] | None:
        by_parts = weighing.by_parts(hanging_set)
        by_checks = None if by_parts is None else weighing.by_checks(hanging_set)
        return None if by_parts is None or by_checks is None else (by_parts[0] + by_checks, by_parts[1])

    weights = [found for one in chains(requirement, store) if (found := weight(one)) is not None]
    (one,) = asked_of(survey, asked, us_tables, store).positions
    assert (one.after.chosen is None) is (not weights)
    if one.after.chosen is not None:
        assert weighed(one.after.chosen, requirement, us_tables) == min(weights)
    if one.before.chosen is None or one.after.chosen is None:
        assert name in WITHOUT_SET
        return
    before, after = one.before.chosen.hanging_set, one.after.chosen.hanging_set
    may_stay = meets(before, requirement) and weight(before) is not None
    expected = {True: (WhatIfEffect.MAY_STAY, WhatIfEffect.SAME), False: (WhatIfEffect.MUST_CHANGE,)}
    assert one.effect in expected[may_stay]
    assert (one.effect is WhatIfEffect.SAME) is (before.refs == after.refs)


def test_parts_listed_for_e10_alone_must_go_under_e85_and_only_a_broken_must_says_so(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """The listing of each part is read in the catalog itself (classes: UL 2586, 2586A, scopes)."""
    (one,) = asked_of(CAR, blend("E85"), us_tables, catalogue).positions
    assert one.effect is WhatIfEffect.MUST_CHANGE
    assert {part.slot for part in one.parts} == {
        Slot.WHIP_HOSE,
        Slot.BREAKAWAY,
        Slot.CURB_HOSE,
        Slot.SWIVEL,
        Slot.NOZZLE,
    }
    for change in one.parts:
        assert change.before is not None
        assert change.after is not None
        assert ListingClass.E85 in change.after.listings
        if ListingClass.E85 not in change.before.listings:
            assert change.fate is PartFate.MUST_GO
            assert "part_class" in {finding.rule_id for finding in change.findings}
    assert any(ListingClass.E85 not in change.before.listings for change in one.parts if change.before)


def test_a_weaker_blend_lets_every_part_of_today_stay(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """A part listed for E85 is listed for E10 too where the catalog says so; then no part must go."""
    survey = survey_of(liquid={"family": "gasoline", "blend_percent": 85})
    (one,) = asked_of(survey, blend("E10"), us_tables, catalogue).positions
    assert one.before.chosen is not None
    assert all(ListingClass.E10 in part.listings for part in one.before.chosen.hanging_set.bought)
    assert one.effect is WhatIfEffect.MAY_STAY
    assert {change.fate for change in one.parts} <= {PartFate.STAYS, PartFate.ALLOWED, PartFate.COMES}
    assert one.difference_minor is not None
    assert one.difference_minor < 0


STATION = Survey.model_validate(
    {
        "site": {"name": "Three Willows"},
        "positions": [
            {"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}},
            {"label": "2", "liquid": {"family": "gasoline", "blend_percent": 10}, "filler": {"distance_m": 2.4}},
            {"label": "3", "liquid": {"family": "diesel", "blend_percent": 5}},
            {"label": "4", "liquid": {"family": "gasoline", "blend_percent": 10}, "filler": {"distance_m": 7.0}},
        ],
    }
)


def test_a_blend_of_the_whole_station_is_for_the_positions_of_its_family_and_sums_add_up(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    found = asked_of(STATION, blend("E85"), us_tables, catalogue)
    assert [one.label for one in found.positions] == ["1", "2", "4"]
    assert found.untouched == 1
    totals = found.totals
    by_hand = [(one.price_before_minor or 0, one.price_after_minor or 0) for one in found.positions]
    assert totals.before_minor == sum(before for before, _ in by_hand)
    assert totals.after_minor == sum(after for _, after in by_hand)
    assert totals.before_minor + totals.gained_minor - totals.lost_minor + totals.difference_minor == totals.after_minor
    for counts, side in ((found.leaving, "before"), (found.coming, "after")):
        pieces = [
            getattr(change, side).ref
            for one in found.positions
            for change in one.parts
            if change.fate is not PartFate.STAYS and getattr(change, side) is not None
        ]
        assert sorted(pieces) == sorted(one.part.ref for one in counts for _ in range(one.quantity))
    moved = sum(one.quantity * (one.part.price_minor("USD") or 0) for one in found.coming)
    moved -= sum(one.quantity * (one.part.price_minor("USD") or 0) for one in found.leaving)
    assert moved == totals.after_minor - totals.before_minor


def test_sets_lost_and_gained_stand_apart_from_the_difference(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    survey = survey_of(liquid={"family": "gasoline", "blend_percent": 10})
    lost = asked_of(survey, WhatIf(WhatIfQuestion.VAPOUR, VapourStatus.BALANCE), us_tables, catalogue)
    back = asked_of(lost.changed, WhatIf(WhatIfQuestion.VAPOUR, VapourStatus.NONE), us_tables, catalogue)
    price = lost.positions[0].price_before_minor
    assert lost.positions[0].effect is WhatIfEffect.LOSES_SET
    assert (lost.totals.lost_minor, lost.totals.difference_minor, lost.totals.after_minor) == (price, 0, 0)
    assert back.positions[0].effect is WhatIfEffect.GETS_SET
    assert (back.totals.gained_minor, back.totals.difference_minor, back.totals.before_minor) == (price, 0, 0)


def repriced(part: Part, factor: int) -> Part:
    return replace(part, prices=tuple(Price(currency=one.currency, minor=one.minor * factor) for one in part.prices))


def test_another_edition_tells_what_it_no_longer_has_and_what_costs_otherwise(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    requirement = requirement_for(CAR.positions[0], CAR.site, us_tables)
    assert isinstance(requirement, Requirement)
    small = small_catalogue(catalogue, requirement, us_tables, seed=3)
    before = plan_site(CAR, us_tables, small)
    chosen = before.positions[0].chosen
    assert chosen is not None
    asked = WhatIf(WhatIfQuestion.CATALOGUE, EditionRef("Own", 2))

    def answer(parts: list[Part]) -> WhatIfResult:
        return what_if(before, asked, PlanningContext(us_tables, ListStore(parts)))

    doubled = answer([repriced(part, 2) for part in small.all])
    assert doubled.positions[0].effect is WhatIfEffect.PRICE_CHANGES
    assert doubled.totals.difference_minor == chosen.hanging_set.price_minor
    assert doubled.changed.catalogue == "Own@2"
    nozzle = chosen.hanging_set.links[-1].part
    (one,) = answer([part for part in small.all if part.ref != nozzle.ref]).positions
    assert [change.before for change in one.parts if change.fate is PartFate.NOT_SOLD] == [nozzle]
    assert one.effect in (WhatIfEffect.MUST_CHANGE, WhatIfEffect.LOSES_SET)


def test_only_the_answer_itself_changes(us_tables: RuleTables) -> None:
    changed = changed_survey(STATION, blend("E15", "2"))
    assert [one.liquid.blend_percent for one in changed.positions] == [10, 15, 5, 10]
    back = changed_survey(changed, blend("E10", "2"))
    assert same_answers(back, STATION)
    outlet = survey_of(outlet={"height_m": 2.5, "pull_strength_n": 900, "vapour_return_available": True})
    (one,) = changed_survey(outlet, WhatIf(WhatIfQuestion.OUTLET, OutletKind.BALANCE)).positions
    assert (one.outlet.thread, one.outlet.path) == (ThreadStandard.UN, FlowPath.BALANCE)
    assert (one.outlet.height_m, one.outlet.pull_strength_n) == (2.5, 900)
    assert not one.outlet.vapour_return_available
    ruled = changed_survey(STATION, WhatIf(WhatIfQuestion.JURISDICTION, "europe"))
    assert ruled.site.jurisdiction == "europe"
    assert ruled.positions == STATION.positions


def test_vapor_recovery_is_asked_of_gasoline_alone_and_a_named_position_is_taken_as_it_is() -> None:
    recovering = WhatIf(WhatIfQuestion.VAPOUR, VapourStatus.BALANCE)
    assert [one.label for one in touched_positions(STATION, recovering)] == ["1", "2", "4"]
    named = WhatIf(WhatIfQuestion.VAPOUR, VapourStatus.BALANCE, ("3",))
    assert [one.label for one in touched_positions(STATION, named)] == ["3"]
    assert len(touched_positions(STATION, duty(Duty.TRUCK))) == 4


@pytest.mark.parametrize(
    ("question", "text", "value"),
    [
        (WhatIfQuestion.BLEND, " e-15 ", SurveyLiquid(family=LiquidFamily.GASOLINE, blend_percent=15)),
        (WhatIfQuestion.BLEND, "B100", SurveyLiquid(family=LiquidFamily.DIESEL, blend_percent=100)),
        (WhatIfQuestion.DUTY, "Truck", Duty.TRUCK),
        (WhatIfQuestion.VAPOUR, "vacuum assist", VapourStatus.VACUUM_ASSIST),
        (WhatIfQuestion.OUTLET, "npt-1", OutletKind.NPT_1),
        (WhatIfQuestion.OUTLET, "1 NPT male", Outlet(size="1", gender=Gender.MALE)),
        (WhatIfQuestion.OUTLET, " 1 G female ", OutletKind.G_1),
        (WhatIfQuestion.OUTLET, "1 1/2 G", Outlet(thread=ThreadStandard.G, size="1-1/2")),
        (WhatIfQuestion.CATALOGUE, "Own@3", EditionRef("Own", 3)),
    ],
)
def test_answers_are_read_as_people_write_them(question: WhatIfQuestion, text: str, value: object) -> None:
    assert value_named(question, text, "--option") == value


@pytest.mark.parametrize(
    ("question", "text"),
    [
        (WhatIfQuestion.BLEND, "E120"),
        (WhatIfQuestion.BLEND, "15"),
        (WhatIfQuestion.DUTY, "lorry"),
        (WhatIfQuestion.OUTLET, "2 inch"),
        (WhatIfQuestion.CATALOGUE, "Own@"),
    ],
)
def test_what_names_no_answer_is_told_with_what_would(question: WhatIfQuestion, text: str) -> None:
    with pytest.raises(InputFault) as fault:
        value_named(question, text, "--option")
    (problem,) = fault.value.problems
    assert problem.field == "--option"
    assert problem.wanted


def test_a_position_that_is_not_there_and_a_family_that_nobody_sells_are_faults() -> None:
    with pytest.raises(InputFault, match="use one of: 1, 2, 3, 4"):
        changed_survey(STATION, blend("E15", "9"))
    with pytest.raises(InputFault, match="sells diesel"):
        changed_survey(CAR, blend("B20"))


def test_a_value_of_another_question_is_a_defect() -> None:
    with pytest.raises(TypeError):
        WhatIf(WhatIfQuestion.DUTY, VapourStatus.NONE)


def test_positions_are_told_as_they_come_and_the_work_can_be_stopped(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    class Watcher:
        def __init__(self, stop_after: int) -> None:
            self.seen: list[int] = []
            self._stop_after = stop_after

        def on_progress(self, done: int, total: int) -> None:
            assert total == 3
            self.seen.append(done)

        def should_stop(self) -> bool:
            return len(self.seen) >= self._stop_after

    before, labels = plan_site(STATION, us_tables, catalogue), list[str]()
    context = PlanningContext(us_tables, catalogue)
    patient = Watcher(99)
    what_if(before, blend("E85"), context, WhatIfListening(patient, lambda one: labels.append(one.label)))
    assert labels == ["1", "2", "4"]
    assert patient.seen == [0, 1, 2, 3]
    told: list[str] = []
    with pytest.raises(Cancelled):
        what_if(before, blend("E85"), context, WhatIfListening(Watcher(2), lambda one: told.append(one.label)))
    assert len(told) < 3


def test_where_sets_are_chosen_together_a_position_that_was_not_asked_about_shows_when_its_set_changes(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """Both plans are made whole; the positions shown are the one asked about and all others whose sets differ."""
    site = STATION.site.model_copy(update={"stock_price": Decimal(35)})
    survey = STATION.model_copy(update={"site": site, "positions": STATION.positions[:3]})
    before = station_plan(survey, us_tables, catalogue)
    found = what_if(before, blend("E85", "1"), PlanningContext(us_tables, catalogue))
    after = station_plan(changed_survey(survey, blend("E85", "1")), us_tables, catalogue)

    def sets_in(site_plan: SitePlan) -> dict[str, object]:
        return {one.position.label: one.chosen and one.chosen.hanging_set.refs for one in site_plan.positions}

    old, new = sets_in(before), sets_in(after)
    assert {one.label for one in found.positions} == {"1", *(label for label in old if old[label] != new[label])}
    shown = {one.label: one.after.chosen and one.after.chosen.hanging_set.refs for one in found.positions}
    assert shown == {label: new[label] for label in shown}
