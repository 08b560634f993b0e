"""What quoting the changed survey would mean in money: worked out beside the page while nobody has quoted it yet."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QVBoxLayout, QWidget

from spoutline.bootstrap.quotations import QuotationService
from spoutline.documents.quotation.money_change import money_rows, total_text
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.terms import TermsInHand, terms_for_revision
from spoutline.gui.pages.quotation.work import Made, Wanted, making, origin_in_book
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import told, tr
from spoutline.model.answered import surveyed_only
from spoutline.model.survey import Survey
from spoutline.planning.refit.money_change import MoneyChange, money_change

FORESEE = JobKey(JobKind.QUOTATION, "foreseen")
_REST_MS = 300  # a survey that is being typed into is not quoted at every key
_MOST_OPTIONS = 4  # told in the row; the terms hold no more


@frozen
class ForeseenQuote:
    """A quotation that could be taken in hand, and what it means beside the one that is."""

    made: Made
    change: MoneyChange


@frozen
class _Question:
    hand: InHand
    survey: Survey
    terms: TermsInHand


class Foreseer(QObject):
    """Quotes the survey that is open, as it is now, on the terms that the next quotation would have.

    Signals
    -------
    changed()
        It works, stopped, has an answer, or there is nothing to foresee any more.
    """

    changed = Signal()

    def __init__(self, context: Context, today: Callable[[], date], parent: QObject) -> None:
        super().__init__(parent)
        self._context, self._today = context, today
        self._asked: _Question | None = None
        self._stopped = False
        self.found: ForeseenQuote | None = None
        self.fault = ""
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(_REST_MS)
        self._later.timeout.connect(self._start)

    @property
    def is_asked(self) -> bool:
        """Whether the quotation in hand is of a survey that was changed since."""
        return self._asked is not None

    @property
    def is_at_work(self) -> bool:
        """Whether the answer is on its way."""
        return self._later.isActive() or self._context.jobs.is_at_work(FORESEE)

    @property
    def is_stopped(self) -> bool:
        """Whether a person gave the answer up."""
        return self._stopped

    def follow(self, hand: InHand, terms: TermsInHand | None, *, is_free: bool) -> None:
        """Answer for the quotation in hand where its survey was changed since; not while another step is taken."""
        question = self._question(hand, terms) if is_free else None
        if question == self._asked:
            return
        self._context.jobs.cancel(FORESEE)
        self._asked, self.found, self.fault, self._stopped = question, None, "", False
        if question is None:
            self._later.stop()
        else:
            self._later.start()
        self.changed.emit()

    def stop(self) -> None:
        """Give the answer up until the survey, or what is in hand, changes."""
        self._later.stop()
        self._context.jobs.cancel(FORESEE)
        self._stopped = True
        self.changed.emit()

    def ask_again(self) -> None:
        """Work an answer out that was given up."""
        self._stopped = False
        self._start()

    def _question(self, hand: InHand, terms: TermsInHand | None) -> _Question | None:
        made, stored, session = hand.quotation, hand.stored, self._context.session
        survey = surveyed_only(session.survey)
        if made is None or stored is None or hand.is_older or not hand.is_kept or survey is None:
            return None
        if made.pins.survey_id != session.stored.id or made.pins.survey == survey:
            return None
        return _Question(hand, survey, terms or terms_for_revision(stored, self._today()))

    def _start(self) -> None:
        question, context = self._asked, self._context
        context.session.settle()  # a survey still on its way into the book has no revision to tie a quotation to
        if question is None or question.hand.quotation is None:
            return
        service, before = context.session.workbench.quoting(), question.hand.quotation
        work = _foreseeing(service, question, context)

        def show(made: Made) -> None:
            self.found = ForeseenQuote(made, money_change(before, made.quotation))
            self.changed.emit()

        def fail(fault: Exception) -> None:
            self.fault = told(str(fault))
            self.changed.emit()

        context.jobs.start(FORESEE, work, show, fail, priority=-1)
        self.changed.emit()


def _foreseeing(service: QuotationService, question: _Question, context: Context) -> Callable[[Ticket], Made]:
    origin = origin_in_book(context.session.stored, context.session.survey)
    wanted = Wanted(survey=question.survey, origin=origin, terms=question.terms, follows=question.hand, is_anew=False)
    return making(service, wanted, context.session.display)


class MoneyRow(QWidget):
    """Tells what quoting the changed survey would mean; hidden where nothing was changed.

    Signals
    -------
    details_wanted()
        The lines that change are to be seen.
    """

    details_wanted = Signal()

    def __init__(self, foreseer: Foreseer, story: Callable[[], Story], parent: QWidget) -> None:
        super().__init__(parent)
        self._foreseer, self._story = foreseer, story
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.label = plain_label("", "question", wraps=True)
        row = QHBoxLayout()
        self.bar = QProgressBar(self)
        self.bar.setAccessibleName(tr("How far the change in money is worked out"))
        self.bar.setTextVisible(False)
        self.bar.setRange(0, 0)
        self.details_button = QPushButton(tr("What &changes…"), self)
        self.details_button.clicked.connect(lambda _=False: self.details_wanted.emit())
        self.stop_button = QPushButton(tr("Stop"), self)
        self.stop_button.setToolTip(tr("Do not work out what the change means in money"))
        self.stop_button.clicked.connect(lambda _=False: foreseer.stop())
        self.again_button = QPushButton(tr("Work it out"), self)
        self.again_button.clicked.connect(lambda _=False: foreseer.ask_again())
        row.addWidget(self.label, 1)
        for button in (self.details_button, self.again_button, self.stop_button):
            row.addWidget(button)
        column.addLayout(row)
        column.addWidget(self.bar)
        foreseer.changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Show how things stand."""
        foreseer = self._foreseer
        self.setVisible(foreseer.is_asked)
        self.bar.setVisible(foreseer.is_at_work)
        self.stop_button.setVisible(foreseer.is_at_work)
        self.again_button.setVisible(foreseer.is_stopped)
        self.details_button.setVisible(foreseer.found is not None)
        self.label.setText(self._words() if foreseer.is_asked else "")

    def show_progress(self, done: int, total: int) -> None:
        """Show how far the work is."""
        self.bar.setRange(0, max(total, 1))
        self.bar.setValue(done)

    def _words(self) -> str:
        foreseer = self._foreseer
        if foreseer.fault:
            return tr("What the change means in money cannot be told: {0}").format(foreseer.fault)
        if foreseer.is_stopped:
            return tr("The survey was changed since; what that means in money was not worked out.")
        if foreseer.found is None:
            return tr("The survey was changed since; working out what that means in money…")
        return foreseen_words(foreseer.found.change, self._story())


def foreseen_words(change: MoneyChange, story: Story) -> str:
    """Return what every option would come to."""
    if change.is_nothing:
        return tr("The survey was changed since. No amount of the quotation changes by that.")
    rows = (total_text(rows, change.currency_after, story) for rows in money_rows(change, story)[:_MOST_OPTIONS])
    return "\n".join((tr("The survey was changed since. Quoted now:"), *rows))
