"""One search over everything that can be gone to. Typing narrows it, arrow keys choose, Return goes there."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QLineEdit, QVBoxLayout, QWidget

from spoutline.gui.models.command_search import Found, FoundKind, fitting
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr

_WORDS = {
    FoundKind.COMMAND: "Command",
    FoundKind.POSITION: "Position",
    FoundKind.SURVEY: "Survey",
    FoundKind.QUOTATION: "Quotation",
    FoundKind.PART: "Part",
    FoundKind.HELP: "Help",
}
_PAUSE_MS = 120
_STEPS = (Qt.Key.Key_Down, Qt.Key.Key_Up, Qt.Key.Key_PageDown, Qt.Key.Key_PageUp)

Seek = Callable[[str, Callable[[Sequence[Found]], None]], None]


class CommandSearchDialog(QDialog):
    """``chosen`` is what a person wants to go to, None for nothing.

    ``offered`` is searched at once; ``seek`` is asked for more, such as parts of the catalog, and answers later.
    """

    def __init__(self, offered: Sequence[Found], seek: Seek, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Search everything"))
        self._offered, self._seek = tuple(offered), seek
        self._more: tuple[Found, ...] = ()
        self.chosen: Found | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 14, 14, 12)
        self.edit = QLineEdit(self)
        self.edit.setPlaceholderText(tr("Command, position, survey, quotation, part or help"))
        self.edit.setAccessibleName(tr("Search everything"))
        self.edit.setClearButtonEnabled(True)
        self.edit.installEventFilter(self)
        column.addWidget(self.edit)
        columns: tuple[Column[Found], ...] = (
            Column(title=tr("Kind"), text=lambda one: tr(_WORDS[one.kind])),
            Column(title=tr("Name"), text=lambda one: one.title),
            Column(title=tr("What it is"), text=lambda one: one.told, hint=lambda one: one.told),
            Column(title=tr("Keys"), text=lambda one: one.keys),
        )
        self.model: RecordTable[Found] = RecordTable(columns, self)
        self.table = Table(tr("What was found"), self, shares=(2, 5, 7, 2))
        self.table.setModel(self.model)
        self.table.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.table.opened.connect(self._take)
        column.addWidget(self.table, 1)
        self.told_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.told_label)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(_PAUSE_MS)
        self._later.timeout.connect(self._ask_more)
        self.edit.textChanged.connect(self._on_text)
        self.resize(780, 460)
        self._show()

    @property
    def found(self) -> tuple[Found, ...]:
        """What is listed."""
        return self.model.records

    def _on_text(self, text: str) -> None:
        self._more = ()
        self._show()
        self._later.start()

    def _ask_more(self) -> None:
        text = self.edit.text()
        if text.strip():
            self._seek(text, lambda found: self._take_more(text, found))

    def _take_more(self, text: str, found: Sequence[Found]) -> None:
        if text == self.edit.text():  # else somebody typed on
            self._more = tuple(found)
            self._show()

    def _show(self) -> None:
        kept = self.table.current_record()
        found = (*fitting(self.edit.text(), self._offered), *self._more)
        self.model.show_records(found)
        self.table.fit_columns()
        if found:
            row = next((row for row, one in enumerate(found) if one is kept), 0) if self._more else 0
            self.table.pick_row(row)
        self.told_label.setText("" if found else tr("Nothing is called so. Try another word, or fewer."))

    def _take(self, record: object) -> None:
        if isinstance(record, Found):
            self.chosen = record
            self.accept()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Qt: while a person types, arrow keys choose in the list and Return goes there."""
        if watched is self.edit and event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            key = Qt.Key(event.key())
            if key in _STEPS and self.model.rowCount():
                by = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageDown: 10, Qt.Key.Key_PageUp: -10}[key]
                row = max(0, min(self.model.rowCount() - 1, self.table.currentIndex().row() + by))
                self.table.pick_row(row)
                self.table.scrollTo(self.table.currentIndex())
                return True
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self._take(self.table.current_record())
                return True
        return super().eventFilter(watched, event)
