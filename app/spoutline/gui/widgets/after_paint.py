"""Does something once a widget is on the screen."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QWidget

_LONGEST_MS = 200  # a widget that nobody sees is never painted


class AfterPaint(QObject):
    """Calls something once, when a widget was painted with all in it, or soon where it is not painted."""

    def __init__(self, widget: QWidget, call: Callable[[], None]) -> None:
        super().__init__(widget)
        self._call = call
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._end)
        self._timer.start(_LONGEST_MS)
        widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Qt: note the paint; nothing is kept from anybody."""
        if event.type() is QEvent.Type.Paint:
            watched.removeEventFilter(self)
            self._timer.start(0)  # what lies in the widget is painted before the next turn of the loop
        return False

    def _end(self) -> None:
        self._call()
        self.deleteLater()
