"""The order in which the keyboard goes through a page: that of reading, as the layouts have it now.

Qt goes in the order in which widgets were made. Pages here are made when first seen and fields come and go with the
answers, so that order says nothing about what stands where.
"""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QGridLayout,
    QLayout,
    QPlainTextEdit,
    QScrollArea,
    QSplitter,
    QStackedWidget,
    QTabBar,
    QTabWidget,
    QTextEdit,
    QWidget,
)

# what lies inside of these belongs to them
_CLOSED = (QAbstractItemView, QAbstractSpinBox, QComboBox, QPlainTextEdit, QTabBar, QTextEdit)


def reading_order(root: QWidget) -> list[QWidget]:
    """Return what takes the keyboard in ``root`` and is in view, in the order of reading."""
    return list(_walk(root))


def next_in_order(root: QWidget, here: QWidget | None, *, forward: bool) -> QWidget | None:
    """Return where Tab leads from ``here``; the first or last where ``here`` stands outside; None where nothing is."""
    order = reading_order(root)
    if not order:
        return None
    while here is not None and here not in order:
        here = here.parentWidget()
    if here is None:
        return order[0] if forward else order[-1]
    return order[(order.index(here) + (1 if forward else -1)) % len(order)]


def _walk(widget: QWidget | None) -> Iterator[QWidget]:
    if widget is None or not widget.isVisible() or widget.isWindow():
        return
    if widget.isEnabled() and widget.focusProxy() is None and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
        yield widget
    if isinstance(widget, _CLOSED):
        return
    seen: list[QWidget | None] = []
    for child in _children(widget):
        if child not in seen:
            seen.append(child)
            yield from _walk(child)


def _children(widget: QWidget) -> Iterator[QWidget | None]:
    """Yield what stands in a widget: as its layout has it, then what lies over the layout."""
    if isinstance(widget, QSplitter):
        yield from (widget.widget(place) for place in range(widget.count()))
    elif isinstance(widget, QStackedWidget):
        yield widget.currentWidget()
    elif isinstance(widget, QTabWidget):
        yield widget.tabBar()
        yield widget.currentWidget()
    elif isinstance(widget, QScrollArea):
        yield widget.widget()
    else:
        layout = widget.layout()
        if layout is not None:
            yield from _laid_out(layout)
        yield from widget.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)


def _laid_out(layout: QLayout) -> Iterator[QWidget]:
    places = list(range(layout.count()))
    if isinstance(layout, QGridLayout):
        places.sort(key=lambda place: tuple(layout.getItemPosition(place))[:2])  # type: ignore[arg-type]
    for place in places:
        item = layout.itemAt(place)
        if item is None:
            continue
        inner, widget = item.layout(), item.widget()
        if inner is not None:
            yield from _laid_out(inner)
        elif widget is not None:
            yield widget
