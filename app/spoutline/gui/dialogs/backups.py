"""The backups of the book: what is kept, one more now, or one put back in the book's place."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QPushButton, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.local_days import moment_text
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault

if TYPE_CHECKING:
    from spoutline.book.backups import Backup, Restored
    from spoutline.bootstrap.backups import KeepingService

_REASONS = {
    "daily": "of the day",
    "asked": "asked for",
    "before-migration": "before the tables were changed",
    "before-restore": "before a restore",
}


class BackupsDialog(FormDialog):
    """Lists the backups. ``restored`` holds what was put back, where something was.

    ``may_restore`` is asked before the book is replaced: what is unsaved in the window would not be in the backup.
    """

    help_topic = "book"

    def __init__(
        self,
        keeping: KeepingService,
        may_restore: Callable[[], bool] = lambda: True,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("Backups of the book"), parent)
        self._keeping, self._may_restore = keeping, may_restore
        self.restored: Restored | None = None
        self.place_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.place_label)
        self.model: RecordTable[Backup] = RecordTable(_columns(), self)
        self.table = Table(tr("Backups of the book"), self, stretch=1)
        self.table.setModel(self.model)
        self.body.addWidget(self.table, 1)
        kept = tr(
            "Each was opened and read through when it was made. Kept: seven days, four weeks, those before changes, "
            "and those that were asked for."
        )
        self.body.addWidget(plain_label(kept, "quiet", wraps=True))
        self.make_button = QPushButton(tr("&Back up now"), self)
        self.restore_button = QPushButton(tr("&Restore…"), self)
        self.other_button = QPushButton(tr("Restore from a &file…"), self)
        self.make_button.clicked.connect(self._make)
        self.restore_button.clicked.connect(self._restore_marked)
        self.other_button.clicked.connect(self._ask_file)
        self.add_close()
        for button in (self.make_button, self.other_button, self.restore_button):
            button.setAutoDefault(False)
            self.foot.insertWidget(self.foot.count() - 1, button)
        self.resize(720, 420)
        self._refresh()

    def restore(self, path: Path | None) -> None:
        """Ask, then put a backup in the book's place; None takes the newest sound one."""
        question = tr(
            "Put this backup in the place of the book? What was saved after it is then no longer in the book. What "
            "lies there now is set aside beside it and can be put back."
        )
        if not self._may_restore() or not self.is_sure(question):
            return
        try:
            self.restored = wait_for(lambda: self._keeping.restore(path))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.accept()

    def _refresh(self) -> None:
        try:
            self.place_label.setText(str(self._keeping.book_file()))
            self.model.show_records(wait_for(self._keeping.backups))
        except (InputFault, StoreFault) as fault:  # a server keeps its own
            words = "\n".join(one.wanted for one in fault.problems) if isinstance(fault, InputFault) else str(fault)
            self.place_label.setText(words)
            for button in (self.make_button, self.restore_button, self.other_button):
                button.setEnabled(False)
            return
        self.table.fit_columns()
        self.restore_button.setEnabled(bool(self.model.records))
        if self.model.records:
            self.table.selectRow(0)

    def _make(self) -> None:
        self.show_fault("")
        try:
            wait_for(self._keeping.back_up)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
        self._refresh()

    def _restore_marked(self) -> None:
        marked = self.table.current_record()
        self.restore(getattr(marked, "path", None))

    def _ask_file(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr("Restore from a file"), "", "SQLite (*.sqlite3);;*")
        if path:
            self.restore(Path(path))


def _columns() -> tuple[Column[Backup], ...]:
    return (
        Column(
            title=tr("Made"),
            text=lambda one: moment_text(one.made_at),
            sort=lambda one: one.made_at.timestamp(),
            hint=lambda one: str(one.path),
        ),
        Column(title=tr("Why"), text=lambda one: tr(_REASONS[one.reason.value])),
        Column(
            title=tr("Size"),
            text=lambda one: f"{one.size_bytes / 2**20:.1f} MiB",
            sort=lambda one: one.size_bytes,
            is_number=True,
        ),
    )
