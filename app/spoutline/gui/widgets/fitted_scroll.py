"""A column that is as high as its contents where there is room, and scrolls where there is not."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

_LEAST_HEIGHT = 110  # pixels; less would show no whole sentence beside its button


class FittedScroll(QScrollArea):
    """Asks for the height that wrapped texts need at the present width, and is content with less."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Maximum)
        self._content = QWidget(self)
        self.column = QVBoxLayout(self._content)
        self.column.setContentsMargins(0, 0, 8, 0)
        self.setWidget(self._content)
        for one in (self._content, self.viewport()):  # the card below shows through
            one.setAutoFillBackground(False)
        self._height = 0

    def fit(self) -> None:
        """Ask for another height where the contents need one."""
        width = self.viewport().width()
        needed = self._content.heightForWidth(width) if self._content.hasHeightForWidth() else -1
        height = needed if needed >= 0 else self._content.sizeHint().height()
        if height != self._height:
            self._height = height
            self.updateGeometry()

    def sizeHint(self) -> QSize:
        """Qt: return the size that shows everything."""
        return QSize(super().sizeHint().width(), self._height)

    def minimumSizeHint(self) -> QSize:
        """Qt: return the least size at which something can be read."""
        return QSize(super().minimumSizeHint().width(), min(self._height, _LEAST_HEIGHT))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: another width wraps the texts elsewhere."""
        super().resizeEvent(event)
        self.fit()
