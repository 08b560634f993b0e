"""Old numbers of an edition or draft, the parts that they lead to, and the way of a number that one types."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from pydantic import ValidationError
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.intake.works import ReferencesWork
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.pages.catalogues.chosen import REFERENCES, STEP, InHand
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.roles import Role
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.cross_reference import CrossReference, NumberRelation, NumberTrace
from spoutline.model.faults import InputFault, InputProblem

MOST_SHOWN = 1_000
_TOLD = 8


class ReferencesPanel(QWidget):
    """Lists old numbers as one types, follows one to its part, and writes those of a draft."""

    def __init__(self, context: Context, in_hand: InHand, notify: Notify, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._in_hand, self._notify = context, in_hand, notify
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        self.search_edit = self._line(tr("Search old numbers"), tr("Old number, its maker, or the part it leads to"))
        self.search_edit.textChanged.connect(lambda _: self.refresh())
        column.addWidget(self.search_edit)
        self.way_label = plain_label("", wraps=True)
        column.addWidget(self.way_label)
        self.state_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.state_label)
        self.model = RecordTable(_columns(), self)
        self.table = Table(tr("Old numbers"), self, shares=(14, 18, 14, 18, 14, 22))
        self.table.setModel(self.model)
        self.table.teach(tr("Old numbers that lead to parts come here; a table of them can be read in."))
        self.table.picked.connect(self._show_picked)
        column.addWidget(self.table, 1)
        column.addLayout(self._entry_rows())
        column.addLayout(self._file_row())
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        column.addWidget(self.fault_label)

    def _line(self, name: str, placeholder: str = "") -> QLineEdit:
        line = QLineEdit(self)
        line.setAccessibleName(name)
        line.setPlaceholderText(placeholder or name)
        line.setToolTip(placeholder or name)
        return line

    def _entry_rows(self) -> QVBoxLayout:
        """Return the fields of an entry: the old number above, what it leads to below, for in one row names are cut."""
        rows, old, part = QVBoxLayout(), QHBoxLayout(), QHBoxLayout()
        self.maker_edit = self._line(tr("Maker of the old number"))
        self.number_edit = self._line(tr("Old number"))
        self.part_maker_edit = self._line(tr("Maker of the part"))
        self.part_number_edit = self._line(tr("Number of the part"))
        self.relation_box = StillBox(self)
        self.relation_box.setAccessibleName(tr("Relation"))
        self.relation_box.addItem(tr("offered in its place"), NumberRelation.EQUIVALENT)
        self.relation_box.addItem(tr("the very part"), NumberRelation.SAME)
        self.remark_edit = self._line(tr("Remark"))
        self.put_button = QPushButton(tr("Put into the &draft"), self)
        self.put_button.clicked.connect(self.put)
        self.edits = (self.maker_edit, self.number_edit, self.part_maker_edit, self.part_number_edit)
        for widget in (self.maker_edit, self.number_edit, self.relation_box):
            old.addWidget(widget, 1)
        for field in (self.part_maker_edit, self.part_number_edit, self.remark_edit):
            part.addWidget(field, 1)
        part.addWidget(self.put_button)
        rows.addLayout(old)
        rows.addLayout(part)
        return rows

    def _file_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.remove_button = QPushButton(tr("Take the marked &number out"), self)
        self.remove_button.clicked.connect(self.take_out)
        self.import_button = QPushButton(tr("I&mport a table…"), self)
        self.import_button.clicked.connect(lambda _=False: self.import_table())
        self.export_button = QPushButton(tr("E&xport as a table…"), self)
        self.export_button.clicked.connect(self._ask_export)
        for button in (self.remove_button, self.import_button, self.export_button):
            row.addWidget(button)
        row.addStretch(1)
        return row

    def refresh(self) -> None:
        """Show the old numbers of the edition in hand that hold the words written, and where the words lead."""
        row = self._in_hand.row
        is_draft = bool(self._in_hand.draft_name) and row is not None and row.edition is None
        for widget in (*self.edits, self.relation_box, self.remark_edit, self.put_button, self.import_button):
            widget.setEnabled(is_draft)
        self.remove_button.setEnabled(is_draft and self._marked() is not None)
        self.export_button.setEnabled(row is not None)
        if row is None:
            return
        workbench, ref, text = self._context.session.workbench, row.ref, self.search_edit.text().strip()

        def work(_: object) -> tuple[tuple[CrossReference, ...], tuple[NumberTrace, ...]]:
            service = workbench.catalogues()
            words = text.casefold().split()
            found = tuple(
                one
                for one in service.shelf().references(ref)
                if all(word in f"{one.ref} {one.leads_to} {one.remark}".casefold() for word in words)
            )
            return found, service.old_numbers().traces(ref, text) if text else ()

        self._context.jobs.start(REFERENCES, work, lambda found: self._show(*found), self._show_fault)

    def put(self) -> None:
        """Put what is written into the draft, in the place of what the old number led to."""
        name, texts = self._in_hand.draft_name, [edit.text().strip() for edit in self.edits]
        maker, number, part_maker, part_number = texts
        try:
            one = CrossReference(
                number=number,
                maker=maker,
                part_number=part_number,
                part_maker=part_maker,
                relation=NumberRelation(self.relation_box.currentData()),
                remark=self.remark_edit.text(),
            )
        except ValidationError as fault:
            self._show_fault(InputFault(tuple(_problem(error) for error in fault.errors(include_url=False))))
            return
        self._write(lambda service: service.old_numbers().put(name, one), self._clear)

    def take_out(self) -> None:
        """Take the marked old number out of the draft."""
        name, marked = self._in_hand.draft_name, self._marked()
        if name and marked is not None:
            self._write(lambda service: service.old_numbers().take_out(name, marked.ref), lambda _: None)

    def import_dialog(self) -> TableIntakeDialog:
        """Return the view of a table of old numbers on its way into the draft."""
        service, name = self._context.session.workbench.catalogues, self._in_hand.draft_name
        work = ReferencesWork(service, lambda: name)
        return TableIntakeDialog(tr("Import old numbers"), self._context.intake, work, self)

    def import_table(self) -> None:
        """Ask for a table of old numbers, show it, and take it into the draft: all of it, or nothing."""
        dialog = self.import_dialog()
        if dialog.exec() == QDialog.DialogCode.Accepted:
            self._notify(dialog.told)
            self.refresh()

    def export_to(self, path: Path) -> None:
        """Write the old numbers of the edition in hand as CSV."""
        row, service = self._in_hand.row, self._context.session.workbench.catalogues()
        if row is not None:
            ref = row.ref
            save_aside(self._context, STEP, path, lambda: service.old_numbers().csv(ref), notify=self._notify)

    def _ask_export(self) -> None:
        row = self._in_hand.row
        if row is None:
            return
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Export as a table"), f"{file_stem(str(row.ref))}_numbers.csv", FileForm.CSV)
        if path is not None:
            self.export_to(path)

    def _write(self, act: Callable[[Any], object], done: Callable[[Any], None]) -> None:
        service = self._context.session.workbench.catalogues()

        def deliver(value: object) -> None:
            self._say("")
            done(value)
            self.refresh()

        self._context.jobs.start(STEP, lambda _: act(service), deliver, self._show_fault)

    def _show(self, found: tuple[CrossReference, ...], traces: tuple[NumberTrace, ...]) -> None:
        self.model.show_records(found[:MOST_SHOWN])
        self.table.fit_columns()
        shown = min(len(found), MOST_SHOWN)
        words = tr("{0} old numbers") if shown == len(found) else tr("{0} old numbers, the first {1} shown")
        self.state_label.setText(words.format(f"{len(found):,}", shown))
        self.way_label.setText("\n".join(self._context.story.number_trace(one) for one in traces))

    def _show_picked(self, record: object) -> None:
        if isinstance(record, CrossReference):
            texts = (record.maker, record.number, record.part_maker, record.part_number)
            for edit, text in zip(self.edits, texts, strict=True):
                edit.setText(text)
            self.relation_box.setCurrentIndex(self.relation_box.findData(record.relation))
            self.remark_edit.setText(record.remark)
            self.remove_button.setEnabled(self.put_button.isEnabled())

    def _marked(self) -> CrossReference | None:
        record = self.table.currentIndex().data(Role.RECORD)
        return record if isinstance(record, CrossReference) else None

    def _clear(self, _: object) -> None:
        for edit in (*self.edits, self.remark_edit):
            edit.clear()

    def _show_fault(self, fault: Exception) -> None:
        problems = fault.problems if isinstance(fault, InputFault) else ()
        self._say("\n".join(str(one) for one in problems[:_TOLD]) if problems else str(fault))

    def _say(self, text: str) -> None:
        self.fault_label.setText(text)
        self.fault_label.setVisible(bool(text))


def _problem(error: Any) -> InputProblem:  # noqa: ANN401 - details of a validation error
    context = error.get("ctx") or {}
    field = str(context.get("field") or ".".join(map(str, error["loc"])))
    value = str(context.get("value") or repr(error["input"]))
    return InputProblem("", field.replace("_", " "), value, str(context.get("wanted") or error["msg"]))


def _columns() -> tuple[Column[CrossReference], ...]:
    return (
        Column(title=tr("Old number"), text=lambda one: one.number),
        Column(title=tr("Its maker"), text=lambda one: one.maker),
        Column(title=tr("Leads to"), text=lambda one: one.part_number),
        Column(title=tr("Maker of the part"), text=lambda one: one.part_maker),
        Column(
            title=tr("Relation"),
            text=lambda one: tr("the very part") if one.relation is NumberRelation.SAME else tr("offered in its place"),
        ),
        Column(title=tr("Remark"), text=lambda one: one.remark, hint=lambda one: one.remark),
    )
