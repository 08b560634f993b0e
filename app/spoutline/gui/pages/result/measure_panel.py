"""How sure the checks are: what nobody measured, what it could change, and the list for a visit to the station."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.doubt_nodes import doubt_nodes, doubt_titles
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.doubt import StationDoubts
from spoutline.model.plan import SitePlan

_FILE = JobKey(JobKind.FILE, "site visit")


class MeasurePanel(QWidget):
    """Looks at the sets when it is seen; what is shown is made anew when sets, words or units change."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._shown: tuple[object, ...] | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 10, 10, 10)
        self.lead = plain_label("", "quiet", wraps=True)
        row = QHBoxLayout()
        self.scope_box = StillBox(self)
        self.scope_box.setAccessibleName(tr("Whose figures are shown"))
        self.scope_box.addItems([tr("This position"), tr("Whole station")])
        self.scope_box.currentIndexChanged.connect(lambda _: self.refresh())
        row.addWidget(self.scope_box)
        row.addStretch(1)
        self.hands = PaperHands(
            context.session.workbench, context.jobs, self._wanted, key=_FILE, tell=self._tell, parent=self
        )
        self.paper_button = self.hands.menu_button(tr("&List for a visit"))
        row.addWidget(self.paper_button)
        column.addLayout(row)
        column.addWidget(self.lead)
        self.model = NodeTree(doubt_titles(context.story), self)
        self.tree = Tree(tr("What to measure on site"), self, shares=(46, 54))
        self.tree.setModel(self.model)
        column.addWidget(self.tree, 1)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.state_label.hide()
        column.addWidget(self.state_label)

    @property
    def shows_station(self) -> bool:
        """Whether the figures of the whole station are shown."""
        return self.scope_box.currentIndex() == 1

    def refresh(self) -> None:
        """Look at the present set, or at all of the station, unless that is shown or on its way."""
        plan, session = self._context.plan, self._context.session
        wanted = (
            *(session.survey, self._context.sets.key, self.shows_station, None if self.shows_station else plan),
            *(session.display, self._context.story.phrases.language),
        )
        if self._shown is not None and all(
            one is two or one == two for one, two in zip(wanted, self._shown, strict=True)
        ):
            return
        self._shown = wanted
        self.model.show_nodes(())
        self.lead.show()
        if not self.shows_station and (plan is None or plan.chosen is None):
            self.lead.setText(tr("There is no set whose checks could be looked at."))
            return
        self.lead.setText(tr("Moving each figure that nobody measured through its range\N{HORIZONTAL ELLIPSIS}"))
        key = JobKey(JobKind.MEASURE)
        self._context.jobs.start(key, self._work(), self._show, self._fail)

    def _work(self) -> Callable[[Ticket], StationDoubts]:
        session, plan = self._context.session, self._context.plan
        whole = self._context.sets.whole_site(with_alternatives=False)
        service, survey, of_station = session.workbench.site_visits(), session.survey, self.shows_station

        def work(ticket: Ticket) -> StationDoubts:
            plans = whole(ticket).positions if of_station else () if plan is None else (plan,)
            return service.doubts(survey, plans, ticket)

        return work

    def _show(self, doubts: StationDoubts) -> None:
        story = self._context.story
        text = story.phrases.text
        self.paper_button.setToolTip(text["measure_caution"])
        nodes = doubt_nodes(doubts, story, with_margins=not self.shows_station)
        self.lead.setText("" if doubts.lines else text["measure_nothing"])
        self.lead.setVisible(not doubts.lines)
        self.model.retitle(doubt_titles(story))
        self.model.show_nodes(nodes)
        self.tree.span_rows(self.model.spanning())
        self.tree.fit_columns()
        self.tree.expandAll()

    def _fail(self, fault: Exception) -> None:
        self._shown = None
        self.lead.setText(told(str(fault)))

    def _wanted(self) -> WantedPaper:
        """Return the list for the whole station."""
        session, whole = self._context.session, self._context.sets.whole_site(with_alternatives=False)
        service, survey, display = session.workbench.site_visits(), session.survey, session.display

        def make(ticket: Ticket, form: PaperForm) -> bytes:
            site_plan: SitePlan = whole(ticket)
            doubts = service.doubts(survey, site_plan.positions, ticket)
            return service.pdf(site_plan, doubts, display, form=form)

        stem = f"{file_stem(survey.site.name)}-{file_stem(tr('site visit'))}"
        return WantedPaper(make=make, stem=stem, name=survey.site.name)

    def _tell(self, text: str) -> None:
        self.state_label.setText(text)
        self.state_label.show()
