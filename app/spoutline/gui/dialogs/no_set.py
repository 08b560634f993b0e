"""Why no set fits, in full: every obstacle with its numbers, every way out with its set; one can be accepted."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from spoutline.documents.paper_form import PaperForm
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.no_set_nodes import no_set_nodes, no_set_titles
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.roles import Role
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.wording import tr
from spoutline.model.no_set import ConflictReasons, NoSetReasons, Trial
from spoutline.model.plan import PositionPlan
from spoutline.model.survey import Survey
from spoutline.planning.no_set.listening import NoSetListening

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_ASK, _FILE = JobKey(JobKind.WHY, "no set"), JobKey(JobKind.FILE, "no set")


@frozen
class NoSetTools:
    """What looking for reasons works with; ``stem`` names the files of the paper."""

    workbench: Workbench
    jobs: Jobs
    story: Story
    stem: str


class NoSetDialog(FormDialog):
    """Shows reasons and ways out as they are found; once one is accepted, ``after`` is the survey with it."""

    help_topic = "surveys"

    def __init__(self, survey: Survey, plan: PositionPlan, tools: NoSetTools, parent: QWidget | None = None) -> None:
        super().__init__(tr("Why no set fits"), parent)
        self._survey, self._plan, self._tools = survey, plan, tools
        self.found: NoSetReasons | None = None  # all that there is, once the search is at its end
        self.conflicts: list[ConflictReasons] = []
        self.trials: list[Trial] = []
        self.after: Survey | None = None
        label = f"{plan.position.label}{tools.story.writing.colon} {tools.story.verdict(plan)}"
        self.body.addWidget(plain_label(label, "cardTitle", wraps=True))
        self.body.addWidget(plain_label(tools.story.phrases.text["no_set_note"], "quiet", wraps=True))
        self.progress_row = ProgressRow(tools.jobs, _ASK, tr("Looking for reasons and ways out"), self.stop, self)
        self.body.addLayout(self.progress_row)
        self.model = NodeTree(no_set_titles(), self)
        self.tree = Tree(tr("Reasons and ways out"), self, shares=(84, 16))
        self.tree.setModel(self.model)
        self.tree.picked.connect(lambda _: self._allow())
        self.body.addWidget(self.tree, 1)
        self.closing_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.closing_label)
        self.hands = PaperHands(
            tools.workbench,
            tools.jobs,
            self._wanted,
            key=_FILE,
            tell=self.closing_label.setText,
            parent=self,
            refuse=self.show_fault,
        )
        for place, button in enumerate(self.hands.buttons):
            self.foot.insertWidget(place, button)
        self.add_buttons(tr("&Accept this way out"))
        self.accept_button.setToolTip(tr("Makes one change of the survey, which can be undone."))
        self._allow()
        self.resize(980, 640)
        self.ask()

    def ask(self) -> None:
        """Look for everything that keeps the position from a set; the survey stays as it is."""
        self.found, self.conflicts, self.trials = None, [], []
        self.hands.allow(False)
        self.closing_label.clear()
        self._show_found()
        self.progress_row.show_running(True)
        service, survey, plan = self._tools.workbench.no_set(), self._survey, self._plan

        def work(ticket: Ticket) -> NoSetReasons:
            told = ticket.hand_over
            listening = NoSetListening(on_obstacle=told, on_conflict=told, on_trial=told)
            return service.ask(survey, plan, ticket, listening)

        self._tools.jobs.start(_ASK, work, self._show_all, self._fail, partly=self._show_part)

    def stop(self) -> None:
        """End the search; what was found until then stays."""
        self._tools.jobs.cancel(_ASK)
        self.progress_row.show_running(False)
        self.closing_label.setText(tr("Stopped; there may be more."))

    def accept(self) -> None:
        """Close with the survey that has the way out in hand; nothing where none can be taken."""
        trial = self._trial()
        if trial is not None and trial.after is not None:
            self.after = trial.after
            super().accept()

    def done(self, result: int) -> None:
        """Qt: close; the search ends."""
        self._tools.jobs.cancel(_ASK)
        super().done(result)

    def _wanted(self) -> WantedPaper | None:
        """Return all reasons and ways out as one paper."""
        found, service, survey, plan = self.found, self._tools.workbench.no_set(), self._survey, self._plan
        if found is None:
            return None
        story, dated = self._tools.story, date.today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.paper(survey, plan, found, story, dated=dated, form=form)

        return WantedPaper(make=make, stem=self._tools.stem, name=survey.site.name)

    def _trial(self) -> Trial | None:
        record = self.tree.current_record()
        return record if isinstance(record, Trial) else None

    def _allow(self) -> None:
        trial = self._trial()
        self.accept_button.setEnabled(trial is not None and trial.after is not None)

    def _show_part(self, found: object) -> None:
        if isinstance(found, ConflictReasons):
            self.conflicts.append(found)
        elif isinstance(found, Trial):
            self.trials.append(found)
        elif isinstance(found, tuple):  # an obstacle whose reasons are being worked out
            self.closing_label.setText(self._tools.story.obstacle(found))
            return
        self._show_found()

    def _show_all(self, found: NoSetReasons) -> None:
        self.found, self.conflicts, self.trials = found, list(found.conflicts), list(found.trials)
        self.hands.allow(True)
        self._show_found()
        self.progress_row.show_running(False)
        self.closing_label.setText(" ".join(self._tools.story.no_set_closing(found)))

    def _show_found(self) -> None:
        chosen = self._trial()
        self.model.show_nodes(no_set_nodes(self.conflicts, self.trials, self._plan.position, self._tools.story))
        self.tree.span_rows(self.model.spanning())
        self.tree.fit_columns()
        self._unfold()
        if chosen is not None:
            self.tree.pick(self.model.index_of(chosen))
        self._allow()

    def _unfold(self) -> None:
        """Show obstacles with what stands behind them, and ways out without their parts."""
        for row in range(self.model.rowCount()):
            group = self.model.index(row, 0)
            self.tree.expand(group)
            for below in range(self.model.rowCount(group)):
                one = self.model.index(below, 0, group)
                if self.model.data(one, Role.RECORD) is None:
                    self.tree.expandRecursively(one)

    def _fail(self, fault: Exception) -> None:
        self.progress_row.show_running(False)
        self.show_fault(str(fault))
