"""A sortable table over a tuple of values, with columns declared once."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, QSortFilterProxyModel, Qt

from spoutline.frozen import frozen
from spoutline.gui.models.marks import told_with_mark
from spoutline.gui.models.painted_roles import LEFT, RIGHT, PaintedProxy, PaintedRoles
from spoutline.gui.roles import Role, Tone

RecordT = TypeVar("RecordT")
Index = QModelIndex | QPersistentModelIndex
_ROOT = QModelIndex()


@frozen(kw_only=True)
class Column(Generic[RecordT]):
    """One column: title, the text of a cell and, where the text does not sort well, a comparable value.

    ``positions`` are the labels of the positions that a cell names and leads to. ``leads`` says that texts begin with
    what tells the rows apart, so that a narrow cell keeps their beginning.
    """

    title: str
    text: Callable[[RecordT], str]
    sort: Callable[[RecordT], Any] | None = None
    hint: Callable[[RecordT], str] | None = None
    tone: Callable[[RecordT], Tone | None] | None = None
    is_number: bool = False
    leads: bool = False
    positions: Callable[[RecordT], tuple[str, ...]] | None = None


class RecordTable(PaintedRoles, QAbstractTableModel, Generic[RecordT]):
    """Shows records in declared columns. The record itself is under ``Role.RECORD`` in every column."""

    def __init__(self, columns: Sequence[Column[RecordT]], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._columns = tuple(columns)
        self._records: tuple[RecordT, ...] = ()

    @property
    def records(self) -> tuple[RecordT, ...]:
        """The records shown, in their own order."""
        return self._records

    def show_records(self, records: Sequence[RecordT]) -> None:
        """Show other records."""
        self.beginResetModel()
        self._records = tuple(records)
        self.endResetModel()

    def replace_columns(self, columns: Sequence[Column[RecordT]]) -> None:
        """Show the same records in other columns, for example in other units."""
        self.beginResetModel()
        self._columns = tuple(columns)
        self.endResetModel()

    def rowCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of rows below ``parent``."""
        return 0 if parent.isValid() else len(self._records)

    def columnCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of columns."""
        return 0 if parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:  # noqa: PLR0911 - one line per role
        """Qt: return what a cell shows, or the record behind it."""
        if not index.isValid():
            return None
        record, column = self._records[index.row()], self._columns[index.column()]
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return column.text(record)
            case Qt.ItemDataRole.AccessibleTextRole:
                return told_with_mark(column.text(record), column.tone(record) if column.tone else None)
            case Qt.ItemDataRole.ToolTipRole:
                return column.hint(record) if column.hint else None
            case Qt.ItemDataRole.TextAlignmentRole:
                return RIGHT if column.is_number else LEFT
            case Role.SORT:
                return column.sort(record) if column.sort else column.text(record).casefold()
            case Role.TONE:
                return column.tone(record) if column.tone else None
            case Role.POSITIONS:
                return column.positions(record) if column.positions else ()
            case Role.LEADS:
                return column.leads
            case Role.RECORD:
                return record
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Qt: return the title of a column."""
        if orientation is Qt.Orientation.Horizontal and 0 <= section < len(self._columns):
            column = self._columns[section]
            if role == Qt.ItemDataRole.DisplayRole:
                return column.title
            if role == Qt.ItemDataRole.TextAlignmentRole:
                return RIGHT if column.is_number else LEFT
        return None


class SortedRecords(PaintedProxy, QSortFilterProxyModel):
    """Sorts a record table by its comparable values."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.setSortRole(Role.SORT)
        self.setDynamicSortFilter(True)

    def lessThan(self, left: Index, right: Index) -> bool:
        """Qt: compare two cells by their sort values."""
        return bool(left.data(Role.SORT) < right.data(Role.SORT))
