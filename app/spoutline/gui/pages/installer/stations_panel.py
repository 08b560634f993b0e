"""The work due at all stations of the book, overdue first; a row leads to its station and position."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QPushButton, QVBoxLayout, QWidget

from spoutline.documents.own_files import FileForm
from spoutline.documents.pack.inspection_sheet import item_text
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.local_days import day_text
from spoutline.gui.models.record_table import Column, RecordTable, SortedRecords
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.tile_grid import TileGrid
from spoutline.gui.wording import told, tr
from spoutline.model.due_work import DueWork, StationDue
from spoutline.model.inspection import InspectionInterval
from spoutline.model.language import Language
from spoutline.units.accepted import UnitSystem

_DUE = JobKey(JobKind.SITE_PLAN, "all stations")
_FILE = JobKey(JobKind.FILE, "all stations")
_SELDOM = frozenset(InspectionInterval) - {InspectionInterval.DAILY, InspectionInterval.WEEKLY}


class StationsPanel(QWidget):
    """Lists what is due at every station of the book.

    Signals
    -------
    opened(object)
        A person wants to see the station and position of a row, a ``StationDue``.
    """

    opened = Signal(object)

    def __init__(
        self,
        context: Context,
        language: Callable[[], Language],
        notify: Notify,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
    ) -> None:
        super().__init__(parent)
        self._context, self._language, self._notify, self._today = context, language, notify, today
        self._work: DueWork | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 0)
        card = Card(tr("Work due at all stations"), self)
        column.addWidget(card)
        self.state_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.state_label)
        self.seldom_box = QCheckBox(tr("Without daily and weekly looks"), self)
        self.seldom_box.toggled.connect(self.refresh)
        card.body.addWidget(self.seldom_box)
        self.model: RecordTable[StationDue] = RecordTable((), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.model)
        self.table = Table(tr("Work due at all stations"), self, shares=(5, 4, 7, 4, 12, 5))
        self.table.setModel(proxy)
        self.table.teach(tr("Positions with a dated record are counted; a row leads to its station."))
        self.table.setSortingEnabled(True)
        self.table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        self.table.opened.connect(lambda _: self.open_picked())
        card.body.addWidget(self.table, 1)
        tiles = TileGrid(4, self)
        self.open_button = QPushButton(tr("Show &the station"), self)
        self.open_button.clicked.connect(self.open_picked)
        self.table_button = QPushButton(tr("Save a ta&ble…"), self)
        self.table_button.clicked.connect(lambda: self._ask_and_save(FileForm.CSV))
        self.calendar_button = QPushButton(tr("Save a &calendar…"), self)
        self.calendar_button.clicked.connect(lambda: self._ask_and_save(FileForm.ICS))
        self.hands = PaperHands(
            context.session.workbench,
            context.jobs,
            self._wanted,
            key=_FILE,
            tell=notify,
            parent=self,
            refuse=self.state_label.setText,
        )
        for button in (self.open_button, *self.hands.buttons, self.table_button, self.calendar_button):
            tiles.add(button)
        card.body.addWidget(tiles)

    def refresh(self) -> None:
        """Work out what is due at every station."""
        session = self._context.session
        service, today = session.workbench.due_work(), self._today()
        every = _SELDOM if self.seldom_box.isChecked() else frozenset[InspectionInterval]()

        def work(ticket: Ticket) -> DueWork:
            return service.due(today, every=every, progress=ticket)

        self.state_label.setText(tr("Working out what is due…"))
        self._context.jobs.start(_DUE, work, self._show, self._show_trouble)

    def open_picked(self) -> None:
        """Ask for the station and position of the row picked."""
        picked = self.table.current_record()
        if isinstance(picked, StationDue):
            self.opened.emit(picked)

    def turn_to_position(self, label: str) -> None:
        """Turn to the station and position that the current row names: the label alone could be of any station."""
        picked = self.table.current_record()
        if isinstance(picked, StationDue) and picked.due.position == label:
            self.opened.emit(picked)

    def save_as(self, path: Path, form: FileForm) -> None:
        """Write the list as a table or a calendar."""
        work = self._work
        if work is None:
            return
        session, language = self._context.session, self._language()
        service, packing, display = session.workbench.due_work(), session.workbench.packing(), session.display

        def content() -> bytes:
            if form is FileForm.CSV:
                return service.csv(work, packing.words(Language.ENGLISH, display).story)
            return service.calendar(work, packing.words(language, display).story)

        save_aside(self._context, _FILE, path, content, notify=self._notify, refused=self._show_trouble)

    def _ask_and_save(self, form: FileForm) -> None:
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Save"), f"{self._stem}.{form.value}", form)
        if path is not None:
            self.save_as(path, form)

    @property
    def _stem(self) -> str:
        return f"due-{self._today().isoformat()}"

    def _wanted(self) -> WantedPaper | None:
        work = self._work
        if work is None:
            return None
        session, language = self._context.session, self._language()
        service, packing, display = session.workbench.due_work(), session.workbench.packing(), session.display

        def make(_: Ticket, form: PaperForm) -> bytes:
            words = packing.words(language, display)
            return service.paper(work, words, on_letter=display.system is UnitSystem.US, form=form)

        return WantedPaper(make=make, stem=self._stem, name=tr("Work due at all stations"))

    def _show(self, work: DueWork) -> None:
        self._work = work
        session = self._context.session
        story = session.workbench.packing().words(self._language(), session.display).story
        self.model.replace_columns(
            (
                Column(
                    title=tr("Next due"),
                    text=lambda one: day_text(one.due.next_due),
                    sort=lambda one: one.due.next_due.toordinal(),
                ),
                Column(
                    title=tr("Days overdue"),
                    text=lambda one: str(one.overdue_days(work.on) or "–"),
                    sort=lambda one: one.overdue_days(work.on),
                    is_number=True,
                ),
                Column(title=tr("Site"), text=lambda one: one.site.name),
                Column(
                    title=tr("Position"), text=lambda one: one.due.position, positions=lambda one: (one.due.position,)
                ),
                Column(
                    title=tr("What"),
                    text=lambda one: item_text(one.due, story),
                    hint=lambda one: f"{item_text(one.due, story)} {one.due.item.source}",
                ),
                Column(
                    title=tr("Last done"),
                    text=lambda one: day_text(one.due.last_done) if one.due.last_done else "–",
                    sort=lambda one: one.due.last_done.toordinal() if one.due.last_done else 0,
                ),
            )
        )
        self.model.show_records(work.rows)
        self.table.fit_columns()
        told = tr("{0} of {1} are overdue.").format(work.overdue, len(work.rows))
        if work.uncounted:
            left = "; ".join(f"{one.site} ({', '.join(one.positions) or one.told})" for one in work.uncounted[:5])
            more = len(work.uncounted) - 5
            left = f"{left} +{more}" if more > 0 else left
            told = f"{told} {tr('Not counted, without a dated record or a set: {0}').format(left)}"
        self.state_label.setText(told)

    def _show_trouble(self, fault: Exception) -> None:
        self.state_label.setText(told(str(fault)))
