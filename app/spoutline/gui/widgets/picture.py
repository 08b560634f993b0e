"""A picture of the manual, drawn in the colours in use and at any size."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QSizePolicy, QWidget

from spoutline import assets
from spoutline.gui.widgets.theme import colours_now


class Picture(QWidget):
    """Shows a drawing of ``resources/help/pictures``; ``words`` say what is on it."""

    def __init__(self, name: str, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self.setAccessibleName(words)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(200, 60)

    def sizeHint(self) -> QSize:
        """Qt: the size at which it was drawn."""
        return QSize(540, 150)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint the drawing as large as there is room, in its own proportions."""
        colours = colours_now()
        drawing = _renderer(self._name, colours.text, colours.accent)
        whole = drawing.defaultSize()
        scale = min(self.width() / whole.width(), self.height() / whole.height())
        wide, high = whole.width() * scale, whole.height() * scale
        painter = QPainter(self)
        drawing.render(painter, QRectF((self.width() - wide) / 2, (self.height() - high) / 2, wide, high))


@lru_cache(maxsize=24)
def _renderer(name: str, text: str, accent: str) -> QSvgRenderer:
    path = assets.resources_folder() / "help" / "pictures" / f"{name}.svg"
    drawing = path.read_text(encoding="utf-8").replace("currentColor", text).replace("accentColor", accent)
    return QSvgRenderer(QByteArray(drawing.encode("utf-8")))
