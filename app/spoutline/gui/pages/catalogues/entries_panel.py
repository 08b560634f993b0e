"""The entries of an edition or draft, found as one types, with what each lacks to be a part that can be chosen."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from spoutline.bootstrap.catalogues import EntriesFound
from spoutline.gui.jobs import Ticket
from spoutline.gui.models.catalogue_rows import entry_columns
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.pages.catalogues.chosen import FIND, InHand
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr

MOST_SHOWN = 300


class EntriesPanel(QWidget):
    """Looks entries up off the window's thread; a later question takes the place of an earlier one."""

    def __init__(self, context: Context, in_hand: InHand, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._in_hand = context, in_hand
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        row = QHBoxLayout()
        self.search_edit = QLineEdit(self)
        self.search_edit.setAccessibleName(tr("Search entries"))
        self.search_edit.setPlaceholderText(tr("Number, name, maker, item number, GTIN or supplier"))
        self.search_edit.setClearButtonEnabled(True)
        self.search_edit.textChanged.connect(lambda _: self.refresh())
        self.lacking_box = QCheckBox(tr("Only what is not yet &described"), self)
        self.lacking_box.toggled.connect(lambda _: self.refresh())
        row.addWidget(self.search_edit, 1)
        row.addWidget(self.lacking_box)
        column.addLayout(row)
        self.state_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.state_label)
        self.model = RecordTable(entry_columns(context.story), self)
        self.table = Table(tr("Entries"), self, shares=(12, 16, 12, 26, 10, 30))
        self.table.setModel(self.model)
        column.addWidget(self.table, 1)

    def refresh(self) -> None:
        """Show the entries of the edition in hand that are known by the words written."""
        row = self._in_hand.row
        if row is None:
            return
        service, ref, text = self._context.session.workbench.catalogues(), row.ref, self.search_edit.text()
        only = self.lacking_box.isChecked()

        def work(_: Ticket) -> EntriesFound:
            return service.find(ref, text, limit=MOST_SHOWN, only_not_described=only)

        self._context.jobs.start(FIND, work, self._show, lambda fault: self.state_label.setText(str(fault)))

    def _show(self, found: EntriesFound) -> None:
        self.model.show_records(found.lines)
        self.table.fit_columns()
        shown = len(found.lines)
        words = tr("{0} entries") if shown == found.count else tr("{0} entries, the first {1} shown")
        self.state_label.setText(words.format(f"{found.count:,}", shown))
