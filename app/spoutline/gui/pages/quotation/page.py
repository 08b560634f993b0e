"""Quotations: made of a survey on the terms in hand, kept in the book, issued, answered, revised, compared."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QVBoxLayout, QWidget

from spoutline.book.quotation_records import StoredQuotation
from spoutline.bootstrap.quotations import QuotationService
from spoutline.gui.jobs import JobKey, Ticket
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.paper_pages import PaperPages
from spoutline.gui.pages.quotation.alternates import TakenAlternate, keep_in_survey
from spoutline.gui.pages.quotation.asked_in_money import is_alternate_taken, is_quoted_so
from spoutline.gui.pages.quotation.book_steps import BookSteps
from spoutline.gui.pages.quotation.files import FileKind, QuotationFiles
from spoutline.gui.pages.quotation.foreseen import FORESEE, Foreseer, MoneyRow
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.panel import QuotationPanel
from spoutline.gui.pages.quotation.quoting import Quoting
from spoutline.gui.pages.quotation.terms import (
    TermsInHand,
    price_answer,
    terms_for_revision,
    terms_of_quotation,
)
from spoutline.gui.pages.quotation.terms_choice import TermsChoice
from spoutline.gui.pages.quotation.work import (
    FOLLOW,
    LOOK,
    Made,
    Steps,
    StepTaken,
    Wanted,
    looking,
    origin_in_book,
    reading_older,
)
from spoutline.gui.session import Changed
from spoutline.gui.widgets.in_parts import InParts
from spoutline.gui.wording import tr
from spoutline.model.answered import is_surveyed, surveyed_only
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.quotation_terms import PriceOverride
from spoutline.model.quoted_option import QuotedAlternate
from spoutline.whole_files import InUse


class QuotationPage(InParts, QWidget):
    """Holds one quotation and the terms of the next one. ``today`` tells the day for expiry and for new terms."""

    def __init__(
        self,
        context: Context,
        notify: Notify,
        today: Callable[[], date] = date.today,
        parent: QWidget | None = None,
        *,
        whole: bool = True,
    ) -> None:
        super().__init__(parent)
        self.begin(self._make(context, notify, today), whole=whole)

    def _make(self, context: Context, notify: Notify, today: Callable[[], date]) -> Iterator[None]:
        self._context, self._today = context, today
        self._hand = InHand()
        self._put_aside = InHand()  # what was in hand before an older revision was read
        self._site_id: int | None = None  # survey of the book whose last quotation was looked for
        self._answered: Quotation | None = None  # for whose prices somebody answered, since it was made
        self._steps = Steps(context.jobs, lambda: self._service, self._show_step, self._show_trouble, self._show_steps)
        self.terms = TermsChoice(context, today, self)
        self.files = QuotationFiles(
            context,
            notify,
            self,
            hand=lambda: self._hand,
            option=lambda: self.panel.offer.option,
            sources=self._sources,
            shown=lambda: self.paper.document,
        )
        self.hands = self.files.hands[FileKind.PDF]
        yield
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        self.panel = QuotationPanel(context, today, splitter, whole=False)
        while self.panel.make_part():
            yield
        self.book_steps = BookSteps(context, self.panel, self._steps, lambda: self._hand)
        self._quoting = Quoting(context, self.panel.offer, self)
        splitter.addWidget(self.panel)
        yield
        self.paper = PaperPages("quotation", tr("Pages of the quotation"), context.jobs, self._show_trouble, splitter)
        splitter.addWidget(self.paper)
        yield
        self.panel.offer.add_hands(self.files.hands)
        self.foreseer = Foreseer(context, today, self)
        self.money_row = MoneyRow(self.foreseer, lambda: context.story, self.panel.offer)
        self.money_row.details_wanted.connect(self.show_foreseen)
        self.panel.offer.add_money(self.money_row)
        yield
        self.paper.document_shown.connect(lambda _: self.hands.allow(True))
        splitter.setSizes([600, 480])
        splitter.setStretchFactor(0, 1)
        splitter.setStretchFactor(1, 1)
        self.panel.setMinimumWidth(520)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        column.addWidget(splitter)
        yield
        self.files.failed.connect(self.panel.say)
        self._bind()
        self._show(InHand())
        context.session.changed.connect(self._on_changed)
        context.jobs.progressed.connect(self._on_progress)

    @property
    def quotation(self) -> Quotation | None:
        """The quotation shown; None for none."""
        return self._hand.quotation

    @property
    def stored(self) -> StoredQuotation | None:
        """Its newest revision in the book; None where it is not kept yet."""
        return self._hand.stored

    @property
    def is_busy(self) -> bool:
        """Whether a step is being taken or a quotation is being made."""
        return self._steps.is_busy or self._quoting.is_busy

    def refresh(self) -> None:
        """Show the quotations of the book, those that are over as expired, and what a change touches."""
        self.panel.book.refresh()
        self.terms.follow_site()
        self._follow_site()
        self._show_steps()

    # quoting

    def make(self) -> None:
        """Quote the survey in hand."""
        if self.terms.in_hand is None or self.is_busy:
            return
        self.terms.follow_site()
        session = self._context.session
        session.settle()  # a survey still on its way into the book has no revision to tie its quotation to
        origin = origin_in_book(session.stored, session.survey)
        quoted = surveyed_only(session.survey)
        if quoted is None:
            self.panel.say(tr("No position is surveyed yet: say what each of them sells, then quote."))
            return
        follows = self._newest
        wanted = Wanted(survey=quoted, origin=origin, terms=self.terms.in_hand, follows=follows, is_anew=False)
        self._quoting.make(wanted, is_of_session=True)

    def quote_anew(self, stored: StoredQuotation | None = None) -> None:
        """Quote a quotation of the book again: its own survey and terms, catalogue and prices of today."""
        if self.is_busy:
            return
        follows = self._newest if stored is None else InHand(quotation=stored.quotation, stored=stored)
        if stored is not None and self.stored is not None and self.stored.id == stored.id:
            follows = self._newest
        if follows.stored is not None:
            self.panel.show_panel(self.panel.offer)
            self._quote_pinned(follows, terms_for_revision(follows.stored, self._today()))

    def take_alternate(self, alternate: QuotedAlternate) -> None:
        """Quote the quotation in hand again with an alternate in the place of its part; the money is shown first."""
        if self._hand.quotation is None or self._hand.is_older or self.is_busy:
            return
        self._quoting.take(self._hand, alternate)

    def answer_price(self, part: PartRef, override: PriceOverride | None) -> None:
        """Put a person's word about a price into the terms in hand, or take it back with None, and quote again.

        A quotation that is being made is given up for one with this word too, so that nobody waits between two words.
        """
        made = self._hand.quotation
        if made is None or self._steps.is_busy or self._hand.is_older:
            return
        if self._quoting.is_busy:
            self._quoting.end("")
        hand = self.terms.in_hand
        if hand is None or (hand.terms != made.terms and self._answered is not made):
            hand = terms_of_quotation(made, self._hand.revision)
        self._answered = made
        self.terms.hold(hand.answered(part, override))
        self._show_prices()
        if made.pins.survey_id == self._context.session.stored.id:
            self.make()
        else:
            self._quote_pinned(self._hand, hand.answered(part, override))

    def show_foreseen(self) -> None:
        """Show line by line what quoting the changed survey means in money; take that in hand where wanted."""
        found = self.foreseer.found
        if found is None or self.is_busy:
            return
        if is_quoted_so(found.change, self._number, self._context.story, self):
            self._show_made(found.made)

    def _ask_to_take(self, taken: TakenAlternate) -> None:
        """Show what an alternate means in money; where wanted, keep it in the survey and quote so as the next state."""
        stored = self.stored
        is_wanted = is_alternate_taken(taken, self._number, stored, self._context.story, self)
        if not is_wanted or taken.hand.quotation is not self._hand.quotation:
            return
        self._show(replace(self._hand, quotation=keep_in_survey(self._context, taken)))
        if self._hand.quotation is not None:
            self.book_steps.keep_alternate(self._hand.quotation)

    def stop(self) -> None:
        """Give up the quotation that is being made."""
        self._quoting.end(tr("Stopped; nothing was quoted."))

    # the book

    def look_at(self, quotation_id: int) -> None:
        """Show a quotation of the book."""
        if not self._steps.is_busy:
            self._site_id = self._context.session.stored.id
            self._context.jobs.start(
                LOOK, looking(self._service, quotation_id), self._show_looked_at, self._show_trouble
            )

    def read_revision(self, revision: int) -> None:
        """Show a revision of the quotation looked at: to be read only where it is not the newest."""
        newest = self._newest
        if newest.stored is None or self._steps.is_busy:
            return
        if revision == newest.stored.revision:
            self._show(newest)
            return
        self._context.jobs.start(LOOK, reading_older(self._service, newest, revision), self._show, self._show_trouble)

    def follow_up(self, day: date | None) -> None:
        """Keep the day on which to ask the customer of the quotation in hand again; None for none."""
        stored, service = self._newest.stored, self._service
        if stored is None:
            return

        def show(kept: StoredQuotation) -> None:
            if self._hand.stored is not None and self._hand.stored.id == kept.id:
                stored = replace(self._hand.stored, follow_up=kept.follow_up)
                self._hand = replace(self._hand, stored=stored)
            self.panel.say("")
            self.panel.book.fetch()
            self._show_steps()

        self._context.jobs.start(
            FOLLOW, lambda _: service.life().follow_up(stored.id, day), show, self._fail_following, priority=1
        )

    def show_suppliers(self) -> None:
        """Show what is ordered from each supplier for the option of the pick list, and write the files."""
        from spoutline.gui.dialogs.supplier_orders import OrderedFrom, SupplierOrdersDialog

        made = self._hand.quotation
        if made is None:
            return
        workbench = self._context.session.workbench
        option = made.options[self.panel.offer.option].title
        ordered = OrderedFrom.of_option(made, self._hand.revision, option)
        dialog = SupplierOrdersDialog(workbench.supplier_orders(), ordered, workbench.files_in_use, self)
        dialog.exec()
        dialog.deleteLater()

    def save_as(self, path: Path, kind: FileKind) -> None:
        """Write a paper into a file; an issued one as it was sent."""
        self.files.save(path, kind)

    # inside

    @property
    def _service(self) -> QuotationService:
        return self._context.session.workbench.quoting()

    @property
    def _newest(self) -> InHand:
        """What is in hand, or was before an older revision was read."""
        return self._put_aside if self._hand.is_older else self._hand

    def _bind(self) -> None:
        panel, offer = self.panel, self.panel.offer
        quoting = self._quoting
        quoting.made.connect(self._show_made)
        quoting.alternate_made.connect(self._ask_to_take)
        quoting.failed.connect(self._show_trouble)
        quoting.told.connect(panel.say)
        quoting.changed.connect(self._show_steps)
        self.terms.changed.connect(self._show_terms)
        self.terms.failed.connect(panel.say)
        self.terms.told.connect(panel.say)
        offer.terms_button.clicked.connect(lambda _=False: self.terms.ask_changed())
        offer.file_action.triggered.connect(self.terms.ask_file)
        offer.customer_button.clicked.connect(lambda _=False: self.terms.ask_customer())
        offer.example_action.triggered.connect(self.terms.ask_example)
        offer.own_terms_action.triggered.connect(self._use_own_terms)
        offer.make_button.clicked.connect(self.make)
        offer.anew_button.clicked.connect(lambda _=False: self.quote_anew())
        offer.stop_button.clicked.connect(self.stop)
        offer.keep_button.clicked.connect(self.book_steps.keep)
        offer.issue_button.clicked.connect(self.book_steps.issue)
        offer.accepted.connect(lambda option: self.book_steps.answer(QuotationStatus.ACCEPTED, option))
        offer.decline_button.clicked.connect(lambda: self.book_steps.answer(QuotationStatus.DECLINED))
        offer.table_wanted.connect(self.files.ask)
        offer.alternate_button.taken.connect(self.take_alternate)
        offer.suppliers_button.clicked.connect(lambda _=False: self.show_suppliers())
        panel.follow_up_wanted.connect(self.follow_up)
        panel.newest_button.clicked.connect(lambda: self._show(self._newest))
        panel.prices.answered.connect(self._answer_price)
        panel.prices.taken_back.connect(lambda part: self.answer_price(part, None))
        panel.history.revision_wanted.connect(self.read_revision)
        panel.book.wanted.connect(self.look_at)
        panel.book.anew_wanted.connect(self.quote_anew)
        panel.book.expired.connect(self._on_expired)

    @property
    def _number(self) -> str:
        """The number of the quotation in hand; empty where there is none."""
        return self._hand.quotation.terms.heading.number if self._hand.quotation is not None else ""

    def _sources(self) -> tuple[InUse, ...]:
        """Return the file of the terms in hand, which no paper may take the place of."""
        terms = self.terms.in_hand
        file = terms.file if terms is not None else None
        return (InUse(file, tr("the file of the terms")),) if file is not None else ()

    def _answer_price(self, part: PartRef, price: str | None, reason: str) -> None:
        try:
            override = price_answer(part, price, self.panel.name, reason)
        except InputFault as fault:
            self.panel.say(str(fault))
            self._point_at(fault.problems[0].field)
        else:
            self.answer_price(part, override)
            self.panel.prices.go_on()

    def _point_at(self, entry: str) -> None:
        """Put the keyboard where an answer about a price is to be mended."""
        if entry == tr("your name"):
            self.panel.name_edit.setFocus()
        else:
            self.panel.prices.point_at(is_reason=entry == tr("reason"))

    def _use_own_terms(self) -> None:
        if self._hand.quotation is not None:
            self.terms.use_own(self._hand.quotation, self._hand.revision)

    def _show_terms(self) -> None:
        self.panel.offer.show_terms(self.terms.in_hand)
        self._show_steps()

    def _quote_pinned(self, follows: InHand, terms: TermsInHand) -> None:
        """Quote the survey that a quotation carries in itself."""
        if follows.quotation is None:
            return
        pins = follows.quotation.pins
        origin = None
        if pins.survey_id is not None and pins.survey_revision is not None:
            origin = (pins.survey_id, pins.survey_revision)
        self.terms.hold(terms)
        wanted = Wanted(survey=pins.survey, origin=origin, terms=terms, follows=follows, is_anew=True)
        self._quoting.make(wanted, is_of_session=False)

    def _show_made(self, made: Made) -> None:
        self.panel.say("")
        self.terms.hold(made.terms)
        self._show(made.in_hand)
        if made.in_hand.is_kept:
            self.panel.say(tr("Quoted again: it is what the book holds as revision {0}.").format(made.in_hand.revision))
        session = self._context.session
        if (
            made.wanted.origin
            and made.wanted.origin[0] == session.stored.id
            and made.wanted.survey != surveyed_only(session.survey)
        ):
            self.panel.say(
                tr("Quoted on the survey as it was before. It has been changed since: quote this survey for that.")
            )
        elif left_out := [one.label for one in session.survey.positions if not is_surveyed(one)]:
            self.panel.say(tr("Not surveyed yet, and not quoted: {0}").format(", ".join(left_out)))

    def _show_step(self, taken: StepTaken) -> None:
        self.panel.offer.note_edit.clear()
        self._show(taken.in_hand)
        self.panel.say(taken.stale)
        if taken.in_hand.status is QuotationStatus.ACCEPTED and not taken.stale:
            self.panel.say(tr("The sets of the option ordered are agreed: papers of the survey show them from now on."))
            self._context.sets.follow_book()
        self.refresh()

    def _follow_site(self) -> None:
        """Show the last quotation of a survey that was just opened; what is not in the book yet stays in hand."""
        survey_id, service = self._context.session.stored.id, self._service
        if survey_id == self._site_id or self.is_busy:
            return
        self._site_id = survey_id
        before = self._hand
        if before.may_be_kept and before.quotation is not None:
            site = before.quotation.pins.survey.site.name
            self.panel.say(tr("This quotation is not in the book yet. It is one of {0}.").format(site))
            return

        def work(ticket: Ticket) -> InHand:
            found = service.life().of_survey(survey_id)
            return looking(service, found[0].id)(ticket) if found else InHand()

        def show(found: InHand) -> None:
            if self._hand is before and not self.is_busy:
                self.panel.say("")
                self._show(found)

        self._context.jobs.start(LOOK, work, show, self._show_trouble)

    def _show_looked_at(self, hand: InHand) -> None:
        self._show(hand)
        self.panel.say("")
        self.panel.show_panel(self.panel.offer)

    def _show(self, hand: InHand) -> None:
        if hand.is_older and not self._hand.is_older:
            self._put_aside = self._hand
        self._hand = hand
        self.panel.show_quotation(hand)
        self._show_prices()
        self._show_steps()
        self._show_paper()

    def _show_steps(self) -> None:
        self.panel.show_steps(self._hand, is_stepping=self._steps.is_busy, is_quoting=self._quoting.is_busy)
        self.foreseer.follow(self._hand, self.terms.in_hand, is_free=not self.is_busy and self.isVisible())

    def _show_prices(self) -> None:
        """Show the prices, and who answers for which: by the terms in hand where they are to be quoted on next."""
        made, terms = self._hand.quotation, self.terms.in_hand
        if made is None:
            self.panel.show_prices(None, ())
            return
        is_answered = terms is not None and self._answered is made
        self.panel.show_prices(made, terms.overrides if terms is not None and is_answered else made.terms.overrides)

    def _show_paper(self) -> None:
        made = self._hand.quotation
        self.hands.allow(False)  # until it is there
        self.paper.setVisible(made is not None)  # nothing is shown of a paper that is not there yet
        if made is None:
            self.paper.show_nothing()
        else:
            self.paper.show_document(self.files.maker(FileKind.PDF))

    def _fail_following(self, fault: Exception) -> None:
        self._show_steps()
        self._show_trouble(fault)

    def _show_trouble(self, fault: Exception) -> None:
        if not isinstance(fault, Cancelled):
            self.panel.say(str(fault))

    def _on_expired(self, ids: tuple[int, ...]) -> None:
        """Look at the quotation again where it has just expired: it has another version now."""
        stored = self._newest.stored
        if stored is not None and stored.id in ids and self._newest.is_kept and not self._hand.is_older:
            self.look_at(stored.id)

    def _on_progress(self, key: JobKey, done: int, total: int) -> None:
        if key == FORESEE:
            self.money_row.show_progress(done, total)

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.SURVEY:
            if self.isVisible():
                self.terms.follow_site()
            self._show_steps()
        if self.isVisible() and what & Changed.UNITS:
            self._show(self._hand)
            self.refresh()
