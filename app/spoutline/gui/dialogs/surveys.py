"""The surveys of the book: open one, start one, read one from a file, take one off the list."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLineEdit, QPushButton, QWidget

from spoutline.book.records import StoredSurvey, SurveyEntry
from spoutline.book.stored_documents import UnreadableDocument
from spoutline.book.survey_text import read_survey
from spoutline.bootstrap.demos import demo_survey, ready_stations
from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.edits.positions import new_survey
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.models.table_columns import survey_columns
from spoutline.gui.roles import Role
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, InputNote, StoreFault
from spoutline.model.survey import Survey

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_FILES = "JSON (*.json)"


class SurveysDialog(FormDialog):
    """Lists the surveys.

    Once accepted, ``chosen`` is the one to turn to and ``notes`` say how its file was understood.
    """

    help_topic = "surveys"

    def __init__(self, workbench: Workbench, present_id: int | None, parent: QWidget | None = None) -> None:
        super().__init__(tr("Surveys"), parent)
        self._workbench, self._present_id = workbench, present_id
        self.chosen: StoredSurvey | None = None
        self.notes: list[InputNote] = []
        self.body.addWidget(plain_label(tr("All surveys in the book. Every change is kept in it at once."), "quiet"))
        self._unreadable: set[int] = set()
        self.model: RecordTable[SurveyEntry] = RecordTable(survey_columns(), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.model)
        self.table = Table(tr("Surveys in the book"), self, stretch=0)
        self.table.setModel(proxy)
        self.table.setSortingEnabled(True)
        self.table.sortByColumn(2, Qt.SortOrder.DescendingOrder)
        self.table.opened.connect(lambda _: self._open())
        self.body.addWidget(self.table, 1)
        self.body.addLayout(self._start_row())
        self.body.addLayout(self._ready_row())
        self._add_foot()
        self.resize(680, 460)
        self.table.selectionModel().selectionChanged.connect(lambda *_: self._offer_rescue())
        self._refresh()

    def _start_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.name_edit = QLineEdit(self)
        self.name_edit.setAccessibleName(tr("Name of the new site"))
        self.name_edit.setPlaceholderText(tr("Name of a new site"))
        self.start_button = QPushButton(tr("&Start survey"), self)
        self.start_button.clicked.connect(self._start)
        self.name_edit.returnPressed.connect(self._start)
        row.addWidget(self.name_edit, 1)
        row.addWidget(self.start_button)
        return row

    def _ready_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.ready_choice = StillBox(self)
        self.ready_choice.setAccessibleName(tr("Ready stations"))
        for station in ready_stations():
            words = tr("{site}, {count} positions").format(site=station.site_name, count=station.positions)
            self.ready_choice.addItem(words, station.name)
        self.ready_button = QPushButton(tr("&Put into the book"), self)
        self.ready_button.clicked.connect(self._take_ready)
        row.addWidget(plain_label(tr("Ready stations:")))
        row.addWidget(self.ready_choice, 1)
        row.addWidget(self.ready_button)
        return row

    def _add_foot(self) -> None:
        self.open_button = QPushButton(tr("&Open"), self)
        self.rescue_button = QPushButton(tr("Sa&ve as it lies in the book…"), self)
        self.rescue_button.setToolTip(tr("Writes what the book holds of a survey that cannot be read into a file"))
        self.rescue_button.clicked.connect(self._rescue)
        self.rescue_button.hide()
        self.read_button = QPushButton(tr("Read from &file…"), self)
        self.remove_button = QPushButton(tr("&Take off the list"), self)
        self.open_button.setObjectName("primary")
        self.open_button.clicked.connect(self._open)
        self.read_button.clicked.connect(self._read)
        self.remove_button.clicked.connect(self._remove)
        rescue, others = self.rescue_button, (self.start_button, self.ready_button)
        for button in (rescue, self.remove_button, self.read_button, self.open_button, *others):
            button.setAutoDefault(False)
        self.add_close()
        for button in (rescue, self.remove_button, self.read_button, self.open_button):
            self.foot.insertWidget(self.foot.count() - 1, button)

    def accept_survey(self, stored: StoredSurvey) -> None:
        """Close the dialog with this survey."""
        self.chosen = stored
        self.accept()

    def read_file(self, path: Path) -> None:
        """Put a survey file into the book and turn to it; say what is wrong with one that is not usable."""
        try:
            self.accept_survey(wait_for(lambda: self._workbench.book().create(read_survey(path, self.notes.append))))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))

    def _refresh(self) -> None:
        try:
            self.model.show_records(wait_for(lambda: self._workbench.book().entries()))
        except StoreFault as fault:
            self.show_fault(str(fault))
        self.table.fit_columns()
        if self.model.records:
            self.table.selectRow(0)

    def _marked(self) -> SurveyEntry | None:
        record = self.table.current_record()
        return record if isinstance(record, SurveyEntry) else None

    def _open(self) -> None:
        entry = self._marked()
        if entry is None:
            return
        try:
            self.accept_survey(wait_for(lambda: self._workbench.book().stored(entry.id)))
        except UnreadableDocument as fault:
            self._unreadable.add(entry.id)
            self.model.replace_columns(survey_columns(self._unreadable))
            self._mark(entry.id)
            self.show_fault(str(fault))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))

    def _mark(self, survey_id: int) -> None:
        """Go to the row of a survey."""
        proxy = self.table.model()
        for row in range(proxy.rowCount()):
            record = proxy.index(row, 0).data(Role.RECORD)
            if isinstance(record, SurveyEntry) and record.id == survey_id:
                self.table.selectRow(row)

    def _offer_rescue(self) -> None:
        entry = self._marked()
        self.rescue_button.setVisible(entry is not None and entry.id in self._unreadable)

    def _rescue(self) -> None:
        """Save what the book holds of the marked survey as it is written there."""
        from spoutline.gui.dialogs.saving import Saving

        entry = self._marked()
        if entry is None:
            return
        path = Saving(self._workbench.files_in_use, self).ask(tr("Save"), f"survey-{entry.id}.txt", FileForm.TEXT)
        if path is not None:
            self.rescue_to(path, entry)

    def rescue_to(self, path: Path, entry: SurveyEntry) -> None:
        """Write what the book holds of a survey into a file."""
        from spoutline.whole_files import write_file

        try:
            text = wait_for(lambda: self._workbench.book().written(entry.id))
            write_file(path, text.encode("utf-8", "surrogatepass"))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.show_fault(tr("What the book holds of “{name}” is now in {path}.").format(name=entry.name, path=path))

    def _start(self) -> None:
        try:
            survey = new_survey(self.name_edit.text(), wait_for(self._workbench.usual_jurisdiction))
            self.accept_survey(wait_for(lambda: self._workbench.book().create(survey)))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))

    def _take_ready(self) -> None:
        """Turn to a ready station; one that is in the book and still as it came is not put into it twice."""
        try:
            survey = demo_survey(self.ready_choice.currentData())
            self.accept_survey(wait_for(lambda: self._taken(survey)))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))

    def _taken(self, survey: Survey) -> StoredSurvey:
        book = self._workbench.book()
        return book.equal_to(survey) or book.create(survey)

    def _read(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr("Read a survey file"), "", _FILES)
        if path:
            self.read_file(Path(path))

    def _remove(self) -> None:
        entry = self._marked()
        if entry is None:
            return
        if entry.id == self._present_id:
            self.show_fault(tr("“{name}” is open. Open another survey first.").format(name=entry.name))
            return
        question = tr("Remove “{name}” from the list? Its past saves stay in the database.").format(name=entry.name)
        if self.is_sure(question):
            try:
                wait_for(lambda: self._workbench.book().remove(entry.id))
            except (InputFault, StoreFault) as fault:
                self.show_fault(str(fault))
            self._refresh()
