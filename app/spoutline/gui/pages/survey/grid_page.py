"""All positions at once: the forecourt from above, and below it a table that is written like a spreadsheet."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.gui.edits.positions import add_alike, duplicate_positions, remove_positions
from spoutline.gui.jobs import JobKey, JobKind
from spoutline.gui.models.position_grid import FilteredGrid, PositionGrid, row_texts
from spoutline.gui.models.site_nodes import tone_words
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.survey.forecourt import Tiles, islands
from spoutline.gui.roles import Role, Tone
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.cell_table import Cells
from spoutline.gui.widgets.forecourt_view import ForecourtView
from spoutline.gui.widgets.in_parts import InParts
from spoutline.gui.widgets.legend import Legend
from spoutline.gui.widgets.sheet_table import SheetTable
from spoutline.gui.widgets.still_box import StillSpin
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, InputNote, InputProblem
from spoutline.model.survey import Position, Survey
from spoutline.planning.survey_import.cells import with_cells
from spoutline.planning.survey_import.clipboard import has_titles
from spoutline.planning.survey_import.fields import BY_KEY, FIELDS

_READ = JobKey(JobKind.ROW_TEXTS)
_READ_AT_ONCE = 40  # rows whose texts are put together without being felt
_FAULTS_SHOWN = 4
_NOW_AND_THEN_MS = 200
_MARKS = (Tone.GOOD, Tone.CAUTION, Tone.QUESTION, Tone.BAD, Tone.WORKING, Tone.OPEN)


class GridPage(InParts, QWidget):
    """Shows every position; every write is one edit on the undo stack, whole or not at all."""

    def __init__(self, context: Context, parent: QWidget | None = None, *, whole: bool = True) -> None:
        super().__init__(parent)
        self.begin(self._make(context), whole=whole)

    def _make(self, context: Context) -> Iterator[None]:
        self._context, self._tiles = context, Tiles()
        self.model = PositionGrid(self._write, context.sets.tone, lambda: context.story, self)
        self.proxy = FilteredGrid(self.model, self)
        self._later = QTimer(self)  # a station of many positions is drawn anew now and then, not after each plan
        self._later.setSingleShot(True)
        self._later.setInterval(_NOW_AND_THEN_MS)
        self._later.timeout.connect(self._show_forecourt)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        column.addWidget(plain_label(tr("All positions"), "pageTitle"))
        column.addLayout(self._tools())
        yield
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        column.addWidget(self.fault_label)
        self.note_label = plain_label("", "quiet", wraps=True)
        self.note_label.hide()
        column.addWidget(self.note_label)
        splitter = QSplitter(Qt.Orientation.Vertical, self)
        splitter.setChildrenCollapsible(False)
        splitter.addWidget(self._plan_view(splitter))
        yield
        splitter.addWidget(self._grid())
        splitter.setSizes([240, 420])
        column.addWidget(splitter, 1)
        context.session.changed.connect(self._on_changed)
        context.sets.updated.connect(self._on_plan)

    def refresh(self) -> None:
        """Show the survey in hand."""
        session = self._context.session
        self.model.show_survey(session.survey, session.display)
        self._keep_place()
        self._show_forecourt()

    def _keep_place(self) -> None:
        """Stand on the position looked at where new rows took the place away; Qt would turn to the first row."""
        row = self.model.row_of(self._context.session.label)
        index = self.proxy.mapFromSource(self.model.index(row, 0))
        if index.isValid() and not self.table.currentIndex().isValid():
            self.table.choose([(index.row(), 0)])

    def _tools(self) -> QVBoxLayout:
        # fields above, steps below: in one row the words of some languages leave the fields no room
        self.filter_edit = QLineEdit(self)
        self.filter_edit.setAccessibleName(tr("Show rows that hold these words"))
        self.filter_edit.setPlaceholderText(tr("Show rows that hold…"))
        self.filter_edit.setClearButtonEnabled(True)
        self.filter_edit.textChanged.connect(self._filter)
        self.value_edit = QLineEdit(self)
        self.value_edit.setAccessibleName(tr("Value for the chosen cells"))
        self.value_edit.setPlaceholderText(tr("Value for the chosen cells"))
        self.value_edit.returnPressed.connect(lambda: self.table.write_all(self.value_edit.text()))
        self.write_button = QPushButton(tr("Write into chosen cells"), self)
        self.write_button.clicked.connect(lambda: self.table.write_all(self.value_edit.text()))
        self.fill_button = QPushButton(tr("Fill down"), self)
        self.fill_button.setToolTip("Ctrl+D")
        self.fill_button.clicked.connect(self._fill_down)
        self.duplicate_button = QPushButton(tr("Duplicate chosen rows"), self)
        self.remove_button = QPushButton(tr("Remove chosen rows"), self)
        self.remove_button.setToolTip("Ctrl+Del")
        fields, steps, tools = QHBoxLayout(), QHBoxLayout(), QVBoxLayout()
        fields.addWidget(self.filter_edit, 1)
        fields.addWidget(self.value_edit, 1)
        fields.addWidget(self.write_button)
        steps.addStretch(1)
        for button in (self.fill_button, self.duplicate_button, self.remove_button):
            steps.addWidget(button)
        tools.addLayout(fields)
        tools.addLayout(steps)
        return tools

    def _plan_view(self, parent: QWidget) -> QWidget:
        side = QWidget(parent)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        row = QHBoxLayout()
        row.addWidget(plain_label(tr("Forecourt from above."), "quiet"))
        row.addStretch(1)
        self.island_label = plain_label(tr("In a row where no island is named:"), "quiet")
        row.addWidget(self.island_label)
        self.island_spin = StillSpin(self)
        self.island_spin.setAccessibleName(tr("Dispensers in a row where no island is named"))
        self.island_spin.setRange(1, 50)
        self.island_spin.setValue(2)
        self.island_spin.valueChanged.connect(lambda _: self._show_forecourt())
        row.addWidget(self.island_spin)
        column.addLayout(row)
        column.addWidget(Legend(((tone, tone_words(tone)) for tone in _MARKS), self))
        self.forecourt = ForecourtView(tr("Forecourt from above"), self)
        self.forecourt.picked.connect(self._context.session.look_at)
        self.forecourt.opened.connect(self._show_row)
        scroll = QScrollArea(self)
        scroll.setWidgetResizable(True)
        scroll.setWidget(self.forecourt)
        column.addWidget(scroll, 1)
        return side

    def _grid(self) -> QWidget:
        self.table = SheetTable(tr("All positions and their answers"), self, has_titles)
        self.table.setModel(self.proxy)
        self.table.written.connect(self._write_cells)
        self.table.titled.connect(self._read_rows)
        self.table.refused.connect(self._show_fault)
        self.table.copy_wanted.connect(self._duplicate)
        self.table.removal_wanted.connect(self._remove)
        self.duplicate_button.clicked.connect(self.table.ask_copy)
        self.remove_button.clicked.connect(self.table.ask_removal)
        self.table.selectionModel().currentChanged.connect(lambda now, _: self._turn_to(now.data(Role.RECORD)))
        for column in range(len(FIELDS)):
            wanted = self.table.horizontalHeader().sectionSizeHint(column)
            self.table.setColumnWidth(column, max(wanted, 130) if column else 170)
        return self.table

    def _filter(self, text: str) -> None:
        """Show the rows that hold every word; where many were not read yet that is done off the window's thread."""
        session, unread = self._context.session, self.model.unread() if text.strip() else ()
        if len(unread) <= _READ_AT_ONCE:
            self._context.jobs.cancel(_READ)
            self.proxy.filter_by(text)
            return
        display, words = session.display, self._context.story

        def take(texts: Mapping[str, tuple[Position, str]]) -> None:
            self.model.take_texts(texts, display)
            self._filter(self.filter_edit.text())

        self._context.jobs.start(
            _READ,
            lambda ticket: row_texts(unread, display, words, ticket.should_stop),
            take,
            self._tell_trouble,
            priority=20,
        )

    def _tell_trouble(self, fault: Exception) -> None:
        self.note_label.setText(told(str(fault)))
        self.note_label.show()

    def _fill_down(self) -> None:
        self.table.fill_down()

    def _labels(self, rows: Iterable[int]) -> list[str]:
        """Return the labels of rows of the view, which may be sorted and filtered."""
        return [str(self.proxy.index(row, 0).data(Role.RECORD)) for row in rows]

    def _duplicate(self, rows: list[int]) -> None:
        """Copy positions as one edit, and stand on the labels of the copies."""
        labels = self._labels(rows)
        try:
            after, copies = duplicate_positions(self._context.session.survey, frozenset(labels))
        except InputFault as fault:
            self._show_fault(fault)
            return
        self.fault_label.hide()
        self._context.edit(after, tr("Duplicate {0}").format(_named(labels)), copies[0])
        places = (self.proxy.mapFromSource(self.model.index(self.model.row_of(label), 0)) for label in copies)
        self.table.choose(sorted((place.row(), 0) for place in places if place.isValid()))

    def _remove(self, rows: list[int]) -> None:
        """Take positions off the site as one edit; undo brings them back, so nothing is asked."""
        labels, session = self._labels(rows), self._context.session
        try:
            after, focus = remove_positions(session.survey, frozenset(labels))
        except InputFault as fault:
            self._show_fault(fault)
            return
        self.fault_label.hide()
        stays = after.position(session.label) is not None
        self._context.edit(after, tr("Remove {0}").format(_named(labels)), session.label if stays else focus)

    def show_position(self, label: str) -> None:
        """Turn to a position and stand on its row."""
        self._turn_to(label)
        self._show_row(label)

    def _turn_to(self, label: object) -> None:
        if isinstance(label, str) and not self.table.is_choosing_column:
            self._context.session.look_at(label)

    def _show_row(self, label: str) -> None:
        """Bring the row of a position into view with the keyboard in it."""
        index = self.proxy.mapFromSource(self.model.index(self.model.row_of(label), 0))
        if index.isValid():
            self.table.choose([(index.row(), 0)])
            self.table.scrollTo(index)
            self.table.setFocus()

    def _write_cells(self, cells: Cells) -> None:
        """Write cells of the view, which may be sorted and filtered; rows below its end become new positions."""
        survey, room = self._context.session.survey, self.proxy.rowCount()
        rows = max(row for row, _ in cells) + 1
        wide = max(column for _, column in cells) + 1
        labels = self._labels(range(room))
        try:
            if wide > len(FIELDS):
                wanted = tr("choose a cell further left: the table ends after {0} columns").format(len(FIELDS))
                raise InputFault((InputProblem("", tr("columns"), str(wide), wanted),))
            if rows > room and labels:
                survey, added = add_alike(survey, labels[-1], rows - room)
                labels.extend(added)
        except InputFault as fault:
            self._show_fault(fault)
            return
        self._write({(labels[row], FIELDS[column].key): text for (row, column), text in cells.items()}, survey)

    def _write(self, written: Mapping[tuple[str, str], str], into: Survey | None = None) -> bool:
        """Write texts by label and field into the survey in hand, or into one grown out of it."""
        session = self._context.session
        before = into if into is not None else session.survey
        try:
            notes: list[InputNote] = []
            written = self.model.as_stored(written)
            after = with_cells(before, written, session.display, notes.append)
        except InputFault as fault:
            self._show_fault(fault)
            return False
        self.fault_label.hide()
        self._show_notes(notes)
        (label, key), *more = written
        named = tr("Write {0} of {1}").format(tr(BY_KEY[key].title), label)
        places = [one.label for one in before.positions]
        focus = after.positions[places.index(session.label)].label
        self._context.edit(after, tr("Write {0} cells").format(len(written)) if more else named, focus)
        return True

    def _read_rows(self, rows: list[list[str]]) -> None:
        """Show pasted rows as a table and take their positions in one step."""
        from spoutline.gui.dialogs.table_intake import TableIntakeDialog
        from spoutline.gui.intake.works import PositionsWork

        session = self._context.session
        work = PositionsWork(session.workbench.position_tables(), session.survey, session.display.system)
        try:
            opened = work.open_rows(tr("pasted"), rows)
        except InputFault as fault:
            self._show_fault(fault)
            return
        dialog = TableIntakeDialog(tr("Paste positions"), self._context.intake, work, self)
        dialog.show_table(opened)
        taken = dialog.taken if dialog.exec() == QDialog.DialogCode.Accepted else None
        if taken is not None and taken.survey is not None:
            self.fault_label.hide()
            self._context.edit(taken.survey, tr("Paste positions"))

    def _show_notes(self, notes: list[InputNote]) -> None:
        """Say how cells were understood; the next write says its own, or nothing."""
        lines = [f"{one.place}, {_title_of(one.field)}: {one.value} {told(one.told)}" for one in notes[:_FAULTS_SHOWN]]
        if len(notes) > _FAULTS_SHOWN:
            lines.append(tr("and {0} more").format(len(notes) - _FAULTS_SHOWN))
        self.note_label.setText("\n".join(lines))
        self.note_label.setVisible(bool(lines))

    def _show_fault(self, fault: InputFault) -> None:
        lines = [
            ", ".join(filter(None, (one.place, _title_of(one.field)))) + f": {told(one.value)}; {told(one.wanted)}"
            for one in fault.problems[:_FAULTS_SHOWN]
        ]
        if len(fault.problems) > _FAULTS_SHOWN:
            lines.append(tr("and {0} more").format(len(fault.problems) - _FAULTS_SHOWN))
        self.note_label.hide()
        self.fault_label.setText(tr("Nothing was changed.") + "\n" + "\n".join(lines))
        self.fault_label.show()

    def _show_forecourt(self) -> None:
        session = self._context.session
        groups = islands(session.survey, self._context.sets.tones().__getitem__, self.island_spin.value(), self._tiles)
        self.forecourt.show_groups(groups, session.label)
        has_loose = any(not group.name for group in groups)
        self.island_label.setVisible(has_loose)
        self.island_spin.setVisible(has_loose)

    def _on_changed(self, what: Changed) -> None:
        if self.isVisible() and what & (Changed.SURVEY | Changed.FOCUS | Changed.UNITS):
            self.refresh()

    def _on_plan(self, label: str) -> None:
        if self.isVisible():
            self.model.mark_changed(label)
            if not self._later.isActive():
                self._later.start()


def _named(labels: list[str]) -> str:
    """Return what the undo menu calls some positions."""
    return labels[0] if len(labels) == 1 else tr("{0} positions").format(len(labels))


def _title_of(field: str) -> str:
    """Return the title of the column that holds a field; anything else as it is."""
    known = BY_KEY.get(field)
    return tr(known.title) if known is not None else field
