"""Questions as fields in cards; an answer becomes an edit, a faulty one stays beside its field."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.edits.answers import read_answer, set_answer, shown_answer, told_of
from spoutline.gui.edits.field_titles import undo_words
from spoutline.gui.edits.outlet_size import size_readings
from spoutline.gui.edits.question import Entry, Question, Step, answer_in
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.answer_field import (
    AnswerField,
    Choice,
    ListField,
    LongTextField,
    SuggestedField,
    TextField,
    TileField,
)
from spoutline.gui.widgets.cards import Card
from spoutline.gui.wording import tr
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.dispenser_type import inherited_fields, overridden_fields
from spoutline.model.faults import InputFault
from spoutline.model.survey import Position, Site

_YES, _NO, _OPEN = "yes", "no", ""
_OF_SITE = frozenset({Step.SITE, Step.CONVERSION})  # asked once for the site, whatever position is in focus
_MOST_TILES = 6
_SHORT_TILE, _MEDIUM_TILE = 14, 23  # characters that fit a quarter and a third of the page
_WIDE = (Entry.CHOICE, Entry.LONG_TEXT, Entry.YES_NO, Entry.YES_NO_OPEN)

# the same is asked about each vehicle's filler: what has the keyboard says whose it is
_ALIKE, _FURTHER = ("Vehicle filler",), "Further filler "


class QuestionForm(QWidget):
    """Shows questions about the position in focus, or about the site."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._cards: dict[str, Card] = {}
        self._grids: dict[str, QGridLayout] = {}
        self._fields: dict[str, AnswerField] = {}
        self._questions: dict[str, Question] = {}
        self._label = ""
        self._arranged: tuple[tuple[AnswerField, str, bool], ...] = ()  # fields as they lie, with group and width
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(12)

    def field(self, name: str) -> AnswerField:
        """Return the field of the question of this name."""
        return self._fields[name]

    @property
    def names(self) -> tuple[str, ...]:
        """The names of the questions shown, in order."""
        return tuple(self._questions)

    def card(self, group: str) -> Card:
        """Return the card of a group of questions."""
        return self._cards[group]

    def show_questions(self, questions: tuple[Question, ...]) -> None:
        """Show these questions with their present answers; fields that stay keep keyboard and text."""
        wanted = {question.name: question for question in questions}
        if self._label != self._context.session.label and _OF_SITE.isdisjoint(q.step for q in questions):
            self._drop(set(self._fields))  # nothing that was typed for one position may land in another
            self._label = self._context.session.label
        self._drop(set(self._fields) - set(wanted))
        for question in questions:
            if question.name not in self._fields:
                self._add(question)
        self._questions = wanted
        places = tuple((self._fields[one.name], one.group, _is_wide(one)) for one in questions)
        if places != self._arranged:  # laid out in vain it is felt with every turn to another position
            self._arranged = places
            self._arrange()
        for question in questions:
            self._show_answer(question)

    def add_button(self, group: str, button: QPushButton) -> None:
        """Put a button at the foot of a card."""
        self._cards[group].body.addWidget(button)

    def _owner(self, question: Question) -> Position | Site | ConversionAnswers:
        session = self._context.session
        if question.step is Step.CONVERSION:
            return session.survey.conversion
        return session.survey.site if question.step is Step.SITE else session.position

    def _show_answer(self, question: Question) -> None:
        field = self._fields[question.name]
        value = answer_in(self._owner(question), question)
        field.show_origin(self._origin(question))
        if isinstance(field, SuggestedField) and question.suggestions is not None:
            field.show_suggestions(question.suggestions(self._context.session.position))
        if question.entry in (Entry.YES_NO, Entry.YES_NO_OPEN):
            field.show_answer(_OPEN if value is None else _YES if value else _NO)
        else:
            field.show_answer(shown_answer(value, question, self._context.session.display))

    def _origin(self, question: Question) -> str:
        """Return from where an answer is that nobody gave here: the type of the dispenser; empty for any other."""
        position = self._context.session.position
        kind = position.dispenser_type
        if kind is None or question.step in _OF_SITE:
            return ""
        if question.path in inherited_fields(position):
            return tr("From dispenser type {0}").format(kind.name)
        overridden = question.path in overridden_fields(position)
        return tr("Otherwise than dispenser type {0}").format(kind.name) if overridden else ""

    def _answered(self, question: Question, text: str) -> None:
        session, field = self._context.session, self._fields[question.name]
        try:
            if question.entry in (Entry.YES_NO, Entry.YES_NO_OPEN):
                after = set_answer(
                    session.survey, session.label, question, {_YES: True, _NO: False}.get(text), session.display
                )
            else:
                value = read_answer(text, question, session.display)
                after = set_answer(session.survey, session.label, question, value, session.display)
        except InputFault as fault:
            field.show_fault(told_of(fault, question, text))
            return
        field.accept()
        if not self._context.edit(after, undo_words(question)):
            self._show_answer(question)
        self._show_notes(size_readings(question, text, after, session.label))

    def _show_notes(self, notes: Mapping[str, str]) -> None:
        for name, told in notes.items():
            if name in self._fields:
                self._fields[name].show_note(told)

    def _add(self, question: Question) -> None:
        if question.group not in self._cards:
            card = Card(_group_words(question.group), self)
            grid = QGridLayout()
            grid.setHorizontalSpacing(20)
            grid.setVerticalSpacing(14)
            grid.setColumnStretch(0, 1)
            grid.setColumnStretch(1, 1)
            card.body.addLayout(grid)
            self._cards[question.group], self._grids[question.group] = card, grid
        field = _field_for(question, self._cards[question.group])
        field.given.connect(_giver(self._answered, question))
        if question.group in _ALIKE or question.group.startswith(_FURTHER):
            field.name_within(_group_words(question.group))
        self._fields[question.name] = field

    def _drop(self, names: set[str]) -> None:
        for name in names:
            field = self._fields.pop(name)
            field.blockSignals(True)
            field.hide()
            field.deleteLater()

    def _arrange(self) -> None:
        """Put the fields into their cards: wide ones alone, narrow ones two by two."""
        groups = list(dict.fromkeys(question.group for question in self._questions.values()))
        for group in [known for known in self._cards if known not in groups]:
            card = self._cards.pop(group)
            del self._grids[group]
            card.hide()
            card.deleteLater()
        for place, group in enumerate(groups):
            self._column.removeWidget(self._cards[group])
            self._column.insertWidget(place, self._cards[group])
        before: QWidget | None = None
        for group in groups:
            row, column = 0, 0
            for question in (known for known in self._questions.values() if known.group == group):
                field, grid = self._fields[question.name], self._grids[group]
                grid.removeWidget(field)
                if _is_wide(question):
                    row += 1 if column else 0
                    grid.addWidget(field, row, 0, 1, 2)
                    row, column = row + 1, 0
                else:
                    grid.addWidget(field, row, column)
                    row, column = (row + 1, 0) if column else (row, 1)
                field.show()
                if before is not None:
                    QWidget.setTabOrder(before, field)
                before = field
            self._cards[group].show()  # once it is filled, for then it is laid out once


def _group_words(group: str) -> str:
    if group.startswith(_FURTHER):
        return tr("Further filler {0}").format(group.removeprefix(_FURTHER))
    return tr(group)


def _giver(answered: Callable[[Question, str], None], question: Question) -> Callable[[str], None]:
    return lambda text: answered(question, text)


def _is_wide(question: Question) -> bool:
    short = len(question.options) <= 2 and not any(option.hint for option in question.options)
    return question.entry in _WIDE and not (question.entry is Entry.CHOICE and short)


def _columns_for(choices: tuple[Choice, ...]) -> int:
    longest = max(max(len(choice.words), len(choice.hint)) for choice in choices)
    if longest <= _SHORT_TILE:
        return min(len(choices), 4)
    return 2 if len(choices) in (2, 4) or longest > _MEDIUM_TILE else 3


def _field_for(question: Question, parent: QWidget) -> AnswerField:
    title, words, source = tr(question.title), tr(question.help), tr(question.source)
    field: AnswerField
    match question.entry:
        case Entry.CHOICE if len(question.options) <= _MOST_TILES:
            choices = tuple(Choice(option.value, tr(option.words), tr(option.hint)) for option in question.options)
            field = TileField(title, words, source, choices, columns=_columns_for(choices), parent=parent)
        case Entry.CHOICE:
            choices = tuple(Choice(option.value, tr(option.words), tr(option.hint)) for option in question.options)
            field = ListField(title, words, source, choices, parent)
        case Entry.YES_NO:
            field = TileField(
                title, words, source, (Choice(_YES, tr("Yes")), Choice(_NO, tr("No"))), columns=4, parent=parent
            )
        case Entry.YES_NO_OPEN:
            choices = (Choice(_YES, tr("Yes")), Choice(_NO, tr("No")), Choice(_OPEN, tr("Not known yet")))
            field = TileField(title, words, source, choices, columns=3, parent=parent)
        case Entry.SUGGESTED:
            field = SuggestedField(title, words, source, parent)
        case Entry.LONG_TEXT:
            field = LongTextField(title, words, source, parent)
        case _:
            placeholder = f"{tr('empty:')} {tr(question.empty_means)}" if question.empty_means else ""
            field = TextField(title, words, source, placeholder=placeholder, parent=parent)
    field.setObjectName(question.name)
    return field
