"""Why no set fits, in the window: obstacles and ways out as they are found, one accepted as a change to be undone."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QModelIndex, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QPushButton
from pytestqt.qtbot import QtBot

from gui.page_rooms import laid_over
from paper_text import text_of
from spoutline.gui.dialogs.no_set import NoSetDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.question import Step
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PlanStatus
from spoutline.model.survey import Decisions

DIESEL_NOZZLE = PartRef("QW-N131", "Quillmere Forgeworks")  # the catalogue's table of nozzles lists it for B20 alone
LATE = Decisions(longest_lead_time_days=0)


def without_set(qtbot: QtBot, workplace: Workplace, **fields: object) -> None:
    """Let the position in focus ask for more than there is, and wait for the plan that says so."""
    session = workplace.session
    position = session.position.model_copy(update=fields)
    positions = tuple(position if one.label == position.label else one for one in session.survey.positions)
    workplace.show_step(Step.SET)
    make_edit(session, session.survey.model_copy(update={"positions": positions}), "ask for more", position.label)
    qtbot.waitUntil(lambda: workplace.set_page.outcome.reasons_button is not None, timeout=30_000)


def reasons_button(workplace: Workplace) -> QPushButton:
    button = workplace.set_page.outcome.reasons_button
    assert button is not None
    return button


def opened(qtbot: QtBot, workplace: Workplace) -> NoSetDialog:
    """Return the dialog as its button opens it, without the loop that waits for its end."""
    shown: list[NoSetDialog] = []

    def keep(dialog: NoSetDialog) -> int:
        shown.append(dialog)
        return QDialog.DialogCode.Rejected

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(NoSetDialog, "exec", keep)
        patch.setattr(NoSetDialog, "deleteLater", lambda _: None)
        reasons_button(workplace).click()
    qtbot.addWidget(shown[0])
    shown[0].show()
    qtbot.waitUntil(is_done(shown[0]), timeout=60_000)
    return shown[0]


def is_done(dialog: NoSetDialog) -> Callable[[], bool]:
    return lambda: bool(dialog.closing_label.text()) and not dialog.progress_row.bar.isVisible()


def rows(model: NodeTree, above: QModelIndex | None = None) -> list[QModelIndex]:
    parent = above or QModelIndex()
    return [model.index(row, 0, parent) for row in range(model.rowCount(parent))]


def test_a_way_out_is_accepted_as_one_change_that_can_be_undone(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    session = workplace.session
    without_set(qtbot, workplace, decisions=Decisions(pinned=(DIESEL_NOZZLE,)))
    before, steps = session.survey, session.undo_stack.count()
    freed = []

    def accept() -> None:
        dialog = workplace.no_set.dialog
        assert dialog is not None
        qtbot.waitUntil(is_done(dialog), timeout=60_000)
        obstacles, ways = rows(dialog.model)
        told = [str(dialog.model.data(one)) for one in rows(dialog.model, obstacles)]
        assert len(told) == len(dialog.conflicts) >= 2
        assert all("QW-N131" in text for text in told)  # the one part asked for is in every obstacle
        assert len(rows(dialog.model, ways)) == len(dialog.trials) == 1
        assert not dialog.accept_button.isEnabled()
        dialog.tree.pick(rows(dialog.model, ways)[0])
        assert session.survey == before  # looking changes nothing
        freed.append(dialog.trials[0].freed)
        QTest.mouseClick(dialog.accept_button, Qt.MouseButton.LeftButton)

    QTimer.singleShot(0, accept)
    QTest.mouseClick(reasons_button(workplace), Qt.MouseButton.LeftButton)
    assert session.position.decisions.pinned == ()
    assert session.undo_stack.count() == steps + 1
    qtbot.waitUntil(lambda: workplace.plans.plan("A1") is not None, timeout=30_000)
    plan = workplace.plans.plan("A1")
    assert plan is not None
    assert plan.status is PlanStatus.FITS
    assert plan.chosen is not None
    assert [plan.chosen.hanging_set] == freed
    qtbot.waitUntil(lambda: workplace.set_page.outcome.reasons_button is None, timeout=30_000)
    session.undo_stack.undo()
    assert session.survey == before


def test_a_way_out_that_no_answer_makes_cannot_be_accepted(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    filler = workplace.session.position.filler.model_copy(update={"distance_m": 8.0})
    without_set(qtbot, workplace, filler=filler)
    dialog = opened(qtbot, workplace)
    (trial,) = dialog.trials
    assert trial.after is None
    dialog.tree.pick(dialog.model.index_of(trial))
    assert not dialog.accept_button.isEnabled()
    dialog.accept()
    assert dialog.after is None
    assert dialog.isVisible()


def test_a_search_that_is_stopped_says_so_and_keeps_what_it_found(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    without_set(qtbot, workplace, decisions=LATE)
    dialog = opened(qtbot, workplace)
    dialog.ask()
    dialog.progress_row.stop_button.click()
    assert dialog.closing_label.text() == "Stopped; there may be more."
    assert not dialog.progress_row.bar.isVisible()
    qtbot.wait(50)
    assert dialog.closing_label.text() == "Stopped; there may be more."


def test_return_and_the_arrow_keys_take_a_way_out(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    without_set(qtbot, workplace, decisions=LATE)
    dialog = opened(qtbot, workplace)
    dialog.tree.setFocus()
    dialog.tree.pick(rows(dialog.model)[-1])
    QTest.keyClick(dialog.tree, Qt.Key.Key_Down)
    assert dialog.accept_button.isEnabled()
    QTest.keyClick(dialog.accept_button, Qt.Key.Key_Space)
    assert dialog.after is not None
    assert dialog.after.positions[0].decisions.longest_lead_time_days != 0


@pytest.mark.parametrize("language", list(Language))
def test_the_dialog_fits_a_small_screen_in_every_language(
    language: Language, qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    without_set(qtbot, workplace, decisions=Decisions(longest_lead_time_days=0, pinned=(DIESEL_NOZZLE,)))
    story = workplace.session.workbench.story(workplace.session.display, language)
    dialog = opened(qtbot, workplace)
    dialog._tools = replace(dialog._tools, story=story)
    dialog._show_found()
    dialog.resize(980, 640)
    qtbot.wait(20)
    assert laid_over(dialog) == []
    assert dialog.tree.viewport().height() > 150
    for one in (dialog.tree, dialog.progress_row.bar):
        assert one.accessibleName()


def test_the_dialog_makes_the_paper_of_all_reasons_once_they_are_known(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path
) -> None:
    without_set(qtbot, workplace, decisions=LATE)
    dialog = opened(qtbot, workplace)
    assert all(one.isEnabled() for one in dialog.hands.buttons)
    mail, opened_mails = tmp_path / "why.eml", []
    dialog.hands.open_file = lambda path: bool(opened_mails.append(path)) or True  # type: ignore[func-returns-value]
    paper = tmp_path / "why.pdf"
    dialog.hands.save_to(paper)
    qtbot.waitUntil(paper.exists, timeout=60_000)
    told = " ".join(text_of(paper).split())
    assert "Why no set fits" in told
    assert "What would free a set" in told
    for row in rows(dialog.model):
        for one in rows(dialog.model, row):
            assert " ".join(str(one.data()).split()) in told
    dialog.hands.mail_to(mail)
    qtbot.waitUntil(lambda: opened_mails == [mail], timeout=60_000)
    dialog.ask()
    assert not any(one.isEnabled() for one in dialog.hands.buttons)  # no paper of half the reasons
