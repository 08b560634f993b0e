"""A person at the window: sees what is visible, clicks it where it lies, types where the keyboard is.

Nothing here knows a widget by its attribute: controls are found by what they say or by the name that a screen reader
tells, and a click goes to the point of the window where the control is drawn: a covered control fails.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

import pytest
from PySide6.QtCore import QPoint, Qt, QTimer
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QFileDialog,
    QLabel,
    QLineEdit,
    QMenu,
    QScrollArea,
    QTabBar,
    QWidget,
)
from pytestqt.exceptions import TimeoutError as QtBotTimeout
from pytestqt.qtbot import QtBot

LONG_MS = 60_000
W = TypeVar("W", bound=QWidget)


class Person:
    """One person with mouse and keyboard before one window at a time; a dialog that opens is what they see."""

    def __init__(self, qtbot: QtBot, window: QWidget, monkeypatch: pytest.MonkeyPatch) -> None:
        self._qtbot, self._window, self._monkeypatch = qtbot, window, monkeypatch

    @property
    def before(self) -> QWidget:
        """What the person works in: the dialog that is open, or the window."""
        return QApplication.activeModalWidget() or self._window

    def press(self, keys: str) -> None:
        """Press keys where the keyboard is, such as ``Ctrl+T``."""
        self.before.activateWindow()  # a menu that was closed may still hold that
        target = self.before.focusWidget() or self.before
        QTest.keySequence(target, QKeySequence(keys))

    def click(self, words: str) -> None:
        """Click the button that says ``words`` as soon as it can be clicked."""
        self._qtbot.waitUntil(lambda: self._button(words) is not None, timeout=LONG_MS)
        button = self._button(words)
        assert button is not None
        self._click_at(button, button.rect().center() if not _marked(button) else QPoint(9, button.height() // 2))

    def click_in_menu(self, words: str, entry: str) -> None:
        """Open the menu of the button that says ``words``, and click what says ``entry`` in it."""

        def pick() -> None:
            menu = QApplication.activePopupWidget()
            if not isinstance(menu, QMenu):
                QTimer.singleShot(50, pick)
                return
            found = next((one for one in menu.actions() if _plain(one.text()) == entry), None)
            if found is None:
                menu.close()
            else:
                QTest.mouseClick(menu, Qt.MouseButton.LeftButton, pos=menu.actionGeometry(found).center())

        QTimer.singleShot(0, pick)
        self.click(words)

    def go_to_tab(self, words: str) -> None:
        """Click the tab that says ``words``."""
        for bar in self._seen(QTabBar):
            for at in range(bar.count()):
                if _plain(bar.tabText(at)) == words:
                    self._click_at(bar, bar.tabRect(at).center())
                    assert bar.currentIndex() == at
                    return
        raise AssertionError(f"no tab says {words!r}")

    def type_into(self, name: str, text: str) -> None:
        """Click the field called ``name``, write over what stands there, and leave it with the tabulator."""
        field = self._named(QLineEdit, name)
        self._click_at(field, field.rect().center())
        QTest.keySequence(field, QKeySequence(QKeySequence.StandardKey.SelectAll))
        QTest.keyClicks(field, text)
        QTest.keyClick(field, Qt.Key.Key_Tab)
        assert field.text() == text, (field.text(), text)

    def choose(self, name: str, words: str) -> None:
        """Choose the entry ``words`` of the list called ``name`` with the keys, as it drops down."""
        box = self._named(QComboBox, name)
        self._click_at(box, QPoint(box.width() - 8, box.height() // 2))
        row = next(at for at in range(box.count()) if box.itemText(at) == words)
        for key in (Qt.Key.Key_Home, *([Qt.Key.Key_Down] * row), Qt.Key.Key_Return):
            QTest.keyClick(box.view(), key)
        assert box.currentText() == words

    def file(self, path: Path) -> None:
        """Name ``path`` in the desktop's own dialog when it asks next, to be opened or to be written."""

        def chosen(*_: object, **__: object) -> tuple[str, str]:
            kinds = str(_[3]) if len(_) > 3 else ""
            return str(path), next((one for one in kinds.split(";;") if f"*{path.suffix}" in one), kinds)

        for ask in ("getOpenFileName", "getSaveFileName"):
            self._monkeypatch.setattr(QFileDialog, ask, chosen)

    def click_and_answer(self, words: str, answer: Callable[[], None]) -> None:
        """Click what opens a dialog, and do ``answer`` in it."""
        failed: list[BaseException] = []

        def try_to() -> None:
            if QApplication.activeModalWidget() is None:
                QTimer.singleShot(50, try_to)
                return
            try:
                answer()
            except BaseException as fault:  # told by the test itself, not lost in Qt's loop
                failed.append(fault)
                modal = QApplication.activeModalWidget()
                if modal is not None:
                    modal.close()

        self._qtbot.waitUntil(lambda: self._button(words) is not None, timeout=LONG_MS)
        QTimer.singleShot(0, try_to)
        self.click(words)
        if failed:
            raise failed[0]

    def choose_from_menu(self, button: str, entry: str) -> None:
        """Click the button that has a menu, and in the menu the entry that says ``entry``."""
        failed: list[AssertionError] = []

        def pick() -> None:
            menu = QApplication.activePopupWidget()
            if not isinstance(menu, QMenu):
                QTimer.singleShot(50, pick)
                return
            action = next((one for one in menu.actions() if _plain(one.text()) == entry and one.isEnabled()), None)
            if action is None:
                failed.append(AssertionError(f"{entry!r} is none of {[one.text() for one in menu.actions()]}"))
                menu.close()
                return
            QTest.mouseClick(menu, Qt.MouseButton.LeftButton, pos=menu.actionGeometry(action).center())

        QTimer.singleShot(0, pick)
        self.click(button)
        if failed:
            raise failed[0]

    def waits_for_standing(self, place: str, words: str) -> None:
        """Wait until the place of the switcher called ``place`` says that it stands as ``words``."""

        def stands() -> str:
            button = self._button(place)
            return "" if button is None else button.accessibleDescription()

        try:
            self._qtbot.waitUntil(lambda: stands() == words, timeout=LONG_MS)
        except QtBotTimeout as fault:
            raise AssertionError(f"{place} stands as {stands()!r}") from fault

    def enters(self, place: str) -> None:
        """Go to a place by its button in the switcher."""
        self.click(place)

    def sees(self, words: str) -> bool:
        """Say whether a visible text holds ``words``."""
        return any(words in text for text in self.texts())

    def waits_for(self, words: str) -> None:
        """Wait until a visible text holds ``words``."""
        try:
            self._qtbot.waitUntil(lambda: self.sees(words), timeout=LONG_MS)
        except QtBotTimeout as fault:
            raise AssertionError(f"{words!r} is nowhere in {self.texts()}") from fault

    def waits_for_file(self, path: Path) -> bytes:
        """Return what stands in a file as soon as it is written."""
        try:
            self._qtbot.waitUntil(path.exists, timeout=LONG_MS)
        except QtBotTimeout as fault:
            raise AssertionError(f"{path} is not written; in view: {self.texts()[::-1]}") from fault
        return path.read_bytes()

    def texts(self) -> list[str]:
        """Return every visible text that is no button."""
        return [_words(label.text()) for label in self._seen(QLabel)]

    def table(self, name: str) -> list[list[str]]:
        """Return the cells of the table called ``name``, row by row."""
        view = self._named(QAbstractItemView, name)
        model = view.model()
        return [
            [str(model.index(row, column).data() or "") for column in range(model.columnCount())]
            for row in range(model.rowCount())
        ]

    def _button(self, words: str) -> QAbstractButton | None:
        found = [
            button
            for button in self._seen(QAbstractButton)
            if words in {_plain(button.text()), button.accessibleName()} and button.isEnabled()
        ]
        return found[0] if found else None

    def _named(self, kind: type[W], name: str) -> W:
        found = [one for one in self._seen(kind) if one.accessibleName() == name or _label_of(one, self.before) == name]
        assert found, (name, [(one.accessibleName(), _label_of(one, self.before)) for one in self._seen(kind)])
        return found[0]

    def _seen(self, kind: type[W]) -> list[W]:
        return [one for one in self.before.findChildren(kind) if one.isVisible()]

    def _click_at(self, widget: QWidget, point: QPoint) -> None:
        """Click the point of the window at which ``widget`` lies; something else there is what a person would hit."""
        _scroll_to(widget)
        there = widget.mapTo(self.before, point)
        hit = self.before.childAt(there)
        if hit is None or not (hit is widget or widget.isAncestorOf(hit)):
            self.before.grab().save("/tmp/j/covered.png")
        assert hit is not None and (hit is widget or widget.isAncestorOf(hit)), f"{widget} is covered by {hit}"
        QTest.mouseClick(hit, Qt.MouseButton.LeftButton, pos=hit.mapFrom(self.before, there))


def _scroll_to(widget: QWidget) -> None:
    """Turn the wheel of the areas that ``widget`` lies in until it is in view, innermost first."""
    over = widget.parentWidget()
    while over is not None:
        if isinstance(over, QScrollArea):
            over.ensureWidgetVisible(widget)
        over = over.parentWidget()


def _marked(button: QAbstractButton) -> bool:
    return button.isCheckable() and button.width() > 3 * button.height() and type(button).__name__ == "QCheckBox"


def _plain(text: str) -> str:
    """Return the words of a control without the mark of its key."""
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&")


def _words(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def _label_of(widget: QWidget, root: QWidget) -> str:
    """Return what the label says that belongs to a field; empty for none."""
    for label in root.findChildren(QLabel):
        if label.buddy() is widget:
            return _plain(label.text())
    return ""
