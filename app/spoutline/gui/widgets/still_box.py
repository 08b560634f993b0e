"""A list of choices that stands in a page which is scrolled."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QWidget


class StillBox(QComboBox):
    """A list that the wheel never changes, not even while it has the keyboard.

    A person who scrolls the page with the mouse over it would give another answer without noticing.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Qt: leave the wheel to the page."""
        event.ignore()
