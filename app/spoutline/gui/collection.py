"""Collects Python's garbage on the window's thread alone.

The collector runs on whichever thread happens to reach its threshold. On a worker's thread it would take objects of
Qt away there: Qt asks that an object is deleted on the thread it lives on, and its going waits for the lock of Qt's
connections while the worker holds Python's own, so that window and worker can wait for each other for ever.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer

_LOOK_MS = 1_000
FIRST_LOOK_MS = 5_000  # of a window that starts: by then what stays is left out, and a look is short


def leave_out_what_is_there() -> None:
    """Leave what lives until the end (modules, schemas, the catalogue) out of later collections."""
    gc.freeze()


class WindowCollector(QObject):
    """Turns automatic collection off for as long as it lives and collects from Qt's loop instead.

    Each look collects the oldest generation whose count has passed Python's own threshold, as the automatic
    collection would have done.
    """

    def __init__(self, parent: QObject | None = None, first_look_ms: int = _LOOK_MS) -> None:
        super().__init__(parent)
        self._was_on = gc.isenabled()
        gc.disable()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._look_again)
        self._timer.start(first_look_ms)

    def _look_again(self) -> None:
        self._timer.setInterval(_LOOK_MS)
        self.look()

    def look(self) -> None:
        """Collect what is due; called on the window's thread."""
        due = [
            generation
            for generation, (count, threshold) in enumerate(zip(gc.get_count(), gc.get_threshold(), strict=True))
            if threshold and count > threshold
        ]
        if due:
            gc.collect(due[-1])

    def stop(self) -> None:
        """Collect no more here, and let Python do it as before."""
        self._timer.stop()
        if self._was_on:
            gc.enable()
