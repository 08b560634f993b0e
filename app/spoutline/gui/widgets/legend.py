"""A row of marks, each with its meaning beside it."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtWidgets import QHBoxLayout, QWidget

from spoutline.gui.roles import Tone
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.marks import Mark


class Legend(QWidget):
    """Says what marks mean; ``meanings`` holds each mark with its words."""

    def __init__(self, meanings: Iterable[tuple[Tone, str]], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 0, 0, 0)
        for tone, words in meanings:
            mark = Mark(self, 14)
            mark.show_tone(tone, words)
            row.addWidget(mark)
            row.addWidget(plain_label(words, "quiet"))
            row.addSpacing(8)
        row.addStretch(1)
