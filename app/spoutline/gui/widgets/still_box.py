"""Lists of choices and numbers to be turned up and down that the mouse wheel never changes."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QSpinBox, QWidget


class StillBox(QComboBox):
    """A list that the wheel never changes, not even while it has the keyboard.

    A person who scrolls with the mouse over it would give another answer, or show other sets, without noticing.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Qt: leave the wheel to the page."""
        event.ignore()


class StillSpin(QSpinBox):
    """A whole number that arrows and keys turn up and down, and the wheel never."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Qt: leave the wheel to the page."""
        event.ignore()
