"""The offer: on which terms it is made, its options side by side, its steps, its papers as files."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QMenu,
    QProgressBar,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from spoutline.explain.plan.story import Story
from spoutline.gui.dialogs.handing import PaperHands, button_grid
from spoutline.gui.escaping import mnemonic_safe
from spoutline.gui.local_days import day_text
from spoutline.gui.models.quotation_amounts import AmountRow, amount_columns, amount_rows
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.pages.quotation.alternates import AlternateButton
from spoutline.gui.pages.quotation.files import FileKind
from spoutline.gui.pages.quotation.foreseen import MoneyRow
from spoutline.gui.pages.quotation.guidance import gap_words, next_words
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.terms import TermsInHand
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.empty_page import EmptyPage
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus


class OfferPanel(QWidget):
    """Lays out fields and buttons; the page binds them.

    Signals
    -------
    accepted(str)
        The customer accepted; the title of the option ordered, empty where there is only one.
    table_wanted(FileKind)
        A table of the quotation is wanted as a file.
    """

    accepted = Signal(str)
    table_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._terms: TermsInHand | None = None
        self._hand = InHand()
        self._ordered = ""
        self._paper_hands: Mapping[FileKind, PaperHands] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        column.addLayout(self._terms_row())
        column.addLayout(self._making_row())
        self.alternate_button = AlternateButton(self)
        column.addWidget(self.alternate_button)
        column.addLayout(self._progress_row())
        column.addLayout(self._gap_row())
        self.amounts: RecordTable[AmountRow] = RecordTable((), self)
        self.amount_table = Table(tr("Options side by side"), self, shares=(7, 5, 5, 5, 5), wraps=True)
        self.amount_table.setModel(self.amounts)
        self.amount_table.setMinimumHeight(120)
        self.middle = QStackedWidget(self)
        self.empty = EmptyPage(tr("No quotation yet"), "", tr("Quote this surve&y"), self.middle)
        self.empty.begun.connect(self._begin)
        self.middle.addWidget(self.empty)
        self.middle.addWidget(self.amount_table)
        column.addWidget(self.middle, 1)
        self.next_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.next_label)
        column.addLayout(self._steps_row())
        column.addLayout(self._answer_row())
        self._paper_row = QHBoxLayout()
        self._column = column
        column.addLayout(self._paper_row)
        column.addLayout(self._saving_row())

    @property
    def option(self) -> int:
        """Which option the pick list is for, counted from 0."""
        return max(0, self.option_box.currentIndex())

    @property
    def note(self) -> str:
        """What was noted about the customer's answer."""
        return self.note_edit.text().strip()

    def add_money(self, row: MoneyRow) -> None:
        """Take in what tells what a change of the survey means in money, above the options."""
        self._column.insertWidget(self._column.indexOf(self.middle), row)

    def add_hands(self, hands: Mapping[FileKind, PaperHands]) -> None:
        """Take in what saves, prints and mails each paper of the quotation."""
        self._paper_hands = hands
        self._paper_row.addLayout(button_grid(hands[FileKind.PDF].buttons, 3))
        self._option_row.insertWidget(1, hands[FileKind.PICK_LIST].menu_button(tr("Pick &list")))
        margin = hands[FileKind.MARGIN].menu_button(
            tr("Margi&n"), tr("Cost and margin by line and option: internal, never the customer's")
        )
        menu = margin.menu()
        menu.addSeparator()
        for kind, words in ((FileKind.MARGIN_WORKBOOK, tr("&XLSX…")), (FileKind.MARGIN_TABLE, tr("CSV…"))):
            menu.addAction(words, lambda wanted=kind: self.table_wanted.emit(wanted))
        self._table_row.addWidget(margin, 1)

    def show_terms(self, terms: TermsInHand | None) -> None:
        """Show on which terms the next quotation is made."""
        self._terms = terms
        if terms is None:
            self.terms_label.setText(tr("No terms in hand"))
            self.terms_label.setToolTip("")
            return
        words, base = [tr("Terms: {0}").format(terms.title)], terms.terms
        if base is not None:
            words += [tr("dated {0}").format(day_text(base.heading.dated)), tr("to {0}").format(base.customer.name)]
        self.terms_label.setText(", ".join(words))
        self.terms_label.setToolTip(str(terms.file) if terms.file is not None else terms.title)

    def show_quotation(self, quotation: Quotation | None, story: Story) -> None:
        """Show the options of a quotation."""
        if quotation is None:
            self.amounts.show_records(())
            self.option_box.clear()
            return
        self.amounts.replace_columns(amount_columns(quotation))
        self.amounts.show_records(amount_rows(quotation, story))
        self.amount_table.fit_columns()
        chosen = self.option
        self.option_box.clear()
        self.option_box.addItems([option.title for option in quotation.options])
        self.option_box.setCurrentIndex(min(chosen, len(quotation.options) - 1))
        self._offer_orders([option.title for option in quotation.options])

    def show_steps(
        self,
        hand: InHand,
        story: Story,
        today: date,
        *,
        is_stepping: bool,
        is_quoting: bool,
        survey_changed: bool = False,
    ) -> None:
        """Offer the steps that can be taken now; none while one is being taken or a quotation is being made.

        ``survey_changed`` tells whether the survey that is open is that of the quotation, changed since.
        """
        self._hand = hand
        is_free = not is_stepping and not is_quoting
        made = hand.quotation
        gaps = gap_words(made, story) if made is not None and not hand.is_older else ""
        self.gap_label.setText(gaps)
        self.gap_label.setVisible(bool(gaps))
        self.gap_button.setVisible(bool(gaps))
        has_terms = self._terms is not None
        words = next_words(hand, today, has_terms=has_terms, survey_changed=survey_changed)
        self.next_label.setText(tr("One moment…") if is_stepping else words)
        self._show_beginning(made, has_terms=has_terms, is_free=is_free)
        self.make_button.setEnabled(self._terms is not None and is_free)
        self.anew_button.setEnabled(hand.may_be_revised and is_free)
        self.terms_button.setEnabled(is_free)
        self.customer_button.setEnabled(is_free)
        self.take_button.setEnabled(is_free)
        self.own_terms_action.setEnabled(made is not None)
        self.alternate_button.show_quotation(made, story, is_older=hand.is_older)
        self.alternate_button.setEnabled(is_free)
        self.keep_button.setEnabled(hand.may_be_kept and is_free)
        self.issue_button.setEnabled(hand.may_be_issued and is_free)
        for widget in (self.note_edit, self.accept_button, self.decline_button):
            widget.setEnabled(hand.may_be_answered and is_free)
            widget.setVisible(hand.may_be_answered)
        for button in self.save_buttons.values():
            button.setEnabled(made is not None)
        for kind, hands in self._paper_hands.items():
            if kind is not FileKind.PDF:  # which waits for its pages
                hands.allow(made is not None)
        self.suppliers_button.setEnabled(made is not None)
        self.option_box.setEnabled(made is not None)
        self._show_ordered(hand)
        self._mark_next(survey_changed=survey_changed and has_terms)

    def _show_beginning(self, made: Quotation | None, *, has_terms: bool, is_free: bool) -> None:
        """Where nothing is quoted, say what comes here and offer the one step that begins it."""
        self.middle.setCurrentWidget(self.empty if made is None else self.amount_table)
        self.empty.button.setEnabled(is_free)
        lead = tr("Here the options of the quotation come to stand side by side: what each covers, costs and takes.")
        next_step = (
            tr("The terms are in hand.")
            if has_terms
            else tr("It begins with terms: whose offer it is, prices, labor, charges, days.")
        )
        self.empty.ask_for(f"{lead} {next_step}", tr("Quote this surve&y") if has_terms else tr("Take terms"))

    def _begin(self) -> None:
        if self._terms is not None:
            self.make_button.click()
        else:
            self.take_button.showMenu()

    def show_progress(self, done: int, total: int) -> str:
        """Show how far the quotation is, with a way to stop it; return that in words. Of 0 nothing is known yet."""
        self.progress_bar.setRange(0, max(total, 1))
        self.progress_bar.setValue(done)
        self.progress_bar.show()
        self.stop_button.show()
        if not total:
            return tr("Planning…")
        if done >= total:
            return tr("All positions planned; choosing sets together and adding up…")
        if self._has_ended_an_option(done, total):  # positions are counted again when the next option is begun
            return tr("{done} of {total} positions planned over all options; choosing sets together…").format(
                done=done, total=total
            )
        return tr("Planning {done} of {total} positions over all options…").format(done=done, total=total)

    def _has_ended_an_option(self, done: int, total: int) -> bool:
        base = None if self._terms is None else self._terms.base
        positions = total // len(base.options) if base is not None else 0
        return positions > 0 and done > 0 and done % positions == 0

    def hide_progress(self) -> None:
        """Take the progress away."""
        self.progress_bar.hide()
        self.stop_button.hide()

    def _offer_orders(self, titles: list[str]) -> None:
        """Let an order out of several options name one of them."""
        self.accept_menu.clear()
        for title in titles if len(titles) > 1 else []:
            self.accept_menu.addAction(mnemonic_safe(title)).setData(title)
        if len(titles) > 1:
            self.accept_button.setMenu(self.accept_menu)
        elif self.accept_button.menu() is not None:
            self.accept_button.setMenu(None)  # type: ignore[arg-type]  # Qt takes the menu away

    def _show_ordered(self, hand: InHand) -> None:
        """Let the pick list be that of the option ordered."""
        place = self.option_box.findText(hand.ordered) if hand.ordered else -1
        if place >= 0 and hand.ordered != self._ordered:
            self.option_box.setCurrentIndex(place)
        self._ordered = hand.ordered

    def _accept(self) -> None:
        """Take the only option; where there are several, the menu of the button asks for one."""
        if self.accept_button.menu() is None:
            self.accepted.emit("")

    def _mark_next(self, *, survey_changed: bool) -> None:
        """Let the button stand out that is the usual next one."""
        hand = self._hand
        wanted: QPushButton | None = None
        if hand.quotation is None:
            wanted = self.make_button
        elif hand.may_be_kept:
            wanted = self.keep_button
        elif survey_changed and not hand.is_older and hand.status is not QuotationStatus.ACCEPTED:
            wanted = self.make_button
        elif hand.may_be_issued:
            wanted = self.issue_button
        elif hand.status in (QuotationStatus.EXPIRED, QuotationStatus.DECLINED) and not hand.is_older:
            wanted = self.anew_button
        for button in (self.make_button, self.anew_button, self.keep_button, self.issue_button):
            name = "primary" if button is wanted else ""
            if button.objectName() != name:
                button.setObjectName(name)
                button.style().unpolish(button)
                button.style().polish(button)

    def _terms_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.terms_label = plain_label(tr("No terms in hand"), wraps=True)
        menu = QMenu(self)
        self.file_action = QAction(tr("From a &file…"), self)
        self.own_terms_action = QAction(tr("Those of &this quotation"), self)
        self.example_action = QAction(tr("&Ready ones, written into a file…"), self)
        for action in (self.file_action, self.own_terms_action, self.example_action):
            menu.addAction(action)
        self.take_button = QPushButton(tr("Take terms"), self)
        self.take_button.setMenu(menu)
        self.take_button.setToolTip(tr("Where the terms of the next quotation come from"))
        self.terms_button = QPushButton(tr("&Terms…"), self)
        self.terms_button.setToolTip(tr("Read and change the terms in hand"))
        row.addWidget(self.terms_label, 1)
        row.addWidget(self.take_button)
        row.addWidget(self.terms_button)
        self.customer_button = QPushButton(tr("&Customers…"), self)
        self.customer_button.setToolTip(tr("Keep the customers of the book, and choose whom to quote to"))
        row.addWidget(self.customer_button)
        return row

    def _making_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.make_button = QPushButton(tr("Quote this surve&y"), self)
        self.make_button.setToolTip(tr("Quote the survey that is open, on the terms in hand"))
        self.anew_button = QPushButton(tr("Re&quote it"), self)
        self.anew_button.setToolTip(
            tr("Quote the quotation looked at again: its own survey and terms, prices and catalog of today")
        )
        row.addWidget(self.make_button, 1)
        row.addWidget(self.anew_button, 1)
        return row

    def _progress_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.progress_bar = QProgressBar(self)
        self.progress_bar.setAccessibleName(tr("How far the quotation is"))
        self.progress_bar.setTextVisible(False)
        self.stop_button = QPushButton(tr("Stop"), self)
        row.addWidget(self.progress_bar, 1)
        row.addWidget(self.stop_button)
        self.hide_progress()
        return row

    def _gap_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.gap_label = plain_label("", "fault", wraps=True)
        self.gap_button = QPushButton(tr("Answer for them"), self)
        self.gap_label.hide()
        self.gap_button.hide()
        row.addWidget(self.gap_label, 1)
        row.addWidget(self.gap_button)
        return row

    def _steps_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.keep_button = QPushButton(tr("Save in the boo&k"), self)
        self.issue_button = QPushButton(tr("Iss&ue"), self)
        row.addWidget(self.keep_button, 1)
        row.addWidget(self.issue_button, 1)
        return row

    def _answer_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.note_edit = QLineEdit(self)
        self.note_edit.setAccessibleName(tr("Note to the customer's answer"))
        self.note_edit.setPlaceholderText(tr("Note to the answer: how it came, what was said"))
        self.accept_button = QPushButton(tr("&Accepted"), self)
        self.accept_menu = QMenu(self)
        self.accept_menu.triggered.connect(lambda action: self.accepted.emit(str(action.data())))
        self.accept_button.clicked.connect(self._accept)
        self.decline_button = QPushButton(tr("&Declined"), self)
        row.addWidget(self.note_edit, 1)
        row.addWidget(self.accept_button)
        row.addWidget(self.decline_button)
        return row

    def _saving_row(self) -> QVBoxLayout:
        """Lay out what the whole quotation is saved as, and below it what is for one option."""
        rows = QVBoxLayout()
        self._table_row, self._option_row = QHBoxLayout(), QHBoxLayout()
        rows.addLayout(self._table_row)
        rows.addLayout(self._option_row)
        self.save_buttons: dict[FileKind, QPushButton] = {}
        for kind, words in ((FileKind.WORKBOOK, tr("&XLSX…")), (FileKind.ORDER, tr("CSV…"))):
            button = QPushButton(words, self)
            button.clicked.connect(lambda _=False, wanted=kind: self.table_wanted.emit(wanted))
            self._table_row.addWidget(button, 1)
            self.save_buttons[kind] = button
        self.suppliers_button = QPushButton(tr("Suppliers…"), self)
        self.suppliers_button.setToolTip(
            tr("What is ordered from each supplier, as a file in the columns that it wants")
        )
        self._option_row.addWidget(self.suppliers_button)
        self.option_box = StillBox(self)
        self.option_box.setAccessibleName(tr("Option of the pick list and the suppliers"))
        self.option_box.setToolTip(tr("Option of the pick list and the suppliers"))
        self.option_box.setMinimumContentsLength(8)
        self._option_row.insertWidget(0, self.option_box, 1)
        return rows
