"""Room for pages in a small window: they scroll where they are larger than it, and stack what stands side by side."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QLabel,
    QLayout,
    QScrollArea,
    QSplitter,
    QStackedWidget,
    QTabWidget,
    QWidget,
)

_LEAST = QSize(240, 120)
_FRAME_PX = 2  # of the pane below the bar of tabs; a layout that lacks one pixel squeezes all it holds


class RoomyScroll(QScrollArea):
    """Holds one widget at the size of the view, or at its least size where that is more."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def hold(self, widget: QWidget) -> None:
        """Hold this widget; the ground behind it shows through."""
        self.setWidget(widget)
        for one in (widget, self.viewport()):
            one.setAutoFillBackground(False)

    def minimumSizeHint(self) -> QSize:
        """Qt: whatever is held, a little is enough."""
        return _LEAST

    def sizeHint(self) -> QSize:
        """Qt: what is held decides."""
        held = self.widget()
        return held.sizeHint() if held is not None else _LEAST


class PageStack(QStackedWidget):
    """A stack that needs the room of the page in view, and not that of the largest page it holds."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.currentChanged.connect(lambda _: self.updateGeometry())

    def minimumSizeHint(self) -> QSize:
        """Qt: the page in view decides."""
        page = self.currentWidget()
        return page.minimumSizeHint().expandedTo(page.minimumSize()) if page is not None else QSize(0, 0)

    def heightForWidth(self, width_px: int) -> int:
        """Qt: the least height of the page in view; a scroll area would ask for what the tallest page would like."""
        return max(self.minimumSizeHint().height(), _least_height(self.currentWidget(), width_px))


class PageTabs(QTabWidget):
    """Tabs that need the room of the tab in view, and not that of the largest; they take what height there is."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.currentChanged.connect(lambda _: self.updateGeometry())

    def minimumSizeHint(self) -> QSize:
        """Qt: the tab in view decides, and the bar with the names."""
        page, bar = self.currentWidget(), self.tabBar().minimumSizeHint()
        inside = page.minimumSizeHint().expandedTo(page.minimumSize()) if page is not None else QSize(0, 0)
        return QSize(max(bar.width(), inside.width() + _FRAME_PX), bar.height() + inside.height() + _FRAME_PX)

    def sizeHint(self) -> QSize:
        """Qt: what pages would like is no reason to scroll beside their own lists."""
        return self.minimumSizeHint()

    def heightForWidth(self, width_px: int) -> int:
        """Qt: the least height of the tab in view and of the bar."""
        bar, inside = self.tabBar().minimumSizeHint(), _least_height(self.currentWidget(), width_px - _FRAME_PX)
        return max(self.minimumSizeHint().height(), bar.height() + inside + _FRAME_PX)


def _least_height(page: QWidget | None, width_px: int) -> int:
    """Return the height that the wrapped texts of a page need at a width, its lists as low as they may be."""
    layout = page.layout() if page is not None else None
    return layout.totalMinimumHeightForWidth(width_px) if layout is not None and layout.hasHeightForWidth() else 0


class Stacking:
    """Puts below each other what has no room beside each other, and side by side again where there is room."""

    def __init__(self) -> None:
        self._splitters: dict[QSplitter, list[int]] = {}
        self._rows: list[QBoxLayout] = []

    def stack(self, page: QWidget, room_px: int) -> None:
        """Stack the parts of splitters in a page, and the rows that need more than ``room_px`` of width."""
        for splitter in page.findChildren(QSplitter):
            if splitter.orientation() is Qt.Orientation.Horizontal:
                self._splitters[splitter] = splitter.sizes()
                splitter.setOrientation(Qt.Orientation.Vertical)
        for row in _rows_of(page):
            if row.minimumSize().width() > room_px:
                row.setDirection(QBoxLayout.Direction.TopToBottom)
                self._rows.append(row)

    def spread(self) -> None:
        """Put side by side again what was put below each other."""
        for splitter, sizes in self._splitters.items():
            splitter.setOrientation(Qt.Orientation.Horizontal)
            if any(sizes):
                splitter.setSizes(sizes)
        for row in self._rows:
            row.setDirection(QBoxLayout.Direction.LeftToRight)
        self._splitters.clear()
        self._rows.clear()


def _rows_of(page: QWidget) -> Iterator[QBoxLayout]:
    """Yield the rows in a page, outer ones first."""
    for widget in (page, *page.findChildren(QWidget)):
        layout = widget.layout()
        if layout is not None and not isinstance(widget, QSplitter):
            yield from _rows_in(layout)


def _rows_in(layout: QLayout) -> Iterator[QBoxLayout]:
    if isinstance(layout, QBoxLayout) and layout.direction() is QBoxLayout.Direction.LeftToRight:
        yield layout
    for place in range(layout.count()):
        item = layout.itemAt(place)
        inner = item.layout() if item is not None else None
        if inner is not None:
            yield from _rows_in(inner)


class ElidedLabel(QLabel):
    """A line that gives way where there is no room for all of it; the whole stands in its tool tip."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setToolTip(text)

    def minimumSizeHint(self) -> QSize:
        """Qt: a word is enough."""
        return QSize(60, super().minimumSizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint what there is room for, with an ellipsis behind it."""
        painter = QPainter(self)
        box = self.contentsRect()
        words = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, box.width())
        self.style().drawItemText(
            painter, box, int(self.alignment()), self.palette(), self.isEnabled(), words, self.foregroundRole()
        )
