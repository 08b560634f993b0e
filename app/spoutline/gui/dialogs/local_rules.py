"""Read the limits of a jurisdiction; copy one and change rows of the copy."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.rule_editions import RuleEditions
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.models.table_columns import limit_columns
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.limit import Jurisdiction, Limit, LimitStatus
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


class LocalRulesDialog(FormDialog):
    """Lists the jurisdictions and their rows. ``changed`` says whether an own one was saved or removed."""

    help_topic = "jurisdictions"

    def __init__(
        self, workbench: Workbench, present_id: str, parent: QWidget | None = None, survey: Survey | None = None
    ) -> None:
        super().__init__(tr("Local rules"), parent)
        self._workbench = workbench
        self._story = workbench.story(Display(UnitSystem.US))  # for words alone: figures stand as printed
        self.changed = False
        self._profiles: tuple[Jurisdiction, ...] = ()
        self.body.addLayout(self._head_row())
        self.lead_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.lead_label)
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        self.editions = RuleEditions(workbench, survey, self)
        self.editions.narrowed.connect(self._show_profile)
        self.finished.connect(lambda _: self.editions.close_jobs())
        self.model: RecordTable[Limit] = RecordTable(limit_columns(self.editions.before, self._story), self)
        self.table = Table(tr("Rows of the local rules"), self, shares=(42, 13, 13, 18, 20))
        self.table.setModel(self.model)
        self.table.picked.connect(self._show_row)
        splitter.addWidget(self.table)
        splitter.addWidget(self._row_side())
        splitter.setSizes([760, 380])
        self.body.addWidget(splitter, 1)
        self.body.addWidget(self.editions)
        self.add_close()
        self.resize(1180, 660)
        self._load(present_id)

    @property
    def profile(self) -> Jurisdiction | None:
        """The jurisdiction shown."""
        place = self.profile_box.currentIndex()
        return self._profiles[place] if 0 <= place < len(self._profiles) else None

    @property
    def limit(self) -> Limit | None:
        """The row shown."""
        record = self.table.current_record()
        return record if isinstance(record, Limit) else None

    def _head_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        label = QLabel(tr("&Rules of"), self)
        self.profile_box = StillBox(self)
        self.profile_box.setAccessibleName(tr("Local rules to show"))
        self.profile_box.currentIndexChanged.connect(lambda _: self._show_profile())
        label.setBuddy(self.profile_box)
        self.id_edit = QLineEdit(self)
        self.id_edit.setAccessibleName(tr("Short name of the copy"))
        self.id_edit.setPlaceholderText(tr("my_county"))
        self.title_edit = QLineEdit(self)
        self.title_edit.setAccessibleName(tr("Title of the copy"))
        self.title_edit.setPlaceholderText(tr("title of the copy"))
        self.copy_button = QPushButton(tr("Copy t&hese rules"), self)
        self.copy_button.clicked.connect(self._copy)
        self.remove_button = QPushButton(tr("Re&move own rules"), self)
        self.remove_button.clicked.connect(self._remove)
        row.addWidget(label)
        row.addWidget(self.profile_box, 3)
        row.addWidget(self.id_edit, 2)
        row.addWidget(self.title_edit, 2)
        row.addWidget(self.copy_button)
        row.addWidget(self.remove_button)
        for button in (self.copy_button, self.remove_button):
            button.setAutoDefault(False)
        return row

    def _row_side(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        column.setContentsMargins(8, 0, 0, 0)
        self.row_title = plain_label("", "cardTitle", wraps=True)
        column.addWidget(self.row_title)
        form = QFormLayout()
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self.value_edit, self.unit_edit = QLineEdit(side), QLineEdit(side)
        self.source_edit, self.clause_edit, self.edition_edit = QLineEdit(side), QLineEdit(side), QLineEdit(side)
        self.note_edit = QLineEdit(side)
        self.status_box = StillBox(side)
        self.status_box.addItems([self._story.limit_status(status) for status in LimitStatus])
        self.row_fault = plain_label("", "fault", wraps=True)
        self.row_fault.hide()
        for words, editor in (
            (tr("&Value"), self.value_edit),
            (tr("&Unit"), self.unit_edit),
            (tr("&Source"), self.source_edit),
            (tr("Cl&ause"), self.clause_edit),
            (tr("&Edition"), self.edition_edit),
            (tr("S&tanding"), self.status_box),
            (tr("&Note"), self.note_edit),
        ):
            editor.setAccessibleName(words.replace("&", ""))
            form.addRow(words, editor)
            if editor is self.unit_edit:
                form.addRow(self.row_fault)
        column.addLayout(form)
        self.save_button = QPushButton(tr("Save this ro&w"), side)
        self.save_button.setObjectName("primary")
        self.save_button.setAutoDefault(False)
        self.save_button.clicked.connect(self._save_row)
        column.addWidget(self.save_button)
        hint = tr(
            "The value is written as the source prints it: digits, yes or no, a word, cases separated by commas; "
            "empty for no figure. The adopted code and the authority having jurisdiction decide; this table only "
            "records them."
        )
        column.addWidget(plain_label(hint, "help", wraps=True))
        column.addStretch(1)
        return side

    def _load(self, wanted_id: str) -> None:
        try:
            self._profiles = self._workbench.jurisdictions().all()
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.profile_box.blockSignals(True)
        self.profile_box.clear()
        tell = self._story.phrases.tell
        self.profile_box.addItems(
            [f"{tell(one.title)}  ({tr('built in') if one.built_in else tr('own')})" for one in self._profiles]
        )
        ids = [one.id for one in self._profiles]
        self.profile_box.setCurrentIndex(ids.index(wanted_id) if wanted_id in ids else 0)
        self.profile_box.blockSignals(False)
        self._show_profile()

    def _show_profile(self) -> None:
        profile = self.profile
        if profile is None:
            return
        row = max(self.table.currentIndex().row(), 0)
        self.editions.show_profile(profile)
        self.model.show_records(self.editions.rows(profile))
        self.table.fit_columns()
        self.table.selectRow(min(row, self.model.rowCount() - 1))
        self.remove_button.setEnabled(not profile.built_in)
        self.save_button.setEnabled(not profile.built_in)
        kind = tr("Built-in rules stay as they are; copy them to change a row.") if profile.built_in else ""
        questions = " ".join(map(self._story.phrases.tell, profile.questions))
        self.lead_label.setText(
            " ".join(part for part in (tr("Edition: {0}.").format(profile.edition), kind, questions) if part)
        )
        for editor in (
            self.value_edit,
            self.unit_edit,
            self.source_edit,
            self.clause_edit,
            self.edition_edit,
            self.note_edit,
        ):
            editor.setReadOnly(profile.built_in)
        self.status_box.setEnabled(not profile.built_in)

    def _show_row(self, record: object) -> None:
        if not isinstance(record, Limit):
            return
        self.row_title.setText(self._story.phrases.tell(record.title))
        for editor, text in (
            (self.value_edit, record.printed),
            (self.unit_edit, record.printed_unit),
            (self.source_edit, record.source),
            (self.clause_edit, record.clause),
            (self.edition_edit, record.edition),
            (self.note_edit, self._story.limit_note(record)),
        ):
            editor.setText(text)
            editor.setCursorPosition(0)
        self.status_box.setCurrentIndex(tuple(LimitStatus).index(record.status))
        self._tell_row("")

    def _tell_row(self, text: str) -> None:
        self.row_fault.setText(text)
        self.row_fault.setVisible(bool(text))

    def _copy(self) -> None:
        profile = self.profile
        if profile is None:
            return
        try:
            copy = self._workbench.jurisdictions().copy(
                profile.id, self.id_edit.text().strip(), self.title_edit.text().strip()
            )
            self._workbench.jurisdictions().save(copy)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.show_fault("")
        self.changed = True
        self.id_edit.clear()
        self.title_edit.clear()
        self._load(copy.id)

    def _save_row(self) -> None:
        from spoutline.ruletables.profiles import WrittenRow, with_row

        profile, limit = self.profile, self.limit
        if profile is None or limit is None:
            return
        try:
            after = with_row(
                profile,
                WrittenRow(
                    id=limit.id,
                    printed=self.value_edit.text(),
                    unit=self.unit_edit.text(),
                    source=self.source_edit.text(),
                    clause=self.clause_edit.text(),
                    edition=self.edition_edit.text(),
                    status=self._status_for(limit),
                    note=self._note_for(limit),
                ),
            )
            self._workbench.jurisdictions().save(after)
        except (InputFault, StoreFault) as fault:
            self._tell_row(str(fault))
            return
        self.changed = True
        self._load(profile.id)

    def _note_for(self, before: Limit) -> str:
        """Return the note as typed; one that was only told in another language stays as the row holds it."""
        shown = self.note_edit.text()
        return before.note if shown == self._story.limit_note(before) else shown

    def _status_for(self, before: Limit) -> LimitStatus:
        """Return the chosen status; a new figure does not inherit how well the old one was founded."""
        status = tuple(LimitStatus)[self.status_box.currentIndex()]
        same_figure = self.value_edit.text().strip() == before.printed.strip()
        same_source = self.source_edit.text().strip() == before.source.strip()
        return LimitStatus.MEMORY if same_source and not same_figure and status is before.status else status

    def _remove(self) -> None:
        profile = self.profile
        if profile is None:
            return
        question = tr("Remove the rules “{title}” for good?").format(title=profile.title)
        if not self.is_sure(question):
            return
        try:
            self._workbench.jurisdictions().remove(profile.id)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.changed = True
        self._load("")
