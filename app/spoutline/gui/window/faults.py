"""Faults of the program itself: written down for a report, told plainly, and the window goes on."""

from __future__ import annotations

import traceback
from pathlib import Path
from types import TracebackType

from PySide6.QtWidgets import QMessageBox

from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.wording import tr


def log_folder() -> Path:
    """Return the folder for the record of unexpected faults."""
    import platformdirs

    return Path(platformdirs.user_log_dir("spoutline", appauthor=False))


class FaultRecord:
    """A text file to which the details of unexpected faults are added."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def write(self, fault: BaseException) -> Path | None:
        """Add one fault and return the file; None where it cannot be written."""
        path = self._folder / "faults.log"
        try:
            self._folder.mkdir(parents=True, exist_ok=True)
            with path.open("a", encoding="utf-8") as stream:
                stream.write("".join(traceback.format_exception(fault)) + "\n")
        except OSError:
            return None
        return path


class UnexpectedFault:
    """Called for an exception that nobody handled: writes it down, tells the person plainly, and goes on."""

    def __init__(self, window: MainWindow, record: FaultRecord) -> None:
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
            QMessageBox.warning(self._window, "Spoutline", self._words(where))
        finally:
            self._showing = False

    def _words(self, where: Path | None) -> str:
        words = tr("The program met a fault of its own and did not finish the last step. Your survey: {state}.").format(
            state=self._window.save_label.text() or tr("not open")
        )
        if where is None:
            return words
        return f"{words} {tr('The details for a report are in {path}.').format(path=where)}"
