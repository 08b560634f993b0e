"""The last step: the outcome, the part in hand, checks, what is asked, findings, other sets, why not."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

from spoutline.gui.edits.question import Step
from spoutline.gui.edits.questions import questions_of
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.result.agreement_panel import AgreementPanel
from spoutline.gui.pages.result.measure_panel import MeasurePanel
from spoutline.gui.pages.result.other_sets_panel import OtherSetsPanel
from spoutline.gui.pages.result.outcome_card import OutcomeCard
from spoutline.gui.pages.result.part_panel import PartPanel
from spoutline.gui.pages.result.result_panel import checks_panel, findings_panel, requirement_panel
from spoutline.gui.pages.result.why_not_panel import WhyNotPanel
from spoutline.gui.pages.result.why_panel import WhyPanel
from spoutline.gui.pages.survey.question_form import QuestionForm
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import ScrolledPage, tab_pages
from spoutline.gui.widgets.in_parts import InParts
from spoutline.gui.widgets.roomy_scroll import PageTabs
from spoutline.gui.wording import tr
from spoutline.model.part_ref import PartRef

_SOON_MS = 150  # sooner a person sees a flicker and no state


class SetPage(InParts, QWidget):
    """Shows the set of the position in focus. Only the panel in view is filled; the others wait until they are seen."""

    def __init__(self, context: Context, parent: QWidget | None = None, *, whole: bool = True) -> None:
        super().__init__(parent)
        self._context = context
        self.begin(self._make(context), whole=whole)

    def _make(self, context: Context) -> Iterator[None]:
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        column.setSpacing(10)
        self.outcome = OutcomeCard(context, self)
        column.addWidget(self.outcome)
        yield
        self.tabs = PageTabs(self)
        self.tabs.setDocumentMode(False)
        self.tabs.setUsesScrollButtons(True)
        self.tabs.tabBar().setAccessibleName(tr("Panels of the set"))
        yield from self._fill_tabs(context)
        column.addWidget(self.tabs, 1)
        self.tabs.currentChanged.connect(lambda _: self._refresh_panel())
        self.part_panel.others.asked_why.connect(self.ask_why_not)
        self.outcome.plan_again_wanted.connect(self.plan_again)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_SOON_MS)
        self._soon.timeout.connect(self._refresh_if_seen)
        context.session.changed.connect(self._on_changed)
        context.sets.updated.connect(self._on_updated)
        context.plans.grown.connect(self._on_grown)

    def _fill_tabs(self, context: Context) -> Iterator[None]:
        pages = tab_pages(self.tabs)
        self.part_panel = PartPanel(context, pages)
        yield
        yield from self._fill_checked(context, pages)
        self.requirement = requirement_panel(context, pages)
        self.findings = findings_panel(context, pages)
        yield
        self.other_sets = OtherSetsPanel(context, pages)
        yield
        yield from self._fill_whys(context, pages)
        self.agreement = AgreementPanel(context, pages)
        yield
        self.wishes = ScrolledPage(pages, margin=10)
        self.wishes_form = QuestionForm(context, self.wishes)
        self.wishes.column.addWidget(self.wishes_form)
        self.wishes.column.addStretch(1)
        for panel, title in (
            (self.part_panel, tr("Part")),
            (self.checked, tr("Checks")),
            (self.requirement, tr("Asked for")),
            (self.findings, tr("Findings")),
            (self.other_sets, tr("Other sets")),
            (self.whys, tr("Why?")),
            (self.wishes, tr("Wishes")),
            (self.agreement, tr("Agreed")),
        ):
            self.tabs.addTab(panel, title)
            yield

    def _fill_checked(self, context: Context, pages: QWidget) -> Iterator[None]:
        self.checked = QTabWidget(pages)
        self.checked.tabBar().setAccessibleName(tr("Checks"))
        checked = tab_pages(self.checked)
        self.checks = checks_panel(context, checked)
        yield
        self.measure = MeasurePanel(context, checked)
        self.checked.addTab(self.checks, tr("Worked lines"))
        self.checked.addTab(self.measure, tr("How sure?"))
        self.checked.currentChanged.connect(lambda _: self._refresh_panel())
        yield

    def _fill_whys(self, context: Context, pages: QWidget) -> Iterator[None]:
        self.whys = QTabWidget(pages)
        self.whys.tabBar().setAccessibleName(tr("Reasons"))
        reasons = tab_pages(self.whys)
        self.why = WhyPanel(context, reasons)
        yield
        self.why_not = WhyNotPanel(context, reasons)
        self.whys.addTab(self.why, tr("These parts"))
        self.whys.addTab(self.why_not, tr("Another part"))
        self.whys.currentChanged.connect(lambda _: self._refresh_panel())
        yield

    def refresh(self) -> None:
        """Show the present plan."""
        self._soon.stop()
        self._pick_a_part()
        self.outcome.refresh()
        self._refresh_panel()

    def show_panel(self, panel: QWidget) -> None:
        """Bring one of the panels into view."""
        for group, panels in ((self.whys, (self.why, self.why_not)), (self.checked, (self.checks, self.measure))):
            if panel in panels:
                group.setCurrentWidget(panel)
                self.tabs.setCurrentWidget(group)
                return
        self.tabs.setCurrentWidget(panel)

    @property
    def panel_in_view(self) -> QWidget:
        """The panel that is to be seen, one of the reasons or of the checks where these are."""
        panel = self.tabs.currentWidget()
        return panel.currentWidget() if isinstance(panel, QTabWidget) else panel

    def ask_why_not(self, part: PartRef) -> None:
        """Bring what speaks against a part into view."""
        self.show_panel(self.why_not)
        self.why_not.ask_about(part)

    def plan_again(self) -> None:
        """Plan the position in focus for the answers of today and show the new set beside the agreed one."""
        self.show_panel(self.agreement)
        self.agreement.plan_again()

    def _pick_a_part(self) -> None:
        """Have a part of the set in hand: the nozzle, unless another one is."""
        plan, session = self._context.plan, self._context.session
        if plan is not None and plan.chosen is not None:
            parts = plan.chosen.hanging_set.refs
            if session.part not in parts:
                session.look_at_part(parts[-1])

    def _refresh_panel(self) -> None:
        panel = self.panel_in_view
        if panel is self.wishes:
            self.wishes_form.show_questions(questions_of(Step.SET, self._context.session.position))
        elif panel is self.why_not:
            self.why_not.start()
        elif panel is self.part_panel:
            self.part_panel.refresh()
        elif panel is self.other_sets:
            self.other_sets.refresh()
        else:
            for one in (self.checks, self.measure, self.requirement, self.findings, self.why, self.agreement):
                if panel is one:
                    one.refresh()

    def _on_changed(self, what: Changed) -> None:
        if not self.isVisible():
            return
        if what is Changed.PART:
            self.part_panel.refresh()
        elif what is Changed.SURVEY and self._is_being_made():
            self._refresh_answers()
        else:
            self.refresh()

    def _is_being_made(self) -> bool:
        """Whether a plan is on its way, which mostly comes before anybody could read that it is looked for."""
        return self._context.plan is None and not self._context.sets.trouble(self._context.session.label)

    def _refresh_answers(self) -> None:
        """Show at once what hangs on the answers alone, and what must not be taken of former ones; the rest soon."""
        self.part_panel.others.stop_looking()
        if self.panel_in_view in (self.wishes, self.other_sets):
            self._refresh_panel()
        self._soon.start()

    def _refresh_if_seen(self) -> None:
        if self.isVisible():
            self.refresh()

    def _on_updated(self, label: str) -> None:
        if label == self._context.session.label and self.isVisible():
            self.refresh()

    def _on_grown(self, label: str) -> None:
        """Show what has come beside the set where it is waited for; all else stays as it is being read."""
        if label != self._context.session.label or not self.isVisible():
            return
        if self.outcome.is_waiting:
            self.outcome.refresh()
        if self.panel_in_view is self.other_sets:
            self.other_sets.refresh()
