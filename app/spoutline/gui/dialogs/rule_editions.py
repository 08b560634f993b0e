"""Below the rows of local rules: what differs from their parent, what that does to a station, editions published."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.effect_rows import EffectRow, differing, effect_words, summary
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.limit import Jurisdiction, Limit
from spoutline.model.survey import Survey
from spoutline.planning.keeping.effect import PositionEffect
from spoutline.ruletables.editions import RowChange
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_EFFECT = JobKey(JobKind.SITE_PLAN, "rules")
_FILE = JobKey(JobKind.FILE, "rules")
_SHOWN = 5


class RuleEditions(QWidget):
    """Knows the jurisdiction shown and its parent. ``close_jobs`` is called before the dialog goes.

    Signals
    -------
    narrowed()
        Only the rows that differ are wanted, or all again.
    """

    narrowed = Signal()

    def __init__(
        self,
        workbench: Workbench,
        survey: Survey | None,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
    ) -> None:
        super().__init__(parent)
        self._workbench, self._survey, self._today = workbench, survey, today
        self._jobs = Jobs(self, threads=1)
        self._profile: Jurisdiction | None = None
        self._against = ""
        self._changes: tuple[RowChange, ...] = ()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 4, 0, 0)
        self.only_box = QCheckBox(tr("Only rows that differ &from where they were copied from"), self)
        self.only_box.toggled.connect(lambda _: self.narrowed.emit())
        self.effect_button = QPushButton(tr("Effect &on this station"), self)
        self.effect_button.clicked.connect(lambda _=False: self.look())
        self.state_label = plain_label("", "quiet", wraps=True)
        self.hands = PaperHands(
            workbench,
            self._jobs,
            self._wanted,
            key=_FILE,
            tell=self.state_label.setText,
            parent=self,
        )
        paper = self.hands.menu_button(tr("Paper (P&DF)"), tr("The rows with their sources, as a paper"))
        first = QHBoxLayout()
        first.addWidget(self.only_box)
        first.addStretch(1)
        first.addWidget(paper)
        first.addWidget(self.effect_button)
        column.addLayout(first)
        self.note_edit, self.by_edit = QLineEdit(self), QLineEdit(self)
        for edit, name in ((self.note_edit, tr("What is new in the edition")), (self.by_edit, tr("Who publishes it"))):
            edit.setAccessibleName(name)
            edit.setPlaceholderText(name)
        self.publish_button = QPushButton(tr("&Publish as next edition"), self)
        self.publish_button.clicked.connect(lambda _=False: self.publish())
        second = QHBoxLayout()
        second.addWidget(self.note_edit, 2)
        second.addWidget(self.by_edit, 1)
        second.addWidget(self.publish_button)
        column.addLayout(second)
        for button in (self.effect_button, self.publish_button):
            button.setAutoDefault(False)
        column.addWidget(self.state_label)

    def show_profile(self, profile: Jurisdiction) -> None:
        """Hold another jurisdiction against its parent."""
        service = self._workbench.jurisdictions()
        self._jobs.cancel_all()
        self._profile = profile
        try:
            parent = service.parent(profile.id)
            self._against = "" if parent is None else parent.id
            self._changes = service.changes(profile.id)
            editions = () if profile.built_in else service.editions(profile.id)
        except (InputFault, StoreFault) as fault:
            self._against, self._changes = "", ()
            self.state_label.setText(told(str(fault)))
            return
        lines = [tr("{0} rows differ from {1}.").format(len(self._changes), self._against) if self._against else ""]
        if editions:
            newest = editions[-1]
            words = tr("Edition {0} of {1} by {2}: {3}.")
            lines.append(words.format(newest.number, newest.published_on.isoformat(), newest.publisher, newest.note))
            lines.append("" if newest.jurisdiction == profile else tr("Changed since."))
            self._against = f"{profile.id}@{newest.number}"
        self.state_label.setText(" ".join(filter(None, lines)))
        self.only_box.setEnabled(bool(self._changes) or self.only_box.isChecked())
        self.effect_button.setEnabled(self._survey is not None and bool(self._against))
        for widget in (self.note_edit, self.by_edit, self.publish_button):
            widget.setEnabled(not profile.built_in)

    def rows(self, profile: Jurisdiction) -> tuple[Limit, ...]:
        """Return the rows to show."""
        if not self.only_box.isChecked():
            return profile.limits
        changed = {one.id for one in self._changes}
        return tuple(limit for limit in profile.limits if limit.id in changed)

    def before(self, limit: Limit) -> Limit | None:
        """Return the row of the parent where it differs; None where it is the same."""
        return next((one.before for one in self._changes if one.id is limit.id), None)

    def look(self) -> None:
        """Plan the station under what the rules were and are, and say what becomes of its sets."""
        profile, survey, against, workbench = self._profile, self._survey, self._against, self._workbench
        if profile is None or survey is None or not against:
            return

        def work(ticket: Ticket) -> tuple[PositionEffect, ...]:
            return workbench.rule_effects(against, profile.id, (survey,), ticket)

        def show(found: tuple[PositionEffect, ...]) -> None:
            rows = [EffectRow(one.site, one) for one in found]
            lines = [tr("Against {0}: {1}").format(against, summary(rows)), *_lines(differing(rows))]
            self.state_label.setText("\n".join(lines))
            self.effect_button.setEnabled(True)

        def fail(fault: Exception) -> None:
            self.state_label.setText(told(str(fault)))
            self.effect_button.setEnabled(True)

        self.effect_button.setEnabled(False)
        self.state_label.setText(tr("Planning the station under both…"))
        self._jobs.start(_EFFECT, work, show, fail)

    def publish(self) -> None:
        """Publish the jurisdiction shown as its next edition."""
        profile = self._profile
        if profile is None:
            return
        try:
            self._workbench.jurisdictions().publish(
                profile.id, publisher=self.by_edit.text(), note=self.note_edit.text(), on=self._today()
            )
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        self.note_edit.clear()
        self.show_profile(profile)

    def _wanted(self) -> WantedPaper | None:
        profile, workbench, today = self._profile, self._workbench, self._today()
        if profile is None:
            return None
        story = workbench.story(Display(workbench.jurisdictions().usual_units(profile.id)))

        def make(_: Ticket, form: PaperForm) -> bytes:
            return workbench.jurisdictions().pdf(profile.id, story, today, form)

        return WantedPaper(make=make, stem=f"{profile.id}-rules", name=profile.id)

    def close_jobs(self) -> None:
        """End the work in hand, so that no store is closed under it."""
        self._jobs.close()


def _lines(rows: list[EffectRow]) -> Iterator[str]:
    for row in rows[:_SHOWN]:
        if row.position is not None:
            yield f"{row.position.label}: {effect_words(row.position.effect)}"
    if len(rows) > _SHOWN:
        yield tr("and {0} more").format(len(rows) - _SHOWN)
