"""Which sets the window shows, planned, agreed or built, and what the book holds of them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.marks import tone_of_plan
from spoutline.gui.models.plans import Plans
from spoutline.gui.models.whole_plan import WholePlan
from spoutline.gui.roles import Tone
from spoutline.gui.session import Changed, Session
from spoutline.gui.wording import told, tr
from spoutline.model.agreed_sets import AgreedSets, SetBasis, SetsSource
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.survey import Survey

if TYPE_CHECKING:
    from spoutline.bootstrap.agreements import SetsInHand
    from spoutline.planning.agreement.matching import AgreementLine
    from spoutline.planning.protocols import Progress

_READ = JobKey(JobKind.SETS, "in hand")


class ShownSets(QObject):
    """One choice for the pages and papers of the window: as agreed where the book has it, unless a person says else.

    The agreed sets of the survey in hand are judged off the window's thread whenever the survey or the book changes.

    Signals
    -------
    changed()
        Another source is shown, or the book holds something else: papers are to be made anew.
    updated(str)
        The set shown of the position with this label is there, or is being made anew.
    told(str)
        Something went wrong that a person should read.
    """

    changed = Signal()
    updated = Signal(str)
    told = Signal(str)

    def __init__(self, session: Session, plans: Plans, jobs: Jobs, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session, self._plans, self._jobs = session, plans, jobs
        self._choice: SetsSource | None = None
        self._in_hand: SetsInHand | None = None
        self._judged_for: Survey | None = None
        self._by_label: dict[SetsSource, dict[str, PositionPlan]] = {}
        self._marked: dict[str, tuple[PositionPlan, PositionPlan]] = {}  # of positions that are not agreed
        self._survey_id = session.stored.id
        self._whole = WholePlan()
        self._version = 0
        session.changed.connect(self._on_changed)
        plans.updated.connect(self._on_planned)
        self.refresh()

    # the choice

    @property
    def source(self) -> SetsSource:
        """Which sets are shown: what was chosen, else agreed where the book has it, else planned."""
        if self._choice is not None:
            return self._choice
        return SetsSource.AGREED if self.agreed is not None else SetsSource.PLAN

    @property
    def key(self) -> object:
        """What a paper was made for: another key, another paper."""
        return self._choice, self._version

    def choose(self, source: SetsSource) -> None:
        """Show other sets on every page and paper; agreed ones only where some are agreed."""
        if source is self.source or not self.may_be_shown(source):
            return
        self._choice = source
        if source is SetsSource.BUILT:
            self.refresh()
        self._announce()

    def follow_book(self) -> None:
        """Show what the book holds from now on, and read it: something was agreed, or taken back."""
        self._choice = None
        self.refresh()

    def plan_anew(self) -> None:
        """Plan, read and judge everything anew: rules or catalog have changed."""
        self._whole.forget()
        self._version += 1
        self.refresh()

    def may_be_shown(self, source: SetsSource) -> bool:
        """Return whether there are such sets."""
        return source is not SetsSource.AGREED or self.agreed is not None

    # what the book holds

    @property
    def line(self) -> AgreementLine | None:
        """The history of the survey's agreements; None where there is none, or it is not known yet."""
        return self._in_hand.line if self._in_hand is not None else None

    @property
    def agreed(self) -> AgreedSets | None:
        """What holds."""
        return self.line.agreed if self.line is not None else None

    @property
    def doubts(self) -> tuple[str, ...]:
        """What is told of agreements that may be the survey's, and are not used."""
        return self._in_hand.doubts if self._in_hand is not None else ()

    @property
    def is_ready(self) -> bool:
        """Whether what is known of the book is judged for the survey in hand."""
        return self._judged_for is self._session.survey

    def refresh(self) -> None:
        """Read what is agreed and built, and judge it for the survey in hand."""
        survey, survey_id = self._session.survey, self._session.stored.id
        service, with_built = self._session.workbench.agreeing(), self._choice is SetsSource.BUILT

        def work(ticket: Ticket) -> SetsInHand:
            return service.in_hand(survey, survey_id, ticket, with_built=with_built)

        def deliver(found: SetsInHand) -> None:
            self._take(found, survey)

        self._jobs.start(_READ, work, deliver, self._fail, priority=20)

    def whole_site(self, *, with_alternatives: bool = True) -> Callable[[Progress | None], SitePlan]:
        """Return work that makes the plan of the whole site with the sets shown; it may run on any thread.

        The last one made is kept, but for what hangs there: that follows every record. Without ``with_alternatives`` no
        other sets are looked for, which takes a third of the time.
        """
        session, choice, key = self._session, self._choice, self.key
        service, survey, survey_id = session.workbench.agreeing(), session.survey, session.stored.id
        whole = WholePlan() if choice is SetsSource.BUILT else self._whole

        def work(watching: Progress | None) -> SitePlan:
            def make() -> SitePlan:
                shown = service.sets_for(survey, choice, watching, survey_id, with_alternatives=with_alternatives)
                return shown.site_plan

            return whole.of(survey, (survey_id, key), make, with_alternatives=with_alternatives)

        return work

    # position by position

    def plan(self, label: str) -> PositionPlan | None:
        """Return what is shown of a position; None while it is being made or cannot be."""
        if self.source is SetsSource.PLAN:
            return self._plans.plan(label)
        if self.source is SetsSource.AGREED:
            return self.agreed_plan(label)
        return self._by_label.get(SetsSource.BUILT, {}).get(label) if self.is_ready else None

    def plan_before(self, label: str) -> PositionPlan | None:
        """Return what was shown of a position before the survey changed."""
        if self.source is SetsSource.PLAN:
            return self._plans.plan_before(label)
        return self._by_label.get(self.source, {}).get(label) or self._plans.plan_before(label)

    def agreed_plan(self, label: str) -> PositionPlan | None:
        """Return the agreed set of a position as judged today; None where nothing is agreed, or while it is judged.

        A position that the agreement does not know shows its plan, marked so.
        """
        if self.agreed is None or not self.is_ready:
            return None
        judged = self._by_label.get(SetsSource.AGREED, {}).get(label)
        return judged if judged is not None else self._not_agreed(label)

    def trouble(self, label: str) -> str:
        """Return why a position has nothing to show, in plain words; empty where nothing is wrong."""
        return self._plans.trouble(label) if self.plan(label) is None else ""

    def tone(self, label: str) -> Tone:
        """Return the mark of a position."""
        if self.source is SetsSource.PLAN:
            return self._plans.tone(label)
        return Tone.BAD if self.trouble(label) else tone_of_plan(self.plan(label))

    def tones(self) -> dict[str, Tone]:
        """Return the mark of every position, for what shows them all."""
        if self.source is SetsSource.PLAN:
            return self._plans.tones()
        return {label: self.tone(label) for label in self._labels}

    def head(self, story: Story) -> str:
        """Return in words which sets are shown."""
        shown = self._shown
        if self.source is SetsSource.PLAN:
            return story.phrases.text["sets_planned"]
        if shown is None:
            return tr("Reading what hangs there…")
        known = {one.position.label for one in shown.positions}
        return sets_head(shown, story, [one for one in self._labels if one not in known])

    # inside

    @property
    def _labels(self) -> list[str]:
        return [one.label for one in self._session.survey.positions]

    def _not_agreed(self, label: str) -> PositionPlan | None:
        """Return the plan of a position that the agreement does not know; the same object for the same plan."""
        plan = self._plans.plan(label)
        if plan is None:
            return None
        before = self._marked.get(label)
        if before is None or before[0] is not plan:
            self._marked[label] = (plan, replace(plan, basis=SetBasis.NOT_AGREED))
        return self._marked[label][1]

    @property
    def _shown(self) -> SitePlan | None:
        if self._in_hand is None:
            return None
        return self._in_hand.built if self.source is SetsSource.BUILT else self._in_hand.agreed

    def _take(self, found: SetsInHand, survey: Survey) -> None:
        line_before, doubts_before, shown_before = self.line, self.doubts, self._by_label
        self._in_hand, self._judged_for, self._marked = found, survey, {}
        both = ((SetsSource.AGREED, found.agreed), (SetsSource.BUILT, found.built))
        self._by_label = {
            source: _by_label(site_plan, shown_before.get(source, {}))
            for source, site_plan in both
            if site_plan is not None
        }
        if self._choice is SetsSource.AGREED and self.agreed is None:
            self._choice = None
        if found.doubts != doubts_before:
            for doubt in found.doubts:
                self.told.emit(doubt)
        if found.line != line_before or found.built is not None:
            self._announce()
        elif self.source is not SetsSource.PLAN or found.agreed is not None:
            self._tell_positions()

    def _announce(self) -> None:
        self._version += 1
        self.changed.emit()
        self._tell_positions()

    def _tell_positions(self) -> None:
        for label in self._labels:
            self.updated.emit(label)

    def _fail(self, fault: Exception) -> None:
        self._judged_for = self._session.survey
        self.told.emit(told(str(fault)))

    def _on_planned(self, label: str) -> None:
        if self.source is SetsSource.PLAN or label not in self._by_label.get(self.source, {}):
            self.updated.emit(label)

    def _on_changed(self, what: Changed) -> None:
        if not what & Changed.SURVEY:
            return
        if self._session.stored.id != self._survey_id:
            self._survey_id = self._session.stored.id
            self._choice, self._in_hand, self._judged_for, self._by_label = None, None, None, {}
            self._version += 1
            self.changed.emit()  # of its positions everybody who shows one hears by the session
        self.refresh()


def _by_label(site_plan: SitePlan, before: Mapping[str, PositionPlan]) -> dict[str, PositionPlan]:
    """Return plans by label: what says the same as before stays the very same value, so that nobody shows it anew."""
    found = {one.position.label: one for one in site_plan.positions}
    return {
        label: old if (old := before.get(label)) == one and old is not None else one for label, one in found.items()
    }
