"""Rows of the table of all positions: taken away and copied, each time as one edit."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.pages.survey.grid_page import GridPage
from spoutline.gui.session import Session
from spoutline.gui.window.workplace import Workplace
from spoutline.model.survey import Survey

CONTROL = Qt.KeyboardModifier.ControlModifier


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
