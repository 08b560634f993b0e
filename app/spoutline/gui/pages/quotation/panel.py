"""The left side of the quotations: where the one in hand stands, and below it offer, prices, revisions and book."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from spoutline.book.quotation_records import StoredQuotation
from spoutline.gui.models.quotation_prices import priced_parts
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.book import BookPanel
from spoutline.gui.pages.quotation.guidance import older_words, status_tone, status_words
from spoutline.gui.pages.quotation.history import HistoryPanel
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.offer import OfferPanel
from spoutline.gui.pages.quotation.prices import PricesPanel
from spoutline.gui.position_links import LinkedText
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.cards import Card, plain_label, tab_pages
from spoutline.gui.widgets.day_edit import DayEdit
from spoutline.gui.widgets.in_parts import InParts
from spoutline.gui.widgets.marks import Mark
from spoutline.gui.widgets.notice_bar import NoticeBar, Offer
from spoutline.gui.widgets.roomy_scroll import PageTabs
from spoutline.gui.wording import told, tr
from spoutline.model.answered import surveyed_only
from spoutline.model.faults import InputFault
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_terms import PriceOverride

_DAY_WIDTH = 140  # pixels of a day with its calendar


class QuotationPanel(InParts, QWidget):
    """Lays out the head and the four panels and shows the quotation in hand in all of them.

    Signals
    -------
    follow_up_wanted(object)
        The customer of the quotation in hand is to be asked again on this day; None for on none.
    """

    follow_up_wanted = Signal(object)

    def __init__(
        self, context: Context, today: Callable[[], date], parent: QWidget | None = None, *, whole: bool = True
    ) -> None:
        super().__init__(parent)
        self.begin(self._make(context, today), whole=whole)

    def _make(self, context: Context, today: Callable[[], date]) -> Iterator[None]:
        self._context, self._today = context, today
        self._touched_told: tuple[int, ...] = ()
        self._follows: tuple[int, date | None] | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self._head())
        self.notice = NoticeBar(self)
        column.addWidget(self.notice)
        yield
        self.tabs = PageTabs(self)
        pages = tab_pages(self.tabs)
        self.offer = OfferPanel(pages)
        yield
        self.prices = PricesPanel(pages)
        yield
        self.history = HistoryPanel(context, pages)
        yield
        self.book = BookPanel(context, today, pages)
        yield
        for panel, words in (
            (self.offer, tr("&Offer")),
            (self.prices, tr("Pr&ices")),
            (self.history, tr("&Revisions")),
            (self.book, tr("&Book")),
        ):
            self.tabs.addTab(panel, words)
            yield
        column.addWidget(self.tabs, 1)
        self.offer.gap_button.clicked.connect(self._answer_gaps)
        self.book.touched_told.connect(self._show_touched_notice)

    @property
    def name(self) -> str:
        """Name of the person who takes the steps."""
        return self.name_edit.text().strip()

    def say(self, text: str) -> None:
        """Say what went wrong, or how things stand."""
        labels = (one.label for one in self._context.session.survey.positions)
        self.state_label.show_text(told(text), labels)
        self.state_label.setVisible(bool(text))

    def show_panel(self, panel: QWidget) -> None:
        """Bring one of the four panels into view."""
        self.tabs.setCurrentWidget(panel)

    def show_quotation(self, hand: InHand) -> None:
        """Show another quotation everywhere but in its prices."""
        self.offer.show_quotation(hand.quotation, self._context.story)
        self.history.show_hand(hand)

    def show_prices(self, quotation: Quotation | None, overrides: tuple[PriceOverride, ...]) -> None:
        """Show the prices of a quotation, and the words of persons about them."""
        if quotation is None:
            self.prices.show_parts((), "")
            return
        parts = priced_parts(quotation, overrides, self._context.story)
        self.prices.show_parts(parts, quotation.terms.currency)

    def show_steps(self, hand: InHand, *, is_stepping: bool, is_quoting: bool) -> None:
        """Show where the quotation stands, and offer the steps that can be taken now."""
        today = self._today()
        self.status_mark.setVisible(hand.quotation is not None)
        self.status_mark.show_tone(status_tone(hand, today), tr("Where the quotation stands"))
        self.status_label.setText(status_words(hand, today, self._context.story))
        self._show_follow_up(hand.stored if not hand.is_older else None, is_free=not is_stepping)
        older = older_words(hand)
        self.older_label.setText(older)
        self.older_bar.setVisible(bool(older))
        session, made = self._context.session, hand.quotation
        same_survey = made is not None and made.pins.survey_id == session.stored.id
        self.offer.show_steps(
            hand,
            self._context.story,
            today,
            is_stepping=is_stepping,
            is_quoting=is_quoting,
            survey_changed=same_survey and made is not None and made.pins.survey != surveyed_only(session.survey),
        )
        self.prices.allow(hand.quotation is not None and not hand.is_older and not is_stepping)
        self.book.allow(not is_stepping)

    def _show_follow_up(self, kept: StoredQuotation | None, *, is_free: bool) -> None:
        """Show when to ask the customer again; a day that is being typed is left alone."""
        for widget in (self.follow_label, self.follow_edit):
            widget.setVisible(kept is not None)
        self.follow_edit.setEnabled(is_free)
        shown = None if kept is None else (kept.id, kept.follow_up)
        if shown != self._follows:
            self._follows = shown
            self.follow_edit.show_day(None if kept is None else kept.follow_up)

    def _follow_up(self) -> None:
        try:
            day = self.follow_edit.day(tr("Follow up"))
        except InputFault as fault:
            self.say(str(fault))
            return
        if self._follows is not None and day != self._follows[1]:
            self._follows = None  # what the book holds then is shown, whatever comes of it
            self.follow_up_wanted.emit(day)

    def _answer_gaps(self) -> None:
        self.show_panel(self.prices)
        self.prices.start()

    def _head(self) -> QWidget:
        card = Card("", self)
        row = QHBoxLayout()
        row.addWidget(plain_label(tr("Quotation"), "pageTitle"))
        row.addStretch(1)
        self.name_edit = QLineEdit(self)
        self.name_edit.setAccessibleName(tr("Your name"))
        self.name_edit.setPlaceholderText(tr("Your name"))
        self.name_edit.setToolTip(tr("Stands beside every step that you take"))
        self.name_edit.setMinimumWidth(180)
        row.addWidget(self.name_edit)
        card.body.addLayout(row)
        row = QHBoxLayout()
        self.status_mark = Mark(self)
        self.status_label = plain_label("", "cardTitle", wraps=True)
        row.addWidget(self.status_mark)
        row.addWidget(self.status_label, 1)
        self.follow_label = plain_label(tr("Follow up"), "quiet")
        self.follow_edit = DayEdit(self)
        self.follow_edit.setAccessibleName(tr("Follow up"))
        self.follow_edit.setToolTip(tr("Day on which to ask the customer again; the answer takes it away"))
        self.follow_edit.setFixedWidth(_DAY_WIDTH)
        self.follow_edit.editingFinished.connect(self._follow_up)
        row.addWidget(self.follow_label)
        row.addWidget(self.follow_edit)
        card.body.addLayout(row)
        card.body.addWidget(self._older())
        self.state_label = LinkedText("quiet", self)
        self.state_label.hide()
        card.body.addWidget(self.state_label)
        card.body.setSpacing(6)
        return card

    def _older(self) -> QWidget:
        self.older_bar = QFrame(self)
        row = QHBoxLayout(self.older_bar)
        row.setContentsMargins(0, 0, 0, 0)
        self.older_label = plain_label("", "fault", wraps=True)
        self.newest_button = QPushButton(tr("Back to the newest"), self)
        row.addWidget(self.older_label, 1)
        row.addWidget(self.newest_button)
        self.older_bar.hide()
        return self.older_bar

    def _show_touched_notice(self) -> None:
        """Tell of touched quotations by themselves, once for each set of them."""
        touched = self.book.touched
        place = self.tabs.indexOf(self.book)
        self.tabs.setTabText(place, tr("&Book ({0} touched)").format(len(touched)) if touched else tr("&Book"))
        ids = tuple(one.stored.id for one in touched)
        if not ids:
            self.notice.put_away()
        elif ids != self._touched_told:
            numbers = ", ".join(one.stored.quotation.terms.heading.number for one in touched[:3])
            more = "…" if len(touched) > 3 else ""
            text = tr("Catalog or price lists have changed under open quotations: {0}{1}").format(numbers, more)
            self.notice.notify(text, tone=Tone.CAUTION, offers=(Offer(tr("Show"), self._show_touched),))
        self._touched_told = ids

    def _show_touched(self) -> None:
        self.show_panel(self.book)
        self.book.touched_tree.setFocus()
        self.notice.put_away()
