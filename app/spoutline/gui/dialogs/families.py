"""Families of parts of a draft: their figures in a form, which every part has that has none of its own."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QListWidget, QPushButton, QSplitter, QVBoxLayout, QWidget

from spoutline.bootstrap.catalogues import CatalogueService
from spoutline.gui.dialogs.entry_form import (
    Word,
    field_for,
    in_field,
    lay_out,
    out_of_field,
    show_reading,
    two_columns,
)
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.answer_field import AnswerField, Choice, ListField, TextField
from spoutline.gui.widgets.cards import Card, ScrolledPage, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.wording import told, tr
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily
from spoutline.planning.keeping.entry_fields import entry_fields, field_named
from spoutline.planning.keeping.family_editing import edited_family, family_texts
from spoutline.planning.table_intake.intake_fields import IntakeField


class FamiliesDialog(FormDialog):
    """Keeps the families of one draft; ``has_changed`` says whether anything of the draft did."""

    def __init__(self, service: CatalogueService, name: str, word: Word, parent: QWidget | None = None) -> None:
        super().__init__(tr("Families of parts in {0}").format(name), parent)
        self._service, self._name, self._word = service, name, word
        self.has_changed = False
        self._families: dict[str, PartFamily] = {}
        self._before: PartFamily | None = None
        self._texts: dict[str, str] = {}
        self.kind = PartKind.CURB_HOSE
        self.fields: dict[str, AnswerField] = {}
        words = tr("Every part whose field Family says the name has these figures, unless it has one of its own.")
        self.body.addWidget(plain_label(words, "quiet", wraps=True))
        halves = QSplitter(Qt.Orientation.Horizontal, self)
        halves.addWidget(self._list_side())
        halves.addWidget(self._form_side())
        halves.setStretchFactor(1, 1)
        self.body.addWidget(halves, 1)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.state_label)
        self._past: list[tuple[PartFamily | None, PartFamily | None]] = []
        self.back_button = self._button(tr("&Take back the last change"), self.take_back)
        self.back_button.setEnabled(False)
        self.foot.addWidget(self.back_button)
        self.save_button = self._button(tr("&Put the family into the draft"), self.save)
        self.foot.addWidget(self.save_button)
        self.add_close()
        self.resize(900, 640)
        self._refresh("")

    def _list_side(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        self.list = QListWidget(side)
        self.list.setAccessibleName(tr("Families"))
        self.list.currentTextChanged.connect(self._show)
        column.addWidget(self.list, 1)
        self.new_button = self._button(tr("&New family"), self.begin)
        self.remove_button = self._button(tr("&Remove"), self.remove)
        for button in (self.new_button, self.remove_button):
            column.addWidget(button)
        return side

    def _form_side(self) -> QWidget:
        page = ScrolledPage(self)
        head = Card(tr("The family"), self)
        self.name_edit = LineEditor(self)
        self.name_edit.setAccessibleName(tr("Name of the family"))
        self.name_edit.setPlaceholderText(tr("Name of the family"))
        head.body.addWidget(self.name_edit)
        kinds = tuple(Choice(kind.value, self._word(kind)) for kind in PartKind)
        self.kind_field = ListField(tr("Kind"), "", "", kinds)
        self.kind_field.given.connect(self._choose_kind)
        head.body.addWidget(self.kind_field)
        page.column.addWidget(head)
        figures = Card(tr("Figures of its parts"), self)
        self._grid = two_columns()
        figures.body.addLayout(self._grid)
        page.column.addWidget(figures)
        page.column.addStretch(1)
        return page

    def _button(self, words: str, act: Callable[[], None]) -> QPushButton:
        made = QPushButton(words, self)
        made.setAutoDefault(False)
        made.clicked.connect(lambda _=False: act())
        return made

    def _choose_kind(self, text: str) -> None:
        self.kind = PartKind(text)
        self._fill()

    def _refresh(self, name: str) -> None:
        try:
            held = wait_for(lambda: self._service.families(EditionRef(self._name, is_draft=True)))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self._families = {one.name: one for one in held}
        self.list.blockSignals(True)
        self.list.clear()
        self.list.addItems(list(self._families))
        self.list.blockSignals(False)
        names = list(self._families)
        self.list.setCurrentRow(names.index(name) if name in names else 0 if names else -1)
        self._show(self.list.currentItem().text() if names else "")

    def begin(self) -> None:
        """Empty the form for a new family."""
        self.list.setCurrentRow(-1)
        self._show("")
        self.name_edit.setFocus()

    def _show(self, name: str) -> None:
        self._before = self._families.get(name)
        self._texts = {} if self._before is None else family_texts(self._before)
        self.name_edit.setText(name)
        self.kind = PartKind.CURB_HOSE if self._before is None else self._before.kind
        self.kind_field.show_answer(self.kind.value)
        self.show_fault("")
        self.remove_button.setEnabled(self._before is not None)
        self._fill()

    def _fill(self) -> None:
        """Make the fields of the kind chosen anew."""
        self.fields = {}
        lay_out(self._grid, [self._field(field) for field in entry_fields(self.kind) if field.is_figure])

    def _field(self, field: IntakeField) -> AnswerField:
        widget = field_for(field, self._word)
        self.fields[field.key] = widget
        widget.show_answer(in_field(self._texts.get(field.key, ""), field))
        widget.given.connect(lambda text, key=field.key: self._take(key, text))
        if isinstance(widget, TextField):
            widget.editor.textEdited.connect(lambda text, key=field.key: self._take(key, text))
        return widget

    def _take(self, key: str, text: str) -> None:
        field = field_named(key, self.kind)
        if field is not None:
            self._texts[key] = out_of_field(text, field)
            show_reading(self.fields[key], self._texts[key], field)

    def save(self) -> None:
        """Put the family into the draft; else say what would be right."""
        self.show_fault("")
        for widget in self.fields.values():
            widget.accept()
        name, kind, before = self.name_edit.text().strip(), self.kind, self._before
        texts = {key: text for key, text in self._texts.items() if key in self.fields}
        renamed = before.name if before is not None and before.name != name else ""
        try:
            family = edited_family(before, name, kind, texts)
            count = wait_for(lambda: self._service.put_family(self._name, family, renamed_from=renamed))
        except InputFault as fault:
            rest = []
            for problem in fault.problems:
                field = self.fields.get(problem.place)
                if field is None:
                    rest.append(told(str(problem)))
                else:
                    field.show_fault(f"{told(problem.value)}: {told(problem.wanted)}")
            self.show_fault("\n".join(rest[:5]) or tr("Nothing was changed: entries that are marked need a look."))
            return
        except StoreFault as fault:
            self.show_fault(str(fault))
            return
        self._changed(before, family)
        self._refresh(family.name)
        self.state_label.setText(tr("{0}: {1} parts have its figures.").format(family.name, count))

    def remove(self) -> None:
        """Take the family shown out of the draft, once a person is sure."""
        before = self._before
        if before is None or not self.is_sure(
            tr("Take {0} out? Its parts lose the figures that they have of it.").format(before.name)
        ):
            return
        try:
            wait_for(lambda: self._service.remove_family(self._name, before.name))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self._changed(before, None)
        self._refresh("")
        self.state_label.setText(tr("{0} is gone").format(before.name))

    def _changed(self, before: PartFamily | None, after: PartFamily | None) -> None:
        self.has_changed = True
        self._past.append((before, after))
        self.back_button.setEnabled(True)

    def take_back(self) -> None:
        """Let the family changed last be as it was before; its parts follow."""
        before, after = self._past[-1]
        try:
            if before is None and after is not None:
                wait_for(lambda: self._service.remove_family(self._name, after.name))
            elif before is not None:
                renamed = after.name if after is not None and after.name != before.name else ""
                wait_for(lambda: self._service.put_family(self._name, before, renamed_from=renamed))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self._past.pop()
        self.back_button.setEnabled(bool(self._past))
        self._refresh("" if before is None else before.name)
        self.state_label.setText(tr("The last change is taken back."))
