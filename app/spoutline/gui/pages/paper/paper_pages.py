"""The pages of a paper, made and drawn off the window's thread."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QWidget

from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import MakePaper, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.widgets.page_images import page_image, page_shapes
from spoutline.gui.widgets.paper_view import PaperView
from spoutline.model.quotation_terms import Party


class PaperPages(PaperView):
    """Shows the pages of one document at a time; images of an older one are dropped.

    ``name`` tells its jobs from those of other papers; ``fail`` is told why a paper or a page cannot be shown.

    Signals
    -------
    document_shown(int)
        A document is there; the number of its pages.
    """

    document_shown = Signal(int)

    def __init__(
        self, name: str, title: str, jobs: Jobs, fail: Callable[[Exception], None], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(title)
        self._name, self._jobs, self._fail = name, jobs, fail
        self._document: bytes | None = None
        self._make: MakePaper | None = None
        self.page_wanted.connect(self._fetch_page)

    @property
    def document(self) -> bytes | None:
        """The paper as PDF; None while it is being made."""
        return self._document

    def wanted(
        self, stem: str, name: str, *, recipient: Party | None = None, only_pdf: bool = False
    ) -> WantedPaper | None:
        """Return the paper shown to be handed on, its pages as they are seen; None while it is being made."""
        document, make = self._document, self._make
        if document is None or make is None:
            return None
        return WantedPaper(make=make, stem=stem, name=name, recipient=recipient, pdf=document, only_pdf=only_pdf)

    def show_document(self, make: MakePaper, revision: int = 0) -> None:
        """Show what ``make`` returns as PDF; it is called off the window's thread, and again for another form.

        With the ``revision`` of the session, the paper of an older survey is dropped.
        """

        def work(ticket: Ticket) -> tuple[bytes, tuple[float, ...]]:
            document = make(ticket, PaperForm.PDF)
            return document, page_shapes(document)

        self._document, self._make = None, make
        self._jobs.start(self._key, work, self._show, self._fail, revision=revision)

    def forget_document(self) -> None:
        """Take the document for outdated; its pages stay in view until the next one is there."""
        self._document = None

    def show_nothing(self) -> None:
        """Take the paper away."""
        self._jobs.cancel(self._key)
        self._document = self._make = None
        self.show_pages(())

    @property
    def _key(self) -> JobKey:
        return JobKey(JobKind.PAPER, self._name)

    def _show(self, made: tuple[bytes, tuple[float, ...]]) -> None:
        self._document, shapes = made
        self.show_pages(shapes)
        self.document_shown.emit(len(shapes))

    def _fetch_page(self, place: int, width_px: int) -> None:
        document = self._document
        if document is not None:
            self._jobs.start(
                JobKey(JobKind.PAGE_IMAGE, f"{self._name} {place}"),
                lambda _: page_image(document, place, width_px),
                lambda image: self._show_image(document, place, image),
                self._fail,
            )

    def _show_image(self, document: bytes, place: int, image: QImage) -> None:
        if document is self._document:
            self.show_page(place, image)
