"""Choose the part whose figures others take over."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QLineEdit, QWidget

from spoutline.bootstrap.catalogues import EntriesFound, EntryLine
from spoutline.explain.plan.story import Story
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.models.catalogue_rows import entry_columns
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, StoreFault

Find = Callable[[str], EntriesFound]


class SimilarPartDialog(FormDialog):
    """Looks parts up as one types; ``chosen`` is the part once the dialog is accepted."""

    help_topic = "catalog"

    def __init__(self, find: Find, story: Story, count: int, parent: QWidget | None = None) -> None:
        super().__init__(tr("Figures of a similar part"), parent)
        self._find = find
        self.chosen: CatalogueEntry | None = None
        words = tr("{0} parts take over the figures that they lack; each figure says from which part it is.")
        self.body.addWidget(plain_label(words.format(count), "quiet", wraps=True))
        self.search_edit = QLineEdit(self)
        self.search_edit.setAccessibleName(tr("Search entries"))
        self.search_edit.setPlaceholderText(tr("Number, old number, name, maker, item number, GTIN or supplier"))
        self.search_edit.textChanged.connect(lambda _: self._look())
        self.body.addWidget(self.search_edit)
        self.model: RecordTable[EntryLine] = RecordTable(entry_columns(story), self)
        self.table = Table(tr("Entries"), self, shares=(12, 16, 12, 26, 10, 30))
        self.table.setModel(self.model)
        self.table.picked.connect(lambda _: self._enable())
        self.table.opened.connect(lambda _: self.accept())
        self.body.addWidget(self.table, 1)
        self.add_buttons(tr("&Take its figures"))
        self.resize(860, 480)
        self._look()

    def _look(self) -> None:
        text = self.search_edit.text()
        try:
            found = wait_for(lambda: self._find(text))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.model.show_records(found.lines)
        self.table.fit_columns()
        self.table.pick_row(0)
        self._enable()

    def _enable(self) -> None:
        self.accept_button.setEnabled(self.table.current_record() is not None)

    def accept(self) -> None:
        """Close with the part in the current row."""
        line = self.table.current_record()
        if isinstance(line, EntryLine):
            self.chosen = line.entry
            super().accept()
