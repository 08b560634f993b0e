"""A table of cells whose rows can be taken away and copied."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import (
    QAbstractItemModel,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
    Qt,
    Signal,
)
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QMenu, QWidget

from spoutline.gui.widgets.cell_table import CellTable
from spoutline.gui.widgets.column_heads import ChoosingHead, HeldColumn
from spoutline.gui.wording import tr

_UNSORTED = -1


class SheetTable(CellTable):
    """Cells in rows, of which the first one stays in sight when the table is scrolled sideways.

    A click on the head of a column chooses it, a double click sorts by it; the menu of a head, and of a cell, does
    both. Keys: Ctrl+Space chooses the column of the current cell; Ctrl+Delete takes the rows of the chosen cells away;
    Delete does so where whole rows are chosen, and empties the chosen cells elsewhere.

    Signals
    -------
    copy_wanted(list[int]), removal_wanted(list[int])
        What is to happen to rows of the view's own model.
    """

    copy_wanted = Signal(object)
    removal_wanted = Signal(object)

    def __init__(
        self,
        name: str,
        parent: QWidget | None = None,
        titles: Callable[[list[list[str]]], bool] = lambda _: False,
    ) -> None:
        super().__init__(name, parent, titles)
        self.head = ChoosingHead(self)
        self.setHorizontalHeader(self.head)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.held = HeldColumn(self)
        self._sorted_by, self._order = _UNSORTED, Qt.SortOrder.AscendingOrder
        for head in (self.head, self.held.head):
            head.sort_wanted.connect(self._turn_order)
            head.setToolTip(tr("A click chooses the column, a double click sorts by it"))
            head.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.head.customContextMenuRequested.connect(self._ask_head)
        self.held.head.customContextMenuRequested.connect(lambda at: self._ask(0, self.held.head.mapToGlobal(at)))

    @property
    def is_choosing_column(self) -> bool:
        """Whether the row in hand changes for a moment only, while a column is chosen by its head."""
        return self.head.is_choosing or self.held.head.is_choosing

    def setModel(self, model: QAbstractItemModel | None) -> None:
        """Qt: show a model."""
        super().setModel(model)
        self.held.follow()

    def choose_column(self, column: int) -> None:
        """Choose all cells of a column; the row in hand stays."""
        selection, here = self.selectionModel(), self.currentIndex()
        flags = QItemSelectionModel.SelectionFlag
        index = self.model().index(max(here.row(), 0), column)
        selection.select(index, flags.ClearAndSelect | flags.Columns)
        selection.setCurrentIndex(index, flags.NoUpdate)

    def sort_by(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Sort the rows by a column; -1 gives them the order in which they were entered."""
        self._sorted_by, self._order = column, order
        for head in (self.head, self.held.head):
            head.setSortIndicatorShown(column != _UNSORTED)
            head.setSortIndicator(column, order)
        self.model().sort(column, order)

    def menu(self, column: int) -> QMenu:
        """Return what can be done with a column."""
        menu = QMenu(self)
        steps: tuple[tuple[str, Callable[[], None]], ...] = (
            (tr("Choose the column"), lambda: self.choose_column(column)),
            (tr("Sort by it, rising"), lambda: self.sort_by(column)),
            (tr("Sort by it, falling"), lambda: self.sort_by(column, Qt.SortOrder.DescendingOrder)),
            (tr("In the order entered"), lambda: self.sort_by(_UNSORTED)),
        )
        for words, act in steps:
            menu.addAction(words).triggered.connect(lambda _=False, step=act: step())
        return menu

    def scrollTo(
        self,
        index: QModelIndex | QPersistentModelIndex,
        hint: QAbstractItemView.ScrollHint = QAbstractItemView.ScrollHint.EnsureVisible,
    ) -> None:
        """Qt: bring a cell into view, out from under the first column, which is in view anyway."""
        sideways = self.horizontalScrollBar()
        before = sideways.value()
        super().scrollTo(index, hint)
        if index.column() == 0:
            sideways.setValue(before)
        elif sideways.value():
            hidden = self.columnWidth(0) - self.visualRect(index).left()
            if hidden > 0:
                sideways.setValue(sideways.value() - hidden)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: the first column keeps its place."""
        super().resizeEvent(event)
        self.held.fit()

    def updateGeometries(self) -> None:
        """Qt: heads of another size move the first column too."""
        super().updateGeometries()
        if hasattr(self, "held"):  # Qt lays out while it builds
            self.held.fit()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Qt: offer what can be done with the column of the current cell."""
        if self.currentIndex().isValid():
            self._ask(self.currentIndex().column(), event.globalPos())

    def _ask_head(self, at: QPoint) -> None:
        column = self.head.logicalIndexAt(at)
        if column >= 0:
            self._ask(column, self.head.mapToGlobal(at))

    def _ask(self, column: int, at: QPoint) -> None:
        menu = self.menu(column)
        menu.exec(at)
        menu.deleteLater()

    def _turn_order(self, column: int) -> None:
        """Sort by a column: rising, then falling, then as entered."""
        if column != self._sorted_by:
            self.sort_by(column)
        elif self._order is Qt.SortOrder.AscendingOrder:
            self.sort_by(column, Qt.SortOrder.DescendingOrder)
        else:
            self.sort_by(_UNSORTED)

    def ask_copy(self) -> None:
        """Ask for a copy of the chosen rows."""
        if rows := self.chosen_rows():
            self.copy_wanted.emit(rows)

    def ask_removal(self) -> None:
        """Ask to take the chosen rows away."""
        if rows := self.chosen_rows():
            self.removal_wanted.emit(rows)

    def clear_cells(self) -> None:
        """Ask to take whole rows away where such are chosen; take the answers of the chosen cells away elsewhere."""
        rows = self.chosen_rows()
        if rows and len(self.chosen_cells()) == len(rows) * self.model().columnCount():
            self.removal_wanted.emit(rows)
        else:
            super().clear_cells()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: act on the keys of a spreadsheet; what is written into the first column has to be seen."""
        writes = event.key() == Qt.Key.Key_F2 or (event.text() and event.text().isprintable())
        if writes and not event.modifiers() & Qt.KeyboardModifier.ControlModifier and self.currentIndex().column() == 0:
            self.horizontalScrollBar().setValue(0)
        super().keyPressEvent(event)

    def _call(self, event: QKeyEvent) -> Callable[[], None] | None:
        modifiers = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        here = self.currentIndex()
        is_column = event.key() == Qt.Key.Key_Space and modifiers == Qt.KeyboardModifier.ControlModifier
        if is_column and here.isValid() and self.state() is not self.State.EditingState:
            return lambda: self.choose_column(here.column())
        is_removal = event.key() == Qt.Key.Key_Delete and modifiers == Qt.KeyboardModifier.ControlModifier
        if is_removal and self.state() is not self.State.EditingState:
            return self.ask_removal
        return super()._call(event)
