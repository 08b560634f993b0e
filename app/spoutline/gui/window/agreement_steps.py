"""Agreeing on sets, taking the last agreement back, reading the history: a person's steps, each a job."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QDialog, QWidget

from spoutline.explain.plan.agreed_words import entry_source
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.wording import told, tr
from spoutline.model.agreed_sets import AgreedSets, SetsSource
from spoutline.model.answered import is_surveyed
from spoutline.model.faults import InputFault
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import PositionPlan, SitePlan

if TYPE_CHECKING:
    from spoutline.gui.dialogs.agreement import OfferedSet
    from spoutline.gui.dialogs.agreements import AgreementsDialog
    from spoutline.model.conversion import SiteConversion
    from spoutline.planning.agreement.comparison import ComparedPosition

_STEP = JobKey(JobKind.SETS, "step")
_OFFER = JobKey(JobKind.SETS, "offer")
_SIDES = JobKey(JobKind.SETS, "side by side")

Agree = Callable[[str, str, Sequence[str]], AgreedSets]


class AgreementSteps(QObject):
    """Takes the steps for the survey in hand; what the book holds afterwards is read by ``ShownSets``."""

    def __init__(self, context: Context, notify: Notify, window: QWidget) -> None:
        super().__init__(window)
        self._context, self._notify, self._window = context, notify, window
        self._name = ""
        self.dialog: QDialog | None = None

    def agree_planned(self, labels: Sequence[str] = ()) -> None:
        """Plan the site for the answers of today and ask on which of its sets to agree: all, or ``labels``."""
        session = self._context.session
        service, survey, survey_id = session.workbench.agreeing(), session.survey, session.stored.id

        def work(ticket: Ticket) -> SitePlan:
            return service.sets_for(survey, SetsSource.PLAN, ticket, survey_id).site_plan

        def offer(site_plan: SitePlan) -> None:
            if survey is not session.survey:
                return
            agree = partial(service.agree_on, site_plan, survey_id=survey_id)
            lead = tr("The sets as planned for the answers of today. Papers show what is agreed from then on.")
            self._ask(lead, site_plan.positions, labels, lambda by, why, only: agree(by=by, reason=why, only=only))

        self._context.jobs.start(_OFFER, work, offer, self._fail, priority=20)

    def agree_conversion(self, conversion: SiteConversion, way: str) -> None:
        """Ask on which sets of the way shown to agree; ``way`` is its name."""
        session = self._context.session
        service, survey_id = session.workbench.agreeing(), session.stored.id
        plans = service.converted_plan(conversion).positions
        lead = tr("The sets of the conversion, {0}. Papers show what is agreed from then on.").format(way)
        agree = partial(service.agree_on, conversion, survey_id=survey_id)
        self._ask(lead, plans, (), lambda by, why, only: agree(by=by, reason=why, only=only))

    def agree_picked(self, picked: SitePlan, said: str) -> None:
        """Ask who agrees on sets that a person picked, and on which of them; ``said`` tells where they come from."""
        session = self._context.session
        agree = partial(session.workbench.agreeing().agree_picked, picked, survey_id=session.stored.id)
        lead = tr("The sets picked: {0}. Papers show what is agreed from then on.").format(said)
        labels = [one.position.label for one in picked.positions]
        self._ask(lead, picked.positions, labels, lambda by, why, only: agree(by=by, reason=why, only=only))

    def withdraw(self) -> None:
        """Ask who takes the last agreement back, and why."""
        session, sets = self._context.session, self._context.sets
        agreed = sets.agreed
        if agreed is None:
            self._notify(tr("Nothing is agreed that could be undone."))
            return
        lead = tr("Agreement {0}, by {1}: {2}. What was agreed before it holds again; the history keeps both.")
        words = lead.format(agreed.serial, agreed.origin.by, entry_source(agreed, self._context.story))
        from spoutline.gui.dialogs.named_step import NamedStepDialog

        dialog = NamedStepDialog(tr("Undo the last agreement"), words, self._name, tr("&Undo it"), self._window)
        if not self._is_accepted(dialog):
            return
        self._name = dialog.name
        service, survey, survey_id = session.workbench.agreeing(), session.survey, session.stored.id
        by, reason = dialog.name, dialog.reason
        self._context.jobs.start(
            _STEP,
            lambda _: service.withdraw(survey, by, reason, survey_id),
            lambda _: self._done(tr("The last agreement is taken back.")),
            self._fail,
        )

    def show_history(self) -> None:
        """Show every agreement and withdrawal, and planned, agreed and built side by side."""
        from spoutline.gui.dialogs.agreements import AgreementsDialog

        session, sets = self._context.session, self._context.sets
        line = sets.line
        dialog = AgreementsDialog(
            line.entries if line is not None else (),
            [one.label for one in session.survey.positions],
            self._context.story,
            can_withdraw=sets.agreed is not None,
            parent=self._window,
        )
        self._fill_sides(dialog)
        self._is_accepted(dialog)
        self._context.jobs.cancel(_SIDES)
        if dialog.withdraw_wanted:
            self.withdraw()

    def _fill_sides(self, dialog: AgreementsDialog) -> None:
        session, has_agreed = self._context.session, self._context.sets.agreed is not None
        service, survey, survey_id = session.workbench.agreeing(), session.survey, session.stored.id
        titles = {
            SetsSource.PLAN: tr("Planned now"),
            SetsSource.AGREED: tr("Agreed"),
            SetsSource.BUILT: tr("Built"),
        }
        shown = [source for source in titles if has_agreed or source is not SetsSource.AGREED]
        labels = [one.label for one in survey.positions]

        def work(ticket: Ticket) -> tuple[ComparedPosition, ...]:
            from spoutline.planning.agreement.comparison import compared, planned_sets

            plans = [service.sets_for(survey, source, ticket, survey_id).site_plan for source in shown]
            return compared([planned_sets(one) for one in plans], labels)

        def show(positions: tuple[ComparedPosition, ...]) -> None:
            dialog.show_sides([titles[source] for source in shown], positions)

        self._context.jobs.start(_SIDES, work, show, lambda fault: dialog.show_trouble(str(fault)))

    def _ask(self, lead: str, plans: Sequence[PositionPlan], labels: Sequence[str], agree: Agree) -> None:
        from spoutline.gui.dialogs.agreement import AgreeDialog

        sets = [_offered(one, one.position.label in labels if labels else is_surveyed(one.position)) for one in plans]
        dialog = AgreeDialog(lead, sets, self._name, self._window)
        if not self._is_accepted(dialog):
            return
        self._name = dialog.name
        by, reason, only = dialog.name, dialog.reason, () if dialog.is_whole else dialog.labels
        count = len(dialog.labels)
        words = tr("{0} sets are agreed; papers show them from now on.") if count != 1 else tr("The set is agreed.")
        self._context.jobs.start(
            _STEP, lambda _: agree(by, reason, only), lambda _: self._done(words.format(count)), self._fail
        )

    def _is_accepted(self, dialog: QDialog) -> bool:
        self.dialog = dialog
        accepted = dialog.exec() == QDialog.DialogCode.Accepted
        self.dialog = None
        dialog.deleteLater()
        return accepted

    def _done(self, words: str) -> None:
        self._notify(words)
        self._context.sets.follow_book()

    def _fail(self, fault: Exception) -> None:
        problems = fault.problems if isinstance(fault, InputFault) else ()
        self._notify("; ".join(told(one.wanted) for one in problems) or str(fault))


def _offered(plan: PositionPlan, is_picked: bool) -> OfferedSet:
    from spoutline.gui.dialogs.agreement import OfferedSet

    numbers = told_apart(plan.chosen.hanging_set.refs) if plan.chosen is not None else ()
    return OfferedSet(plan.position.label, ", ".join(numbers) or tr("no set"), bool(numbers), is_picked)
