"""One field of several parts, filled at once."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from spoutline.gui.dialogs.entry_form import Word, field_for, said, show_reading
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.answer_field import AnswerField, TextField
from spoutline.gui.widgets.cards import empty_layout, plain_label
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, InputProblem
from spoutline.planning.keeping.entry_editing import with_field
from spoutline.planning.keeping.entry_fields import entry_fields
from spoutline.planning.table_intake.intake_fields import IntakeField

_MOST_TOLD = 4


class SetFieldDialog(FormDialog):
    """Asks for a field that all the parts have, and for what it is to hold; ``after`` are the entries then."""

    help_topic = "catalog"

    def __init__(self, entries: Sequence[CatalogueEntry], word: Word, parent: QWidget | None = None) -> None:
        super().__init__(tr("One field of {0} parts").format(len(entries)), parent)
        self._entries, self._word = tuple(entries), word
        self.after: tuple[CatalogueEntry, ...] = ()
        known = [entry_fields(kind) for kind in dict.fromkeys(entry.kind for entry in entries)]
        shared = set.intersection(*({field.key for field in fields} for fields in known))
        self._fields = tuple(field for field in known[0] if field.key in shared)
        self.field_box = StillBox(self)
        self.field_box.setAccessibleName(tr("Field"))
        for field in self._fields:
            self.field_box.addItem(tr(field.title), field.key)
        self.field_box.currentIndexChanged.connect(lambda _: self._show_field())
        self.body.addWidget(plain_label(tr("The field is filled alike in all of them; nothing else changes."), "quiet"))
        self.body.addWidget(self.field_box)
        self._place = QVBoxLayout()
        self.body.addLayout(self._place)
        self.body.addStretch(1)
        self._text = ""
        self._show_field()
        self.add_buttons(tr("&Fill it"))
        self.resize(560, 300)

    @property
    def field(self) -> IntakeField:
        """The field chosen."""
        return self._fields[self.field_box.currentIndex()]

    def _show_field(self) -> None:
        empty_layout(self._place)
        self._text = ""
        self.answer: AnswerField = field_for(self.field, self._word)
        self.answer.show_answer("")
        self.answer.given.connect(self._take)
        if isinstance(self.answer, TextField):
            self.answer.editor.textEdited.connect(self._take)
        self._place.addWidget(self.answer)

    def _take(self, text: str) -> None:
        self._text = text
        show_reading(self.answer, said(self.answer, text, self.field), self.field)

    def accept(self) -> None:
        """Close if every part can have it; else say which cannot."""
        text = said(self.answer, self._text, self.field)
        made: list[CatalogueEntry] = []
        problems: list[InputProblem] = []
        for entry in self._entries:
            try:
                made.append(with_field(entry, self.field.key, text))
            except InputFault as fault:
                problems += fault.problems
        if problems:
            more = tr("and {0} more").format(len(problems) - _MOST_TOLD) if len(problems) > _MOST_TOLD else ""
            self.show_fault("\n".join(filter(None, (*map(str, problems[:_MOST_TOLD]), more))))
            return
        self.after = tuple(made)
        super().accept()
