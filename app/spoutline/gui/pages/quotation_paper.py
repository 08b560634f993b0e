"""The paper of the quotation in hand, page by page, made off the window's thread."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QImage
from PySide6.QtWidgets import QWidget

from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.pages.paper import page_image, page_shapes
from spoutline.gui.widgets.paper_view import PaperView
from spoutline.gui.wording import tr

_PAPER = JobKey(JobKind.PAPER, "quotation")


class QuotationPaper(PaperView):
    """Shows the pages of one document; images of an older one are dropped."""

    def __init__(self, jobs: Jobs, fail: Callable[[Exception], None], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Pages of the quotation"))
        self._jobs, self._fail = jobs, fail
        self._document: bytes | None = None
        self.page_wanted.connect(self._fetch_page)

    @property
    def document(self) -> bytes | None:
        """The paper as PDF; None while it is being made."""
        return self._document

    def show_document(self, make: Callable[[], bytes]) -> None:
        """Show what ``make`` returns; it is called off the window's thread."""

        def work(_: Ticket) -> tuple[bytes, tuple[float, ...]]:
            document = make()
            return document, page_shapes(document)

        self._document = None
        self._jobs.start(_PAPER, work, self._show, self._fail)

    def show_nothing(self) -> None:
        """Take the paper away."""
        self._jobs.cancel(_PAPER)
        self._document = None
        self.show_pages(())

    def _show(self, made: tuple[bytes, tuple[float, ...]]) -> None:
        self._document, shapes = made
        self.show_pages(shapes)

    def _fetch_page(self, place: int, width_px: int) -> None:
        document = self._document
        if document is not None:
            self._jobs.start(
                JobKey(JobKind.PAGE_IMAGE, f"quotation {place}"),
                lambda _: page_image(document, place, width_px),
                lambda image: self._show_image(document, place, image),
                self._fail,
            )

    def _show_image(self, document: bytes, place: int, image: QImage) -> None:
        if document is self._document:
            self.show_page(place, image)
