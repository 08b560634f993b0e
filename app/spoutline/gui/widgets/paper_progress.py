"""How far a paper is that takes longer than a moment, over the head of its pages, with a way to stop it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QFrame, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.jobs import JobKey, Jobs
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.wording import tr

_MOMENT_MS = 700  # most papers are there before
_WIDTH_PX = 360
_TOP_PX = 10


class PaperProgress(QFrame):
    """Lies over the upper edge of the pages of the job under ``key``; ``stop`` ends it, ``again`` starts it anew."""

    def __init__(
        self, jobs: Jobs, key: JobKey, stop: Callable[[], None], again: Callable[[], None], parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.setObjectName("notice")
        self._jobs, self._key, self._over = jobs, key, parent
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        self.label = plain_label("", "quiet")
        column.addWidget(self.label)
        self.row = ProgressRow(jobs, key, tr("Making the paper…"), stop, self)
        column.addLayout(self.row)
        self.again_button = QPushButton(tr("Make the paper"), self)
        self.again_button.setAutoDefault(False)
        self.again_button.clicked.connect(lambda _=False: again())
        column.addWidget(self.again_button)
        self._moment = QTimer(self)
        self._moment.setSingleShot(True)
        self._moment.setInterval(_MOMENT_MS)
        self._moment.timeout.connect(self._show_running)
        self.hide()

    def follow(self) -> None:
        """Say that a paper is being made, where it takes longer than a moment."""
        if self.isHidden():
            self._moment.start()
        else:
            self._show_running()

    def end(self) -> None:
        """Say nothing more: the paper is there, or cannot be made."""
        self._moment.stop()
        self.hide()

    def show_stopped(self) -> None:
        """Say that the paper was stopped, and offer to make it."""
        self._show(tr("Stopped."), running=False)

    def place(self) -> None:
        """Lie in the middle of the upper edge of the pages."""
        width = min(_WIDTH_PX, self._over.width() - 2 * _TOP_PX)
        self.setGeometry((self._over.width() - width) // 2, _TOP_PX, width, self.sizeHint().height())

    def _show_running(self) -> None:
        if self._jobs.is_at_work(self._key):
            self._show(tr("Making the paper…"), running=True)

    def _show(self, text: str, *, running: bool) -> None:
        had_keyboard = self.isAncestorOf(self.window().focusWidget() or self.window())
        self.label.setText(text)
        self.again_button.setVisible(not running)
        self.row.show_running(running)
        self.show()
        self.place()
        self.raise_()
        if had_keyboard:
            (self.row.stop_button if running else self.again_button).setFocus()
