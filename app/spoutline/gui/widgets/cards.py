"""Frames and small blocks that pages are built from."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QLabel,
    QLayout,
    QScrollArea,
    QStackedWidget,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)


class Card(QFrame):
    """A frame with a title and room for widgets."""

    def __init__(self, title: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.body = QVBoxLayout(self)
        self.body.setContentsMargins(16, 12, 16, 14)
        self.body.setSpacing(10)
        if title:
            label = QLabel(title, self)
            label.setObjectName("cardTitle")
            self.body.addWidget(label)


class ScrolledPage(QScrollArea):
    """A page that scrolls upright when it is taller than the window."""

    def __init__(self, parent: QWidget | None = None, *, margin: int = 4) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        content = QWidget(self)
        content.setObjectName("page")
        self.column = QVBoxLayout(content)
        self.column.setContentsMargins(margin, margin, 10, 8)
        self.column.setSpacing(12)
        self.setWidget(content)


class NamedTexts(QWidget):
    """Labels with their texts in two columns."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(18)
        self._grid.setVerticalSpacing(3)
        self._grid.setColumnStretch(1, 1)
        self._rows: tuple[tuple[str, str], ...] = ()

    def show_rows(self, rows: Iterable[tuple[str, str]]) -> None:
        """Show other labels and texts; the same ones stay as they are."""
        wanted = tuple(rows)
        if wanted == self._rows:
            return
        self._rows = wanted
        empty_layout(self._grid)
        for place, (name, text) in enumerate(wanted):
            label = plain_label(name, "quiet")
            value = plain_label(text)
            value.setWordWrap(True)
            self._grid.addWidget(label, place, 0, Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(value, place, 1)


def tab_pages(tabs: QTabWidget) -> QWidget:
    """Return what holds the pages of tabs: a page that is made as its child is not styled anew when it is added."""
    held = tabs.findChild(QStackedWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)
    return tabs if held is None else held


def plain_label(text: str, object_name: str = "", *, wraps: bool = False) -> QLabel:
    """Return a label that shows text as it is, never as markup."""
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(wraps)
    if object_name:
        label.setObjectName(object_name)
    return label


class WholeLabel(QLabel):
    """Wrapped text, shown as it is, that asks for the height of all its lines: no neighbor is laid over one of them.

    For columns in a page that scrolls; a plain label asks for one line only where room is short.
    """

    def __init__(self, object_name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setObjectName(object_name)

    def minimumSizeHint(self) -> QSize:
        """Qt: once it has its width, all lines count."""
        least = super().minimumSizeHint()
        if self.isVisible():
            least.setHeight(max(least.height(), self.heightForWidth(self.width())))
        return least

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: another width wraps elsewhere."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()


def empty_layout(layout: QLayout) -> None:
    """Take every widget out of a layout and let Qt delete it."""
    while layout.count():
        item = layout.takeAt(0)
        if item is None:
            return
        widget = item.widget()
        inner = item.layout()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
        elif inner is not None:
            empty_layout(inner)
