"""Access without mouse or sight: names of everything on every page, verdicts of rows, order of the keyboard."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from PySide6.QtCore import QAbstractItemModel, QModelIndex, Qt
from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication, QTabWidget, QWidget
from pytestqt.qtbot import QtBot

from spoutline.gui.actions import ActionId
from spoutline.gui.edits.question import WALK, Step
from spoutline.gui.models.marks import told_with_mark
from spoutline.gui.places import PLACES
from spoutline.gui.roles import Role, Tone
from spoutline.gui.widgets.drawing_view import DrawingView
from spoutline.gui.widgets.reading_order import reading_order
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace

# what a person works with by keyboard; WCAG 2.2, success criterion 4.1.2: each has a name that can be told
_CONTROLS = {
    QAccessible.Role.PushButton, QAccessible.Role.CheckBox, QAccessible.Role.RadioButton, QAccessible.Role.ComboBox,
    QAccessible.Role.EditableText, QAccessible.Role.SpinBox, QAccessible.Role.Slider, QAccessible.Role.Table,
    QAccessible.Role.Tree, QAccessible.Role.List, QAccessible.Role.PageTab, QAccessible.Role.MenuItem,
    QAccessible.Role.ButtonMenu, QAccessible.Role.ButtonDropDown,
}  # fmt: skip
_CLOSED = {QAccessible.Role.Table, QAccessible.Role.Tree, QAccessible.Role.List, QAccessible.Role.ComboBox}


def controls(here: QAccessibleInterface) -> Iterator[QAccessibleInterface]:
    """Walk the tree of what a screen reader is told, as deep as controls go; rows of lists are no controls."""
    for place in range(here.childCount()):
        child = here.child(place)
        if child is None or not child.isValid() or child.state().invisible:
            continue
        if child.role() in _CONTROLS:
            yield child
        if child.role() not in _CLOSED:
            yield from controls(child)


def shown(window: MainWindow, workplace: Workplace) -> Iterator[str]:
    """Bring every page into view, with every step of the walk and every tab; yield where we are."""
    for step in (*WALK, Step.SITE):
        workplace.show_step(step)
        yield f"step {step}"
        yield from _tabs(workplace.steps.stack.currentWidget(), f"step {step}")
    for record in PLACES:
        window.actions_by_id[record.action].trigger()
        QApplication.processEvents()
        page = workplace.views.currentWidget()
        yield record.place
        yield from _tabs(page, record.place)


def _tabs(page: QWidget, named: str) -> Iterator[str]:
    for tabs in page.findChildren(QTabWidget):
        for place in range(tabs.count()):
            tabs.setCurrentIndex(place)
            QApplication.processEvents()
            yield f"{named}: {tabs.tabText(place)}"


def test_every_control_of_every_page_has_a_name(window: MainWindow, workplace: Workplace) -> None:
    unnamed, count = [], 0
    for place in shown(window, workplace):
        root = QAccessible.queryAccessibleInterface(window)
        assert root is not None
        for one in controls(root):
            count += 1
            if not one.text(QAccessible.Text.Name).strip():
                owner = one.object()
                unnamed.append((place, one.role().name, type(owner).__name__, owner.objectName() if owner else ""))
    assert count > 1_000  # the walk went somewhere
    assert sorted(set(unnamed)) == []


def test_no_two_fields_of_a_page_are_called_alike(window: MainWindow, workplace: Workplace) -> None:
    workplace.show_step(Step.PLACE)
    before = len(workplace.session.position.other_fillers)
    workplace.steps.pages.place.add_button.click()
    QApplication.processEvents()
    names = [one.accessibleName() for one in reading_order(workplace.steps.stack) if one.accessibleName()]
    assert len(workplace.session.position.other_fillers) == before + 1
    assert "Vehicle filler: Filler height" in names
    assert "Further filler 1: Filler height" in names
    assert sorted(names) == sorted(set(names))


# rows


def test_what_a_mark_says_is_told_with_the_row() -> None:
    assert told_with_mark("A1", None) == "A1"
    assert told_with_mark("A1", Tone.BAD) == "A1: not in order"
    assert told_with_mark("A1", Tone.GOOD, "A1: fits") == "A1: fits"
    assert told_with_mark("A1", Tone.BAD, "no set") == "A1: no set"
    assert told_with_mark("", Tone.OPEN) == "not answered yet"
    assert len({told_with_mark("", tone) for tone in Tone}) == len(Tone)


def test_a_row_of_a_position_tells_its_verdict(workplace: Workplace) -> None:
    tree, model = workplace.site_panel.tree, workplace.site_panel.model
    interface = QAccessible.queryAccessibleInterface(tree)
    assert interface is not None
    cells = (interface.child(place) for place in range(interface.childCount()))
    said = [one.text(QAccessible.Text.Name) for one in cells if one is not None]
    assert any("A1: fits" in one for one in said), said
    assert model.index_of("A1").data(Qt.ItemDataRole.AccessibleTextRole).startswith("A1: ")


def test_rows_of_checks_tell_whether_they_pass(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    page = workplace.set_page
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        QApplication.processEvents()

    def told() -> list[tuple[object, object]]:
        models = [view.model() for view in page.findChildren(QAbstractItemView) if view.model() is not None]
        indexes = [index for model in models for index in _all_rows(model, QModelIndex())]
        marked = [index for index in indexes if index.data(Role.TONE)]
        return [(index.data(), index.data(Qt.ItemDataRole.AccessibleTextRole)) for index in marked]

    qtbot.waitUntil(lambda: len(told()) > 5, timeout=30_000)
    assert all(len(str(spoken)) > len(str(text or "")) for text, spoken in told())


def _all_rows(model: QAbstractItemModel, above: QModelIndex) -> Iterator[QModelIndex]:
    for row in range(model.rowCount(above)):
        for column in range(model.columnCount(above)):
            yield model.index(row, column, above)
        yield from _all_rows(model, model.index(row, 0, above))


# order of the keyboard


def test_questions_come_before_the_buttons_below_them(window: MainWindow, workplace: Workplace) -> None:
    for step in WALK:
        workplace.show_step(step)
        QApplication.processEvents()
        order = reading_order(window.centralWidget())
        questions = [order.index(one) for one in reading_order(workplace.steps.stack)]
        assert questions == sorted(questions)
        assert order.index(workplace.steps.next_button) > questions[-1]
        assert order.index(workplace.place_bar.buttons[workplace.place_bar.current]) < questions[0]
        assert order.index(workplace.site_panel.tree) < questions[0]
        drawing = order.index(workplace.side_panel.drawing)
        assert drawing > order.index(workplace.steps.next_button)


def test_tab_goes_through_a_page_in_the_order_of_reading_and_back(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    workplace.show_step(Step.PLACE)
    window.activateWindow()
    QApplication.processEvents()
    reading_order(workplace.steps.stack)[0].setFocus()
    seen: list[QWidget] = []
    while QApplication.focusWidget() is not workplace.steps.back_button:
        here = QApplication.focusWidget()
        assert here is not None
        assert here not in seen, here
        seen.append(here)
        QTest.keyClick(here, Qt.Key.Key_Tab)
    assert len(seen) > 8
    # down the page, and from left to right in a row: what is less than half a field higher stands in the same row
    places = [one.mapTo(workplace.steps.stack, one.rect().topLeft()) for one in seen]
    for before, after in itertools.pairwise(places):
        assert after.y() > before.y() - 20
    for wanted in reversed(seen):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backtab)
        assert QApplication.focusWidget() is wanted


def test_the_next_step_lands_on_its_first_question(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    window.activateWindow()
    workplace.show_step(Step.LIQUID)
    for step in WALK[1:]:
        window.actions_by_id[ActionId.NEXT_STEP].trigger()
        assert workplace.step is step
        QApplication.processEvents()
        first = reading_order(workplace.steps.stack)[0]
        assert window.focusWidget() is first


# pictures


def test_drawings_and_views_of_the_forecourt_are_described_in_words(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    qtbot.waitUntil(lambda: workplace.side_panel.drawing.drawing is not None, timeout=30_000)
    described = workplace.side_panel.drawing.accessibleDescription()
    plan = workplace.context.plan
    assert plan is not None
    assert plan.chosen is not None
    assert all(link.part.number in described for link in plan.chosen.hanging_set.links)
    for tab in range(workplace.side_panel.tabs.count()):
        workplace.side_panel.tabs.setCurrentIndex(tab)
        QApplication.processEvents()
    views = workplace.side_panel.findChildren(DrawingView)
    qtbot.waitUntil(lambda: all(one.accessibleDescription() for one in views), timeout=30_000)
    workplace.show_grid()
    forecourt = workplace.grid_page.forecourt
    qtbot.waitUntil(lambda: "A1" in forecourt.accessibleDescription(), timeout=10_000)
