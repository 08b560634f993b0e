"""What a plan tells: alternatives, conflicts, what would free a set, findings, and why a part is not chosen."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

import pytest

from planning.stores import ListStore
from planning.surveys import BALANCE, CAR, CAR_RETRACTOR, DEF, REEL, TOO_FAR, TRUCK, survey_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import AlternativeKind, PlanStatus, PositionPlan, Relaxation
from spoutline.model.port import FlowPath
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.survey import Survey
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import counts_for, plan_position
from spoutline.planning.sets.plan_site import plan_site
from spoutline.planning.sets.why_not import why_not
from spoutline.rules.declared.registry import RuleId
from spoutline.search.listener import Listener


@pytest.fixture
def context(catalogue: CatalogueStore, us_tables: RuleTables) -> PlanningContext:
    return PlanningContext(us_tables, catalogue)


def plan(survey: Survey, context: PlanningContext) -> PositionPlan:
    return plan_position(survey.positions[0], survey.site, context)


def numbers(plan: PositionPlan) -> tuple[str, ...]:
    assert plan.chosen is not None
    return plan.chosen.hanging_set.numbers


def deciding(survey: Survey, **decisions: object) -> Survey:
    position = survey.positions[0].model_dump()
    return Survey.model_validate({**survey.model_dump(), "positions": [{**position, "decisions": decisions}]})


class Counting(ListStore):
    """Remembers which parts were asked for together."""

    def __init__(self, parts: Iterable[Part]) -> None:
        super().__init__(parts)
        self.asked: list[tuple[PartRef, ...]] = []

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        self.asked.append(tuple(refs))
        return super().parts(refs)


def test_the_parts_of_a_set_are_read_together(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    store = Counting(catalogue.search("", None, 10_000))
    chosen = plan_position(
        CAR.positions[0], CAR.site, PlanningContext(us_tables, store), with_alternatives=False
    ).chosen
    assert chosen is not None
    assert len(chosen.hanging_set.links) > 2
    assert store.asked.count(chosen.hanging_set.refs) == 1
    assert not any(len(refs) == 1 and refs[0] in chosen.hanging_set.refs for refs in store.asked)


def test_chain_order_follows_the_place_of_the_breakaway(context: PlanningContext) -> None:
    # Oklahoma 165:26-2-91(d): with a retriever the breakaway lies between its clamp and the nozzle.
    chosen = plan(CAR_RETRACTOR, context).chosen
    assert chosen is not None
    assert [link.slot for link in chosen.hanging_set.links] == [Slot.CURB_HOSE, Slot.SWIVEL_BREAKAWAY, Slot.NOZZLE]


def test_coaxial_set_has_no_separate_swivel(context: PlanningContext) -> None:
    chosen = plan(BALANCE, context).chosen
    assert chosen is not None
    slots = [link.slot for link in chosen.hanging_set.links]
    assert Slot.SWIVEL not in slots
    assert all(link.part.path == "balance" for link in chosen.hanging_set.links)


def test_only_parts_offered_for_def_hang_at_def(context: PlanningContext) -> None:
    # ISO 22241-3, from memory: DEF is kept in equipment of its own. The least price is where a fuel part would come in.
    found = plan(DEF, context)
    assert found.chosen is not None
    offered = [found.chosen.hanging_set, *(one.judged.hanging_set for one in found.alternatives)]
    assert len(offered) > 2
    for hanging_set in offered:
        for part in (link.part for link in hanging_set.links):
            assert part.offered_for_def or (part.nozzle and LiquidFamily.DEF in part.nozzle.liquids), part.number
    everyday = plan(TRUCK, context).chosen
    assert everyday is not None
    assert not any(link.part.offered_for_def for link in everyday.hanging_set.links)


def test_each_alternative_differs_in_the_way_it_says(context: PlanningContext) -> None:
    found = plan(CAR, context)
    assert found.chosen is not None
    chosen = found.chosen.hanging_set
    breakaway = chosen.part_in(Slot.BREAKAWAY)
    assert breakaway is not None
    assert breakaway.breakaway is not None
    kinds = {one.kind for one in found.alternatives}
    assert {AlternativeKind.RECONNECTABLE, AlternativeKind.LIGHTER, AlternativeKind.SHORTER_LEAD_TIME} <= kinds
    for one in found.alternatives:
        other = one.judged.hanging_set
        assert one.price_difference_minor == other.price_minor - chosen.price_minor
        if one.kind is AlternativeKind.RECONNECTABLE:
            part = other.part_in(Slot.BREAKAWAY)
            assert part is not None
            assert part.breakaway is not None
            assert part.breakaway.reconnectable is not breakaway.breakaway.reconnectable
        if one.kind is AlternativeKind.LIGHTER:
            assert sum(link.part.mass_kg for link in other.links) < sum(link.part.mass_kg for link in chosen.links)
        if one.kind is AlternativeKind.SHORTER_LEAD_TIME:
            assert max(link.part.lead_time_days for link in other.links) < max(
                link.part.lead_time_days for link in chosen.links
            )
        if one.kind is AlternativeKind.LOW_PERMEATION:
            assert all(link.part.hose.low_permeation for link in other.links if link.part.hose)
    assert not any(
        check.severity is Severity.MUST and not check.passes
        for one in found.alternatives
        for check in one.judged.checks
    )


def test_no_alternative_that_keeps_every_should_is_cheaper(context: PlanningContext) -> None:
    for survey in (CAR, TRUCK, BALANCE, REEL):
        found = plan(survey, context)
        assert found.chosen is not None
        for one in found.alternatives:
            broken = [
                finding
                for finding in one.judged.findings
                if finding.severity is Severity.SHOULD and finding.verdict is Verdict.BROKEN
            ]
            failing = [check for check in one.judged.checks if check.severity is Severity.SHOULD and not check.passes]
            if not broken and not failing:
                assert one.price_difference_minor >= 0


def test_a_filler_beyond_the_longest_hose_conflicts_with_the_length_limit(context: PlanningContext) -> None:
    # NFPA 30A 6.5 and Oklahoma 165:26-2-92(a)(1): 18 ft (5.486 m) at most.
    found = plan(TOO_FAR, context)
    assert found.status is PlanStatus.DOES_NOT_FIT
    assert found.conflict is not None
    assert set(found.conflict.requirements) == {RequirementId.HOSE_LENGTH, RequirementId.REACH}
    longer = next(one for one in found.conflict.relaxations if one.requirement is RequirementId.HOSE_LENGTH)
    assert longer.from_value == pytest.approx(5.4864, abs=1e-9)
    assert longer.to_value is not None
    assert longer.to_value > 5.4864
    assert longer.parts


def test_what_is_said_to_free_a_set_does_free_it(context: PlanningContext) -> None:
    conflict = plan(TOO_FAR, context).conflict
    assert conflict is not None
    fenced = survey_of(
        site={"fenced": True}, liquid={"family": "gasoline", "blend_percent": 10}, filler={"distance_m": 7.0}
    )
    assert RequirementId.HOSE_LENGTH in {one.requirement for one in conflict.relaxations}
    assert plan(fenced, context).status is PlanStatus.FITS  # 50 ft limit of fenced sites


@pytest.mark.parametrize("line", [RequirementId.HOSE_LENGTH, RequirementId.REACH])
def test_of_sets_that_come_equally_near_the_cheapest_is_told(
    line: RequirementId, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """A nozzle that differs in number and price alone comes as near: the one that costs less is told."""

    def told(parts: Iterable[Part]) -> Relaxation:
        conflict = plan(TOO_FAR, PlanningContext(us_tables, ListStore(parts))).conflict
        assert conflict is not None
        return next(one for one in conflict.relaxations if one.requirement is line)

    parts = catalogue.search("", None, 10_000)
    before = told(parts)
    assert before.price_minor is not None
    (nozzle,) = (one for one in parts if one.ref in before.parts and one.kind is PartKind.NOZZLE)
    cheaper = tuple(replace(price, minor=price.minor - 1) for price in nozzle.prices)
    for number in ("0000", "ZZZZ"):
        twin = replace(nozzle, number=number, prices=cheaper)
        after = told((*parts, twin))
        assert (after.price_minor, after.to_value) == (before.price_minor - 1, before.to_value)
        assert twin.ref in after.parts


@pytest.mark.parametrize(
    ("fields", "rule", "severity", "verdict"),
    [
        ({}, RuleId.FENCED_HOSE_TO_SECURE, Severity.MUST, Verdict.QUESTION),
        ({"duty": "reel", "retrieval": "reel"}, RuleId.FENCED_HOSE_ON_REEL, Severity.ADVICE, Verdict.NOTE),
    ],
)
def test_a_long_hose_on_a_fenced_site_carries_its_condition(
    fields: dict[str, object], rule: RuleId, severity: Severity, verdict: Verdict, context: PlanningContext
) -> None:
    # Okla. 165:26-2-92(a)(3): up to 50 ft on a fenced above-ground site, the hose secured, for example on a reel
    far = survey_of(
        site={"fenced": True}, liquid={"family": "diesel", "blend_percent": 5}, filler={"distance_m": 7.0}, **fields
    )
    found = [one for one in plan(far, context).findings if one.rule_id.startswith("fenced_hose")]
    assert [(one.rule_id, one.severity, one.verdict) for one in found] == [(rule, severity, verdict)]
    assert found[0].source.startswith("Oklahoma Administrative Code 165:26-2-92(a)(3)")
    near = survey_of(site={"fenced": True}, liquid={"family": "diesel", "blend_percent": 5})
    assert not any(one.rule_id.startswith("fenced_hose") for one in plan(near, context).findings)


def test_removing_a_demand_of_the_conflict_frees_a_set_and_the_rest_stays_named(context: PlanningContext) -> None:
    cold = survey_of(site={"climate": {"low_c": -45}})
    conflict = plan(cold, context).conflict
    assert conflict is not None
    assert conflict.requirements == (RequirementId.TEMPERATURE,)
    assert {one.slot for one in conflict.exclusions} >= {Slot.WHIP_HOSE, Slot.NOZZLE}


def test_too_short_a_lead_time_names_the_days_that_would_do(context: PlanningContext) -> None:
    conflict = plan(deciding(CAR, longest_lead_time_days=1), context).conflict
    assert conflict is not None
    change = next(one for one in conflict.relaxations if one.requirement is RequirementId.LEAD_TIME)
    assert (change.from_value, change.to_value is not None) == (1, True)
    enough = plan(deciding(CAR, longest_lead_time_days=int(change.to_value or 0)), context)
    assert enough.status is PlanStatus.FITS
    assert plan(deciding(CAR, longest_lead_time_days=int(change.to_value or 0) - 1), context).chosen is None


def test_a_weak_outlet_names_the_pull_that_it_would_have_to_bear(context: PlanningContext) -> None:
    conflict = plan(survey_of(outlet={"pull_strength_n": 500}), context).conflict
    assert conflict is not None
    change = next(one for one in conflict.relaxations if one.requirement is RequirementId.DRIVE_OFF)
    assert change.to_value is not None
    assert plan(survey_of(outlet={"pull_strength_n": change.to_value}), context).chosen is not None
    assert plan(survey_of(outlet={"pull_strength_n": change.to_value - 1}), context).chosen is None


def test_an_outlet_that_nothing_screws_onto_is_told_by_what_differs(context: PlanningContext) -> None:
    conflict = plan(survey_of(outlet={"size": "1-1/2"}), context).conflict
    assert conflict is not None
    assert conflict.requirements == (RequirementId.JOINTS,)
    assert [one.rule_id for one in conflict.exclusions] == ["joint_size"]


def test_adaptor_in_the_set_is_told_as_a_should(context: PlanningContext) -> None:
    small_outlet = survey_of(liquid={"family": "diesel", "blend_percent": 5}, duty="truck", outlet={"size": "3/4"})
    found = plan(small_outlet, context)
    assert found.chosen is not None
    assert found.chosen.hanging_set.part_in(Slot.ADAPTOR) is not None
    assert any(one.rule_id == "adaptor_adds_joint" and one.severity is Severity.SHOULD for one in found.chosen.findings)


def test_pinned_part_is_used_and_refused_part_is_not(context: PlanningContext) -> None:
    before = numbers(plan(CAR, context))
    refused = plan(deciding(CAR, refused=(before[0], before[-1])), context)
    assert not {before[0], before[-1]} & set(numbers(refused))
    back = plan(deciding(CAR, pinned=(numbers(refused)[0],)), context)
    assert numbers(refused)[0] in numbers(back)


def test_a_pinned_part_that_cannot_serve_is_told_with_the_rule_that_it_breaks(
    context: PlanningContext, catalogue: CatalogueStore
) -> None:
    nozzles = catalogue.candidates(CandidateFilter(kind=PartKind.NOZZLE))
    urea = next(one for one in nozzles if one.nozzle and LiquidFamily.DEF in one.nozzle.liquids)
    conflict = plan(deciding(CAR, pinned=(urea.number,)), context).conflict
    assert conflict is not None
    (told,) = conflict.pinned
    verdict = why_not(CAR.positions[0], CAR.site, urea, context)
    musts = [one.rule_id for one in verdict.findings if one.severity is Severity.MUST and one.verdict is Verdict.BROKEN]
    assert [one.rule_id for one in told.findings] == musts
    assert RuleId.NOZZLE_LIQUID in musts


def test_pinned_parts_that_serve_alone_but_not_together_are_told_so(context: PlanningContext) -> None:
    chosen = plan(CAR, context)
    nozzle = numbers(chosen)[-1]
    other = next(
        one.judged.hanging_set.numbers[-1]
        for one in chosen.alternatives
        if one.judged.hanging_set.numbers[-1] != nozzle
    )
    conflict = plan(deciding(CAR, pinned=(nozzle, other)), context).conflict
    assert conflict is not None
    assert {one.part.number for one in conflict.pinned} == {nozzle, other}
    assert not any(one.findings or one.lines for one in conflict.pinned)


def test_a_pinned_part_shut_out_by_other_lines_names_them(context: PlanningContext) -> None:
    short = next(part for part in context.parts.candidates(CandidateFilter(kind=PartKind.CURB_HOSE)) if _is_short(part))
    far = survey_of(liquid={"family": "gasoline", "blend_percent": 10}, filler={"distance_m": 3.5})
    conflict = plan(deciding(far, pinned=(short.number,)), context).conflict
    assert conflict is not None
    (told,) = conflict.pinned
    assert RequirementId.REACH in told.lines
    assert RequirementId.DECISION not in told.lines


def _is_short(part: Part) -> bool:
    """Say whether this is a hose of less than 2.8 m that serves US gasoline: too short for a filler 3.5 m away."""
    data = part.hose
    listed = ListingClass.E10 in part.listings and ListingScheme.UL in part.schemes and part.path is FlowPath.SINGLE
    return data is not None and data.length_m < 2.8 and listed and part.status is PartStatus.ACTIVE


def test_pinned_part_that_cannot_serve_is_a_conflict_with_the_decision(context: PlanningContext) -> None:
    truck_nozzle = numbers(plan(TRUCK, context))[-1]
    conflict = plan(deciding(CAR, pinned=(truck_nozzle,)), context).conflict
    assert conflict is not None
    assert conflict.requirements == (RequirementId.DECISION,)
    assert [one.requirement for one in conflict.relaxations] == [RequirementId.DECISION]


def test_lead_time_decision_limits_every_part(context: PlanningContext) -> None:
    found = plan(deciding(CAR, longest_lead_time_days=5), context)
    assert found.chosen is not None
    assert all(link.part.lead_time_days <= 5 for link in found.chosen.hanging_set.links)


def test_counts_narrow_with_each_answer(context: PlanningContext) -> None:
    def remaining(survey: Survey) -> dict[Slot, int]:
        return {one.slot: one.remaining for one in counts_for(survey.positions[0], survey.site, context)}

    e10, e85 = CAR, survey_of(liquid={"family": "gasoline", "blend_percent": 85})
    assert remaining(e85)[Slot.CURB_HOSE] < remaining(e10)[Slot.CURB_HOSE]
    assert all(count > 0 for count in remaining(e85).values())


def test_why_not_names_every_rule_that_a_truck_nozzle_breaks_on_a_gasoline_car_hose(context: PlanningContext) -> None:
    nozzle = context.parts.part(PartRef(numbers(plan(TRUCK, context))[-1]))
    assert nozzle is not None
    verdict = why_not(CAR.positions[0], CAR.site, nozzle, context)
    broken = {one.rule_id for one in verdict.findings}
    assert {"part_class", "nozzle_service", "nozzle_liquid", "spout_diameter"} <= broken
    assert verdict.best_set_with_it is None


def test_why_not_of_a_dearer_part_shows_the_best_set_that_holds_it(context: PlanningContext) -> None:
    found = plan(CAR, context)
    assert found.chosen is not None
    other = next(one for one in found.alternatives if one.kind is AlternativeKind.RECONNECTABLE)
    part = other.judged.hanging_set.part_in(Slot.BREAKAWAY)
    assert part is not None
    verdict = why_not(CAR.positions[0], CAR.site, part, context)
    assert not verdict.in_chosen_set
    assert verdict.best_set_with_it is not None
    assert part.number in verdict.best_set_with_it.numbers
    assert verdict.best_set_with_it.price_minor >= found.chosen.hanging_set.price_minor


def test_why_not_of_a_chosen_part_says_so_and_of_an_accessory_that_it_has_no_slot(context: PlanningContext) -> None:
    chosen = context.parts.part(PartRef(numbers(plan(CAR, context))[0]))
    assert chosen is not None
    assert why_not(CAR.positions[0], CAR.site, chosen, context).in_chosen_set
    label = next(part for part in context.parts.search("", PartKind.LABEL, 1))  # type: ignore[attr-defined]
    verdict = why_not(CAR.positions[0], CAR.site, label, context)
    assert verdict.slots == ()
    assert [one.rule_id for one in verdict.findings] == ["part_in_slot"]


def test_equal_positions_get_the_same_set_under_their_own_names(context: PlanningContext) -> None:
    position = CAR.positions[0].model_dump()
    survey = Survey.model_validate(
        {**CAR.model_dump(), "positions": [position, {**position, "label": "2B", "dispenser": "2"}]}
    )
    first, second = plan_site(survey, context.tables, context.parts).positions
    assert numbers(first) == numbers(second)
    assert second.position.label == "2B"
    assert second.chosen is not None
    assert "1A" not in {one.subject for one in second.chosen.findings}


def test_what_some_rules_found_is_told_in_the_order_of_all(context: PlanningContext) -> None:
    found = plan(CAR, context).findings
    rules = {found[-1].rule_id, found[0].rule_id}
    assert plan(CAR, context).findings_of(rules) == tuple(one for one in found if one.rule_id in rules)
    assert plan(CAR, context).findings_of(()) == ()


def test_a_station_planned_without_alternatives_has_the_same_sets(context: PlanningContext) -> None:
    whole = plan_site(CAR, context.tables, context.parts)
    short = plan_site(CAR, context.tables, context.parts, with_alternatives=False)
    assert any(plan.alternatives for plan in whole.positions)
    assert short == replace(whole, positions=tuple(replace(plan, alternatives=()) for plan in whole.positions))


def test_a_listener_stops_the_plan(context: PlanningContext) -> None:
    class Impatient(Listener):
        def should_stop(self) -> bool:
            return True

    class Stop:
        def on_progress(self, done: int, total: int) -> None:
            pass

        def should_stop(self) -> bool:
            return True

    with pytest.raises(Cancelled):
        plan_site(CAR, context.tables, context.parts, Stop())


def test_fewer_parts_never_make_the_set_cheaper(
    context: PlanningContext, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    whole = plan(CAR, context)
    assert whole.chosen is not None
    every = [part for kind in PartKind for part in catalogue.search("", kind, 10_000)]
    fewer = plan(CAR, PlanningContext(us_tables, ListStore(every[::2])))
    if fewer.chosen is not None:
        assert fewer.chosen.hanging_set.price_minor >= whole.chosen.hanging_set.price_minor
