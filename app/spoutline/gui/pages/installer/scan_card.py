"""The scan field of van and store: movements of parts entered code by code, the last of them, and counts closed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QPushButton,
    QWidget,
)

from spoutline.bootstrap.stock import Asked, job_name
from spoutline.gui.dialogs.close_count import CloseCountDialog
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.pages.context import Context
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.scan_editor import ScanEditor
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.stock_entry import MOST_PIECES, MOVED, Movement, StoredEntry, UncountedLine

_LAST = 50  # entries shown below the scan field


class ScanCard(Card):
    """Takes movements from the scan field, which keeps the focus.

    Signals
    -------
    entered()
        The book holds another entry.
    job_renamed()
        The job in hand has another name.
    """

    entered = Signal()
    job_renamed = Signal()

    def __init__(self, context: Context, today: Callable[[], date], parent: QWidget) -> None:
        super().__init__(tr("Scan"), parent)
        self._context, self._today = context, today
        self._job_of = context.session.stored.id
        form = QFormLayout()
        self.place_box = StillBox(self)
        self.place_box.setEditable(True)
        self.place_box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.movement_box = StillBox(self)
        words = (tr("Counted"), tr("Received"), tr("Taken"), tr("Returned"))
        for movement, text in zip(MOVED, words, strict=True):
            self.movement_box.addItem(text, movement)
        self.pieces_edit = LineEditor(self)
        self.pieces_edit.setPlaceholderText(tr("as the code says, else 1"))
        self.count_edit = LineEditor(self._today().isoformat(), self)
        self.count_edit.setToolTip(tr("Pieces of one count add up; another name begins anew."))
        self.job_edit = LineEditor(self)
        self.job_edit.setToolTip(tr("Entries of this name belong to one job; what it took already is left out."))
        self.job_edit.editingFinished.connect(self.job_renamed)
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
        self.body.addLayout(form)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.state_label)
        self.last_model: RecordTable[StoredEntry] = RecordTable(self._entry_columns(), self)
        self.last_table = Table(tr("Last entries"), self, shares=(2, 4, 5, 3), whole=(2,))
        self.last_table.setModel(self.last_model)
        self.last_table.teach(tr("What is scanned comes here; an entry is taken back by another one."))
        self.body.addWidget(self.last_table, 1)
        self.undo_button = QPushButton(tr("Undo the entry"), self)
        self.undo_button.clicked.connect(self.undo)
        self.close_button = QPushButton(tr("Close the count…"), self)
        self.close_button.setToolTip(tr("What was not scanned in it is listed, and counted as none where you say so"))
        self.close_button.clicked.connect(self._ask_to_close)
        row = QHBoxLayout()
        row.addWidget(self.undo_button, 1)
        row.addWidget(self.close_button, 1)
        self.body.addLayout(row)

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

    def refresh(self) -> bool:
        """Show places and last entries; return whether they can be read."""
        try:
            self._show_entries()
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return False
        return True

    def job_name(self) -> str:
        """Return the name of the job in hand: what was typed, else the site."""
        return job_name(self.job_edit.text()) or job_name(self._context.session.survey.site.name)

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

    def enter(self) -> None:
        """Add the movement that the fields tell; the scan field is empty and ready for the next code then."""
        service, movement = self._context.session.workbench.stock(), Movement(self.movement_box.currentData())
        is_count = movement is Movement.COUNTED
        try:
            asked = Asked(
                place=self.place_box.currentText(),
                movement=movement,
                code=self.scan_edit.text(),
                quantity=pieces_in(self.pieces_edit, tr("Pieces")),
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
        self.entered.emit()

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
        self.entered.emit()

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
        self.entered.emit()

    def _count_name(self) -> str:
        return self.count_edit.text().strip() or self._today().isoformat()


def pieces_in(field: LineEditor, name: str) -> int | None:
    """Return the whole number in a field; None for nothing. Raise ``InputFault`` for what is none."""
    text = field.text().strip()
    if not text:
        return None
    if not (text.isascii() and text.isdigit()) or int(text) > MOST_PIECES:
        wanted = tr("a whole number from 0 to {0} is needed").format(MOST_PIECES)
        raise InputFault((InputProblem("", name, repr(text), wanted),))
    return int(text)
