"""The view of a table in a dialog: for positions, dispenser types, old numbers and price lists."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.intake.import_panel import ImportPanel, IntakeTools
from spoutline.gui.intake.works import TableWork, TakenTable
from spoutline.gui.wording import tr
from spoutline.planning.table_intake.into_draft import OpenedTable


class TableIntakeDialog(FormDialog):
    """Holds the view of one table; ``taken`` is what became of it once the dialog was accepted by taking it over."""

    def __init__(self, title: str, tools: IntakeTools, work: TableWork, parent: QWidget | None = None) -> None:
        super().__init__(title, parent)
        self.taken: TakenTable | None = None
        self.panel = ImportPanel(tools, work, self._say, self)
        self.body.addWidget(self.panel, 1)
        self.add_leave()
        self.panel.taken_over.connect(self._take)
        self.resize(1160, 680)

    def open_file(self, path: Path) -> None:
        """Begin with a file."""
        self.panel.open_file(path)

    def show_table(self, opened: OpenedTable) -> None:
        """Begin with rows that are no file."""
        self.panel.show_rows(opened)

    def _say(self, text: str) -> None:
        self.show_fault(text)

    def _take(self, taken: TakenTable) -> None:
        self.taken = taken
        self.accept()

    def done(self, result: int) -> None:
        """Qt: stop what is still read."""
        self.panel.leave()
        super().done(result)

    @property
    def told(self) -> str:
        """What a person is told once the table was taken over."""
        return tr("Nothing was changed.") if self.taken is None else self.taken.told
