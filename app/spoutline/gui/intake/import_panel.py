"""A table on its way, in one view: file, columns, cells, repairs, changes, taken over."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QDialog, QFileDialog, QHBoxLayout, QPushButton, QSplitter, QVBoxLayout, QWidget

from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.dialogs.table_repair import TableRepairDialog
from spoutline.gui.intake.column_list import ColumnList
from spoutline.gui.intake.findings import Findings
from spoutline.gui.intake.table_options import TableOptions
from spoutline.gui.intake.works import TableWork, TakenTable
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.table_preview import TablePreview
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.cell_table import Cells, CellTable
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault
from spoutline.planning.table_intake.intake import CellReport, RowKind, Stopped
from spoutline.planning.table_intake.intake_fields import fields_of
from spoutline.planning.table_intake.into_draft import TABLE_ENDINGS, OpenedTable
from spoutline.planning.table_intake.raw_table import TextEncoding
from spoutline.planning.table_intake.repairs import Repair, SetCell, SkipRow
from spoutline.planning.table_intake.table_look import (
    Step,
    TableFile,
    TableLook,
    with_holding,
    with_pattern,
    with_repairs,
    with_said,
    without_repair,
)

Notify = Callable[[str], None]  # shows a notice
_EXCHANGE = ".zip"


@frozen
class IntakeTools:
    """What the view works with: where work goes off the window's thread, and the words."""

    jobs: Jobs
    story: Story


class ImportPanel(QWidget):
    """Holds one table. Every step gives another frozen table, which is read anew off the window's thread.

    Signals
    -------
    taken_over(TakenTable)
        The table is where ``work`` takes it.
    exchange_wanted(Path)
        A person chose an exchange file of the program, which is no table.
    """

    taken_over = Signal(object)
    exchange_wanted = Signal(object)

    def __init__(self, tools: IntakeTools, work: TableWork, notify: Notify, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._jobs, self._work, self._notify = tools.jobs, work, notify
        self._keys = {
            name: JobKey(JobKind.CATALOGUE, f"{name} {type(work).__name__}") for name in ("open", "look", "take")
        }
        self._file: TableFile | None = None
        self._past: list[OpenedTable] = []
        self._look: TableLook | None = None
        self._looked_for = ""  # what the look was held against
        self._stop = threading.Event()
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.setSpacing(6)
        self.options = TableOptions(tools.story, work.subject, work.words.file_hint, self)
        column.addWidget(self.options)
        column.addWidget(self._middle(), 1)
        self.state_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.state_label)
        column.addLayout(self._foot())
        self._connect()
        self._jobs.progressed.connect(self._show_progress)
        self._show_state()

    def _middle(self) -> QWidget:
        middle = QSplitter(Qt.Orientation.Vertical, self)
        middle.setChildrenCollapsible(False)
        upper = QSplitter(Qt.Orientation.Horizontal, middle)
        upper.setChildrenCollapsible(False)
        self.column_list = ColumnList(self._work.subject, upper)
        self.preview = TablePreview(self)
        self.table = CellTable(tr("Rows of the table"), upper)
        self.table.setModel(self.preview)
        self.table.verticalHeader().show()
        upper.addWidget(self.column_list)
        upper.addWidget(self.table)
        upper.setSizes([370, 620])
        upper.setStretchFactor(1, 1)
        self.findings = Findings(middle, has_patterns=self._work.finds_figures)
        middle.addWidget(upper)
        middle.addWidget(self.findings)
        middle.setSizes([250, 170])
        middle.setStretchFactor(0, 1)
        return middle

    def _foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.many_button = QPushButton(tr("Change &many rows…"), self)
        self.back_button = QPushButton(tr("&Take back the last step"), self)
        words = self._work.words
        self.missing_box = QCheckBox(words.missing, self)
        self.missing_box.setToolTip(words.missing_hint)
        self.missing_box.setVisible(bool(words.missing))
        self.stop_button = QPushButton(tr("Sto&p"), self)
        self.take_button = QPushButton(words.take, self)
        self.take_button.setObjectName("primary")
        row.addWidget(self.many_button)
        row.addWidget(self.back_button)
        row.addStretch(1)
        for widget in (self.missing_box, self.stop_button, self.take_button):
            row.addWidget(widget)
        return row

    def _connect(self) -> None:
        self.options.file_wanted.connect(self.ask_for_file)
        self.options.reading_said.connect(self._read_otherwise)
        self.options.said.connect(lambda name, value: self._step(lambda opened: with_said(opened, **{name: value})))
        self.column_list.held.connect(
            lambda place, key, measure: self._step(lambda opened: with_holding(opened, place, key, measure))
        )
        self.preview.written.connect(self.write_cells)
        self.table.written.connect(self.write_cells)
        self.table.refused.connect(lambda fault: self.state_label.setText(told(str(fault))))
        self.findings.cell_wanted.connect(self._show_cell)
        self.findings.repaired.connect(self.repair)
        self.findings.skip_wanted.connect(self.skip_row)
        self.findings.taken_away.connect(lambda place: self._step(lambda opened: without_repair(opened, place)))
        self.findings.confirmed.connect(
            lambda pattern, is_on: self._step(lambda opened: with_pattern(opened, pattern, confirmed=is_on))
        )
        self.many_button.clicked.connect(lambda _=False: self.ask_for_many())
        self.back_button.clicked.connect(lambda _=False: self.take_back())
        self.stop_button.clicked.connect(lambda _=False: self._stop.set())
        self.take_button.clicked.connect(lambda _=False: self.take_over())

    @property
    def opened(self) -> OpenedTable | None:
        """The table in hand."""
        return None if self._file is None else self._file.opened

    @property
    def look(self) -> TableLook | None:
        """What the last look at the table found; None while it is read."""
        return self._look

    # file

    def ask_for_file(self) -> None:
        """Ask for a file and open it."""
        endings = " ".join(f"*{ending}" for ending in TABLE_ENDINGS)
        kinds = "CSV, XLSX"
        if self._work.has_exchange_files:
            kinds, endings = f"{kinds}, ZIP", f"{endings} *{_EXCHANGE}"
        path, _ = QFileDialog.getOpenFileName(self, tr("Choose a table"), "", f"{kinds} ({endings})")
        if self._work.has_exchange_files and Path(path).suffix.lower() == _EXCHANGE:
            self.exchange_wanted.emit(Path(path))
        elif path:
            self.open_file(Path(path))

    def open_file(self, path: Path, sheet: str = "", encoding: TextEncoding | None = None) -> None:
        """Read a file: its sheets, its titles, what its columns hold."""
        source = self._work
        self._jobs.cancel(self._keys["look"])
        self.state_label.setText(tr("Reading {0}…").format(path.name))

        def work(_: Ticket) -> TableFile:
            return source.open(path, sheet, encoding)

        self._jobs.start(
            self._keys["open"], work, self._take_file, lambda fault: self.state_label.setText(told(str(fault)))
        )

    def show_rows(self, opened: OpenedTable) -> None:
        """Show rows that are no file."""
        self._take_file(TableFile(Path(opened.table.place), opened.table.sheets, opened))
        self.options.show_no_file()

    def leave(self) -> None:
        """Drop what is still read."""
        for key in self._keys.values():
            self._jobs.cancel(key)

    def _read_otherwise(self, sheet: str, encoding: str) -> None:
        if self._file is not None:
            self.open_file(self._file.path, sheet, TextEncoding(encoding))

    def _take_file(self, file: TableFile) -> None:
        self._file, self._past, self._look = file, [], None
        self.options.show_file(file)
        self.preview.show_look(None)
        self.findings.show_look(None)
        self._show_opened()
        self._start_look()

    def _show_opened(self) -> None:
        opened = self.opened
        if self._file is not None:
            self.options.show_said(self._file)
        self.column_list.show_columns(() if opened is None else opened.mapping)
        self.findings.show_steps(opened)
        self._show_state()

    # steps

    def _step(self, step: Step) -> None:
        """Take a step; one that changes nothing is none, and one that cannot be taken says why."""
        opened = self.opened
        if opened is None or self._file is None or self._is_taking:
            return
        try:
            after = step(opened)
        except InputFault as fault:
            self._show_opened()
            self.state_label.setText(told(str(fault)))
            return
        if (after.mapping, after.table_map) == (opened.mapping, opened.table_map):
            return
        self._past.append(opened)
        self._go_on_with(after)

    def _go_on_with(self, opened: OpenedTable) -> None:
        if self._file is not None:
            self._file = TableFile(self._file.path, self._file.sheets, opened)
            self._show_opened()
            self._start_look()

    def take_back(self) -> None:
        """Take back the last step, whatever it was."""
        if self._past and not self._is_taking:
            self._go_on_with(self._past.pop())

    def write_cells(self, cells: Cells) -> None:
        """Write texts into cells of parts, by row and column of the preview."""
        rows, columns = self.preview.rows, self.preview.columns
        shown = {
            place: text
            for place, text in cells.items()
            if place[0] < len(rows) and place[1] < len(columns) and rows[place[0]].kind is RowKind.PART
        }
        steps = [
            SetCell(row=rows[row].number, field=columns[column].slot, was=self.preview.text(row, column), to=text)
            for (row, column), text in sorted(shown.items())
            if text != self.preview.text(row, column)
        ]
        if steps:
            self.preview.keep_newer(shown)
            self._step(lambda opened: with_repairs(opened, steps))

    def repair(self, step: Repair) -> None:
        """Take a repair."""
        self._step(lambda opened: with_repairs(opened, (step,)))

    def skip_row(self, number: int) -> None:
        """Leave a row out."""
        seen = next((row for row in self.preview.rows if row.number == number), None)
        if seen is not None:
            self.repair(SkipRow(row=number, number=seen.texts.get(self._key, "")))

    @property
    def _key(self) -> str:
        return fields_of(self._work.subject).key

    def ask_for_many(self) -> None:
        """Ask for a repair of many rows, beginning with the current cell."""
        here, opened = self.table.currentIndex(), self.opened
        if opened is None:
            return
        slot, shows, nearest = self._key, "", ""
        if here.isValid():
            slot = self.preview.columns[here.column()].slot
            report = self.preview.report_at(here.row(), here.column())
            shows = self.preview.text(here.row(), here.column())
            shows, nearest = (report.word, report.nearest) if report is not None and report.nearest else (shows, "")
        dialog = TableRepairDialog(opened.mapping, slot, shows, nearest, self, subject=self._work.subject)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.step is not None:
            self.repair(dialog.step)

    def _show_cell(self, report: object) -> None:
        place = self.preview.place_of(report) if isinstance(report, CellReport) else None
        if place is not None:
            index = self.preview.index(*place)
            self.table.setCurrentIndex(index)
            self.table.scrollTo(index)

    # looking and taking over

    def refresh(self) -> None:
        """Look at the table again where another draft is in hand than it was held against."""
        if self.opened is not None and self._work.target != self._looked_for:
            self._start_look()
        else:
            self._show_state()

    def _start_look(self) -> None:
        opened, name = self.opened, self._work.target
        self._looked_for = name
        if opened is None or self._work.not_ready:
            self._look = None
            self._show_state()
            return
        source = self._work

        def work(ticket: Ticket) -> TableLook:
            return source.look(name, opened, lambda rows: _tell_rows(ticket, rows))

        def fail(fault: Exception) -> None:
            self._look = None
            self.findings.show_look(None)
            self._show_state()
            self.state_label.setText("\n".join(map(str, _problems(fault))))

        self._look = None
        self._jobs.start(self._keys["look"], work, self._show_look, fail)
        self._show_state()

    def _show_look(self, look: TableLook) -> None:
        is_first = not self.preview.rows
        self._look = look
        self.preview.show_look(look)
        self.findings.show_look(look)
        if is_first:
            self.table.resizeColumnsToContents()
            for column in range(self.preview.columnCount()):
                self.table.setColumnWidth(column, min(self.table.columnWidth(column) + 12, 220))
        if look.result.report.is_sound and self.findings.currentIndex() == 0:
            self.findings.setCurrentIndex(1)
        self._show_state()

    def take_over(self) -> None:
        """Take the table over: all of it in one step, or nothing."""
        opened, name = self.opened, self._work.target
        if opened is None or self._work.not_ready or self._look is None:
            return
        source, take_out = self._work, self.missing_box.isChecked()
        self._stop.clear()
        stop = self._stop

        def work(ticket: Ticket) -> tuple[TakenTable, str] | None:
            def go_on(rows: int) -> bool:
                return _tell_rows(ticket, rows) and not stop.is_set()

            try:
                result = source.take(name, opened, go_on, take_out_missing=take_out)
            except Stopped:
                return None
            told = ""
            if result.is_sound:
                try:
                    source.remember(opened)
                except InputFault as fault:
                    told = str(fault)
            return result, told

        self._jobs.start(self._keys["take"], work, self._taken, self._not_taken)
        self._show_state()

    def _taken(self, done: tuple[TakenTable, str] | None) -> None:
        if done is None:
            self._notify(tr("Stopped: nothing was changed."))
        elif done[0].is_sound:
            self._notify("\n".join(filter(None, (done[0].told, done[1]))))
            self.taken_over.emit(done[0])
        self._start_look()

    def _not_taken(self, fault: Exception) -> None:
        self._show_state()
        self.state_label.setText("\n".join(map(str, _problems(fault))))

    @property
    def _is_taking(self) -> bool:
        return self._jobs.is_at_work(self._keys["take"])

    def _show_progress(self, key: JobKey, rows: int, _total: int) -> None:
        if key in (self._keys["look"], self._keys["take"]):
            self.state_label.setText(tr("{0} rows read…").format(f"{rows:,}"))

    def _show_state(self) -> None:
        is_taking = self._is_taking
        is_ready = self._look is not None and self._look.result.report.is_sound and not is_taking
        self.take_button.setEnabled(is_ready)
        self.stop_button.setVisible(is_taking)
        self.back_button.setEnabled(bool(self._past) and not is_taking)
        self.many_button.setEnabled(self._look is not None and not is_taking)
        self.state_label.setText(self._state_words(is_taking=is_taking))

    def _state_words(self, *, is_taking: bool) -> str:
        if self._file is None:
            return tr("Choose a file: nothing is changed before you take it over.")
        if self._file.opened is None:
            return self._file.fault
        if self._work.not_ready:
            return self._work.not_ready
        if self._look is None:
            return tr("Taking over…") if is_taking else tr("Reading the table…")
        report = self._look.result.report
        left_out = report.totals + report.headings + report.sections + report.skipped
        told = self._work.words.rows.format(
            parts=report.lines, rows=report.rows, left=left_out, faults=report.faults, questions=report.questions
        )
        known = tr("Read as the last table with these titles.") if self._file.opened.is_recognised else ""
        return " ".join(filter(None, (told, known)))


def _tell_rows(ticket: Ticket, rows: int) -> bool:
    ticket.on_progress(rows, 0)
    return not ticket.should_stop()


def _problems(fault: Exception) -> tuple[object, ...]:
    return fault.problems[:3] if isinstance(fault, InputFault) else (fault,)
