"""The price lists of the edition in hand, a price file on its way into its draft, and which price applies on a day."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.catalogues import CatalogueService
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.intake.works import PriceListWork
from spoutline.gui.jobs import Ticket
from spoutline.gui.models.price_list_rows import price_list_columns, verdict_columns
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.pages.catalogues.chosen import FILE, PRICE, PRICE_LISTS, InHand
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillSpin
from spoutline.gui.wording import told, tr
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.pricing import PriceList
from spoutline.planning.pricing.applying import PriceAnswer, PriceAsked

_MOST = 1_000_000


class PricesPanel(QWidget):
    """Reads and writes the book off the window's thread."""

    def __init__(
        self,
        context: Context,
        in_hand: InHand,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
    ) -> None:
        super().__init__(parent)
        self._context, self._in_hand, self._today = context, in_hand, today
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        self.state_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.state_label)
        self.lists: RecordTable[PriceList] = RecordTable(price_list_columns(today()), self)
        self.table = Table(tr("Price lists"), self, shares=(16, 20, 16, 8, 11, 11, 10, 8))
        self.table.setModel(self.lists)
        self.table.teach(tr("Price lists of the edition in hand come here; a file of them can be read in."))
        column.addWidget(self.table, 2)
        column.addLayout(self._taking())
        column.addLayout(self._asking())
        self.answer_label = plain_label("", "cardTitle", wraps=True)
        column.addWidget(self.answer_label)
        self.verdicts = RecordTable(verdict_columns(), self)
        self.answers = Table(tr("Why this price applies"), self, shares=(18, 42, 14, 12, 14))
        self.answers.setModel(self.verdicts)
        column.addWidget(self.answers, 1)

    def _edit(self, name: str, hint: str) -> QLineEdit:
        edit = QLineEdit(self)
        edit.setAccessibleName(name)
        edit.setPlaceholderText(hint)
        return edit

    def _taking(self) -> QVBoxLayout:
        self.id_edit = self._edit(tr("Name of the price list"), tr("name of the list"))
        self.maker_edit = self._edit(tr("Maker of the price list"), tr("maker"))
        self.supplier_edit = self._edit(tr("Supplier of the price list"), tr("supplier"))
        self.currency_edit = self._edit(tr("Currency of the price list"), "USD")
        self.from_edit = self._edit(tr("First day of the price list"), tr("from, such as 2027-01-01"))
        self.to_edit = self._edit(tr("Last day of the price list"), tr("to; empty: open"))
        self.take_button = QPushButton(tr("&Take in a price file…"), self)
        self.take_button.clicked.connect(lambda _=False: self._choose_file())
        self.remove_button = QPushButton(tr("Take this &list out"), self)
        self.remove_button.clicked.connect(lambda _=False: self.remove())
        row = QHBoxLayout()
        for edit in (
            self.id_edit,
            self.maker_edit,
            self.supplier_edit,
            self.currency_edit,
            self.from_edit,
            self.to_edit,
        ):
            row.addWidget(edit)
        self.hands = PaperHands(
            self._context.session.workbench,
            self._context.jobs,
            self._wanted,
            key=FILE,
            tell=self.state_label.setText,
            parent=self,
        )
        paper = self.hands.menu_button(tr("Paper (P&DF)"), tr("The price lists of the edition in hand, as a paper"))
        buttons = QHBoxLayout()
        buttons.addStretch(1)
        for button in (self.take_button, self.remove_button, paper):
            buttons.addWidget(button)
        column = QVBoxLayout()
        column.addLayout(row)
        column.addLayout(buttons)
        return column

    def _asking(self) -> QHBoxLayout:
        self.part_edit = self._edit(tr("Part whose price is asked"), tr("part number"))
        self.day_edit = self._edit(tr("Day of the price"), self._today().isoformat())
        self.quantity_box = StillSpin(self)
        self.quantity_box.setRange(1, _MOST)
        self.quantity_box.setAccessibleName(tr("Quantity ordered"))
        self.ask_button = QPushButton(tr("&Which price applies?"), self)
        self.ask_button.setObjectName("primary")
        self.ask_button.clicked.connect(lambda _=False: self.ask())
        self.part_edit.returnPressed.connect(self.ask)
        row = QHBoxLayout()
        form = QFormLayout()
        form.addRow(tr("Part &number"), self.part_edit)
        row.addLayout(form, 2)
        row.addWidget(self.day_edit, 1)
        row.addWidget(self.quantity_box)
        row.addWidget(self.ask_button)
        return row

    def refresh(self) -> None:
        """Show the price lists of the edition in hand."""
        row = self._in_hand.row
        if row is None:
            return
        service, ref = self._service(), row.ref
        for widget in (self.take_button, self.remove_button):
            widget.setEnabled(bool(self._in_hand.draft_name))

        def work(_: Ticket) -> tuple[PriceList, ...]:
            return service.shelf().price_lists(ref)

        self._context.jobs.start(PRICE_LISTS, work, self._show, self._fail)

    def take_in(self, path: Path) -> None:
        """Take a price file into the draft with what is written of it; a supplier's table is shown first."""
        from spoutline.catalogue.price_lists import is_price_table

        name, service = self._in_hand.draft_name, self._service()
        try:
            head = self._head()
        except InputFault as fault:
            self._fail(fault)
            return
        if not is_price_table(path):
            self._show_table(path, head)
            return

        def work(_: Ticket) -> tuple[PriceList, ...]:
            service.prices().import_file(name, path, head)
            return service.shelf().price_lists(EditionRef(name, is_draft=True))

        self._context.jobs.start(PRICE_LISTS, work, self._show_taken, self._fail)

    def _show_table(self, path: Path, head: dict[str, object]) -> None:
        """Show a supplier's table on its way into the list, and the lists of the draft once it was taken over."""
        name = self._in_hand.draft_name
        if not (head["id"] and head["maker"]):
            wanted = tr("write the name of the list and its maker first")
            self._fail(InputFault((InputProblem("", tr("price list"), repr(head["id"] or head["maker"]), wanted),)))
            return
        service = self._service()
        dialog = TableIntakeDialog(
            tr("Price list {0}").format(head["id"]),
            self._context.intake,
            PriceListWork(self._service, lambda: name, head),
            self,
        )
        dialog.open_file(path)
        if dialog.exec() == QDialog.DialogCode.Accepted:

            def work(_: Ticket) -> tuple[PriceList, ...]:
                return service.shelf().price_lists(EditionRef(name, is_draft=True))

            def show(lists: tuple[PriceList, ...]) -> None:
                self._show_taken(lists)
                self.state_label.setText(dialog.told)

            self._context.jobs.start(PRICE_LISTS, work, show, self._fail)

    def remove(self) -> None:
        """Take the chosen list out of the draft."""
        one, name, service = self.table.current_record(), self._in_hand.draft_name, self._service()
        if not isinstance(one, PriceList) or not name:
            return

        def work(_: Ticket) -> tuple[PriceList, ...]:
            service.prices().remove(name, one.id)
            return service.shelf().price_lists(EditionRef(name, is_draft=True))

        self._context.jobs.start(PRICE_LISTS, work, self._show_taken, self._fail)

    def ask(self) -> None:
        """Show which price of the part applies, and why."""
        row = self._in_hand.row
        if row is None:
            return
        service, ref, text, quantity = self._service(), row.ref, self.part_edit.text(), self.quantity_box.value()
        try:
            day = _day(self.day_edit.text() or self._today().isoformat(), tr("day"))
        except InputFault as fault:
            self._fail(fault)
            return
        currency = self._context.session.survey.site.currency

        def work(_: Ticket) -> PriceAnswer:
            part = service.named_part(ref, text)
            lists = {one.currency for one in service.prices().lists(ref) if one.maker == part.maker}
            currencies = (currency, *sorted(lists - {currency}))
            return service.prices().price(ref, PriceAsked(part=part, quantity=quantity, day=day, currencies=currencies))

        self._context.jobs.start(PRICE, work, self._show_answer, self._fail)

    def _service(self) -> CatalogueService:
        return self._context.session.workbench.catalogues()

    def _head(self) -> dict[str, object]:
        until = self.to_edit.text().strip()
        return {
            "id": self.id_edit.text().strip(),
            "maker": self.maker_edit.text().strip(),
            "supplier": self.supplier_edit.text().strip(),
            "currency": self.currency_edit.text().strip().upper() or "USD",
            "valid_from": _day(self.from_edit.text(), tr("valid from")),
            "valid_to": _day(until, tr("valid to")) if until else None,
        }

    def _wanted(self) -> WantedPaper | None:
        row, service, story = self._in_hand.row, self._service(), self._context.story
        if row is None:
            return None
        ref, today = row.ref, self._today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.prices().pdf(ref, story, dated=today, form=form)

        return WantedPaper(make=make, stem=f"{file_stem(str(ref))}-price-lists", name=str(ref))

    def _choose_file(self) -> None:
        name, _ = QFileDialog.getOpenFileName(self, tr("Take in a price file"), "", "*.csv *.tsv *.txt *.xlsx")
        if name:
            self.take_in(Path(name))

    def _show(self, lists: tuple[PriceList, ...]) -> None:
        self.lists.show_records(lists)
        self.table.fit_columns()
        self.state_label.setText(
            tr("{0} price lists in this edition; those in folders hold beside them.").format(len(lists))
        )

    def _show_taken(self, lists: tuple[PriceList, ...]) -> None:
        row = self._in_hand.row
        if row is not None and row.edition is None:
            self._show(lists)
        else:
            self.state_label.setText(tr("{0} price lists in the draft now.").format(len(lists)))

    def _show_answer(self, answer: PriceAnswer) -> None:
        self.verdicts.show_records(answer.verdicts)
        self.answers.fit_columns()
        found = answer.applies
        words = tr("No price list applies to {part} on {day}.")
        if found is not None:
            words = tr("{part} on {day}: {price} from list {name}")
        self.answer_label.setText(
            words.format(
                part=answer.asked.part,
                day=answer.asked.day.isoformat(),
                price=f"{found.reached.unit_price} {found.price_list.currency}" if found else "",
                name=found.price_list.id if found else "",
            )
        )

    def _fail(self, fault: Exception) -> None:
        self.state_label.setText(told(str(fault)))


def _day(text: str, field: str) -> date:
    try:
        return date.fromisoformat(text.strip())
    except ValueError:
        raise InputFault((InputProblem("", field, repr(text), tr("write the day as 2027-03-01")),)) from None
