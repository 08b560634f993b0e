"""Which answer is changed on trial: the question, the other answer, and the positions that it is for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QHBoxLayout, QVBoxLayout, QWidget

from spoutline.explain.plan.story import Story
from spoutline.gui.dialogs.what_if_choices import WRITTEN, AnswerChoices
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.survey import Survey
from spoutline.model.what_if import OF_THE_STATION, WhatIf, WhatIfQuestion

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


class WhatIfAnswer(QWidget):
    """Asks for one other answer.

    Signals
    -------
    chosen()
        A person chose or wrote another one.
    """

    chosen = Signal()

    def __init__(
        self, workbench: Workbench, survey: Survey, label: str, story: Story, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._choices = AnswerChoices(workbench, survey, story)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        row = QHBoxLayout()
        column.addLayout(row)
        self.question_box, self.value_box, self.scope_box = StillBox(self), StillBox(self), StillBox(self)
        for words, box, stretch in (
            (tr("Question"), self.question_box, 0),
            (tr("Other answer"), self.value_box, 2),
            (tr("Positions"), self.scope_box, 1),
        ):
            row.addWidget(plain_label(words, "quiet"))
            row.addWidget(box, stretch)
        self.question_box.setAccessibleName(tr("Question whose answer is changed"))
        self.value_box.setAccessibleName(tr("The other answer"))
        self.value_box.setMinimumContentsLength(14)
        self.scope_box.setAccessibleName(tr("Positions that the answer is for"))
        for question in WhatIfQuestion:
            self.question_box.addItem(story.title(question), question)
        self.scope_box.addItem(tr("the whole station"), ())
        self.scope_box.addItem(tr("position {0}").format(label), (label,))
        self.lasting_box = QCheckBox(tr("&Keep today's answer; find sets that last for this one too"), self)
        self.lasting_box.toggled.connect(lambda _: self.chosen.emit())
        column.addWidget(self.lasting_box)
        self.question_box.currentIndexChanged.connect(lambda _: self._turn())
        self.value_box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)  # Return adds no answer without a meaning
        self.value_box.activated.connect(lambda _: self.chosen.emit())
        self.scope_box.activated.connect(lambda _: self.chosen.emit())
        self._turn()
        self.setFocusProxy(self.value_box)

    @property
    def trouble(self) -> str:
        """Why the answers to choose from could not be read; empty where all is well."""
        return self._choices.trouble

    @property
    def question(self) -> WhatIfQuestion:
        """The question whose answer is changed."""
        return WhatIfQuestion(self.question_box.currentData())

    def asked(self) -> WhatIf:
        """Return the other answer; raise ``InputFault`` where what was written is none."""
        from spoutline.planning.what_if.answers import value_named

        named = self.question_box.currentText()
        return WhatIf(self.question, value_named(self.question, self.written, named), self.labels, self.lasting)

    @property
    def lasting(self) -> bool:
        """Whether sets of today's answers are wanted that last for the other one too."""
        return self.question is WhatIfQuestion.BLEND and self.lasting_box.isChecked()

    @property
    def labels(self) -> tuple[str, ...]:
        """The positions that the answer is for; empty is the whole station."""
        return tuple(self.scope_box.currentData())

    @property
    def written(self) -> str:
        """The other answer as it is written, whatever it is called in words."""
        text = self.value_box.currentText()
        place = self.value_box.findText(text)
        return str(self.value_box.itemData(place)) if place >= 0 else text

    def write(self, text: str) -> None:
        """Take another answer as if a person had chosen or written it."""
        place = self.value_box.findData(text)
        if place >= 0:
            self.value_box.setCurrentIndex(place)
        else:
            self.value_box.setEditText(text)
        self.chosen.emit()

    def _turn(self) -> None:
        """Offer the answers of the question chosen."""
        question = self.question
        self.value_box.clear()
        is_new = not self.value_box.isEditable()  # a field that stays tells already
        self.value_box.setEditable(question in WRITTEN)
        edit = self.value_box.lineEdit()
        if edit is not None and is_new:
            edit.editingFinished.connect(self.chosen)
        for written, words in self._choices.of(question):
            self.value_box.addItem(words, written)
        self.value_box.setCurrentIndex(-1)
        if edit is not None:
            blend = question is WhatIfQuestion.BLEND
            hint = tr("choose, or write such as E15") if blend else tr("choose, or write such as 1 1/2 NPT male")
            edit.setPlaceholderText(hint)
        of_station = question in OF_THE_STATION
        if of_station:
            self.scope_box.setCurrentIndex(0)
        self.scope_box.setEnabled(not of_station)
        self.lasting_box.setVisible(question is WhatIfQuestion.BLEND)
        self.chosen.emit()
