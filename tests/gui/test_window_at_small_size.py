"""The window on a small screen, and on a desktop that switches between light and dark."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QColor, QIcon
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QScrollArea
from pytestqt.qtbot import QtBot

from planning.quoting_terms import DAY, terms_of
from spoutline.bootstrap import Workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.question import Step
from spoutline.gui.jobs import JobKind
from spoutline.gui.widgets.answer_field import Choice, TileField
from spoutline.gui.widgets.icons import icon
from spoutline.gui.widgets.theme import DARK, LIGHT, dress
from spoutline.gui.widgets.tile_grid import TileGrid
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.quotation_status import QuotationStatus
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def inks(drawn: QIcon, mode: QIcon.Mode = QIcon.Mode.Normal) -> set[str]:
    image = drawn.pixmap(QSize(48, 48), mode).toImage()
    pixels = (image.pixelColor(x, y) for x in range(image.width()) for y in range(image.height()))
    return {QColor(pixel.rgb()).name() for pixel in pixels if pixel.alpha() == 255}


def test_an_icon_takes_the_colour_of_text_again_when_the_desktop_turns_dark(qapp: QApplication) -> None:
    dress(qapp, dark=False)
    drawn = icon("add")
    assert inks(drawn) == {LIGHT.text}
    dress(qapp, dark=True)
    assert inks(drawn) == {DARK.text}
    assert inks(drawn, QIcon.Mode.Disabled) == {DARK.frame}
    dress(qapp, dark=False)
    assert inks(drawn) == {LIGHT.text}


def tiles_of(qtbot: QtBot, width_px: int) -> TileGrid:
    choices = tuple(Choice(str(number), "A choice of some length", "and what it means") for number in range(3))
    field = TileField("Which?", "", "", choices)
    qtbot.addWidget(field)
    field.resize(width_px, 400)
    field.show()
    qtbot.waitExposed(field)
    (grid,) = field.findChildren(TileGrid)
    QApplication.processEvents()
    assert all(grid.rect().contains(tile.geometry()) for tile in field.tiles)
    return grid


def test_tiles_stand_below_each_other_where_there_is_no_room_beside(qtbot: QtBot) -> None:
    assert tiles_of(qtbot, 1200).columns == 3
    assert tiles_of(qtbot, 260).columns == 1


def shown_at(qtbot: QtBot, window: MainWindow, width: int, height: int) -> None:
    window.resize(width, height)
    QApplication.processEvents()
    assert (window.width(), window.height()) == (width, height)


@pytest.mark.parametrize("size", [(1280, 720), (1440, 900)])
def test_every_tab_of_the_conversion_is_in_view_and_nothing_is_cut_off(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, size: tuple[int, int]
) -> None:
    window.actions_by_id[ActionId.CONVERSION].trigger()
    shown_at(qtbot, window, *size)
    page = workplace.conversion_page
    bar = page.tabs.tabBar()
    assert all(bar.rect().contains(bar.tabRect(place)) for place in range(bar.count()))
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        QApplication.processEvents()
        for tile in page.tabs.currentWidget().findChildren(TileGrid):
            right = tile.mapTo(page.tabs, tile.rect().topRight()).x()
            assert not tile.isVisible() or right <= page.tabs.width(), tile.parent()
    page.tabs.setCurrentIndex(0)
    qtbot.waitUntil(lambda: page.ways_model.rowCount() == 3, timeout=60_000)
    QApplication.processEvents()
    rows = [page.ways_tree.visualRect(page.ways_model.index(row, 0)) for row in range(3)]
    assert all(page.ways_tree.viewport().rect().contains(row) for row in rows)


@pytest.mark.parametrize("size", [(1280, 720), (1440, 900)])
def test_every_tab_of_the_set_is_in_view(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, size: tuple[int, int]
) -> None:
    workplace.show_step(Step.SET)
    shown_at(qtbot, window, *size)
    bar = workplace.set_page.tabs.tabBar()
    for place in range(bar.count()):
        bar.setCurrentIndex(place)
        QApplication.processEvents()
        assert all(bar.rect().contains(bar.tabRect(one)) for one in range(bar.count())), bar.tabText(place)


def test_the_names_of_parts_can_be_read_in_a_small_window(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    shown_at(qtbot, window, 1280, 720)
    window.actions_by_id[ActionId.BILL].trigger()
    bill = workplace.bill_page.table
    qtbot.waitUntil(lambda: bill.model().rowCount() > 0, timeout=30_000)
    window.actions_by_id[ActionId.PART_QUESTION].trigger()
    found = workplace.set_page.why_not.table
    qtbot.waitUntil(lambda: found.model().rowCount() > 0, timeout=30_000)
    for table, name_column in ((bill, 1), (found, 2)):
        assert table.columnWidth(name_column) >= table.viewport().width() * 0.25
        assert table.horizontalHeader().length() <= table.viewport().width() + 2


def test_the_day_of_an_inspection_is_not_cut_off_in_a_small_window(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    shown_at(qtbot, window, 1280, 720)
    window.actions_by_id[ActionId.INSTALLER].trigger()
    page = workplace.installer_page
    page.tabs.setCurrentWidget(page.inspection_panel)
    table = page.inspection_panel.due_table
    qtbot.waitUntil(lambda: table.model().rowCount() > 0, timeout=30_000)
    QApplication.processEvents()
    assert table.columnWidth(0) >= table.sizeHintForColumn(0)


def test_where_a_quotation_stands_is_not_cut_off_in_a_small_window(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, bench: Workbench
) -> None:
    service, si = bench.quoting(), Display(UnitSystem.SI)
    survey = workplace.session.survey
    survey = survey.model_copy(update={"site": survey.site.model_copy(update={"name": "Small Corner"})})
    made = service.quote(survey, terms_of(heading={"number": "SMALL-1", "dated": DAY}), si).quotation
    service.life().answer(
        service.life().issue(service.life().keep(made), "Odile", si), QuotationStatus.ACCEPTED, "Odile"
    )
    shown_at(qtbot, window, 1280, 720)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    book = workplace.quotation_page.panel.book
    workplace.quotation_page.panel.show_panel(book)
    qtbot.waitUntil(book.check_button.isEnabled, timeout=30_000)
    qtbot.waitUntil(lambda: book.entry_table.model().rowCount() > 0, timeout=30_000)
    QApplication.processEvents()
    table = book.entry_table
    for column in (0, 1, 4):
        assert table.columnWidth(column) >= table.sizeHintForColumn(column)


def test_undo_reaches_the_survey_while_an_empty_field_has_the_keyboard(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    session = workplace.session
    before = session.survey
    renamed = before.site.model_copy(update={"customer": "Ada Quill"})
    make_edit(session, before.model_copy(update={"site": renamed}), "Customer")
    window.actions_by_id[ActionId.INSTALLER].trigger()
    field = workplace.installer_page.code_edit
    field.setFocus()
    QTest.keyClick(field, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: session.survey == before)


def test_the_installers_page_needs_no_scrolling_where_there_is_room(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    shown_at(qtbot, window, 1440, 860)
    window.actions_by_id[ActionId.INSTALLER].trigger()
    for tab in range(workplace.installer_page.tabs.count()):
        workplace.installer_page.tabs.setCurrentIndex(tab)
        QApplication.processEvents()
        qtbot.waitUntil(lambda: not any(map(window.jobs.is_busy, JobKind)), timeout=60_000)
        QApplication.processEvents()
        around = workplace.installer_page.parentWidget()
        while around is not None and not isinstance(around, QScrollArea):
            around = around.parentWidget()
        assert around is not None
        assert around.verticalScrollBar().maximum() == 0
