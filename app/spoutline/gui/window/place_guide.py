"""Keeps the switcher true: which place is in view, and where each of them stands."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from spoutline.gui.actions import action_record
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.standings import SurveyedCount, standings
from spoutline.gui.pages.context import Context
from spoutline.gui.places import PLACES, Place
from spoutline.gui.session import Changed
from spoutline.gui.widgets.place_bar import PlaceBar
from spoutline.gui.wording import tr

if TYPE_CHECKING:
    from spoutline.bootstrap.standing import StationStanding

_READ = JobKey(JobKind.STANDING)
_PAUSE_MS = 150  # a person types and many plans come in together: one look is enough for all of them
_MOVES_WORK = frozenset((JobKind.QUOTATION, JobKind.SETS, JobKind.CATALOGUE))


class PlaceGuide(QObject):
    """Follows survey, plans and book.

    Signals
    -------
    asked(ActionId)
        A person wants to go to a place; the command that leads there.
    """

    asked = Signal(object)

    def __init__(self, context: Context, bar: PlaceBar, parent: QObject) -> None:
        super().__init__(parent)
        self._context, self._bar = context, bar
        self._known: StationStanding | None = None
        self._of: int | None = None
        self._surveyed = SurveyedCount()
        self._showing, self._reading = self._timer(self.show), self._timer(self._read)
        bar.chosen.connect(lambda number: self.asked.emit(PLACES[number].action))
        context.session.changed.connect(self._on_changed)
        context.sets.changed.connect(self.refresh)
        context.sets.updated.connect(lambda _: self._showing.start())
        context.jobs.delivered.connect(self._on_delivered)
        self.show()
        self.refresh()

    def _timer(self, call: object) -> QTimer:
        timer = QTimer(self)
        timer.setSingleShot(True)
        timer.setInterval(_PAUSE_MS)
        timer.timeout.connect(call)
        return timer

    def show_place(self, place: Place) -> None:
        """Mark the place in view, and look what the last steps changed."""
        self._bar.show_current([one.place for one in PLACES].index(place))
        self.refresh()

    def refresh(self) -> None:
        """Show anew where each place stands, soon."""
        self._showing.start()
        self._reading.start()

    def show(self) -> None:
        """Show where each place stands, as far as it is known."""
        session, sets = self._context.session, self._context.sets
        known = self._known if self._of == session.stored.id else None
        found = standings(
            session.survey, sets.tones().__getitem__, sets.source, sets.agreed, known, surveyed=self._surveyed
        )
        for record, button in zip(PLACES, self._bar.buttons, strict=True):
            action = action_record(record.action)
            button.show_standing(found[record.place], f"{tr(action.hint)} ({action.keys})")

    def _read(self) -> None:
        session = self._context.session
        workbench, survey, survey_id = session.workbench, session.survey, session.stored.id

        def work(_: Ticket) -> StationStanding:
            return workbench.standing(survey, survey_id)

        def take(known: StationStanding) -> None:
            self._known, self._of = known, survey_id
            self.show()

        # what cannot be read is told by the page that needs it
        self._context.jobs.start(_READ, work, take, lambda _: None, priority=-1)

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.SURVEY:
            self.refresh()

    def _on_delivered(self, key: JobKey) -> None:
        if key.kind in _MOVES_WORK:
            self._reading.start()
