"""The quotations in the book: found by words, and those that a change of catalogue or price lists touches."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from spoutline.book.quotation_records import QuotationEntry
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.quotation_columns import TouchedQuotation, entry_columns, touched_nodes
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.pages.context import Context
from spoutline.gui.roles import Role
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.faults import ReadOnlyStore
from spoutline.model.quotation_status import QuotationStatus

_ENTRIES = JobKey(JobKind.QUOTATION, "entries")
_FILE = JobKey(JobKind.FILE, "quotation list")
_TOUCHED = JobKey(JobKind.QUOTATION, "touched")

Listed = tuple[tuple[int, ...], tuple[QuotationEntry, ...]]


class BookPanel(QWidget):
    """Reads the book off the window's thread.

    Signals
    -------
    wanted(int)
        A person wants to look at the quotation of this id.
    anew_wanted(object)
        A person wants to quote this ``StoredQuotation`` again, on its own terms.
    touched_told()
        What a change touches is known anew; see ``touched``.
    expired(object)
        The ids of quotations that have just expired.
    """

    wanted = Signal(int)
    anew_wanted = Signal(object)
    touched_told = Signal()
    expired = Signal(object)

    def __init__(self, context: Context, today: Callable[[], date], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._today = context, today
        self.touched: tuple[TouchedQuotation, ...] = ()
        self._is_free = True
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        self.search_edit = QLineEdit(self)
        self.search_edit.setAccessibleName(tr("Search quotations"))
        self.search_edit.setPlaceholderText(tr("Number, customer, site or part"))
        self.search_edit.setClearButtonEnabled(True)
        self.search_edit.textChanged.connect(lambda _: self.fetch())
        row = QHBoxLayout()
        row.addWidget(self.search_edit, 1)
        self.status_box = StillBox(self)
        self.status_box.setAccessibleName(tr("Show quotations of this status"))
        self.status_box.addItem(tr("every status"), None)
        for status in QuotationStatus:
            self.status_box.addItem(context.story.title(status), status)
        self.status_box.currentIndexChanged.connect(lambda _: self.fetch())
        row.addWidget(self.status_box)
        self.due_box = QCheckBox(tr("to follow up b&y today"), self)
        self.due_box.setToolTip(tr("Show those alone whose customer is to be asked again by today"))
        self.due_box.toggled.connect(lambda _: self.fetch())
        row.addWidget(self.due_box)
        column.addLayout(row)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.hands = PaperHands(
            context.session.workbench,
            context.jobs,
            self._wanted,
            key=_FILE,
            tell=self.state_label.setText,
            parent=self,
        )
        hint = tr("The list as it stands here, as a paper; with its margins it is internal")
        told_row = QHBoxLayout()
        told_row.addWidget(self.state_label, 1)
        told_row.addWidget(self.hands.menu_button(tr("List as a paper"), hint))
        column.addLayout(told_row)
        column.addWidget(self._list(), 1)
        column.addLayout(self._touched_head())
        self.touched_model = NodeTree((tr("Quotation and part"), tr("What happened")), self)
        self.touched_tree = Tree(tr("Quotations that a change touches"), self, shares=(4, 5))
        self.touched_tree.setModel(self.touched_model)
        self.touched_tree.setExpandsOnDoubleClick(False)
        self.touched_tree.opened.connect(self._open_touched)
        self.touched_tree.picked.connect(lambda _: self._enable())
        self.touched_tree.hide()
        column.addWidget(self.touched_tree, 1)

    def entries_in_view(self) -> tuple[QuotationEntry, ...]:
        """Return the quotations that the list shows, in its order."""
        model = self.entry_table.model()
        records = (model.index(row, 0).data(Role.RECORD) for row in range(model.rowCount()))
        return tuple(one for one in records if isinstance(one, QuotationEntry))

    def _wanted(self) -> WantedPaper:
        """Return the list in the order in view."""
        session, today, entries = self._context.session, self._today(), self.entries_in_view()
        lists, display = session.workbench.book_lists(), session.display

        def make(_: Ticket, form: PaperForm) -> bytes:
            return lists.quotations(entries, display, today, form)

        return WantedPaper(make=make, stem=f"quotations-{today.isoformat()}", name=tr("Quotations in the book"))

    def refresh(self) -> None:
        """Let those expire whose last day is over, show the list, and ask what a change touches."""
        self.fetch(expire=True)
        self.check_touched()

    def fetch(self, *, expire: bool = False) -> None:
        """Show the quotations that hold the words searched for."""
        service, text, today = self._context.session.workbench.quoting(), self.search_edit.text(), self._today()
        chosen = self.status_box.currentData()
        status = None if chosen is None else QuotationStatus(chosen)
        due_by = today if self.due_box.isChecked() else None

        def work(_: Ticket) -> Listed:
            over: tuple[int, ...] = ()
            if expire:
                with suppress(ReadOnlyStore):  # who only reads sees the list as it is
                    over = service.life().expire(today)
            return over, service.life().quotations(text, status, due_by)

        self._context.jobs.start(
            _ENTRIES, work, self._show_entries, lambda fault: self.state_label.setText(told(str(fault)))
        )

    def check_touched(self, *, read_lists: bool = False) -> None:
        """Ask which open quotations a change touches; ``read_lists`` reads the price lists anew before that."""
        service, today = self._context.session.workbench.quoting(), self._today()

        def work(_: Ticket) -> tuple[TouchedQuotation, ...]:
            if read_lists:
                service.terms().forget_price_lists()
            return tuple(TouchedQuotation(stored, parts) for stored, parts in service.life().touched(today))

        self.touched_label.setText(tr("Reading the open quotations…"))
        self.check_button.setEnabled(False)
        self._context.jobs.start(_TOUCHED, work, self._show_touched, self._fail_touched)

    def allow(self, is_free: bool) -> None:
        """Let quotations be opened, or not: not while a step is being taken."""
        self._is_free = is_free
        self.entry_table.setEnabled(is_free)
        self.touched_tree.setEnabled(is_free)
        self._enable()

    def _list(self) -> Table:
        self.entries: RecordTable[QuotationEntry] = RecordTable((), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.entries)
        # number, status, total and days are never cut; beside the paper there is no room for all the others
        shares, whole, gives_way = (5, 5, 5, 4, 6, 5, 6, 6, 6), (0, 1, 4, 6, 8), (7, 3, 5)
        self.entry_table = Table(tr("Quotations in the book"), self, shares=shares, whole=whole, gives_way=gives_way)
        self.entry_table.setModel(proxy)
        self.entry_table.teach(tr("Quotations that are saved in the book come here, whichever station they are for."))
        self.entry_table.setSortingEnabled(True)
        self.entry_table.sortByColumn(-1, Qt.SortOrder.AscendingOrder)
        self.entry_table.opened.connect(self._open_entry)
        return self.entry_table

    def _touched_head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.touched_label = plain_label("", "quiet", wraps=True)
        self.check_button = QPushButton(tr("Check again"), self)
        self.check_button.setToolTip(tr("Read the price lists and the open quotations anew"))
        self.check_button.clicked.connect(lambda _=False: self.check_touched(read_lists=True))
        self.anew_button = QPushButton(tr("Re&quote it"), self)
        self.anew_button.setToolTip(tr("Quote the marked quotation again: its own survey and terms, prices of today"))
        self.anew_button.clicked.connect(self._quote_anew)
        self.anew_button.hide()
        row.addWidget(self.touched_label, 1)
        row.addWidget(self.check_button)
        row.addWidget(self.anew_button)
        return row

    def _show_entries(self, listed: Listed) -> None:
        over, entries = listed
        before = self.entry_table.current_record()
        self.entries.replace_columns(entry_columns(self._context.story))
        self.entries.show_records(entries)
        self.entry_table.fit_columns()
        if isinstance(before, QuotationEntry):
            self._pick(before.id)
        words = tr("{0} quotations") if len(entries) != 1 else tr("{0} quotation")
        self.state_label.setText(f"{words.format(len(entries))}; {tr('Return or a double click opens one')}")
        if over:
            self.expired.emit(over)

    def _pick(self, quotation_id: int) -> None:
        """Keep the same quotation marked after the list was read anew."""
        model = self.entry_table.model()
        for row in range(model.rowCount()):
            record = model.index(row, 0).data(Role.RECORD)
            if isinstance(record, QuotationEntry) and record.id == quotation_id:
                self.entry_table.pick_row(row)
                return

    def _show_touched(self, touched: tuple[TouchedQuotation, ...]) -> None:
        self.touched = touched
        self.check_button.setEnabled(True)
        self.touched_model.show_nodes(touched_nodes(touched, self._context.story))
        self.touched_tree.setVisible(bool(touched))
        self.anew_button.setVisible(bool(touched))
        self.touched_tree.expandAll()
        if touched:
            self.touched_tree.pick(self.touched_model.index(0, 0))
        words = tr("{0} open quotations are touched by a change of catalog or price lists:")
        if len(touched) == 1:
            words = tr("{0} open quotation is touched by a change of catalog or price lists:")
        none = tr("No open quotation is touched by a change of catalog or price lists.")
        self.touched_label.setText(words.format(len(touched)) if touched else none)
        self._enable()
        self.touched_told.emit()

    def _fail_touched(self, fault: Exception) -> None:
        self.check_button.setEnabled(True)
        self.touched_label.setText(told(str(fault)))

    def _marked(self) -> TouchedQuotation | None:
        record = self.touched_tree.current_record()
        return record if isinstance(record, TouchedQuotation) else None

    def _enable(self) -> None:
        self.anew_button.setEnabled(self._is_free and self._marked() is not None)

    def _open_entry(self, record: object) -> None:
        if isinstance(record, QuotationEntry):
            self.wanted.emit(record.id)

    def _open_touched(self, record: object) -> None:
        if isinstance(record, TouchedQuotation):
            self.wanted.emit(record.stored.id)

    def _quote_anew(self) -> None:
        marked = self._marked()
        if marked is not None:
            self.anew_wanted.emit(marked.stored)
