"""A live view of a drawing: painted as vectors, enlarged and moved, its parts picked by mouse or keyboard."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from spoutline.documents.shapes import (
    Anchor,
    Balloon,
    Dot,
    Drawing,
    Ink,
    Label,
    Measure,
    PartMark,
    Path,
    Place,
    Round,
    Shape,
)
from spoutline.gui.widgets.theme import Colours, colours_now

_PX_PER_PT = 96.0 / 72.0
_EDGE_PX = 46.0  # room for balloons and texts, which keep their size
_REACH_PX = 8.0  # how near a click has to be
_LARGEST, _SMALLEST = 12.0, 0.5
_BALLOON_PT = 7.0
_CLEAR_PX = 2 * _BALLOON_PT * _PX_PER_PT + 3.0
_MOST_PUSHES = 6


def ink_colour(ink: Ink, colours: Colours) -> QColor:
    """Return the colour of an ink."""
    named = {
        Ink.GROUND: colours.frame,
        Ink.WATER: colours.water,
        Ink.STATION: colours.quiet_text,
        Ink.VEHICLE: colours.vehicle,
        Ink.HOSE: colours.hose,
        Ink.HOSE_AT_REST: colours.hose_at_rest,
        Ink.FITTING: colours.fitting,
        Ink.CORD: colours.caution,
        Ink.MEASURE: colours.quiet_text,
        Ink.TEXT: colours.text,
        Ink.PAPER: colours.sheet,
        Ink.GRID: colours.line,
        Ink.AXIS: colours.quiet_text,
        Ink.COLD: colours.cold,
        Ink.HOT: colours.hot,
    }
    return QColor(named[ink])


@dataclass(frozen=True, slots=True)
class View:
    """How metres become pixels: ``x_px = offset.x + x_m * across``, ``y_px = offset.y - y_m * up``."""

    across: float
    up: float
    offset: QPointF

    def point(self, place: Place) -> QPointF:
        """Return where a place lies on the widget."""
        return QPointF(self.offset.x() + place.x_m * self.across, self.offset.y() - place.y_m * self.up)


class DrawingView(QWidget):
    """Shows a drawing.

    Signals
    -------
    part_picked(str)
        A person picked a part; its number.
    """

    part_picked = Signal(str)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._drawing: Drawing | None = None
        self._note = ""
        self._picked = ""
        self._zoom = 1.0
        self._shift = QPointF(0, 0)
        self._drag_from: QPointF | None = None
        self._dragged = False
        self._stale = False
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    @property
    def drawing(self) -> Drawing | None:
        """The drawing shown."""
        return self._drawing

    @property
    def zoom(self) -> float:
        """Enlargement over the whole drawing."""
        return self._zoom

    def show_drawing(self, drawing: Drawing | None, note: str = "", *, stale: bool = False) -> None:
        """Show another drawing, or a note where there is none; ``stale`` greys one that is being made anew."""
        self._drawing, self._note, self._stale = drawing, note, stale
        self.setAccessibleDescription(drawing.description if drawing else note)
        self.setCursor(Qt.CursorShape.ArrowCursor)
        self.update()

    def show_picked(self, number: str) -> None:
        """Mark the part with this number."""
        self._picked = number
        self.update()

    def enlarge(self) -> None:
        """Show the drawing larger."""
        self._zoom_about(QPointF(self.rect().center()), 1.25)

    def reduce(self) -> None:
        """Show the drawing smaller."""
        self._zoom_about(QPointF(self.rect().center()), 0.8)

    def show_whole(self) -> None:
        """Show the whole drawing."""
        self._zoom, self._shift = 1.0, QPointF(0, 0)
        self.update()

    def view(self) -> View | None:
        """Return how metres become pixels now; None without a drawing."""
        if self._drawing is None:
            return None
        box = self._drawing.box
        room_x, room_y = max(self.width() - 2 * _EDGE_PX, 20.0), max(self.height() - 2 * _EDGE_PX, 20.0)
        across = room_x / max(box.width_m, 1e-6)
        up = room_y / max(box.height_m, 1e-6)
        if self._drawing.true_scale:
            across = up = min(across, up)
        across, up = across * self._zoom, up * self._zoom
        centre = QPointF(self.rect().center()) + self._shift
        middle_x, middle_y = (box.left_m + box.right_m) / 2, (box.bottom_m + box.top_m) / 2
        return View(across, up, QPointF(centre.x() - middle_x * across, centre.y() + middle_y * up))

    def part_at(self, point: QPointF) -> str:
        """Return the number of the part at a point of the widget; empty for none. Balloons and fittings come first."""
        view = self.view()
        if view is None or self._drawing is None:
            return ""
        centres = _balloon_centres(self._drawing, view)
        best, best_distance = "", _REACH_PX
        for shape in reversed(self._drawing.shapes):
            mark = _mark_of(shape)
            if mark is None:
                continue
            distance = _distance(shape, point, view, centres)
            if distance < best_distance - (1.0 if best else 0.0):
                best, best_distance = mark.number, distance
        return best

    def part_numbers(self) -> tuple[str, ...]:
        """Return the parts that the drawing shows, in chain order."""
        if self._drawing is None:
            return ()
        marks = {mark for shape in self._drawing.shapes if (mark := _mark_of(shape)) is not None}
        return tuple(dict.fromkeys(mark.number for mark in sorted(marks, key=lambda mark: mark.link)))

    def _zoom_about(self, point: QPointF, factor: float) -> None:
        wanted = self._zoom * factor
        if not _SMALLEST <= wanted <= _LARGEST:
            return
        centre = QPointF(self.rect().center())
        self._shift = (point - centre) * (1 - factor) + self._shift * factor
        self._zoom = wanted
        self.update()

    def _step_part(self, by: int) -> None:
        numbers = self.part_numbers()
        if numbers:
            place = numbers.index(self._picked) + by if self._picked in numbers else (0 if by > 0 else -1)
            self.part_picked.emit(numbers[place % len(numbers)])

    # Qt's own

    def sizeHint(self) -> QSize:
        return QSize(520, 380)

    def minimumSizeHint(self) -> QSize:
        return QSize(260, 180)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = colours_now()
        painter.fillRect(self.rect(), QColor(colours.sheet))
        view = self.view()
        if view is None or self._drawing is None:
            painter.setPen(QColor(colours.quiet_text))
            inside = self.rect().adjusted(24, 24, -24, -24)
            painter.drawText(inside, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, self._note)
        else:
            painter.setOpacity(0.45 if self._stale else 1.0)
            brush = _Brush(painter, view, self._drawing, self._picked, self.font())
            for shape in self._drawing.shapes:
                brush.paint(shape)
            painter.setOpacity(1.0)
        if self.hasFocus():
            painter.setPen(QPen(QColor(colours.accent), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))

    def resizeEvent(self, event: QResizeEvent) -> None:
        self.update()

    def wheelEvent(self, event: QWheelEvent) -> None:
        self._zoom_about(event.position(), 1.15 if event.angleDelta().y() > 0 else 1 / 1.15)
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._drag_from, self._dragged = event.position(), False

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._drag_from is None:
            over = bool(self.part_at(event.position()))
            self.setCursor(Qt.CursorShape.PointingHandCursor if over else Qt.CursorShape.ArrowCursor)
            return
        step = event.position() - self._drag_from
        if self._dragged or math.hypot(step.x(), step.y()) > 4:
            self._dragged = True
            self._shift += step
            self._drag_from = event.position()
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._drag_from is not None and not self._dragged:
            number = self.part_at(event.position())
            if number:
                self.part_picked.emit(number)
        self._drag_from = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        move = {
            Qt.Key.Key_Left: QPointF(40, 0),
            Qt.Key.Key_Right: QPointF(-40, 0),
            Qt.Key.Key_Up: QPointF(0, 40),
            Qt.Key.Key_Down: QPointF(0, -40),
        }
        key = event.key()
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.enlarge()
        elif key == Qt.Key.Key_Minus:
            self.reduce()
        elif key == Qt.Key.Key_0:
            self.show_whole()
        elif key in (Qt.Key.Key_Space, Qt.Key.Key_PageDown):
            self._step_part(1)
        elif key in (Qt.Key.Key_Backspace, Qt.Key.Key_PageUp):
            self._step_part(-1)
        elif (step := move.get(Qt.Key(key))) is not None and event.modifiers() == Qt.KeyboardModifier.NoModifier:
            self._shift += step
            self.update()
        else:
            super().keyPressEvent(event)


def _mark_of(shape: Shape) -> PartMark | None:
    return shape.mark if isinstance(shape, Path | Round | Dot | Balloon) else None


def _balloon_centres(drawing: Drawing, view: View) -> dict[Balloon, QPointF]:
    """Return where each balloon stands: pushed further out from its part while it would cover an earlier one."""
    centres: dict[Balloon, QPointF] = {}
    for shape in drawing.shapes:
        if not isinstance(shape, Balloon):
            continue
        across, up = shape.offset_pt
        offset = QPointF(across * _PX_PER_PT, -up * _PX_PER_PT)
        target = view.point(shape.target)
        for push in range(_MOST_PUSHES):
            centre = target + offset * (1.0 + push * 0.45)
            if all(_apart(centre, other) > _CLEAR_PX for other in centres.values()):
                break
        centres[shape] = centre
    return centres


def _apart(one: QPointF, other: QPointF) -> float:
    return math.hypot(one.x() - other.x(), one.y() - other.y())


def _distance(shape: Shape, point: QPointF, view: View, centres: dict[Balloon, QPointF]) -> float:
    """Return how far a click lies from a shape, in pixels; zero inside of a filled one."""
    match shape:
        case Path():
            points = [view.point(place) for place in shape.places]
            if shape.fill is not None and QPolygonF(points).containsPoint(point, Qt.FillRule.OddEvenFill):
                return 0.0
            ends = zip(points, points[1:], strict=False)
            return min((_to_line(point, start, end) for start, end in ends), default=math.inf)
        case Round():
            away = point - view.point(shape.centre)
            return max(0.0, math.hypot(away.x(), away.y()) - shape.radius_m * view.across)
        case Dot():
            away = point - view.point(shape.centre)
            return max(0.0, math.hypot(away.x(), away.y()) - shape.radius_pt * _PX_PER_PT)
        case Balloon():
            away = point - centres[shape]
            return max(0.0, math.hypot(away.x(), away.y()) - _BALLOON_PT * _PX_PER_PT)
    return math.inf


def _to_line(point: QPointF, start: QPointF, end: QPointF) -> float:
    along, away = end - start, point - start
    length = along.x() ** 2 + along.y() ** 2
    share = 0.0 if length == 0 else max(0.0, min(1.0, (along.x() * away.x() + along.y() * away.y()) / length))
    return math.hypot(away.x() - share * along.x(), away.y() - share * along.y())


class _Brush:
    """Paints shapes with a painter in one view."""

    def __init__(self, painter: QPainter, view: View, drawing: Drawing, picked: str, font: QFont) -> None:
        self._painter, self._view, self._picked, self._font = painter, view, picked, font
        self._colours = colours_now()
        self._centres = _balloon_centres(drawing, view)
        self._written: list[QRectF] = []

    def paint(self, shape: Shape) -> None:
        """Paint one shape."""
        match shape:
            case Path():
                self._path(shape)
            case Round():
                self._pen(shape.ink, shape.weight.value, shape.mark, dashed=False)
                self._fill(shape.fill)
                radius = shape.radius_m * self._view.across
                self._painter.drawEllipse(self._view.point(shape.centre), radius, radius)
            case Dot():
                self._painter.setPen(Qt.PenStyle.NoPen)
                self._painter.setBrush(self._colour(shape.ink, shape.mark))
                radius = shape.radius_pt * _PX_PER_PT
                self._painter.drawEllipse(self._view.point(shape.centre), radius, radius)
            case Label():
                self._text(self._view.point(shape.at), shape)
            case Measure():
                self._measure(shape)
            case Balloon():
                self._balloon(shape)

    def _is_picked(self, mark: PartMark | None) -> bool:
        return mark is not None and bool(self._picked) and mark.number == self._picked

    def _colour(self, ink: Ink, mark: PartMark | None) -> QColor:
        return QColor(self._colours.caution) if self._is_picked(mark) else ink_colour(ink, self._colours)

    def _pen(self, ink: Ink, weight_pt: float, mark: PartMark | None, *, dashed: bool) -> None:
        extra = 1.2 if self._is_picked(mark) else 0.0
        pen = QPen(self._colour(ink, mark), (weight_pt + extra) * _PX_PER_PT)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        if dashed:
            pen.setDashPattern([4.0, 3.0])
        self._painter.setPen(pen)

    def _fill(self, ink: Ink | None) -> None:
        self._painter.setBrush(Qt.BrushStyle.NoBrush if ink is None else ink_colour(ink, self._colours))

    def _path(self, shape: Path) -> None:
        self._pen(shape.ink, shape.weight.value, shape.mark, dashed=shape.dashed)
        self._fill(shape.fill)
        path = QPainterPath(self._view.point(shape.places[0]))
        for place in shape.places[1:]:
            path.lineTo(self._view.point(place))
        if shape.closed:
            path.closeSubpath()
        self._painter.drawPath(path)

    def _metrics(self, size_pt: float, *, bold: bool = False) -> QFontMetricsF:
        font = QFont(self._font)
        font.setPointSizeF(size_pt)
        font.setBold(bold)
        self._painter.setFont(font)
        return QFontMetricsF(font)

    def _text(self, at: QPointF, label: Label) -> None:
        metrics = self._metrics(max(label.size_pt, 7.5))
        across, up = label.offset_pt
        width = metrics.horizontalAdvance(label.text)
        shift = {Anchor.START: 0.0, Anchor.MIDDLE: -width / 2, Anchor.END: -width}[label.anchor]
        place = at + QPointF(across * _PX_PER_PT + shift, -up * _PX_PER_PT)
        box = QRectF(place.x(), place.y() - metrics.ascent(), width, metrics.height())
        while any(box.intersects(other) for other in self._written):  # a later label goes above an earlier one
            box.translate(0, -metrics.height())
        self._written.append(box)
        self._painter.setPen(ink_colour(label.ink, self._colours))
        self._painter.drawText(QPointF(box.left(), box.top() + metrics.ascent()), label.text)

    def _measure(self, shape: Measure) -> None:
        start, end = self._view.point(shape.start), self._view.point(shape.end)
        self._pen(Ink.MEASURE, 0.6, None, dashed=False)
        self._painter.drawLine(start, end)
        along = end - start
        length = math.hypot(along.x(), along.y())
        if length > 1:
            self._arrow(start, along / length)
            self._arrow(end, -along / length)
        metrics = self._metrics(7.5)
        width, height = metrics.horizontalAdvance(shape.text), metrics.height()
        middle = (start + end) / 2
        level = abs(along.x()) >= abs(along.y())
        box = QRectF(middle.x() - width / 2 - 2, middle.y() - height / 2, width + 4, height)
        if level:
            box.moveBottom(middle.y() - 1)
        self._painter.fillRect(box, ink_colour(Ink.PAPER, self._colours))
        self._painter.setPen(ink_colour(Ink.TEXT, self._colours))
        self._painter.drawText(box, Qt.AlignmentFlag.AlignCenter, shape.text)

    def _arrow(self, tip: QPointF, along: QPointF) -> None:
        side = QPointF(-along.y(), along.x())
        self._painter.setBrush(ink_colour(Ink.MEASURE, self._colours))
        self._painter.drawPolygon(QPolygonF([tip, tip + along * 7 + side * 2.4, tip + along * 7 - side * 2.4]))

    def _balloon(self, shape: Balloon) -> None:
        target, centre = self._view.point(shape.target), self._centres[shape]
        colour = self._colour(Ink.FITTING, shape.mark)
        self._painter.setPen(QPen(colour, 1.0))
        self._painter.drawLine(target, centre)
        picked = self._is_picked(shape.mark)
        self._painter.setBrush(colour if picked else ink_colour(Ink.PAPER, self._colours))
        radius = _BALLOON_PT * _PX_PER_PT
        self._painter.setPen(QPen(colour, 1.6))
        self._painter.drawEllipse(centre, radius, radius)
        self._metrics(7.5, bold=True)
        self._painter.setPen(QColor(self._colours.sheet) if picked else ink_colour(Ink.TEXT, self._colours))
        box = QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius)
        self._painter.drawText(box, Qt.AlignmentFlag.AlignCenter, shape.text)
