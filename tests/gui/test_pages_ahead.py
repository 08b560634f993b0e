"""Pages are made before they are first seen, part by part; one made so is the page that is made whole."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QAbstractButton, QLabel, QLineEdit, QTabWidget, QWidget
from pytestqt.qtbot import QtBot

from spoutline.gui.edits.question import Step
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.pages.result.set_page import SetPage
from spoutline.gui.pages.survey.grid_page import GridPage
from spoutline.gui.places import Place
from spoutline.gui.widgets.in_parts import InParts
from spoutline.gui.window.workplace import Workplace

PAGES = (
    "set_page",
    "grid_page",
    "quotation_page",
    "bill_page",
    "conversion_page",
    "installer_page",
    "catalogues_page",
    "start_page",
)


def look_of(page: QWidget) -> list[tuple[object, ...]]:
    """Return what a page holds, in order: kinds, names, texts, and what is hidden, barred or in which tab."""
    return [
        (
            type(one).__name__,
            one.objectName(),
            one.accessibleName(),
            one.isHidden(),
            one.isEnabled(),
            one.text() if isinstance(one, QLabel | QAbstractButton | QLineEdit) else "",
            [one.tabText(at) for at in range(one.count())] if isinstance(one, QTabWidget) else [],
        )
        for one in page.findChildren(QWidget)
    ]


MAKERS: dict[str, Callable[[Workplace, bool], QWidget]] = {
    "set": lambda place, whole: SetPage(place.context, place.views, whole=whole),
    "grid": lambda place, whole: GridPage(place.context, place.views, whole=whole),
    "quotation": lambda place, whole: QuotationPage(place.context, place._notify, parent=place.views, whole=whole),
}


@pytest.mark.parametrize(("name", "least"), [("set", 15), ("grid", 2), ("quotation", 12)])
def test_a_page_made_in_parts_is_the_page_made_whole(workplace: Workplace, name: str, least: int) -> None:
    whole, parted = MAKERS[name](workplace, True), MAKERS[name](workplace, False)
    assert isinstance(parted, InParts)
    assert look_of(parted) == []
    parts = 1
    before = 0
    while parted.make_part():
        count = len(parted.findChildren(QWidget))
        assert count - before <= len(whole.findChildren(QWidget)) * 0.6  # none makes nearly all of it
        parts, before = parts + 1, count
    assert parts >= least
    assert look_of(parted) == look_of(whole)
    parted.make_rest()
    assert look_of(parted) == look_of(whole)
    for page in (whole, parted):
        page.deleteLater()


def test_pages_are_made_while_nothing_else_is_seen_to_happen(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_step(Step.DUTY)
    workplace.steps.focus_page()
    focus, seen = workplace.window().focusWidget(), workplace.views.currentWidget()
    turned: list[None] = []
    workplace.page_changed.connect(lambda: turned.append(None))
    changed: list[object] = []
    workplace.session.changed.connect(changed.append)
    assert not any(name in workplace.__dict__ for name in PAGES)
    workplace.make_pages_ahead()
    assert not any(name in workplace.__dict__ for name in PAGES)
    qtbot.waitUntil(lambda: not workplace._ahead.is_at_work, timeout=30_000)
    assert all(name in workplace.__dict__ for name in PAGES)
    assert (workplace.views.currentWidget(), workplace.window().focusWidget()) == (seen, focus)
    assert (turned, changed, workplace.step, workplace.place) == ([], [], Step.DUTY, Place.SURVEY)
    assert not any(getattr(workplace, name).isVisible() for name in PAGES)
    grid = workplace.grid_page
    assert grid.model.rowCount() == 2
    assert len(grid.forecourt.tiles) == 2
    workplace.show_grid()
    assert workplace.grid_page is grid
    assert grid.table.isVisible()
    workplace.show_step(Step.SET)
    assert workplace.set_page.isVisible()
    assert len(workplace.findChildren(SetPage)) == 1


def test_a_page_asked_for_while_it_is_made_is_whole(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.make_pages_ahead()
    qtbot.waitUntil(lambda: bool(workplace.findChildren(SetPage)), timeout=30_000)
    half = workplace.findChildren(SetPage)[0]
    assert "set_page" not in workplace.__dict__
    workplace.show_step(Step.SET)
    assert workplace.set_page is half
    assert half.tabs.count() == 8
    assert half.isVisible()
    qtbot.waitUntil(lambda: not workplace._ahead.is_at_work, timeout=30_000)
    assert workplace.findChildren(SetPage) == [half]
    assert all(name in workplace.__dict__ for name in PAGES)


def test_no_page_is_made_beside_a_plan_that_is_waited_for(
    qtbot: QtBot, workplace: Workplace, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as patched:
        patched.setattr(workplace.plans, "plan", lambda _: None)
        workplace.make_pages_ahead()
        qtbot.wait(100)
        QCoreApplication.processEvents()
        assert workplace._ahead.is_at_work
        assert workplace.findChildren(SetPage) == []
    qtbot.waitUntil(lambda: not workplace._ahead.is_at_work, timeout=30_000)


def test_of_a_page_that_could_not_be_made_nobody_is_given_half(workplace: Workplace) -> None:
    class Broken(InParts):
        def _make(self) -> Iterator[None]:
            yield
            raise ValueError("half made")

    page = Broken()
    page.begin(page._make(), whole=False)
    ahead = workplace._ahead
    ahead.go_through(ahead.parts_of(page))
    ahead._go_on()
    with pytest.raises(ValueError, match="half made"):
        ahead._go_on()
    assert ahead.taken(Broken) is None
