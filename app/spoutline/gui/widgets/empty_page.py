"""What stands where nothing is yet: what will come here, and the one button that begins it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from spoutline.gui.widgets.cards import plain_label


class EmptyPage(QWidget):
    """Teaches.

    Signals
    -------
    begun()
        The button was pressed.
    """

    begun = Signal()

    def __init__(self, title: str, words: str, button_words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.addStretch(1)
        self.title_label = plain_label(title, "cardTitle", wraps=True)
        self.words_label = plain_label(words, "quiet", wraps=True)
        for label in (self.title_label, self.words_label):
            label.setAlignment(Qt.AlignmentFlag.AlignCenter)
            column.addWidget(label)
        self.button = QPushButton(button_words, self)
        self.button.setObjectName("primary")
        self.button.clicked.connect(lambda _=False: self.begun.emit())
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignCenter)
        column.addStretch(2)

    def ask_for(self, words: str, button_words: str) -> None:
        """Say what comes next, and let the button begin it."""
        self.words_label.setText(words)
        self.button.setText(button_words)
