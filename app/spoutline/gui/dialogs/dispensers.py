"""Repeat a dispenser along an island, or its positions on the other side."""

from __future__ import annotations

import re

from PySide6.QtWidgets import QFormLayout, QLineEdit, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey
from spoutline.planning.refit.dispensers import MOST_COPIES, dispenser_names, island_of, with_copies, with_other_side

_RANGE = re.compile(r"^(\d+)\s*[-–]\s*(\d+)$")


def names_in(text: str) -> tuple[str, ...]:
    """Return the names in a text: separated by commas, runs of numbers as ``2-8``."""
    names: list[str] = []
    for part in (piece.strip() for piece in text.split(",")):
        run = _RANGE.match(part)
        if run is not None and int(run[1]) <= int(run[2]) <= int(run[1]) + MOST_COPIES:
            names.extend(str(number) for number in range(int(run[1]), int(run[2]) + 1))
        elif part:
            names.append(part)
    return tuple(names)


class RepeatDialog(FormDialog):
    """Asks for the names of the copies; the survey with them is in ``after`` once accepted."""

    def __init__(self, survey: Survey, dispenser: str, parent: QWidget | None = None) -> None:
        super().__init__(tr("Repeat dispenser {0}").format(dispenser), parent)
        self._survey, self._dispenser = survey, dispenser
        self.after: Survey | None = None
        words = tr("Every position of the dispenser is repeated, without the parts decided on and without notes.")
        self.body.addWidget(plain_label(words, "quiet", wraps=True))
        form = QFormLayout()
        self.names_edit = QLineEdit(self)
        self.names_edit.setAccessibleName(tr("Names of the new dispensers"))
        self.names_edit.setPlaceholderText("2-8, 9E")
        form.addRow(tr("&Names of the new dispensers"), self.names_edit)
        self.islands_edit = QLineEdit(island_of(survey, dispenser), self)
        self.islands_edit.setAccessibleName(tr("Islands of the new dispensers"))
        self.islands_edit.setPlaceholderText(tr("one for all, or one for each: 1, 2, 2, 3"))
        form.addRow(tr("&Islands that they stand on"), self.islands_edit)
        self.body.addLayout(form)
        self.add_buttons(tr("&Repeat"))
        self.resize(480, 220)

    def accept(self) -> None:
        """Close if the names can be; else say what would be right."""
        try:
            islands = tuple(name.strip() for name in self.islands_edit.text().split(","))
            self.after = with_copies(self._survey, self._dispenser, names_in(self.names_edit.text()), islands)
        except InputFault as fault:
            self.show_fault("\n".join(str(problem) for problem in fault.problems))
            return
        super().accept()


class MirrorDialog(FormDialog):
    """Asks for the two sides; the survey with the other side is in ``after`` once accepted."""

    def __init__(self, survey: Survey, dispenser: str, parent: QWidget | None = None) -> None:
        super().__init__(tr("Other side of dispenser {0}").format(dispenser), parent)
        self._survey, self._dispenser = survey, dispenser
        self.after: Survey | None = None
        known = ", ".join(dispenser_names(survey))
        form = QFormLayout()
        self.dispenser_edit = QLineEdit(dispenser, self)
        self.side_edit = QLineEdit("A", self)
        self.other_edit = QLineEdit("B", self)
        for edit, words in (
            (self.dispenser_edit, tr("&Dispenser ({0})").format(known)),
            (self.side_edit, tr("&Side that is there")),
            (self.other_edit, tr("&Other side")),
        ):
            edit.setAccessibleName(words.replace("&", ""))
            form.addRow(words, edit)
        self.body.addLayout(form)
        self.add_buttons(tr("&Repeat"))
        self.resize(460, 220)

    def accept(self) -> None:
        """Close if the sides can be; else say what would be right."""
        dispenser, side, other = (
            edit.text().strip() for edit in (self.dispenser_edit, self.side_edit, self.other_edit)
        )
        try:
            self.after = with_other_side(self._survey, dispenser, side, other)
        except InputFault as fault:
            self.show_fault("\n".join(str(problem) for problem in fault.problems))
            return
        super().accept()
