"""One repair of a supplier's table that holds for many rows: a word replaced, a text written, rows left out."""

from __future__ import annotations

from collections.abc import Sequence
from enum import StrEnum

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCompleter, QFormLayout, QLabel, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.planning.table_intake.column_map import MappedColumn
from spoutline.planning.table_intake.intake_fields import TableSubject
from spoutline.planning.table_intake.repairs import ChangeWhere, Repair, ReplaceWord, SkipWhere
from spoutline.planning.table_intake.table_look import words_of


class RepairKind(StrEnum):
    """What is done."""

    REPLACE = "replace"
    CHANGE = "change"
    LEAVE_OUT = "leave_out"


class TableRepairDialog(FormDialog):
    """Asks what is done to which rows; the step is in ``step`` once accepted."""

    help_topic = "catalog"

    def __init__(
        self,
        columns: Sequence[MappedColumn],
        slot: str,
        shows: str,
        nearest: str = "",
        parent: QWidget | None = None,
        *,
        subject: TableSubject = TableSubject.PARTS,
    ) -> None:
        super().__init__(tr("Change many rows"), parent)
        self.step: Repair | None = None
        self._subject = subject
        self.kind_box = StillBox(self)
        for kind, words in (
            (RepairKind.REPLACE, tr("Replace a word wherever it stands in the column")),
            (RepairKind.CHANGE, tr("Write into every row that shows a text")),
            (RepairKind.LEAVE_OUT, tr("Leave out every row that shows a text")),
        ):
            self.kind_box.addItem(words, kind)
        self.where_box, self.field_box = StillBox(self), StillBox(self)
        for box in (self.where_box, self.field_box):
            for one in columns:
                if one.field is not None:
                    box.addItem(f"{tr(one.field.title)}  ({one.column.title})", one.slot)
            box.setCurrentIndex(max(0, box.findData(slot)))
        self.shows_edit = LineEditor(shows, self)
        self.by_edit = LineEditor(nearest, self)
        self.form = QFormLayout()
        self.form.addRow(tr("What to do"), self.kind_box)
        self.form.addRow(tr("Column"), self.where_box)
        self.form.addRow(tr("Word or text there"), self.shows_edit)
        self.form.addRow(tr("Write into column"), self.field_box)
        self.form.addRow(tr("Text to write"), self.by_edit)
        self.body.addLayout(self.form)
        self.body.addWidget(plain_label(tr("Capitals and double blanks do not count."), "quiet", wraps=True))
        self.add_buttons(tr("Chan&ge"))
        self.kind_box.currentIndexChanged.connect(lambda _: self._show_fields())
        for box in (self.where_box, self.field_box):
            box.currentIndexChanged.connect(lambda _: self._show_fields())
        self.shows_edit.textChanged.connect(lambda _: self._show_fields())
        self.resize(520, 260)
        self._show_fields()

    @property
    def kind(self) -> RepairKind:
        """What is to be done."""
        return RepairKind(self.kind_box.currentData())

    def _show_fields(self) -> None:
        kind = self.kind
        for field, is_shown in (
            (self.field_box, kind is RepairKind.CHANGE),
            (self.by_edit, kind is not RepairKind.LEAVE_OUT),
        ):
            field.setVisible(is_shown)
            label = self.form.labelForField(field)
            if isinstance(label, QLabel):
                label.setVisible(is_shown)
        slot = str((self.field_box if kind is RepairKind.CHANGE else self.where_box).currentData())
        completer = QCompleter(list(words_of(slot, self._subject)), self.by_edit)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.by_edit.setCompleter(completer)
        is_said = bool(self.shows_edit.text().strip()) or kind is RepairKind.CHANGE
        self.accept_button.setEnabled(is_said and self.where_box.count() > 0)

    def accept(self) -> None:
        """Qt: keep the step."""
        where, shows, by = str(self.where_box.currentData()), self.shows_edit.text(), self.by_edit.text()
        if self.kind is RepairKind.REPLACE:
            self.step = ReplaceWord(field=where, word=shows.strip(), by=by.strip())
        elif self.kind is RepairKind.CHANGE:
            field = str(self.field_box.currentData())
            self.step = ChangeWhere(where=where, shows=shows.strip(), field=field, to=by.strip())
        else:
            self.step = SkipWhere(where=where, shows=shows.strip())
        super().accept()


def repair_words(step: Repair) -> str:
    """Return what a repair does, in one line."""
    match step.do:
        case "set_cell":
            return tr("Row {row}, {field}: “{was}” becomes “{to}”").format(
                row=step.row, field=step.field, was=step.was, to=step.to
            )
        case "replace_word":
            return tr("{field}: “{word}” becomes “{by}” everywhere").format(
                field=step.field, word=step.word, by=step.by
            )
        case "change_where":
            return tr("Where {where} shows “{shows}”: {field} becomes “{to}”").format(
                where=step.where, shows=step.shows, field=step.field, to=step.to
            )
        case "skip_row":
            return tr("Row {row} left out").format(row=step.row)
    return tr("Every row left out where {where} shows “{shows}”").format(where=step.where, shows=step.shows)
