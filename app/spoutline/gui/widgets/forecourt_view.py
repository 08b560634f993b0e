"""A plan of groups of boxes with tiles on both sides, each tile with a mark of its own shape; tiles can be chosen."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from spoutline.frozen import frozen
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.marks import paint_mark
from spoutline.gui.widgets.theme import colours_now

_TILE, _GAP, _BOX_HEIGHT, _MARGIN, _GROUP_GAP = 22.0, 5.0, 30.0, 14.0, 20.0
_KERB = 6.0  # from the boxes of a named group to the line around it


@frozen
class Tile:
    """Something on one side of a box; ``hint`` says in words what the mark means."""

    key: str
    tone: Tone
    hint: str


@frozen
class Box:
    """A named box with tiles above and below it."""

    name: str
    upper: tuple[Tile, ...]
    lower: tuple[Tile, ...]

    @property
    def width(self) -> float:
        """Room that the box takes, in pixels."""
        return max(len(self.upper), len(self.lower), 2) * (_TILE + _GAP) + _GAP


@frozen
class Group:
    """Boxes that stand together; a group with a name has a line around it, one without has none."""

    name: str
    boxes: tuple[Box, ...]


class ForecourtView(QWidget):
    """Paints groups of boxes: named ones side by side, the others below each other.

    Arrow keys go from tile to tile, Return opens one.

    Signals
    -------
    picked(str)
        A tile was chosen; its key.
    opened(str)
        A tile was double-clicked or Return pressed; its key.
    """

    picked = Signal(str)
    opened = Signal(str)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._groups: tuple[Group, ...] = ()
        self._places: list[tuple[QRectF, Tile]] = []
        self._boxes: list[tuple[QRectF, str]] = []
        self._frames: list[tuple[QRectF, str]] = []
        self._chosen = ""

    @property
    def tiles(self) -> tuple[Tile, ...]:
        """Every tile in the order in which the arrow keys visit them."""
        return tuple(tile for _, tile in self._places)

    @property
    def chosen(self) -> str:
        """Key of the tile chosen; empty for none."""
        return self._chosen

    def show_groups(self, groups: tuple[Group, ...], chosen: str) -> None:
        """Show other groups, with one tile chosen."""
        is_same, self._chosen = groups == self._groups, chosen
        if not is_same:
            self._groups = groups
            self._lay_out()
        self._describe()
        self.update()

    def place_of(self, key: str) -> QPointF:
        """Return the middle of a tile in the widget; ``KeyError`` where there is none."""
        for box, tile in self._places:
            if tile.key == key:
                return box.center()
        raise KeyError(key)

    def _lay_out(self) -> None:
        """Set boxes side by side, a new row where the widget ends and for every group without a name."""
        self._places, self._boxes, self._frames = [], [], []
        room = max(self.width() - _MARGIN, 200.0)
        left = top = bottom = _MARGIN
        for group in self._groups:
            wide = self._width(group)
            if left > _MARGIN and (not group.name or left + wide > room):
                left, top = _MARGIN, bottom + _GROUP_GAP
            bottom = max(bottom, self._place_group(group, left, top, room))
            left += wide + _GROUP_GAP if group.name else room
        self.setMinimumHeight(int(bottom + _MARGIN))

    def _width(self, group: Group) -> float:
        """Return the room of a group whose boxes stand side by side."""
        boxes = sum(box.width for box in group.boxes) + _GAP * (len(group.boxes) - 1)
        return max(boxes, QFontMetricsF(self.font()).horizontalAdvance(group.name)) + 2 * _KERB

    def _place_group(self, group: Group, left: float, top: float, room: float) -> float:
        """Place a group, one with a name below it and with a line around; return where it ends."""
        if not group.name:
            return self._place_boxes(group, left, top, room)
        title = QFontMetricsF(self.font()).height() + _KERB
        end = self._place_boxes(group, left, top + title, room)
        wide = min(self._width(group), room - left + 2 * _KERB)
        self._frames.append((QRectF(left - _KERB, top, wide, end - top + _KERB), group.name))
        return end + _KERB

    def _place_boxes(self, group: Group, left: float, top: float, room: float) -> float:
        """Place boxes side by side, in further rows where the room ends; return the lower end of the last."""
        height = 2 * (_TILE + _GAP) + _BOX_HEIGHT
        x = left
        for box in group.boxes:
            if x > left and x + box.width > room:
                x, top = left, top + height + _GAP
            self._place_box(box, x, top)
            x += box.width + _GAP
        return top + height

    def _place_box(self, box: Box, left: float, top: float) -> None:
        body = QRectF(left, top + _TILE + _GAP, box.width, _BOX_HEIGHT)
        self._boxes.append((body, box.name))
        for tiles, y in ((box.upper, top), (box.lower, body.bottom() + _GAP)):
            for number, tile in enumerate(tiles):
                x = left + _GAP + number * (_TILE + _GAP)
                self._places.append((QRectF(x, y, _TILE, _TILE), tile))

    def _describe(self) -> None:
        """Say the chosen tile in words for those who cannot see it."""
        tile = next((tile for _, tile in self._places if tile.key == self._chosen), None)
        self.setAccessibleDescription(tile.hint if tile is not None else "")

    def _choose(self, tile: Tile) -> None:
        if tile.key != self._chosen:
            self._chosen = tile.key
            self._describe()
            self.update()
            self.picked.emit(tile.key)

    def _at(self, point: QPointF) -> Tile | None:
        return next((tile for box, tile in self._places if box.contains(point)), None)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint boxes, names and marks, as many as are in view: a station may have a thousand."""
        painter, colours = QPainter(self), colours_now()
        seen = QRectF(event.rect())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        metrics = QFontMetricsF(self.font())
        for frame, name in (one for one in self._frames if one[0].intersects(seen)):
            painter.setPen(QPen(QColor(colours.line), 1.2))
            painter.setBrush(QColor(colours.card))
            painter.drawRoundedRect(frame, 8, 8)
            painter.setPen(QColor(colours.quiet_text))
            painter.drawText(frame.adjusted(_KERB, _KERB / 2, -_KERB, 0), Qt.AlignmentFlag.AlignLeft, name)
        for body, name in (one for one in self._boxes if one[0].intersects(seen)):
            painter.setPen(QPen(QColor(colours.frame), 1.2))
            painter.setBrush(QColor(colours.soft))
            painter.drawRoundedRect(body, 5, 5)
            painter.setPen(QColor(colours.text))
            shown = metrics.elidedText(name, Qt.TextElideMode.ElideRight, body.width() - 8)
            painter.drawText(body, Qt.AlignmentFlag.AlignCenter, shown)
        for box, tile in (one for one in self._places if one[0].intersects(seen)):
            paint_mark(painter, box.adjusted(2, 2, -2, -2), tile.tone, colours)
            if tile.key == self._chosen:
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(colours.accent), 2.4))
                painter.drawRoundedRect(box.adjusted(-1, -1, 1, 1), 4, 4)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: lay out anew in the new width."""
        if event.size().width() != event.oldSize().width():
            self._lay_out()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Qt: choose the tile below the pointer."""
        tile = self._at(event.position())
        if tile is not None:
            self._choose(tile)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Qt: open the tile below the pointer."""
        tile = self._at(event.position())
        if tile is not None:
            self.opened.emit(tile.key)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Qt: say what the tile below the pointer means."""
        tile = self._at(event.position())
        QToolTip.showText(event.globalPosition().toPoint(), tile.hint if tile else "", self)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: go to the next tile, or open the chosen one."""
        keys = [tile.key for _, tile in self._places]
        step = {Qt.Key.Key_Right: 1, Qt.Key.Key_Down: 1, Qt.Key.Key_Left: -1, Qt.Key.Key_Up: -1}.get(
            Qt.Key(event.key())
        )
        if step is not None and keys:
            place = keys.index(self._chosen) + step if self._chosen in keys else 0
            if 0 <= place < len(keys):
                self._choose(self._places[place][1])
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._chosen:
            self.opened.emit(self._chosen)
        else:
            super().keyPressEvent(event)
