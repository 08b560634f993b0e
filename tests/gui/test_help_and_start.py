"""Help inside the window, the start view, and the three jobs in pictures."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QPushButton
from pytestqt.qtbot import QtBot

from spoutline import assets
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.manual import HelpHit, HelpUser
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.help_window import HelpWindow
from spoutline.gui.dialogs.keys import AboutDialog
from spoutline.gui.dialogs.local_rules import LocalRulesDialog
from spoutline.gui.dialogs.tour import TourDialog
from spoutline.gui.places import PLACES, Place
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.survey import Survey

TOPICS = {
    Place.START: "first_steps",
    Place.SURVEY: "window",
    Place.POSITIONS: "tables",
    Place.PARTS: "parts_lists",
    Place.QUOTATION: "quotations",
    Place.CONVERSION: "conversions",
    Place.INSTALLER: "installer",
    Place.CATALOGUES: "catalog",
}


def help_of(window: MainWindow | QDialog) -> HelpWindow:
    found = window.findChild(HelpWindow, options=Qt.FindChildOption.FindDirectChildrenOnly)
    assert found is not None
    return found


def test_f1_leads_to_the_page_of_the_place(window: MainWindow, workplace: Workplace) -> None:
    for record in PLACES:
        window.actions_by_id[record.action].trigger()
        window.actions_by_id[ActionId.HELP].trigger()
        assert help_of(window).topic == TOPICS[record.place]
        assert help_of(window).isVisible()
    help_of(window).go_back()
    assert help_of(window).topic == TOPICS[Place.INSTALLER]


def test_f1_leads_to_the_page_of_what_has_the_keyboard(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    window.activateWindow()
    workplace.site_panel.sets_box.setFocus()
    qtbot.waitUntil(workplace.site_panel.sets_box.hasFocus)
    window.actions_by_id[ActionId.HELP].trigger()
    assert help_of(window).topic == "agreed_sets"


def test_f1_in_a_dialog_opens_help_over_it(qtbot: QtBot, window: MainWindow, bench: Workbench) -> None:
    dialog = LocalRulesDialog(bench, "us_general", window)
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.waitExposed(dialog)
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    QTest.keyClick(dialog, Qt.Key.Key_F1)
    assert help_of(dialog).topic == "jurisdictions"


@pytest.fixture
def manual(qtbot: QtBot, window: MainWindow) -> HelpWindow:
    window.actions_by_id[ActionId.HELP].trigger()
    return help_of(window)


def test_the_manual_is_searched_and_narrowed_to_a_user(manual: HelpWindow) -> None:
    everybody = len(manual.model.records)
    manual.user_box.setCurrentIndex(manual.user_box.findData(HelpUser.INSTALLER))
    assert 0 < len(manual.model.records) < everybody
    manual.user_box.setCurrentIndex(0)
    manual.edit.setText("breakaway")
    QTest.keyClick(manual.edit, Qt.Key.Key_Return)
    hits = manual.model.records
    assert hits
    assert all(isinstance(one, HelpHit) for one in hits)
    row = next(row for row, one in enumerate(hits) if isinstance(one, HelpHit) and one.topic.name == "glossary")
    manual.table.pick_row(0)
    manual.table.pick_row(row)
    assert manual.topic == "glossary"
    assert "breakaway" in manual.browser.textCursor().selectedText().casefold()
    manual.edit.setText("no such word")
    QTest.keyClick(manual.edit, Qt.Key.Key_Return)
    assert manual.told_label.text() != ""


def test_links_lead_to_other_pages_and_to_nothing_outside(manual: HelpWindow) -> None:
    manual.show_topic("window")
    manual.browser.anchorClicked.emit(QUrl("catalog.md"))
    assert manual.topic == "catalog"
    manual.browser.anchorClicked.emit(QUrl("https://example.org/"))
    assert manual.topic == "catalog"


def test_about_names_every_package_with_its_license_and_text(qtbot: QtBot) -> None:
    dialog = AboutDialog("1.0", "Advice only.")
    qtbot.addWidget(dialog)
    dialog.show()
    names = [one.name for one in dialog.model.records]
    assert "SQLAlchemy" in names
    dialog.table.pick_row(names.index("SQLAlchemy"))
    assert "Permission is hereby granted" in dialog.text.toPlainText()


# the start view


def test_a_survey_is_opened_from_the_start_view(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, bench: Workbench, survey: Survey
) -> None:
    site = survey.site.model_copy(update={"name": "Last Touched"})
    newest = bench.book().create(survey.model_copy(update={"site": site}))
    window.actions_by_id[ActionId.START].trigger()
    page = workplace.start_page
    qtbot.waitUntil(lambda: bool(page.model.records), timeout=20_000)
    assert page.model.records[0].id == newest.id
    page.open_button.click()
    qtbot.waitUntil(lambda: workplace.session.stored.id == newest.id, timeout=20_000)
    assert workplace.place is Place.SURVEY


def test_a_survey_is_begun_and_the_demonstration_is_marked_as_such(
    qtbot: QtBot, workplace: Workplace, bench: Workbench
) -> None:
    workplace.show_start()
    page = workplace.start_page
    assert not page.begin_button.isEnabled()
    QTest.keyClicks(page.name_edit, "Begun at the start")
    QTest.keyClick(page.name_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: workplace.session.survey.site.name == "Begun at the start", timeout=20_000)
    workplace.show_start()
    words = " ".join(one.text() for one in page.findChildren(type(page.fault_label)))
    assert "invented" in words
    page.name_edit.setText("n" * 61)  # longer than a name can be
    page.begin_button.click()
    qtbot.waitUntil(lambda: "60 characters" in page.fault_label.text(), timeout=20_000)
    page._show_entries(bench.book().entries())  # a list that was asked for before comes late
    assert "60 characters" in page.fault_label.text()
    place = page.ready_box.findData("marina")
    page.ready_box.setCurrentIndex(place)
    page.ready_button.click()
    qtbot.waitUntil(lambda: workplace.place is Place.SURVEY, timeout=20_000)
    assert len(workplace.session.survey.positions) > 2


def test_a_file_used_last_is_read_again(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, survey: Survey, tmp_path: Path
) -> None:
    path = tmp_path / "kept.json"
    path.write_text(survey_to_json(survey), encoding="utf-8")
    window.memory.add_file(path)
    workplace.show_start()
    before = workplace.session.stored.id
    button = next(one for one in workplace.start_page.findChildren(QPushButton) if one.text() == "kept.json")
    button.click()
    qtbot.waitUntil(lambda: workplace.session.stored.id != before, timeout=20_000)


# the tour


def test_the_tour_shows_three_jobs_each_with_a_picture(qtbot: QtBot, window: MainWindow) -> None:
    dialog = TourDialog(window)
    qtbot.addWidget(dialog)
    dialog.show()
    seen = []
    for place in range(3):
        assert dialog.pages.currentIndex() == place
        assert dialog.rail.place == place
        picture = dialog.pages.currentWidget().grab().toImage()
        seen.append(picture)
        dialog.next_button.click()
    assert not dialog.isVisible()
    assert seen[0] != seen[1] != seen[2]


def test_pictures_are_drawings_in_two_colours_of_the_theme() -> None:
    for path in sorted((assets.resources_folder() / "help" / "pictures").glob("*.svg")):
        text = path.read_text(encoding="utf-8")
        assert "currentColor" in text
        assert "accentColor" in text
        assert QSvgRenderer(str(path)).isValid()
