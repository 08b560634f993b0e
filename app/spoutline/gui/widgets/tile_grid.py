"""Tiles side by side in as many columns as there is room for."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

_GAP_PX = 8


class TileGrid(QWidget):
    """Up to a greatest number of columns; fewer where the widest tile would not fit, down to one."""

    def __init__(self, columns: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._most = columns
        self._columns = columns
        self._tiles: list[QWidget] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 2, 0, 2)
        self._grid.setSpacing(_GAP_PX)

    @property
    def columns(self) -> int:
        """How many columns stand side by side now."""
        return self._columns

    def add(self, tile: QWidget) -> None:
        """Put a tile behind the others."""
        self._tiles.append(tile)
        self._arrange()

    def minimumSizeHint(self) -> QSize:
        """Qt: no wider than the widest tile, so that a narrow page can have them below each other."""
        return QSize(self._widest(), super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: take as many columns as the new width holds."""
        super().resizeEvent(event)
        each = self._widest() + _GAP_PX
        fitting = max(1, min(self._most, (event.size().width() + _GAP_PX) // each)) if each else self._most
        if fitting != self._columns:
            self._columns = fitting
            self._arrange()

    def _widest(self) -> int:
        return max((tile.sizeHint().width() for tile in self._tiles), default=0)

    def _arrange(self) -> None:
        for tile in self._tiles:
            self._grid.removeWidget(tile)
        for place, tile in enumerate(self._tiles):
            self._grid.addWidget(tile, place // self._columns, place % self._columns)
        for column in range(self._most):
            self._grid.setColumnStretch(column, 1 if column < self._columns else 0)
        self.updateGeometry()
