"""Plans of all positions of the survey in hand: made off the window's thread, kept while their answers stay."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.kept_plans import KeptPlans, PlanKey, weight_of
from spoutline.gui.models.marks import tone_of_position
from spoutline.gui.roles import Tone
from spoutline.gui.session import Changed, Session
from spoutline.gui.wording import told
from spoutline.model.plan import PositionPlan

_IN_FOCUS = JobKey(JobKind.PLAN, "in focus")
_BEHIND = JobKey(JobKind.PLAN, "behind")


class Plans(QObject):
    """Looks after the plan of the position in focus first, then of the others, one after the other.

    A plan depends on the site and its position alone, so that undo and a change elsewhere need no new one, and
    positions that ask the same share one.

    Signals
    -------
    updated(str)
        The plan of the position with this label is there, or is being made anew.
    """

    updated = Signal(str)

    def __init__(self, session: Session, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session, self._jobs = session, jobs
        self._kept = KeptPlans()
        self._latest: dict[str, PositionPlan] = {}
        self._catalogue = session.survey.catalogue
        session.changed.connect(self._on_changed)
        self._fetch()

    def plan(self, label: str) -> PositionPlan | None:
        """Return the plan of a position for the answers it has now; None while it is being made or cannot be."""
        kept = self._kept.result(self._key(label))
        return kept if isinstance(kept, PositionPlan) else None

    def plan_before(self, label: str) -> PositionPlan | None:
        """Return the last plan that was made for this label, to be shown while the new one is made."""
        return self._latest.get(label)

    def trouble(self, label: str) -> str:
        """Return why no plan can be made for this position, in plain words; empty where nothing is wrong."""
        kept = self._kept.result(self._key(label))
        return kept if isinstance(kept, str) else ""

    def tone(self, label: str) -> Tone:
        """Return the mark of a position."""
        position = self._session.survey.position(label)
        return Tone.BAD if self.trouble(label) else tone_of_position(position, self.plan(label))

    def forget(self) -> None:
        """Make all plans anew: the rules have changed."""
        self._kept.clear()
        self._fetch()
        for position in self._session.survey.positions:
            self.updated.emit(position.label)

    def plan_again(self, label: str) -> None:
        """Plan one position anew, whatever is kept of it."""
        self._kept.forget(self._key(label))
        self._fetch()
        self.updated.emit(label)

    def _key(self, label: str) -> PlanKey:
        position = self._session.survey.position(label)
        if position is None:
            raise KeyError(label)
        return self._session.survey.site, position

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.SURVEY and self._session.survey.catalogue != self._catalogue:
            self._catalogue = self._session.survey.catalogue
            self.forget()  # what is kept was planned with another catalogue
        elif what & (Changed.SURVEY | Changed.FOCUS):
            self._fetch()

    def _fetch(self) -> None:
        """Start the plan in focus and one of those behind it, where they are missing."""
        self._drop_oldest()
        label = self._session.label
        if self._is_answered(label):
            self._jobs.cancel(_IN_FOCUS)
        else:
            self._start(_IN_FOCUS, label, priority=10)
        self._fetch_behind()

    def _fetch_behind(self) -> None:
        focus = self._session.label
        waiting = (position.label for position in self._session.survey.positions if position.label != focus)
        missing = next((label for label in waiting if not self._is_answered(label)), None)
        if missing is None:
            self._jobs.cancel(_BEHIND)
        else:
            self._start(_BEHIND, missing, priority=0)

    def _is_answered(self, label: str) -> bool:
        """Return whether a position has its plan, if need be that of another which asks the same."""
        key = self._key(label)
        if self._kept.result(key) is None:
            plan = self._kept.shared(key)
            if plan is None:
                return False
            self._show(label, plan)
        return True

    def _show(self, label: str, result: PositionPlan | str) -> None:
        if isinstance(result, PositionPlan):
            self._latest[label] = result
        self.updated.emit(label)

    def _start(self, job: JobKey, label: str, priority: int) -> None:
        survey, key = self._session.survey, self._key(label)
        workbench = self._session.workbench

        def work(ticket: Ticket) -> tuple[PositionPlan, int]:
            plan = workbench.plan_position(survey, label, ticket)
            return plan, weight_of(plan)

        def deliver(made: tuple[PositionPlan, int]) -> None:
            self._kept.keep(key, *made)
            self._follow(job, key, made[0])

        def fail(fault: Exception) -> None:
            self._kept.keep(key, told(str(fault)))
            self._follow(job, key, told(str(fault)))

        self._jobs.start(job, work, deliver, fail, revision=self._session.revision, priority=priority)

    def _follow(self, job: JobKey, key: PlanKey, result: PositionPlan | str) -> None:
        self._show(key[1].label, result)
        if job == _BEHIND:
            self._fetch_behind()

    def _drop_oldest(self) -> None:
        site, positions = self._session.survey.site, self._session.survey.positions
        self._kept.shorten([(site, position) for position in positions])
        if len(self._latest) > 2 * len(positions):
            labels = {position.label for position in positions}
            self._latest = {label: plan for label, plan in self._latest.items() if label in labels}
