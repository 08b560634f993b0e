"""Faults of the program itself: written down for a report, told plainly, and the window goes on."""

from __future__ import annotations

from pathlib import Path
from types import TracebackType

from spoutline.bootstrap.fault_log import FaultLog
from spoutline.gui.dialogs.fault import FaultDialog
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.wording import tr


class UnexpectedFault:
    """Called for an exception that nobody handled: writes it down, tells the person plainly, and goes on."""

    def __init__(self, window: MainWindow, record: FaultLog) -> None:
        self._window, self._record = window, record
        self._showing = False

    def __call__(self, kind: type[BaseException], fault: BaseException, trace: TracebackType | None) -> None:
        """Handle one exception, as ``sys.excepthook``."""
        if issubclass(kind, KeyboardInterrupt):
            self._window.close()
            return
        self.show(fault)

    def show(self, fault: BaseException) -> None:
        """Write a fault down and show it to the person; a second one meanwhile is written down only."""
        where = self._record.write(fault)
        if self._showing:
            return
        self._showing = True
        try:
            FaultDialog(self._words(where), fault, self._window).exec()
        finally:
            self._showing = False

    def _words(self, where: Path | None) -> str:
        words = tr("The program met a fault of its own and did not finish the last step. Your survey: {state}.").format(
            state=self._window.save_label.text() or tr("not open")
        )
        if where is None:
            return words
        return f"{words} {tr('The details for a report are in {path}.').format(path=where)}"
