"""Why a position has no set: conflicts and ways out, held against every chain of small catalogues and by hand.

The oracle judges every chain by rules and checks alone; which groups of demands it keeps is read off the verdicts, and
minimal conflicts and corrections follow from their definition over all groups. It knows nothing of masks or bounds.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator
from dataclasses import replace
from random import Random

import pytest

from examples import each_with_seeds
from planning.enumeration import forbids, linked
from planning.stores import ListStore
from planning.surveys import CAR, TOO_FAR, survey_of
from planning.test_plan_position import deciding
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.check import CheckId, Outcome
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Severity
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily, ListingClass
from spoutline.model.no_set import (
    AskedAnswer,
    Concession,
    ConflictReasons,
    Demand,
    DemandKind,
    NoSetEnding,
    NoSetReasons,
    Trial,
)
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, PlanStatus, SetLink
from spoutline.model.port import ThreadStandard
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.model.survey import Survey, SurveyLiquid, VapourStatus
from spoutline.planning.no_set.concessions import ORDER, concession_of
from spoutline.planning.no_set.listening import NoSetListening
from spoutline.planning.no_set.why_no_set import why_no_set
from spoutline.planning.protocols import CandidateFilter
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.loads import MUST_CHECK_LINES
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.pool import SLOT_KINDS
from spoutline.rules.checks.run import checks_for
from spoutline.rules.declared.registry import rule_of
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part
from spoutline.search.listener import Listener

E10 = {"family": "gasoline", "blend_percent": 10}
E85 = {"family": "gasoline", "blend_percent": 85}


@pytest.fixture
def context(catalogue: CatalogueStore, us_tables: RuleTables) -> PlanningContext:
    return PlanningContext(us_tables, catalogue)


def reasons(survey: Survey, context: PlanningContext, listening: NoSetListening | None = None) -> NoSetReasons:
    plan = plan_position(survey.positions[0], survey.site, context, with_alternatives=False)
    assert plan.chosen is None
    return why_no_set(plan, survey, context, listening)


def line(name: RequirementId) -> Demand:
    return Demand(kind=DemandKind.LINE, line=name)


def pinned(part: PartRef) -> Demand:
    return Demand(kind=DemandKind.PINNED, part=part)


def refused(part: PartRef) -> Demand:
    return Demand(kind=DemandKind.REFUSED, part=part)


def answer(name: AskedAnswer) -> Demand:
    return Demand(kind=DemandKind.ANSWER, answer=name)


def groups(found: NoSetReasons) -> set[frozenset[Demand]]:
    return {frozenset(one.demands) for one in found.conflicts}


# every chain of a small catalogue


def unmated(requirement: Requirement, store: ListStore) -> Iterator[tuple[SetLink, ...]]:
    """Yield every choice of a part for each slot, whether their ports meet or not."""
    kinds = [store.candidates(CandidateFilter(kind=SLOT_KINDS[slot])) for slot in requirement.chain]
    for parts in itertools.product(*kinds):
        yield tuple(SetLink(slot=slot, part=part) for slot, part in zip(requirement.chain, parts, strict=True))


# Checks of the whole set; what other checks say, rules of parts say too. What cannot be worked out is left to the plan.
SUMS = (
    CheckId.HOSE_LENGTH,
    CheckId.HOSE_REACH,
    CheckId.BREAKAWAY_SERVICE_LOAD,
    CheckId.BREAKAWAY_DRIVE_OFF,
    CheckId.RESISTANCE_TOTAL,
    CheckId.NOZZLE_MINIMUM_FLOW,
    CheckId.NOZZLE_OPENING_PRESSURE,
)


def broken_by(links: tuple[SetLink, ...], requirement: Requirement, tables: RuleTables) -> frozenset[Demand]:
    """Return the demands that a chain does not meet, by the rules of its parts, its checks and the decisions."""
    currency, decisions = requirement.site.currency, requirement.position.decisions
    broken: set[Demand] = set()
    for link in links:
        for found in filter(forbids, judge_part(link.part, link.slot, requirement, tables)):
            asked = rule_of(found.rule_id).requirement
            broken.add(refused(link.part.ref) if asked is RequirementId.DECISION else line(asked))
    price = sum(link.part.price_minor(currency) or 0 for link in links)
    hanging_set = HangingSet(links=links, price_minor=price, currency=currency)
    checks = [one for one in checks_for(hanging_set, requirement, tables) if one.severity is Severity.MUST]
    broken |= {line(MUST_CHECK_LINES[one.id]) for one in checks if one.id in SUMS and one.outcome is Outcome.FAILS}
    broken |= {pinned(one) for one in decisions.pinned if one not in hanging_set.refs}
    return frozenset(broken)


def least(found: set[frozenset[Demand]]) -> set[frozenset[Demand]]:
    return {one for one in found if not any(other < one for other in found)}


def hitting(found: set[frozenset[Demand]]) -> set[frozenset[Demand]]:
    """Return the smallest groups that have a member in common with each, by taking one of each and then the least."""
    met: set[frozenset[Demand]] = {frozenset()}
    for one in found:
        met = least({group if group & one else group | {member} for group in met for member in one})
    return met


def drawn_parts(
    requirement: Requirement, fitting: Survey, context: PlanningContext, random: Random
) -> tuple[list[Part], list[Part]]:
    """Return the parts of a set for a position that asks less, and for each slot two of any sort."""
    chosen = plan_position(fitting.positions[0], fitting.site, context, with_alternatives=False).chosen
    assert chosen is not None
    kinds = [SLOT_KINDS[slot] for slot in (*requirement.chain, Slot.ADAPTOR)]
    others = [part for kind in kinds for part in random.sample(context.parts.candidates(CandidateFilter(kind=kind)), 2)]
    return [link.part for link in chosen.hanging_set.links], others


SMALL = {
    "too_far": TOO_FAR,
    "latch_and_lead_time": survey_of(
        liquid=E10, hold_open_wanted=True, reconnectable_wanted=True, decisions={"longest_lead_time_days": 12}
    ),
    "weak_outlet": survey_of(liquid={"family": "diesel", "blend_percent": 5}, outlet={"pull_strength_n": 700}),
    "low_pressure": survey_of(liquid=E10, supply={"pressure_kpa": 9}, prepay=True),
}


DIESEL = survey_of(liquid={"family": "diesel", "blend_percent": 5})
ASK_LESS = {"too_far": CAR, "latch_and_lead_time": CAR, "weak_outlet": DIESEL, "low_pressure": CAR}


@pytest.mark.parametrize(("name", "seed"), each_with_seeds(SMALL, 4))
def test_all_conflicts_and_corrections_are_those_of_every_chain(
    name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey, random = SMALL[name], Random(seed)
    asked = requirement_for(survey.positions[0], survey.site, us_tables)
    assert isinstance(asked, Requirement)
    able, any_sort = drawn_parts(asked, ASK_LESS[name], PlanningContext(us_tables, catalogue), random)
    wanted = random.choice([part.ref for part in any_sort if part.kind is not PartKind.ADAPTOR])
    unwanted = random.choice([part.ref for part in able])
    survey = deciding(
        survey, **{**survey.positions[0].decisions.model_dump(), "pinned": [wanted], "refused": [unwanted]}
    )
    store = ListStore(dict.fromkeys((*able, *any_sort)))
    context = PlanningContext(us_tables, store)
    requirement = requirement_for(survey.positions[0], survey.site, us_tables)
    assert isinstance(requirement, Requirement)
    joined = {broken_by(links, requirement, us_tables) for links in linked(requirement, store)}
    others = {broken_by(links, requirement, us_tables) for links in unmated(requirement, store)}
    joints = line(RequirementId.JOINTS)
    corrections = least(joined | {one | {joints} for one in others})
    if frozenset() in corrections:
        return  # a set fits
    found = reasons(survey, context, NoSetListening(most=200, questions=None))
    assert found.ending is NoSetEnding.COMPLETE
    assert groups(found) == hitting(corrections)
    tried = {frozenset(one.given_up) for one in found.trials}
    assert tried | set(map(frozenset, found.lacking)) == corrections
    weights = [weight_of(one.given_up, survey) for one in found.trials]
    assert weights == sorted(weights)


def weight_of(given_up: tuple[Demand, ...], survey: Survey) -> list[int]:
    """Return how many demands of each kind are given up, the heaviest kind first: what the order is declared to be."""
    position, site = survey.positions[0], survey.site
    kinds = [concession_of(one, position, site) for one in given_up]
    return [kinds.count(kind) for kind in reversed(ORDER)]


# worked by hand


def only(catalogue: CatalogueStore, keep: Callable[[Part], bool]) -> ListStore:
    return ListStore(filter(keep, catalogue.search("", None, 10_000)))


def test_e85_in_a_catalogue_of_e10_parts_is_a_gap_that_another_blend_frees(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    # UL 2586A, 330A, 567A, scopes 1.3: blends above 25 up to 85 % ask for class E85; a base listing covers 10 %.
    beyond = {ListingClass.E25, ListingClass.E85}
    store = only(catalogue, lambda part: not beyond & set(part.listings))
    survey = survey_of(liquid=E85)
    found = reasons(survey, PlanningContext(us_tables, store))
    listing = next(one for one in found.conflicts if line(RequirementId.LISTING_CLASS) in one.demands)
    assert set(listing.demands) == {answer(AskedAnswer.LIQUID), line(RequirementId.LISTING_CLASS)}
    for slot in listing.slots:  # every part of a slot lacks the class, and adaptors are no slot
        assert slot.left == 0
        assert dict(slot.broken)[RequirementId.LISTING_CLASS] == slot.there
    trial = next(one for one in found.trials if one.given_up == (answer(AskedAnswer.LIQUID),))
    assert trial.concession is Concession.BUSINESS
    assert trial.after is not None
    # E25, the nearer class, has no part either
    assert trial.after.positions[0].liquid == SurveyLiquid(family=LiquidFamily.GASOLINE, blend_percent=10)
    plan = plan_position(trial.after.positions[0], survey.site, PlanningContext(us_tables, store))
    assert plan.chosen is not None
    assert plan.chosen.hanging_set == trial.freed


def test_spouts_that_are_too_wide_are_named_by_what_they_miss(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    # 40 CFR 1090.1550: a nozzle for gasoline has a terminal end of at most 0.840 in (21.34 mm).
    nozzles = [one for one in catalogue.search("", None, 10_000) if one.nozzle and ListingClass.E10 in one.listings]
    wide_m = {"W-1": 0.02384, "W-2": 0.02234, "W-3": 0.02984, "W-4": 0.03134}
    wide = [
        replace(nozzles[0], number=number, nozzle=replace(nozzles[0].nozzle, spout_outside_diameter_m=width))
        for number, width in wide_m.items()
        if nozzles[0].nozzle is not None
    ]
    others = [one for one in catalogue.search("", None, 10_000) if one.nozzle is None]
    found = reasons(CAR, PlanningContext(us_tables, ListStore([*others, *wide])))
    spout = next(one for one in found.conflicts if line(RequirementId.SPOUT) in one.demands)
    reason = next(one for one in spout.slots if one.slot is Slot.NOZZLE)
    assert (reason.there, reason.left, dict(reason.broken)[RequirementId.SPOUT]) == (4, 0, 4)
    assert [near.part.number for near in reason.nearest] == ["W-2", "W-1", "W-3"]
    missed_m = [
        next(miss.value for miss in near.misses if miss.name == RuleId.SPOUT_DIAMETER) for near in reason.nearest
    ]
    assert missed_m == pytest.approx([0.02234 - 0.021336, 0.02384 - 0.021336, 0.02984 - 0.021336])
    assert spout.is_gap


def test_a_part_asked_for_and_refused_contradicts_itself(context: PlanningContext) -> None:
    chosen = plan_position(CAR.positions[0], CAR.site, context).chosen
    assert chosen is not None
    part = chosen.hanging_set.refs[-1]
    survey = deciding(CAR, pinned=[part], refused=[part])
    found = reasons(survey, context)
    assert groups(found) == {frozenset({pinned(part), refused(part)})}
    assert [one.given_up for one in found.trials] == [(refused(part),), (pinned(part),)]
    assert [one.after and one.after.positions[0].decisions.pinned for one in found.trials] == [(part,), ()]
    assert [one.after and one.after.positions[0].decisions.refused for one in found.trials] == [(), (part,)]
    assert part in found.trials[0].freed.refs
    assert part not in found.trials[1].freed.refs


def test_vapor_recovery_at_diesel_is_a_contradiction_of_two_answers(context: PlanningContext) -> None:
    # CFR Title 40 Part 60, Subpart CCCCCC is about gasoline; diesel has no vapor recovery
    survey = survey_of(liquid={"family": "diesel", "blend_percent": 5}, vapour_wanted="balance")
    found = reasons(survey, context)
    assert groups(found) == {frozenset({answer(AskedAnswer.LIQUID), answer(AskedAnswer.VAPOUR)})}
    assert [one.rule_id for one in found.conflicts[0].findings] == [RuleId.VAPOUR_FOR_NON_GASOLINE]
    trial = next(one for one in found.trials if one.given_up == (answer(AskedAnswer.VAPOUR),))
    assert trial.after is not None
    assert trial.after.positions[0].vapour_wanted is VapourStatus.NONE


def test_several_contradictions_are_told_apart(context: PlanningContext) -> None:
    # UL 2586B 1.3: no class above 20 and below 99.9 percent; an NPT thread carries a single path
    survey = survey_of(liquid={"family": "diesel", "blend_percent": 50}, outlet={"thread": "NPT", "path": "balance"})
    found = reasons(survey, context)
    assert groups(found) == {frozenset({answer(AskedAnswer.LIQUID)}), frozenset({answer(AskedAnswer.OUTLET)})}
    told = {one.demands[0].answer: [finding.rule_id for finding in one.findings] for one in found.conflicts}
    assert told == {AskedAnswer.LIQUID: [RuleId.CLASS_GAP], AskedAnswer.OUTLET: [RuleId.PATH_ON_THREAD]}
    assert [set(one.given_up) for one in found.trials] == [{answer(AskedAnswer.LIQUID), answer(AskedAnswer.OUTLET)}]
    assert found.trials[0].after is None  # an outlet is looked at again, not chosen
    assert found.trials[0].answers[0].liquid == SurveyLiquid(family=LiquidFamily.DIESEL, blend_percent=20)


def test_a_reach_beyond_the_longest_hose_is_told_with_both_figures(context: PlanningContext) -> None:
    found = reasons(TOO_FAR, context)
    assert groups(found) == {frozenset({line(RequirementId.REACH), line(RequirementId.HOSE_LENGTH)})}
    figures = {one.line: one for one in found.conflicts[0].figures}
    # NFPA 30A 6.5.1 (from memory): a hose is at most 18 ft, which is 5.4864 m
    assert figures[RequirementId.HOSE_LENGTH].asked == pytest.approx(18 * 0.3048)
    assert figures[RequirementId.HOSE_LENGTH].attained > figures[RequirementId.HOSE_LENGTH].asked
    reach = figures[RequirementId.REACH]
    assert reach.attained < reach.asked
    hoses_m = sum(part.hose.length_m for part in (one.part for one in reach.nearest.links) if part.hose)
    assert hoses_m <= 18 * 0.3048 + 1e-9
    (trial,) = found.trials  # the longer hose is a rule, which nobody at the station gives up
    assert trial.given_up == (line(RequirementId.REACH),)
    assert (trial.needed, trial.after) == (reach.attained, None)
    assert found.lacking == ((line(RequirementId.HOSE_LENGTH),),)


def test_a_part_asked_for_is_told_by_what_it_breaks_itself(context: PlanningContext) -> None:
    # UL 2586 1.4: the base class covers gasoline with 10 percent ethanol; a diesel listing says nothing of it
    diesel = next(
        one
        for one in context.parts.candidates(CandidateFilter(kind=PartKind.NOZZLE))
        if one.nozzle and not set(one.listings) & {ListingClass.E10, ListingClass.E25, ListingClass.E85}
    )
    found = reasons(deciding(CAR, pinned=[diesel.ref]), context)
    asked = line(RequirementId.LISTING_CLASS), pinned(diesel.ref)
    listing = next(one for one in found.conflicts if set(one.demands) == set(asked))
    assert [(one.part, [finding.rule_id for finding in one.findings]) for one in listing.asked_for] == [
        (diesel, [RuleId.PART_CLASS])
    ]
    assert [one.given_up for one in found.trials] == [(pinned(diesel.ref),)]
    fits = plan_position(CAR.positions[0], CAR.site, context).chosen
    assert fits is not None
    assert found.trials[0].freed == fits.hanging_set


def test_trials_leave_the_survey_as_it_is_and_free_what_they_say(context: PlanningContext) -> None:
    survey = survey_of(liquid=E10, hold_open_wanted=True, decisions={"longest_lead_time_days": 0})
    before = survey.model_dump()
    found = reasons(survey, context)
    assert survey.model_dump() == before
    trial = next(one for one in found.trials if one.given_up == (line(RequirementId.LEAD_TIME),))
    assert trial.after is not None
    days = trial.after.positions[0].decisions.longest_lead_time_days
    assert days == trial.needed
    assert max(part.lead_time_days for part in trial.freed.bought) <= (days or 0)
    plan = plan_position(trial.after.positions[0], survey.site, context)
    assert plan.status is PlanStatus.FITS
    shorter = deciding(survey, longest_lead_time_days=(days or 0) - 1)
    assert plan_position(shorter.positions[0], survey.site, context).status is PlanStatus.DOES_NOT_FIT


def test_conflicts_and_trials_are_told_one_by_one(context: PlanningContext) -> None:
    conflicts: list[ConflictReasons] = []
    trials: list[Trial] = []
    named: list[tuple[Demand, ...]] = []
    listening = NoSetListening(on_obstacle=named.append, on_conflict=conflicts.append, on_trial=trials.append)
    found = reasons(TOO_FAR, context, listening)
    assert named == [one.demands for one in found.conflicts]
    assert (tuple(conflicts), tuple(trials)) == (found.conflicts, found.trials)


def test_bounds_are_told(context: PlanningContext) -> None:
    assert reasons(TOO_FAR, context, NoSetListening(most=1)).ending is NoSetEnding.CONFLICTS
    assert reasons(TOO_FAR, context, NoSetListening(questions=2)).ending is NoSetEnding.QUESTIONS
    over = reasons(TOO_FAR, context, NoSetListening(out_of_time=lambda: True))
    assert over.ending is NoSetEnding.TIME
    assert not any(one.by_checks for one in over.conflicts)
    # what the plan found before is told all the same
    assert [one.demands for one in over.conflicts] == [(line(RequirementId.HOSE_LENGTH), line(RequirementId.REACH))]


@pytest.mark.parametrize("looks", [1, 2, 4, 8, 16, 32, 64, 128, 256])
def test_time_may_be_over_at_any_look_at_the_clock(looks: int, context: PlanningContext) -> None:
    whole, clock = reasons(TOO_FAR, context), iter(range(looks))
    over = reasons(TOO_FAR, context, NoSetListening(out_of_time=lambda: next(clock, None) is None))
    assert over.ending in (NoSetEnding.TIME, NoSetEnding.COMPLETE)
    assert (over == whole) == (over.ending is NoSetEnding.COMPLETE)
    assert over.trials == whole.trials[: len(over.trials)]
    assert [one.demands for one in over.conflicts] == [one.demands for one in whole.conflicts]


class Stops(Listener):
    def should_stop(self) -> bool:
        return True


def test_it_can_be_stopped(context: PlanningContext) -> None:
    plan = plan_position(TOO_FAR.positions[0], TOO_FAR.site, context)
    with pytest.raises(Cancelled):
        why_no_set(plan, TOO_FAR, replace(context, listener=Stops()))


def test_a_position_with_a_set_has_no_reasons(context: PlanningContext) -> None:
    plan = plan_position(CAR.positions[0], CAR.site, context)
    found = why_no_set(plan, CAR, context)
    assert (found.conflicts, found.trials, found.lacking) == ((), (), ())


def test_a_contradiction_does_not_hide_what_else_must_be_given_up(context: PlanningContext) -> None:
    # UL 2586B 1.3: no class between B20 and B100; NFPA 30A 6.5.1 (from memory): hose of at most 18 ft, far below 12 m
    survey = survey_of(liquid={"family": "diesel", "blend_percent": 50}, filler={"distance_m": 12.0})
    found = reasons(survey, context)
    asked = [set(one.demands) for one in found.conflicts]
    assert asked[0] == {answer(AskedAnswer.LIQUID)}
    assert {line(RequirementId.REACH), line(RequirementId.HOSE_LENGTH)} in asked
    trial = found.trials[0]
    assert set(trial.given_up) == {answer(AskedAnswer.LIQUID), line(RequirementId.REACH)}
    assert trial.after is None
    assert found.ending is NoSetEnding.ANSWERS


def test_an_outlet_that_nothing_screws_onto_names_what_comes_nearest(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    # ISO 228-1 and ASME B1.20.1: parallel G threads and tapered NPT threads are different standards and do not mate
    def is_npt(part: Part) -> bool:
        return all(end is None or end.thread is not ThreadStandard.G for end in (part.inlet, part.outlet))

    store = only(catalogue, is_npt)
    survey = survey_of(liquid=E10, outlet={"thread": "G", "size": "3/4"})
    found = reasons(survey, PlanningContext(us_tables, store))
    joints = next(one for one in found.conflicts if one.demands == (line(RequirementId.JOINTS),))
    (slot,) = joints.slots
    assert (slot.slot, slot.left) == (Slot.WHIP_HOSE, 0)
    assert slot.nearest
    for near in slot.nearest:
        assert near.part.inlet is not None
        assert near.part.inlet.thread is ThreadStandard.NPT
        assert near.findings
    assert joints.is_gap
    assert found.trials == ()


def test_a_part_that_its_maker_replaced_gives_way_first(context: PlanningContext) -> None:
    # the catalogue's table of swivels says that LS-S101 took the place of LS-S113
    survey = deciding(CAR, pinned=["LS-S113"])
    found = reasons(survey, context)
    first = found.trials[0]
    assert [(one.before.number, one.now.number) for one in first.successions] == [("LS-S113", "LS-S101")]
    assert first.after is not None
    assert [one.number for one in first.after.positions[0].decisions.pinned] == ["LS-S101"]
    assert "LS-S101" in first.freed.numbers
    assert [one.number for one in survey.positions[0].decisions.pinned] == ["LS-S113"]
