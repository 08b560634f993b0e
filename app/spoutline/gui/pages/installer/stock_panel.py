"""Van and store: what was counted, taken, received and returned by scanning, what a job takes and what to order."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.stock import Job
from spoutline.documents.own_files import FileForm
from spoutline.documents.pack.stock_paper import StockSheet
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.models.stock_rows import line_columns
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.installer.scan_card import ScanCard, pieces_in
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.language import Language
from spoutline.model.stock_entry import MOST_PIECES, StockLine
from spoutline.units.accepted import UnitSystem

_LINES = JobKey(JobKind.SITE_PLAN, "stock")
_FILE = JobKey(JobKind.FILE, "stock")


class StockPanel(QWidget):
    """Shows what lies where, what a job takes and what is to be ordered, beside the card that scans movements."""

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
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        self.scan = ScanCard(context, today, splitter)
        self.scan.entered.connect(self.refresh)
        self.scan.job_renamed.connect(self._follow_job)
        splitter.addWidget(self.scan)
        splitter.addWidget(self._lines_card(splitter))
        splitter.setSizes([420, 580])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 0)
        column.addWidget(splitter)

    def _lines_card(self, parent: QWidget) -> Card:
        card = Card(tr("At hand"), parent)
        self.job_box = QCheckBox(tr("With what the job of this survey takes"), self)
        self.job_box.toggled.connect(self.refresh)
        card.body.addWidget(self.job_box)
        self.spares_box = QCheckBox(tr("And the spares of its quotation"), self)
        self.again_box = QCheckBox(tr("Once more, whatever was taken already"), self)
        for box in (self.spares_box, self.again_box):
            box.toggled.connect(self._start_lines)
            box.setEnabled(False)
            self.job_box.toggled.connect(box.setEnabled)
            card.body.addWidget(box)
        self.lines_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.lines_label)
        self.model: RecordTable[StockLine] = RecordTable(line_columns(), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.model)
        self.table = Table(tr("At hand"), self, shares=(3, 5, 3, 3, 3, 3, 3, 4), whole=(1,))
        self.table.setModel(proxy)
        self.table.teach(tr("Parts that were scanned at a van or store are listed here."))
        self.table.setSortingEnabled(True)
        self.table.picked.connect(lambda _: self._show_level())
        card.body.addWidget(self.table, 1)
        card.body.addLayout(self._level_row())
        self.take_button = QPushButton(tr("Take for this job"), self)
        self.take_button.clicked.connect(self.take)
        self.hands = PaperHands(
            self._context.session.workbench,
            self._context.jobs,
            self._wanted,
            key=_FILE,
            tell=self._notify,
            parent=self,
            refuse=self.lines_label.setText,
        )
        self.table_button = QPushButton(tr("Save a ta&ble…"), self)
        self.table_button.clicked.connect(self._ask_and_save)
        self.order_button = QPushButton(tr("Order…"), self)
        self.order_button.setToolTip(tr("Orders by supplier of what is to be ordered, as each supplier reads them"))
        self.order_button.clicked.connect(self.show_orders)
        paper = self.hands.menu_button(tr("Paper (P&DF)"), tr("What lies where, as a paper"))
        grid = QGridLayout()  # in two rows: there is no room for one in every language
        for place, button in enumerate((self.take_button, paper, self.table_button, self.order_button)):
            grid.addWidget(button, place // 2, place % 2)
        card.body.addLayout(grid)
        return card

    def _level_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.least_edit, self.lot_edit = LineEditor(self), LineEditor(self)
        for field, words in ((self.least_edit, tr("Keep at least")), (self.lot_edit, tr("Order lot"))):
            field.setAccessibleName(words)
            field.setMaxLength(len(str(MOST_PIECES)))
            row.addWidget(plain_label(words, "quiet"))
            row.addWidget(field)
        self.level_button = QPushButton(tr("Set for the part"), self)
        self.level_button.clicked.connect(self.set_level)
        row.addWidget(self.level_button)
        return row

    def refresh(self) -> None:
        """Show places, last entries and lines; the focus goes to the scan field unless it is in the panel already."""
        if not self.scan.refresh():
            return
        focused = QApplication.focusWidget()
        if focused is None or not self.isAncestorOf(focused):
            self.scan.scan_edit.setFocus()
        self._start_lines()

    def _follow_job(self) -> None:
        if self.job_box.isChecked():
            self._start_lines()

    def _start_lines(self) -> None:
        session = self._context.session
        service, shown = session.workbench.stock(), self._context.sets.whole_site(with_alternatives=False)
        with_job, again, name = self.job_box.isChecked(), self.again_box.isChecked(), self.scan.job_name()
        source = self._spares_source() if with_job and self.spares_box.isChecked() else ""

        def work(ticket: Ticket) -> tuple[StockLine, ...] | None:
            if not service.places():
                return None
            if not with_job:
                return service.lines()
            site_plan = shown(ticket)
            spares = service.spares(source, site_plan) if source else {}
            return service.lines((), Job(name=name, site_plan=site_plan, spares=spares, again=again))

        self.take_button.setEnabled(False)
        self.order_button.setEnabled(False)
        self._context.jobs.start(_LINES, work, self._show_lines, self._show_trouble)

    def _spares_source(self) -> str:
        """Return where the spares of the job stand: its quotation; empty where there is none."""
        session = self._context.session
        found = wait_for(lambda: session.workbench.quoting().life().of_job(session.stored.id))
        if found is None:
            self.spares_box.setChecked(False)
            self._notify(tr("The book has no quotation of this survey."))
        return "" if found is None else f"quotation:{found.id}"

    def set_level(self) -> None:
        """Say what the place of the line picked keeps of its part."""
        line = self.table.current_record()
        if not isinstance(line, StockLine):
            return
        service, there = self._context.session.workbench.stock(), line.balance
        try:
            least = pieces_in(self.least_edit, tr("Keep at least")) or 0
            lot = pieces_in(self.lot_edit, tr("Order lot")) or 1
            wait_for(lambda: service.set_level(there.place, str(there.part), least, lot))
        except (InputFault, StoreFault) as fault:
            self.lines_label.setText(told(str(fault)))
            return
        self._start_lines()

    def take(self) -> None:
        """Note what the job takes as taken."""
        session, lines, name = self._context.session, self.model.records, self.scan.job_name()
        service = session.workbench.stock()
        try:
            wait_for(lambda: service.take(lines, name))
        except (InputFault, StoreFault) as fault:
            self.lines_label.setText(told(str(fault)))
            return
        self._notify(tr("Taken for {0}.").format(name))
        self.again_box.setChecked(False)  # a second press takes nothing twice
        self.refresh()

    def show_orders(self) -> None:
        """Show what is ordered from each supplier of what the lines lack, and write the files."""
        from spoutline.gui.dialogs.supplier_orders import OrderedFrom, SupplierOrdersDialog

        workbench, lines, today = self._context.session.workbench, self.model.records, self._today()
        job = self.scan.job_name() if self.job_box.isChecked() else ""
        try:
            made = wait_for(lambda: workbench.stock_orders().order(lines, number="", dated=today, site=job))
        except (InputFault, StoreFault) as fault:
            self.lines_label.setText(told(str(fault)))
            return
        if made.left_out:
            left = ", ".join(str(ref) for ref in made.left_out)
            self._notify(tr("Not in the catalog and in no order file: {0}").format(left))
        if not made.lines:
            return
        ordered = OrderedFrom(made.head.site, made.lines, made.head)
        dialog = SupplierOrdersDialog(workbench.supplier_orders(), ordered, workbench.files_in_use, self)
        dialog.exec()
        dialog.deleteLater()

    def save_table(self, path: Path) -> None:
        """Write the lines shown as a table."""
        service, lines = self._context.session.workbench.stock(), self.model.records
        content, trouble = partial(service.csv, lines), self._show_trouble
        save_aside(self._context, _FILE, path, content, notify=self._notify, refused=trouble)

    def _wanted(self) -> WantedPaper | None:
        session, language, lines = self._context.session, self._language(), self.model.records
        service, packing, display = session.workbench.stock(), session.workbench.packing(), session.display
        job, today = self.scan.job_name() if self.job_box.isChecked() else "", self._today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            parts = service.parts([line.balance.part for line in lines])
            sheet = StockSheet(lines=lines, parts=parts, job=job, dated=today)
            story, on_letter = packing.words(language, display).story, display.system is UnitSystem.US
            return service.paper(sheet, story, on_letter=on_letter, form=form)

        return WantedPaper(make=make, stem=self._stem, name=job or tr("At hand"))

    @property
    def _stem(self) -> str:
        name = file_stem(self.scan.job_name()) if self.job_box.isChecked() else "stock"
        return f"{name}-{self._today().isoformat()}"

    def _ask_and_save(self) -> None:
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Save"), f"{self._stem}.{FileForm.CSV}", FileForm.CSV)
        if path is not None:
            self.save_table(path)

    def _show_lines(self, found: tuple[StockLine, ...] | None) -> None:
        lines = found or ()
        self.model.show_records(lines)
        self.table.fit_columns()
        if found is None:  # nothing is known to be at hand or short where no place is known
            self.lines_label.setText(tr("No van and no store is known yet: count or receive something first."))
            return
        short, ordered = sum(line.short for line in lines), sum(line.order for line in lines)
        words = tr("Pieces short: {0}. Pieces to order: {1}.").format(short, ordered)
        by_part = {line.balance.part: line for line in lines}.values()
        if taken := sum(line.taken for line in by_part):
            words = f"{words} {tr('Taken already: {0}.').format(taken)}"
        if too_many := sum(line.too_many for line in by_part):
            words = f"{words} {tr('Taken and not needed, to bring back: {0}.').format(too_many)}"
        self.lines_label.setText(words)
        self.take_button.setEnabled(any(line.takes for line in lines))
        self.order_button.setEnabled(ordered > 0)

    def _show_level(self) -> None:
        line = self.table.current_record()
        level = line.balance.level if isinstance(line, StockLine) else None
        self.least_edit.setText(str(level.least) if level is not None else "")
        self.lot_edit.setText(str(level.lot) if level is not None else "")

    def _show_trouble(self, fault: Exception) -> None:
        self.lines_label.setText(told(str(fault)))
