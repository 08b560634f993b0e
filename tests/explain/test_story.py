"""Sentences carry the figures of the result, in one unit system, with their sources."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from documents import plan_factory as factory
from documents.readers import story
from rules.stations import tables
from spoutline import assets
from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml
from spoutline.explain.plan.story import Story
from spoutline.explain.writing.formula import formula_text
from spoutline.explain.writing.money import amount, money_text
from spoutline.model.check import Outcome, WorkedLine
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.language import Language
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Conflict, Exclusion, PartVerdict, PinnedPart
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import RequirementId, Slot
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def spout_finding(severity: Severity = Severity.MUST) -> Finding:
    return Finding(
        rule_id="spout_diameter",
        severity=severity,
        verdict=Verdict.BROKEN,
        subject_kind=SubjectKind.PART,
        subject="QW-N101",
        facts=(
            Quantity("spout", 0.0238, Dimension.DIAMETER),
            Quantity("spout_maximum", 0.021336, Dimension.DIAMETER),
            Fact("path", "vacuum_assist"),
        ),
        limit_ids=(),
        source="40 CFR 1090.1550",
    )


def test_a_finding_tells_its_figures_in_si_units() -> None:
    text = story().finding(spout_finding())
    assert text.sentence == (
        "The outside diameter of the spout lies outside the window of the liquid and duty "
        "(spout 23.8 mm; spout up to 21.34 mm; path vacuum-assist coaxial)."
    )
    assert text.source == "40 CFR 1090.1550"
    assert text.severity_word == "must"


def test_a_finding_tells_the_same_figures_in_us_units() -> None:
    # 23.8 mm / 25.4 = 0.937 in; 21.336 mm = 0.840 in (NIST SP 811: 1 in = 25.4 mm)
    sentence = story(UnitSystem.US).finding(spout_finding()).sentence
    assert "spout 0.937 in" in sentence
    assert "spout up to 0.84 in" in sentence
    assert "mm" not in sentence


def test_a_fact_named_service_is_worded_for_dispenser_and_nozzle_alike() -> None:
    assert story().fact(Fact("service", "self")) == "service self-service"
    assert story().fact(Fact("service", "diesel_truck")) == "service truck diesel filler"


def test_a_joint_at_the_outlet_names_the_outlet() -> None:
    assert story().fact(Fact("upstream", "")) == "upstream dispenser outlet"


def test_findings_come_gravest_first() -> None:
    mixed = tuple(spout_finding(severity) for severity in (Severity.ADVICE, Severity.MUST, Severity.SHOULD))
    assert [text.severity for text in story().by_severity(mixed)] == [Severity.MUST, Severity.SHOULD, Severity.ADVICE]


def test_a_requirement_line_gives_answer_rule_and_source() -> None:
    text = story().requirement_line(factory.requirement_line())
    assert text.title == "Listing class"
    assert text.answer == "Gasoline with 10 % ethanol asks for parts listed for class E10."
    assert text.reason.startswith("The blend asks for the next higher listing class")
    assert text.source == "UL 2586 1.4"


def test_a_check_shows_value_window_margin_and_outcome() -> None:
    text = story().check(factory.spout_check())
    assert (text.value, text.limit, text.margin) == ("20.8 mm", "20.5 mm to 21.34 mm", "+0.3 mm")
    assert text.outcome is Outcome.PASSES
    assert text.sources == ("SAE J285:2007 [secondary]", "40 CFR 1090.1550 [secondary]")


def test_a_check_without_data_never_reads_as_a_pass() -> None:
    text = story().check(factory.resistance_check())
    assert text.value == "cannot be shown"
    assert text.outcome_word == "cannot be shown"
    assert text.limit == "at most 1 MΩ"


def test_a_worked_line_gives_formula_figures_and_result_with_units() -> None:
    line = factory.flow_check(factory.CheckId.FLOW_COLD, 37.8541).lines[0]
    text = story().worked_line(line)
    # 10 gpm in a 3/4 in bore runs at 2.21 m/s (velocity table of a hydraulics reference, B6: 2.21 m/s)
    assert text.formula == "v = 4 Q / (π D^2)"
    assert text.inputs == "with Q = 37.85 L/min, D = 19.05 mm"
    assert text.result.startswith("v = 2.21")
    assert text.result.endswith("m/s")


@pytest.mark.parametrize(
    ("written", "shown"),
    [
        ("L = m r phi", "L = m r φ"),
        ("a = d / (2 z), sinh(z) / z = sqrt(L^2 - dh^2) / d", "a = d / (2 z), sinh(z) / z = √(L^2 − dh^2) / d"),
        ("rho g h", "ρ g h"),
        ("pipe", "pipe"),
    ],
)
def test_formulas_show_greek_letters_and_roots(written: str, shown: str) -> None:
    assert formula_text(written) == shown


def test_the_note_of_a_worked_line_names_the_same_signs_as_its_formula() -> None:
    line = replace(factory.flow_check(factory.CheckId.FLOW_COLD, 30.0).lines[0], note="phi in radians, mu is left out")
    assert story().worked_line(line).note == "φ in radians, μ is left out"


def test_the_cases_of_a_list_row_are_told_in_words() -> None:
    row = next(limit for limit in tables().jurisdiction.limits if limit.id is LimitId.NOZZLE_MANUAL_CASES)
    row = replace(row, value=("attended:reel:fuel_oil", "self:car:diesel", "anything else"))
    assert story().limit_value(row) == "attended, reel, fuel oil; self-service, car, diesel; anything else"


def test_a_conflict_is_told_in_order_with_its_nearest_parts() -> None:
    conflict = factory.conflicting_plan().conflict
    assert conflict is not None
    opening, together, slot = story().conflict(conflict)
    assert opening == "No set in the catalog meets every requirement of this position."
    assert "cannot be met together: reach to the filler, greatest hose length" in together
    assert slot.startswith("Curb hose: the requirement “greatest hose length” excludes 3 parts")
    assert slot.endswith("Parts that nothing else excludes, cheapest first: QW-C20, QW-C22.")


def test_an_outlet_that_nothing_fits_names_the_ports_that_come_nearest() -> None:
    exclusion = Exclusion(
        slot=Slot.WHIP_HOSE,
        requirement=RequirementId.JOINTS,
        rule_id="joint_size",
        excluded=12,
        nearest=(PartRef("QW-W18"),),
    )
    assert story().exclusion(exclusion).endswith("Parts whose ports come nearest to the outlet: QW-W18.")


def test_a_relaxation_names_the_smallest_change_and_its_price() -> None:
    conflict = factory.conflicting_plan().conflict
    assert conflict is not None
    text = story(UnitSystem.US).relaxation(conflict.relaxations[0], "USD")
    # 5.4864 m = 18 ft and 6.096 m = 20 ft exactly (1 ft = 0.3048 m)
    assert text == (
        "Greatest hose length: 18 ft would have to become 20 ft. "
        "The cheapest set that this frees costs 312.50 USD: QW-W18, QW-B7, QW-C20."
    )


def test_a_refusal_names_the_gap() -> None:
    refusal = factory.refused_plan().refusal
    assert refusal is not None
    opening, gap = story().refusal(refusal)
    assert "no listing class exists for the blend" in opening
    assert gap == (
        "No listing class covers this blend "
        "(diesel with 50 % biodiesel; covered up to 20 %; covered again from 99.9 %)."
    )


def test_why_not_lists_every_broken_rule_gravest_first() -> None:
    verdict = PartVerdict(
        part=factory.nozzle(),
        position=factory.position(),
        slots=(Slot.NOZZLE,),
        findings=(spout_finding(Severity.ADVICE), spout_finding(Severity.MUST)),
        in_chosen_set=False,
        best_set_with_it=None,
    )
    opening, first, second = story().part_verdict(verdict)
    assert opening == "QW-N101 (Automatic gasoline nozzle) breaks 2 rules at this position:"
    assert first.startswith("Must: ")
    assert second.startswith("Advice: ")


def test_why_not_says_what_a_sound_part_costs() -> None:
    verdict = PartVerdict(
        part=factory.nozzle(),
        position=factory.position(),
        slots=(Slot.NOZZLE,),
        findings=(),
        in_chosen_set=False,
        best_set_with_it=factory.chain(),
    )
    opening, reason = story().part_verdict(verdict)
    assert "272.45 USD" in opening
    assert "cheaper set" in reason


def test_why_not_says_that_a_kind_has_no_place() -> None:
    verdict = PartVerdict(
        part=factory.swivel(),
        position=factory.position(),
        slots=(),
        findings=(),
        in_chosen_set=False,
        best_set_with_it=None,
    )
    assert "has no place" in story().part_verdict(verdict)[0]


def test_an_alternative_tells_kind_price_and_other_parts() -> None:
    other = factory.chain(last=replace(factory.nozzle(), number="QW-N200"))
    alternative = factory.fitting_plan().alternatives[0]
    alternative = replace(alternative, judged=factory.judged(other))
    text = story().alternative(alternative, factory.chain())
    assert text == "Lighter to handle: 12.50 USD more; other parts: QW-N200"


def test_a_liquid_is_named_with_its_blend() -> None:
    assert story().liquid(Liquid(LiquidFamily.GASOLINE, 15)) == "gasoline, 15 % ethanol"
    assert story().liquid(Liquid(LiquidFamily.KEROSENE, 5)) == "kerosene, 5 % biodiesel"
    assert story().liquid(Liquid(LiquidFamily.DEF, 0)) == "diesel exhaust fluid (DEF)"


def test_part_data_show_each_stated_figure_and_name_what_is_not_stated() -> None:
    rows = {row.label: row.text for row in story().part_data(factory.breakaway())}
    assert rows["Separates at a pull"] == "600 N to 1100 N"
    assert rows["Can be reconnected"] == "yes"
    unknown = {row.label: row.text for row in story().part_data(replace(factory.breakaway(), resistance_ohm=None))}
    assert unknown["Resistance"] == "not stated"


@pytest.mark.parametrize(
    ("minor", "currency", "text"),
    [
        (123450, "USD", "1,234.50 USD"),
        (5, "EUR", "0.05 EUR"),
        (-1250, "USD", "-12.50 USD"),
        (500, "JPY", "500 JPY"),  # ISO 4217: the yen has no minor unit (from memory)
        (1500, "KWD", "1.500 KWD"),  # ISO 4217: the Kuwaiti dinar has three decimals (from memory)
    ],
)
def test_money_is_exact_and_grouped(minor: int, currency: str, text: str) -> None:
    assert money_text(minor, currency) == text


@given(st.integers(min_value=-(10**15), max_value=10**15))
def test_money_loses_no_cent(minor: int) -> None:
    assert amount(minor, "USD") * 100 == minor
    assert int(money_text(minor, "USD", with_currency=False).replace(",", "").replace(".", "")) == minor


def test_a_pinned_part_in_the_way_is_told_as_why_not_tells_it() -> None:
    pinned = PinnedPart(part=factory.nozzle(), slots=(Slot.NOZZLE,), findings=(spout_finding(),), lines=())
    none = Conflict(requirements=(RequirementId.DECISION,), exclusions=(), relaxations=(), pinned=(pinned,))
    told = story().conflict(none)
    assert factory.nozzle().number in told[1]
    assert "breaks 1 rule at this position" in told[1]
    assert told[2].startswith("Must: The outside diameter of the spout lies outside")
    assert told[2].endswith("(40 CFR 1090.1550)")


@pytest.mark.parametrize(
    ("language", "words"),
    [
        (Language.ENGLISH, "ρ (No. 2-D diesel)"),
        (Language.GERMAN, "ρ (Diesel Nr. 2-D)"),
        (Language.SPANISH, "ρ (diésel n.º 2-D)"),
        (Language.FRENCH, "ρ (gazole n° 2-D)"),
    ],
)
def test_a_figure_of_a_component_names_it_as_the_trade_does(language: Language, words: str) -> None:
    """Grades No. 1-D and No. 2-D are those of ASTM D975 (from memory)."""
    path = assets.resources_folder() / "phrases" / f"{language}.toml"
    told = Story(phrasebook_from_toml(path.read_text(encoding="utf-8"), path.name), Display(UnitSystem.SI))
    assert told.symbol("rho diesel_2d") == words
    assert told.symbol("rho_w") == "ρ_w"
    line = WorkedLine(
        formula="rho = sum(phi rho_i)",
        inputs=(Quantity("phi biodiesel", 0.2, Dimension.RATIO),),
        result=Quantity("rho diesel_2d", 850.0, Dimension.DENSITY),
        source="none",
    )
    text = told.worked_line(line)
    assert text.result.startswith(f"{words} = ")
    assert not any("_" in one for one in (text.inputs, text.result))


def test_a_figure_that_rests_on_judgment_says_so_once_and_as_americans_spell_it() -> None:
    """Webster's spelling (from memory); tables of rules write the other one."""
    words = story()
    told = "engineering judgment"
    assert words.sourced("slack", LimitStatus.JUDGEMENT) == f"slack [{told}]"
    assert words.sourced("", LimitStatus.JUDGEMENT) == f"[{told}]"
    assert words.sourced("engineering judgement", LimitStatus.JUDGEMENT) == told
