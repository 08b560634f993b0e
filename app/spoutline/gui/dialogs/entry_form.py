"""One part of a draft in a form of its kind: fields made from the declared figures, checked as they are typed."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import StrEnum

from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QWidget

from spoutline.documents.drawing.shapes import Drawing
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.edits.entry_form import help_of, origin_words, reading
from spoutline.gui.widgets.answer_field import AnswerField, Choice, ListField, TextField
from spoutline.gui.widgets.cards import Card, ScrolledPage, empty_layout
from spoutline.gui.widgets.drawing_view import DrawingView
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.several_field import SeveralField
from spoutline.gui.wording import told, tr
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.part import PartKind
from spoutline.model.port import Port
from spoutline.planning.keeping.entry_editing import edited
from spoutline.planning.keeping.entry_fields import entry_fields, field_named, port_in, shown_texts
from spoutline.planning.table_intake.intake_fields import CellKind, IntakeField

Put = Callable[[CatalogueEntry], None]
Word = Callable[[StrEnum], str]
Draw = Callable[[PartKind, Port | None, Port | None], Drawing | None]
_KIND = "kind"


class EntryDialog(FormDialog):
    """Asks for what is known of a part; ``put`` writes it and says by ``InputFault`` why it cannot.

    ``before`` is the entry as the draft holds it, None for a new part. Once accepted ``after`` is what was put.
    """

    help_topic = "catalog"

    def __init__(
        self,
        before: CatalogueEntry | None,
        put: Put,
        word: Word,
        parent: QWidget | None = None,
        *,
        maker: str = "",
        draw: Draw | None = None,
    ) -> None:
        super().__init__(tr("A new part") if before is None else str(before.ref), parent)
        self._before, self._put, self._word = before, put, word
        self.after: CatalogueEntry | None = None
        self._texts = shown_texts(before) if before is not None else {}
        self.fields: dict[str, AnswerField] = {}
        self.number_edit, self.maker_edit = LineEditor(self), LineEditor(maker, self)
        page = self._page = ScrolledPage(self)
        identity = self._identity()
        identity.setVisible(before is None)  # of a part that is there, maker and number never change
        page.column.addWidget(identity)
        self._own, self._figures = Card(tr("The part"), self), Card(tr("Its figures"), self)
        self._grids = {False: two_columns(), True: two_columns()}
        for is_figure, card in ((False, self._own), (True, self._figures)):
            card.body.addLayout(self._grids[is_figure])
            page.column.addWidget(card)
        page.column.addStretch(1)
        self._draw = draw
        self.ends_view = DrawingView(tr("The ends of the part"), self)
        self.ends_view.setFixedWidth(230)
        halves = QHBoxLayout()
        halves.addWidget(page, 1)
        halves.addWidget(self.ends_view)
        self.body.addLayout(halves, 1)
        self._fill(is_figure=False)
        self._fill(is_figure=True)
        self.add_buttons(tr("Put into the &draft"))
        self.resize(1040, 640)

    def _identity(self) -> Card:
        card = Card(tr("Who makes it"), self)
        for edit, words in ((self.maker_edit, tr("Maker")), (self.number_edit, tr("Number"))):
            edit.setAccessibleName(words)
            edit.setPlaceholderText(words)
            card.body.addWidget(edit)
        return card

    @property
    def kind(self) -> PartKind | None:
        """The kind chosen."""
        return PartKind(self._texts[_KIND]) if self._texts.get(_KIND) else None

    def _fill(self, *, is_figure: bool) -> None:
        """Make the fields anew: those of every part, or the figures of the kind chosen."""
        made = [field for field in entry_fields(self.kind) if field.is_figure is is_figure]
        lay_out(self._grids[is_figure], [self._field(field) for field in made])
        self._figures.setVisible(self.kind is not None)
        self._show_ends()

    def _show_ends(self) -> None:
        """Draw the part with its ends as far as their texts can be read."""
        kind, ends = self.kind, []
        for key in ("inlet", "outlet"):
            field = field_named(key, kind)
            ends.append(None if field is None else port_in(self._texts.get(key, ""), field))
        drawing = None if kind is None or self._draw is None else self._draw(kind, ends[0], ends[1])
        self.ends_view.setVisible(drawing is not None)
        self.ends_view.show_drawing(drawing)

    def _field(self, field: IntakeField) -> AnswerField:
        origin = origin_words(self._before, field.key) if self._before is not None else ""
        widget = field_for(field, self._word, origin)
        self.fields[field.key] = widget
        widget.show_answer(in_field(self._texts.get(field.key, ""), field))
        widget.given.connect(lambda text, key=field.key: self._take(key, text))
        if isinstance(widget, TextField):
            widget.editor.textEdited.connect(lambda text, key=field.key: self._take(key, text))
        return widget

    def _take(self, key: str, text: str) -> None:
        field = field_named(key, self.kind)
        if field is None:
            return
        self._texts[key] = out_of_field(text, field)
        show_reading(self.fields[key], self._texts[key], field)
        if key == _KIND:
            self._fill(is_figure=True)
        elif field.cell is CellKind.PORT:
            self._show_ends()

    def accept(self) -> None:
        """Put the part into the draft; else say at each field what would be right."""
        try:
            before = self._before or CatalogueEntry(
                number=self.number_edit.text().strip(), maker=self.maker_edit.text().strip()
            )
        except ValueError:
            self.show_fault(tr("Write the maker and the number of the part as the maker writes it."))
            return
        for widget in self.fields.values():
            widget.accept()
        try:
            self.after = edited(before, self._texts)
            self._put(self.after)
        except InputFault as fault:
            self._show_faults(fault.problems)
            return
        except StoreFault as fault:
            self.show_fault(str(fault))
            return
        super().accept()

    def _show_faults(self, problems: tuple[InputProblem, ...]) -> None:
        rest = []
        for problem in problems:
            field = self.fields.get(problem.place)
            if field is None:
                rest.append(told(str(problem)))
            else:
                field.show_fault(f"{told(problem.value)}: {told(problem.wanted)}")
        places = [problem.place for problem in problems if problem.place in self.fields]
        if places:
            self.fields[places[0]].focus_editor()
            self._page.ensureWidgetVisible(self.fields[places[0]])
        self.show_fault("\n".join(rest) or tr("Nothing was changed: entries that are marked need a look."))


def two_columns() -> QGridLayout:
    """Return an empty grid for fields in two columns."""
    grid = QGridLayout()
    grid.setHorizontalSpacing(20)
    grid.setVerticalSpacing(10)
    grid.setColumnStretch(0, 1)
    grid.setColumnStretch(1, 1)
    return grid


def lay_out(grid: QGridLayout, widgets: Sequence[AnswerField]) -> None:
    """Let a grid of two columns hold these fields and no others; a field of several choices takes a whole row."""
    empty_layout(grid)
    row = column = 0
    for widget in widgets:
        if isinstance(widget, SeveralField):
            row += 1 if column else 0
            grid.addWidget(widget, row, 0, 1, 2)
            row, column = row + 1, 0
        else:
            grid.addWidget(widget, row, column)
            row, column = (row + 1, 0) if column else (row, 1)


def field_for(field: IntakeField, word: Word, origin: str = "") -> AnswerField:
    """Return the field that asks for one thing of a part; ``word`` gives the trade word of a choice."""
    title, help_text = tr(field.title), help_of(field)
    match field.cell:
        case CellKind.WORD:
            words = tuple(Choice(choice.value, word(choice)) for choice in field.choices)
            made: AnswerField = ListField(title, help_text, origin, (Choice("", tr("not stated")), *words))
        case CellKind.YES_NO:
            yes_no = (Choice("yes", tr("yes")), Choice("no", tr("no")))
            made = ListField(title, help_text, origin, (Choice("", tr("not stated")), *yes_no))
        case CellKind.WORDS if not field.keeps_order:
            words = tuple(Choice(choice.value, word(choice)) for choice in field.choices)
            made = SeveralField(title, help_text, origin, words)
        case _:
            made = TextField(title, help_text, origin)
    made.setObjectName(field.key)
    return made


def show_reading(widget: AnswerField, text: str, field: IntakeField) -> None:
    """Say beside a field what is wrong with its text, or how it is understood."""
    found = reading(text, field)
    if found.fault:
        widget.show_fault(found.fault)
    else:
        widget.accept()
        widget.show_note(found.note)


def in_field(text: str, field: IntakeField) -> str:
    """Return the text of an entry as its field takes it."""
    return text.replace(" ", ";") if field.cell is CellKind.WORDS and not field.keeps_order else text


def out_of_field(text: str, field: IntakeField) -> str:
    """Return what a field says as its entry shows it: words in the order of the alphabet, between blanks."""
    is_boxes = field.cell is CellKind.WORDS and not field.keeps_order
    return " ".join(sorted(filter(None, text.split(";")))) if is_boxes else text


def said(widget: AnswerField, text: str, field: IntakeField) -> str:
    """Return what a person said in a field made by ``field_for``."""
    shown = widget.editor.text() if isinstance(widget, TextField) else text
    return out_of_field(shown, field)
