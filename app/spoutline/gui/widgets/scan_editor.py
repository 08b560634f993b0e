"""A line that a scanner types into as if it were a keyboard: what it sends between fields of a code stays in sight."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from spoutline.gui.widgets.editors import LineEditor
from spoutline.model.scanned_item import LONGEST_CODE, SEPARATOR, SHOWN_SEPARATOR


class ScanEditor(LineEditor):
    """A line for scanned codes.

    Scanners send the group separator of a code as that character or as Ctrl with the closing bracket, which a line of
    text drops; its picture stands in its place.
    """

    def __init__(self) -> None:
        super().__init__()
        self.setMaxLength(LONGEST_CODE)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: keep the group separator."""
        is_bracket = event.key() == Qt.Key.Key_BracketRight
        with_control = event.modifiers() == Qt.KeyboardModifier.ControlModifier
        if event.text() == SEPARATOR or (is_bracket and with_control):
            self.insert(SHOWN_SEPARATOR)
            return
        super().keyPressEvent(event)
