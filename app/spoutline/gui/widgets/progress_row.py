"""How far a job is, with a button that stops it; out of sight while none runs."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QWidget

from spoutline.gui.jobs import JobKey, Jobs
from spoutline.gui.wording import tr


class ProgressRow(QHBoxLayout):
    """A bar that follows the job under one key, and *Stop*; ``told`` is what the bar counts."""

    def __init__(self, jobs: Jobs, key: JobKey, told: str, stop: Callable[[], None], parent: QWidget) -> None:
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
        jobs.progressed.connect(self._on_progress)

    def show_running(self, running: bool) -> None:
        """Show the row, its end unknown at first, or hide it."""
        self.bar.setRange(0, 0)
        self.bar.setVisible(running)
        self.stop_button.setVisible(running)

    def _on_progress(self, key: object, done: int, total: int) -> None:
        if key == self._key and self.bar.isVisible():
            self.bar.setRange(0, total)
            self.bar.setValue(done)
