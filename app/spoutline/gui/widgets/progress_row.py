"""How far a job is, with a button that stops it; once stopped, one that starts it again, else out of sight."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QWidget

from spoutline.gui.jobs import JobKey, Jobs
from spoutline.gui.wording import tr


class ProgressRow(QHBoxLayout):
    """A bar that follows the job under one key, and *Stop*; ``told`` is what the bar counts.

    With ``again``, the words of a button and what it calls, ``show_stopped`` offers to do what was stopped.
    """

    def __init__(
        self,
        jobs: Jobs,
        key: JobKey,
        told: str,
        stop: Callable[[], None],
        parent: QWidget,
        *,
        again: tuple[str, Callable[[], None]] | None = None,
    ) -> None:
        super().__init__()
        self._key = key
        self.bar = QProgressBar(parent)
        self.bar.setAccessibleName(told)
        self.bar.setTextVisible(False)  # the bar of the theme is too low for words
        self.stop_button = QPushButton(tr("S&top"), parent)
        self.stop_button.setAutoDefault(False)
        self.stop_button.clicked.connect(lambda _=False: stop())
        self.addWidget(self.bar, 1)
        self.addWidget(self.stop_button)
        words, call = again if again is not None else ("", stop)
        self.again_button = QPushButton(words, parent)
        self.again_button.setAutoDefault(False)
        self.again_button.clicked.connect(lambda _=False: call())
        self.again_button.hide()
        self.addWidget(self.again_button)
        jobs.progressed.connect(self._on_progress)

    def show_running(self, running: bool) -> None:
        """Show the row, its end unknown at first, or hide it."""
        had_keyboard = running and self.again_button.hasFocus()
        self.again_button.hide()
        self.bar.setRange(0, 0)
        self.bar.setVisible(running)
        self.stop_button.setVisible(running)
        if had_keyboard:
            self.stop_button.setFocus()

    def show_stopped(self) -> None:
        """Offer to do what was stopped, where there is a way; the keyboard stays where it was."""
        had_keyboard = self.stop_button.hasFocus()
        self.again_button.setVisible(bool(self.again_button.text()))
        self.bar.hide()
        self.stop_button.hide()
        if had_keyboard:
            self.again_button.setFocus()

    def _on_progress(self, key: object, done: int, total: int) -> None:
        if key == self._key and self.bar.isVisible():
            self.bar.setRange(0, total)
            self.bar.setValue(done)
