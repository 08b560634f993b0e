"""The rows of a supplier's table as they will be read: every cell typed, faults and questions at their cells."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt, Signal

from spoutline.gui.models.marks import told_with_mark
from spoutline.gui.roles import Role, Tone
from spoutline.gui.wording import tr
from spoutline.planning.table_intake.cell_values import FaultKind
from spoutline.planning.table_intake.column_map import MappedColumn
from spoutline.planning.table_intake.intake import CellReport, RowKind, SeenRow
from spoutline.planning.table_intake.intake_fields import CellKind
from spoutline.planning.table_intake.raw_table import column_letters
from spoutline.planning.table_intake.table_look import TableLook, shown_value
from spoutline.units.accepted import UnitSystem

Index = QModelIndex | QPersistentModelIndex
_ROOT = QModelIndex()
_NUMBERS = (CellKind.NUMBER, CellKind.WHOLE, CellKind.MONEY)


class TablePreview(QAbstractTableModel):
    """Shows a look at a table.

    Signals
    -------
    written(dict)
        A person wrote into a cell; the text by row and column of this model.
    """

    written = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._columns: tuple[MappedColumn, ...] = ()
        self._rows: tuple[SeenRow, ...] = ()
        self._units: UnitSystem | None = None
        self._reports: dict[tuple[int, str], CellReport] = {}
        self._newer: dict[tuple[int, str], str] = {}  # written since the table was last read

    @property
    def rows(self) -> tuple[SeenRow, ...]:
        """The rows shown."""
        return self._rows

    @property
    def columns(self) -> tuple[MappedColumn, ...]:
        """The columns shown: those that hold something."""
        return self._columns

    def show_look(self, look: TableLook | None) -> None:
        """Show another look; where rows and columns are the same a view keeps its place."""
        columns = () if look is None else tuple(one for one in look.result.opened.mapping if one.field is not None)
        rows = () if look is None else look.rows
        is_same = columns == self._columns and [row.number for row in rows] == [row.number for row in self._rows]
        if not is_same:
            self.beginResetModel()
        self._columns, self._rows, self._newer = columns, rows, {}
        self._units = None if look is None else look.result.opened.table_map.units
        self._reports = {}
        for report in () if look is None else look.reports:
            self._reports.setdefault((report.row, report.field), report)
        if not is_same:
            self.endResetModel()
        elif rows and columns:
            self.dataChanged.emit(self.index(0, 0), self.index(len(rows) - 1, len(columns) - 1))

    def text(self, row: int, column: int) -> str:
        """Return the text of a cell as it stands after all repairs, those just written among them."""
        seen, slot = self._rows[row], self._columns[column].slot
        return self._newer.get((seen.number, slot), seen.texts.get(slot, ""))

    def keep_newer(self, texts: Mapping[tuple[int, int], str]) -> None:
        """Show texts at once that were just written, until the table is read anew."""
        for (row, column), text in texts.items():
            self._newer[self._rows[row].number, self._columns[column].slot] = text
            self.dataChanged.emit(self.index(row, column), self.index(row, column))

    def place_of(self, report: CellReport) -> tuple[int, int] | None:
        """Return row and column of the cell that a report is about; None where it is not shown."""
        row = next((place for place, seen in enumerate(self._rows) if seen.number == report.row), None)
        slots = [one.slot for one in self._columns]
        if row is None or not slots:
            return None
        return row, slots.index(report.field) if report.field in slots else 0

    def report_at(self, row: int, column: int) -> CellReport | None:
        """Return what is wrong or open in a cell; None for a sound one."""
        return self._reports.get((self._rows[row].number, self._columns[column].slot))

    def rowCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of rows."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of columns."""
        return 0 if parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:  # noqa: PLR0911 - one line per role
        """Qt: return what a cell shows."""
        if not index.isValid():
            return None
        row, column = index.row(), index.column()
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return self._shown(row, column)
            case Qt.ItemDataRole.EditRole:
                return self.text(row, column)
            case Qt.ItemDataRole.ToolTipRole | Qt.ItemDataRole.AccessibleDescriptionRole:
                return self._hint(row, column)
            case Qt.ItemDataRole.TextAlignmentRole:
                field = self._columns[column].field
                side = Qt.AlignmentFlag.AlignRight if field and field.cell in _NUMBERS else Qt.AlignmentFlag.AlignLeft
                return int(side | Qt.AlignmentFlag.AlignVCenter)
            case Qt.ItemDataRole.AccessibleTextRole:
                return told_with_mark(self._shown(row, column), self._tone(row, column), self._hint(row, column) or "")
            case Role.CHOICES:
                return self._choices(column)
            case Role.TONE:
                return self._tone(row, column)
        return None

    def _shown(self, row: int, column: int) -> str:
        seen, mapped = self._rows[row], self._columns[column]
        value = seen.values.get(mapped.slot)
        if value is None or (seen.number, mapped.slot) in self._newer:
            return self.text(row, column)
        return shown_value(value, mapped.field, self._units)

    def _choices(self, column: int) -> tuple[str, ...] | None:
        field = self._columns[column].field
        return None if field is None else tuple(choice.value for choice in field.choices) or None

    def _hint(self, row: int, column: int) -> str:
        seen, slot = self._rows[row], self._columns[column].slot
        report = self.report_at(row, column)
        written = tr("In the file: {0}").format(seen.written.get(slot, ""))
        return "\n".join(filter(None, (report.wanted if report else "", _left_out(seen.kind), written)))

    def _tone(self, row: int, column: int) -> Tone | None:
        seen = self._rows[row]
        if seen.kind is not RowKind.PART:
            return Tone.NOTE if column == 0 else None
        report = self.report_at(row, column)
        if (seen.number, self._columns[column].slot) in self._newer:
            return Tone.WORKING
        if report is None:
            return None
        return Tone.BAD if report.kind is FaultKind.FAULT else Tone.QUESTION

    def setData(self, index: Index, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Qt: write one cell."""
        if not index.isValid() or role != Qt.ItemDataRole.EditRole:
            return False
        self.written.emit({(index.row(), index.column()): str(value)})
        return True

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Qt: the cells of parts can be written."""
        flags = super().flags(index)
        is_part = index.isValid() and self._rows[index.row()].kind is RowKind.PART
        return flags | Qt.ItemFlag.ItemIsEditable if is_part else flags

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Qt: return what a column holds, or the number of a row as a spreadsheet counts it."""
        if orientation is Qt.Orientation.Vertical:
            return str(self._rows[section].number) if role == Qt.ItemDataRole.DisplayRole else None
        mapped = self._columns[section]
        if role == Qt.ItemDataRole.DisplayRole and mapped.field is not None:
            return tr(mapped.field.title)
        if role == Qt.ItemDataRole.ToolTipRole:
            return f"{column_letters(mapped.place)}  {mapped.column.title}"
        return None


def _left_out(kind: RowKind) -> str:
    words = {
        RowKind.TOTAL: tr("Left out: a total"),
        RowKind.HEADINGS: tr("Left out: the titles once more"),
        RowKind.SECTION: tr("Left out: a heading between rows"),
        RowKind.SKIPPED: tr("Left out by a repair"),
    }
    return words.get(kind, "")
