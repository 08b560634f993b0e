"""The pages of a paper, made and drawn off the window's thread."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtGui import QImage, QResizeEvent
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import MakePaper, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.widgets.page_images import page_image, page_shapes
from spoutline.gui.widgets.paper_progress import PaperProgress
from spoutline.gui.widgets.paper_view import PaperView
from spoutline.model.quotation_terms import Party


class PaperPages(PaperView):
    """Shows the pages of one document at a time; images of an older one are dropped.

    One that takes longer than a moment says how far it is, and can be stopped and made later.

    ``name`` tells its jobs from those of other papers; ``fail`` is told why a paper or a page cannot be shown.

    Signals
    -------
    document_shown(int)
        A document is there; the number of its pages.
    making()
        A paper is being made.
    stopped()
        A person stopped the paper that was being made.
    """

    document_shown = Signal(int)
    making = Signal()
    stopped = Signal()

    def __init__(
        self, name: str, title: str, jobs: Jobs, fail: Callable[[Exception], None], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(title)
        self._name, self._jobs, self._fail = name, jobs, fail
        self._document: bytes | None = None
        self._make: MakePaper | None = None
        self._is_stopped = False
        self.progress = PaperProgress(jobs, self._key, self._stop, self._make_again, self)
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

    def show_document(self, make: MakePaper) -> None:
        """Show what ``make`` returns as PDF; it is called off the window's thread, and again for another form."""

        def work(ticket: Ticket) -> tuple[bytes, tuple[float, ...]]:
            document = make(ticket, PaperForm.PDF)
            return document, page_shapes(document)

        self._document, self._make, self._is_stopped = None, make, False
        self._jobs.start(self._key, work, self._show, self._fail_paper)
        self.progress.follow()
        self.making.emit()

    def forget_document(self) -> None:
        """Take the document for outdated, also one being made; its pages stay in view until the next one is there."""
        self._jobs.cancel(self._key)
        self._document, self._is_stopped = None, False
        self.progress.end()

    def show_nothing(self) -> None:
        """Take the paper away."""
        self._jobs.cancel(self._key)
        self._document, self._make, self._is_stopped = None, None, False
        self.progress.end()
        self.show_pages(())

    @property
    def _key(self) -> JobKey:
        return JobKey(JobKind.PAPER, self._name)

    @property
    def is_in_hand(self) -> bool:
        """Whether the paper is there, or on its way, or was stopped by a person."""
        return self._is_stopped or self._document is not None or self._jobs.is_at_work(self._key)

    def _stop(self) -> None:
        """Leave the paper unmade until a person asks for it."""
        self._jobs.cancel(self._key)
        self._is_stopped = True
        self.progress.show_stopped()
        self.stopped.emit()

    def _make_again(self) -> None:
        if self._make is not None:
            self.show_document(self._make)

    def _fail_paper(self, fault: Exception) -> None:
        self.progress.end()
        self._fail(fault)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: keep what lies over the pages in its place."""
        super().resizeEvent(event)
        self.progress.place()

    def _show(self, made: tuple[bytes, tuple[float, ...]]) -> None:
        self._document, shapes = made
        self.progress.end()
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
        if document is self._document and isValid(self):  # a window may have gone while the image was made
            self.show_page(place, image)
