"""What hangs today, on screen: shown as recorded, looked up while typed, never replaced unasked, carried over."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMessageBox
from pytestqt.qtbot import QtBot

from spoutline.gui.dialogs.surveys import new_survey
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.installed_parts import with_age, with_condition, with_described_part, with_installed_part
from spoutline.gui.jobs import Jobs
from spoutline.gui.models.plans import Plans
from spoutline.gui.models.shown_sets import ShownSets
from spoutline.gui.pages.context import Context, StoryInUse
from spoutline.gui.pages.survey.installed_panel import InstalledPanel
from spoutline.gui.session import Session
from spoutline.gui.window.workplace import Workplace
from spoutline.model.installed import InstalledCondition
from spoutline.model.part import PartKind
from spoutline.planning.refit.dispensers import with_copies, with_other_side


@pytest.fixture
def panel(qtbot: QtBot, session: Session) -> InstalledPanel:
    jobs = Jobs()
    plans = Plans(session, jobs)
    made = InstalledPanel(Context(session, plans, jobs, StoryInUse(session), ShownSets(session, plans, jobs)))
    qtbot.addWidget(made)
    return made


def record(session: Session, *conditions: InstalledCondition) -> None:
    survey = session.survey.model_copy(
        update={"positions": tuple(one.model_copy(update={"installed": ()}) for one in session.survey.positions)}
    )
    for place, condition in enumerate(conditions):
        survey = with_described_part(survey, session.label, PartKind.SWIVEL, f"swivel {place}")
        survey = with_condition(survey, session.label, place, condition)
        survey = with_age(survey, session.label, place, str(place + 2))
    make_edit(session, survey, "record")


def test_condition_and_age_shown_are_those_recorded_of_the_chosen_part(panel: InstalledPanel, session: Session) -> None:
    record(session, InstalledCondition.WORN, InstalledCondition.DAMAGED, InstalledCondition.UNKNOWN)
    panel.refresh()
    for row in (1, 0, 2):
        panel.tree.setCurrentIndex(panel.model.index(row, 0))
        assert panel.condition_box.currentData() == session.position.installed[row].condition
        assert panel.age_edit.text() == str(row + 2)


@pytest.mark.qt_log_ignore("This plugin does not support")  # of popups, where there is no screen
def test_numbers_are_looked_up_while_they_are_typed_and_the_maker_is_shown(
    panel: InstalledPanel, session: Session, qtbot: QtBot
) -> None:
    record(session)
    panel.show()
    qtbot.keyClicks(panel.number_edit, "th-w1")
    offers = panel.number_edit.offers()
    assert offers
    assert all(text.startswith("TH-W1") and "Thistledown Hosewrights" in text for text in offers)
    panel.number_edit.clear()
    qtbot.keyClicks(panel.number_edit, "no such number")
    assert panel.number_edit.offers() == ()
    panel.number_edit.setText("Thistledown Hosewrights TH-W101")  # what choosing an offer enters
    qtbot.keyClick(panel.number_edit, Qt.Key.Key_Return)
    (item,) = session.position.installed
    assert (item.number, item.maker) == ("TH-W101", "Thistledown Hosewrights")


def test_recorded_parts_are_replaced_by_planned_ones_only_when_a_person_says_so(
    workplace: Workplace, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    session = workplace.session
    qtbot.waitUntil(lambda: workplace.context.plan_to_show is not None, timeout=20_000)
    panel = InstalledPanel(workplace.context)
    qtbot.addWidget(panel)
    after = with_described_part(session.survey, session.label, PartKind.NOZZLE, "balance nozzle, bellows")
    make_edit(session, after, "record")
    qtbot.waitUntil(lambda: workplace.context.plan_to_show is not None, timeout=20_000)
    before, asked = session.position.installed, []

    def answer(*arguments: object) -> QMessageBox.StandardButton:
        asked.append(str(arguments[2]))
        return said

    monkeypatch.setattr(QMessageBox, "question", answer)
    said = QMessageBox.StandardButton.No
    panel.planned_button.click()
    assert session.position.installed == before
    assert "balance nozzle, bellows" in asked[0]
    said = QMessageBox.StandardButton.Yes
    panel.planned_button.click()
    assert session.position.installed != before


def test_the_first_position_of_a_new_survey_has_another_side() -> None:
    survey = new_survey("Heron Ford Fuels")
    mirrored = with_other_side(survey, survey.positions[0].dispenser, "A", "B")
    assert [one.label for one in mirrored.positions] == ["1A", "1B"]


def test_installed_parts_come_along_to_the_other_side_and_to_a_repeated_dispenser(session: Session) -> None:
    survey = new_survey("Heron Ford Fuels")
    survey = with_installed_part(survey, "1A", session.workbench.parts().part("TH-W101"))
    survey = with_condition(survey, "1A", 0, InstalledCondition.DAMAGED)
    for copied in (with_other_side(survey, "1", "A", "B"), with_copies(survey, "1", ["2"])):
        (part,) = copied.positions[-1].installed
        assert part.number == "TH-W101"
        assert part.condition is InstalledCondition.UNKNOWN  # nobody has looked at this one
