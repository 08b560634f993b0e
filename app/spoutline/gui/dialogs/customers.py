"""The firm's customers: a list, a form, and the choice for the quotation in hand."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPlainTextEdit,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.customers import fields_of
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr
from spoutline.model.customer import Customer, folded_customer_name
from spoutline.model.faults import InputFault, StoreFault
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_FILE = JobKey(JobKind.FILE, "customer list")
_LINES_HEIGHT = 68  # pixels of an entry of several lines


class CustomersDialog(FormDialog):
    """Keeps the customers of the book; once accepted, ``chosen`` is the one to be quoted to.

    Where ``is_for_site`` it is to be the customer of the station instead; ``of_site`` is that of now, None for none.
    """

    help_topic = "quotations"

    def __init__(
        self,
        workbench: Workbench,
        jobs: Jobs,
        *,
        may_choose: bool,
        display: Display,
        today: date,
        of_site: Customer | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("Customers"), parent)
        self._service = workbench.customers()
        self._workbench, self._display, self._today = workbench, display, today
        self._of_site = folded_customer_name(of_site.name) if of_site is not None else ""
        self._known: tuple[Customer, ...] = ()
        self._before: Customer | None = None  # as it was read; None while a new one is written
        self.chosen: Customer | None = None
        self.is_for_site = False
        self.use_button = self._button(tr("&Quote to this customer"), self._choose)
        self.use_button.setVisible(may_choose)
        self.site_button = self._button(tr("Customer of this s&tation"), self._choose_for_site)
        self.site_button.setToolTip(tr("New quotations of the station that is open go to this customer unasked"))
        self.hands = PaperHands(
            workbench,
            jobs,
            self._wanted,
            key=_FILE,
            tell=self._say,
            parent=self,
            refuse=self.show_fault,
        )
        parts = QSplitter(Qt.Orientation.Horizontal, self)
        parts.addWidget(self._list_side())
        parts.addWidget(self._form_side())
        parts.setStretchFactor(1, 1)
        self.body.addWidget(parts, 1)
        self.foot.addWidget(self.site_button)
        self.foot.addWidget(self.use_button)
        self.add_close()
        self.resize(860, 620)
        self.refresh(of_site.name if of_site is not None else "")

    @property
    def said(self) -> dict[str, str]:
        """What stands in the form, field by field."""
        lines = {name: edit.text() for name, edit in self.line_edits.items()}
        return {**lines, **{name: edit.toPlainText() for name, edit in self.page_edits.items()}}

    def refresh(self, name: str) -> None:
        """Show the customers that the words find, and the one of this name among them."""
        try:
            self._known = wait_for(lambda: self._service.all(self.search_edit.text()))
        except StoreFault as fault:
            self.show_fault(str(fault))
            return
        self.list.blockSignals(True)
        self.list.clear()
        for one in self._known:
            self.list.addItem(QListWidgetItem(one.name))
        self.list.blockSignals(False)
        wanted = folded_customer_name(name)
        places = [at for at, one in enumerate(self._known) if folded_customer_name(one.name) == wanted]
        self.list.setCurrentRow(places[0] if places else (0 if self._known and not name else -1))
        self._show(self.list.currentRow())

    def _list_side(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        self.search_edit = QLineEdit(side)
        self.search_edit.setAccessibleName(tr("Words to look for"))
        self.search_edit.setPlaceholderText(tr("Words to look for"))
        self.search_edit.textEdited.connect(lambda _: self.refresh(""))
        self.list = QListWidget(side)
        self.list.setAccessibleName(tr("Customers of the book"))
        self.list.currentRowChanged.connect(self._show)
        column.addWidget(self.search_edit)
        column.addWidget(self.list, 1)
        self.new_button = self._button(tr("&New customer"), self._begin)
        self.remove_button = self._button(tr("&Remove"), self._remove)
        column.addWidget(self.hands.menu_button(tr("List as a paper"), tr("The customers in view, as a paper")))
        column.addWidget(self.new_button)
        column.addWidget(self.remove_button)
        return side

    def _form_side(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        form = QFormLayout()
        self.line_edits: dict[str, QLineEdit] = {}
        self.page_edits: dict[str, QPlainTextEdit] = {}
        for name, title, is_page in (
            ("name", tr("Name"), False),
            ("address", tr("Address"), True),
            ("delivery_address", tr("Delivery address"), True),
            ("contact", tr("Contact"), False),
            ("telephone", tr("Telephone"), False),
            ("email", tr("E-mail"), False),
            ("registration", tr("Tax number"), False),
            ("payment_terms", tr("Terms of payment"), False),
            ("discounts", tr("Discount groups"), True),
        ):
            if is_page:
                page = QPlainTextEdit(side)
                page.setTabChangesFocus(True)
                page.setFixedHeight(_LINES_HEIGHT)
                page.setAccessibleName(title)
                self.page_edits[name] = page
                form.addRow(title, page)
            else:
                line = QLineEdit(side)
                line.setAccessibleName(title)
                self.line_edits[name] = line
                form.addRow(title, line)
        self.line_edits["name"].textChanged.connect(lambda _: self._enable())
        self.page_edits["discounts"].setPlaceholderText(tr("Percent off the list, line by line: hoses = 14"))
        column.addLayout(form)
        column.addStretch(1)
        row = QHBoxLayout()
        self.state_label = plain_label("", "quiet", wraps=True)
        self.save_button = self._button(tr("&Save"), self._save)
        row.addWidget(self.state_label, 1)
        row.addWidget(self.save_button)
        column.addLayout(row)
        return side

    def _button(self, words: str, act: object) -> QPushButton:
        button = QPushButton(words, self)
        button.setAutoDefault(False)
        button.clicked.connect(lambda _=False: act())  # type: ignore[operator]
        return button

    def _show(self, row: int) -> None:
        self._before = self._known[row] if 0 <= row < len(self._known) else None
        fields = fields_of(self._before) if self._before is not None else {}
        for name, line in self.line_edits.items():
            line.setText(fields.get(name, ""))
        for name, page in self.page_edits.items():
            page.setPlainText(fields.get(name, ""))
        self.show_fault("")
        self.state_label.setText(tr("Customer of this station.") if self._is_of_site else "")
        self.remove_button.setEnabled(self._before is not None)
        self._enable()

    def _enable(self) -> None:
        is_named = bool(self.line_edits["name"].text().strip())
        self.save_button.setEnabled(is_named)
        self.use_button.setEnabled(is_named)
        self.site_button.setEnabled(is_named and not self._is_of_site)

    @property
    def _is_of_site(self) -> bool:
        return self._before is not None and folded_customer_name(self._before.name) == self._of_site

    def _wanted(self) -> WantedPaper:
        """Return the list of the customers in view."""
        lists, customers, display, today = self._workbench.book_lists(), tuple(self._known), self._display, self._today

        def make(_: Ticket, form: PaperForm) -> bytes:
            return lists.customers(customers, display, today, form)

        return WantedPaper(make=make, stem=f"customers-{today.isoformat()}", name=tr("Customers"))

    def _say(self, text: str) -> None:
        self.state_label.setText(text)

    def _begin(self) -> None:
        self.list.setCurrentRow(-1)
        self._show(-1)
        self.line_edits["name"].setFocus()

    def _save(self) -> bool:
        """Keep what stands in the form; say what is wrong where it cannot be kept, and leave it as it was typed."""
        before, said = self._before, self.said
        try:
            if before is None:
                kept = wait_for(lambda: self._service.add(said))
            elif said == fields_of(before):
                return True
            else:
                kept = wait_for(lambda: self._service.change(before, said))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return False
        self.search_edit.clear()
        self.refresh(kept.name)
        self.state_label.setText(tr("{0} is in the book.").format(kept.name))
        return True

    def _remove(self) -> None:
        before = self._before
        if before is None:
            return
        try:
            wait_for(lambda: self._service.remove(before.name))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.refresh("")
        self.state_label.setText(
            tr("{0} is no longer in the list; quotations keep what they have.").format(before.name)
        )

    def _choose(self) -> None:
        if self._save() and self._before is not None:
            self.chosen = self._before
            self.accept()

    def _choose_for_site(self) -> None:
        self.is_for_site = True
        self._choose()
        self.is_for_site = self.chosen is not None
