"""Closing a count: what it did not find is listed first, and counted as none once a person confirms it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr
from spoutline.model.stock_entry import UncountedLine


class CloseCountDialog(FormDialog):
    """Lists what a count did not find; accepted where the person wants it counted so."""

    help_topic = "installer"

    def __init__(self, place: str, count: str, lines: Sequence[UncountedLine], parent: QWidget | None = None) -> None:
        super().__init__(tr("Close the count {0}").format(count), parent)
        lead = tr(
            "These parts of {0} were not scanned in this count. Look for them first. Closing counts them as shown on "
            "the right; entries are only added, and each can be undone."
        )
        self.body.addWidget(plain_label(lead.format(place), "quiet", wraps=True))
        self.model: RecordTable[UncountedLine] = RecordTable(_columns(), self)
        self.table = Table(tr("Not scanned"), self, shares=(5, 5, 3, 5), whole=(0,))
        self.table.setModel(self.model)
        self.model.show_records(tuple(lines))
        self.table.fit_columns()
        self.body.addWidget(self.table, 1)
        accept = self.add_buttons(tr("C&ount them so"))
        accept.setDefault(False)  # a scanner sends Return: it must confirm nothing
        accept.setAutoDefault(False)
        self.table.setFocus()
        self.resize(640, 420)


def _columns() -> tuple[Column[UncountedLine], ...]:
    return (
        Column(title=tr("Part"), text=lambda line: line.part.number, hint=lambda line: str(line.part)),
        Column(title=tr("Maker"), text=lambda line: line.part.maker or "–"),
        Column(title=tr("At hand"), text=lambda line: str(line.quantity), is_number=True),
        Column(
            title=tr("Counted as"),
            text=lambda line: tr("{0}, came since the count began").format(line.came) if line.came else str(line.came),
        ),
    )
