"""Why these parts: place by place, how the catalog comes down to the part in hand; or, in short, why none fits."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.no_set_nodes import short_nodes
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.result_nodes import reason_nodes, reason_titles
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import told, tr
from spoutline.model.funnel import SetReasons
from spoutline.model.no_set import NoSetReasons
from spoutline.model.plan import PositionPlan

_FILE = JobKey(JobKind.FILE, "why")


class WhyPanel(QWidget):
    """Works the reasons out when it is seen; they are made anew when the set or the words change.

    Signals
    -------
    all_wanted()
        A person wants to see all reasons against a set and every way out.
    """

    all_wanted = Signal()

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._shown: tuple[object, ...] | None = None
        self._plan: PositionPlan | None = None
        self._reasons: SetReasons | NoSetReasons | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 10, 10, 10)
        self.lead = plain_label("", "quiet", wraps=True)
        column.addWidget(self.lead)
        self.model = NodeTree(reason_titles(), self)
        self.tree = Tree(tr("Why these parts"), self, shares=(80, 12))
        self.tree.setModel(self.model)
        column.addWidget(self.tree, 1)
        column.addLayout(self._foot())

    def _foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.all_button = QPushButton(tr("All reasons and ways out…"), self)
        self.all_button.clicked.connect(lambda _=False: self.all_wanted.emit())
        self.all_button.hide()
        workbench, jobs = self._context.session.workbench, self._context.jobs
        self.hands = PaperHands(workbench, jobs, self._wanted, key=_FILE, tell=self.lead.setText, parent=self)
        self.hands.allow(False)
        row.addWidget(self.all_button)
        row.addStretch(1)
        row.addWidget(self.hands.menu_button(tr("Paper (P&DF)"), tr("The reasons at this position, as a paper")))
        return row

    def refresh(self) -> None:
        """Ask for the reasons of the present plan, unless they are shown or on their way."""
        plan, session = self._context.plan, self._context.session
        wanted = (plan, session.display, self._context.story.phrases.language)
        if self._shown is not None and self._plan is plan and self._shown[1:] == wanted[1:]:
            return
        self._plan, self._shown, self._reasons = plan, wanted, None
        self.model.show_nodes(())
        self.hands.allow(False)
        self.all_button.setVisible(plan is not None and plan.is_without_set)
        if plan is None or (plan.chosen is None and not plan.is_without_set):
            self._context.jobs.cancel(JobKey(JobKind.WHY))
            self.lead.setText(tr("There is no set to give reasons for."))
            return
        workbench, survey, planned = session.workbench, session.survey, plan
        is_without = plan.chosen is None
        counting = tr("Counting what the catalog has for each place\N{HORIZONTAL ELLIPSIS}")
        self.lead.setText(tr("Looking for reasons and ways out") if is_without else counting)

        def work(ticket: Ticket) -> SetReasons | NoSetReasons:
            if is_without:
                return workbench.no_set().ask(survey, planned, ticket)
            return workbench.set_reasons(survey, planned, ticket)

        self._context.jobs.start(JobKey(JobKind.WHY), work, self._show, self._fail)

    def _show(self, reasons: SetReasons | NoSetReasons) -> None:
        self._reasons = reasons
        story = self._context.story
        self.hands.allow(True)
        if isinstance(reasons, NoSetReasons):
            self.lead.setText(story.phrases.text["no_set_cannot"])
            self.model.show_nodes(short_nodes(reasons, story))
        else:
            self.lead.setText(story.phrases.text["why_note"])
            self.model.show_nodes(reason_nodes(reasons, story))
        self.tree.span_rows(self.model.spanning())
        self.tree.fit_columns()
        self.tree.expandAll()

    def _wanted(self) -> WantedPaper | None:
        reasons, plan, session = self._reasons, self._plan, self._context.session
        if reasons is None or plan is None:
            return None
        service, survey, story, dated = session.workbench.no_set(), session.survey, self._context.story, date.today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.paper(survey, plan, reasons, story, dated=dated, form=form)

        stem = f"{file_stem(survey.site.name)}-{file_stem(plan.position.label)}-why"
        return WantedPaper(make=make, stem=stem, name=survey.site.name)

    def _fail(self, fault: Exception) -> None:
        self._shown = None
        self.lead.setText(told(str(fault)))
