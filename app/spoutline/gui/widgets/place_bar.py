"""The switcher between places: a line of stations, each with its mark, its name, and where it stands."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QFrame, QHBoxLayout, QSizePolicy, QWidget

from spoutline.gui.roles import Standing, Tone
from spoutline.gui.widgets.marks import paint_mark
from spoutline.gui.widgets.theme import colours_now

_MARK, _EDGE, _GAP = 16, 8, 6
_SMALL = 0.88  # of the size of text, for where a place stands
_LEAST_TEXT = 40  # pixels; less would show no word


class PlaceButton(QAbstractButton):
    """One place. It is painted, so that name and standing keep their sizes and weights whatever is in view."""

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._standing, self._hint = Standing(Tone.WORKING, ""), ""
        self._is_low = False
        self.setText(title)
        self.setCheckable(True)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)

    @property
    def standing(self) -> Standing:
        """Where the place stands."""
        return self._standing

    def show_standing(self, standing: Standing, hint: str) -> None:
        """Show another standing; it is told to a screen reader as what describes the button.

        Most steps move no place: then nothing is laid out or painted.
        """
        if (standing, hint) == (self._standing, self._hint):
            return
        self._standing, self._hint = standing, hint
        self.setAccessibleDescription(standing.words)
        self.setToolTip("\n".join(one for one in (f"{self.text()}: {standing.words}", hint) if one))
        self.updateGeometry()
        self.update()

    def show_low(self, *, is_low: bool) -> None:
        """Leave the line of the standing out where there is no height for it; its mark stays."""
        if is_low != self._is_low:
            self._is_low = is_low
            self.updateGeometry()

    def nextCheckState(self) -> None:
        """Qt: a press asks to go there; the mark of the place in view follows the page, not the press."""

    def sizeHint(self) -> QSize:
        """Qt: room for the longer of both lines."""
        below = 0 if self._is_low else QFontMetrics(self._small()).horizontalAdvance(self._standing.words)
        title = QFontMetrics(self._bold()).horizontalAdvance(self.text())
        return QSize(2 * _EDGE + _MARK + _GAP + max(title, below) + 2, self._height())

    def minimumSizeHint(self) -> QSize:
        """Qt: room for the mark and the beginning of the name."""
        return QSize(min(2 * _EDGE + _MARK + _GAP + _LEAST_TEXT, self.sizeHint().width()), self._height())

    def changeEvent(self, event: QEvent) -> None:
        """Qt: another font needs other room."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.PaletteChange):
            self.updateGeometry()

    def _height(self) -> int:
        title, small = QFontMetrics(self._bold()).height(), QFontMetrics(self._small()).height()
        return title + 10 if self._is_low else title + small + 8

    def _bold(self) -> QFont:
        font = QFont(self.font())
        font.setBold(True)  # the name of the place in view is bold, and none may jump
        return font

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPointSizeF(font.pointSizeF() * _SMALL)
        return font

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint mark, name and standing; the place in view stands on a plate with a bar above it."""
        colours, painter = colours_now(), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = QRectF(self.rect())
        if self.isChecked() or self.underMouse():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours.soft))
            painter.drawRoundedRect(room.adjusted(1, 1, -1, -1), 6, 6)
        if self.isChecked():
            painter.setBrush(QColor(colours.accent))
            painter.drawRect(QRectF(room.left() + 7, room.top(), room.width() - 14, 3))
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(colours.accent), 2))
            painter.drawRoundedRect(room.adjusted(1.5, 1.5, -1.5, -1.5), 6, 6)
        box = QRectF(_EDGE, room.center().y() - _MARK / 2, _MARK, _MARK)
        paint_mark(painter, box, self._standing.tone, colours)
        left = _EDGE + _MARK + _GAP
        wide = self.width() - left - _EDGE + 4
        font = self._bold() if self.isChecked() else QFont(self.font())
        high = QFontMetrics(self._bold()).height()
        top = (self.height() - high) // 2 if self._is_low else 4
        self._write(painter, font, QColor(colours.text), (left, top, wide, high), self.text())
        if not self._is_low:
            small, quiet = self._small(), QColor(colours.text if self.isChecked() else colours.quiet_text)
            low = QFontMetrics(small).height()
            self._write(painter, small, quiet, (left, top + high, wide, low), self._standing.words)

    @staticmethod
    def _write(painter: QPainter, font: QFont, colour: QColor, box: tuple[int, int, int, int], text: str) -> None:
        painter.setFont(font)
        painter.setPen(colour)
        words = QFontMetrics(font).elidedText(text, Qt.TextElideMode.ElideRight, box[2])
        painter.drawText(*box, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter), words)


class PlaceBar(QFrame):
    """The places side by side, always in sight. Arrow keys go along it, Space or Return goes to a place.

    Signals
    -------
    chosen(int)
        A person wants to go to the place of this number.
    """

    chosen = Signal(int)

    def __init__(self, name: str, titles: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.setAccessibleName(name)
        row = QHBoxLayout(self)
        row.setContentsMargins(6, 3, 6, 3)
        row.setSpacing(2)
        self.buttons: list[PlaceButton] = []
        for number, title in enumerate(titles):
            button = PlaceButton(title, self)
            button.setAccessibleName(title)
            button.clicked.connect(lambda _=False, wanted=number: self.chosen.emit(wanted))
            button.installEventFilter(self)
            row.addWidget(button)
            self.buttons.append(button)
        self.show_current(0)

    @property
    def current(self) -> int:
        """The number of the place in view."""
        return next(number for number, button in enumerate(self.buttons) if button.isChecked())

    def show_current(self, number: int) -> None:
        """Mark a place as the one in view; it is the one that Tab leads to, and focus on another place goes there."""
        follows = any(button.hasFocus() for button in self.buttons)
        for place, button in enumerate(self.buttons):
            button.setChecked(place == number)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus if place == number else Qt.FocusPolicy.NoFocus)
        if follows:
            self.buttons[number].setFocus(Qt.FocusReason.OtherFocusReason)

    def show_low(self, *, is_low: bool) -> None:
        """Show names alone where the window is low."""
        for button in self.buttons:
            button.show_low(is_low=is_low)

    def eventFilter(self, watched: QWidget, event: QEvent) -> bool:  # type: ignore[override]
        """Qt: let arrow keys, Home and End move along the places, and Return go to one."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent) and watched in self.buttons:
            here, last = self.buttons.index(watched), len(self.buttons) - 1
            to = {
                Qt.Key.Key_Right: min(here + 1, last),
                Qt.Key.Key_Left: max(here - 1, 0),
                Qt.Key.Key_Home: 0,
                Qt.Key.Key_End: last,
            }.get(Qt.Key(event.key()))
            if to is not None and not event.modifiers():
                self.buttons[to].setFocus(Qt.FocusReason.OtherFocusReason)
                return True
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.chosen.emit(here)
                return True
        return super().eventFilter(watched, event)
