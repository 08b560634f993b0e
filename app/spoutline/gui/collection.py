"""Collects Python's garbage on the window's thread alone.

The collector runs on whichever thread happens to reach its threshold. On a worker's thread it would take objects of
Qt away there: Qt asks that an object is deleted on the thread it lives on, and its going waits for the lock of Qt's
connections while the worker holds Python's own, so that window and worker can wait for each other for ever.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer

_LOOK_MS = 250  # what a person's steps leave behind in so long is collected within a frame or two of the screen
_STILL_LOOKS = 40  # with next to nothing made: for ten seconds nobody did anything
_MOST_LOOKS = 1_200  # that the oldest wait for a still moment: five minutes
_MIDDLE_LOOKS = 3  # after which the middle goes; after ten, as Python has it, the plans of a big station are felt
_OLDEST = 2  # of Python's three generations
FIRST_LOOK_MS = 5_000  # of a window that starts: by then what stays is left out, and a look is short


def leave_out_what_is_there() -> None:
    """Leave what lives until the end (modules, schemas, the catalogue) out of later collections."""
    gc.freeze()


def _due() -> list[int]:
    """Return the generations whose count has passed their threshold, youngest first."""
    young, middle, oldest = gc.get_threshold()
    counts = enumerate(zip(gc.get_count(), (young, min(middle, _MIDDLE_LOOKS), oldest), strict=True))
    return [generation for generation, (count, threshold) in counts if threshold and count > threshold]


def _collect(due: list[int]) -> None:
    """Collect the oldest of these generations, and with it all younger ones."""
    if due:
        gc.collect(due[-1])


class WindowCollector(QObject):
    """Turns automatic collection off for as long as it lives and collects from Qt's loop instead.

    Each look collects the oldest generation whose count has passed its threshold, as the automatic collection would
    have done, the middle one sooner and in smaller portions. The last generation, which takes longest, waits until
    nobody does anything.
    """

    def __init__(self, parent: QObject | None = None, first_look_ms: int = _LOOK_MS) -> None:
        super().__init__(parent)
        self._was_on = gc.isenabled()
        self._still = self._waited = 0
        gc.disable()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._look_again)
        self._timer.start(first_look_ms)

    def _look_again(self) -> None:
        self._timer.setInterval(_LOOK_MS)
        due = _due()
        self._still = 0 if 0 in due else self._still + 1
        self._waited = self._waited + 1 if _OLDEST in due else 0
        if _OLDEST in due and self._still < _STILL_LOOKS and self._waited < _MOST_LOOKS:
            due.remove(_OLDEST)
        _collect(due)

    def look(self) -> None:
        """Collect all that is due; called on the window's thread."""
        _collect(_due())

    def stop(self) -> None:
        """Collect no more here, and let Python do it as before."""
        self._timer.stop()
        if self._was_on:
            gc.enable()
