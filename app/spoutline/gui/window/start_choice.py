"""What the window shows over an empty book: look at the demonstration, or begin one's own."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.frozen import frozen
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.wording import told, tr


@frozen
class OwnBeginning:
    """What a person begins with: the name of the catalog, of the first site, and whether *Demonstration* stays."""

    catalogue: str
    site: str
    without_demonstration: bool


class StartChoice(QWidget):
    """Stands where the workplace will stand. Nothing is written before a person chose.

    Signals
    -------
    demonstration_wanted()
        Show the ready station with the invented catalog.
    own_wanted(OwnBeginning)
        Begin with a catalog and a site of one's own.
    tour_wanted()
        The three jobs are to be shown in pictures.
    file_wanted()
        A survey file is to be read.
    """

    demonstration_wanted = Signal()
    own_wanted = Signal(object)
    tour_wanted = Signal()
    file_wanted = Signal()

    def __init__(self, own_catalogues: tuple[str, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(40, 30, 40, 30)
        column.addStretch(1)
        title = plain_label(tr("How do you want to begin?"), "pageTitle")
        title.setAlignment(Qt.AlignmentFlag.AlignCenter)
        column.addWidget(title)
        row = QHBoxLayout()
        row.setSpacing(24)
        row.addWidget(self._demonstration(), 1)
        row.addWidget(self._own(own_catalogues), 1)
        column.addLayout(row)
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        column.addWidget(self.fault_label)
        hint = tr("Either way the other stays open to you: stations under Survey, catalogs under Go.")
        told = plain_label(hint, "quiet", wraps=True)
        told.setAlignment(Qt.AlignmentFlag.AlignCenter)
        column.addWidget(told)
        column.addLayout(self._other_ways())
        column.addStretch(2)
        self._enable()

    def _demonstration(self) -> Card:
        card = Card(tr("Look at the demonstration"), self)
        words = tr(
            "A ready station, planned with a catalog that is invented: its makers, parts and prices exist nowhere, "
            "and every paper made from it says so."
        )
        card.body.addWidget(plain_label(words, wraps=True))
        card.body.addStretch(1)
        self.demonstration_button = QPushButton(tr("&Look at the demonstration"), card)
        self.demonstration_button.clicked.connect(lambda _=False: self._ask(None))
        card.body.addWidget(self.demonstration_button)
        return card

    def _own(self, own_catalogues: tuple[str, ...]) -> Card:
        card = Card(tr("Begin my own"), self)
        words = tr("A catalog that you fill from your suppliers' tables, and the survey of your first site.")
        card.body.addWidget(plain_label(words, wraps=True))
        self.catalogue_edit = self._entry(card, tr("Name of the &catalog"), own_catalogues[0] if own_catalogues else "")
        self.site_edit = self._entry(card, tr("Name of the first s&ite"), "")
        self.without_box = QCheckBox(tr("Do &without the demonstration in this book"), card)
        card.body.addWidget(self.without_box)
        self.own_button = QPushButton(tr("&Begin"), card)
        self.own_button.setObjectName("primary")
        self.own_button.clicked.connect(lambda _=False: self._ask(self.beginning))
        card.body.addWidget(self.own_button)
        return card

    def _other_ways(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.tour_button = QPushButton(tr("&Three jobs in pictures"), self)
        self.tour_button.clicked.connect(lambda _=False: self.tour_wanted.emit())
        self.file_button = QPushButton(tr("Read from &file…"), self)
        self.file_button.clicked.connect(lambda _=False: self.file_wanted.emit())
        row.addStretch(1)
        row.addWidget(self.tour_button)
        row.addWidget(self.file_button)
        row.addStretch(1)
        return row

    def _entry(self, card: Card, words: str, text: str) -> LineEditor:
        edit = LineEditor(text, card)
        label = plain_label(words)
        label.setBuddy(edit)
        edit.setAccessibleName(words.replace("&", ""))
        edit.textChanged.connect(lambda _: self._enable())
        edit.returnPressed.connect(self._press)
        card.body.addWidget(label)
        card.body.addWidget(edit)
        return edit

    def _press(self) -> None:
        self.own_button.click()

    @property
    def beginning(self) -> OwnBeginning:
        """What is written for a beginning of one's own."""
        return OwnBeginning(
            self.catalogue_edit.text().strip(), self.site_edit.text().strip(), self.without_box.isChecked()
        )

    def show_fault(self, text: str) -> None:
        """Say why it could not begin, and let the person choose again."""
        self.fault_label.setText(told(text))
        self.fault_label.setVisible(bool(text))
        self.setEnabled(True)

    def _ask(self, beginning: OwnBeginning | None) -> None:
        self.setEnabled(False)
        if beginning is None:
            self.demonstration_wanted.emit()
        else:
            self.own_wanted.emit(beginning)

    def _enable(self) -> None:
        beginning = self.beginning
        self.own_button.setEnabled(bool(beginning.catalogue and beginning.site))
