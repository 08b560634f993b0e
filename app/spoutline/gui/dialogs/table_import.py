"""Map the columns of a table to questions, see every faulty cell, then take its positions."""

from __future__ import annotations

from pydantic import ValidationError
from PySide6.QtWidgets import QCheckBox, QComboBox, QFormLayout, QListWidget, QScrollArea, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, InputNote, InputProblem
from spoutline.model.survey import Position, Survey
from spoutline.planning.survey_import.fields import BY_KEY, FIELDS
from spoutline.planning.survey_import.mapping import ColumnMapping, suggested
from spoutline.planning.survey_import.positions import positions_from
from spoutline.planning.survey_import.sheet import Sheet, column_name
from spoutline.units.accepted import UnitSystem


class TableImportDialog(FormDialog):
    """Asks for the mapping; the survey with the positions of the table is in ``after`` once accepted."""

    def __init__(self, sheet: Sheet, survey: Survey, system: UnitSystem, parent: QWidget | None = None) -> None:
        super().__init__(tr("Read positions from a table"), parent)
        self._sheet, self._survey, self._system = sheet, survey, system
        self._mapping = suggested(sheet)
        self.after: Survey | None = None
        words = tr("{rows} rows in {place}. Say what each column holds.")
        self.body.addWidget(plain_label(words.format(rows=len(sheet.rows), place=sheet.place), "quiet", wraps=True))
        self.body.addWidget(self._columns(), 2)
        self.replace_box = QCheckBox(tr("These positions take the place of all that are there"), self)
        self.replace_box.toggled.connect(lambda _: self._check())
        self.body.addWidget(self.replace_box)
        self.comma_box = QCheckBox(tr("A comma in a figure is the decimal sign"), self)
        self.comma_box.toggled.connect(lambda _: self._check())
        self.body.addWidget(self.comma_box)
        self.count_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.count_label)
        self.fault_list = QListWidget(self)
        self.fault_list.setAccessibleName(tr("Cells that cannot be used, and how others were understood"))
        self.body.addWidget(self.fault_list, 1)
        self.add_buttons(tr("&Take positions"))
        self.resize(720, 600)
        self._check()

    def _columns(self) -> QWidget:
        side = QWidget(self)
        form = QFormLayout(side)
        self.boxes: list[QComboBox] = []
        for one in self._mapping:
            box = QComboBox(side)
            title = f"{column_name(one.column)}  {one.title}"
            box.setAccessibleName(title)
            box.addItem(tr("left out"), "")
            for field in FIELDS:
                box.addItem(tr(field.title), field.key)
            box.setCurrentIndex(max(0, box.findData(one.field.key if one.field is not None else "")))
            box.currentIndexChanged.connect(lambda _: self._check())
            form.addRow(plain_label(title, ""), box)
            self.boxes.append(box)
        scroll = QScrollArea(self)
        scroll.setWidgetResizable(True)
        scroll.setWidget(side)
        return scroll

    def chosen_mapping(self) -> tuple[ColumnMapping, ...]:
        """Return the mapping as chosen; raise ``InputFault`` where two columns hold the same."""
        chosen = tuple(
            ColumnMapping(one.column, one.title, BY_KEY.get(str(box.currentData())), one.unit)
            for one, box in zip(self._mapping, self.boxes, strict=True)
        )
        keys = [one.field.key for one in chosen if one.field is not None]
        twice = sorted({key for key in keys if keys.count(key) > 1})
        if twice:
            wanted = "only one column can hold it"
            raise InputFault(
                tuple(InputProblem(self._sheet.place, f"mapping, {key}", "twice", wanted) for key in twice)
            )
        return chosen

    def _survey_with(self, positions: tuple[Position, ...]) -> Survey:
        kept = () if self.replace_box.isChecked() else self._survey.positions
        try:
            return Survey(site=self._survey.site, positions=(*kept, *positions), conversion=self._survey.conversion)
        except ValidationError as fault:
            told = [str(one.get("ctx", {}).get("error", one["msg"])) for one in fault.errors(include_url=False)]
            raise InputFault(
                tuple(InputProblem(self._sheet.place, "positions", "these rows", words) for words in told)
            ) from fault

    def _check(self) -> None:
        """Show every cell that cannot be used as the columns are mapped now."""
        self.after = None
        self.fault_list.clear()
        try:
            notes: list[InputNote] = []
            positions = positions_from(
                self._sheet,
                self.chosen_mapping(),
                self._system,
                decimal_comma=self.comma_box.isChecked(),
                tell=notes.append,
            )
            self.after = self._survey_with(positions)
        except InputFault as fault:
            self.fault_list.addItems([str(problem) for problem in fault.problems])
            self.count_label.setText(tr("{0} cells cannot be used; nothing is taken.").format(len(fault.problems)))
        else:
            self.fault_list.addItems([str(note) for note in notes])
            self.count_label.setText(tr("{0} positions can be taken.").format(len(positions)))
        self.accept_button.setEnabled(self.after is not None)
