"""Every price with where it comes from; a person can answer for one that is missing, and take the word back."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QRadioButton, QVBoxLayout, QWidget

from spoutline.gui.models.quotation_prices import PricedPart, price_columns
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import PriceOverride


class PricesPanel(QWidget):
    """The prices and the form of one answer.

    Signals
    -------
    answered(str, object, str)
        Part number, the price as typed or None where it follows, and the reason.
    taken_back(str)
        The word about this part number is to stand no longer.
    """

    answered = Signal(object, object, str)
    taken_back = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._is_open = False
        self._reason = ""  # the one given last: most prices of a list are missing for the same one
        self._typed_for: tuple[PartRef, PriceOverride | None] | None = None  # what the fields were filled for
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        self.lead_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.lead_label)
        self.model: RecordTable[PricedPart] = RecordTable(price_columns(""), self)
        self.table = Table(tr("Prices and where they come from"), self, shares=(4, 6, 3, 3, 3, 5))
        self.table.setModel(self.model)
        self.table.teach(tr("The prices of a quotation come here once a survey is quoted."))
        self.table.picked.connect(lambda _: self._show_part())
        column.addWidget(self.table, 1)
        self.part_label = plain_label("", "question", wraps=True)
        column.addWidget(self.part_label)
        column.addLayout(self._price_row())
        column.addLayout(self._reason_row())

    @property
    def part(self) -> PricedPart | None:
        """The part in hand."""
        record = self.table.current_record()
        return record if isinstance(record, PricedPart) else None

    def show_parts(self, parts: Sequence[PricedPart], currency: str) -> None:
        """Show other prices; the part in hand stays in hand where it is still there."""
        before = self.part
        self.model.replace_columns(price_columns(currency))
        self.model.show_records(parts)
        self.table.fit_columns()
        places = {one.part: place for place, one in enumerate(parts)}
        if parts:
            self.table.pick_row(places.get(before.part, 0) if before is not None else 0)
        open_count = sum(one.is_open for one in parts)
        said_count = sum(one.override is not None for one in parts)
        self.lead_label.setText(
            tr("{0} missing, {1} by a person's word, {2} in all.").format(open_count, said_count, len(parts))
            if parts
            else tr("Prices are shown once there is a quotation.")
        )
        self._show_part()

    def start(self) -> None:
        """Turn to the first part without a price for which nobody has answered yet, the keyboard in its price."""
        self._turn_to_open(range(len(self.model.records)))

    def go_on(self) -> None:
        """Turn to the next such part; the reason just given is offered for it too."""
        self._reason = self.reason_edit.text()
        here = self.table.currentIndex().row()
        self._turn_to_open((*range(here + 1, len(self.model.records)), *range(max(here, 0))))

    def point_at(self, *, is_reason: bool) -> None:
        """Put the keyboard into the reason, or into the price, and let what is typed take the place of its text."""
        editor = self.reason_edit if is_reason else self.price_edit
        editor.setFocus()
        editor.selectAll()

    def _turn_to_open(self, places: Iterable[int]) -> None:
        parts = self.model.records
        for place in places:
            if parts[place].is_open and parts[place].override is None:
                self.table.pick_row(place)
                self.price_edit.setFocus()
                return

    def allow(self, is_open: bool) -> None:
        """Let answers be given, or not: not about an older revision, and not while a step is being taken."""
        self._is_open = is_open
        self._enable()

    def _price_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.price_choice = QRadioButton(tr("Price of one piece"), self)
        self.price_choice.setChecked(True)
        self.price_edit = QLineEdit(self)
        self.price_edit.setAccessibleName(tr("Price of one piece"))
        self.price_edit.setMaximumWidth(130)
        self.follows_choice = QRadioButton(tr("Price follows"), self)
        self.follows_choice.setToolTip(tr("The quotation goes out without this price and says so on the paper"))
        self.price_choice.toggled.connect(lambda _: self._enable())
        self.price_edit.returnPressed.connect(self._answer)
        row.addWidget(self.price_choice)
        row.addWidget(self.price_edit)
        row.addSpacing(10)
        row.addWidget(self.follows_choice)
        row.addStretch(1)
        return row

    def _reason_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        label = QLabel(tr("Reaso&n"), self)
        self.reason_edit = QLineEdit(self)
        self.reason_edit.setAccessibleName(tr("Reason"))
        self.reason_edit.setPlaceholderText(tr("Needed: stands on the paper beside your name"))
        self.reason_edit.returnPressed.connect(self._answer)
        label.setBuddy(self.reason_edit)
        self.answer_button = QPushButton(tr("&Answer for it"), self)
        self.answer_button.setToolTip(
            tr("Put this price, your name and reason into the terms, and quote again; other parts may be cheaper then")
        )
        self.back_button = QPushButton(tr("Ta&ke it back"), self)
        self.back_button.setToolTip(tr("Let the price lists decide again, and quote again"))
        self.answer_button.clicked.connect(self._answer)
        self.back_button.clicked.connect(self._take_back)
        row.addWidget(label)
        row.addWidget(self.reason_edit, 1)
        row.addWidget(self.answer_button)
        row.addWidget(self.back_button)
        return row

    def _show_part(self) -> None:
        part = self.part
        if part is None:
            self.part_label.setText("")
            self._typed_for = None
            self._enable()
            return
        self.part_label.setText(f"{part.part.number}, {part.name}: {part.source_text}")
        override = part.override
        if self._typed_for == (part.part, override):
            self._enable()
            return  # somebody may be typing while a quotation comes in
        self._typed_for = (part.part, override)
        self.reason_edit.setText(override.reason if override is not None else self._reason)
        price = override.unit_price if override is not None else None
        self.price_edit.setText(f"{price:f}" if price is not None else "")
        follows = override is not None and price is None
        (self.follows_choice if follows else self.price_choice).setChecked(True)
        self._enable()

    def _enable(self) -> None:
        part = self.part
        is_ready = self._is_open and part is not None
        for widget in (self.price_choice, self.follows_choice, self.reason_edit, self.answer_button):
            widget.setEnabled(is_ready)
        self.price_edit.setEnabled(is_ready and self.price_choice.isChecked())
        self.back_button.setEnabled(is_ready and part is not None and part.override is not None)

    def _answer(self) -> None:
        part = self.part
        if part is not None and self.answer_button.isEnabled():
            price = self.price_edit.text() if self.price_choice.isChecked() else None
            self.answered.emit(part.part, price, self.reason_edit.text())

    def _take_back(self) -> None:
        part = self.part
        if part is not None:
            self.taken_back.emit(part.part)
