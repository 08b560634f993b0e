"""Rows of texts that are written like a spreadsheet; what is written is handed out, and shown once it comes back."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt, Signal

from spoutline.frozen import frozen
from spoutline.gui.models.marks import told_with_mark
from spoutline.gui.roles import Role, Tone

Index = QModelIndex | QPersistentModelIndex
Rows = tuple[tuple[str, ...], ...]
_ROOT = QModelIndex()


@frozen(kw_only=True)
class TextColumn:
    """One column: its title and help, how a cell is shown, and what a typed text is kept as."""

    title: str
    hint: str = ""
    shown: Callable[[str], str] = str
    kept: Callable[[str], str] = str
    is_number: bool = False


class TextRows(QAbstractTableModel):
    """Shows rows of texts with their faults.

    Signals
    -------
    written(Rows)
        A person wrote, added, moved or took away; the rows as they should be.
    """

    written = Signal(object)

    def __init__(
        self, columns: tuple[TextColumn, ...], new_row: tuple[str, ...], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._columns, self._new_row = columns, new_row
        self._rows: Rows = ()
        self._faults: dict[tuple[int, int], str] = {}

    @property
    def rows(self) -> Rows:
        """The rows shown."""
        return self._rows

    def show_rows(self, rows: Rows) -> None:
        """Show other rows; where only cells differ a view keeps its place."""
        if rows == self._rows:
            return
        if len(rows) == len(self._rows):
            self._rows = rows
            self._repaint()
            return
        self.beginResetModel()
        self._rows = rows
        self._faults = {}
        self.endResetModel()

    def show_faults(self, faults: Mapping[tuple[int, int], str]) -> None:
        """Mark the cells, by row and column, that are not usable, and say why."""
        if dict(faults) != self._faults:
            self._faults = dict(faults)
            self._repaint()

    def write_cells(self, cells: Mapping[tuple[int, int], str]) -> None:
        """Write texts into cells by row and column; rows that are not there yet are added, columns have to be there."""
        rows = [list(row) for row in self._rows]
        last = max((row for row, _ in cells), default=-1)
        rows += [list(self._new_row) for _ in range(last + 1 - len(rows))]
        for (row, column), text in cells.items():
            rows[row][column] = self._columns[column].kept(text)
        self._hand_out(tuple(tuple(row) for row in rows))

    def add_row(self, place: int) -> None:
        """Put a new row before the row at ``place``."""
        self._hand_out((*self._rows[:place], self._new_row, *self._rows[place:]))

    def duplicate(self, places: Iterable[int]) -> None:
        """Put a copy of each of these rows behind the last of them."""
        chosen = sorted(places)
        if chosen:
            behind = chosen[-1] + 1
            copies = tuple(self._rows[place] for place in chosen)
            self._hand_out((*self._rows[:behind], *copies, *self._rows[behind:]))

    def take_away(self, places: Iterable[int]) -> None:
        """Take these rows away."""
        chosen = set(places)
        self._hand_out(tuple(row for place, row in enumerate(self._rows) if place not in chosen))

    def move(self, places: Iterable[int], step: int) -> bool:
        """Move these rows together by one place, ``step`` -1 or 1; say whether there was room."""
        chosen = sorted(places, reverse=step > 0)
        rows = list(self._rows)
        if not chosen or not 0 <= chosen[0] + step < len(rows):
            return False
        for place in chosen:
            rows[place], rows[place + step] = rows[place + step], rows[place]
        self._hand_out(tuple(rows))
        return True

    def _hand_out(self, rows: Rows) -> None:
        if rows != self._rows:
            self.written.emit(rows)

    def _repaint(self) -> None:
        if self._rows:
            self.dataChanged.emit(self.index(0, 0), self.index(len(self._rows) - 1, len(self._columns) - 1))

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
        text, column = self._rows[index.row()][index.column()], self._columns[index.column()]
        fault = self._faults.get((index.row(), index.column()), "")
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return column.shown(text)
            case Qt.ItemDataRole.EditRole:
                return text
            case Qt.ItemDataRole.ToolTipRole | Qt.ItemDataRole.AccessibleDescriptionRole:
                return fault or column.hint
            case Qt.ItemDataRole.TextAlignmentRole:
                side = Qt.AlignmentFlag.AlignRight if column.is_number else Qt.AlignmentFlag.AlignLeft
                return int(side | Qt.AlignmentFlag.AlignVCenter)
            case Qt.ItemDataRole.AccessibleTextRole:
                return told_with_mark(column.shown(text), Tone.BAD if fault else None, fault)
            case Role.TONE:
                return Tone.BAD if fault else None
        return None

    def setData(self, index: Index, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Qt: write one cell."""
        if not index.isValid() or role != Qt.ItemDataRole.EditRole:
            return False
        self.write_cells({(index.row(), index.column()): str(value)})
        return True

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Qt: every cell can be written."""
        return super().flags(index) | Qt.ItemFlag.ItemIsEditable

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Qt: return the title of a column, or the number of a row."""
        if orientation is Qt.Orientation.Vertical:
            return str(section + 1) if role == Qt.ItemDataRole.DisplayRole else None
        column = self._columns[section]
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return column.title
            case Qt.ItemDataRole.ToolTipRole:
                return column.hint
            case Qt.ItemDataRole.TextAlignmentRole:
                side = Qt.AlignmentFlag.AlignRight if column.is_number else Qt.AlignmentFlag.AlignLeft
                return int(side | Qt.AlignmentFlag.AlignVCenter)
        return None
