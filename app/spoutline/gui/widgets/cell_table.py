"""A table with the habits of a spreadsheet: copy, paste, fill down, clear and one value for all chosen cells."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable

from PySide6.QtCore import QEvent, QItemSelectionModel, Qt, Signal
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QTableView, QWidget

from spoutline.gui.widgets.marks import MarkDelegate

Cells = dict[tuple[int, int], str]


class CellTable(QTableView):
    """Cells that are written one by one by typing, or many at once.

    Signals
    -------
    written(Cells)
        Texts for cells of the view's own model, by row and column.
    """

    written = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.EditKeyPressed
        )
        self.setAlternatingRowColors(True)
        self.setWordWrap(False)
        self.verticalHeader().setDefaultSectionSize(26)
        self.setItemDelegate(MarkDelegate(self))
        self._keys: dict[QKeySequence.StandardKey, Callable[[], None]] = {
            QKeySequence.StandardKey.Copy: self.copy_cells,
            QKeySequence.StandardKey.Paste: self.paste_cells,
            QKeySequence.StandardKey.Delete: self.clear_cells,
        }

    def chosen_cells(self) -> list[tuple[int, int]]:
        """Return row and column of the chosen cells, row by row."""
        return sorted((index.row(), index.column()) for index in self.selectedIndexes())

    def copy_cells(self) -> None:
        """Put the smallest rectangle round the chosen cells on the clipboard; what is not chosen in it stays empty."""
        cells = set(self.chosen_cells())
        if not cells:
            return
        rows = range(min(row for row, _ in cells), max(row for row, _ in cells) + 1)
        columns = range(min(column for _, column in cells), max(column for _, column in cells) + 1)
        buffer = io.StringIO(newline="")
        writer = csv.writer(buffer, delimiter="\t", lineterminator="\n")
        for row in rows:
            writer.writerow([self._text(row, column) if (row, column) in cells else "" for column in columns])
        QGuiApplication.clipboard().setText(buffer.getvalue())

    def paste_cells(self) -> None:
        """Write the clipboard from the current cell on; one value fills every chosen cell."""
        rows = list(csv.reader(io.StringIO(QGuiApplication.clipboard().text(), newline=""), delimiter="\t"))
        cells = self.chosen_cells()
        if not rows or not cells:
            return
        if len(rows) == 1 and len(rows[0]) == 1:
            self.written.emit(dict.fromkeys(cells, rows[0][0]))
            return
        top, left = cells[0]
        room = self.model().rowCount(), self.model().columnCount()
        self.written.emit(
            {
                (top + down, left + right): text
                for down, row in enumerate(rows)
                for right, text in enumerate(row)
                if top + down < room[0] and left + right < room[1]
            }
        )

    def fill_down(self) -> None:
        """Write the uppermost chosen cell of each column into the chosen ones below it."""
        first: dict[int, str] = {}
        texts: Cells = {}
        for row, column in self.chosen_cells():
            if column in first:
                texts[row, column] = first[column]
            else:
                first[column] = self._text(row, column)
        if texts:
            self.written.emit(texts)

    def clear_cells(self) -> None:
        """Take the answers of the chosen cells away."""
        self.write_all("")

    def write_all(self, text: str) -> None:
        """Write one text into every chosen cell."""
        cells = self.chosen_cells()
        if cells:
            self.written.emit(dict.fromkeys(cells, text))

    def choose(self, cells: list[tuple[int, int]]) -> None:
        """Choose cells by row and column; the first becomes the current one."""
        selection = self.selectionModel()
        selection.clearSelection()
        for row, column in cells:
            selection.select(self.model().index(row, column), QItemSelectionModel.SelectionFlag.Select)
        if cells:
            selection.setCurrentIndex(self.model().index(*cells[0]), QItemSelectionModel.SelectionFlag.NoUpdate)

    def _text(self, row: int, column: int) -> str:
        return str(self.model().index(row, column).data(Qt.ItemDataRole.EditRole) or "")

    def event(self, event: QEvent) -> bool:
        """Qt: keep the keys of this table from the menu while it has the keyboard."""
        if event.type() is QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) and self._call(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: act on the keys of a spreadsheet."""
        call = self._call(event)
        if call is None:
            super().keyPressEvent(event)
        else:
            call()

    def _call(self, event: QKeyEvent) -> Callable[[], None] | None:
        if self.state() is QAbstractItemView.State.EditingState:
            return None
        if event.key() == Qt.Key.Key_D and event.modifiers() == Qt.KeyboardModifier.ControlModifier:
            return self.fill_down
        return next((act for key, act in self._keys.items() if event.matches(key)), None)
