"""Rendered pages one below the other; pages are fetched when they come into view."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QImage, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QScrollArea, QWidget

from spoutline.gui.widgets.theme import colours_now
from spoutline.gui.wording import tr

_GAP = 14


class _Sheet(QWidget):
    def __init__(self, place: int, shape: float, parent: QWidget) -> None:
        super().__init__(parent)
        self.place, self.shape = place, shape
        self.image: QImage | None = None
        self.setAccessibleName(tr("Page {0}").format(place + 1))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.fillRect(self.rect(), QColor("#ffffff"))
        if self.image is not None:
            painter.drawImage(QRectF(self.rect()), self.image)
        painter.setPen(QColor(colours_now().frame))
        painter.drawRect(self.rect().adjusted(0, 0, -1, -1))


class PaperView(QScrollArea):
    """Shows the pages of a document.

    Signals
    -------
    page_wanted(int, int)
        A page came into view without an image: its place and the width in pixels it should have.
    """

    page_wanted = Signal(int, int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self._sheets_area = QWidget(self)
        self.setWidget(self._sheets_area)
        self._sheets: list[_Sheet] = []
        self._asked: set[int] = set()
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(30)
        self._later.timeout.connect(self._ask)
        self.verticalScrollBar().valueChanged.connect(lambda _: self._later.start())

    def images(self) -> tuple[QImage | None, ...]:
        """Return the images of all pages; None for one that was not fetched yet."""
        return tuple(sheet.image for sheet in self._sheets)

    def show_pages(self, shapes: tuple[float, ...]) -> None:
        """Show that many pages; ``shapes`` are their heights over their widths. Images follow with ``show_page``."""
        for sheet in self._sheets:
            sheet.hide()
            sheet.deleteLater()
        self._sheets = [_Sheet(place, shape, self._sheets_area) for place, shape in enumerate(shapes)]
        self._asked.clear()
        self._arrange()

    def show_page(self, place: int, image: QImage) -> None:
        """Show the image of one page."""
        if place < len(self._sheets):
            self._sheets[place].image = image
            self._sheets[place].update()

    def _page_width(self) -> int:
        return max(240, min(self.viewport().width() - 24, 900))

    def _arrange(self) -> None:
        width, top = self._page_width(), _GAP
        for sheet in self._sheets:
            sheet.setGeometry(12, top, width, round(width * sheet.shape))
            sheet.show()
            top += round(width * sheet.shape) + _GAP
        self._sheets_area.resize(width + 24, top)
        self._later.start()

    def _ask(self) -> None:
        shown = QRectF(0, self.verticalScrollBar().value(), self._sheets_area.width(), self.viewport().height())
        for sheet in self._sheets:
            if sheet.place not in self._asked and QRectF(sheet.geometry()).intersects(shown):
                self._asked.add(sheet.place)
                self.page_wanted.emit(sheet.place, round(self._page_width() * self.devicePixelRatioF()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: lay out for the new size."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._asked.clear()  # pages are fetched anew in the width they have now
            self._arrange()

    def sizeHint(self) -> QSize:
        """Qt: return the size that suits best."""
        return QSize(560, 700)
