"""Quotations: made of the survey in hand on the terms of a file, kept in the book, issued, answered, revised."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QFileDialog, QSplitter, QVBoxLayout, QWidget

from spoutline.book.quotation_records import QuotationEntry, StaleQuotation, StoredQuotation
from spoutline.bootstrap.quotations import QuotingDesk
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.quotation_columns import amount_columns, amount_rows, entry_columns
from spoutline.gui.pages.bill_page import Report, file_stem, write_whole
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.paper import page_image, page_shapes
from spoutline.gui.pages.quotation_panel import QuotationPanel
from spoutline.gui.session import Changed
from spoutline.gui.widgets.paper_view import PaperView
from spoutline.gui.wording import tr
from spoutline.model.faults import Cancelled, InputFault, StoreFault
from spoutline.model.quotation import Quotation, QuotationStatus

_QUOTE = JobKey(JobKind.SITE_PLAN, "quotation")
_PAPER = JobKey(JobKind.PAPER, "quotation")
_FILE = JobKey(JobKind.FILE, "quotation")

Step = Callable[[], StoredQuotation]


class QuotationPage(QWidget):
    """Holds one quotation: just made, or looked at in the book. ``today`` tells the day for expiry."""

    def __init__(
        self, context: Context, tell: Report, today: Callable[[], date] = date.today, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._context, self._tell, self._today = context, tell, today
        self._terms_file: Path | None = None
        self._made: Quotation | None = None
        self._stored: StoredQuotation | None = None
        self._document: bytes | None = None
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        self.panel = QuotationPanel(self)
        splitter.addWidget(self.panel)
        self.paper = PaperView(self)
        self.paper.setAccessibleName(tr("Pages of the quotation"))
        self.paper.page_wanted.connect(self._fetch_page)
        splitter.addWidget(self.paper)
        splitter.setSizes([600, 540])
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        column.addWidget(splitter)
        self._bind()
        context.session.changed.connect(self._on_changed)
        context.jobs.progressed.connect(self._on_progress)

    @property
    def quotation(self) -> Quotation | None:
        """The quotation shown; None for none."""
        return self._made

    @property
    def stored(self) -> StoredQuotation | None:
        """The same in the book; None where it is not kept yet."""
        return self._stored

    def refresh(self) -> None:
        """Show the quotations of the book, those that are over as expired."""
        try:
            self._desk.expire(self._today())
        except StoreFault as fault:
            self.panel.say(str(fault))
            return
        self._show_entries()
        self._show_steps()

    def _show_entries(self) -> None:
        """Show the quotations that hold the words searched for."""
        try:
            entries = self._desk.quotations(self.panel.search_edit.text())
        except StoreFault as fault:
            self.panel.say(str(fault))
            return
        self.panel.entries.replace_columns(entry_columns(self._context.story))
        self.panel.entries.show_records(entries)
        self.panel.entry_table.fit_columns()

    def use_terms(self, path: Path) -> None:
        """Quote on the terms of this file from now on."""
        self._terms_file = path
        self.panel.terms_label.setText(tr("Terms: {0}").format(path.name))
        self.panel.terms_label.setToolTip(str(path))
        self._show_steps()

    def make(self) -> None:
        """Quote the survey in hand."""
        if self._terms_file is None:
            return
        session, path, desk = self._context.session, self._terms_file, self._desk
        stored, survey, display = session.stored, session.survey, session.display
        origin = (stored.id, stored.revision) if stored.survey == survey else None

        def work(ticket: Ticket) -> Quotation:
            terms = desk.read_terms(path)
            logo = desk.logo(terms, path.parent)
            return desk.quote(survey, terms, display, origin=origin, logo=logo, progress=ticket).quotation

        self.panel.show_progress(0, 1)
        self._context.jobs.start(_QUOTE, work, self._show_made, self._show_trouble, revision=session.revision)

    def stop(self) -> None:
        """Give up the quotation that is being made."""
        self._context.jobs.cancel(_QUOTE)
        self.panel.hide_progress()
        self.panel.say(tr("Stopped; nothing was quoted."))

    def look_at(self, quotation_id: int) -> None:
        """Show a quotation of the book."""
        try:
            self._show_stored(self._desk.stored(quotation_id))
        except (InputFault, StoreFault) as fault:
            self.panel.say(str(fault))

    def keep(self) -> None:
        """Put the quotation into the book: as a draft, over the draft looked at, or as its next revision."""
        made, stored, desk, name = self._made, self._stored, self._desk, self.panel.name
        if made is None:
            return
        if stored is None or stored.status is QuotationStatus.ACCEPTED:
            self._step(lambda: desk.keep(made, name))
        elif stored.status is QuotationStatus.DRAFT:
            self._step(lambda: desk.save_draft(stored, made, name))
        else:
            self._step(lambda: desk.revise(stored, made, name))

    def issue(self) -> None:
        """Issue the draft looked at."""
        stored, desk, name, display = self._stored, self._desk, self.panel.name, self._context.session.display
        if stored is not None:
            self._step(lambda: desk.issue(stored, name, display))

    def answer(self, answer: QuotationStatus) -> None:
        """Note the customer's answer."""
        stored, desk, name = self._stored, self._desk, self.panel.name
        if stored is not None:
            self._step(lambda: desk.answer(stored, answer, name))

    def save_as(self, path: Path, suffix: str) -> None:
        """Write a paper into a file: ``pdf``, ``xlsx``, ``csv`` or ``pick``; an issued one as it was sent."""
        made, stored = self._made, self._stored
        if made is None:
            return
        desk, display = self._desk, self._context.session.display
        revision, option, is_issued = self._revision, self.panel.option, self._is_issued

        def work(_: Ticket) -> None:
            if is_issued and stored is not None and suffix in ("pdf", "xlsx"):
                papers = desk.issued_papers(stored.id, revision)
                write_whole(path, papers.pdf if suffix == "pdf" else papers.workbook)
                return
            make: dict[str, Callable[[], bytes]] = {
                "pdf": lambda: desk.pdf(made, revision, display),
                "xlsx": lambda: desk.workbook(made, revision, display),
                "csv": lambda: desk.order_csv(made, revision),
                "pick": lambda: desk.pick_list(made, option, revision, display),
            }
            write_whole(path, make[suffix]())

        self._context.jobs.start(
            _FILE, work, lambda _: self._tell(tr("Saved as {path}").format(path=path)), self._show_trouble
        )

    # inside

    @property
    def _desk(self) -> QuotingDesk:
        return self._context.session.workbench.quoting()

    @property
    def _is_kept(self) -> bool:
        """Whether the book holds exactly what is shown."""
        return self._stored is not None and self._stored.quotation == self._made

    @property
    def _is_issued(self) -> bool:
        """Whether what is shown has papers in the book."""
        return self._is_kept and self._stored is not None and self._stored.status is not QuotationStatus.DRAFT

    @property
    def _revision(self) -> int:
        """Revision that what is shown has, or will have once it is kept."""
        stored = self._stored
        if stored is None or (stored.status is QuotationStatus.ACCEPTED and not self._is_kept):
            return 1
        becomes_new = not self._is_kept and stored.status is not QuotationStatus.DRAFT
        return stored.revision + 1 if becomes_new else stored.revision

    def _bind(self) -> None:
        panel = self.panel
        panel.terms_button.clicked.connect(self._ask_terms)
        panel.example_button.clicked.connect(self._ask_example)
        panel.make_button.clicked.connect(self.make)
        panel.stop_button.clicked.connect(self.stop)
        panel.keep_button.clicked.connect(self.keep)
        panel.issue_button.clicked.connect(self.issue)
        panel.accept_button.clicked.connect(lambda: self.answer(QuotationStatus.ACCEPTED))
        panel.decline_button.clicked.connect(lambda: self.answer(QuotationStatus.DECLINED))
        panel.search_edit.textChanged.connect(lambda _: self._show_entries())
        panel.entry_table.opened.connect(self._open_entry)
        for suffix, button in panel.save_buttons.items():
            button.clicked.connect(lambda _=False, wanted=suffix: self._ask_and_save(wanted))

    def _ask_terms(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr("Terms of the quotation"), "", "TOML (*.toml)")
        if path:
            self.use_terms(Path(path))

    def _ask_example(self) -> None:
        path, _ = QFileDialog.getSaveFileName(self, tr("Ready terms"), "terms.toml", "TOML (*.toml)")
        if path:
            self.write_example(Path(path))

    def write_example(self, path: Path) -> None:
        """Write ready terms into a file, to be edited, and quote on them from now on."""
        try:
            write_whole(path, self._desk.demo_terms().read_bytes())
        except StoreFault as fault:
            self.panel.say(str(fault))
        else:
            self.use_terms(path)

    def _ask_and_save(self, suffix: str) -> None:
        if self._made is None:
            return
        ending = "pdf" if suffix == "pick" else suffix
        stem = file_stem(self._made.terms.heading.number)
        name = f"{stem}{'-pick-list' if suffix == 'pick' else ''}.{ending}"
        path, _ = QFileDialog.getSaveFileName(self, tr("Save"), name, f"{ending.upper()} (*.{ending})")
        if path:
            self.save_as(Path(path), suffix)

    def _open_entry(self, entry: object) -> None:
        if isinstance(entry, QuotationEntry):
            self.look_at(entry.id)

    def _step(self, act: Step) -> None:
        """Take a step in the life of the quotation; what forbids it is said, and nothing has changed then."""
        try:
            stored = act()
        except StaleQuotation as stale:
            self._show_stored(stale.stored)
            self.panel.say(str(stale))
        except (InputFault, StoreFault) as fault:
            self.panel.say(str(fault))
        else:
            self._show_stored(stored)
            self.refresh()

    def _show_made(self, quotation: Quotation) -> None:
        """Show a quotation just made; it belongs to the one looked at in the book where the survey is the same."""
        self.panel.hide_progress()
        if self._stored is not None and self._stored.quotation.pins.survey_id != quotation.pins.survey_id:
            self._stored = None
        self._show(quotation)

    def _show_stored(self, stored: StoredQuotation) -> None:
        self._stored = stored
        self._show(stored.quotation)

    def _show(self, quotation: Quotation) -> None:
        self._made = quotation
        story, panel = self._context.story, self.panel
        panel.amounts.replace_columns(amount_columns(quotation))
        panel.amounts.show_records(amount_rows(quotation, story))
        panel.amount_table.fit_columns()
        panel.show_options(tuple(option.title for option in quotation.options))
        panel.show_open_prices(quotation, story)
        self._show_steps()
        self._make_paper(quotation)

    def _show_steps(self) -> None:
        has_terms = self._terms_file is not None
        self.panel.show_steps(self._made, self._stored, is_kept=self._is_kept, has_terms=has_terms)

    def _make_paper(self, quotation: Quotation) -> None:
        stored, desk, display = self._stored, self._desk, self._context.session.display
        revision, is_issued = self._revision, self._is_issued

        def work(_: Ticket) -> tuple[bytes, tuple[float, ...]]:
            if is_issued and stored is not None:
                document = desk.issued_papers(stored.id, revision).pdf
            else:
                document = desk.pdf(quotation, revision, display)
            return document, page_shapes(document)

        self._context.jobs.start(_PAPER, work, self._show_paper, self._show_trouble)

    def _show_paper(self, made: tuple[bytes, tuple[float, ...]]) -> None:
        self._document, shapes = made
        self.paper.show_pages(shapes)

    def _fetch_page(self, place: int, width_px: int) -> None:
        document = self._document
        if document is not None:
            self._context.jobs.start(
                JobKey(JobKind.PAGE_IMAGE, f"quotation {place}"),
                lambda _: page_image(document, place, width_px),
                lambda image: self._show_page(document, place, image),
                self._show_trouble,
            )

    def _show_page(self, document: bytes, place: int, image: QImage) -> None:
        if document is self._document:  # an image of an older paper is dropped
            self.paper.show_page(place, image)

    def _show_trouble(self, fault: Exception) -> None:
        self.panel.hide_progress()
        if not isinstance(fault, Cancelled):
            self.panel.say(str(fault))

    def _on_progress(self, key: JobKey, done: int, total: int) -> None:
        if key == _QUOTE:
            self.panel.show_progress(done, total)

    def _on_changed(self, what: Changed) -> None:
        if self.isVisible() and what & Changed.UNITS:
            self.refresh()
