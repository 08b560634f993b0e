"""A content tree as PDF bytes: the same bytes for the same tree."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from io import BytesIO

from reportlab.lib.units import mm
from reportlab.lib.utils import simpleSplit
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import BaseDocTemplate, Flowable, Frame, PageTemplate

from spoutline.documents.content.blocks import Document
from spoutline.documents.marks import PDF_PRODUCER
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import BOLD, REGULAR, printable, register_fonts
from spoutline.documents.pdf.painter import shortened
from spoutline.documents.pdf.scripts import draw_text, text_width
from spoutline.documents.pdf.setting import OutlineHeading, set_blocks
from spoutline.model.faults import Cancelled
from spoutline.planning.protocols import Progress

_RUNNING_SIZE = 7.0
_NUMBER_FORM = "page_number_{page}"
_NUMBER_WIDTH = 90.0
_NOTICE_GAP = 12.0
_RUNNING_LEADING = 8.4
_FOOT_LINES = 2


def pdf_bytes(document: Document, progress: Progress | None = None) -> bytes:
    """Return ``document`` as PDF: one embedded typeface, outline, title, author, language, page numbers.

    No clock and no random number enter, so equal documents give equal bytes. ``progress`` hears how much of what is on
    the pages is set.

    Raises
    ------
    StoreFault
        A font that comes with the program is missing.
    Cancelled
        If ``progress`` asks to stop.
    """
    return pdf_with_pages(document, progress)[0]


def pdf_with_pages(document: Document, progress: Progress | None = None) -> tuple[bytes, int]:
    """Return ``document`` as ``pdf_bytes`` does, and the number of its pages."""
    register_fonts()
    buffer = BytesIO()
    template = _Template(buffer, document)
    flowables = list(set_blocks(document.blocks, template.text_width))
    if progress is not None:
        template.setProgressCallBack(_told_to(progress, len(flowables)))
    try:
        template.build(flowables, canvasmaker=partial(_NumberedCanvas, page_phrase=document.page_phrase))
        return buffer.getvalue(), template.page
    finally:
        template.come_apart()


def _told_to(progress: Progress, total: int) -> Callable[[str, int], None]:
    """Return what reportlab calls while it sets pages: it tells a listener, and stops where that asks to."""

    def tell(event: str, number: int) -> None:
        if event == "PROGRESS":
            progress.on_progress(min(max(number, 0), total), total)  # what is split in two counts once more
            if progress.should_stop():
                raise Cancelled

    return tell


class _NumberedCanvas(Canvas):  # type: ignore[misc]
    """Knows how many pages there are only at the end, and defines there what each page shows at its foot."""

    def __init__(self, *arguments: object, page_phrase: str, **named: object) -> None:
        super().__init__(*arguments, **named)
        self._page_phrase = page_phrase

    def save(self) -> None:
        total = self.getPageNumber() - 1
        for page in range(1, total + 1):
            self.beginForm(_NUMBER_FORM.format(page=page), -_NUMBER_WIDTH, -2, 0, 10)
            self.setFont(REGULAR, _RUNNING_SIZE)
            self.setFillColor(styles.GREY)
            self.drawRightString(0, 0, f"{self._page_phrase.format(page=page)}{total}")
            self.endForm()
        super().save()


def _foot_lines(text: str, room_pt: float) -> list[str]:
    """Return the running foot in as many lines as it needs, up to two: some languages say it at more length."""
    lines = simpleSplit(text, REGULAR, _RUNNING_SIZE, room_pt)
    if len(lines) <= _FOOT_LINES:
        return [str(line) for line in lines]
    first = str(lines[0])
    return [first, shortened(text[len(first) :].lstrip(), _RUNNING_SIZE, room_pt)]


class _Template(BaseDocTemplate):  # type: ignore[misc]
    """Pages with a running head and foot; headings enter the outline."""

    def __init__(self, buffer: BytesIO, document: Document) -> None:
        self._document = document
        page_width, page_height = styles.PAGE_SIZES[document.paper]
        super().__init__(
            buffer,
            pagesize=(page_width, page_height),
            title=printable(document.title),
            author=printable(document.author),
            subject=printable(document.subject),
            creator=printable(document.author),
            producer=PDF_PRODUCER,
            lang=document.language,
            invariant=1,
            pageCompression=1,
            displayDocTitle=1,
            initialFontName=REGULAR,
        )
        self.text_width = page_width - 2 * styles.MARGIN_SIDE
        height = page_height - styles.MARGIN_TOP - styles.MARGIN_BOTTOM
        frame = Frame(
            styles.MARGIN_SIDE,
            styles.MARGIN_BOTTOM,
            self.text_width,
            height,
            leftPadding=0,
            rightPadding=0,
            topPadding=0,
            bottomPadding=0,
        )
        self.addPageTemplates(PageTemplate("page", frames=[frame], onPage=self._running))
        self._bookmarks = 0

    def come_apart(self) -> None:
        """Take what was built apart: its parts refer to each other, and would all wait for garbage to be collected."""
        canvas = self.__dict__.get("canv")
        for one in () if canvas is None else (canvas._doc, canvas):
            one.__dict__.clear()
        self.__dict__.clear()

    def afterFlowable(self, flowable: Flowable) -> None:  # noqa: N802
        """Enter a heading in the outline, as reportlab calls it."""
        if isinstance(flowable, OutlineHeading):
            self._bookmarks += 1
            key = f"heading{self._bookmarks}"
            self.canv.bookmarkPage(key)
            title = printable(flowable.outline_text)
            self.canv.addOutlineEntry(title, key, flowable.outline_level, closed=flowable.outline_level > 0)
            if flowable.anchor:
                top = self.frame._y + flowable.height + flowable.getSpaceBefore()
                self.canv.bookmarkPage(flowable.anchor, fit="XYZ", top=top)

    def _running(self, canvas: Canvas, template: BaseDocTemplate) -> None:
        document = self._document
        width, height = styles.PAGE_SIZES[document.paper]
        left, right = styles.MARGIN_SIDE, width - styles.MARGIN_SIDE
        canvas.saveState()
        canvas.setFillColor(styles.GREY)
        head_y, foot_y = height - 14 * mm, 11 * mm
        canvas.setFont(BOLD, _RUNNING_SIZE)
        notice = shortened(printable(document.notice), _RUNNING_SIZE, right - left, BOLD)
        beside = right - left - text_width(notice, BOLD, _RUNNING_SIZE) - (_NOTICE_GAP if notice else 0)
        head = shortened(printable(document.running_head), _RUNNING_SIZE, beside, BOLD)
        draw_text(canvas, head, (left, head_y), BOLD, _RUNNING_SIZE)
        if notice:
            canvas.setFillColor(styles.ACCENT)
            draw_text(canvas, notice, (right, head_y), BOLD, _RUNNING_SIZE, 1.0)
            canvas.setFillColor(styles.GREY)
        canvas.setStrokeColor(styles.RULE)
        canvas.setLineWidth(0.5)
        canvas.line(left, head_y - 5, right, head_y - 5)
        canvas.setFont(REGULAR, _RUNNING_SIZE)
        for row, line in enumerate(_foot_lines(printable(document.running_foot), right - left - _NUMBER_WIDTH)):
            draw_text(canvas, line, (left, foot_y - row * _RUNNING_LEADING), REGULAR, _RUNNING_SIZE)
        canvas.translate(right, foot_y)
        canvas.doForm(_NUMBER_FORM.format(page=template.page))
        canvas.restoreState()
