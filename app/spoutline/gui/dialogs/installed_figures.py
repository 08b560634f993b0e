"""The plate and the figures of a part without a catalogue number, typed from the part or its maker's sheet."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.edits.installed_figures import bounds_words, described_texts, is_size, size_words, with_described
from spoutline.gui.edits.installed_questions import FigureQuestion
from spoutline.gui.edits.question import Entry, Question
from spoutline.gui.widgets.answer_field import AnswerField, Choice, ListField, TextField
from spoutline.gui.widgets.cards import Card, ScrolledPage, plain_label
from spoutline.gui.widgets.several_field import SeveralField
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey
from spoutline.model.worded import Worded
from spoutline.units.display import Display


class InstalledFiguresDialog(FormDialog):
    """Asks for a described part; the survey with the answers is in ``after`` once the dialog is accepted."""

    help_topic = "conversions"

    def __init__(  # noqa: PLR0917 - what the edit takes, and a parent
        self,
        survey: Survey,
        label: str,
        index: int,
        questions: tuple[FigureQuestion, ...],
        display: Display,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("Figures of a described part"), parent)
        self._survey, self._label, self._index = survey, label, index
        self._questions, self._display = questions, display
        self.after: Survey | None = None
        lead = tr("With all figures the part is judged like a new one and may stay; without any, it goes.")
        self.body.addWidget(plain_label(lead, "quiet", wraps=True))
        page = ScrolledPage(self)
        self.fields: dict[str, AnswerField] = {}
        for group in dict.fromkeys(asked.question.group for asked in questions):
            page.column.addWidget(self._card(group))
        page.column.addStretch(1)
        self.body.addWidget(page, 1)
        position = survey.position(label)
        if position is None:
            raise KeyError(label)
        self._texts = described_texts(position.installed[index], questions, display)
        for name, field in self.fields.items():
            field.show_answer(self._texts[name])
        self.empty_button = QPushButton(tr("&Empty all figures"), self)
        self.empty_button.setAutoDefault(False)
        self.empty_button.clicked.connect(self._empty_figures)
        self.foot.insertWidget(0, self.empty_button)
        self.add_buttons(tr("&Record"))
        self.resize(760, 640)

    def _card(self, group: str) -> Card:
        card = Card(group, self)
        grid = QGridLayout()
        grid.setHorizontalSpacing(20)
        grid.setVerticalSpacing(12)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        row = column = 0
        for asked in (one for one in self._questions if one.question.group == group):
            question = asked.question
            field = _field_for(question, bounds_words(asked, self._display))
            field.given.connect(lambda text, name=question.name: self._take(name, text))
            self.fields[question.name] = field
            if isinstance(field, SeveralField):
                row += 1 if column else 0
                grid.addWidget(field, row, 0, 1, 2)
                row, column = row + 1, 0
            else:
                grid.addWidget(field, row, column)
                row, column = (row + 1, 0) if column else (row, 1)
        card.body.addLayout(grid)
        return card

    def _take(self, name: str, text: str) -> None:
        self._texts[name] = text
        self._show_readings()

    def _show_readings(self) -> None:
        """Say beside each size how it is understood; what cannot be is told when the figures are recorded."""
        for asked in self._questions:
            name = asked.question.name
            if is_size(asked.question) and name in self._texts:
                self.fields[name].show_note(size_words(asked.question, self._texts))

    def _empty_figures(self) -> None:
        for name, field in self.fields.items():
            if name.startswith("figures."):
                field.accept()
                field.show_answer("")
                self._texts[name] = ""

    def accept(self) -> None:
        """Close if the answers can be; else say at each field what would be right."""
        for name, field in self.fields.items():
            if isinstance(field, TextField):  # Return may come before the field hands its text over
                self._texts[name] = field.editor.text()
            field.accept()
        try:
            self.after = with_described(
                self._survey, self._label, self._index, self._questions, self._texts, display=self._display
            )
        except InputFault as fault:
            self._show_faults(fault)
            return
        super().accept()

    def _show_faults(self, fault: InputFault) -> None:
        rest = []
        for problem in fault.problems:
            field = self.fields.get(problem.place)
            if field is None:
                rest.append(str(problem))
            else:
                figures = {"value": problem.value, "wanted": problem.wanted}
                field.show_fault(Worded("{value} is not usable here; {wanted}.", **figures))
        places = [problem.place for problem in fault.problems if problem.place in self.fields]
        if places:
            self.fields[places[0]].focus_editor()
        self.show_fault("\n".join(rest) or tr("Nothing was recorded: answers that are marked need a look."))


def _field_for(question: Question, bounds: str) -> AnswerField:
    choices = tuple(Choice(option.value, option.words) for option in question.options)
    field: AnswerField
    match question.entry:
        case Entry.SEVERAL:
            field = SeveralField(question.title, question.help, question.source, choices)
        case Entry.CHOICE | Entry.YES_NO:
            open_words = question.empty_means or tr("not stated")
            field = ListField(question.title, question.help, question.source, (Choice("", open_words), *choices))
        case _:
            words = f"{tr('empty:')} {question.empty_means}" if question.empty_means else ""
            help_text = f"{bounds[:1].upper()}{bounds[1:]}." if bounds else question.help
            field = TextField(question.title, help_text, question.source, placeholder=words)
    field.setObjectName(question.name)
    return field
