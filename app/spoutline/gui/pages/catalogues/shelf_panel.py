"""The catalogs of the book with their drafts and editions; what is planned with; publishing and export."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QFileDialog,
    QGridLayout,
    QHBoxLayout,
    QMessageBox,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.exchange_import import ExchangeImportDialog
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import Ticket
from spoutline.gui.models.catalogue_rows import EditionRow, edition_columns, edition_rows
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.pages.catalogues.chosen import FILE, SHELF, STEP, InHand
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.stopping import Stopping
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.wording import tr
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault

if TYPE_CHECKING:
    from spoutline.bootstrap.catalogues import CatalogueService
    from spoutline.bootstrap.exchange_intake import ExchangeCounts
    from spoutline.planning.protocols import Progress

_Value = TypeVar("_Value")
_FAULTS_SHOWN = 6


class ShelfPanel(QWidget):
    """Reads and writes the book off the window's thread.

    Signals
    -------
    picked(EditionRow)
        Another draft or edition is in hand, or the one in hand was read anew.
    planned_otherwise()
        The book plans with another edition.
    """

    picked = Signal(object)
    planned_otherwise = Signal()

    def __init__(
        self,
        context: Context,
        in_hand: InHand,
        notify: Notify,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
    ) -> None:
        super().__init__(parent)
        self._context, self._in_hand, self._notify, self._today = context, in_hand, notify, today
        self._wanted: EditionRef | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        self.planned_label = plain_label("", "quiet", wraps=True)
        column.addLayout(self._head())
        self.model = RecordTable(edition_columns(), self)
        self.table = Table(tr("Catalogs and editions"), self, stretch=6)
        self.table.setModel(self.model)
        self.table.fit_columns()
        self.table.picked.connect(self._on_picked)
        column.addWidget(self.table, 1)
        column.addLayout(self._step_buttons())
        column.addWidget(self._publishing())
        self._stopping, self._is_at_work = Stopping(), False
        self.progress_row = ProgressRow(context.jobs, STEP, tr("How far the step is"), self._stopping.ask, self)
        self.progress_row.show_running(False)
        column.addLayout(self.progress_row)
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        column.addWidget(self.fault_label)
        self._enable()

    def _head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        told = QVBoxLayout()
        told.addWidget(self.planned_label)
        self.demonstration_box = QCheckBox(tr("Keep the invented catalog &Demonstration in this book"), self)
        self.demonstration_box.clicked.connect(self.keep_demonstration)
        told.addWidget(self.demonstration_box)
        row.addLayout(told, 1)
        self.name_edit = LineEditor(self)
        self.name_edit.setAccessibleName(tr("Name of a new catalog"))
        self.name_edit.setPlaceholderText(tr("Name of a new catalog"))
        self.name_edit.returnPressed.connect(self.create_catalogue)
        self.name_edit.textChanged.connect(lambda _: self._enable())
        self.name_edit.setMinimumWidth(220)
        self.create_button = self._button(tr("&New catalog"), self.create_catalogue)
        row.addWidget(self.name_edit)
        row.addWidget(self.create_button)
        return row

    def _step_buttons(self) -> QGridLayout:
        # two rows: the words of some languages need more than a small window has in one
        grid = QGridLayout()
        grid.setColumnStretch(0, 1)
        self.book_button = self._button(tr("&Let the book plan with it"), self.plan_book_with_it)
        self.survey_button = self._button(tr("Let this survey plan &with it"), self.plan_survey_with_it)
        self.read_button = self._button(tr("&Import…"), self.ask_and_read)
        self.read_button.setToolTip(tr("Read an exchange file of the program into the draft"))
        self.export_button = self._button(tr("E&xport…"), self.ask_and_export)
        self.discard_button = self._button(tr("Discard &the draft…"), self.ask_and_discard)
        for row, buttons in enumerate(
            ((self.book_button, self.survey_button), (self.read_button, self.export_button, self.discard_button))
        ):
            line = QHBoxLayout()
            line.addStretch(1)
            for button in buttons:
                line.addWidget(button)
            grid.addLayout(line, row, 0)
        return grid

    def _publishing(self) -> QWidget:
        card = Card(tr("Publish the draft as the next edition"), self)
        row = QHBoxLayout()
        self.note_edit = LineEditor(self)
        self.note_edit.setPlaceholderText(tr("What is new in this edition"))
        self.note_edit.setAccessibleName(tr("What is new in this edition"))
        self.publisher_edit = LineEditor(self)
        self.publisher_edit.setPlaceholderText(tr("Who publishes it"))
        self.publisher_edit.setAccessibleName(tr("Who publishes it"))
        self.publish_button = self._button(tr("P&ublish"), self.publish)
        self.publish_button.setObjectName("primary")
        row.addWidget(self.note_edit, 2)
        row.addWidget(self.publisher_edit, 1)
        row.addWidget(self.publish_button)
        card.body.addLayout(row)
        return card

    def _button(self, words: str, act: Callable[[], None]) -> QPushButton:
        button = QPushButton(words, self)
        button.clicked.connect(lambda _=False: act())
        return button

    def refresh(self) -> None:
        """Read the catalogs of the book anew."""
        service = self._context.session.workbench.catalogues()
        survey = self._context.session.survey

        def work(_: Ticket) -> tuple[tuple[EditionRow, ...], EditionRef, EditionRef]:
            of_book, of_survey = service.chosen(), service.planned_with(survey)
            return tuple(edition_rows(service.all(), of_book, of_survey)), of_book, of_survey

        if not self.model.records:
            self.table.teach(tr("Looking…"))
        self._context.jobs.start(SHELF, work, lambda found: self._show(*found), self._fail_reading)

    def _fail_reading(self, fault: Exception) -> None:
        self.table.teach("")
        self._show_fault(fault)

    def create_catalogue(self) -> None:
        """Begin an empty catalog under the name written."""
        name = self.name_edit.text().strip()
        if not name:
            return

        def done(_: object) -> None:
            self.name_edit.clear()
            self._wanted = EditionRef(name, is_draft=True)

        self._step(lambda service: service.create(name), done)

    def plan_book_with_it(self) -> None:
        """Let the book plan with the edition in hand: a newest one, and what follows it, by name alone."""
        row = self._in_hand.row
        if row is not None:
            ref = _as_planned_with(row)
            self._step(lambda service: service.choose(ref), lambda _: self.planned_otherwise.emit())

    def plan_survey_with_it(self) -> None:
        """Let the survey name the edition in hand, or none where it names that one already; undo takes it back."""
        row, survey = self._in_hand.row, self._context.session.survey
        if row is None:
            return
        named = None if row.by_survey and survey.catalogue else str(_as_planned_with(row))
        words = tr("Plan with {0}").format(named) if named else tr("Plan as the book does")
        self._context.edit(survey.model_copy(update={"catalogue": named}), words)
        self.refresh()

    def keep_demonstration(self, wanted: bool) -> None:
        """Do without the invented catalog in this book, or take it in again; where that cannot be it is told."""

        def fail(fault: Exception) -> None:
            self._show_fault(fault)
            self.demonstration_box.setChecked(not wanted)

        self._step(lambda service: service.leave_demonstration_out(left_out=not wanted), lambda _: None, fail)

    def publish(self) -> None:
        """Publish the draft in hand; what keeps it back is told."""
        name, note, publisher = self._in_hand.draft_name, self.note_edit.text(), self.publisher_edit.text()
        if not name:
            return
        today = self._today()

        def done(edition: Any) -> None:  # noqa: ANN401  (what the job delivers)
            self.note_edit.clear()
            self._wanted = edition.ref
            self._notify(tr("Published: {0}").format(edition.title))
            self.planned_otherwise.emit()  # who plans with the newest edition plans with this one

        self._long_step(
            lambda service, watching: service.publish(name, watching, notes=note, publisher=publisher, on=today), done
        )

    def ask_and_discard(self) -> None:
        """Ask, then let the draft be as the newest edition again."""
        name = self._in_hand.draft_name
        words = tr("What the draft of {0} holds otherwise than its newest edition is lost. Discard it?").format(name)
        buttons = QMessageBox.StandardButton.Yes | QMessageBox.StandardButton.No
        title = tr("Discard the draft")
        if name and (
            QMessageBox.question(self, title, words, buttons, QMessageBox.StandardButton.No)
            is QMessageBox.StandardButton.Yes
        ):
            self._step(lambda service: service.discard_draft(name), lambda _: None)

    def ask_and_read(self) -> None:
        """Ask for an exchange file, say what it would change in the draft in hand, and read it in."""
        path, _ = QFileDialog.getOpenFileName(self, tr("Read an exchange file"), "", "ZIP (*.zip)")
        if path:
            self.read_from(Path(path))

    def read_from(self, path: Path) -> None:
        """Say what an exchange file would change in the draft in hand, ask, and read it in."""
        name = self._in_hand.draft_name
        if not name:
            self._show_fault(None)
            self.fault_label.setText(tr("Pick a catalog of your own first: Demonstration is only read."))
            self.fault_label.show()
            return

        def ask(counts: ExchangeCounts) -> None:
            dialog = ExchangeImportDialog(name, path.name, counts, self)
            if dialog.exec() == QDialog.DialogCode.Accepted:
                self._read(name, path, keeps_others=dialog.keeps_others)

        self._long_step(lambda service, watching: service.look_at_exchange(path, name, watching), ask)

    def _read(self, name: str, path: Path, *, keeps_others: bool) -> None:
        def done(_: object) -> None:
            self._wanted = EditionRef(name, is_draft=True)
            self._notify(tr("{file} is in the draft of {catalog}.").format(file=path.name, catalog=name))

        self._long_step(
            lambda service, watching: service.import_exchange(path, name, watching, keep_others=keeps_others), done
        )

    def ask_and_export(self) -> None:
        """Ask for a file and write the edition in hand there."""
        row = self._in_hand.row
        if row is None:
            return
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Export"), f"{file_stem(str(row.ref))}.zip", FileForm.CATALOGUE)
        if path is not None:
            self.export_to(path)

    def export_to(self, path: Path) -> None:
        """Write the edition in hand into an exchange file."""
        row, service = self._in_hand.row, self._context.session.workbench.catalogues()
        if row is not None:
            ref = row.ref
            save_aside(self._context, FILE, path, lambda: service.export(ref), notify=self._notify)

    def _step(
        self,
        act: Callable[[Any], object],
        done: Callable[[Any], None],
        fail: Callable[[Exception], None] | None = None,
    ) -> None:
        service = self._context.session.workbench.catalogues()

        def deliver(value: object) -> None:
            self._show_fault(None)
            done(value)
            self.refresh()

        self._context.jobs.start(STEP, lambda _: act(service), deliver, fail or self._show_fault)

    def _long_step(self, act: Callable[[CatalogueService, Progress], _Value], done: Callable[[_Value], None]) -> None:
        """Do what may take minutes: how far it is shows, and until its end it can be stopped and changes nothing."""
        service = self._context.session.workbench.catalogues()

        def deliver(value: _Value | None) -> None:
            self._show_at_work(False)
            self._show_fault(None)
            if value is None:
                self._notify(tr("Stopped: nothing was changed."))
            else:
                done(value)
            self.refresh()

        def fail(fault: Exception) -> None:
            self._show_at_work(False)
            self._show_fault(fault)

        self._show_at_work(True)
        work = self._stopping.watched(lambda watching: act(service, watching))
        self._context.jobs.start(STEP, work, deliver, fail)

    def _show_at_work(self, is_at_work: bool) -> None:
        self._is_at_work = is_at_work
        self.progress_row.show_running(is_at_work)
        self._enable()

    def _show(self, rows: tuple[EditionRow, ...], of_book: EditionRef, of_survey: EditionRef) -> None:
        self.table.teach("")
        words = tr("The book plans with {book}; this survey plans with {survey}.")
        self.planned_label.setText(words.format(book=of_book, survey=of_survey))
        before = self._wanted or (self._in_hand.row.ref if self._in_hand.row is not None else None)
        self._wanted = None
        self._in_hand.rows = rows
        self.demonstration_box.setChecked(any(row.facts.is_demonstration for row in rows))
        self.model.show_records(rows)
        self.table.fit_columns()
        refs = [row.ref for row in rows]
        users = [row.by_survey for row in rows]
        place = refs.index(before) if before in refs else users.index(True) if True in users else 0
        if rows:
            self.table.pick_row(place)

    def _on_picked(self, row: EditionRow) -> None:
        self._in_hand.row = row
        self._enable()
        self.picked.emit(row)

    def _show_fault(self, fault: Exception | None) -> None:
        if isinstance(fault, InputFault):
            told = [str(problem) for problem in fault.problems]
            more = [tr("and {0} more").format(len(told) - _FAULTS_SHOWN)] if len(told) > _FAULTS_SHOWN else []
            words = "\n".join((*told[:_FAULTS_SHOWN], *more))
        else:
            words = "" if fault is None else str(fault)
        self.fault_label.setText(words)
        self.fault_label.setVisible(bool(words))

    def _enable(self) -> None:
        row = self._in_hand.row
        is_draft = row is not None and row.edition is None
        names_it = row is not None and row.by_survey and bool(self._context.session.survey.catalogue)
        words = tr("Let this s&urvey plan as the book does") if names_it else tr("Let this survey plan &with it")
        self.survey_button.setText(words)
        self.survey_button.setEnabled(row is not None)
        self.export_button.setEnabled(row is not None)
        row = None if self._is_at_work else row  # one step at a time: another would take the place of the one at work
        self.demonstration_box.setEnabled(not self._is_at_work)
        self.create_button.setEnabled(not self._is_at_work and bool(self.name_edit.text().strip()))
        self.book_button.setEnabled(row is not None and not row.by_book)
        self.read_button.setEnabled(row is not None and bool(self._in_hand.draft_name))
        has_changes = row is not None and row.facts.has_changes and bool(self._in_hand.draft_name)
        self.discard_button.setEnabled(is_draft and has_changes)
        self.publish_button.setEnabled(has_changes)


def _as_planned_with(row: EditionRow) -> EditionRef:
    """Return how an edition is named to plan with: the newest by its catalogue alone, so that the next one follows."""
    return EditionRef(row.facts.name) if row.edition is not None and row.edition is row.facts.newest else row.ref
