"""What all dialogs share: a column, buttons at the foot, a place to say what is wrong."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QMessageBox, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.help_place import desk_of, explained_by, topic_of
from spoutline.gui.places import Place
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import told, tr


class FormDialog(QDialog):
    """A dialog with a body, a fault line and buttons. Escape closes it and changes nothing.

    F1 leads to the page of the manual that ``help_topic`` names, or to that of the field with the keyboard.
    """

    help_topic = "window"

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(18, 16, 18, 16)
        outer.setSpacing(12)
        self.body = QVBoxLayout()
        self.body.setSpacing(10)
        outer.addLayout(self.body, 1)
        self.fault_label: QLabel = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        outer.addWidget(self.fault_label)
        explained_by(self, self.help_topic)
        self.foot = QHBoxLayout()
        self.foot.addStretch(1)
        outer.addLayout(self.foot)

    def add_buttons(self, accept_words: str) -> QPushButton:
        """Add a button that takes the dialog's answer and one that leaves everything as it was."""
        leave = QPushButton(tr("Leave as it &was"), self)
        leave.setAutoDefault(False)
        leave.clicked.connect(self.reject)
        self.accept_button = QPushButton(accept_words, self)
        self.accept_button.setObjectName("primary")
        self.accept_button.setDefault(True)
        self.accept_button.clicked.connect(self.accept)
        self.foot.addWidget(leave)
        self.foot.addWidget(self.accept_button)
        return self.accept_button

    def add_leave(self) -> None:
        """Add a button that leaves everything as it was, where something in the body takes the dialog's answer."""
        leave = QPushButton(tr("Leave as it &was"), self)
        leave.setAutoDefault(False)
        leave.clicked.connect(self.reject)
        self.foot.addWidget(leave)

    def add_close(self) -> None:
        """Add a button that closes the dialog."""
        close = QPushButton(tr("&Close"), self)
        close.setAutoDefault(False)
        close.clicked.connect(self.accept)
        self.foot.addWidget(close)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Qt: F1 opens the manual."""
        if event.key() == Qt.Key.Key_F1 and not event.modifiers():
            self._ask_help()
        else:
            super().keyPressEvent(event)

    def _ask_help(self) -> None:
        desk = desk_of(self)
        if desk is not None:
            desk.open_help(topic_of(self.focusWidget() or self, Place.SURVEY), self)

    def show_fault(self, text: str) -> None:
        """Say what is wrong and what would be right; an empty text takes it away."""
        self.fault_label.setText(told(text))
        self.fault_label.setVisible(bool(text))

    def is_sure(self, question: str) -> bool:
        """Ask before something is lost; Return alone loses nothing."""
        yes, no = QMessageBox.StandardButton.Yes, QMessageBox.StandardButton.No
        return QMessageBox.question(self, self.windowTitle(), question, yes | no, no) is yes
