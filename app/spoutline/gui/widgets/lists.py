"""Tables and trees with the same manners everywhere: one row at a time, marks, columns that fit."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QItemSelectionModel, QModelIndex, QPersistentModelIndex, QRect, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QColor,
    QFontMetrics,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QTreeView, QWidget

from spoutline.gui.position_links import PositionLinks
from spoutline.gui.roles import Role
from spoutline.gui.widgets.copying import WholeRows, copy_matrix
from spoutline.gui.widgets.eliding import widths_by_need, widths_with_room
from spoutline.gui.widgets.marks import CELL_EDGES_PX, MarkDelegate
from spoutline.gui.widgets.theme import colours_now

Index = QModelIndex | QPersistentModelIndex

_HEADER_EDGES_PX = 14  # left and right of a title, as the style sheet has it
_ROWS_MEASURED = 60  # for the width of a column whose texts may be cut
_ROW_EDGES_PX = 10  # above and below a text
_MOST_WRAPPED = 40  # rows whose texts are measured; a quotation of a big station lists a thousand parts


if TYPE_CHECKING:
    from collections.abc import Sequence

    _View = QAbstractItemView
else:
    _View = object  # Qt's classes take no other of Qt beside them


class _RowKeys(_View):
    """The manners of keys and clicks that tables and trees share."""

    _whole: WholeRows
    _links: PositionLinks

    def event(self, event: QEvent) -> bool:
        """Qt: keep the keys of this list from the menu while the keyboard is here."""
        asks = event if event.type() is QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) else None
        if asks is not None and (_copies(asks) or self._links.follows(asks)):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: Ctrl+A chooses all rows, Ctrl+C copies the chosen with titles, Ctrl+Return leads to a position."""
        if event.matches(QKeySequence.StandardKey.SelectAll):
            self._whole.choose_all()
        elif self._links.follows(event):
            self._links.follow()
        elif event.matches(QKeySequence.StandardKey.Copy):
            self._whole.copy()
        else:
            if not event.modifiers():
                self._whole.choose_one()
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Qt: a click chooses one row again."""
        self._whole.choose_one()
        super().mousePressEvent(event)


class Table(_RowKeys, QTableView):
    """A table of rows.

    ``shares`` are the parts of the room that the columns take. Of the columns ``whole`` the texts are never cut, and
    what no text of a column needs goes to those that are. Those
    that ``gives_way`` names are hidden, one after the other, where the room holds not even what is least. One that
    ``wraps`` shows the texts of its first column in as many lines as they need, down to the fortieth row.

    Signals
    -------
    picked(object)
        Another row is current; its record.
    opened(object)
        A person pressed Return or double-clicked; the record.
    """

    picked = Signal(object)
    opened = Signal(object)

    def __init__(
        self,
        name: str,
        parent: QWidget | None = None,
        *,
        stretch: int = -1,
        shares: tuple[int, ...] = (),
        whole: tuple[int, ...] = (),
        gives_way: tuple[int, ...] = (),
        wraps: bool = False,
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._whole = WholeRows(self)
        self._links = PositionLinks(self)
        self._stretch, self._shares = stretch, shares
        self._never_cut, self._gives_way = whole, gives_way
        self.wrapped_rows = _MOST_WRAPPED if wraps else 0
        self._taught = ""
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setAlternatingRowColors(True)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setWordWrap(wraps)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(26)
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setItemDelegate(MarkDelegate(self))
        self.activated.connect(lambda index: self.opened.emit(index.data(Role.RECORD)))

    def fit_columns(self) -> None:
        """Give each column its share of the room; without shares, what its texts need, and one the rest."""
        header = self.horizontalHeader()
        if self._shares:
            header.setStretchLastSection(True)
            self._share_out(self.viewport().width())
            self._wrap()
            return
        for column in range(header.count()):
            is_rest = column == self._stretch
            header.setSectionResizeMode(
                column, QHeaderView.ResizeMode.Stretch if is_rest else QHeaderView.ResizeMode.ResizeToContents
            )

    def _share_out(self, room: int) -> None:
        """Give each column its share of the room, no less than its title needs; hide those that give way for lack."""
        count = min(len(self._shares), self.horizontalHeader().count())
        least = [self._least_width(column) for column in range(count)]
        shown = list(range(count))
        for column in self._gives_way:
            if sum(least[one] for one in shown) > room > 0:
                shown.remove(column)
        for column in range(count):
            self.setColumnHidden(column, column not in shown)
        total = sum(self._shares[column] for column in shown)
        wanted = [room * self._shares[column] // total for column in shown]
        if self._never_cut:
            needed = [least[one] if one in self._never_cut else self._width_in_view(one) for one in shown]
            wanted = widths_by_need(wanted, needed)
        for column, width in zip(shown, widths_with_room(wanted, [least[one] for one in shown], room), strict=True):
            self.setColumnWidth(column, width)

    def _wrap(self) -> None:
        """Give each row that wraps the height of its title, and no other text is measured for it."""
        room, model = self.columnWidth(0) - CELL_EDGES_PX, self.model()
        place, usual = QRect(0, 0, max(room, 40), 10_000), self.verticalHeader().defaultSectionSize()
        for row in range(min(self.wrapped_rows, model.rowCount())):
            words = str(model.index(row, 0).data() or "")
            wanted = self.fontMetrics().boundingRect(place, int(Qt.TextFlag.TextWordWrap), words).height()
            self.setRowHeight(row, max(usual, wanted + _ROW_EDGES_PX))

    def _least_width(self, column: int) -> int:
        return self._needed_width(column) if column in self._never_cut else self._title_width(column)

    def _title_width(self, column: int) -> int:
        title = str(self.model().headerData(column, Qt.Orientation.Horizontal))
        return _widest_line(self.horizontalHeader().fontMetrics(), title) + _HEADER_EDGES_PX

    def _needed_width(self, column: int) -> int:
        return max(self._title_width(column), self.sizeHintForColumn(column))

    def _width_in_view(self, column: int) -> int:
        """Return what the texts about the place in view need: to measure a thousand rows would hold the window up."""
        header = self.horizontalHeader()
        usual = header.resizeContentsPrecision()
        header.setResizeContentsPrecision(_ROWS_MEASURED)
        try:
            return self._needed_width(column)
        finally:
            header.setResizeContentsPrecision(usual)

    def teach(self, words: str) -> None:
        """Say what comes here and how, while there are no rows."""
        self._taught = words
        self.setAccessibleDescription(words)
        self.viewport().update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint; without rows, say what comes here."""
        super().paintEvent(event)
        if self._taught and self.model() is not None and not self.model().rowCount():
            painter = QPainter(self.viewport())
            painter.setPen(QColor(colours_now().quiet_text))
            box = self.viewport().rect().adjusted(16, 8, -16, -8)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap), self._taught)
            painter.end()

    def current_record(self) -> object:
        """Return the record of the current row; None for none."""
        return self.currentIndex().data(Role.RECORD)

    def pick_row(self, row: int) -> None:
        """Make a row current without a signal loop: nothing happens where it is current already."""
        if 0 <= row < self.model().rowCount() and self.currentIndex().row() != row:
            self.selectRow(row)
            self.setCurrentIndex(self.model().index(row, 0))

    def currentChanged(self, current: Index, previous: Index) -> None:
        """Qt: tell which row is current."""
        super().currentChanged(current, previous)
        if current.isValid():
            self.picked.emit(current.data(Role.RECORD))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: give the columns their shares of the new room."""
        super().resizeEvent(event)
        if self._shares:
            self.fit_columns()


def _widest_line(metrics: QFontMetrics, title: str) -> int:
    return max(metrics.horizontalAdvance(line) for line in title.split("\n"))


class Tree(_RowKeys, QTreeView):
    """A tree of rows.

    Signals
    -------
    picked(object)
        Another row is current; its record.
    opened(object)
        A person pressed Return or double-clicked; the record.
    """

    picked = Signal(object)
    opened = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None, *, shares: tuple[int, ...] = (1,)) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._whole = WholeRows(self)
        self._links = PositionLinks(self)
        self._shares = shares
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setUniformRowHeights(False)
        self.setWordWrap(True)
        self.setAllColumnsShowFocus(True)
        self.setExpandsOnDoubleClick(True)
        self.setItemDelegate(MarkDelegate(self))
        self.header().setStretchLastSection(True)
        self.header().setMinimumSectionSize(30)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.activated.connect(lambda index: self.opened.emit(index.siblingAtColumn(0).data(Role.RECORD)))

    def fit_columns(self) -> None:
        """Give each column that is there its share of the room, no less than its title needs; texts wrap in it."""
        room, shares = self.viewport().width(), self._shares[: self.header().count()]
        wanted = [room * share // sum(shares) for share in shares]
        if not self.header().isHidden():
            wanted = widths_with_room(wanted, [self._title_width(column) for column in range(len(shares))], room)
        for column, width in enumerate(wanted):
            self.setColumnWidth(column, width)

    def _title_width(self, column: int) -> int:
        title = str(self.model().headerData(column, Qt.Orientation.Horizontal) or "")
        return _widest_line(self.header().fontMetrics(), title) + _HEADER_EDGES_PX

    def scroll_by_rows(self, wanted: bool) -> None:
        """Scroll row by row, not smoothly: of a thousand rows Qt then measures those in view alone."""
        mode = QAbstractItemView.ScrollMode.ScrollPerItem if wanted else QAbstractItemView.ScrollMode.ScrollPerPixel
        if self.verticalScrollMode() is not mode:
            self.setVerticalScrollMode(mode)

    def span_rows(self, indexes: tuple[QModelIndex, ...]) -> None:
        """Let the first cell of these rows take the whole row."""
        for index in indexes:
            self.setFirstColumnSpanned(index.row(), index.parent(), True)

    def current_record(self) -> object:
        """Return the record of the current row; None for none."""
        return self.currentIndex().siblingAtColumn(0).data(Role.RECORD)

    def pick(self, index: QModelIndex) -> None:
        """Make a row current."""
        if index.isValid() and index != self.currentIndex():
            self._come_near(index)
            self.selectionModel().setCurrentIndex(
                index, QItemSelectionModel.SelectionFlag.ClearAndSelect | QItemSelectionModel.SelectionFlag.Rows
            )

    def dataChanged(self, first: Index, last: Index, roles: Sequence[int] = ()) -> None:
        """Qt: paint what changed. By rows all in view is painted: to find the row Qt would measure all before it."""
        if self._scrolls_by_rows and not QAccessible.isActive():
            self.viewport().update()
        else:
            super().dataChanged(first, last, roles)

    def verticalOffset(self) -> int:
        """Qt: how many pixels lie above. By rows they are told by the height of a line: Qt would measure each row."""
        if not self._scrolls_by_rows:
            return super().verticalOffset()
        return self.verticalScrollBar().value() * self.fontMetrics().lineSpacing()

    @property
    def _scrolls_by_rows(self) -> bool:
        return self.verticalScrollMode() is QAbstractItemView.ScrollMode.ScrollPerItem

    def _come_near(self, index: QModelIndex) -> None:
        """Scroll to about a row, where that is done by rows: to find it Qt would measure all rows on the way.

        The row left is forgotten without a word for the same reason: Qt would look where it is to be painted.
        """
        if not self._scrolls_by_rows:
            return
        self.executeDelayedItemsLayout()
        bar, row = self.verticalScrollBar(), self._rows_above(index)
        if not bar.value() <= row < bar.value() + bar.pageStep():
            self.selectionModel().reset()
            bar.setValue(row - bar.pageStep() // 2)
            self.viewport().update()

    def _rows_above(self, index: QModelIndex) -> int:
        """Return how many rows of the list stand above one; what is below a closed row is in no list."""
        model, above = self.model(), 0
        while index.isValid():
            parent = index.parent()
            above += sum(1 + self._rows_below(model.index(row, 0, parent)) for row in range(index.row()))
            above += parent.isValid()
            index = parent
        return above

    def _rows_below(self, index: QModelIndex) -> int:
        count = self.model().rowCount(index)
        if not count or not self.isExpanded(index):
            return 0
        return sum(1 + self._rows_below(self.model().index(row, 0, index)) for row in range(count))

    def currentChanged(self, current: Index, previous: Index) -> None:
        """Qt: tell which row is current."""
        super().currentChanged(current, previous)
        if current.isValid():
            self.picked.emit(self.model().index(current.row(), 0, current.parent()).data(Role.RECORD))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: give the columns their shares of the new room."""
        super().resizeEvent(event)
        self.fit_columns()
        self.scheduleDelayedItemsLayout()


class Matrix(QTableView):
    """Cells between named rows and named columns, one chosen at a time.

    Ctrl+A chooses all until the next click or key; Ctrl+C copies the whole, rows and columns under their names.
    """

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._whole = WholeRows(self)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.setItemDelegate(MarkDelegate(self))
        self.verticalHeader().setDefaultSectionSize(26)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)

    def event(self, event: QEvent) -> bool:
        """Qt: keep the keys of this table from the menu while the keyboard is here."""
        if event.type() is QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) and _copies(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: Ctrl+A chooses all cells, Ctrl+C copies the whole with the names of rows and columns."""
        if event.matches(QKeySequence.StandardKey.SelectAll):
            self._whole.choose_all()
        elif event.matches(QKeySequence.StandardKey.Copy):
            copy_matrix(self)
        else:
            if not event.modifiers():
                self._whole.choose_one()
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Qt: a click chooses one cell again."""
        self._whole.choose_one()
        super().mousePressEvent(event)


def _copies(event: QKeyEvent) -> bool:
    return event.matches(QKeySequence.StandardKey.SelectAll) or event.matches(QKeySequence.StandardKey.Copy)
