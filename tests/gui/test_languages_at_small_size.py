"""Every page in every language fits a window of 1280 x 720, and choices are told in that language."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QLabel, QTabBar, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from gui.page_rooms import laid_over, settle, with_steps, with_tabs
from planning.quoting_terms import DAY, terms_of
from spoutline.bootstrap import Workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.weighing import WeighingDialog
from spoutline.gui.edits.question import Step
from spoutline.gui.models.quotation_prices import price_columns
from spoutline.gui.window.main_window import MainWindow
from spoutline.model.language import Language
from spoutline.model.survey import Survey
from spoutline.planning.survey_import.fields import FIELDS
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

WIDTH_PX, HEIGHT_PX = 1280, 720
PAGES = (
    None,
    ActionId.BILL,
    ActionId.GRID,
    ActionId.QUOTATIONS,
    ActionId.CONVERSION,
    ActionId.INSTALLER,
    ActionId.CATALOGUES,
)
GASOLINE = {
    Language.ENGLISH: "gasoline",
    Language.SPANISH: "gasolina",
    Language.GERMAN: "Benzin",
    Language.FRENCH: "essence",
}
# as papers name them: tables of rules are written in English, and told in the language of the reader
GENERAL_RULES = {
    Language.ENGLISH: "United States, general",
    Language.SPANISH: "Estados Unidos, general",
    Language.GERMAN: "USA, allgemein",
    Language.FRENCH: "États-Unis, général",
}
RETAIL_STATIONS = {
    Language.ENGLISH: "California, retail",
    Language.SPANISH: "California, venta al público",
    Language.GERMAN: "Kalifornien, öffentliche Tankstellen",
    Language.FRENCH: "Californie, vente au public",
}


def cut_off(window: QWidget) -> list[str]:
    """Return the texts of labels and buttons in view with less room than they ask for, and of tabs out of view."""
    buttons = [one for one in window.findChildren(QAbstractButton) if not isinstance(one, QToolButton)]
    labels = [one for one in window.findChildren(QLabel) if not one.wordWrap()]
    cut = [
        one.text()
        for one in (*buttons, *labels)
        if one.isVisible() and one.text() and one.width() < one.minimumSizeHint().width()
    ]
    bars = [one for one in window.findChildren(QTabBar) if one.isVisible() and one.count()]
    return cut + [one.tabText(one.count() - 1) for one in bars if one.tabRect(one.count() - 1).right() > one.width()]


def test_every_page_fits_a_small_window_in_every_language(spoken: tuple[Language, MainWindow]) -> None:
    _, window = spoken
    place = window.workplace
    assert place is not None
    too_wide, cut, scrolled, over = [], [], [], []
    for page in PAGES:
        if page is not None:
            window.actions_by_id[page].trigger()
        window.resize(WIDTH_PX, HEIGHT_PX)
        shown = with_steps(place, window) if page is None else with_tabs(place.views.currentWidget(), window)
        for tab in shown:
            if (window.width(), window.height()) != (WIDTH_PX, HEIGHT_PX):
                too_wide.append((page, tab, window.width(), window.height()))
            if place.room.horizontalScrollBar().maximum() or place.room.verticalScrollBar().maximum():
                scrolled.append((page, tab))
            cut += [(page, tab, text) for text in cut_off(window)]
            over += [(page, tab, *pair) for pair in laid_over(place.views.currentWidget())]
    assert too_wide == []
    assert scrolled == []  # a page scrolls in its lists and forms, not as a whole beside them
    assert cut == []
    assert over == []


def test_number_total_and_day_of_a_quotation_are_whole_in_every_language(
    spoken: tuple[Language, MainWindow], qtbot: QtBot, bench: Workbench, survey: Survey
) -> None:
    """Customer and site have long names, so that they are what gives way; where there is room all columns are there."""
    _, window = spoken
    assert window.workplace is not None
    service, si = bench.quoting(), Display(UnitSystem.SI)
    site = survey.site.model_copy(update={"name": "Station at the Small Corner of Long Invented Lane"})
    terms = terms_of(
        customer={"name": "Invented Fuels and Sundries of the Corner"},
        heading={"number": "2026-SMALL-0001", "dated": DAY},
    )
    service.life().keep(service.quote(survey.model_copy(update={"site": site}), terms, si).quotation)
    window.resize(WIDTH_PX, HEIGHT_PX)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    panel = window.workplace.quotation_page.panel
    panel.show_panel(panel.book)
    table = panel.book.entry_table
    qtbot.waitUntil(lambda: any(one.number == "2026-SMALL-0001" for one in panel.book.entries.records), timeout=30_000)
    settle(window)
    model = table.model()
    columns = [column for column in range(8) if not table.isColumnHidden(column)]
    assert {0, 1, 4, 6} <= set(columns)
    cut = [column for column in (0, 1, 4, 6) if table.columnWidth(column) < table.sizeHintForColumn(column)]
    assert [(model.headerData(column, Qt.Orientation.Horizontal), table.columnWidth(column)) for column in cut] == []
    assert sum(map(table.columnWidth, columns)) <= table.viewport().width() + 1
    table.resize(1600, 400)
    table.fit_columns()
    assert not any(map(table.isColumnHidden, range(8)))


def test_every_page_can_be_used_at_two_hundred_percent(spoken: tuple[Language, MainWindow]) -> None:
    """A screen of 1440 x 900 holds 720 x 450 at 200 %: nothing is wider, and pages scroll upright."""
    _, window = spoken
    place = window.workplace
    assert place is not None
    too_large, sideways, over = [], [], []
    window.resize(WIDTH_PX, HEIGHT_PX)
    for page in PAGES:
        if page is not None:
            window.actions_by_id[page].trigger()
        for _ in range(4):  # at first the parts beside the page still stand there and need their height
            window.resize(720, 450)
            QApplication.processEvents()
        if (window.width(), window.height()) != (720, 450):
            too_large.append((page, window.width(), window.height()))
        for tab in with_tabs(place.views.currentWidget(), window):
            if place.room.horizontalScrollBar().maximum() > 0:
                sideways.append((page, tab, place.room.horizontalScrollBar().maximum()))
            over += [(page, tab, *pair) for pair in laid_over(place.views.currentWidget())]
        assert place.place_bar.isVisible()
    assert too_large == []
    assert sideways == []
    assert over == []
    # the parts beside a page are there on demand
    window.actions_by_id[ActionId.WALK].trigger()
    QApplication.processEvents()
    assert not place.site_panel.isVisible()
    assert place.steps.next_button.isVisible()
    assert window.rect().contains(place.steps.next_button.mapTo(window, place.steps.next_button.rect().bottomRight()))
    place.site_button.click()
    assert place.site_panel.isVisible()
    place.site_button.click()
    place.steps.drawing_button.click()
    assert place.side_panel.drawing.isVisible()
    place.steps.drawing_button.click()
    # and beside it again where there is room
    window.resize(WIDTH_PX, HEIGHT_PX)
    QApplication.processEvents()
    assert place.site_panel.isVisible()
    assert place.side_panel.isVisible()
    assert not place.site_button.isVisible()


def test_choices_of_positions_are_told_and_written_in_every_language(spoken: tuple[Language, MainWindow]) -> None:
    language, window = spoken
    window.actions_by_id[ActionId.GRID].trigger()
    assert window.workplace is not None
    page, session = window.workplace.grid_page, window.workplace.session
    column = [field.key for field in FIELDS].index("liquid.family")
    index = page.model.index(0, column)
    assert index.data() == GASOLINE[language]
    assert page.model.setData(page.model.index(1, column), GASOLINE[language].upper())
    assert session.survey.positions[1].liquid.family == "gasoline"
    # what a survey holds is understood in every language
    assert page.model.setData(page.model.index(1, column), "diesel")
    assert session.survey.positions[1].liquid.family == "diesel"


def test_sets_weighed_fit_a_small_screen_in_every_language(
    spoken: tuple[Language, MainWindow], qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    _, window = spoken
    assert window.workplace is not None
    shown: list[WeighingDialog] = []
    monkeypatch.setattr(WeighingDialog, "exec", lambda dialog: shown.append(dialog) or 0)
    monkeypatch.setattr(WeighingDialog, "deleteLater", lambda _: None)
    window.workplace.weighing.ask()
    dialog = shown[0]
    qtbot.addWidget(dialog)
    dialog.show()
    for scope in range(dialog.scope_box.count()):
        dialog.scope_box.setCurrentIndex(scope)
        dialog.scope_box.activated.emit(scope)
        qtbot.waitUntil(lambda: dialog.found is not None and not dialog.progress_row.bar.isVisible(), timeout=60_000)
        settle(window)
        dialog.resize(1080, 640)
        QApplication.processEvents()
        assert dialog.width() <= WIDTH_PX
        assert dialog.height() <= HEIGHT_PX
        assert cut_off(dialog) == []
        assert laid_over(dialog) == []


def test_local_rules_and_agencies_are_named_in_the_language_of_the_window(
    spoken: tuple[Language, MainWindow], qtbot: QtBot
) -> None:
    language, window = spoken
    place = window.workplace
    assert place is not None
    place.show_step(Step.SITE)

    def titles() -> set[str]:
        rules = place.steps.pages.site.form.field("jurisdiction")  # made anew when the choices are there
        tiles = {one.text() for one in rules.findChildren(QAbstractButton)}
        lists = rules.findChildren(QComboBox)  # where own rules make them too many for tiles
        return tiles | {box.itemText(at) for box in lists for at in range(box.count())}

    qtbot.waitUntil(lambda: GENERAL_RULES[language] in titles(), timeout=20_000)
    window.actions_by_id[ActionId.CONVERSION].trigger()
    agencies = place.conversion_page.site_side.form.field("agency")
    (box,) = agencies.findChildren(QComboBox)
    assert RETAIL_STATIONS[language] in {box.itemText(place) for place in range(box.count())}


def test_heads_of_prices_end_in_no_comma_where_no_currency_is_known() -> None:
    for title in (column.title for column in (*price_columns(""), *price_columns("USD"))):
        assert title == title.rstrip(", ")
