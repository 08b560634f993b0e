"""The line in the head of a page that says which sets it shows."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QWidget

from spoutline.gui.pages.context import Context
from spoutline.gui.session import Changed
from spoutline.gui.wording import tr


class SetsHead(QLabel):
    """Follows the choice of sets of the whole window."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self.setObjectName("quiet")
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        context.sets.changed.connect(self.refresh)
        context.sets.updated.connect(self._on_updated)
        context.session.changed.connect(self._on_changed)
        self.refresh()

    def refresh(self) -> None:
        """Say which sets are shown."""
        words = tr("Sets: {0}").format(self._context.sets.head(self._context.story))
        if words != self.text():
            self.setText(words)

    def _on_updated(self, label: str) -> None:
        if label == self._context.session.label:
            self.refresh()

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.UNITS:
            self.refresh()
