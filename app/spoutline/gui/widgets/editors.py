"""Text editors that leave undo and redo to the survey when they have no typing of their own to take back."""

from __future__ import annotations

from PySide6.QtCore import QEvent
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit


def _asks_for(event: QEvent, key: QKeySequence.StandardKey) -> bool:
    is_override = event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent)
    return is_override and event.matches(key)  # type: ignore[attr-defined]


class LineEditor(QLineEdit):
    """One line of text."""

    def event(self, event: QEvent) -> bool:
        """Qt: claim the keys of undo and redo only while there is typing to take back."""
        undo, redo = QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo
        if (_asks_for(event, undo) and not self.isUndoAvailable()) or (
            _asks_for(event, redo) and not self.isRedoAvailable()
        ):
            event.ignore()
            return False
        return super().event(event)

    def show_text(self, text: str) -> None:
        """Show a text that is not of a person's typing; there is nothing to take back then."""
        if self.text() != text or self.isUndoAvailable():
            self.setText(text)


class PageEditor(QPlainTextEdit):
    """Several lines of text; Tab leaves it."""

    def __init__(self) -> None:
        super().__init__()
        self.setTabChangesFocus(True)

    def event(self, event: QEvent) -> bool:
        """Qt: claim the keys of undo and redo only while there is typing to take back."""
        undo, redo = QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo
        document = self.document()
        if (_asks_for(event, undo) and not document.isUndoAvailable()) or (
            _asks_for(event, redo) and not document.isRedoAvailable()
        ):
            event.ignore()
            return False
        return super().event(event)

    def show_text(self, text: str) -> None:
        """Show a text that is not of a person's typing; there is nothing to take back then."""
        if self.toPlainText() != text or self.document().isUndoAvailable():
            self.setPlainText(text)
