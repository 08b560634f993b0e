"""A bar above the page that tells what went wrong and offers what can be done about it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QWidget

from spoutline.gui.roles import Tone
from spoutline.gui.widgets.marks import Mark


@dataclass(frozen=True, slots=True)
class Offer:
    """Something that can be done: its words and what it does."""

    words: str
    act: Callable[[], None]


class NoticeBar(QFrame):
    """Shows one notice until it is put away. It never takes the keyboard away from what a person is doing."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(12, 6, 8, 6)
        self._mark = Mark(self)
        self._label = QLabel(self)
        self._label.setTextFormat(Qt.TextFormat.PlainText)
        self._label.setWordWrap(True)
        self._row.addWidget(self._mark)
        self._row.addWidget(self._label, 1)
        self._buttons: list[QPushButton] = []
        self.hide()

    @property
    def text(self) -> str:
        """The notice shown; empty while the bar is put away."""
        return self._label.text() if not self.isHidden() else ""

    def notify(self, text: str, *, tone: Tone = Tone.CAUTION, offers: tuple[Offer, ...] = ()) -> None:
        """Show a notice with its offers and a way to put it away."""
        self._drop_buttons()
        self._mark.show_tone(tone, "Notice")
        self._label.setText(text)
        for offer in offers:
            self._add_button(offer.words, offer.act)
        self._add_button("Put away", self.put_away)
        self.show()

    def put_away(self) -> None:
        """Hide the notice."""
        self._drop_buttons()
        self._label.clear()
        self.hide()

    def _add_button(self, words: str, act: Callable[[], None]) -> None:
        button = QPushButton(words, self)
        button.clicked.connect(lambda _=False: act())  # Qt's flag is none of its arguments
        self._row.addWidget(button)
        self._buttons.append(button)

    def _drop_buttons(self) -> None:
        for button in self._buttons:
            self._row.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._buttons.clear()
