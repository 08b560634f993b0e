"""Icons drawn for this program, in the colour of the text they stand beside."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from spoutline import assets
from spoutline.gui.widgets.theme import colours_now

_PIXELS = 48


def icon(name: str) -> QIcon:
    """Return the icon of this name in the colour of text; the program's own icon keeps its colours."""
    return _icon(name, colours_now().text)


@lru_cache(maxsize=128)
def _icon(name: str, colour: str) -> QIcon:
    path = assets.resources_folder() / "icons" / f"{name}.svg"
    drawing = path.read_text(encoding="utf-8").replace("currentColor", colour)
    renderer = QSvgRenderer(QByteArray(drawing.encode("utf-8")))
    pixmap = QPixmap(_PIXELS, _PIXELS)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, _PIXELS, _PIXELS))
    painter.end()
    return QIcon(pixmap)
