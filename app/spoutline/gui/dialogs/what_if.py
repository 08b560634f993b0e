"""What if an answer were another: today and then side by side, before the survey is changed."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

from spoutline.documents.paper_form import PaperForm
from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.what_if_text import notes, price_then_word, scope_text, summary_text, title_text
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper, button_row
from spoutline.gui.dialogs.what_if_answer import WhatIfAnswer
from spoutline.gui.dialogs.what_if_several import SeveralAnswers
from spoutline.gui.dialogs.what_if_tools import WhatIfTools
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.what_if_nodes import what_if_nodes, what_if_titles
from spoutline.gui.widgets.cards import plain_label, tab_pages
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey
from spoutline.model.what_if import WhatIfResult
from spoutline.planning.what_if.answer import WhatIfListening

_ASK, _FILE = JobKey(JobKind.WHAT_IF), JobKey(JobKind.FILE, "what if")


class WhatIfDialog(FormDialog):
    """Shows what another answer does; once accepted, ``after`` is the survey with it and ``said`` names the change."""

    help_topic = "what_if"

    def __init__(self, survey: Survey, label: str, tools: WhatIfTools, parent: QWidget | None = None) -> None:
        super().__init__(tr("What if an answer were another?"), parent)
        self._survey, self._tools = survey, tools
        self._asked: tuple[object, ...] = ()
        self.found: WhatIfResult | None = None
        self.after: Survey | None = None
        self.said = ""
        lead = tr("Nothing of the survey is changed by looking. Accept makes one change of it, which can be undone.")
        self.body.addWidget(plain_label(lead, "quiet", wraps=True))
        self.tabs = QTabWidget(self)
        self.body.addWidget(self.tabs, 1)
        pages = tab_pages(self.tabs)
        self.tabs.addTab(self._one_answer(survey, label, pages), tr("&One answer"))
        self.several = SeveralAnswers(survey, label, tools, pages)
        self.several.told.connect(self.show_fault)
        self.tabs.addTab(self.several, tr("Se&veral answers"))
        self.tabs.currentChanged.connect(lambda _: self._turn())
        self.add_buttons(tr("&Accept this answer"))
        self.accept_button.setDefault(False)  # Return belongs to the field of the answer
        self.accept_button.setAutoDefault(False)
        self._show_nothing()
        self.resize(980, 640)
        self.answer.setFocus()

    def _one_answer(self, survey: Survey, label: str, parent: QWidget) -> QWidget:
        side, tools = QWidget(parent), self._tools
        column = QVBoxLayout(side)
        self.answer = WhatIfAnswer(tools.workbench, survey, label, tools.story, side)
        self.answer.chosen.connect(self._on_chosen)
        column.addWidget(self.answer)
        self.progress_row = ProgressRow(tools.jobs, _ASK, tr("Positions looked at"), self.stop, self)
        column.addLayout(self.progress_row)
        self.summary_label = plain_label("", "cardTitle", wraps=True)
        self.sums_label = plain_label("", wraps=True)
        self.notes_label = plain_label("", "quiet", wraps=True)
        for one in (self.summary_label, self.sums_label, self.notes_label):
            column.addWidget(one)
        self.model = NodeTree(what_if_titles(tools.story), self)
        self.tree = Tree(tr("Today and then side by side"), side, shares=(4, 3, 3, 9))
        self.tree.setModel(self.model)
        column.addWidget(self.tree, 1)
        self.hands = PaperHands(
            tools.workbench,
            tools.jobs,
            self._wanted,
            key=_FILE,
            tell=self.notes_label.setText,
            parent=side,
            refuse=self.show_fault,
        )
        column.addLayout(button_row(self.hands.buttons))
        return side

    # asking

    def _turn(self) -> None:
        """Let only an answer be accepted that is in view."""
        self.accept_button.setEnabled(self.found is not None and self.tabs.currentIndex() == 0)
        self.show_fault("")

    def _on_chosen(self) -> None:
        """Ask where the answer is another than the one asked for: leaving a field asks nothing anew."""
        if self._key != self._asked:
            self.ask()

    @property
    def _key(self) -> tuple[object, ...]:
        return self.answer.question, self.answer.written, self.answer.labels, self.answer.lasting

    def ask(self) -> None:
        """Work out what the answer chosen does; nothing where none is chosen yet."""
        self._asked = self._key
        self._tools.jobs.cancel(_ASK)
        self._show_nothing()
        self.show_fault(self.answer.trouble)
        if not self.answer.written:
            return
        try:
            asked = self.answer.asked()
        except InputFault as fault:
            self.show_fault(str(fault))
            return
        service, today = self._tools.workbench.what_if(), self._tools.today

        def work(ticket: Ticket) -> WhatIfResult:
            return service.ask(today(ticket), asked, WhatIfListening(ticket))

        self.progress_row.show_running(True)
        self._tools.jobs.start(_ASK, work, self._show, self._fail)

    def stop(self) -> None:
        """Ask the work to stop; the survey is as it was."""
        self._tools.jobs.cancel(_ASK)
        self._asked = ()
        self._show_nothing()
        self.summary_label.setText(tr("Stopped."))

    def _show(self, found: WhatIfResult) -> None:
        self.progress_row.show_running(False)
        self.found = found
        story, currency, totals = self._tools.story, found.currency, found.totals
        self.summary_label.setText(summary_text(found, story))
        told = (
            (story.word(Word.PRICE_TODAY), story.money(totals.before_minor, currency)),
            (price_then_word(found, story), story.money(totals.after_minor, currency)),
            (story.word(Word.DIFFERENCE), story.signed_money(totals.difference_minor, currency)),
        )
        self.sums_label.setText(" · ".join(f"{word}{story.writing.colon} {text}" for word, text in told))
        today = f"{story.word(Word.TODAY)}{story.writing.colon} {sets_head(found.before, story)}."
        self.notes_label.setText(" ".join((today, *notes(found, story), story.word(Word.NOTE))))
        self.model.retitle(what_if_titles(story, found))
        self.model.show_nodes(what_if_nodes(found, story))
        self.tree.span_rows(self.model.spanning())
        self.tree.fit_columns()
        self.tree.expand(self.model.index(0, 0))
        self.accept_button.setEnabled(True)
        self.hands.allow(True)

    def _show_nothing(self) -> None:
        self.found = None
        self.progress_row.show_running(False)
        for label in (self.summary_label, self.sums_label, self.notes_label):
            label.clear()
        self.model.show_nodes(())
        self.accept_button.setEnabled(False)
        self.hands.allow(False)

    def _fail(self, fault: Exception) -> None:
        self.progress_row.show_running(False)
        self.show_fault(str(fault))

    # what becomes of it

    def _wanted(self) -> WantedPaper | None:
        """Return today and then side by side."""
        found, story, service = self.found, self._tools.story, self._tools.workbench.what_if()
        if found is None:
            return None
        dated = date.today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.paper(found, story, dated, form)

        return WantedPaper(make=make, stem="what_if", name=self._survey.site.name)

    def accept(self) -> None:
        """Close with the survey that has the other answer."""
        if self.found is None:
            return
        self.after = self.found.changed
        scope = scope_text(self.found, self._tools.story)
        self.said = f"{title_text(self.found, self._tools.story)} ({scope})"
        super().accept()

    def done(self, result: int) -> None:
        """Qt: close; what is under way ends."""
        self._tools.jobs.cancel(_ASK)
        self.several.stop()
        super().done(result)
