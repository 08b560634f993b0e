"""Why these parts: place by place, how the catalog comes down to the part in hand."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.result_nodes import reason_nodes, reason_titles
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import told, tr
from spoutline.model.funnel import SetReasons
from spoutline.model.plan import PositionPlan


class WhyPanel(QWidget):
    """Works the reasons out when it is seen; they are made anew when the set or the words change."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._shown: tuple[object, ...] | None = None
        self._plan: PositionPlan | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 10, 10, 10)
        self.lead = plain_label("", "quiet", wraps=True)
        column.addWidget(self.lead)
        self.model = NodeTree(reason_titles(), self)
        self.tree = Tree(tr("Why these parts"), self, shares=(80, 12))
        self.tree.setModel(self.model)
        column.addWidget(self.tree, 1)

    def refresh(self) -> None:
        """Ask for the reasons of the present plan, unless they are shown or on their way."""
        plan, session = self._context.plan, self._context.session
        wanted = (plan, session.display, self._context.story.phrases.language)
        if self._shown is not None and self._plan is plan and self._shown[1:] == wanted[1:]:
            return
        self._plan, self._shown = plan, wanted
        self.model.show_nodes(())
        if plan is None or plan.chosen is None:
            self.lead.setText(tr("There is no set to give reasons for."))
            return
        self.lead.setText(tr("Counting what the catalog has for each place\N{HORIZONTAL ELLIPSIS}"))
        workbench, survey, planned = session.workbench, session.survey, plan

        def work(ticket: Ticket) -> SetReasons:
            return workbench.set_reasons(survey, planned, ticket)

        self._context.jobs.start(JobKey(JobKind.WHY), work, self._show, self._fail, revision=session.revision)

    def _show(self, reasons: SetReasons) -> None:
        self.lead.setText(self._context.story.phrases.text["why_note"])
        self.model.show_nodes(reason_nodes(reasons, self._context.story))
        self.tree.span_rows(self.model.spanning())
        self.tree.fit_columns()
        self.tree.expandAll()

    def _fail(self, fault: Exception) -> None:
        self._shown = None
        self.lead.setText(told(str(fault)))
