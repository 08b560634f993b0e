"""A table of cells whose rows can be taken away and copied."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent

from spoutline.gui.widgets.cell_table import CellTable


class SheetTable(CellTable):
    """Cells in rows.

    Keys: Ctrl+Delete takes the rows of the chosen cells away; Delete does so where whole rows are chosen, and empties
    the chosen cells elsewhere.

    Signals
    -------
    copy_wanted(list[int]), removal_wanted(list[int])
        What is to happen to rows of the view's own model.
    """

    copy_wanted = Signal(object)
    removal_wanted = Signal(object)

    def ask_copy(self) -> None:
        """Ask for a copy of the chosen rows."""
        if rows := self.chosen_rows():
            self.copy_wanted.emit(rows)

    def ask_removal(self) -> None:
        """Ask to take the chosen rows away."""
        if rows := self.chosen_rows():
            self.removal_wanted.emit(rows)

    def clear_cells(self) -> None:
        """Ask to take whole rows away where such are chosen; take the answers of the chosen cells away elsewhere."""
        rows = self.chosen_rows()
        if rows and len(self.chosen_cells()) == len(rows) * self.model().columnCount():
            self.removal_wanted.emit(rows)
        else:
            super().clear_cells()

    def _call(self, event: QKeyEvent) -> Callable[[], None] | None:
        modifiers = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        is_removal = event.key() == Qt.Key.Key_Delete and modifiers == Qt.KeyboardModifier.ControlModifier
        if is_removal and self.state() is not self.State.EditingState:
            return self.ask_removal
        return super()._call(event)
