"""Rows of the table of all positions: taken away and copied, each time as one edit."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.pages.survey.grid_page import GridPage
from spoutline.gui.session import Session
from spoutline.gui.window.workplace import Workplace
from spoutline.model.survey import Survey

CONTROL, NONE = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.NoModifier


@pytest.fixture
def survey() -> Survey:
    """Return a station of four gasoline positions, all alike."""
    first = demo_survey("small_town").positions[0]
    positions = tuple(first.model_copy(update={"label": label}) for label in ("A1", "A2", "A3", "A4"))
    return demo_survey("small_town").model_copy(update={"positions": positions})


@pytest.fixture
def page(workplace: Workplace) -> GridPage:
    workplace.show_grid()
    workplace.grid_page.table.setFocus()
    return workplace.grid_page


def labels(session: Session) -> list[str]:
    return [position.label for position in session.survey.positions]


def choose_rows(page: GridPage, *rows: int) -> None:
    wide = page.proxy.columnCount()
    page.table.choose([(row, column) for row in rows for column in range(wide)])


def test_delete_on_whole_rows_takes_them_away_as_one_edit(qtbot: QtBot, page: GridPage, session: Session) -> None:
    choose_rows(page, 1, 2)
    qtbot.keyClick(page.table, Qt.Key.Key_Delete)
    assert labels(session) == ["A1", "A4"]
    assert session.undo_stack.undoText() == "Remove 2 positions"
    session.undo_stack.undo()
    assert labels(session) == ["A1", "A2", "A3", "A4"]


def test_delete_on_some_cells_of_rows_takes_no_row_away(qtbot: QtBot, page: GridPage, session: Session) -> None:
    column = next(at for at in range(page.proxy.columnCount()) if page.model.fields[at].key == "notes")
    page.table.choose([(0, column), (1, column)])
    page.table.write_all("worn")
    qtbot.keyClick(page.table, Qt.Key.Key_Delete)
    assert [position.notes for position in session.survey.positions] == ["", "", "", ""]
    assert len(labels(session)) == 4


def test_the_button_takes_away_every_row_with_a_chosen_cell(page: GridPage, session: Session) -> None:
    page.table.choose([(3, 2), (0, 0)])
    page.remove_button.click()
    assert labels(session) == ["A2", "A3"]
    assert session.label in labels(session)
    assert page.table.currentIndex().isValid()


def test_one_position_stays(page: GridPage, session: Session) -> None:
    choose_rows(page, 0, 1, 2, 3)
    page.remove_button.click()
    assert labels(session) == ["A1", "A2", "A3", "A4"]
    assert "at least one position" in page.fault_label.text()
    choose_rows(page, 0, 1, 2)
    page.remove_button.click()
    assert labels(session) == ["A4"]
    assert page.fault_label.isHidden()


def test_rows_that_are_filtered_away_stay(qtbot: QtBot, page: GridPage, session: Session) -> None:
    page.filter_edit.setText("A3")
    choose_rows(page, 0)
    qtbot.keyClick(page.table, Qt.Key.Key_Delete, CONTROL)
    assert labels(session) == ["A1", "A2", "A4"]


def test_chosen_rows_are_copied_together_and_stood_on(page: GridPage, session: Session) -> None:
    page.table.choose([(0, 3), (1, 3)])
    page.duplicate_button.click()
    assert labels(session) == ["A1", "A2", "A5", "A6", "A3", "A4"]
    assert session.survey.positions[2].outlet == session.survey.positions[0].outlet
    assert page.table.chosen_cells() == [(2, 0), (3, 0)]
    assert session.label == "A5"
    session.undo_stack.undo()
    assert labels(session) == ["A1", "A2", "A3", "A4"]
    page.table.choose([(3, 0)])
    page.duplicate_button.click()
    assert labels(session) == ["A1", "A2", "A3", "A4", "A5"]
    assert session.undo_stack.undoText() == "Duplicate A4"


def head_click(qtbot: QtBot, page: GridPage, column: int, modifier: Qt.KeyboardModifier = NONE) -> None:
    head = page.table.head
    at = QPoint(head.sectionViewportPosition(column) + 20, head.height() // 2)
    qtbot.mouseClick(head.viewport(), Qt.MouseButton.LeftButton, modifier, at)


def columns_chosen(page: GridPage) -> set[int]:
    rows: dict[int, set[int]] = {}
    for row, column in page.table.chosen_cells():
        rows.setdefault(column, set()).add(row)
    assert all(found == set(range(page.proxy.rowCount())) for found in rows.values())
    return set(rows)


def test_a_click_on_a_head_chooses_the_column_and_keeps_the_position(
    qtbot: QtBot, page: GridPage, session: Session
) -> None:
    page.table.choose([(2, 1)])
    assert session.label == "A3"
    head_click(qtbot, page, 3)
    assert columns_chosen(page) == {3}
    assert session.label == "A3"
    assert page.table.currentIndex().row() == 2
    head_click(qtbot, page, 1, CONTROL)
    assert columns_chosen(page) == {1, 3}
    assert labels(session) == ["A1", "A2", "A3", "A4"]  # nothing was sorted


def test_what_is_written_goes_into_the_column_that_was_chosen_by_its_head(
    qtbot: QtBot, page: GridPage, session: Session
) -> None:
    column = next(at for at in range(page.proxy.columnCount()) if page.model.fields[at].key == "dispenser")
    head_click(qtbot, page, column)
    page.table.write_all("7")
    assert {position.dispenser for position in session.survey.positions} == {"7"}


def test_ctrl_space_chooses_the_column_of_the_current_cell(qtbot: QtBot, page: GridPage, session: Session) -> None:
    page.table.choose([(1, 4)])
    qtbot.keyClick(page.table, Qt.Key.Key_Space, CONTROL)
    assert columns_chosen(page) == {4}
    assert session.label == "A2"


def test_a_double_click_on_a_head_sorts_rising_then_falling_then_as_entered(page: GridPage) -> None:
    def shown() -> list[str]:
        return [str(page.proxy.index(row, 0).data()) for row in range(page.proxy.rowCount())]

    for wanted in (["A1", "A2", "A3", "A4"], ["A4", "A3", "A2", "A1"], ["A1", "A2", "A3", "A4"]):
        page.table.head.sectionDoubleClicked.emit(0)
        assert shown() == wanted
    by_menu = page.table.menu(0).actions()
    by_menu[2].trigger()
    assert shown() == ["A4", "A3", "A2", "A1"]
    by_menu[3].trigger()
    assert shown() == ["A1", "A2", "A3", "A4"]


def test_the_labels_stay_in_sight_when_the_table_is_scrolled_sideways(
    qtbot: QtBot, page: GridPage, session: Session
) -> None:
    table, held = page.table, page.table.held
    assert not held.isVisible()
    table.horizontalScrollBar().setValue(table.horizontalScrollBar().maximum())
    assert held.isVisible()
    assert (held.x(), held.width()) == (table.verticalHeader().width() + table.frameWidth(), table.columnWidth(0))
    assert [str(held.model().index(row, 0).data()) for row in range(4)] == ["A1", "A2", "A3", "A4"]
    # a row of it lies beside the same row of the table
    for row in range(4):
        beside = table.visualRect(table.model().index(row, table.model().columnCount() - 1))
        here = held.visualRect(held.model().index(row, 0))
        assert (here.top(), here.height()) == (beside.top(), beside.height())
    # a click on a label turns to its position and scrolls nothing
    away = table.horizontalScrollBar().value()
    at = held.visualRect(held.model().index(2, 0)).center()
    qtbot.mouseClick(held.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert session.label == "A3"
    assert table.horizontalScrollBar().value() == away


def test_no_cell_is_left_below_the_labels_and_a_label_is_written_in_sight(qtbot: QtBot, page: GridPage) -> None:
    table = page.table
    table.horizontalScrollBar().setValue(table.horizontalScrollBar().maximum())
    table.setCurrentIndex(table.model().index(0, table.model().columnCount() - 1))
    for _ in range(table.model().columnCount() - 1):
        qtbot.keyClick(table, Qt.Key.Key_Left)
        rect = table.visualRect(table.currentIndex())
        assert table.currentIndex().column() == 0 or rect.left() >= table.held.room
    table.horizontalScrollBar().setValue(table.horizontalScrollBar().maximum())
    table.setCurrentIndex(table.model().index(1, 0))
    qtbot.keyClick(table, Qt.Key.Key_F2)
    assert table.horizontalScrollBar().value() == 0
    assert not table.held.isVisible()
