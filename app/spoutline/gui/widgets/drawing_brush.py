"""Paint the shapes of a drawing, and tell how far a point lies from each."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from spoutline.documents.drawing.measure_text import measure_spot
from spoutline.documents.drawing.shapes import (
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
from spoutline.frozen import frozen
from spoutline.gui.widgets.theme import Colours, colours_now
from spoutline.model.part_ref import PartRef

PX_PER_PT: Final = 96.0 / 72.0
_BALLOON_PT = 7.0
_CLEAR_PX = 2 * _BALLOON_PT * PX_PER_PT + 3.0
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
        Ink.FAULT: colours.bad,
    }
    return QColor(named[ink])


@frozen
class View:
    """How metres become pixels: ``x_px = offset.x + x_m * across``, ``y_px = offset.y - y_m * up``."""

    across: float
    up: float
    offset: QPointF

    def point(self, place: Place) -> QPointF:
        """Return where a place lies on the widget."""
        return QPointF(self.offset.x() + place.x_m * self.across, self.offset.y() - place.y_m * self.up)

    def place(self, point: QPointF) -> Place:
        """Return which place lies under a point of the widget."""
        return Place((point.x() - self.offset.x()) / self.across, (self.offset.y() - point.y()) / self.up)


@frozen
class Measured:
    """A distance between two places of a drawing."""

    start: Place
    end: Place

    @property
    def length_m(self) -> float:
        """The straight distance in metres."""
        return self.start.distance_to(self.end)

    def paint(self, painter: QPainter, view: View, words: str) -> None:
        """Paint the line with its length beside it, on a ground of its own."""
        colours = colours_now()
        start, end = view.point(self.start), view.point(self.end)
        painter.setPen(QPen(QColor(colours.accent), 2))
        painter.drawLine(start, end)
        painter.setBrush(QColor(colours.accent))
        for point in (start, end):
            painter.drawEllipse(point, 3.0, 3.0)
        metrics = QFontMetricsF(painter.font())
        middle = (start + end) / 2
        wide, high = metrics.horizontalAdvance(words) + 8, metrics.height() + 4
        box = QRectF(middle.x() - wide / 2, middle.y() - high - 4, wide, high)
        painter.fillRect(box, QColor(colours.sheet))
        painter.setPen(QColor(colours.text))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, words)


def mark_of(shape: Shape) -> PartMark | None:
    """Return which part a shape stands for; None for one of the surroundings."""
    return shape.mark if isinstance(shape, Path | Round | Dot | Balloon) else None


def balloon_centres(drawing: Drawing, view: View) -> dict[Balloon, QPointF]:
    """Return where each balloon stands: pushed further out from its part while it would cover an earlier one."""
    centres: dict[Balloon, QPointF] = {}
    for shape in drawing.shapes:
        if not isinstance(shape, Balloon):
            continue
        across, up = shape.offset_pt
        offset = QPointF(across * PX_PER_PT, -up * PX_PER_PT)
        target = view.point(shape.target)
        for push in range(_MOST_PUSHES):
            centre = target + offset * (1.0 + push * 0.45)
            if all(_apart(centre, other) > _CLEAR_PX for other in centres.values()):
                break
        centres[shape] = centre
    return centres


def _apart(one: QPointF, other: QPointF) -> float:
    return math.hypot(one.x() - other.x(), one.y() - other.y())


def distance_px(shape: Shape, point: QPointF, view: View, centres: dict[Balloon, QPointF]) -> float:
    """Return how far a click lies from a shape, in pixels; zero inside of a filled one."""
    match shape:
        case Path():
            points = [view.point(place) for place in shape.places]
            if shape.fill is not None and QPolygonF(points).containsPoint(point, Qt.FillRule.OddEvenFill):
                return 0.0
            ends = pairwise(points)
            return min((_to_line(point, start, end) for start, end in ends), default=math.inf)
        case Round():
            away = point - view.point(shape.centre)
            return max(0.0, math.hypot(away.x(), away.y()) - shape.radius_m * view.across)
        case Dot():
            away = point - view.point(shape.centre)
            return max(0.0, math.hypot(away.x(), away.y()) - shape.radius_pt * PX_PER_PT)
        case Balloon():
            away = point - centres[shape]
            return max(0.0, math.hypot(away.x(), away.y()) - _BALLOON_PT * PX_PER_PT)
    return math.inf


def _to_line(point: QPointF, start: QPointF, end: QPointF) -> float:
    along, away = end - start, point - start
    length = along.x() ** 2 + along.y() ** 2
    share = 0.0 if length == 0 else max(0.0, min(1.0, (along.x() * away.x() + along.y() * away.y()) / length))
    return math.hypot(away.x() - share * along.x(), away.y() - share * along.y())


class Brush:
    """Paints shapes with a painter in one view."""

    def __init__(self, painter: QPainter, view: View, drawing: Drawing, picked: PartRef | None, font: QFont) -> None:
        self._painter, self._view, self._picked, self._font = painter, view, picked, font
        self._colours = colours_now()
        self._centres = balloon_centres(drawing, view)
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
                radius = shape.radius_pt * PX_PER_PT
                self._painter.drawEllipse(self._view.point(shape.centre), radius, radius)
            case Label():
                self._text(self._view.point(shape.at), shape)
            case Measure():
                self._measure(shape)
            case Balloon():
                self._balloon(shape)

    def _is_picked(self, mark: PartMark | None) -> bool:
        return mark is not None and mark.part == self._picked

    def _colour(self, ink: Ink, mark: PartMark | None) -> QColor:
        return QColor(self._colours.caution) if self._is_picked(mark) else ink_colour(ink, self._colours)

    def _pen(self, ink: Ink, weight_pt: float, mark: PartMark | None, *, dashed: bool) -> None:
        extra = 1.2 if self._is_picked(mark) else 0.0
        pen = QPen(self._colour(ink, mark), (weight_pt + extra) * PX_PER_PT)
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
        path = QPainterPath()
        path.addPolygon(QPolygonF([self._view.point(place) for place in shape.places]))
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
        place = at + QPointF(across * PX_PER_PT + shift, -up * PX_PER_PT)
        box = QRectF(place.x(), place.y() - metrics.ascent(), width, metrics.height())
        while any(box.intersects(other) for other in self._written):  # a later label goes above an earlier one
            box.translate(0, -metrics.height())
        self._written.append(box)
        if label.covers:
            self._painter.fillRect(box.adjusted(-2, 0, 2, 0), ink_colour(Ink.PAPER, self._colours))
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
        spot = measure_spot(shape, (start.x(), start.y()), (end.x(), end.y()), width)
        left = spot.x - width * {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}[spot.anchor]
        box = QRectF(left - 2, spot.y - height / 2, width + 4, height)
        self._written.append(box)
        if spot.in_gap:
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
        radius = _BALLOON_PT * PX_PER_PT
        self._painter.setPen(QPen(colour, 1.6))
        self._painter.drawEllipse(centre, radius, radius)
        self._metrics(7.5, bold=True)
        self._painter.setPen(QColor(self._colours.sheet) if picked else ink_colour(Ink.TEXT, self._colours))
        box = QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius)
        self._painter.drawText(box, Qt.AlignmentFlag.AlignCenter, shape.text)
