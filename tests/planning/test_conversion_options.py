"""The cheapest conversion, held against every chain of a small catalogue; what stays, goes and comes, and why."""

from __future__ import annotations

from collections import Counter

import pytest

from examples import seeds
from planning.conversion_enumeration import least_cost, small_catalogue
from planning.conversion_sites import PLAIN_CHAIN, context_for, installed, position, rule_tables, site_of
from planning.stores import ListStore
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.check import Outcome
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.conversion_step import StepScope
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.finding import Severity, Verdict
from spoutline.model.part_ref import PartRef
from spoutline.model.position_conversion import ConversionKind, DifferenceAction, PositionConversion, PositionOutcome
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Survey
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.planning.protocols import PartStore
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.rules.derive.requirement import requirement_for

MISSED = (Outcome.FAILS, Outcome.UNKNOWN)
E15 = {"family": "gasoline", "blend_percent": 15}
LIQUIDS = {
    "same liquid": {},
    "E10 to E15": {"liquid": E15, "liquid_today": {"family": "gasoline", "blend_percent": 10}},
}


def converted(survey: Survey, parts: PartStore) -> PositionConversion:
    return convert_site(survey, context_for(survey, parts)).positions[0]


def lines(one: PositionConversion, action: DifferenceAction) -> dict[str, DifferenceReason]:
    return {
        (line.part.number if line.part else line.installed.description if line.installed else ""): line.reason
        for line in one.differences
        if line.action is action
    }


@pytest.mark.parametrize("rate", [None, "95"], ids=["work unpriced", "work priced"])
@pytest.mark.parametrize("liquid", LIQUIDS.values(), ids=LIQUIDS)
@pytest.mark.parametrize("seed", seeds(4))
def test_the_least_cost_is_the_least_of_all_chains(
    seed: int, liquid: dict[str, object], rate: str | None, catalogue: CatalogueStore
) -> None:
    probe = site_of(position("1A", **liquid))
    tables = rule_tables("us_general")
    requirement = requirement_for(probe.positions[0], probe.site, tables)
    assert isinstance(requirement, Requirement)
    store = small_catalogue(catalogue, requirement, tables, seed)
    # what hangs there today: one part of each second slot, drawn from the same parts, and one adaptor
    kinds = ("breakaway", "nozzle", "adaptor") if seed % 2 else ("curb_hose", "swivel", "adaptor")
    there = [next(part for part in store.all if part.kind == kind) for kind in kinds]
    survey = site_of(
        position("1A", installed=installed(*((part.kind.value, part.number) for part in there)), **liquid),
        money={"labour_rate_per_hour": rate} if rate else {},
    )
    one = converted(survey, store)
    context = context_for(survey, store)
    hours = context.steps.minutes_per(StepScope.PART_FITTED) / 60
    fit = round(float(rate or 0) * hours * 100)
    remove = round(float(rate or 0) * context.steps.minutes_per(StepScope.PART_REMOVED) / 60 * 100)
    staying = Counter(part.number for part in there)
    best = least_cost(requirement, tables, store, staying, fit)
    if best is None:
        assert one.least_cost is None
        return
    assert one.least_cost is not None
    # taking an installed part down for a new one of its kind is work as well; the oracle adds it at the end
    bought = [
        link.part
        for place, link in enumerate(one.least_cost.judged.hanging_set.links)
        if place not in one.least_cost.kept
    ]
    cost = one.least_cost.parts_minor + fit * len(bought)
    if rate is None:
        assert cost == best
    else:
        assert best <= cost <= best + remove * len(there)


def test_a_chain_that_still_fits_stays_whole_and_costs_nothing(catalogue: CatalogueStore) -> None:
    survey = site_of(position("1A", installed=installed(*PLAIN_CHAIN)))
    one = converted(survey, catalogue)
    assert one.outcome is PositionOutcome.NOTHING_TO_DO
    assert one.least_cost is not None
    assert one.least_cost.parts_minor == 0
    assert len(one.least_cost.kept) == len(PLAIN_CHAIN)
    assert set(lines(one, DifferenceAction.KEEP).values()) == {DifferenceReason.STILL_FITS}


@pytest.mark.parametrize("today", ["balance", "vacuum_assist"])
def test_no_coaxial_part_is_left_after_a_decommissioning(today: str, catalogue: CatalogueStore) -> None:
    # fact sheet on conversions: never leave one coaxial part in a converted set
    chain = {
        "balance": (("curb_hose", "TH-H151"), ("nozzle", "QW-N119")),
        "vacuum_assist": (("curb_hose", "TH-H169"), ("nozzle", "OB-N125")),
    }[today]
    survey = site_of(position("1A", today=today, installed=installed(*chain)), agency="wisconsin")
    one = converted(survey, catalogue)
    assert one.kinds == (ConversionKind.DECOMMISSION,)
    removed = [line for line in one.differences if line.action is DifferenceAction.REMOVE]
    assert [line.part.number for line in removed if line.part] == [number for _, number in chain]
    assert all(line.findings[0].rule_id == RuleId.PART_PATH for line in removed)
    assert one.least_cost is not None
    first, *rest = one.least_cost.judged.hanging_set.links
    assert first.slot is Slot.ADAPTOR
    assert first.part.adaptor is not None
    assert first.part.adaptor.closes_vapour  # the adaptor closes the vapour port of a coaxial outlet
    assert all(link.part.path == "single" for link in rest)


def test_another_liquid_sends_away_what_does_not_carry_its_class_and_names_the_rule(catalogue: CatalogueStore) -> None:
    survey = site_of(position("1A", installed=installed(*PLAIN_CHAIN), **LIQUIDS["E10 to E15"]))
    one = converted(survey, catalogue)
    assert one.kinds == (ConversionKind.CHANGE_LIQUID,)
    hose = next(line for line in one.differences if line.part and line.part.number == "TH-H101")
    # UL 330 scope: a hose for more than 10 percent ethanol carries the class for it
    assert hose.reason is DifferenceReason.BREAKS_RULE
    assert RuleId.PART_CLASS in {finding.rule_id for finding in hose.findings}
    assert all(finding.severity is Severity.MUST for finding in hose.findings)


def test_every_added_part_names_the_requirement_line_that_asks_for_it(catalogue: CatalogueStore) -> None:
    one = converted(site_of(position("1A", today="balance"), agency="maryland"), catalogue)
    added = [line for line in one.differences if line.reason is DifferenceReason.ASKED_FOR]
    assert added
    assert all(line.asked_by is not None and line.asked_by.source for line in added)


def test_a_kept_part_is_judged_in_the_new_set_like_any_other(catalogue: CatalogueStore) -> None:
    survey = site_of(position("1A", installed=installed(*PLAIN_CHAIN)))
    one = converted(survey, catalogue)
    assert one.least_cost is not None
    judged = one.least_cost.judged
    assert judged.hanging_set.numbers == tuple(number for _, number in PLAIN_CHAIN)
    assert judged.checks
    assert all(check.passes or check.severity is not Severity.MUST for check in judged.checks)


REASONS = {
    "damaged": ({"condition": "damaged"}, {}, {}, DifferenceReason.DAMAGED),
    "too old": ({"age_years": 9}, {"longest_age_years": 8}, {}, DifferenceReason.TOO_OLD),
    "age unknown": ({}, {"longest_age_years": 8}, {}, DifferenceReason.AGE_UNKNOWN),
    "everything renewed": ({}, {"keep_parts": False}, {}, DifferenceReason.RENEWED),
    "refused": ({}, {}, {"decisions": {"refused": ["QW-N101"]}}, DifferenceReason.REFUSED),
}


@pytest.mark.parametrize(("part", "answers", "changes", "reason"), REASONS.values(), ids=REASONS)
def test_what_the_owner_says_of_a_part_is_the_reason_for_it_to_go(
    part: dict[str, object],
    answers: dict[str, object],
    changes: dict[str, object],
    reason: DifferenceReason,
    catalogue: CatalogueStore,
) -> None:
    survey = site_of(position("1A", installed=installed(("nozzle", "QW-N101"), **part), **changes), **answers)
    assert lines(converted(survey, catalogue), DifferenceAction.REMOVE) == {"QW-N101": reason}


def test_a_single_use_breakaway_goes_where_a_reconnectable_one_is_wanted(catalogue: CatalogueStore) -> None:
    survey = site_of(position("1A", installed=installed(*PLAIN_CHAIN), reconnectable_wanted=True))
    one = converted(survey, catalogue)
    assert one.kinds == (ConversionKind.RECONNECTABLE,)
    assert lines(one, DifferenceAction.REMOVE) == {"LS-B101": DifferenceReason.NOT_RECONNECTABLE}
    assert one.least_cost is not None
    breakaway = one.least_cost.judged.hanging_set.part_in(Slot.BREAKAWAY)
    assert breakaway is not None
    assert breakaway.breakaway is not None
    assert breakaway.breakaway.reconnectable


def test_a_discontinued_part_may_stay_unless_such_parts_are_retired(catalogue: CatalogueStore) -> None:
    chain = [("breakaway", "LS-B130") if kind == "breakaway" else (kind, number) for kind, number in PLAIN_CHAIN]
    kept = converted(site_of(position("1A", installed=installed(*chain))), catalogue)
    assert lines(kept, DifferenceAction.KEEP).get("LS-B130") is DifferenceReason.STILL_FITS
    retired = converted(site_of(position("1A", installed=installed(*chain)), retire_superseded=True), catalogue)
    assert ConversionKind.RETIREMENT in retired.kinds
    assert lines(retired, DifferenceAction.REMOVE) == {"LS-B130": DifferenceReason.SUPERSEDED}


def test_a_described_part_without_figures_cannot_stay_and_says_what_is_missing(catalogue: CatalogueStore) -> None:
    there = [{"kind": "nozzle", "description": "nozzle, plate painted over", "condition": "good"}]
    one = converted(site_of(position("1A", installed=there)), catalogue)
    line = next(line for line in one.differences if line.action is DifferenceAction.REMOVE)
    assert line.reason is DifferenceReason.FIGURES_UNKNOWN
    assert line.missing == ("figures",)


def test_a_described_part_with_all_figures_stays_where_it_fits(catalogue: CatalogueStore) -> None:
    known = catalogue.part(PartRef("LS-S101"))
    assert known is not None
    assert known.inlet is not None
    assert known.outlet is not None
    ends = {
        name: {"thread": port.thread, "size": port.size, "gender": port.gender, "path": port.path}
        for name, port in (("inlet", known.inlet), ("outlet", known.outlet))
    }
    there = {
        "kind": "swivel",
        "description": "swivel from another maker",
        "condition": "good",
        "listings": ["E10"],
        "figures": {
            **ends,
            "schemes": ["UL"],
            "wetted_materials": list(known.wetted_materials),
            "temperature_minimum_c": known.temperature_minimum_c,
            "temperature_maximum_c": known.temperature_maximum_c,
            "maximum_pressure_pa": known.maximum_pressure_pa,
            "flow_coefficient_kv": known.flow_coefficient_kv,
            "mass_kg": known.mass_kg,
            "resistance_ohm": known.resistance_ohm,
            "length_m": known.length_m,
            "pull_strength_n": known.pull_strength_n,
            "swivel": {"planes": 1},
        },
    }
    one = converted(site_of(position("1A", installed=[there])), catalogue)
    assert lines(one, DifferenceAction.KEEP) == {"swivel from another maker": DifferenceReason.STILL_FITS}


def test_where_nothing_is_recorded_the_kinds_that_must_hang_there_go(catalogue: CatalogueStore) -> None:
    one = converted(site_of(position("1A", today="balance"), agency="maryland"), catalogue)
    removed = [line for line in one.differences if line.action is DifferenceAction.REMOVE]
    assert {line.installed.kind.value for line in removed if line.installed} == {
        "whip_hose",
        "breakaway",
        "curb_hose",
        "nozzle",
    }


def test_a_part_that_fits_but_is_not_used_says_what_keeping_it_would_add(catalogue: CatalogueStore) -> None:
    # two of a kind hang there: only one has a place
    twice = [*PLAIN_CHAIN, ("nozzle", "QW-N102")]
    one = converted(site_of(position("1A", installed=installed(*twice))), catalogue)
    removed = [line for line in one.differences if line.action is DifferenceAction.REMOVE]
    assert len(removed) == 1
    assert removed[0].reason in (DifferenceReason.CHEAPER_WITHOUT, DifferenceReason.BREAKS_RULE)
    if removed[0].reason is DifferenceReason.CHEAPER_WITHOUT:
        assert removed[0].extra_minor is not None
        assert removed[0].extra_minor >= 0


def test_an_installed_part_is_never_used_twice(catalogue: CatalogueStore) -> None:
    store = ListStore(catalogue.search("", None, 5000))
    adaptor = next(part for part in store.all if part.kind == "adaptor" and part.adaptor and part.price_minor("USD"))
    survey = site_of(position("1A", installed=installed(("adaptor", adaptor.number))))
    one = converted(survey, store)
    assert one.least_cost is not None
    kept = [one.least_cost.judged.hanging_set.links[place].part.number for place in one.least_cost.kept]
    assert len(kept) == len(set(kept)) <= 1


def test_a_new_position_removes_nothing_and_a_position_nobody_touches_is_left_alone(
    catalogue: CatalogueStore,
) -> None:
    new = converted(site_of(position("1A", exists_today=False)), catalogue)
    assert new.kinds == (ConversionKind.NEW_POSITION,)
    assert lines(new, DifferenceAction.REMOVE) == {}
    untouched = converted(site_of(position("1A")), catalogue)
    assert untouched.outcome is PositionOutcome.NOTHING_TO_DO
    assert untouched.differences == ()


def test_a_departure_from_good_practice_counts_once(catalogue: CatalogueStore) -> None:
    """An adaptor departs from good practice (common practice, no source): the bill and the report count it alike."""
    survey = site_of(position("1A", outlet={"thread": "NPT", "size": "1", "height_m": 2.3}, exists_today=False))
    one = converted(survey, catalogue)
    adaptors = {}
    for option in one.options:
        found = option.judged
        broken = {f for f in found.findings if f.severity is Severity.SHOULD and f.verdict is Verdict.BROKEN}
        missed = [c for c in found.checks if c.severity is Severity.SHOULD and c.outcome in MISSED]
        assert option.departures == len(broken) + len(missed)
        adaptors[option.kind] = sum(link.slot is Slot.ADAPTOR for link in found.hanging_set.links)
    assert adaptors[OptionKind.LEAST_COST] > adaptors[OptionKind.GOOD_PRACTICE]
