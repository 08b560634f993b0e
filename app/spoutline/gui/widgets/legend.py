"""A row of marks, each with its meaning beside it."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from spoutline.gui.roles import Tone
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.marks import Mark
from spoutline.gui.widgets.tile_grid import TileGrid


class Legend(QWidget):
    """Says what marks mean; ``meanings`` holds each mark with its words."""

    def __init__(self, meanings: Iterable[tuple[Tone, str]], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        known = tuple(meanings)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 0, 0, 0)
        grid = TileGrid(len(known), self)
        for tone, words in known:
            tile = QWidget(grid)
            row = QHBoxLayout(tile)
            row.setContentsMargins(0, 0, 0, 0)
            mark = Mark(tile, 14)
            mark.show_tone(tone, words)
            row.addWidget(mark)
            row.addWidget(plain_label(words, "quiet"))
            row.addStretch(1)
            grid.add(tile)
        column.addWidget(grid)
