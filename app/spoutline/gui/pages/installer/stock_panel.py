"""Van and store: what was counted, taken, received and returned by scanning, what a job takes and what to order."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import partial
from pathlib import Path

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QFormLayout,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.stock import Asked, Job, job_name
from spoutline.documents.own_files import FileForm
from spoutline.documents.pack.stock_paper import StockSheet
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.close_count import CloseCountDialog
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.record_table import Column, RecordTable, SortedRecords
from spoutline.gui.models.stock_rows import line_columns
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.scan_editor import ScanEditor
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.language import Language
from spoutline.model.stock_entry import MOST_PIECES, MOVED, Movement, StockLine, StoredEntry, UncountedLine
from spoutline.units.accepted import UnitSystem

_LINES = JobKey(JobKind.SITE_PLAN, "stock")
_FILE = JobKey(JobKind.FILE, "stock")
_LAST = 50  # entries shown below the scan field


class StockPanel(QWidget):
    """Takes movements from the scan field, which keeps the focus, and shows what then lies where."""

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
        self._job_of = context.session.stored.id
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        splitter.addWidget(self._scan_card(splitter))
        splitter.addWidget(self._lines_card(splitter))
        splitter.setSizes([420, 580])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 0)
        column.addWidget(splitter)

    def _scan_card(self, parent: QWidget) -> Card:
        card = Card(tr("Scan"), parent)
        form = QFormLayout()
        self.place_box = QComboBox(self)
        self.place_box.setEditable(True)
        self.place_box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.movement_box = QComboBox(self)
        words = (tr("Counted"), tr("Received"), tr("Taken"), tr("Returned"))
        for movement, text in zip(MOVED, words, strict=True):
            self.movement_box.addItem(text, movement)
        self.pieces_edit = LineEditor(self)
        self.pieces_edit.setPlaceholderText(tr("as the code says, else 1"))
        self.count_edit = LineEditor(self._today().isoformat(), self)
        self.count_edit.setToolTip(tr("Pieces of one count add up; another name begins anew."))
        self.job_edit = LineEditor(self)
        self.job_edit.setToolTip(tr("Entries of this name belong to one job; what it took already is left out."))
        self.job_edit.editingFinished.connect(self._follow_job)
        self.scan_edit = ScanEditor()
        self.scan_edit.setObjectName("stockScan")
        self.scan_edit.setPlaceholderText(tr("Scan a code or type a part number, then Return"))
        self.scan_edit.returnPressed.connect(self.enter)
        self.movement_box.currentIndexChanged.connect(lambda _: self.scan_edit.setFocus())
        for text, widget in (
            (tr("Van or store"), self.place_box),
            (tr("Movement"), self.movement_box),
            (tr("Pieces"), self.pieces_edit),
            (tr("Count"), self.count_edit),
            (tr("Job"), self.job_edit),
            (tr("Code"), self.scan_edit),
        ):
            widget.setAccessibleName(text)
            form.addRow(text, widget)
        card.body.addLayout(form)
        self.state_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.state_label)
        self.last_model: RecordTable[StoredEntry] = RecordTable(self._entry_columns(), self)
        self.last_table = Table(tr("Last entries"), self, shares=(2, 4, 5, 3), whole=(2,))
        self.last_table.setModel(self.last_model)
        self.last_table.teach(tr("What is scanned comes here; an entry is taken back by another one."))
        card.body.addWidget(self.last_table, 1)
        self.undo_button = QPushButton(tr("Undo the entry"), self)
        self.undo_button.clicked.connect(self.undo)
        self.close_button = QPushButton(tr("Close the count…"), self)
        self.close_button.setToolTip(tr("What was not scanned in it is listed, and counted as none where you say so"))
        self.close_button.clicked.connect(self._ask_to_close)
        row = QHBoxLayout()
        row.addWidget(self.undo_button, 1)
        row.addWidget(self.close_button, 1)
        card.body.addLayout(row)
        return card

    def _entry_columns(self) -> tuple[Column[StoredEntry], ...]:
        return (
            Column(title=tr("No."), text=lambda one: str(one.id), is_number=True),
            Column(title=tr("Movement"), text=self._movement_words),
            Column(title=tr("Part"), text=lambda one: one.entry.part.number, hint=lambda one: str(one.entry.part)),
            Column(title=tr("Pieces"), text=lambda one: str(one.entry.quantity), is_number=True),
        )

    def _movement_words(self, one: StoredEntry) -> str:
        if one.entry.undoes is not None:
            return tr("undoes no. {0}").format(one.entry.undoes)
        shown = self.movement_box.itemText(self.movement_box.findData(one.entry.movement))
        return f"{shown}, {tr('undone')}" if one.is_undone else shown

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
        try:
            self._show_entries()
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        focused = QApplication.focusWidget()
        if focused is None or not self.isAncestorOf(focused):
            self.scan_edit.setFocus()
        self._start_lines()

    def job_name(self) -> str:
        """Return the name of the job in hand: what was typed, else the site."""
        return job_name(self.job_edit.text()) or job_name(self._context.session.survey.site.name)

    def _follow_job(self) -> None:
        if self.job_box.isChecked():
            self._start_lines()

    def _show_entries(self) -> None:
        service = self._context.session.workbench.stock()
        places, last = wait_for(lambda: (service.places(), service.entries(newest=_LAST)))
        typed = self.place_box.currentText()
        with QSignalBlocker(self.place_box):
            self.place_box.clear()
            self.place_box.addItems(places)
            self.place_box.setEditText(typed or next(iter(places), tr("Van")))
        session = self._context.session
        if self._job_of != session.stored.id:  # a job of the survey before is none of this one
            self._job_of = session.stored.id
            self.job_edit.clear()
        self.job_edit.setPlaceholderText(job_name(session.survey.site.name))
        self.last_model.show_records(tuple(reversed(last)))
        self.last_table.fit_columns()

    def _start_lines(self) -> None:
        session = self._context.session
        service, shown = session.workbench.stock(), self._context.sets.whole_site()
        with_job, again, name = self.job_box.isChecked(), self.again_box.isChecked(), self.job_name()
        source = self._spares_source() if with_job and self.spares_box.isChecked() else ""

        def work(ticket: Ticket) -> tuple[StockLine, ...]:
            if not service.places():
                return ()
            if not with_job:
                return service.lines()
            site_plan = shown(ticket)
            spares = service.spares(source, site_plan) if source else {}
            return service.lines((), Job(name=name, site_plan=site_plan, spares=spares, again=again))

        self.take_button.setEnabled(False)
        self.order_button.setEnabled(False)
        self._context.jobs.start(_LINES, work, self._show_lines, self._show_trouble, revision=session.revision)

    def _spares_source(self) -> str:
        """Return where the spares of the job stand: the newest quotation of the survey; empty where there is none."""
        session = self._context.session
        found = wait_for(lambda: session.workbench.quoting().of_survey(session.stored.id))
        if not found:
            self.spares_box.setChecked(False)
            self._notify(tr("The book has no quotation of this survey."))
        return f"quotation:{found[0].id}" if found else ""

    def enter(self) -> None:
        """Add the movement that the fields tell; the scan field is empty and ready for the next code then."""
        service, movement = self._context.session.workbench.stock(), Movement(self.movement_box.currentData())
        is_count = movement is Movement.COUNTED
        try:
            asked = Asked(
                place=self.place_box.currentText(),
                movement=movement,
                code=self.scan_edit.text(),
                quantity=_pieces(self.pieces_edit, tr("Pieces")),
                count=self._count_name() if is_count else "",
                job="" if is_count else self.job_name(),
            )
            entry = wait_for(lambda: service.entry(asked))
            wait_for(lambda: service.add((entry,)))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            self.scan_edit.setFocus()
            self.scan_edit.selectAll()  # the next scan takes its place
            return
        self.scan_edit.clear()
        self.pieces_edit.clear()
        self.scan_edit.setFocus()
        self.state_label.setText(f"{entry.part}: {self.movement_box.currentText()} {entry.quantity}")
        self.refresh()

    def undo(self) -> None:
        """Let the entry picked count no more, by another entry; without one picked the last that counts."""
        picked = self.last_table.current_record()
        if not isinstance(picked, StoredEntry):
            counts = (one for one in self.last_model.records if not one.is_undone and one.entry.undoes is None)
            picked = next(counts, None)
        if picked is None:
            return
        service, number = self._context.session.workbench.stock(), picked.id
        try:
            wait_for(lambda: service.undo(number))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        self.state_label.setText(tr("Entry no. {0} counts no more.").format(number))
        self.scan_edit.setFocus()
        self.refresh()

    def set_level(self) -> None:
        """Say what the place of the line picked keeps of its part."""
        line = self.table.current_record()
        if not isinstance(line, StockLine):
            return
        service, there = self._context.session.workbench.stock(), line.balance
        try:
            least = _pieces(self.least_edit, tr("Keep at least")) or 0
            lot = _pieces(self.lot_edit, tr("Order lot")) or 1
            wait_for(lambda: service.set_level(there.place, str(there.part), least, lot))
        except (InputFault, StoreFault) as fault:
            self.lines_label.setText(told(str(fault)))
            return
        self._start_lines()

    def take(self) -> None:
        """Note what the job takes as taken."""
        session, lines, name = self._context.session, self.model.records, self.job_name()
        service = session.workbench.stock()
        try:
            wait_for(lambda: service.take(lines, name))
        except (InputFault, StoreFault) as fault:
            self.lines_label.setText(told(str(fault)))
            return
        self._notify(tr("Taken for {0}.").format(name))
        self.again_box.setChecked(False)  # a second press takes nothing twice
        self.refresh()

    def _ask_to_close(self) -> None:
        """List what the count did not find; count it as none where the person confirms it."""
        service = self._context.session.workbench.stock()
        place, count = self.place_box.currentText().strip(), self._count_name()
        try:
            lines = wait_for(lambda: service.uncounted(place, count))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        if not lines:
            self.state_label.setText(tr("The count {0} found everything that the book knows of.").format(count))
            return
        dialog = CloseCountDialog(place, count, lines, self)
        is_wanted = bool(dialog.exec())
        dialog.deleteLater()
        if is_wanted:
            self.close_count(place, count, lines)

    def close_count(self, place: str, count: str, lines: tuple[UncountedLine, ...]) -> None:
        """Count as none what a count did not find, as it was seen and confirmed."""
        service = self._context.session.workbench.stock()
        try:
            numbers = wait_for(lambda: service.close_count(place, count, lines))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        self.state_label.setText(tr("The count {0} is closed. Parts counted so: {1}.").format(count, len(numbers)))
        self.scan_edit.setFocus()
        self.refresh()

    def _count_name(self) -> str:
        return self.count_edit.text().strip() or self._today().isoformat()

    def show_orders(self) -> None:
        """Show what is ordered from each supplier of what the lines lack, and write the files."""
        from spoutline.gui.dialogs.supplier_orders import OrderedFrom, SupplierOrdersDialog

        workbench, lines, today = self._context.session.workbench, self.model.records, self._today()
        job = self.job_name() if self.job_box.isChecked() else ""
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
        job, today = self.job_name() if self.job_box.isChecked() else "", self._today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            parts = service.parts([line.balance.part for line in lines])
            sheet = StockSheet(lines=lines, parts=parts, job=job, dated=today)
            story, on_letter = packing.words(language, display).story, display.system is UnitSystem.US
            return service.paper(sheet, story, on_letter=on_letter, form=form)

        return WantedPaper(make=make, stem=self._stem, name=job or tr("At hand"))

    @property
    def _stem(self) -> str:
        name = file_stem(self.job_name()) if self.job_box.isChecked() else "stock"
        return f"{name}-{self._today().isoformat()}"

    def _ask_and_save(self) -> None:
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Save"), f"{self._stem}.{FileForm.CSV}", FileForm.CSV)
        if path is not None:
            self.save_table(path)

    def _show_lines(self, lines: tuple[StockLine, ...]) -> None:
        self.model.show_records(lines)
        self.table.fit_columns()
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


def _pieces(field: LineEditor, name: str) -> int | None:
    """Return the whole number in a field; None for nothing. Raise ``InputFault`` for what is none."""
    text = field.text().strip()
    if not text:
        return None
    if not (text.isascii() and text.isdigit()) or int(text) > MOST_PIECES:
        wanted = tr("a whole number from 0 to {0} is needed").format(MOST_PIECES)
        raise InputFault((InputProblem("", name, repr(text), wanted),))
    return int(text)
