"""A paper in the form that a person wants: the same content, written as PDF or as HTML."""

from __future__ import annotations

from spoutline.documents.content.blocks import Document
from spoutline.documents.paper_form import PaperForm
from spoutline.planning.protocols import Progress


def paper_bytes(document: Document, form: PaperForm, progress: Progress | None = None) -> bytes:
    """Return ``document`` in ``form``; equal documents give equal bytes. ``progress`` hears how far pages are.

    Raises
    ------
    InputFault
        A picture in it cannot be read.
    StoreFault
        A font that comes with the program is missing.
    Cancelled
        If ``progress`` asks to stop.
    """
    if form is PaperForm.HTML:
        from spoutline.documents.html.page import html_bytes

        return html_bytes(document)
    from spoutline.documents.pdf.render import pdf_bytes

    return pdf_bytes(document, progress)
