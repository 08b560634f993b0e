"""Tabs whose panels are made when they are first seen or asked for."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from spoutline.gui.pages.catalogues.coverage_panel import CoveragePanel
from spoutline.gui.pages.conversion.answers import PositionSide, SiteSide
from spoutline.gui.widgets.late_tabs import LateTabs
from spoutline.gui.window.workplace import Workplace


class First(QWidget):
    """A panel."""


class Second(QPushButton):
    """Another."""


class Third(QLabel):
    """A third."""


@pytest.fixture
def tabs(qtbot: QtBot) -> LateTabs:
    made = LateTabs()
    qtbot.addWidget(made)
    made.add_late(First, First, "&First")
    made.addTab(QLabel("plain"), "Plain")
    made.add_late(Second, Second, "&Second")
    made.add_late(Third, Third, "Third")
    return made


def test_a_panel_is_made_when_it_is_first_seen(tabs: LateTabs) -> None:
    assert tabs.made(First) is tabs.currentWidget()
    assert (tabs.made(Second), tabs.made(Third)) == (None, None)
    seen: list[QWidget | None] = []
    tabs.currentChanged.connect(lambda _: seen.append(tabs.currentWidget()))
    tabs.setCurrentIndex(3)
    assert seen == [tabs.made(Third)]  # who hears of the turn finds the panel there
    assert tabs.made(Second) is None
    tabs.setCurrentIndex(2)
    assert seen[1:] == [tabs.currentWidget()] == [tabs.made(Second)]
    assert [tabs.tabText(place) for place in range(tabs.count())] == ["&First", "Plain", "&Second", "Third"]


def test_a_panel_that_is_asked_for_is_made_once_in_its_place(tabs: LateTabs) -> None:
    turned: list[int] = []
    tabs.currentChanged.connect(turned.append)
    second = tabs.panel(Second)
    assert tabs.panel(Second) is second
    assert tabs.indexOf(second) == 2
    assert tabs.currentWidget() is tabs.made(First)
    assert turned == []
    with pytest.raises(KeyError):
        tabs.panel(QLabel)


def test_the_pages_of_many_panels_make_the_one_in_view(workplace: Workplace) -> None:
    workplace.show_catalogues(lambda: None)
    assert workplace.catalogues_page.tabs.made(CoveragePanel) is None
    workplace.show_conversion()
    tabs = workplace.conversion_page.tabs
    assert (tabs.made(SiteSide), tabs.made(PositionSide)) == (None, None)
    tabs.setCurrentIndex(2)
    site = tabs.made(SiteSide)
    assert site is not None
    assert "agency" in site.form.names


def test_a_panel_made_in_a_narrow_window_stands_below_each_other_too(workplace: Workplace) -> None:
    workplace.show_catalogues(lambda: None)
    workplace._is_narrow = True
    stacked: list[QWidget] = []
    workplace._stacking.stack = lambda page, _: stacked.append(page)  # type: ignore[method-assign]
    page = workplace.catalogues_page
    page.tabs.setCurrentWidget(page.coverage_panel)
    assert page in stacked
