"""A live view of a drawing: painted as vectors, enlarged and moved, its parts picked by mouse or keyboard."""

from __future__ import annotations

import math
from collections.abc import Callable

from PySide6.QtCore import QEvent, QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QContextMenuEvent,
    QGuiApplication,
    QImage,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QMenu, QSizePolicy, QWidget

from spoutline.documents.drawing.fit import paddings
from spoutline.documents.drawing.shapes import Drawing
from spoutline.gui.widgets.drawing_brush import PX_PER_PT, Brush, Measured, View, balloon_centres, distance_px, mark_of
from spoutline.gui.widgets.theme import colours_now
from spoutline.gui.wording import tr
from spoutline.model.part_ref import PartRef

_EDGE_PX = 46.0  # room for balloons and texts, which keep their size
_BALLOON_ROOM_PX = 13.0  # a balloon's radius and a little air
_BALLOON_AIR_PX = 1.0
_ROUNDS_FOR_BALLOONS = 8  # each at least halves what is missing
_REACH_PX = 8.0  # how near a click has to be
_FINENESS = 2.0  # dots of a copied picture for one of the screen
_GREYED_AFTER_MS = 150  # sooner a person sees a flicker and no state
_LARGEST, _SMALLEST = 12.0, 0.5


class DrawingView(QWidget):
    """Shows a drawing.

    Signals
    -------
    part_picked(PartRef)
        A person picked a part; its number.
    saving_wanted()
        The drawing is to be saved as a picture.
    measuring(bool)
        Whether a drag measures from now on.
    """

    part_picked = Signal(object)
    saving_wanted = Signal()
    measuring = Signal(bool)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._drawing: Drawing | None = None
        self._note = ""
        self._picked: PartRef | None = None
        self._zoom = 1.0
        self._shift = QPointF(0, 0)
        self._drag_from: QPointF | None = None
        self._dragged = False
        self._stale = False
        self._greying = QTimer(self)
        self._greying.setSingleShot(True)
        self._greying.setInterval(_GREYED_AFTER_MS)
        self._greying.timeout.connect(self._show_stale)
        self._measured: Measured | None = None
        self._is_measuring = False
        self.length_words: Callable[[float], str] = lambda length_m: f"{length_m:.2f} m"
        self.setAccessibleName(name)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.DefaultContextMenu)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    @property
    def drawing(self) -> Drawing | None:
        """The drawing shown."""
        return self._drawing

    @property
    def is_stale(self) -> bool:
        """Whether what is shown is being made anew."""
        return self._stale

    @property
    def zoom(self) -> float:
        """Enlargement over the whole drawing."""
        return self._zoom

    def show_drawing(self, drawing: Drawing | None, note: str = "", *, stale: bool = False) -> None:
        """Show another drawing, or a note where there is none; ``stale`` greys one that is being made anew.

        Nothing happens where the same is shown already: a distance that is being measured stays.
        """
        self._greying.stop()
        if (drawing, note, stale) == (self._drawing, self._note, self._stale):
            return
        self._drawing, self._note, self._stale = drawing, note, stale
        self._measured = None
        self.setAccessibleDescription(drawing.description if drawing else note)
        self.setCursor(Qt.CursorShape.ArrowCursor)
        self.update()

    def show_stale_soon(self) -> None:
        """Grey what is shown unless another drawing comes at once, as it mostly does: then it is painted once."""
        self._greying.start()

    def _show_stale(self) -> None:
        self._stale = self._drawing is not None
        self.update()

    def show_picked(self, part: PartRef | None) -> None:
        """Mark a part; None for none."""
        if part != self._picked:
            self._picked = part
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

    @property
    def is_measuring(self) -> bool:
        """Whether a drag measures a distance instead of moving the drawing."""
        return self._is_measuring

    @property
    def measured_m(self) -> float | None:
        """The distance measured last, in metres; None where none is shown."""
        return None if self._measured is None else self._measured.length_m

    def measure(self, wanted: bool) -> None:
        """Let a drag measure a distance in the drawing, or move it again; a chart has no distances."""
        self._is_measuring = wanted and self._drawing is not None and self._drawing.true_scale
        if not self._is_measuring:
            self._measured = None
        self.setCursor(Qt.CursorShape.CrossCursor if self._is_measuring else Qt.CursorShape.ArrowCursor)
        self.measuring.emit(self._is_measuring)
        self.update()

    def picture(self) -> QImage:
        """Return what is shown as an image, twice as fine as the screen, in the colours of the screen."""
        image = QImage(self.size() * _FINENESS, QImage.Format.Format_ARGB32)
        image.setDevicePixelRatio(_FINENESS)
        painter = QPainter(image)
        self._paint(painter)
        painter.end()
        return image

    def copy_picture(self) -> None:
        """Put what is shown on the clipboard as an image."""
        if self._drawing is not None:
            QGuiApplication.clipboard().setImage(self.picture())

    def view(self) -> View | None:
        """Return how metres become pixels now; None without a drawing."""
        if self._drawing is None:
            return None
        return self._view_below(self._drawing, self._overhang_px(self._drawing), self._zoom, self._shift)

    def _view_below(self, drawing: Drawing, above_px: float, zoom: float, shift: QPointF) -> View:
        """Return the view that leaves ``above_px`` free at the top of the whole drawing."""
        box = drawing.box
        left, right, _, _ = paddings(drawing)
        side = max(_EDGE_PX, max(left, right) * PX_PER_PT)
        room_x = max(self.width() - 2 * side, 20.0)
        room_y = max(self.height() - 2 * _EDGE_PX - above_px, 20.0)
        across = room_x / max(box.width_m, 1e-6)
        up = room_y / max(box.height_m, 1e-6)
        if drawing.true_scale:
            across = up = min(across, up)
        across, up = across * zoom, up * zoom
        centre = self._centre(above_px) + shift
        middle_x, middle_y = (box.left_m + box.right_m) / 2, (box.bottom_m + box.top_m) / 2
        return View(across, up, QPointF(centre.x() - middle_x * across, centre.y() + middle_y * up))

    def _overhang_px(self, drawing: Drawing) -> float:
        """Return what has to be left free for balloons that else stand out above: they keep their size when small.

        A drawing as wide as the widget is not made smaller by that but only moved, by half of it.
        """
        above = 0.0
        for _ in range(_ROUNDS_FOR_BALLOONS):
            centres = balloon_centres(drawing, self._view_below(drawing, above, 1.0, QPointF(0, 0))).values()
            missing = _BALLOON_ROOM_PX - min((centre.y() for centre in centres), default=_BALLOON_ROOM_PX)
            if missing <= 0.0:
                break
            above += missing + _BALLOON_AIR_PX
        return above

    def _centre(self, above_px: float) -> QPointF:
        return QPointF(self.rect().center()) + QPointF(0, above_px / 2)

    def part_at(self, point: QPointF) -> PartRef | None:
        """Return the part at a point of the widget; None for none. Balloons and fittings come first."""
        view = self.view()
        if view is None or self._drawing is None:
            return None
        centres = balloon_centres(self._drawing, view)
        best: PartRef | None = None
        best_distance = _REACH_PX
        for shape in reversed(self._drawing.shapes):
            mark = mark_of(shape)
            if mark is None:
                continue
            distance = distance_px(shape, point, view, centres)
            if distance < best_distance - (1.0 if best else 0.0):
                best, best_distance = mark.part, distance
        return best

    def parts(self) -> tuple[PartRef, ...]:
        """Return the parts that the drawing shows, in chain order."""
        if self._drawing is None:
            return ()
        marks = {mark for shape in self._drawing.shapes if (mark := mark_of(shape)) is not None}
        return tuple(dict.fromkeys(mark.part for mark in sorted(marks, key=lambda mark: mark.link)))

    def _zoom_about(self, point: QPointF, factor: float) -> None:
        wanted = self._zoom * factor
        if not _SMALLEST <= wanted <= _LARGEST:
            return
        centre = self._centre(0.0 if self._drawing is None else self._overhang_px(self._drawing))
        self._shift = (point - centre) * (1 - factor) + self._shift * factor
        self._zoom = wanted
        self.update()

    def _step_part(self, by: int) -> None:
        parts = self.parts()
        if parts:
            place = parts.index(self._picked) + by if self._picked in parts else (0 if by > 0 else -1)
            self.part_picked.emit(parts[place % len(parts)])

    # Qt's own

    def sizeHint(self) -> QSize:
        """Qt: return the size that suits best."""
        return QSize(520, 380)

    def minimumSizeHint(self) -> QSize:
        """Qt: return the least useful size."""
        return QSize(260, 180)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint."""
        painter = QPainter(self)
        self._paint(painter)
        if self.hasFocus():
            painter.setPen(QPen(QColor(colours_now().accent), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))

    def _paint(self, painter: QPainter) -> None:
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
            brush = Brush(painter, view, self._drawing, self._picked, self.font())
            for shape in self._drawing.shapes:
                brush.paint(shape)
            painter.setOpacity(1.0)
            if self._measured is not None:
                self._measured.paint(painter, view, self.length_words(self._measured.length_m))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: lay out for the new size."""
        self.update()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Qt: enlarge or reduce about the pointer."""
        self._zoom_about(event.position(), 1.15 if event.angleDelta().y() > 0 else 1 / 1.15)
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Qt: begin a click or a move."""
        if event.button() is Qt.MouseButton.LeftButton:
            self._drag_from, self._dragged = event.position(), False
            view = self.view()
            if self._is_measuring and view is not None:
                start = view.place(event.position())
                self._measured = Measured(start, start)
                self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Qt: move the drawing, or show what can be picked."""
        if self._is_measuring:
            view = self.view()
            if self._drag_from is not None and self._measured is not None and view is not None:
                self._measured = Measured(self._measured.start, view.place(event.position()))
                self.update()
            return
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
        """Qt: pick the part under the pointer unless the drawing was moved."""
        if self._drag_from is not None and not self._dragged and not self._is_measuring:
            part = self.part_at(event.position())
            if part is not None:
                self.part_picked.emit(part)
        self._drag_from = None

    def event(self, event: QEvent) -> bool:
        """Qt: keep the key for copying from the menu while the keyboard is here."""
        is_asked = event.type() is QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent)
        if is_asked and isinstance(event, QKeyEvent) and event.matches(QKeySequence.StandardKey.Copy):
            event.accept()
            return True
        return super().event(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Qt: offer what can be done with the drawing."""
        self.menu().exec(event.globalPos())

    def menu(self) -> QMenu:
        """Return the menu of what can be done with the drawing."""
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        there = self._drawing is not None
        copied = menu.addAction(tr("&Copy the picture"), self.copy_picture)
        saved = menu.addAction(tr("&Save the picture…"), self.saving_wanted.emit)
        measured = menu.addAction(tr("&Measure a distance"), lambda: self.measure(not self._is_measuring))
        measured.setCheckable(True)
        measured.setChecked(self._is_measuring)
        measured.setEnabled(self._drawing is not None and self._drawing.true_scale)
        for action in (copied, saved):
            action.setEnabled(there)
        return menu

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: enlarge, reduce, move, or pick the next part."""
        move = {
            Qt.Key.Key_Left: QPointF(40, 0),
            Qt.Key.Key_Right: QPointF(-40, 0),
            Qt.Key.Key_Up: QPointF(0, 40),
            Qt.Key.Key_Down: QPointF(0, -40),
        }
        key = event.key()
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy_picture()
        elif key == Qt.Key.Key_M and not event.modifiers():
            self.measure(not self._is_measuring)
        elif key == Qt.Key.Key_Escape and self._is_measuring:
            self.measure(False)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
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
