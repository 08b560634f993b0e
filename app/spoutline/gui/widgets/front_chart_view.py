"""A chart whose points are sets: picked by mouse or keyboard; what it shows is told in words too."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from spoutline.documents.drawing.fit import paddings
from spoutline.documents.drawing.shapes import Drawing, Place
from spoutline.gui.widgets.drawing_brush import PX_PER_PT, Brush, View
from spoutline.gui.widgets.theme import colours_now

_REACH_PX = 14.0  # how near a click has to be
_RING_PX = 9.0
_EDGE_PX = 10.0


class FrontChartView(QWidget):
    """Shows a chart and which of its points is picked.

    Arrow keys go from point to point in the order in which they lie to the right, Home and End to the outermost.

    Signals
    -------
    point_picked(int)
        A person picked a point; its place among the points.
    point_opened(int)
        A person double-clicked a point or pressed Return on it.
    """

    point_picked = Signal(int)
    point_opened = Signal(int)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._drawing: Drawing | None = None
        self._places: tuple[Place, ...] = ()
        self._picked: int | None = None
        self._note = ""
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_chart(self, drawing: Drawing | None, places: tuple[Place, ...] = (), note: str = "") -> None:
        """Show another chart with its points, or a note where there is none."""
        self._drawing, self._places, self._note = drawing, places, note
        self._picked = None
        self.setAccessibleDescription(drawing.description if drawing else note)
        self.update()

    def show_picked(self, point: int | None, words: str = "") -> None:
        """Mark a point; ``words`` tell it to those who cannot see it."""
        self._picked = point if point is not None and point < len(self._places) else None
        description = self._drawing.description if self._drawing else self._note
        self.setAccessibleDescription(f"{words} {description}".strip())
        self.update()

    @property
    def picked(self) -> int | None:
        """The point that is marked; None for none."""
        return self._picked

    def view(self) -> View | None:
        """Return how places of the chart become pixels; None without a chart."""
        if self._drawing is None:
            return None
        box, (left, right, top, bottom) = self._drawing.box, paddings(self._drawing)
        room_x = max(self.width() - 2 * _EDGE_PX - (left + right) * PX_PER_PT, 20.0)
        room_y = max(self.height() - 2 * _EDGE_PX - (bottom + top) * PX_PER_PT, 20.0)
        across, up = room_x / max(box.width_m, 1e-6), room_y / max(box.height_m, 1e-6)
        x = _EDGE_PX + left * PX_PER_PT - box.left_m * across
        y = self.height() - _EDGE_PX - bottom * PX_PER_PT + box.bottom_m * up
        return View(across, up, QPointF(x, y))

    def point_at(self, at: QPointF) -> int | None:
        """Return the point nearest to a place of the widget, within reach; None for none."""
        view = self.view()
        if view is None:
            return None
        away = [
            (math.hypot(shown.x() - at.x(), shown.y() - at.y()), number)
            for number, shown in enumerate(map(view.point, self._places))
        ]
        nearest = min(away, default=(math.inf, 0))
        return nearest[1] if nearest[0] <= _REACH_PX else None

    # Qt's own

    def sizeHint(self) -> QSize:
        """Qt: return the size that suits best."""
        return QSize(520, 300)

    def minimumSizeHint(self) -> QSize:
        """Qt: return the least useful size."""
        return QSize(280, 170)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint."""
        painter, colours = QPainter(self), colours_now()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(colours.sheet))
        view = self.view()
        if view is None or self._drawing is None:
            painter.setPen(QColor(colours.quiet_text))
            inside = self.rect().adjusted(24, 24, -24, -24)
            painter.drawText(inside, int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap), self._note)
        else:
            brush = Brush(painter, view, self._drawing, None, self.font())
            for shape in self._drawing.shapes:
                brush.paint(shape)
            if self._picked is not None:
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(colours.accent), 2.4))
                painter.drawEllipse(view.point(self._places[self._picked]), _RING_PX, _RING_PX)
        if self.hasFocus():
            painter.setPen(QPen(QColor(colours.accent), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))
        painter.end()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Qt: show what can be picked."""
        over = self.point_at(event.position()) is not None
        self.setCursor(Qt.CursorShape.PointingHandCursor if over else Qt.CursorShape.ArrowCursor)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Qt: pick the point under the pointer."""
        point = self.point_at(event.position())
        if point is not None and event.button() is Qt.MouseButton.LeftButton:
            self.point_picked.emit(point)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Qt: open the point under the pointer."""
        point = self.point_at(event.position())
        if point is not None:
            self.point_opened.emit(point)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: go to the next point, or open the one marked."""
        order = sorted(range(len(self._places)), key=lambda at: (self._places[at].x_m, self._places[at].y_m, at))
        steps = {Qt.Key.Key_Right: 1, Qt.Key.Key_Down: 1, Qt.Key.Key_Left: -1, Qt.Key.Key_Up: -1}
        key = Qt.Key(event.key())
        if not order or event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
            super().keyPressEvent(event)
        elif key in steps:
            here = order.index(self._picked) + steps[key] if self._picked is not None else 0
            self.point_picked.emit(order[max(0, min(here, len(order) - 1))])
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            self.point_picked.emit(order[0 if key == Qt.Key.Key_Home else -1])
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._picked is not None:
            self.point_opened.emit(self._picked)
        else:
            super().keyPressEvent(event)
