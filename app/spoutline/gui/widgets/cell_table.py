"""A table with the habits of a spreadsheet: copy, paste, fill down, clear and one value for all chosen cells."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable

from PySide6.QtCore import QEvent, QItemSelectionModel, QMimeData, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QCompleter,
    QLineEdit,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from spoutline.gui.roles import Role
from spoutline.gui.widgets.copying import copied_cells, copy_whole
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.model.faults import InputFault
from spoutline.planning.survey_import.clipboard import pasted_rows

Cells = dict[tuple[int, int], str]
_ROWS_MEASURED = 60  # for the width of a column, from the first in view on; a table may hold thousands


class _CellDelegate(MarkDelegate):
    """Completes what is typed to one of the words of ``Role.CHOICES``."""

    def createEditor(
        self, parent: QWidget, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QWidget:
        """Qt: return the field in which a cell is written."""
        editor = super().createEditor(parent, option, index)
        choices = index.data(Role.CHOICES)
        if choices and isinstance(editor, QLineEdit):
            completer = QCompleter(list(choices), editor)
            completer.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)
            completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            editor.setCompleter(completer)
        return editor


class CellTable(QTableView):
    """Cells that are written one by one by typing, or many at once.

    Signals
    -------
    written(Cells)
        Texts for cells of the view's own model, by row and column. What is pasted may reach beyond its last row and
        column.
    titled(list[list[str]])
        Rows on the clipboard that begin with a row of titles, as ``titles`` tells them.
    refused(InputFault)
        Why nothing of the clipboard was pasted.
    """

    written = Signal(object)
    titled = Signal(object)
    refused = Signal(object)

    def __init__(
        self,
        name: str,
        parent: QWidget | None = None,
        titles: Callable[[list[list[str]]], bool] = lambda _: False,
    ) -> None:
        super().__init__(parent)
        self._titles = titles
        self.setAccessibleName(name)
        self.horizontalHeader().setResizeContentsPrecision(_ROWS_MEASURED)
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
        self.setItemDelegate(_CellDelegate(self))
        self._keys: dict[QKeySequence.StandardKey, Callable[[], None]] = {
            QKeySequence.StandardKey.Copy: self.copy_cells,
            QKeySequence.StandardKey.Paste: self.paste_cells,
            QKeySequence.StandardKey.Delete: self.clear_cells,
        }

    def chosen_cells(self) -> list[tuple[int, int]]:
        """Return row and column of the chosen cells, row by row."""
        return sorted((index.row(), index.column()) for index in self.selectedIndexes())

    def chosen_rows(self) -> list[int]:
        """Return the rows of the chosen cells, from above."""
        return sorted({row for row, _ in self.chosen_cells()})

    def copy_cells(self) -> None:
        """Put the smallest rectangle round the chosen cells on the clipboard; what is not chosen in it stays empty.

        Where all cells are chosen, the whole table is put there under the titles of its columns, as text and as HTML;
        the cells alone lie beside it for whoever pastes them back into a table of the program.
        """
        cells = set(self.chosen_cells())
        if not cells:
            return
        rows = range(min(row for row, _ in cells), max(row for row, _ in cells) + 1)
        columns = range(min(column for _, column in cells), max(column for _, column in cells) + 1)
        buffer = io.StringIO(newline="")
        writer = csv.writer(buffer, delimiter="\t", lineterminator="\n")
        for row in rows:
            writer.writerow([self._text(row, column) if (row, column) in cells else "" for column in columns])
        if len(cells) == self.model().rowCount() * self.model().columnCount() > 1:
            copy_whole(self, cells=buffer.getvalue())
            return
        data = QMimeData()
        data.setText(buffer.getvalue())
        QGuiApplication.clipboard().setMimeData(data)

    def paste_cells(self) -> None:
        """Write the clipboard from the first chosen cell on; one value, or one row, fills every chosen row."""
        try:
            rows = pasted_rows(copied_cells() or QGuiApplication.clipboard().text())
        except InputFault as fault:
            self.refused.emit(fault)
            return
        cells = self.chosen_cells()
        if not rows:
            return
        if self._titles(rows):
            self.titled.emit(rows)
        elif cells and len(rows) == 1 and len(rows[0]) == 1:
            self.written.emit(dict.fromkeys(cells, rows[0][0]))
        elif cells:
            top, left = cells[0][0], min(column for _, column in cells)
            chosen = self.chosen_rows()
            places = chosen if len(rows) == 1 else range(top, top + len(rows))
            blocks = rows * len(chosen) if len(rows) == 1 else rows
            self.written.emit(
                {
                    (place, left + right): text
                    for place, row in zip(places, blocks, strict=True)
                    for right, text in enumerate(row)
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

    def go_down(self, rows: int) -> None:
        """Turn to a cell so many rows below the current one, or above where negative; at the end nothing happens."""
        here = self.currentIndex()
        there = self.model().index(here.row() + rows, here.column())
        if here.isValid() and there.isValid():
            self.setCurrentIndex(there)

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        """Qt: go on to the cell below after Return."""
        super().closeEditor(editor, hint)
        if hint is QAbstractItemDelegate.EndEditHint.SubmitModelCache:
            self.go_down(1)

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
        if event.key() == Qt.Key.Key_F2:
            return lambda: self.edit(self.currentIndex())
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            rows = -1 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
            return lambda: self.go_down(rows)
        return next((act for key, act in self._keys.items() if event.matches(key)), None)
