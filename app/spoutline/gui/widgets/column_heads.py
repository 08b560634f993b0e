"""Heads of columns that choose, and a first column that stays in sight, for tables of cells."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView

from spoutline.gui.widgets.marks import MarkDelegate

Index = QModelIndex | QPersistentModelIndex


class ChoosingHead(QHeaderView):
    """A head of columns: a click chooses the column, with Shift and Ctrl several, and the row in hand stays.

    Signals
    -------
    sort_wanted(int)
        A column was double-clicked: rows are to be sorted by it.
    """

    sort_wanted = Signal(int)

    def __init__(self, table: QTableView) -> None:
        super().__init__(Qt.Orientation.Horizontal, table)
        self._table = table
        self.is_choosing = False
        self.setSectionsClickable(True)
        self.setHighlightSections(True)
        self.sectionDoubleClicked.connect(self.sort_wanted)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Qt: choose a column."""
        with self._same_row():
            super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Qt: choose the columns that the mouse goes over."""
        with self._same_row():
            super().mouseMoveEvent(event)

    @contextmanager
    def _same_row(self) -> Iterator[None]:
        """Keep the row in hand and what is in view: Qt would turn to the first row."""
        table, before, top = self._table, self._table.currentIndex(), self._table.verticalScrollBar().value()
        self.is_choosing = True
        try:
            yield
            now = table.currentIndex()
            if before.isValid() and now.isValid() and now.row() != before.row():
                here = table.model().index(before.row(), now.column())
                table.selectionModel().setCurrentIndex(here, QItemSelectionModel.SelectionFlag.NoUpdate)
                table.verticalScrollBar().setValue(top)
        finally:
            self.is_choosing = False


class HeldColumn(QTableView):
    """The first column of a table, laid over its left edge as soon as it is scrolled sideways.

    It shares model, selection and rows with the table; a cell of it is written in the table, scrolled back for that.
    """

    def __init__(self, table: QTableView) -> None:
        super().__init__(table)
        self._table = table
        self.setObjectName("heldColumn")
        self.setAccessibleName(table.accessibleName())
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.setFocusProxy(table)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setSelectionBehavior(table.selectionBehavior())
        self.setSelectionMode(table.selectionMode())
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setAlternatingRowColors(table.alternatingRowColors())
        self.setWordWrap(False)
        self.setItemDelegate(MarkDelegate(self))  # one of its own: a delegate serves one view
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(table.verticalScrollMode())
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(table.verticalHeader().defaultSectionSize())
        self.head = ChoosingHead(self)
        self.setHorizontalHeader(self.head)
        self.head.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.doubleClicked.connect(self._write)
        table.horizontalScrollBar().valueChanged.connect(lambda _: self.fit())
        table.verticalScrollBar().valueChanged.connect(self.verticalScrollBar().setValue)
        self.verticalScrollBar().valueChanged.connect(table.verticalScrollBar().setValue)
        table.horizontalHeader().sectionResized.connect(lambda *_: self.fit())
        self.hide()

    def follow(self) -> None:
        """Show the model and the selection that the table has now."""
        self.setModel(self._table.model())
        self.setSelectionModel(self._table.selectionModel())
        for column in range(1, self.model().columnCount()):
            self.setColumnHidden(column, True)
        self.model().modelReset.connect(self._hide_others)
        self.model().columnsInserted.connect(lambda *_: self._hide_others())
        self.fit()

    def fit(self) -> None:
        """Lie over the first column where the table is scrolled away from it."""
        table = self._table
        if self.model() is None:
            return
        wide, heads = table.columnWidth(0), table.horizontalHeader().height()
        self.setColumnWidth(0, wide)
        self.head.setFixedHeight(heads)
        frame = table.frameWidth()
        left = table.verticalHeader().width() + frame if table.verticalHeader().isVisible() else frame
        self.setGeometry(left, frame, wide, table.viewport().height() + heads)
        is_away = table.horizontalScrollBar().value() > 0
        self.setVisible(is_away)
        if is_away:
            self.verticalScrollBar().setValue(table.verticalScrollBar().value())
            self.raise_()

    @property
    def room(self) -> int:
        """Pixels that it covers of the table now."""
        return self.width() if self.isVisible() else 0

    def _hide_others(self) -> None:
        for column in range(1, self.model().columnCount()):
            self.setColumnHidden(column, True)

    def _write(self, index: Index) -> None:
        self._table.horizontalScrollBar().setValue(0)
        self._table.edit(self._table.model().index(index.row(), 0))
