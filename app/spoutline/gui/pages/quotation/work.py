"""Work on quotations off the window's thread: making one, taking a step in its life, reading one from the book."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from spoutline.book.quotation_records import QuotationEntry, StaleQuotation, StoredQuotation
from spoutline.book.records import StoredSurvey
from spoutline.bootstrap.quotations import QuotationService
from spoutline.frozen import frozen
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket, Work
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.terms import TermsInHand
from spoutline.model.answered import same_answers
from spoutline.model.number_pattern import is_pattern
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.survey import Survey
from spoutline.units.display import Display

MAKE = JobKey(JobKind.SITE_PLAN, "quotation")
STEP = JobKey(JobKind.QUOTATION, "step")
LOOK = JobKey(JobKind.QUOTATION, "look")
FOLLOW = JobKey(JobKind.QUOTATION, "follow")
TERMS = JobKey(JobKind.QUOTATION, "terms")
FILE = JobKey(JobKind.FILE, "quotation")

Step = Callable[[], StoredQuotation]


def origin_in_book(stored: StoredSurvey, survey: Survey) -> tuple[int, int] | None:
    """Return id and revision of the survey in the book; None where what was answered there is not what is in hand."""
    return (stored.id, stored.revision) if same_answers(stored.survey, survey) else None


@frozen(kw_only=True)
class Wanted:
    """What is to be quoted.

    ``origin`` is the survey's id and revision in the book, ``follows`` the quotation in hand when this was asked for;
    ``is_anew`` where the survey is the one that it carries in itself.
    """

    survey: Survey
    origin: tuple[int, int] | None
    terms: TermsInHand
    follows: InHand
    is_anew: bool


@frozen
class Made:
    """A quotation just made, with the terms as they were read for it."""

    quotation: Quotation
    terms: TermsInHand
    wanted: Wanted
    sent_before: QuotationEntry | None = None  # another that was sent under its number

    @property
    def in_hand(self) -> InHand:
        """The quotation with those of the book that it belongs to: of the same survey, under the same number."""
        stored = self.wanted.follows.stored
        if stored is None or not self._belongs_to(stored.quotation):
            return InHand(quotation=self.quotation, sent_before=self.sent_before)
        events = self.wanted.follows.events
        return InHand(quotation=self.quotation, stored=stored, events=events, sent_before=self.sent_before)

    def _belongs_to(self, before: Quotation) -> bool:
        number = self.quotation.terms.heading.number
        if number != before.terms.heading.number and not is_pattern(number):
            return False
        old, new = before.pins, self.quotation.pins
        same_name = old.survey.site.name == new.survey.site.name
        return self.wanted.is_anew or (old.survey_id == new.survey_id and (old.survey_id is not None or same_name))


@frozen
class StepTaken:
    """The quotation after a step, or as somebody else left it: ``stale`` says so in words then."""

    in_hand: InHand
    stale: str = ""


def stored_in_hand(service: QuotationService, stored: StoredQuotation) -> InHand:
    """Return a quotation of the book, its newest revision."""
    is_draft = stored.status is QuotationStatus.DRAFT
    other = service.life().sent_under(stored.quotation, stored.id) if is_draft else None
    events = service.life().history(stored.id)
    return InHand(quotation=stored.quotation, stored=stored, events=events, sent_before=other)


def making(service: QuotationService, wanted: Wanted, display: Display) -> Work:
    """Return the work that makes a quotation; its terms are read anew from their file."""

    def work(ticket: Ticket) -> Made:
        follows = wanted.follows
        if follows.stored is not None and not follows.events:
            follows = replace(follows, events=service.life().history(follows.stored.id))
        read = wanted.terms.as_read(service)
        terms = read.terms
        if terms is None:
            raise ValueError("terms without a file have a base")
        quoted = service.quote(
            wanted.survey, terms, display, origin=wanted.origin, logo=read.logo(service), progress=ticket
        )
        made = Made(quoted.quotation, read, replace(wanted, follows=follows))
        stored = made.in_hand.stored
        return replace(
            made, sent_before=service.life().sent_under(made.quotation, None if stored is None else stored.id)
        )

    return work


def looking(service: QuotationService, quotation_id: int) -> Work:
    """Return the work that reads the newest revision of a quotation with its steps."""
    return lambda _: stored_in_hand(service, service.life().stored(quotation_id))


def reading_older(service: QuotationService, newest: InHand, revision: int) -> Work:
    """Return the work that reads an older revision of a quotation."""
    stored = newest.stored
    if stored is None:
        raise ValueError("only a quotation of the book has older revisions")
    return lambda _: InHand(
        quotation=service.life().at_revision(stored.id, revision), stored=stored, events=newest.events, older=revision
    )


class Steps:
    """Takes one step at a time; a second one is not begun before the first is done."""

    def __init__(
        self,
        jobs: Jobs,
        service: Callable[[], QuotationService],
        done: Callable[[StepTaken], None],
        fail: Callable[[Exception], None],
        busy_changed: Callable[[], None],
    ) -> None:
        self._jobs, self._service, self._done, self._fail, self._busy_changed = jobs, service, done, fail, busy_changed
        self.is_busy = False

    def take(self, act: Step) -> None:
        """Take a step; what forbids it is told, and nothing has changed then."""
        if self.is_busy:
            return
        service = self._service()

        def work(_: Ticket) -> StepTaken:
            try:
                stored, stale = act(), ""
            except StaleQuotation as newer:
                stored, stale = newer.stored, str(newer)
            return StepTaken(stored_in_hand(service, stored), stale)

        self._set_busy(True)
        self._jobs.start(STEP, work, self._finish, self._give_up)

    def _finish(self, taken: StepTaken) -> None:
        self._set_busy(False)
        self._done(taken)

    def _give_up(self, fault: Exception) -> None:
        self._set_busy(False)
        self._fail(fault)

    def _set_busy(self, is_busy: bool) -> None:
        self.is_busy = is_busy
        self._busy_changed()
