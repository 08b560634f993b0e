"""Name a position and its dispenser."""

from __future__ import annotations

from PySide6.QtWidgets import QComboBox, QFormLayout, QLineEdit, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.edits.positions import add_position, rename_position
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey
from spoutline.planning.refit.dispensers import dispenser_names, island_of, on_island


class PositionNameDialog(FormDialog):
    """Asks for the two names; the survey with them is in ``after`` once the dialog is accepted.

    ``label`` is the position to rename; empty for a new one.
    """

    def __init__(
        self, survey: Survey, label: str, *, proposal: str, dispenser: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(tr("Rename the position") if label else tr("Add a position"), parent)
        self._survey, self._label = survey, label
        self.after: Survey | None = None
        form = QFormLayout()
        self.label_edit = QLineEdit(proposal, self)
        self.label_edit.setAccessibleName(tr("Name of the position"))
        self.dispenser_box = StillBox(self)
        self.dispenser_box.setEditable(True)
        self.dispenser_box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.dispenser_box.setAccessibleName(tr("Name of the dispenser"))
        self.dispenser_box.addItems(list(dict.fromkeys(position.dispenser for position in survey.positions)))
        self.dispenser_box.setEditText(dispenser)
        line = self.dispenser_box.lineEdit()
        if line is not None:
            line.setAccessibleName(tr("Name of the dispenser"))
        form.addRow(tr("&Name of the position"), self.label_edit)
        form.addRow(tr("&Dispenser"), self.dispenser_box)
        self.island_edit = QLineEdit(island_of(survey, dispenser), self)
        self.island_edit.setAccessibleName(tr("Island of the dispenser"))
        self.island_edit.setPlaceholderText(tr("not recorded"))
        self.dispenser_box.editTextChanged.connect(self._show_island)
        form.addRow(tr("&Island of the dispenser"), self.island_edit)
        self.body.addLayout(form)
        self.add_buttons(tr("&Rename") if label else tr("&Add"))
        self.label_edit.selectAll()
        self.resize(420, 210)

    @property
    def new_label(self) -> str:
        """The name as typed, without space at its ends."""
        return self.label_edit.text().strip()

    def _show_island(self, dispenser: str) -> None:
        """Show where a known dispenser stands; a new one keeps what is written."""
        if dispenser.strip() in dispenser_names(self._survey):
            self.island_edit.setText(island_of(self._survey, dispenser.strip()))

    def accept(self) -> None:
        """Close if the names can be; else say beside them what would be right."""
        dispenser = self.dispenser_box.currentText()
        try:
            if self._label:
                named = rename_position(self._survey, self._label, self.label_edit.text(), dispenser)
            else:
                named = add_position(self._survey, self.label_edit.text(), dispenser)
            if self.island_edit.text().strip() != island_of(named, dispenser.strip()):
                named = on_island(named, dispenser.strip(), self.island_edit.text())
            self.after = named
        except InputFault as fault:
            self.show_fault("\n".join(str(problem) for problem in fault.problems))
            return
        super().accept()
