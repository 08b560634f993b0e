"""The pack needs no other paper: questions, reasons, weights, make-up order, seals and signature stand in it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from paper_text import text_of
from spoutline import assets
from spoutline.documents.pack.make_up import make_up_text, spare_seals
from spoutline.documents.pack.papers import caution_pdf, pack_pdf
from spoutline.explain.pack.open_points import no_set_reasons, question_texts
from spoutline.explain.pack.words import PackQuestion, PackWord
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.language import Language
from spoutline.model.liquid import LiquidFamily
from spoutline.model.pack import PackJob
from spoutline.model.plan import PositionPlan
from spoutline.model.port import Seal
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.survey import SurveyLiquid
from spoutline.units.accepted import UnitSystem

OTHER_PAPERS = {"en": "the bill", "es": "lista de materiales", "de": "Stückliste", "fr": "nomenclature"}


def asked(rule_id: str, *facts: Quantity) -> Finding:
    return Finding(
        rule_id=rule_id,
        severity=Severity.MUST,
        verdict=Verdict.QUESTION,
        subject_kind=SubjectKind.POSITION,
        subject="1A",
        facts=facts,
        limit_ids=(),
        source="typed in",
    )


def questioned() -> PositionPlan:
    plan = factory.fitting_plan()
    assert plan.requirement is not None
    pull = Quantity("outlet_pull_strength", 1946.0, Dimension.FORCE)
    findings = (asked("outlet_strength_assumed", pull), asked("vapour_removal_to_ask"))
    return replace(plan, requirement=replace(plan.requirement, findings=findings))


def pack_text(*plans: PositionPlan, language: Language = Language.ENGLISH) -> str:
    return text_of(pack_pdf(factory.site_plan(*plans), words(language), PackJob()))


@pytest.mark.parametrize("language", Language)
def test_no_paper_of_the_installer_sends_him_to_the_bill(language: Language) -> None:
    resources = assets.resources_folder()
    for folder in ("pack", "cautions"):
        text = (resources / folder / f"{language}.toml").read_text(encoding="utf-8")
        assert OTHER_PAPERS[language.value] not in text


@pytest.mark.parametrize("language", Language)
def test_an_open_question_is_asked_in_words_with_the_figure_that_is_assumed(language: Language) -> None:
    story = words(language).story
    assert question_texts(questioned(), story) == (
        f"{story.word(PackQuestion.OUTLET_STRENGTH_ASSUMED)} (1946 N)",
        story.word(PackQuestion.VAPOUR_REMOVAL_TO_ASK),
    )


def test_the_sheet_holds_the_questions_and_says_that_the_outlet_is_assumed() -> None:
    text = pack_text(questioned())
    assert "Open questions, to be settled before fitting (2): Strength of the dispenser outlet assumed" in text
    assert "Ask the air agency before the work" in text
    assert "Outlet bears a pull of" in text
    assert "assumed" in text.partition("Outlet bears a pull of")[2][:30]


@pytest.mark.parametrize("plan", [factory.conflicting_plan(), factory.refused_plan()])
def test_a_position_without_a_set_says_why_and_what_would_help(plan: PositionPlan) -> None:
    reasons = tuple(no_set_reasons(plan, words().story))
    assert reasons
    text = pack_text(plan)
    assert all(reason in text for reason in reasons)
    assert text.count("..") == 0


def test_good_practice_that_is_not_met_is_named() -> None:
    broken = replace(asked("def_freezes"), severity=Severity.SHOULD, verdict=Verdict.BROKEN)
    plan = factory.fitting_plan()
    assert plan.chosen is not None
    lacking = replace(plan, chosen=replace(plan.chosen, findings=(broken,)))
    assert "Good practice not met or not shown: temperature range." in pack_text(lacking)


def test_weights_add_up_by_part_and_by_box() -> None:
    plan = factory.fitting_plan()
    assert plan.chosen is not None
    hoses = sum(link.part.mass_kg for link in plan.chosen.hanging_set.links if link.part.hose is not None)
    assert f"Box 1: hoses ({words().story.display.reading(hoses, Dimension.MASS)})" in pack_text(plan)


def test_the_order_of_make_up_names_each_joint_once_the_bench_first() -> None:
    # common practice, no source: what hangs below the curb hose is made up on the bench
    plan = factory.fitting_plan()
    assert plan.chosen is not None
    text = make_up_text(plan, plan.chosen, words().story)
    # outlet A whip B breakaway C curb hose D swivel E nozzle
    assert text.startswith("Make up on the bench: E, D; then at the dispenser, from the outlet down: A, B, C.")


def test_a_torque_that_a_maker_states_stands_as_a_figure_by_the_number_of_the_part() -> None:
    plan = factory.fitting_plan()
    assert plan.chosen is not None
    set_ = plan.chosen.hanging_set
    assert all(link.part.tightening_torque_n_m is None for link in set_.links)
    assert make_up_text(plan, plan.chosen, words().story).endswith("Torque: the makers' instructions.")
    links = tuple(
        replace(link, part=replace(link.part, tightening_torque_n_m=54.0)) if at == 1 else link
        for at, link in enumerate(set_.links)
    )
    stated = replace(plan.chosen, hanging_set=replace(set_, links=links))
    assert "Torque that makers state: (2) 54 N·m; else" in make_up_text(plan, stated, words().story)
    # 1 lbf·ft is 1.3558 N·m (NIST SP 811, appendix B.8)
    assert "(2) 39.8 lbf·ft; else" in make_up_text(plan, stated, words(system=UnitSystem.US).story)


def test_the_clamp_of_a_retractor_has_its_place() -> None:
    plan = factory.fitting_plan(factory.retractor_position())
    clamp = replace(plan.accessories[0], part=replace(plan.accessories[0].part, kind=factory.PartKind.HOSE_CLAMP))
    plan = replace(plan, accessories=(clamp,))
    assert plan.chosen is not None
    text = make_up_text(plan, plan.chosen, words().story)
    hose = next(link.part for link in plan.chosen.hanging_set.links if link.slot.value == "curb_hose")
    at = hose.length_m * plan.position.retractor.clamp_fraction
    assert f"{words().story.display.reading(at, Dimension.LENGTH)} from the upper end of the curb hose" in text


def test_a_new_seal_is_brought_for_each_joint_that_needs_one() -> None:
    plan = factory.fitting_plan()
    assert plan.chosen is not None
    assert spare_seals((plan,)) == ()  # taper threads take sealant: ASME B1.20.1 clause 3.1
    joints = tuple(replace(joint, seal=Seal.O_RING) for joint in plan.chosen.joints)
    sealed = replace(plan, chosen=replace(plan.chosen, joints=joints))
    assert sum(one.count for one in spare_seals((sealed, sealed))) == 2 * len(joints)
    assert "O-ring" in pack_text(sealed).partition("Tools and protection")[2]


@pytest.mark.parametrize("language", Language)
def test_the_caution_sheet_ends_with_lines_to_sign(language: Language) -> None:
    pdf = caution_pdf(factory.site_plan(), words(language))
    assert words(language).story.word(PackWord.UNDERSTOOD) in text_of(pdf)


def test_def_and_waste_have_cautions_of_their_own() -> None:
    fluid = factory.position(liquid=SurveyLiquid(family=LiquidFamily.DEF, blend_percent=0))
    of_def = text_of(caution_pdf(factory.site_plan(factory.fitting_plan(fluid)), words()))
    of_fuel = text_of(caution_pdf(factory.site_plan(), words()))
    assert "relieve the pressure into a clean plastic container" in of_def
    assert "Wear gloves and eye protection" in of_def
    assert "hazardous waste" in of_fuel
    assert "hazardous waste" not in of_def


def test_no_sentence_ends_twice() -> None:
    text = pack_text(factory.fitting_plan(factory.vapour_removed_position()), questioned())
    assert ".." not in text
