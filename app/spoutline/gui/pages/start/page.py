"""The start view: surveys changed last, a new one, a file, the demonstration, the three jobs in pictures."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.book.records import StoredSurvey, SurveyEntry
from spoutline.bootstrap.demos import demo_survey, ready_stations
from spoutline.gui.edits.positions import new_survey
from spoutline.gui.escaping import mnemonic_safe
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.models.table_columns import survey_columns
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import Card, ScrolledPage, empty_layout, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.survey import Survey

_ENTRIES = JobKey(JobKind.FILE, "entries of the start view")
_OPEN = JobKey(JobKind.FILE, "survey of the start view")
_MOST_FILES = 5


class StartPage(ScrolledPage):
    """Leads to a survey, whichever way a person has one.

    Signals
    -------
    opened(StoredSurvey)
        A survey is to be turned to.
    file_wanted(str)
        A survey file is to be read; empty where a person wants to be asked which.
    tour_wanted()
        The three jobs are to be shown in pictures.
    all_wanted()
        Every survey of the book is to be listed, with what can be done to it.
    """

    opened = Signal(object)
    file_wanted = Signal(str)
    tour_wanted = Signal()
    all_wanted = Signal()

    def __init__(
        self, context: Context, files: Callable[[], tuple[object, ...]], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._context, self._files = context, files
        self.column.addWidget(plain_label(tr("Start"), "pageTitle"))
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        self.column.addWidget(self.fault_label)
        grid = QGridLayout()
        grid.setSpacing(12)
        grid.setColumnStretch(0, 3)
        grid.setColumnStretch(1, 2)
        grid.addWidget(self._recent(), 0, 0, 4, 1)
        for row, card in enumerate((self._new(), self._file(), self._demonstration(), self._tour())):
            grid.addWidget(card, row, 1)
        self.column.addLayout(grid, 1)

    def refresh(self) -> None:
        """Show what the book holds and which files were used last."""
        self._say("")  # here, not when the list comes: it may come after a fault of what a person did meanwhile
        workbench = self._context.session.workbench

        def work(_: Ticket) -> tuple[SurveyEntry, ...]:
            return workbench.book().entries()

        self._context.jobs.start(_ENTRIES, work, self._show_entries, self._fail)
        self._show_files()

    def _recent(self) -> Card:
        card = Card(tr("Surveys changed last"), self)
        self.model: RecordTable[SurveyEntry] = RecordTable(survey_columns(), self)
        self.table = Table(tr("Surveys changed last"), card, stretch=0)
        self.table.setModel(self.model)
        self.table.setMinimumHeight(150)
        self.table.opened.connect(self._open)
        card.body.addWidget(self.table, 1)
        row = QHBoxLayout()
        self.open_button = QPushButton(tr("&Open"), card)
        self.open_button.setObjectName("primary")
        self.open_button.clicked.connect(lambda _=False: self._open(self.table.current_record()))
        every = QPushButton(tr("A&ll surveys…"), card)
        every.clicked.connect(lambda _=False: self.all_wanted.emit())
        row.addWidget(self.open_button)
        row.addWidget(every)
        row.addStretch(1)
        card.body.addLayout(row)
        return card

    def _new(self) -> Card:
        card = Card(tr("Begin a survey"), self)
        self.name_edit = LineEditor("", card)
        self.name_edit.setAccessibleName(tr("Name of the new site"))
        self.name_edit.setPlaceholderText(tr("Name of a new site"))
        self.begin_button = QPushButton(tr("&Begin"), card)
        self.begin_button.setEnabled(False)
        self.name_edit.textChanged.connect(lambda text: self.begin_button.setEnabled(bool(text.strip())))
        self.name_edit.returnPressed.connect(self._begin)
        self.begin_button.clicked.connect(lambda _=False: self._begin())
        row = QHBoxLayout()
        row.addWidget(self.name_edit, 1)
        row.addWidget(self.begin_button)
        card.body.addLayout(row)
        return card

    def _file(self) -> Card:
        card = Card(tr("Open a file"), self)
        words = tr("A survey file; it can be dropped on the window too.")
        card.body.addWidget(plain_label(words, "quiet", wraps=True))
        self.file_button = QPushButton(tr("Read from &file…"), card)
        self.file_button.clicked.connect(lambda _=False: self.file_wanted.emit(""))
        row = QHBoxLayout()
        row.addWidget(self.file_button)
        row.addStretch(1)
        card.body.addLayout(row)
        self._file_column = QVBoxLayout()
        card.body.addLayout(self._file_column)
        return card

    def _demonstration(self) -> Card:
        card = Card(tr("Look at the demonstration"), self)
        words = tr("Ready stations with a catalog that is invented: its makers, parts and prices exist nowhere.")
        card.body.addWidget(plain_label(words, "quiet", wraps=True))
        self.ready_box = StillBox(card)
        self.ready_box.setAccessibleName(tr("Ready stations"))
        self.ready_box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        for station in ready_stations():
            named = tr("{site}, {count} positions").format(site=station.site_name, count=station.positions)
            self.ready_box.addItem(named, station.name)
        self.ready_button = QPushButton(tr("Look at &it"), card)
        self.ready_button.clicked.connect(lambda _=False: self._take_ready())
        row = QHBoxLayout()
        row.addWidget(self.ready_box, 1)
        row.addWidget(self.ready_button)
        card.body.addLayout(row)
        return card

    def _tour(self) -> Card:
        card = Card(tr("Three jobs in pictures"), self)
        self.tour_button = QPushButton(tr("&Three jobs in pictures"), card)
        self.tour_button.clicked.connect(lambda _=False: self.tour_wanted.emit())
        row = QHBoxLayout()
        row.addWidget(self.tour_button)
        row.addStretch(1)
        card.body.addLayout(row)
        return card

    def _show_entries(self, entries: tuple[SurveyEntry, ...]) -> None:
        self.model.show_records(sorted(entries, key=lambda one: one.changed_at, reverse=True))
        self.table.fit_columns()
        self.open_button.setEnabled(bool(entries))
        self.table.pick_row(0)

    def _show_files(self) -> None:
        empty_layout(self._file_column)
        for path in self._files()[:_MOST_FILES]:
            button = QPushButton(mnemonic_safe(getattr(path, "name", str(path))), self)
            button.setToolTip(str(path))
            button.setAccessibleDescription(str(path))
            button.clicked.connect(partial(self.file_wanted.emit, str(path)))
            self._file_column.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)

    def _open(self, record: object) -> None:
        if isinstance(record, SurveyEntry):
            workbench, survey_id = self._context.session.workbench, record.id
            self._turn(lambda: workbench.book().stored(survey_id))

    def _begin(self) -> None:
        name, workbench = self.name_edit.text(), self._context.session.workbench
        if name.strip():
            self._turn(lambda: workbench.book().create(new_survey(name, workbench.usual_jurisdiction())))

    def _take_ready(self) -> None:
        name, book = str(self.ready_box.currentData()), self._context.session.workbench.book

        def taken(survey: Survey) -> StoredSurvey:
            return book().equal_to(survey) or book().create(survey)

        self._turn(lambda: taken(demo_survey(name)))

    def _turn(self, make: Callable[[], StoredSurvey]) -> None:
        def take(stored: StoredSurvey) -> None:
            self._say("")
            self.name_edit.clear()
            self.opened.emit(stored)

        self._context.jobs.start(_OPEN, lambda _: make(), take, self._fail)

    def _fail(self, fault: Exception) -> None:
        self._say(str(fault))

    def _say(self, words: str) -> None:
        self.fault_label.setText(words)
        self.fault_label.setVisible(bool(words))
