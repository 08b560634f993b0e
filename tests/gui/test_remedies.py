"""What would help, as an edit: a wish can be given up with a button, a fact or a rule cannot."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from planning.surveys import survey_of
from spoutline.bootstrap import Workbench
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.decisions import keep_part
from spoutline.gui.edits.question import Step
from spoutline.gui.edits.remedies import after_relaxation
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PlanStatus, Relaxation, Succession
from spoutline.model.requirement import RequirementId
from spoutline.model.survey import Survey

E10 = {"family": "gasoline", "blend_percent": 10}
# 14 kPa at the outlet do not open the check of a no-pressure device (common practice: some 20 to 35 kPa, no source)
LATCH_AT_LOW_PRESSURE = survey_of(liquid=E10, supply={"pressure_kpa": 14}, hold_open_wanted=True)
# what a person measures, what is sold, what a rule asks: nothing that a button may change
FACTS_AND_RULES = (
    RequirementId.REACH,
    RequirementId.DRIVE_OFF,
    RequirementId.SERVICE_LOAD,
    RequirementId.RESISTANCE,
    RequirementId.NOZZLE_FLOW,
    RequirementId.HOSE_LENGTH,
    RequirementId.WHIP_LENGTH,
    RequirementId.LISTING_CLASS,
    RequirementId.LOW_PERMEATION,
    RequirementId.ENHANCED_CONVENTIONAL,
    RequirementId.TEMPERATURE,
    RequirementId.PATH,
    RequirementId.STATUS,
    RequirementId.PRICE,
)


def relaxation(line: RequirementId, *also: RequirementId) -> Relaxation:
    return Relaxation(
        requirement=line, from_value=None, to_value=None, dimension=None, price_minor=None, parts=(), also=also
    )


def test_giving_up_the_latch_gives_up_the_device_that_it_asks_for_and_frees_a_set(bench: Workbench) -> None:
    plan = bench.plan_position(LATCH_AT_LOW_PRESSURE, "1A")
    assert plan.status is PlanStatus.DOES_NOT_FIT
    assert plan.conflict is not None
    device = next(
        one for one in plan.conflict.relaxations if one.requirement is RequirementId.NO_PRESSURE_DEVICE and not one.also
    )
    after = after_relaxation(LATCH_AT_LOW_PRESSURE, "1A", device)
    assert after is not None
    assert not after.positions[0].hold_open_wanted
    assert bench.plan_position(after, "1A").status is PlanStatus.FITS


def test_a_device_that_prepay_or_an_unattended_site_asks_for_is_no_wish() -> None:
    device = relaxation(RequirementId.NO_PRESSURE_DEVICE)
    assert after_relaxation(survey_of(liquid=E10, hold_open_wanted=True, prepay=True), "1A", device) is None
    unattended = survey_of(site={"service": "unattended"}, liquid=E10, hold_open_wanted=True)
    assert after_relaxation(unattended, "1A", device) is None


def test_latch_and_device_given_up_together_are_one_edit() -> None:
    both = relaxation(RequirementId.HOLD_OPEN, RequirementId.NO_PRESSURE_DEVICE)
    after = after_relaxation(LATCH_AT_LOW_PRESSURE, "1A", both)
    assert after is not None
    assert not after.positions[0].hold_open_wanted


@pytest.mark.parametrize("line", FACTS_AND_RULES)
def test_no_button_changes_a_fact_or_a_rule(line: RequirementId) -> None:
    survey: Survey = LATCH_AT_LOW_PRESSURE
    assert after_relaxation(survey, "1A", relaxation(line)) is None


def test_the_successor_takes_the_place_and_other_kept_parts_stay() -> None:
    survey = survey_of(liquid=E10, decisions={"pinned": ("QW-N101", "LS-S113")})
    succession = Succession(before=PartRef("LS-S113"), now=PartRef("LS-S101"))
    change = replace(relaxation(RequirementId.DECISION), successions=(succession,))
    after = after_relaxation(survey, "1A", change)
    assert after is not None
    assert set(after.positions[0].decisions.pinned) == {PartRef("QW-N101"), PartRef("LS-S101")}


def test_one_click_takes_the_successor_of_a_part_that_its_maker_replaced(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    """The catalogue's file of swivels says that LS-S101 took the place of LS-S113."""
    session = workplace.session
    make_edit(session, keep_part(session.survey, "A1", PartRef("LS-S113")), "Keep LS-S113", "A1")
    workplace.show_step(Step.SET)
    card = workplace.set_page.outcome
    qtbot.waitUntil(lambda: bool(card.remedy_buttons), timeout=20_000)
    (button,) = (one for one in card.remedy_buttons if "LS-S101" in one.text())
    assert button.text() == "Take its successor LS-S101"
    button.click()
    assert session.position.decisions.pinned == (PartRef("LS-S101", "Larkspindle Couplings"),)
    qtbot.waitUntil(lambda: workplace.plans.plan("A1") is not None, timeout=20_000)
    plan = workplace.plans.plan("A1")
    assert plan is not None
    assert plan.status is PlanStatus.FITS


def test_nothing_of_a_refusal_is_cut_off(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    session = workplace.session
    make_edit(session, keep_part(session.survey, "A1", PartRef("LS-S113")), "Keep LS-S113", "A1")
    workplace.show_step(Step.SET)
    card = workplace.set_page.outcome
    qtbot.waitUntil(lambda: bool(card.remedy_buttons), timeout=20_000)
    for height in (900, 720):
        window.resize(1280, height)
        qtbot.wait(50)
        labels = [label for label in card.findChildren(QLabel) if label.isVisible() and label.wordWrap()]
        assert any("LS-S113" in label.text() for label in labels)
        for label in labels:
            assert label.height() >= label.heightForWidth(label.width()), label.text()
        for button in card.remedy_buttons:
            assert button.height() >= button.minimumSizeHint().height()
