"""Every requirement line reads as one plain sentence with its figures; the figures below come from published texts."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

import pytest

from documents.readers import phrasebook, story
from rules.stations import changed, position, site, tables
from spoutline.explain.phrases.asked_cases import CASES
from spoutline.explain.plan.words import liquid_of
from spoutline.model.finding import Severity
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import RequirementId, RequirementLine
from spoutline.model.survey import Decisions, Duty, Outlet, Position, Retrieval, Service, VapourStatus
from spoutline.rules.declared.registry import RULES
from spoutline.rules.derive.requirement import requirement_for
from spoutline.units.accepted import UnitSystem

GASOLINE, DIESEL, DEF = LiquidFamily.GASOLINE, LiquidFamily.DIESEL, LiquidFamily.DEF
PROFILES = ("us_general", "us_vapour_rules", "us_without_recovery", "europe")


def line(asked: RequirementId, *facts: Quantity | Fact) -> RequirementLine:
    rule = next(rule for rule in RULES.values() if rule.requirement is asked and rule.id.startswith("asks_"))
    return RequirementLine(
        id=asked, severity=Severity.MUST, rule_id=rule.id, facts=facts, limit_ids=(), source=rule.source
    )


def told(asked: RequirementId, *facts: Quantity | Fact, system: UnitSystem = UnitSystem.SI) -> str:
    return story(system).requirement_line(line(asked, *facts)).answer


def surveyed() -> Iterator[Position]:
    """Return positions over liquid, duty, vapour status, retrieval and the answers that change a line."""
    liquids = ((GASOLINE, 10.0), (GASOLINE, 90.0), (DIESEL, 5.0), (DIESEL, 30.0), (DEF, 0.0))
    for (family, blend), duty, vapour, retrieval in product(liquids, Duty, VapourStatus, Retrieval):
        for latch, prepay in ((False, False), (True, False), (True, True)):
            yield position(
                family,
                blend,
                duty=duty,
                vapour_wanted=vapour,
                retrieval=retrieval,
                hold_open_wanted=latch,
                prepay=prepay,
                in_flammable_zone=True if latch else None,
                outlet=Outlet(path=FlowPath.BALANCE) if prepay else Outlet(),
                decisions=Decisions(pinned=("A-1",), refused=("B-2",), longest_lead_time_days=9)
                if prepay
                else Decisions(),
            )


@pytest.mark.parametrize("profile", PROFILES)
@pytest.mark.parametrize("service", list(Service))
def test_every_line_of_every_survey_is_told_by_a_sentence_of_its_own(profile: str, service: Service) -> None:
    words, at = story(), site(service=service, fenced=service is Service.UNATTENDED)
    lines = {one for asked in surveyed() for one in requirement_for(asked, at, tables(profile)).lines}
    assert len(lines) > 80
    for one in lines:
        sentence = words.requirement_line(one).answer
        rule = words.phrases.rule(one.rule_id).says
        assert not sentence.startswith(f"{rule} ("), sentence
        assert sentence[0].isupper() or sentence[0].isdigit(), sentence
        assert sentence.endswith("."), sentence
        assert "_" not in sentence, sentence
        assert "{" not in sentence, sentence


def test_every_line_that_a_requirement_may_hold_has_a_sentence() -> None:
    assert {case.asked for case in CASES} == set(RequirementId)
    assert set(phrasebook().asks) == {case.key for case in CASES}


def test_a_blend_is_named_with_the_class_that_it_asks_for() -> None:
    # E10 covers up to 10 % ethanol: UL 2586 scope
    facts = (
        Fact("family", "gasoline"),
        Quantity("blend_percent", 10, Dimension.PERCENT),
        Fact("listing_class", "E10"),
    )
    assert told(RequirementId.LISTING_CLASS, *facts) == (
        "Gasoline with 10 % ethanol asks for parts listed for class E10."
    )


@pytest.mark.parametrize(
    ("wanted", "allowed", "latch", "sentence"),
    [
        ("no", "yes", "no", "No latch: none is wanted."),
        ("no", "no", "no", "No latch: none is wanted."),
        ("yes", "no", "no", "No latch: one is wanted, but it is not allowed here."),
        ("yes", "yes", "yes", "The nozzle has a hold-open latch: one is wanted, and it is allowed here."),
    ],
)
def test_a_latch_is_told_by_wish_and_permission(wanted: str, allowed: str, latch: str, sentence: str) -> None:
    facts = (Fact("wanted", wanted), Fact("allowed", allowed), Fact("hold_open", latch))
    assert told(RequirementId.HOLD_OPEN, *facts) == sentence


def test_a_figure_is_told_in_the_units_of_the_reader() -> None:
    # 18 ft as in NIST Handbook 44: 18 x 0.3048 m = 5.4864 m, to the millimetre
    longest = Quantity("length_maximum", 5.4864, Dimension.LENGTH)
    facts = (Fact("duty", "car"), Fact("fenced", "no"), longest)
    assert told(RequirementId.HOSE_LENGTH, *facts) == "Whip hose and curb hose together are at most 5.486 m long."
    assert "18 ft" in told(RequirementId.HOSE_LENGTH, *facts, system=UnitSystem.US)


def test_a_limited_flow_names_the_flow_that_may_be_used() -> None:
    # 10 gal/min into cars, 40 CFR 1090.1550; 10 x 3.785411784 L = 37.85 L
    def flow(name: str, l_min: float) -> Quantity:
        return Quantity(name, l_min / 60000, Dimension.FLOW)

    facts = (flow("wanted_flow", 30), flow("supply_flow", 60), flow("flow_ceiling", 37.85411784))
    assert "of which 37.9 L/min may be used" in told(RequirementId.FLOW, *facts)
    plain = told(RequirementId.FLOW, *facts[:2], flow("flow_ceiling", 60))
    assert plain == "The set delivers the 30 L/min wanted; the dispenser gives up to 60 L/min."


def test_fillers_that_may_serve_are_told_as_a_choice() -> None:
    facts = (Fact("family", "diesel"), Fact("duty", "marine"), Fact("services", "diesel_car, diesel_truck"))
    assert told(RequirementId.LIQUID_SERVICE, *facts).endswith("made for a car diesel filler or truck diesel filler.")


@pytest.mark.parametrize(
    ("outlet", "shown"),
    [("NPT 3/4 female single", "3/4 NPT female, single path"), ("somewhere else", "somewhere else")],
)
def test_the_outlet_is_written_as_the_trade_writes_it(outlet: str, shown: str) -> None:
    assert f"({shown})" in told(RequirementId.JOINTS, Fact("outlet", outlet))


def test_what_a_person_wrote_is_never_worded() -> None:
    facts = (Fact("pinned", "none"), Fact("refused", ""))
    assert told(RequirementId.DECISION, *facts) == "A person asked for none."
    reach = (
        Fact("filler", "{needed_length} car"),
        Quantity("taut_length", 2.0, Dimension.LENGTH),
        Quantity("needed_length", 3.0, Dimension.LENGTH),
    )
    assert "filler “{needed_length} car” the chain must measure at least 3 m" in told(RequirementId.REACH, *reach)


def test_a_line_with_other_facts_falls_back_on_its_rule_with_the_figures_behind() -> None:
    clearance = told(RequirementId.GROUND_CLEARANCE, Quantity("height", 0.1, Dimension.LENGTH))
    assert clearance == "The hanging hose stays clear of the ground (height 0.1 m)."


def test_a_row_left_open_by_a_profile_is_still_told() -> None:
    own = changed(tables(), BOND_HOSE_MAX=None, BOND_DEVICE_MAX=None, HOSE_LENGTH_MAX=None)
    lines = {one.id: story().requirement_line(one).answer for one in requirement_for(position(), site(), own).lines}
    # NFPA 77: 1 megohm (memory, as the limit row says)
    assert lines[RequirementId.RESISTANCE] == "From the dispenser to the spout tip the chain has at most 1 MΩ."
    assert lines[RequirementId.HOSE_LENGTH].startswith("No limit of the hose length was found")


def test_family_and_blend_make_one_liquid() -> None:
    facts = (Fact("family", "diesel"), Quantity("blend_percent", 5, Dimension.PERCENT))
    assert liquid_of(facts) == Liquid(DIESEL, 5)
    assert liquid_of(facts[:1]) is None
    assert story().facts((*facts, Fact("duty", "truck"))) == "diesel with 5 % biodiesel; duty truck"
