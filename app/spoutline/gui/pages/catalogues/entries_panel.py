"""The entries of an edition or draft, found as one types; those of a draft are changed here, one or several at once."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QItemSelection, QItemSelectionModel, Signal
from PySide6.QtWidgets import QCheckBox, QDialog, QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from spoutline.bootstrap.catalogues import EntriesFound, EntryLine
from spoutline.documents.drawing.part_ends import part_ends_drawing
from spoutline.documents.drawing.shapes import Drawing
from spoutline.gui.dialogs.cut_hose import CutHoseDialog
from spoutline.gui.dialogs.entry_form import EntryDialog
from spoutline.gui.dialogs.families import FamiliesDialog
from spoutline.gui.dialogs.made_up import MadeUpDialog
from spoutline.gui.dialogs.part_files import PartFilesDialog
from spoutline.gui.dialogs.set_field import SetFieldDialog
from spoutline.gui.dialogs.similar_part import SimilarPartDialog
from spoutline.gui.jobs import Ticket
from spoutline.gui.models.catalogue_rows import entry_columns
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.pages.catalogues.chosen import FIND, InHand
from spoutline.gui.pages.catalogues.entry_steps import EntrySteps, tried
from spoutline.gui.pages.context import Context
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import told, tr
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault
from spoutline.model.part import HANGING_KINDS, HOSES, PartKind
from spoutline.model.port import Port
from spoutline.planning.keeping.cut_lengths import CutHose, cut_changes
from spoutline.planning.keeping.entry_editing import with_figures_of
from spoutline.planning.keeping.made_up import MOST_PARTS, MadeUpSet, made_up_changes

MOST_SHOWN = 300


class EntriesPanel(QWidget):
    """Looks entries up off the window's thread; a later question takes the place of an earlier one.

    Signals
    -------
    draft_changed()
        Entries of the draft in hand were changed.
    """

    draft_changed = Signal()

    def __init__(self, context: Context, in_hand: InHand, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._in_hand = context, in_hand
        self.steps = EntrySteps(context, in_hand)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        row = QHBoxLayout()
        self.search_edit = QLineEdit(self)
        self.search_edit.setAccessibleName(tr("Search entries"))
        self.search_edit.setPlaceholderText(tr("Number, old number, name, maker, item number, GTIN or supplier"))
        self.search_edit.setClearButtonEnabled(True)
        self.search_edit.textChanged.connect(lambda _: self.refresh())
        self.lacking_box = QCheckBox(tr("Only what is not &yet described"), self)
        self.lacking_box.toggled.connect(lambda _: self.refresh())
        row.addWidget(self.search_edit, 1)
        row.addWidget(self.lacking_box)
        self.families_button = self._button(tr("Fa&milies…"), self.show_families)
        row.addWidget(self.families_button)
        column.addLayout(row)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.back_button = self._button(tr("&Take back the last change"), self.take_back)
        state = QHBoxLayout()
        state.addWidget(self.state_label, 1)
        state.addWidget(self.back_button)
        column.addLayout(state)
        self.model = RecordTable(entry_columns(context.story), self)
        self.table = Table(tr("Entries"), self, shares=(12, 16, 12, 26, 18, 22))
        self.table.setModel(self.model)
        self._teach()
        self.table.setSelectionMode(Table.SelectionMode.ExtendedSelection)
        self.table.opened.connect(self._open)
        self.table.selectionModel().selectionChanged.connect(lambda *_: self._enable())
        column.addWidget(self.table, 1)
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        column.addWidget(self.fault_label)
        column.addLayout(self._buttons())
        self._enable()

    def _buttons(self) -> QVBoxLayout:
        """Return what is done with one entry, and below it what is made of several; both fit in any language."""
        self.new_button = self._button(tr("Ne&w part…"), self.add_part)
        self.edit_button = self._button(tr("E&dit…"), self.edit_part)
        self.field_button = self._button(tr("Set a f&ield…"), self.set_field)
        self.similar_button = self._button(tr("Figures of &a similar part…"), self.take_figures)
        self.cut_button = self._button(tr("Cut to le&ngth…"), self.cut_to_length)
        self.made_up_button = self._button(tr("Sell made &up…"), self.sell_made_up)
        self.files_button = self._button(tr("Fi&les…"), self.show_files)
        self.out_button = self._button(tr("Ta&ke out"), self.take_out)
        column = QVBoxLayout()
        for buttons in (
            (self.new_button, self.edit_button, self.field_button, self.similar_button),
            (self.cut_button, self.made_up_button, self.files_button, self.out_button),
        ):
            row = QHBoxLayout()
            row.addStretch(1)
            for button in buttons:
                row.addWidget(button)
            column.addLayout(row)
        return column

    def _button(self, words: str, act: Callable[[], None]) -> QPushButton:
        button = QPushButton(words, self)
        button.clicked.connect(lambda _=False: act())
        return button

    def refresh(self) -> None:
        """Show the entries of the edition in hand that are known by the words written."""
        row = self._in_hand.row
        if row is None:
            return
        service, ref, text = self._context.session.workbench.catalogues(), row.ref, self.search_edit.text()
        only = self.lacking_box.isChecked()

        def work(_: Ticket) -> EntriesFound:
            return service.find(ref, text, limit=MOST_SHOWN, only_not_described=only)

        if not self.model.records:
            self.table.teach(tr("Reading {0}…").format(ref))
        self._context.jobs.start(FIND, work, self._show, self._show_fault)

    def _teach(self) -> None:
        self.table.teach(tr("The parts of the catalog in hand come here. A supplier's table brings many at once."))

    def _show_fault(self, fault: Exception) -> None:
        self._teach()
        self.state_label.setText(told(str(fault)))

    def _show(self, found: EntriesFound) -> None:
        self._teach()
        before = {entry.ref for entry in self.selected}
        self.model.show_records(found.lines)
        self.table.fit_columns()
        kept, rows = QItemSelection(), [row for row, line in enumerate(found.lines) if line.entry.ref in before]
        for row in rows:  # what was selected stays so where it is still shown
            kept.select(self.model.index(row, 0), self.model.index(row, self.model.columnCount() - 1))
        self.table.selectionModel().select(kept, QItemSelectionModel.SelectionFlag.ClearAndSelect)
        shown = len(found.lines)
        words = tr("{0} entries") if shown == found.count else tr("{0} entries, the first {1} shown")
        words = words if found.is_all else tr("More than {0} entries, {1} of them shown: type more of it")
        self.state_label.setText(words.format(f"{found.count:,}", shown))
        self._enable()

    # steps

    @property
    def selected(self) -> tuple[CatalogueEntry, ...]:
        """The entries selected, in the order of the table."""
        model = self.table.selectionModel()
        rows = sorted(index.row() for index in model.selectedRows()) if model is not None else []
        return tuple(self.model.records[row].entry for row in rows if row < len(self.model.records))

    def _open(self, line: object) -> None:
        if isinstance(line, EntryLine) and self._in_hand.draft_name and self._is_draft:
            self._ask(line.entry)

    def add_part(self) -> None:
        """Ask for a part that the draft does not hold yet."""
        self._ask(None)

    def edit_part(self) -> None:
        """Show the part selected in the form of its kind."""
        chosen = self.selected
        if len(chosen) == 1:
            self._ask(chosen[0])

    def _ask(self, before: CatalogueEntry | None) -> None:
        maker = self.model.records[0].entry.maker if before is None and self.model.records else ""
        story = self._context.story

        def draw(kind: PartKind, inlet: Port | None, outlet: Port | None) -> Drawing | None:
            return part_ends_drawing(kind, inlet, outlet, story)

        dialog = EntryDialog(
            before, lambda after: self.steps.change([(before, after)]), story.title, self, maker=maker, draw=draw
        )
        if dialog.exec() == QDialog.DialogCode.Accepted:
            self._changed("")

    def set_field(self) -> None:
        """Fill one field of all parts selected."""
        chosen = self.selected
        if not chosen:
            return
        dialog = SetFieldDialog(chosen, self._context.story.word, self)
        if dialog.exec() == QDialog.DialogCode.Accepted:
            self._change(list(zip(chosen, dialog.after, strict=True)))

    def take_figures(self) -> None:
        """Let the parts selected take over the figures that they lack from a part that a person chooses."""
        chosen, row = self.selected, self._in_hand.row
        if not chosen or row is None:
            return
        service, ref = self._context.session.workbench.catalogues(), row.ref
        dialog = SimilarPartDialog(
            lambda text: service.find(ref, text, limit=MOST_SHOWN), self._context.story, len(chosen), self
        )
        if dialog.exec() != QDialog.DialogCode.Accepted or dialog.chosen is None:
            return
        try:
            pairs = [(entry, with_figures_of(entry, dialog.chosen)) for entry in chosen]
        except InputFault as fault:
            self._tell(str(fault))
            return
        self._change(pairs)

    def cut_to_length(self) -> None:
        """Let the hose selected be sold cut to length, one part for each; the step can be taken back."""
        chosen, row = self.selected, self._in_hand.row
        if len(chosen) != 1 or row is None:
            return
        service, ref = self._context.session.workbench.catalogues(), row.ref

        def take(cut: CutHose) -> None:
            self.steps.change(cut_changes(cut, wait_for(lambda: tuple(service.shelf().entries(ref)))))

        if CutHoseDialog(chosen[0], take, self).exec() == QDialog.DialogCode.Accepted:
            self._changed("")

    def sell_made_up(self) -> None:
        """Let the parts selected be sold joined to each other as one article; the step can be taken back."""
        chosen, row = self.selected, self._in_hand.row
        if len(chosen) < 2 or row is None:
            return
        service, ref = self._context.session.workbench.catalogues(), row.ref

        def take(made: MadeUpSet) -> None:
            self.steps.change(made_up_changes(made, wait_for(lambda: tuple(service.shelf().entries(ref)))))

        if MadeUpDialog(chosen, take, self).exec() == QDialog.DialogCode.Accepted:
            self._changed("")

    def show_files(self) -> None:
        """Show the pictures and documents of the part selected; of a draft they are changed there."""
        row, chosen = self._in_hand.row, self.selected
        if row is None or len(chosen) != 1:
            return
        dialog = PartFilesDialog(self._context.session.workbench.catalogues(), row.ref, chosen[0].ref, self)
        dialog.exec()
        if dialog.has_changed:
            self._changed("")

    def show_families(self) -> None:
        """Show the families of the draft in hand and let them be changed; their parts follow."""
        name = self._in_hand.draft_name
        if name:
            service, story = self._context.session.workbench.catalogues(), self._context.story
            dialog = FamiliesDialog(service, name, story.title, self)
            dialog.exec()
            if dialog.has_changed:
                self._changed("")

    def take_out(self) -> None:
        """Take the parts selected out of the draft; the step can be taken back."""
        self._change([(entry, None) for entry in self.selected])

    def take_back(self) -> None:
        """Take back the last change of the draft in hand."""
        self._changed(tried(self.steps.take_back))

    def _change(self, pairs: Sequence[tuple[CatalogueEntry | None, CatalogueEntry | None]]) -> None:
        self._changed(tried(lambda: self.steps.change(pairs)))

    def _changed(self, fault: str) -> None:
        self._tell(fault)
        self.refresh()
        self.draft_changed.emit()

    def _tell(self, fault: str) -> None:
        self.fault_label.setText(fault)
        self.fault_label.setVisible(bool(fault))

    def _enable(self) -> None:
        is_draft, count = bool(self._in_hand.draft_name) and self._is_draft, len(self.selected)
        self.new_button.setEnabled(is_draft)
        self.families_button.setEnabled(is_draft)
        self.edit_button.setEnabled(is_draft and count == 1)
        for button in (self.field_button, self.similar_button, self.out_button):
            button.setEnabled(is_draft and count > 0)
        self.cut_button.setEnabled(is_draft and count == 1 and self.selected[0].kind in HOSES)
        self.files_button.setEnabled(count == 1)
        hang = all(one.kind in HANGING_KINDS for one in self.selected)
        self.made_up_button.setEnabled(is_draft and 2 <= count <= MOST_PARTS and hang)
        self.back_button.setEnabled(is_draft and self.steps.last is not None)

    @property
    def _is_draft(self) -> bool:
        return self._in_hand.row is not None and self._in_hand.row.edition is None
