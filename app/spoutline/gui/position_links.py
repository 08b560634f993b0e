"""Wherever a position is named it leads to the position: by a click on its name, or by Ctrl+Return in its row."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Protocol, runtime_checkable

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, QPoint, Qt
from PySide6.QtGui import QCursor, QKeyEvent
from PySide6.QtWidgets import QLabel, QMenu, QTableView, QTreeView, QWidget

from spoutline.gui.escaping import mnemonic_safe, rich
from spoutline.gui.roles import Role

Index = QModelIndex | QPersistentModelIndex


@runtime_checkable
class PositionLeader(Protocol):
    """A part of the window that brings a position into view; what lies in it asks it."""

    def turn_to_position(self, label: str) -> None:
        """Bring a position into view."""


def lead_to(asker: QWidget, label: str) -> None:
    """Bring a position into view from anywhere in the window; nothing happens where nothing around can lead there."""
    around: QWidget | None = asker
    while around is not None and not isinstance(around, PositionLeader):
        around = around.parentWidget()
    if around is not None:
        around.turn_to_position(label)


def named_in(text: str, labels: Iterable[str]) -> tuple[str, ...]:
    """Return the positions that a text names, in the order of the text.

    A name counts as a whole word, the longest first; one that is a bare number could be any figure and does not count.
    """
    # of a thousand names few stand in a text, and only a pattern of those is made
    held = [label for label in labels if label in text and not label.isdigit()] if text else []
    wanted = sorted(held, key=len, reverse=True)
    if not wanted:
        return ()
    found = re.finditer(rf"(?<!\w)(?:{'|'.join(map(re.escape, wanted))})(?!\w)", text)
    return tuple(dict.fromkeys(one.group() for one in found))


def labels_at(index: Index) -> tuple[str, ...]:
    """Return the positions that a cell names."""
    held = index.data(Role.POSITIONS) if index.isValid() else None
    return tuple(map(str, held)) if isinstance(held, list | tuple) else ()


class PositionLinks(QObject):
    """Lets the cells of a view that name positions lead there; of several a menu asks which."""

    def __init__(self, view: QTableView | QTreeView) -> None:
        super().__init__(view)
        self._view = view
        view.setMouseTracking(True)
        view.entered.connect(self._point)
        view.viewportEntered.connect(self._rest)
        view.clicked.connect(self._click)

    def follows(self, event: QKeyEvent) -> bool:
        """Say whether a key leads to the positions of the current row."""
        is_return = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        modifiers = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        return is_return and modifiers == Qt.KeyboardModifier.ControlModifier and bool(self._in_row())

    def follow(self) -> None:
        """Turn to the position that the current row names."""
        below = self._view.visualRect(self._view.currentIndex()).bottomLeft()
        self._lead(self._in_row(), self._view.viewport().mapToGlobal(below))

    def menu(self, labels: tuple[str, ...]) -> QMenu:
        """Return the menu that asks to which of several positions to turn."""
        menu = QMenu(self._view)
        for label in labels:
            menu.addAction(mnemonic_safe(label)).triggered.connect(lambda _=False, to=label: lead_to(self._view, to))
        return menu

    def _in_row(self) -> tuple[str, ...]:
        here = self._view.currentIndex()
        columns = range(self._view.model().columnCount(here.parent())) if here.isValid() else range(0)
        return next((found for at in columns if (found := labels_at(here.siblingAtColumn(at)))), ())

    def _point(self, index: Index) -> None:
        if labels_at(index):
            self._view.viewport().setCursor(Qt.CursorShape.PointingHandCursor)
        else:
            self._rest()

    def _rest(self) -> None:
        self._view.viewport().unsetCursor()

    def _click(self, index: Index) -> None:
        self._lead(labels_at(index), QCursor.pos())

    def _lead(self, labels: tuple[str, ...], at: QPoint) -> None:
        if len(labels) == 1:
            lead_to(self._view, labels[0])
        elif labels:
            menu = self.menu(labels)
            menu.exec(at)
            menu.deleteLater()


class LinkedText(QLabel):
    """Wrapped text in which the names of positions lead to them, by a click or by Tab and Return."""

    def __init__(self, object_name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName(object_name)
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self._plain = ""
        self.linkActivated.connect(lambda label: lead_to(self, label))

    @property
    def plain(self) -> str:
        """The text without links."""
        return self._plain

    def show_text(self, text: str, labels: Iterable[str] = ()) -> None:
        """Show a text as it is; those of the ``labels`` that it names become links."""
        self._plain = text
        named = named_in(text, labels)
        self.setTextFormat(Qt.TextFormat.RichText if named else Qt.TextFormat.PlainText)
        reads = Qt.TextInteractionFlag.LinksAccessibleByMouse | Qt.TextInteractionFlag.LinksAccessibleByKeyboard
        self.setTextInteractionFlags(reads if named else Qt.TextInteractionFlag.NoTextInteraction)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus if named else Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(text)
        self.setText(_linked(text, named) if named else text)


def _linked(text: str, labels: tuple[str, ...]) -> str:
    wanted = "|".join(map(re.escape, sorted(labels, key=len, reverse=True)))
    parts = re.split(rf"(?<!\w)({wanted})(?!\w)", text)
    return "".join(
        f'<a href="{rich(part)}">{rich(part)}</a>' if at % 2 else rich(part) for at, part in enumerate(parts)
    )
