"""Marks painted with a shape and a colour of their own, so that colour alone never carries the meaning."""

from __future__ import annotations

import math
from collections.abc import Callable

from PySide6.QtCore import (
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    QSortFilterProxyModel,
    Qt,
)
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetrics,
    QHelpEvent,
    QIcon,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPixmap,
    QPolygonF,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QToolTip,
    QTreeView,
    QWidget,
)

from spoutline.gui.roles import Role, Tone
from spoutline.gui.widgets.eliding import elided_where_equal
from spoutline.gui.widgets.theme import Colours, colours_now, tone_colour

Index = QModelIndex | QPersistentModelIndex

CELL_EDGES_PX = 16
_MOST_HEIGHTS = 10_000  # texts whose height is kept
_NEAR = (-3, -2, -1, 1, 2, 3)  # rows that a text is told apart from


def paint_mark(painter: QPainter, box: QRectF, tone: Tone, colours: Colours) -> None:
    """Paint the mark of ``tone`` into ``box``.

    Good: a disc with a tick; caution: a triangle; bad: an octagon with a cross; question: a rhomb; note: a ring;
    working: three dots; open: a dotted square.
    """
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    colour, inner = tone_colour(tone, colours), QColor(colours.card)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    stroke = QPen(inner, box.width() * 0.13, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)
    match tone:
        case Tone.GOOD:
            painter.drawEllipse(box)
            _line(painter, stroke, box, ((0.27, 0.52), (0.44, 0.69), (0.74, 0.34)))
        case Tone.CAUTION:
            painter.drawPolygon(_polygon(box, ((0.5, 0.02), (1.0, 0.95), (0.0, 0.95))))
            _line(painter, stroke, box, ((0.5, 0.36), (0.5, 0.62)))
            _line(painter, stroke, box, ((0.5, 0.8), (0.5, 0.8)))
        case Tone.BAD:
            painter.drawPolygon(_octagon(box))
            _line(painter, stroke, box, ((0.33, 0.33), (0.67, 0.67)))
            _line(painter, stroke, box, ((0.67, 0.33), (0.33, 0.67)))
        case Tone.QUESTION:
            painter.drawPolygon(_polygon(box, ((0.5, 0.0), (1.0, 0.5), (0.5, 1.0), (0.0, 0.5))))
            _line(painter, stroke, box, ((0.4, 0.4), (0.5, 0.3), (0.6, 0.4), (0.5, 0.55)))
            _line(painter, stroke, box, ((0.5, 0.73), (0.5, 0.73)))
        case Tone.NOTE:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(colour, box.width() * 0.12))
            inset = box.width() * 0.1
            painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset))
        case Tone.OPEN:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(colour, box.width() * 0.12, Qt.PenStyle.DotLine))
            inset = box.width() * 0.12
            painter.drawRect(box.adjusted(inset, inset, -inset, -inset))
        case Tone.WORKING:
            for place in (0.18, 0.5, 0.82):
                radius = box.width() * 0.11
                painter.drawEllipse(QPointF(box.left() + place * box.width(), box.center().y()), radius, radius)
    painter.restore()


def _line(painter: QPainter, pen: QPen, box: QRectF, places: tuple[tuple[float, float], ...]) -> None:
    painter.save()
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    points = [QPointF(box.left() + x * box.width(), box.top() + y * box.height()) for x, y in places]
    path = QPainterPath(points[0])
    for point in points[1:]:
        path.lineTo(point)
    if points[0] == points[-1]:
        painter.drawPoint(points[0])
    else:
        painter.drawPath(path)
    painter.restore()


def _polygon(box: QRectF, places: tuple[tuple[float, float], ...]) -> QPolygonF:
    return QPolygonF([QPointF(box.left() + x * box.width(), box.top() + y * box.height()) for x, y in places])


def _octagon(box: QRectF) -> QPolygonF:
    turns = [math.pi / 8 + corner * math.pi / 4 for corner in range(8)]
    return _polygon(box, tuple((0.5 + 0.54 * math.cos(turn), 0.5 + 0.54 * math.sin(turn)) for turn in turns))


def mark_icon(tone: Tone, size: int = 16, *, on_plate: bool = False) -> QIcon:
    """Return the mark as an icon in the colours in use; on a plate where the row behind it is coloured."""
    pixmap = QPixmap(size * 2, size * 2)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    colours, inset = colours_now(), 5 if on_plate else 2
    if on_plate:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.card))
        painter.drawRoundedRect(0, 0, size * 2, size * 2, 7, 7)
    paint_mark(painter, QRectF(inset, inset, size * 2 - 2 * inset, size * 2 - 2 * inset), tone, colours)
    painter.end()
    pixmap.setDevicePixelRatio(2)
    return QIcon(pixmap)


class Mark(QWidget):
    """Shows one mark."""

    def __init__(self, parent: QWidget | None = None, size: int = 18) -> None:
        super().__init__(parent)
        self._tone = Tone.WORKING
        self.setFixedSize(size, size)

    @property
    def tone(self) -> Tone:
        """The tone shown."""
        return self._tone

    def show_tone(self, tone: Tone, words: str) -> None:
        """Show another mark; ``words`` say it to those who cannot see it."""
        self._tone = tone
        self.setAccessibleName(words)
        self.setToolTip(words)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint."""
        painter = QPainter(self)
        paint_mark(painter, QRectF(self.rect()).adjusted(1, 1, -1, -1), self._tone, colours_now())


class MarkDelegate(QStyledItemDelegate):
    """Paints the mark of ``Role.TONE`` before the text of a cell."""

    _SIZE = 16

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._measured_in: QFont | None = None
        self._heights: dict[tuple[str, int, bool], int] = {}
        self._painted_in: Colours | None = None
        self._icons: dict[tuple[Tone, bool], QIcon] = {}

    def initStyleOption(self, option: QStyleOptionViewItem, index: Index) -> None:
        """Qt: put the mark before the text."""
        super().initStyleOption(option, index)
        data, place = answering(index)
        said = data(place, Role.TONE)
        option.font.setUnderline(bool(data(place, Role.POSITIONS)))
        view = option.widget
        is_wrapped = index.column() == 0 and index.row() < getattr(view, "wrapped_rows", 0)
        if isinstance(view, QTableView) and not is_wrapped:
            option.features &= ~QStyleOptionViewItem.ViewItemFeature.WrapText
        if isinstance(view, QTableView) and option.text and not is_wrapped and not data(place, Role.LEADS):
            option.text = self._with_room(option, view.columnWidth(index.column()), index, marked=bool(said))
        if said:
            tone = Tone(str(said))  # Qt hands back a plain text
            option.features |= QStyleOptionViewItem.ViewItemFeature.HasDecoration
            chosen = bool(option.state & QStyle.StateFlag.State_Selected)
            option.icon = self._icon(tone, on_plate=chosen)
            option.decorationSize = QSize(self._SIZE, self._SIZE)

    def _icon(self, tone: Tone, *, on_plate: bool) -> QIcon:
        """Return a mark as an icon, painted once for the colours in use: every row that is painted asks for one."""
        if self._painted_in is not colours_now():
            self._painted_in, self._icons = colours_now(), {}
        known = self._icons.get((tone, on_plate))
        if known is None:
            known = self._icons[tone, on_plate] = mark_icon(tone, self._SIZE, on_plate=on_plate)
        return known

    def _with_room(self, option: QStyleOptionViewItem, wide: int, index: Index, *, marked: bool) -> str:
        """Return the text of a cell; in a narrow one without what it begins with like the rows around it."""
        room = wide - CELL_EDGES_PX - (self._SIZE + 4 if marked else 0)
        metrics = option.fontMetrics

        def fits(text: str) -> bool:
            return metrics.horizontalAdvance(text) <= room

        if fits(option.text):
            return option.text
        near = (index.sibling(index.row() + by, index.column()) for by in _NEAR)
        return elided_where_equal(option.text, (str(one.data() or "") for one in near if one.isValid()), fits)

    def helpEvent(
        self,
        event: QHelpEvent,
        view: QAbstractItemView,
        option: QStyleOptionViewItem,
        index: Index,
    ) -> bool:
        """Qt: a text that is not shown whole is told by the tool tip, where nothing else is."""
        text = str(index.data(Qt.ItemDataRole.DisplayRole) or "")
        room = view.visualRect(index).width() - CELL_EDGES_PX
        wants = event.type() == QEvent.Type.ToolTip and not index.data(Qt.ItemDataRole.ToolTipRole)
        if wants and text and QFontMetrics(view.font()).horizontalAdvance(text) > room:
            QToolTip.showText(event.globalPos(), text, view)
            return True
        return bool(super().helpEvent(event, view, option, index))

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Qt: a row of a tree is as high as its texts need in the width they have."""
        view = option.widget
        if not isinstance(view, QTreeView):
            return super().sizeHint(option, index)
        data = index.model().data  # asked of the model itself: by way of Qt each answer takes ten times as long
        column = index.column()
        room = view.viewport().width() if data(index, Role.SPANS) else view.columnWidth(column)
        if column == 0:
            room -= _depth(index) * view.indentation()
        if data(index, Role.TONE):
            room -= self._SIZE + 4
        words = str(data(index, Qt.ItemDataRole.DisplayRole) or "")
        is_bold = data(index, Qt.ItemDataRole.FontRole) is not None
        return QSize(60, max(self._height(view.font(), words, room, is_bold=is_bold), self._SIZE) + 8)

    def _height(self, font: QFont, words: str, room: int, *, is_bold: bool) -> int:
        """Return the height of a text in a width; what was measured is kept for the font in use."""
        if font != self._measured_in:
            self._measured_in, self._heights = QFont(font), {}
        key = words, room, is_bold
        known = self._heights.get(key)
        if known is None:
            font.setBold(is_bold)
            place = QRect(0, 0, max(room - CELL_EDGES_PX, 40), 10_000)
            known = QFontMetrics(font).boundingRect(place, int(Qt.TextFlag.TextWordWrap), words).height()
            if len(self._heights) >= _MOST_HEIGHTS:
                self._heights.clear()
            self._heights[key] = known
        return known


def answering(index: Index) -> tuple[Callable[[Index, int], object], Index]:
    """Return what answers for the row of an index, and the index to ask it by: the model below orders and filters.

    Asked straight, an answer takes a tenth of what it takes by way of Qt; who paints a table asks for a thousand.
    """
    model = index.model()
    while isinstance(model, QSortFilterProxyModel):
        index = model.mapToSource(index)
        model = index.model()
    return model.data, index


def _depth(index: Index) -> int:
    depth, above = 1, index.parent()
    while above.isValid():
        depth, above = depth + 1, above.parent()
    return depth
