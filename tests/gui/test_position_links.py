"""Wherever a position is named, a click on the name brings the position itself into view."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QModelIndex, QPoint, Qt
from PySide6.QtWidgets import QApplication, QPushButton, QTableView, QTreeView
from pytestqt.qtbot import QtBot

from gui.page_rooms import make_late_panels
from spoutline.gui.edits.question import Step
from spoutline.gui.places import Place
from spoutline.gui.position_links import LinkedText, PositionLinks, labels_at, named_in
from spoutline.gui.session import Session
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace

_CTRL = Qt.KeyboardModifier.ControlModifier
_PAGES: tuple[Callable[[Workplace], None], ...] = (
    Workplace.show_start,
    Workplace.show_bill,
    Workplace.show_quotations,
    Workplace.show_conversion,
    Workplace.show_installer,
    lambda place: place.show_catalogues(lambda: None),
)


def click(qtbot: QtBot, view: QTableView | QTreeView, index: QModelIndex) -> None:
    QApplication.processEvents()  # rows are laid out a turn later
    view.scrollTo(index)
    at = view.visualRect(index).center() if isinstance(view, QTableView) else view.visualRect(index).topLeft()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=at + QPoint(2, 2))


@pytest.mark.parametrize("show", _PAGES)
def test_a_click_in_the_list_of_positions_leads_there_from_every_page(
    qtbot: QtBot, workplace: Workplace, session: Session, show: Callable[[Workplace], None]
) -> None:
    for label in ("A2", "A2", "A1"):  # the one in hand too
        show(workplace)
        assert workplace.place is not Place.SURVEY
        click(qtbot, workplace.site_panel.tree, workplace.site_panel.model.index_of(label))
        assert (workplace.place, session.label) == (Place.SURVEY, label)


def test_return_in_the_list_of_positions_leads_there_too(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_installer()
    qtbot.keyClick(workplace.site_panel.tree, Qt.Key.Key_Return)
    assert workplace.place is Place.SURVEY


def test_where_all_positions_are_in_view_the_row_of_one_is(
    qtbot: QtBot, workplace: Workplace, session: Session
) -> None:
    workplace.show_grid()
    click(qtbot, workplace.site_panel.tree, workplace.site_panel.model.index_of("A2"))
    assert (workplace.place, session.label) == (Place.POSITIONS, "A2")
    assert workplace.grid_page.table.currentIndex().row() == 1


def test_the_parts_list_leads_to_its_positions_by_click_and_key(
    qtbot: QtBot, workplace: Workplace, session: Session
) -> None:
    page = workplace.bill_page
    workplace.show_bill()
    qtbot.waitUntil(lambda: page.positions_model.rowCount() == 2, timeout=60_000)
    click(qtbot, page.positions_tree, page.positions_model.index_of("A2"))
    assert (workplace.place, workplace.step, session.label) == (Place.SURVEY, Step.SET, "A2")
    workplace.show_bill()
    page.positions_tree.pick(page.positions_model.index_of("A1"))
    qtbot.keyClick(page.positions_tree, Qt.Key.Key_Return, _CTRL)
    assert (workplace.place, session.label) == (Place.SURVEY, "A1")


def test_only_the_name_of_a_position_leads_away_from_a_conversion(
    qtbot: QtBot, workplace: Workplace, session: Session
) -> None:
    page = workplace.conversion_page
    workplace.show_conversion()
    qtbot.waitUntil(lambda: page.positions_model.rowCount() >= 2, timeout=60_000)
    name = page.positions_model.index_of("A2")
    page.positions_tree.pick(name)
    page.positions_tree.clicked.emit(name.siblingAtColumn(1))
    assert (workplace.place, session.label) == (Place.CONVERSION, "A2")
    page.positions_tree.clicked.emit(name)
    assert workplace.place is Place.SURVEY


def test_a_quotation_leads_to_the_positions_that_it_leaves_out(
    workplace: Workplace, session: Session, qtbot: QtBot
) -> None:
    workplace.show_quotations()
    said = workplace.quotation_page.panel
    said.say("Not surveyed yet, and not quoted: A2")
    assert said.state_label.plain == "Not surveyed yet, and not quoted: A2"
    said.state_label.linkActivated.emit("A2")
    assert (workplace.place, session.label) == (Place.SURVEY, "A2")


def test_a_notice_leads_to_the_positions_that_it_names(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, session: Session
) -> None:
    workplace.show_installer()
    window.notify("The record of A2 is kept in the book.")
    (button,) = (one for one in window.notices.findChildren(QPushButton) if one.text() == "Show A2")
    button.click()
    assert (workplace.place, session.label) == (Place.SURVEY, "A2")


def test_a_text_names_positions_as_whole_words_and_never_a_bare_number() -> None:
    labels = ("1A", "1", "Hose 1", "Hose 12", "1A-b")
    assert named_in("1A, Hose 12 and 1A-b; 1 of 21A", labels) == ("1A", "Hose 12", "1A-b")
    assert named_in("nothing", ()) == ()


def test_names_in_a_text_are_shown_as_they_are(qtbot: QtBot) -> None:
    label = LinkedText("quiet")
    qtbot.addWidget(label)
    label.show_text("<b>left out: A&B, C1", ("A&B", "C1"))
    assert label.text() == '&lt;b&gt;left out: <a href="A&amp;B">A&amp;B</a>, <a href="C1">C1</a>'
    label.show_text("<b>A1", ())
    assert (label.text(), label.textFormat()) == ("<b>A1", Qt.TextFormat.PlainText)


def test_a_cell_that_names_several_positions_asks_which(qtbot: QtBot, workplace: Workplace, session: Session) -> None:
    links = workplace.site_panel.tree.findChild(PositionLinks)
    assert links is not None
    workplace.show_installer()
    menu = links.menu(("A1", "A2"))
    assert [one.text() for one in menu.actions()] == ["A1", "A2"]
    menu.actions()[1].trigger()
    assert (workplace.place, session.label) == (Place.SURVEY, "A2")


def test_every_list_of_the_window_is_able_to_lead(workplace: Workplace) -> None:
    for show in _PAGES:
        show(workplace)
        make_late_panels(workplace)
    views = [*workplace.findChildren(Table), *workplace.findChildren(Tree)]
    assert len(views) > 20
    assert all(view.findChild(PositionLinks) is not None for view in views)
    assert labels_at(QModelIndex()) == ()
