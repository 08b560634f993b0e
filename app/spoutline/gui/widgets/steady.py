"""Changes of a layout that wait while a mouse button is down: what is pressed must not move from below the mouse."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtGui import QGuiApplication

_ASK_AGAIN_MS = 20


class SteadyChange(QObject):
    """Does something to a layout, at once or as soon as no mouse button is down; asked for twice, it is done once."""

    def __init__(self, change: Callable[[], None], parent: QObject) -> None:
        super().__init__(parent)
        self._change = change
        self._timer = QTimer(self)
        self._timer.setInterval(_ASK_AGAIN_MS)
        self._timer.timeout.connect(self.ask)

    def ask(self) -> None:
        """Make the change, now or when the mouse is let go."""
        if QGuiApplication.mouseButtons() is not Qt.MouseButton.NoButton:
            self._timer.start()
            return
        self._timer.stop()
        self._change()
