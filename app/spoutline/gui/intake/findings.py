"""What a look at a table found: cells to repair, changes of the draft, figures in texts, repairs made so far."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from spoutline.gui.dialogs.table_repair import repair_words
from spoutline.gui.models.catalogue_rows import change_columns, report_columns
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.widgets.cards import tab_pages
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr
from spoutline.planning.table_intake.intake import CellReport
from spoutline.planning.table_intake.into_draft import OpenedTable
from spoutline.planning.table_intake.repairs import Repair, ReplaceWord
from spoutline.planning.table_intake.table_look import TableLook


class Findings(QTabWidget):
    """Four lists; figures are found in texts of parts alone, which ``has_patterns`` says.

    Signals
    -------
    cell_wanted(CellReport)
        A person wants to see the cell that a report is about.
    repaired(object)
        A person offered a ``Repair``.
    skip_wanted(int)
        A person wants to leave a row out.
    taken_away(int)
        A person takes the repair at a place away.
    confirmed(str, bool)
        A person lets a pattern fill figures from texts, or no longer.
    """

    cell_wanted = Signal(object)
    repaired = Signal(object)
    skip_wanted = Signal(int)
    taken_away = Signal(int)
    confirmed = Signal(str, bool)

    def __init__(self, parent: QWidget | None = None, *, has_patterns: bool = True) -> None:
        super().__init__(parent)
        self.setDocumentMode(True)
        pages = tab_pages(self)
        self._counts: dict[tuple[str, str, str], int] = {}
        self.report_model = RecordTable(report_columns(), self)
        self.change_model = RecordTable(change_columns(), self)
        self.addTab(self._reports(pages), tr("Faults and questions"))
        self.change_table = Table(tr("What will change"), pages, shares=(26, 14, 44, 24))
        self.change_table.setModel(self.change_model)
        self.addTab(self.change_table, tr("What will change"))
        self.pattern_list = QListWidget(pages)
        self.pattern_list.setAccessibleName(tr("Figures in texts"))
        self.pattern_list.itemChanged.connect(self._confirm)
        self.addTab(self.pattern_list, tr("Figures in texts"))
        self.setTabVisible(2, has_patterns)
        self.addTab(self._steps(pages), tr("Repairs"))

    def _reports(self, parent: QWidget) -> QWidget:
        side = QWidget(parent)
        row = QHBoxLayout(side)
        row.setContentsMargins(0, 0, 0, 0)
        self.report_table = Table(tr("Faults and questions"), side, shares=(11, 13, 18, 52, 15))
        self.report_table.setModel(self.report_model)
        self.report_table.picked.connect(lambda _: self._enable())
        self.report_table.picked.connect(self.cell_wanted)
        buttons = QVBoxLayout()
        self.replace_button = QPushButton(tr("Take the nearest, everywhere"), side)
        self.replace_button.clicked.connect(lambda _=False: self._replace())
        self.skip_button = QPushButton(tr("Leave the row out"), side)
        self.skip_button.clicked.connect(lambda _=False: self._skip())
        buttons.addWidget(self.replace_button)
        buttons.addWidget(self.skip_button)
        buttons.addStretch(1)
        row.addWidget(self.report_table, 1)
        row.addLayout(buttons)
        return side

    def _steps(self, parent: QWidget) -> QWidget:
        side = QWidget(parent)
        row = QHBoxLayout(side)
        row.setContentsMargins(0, 0, 0, 0)
        self.step_list = QListWidget(side)
        self.step_list.setAccessibleName(tr("Repairs"))
        self.step_list.currentRowChanged.connect(lambda _: self._enable())
        self.away_button = QPushButton(tr("Take away"), side)
        self.away_button.clicked.connect(lambda _=False: self.taken_away.emit(self.step_list.currentRow()))
        row.addWidget(self.step_list, 1)
        row.addWidget(self.away_button, 0, Qt.AlignmentFlag.AlignTop)
        return side

    def show_look(self, look: TableLook | None) -> None:
        """Show what another look found."""
        before = self.report_table.currentIndex().row()
        report = None if look is None else look.result.report
        changes = None if look is None else look.result.changes
        self._counts = {} if report is None else dict(report.words)
        self.report_model.show_records(() if report is None else report.reports)
        self.change_model.show_records(() if changes is None else changes.changes)
        self.report_table.fit_columns()
        self.change_table.fit_columns()
        if self.report_model.rowCount():  # the next one is where the mended one was; nobody asked to see its cell
            self.report_table.blockSignals(True)
            self.report_table.selectRow(min(max(before, 0), self.report_model.rowCount() - 1))
            self.report_table.blockSignals(False)
        found = 0 if report is None else report.faults + report.questions
        changed = 0 if changes is None else changes.new + changes.changed + changes.missing
        self.setTabText(0, tr("Faults and questions ({0})").format(found))
        self.setTabText(1, tr("What will change ({0})").format(changed))
        self._show_patterns(look)
        self._enable()

    def _show_patterns(self, look: TableLook | None) -> None:
        proposals = () if look is None else look.proposals
        confirmed = () if look is None else look.result.opened.table_map.pattern
        self.pattern_list.blockSignals(True)
        self.pattern_list.clear()
        for one in proposals:
            item = QListWidgetItem(f"{one.column} = {one.value}    “{one.words}”", self.pattern_list)
            item.setData(Qt.ItemDataRole.UserRole, one.pattern)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Checked if one.pattern in confirmed else Qt.CheckState.Unchecked)
        self.pattern_list.blockSignals(False)
        self.setTabText(2, tr("Figures in texts ({0})").format(len(proposals)))

    def show_steps(self, opened: OpenedTable | None) -> None:
        """Show the repairs made so far."""
        steps: tuple[Repair, ...] = () if opened is None else opened.table_map.repair
        self.step_list.clear()
        self.step_list.addItems([repair_words(step) for step in steps])
        self.step_list.setCurrentRow(len(steps) - 1)
        self.setTabText(3, tr("Repairs ({0})").format(len(steps)))
        self._enable()

    def _current(self) -> CellReport | None:
        report = self.report_table.current_record()
        return report if isinstance(report, CellReport) else None

    def _replace(self) -> None:
        report = self._current()
        if report is not None and report.nearest:
            self.repaired.emit(ReplaceWord(field=report.field, word=report.word, by=report.nearest))

    def _skip(self) -> None:
        report = self._current()
        if report is not None:
            self.skip_wanted.emit(report.row)

    def _confirm(self, item: QListWidgetItem) -> None:
        is_on = item.checkState() is Qt.CheckState.Checked
        self.confirmed.emit(str(item.data(Qt.ItemDataRole.UserRole)), is_on)

    def _enable(self) -> None:
        report = self._current()
        has_nearest = report is not None and bool(report.nearest)
        if report is not None and has_nearest:
            count = self._counts.get((report.field, report.word, report.nearest), 1)
            words = tr("“{word}” becomes “{nearest}” ({count})")
            word, nearest = _short(report.word), _short(report.nearest)
            self.replace_button.setText(words.format(word=word, nearest=nearest, count=count))
        else:
            self.replace_button.setText(tr("Take the nearest, everywhere"))
        self.replace_button.setEnabled(has_nearest)
        self.skip_button.setEnabled(report is not None)
        self.away_button.setEnabled(self.step_list.currentRow() >= 0)


def _short(text: str) -> str:
    text = text.replace("&", "&&")
    return text if len(text) <= 14 else f"{text[:13]}…"
