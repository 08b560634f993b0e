"""The quotation that is being made: one at a time, with its progress, given up where its survey is edited meanwhile."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from spoutline.gui.jobs import JobKey
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.alternates import ALTERNATE, TakenAlternate, taking
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.offer import OfferPanel
from spoutline.gui.pages.quotation.work import MAKE, Made, Wanted, making
from spoutline.gui.session import Changed
from spoutline.gui.wording import tr
from spoutline.model.quoted_option import QuotedAlternate


class Quoting(QObject):
    """Makes a quotation of a survey, or one with an alternate, off the window's thread.

    Signals
    -------
    made(Made)
        A quotation is there.
    alternate_made(TakenAlternate)
        One with an alternate is there, to be looked at before it is taken.
    failed(Exception)
        None could be made.
    told(str)
        What is to be said of the work; nothing once it is over.
    changed()
        One is being made, or none any more.
    """

    made = Signal(object)
    alternate_made = Signal(object)
    failed = Signal(object)
    told = Signal(str)
    changed = Signal()

    def __init__(self, context: Context, offer: OfferPanel, parent: QObject) -> None:
        super().__init__(parent)
        self._context, self._offer = context, offer
        self._is_of_session = False  # whether the quotation being made is of the survey that is open
        self.is_busy = False
        context.session.changed.connect(self._on_changed)
        context.jobs.progressed.connect(self._on_progress)

    def make(self, wanted: Wanted, *, is_of_session: bool) -> None:
        """Make a quotation; one of the session is given up where its survey is edited meanwhile."""
        self._begin(is_of_session=is_of_session)
        session = self._context.session
        work = making(session.workbench.quoting(), wanted, session.display)
        self._context.jobs.start(MAKE, work, self._deliver, self._fail)

    def take(self, hand: InHand, alternate: QuotedAlternate) -> None:
        """Make the quotation in hand again with an alternate in the place of its part."""
        self._begin(is_of_session=False)
        session = self._context.session
        work = taking(session.workbench.quoting(), hand, alternate, session.display)
        self._context.jobs.start(ALTERNATE, work, self._deliver_alternate, self._fail)

    def end(self, words: str) -> None:
        """Give up what is being made, and say so."""
        self._context.jobs.cancel(MAKE)
        self._context.jobs.cancel(ALTERNATE)
        self.is_busy = False
        self._offer.hide_progress()
        self.told.emit(words)
        self.changed.emit()

    def _begin(self, *, is_of_session: bool) -> None:
        self._is_of_session, self.is_busy = is_of_session, True
        self.told.emit(self._offer.show_progress(0, 0))
        self.changed.emit()

    def _deliver(self, made: Made) -> None:
        self.end("")
        self.made.emit(made)

    def _deliver_alternate(self, taken: TakenAlternate) -> None:
        self.end("")
        self.alternate_made.emit(taken)

    def _fail(self, fault: Exception) -> None:
        self.end("")
        self.failed.emit(fault)

    def _on_progress(self, key: JobKey, done: int, total: int) -> None:
        if key in (MAKE, ALTERNATE) and self.is_busy:
            self.told.emit(self._offer.show_progress(done, total))

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.SURVEY and self.is_busy and self._is_of_session:
            self.end(tr("The survey was changed while it was quoted, so nothing was quoted. Quote it again."))
