"""Icons drawn for this program, in the colour of the text they stand beside."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QByteArray, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QIcon, QIconEngine, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from spoutline import assets
from spoutline.gui.widgets.theme import colours_now


def icon(name: str) -> QIcon:
    """Return the icon of this name in the colour of text; the program's own icon keeps its colours.

    The colour is taken anew whenever the icon is painted, so that it follows a switch from light to dark.
    """
    return QIcon(_DrawnIcon(name))


class _DrawnIcon(QIconEngine):
    """Paints a drawing of ``resources/icons``."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self._name = name

    def paint(self, painter: QPainter, rect: QRect, mode: QIcon.Mode, state: QIcon.State) -> None:
        """Qt: paint the drawing into the rectangle, quieter where what it stands for cannot be done."""
        colours = colours_now()
        quiet = mode is QIcon.Mode.Disabled
        _renderer(self._name, colours.frame if quiet else colours.text).render(painter, QRectF(rect))

    def pixmap(self, size: QSize, mode: QIcon.Mode, state: QIcon.State) -> QPixmap:
        """Qt: the drawing on a clear ground, as large as asked for."""
        pixmap = QPixmap(size)
        pixmap.fill(Qt.GlobalColor.transparent)
        painter = QPainter(pixmap)
        self.paint(painter, QRect(0, 0, size.width(), size.height()), mode, state)
        painter.end()
        return pixmap

    def clone(self) -> QIconEngine:
        """Qt: another engine for the same drawing."""
        return _DrawnIcon(self._name)


@lru_cache(maxsize=128)
def _renderer(name: str, colour: str) -> QSvgRenderer:
    path = assets.resources_folder() / "icons" / f"{name}.svg"
    drawing = path.read_text(encoding="utf-8").replace("currentColor", colour)
    return QSvgRenderer(QByteArray(drawing.encode("utf-8")))
