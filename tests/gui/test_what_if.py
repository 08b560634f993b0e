"""What if, in the window: looked at off the window's thread, accepted as one change, left without any."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from paper_text import text_of
from spoutline.explain.phrases.what_if_words import WhatIfWord
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.what_if import WhatIfDialog
from spoutline.gui.edits.question import Step
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.what_if import WhatIfEffect, WhatIfQuestion


@pytest.fixture
def dialog(qtbot: QtBot, workplace: Workplace) -> WhatIfDialog:
    """Return the dialog as the window opens it, without the loop that waits for its end."""
    shown: list[WhatIfDialog] = []

    def keep(dialog: WhatIfDialog) -> int:
        shown.append(dialog)
        return 0

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(WhatIfDialog, "exec", keep)
        patch.setattr(WhatIfDialog, "deleteLater", lambda _: None)
        workplace.what_if.ask()
    qtbot.addWidget(shown[0])
    shown[0].show()
    return shown[0]


def choose(dialog: WhatIfDialog, question: WhatIfQuestion, text: str) -> None:
    dialog.answer.question_box.setCurrentIndex(dialog.answer.question_box.findData(question))
    dialog.answer.write(text)


def answered(qtbot: QtBot, dialog: WhatIfDialog) -> None:
    qtbot.waitUntil(lambda: dialog.found is not None, timeout=60_000)


def test_what_is_accepted_is_one_change_that_can_be_undone(qtbot: QtBot, workplace: Workplace) -> None:
    session = workplace.session
    before, steps = session.survey, session.undo_stack.count()

    def accept() -> None:
        dialog = workplace.what_if.dialog
        assert dialog is not None
        choose(dialog, WhatIfQuestion.BLEND, "E85")
        answered(qtbot, dialog)
        assert session.survey is before
        assert dialog.found is not None
        assert [one.label for one in dialog.found.positions] == ["A1"]
        QTest.mouseClick(dialog.accept_button, Qt.MouseButton.LeftButton)

    workplace.show_step(Step.SET)
    QTimer.singleShot(0, accept)
    QTest.mouseClick(workplace.set_page.outcome.what_if_button, Qt.MouseButton.LeftButton)
    assert [one.liquid.blend_percent for one in session.survey.positions] == [
        85,
        before.positions[1].liquid.blend_percent,
    ]
    assert session.undo_stack.count() == steps + 1
    session.undo_stack.undo()
    assert session.survey == before


def test_closing_leaves_the_survey_and_the_undo_list_untouched(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    session = workplace.session
    before, steps = session.survey, session.undo_stack.count()

    def leave() -> None:
        dialog = workplace.what_if.dialog
        assert dialog is not None
        choose(dialog, WhatIfQuestion.DUTY, "truck")
        answered(qtbot, dialog)
        QTest.keyClick(dialog, Qt.Key.Key_Escape)

    QTimer.singleShot(0, leave)
    window.actions_by_id[ActionId.WHAT_IF].trigger()
    assert session.survey is before
    assert session.undo_stack.count() == steps


def test_the_tree_tells_sets_parts_and_checks_and_the_sums_are_those_of_the_plans(
    qtbot: QtBot, workplace: Workplace, dialog: WhatIfDialog
) -> None:
    choose(dialog, WhatIfQuestion.BLEND, "E85")
    answered(qtbot, dialog)
    found, story = dialog.found, workplace.context.story
    assert found is not None
    plan = workplace.plans.plan("A1")
    assert plan is not None
    assert plan.chosen is not None
    price = story.money(plan.chosen.hanging_set.price_minor, found.currency)
    assert price in dialog.sums_label.text()
    head = dialog.model.node_at(dialog.model.index(0, 0))
    assert head is not None
    assert head.cells[:2] == ("A1", price)
    numbers = [child.cells[1] for child in head.children if len(child.cells) == 4 and child.cells[1]]
    assert numbers == list(plan.chosen.hanging_set.numbers)
    assert story.word(WhatIfEffect.MUST_CHANGE) in head.cells[3].lower()
    assert dialog.tree.isExpanded(dialog.model.index(0, 0))
    assert any(child.children for child in head.children), "checks that differ stand below"


def test_another_question_offers_its_own_answers_and_rules_are_for_the_whole_station(
    qtbot: QtBot, dialog: WhatIfDialog
) -> None:
    answer = dialog.answer
    answer.scope_box.setCurrentIndex(1)
    assert answer.labels == ("A1",)
    choose(dialog, WhatIfQuestion.JURISDICTION, "europe")
    assert not answer.scope_box.isEnabled()
    assert answer.labels == ()
    answered(qtbot, dialog)
    assert dialog.found is not None
    assert [one.label for one in dialog.found.positions] == ["A1", "A2"]
    answer.question_box.setCurrentIndex(answer.question_box.findData(WhatIfQuestion.CATALOGUE))
    assert dialog.found is None, "what was found for another question is no answer to this one"
    assert not dialog.accept_button.isEnabled()
    assert answer.value_box.findData("Demonstration@1") >= 0


def test_a_text_that_is_no_answer_is_told_and_nothing_can_be_accepted(qtbot: QtBot, dialog: WhatIfDialog) -> None:
    edit = dialog.answer.value_box.lineEdit()
    assert edit is not None
    QTest.keyClicks(edit, "plenty")
    QTest.keyClick(edit, Qt.Key.Key_Return)
    assert "'plenty' is not usable" in dialog.fault_label.text()  # the text itself, with Return too
    assert "as fuel labels name it" in dialog.fault_label.text()
    assert not dialog.accept_button.isEnabled()
    edit.clear()
    QTest.keyClicks(edit, "e15")
    QTest.keyClick(edit, Qt.Key.Key_Return)
    answered(qtbot, dialog)
    assert dialog.isVisible(), "Return belongs to the field; it accepts nothing"
    assert dialog.fault_label.text() == ""


def test_a_blend_that_no_list_offers_is_answered_on_return(qtbot: QtBot, dialog: WhatIfDialog) -> None:
    edit, box = dialog.answer.value_box.lineEdit(), dialog.answer.value_box
    assert edit is not None
    before = box.count()
    QTest.keyClicks(edit, "e35")
    QTest.keyClick(edit, Qt.Key.Key_Return)
    answered(qtbot, dialog)
    assert dialog.fault_label.text() == ""
    assert dialog.answer.written == "e35"
    assert box.count() == before


def test_stopping_ends_the_work_and_shows_nothing(qtbot: QtBot, workplace: Workplace, dialog: WhatIfDialog) -> None:
    choose(dialog, WhatIfQuestion.BLEND, "E85")
    assert dialog.progress_row.stop_button.isVisible()
    QTest.mouseClick(dialog.progress_row.stop_button, Qt.MouseButton.LeftButton)
    qtbot.wait(50)
    assert dialog.found is None
    assert dialog.model.rowCount() == 0
    assert not dialog.accept_button.isEnabled()
    choose(dialog, WhatIfQuestion.BLEND, "E85")
    answered(qtbot, dialog)


def test_the_paper_is_written_where_a_person_says(
    qtbot: QtBot, dialog: WhatIfDialog, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    choose(dialog, WhatIfQuestion.BLEND, "E85")
    answered(qtbot, dialog)
    path = tmp_path / "what_if.pdf"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), "PDF (*.pdf)"))
    dialog.hands.save_button.click()
    qtbot.waitUntil(path.exists, timeout=60_000)
    assert "A1: parts must be changed" in " ".join(text_of(path.read_bytes()).split())
    qtbot.waitUntil(lambda: str(path) in dialog.notes_label.text(), timeout=10_000)


def test_several_answers_are_compared_side_by_side_and_none_of_them_is_accepted(
    qtbot: QtBot, workplace: Workplace, dialog: WhatIfDialog
) -> None:
    choose(dialog, WhatIfQuestion.BLEND, "E85")
    answered(qtbot, dialog)
    assert dialog.found is not None
    several = dialog.several
    dialog.tabs.setCurrentWidget(several)
    assert not dialog.accept_button.isEnabled(), "an answer out of view is not accepted"
    several.tick("E10", "E15", "E85")
    QTest.mouseClick(several.compare_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: several.found is not None, timeout=60_000)
    assert several.found is not None
    titles = [several.model.headerData(place, Qt.Orientation.Horizontal) for place in range(5)]
    assert titles[2:] == ["E10", "E15", "E85"]
    story = workplace.context.story
    price = several.model.node_at(several.model.index(0, 0))
    assert price is not None
    assert price.cells[1] == story.bare_money(several.found.today.price_minor, several.found.currency)
    assert price.cells[4] == story.bare_money(dialog.found.totals.after_minor, several.found.currency)
    dialog.tabs.setCurrentIndex(0)
    assert dialog.accept_button.isEnabled()


def test_a_blend_that_is_not_offered_can_be_added_and_one_that_is_none_is_told(
    qtbot: QtBot, dialog: WhatIfDialog
) -> None:
    several = dialog.several
    dialog.tabs.setCurrentWidget(several)
    for text, told in (("plenty", "as fuel labels name it"), ("e30", "")):
        several.add_edit.setText(text)
        QTest.keyClick(several.add_edit, Qt.Key.Key_Return)
        assert told in dialog.fault_label.text()
    assert [one.value.blend_percent for one in several.asked()] == [30]
    several.question_box.setCurrentIndex(several.question_box.findData(WhatIfQuestion.DUTY))
    assert not several.add_edit.isVisible()
    QTest.mouseClick(several.compare_button, Qt.MouseButton.LeftButton)
    assert "answers to one question" in dialog.fault_label.text() or several.progress_row.stop_button.isVisible()
    qtbot.waitUntil(lambda: "answers to one question" in dialog.fault_label.text(), timeout=20_000)


def test_the_page_of_several_answers_is_written(
    qtbot: QtBot, dialog: WhatIfDialog, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    several = dialog.several
    dialog.tabs.setCurrentWidget(several)
    several.tick("E15", "E85")
    several.compare()
    qtbot.waitUntil(lambda: several.found is not None, timeout=60_000)
    path = tmp_path / "side_by_side.pdf"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), "PDF (*.pdf)"))
    several.hands.save_button.click()
    qtbot.waitUntil(path.exists, timeout=60_000)
    assert "What must be changed when" in " ".join(text_of(path.read_bytes()).split())
    qtbot.waitUntil(lambda: str(path) in several.legend_label.text(), timeout=10_000)


def test_sets_that_last_are_shown_for_a_blend_and_accepting_asks_for_their_parts(
    qtbot: QtBot, workplace: Workplace, dialog: WhatIfDialog
) -> None:
    answer, story = dialog.answer, workplace.context.story
    answer.lasting_box.setChecked(True)
    choose(dialog, WhatIfQuestion.BLEND, "E85")
    answered(qtbot, dialog)
    found = dialog.found
    assert found is not None
    assert found.asked.lasting
    assert dialog.model.headerData(2, Qt.Orientation.Horizontal) == story.word(WhatIfWord.LASTING)
    assert story.word(WhatIfWord.PRICE_LASTING) in dialog.sums_label.text()
    dialog.accept()
    assert dialog.after is not None
    changed, before = dialog.after.positions[0], workplace.session.survey.positions[0]
    lasting = found.positions[0].after.chosen
    assert lasting is not None
    assert changed.liquid == before.liquid
    assert set(changed.decisions.pinned) == set(lasting.hanging_set.refs)


def test_no_other_question_asks_what_lasts(qtbot: QtBot, dialog: WhatIfDialog) -> None:
    dialog.answer.lasting_box.setChecked(True)
    choose(dialog, WhatIfQuestion.DUTY, "truck")
    assert not dialog.answer.lasting_box.isVisible()
    answered(qtbot, dialog)
    assert dialog.found is not None
    assert not dialog.found.asked.lasting


def test_an_answer_that_is_written_is_asked_once_whatever_was_asked_before(qtbot: QtBot, dialog: WhatIfDialog) -> None:
    answer, asked = dialog.answer, []
    for question in (WhatIfQuestion.OUTLET, WhatIfQuestion.DUTY, WhatIfQuestion.BLEND, WhatIfQuestion.OUTLET):
        answer.question_box.setCurrentIndex(answer.question_box.findData(question))
    edit = answer.value_box.lineEdit()
    assert edit is not None
    answer.chosen.connect(lambda: asked.append(answer.written))
    edit.setText("1 1/2 NPT male")
    edit.editingFinished.emit()
    assert asked == ["1 1/2 NPT male"]
