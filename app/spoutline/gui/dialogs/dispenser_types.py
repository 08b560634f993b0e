"""The firm's dispenser types: a list, a form with units, tables in and out, and the choice for a dispenser."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QHBoxLayout,
    QListWidget,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.dispenser_types import DispenserTypeService
from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.dialogs.type_form import TypeForm
from spoutline.gui.intake.import_panel import IntakeTools
from spoutline.gui.intake.works import TypesWork
from spoutline.gui.session import Session
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.dispenser_type import folded_type_name, type_of_dispenser
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.survey import DispenserType, Survey
from spoutline.planning.refit.dispensers import dispenser_names
from spoutline.whole_files import write_file


class DispenserTypesDialog(FormDialog):
    """Keeps the types of the book; the survey with a type chosen is in ``after`` once accepted by choosing one."""

    help_topic = "surveys"

    def __init__(self, session: Session, tools: IntakeTools, parent: QWidget | None = None) -> None:
        super().__init__(tr("Dispenser types"), parent)
        self._tools, self._session, self._survey = tools, session, session.survey
        self._service: DispenserTypeService = session.workbench.dispenser_types()
        self.after: Survey | None = None
        self.said = ""
        words = tr("What a type answers need not be asked at its positions. A survey keeps the type as it was chosen.")
        self.body.addWidget(plain_label(words, "quiet", wraps=True))
        parts = QSplitter(Qt.Orientation.Horizontal, self)
        parts.addWidget(self._list_side())
        self.form = TypeForm(session.workbench.story(session.display), parts)
        self.form.changed.connect(self._check)
        parts.addWidget(self.form)
        parts.setStretchFactor(1, 1)
        self.body.addWidget(parts, 1)
        self.body.addLayout(self._save_row())
        self.body.addLayout(self._choice_row())
        self.add_close()
        self.resize(900, 680)
        self._refresh(self._name_here())

    def _list_side(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        self.list = QListWidget(side)
        self.list.setAccessibleName(tr("Dispenser types of the book"))
        self.list.currentTextChanged.connect(self._show)
        column.addWidget(self.list, 1)
        self.new_button = self._button(tr("&New type"), self._begin)
        self.remove_button = self._button(tr("&Remove"), self._remove)
        self.import_button = self._button(tr("&Import a table…"), lambda _=False: self.import_table())
        self.export_button = self._button(tr("&Export as a table…"), self._ask_export)
        for button in (self.new_button, self.remove_button, self.import_button, self.export_button):
            column.addWidget(button)
        return side

    def _button(self, words: str, act: object) -> QPushButton:
        made = QPushButton(words, self)
        made.setAutoDefault(False)
        made.clicked.connect(act)
        return made

    def _save_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.state_label = plain_label("", "quiet", wraps=True)
        self.save_button = self._button(tr("&Save the type"), self._save)
        row.addWidget(self.state_label, 1)
        row.addWidget(self.save_button)
        return row

    def _choice_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addWidget(plain_label(tr("Choose it for"), "question"))
        self.dispenser_box = StillBox(self)
        self.dispenser_box.setAccessibleName(tr("Dispenser"))
        self.dispenser_box.addItem(tr("every dispenser"), None)
        for name in dispenser_names(self._survey):
            kind = type_of_dispenser(self._survey, name)
            shown = tr("dispenser {0}").format(name)
            self.dispenser_box.addItem(f"{shown} ({kind.name})" if kind is not None else shown, name)
        here = self.dispenser_box.findData(self._session.position.dispenser)
        self.dispenser_box.setCurrentIndex(max(here, 0))
        self.take_all_box = QCheckBox(tr("its answers go &before those of the positions"), self)
        self.choose_button = self._button(tr("C&hoose"), self._choose)
        self.choose_button.setObjectName("primary")
        self.none_button = self._button(tr("No &type"), self._choose_none)
        for widget in (self.dispenser_box, self.take_all_box, self.none_button, self.choose_button):
            row.addWidget(widget)
        row.addStretch(1)
        return row

    def _name_here(self) -> str:
        kind = self._session.position.dispenser_type
        return kind.name if kind is not None else ""

    def _refresh(self, name: str = "") -> None:
        """Read the types of the book anew and mark the one of this name, else the first."""
        try:
            kinds = wait_for(self._service.all)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self._kinds = {kind.name: kind for kind in kinds}
        self.list.blockSignals(True)
        self.list.clear()
        self.list.addItems(list(self._kinds))
        self.list.blockSignals(False)
        folded = {folded_type_name(one): place for place, one in enumerate(self._kinds)}
        place = folded.get(folded_type_name(name), 0)
        self.list.setCurrentRow(place if kinds else -1)
        self._show(self.list.currentItem().text() if kinds else "")

    def _show(self, name: str) -> None:
        kind = self._kinds.get(name)
        self.form.show_type(kind)
        self.state_label.setText("" if kind is not None else tr("A new type: give it a name and what it answers."))
        self._check()

    def _begin(self) -> None:
        self.list.setCurrentRow(-1)
        self._show("")
        self.form.focus_name()

    def _check(self) -> None:
        """Say what cannot be used as one types; only a sound type that says something new can be saved."""
        read = self.form.read()
        saved = self._kinds.get(read.name) if isinstance(read, DispenserType) else None
        unsaved = isinstance(read, DispenserType) and not self.form.shows(saved)
        self.save_button.setEnabled(unsaved)
        self.choose_button.setEnabled(saved is not None and not unsaved)
        self.remove_button.setEnabled(self.list.currentRow() >= 0)
        self.export_button.setEnabled(bool(self._kinds))
        is_new = not isinstance(read, DispenserType) and self.form.is_empty
        self.show_fault("" if isinstance(read, DispenserType) or is_new else str(read))

    def _save(self) -> None:
        read = self.form.read()
        if isinstance(read, DispenserType) and self._do(lambda: self._service.put((read,))):
            self._refresh(read.name)
            self.state_label.setText(tr("Saved."))

    def _remove(self) -> None:
        item = self.list.currentItem()
        question = tr("Take {0} out of the book? Surveys keep what they have of it.")
        if item is not None and self.is_sure(question.format(item.text())):
            self._do(lambda: self._service.remove(item.text()))
            self._refresh()

    def import_dialog(self) -> TableIntakeDialog:
        """Return the view of a table of types on its way into the book."""
        work = TypesWork(self._service, self._session.display.system)
        return TableIntakeDialog(tr("Import dispenser types"), self._tools, work, self)

    def import_table(self) -> None:
        """Ask for a table of types, show it, and take it into the book: all of it, or nothing."""
        dialog = self.import_dialog()
        if dialog.exec() == QDialog.DialogCode.Accepted:
            self._refresh(self.list.currentItem().text() if self.list.currentItem() else "")
            self.state_label.setText(dialog.told)

    def _ask_export(self) -> None:
        saving = Saving(self._session.workbench.files_in_use, self)
        path = saving.ask(tr("Export as a table"), "dispenser_types.csv", FileForm.CSV)
        if path is not None:
            self.export_to(path)

    def export_to(self, path: Path) -> None:
        """Write the types of the book as CSV."""
        if self._do(lambda: write_file(path, self._service.csv(self._kinds.values()))):
            self.state_label.setText(tr("Written to {0}").format(path))

    def _choose(self) -> None:
        read = self.form.read()
        if isinstance(read, DispenserType):
            self._choose_named(read.name)

    def _choose_none(self) -> None:
        self._choose_named("")

    def _choose_named(self, name: str) -> None:
        chosen = self.dispenser_box.currentData()
        dispensers = dispenser_names(self._survey) if chosen is None else (str(chosen),)
        take_all = self.take_all_box.isChecked()

        def choose() -> None:
            self.after = self._service.chosen(self._survey, dispensers, name, overrides_too=take_all)

        if self._do(choose):
            shown = self.dispenser_box.currentText().partition(" (")[0]
            self.said = tr("{type} for {dispenser}").format(type=name or tr("No type"), dispenser=shown)
            self.accept()

    def _do(self, act: object) -> bool:
        try:
            wait_for(act)  # type: ignore[arg-type]
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return False
        self.show_fault("")
        return True
