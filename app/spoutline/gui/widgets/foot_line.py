"""The line at the foot of the window: what always stands there, and in its place what was done last."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleEvent
from PySide6.QtWidgets import QWidget

from spoutline.gui.widgets.roomy_scroll import ElidedLabel

_EDGE_PX = 8


class FootLine(ElidedLabel):
    """Tells in one line, over no control, that something was done; a text too long for the line goes elsewhere."""

    def __init__(self, standing: str, parent: QWidget | None = None) -> None:
        super().__init__(standing, parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self._standing = standing
        self._told = ""

    @property
    def told(self) -> str:
        """What was told last; empty where the standing words are in view."""
        return self._told

    def tell(self, text: str) -> bool:
        """Show ``text`` where the line has room for all of it, and say whether it has."""
        if "\n" in text or self.fontMetrics().horizontalAdvance(text) > self.width() - _EDGE_PX:
            return False
        self._told = text
        self._show(text)
        QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.Alert))
        return True

    def clear_told(self) -> None:
        """Show the standing words again."""
        if self._told:
            self._told = ""
            self._show(self._standing)

    def _show(self, text: str) -> None:
        self.setText(text)
        self.setToolTip(text)
        self.setAccessibleName(text)
