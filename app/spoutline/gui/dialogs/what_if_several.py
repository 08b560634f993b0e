"""Several other answers to one question side by side: what each costs, and what must be changed when."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from spoutline.documents.paper_form import PaperForm
from spoutline.explain.plan.what_if_matrix_text import legend_text, matrix_title, part_legend
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper, button_row
from spoutline.gui.dialogs.what_if_choices import WRITTEN, AnswerChoices
from spoutline.gui.dialogs.what_if_tools import WhatIfTools
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.what_if_nodes import matrix_nodes, matrix_titles
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey
from spoutline.model.what_if import OF_THE_STATION, WhatIf, WhatIfQuestion
from spoutline.model.what_if_matrix import WhatIfMatrix

_ASK, _FILE = JobKey(JobKind.WHAT_IF, "several"), JobKey(JobKind.FILE, "what if, several")
_COLUMNS = 10  # name, today and eight answers: more than is ever shown takes no room


class SeveralAnswers(QWidget):
    """Compares answers that a person ticks; it only shows, and changes nothing.

    Signals
    -------
    told(str)
        Something is wrong with an answer, or nothing any more where the text is empty.
    """

    told = Signal(str)

    def __init__(self, survey: Survey, label: str, tools: WhatIfTools, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tools, self._site = tools, survey.site.name
        self._choices = AnswerChoices(tools.workbench, survey, tools.story)
        self.found: WhatIfMatrix | None = None
        column = QVBoxLayout(self)
        row = QHBoxLayout()
        self.question_box, self.scope_box = StillBox(self), StillBox(self)
        for words, box in ((tr("Question"), self.question_box), (tr("Positions"), self.scope_box)):
            row.addWidget(plain_label(words, "quiet"))
            row.addWidget(box, 1)
        self.question_box.setAccessibleName(tr("Question whose answers are compared"))
        self.scope_box.setAccessibleName(tr("Positions that the answers are for"))
        for question in WhatIfQuestion:
            self.question_box.addItem(tools.story.title(question), question)
        self.scope_box.addItem(tr("the whole station"), ())
        self.scope_box.addItem(tr("position {0}").format(label), (label,))
        column.addLayout(row)
        middle = QHBoxLayout()
        middle.addLayout(self._answers_side(), 1)
        middle.addLayout(self._result_side(), 5)
        column.addLayout(middle, 1)
        self.question_box.currentIndexChanged.connect(lambda _: self._turn())
        self.scope_box.activated.connect(lambda _: self._show_nothing())
        self._turn()

    def _answers_side(self) -> QVBoxLayout:
        column = QVBoxLayout()
        self.answer_list = QListWidget(self)
        self.answer_list.setAccessibleName(tr("Answers to compare"))
        self.answer_list.itemChanged.connect(lambda _: self._show_nothing())
        self.add_edit = QLineEdit(self)
        self.add_edit.setAccessibleName(tr("Another answer to compare"))
        self.add_edit.returnPressed.connect(self._add)
        self.compare_button = QPushButton(tr("&Compare"), self)
        self.compare_button.setAutoDefault(False)
        self.compare_button.clicked.connect(self.compare)
        column.addWidget(self.answer_list, 1)
        column.addWidget(self.add_edit)
        column.addWidget(self.compare_button)
        return column

    def _result_side(self) -> QVBoxLayout:
        column = QVBoxLayout()
        self.progress_row = ProgressRow(self._tools.jobs, _ASK, tr("Positions looked at"), self.stop, self)
        self.model = NodeTree(("",) * 2, self)
        self.tree = Tree(tr("Answers side by side"), self, shares=(6, *((2,) * (_COLUMNS - 1))))
        self.tree.setModel(self.model)
        self.legend_label = plain_label("", "quiet", wraps=True)
        self.hands = PaperHands(
            self._tools.workbench,
            self._tools.jobs,
            self._wanted,
            key=_FILE,
            tell=self.legend_label.setText,
            parent=self,
            refuse=self.told.emit,
        )
        column.addLayout(self.progress_row)
        column.addWidget(self.tree, 1)
        column.addWidget(self.legend_label)
        column.addLayout(button_row(self.hands.buttons))
        return column

    # what is asked

    @property
    def question(self) -> WhatIfQuestion:
        """The question whose answers are compared."""
        return WhatIfQuestion(self.question_box.currentData())

    def tick(self, *written: str) -> None:
        """Tick these answers and no others."""
        for row in range(self.answer_list.count()):
            item = self.answer_list.item(row)
            is_wanted = item.data(Qt.ItemDataRole.UserRole) in written
            item.setCheckState(Qt.CheckState.Checked if is_wanted else Qt.CheckState.Unchecked)

    def asked(self) -> tuple[WhatIf, ...]:
        """Return the answers that are ticked; raise ``InputFault`` where one is none."""
        from spoutline.planning.what_if.answers import value_named

        items = (self.answer_list.item(row) for row in range(self.answer_list.count()))
        written = [
            str(item.data(Qt.ItemDataRole.UserRole)) for item in items if item.checkState() is Qt.CheckState.Checked
        ]
        named, labels = self.question_box.currentText(), tuple(self.scope_box.currentData())
        return tuple(WhatIf(self.question, value_named(self.question, one, named), labels) for one in written)

    def _turn(self) -> None:
        """Offer the answers of the question chosen."""
        self.answer_list.clear()
        for written, words in self._choices.of(self.question):
            self._offer(written, words, ticked=False)
        self.add_edit.setVisible(self.question in WRITTEN)
        blend = self.question is WhatIfQuestion.BLEND
        self.add_edit.setPlaceholderText(tr("such as E30") if blend else tr("such as 1 1/2 NPT male"))
        of_station = self.question in OF_THE_STATION
        if of_station:
            self.scope_box.setCurrentIndex(0)
        self.scope_box.setEnabled(not of_station)
        self._show_nothing()
        self.told.emit(self._choices.trouble)

    def _offer(self, written: str, words: str, *, ticked: bool) -> None:
        item = QListWidgetItem(words)
        item.setData(Qt.ItemDataRole.UserRole, written)
        item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
        item.setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
        self.answer_list.addItem(item)

    def _add(self) -> None:
        """Offer an answer that a person wrote."""
        from spoutline.planning.what_if.answers import value_named

        text = self.add_edit.text().strip()
        text = text.upper() if self.question is WhatIfQuestion.BLEND else text
        try:
            value_named(self.question, text, self.question_box.currentText())
        except InputFault as fault:
            self.told.emit(str(fault))
            return
        self.told.emit("")
        self.add_edit.clear()
        self._offer(text, text, ticked=True)

    # the answer

    def compare(self) -> None:
        """Work out what each answer that is ticked does."""
        self._show_nothing()
        try:
            asked = self.asked()
        except InputFault as fault:
            self.told.emit(str(fault))
            return
        self.told.emit("")
        service, today = self._tools.workbench.what_if(), self._tools.today

        def work(ticket: Ticket) -> WhatIfMatrix:
            return service.ask_several(today(ticket), asked, ticket)

        self.progress_row.show_running(True)
        self._tools.jobs.start(_ASK, work, self._show, self._fail)

    def stop(self) -> None:
        """Ask the work to stop."""
        self._tools.jobs.cancel(_ASK)
        self._show_nothing()

    def _show(self, found: WhatIfMatrix) -> None:
        self.progress_row.show_running(False)
        self.found = found
        story = self._tools.story
        self.model.retitle(matrix_titles(found, story))
        self.model.show_nodes(matrix_nodes(found, story))
        self.tree.fit_columns()
        self.tree.expandAll()
        self.legend_label.setText(f"{legend_text(story)}\n{part_legend(story)}")
        self.tree.setAccessibleDescription(matrix_title(found, story))
        self.hands.allow(True)

    def _show_nothing(self) -> None:
        self._tools.jobs.cancel(_ASK)
        self.found = None
        self.progress_row.show_running(False)
        self.model.show_nodes(())
        self.legend_label.clear()
        self.hands.allow(False)

    def _fail(self, fault: Exception) -> None:
        self.progress_row.show_running(False)
        self.told.emit(str(fault))

    def _wanted(self) -> WantedPaper | None:
        found, story, service = self.found, self._tools.story, self._tools.workbench.what_if()
        if found is None:
            return None
        dated = date.today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.matrix_paper(found, story, dated, form)

        return WantedPaper(make=make, stem="what_if", name=self._site)
