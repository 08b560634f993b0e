"""Where the terms in hand come from: a file, ready ones, a quotation of the book, or the dialog that changes them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.edits.command import make_edit
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.terms import TermsInHand, dated_today, terms_of_file, terms_of_quotation
from spoutline.gui.pages.quotation.work import TERMS
from spoutline.gui.waiting import wait_for
from spoutline.gui.wording import told, tr
from spoutline.model.customer import Customer, with_customer
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_terms import Terms
from spoutline.whole_files import write_file

_FILES = "TOML (*.toml)"


class TermsChoice(QObject):
    """Holds the terms of the next quotation.

    Signals
    -------
    changed()
        Other terms are in hand.
    failed(str)
        What is wrong with those that were wanted.
    told(str)
        What became of a choice.
    """

    changed = Signal()
    failed = Signal(str)
    told = Signal(str)

    def __init__(self, context: Context, today: Callable[[], date], parent: QWidget) -> None:
        super().__init__(parent)
        self._context, self._today, self._window = context, today, parent
        self.in_hand: TermsInHand | None = None

    def hold(self, terms: TermsInHand) -> None:
        """Take these terms in hand, for the survey that is open."""
        self.in_hand = self._to_site(terms)
        self.changed.emit()

    def follow_site(self) -> None:
        """Let the terms go to the customer that the site of the survey that is open has in the book."""
        if self.in_hand is not None and (found := self._to_site(self.in_hand)) != self.in_hand:
            self.in_hand = found
            self.changed.emit()

    def _to_site(self, terms: TermsInHand) -> TermsInHand:
        return terms.to_site(self._context.session.stored.id, self._site_customer())

    def _site_customer(self) -> Customer | None:
        """Return the customer that the site of the survey that is open has in the book; None where it has none."""
        survey, service = self._context.session.survey, self._context.session.workbench.customers()
        try:
            return wait_for(lambda: service.of_site(survey)) if survey.site.customer else None
        except StoreFault as fault:
            self.failed.emit(told(str(fault)))
            return None

    def use_file(self, path: Path) -> None:
        """Take the terms of a file. A faulty file stays in hand too: it is read again when it is quoted on."""
        service = self._context.session.workbench.quoting()
        self.hold(terms_of_file(path))
        self._context.jobs.start(
            TERMS,
            lambda _: terms_of_file(path, service.terms().read_terms(path)),
            self.hold,
            lambda fault: self.failed.emit(told(str(fault))),
        )

    def use_own(self, quotation: Quotation, revision: int) -> None:
        """Take the terms that a quotation carries in itself, dated today where they are older."""
        self._context.jobs.cancel(TERMS)
        self.hold(dated_today(terms_of_quotation(quotation, revision), self._today()))

    def use_changed(self, terms: Terms, file: Path | None, folder: Path | None) -> None:
        """Take terms as a person left them in the form; terms that are as they were stay what they are.

        ``file`` is where exactly these were written, None for nowhere; ``folder`` is where their picture lies.
        """
        before = self.in_hand
        if before is not None and file is None and terms == before.terms:
            return
        self._context.jobs.cancel(TERMS)
        if file is not None:
            self.hold(replace(terms_of_file(file, terms), picture=before.picture if before is not None else None))
            return
        title = tr("as changed in the window")
        picture, survey_id = before.picture if before is not None else None, self._context.session.stored.id
        self.hold(TermsInHand(title=title, base=terms, folder=folder, picture=picture, chosen_for=survey_id))

    def ask_changed(self) -> None:
        """Let a person read and change the terms in hand, or write some where none are."""
        from spoutline.gui.dialogs.terms import TermsDialog

        before, today = self.in_hand, self._today()
        start = before.terms if before is not None else None
        folder = before.folder if before is not None else None
        session = self._context.session
        service, survey = session.workbench.quoting(), session.survey
        in_use = session.workbench.files_in_use
        dialog = TermsDialog(service, start, folder, self._window, today=today, survey=survey, in_use=in_use)
        dialog.exec()
        terms, file, folder = dialog.terms, dialog.path, dialog.folder
        dialog.deleteLater()
        if terms is not None:
            self.use_changed(terms, file, folder)

    def ask_customer(self) -> None:
        """Keep the customers of the book; one that is chosen there is the customer of the terms in hand, or the site's.

        A site that has none yet has the one that is quoted to from then on.
        """
        from spoutline.gui.dialogs.customers import CustomersDialog

        session, before = self._context.session, self.in_hand.terms if self.in_hand is not None else None
        dialog = CustomersDialog(
            session.workbench,
            self._context.jobs,
            may_choose=before is not None,
            display=session.display,
            today=self._today(),
            of_site=self._site_customer(),
            parent=self._window,
        )
        dialog.exec()
        chosen, for_site = dialog.chosen, dialog.is_for_site
        dialog.deleteLater()
        if chosen is None:
            self.follow_site()
            return
        if for_site or not session.survey.site.customer:
            self._give_site(chosen)
        if not for_site and before is not None and self.in_hand is not None:
            try:
                terms = with_customer(before, chosen)
            except InputFault as fault:
                self.failed.emit(told(str(fault)))
            else:
                self.use_changed(terms, None, self.in_hand.folder)

    def _give_site(self, customer: Customer) -> None:
        """Let the site of the survey that is open have this customer, as an edit that can be undone."""
        session = self._context.session
        site = session.survey.site.model_copy(update={"customer": customer.name})
        make_edit(session, session.survey.model_copy(update={"site": site}), tr("Customer of the station"))
        self.follow_site()
        self.told.emit(tr("{0} is the customer of this station from now on.").format(customer.name))

    def write_example(self, path: Path) -> None:
        """Write ready terms into a file, to be edited, and take them."""
        try:
            write_file(path, self._context.session.workbench.quoting().terms().demo_terms().read_bytes())
        except StoreFault as fault:
            self.failed.emit(told(str(fault)))
        else:
            self.use_file(path)

    def ask_file(self) -> None:
        """Ask for a file and take its terms."""
        path, _ = QFileDialog.getOpenFileName(self._window, tr("Terms of the quotation"), "", _FILES)
        if path:
            self.use_file(Path(path))

    def ask_example(self) -> None:
        """Ask for a file, write ready terms into it and take them."""
        in_use = self._context.session.workbench.files_in_use
        path = Saving(in_use, self._window).ask(tr("Ready terms"), "terms.toml", FileForm.TOML)
        if path is not None:
            self.write_example(path)
