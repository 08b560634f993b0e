"""A table of rows that a person adds, copies, moves and takes away, with an editor for each kind of cell."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import (
    QAbstractItemModel,
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QSize,
    Qt,
    Signal,
    SignalInstance,
)
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QComboBox,
    QCompleter,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QStyleOptionViewItem,
    QWidget,
)

from spoutline.frozen import frozen
from spoutline.gui.widgets.answer_field import Choice
from spoutline.gui.widgets.cell_table import CellTable
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.widgets.theme import colours_now
from spoutline.gui.wording import tr

Index = QModelIndex | QPersistentModelIndex
_SEPARATOR = ";"
_LIST_WIDTH = 190  # pixels that the words of a list of boxes need
_TICK_HEIGHT = 22  # pixels of a box to tick with its words


@frozen
class CellEditor:
    """How a column is edited: a text with suggestions, one of the choices, or ``several`` of them."""

    choices: tuple[Choice, ...] = ()
    several: bool = False
    suggestions: tuple[str, ...] = ()


class CellEditors(MarkDelegate):
    """Makes the editor that a column asks for."""

    def __init__(self, editors: tuple[CellEditor, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._editors = editors

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: Index) -> QWidget:
        """Qt: make the editor of a cell."""
        wanted = self._editors[index.column()]
        if wanted.several:
            return _tick_list(wanted.choices, parent)
        if wanted.choices:
            box = StillBox(parent)
            for choice in wanted.choices:
                box.addItem(choice.words, choice.value)
            box.activated.connect(lambda _: self._finish(box))
            return box
        line = QLineEdit(parent)
        if wanted.suggestions:
            completer = QCompleter(list(wanted.suggestions), line)
            completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            completer.setFilterMode(Qt.MatchFlag.MatchContains)
            line.setCompleter(completer)
        return line

    def setEditorData(self, editor: QWidget, index: Index) -> None:
        """Qt: show the text of the cell in its editor."""
        text = str(index.data(Qt.ItemDataRole.EditRole) or "")
        if isinstance(editor, QComboBox):
            editor.setCurrentIndex(editor.findData(text))
        elif isinstance(editor, QListWidget):
            ticked = text.split(_SEPARATOR)
            for item in _items(editor):
                is_on = item.data(Qt.ItemDataRole.UserRole) in ticked
                item.setCheckState(Qt.CheckState.Checked if is_on else Qt.CheckState.Unchecked)
        elif isinstance(editor, QLineEdit):
            editor.setText(text)

    def setModelData(self, editor: QWidget, model: QAbstractItemModel, index: Index) -> None:
        """Qt: hand over what was written; a choice that nobody made leaves the cell as it is."""
        if isinstance(editor, QComboBox):
            if editor.currentIndex() >= 0:
                model.setData(index, editor.currentData())
        elif isinstance(editor, QListWidget):
            on = [item for item in _items(editor) if item.checkState() is Qt.CheckState.Checked]
            model.setData(index, _SEPARATOR.join(str(item.data(Qt.ItemDataRole.UserRole)) for item in on))
        elif isinstance(editor, QLineEdit):
            model.setData(index, editor.text())

    def updateEditorGeometry(self, editor: QWidget, option: QStyleOptionViewItem, index: Index) -> None:
        """Qt: give a list of boxes to tick the room it needs, inside the table."""
        if isinstance(editor, QListWidget):
            editor.setGeometry(_room(editor, option.rect))
        else:
            super().updateEditorGeometry(editor, option, index)

    def _finish(self, editor: QWidget) -> None:
        self.commitData.emit(editor)
        self.closeEditor.emit(editor, QAbstractItemDelegate.EndEditHint.NoHint)


class RowTable(CellTable):
    """Rows with the habits of a spreadsheet.

    Keys: Insert adds a row, Ctrl+Shift+D copies, Ctrl+Delete takes away, Alt+Up and Alt+Down move; Tab leaves the table
    behind its last cell.

    Signals
    -------
    row_wanted(int)
        A row is to be added before this place.
    copy_wanted(object), removal_wanted(object), move_wanted(object, int)
        What is to happen to the chosen rows.
    """

    row_wanted = Signal(int)
    copy_wanted = Signal(object)
    removal_wanted = Signal(object)
    move_wanted = Signal(object, int)

    def __init__(
        self, name: str, editors: tuple[CellEditor, ...], shares: tuple[int, ...], parent: QWidget | None = None
    ) -> None:
        super().__init__(name, parent)
        self._shares = shares
        self.editors = CellEditors(editors, self)
        self.setItemDelegate(self.editors)
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setStretchLastSection(True)
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.verticalHeader().setDefaultSectionSize(28)
        self._row_keys: dict[tuple[Qt.Key, Qt.KeyboardModifier], Callable[[], None]] = {
            (Qt.Key.Key_Insert, Qt.KeyboardModifier.NoModifier): self.ask_row,
            (Qt.Key.Key_D, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier): self.ask_copy,
            (Qt.Key.Key_Delete, Qt.KeyboardModifier.ControlModifier): self.ask_removal,
            (Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier): lambda: self.ask_move(-1),
            (Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier): lambda: self.ask_move(1),
        }

    def ask_row(self) -> None:
        """Ask for a row behind the chosen ones, at the end where none is chosen."""
        rows = self.chosen_rows()
        self.row_wanted.emit(rows[-1] + 1 if rows else self.model().rowCount())

    def ask_copy(self) -> None:
        """Ask for a copy of the chosen rows."""
        self._ask(self.copy_wanted)

    def ask_removal(self) -> None:
        """Ask to take the chosen rows away."""
        self._ask(self.removal_wanted)

    def ask_move(self, step: int) -> None:
        """Ask to move the chosen rows up (-1) or down (1)."""
        rows = self.chosen_rows()
        if rows:
            self.move_wanted.emit(rows, step)

    def go_to(self, row: int, column: int) -> None:
        """Put the keyboard into a cell."""
        self.choose([(row, column)])
        self.scrollTo(self.model().index(row, column))
        self.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def finish_editing(self) -> None:
        """Hand over what is being written in a cell."""
        editor = self.indexWidget(self.currentIndex())
        if editor is not None:
            self.commitData(editor)
            self.closeEditor(editor, QAbstractItemDelegate.EndEditHint.NoHint)

    def paste_cells(self) -> None:
        """Write the clipboard from the current cell on; rows are added where it needs more of them."""
        if not self.model().rowCount():
            self.ask_row()
            self.choose([(0, 0)])
        super().paste_cells()

    def _ask(self, signal: SignalInstance) -> None:
        rows = self.chosen_rows()
        if rows:
            signal.emit(rows)

    def _call(self, event: QKeyEvent) -> Callable[[], None] | None:
        modifiers = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        act = self._row_keys.get((Qt.Key(event.key()), modifiers))
        if act is not None and self.state() is not self.State.EditingState:
            return act
        return super()._call(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: Return writes into the cell; Tab behind the last cell and Shift+Tab before the first leave the table."""
        is_idle = self.state() is not self.State.EditingState
        if is_idle and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers():
            self.edit(self.currentIndex())
        elif is_idle and event.key() in (Qt.Key.Key_Tab, Qt.Key.Key_Backtab) and self._is_at_edge(event.key()):
            self.setTabKeyNavigation(False)  # else the table turns the wish to leave into a Tab of its own
            self.focusNextPrevChild(event.key() == Qt.Key.Key_Tab)
            self.setTabKeyNavigation(True)
        else:
            super().keyPressEvent(event)

    def _is_at_edge(self, key: int) -> bool:
        here, model = self.currentIndex(), self.model()
        if not here.isValid():
            return True
        last = (model.rowCount() - 1, model.columnCount() - 1)
        return (here.row(), here.column()) == (last if key == Qt.Key.Key_Tab else (0, 0))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint; where there are no rows, say how to make one."""
        super().paintEvent(event)
        if self.model() is not None and not self.model().rowCount():
            painter = QPainter(self.viewport())
            painter.setPen(QColor(colours_now().quiet_text))
            words = tr("No rows. Add, or the Insert key, makes one; rows can be pasted from a spreadsheet.")
            painter.drawText(
                self.viewport().rect(), int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap), words
            )
            painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: give the columns their shares of the new room."""
        super().resizeEvent(event)
        for column, share in enumerate(self._shares[:-1]):
            self.setColumnWidth(column, self.viewport().width() * share // sum(self._shares))


def _tick_list(choices: tuple[Choice, ...], parent: QWidget) -> QListWidget:
    editor = QListWidget(parent)
    for choice in choices:
        item = QListWidgetItem(choice.words, editor)
        item.setData(Qt.ItemDataRole.UserRole, choice.value)
        item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemIsUserCheckable)
        item.setCheckState(Qt.CheckState.Unchecked)
        item.setSizeHint(QSize(0, _TICK_HEIGHT))
    editor.setCurrentRow(0)
    return editor


def _items(editor: QListWidget) -> list[QListWidgetItem]:
    return [editor.item(row) for row in range(editor.count())]


def _room(editor: QListWidget, cell: QRect) -> QRect:
    """Return where a list lies: over its cell, as high as its items or the table, moved up where it must."""
    table = editor.parentWidget()
    room = table.rect() if table is not None else cell
    high = min(editor.count() * _TICK_HEIGHT + 8, room.height())
    wide = min(max(cell.width(), _LIST_WIDTH), room.width())
    return QRect(min(cell.left(), room.width() - wide), max(0, min(cell.top(), room.height() - high)), wide, high)
