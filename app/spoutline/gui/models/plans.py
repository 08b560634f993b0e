"""Plans of all positions of the survey in hand: made off the window's thread, kept while their answers stay."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.kept_plans import ALONE, SET_BYTES, KeptPlans, PlanKey, Together, weight_of
from spoutline.gui.models.marks import tone_of_position
from spoutline.gui.roles import Tone
from spoutline.gui.session import Changed, Session
from spoutline.gui.wording import told
from spoutline.model.plan import PositionPlan
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Position, Survey

_IN_FOCUS = JobKey(JobKind.PLAN, "in focus")
_BEHIND = JobKey(JobKind.PLAN, "behind")


class Plans(QObject):
    """Looks after the set of the position in focus first, then its other sets, and the sets of the positions behind it.

    A plan depends on the site and its position alone, so that undo and a change elsewhere need no new one, and
    positions that ask the same share one. Positions behind that in focus get counts, but other sets only in focus.
    With a stock price each set depends on those of the whole station, which is planned at once.

    Signals
    -------
    updated(str)
        The set of the position with this label is there, or is being made anew.
    grown(str)
        More is known of a plan whose set is there: why none fits, counts, other sets. Its set stays what it is.
    """

    updated = Signal(str)
    grown = Signal(str)

    def __init__(self, session: Session, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session, self._jobs = session, jobs
        self._kept = KeptPlans()
        self._latest: dict[str, PositionPlan] = {}
        self._catalogue = session.survey.catalogue
        self._keys: dict[str, PlanKey] = {}  # by the labels of the survey that was keyed last
        self._keyed: Survey | None = None
        self._tones: dict[str, tuple[Position | None, StagedPlan | str | None, Tone]] = {}  # and what they were told of
        self._together: Survey | None = None  # of which all positions are being planned at once
        session.changed.connect(self._on_changed)
        self._fetch()

    def staged(self, label: str) -> StagedPlan | None:
        """Return what is known of the plan of a position for the answers it has now; None where nothing is."""
        kept = self._kept.result(self._key(label))
        return kept if isinstance(kept, StagedPlan) else None

    def plan(self, label: str) -> PositionPlan | None:
        """Return the plan of a position for the answers it has now; None while it is being made or cannot be.

        It is without counts and other sets, which ``staged`` has when they come.
        """
        staged = self.staged(label)
        return staged.plan if staged is not None else None

    def plan_before(self, label: str) -> PositionPlan | None:
        """Return the last plan that was made for this label, to be shown while the new one is made."""
        return self._latest.get(label)

    def trouble(self, label: str) -> str:
        """Return why no plan can be made for this position, in plain words; empty where nothing is wrong."""
        kept = self._kept.result(self._key(label))
        return kept if isinstance(kept, str) else ""

    def tone(self, label: str) -> Tone:
        """Return the mark of a position."""
        position, known = self._session.survey.position(label), self._kept.result(self._key(label))
        before = self._tones.get(label)
        if before is None or before[0] is not position or before[1] is not known:
            plan = known.plan if isinstance(known, StagedPlan) else None
            tone = Tone.BAD if isinstance(known, str) else tone_of_position(position, plan)
            before = self._tones[label] = (position, known, tone)
        return before[2]

    def tones(self) -> dict[str, Tone]:
        """Return the mark of every position; of a thousand only those are worked out of which something is new."""
        survey, result, before = self._session.survey, self._kept.result, self._tones
        if survey is not self._keyed:
            self._key_anew(survey)
        found: dict[str, Tone] = {}
        for position in survey.positions:
            label, known = position.label, before.get(position.label)
            is_known = known is not None and known[0] is position and known[1] is result(self._keys[label])
            found[label] = known[2] if known is not None and is_known else self.tone(label)
        return found

    def forget(self) -> None:
        """Make all plans anew: the rules have changed."""
        self._kept.clear()
        self._jobs.cancel(_IN_FOCUS)  # what it makes is of former rules
        self._fetch()
        for position in self._session.survey.positions:
            self.updated.emit(position.label)

    def plan_again(self, label: str) -> None:
        """Plan one position anew, whatever is kept of it."""
        self._kept.forget(self._key(label))
        self._fetch()
        self.updated.emit(label)

    def _key(self, label: str) -> PlanKey:
        survey = self._session.survey
        if survey is not self._keyed:
            self._key_anew(survey)
        return self._keys[label]

    def _key_anew(self, survey: Survey) -> None:
        """Make the keys of a survey; one whose position and site are those of before stays."""
        before, same_site = self._keys, self._keyed is not None and self._keyed.site == survey.site
        together = Together(survey.positions) if survey.site.stock_price else ALONE
        self._keys = {}
        for position in survey.positions:
            known = before.get(position.label) if same_site and together is ALONE else None
            is_kept = known is not None and known.position is position and known.together is ALONE
            self._keys[position.label] = (
                known if known is not None and is_kept else PlanKey(survey.site, position, together)
            )
        self._keyed = survey

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.SURVEY and self._session.survey.catalogue != self._catalogue:
            self._catalogue = self._session.survey.catalogue
            self.forget()  # what is kept was planned with another catalogue
        elif what & (Changed.SURVEY | Changed.FOCUS):
            self._fetch()

    def _fetch(self) -> None:
        """Start the plan in focus and, where its set is there, one of those behind it, where they are missing."""
        self._drop_oldest()
        if self._session.survey.site.stock_price:
            self._fetch_together()
            return
        label = self._session.label
        self._look_at_others(label)
        kept = self._kept.result(self._key(label))
        if isinstance(kept, str) or (kept is not None and kept.is_whole):
            self._jobs.cancel(_IN_FOCUS)
        else:
            self._start_in_focus(label)
        if kept is not None:
            self._fetch_behind()
        else:
            self._jobs.cancel(_BEHIND)  # until the set in focus is there nobody works beside it

    def _fetch_behind(self) -> None:
        if self._session.survey.site.stock_price:
            return
        focus = self._session.label
        waiting = (position.label for position in self._session.survey.positions if position.label != focus)
        missing = next((label for label in waiting if not self._is_answered(label)), None)
        if missing is None:
            self._jobs.cancel(_BEHIND)
        else:
            self._start_behind(missing)

    def _is_answered(self, label: str) -> bool:
        """Return whether a position has its set, if need be that of another which asks the same."""
        return self._kept.result(self._key(label)) is not None or self._look_at_others(label)

    def _look_at_others(self, label: str) -> bool:
        """Take what another position that asks the same knows and this one does not; say whether anything is known."""
        key = self._key(label)
        kept = self._kept.result(key)
        if isinstance(kept, str) or (kept is not None and kept.is_whole):
            return True
        shared = self._kept.shared(key)
        if shared is not None:
            self._show(label, kept, shared)
        return shared is not None or kept is not None

    def _start_in_focus(self, label: str) -> None:
        survey, key = self._session.survey, self._key(label)
        workbench = self._session.workbench

        def work(ticket: Ticket) -> tuple[StagedPlan, int]:
            stages = workbench.plan_stages(survey, label, ticket)
            staged = next(stages)
            if not staged.is_whole:
                ticket.hand_over(staged)
                ticket.rest()
            for staged in stages:
                if not staged.is_whole:
                    ticket.hand_over(staged)
            return staged, weight_of(staged)

        def deliver(made: tuple[StagedPlan, int]) -> None:
            self._keep(key, *made)

        self._jobs.start(
            _IN_FOCUS,
            work,
            deliver,
            lambda fault: self._fail(key, fault),
            partly=lambda staged: self._keep(key, staged),
            priority=10,
        )

    def _fetch_together(self) -> None:
        """Start the plan of the whole station where a set is missing, unless it is being made."""
        survey = self._session.survey
        self._jobs.cancel(_BEHIND)
        if all(self._is_answered(position.label) for position in survey.positions):
            self._jobs.cancel(_IN_FOCUS)
        elif self._together is not survey or not self._jobs.is_at_work(_IN_FOCUS):
            self._start_together(survey)

    def _start_together(self, survey: Survey) -> None:
        self._together, workbench = survey, self._session.workbench
        keys = [self._key(position.label) for position in survey.positions]

        def work(ticket: Ticket) -> list[StagedPlan]:
            return [StagedPlan.of(plan) for plan in workbench.plan_site(survey, ticket).positions]

        def deliver(found: list[StagedPlan]) -> None:
            for key, staged in zip(keys, found, strict=True):
                self._keep(key, staged)

        def fail(fault: Exception) -> None:
            for key in keys:
                self._fail(key, fault)

        self._jobs.start(_IN_FOCUS, work, deliver, fail, priority=10)

    def _start_behind(self, label: str) -> None:
        survey, key = self._session.survey, self._key(label)
        workbench = self._session.workbench

        def work(ticket: Ticket) -> StagedPlan:
            stages = workbench.plan_stages(survey, label, ticket)
            return next(one for one in stages if one.is_explained and one.counts is not None)

        def deliver(staged: StagedPlan) -> None:
            self._keep(key, staged)
            self._fetch_behind()

        def fail(fault: Exception) -> None:
            self._fail(key, fault)
            self._fetch_behind()

        self._jobs.start(_BEHIND, work, deliver, fail)

    def _keep(self, key: PlanKey, staged: StagedPlan, weight: int = SET_BYTES) -> None:
        """Keep what came of a position; the first that comes of the one in focus lets the others have their turn."""
        known = self._kept.result(key)
        now = self._kept.keep(key, staged, weight)
        self._show(key.position.label, known, now)
        if known is None and key.position.label == self._session.label:
            self._fetch_behind()

    def _fail(self, key: PlanKey, fault: Exception) -> None:
        self._kept.keep_trouble(key, told(str(fault)))
        self.updated.emit(key.position.label)
        if key.position.label == self._session.label:
            self._fetch_behind()

    def _show(self, label: str, before: StagedPlan | str | None, now: StagedPlan) -> None:
        """Tell who shows a position of its set where that is new, else of what has come beside it."""
        self._latest[label] = now.plan
        if not isinstance(before, StagedPlan):
            self.updated.emit(label)
        elif before != now:
            self.grown.emit(label)

    def _drop_oldest(self) -> None:
        positions = self._session.survey.positions
        self._kept.shorten([self._key(position.label) for position in positions])
        if len(self._latest) > 2 * len(positions):
            labels = {position.label for position in positions}
            self._tones = {label: told for label, told in self._tones.items() if label in labels}
            self._latest = {label: plan for label, plan in self._latest.items() if label in labels}
