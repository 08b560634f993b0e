"""A field for a catalogue number that looks numbers up while one is typed, each with its name and maker."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QCompleter, QWidget

from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.wording import tr
from spoutline.model.part import Part

_NAMED = Qt.ItemDataRole.UserRole  # maker and number, as they are read back


class PartNumberEdit(LineEditor):
    """Offers the parts whose number, name or maker holds what is typed; choosing one enters maker and number."""

    def __init__(self, search: Callable[[str], tuple[Part, ...]], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._search = search
        self.offered = QStandardItemModel(self)
        completer = QCompleter(self.offered, self)
        completer.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        completer.setCompletionRole(_NAMED)
        popup = completer.popup()
        if popup is not None:
            popup.setAccessibleName(tr("Parts of the catalog"))
        self.setCompleter(completer)
        self.textEdited.connect(self._look_up)

    def _look_up(self, text: str) -> None:
        """Offer what holds every word of ``text``; nothing for nothing."""
        self.offered.clear()
        if not text.strip():
            return
        for part in self._search(text):
            item = QStandardItem(f"{part.number}  {part.maker}, {part.name}")
            item.setData(str(part.ref), _NAMED)
            item.setEditable(False)
            self.offered.appendRow(item)

    def offers(self) -> tuple[str, ...]:
        """Return the texts that are offered, in their order."""
        return tuple(
            str(self.offered.index(row, 0, QModelIndex()).data()) for row in range(self.offered.rowCount(QModelIndex()))
        )
