"""The size of the outlet in the window: read as meant, told at its field, refused with the sizes of its thread."""

from __future__ import annotations

import ast
from pathlib import Path

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QSpinBox
from pytestqt.qtbot import QtBot

from spoutline import gui
from spoutline.gui.edits.question import Step
from spoutline.gui.pages.survey.grid_page import GridPage
from spoutline.gui.pages.survey.question_form import QuestionForm
from spoutline.gui.session import Session
from spoutline.gui.widgets.answer_field import AnswerField, SuggestedField
from spoutline.gui.widgets.still_box import StillSpin
from spoutline.gui.window.workplace import Workplace
from spoutline.planning.survey_import.fields import FIELDS

GUI = Path(gui.__file__).parent
SIZE_COLUMN = [field.key for field in FIELDS].index("outlet.size")
THREAD_COLUMN = [field.key for field in FIELDS].index("outlet.thread")


def place_form(workplace: Workplace) -> QuestionForm:
    workplace.show_step(Step.PLACE)
    return next(form for form in workplace.findChildren(QuestionForm) if "outlet.size" in form.names)


def typed(qtbot: QtBot, field: AnswerField, text: str) -> None:
    assert isinstance(field, SuggestedField)
    box: QComboBox = field.editor
    line = box.lineEdit()
    assert line is not None
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def test_a_size_is_read_as_meant_and_told_at_its_field(qtbot: QtBot, workplace: Workplace, session: Session) -> None:
    field = place_form(workplace).field("outlet.size")
    typed(qtbot, field, "25 mm")
    assert session.position.outlet.size == "1"
    assert field.editor.currentText() == "1"
    assert field.note == "Read as 1 NPT, nominal (DN 25)."
    typed(qtbot, field, "7/8")
    assert session.position.outlet.size == "1"
    assert "the sizes of NPT threads" in field.fault
    assert field.note == ""
    typed(qtbot, field, "3/4")
    assert (session.position.outlet.size, field.fault, field.note) == ("3/4", "", "")


def test_another_thread_brings_its_own_size_and_says_so(qtbot: QtBot, workplace: Workplace, session: Session) -> None:
    form = place_form(workplace)
    form.field("outlet.thread").given.emit("M")
    assert (session.position.outlet.thread, session.position.outlet.size) == ("M", "34x1.5")
    assert "34x1.5 M" in form.field("outlet.size").note
    form.field("outlet.thread").given.emit("G")
    assert (session.position.outlet.thread, session.position.outlet.size) == ("G", "3/4")


def test_the_table_of_all_positions_reads_sizes_alike(qtbot: QtBot, workplace: Workplace, session: Session) -> None:
    workplace.show_grid()
    page: GridPage = workplace.grid_page
    page.proxy.setData(page.proxy.index(0, SIZE_COLUMN), "DN 25")
    assert session.survey.positions[0].outlet.size == "1"
    assert "'DN 25' was read as 1 NPT, nominal (DN 25)" in page.note_label.text()
    page.proxy.setData(page.proxy.index(0, SIZE_COLUMN), "7/8")
    assert session.survey.positions[0].outlet.size == "1"
    assert "the sizes of NPT threads" in page.fault_label.text()
    page.proxy.setData(page.proxy.index(0, THREAD_COLUMN), "UN")
    assert session.survey.positions[0].outlet.size == "1-7/8-12"
    assert "thread and path contradict each other" in page.note_label.text()


def turned_over(box: QComboBox | QSpinBox) -> bool:
    """Turn the mouse wheel towards the person over the middle of a list or number; say whether it takes it."""
    turn = QWheelEvent(
        QPointF(box.rect().center()),
        QPointF(box.mapToGlobal(box.rect().center())),
        QPoint(),
        QPoint(0, -120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    box.wheelEvent(turn)
    return turn.isAccepted()


def test_the_wheel_is_left_to_the_page_and_changes_no_answer(
    qtbot: QtBot, workplace: Workplace, session: Session
) -> None:
    """Seen as a person scrolled: the size below the mouse became another, and the position had no set any more."""
    form, before = place_form(workplace), session.survey
    boxes = [box for field in form.names for box in form.field(field).findChildren(QComboBox)]
    assert boxes
    for box in boxes:
        for with_keyboard in (False, True):
            if with_keyboard:
                box.setFocus()
            shown = box.currentText()
            assert not turned_over(box)
            assert box.currentText() == shown
            assert not box.focusPolicy() & Qt.FocusPolicy.WheelFocus & ~Qt.FocusPolicy.StrongFocus
    assert session.survey == before


def test_no_list_or_number_of_the_window_is_changed_by_the_wheel() -> None:
    """Not in a dialog either, and not the one that says which sets are shown on every page and paper."""
    made = [
        f"{path.relative_to(GUI)}:{call.lineno}"
        for path in sorted(GUI.rglob("*.py"))
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(call, ast.Call) and isinstance(call.func, ast.Name) and call.func.id in ("QComboBox", "QSpinBox")
    ]
    assert made == []


def test_the_wheel_turns_no_number(qtbot: QtBot) -> None:
    number = StillSpin()
    qtbot.addWidget(number)
    number.setValue(7)
    assert not turned_over(number)
    assert number.value() == 7
