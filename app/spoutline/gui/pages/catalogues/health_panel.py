"""What a keeper should look at before an edition is published, matter by matter."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.jobs import Ticket
from spoutline.gui.models.catalogue_rows import health_columns
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.pages.catalogues.chosen import HEALTH, InHand
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import told, tr
from spoutline.model.catalogue_edition import EditionRef
from spoutline.planning.keeping.health import HealthNote


class HealthPanel(QWidget):
    """Asks when a person does: the whole edition is held against the rules of the survey's site.

    Signals
    -------
    entry_wanted(str)
        A person wants to see the entry of this number.
    """

    entry_wanted = Signal(str)

    def __init__(
        self,
        context: Context,
        in_hand: InHand,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
    ) -> None:
        super().__init__(parent)
        self._context, self._in_hand, self._today = context, in_hand, today
        self._told_of: EditionRef | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        row = QHBoxLayout()
        self.state_label = plain_label("", "quiet", wraps=True)
        self.look_button = QPushButton(tr("Look &at its health"), self)
        self.look_button.setObjectName("primary")
        self.look_button.clicked.connect(lambda _=False: self.look())
        row.addWidget(self.state_label, 1)
        row.addWidget(self.look_button)
        column.addLayout(row)
        self.model = RecordTable(health_columns(context.story), self)
        self.sorted = SortedRecords(self)
        self.sorted.setSourceModel(self.model)
        self.table = Table(tr("What to look at"), self, shares=(20, 20, 22, 44))
        self.table.setModel(self.sorted)
        self.table.setSortingEnabled(True)
        self.table.opened.connect(self._open)
        column.addWidget(self.table, 1)

    def refresh(self) -> None:
        """Forget what was told of another edition."""
        row = self._in_hand.row
        self.look_button.setEnabled(row is not None)
        if row is not None and row.ref != self._told_of:
            self._told_of = None
            self.model.show_records(())
            self.state_label.setText(tr("Every part is held against the questions that stations can ask."))

    def look(self) -> None:
        """Hold the edition in hand against the rules and show what to look at."""
        row = self._in_hand.row
        if row is None:
            return
        session, ref, today = self._context.session, row.ref, self._today()
        service, jurisdiction = session.workbench.catalogues(), session.survey.site.jurisdiction

        def work(_: Ticket) -> tuple[HealthNote, ...]:
            return service.health(ref, today, jurisdiction)

        def show(notes: tuple[HealthNote, ...]) -> None:
            self._told_of = ref
            self.model.show_records(notes)
            self.table.sortByColumn(0, self.sorted.sortOrder())
            self.table.fit_columns()
            words = tr("{0} things to look at under the local rules of this site.")
            self.state_label.setText(words.format(len(notes)) if notes else tr("Nothing to look at."))
            self.look_button.setEnabled(True)

        def fail(fault: Exception) -> None:
            self.state_label.setText(told(str(fault)))
            self.look_button.setEnabled(True)

        self.look_button.setEnabled(False)
        self.state_label.setText(tr("Looking…"))
        self._context.jobs.start(HEALTH, work, show, fail)

    def _open(self, note: object) -> None:
        if isinstance(note, HealthNote) and note.ref is not None:
            self.entry_wanted.emit(note.ref.number)
