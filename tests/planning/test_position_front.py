"""Sets that no other outdoes: held against every chain of small catalogues, judged by the rules and checks alone.

The oracle joins ports, asks the rules of every part and the checks of every chain, adds up what the parts state and
holds every chain against every other. Losses are taken part by part from the lines of the checks
(``rules.parts.figures``), permeation from ``calc.permeation``.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable
from dataclasses import replace

import pytest

from examples import each_with_seeds
from planning.enumeration import Weighing, chains, small_catalogue
from planning.stores import ListStore
from planning.surveys import CAR, CAR_E85, JUST_WITHIN_REACH, LOW_PRESSURE, MARINA, SLIGHT_OUTLET, TRUCK
from spoutline.bootstrap.demos import demo_survey
from spoutline.calc.permeation import permeation_applies, permeation_loss
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.faults import Cancelled
from spoutline.model.front import FrontAxis, PositionFront
from spoutline.model.limit import RuleTables
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Survey
from spoutline.planning.protocols import PartStore
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.pool import narrow_pool
from spoutline.planning.weighing import position_front as front_module
from spoutline.planning.weighing.position_front import FrontQuestion, axes_at, position_front
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.figures import flow_ceiling_m3_s, loss_pa, states_for
from spoutline.search.listener import Listener

Axis = FrontAxis
CASES = {
    "car": CAR,
    "e85": CAR_E85,
    "truck": TRUCK,
    "marina": MARINA,
    "low pressure": LOW_PRESSURE,
    "slight outlet": SLIGHT_OUTLET,
    "within reach": JUST_WITHIN_REACH,
}
TRIPLES = tuple(itertools.combinations([axis for axis in Axis if axis is not Axis.YEARLY], 3))


def asked_at(survey: Survey, tables: RuleTables) -> Requirement:
    requirement = requirement_for(survey.positions[0], survey.site, tables)
    assert isinstance(requirement, Requirement)
    return requirement


class Oracle:
    """Every chain that keeps every must, with its figures on every axis and its departures from good practice."""

    def __init__(self, requirement: Requirement, tables: RuleTables, chained: Iterable[HangingSet]) -> None:
        self._requirement, self._tables = requirement, tables
        weighing = Weighing(requirement, tables)
        self.figures: dict[tuple[PartRef, ...], dict[Axis, int]] = {}
        for one in chained:
            by_parts = weighing.by_parts(one)
            if by_parts is None:
                continue
            by_checks = weighing.by_checks(one)
            if by_checks is not None:
                self.figures[one.refs] = self._figures(one, by_parts[0] + by_checks)

    def _figures(self, one: HangingSet, departures: int) -> dict[Axis, int]:
        parts = [link.part for link in one.links]
        requirement = self._requirement
        wanted = min(requirement.wanted_flow_m3_s, flow_ceiling_m3_s(requirement, self._tables))
        hot = states_for(requirement).hot
        return {
            Axis.PRICE: one.price_minor,
            Axis.LEAD: max(part.lead_time_days for part in parts),
            Axis.FLOW: sum(round(loss_pa(link.part, link.slot, requirement, wanted, hot)) for link in one.links),
            Axis.MASS: sum(round(part.mass_kg * 1e4) for part in parts),
            Axis.PERMEATION: self._permeation_mg(one) if permeation_applies(requirement.liquid.family) else 0,
            Axis.PRACTICE: departures,
        }

    def _permeation_mg(self, one: HangingSet) -> int:
        """Add up what leaves through each hose in a year at the middle of the climate, as the check does."""
        asked = self._requirement
        middle = (asked.temperature_low_c + asked.temperature_high_c) / 2.0
        losses = [
            permeation_loss(
                rate_kg_m2_s=hose.permeation_kg_m2_s, bore_m=hose.bore_m, length_m=hose.length_m, temperature_c=middle
            )
            for hose in (link.part.hose for link in one.links)
            if hose is not None and hose.permeation_kg_m2_s is not None
        ]
        return sum(round(loss.yearly_loss_kg * 1e6) for loss in losses)

    def front(self, axes: tuple[Axis, ...]) -> set[tuple[int, ...]]:
        """Return the figures of the chains that no other outdoes."""
        most = None if Axis.PRACTICE in axes else min(one[Axis.PRACTICE] for one in self.figures.values())
        there = {
            tuple(one[axis] for axis in axes)
            for one in self.figures.values()
            if most is None or one[Axis.PRACTICE] <= most
        }
        return {one for one in there if not any(outdoes(other, one) for other in there)}


def outdoes(one: tuple[int, ...], other: tuple[int, ...]) -> bool:
    return one != other and all(a <= b for a, b in zip(one, other, strict=True))


def found_at(survey: Survey, tables: RuleTables, store: PartStore, *axes: Axis) -> PositionFront:
    context = PlanningContext(tables, store)
    return position_front(survey.positions[0], survey.site, context, FrontQuestion(axes))


def small(name: str, seed: int, catalogue: CatalogueStore, tables: RuleTables) -> tuple[Survey, ListStore]:
    survey = CASES[name]
    return survey, small_catalogue(catalogue, asked_at(survey, tables), tables, seed)


@pytest.mark.parametrize(("name", "seed"), each_with_seeds(CASES, 4))
def test_front_is_that_of_every_chain(name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    survey, store = small(name, seed, catalogue, us_tables)
    requirement = asked_at(survey, us_tables)
    there = axes_at(requirement, yearly=False)
    oracle = Oracle(requirement, us_tables, chains(requirement, store))
    for axes in TRIPLES:
        if not set(axes) <= set(there):
            continue
        found = found_at(survey, us_tables, store, *axes)
        if not oracle.figures:
            assert found.points == ()
            continue
        assert {one.figures for one in found.points} == oracle.front(axes)
        for point in found.points:
            own = oracle.figures[point.judged.hanging_set.refs]
            assert point.figures == tuple(own[axis] for axis in axes)
            assert point.all_figures == {axis: own[axis] for axis in there}
        assert found.is_exact


@pytest.mark.parametrize("label", ["2A gasoline", pytest.param("1A gasoline", marks=pytest.mark.at_length)])
def test_front_of_a_demonstration_position_leaves_no_chain_of_the_whole_catalogue_out(
    label: str, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """Enumerate all parts that break no rule: each chain is no better than a point, or a check forbids it."""
    survey = demo_survey("small_town")
    position = next(one for one in survey.positions if one.label == label)
    requirement = requirement_for(position, survey.site, us_tables)
    assert isinstance(requirement, Requirement)
    axes = (Axis.PRICE, Axis.LEAD, Axis.MASS)
    context = PlanningContext(us_tables, catalogue)
    found = position_front(position, survey.site, context, FrontQuestion(axes))
    assert found.is_exact
    assert found.most_departures == 0
    shown = {one.figures for one in found.points}
    able = [
        one.part
        for slot in (*requirement.chain, Slot.ADAPTOR)
        for one in narrow_pool(requirement, us_tables, catalogue).of(slot)
        if not one.forbidden_by and not one.regrets
    ]
    weighing, looked_at = Weighing(requirement, us_tables), 0
    for chain in chains(requirement, ListStore(able)):
        looked_at += 1
        parts = [link.part for link in chain.links]
        own = (
            chain.price_minor,
            max(part.lead_time_days for part in parts),
            sum(round(part.mass_kg * 1e4) for part in parts),
        )
        if not any(one == own or outdoes(one, own) for one in shown):
            assert weighing.by_parts(chain) is None or weighing.by_checks(chain) != 0
    assert looked_at > 100
    for point in found.points:
        assert weighing.by_parts(point.judged.hanging_set) == (0, point.price_minor)
        assert weighing.by_checks(point.judged.hanging_set) == 0


def test_parts_that_differ_in_the_maker_alone_are_one_point_that_names_them(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey, store = small("car", 1, catalogue, us_tables)
    before = found_at(survey, us_tables, store, Axis.PRICE, Axis.FLOW)
    nozzle = before.points[0].judged.hanging_set.links[-1].part
    twin = replace(nozzle, number="TW-N1", maker="Twinbrook Nozzles", name="Nozzle of another maker")
    dearer = replace(twin, number="TW-N2", prices=tuple(replace(one, minor=one.minor + 1) for one in nozzle.prices))
    after = found_at(survey, us_tables, ListStore((*store.all, twin, dearer)), Axis.PRICE, Axis.FLOW)
    assert [one.figures for one in after.points] == [one.figures for one in before.points]
    named = {other for one in after.points for alike in one.alike for other in (alike.part.number, alike.other.number)}
    assert {nozzle.number, "TW-N1"} <= named
    assert "TW-N2" not in named


class _Stops(Listener):
    def should_stop(self) -> bool:
        return True


def test_the_planned_set_is_told_first_and_a_listener_stops_the_rest(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    told: list[PositionFront] = []
    position_front(
        CAR.positions[0], CAR.site, PlanningContext(us_tables, catalogue), FrontQuestion((Axis.PRICE,)), told.append
    )
    assert told[0].unchecked is None
    assert told[0].planned_figures is not None
    assert [one.figures for one in told[0].points] == [told[0].planned_figures]
    assert told[0].planned == 0
    assert told[-1].points
    stopped = PlanningContext(us_tables, catalogue, _Stops())
    with pytest.raises(Cancelled):
        position_front(CAR.positions[0], CAR.site, stopped, FrontQuestion((Axis.PRICE, Axis.LEAD)))


@pytest.mark.parametrize("survey", [CAR, CAR_E85, MARINA])
def test_sets_shown_before_all_are_found_keep_every_must_and_the_answer_is_the_same_without_them(
    survey: Survey, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    axes = (Axis.PRICE, Axis.MASS, Axis.PRACTICE)
    context, told = PlanningContext(us_tables, catalogue), list[PositionFront]()
    found = position_front(survey.positions[0], survey.site, context, FrontQuestion(axes), told.append)
    weighing = Weighing(asked_at(survey, us_tables), us_tables)
    early = [one for one in told if one.unchecked is None]
    assert len(early) == 2, "the plan's own set, then what a quick look finds"
    assert len(early[1].points) > 1
    for one in early:
        assert not any(outdoes(a.figures, b.figures) for a in one.points for b in one.points)
        for point in one.points:
            assert weighing.by_parts(point.judged.hanging_set) is not None
            assert weighing.by_checks(point.judged.hanging_set) is not None
    assert all(one.unchecked for one in told[2:-1])
    assert found.is_exact
    shown = {one.figures for one in found.points}
    for point in early[1].points:
        assert point.figures in shown or any(outdoes(one, point.figures) for one in shown)


def test_where_labels_do_not_suffice_the_gap_is_stated_and_holds(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    survey, store = small("car", 1, catalogue, us_tables)
    axes = (Axis.PRICE, Axis.MASS, Axis.FLOW)
    exact = found_at(survey, us_tables, store, *axes)
    monkeypatch.setattr(front_module, "_MOST_LABELS", 1)
    coarse = found_at(survey, us_tables, store, *axes)
    assert exact.is_exact
    assert not coarse.is_exact
    assert all(gap > 0 for gap in coarse.gap)
    assert coarse.points
    for wanted in exact.points:
        assert any(
            all(own <= other + gap for own, other, gap in zip(one.figures, wanted.figures, coarse.gap, strict=True))
            for one in coarse.points
        )
    for one in coarse.points:
        assert not any(outdoes(one.figures, wanted.figures) for wanted in exact.points)


def test_sets_that_a_taut_hose_tears_give_way_to_others(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """What the search cannot bound is turned down; the oracle, which knows checks alone, finds the same sets."""
    found = found_at(MARINA, us_tables, catalogue, Axis.PRICE, Axis.MASS)
    weighing = Weighing(asked_at(MARINA, us_tables), us_tables)
    assert found.points
    assert found.is_exact
    for point in found.points:
        assert weighing.by_parts(point.judged.hanging_set) is not None
        assert weighing.by_checks(point.judged.hanging_set) is not None
