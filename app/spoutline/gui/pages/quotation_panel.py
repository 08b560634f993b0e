"""The left side of the quotations: terms, amounts side by side, steps, and the list of the book."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLineEdit, QProgressBar, QPushButton, QVBoxLayout, QWidget

from spoutline.book.quotation_records import QuotationEntry, StoredQuotation
from spoutline.documents.quotation.option_sections import gap_text
from spoutline.explain.story import Story
from spoutline.gui.models.quotation_columns import AmountRow
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr
from spoutline.model.quotation import Quotation, QuotationStatus
from spoutline.model.quotation_life import may_become

_GAPS_SHOWN = 6


class QuotationPanel(QWidget):
    """Lays out the fields and buttons; the page binds them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._making(), 3)
        column.addWidget(self._list(), 2)

    @property
    def name(self) -> str:
        """Name of the person who takes the steps."""
        return self.name_edit.text().strip()

    @property
    def option(self) -> int:
        """Which option the pick list is for, counted from 0."""
        return max(0, self.option_box.currentIndex())

    def say(self, text: str) -> None:
        """Say what went wrong, or how things stand."""
        self.state_label.setText(text)

    def show_progress(self, done: int, total: int) -> None:
        """Show how far the quotation is, with a way to stop it."""
        self.progress_bar.setRange(0, max(total, 1))
        self.progress_bar.setValue(done)
        self.progress_bar.show()
        self.stop_button.show()
        self.make_button.setEnabled(False)
        if done >= total > 0:
            self.say(tr("All positions planned; choosing sets together and adding up…"))
        else:
            self.say(tr("Planning {done} of {total} positions over all options…").format(done=done, total=total))

    def hide_progress(self) -> None:
        """Take the progress away."""
        self.progress_bar.hide()
        self.stop_button.hide()
        self.make_button.setEnabled(True)
        self.say("")

    def show_options(self, titles: tuple[str, ...]) -> None:
        """Offer these options for the pick list."""
        self.option_box.clear()
        self.option_box.addItems(titles)

    def show_open_prices(self, quotation: Quotation, story: Story) -> None:
        """Name the prices that block the issue."""
        gaps = sorted({gap_text(line, story) for _, line in quotation.open_lines})
        shown = gaps[:_GAPS_SHOWN] + (
            [tr("and {0} more").format(len(gaps) - _GAPS_SHOWN)] if gaps[_GAPS_SHOWN:] else []
        )
        self.gap_label.setText("\n".join((tr("These prices block the issue:"), *shown)) if gaps else "")
        self.gap_label.setVisible(bool(gaps))

    def show_steps(
        self, made: Quotation | None, stored: StoredQuotation | None, *, is_kept: bool, has_terms: bool
    ) -> None:
        """Offer the steps that can be taken now."""
        status = stored.status if stored is not None else None
        self.make_button.setEnabled(has_terms)
        self.keep_button.setEnabled(made is not None and not is_kept)
        is_draft = is_kept and status is QuotationStatus.DRAFT
        self.issue_button.setEnabled(is_draft and made is not None and not made.open_lines)
        answerable = is_kept and status is not None and may_become(status, QuotationStatus.ACCEPTED)
        self.accept_button.setEnabled(answerable)
        self.decline_button.setEnabled(answerable)
        for button in self.save_buttons.values():
            button.setEnabled(made is not None)
        if made is None or stored is None:
            words = tr("Not in the book yet") if made is not None else tr("No quotation yet")
        else:
            words = f"{stored.quotation.terms.heading.number}, r{stored.revision}: {stored.status.value}"
            words += "" if is_kept else " – " + tr("changed, not kept yet")
        self.status_label.setText(words)

    def _making(self) -> QWidget:
        card = Card("", self)
        card.body.addWidget(plain_label(tr("Quotation"), "pageTitle"))
        row = QHBoxLayout()
        self.terms_label = plain_label(tr("No terms file chosen"), "quiet")
        self.example_button = QPushButton(tr("Ready terms…"), self)
        self.example_button.setToolTip(tr("Write a ready terms file, to be edited, and use it"))
        self.terms_button = QPushButton(tr("Terms file…"), self)
        self.make_button = QPushButton(tr("Quote this survey"), self)
        self.make_button.setObjectName("primary")
        row.addWidget(self.terms_label, 1)
        row.addWidget(self.example_button)
        row.addWidget(self.terms_button)
        row.addWidget(self.make_button)
        card.body.addLayout(row)
        row = QHBoxLayout()
        self.progress_bar = QProgressBar(self)
        self.progress_bar.setAccessibleName(tr("How far the quotation is"))
        self.stop_button = QPushButton(tr("Stop"), self)
        row.addWidget(self.progress_bar, 1)
        row.addWidget(self.stop_button)
        self.progress_bar.hide()
        self.stop_button.hide()
        card.body.addLayout(row)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.gap_label = plain_label("", "fault", wraps=True)
        self.gap_label.hide()
        self.status_label = plain_label("", "price")
        for label in (self.state_label, self.gap_label, self.status_label):
            card.body.addWidget(label)
        self.amounts: RecordTable[AmountRow] = RecordTable((), self)
        self.amount_table = Table(tr("Options side by side"), self, shares=(5, 4, 4, 4, 4))
        self.amount_table.setModel(self.amounts)
        card.body.addWidget(self.amount_table, 1)
        card.body.addLayout(self._steps())
        card.body.addLayout(self._saving())
        return card

    def _steps(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.name_edit = QLineEdit(self)
        self.name_edit.setAccessibleName(tr("Your name"))
        self.name_edit.setPlaceholderText(tr("Your name"))
        self.keep_button = QPushButton(tr("Keep"), self)
        self.issue_button = QPushButton(tr("Issue"), self)
        self.accept_button = QPushButton(tr("Accepted"), self)
        self.decline_button = QPushButton(tr("Declined"), self)
        row.addWidget(self.name_edit, 1)
        for button in (self.keep_button, self.issue_button, self.accept_button, self.decline_button):
            row.addWidget(button)
        return row

    def _saving(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.save_buttons: dict[str, QPushButton] = {}
        for suffix, words in (("pdf", "PDF…"), ("xlsx", "XLSX…"), ("csv", "CSV…"), ("pick", tr("Pick list…"))):
            button = QPushButton(words, self)
            row.addWidget(button)
            self.save_buttons[suffix] = button
        self.option_box = QComboBox(self)
        self.option_box.setAccessibleName(tr("Option of the pick list"))
        row.addWidget(self.option_box, 1)
        return row

    def _list(self) -> QWidget:
        card = Card("", self)
        card.body.addWidget(plain_label(tr("Quotations in the book"), "quiet"))
        self.search_edit = QLineEdit(self)
        self.search_edit.setAccessibleName(tr("Search quotations"))
        self.search_edit.setPlaceholderText(tr("Number, customer, site or part"))
        self.search_edit.setClearButtonEnabled(True)
        card.body.addWidget(self.search_edit)
        self.entries: RecordTable[QuotationEntry] = RecordTable((), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.entries)
        self.entry_table = Table(tr("Quotations in the book"), self, stretch=2)
        self.entry_table.setModel(proxy)
        self.entry_table.setSortingEnabled(True)
        self.entry_table.sortByColumn(-1, Qt.SortOrder.AscendingOrder)
        card.body.addWidget(self.entry_table, 1)
        return card
