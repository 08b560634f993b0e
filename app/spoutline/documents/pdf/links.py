"""Links laid over text: a large bill has thousands, and each is written as the few words that it is."""

from __future__ import annotations

from typing import Any

from reportlab.lib.rl_accel import fp_str
from reportlab.pdfbase.pdfdoc import PDFObject, PDFObjectReference, pdfdocEnc
from reportlab.pdfgen.canvas import Canvas


def lay_link(canvas: Canvas, anchor: str, rect: tuple[float, float, float, float]) -> None:
    """Lay a link to ``anchor`` over a rectangle, in points of the canvas as it stands: left, bottom, right, top."""
    # the destination is an object of its own, which all links to it name
    destination = canvas._doc.Reference(canvas._bookmarkReference(anchor))
    canvas._addAnnotation(_Link(canvas._absRect(rect, 1), destination))


class _Link(PDFObject):  # type: ignore[misc]
    """A link annotation (ISO 32000-1, 12.5.6.5) without a border."""

    def __init__(self, rect: tuple[float, ...], destination: PDFObjectReference) -> None:
        self._rect, self._destination = rect, destination

    def format(self, document: Any) -> bytes:  # noqa: ANN401  # reportlab tells no types
        """Return the annotation as it stands in the file."""
        rect, leads_to = pdfdocEnc(fp_str(*self._rect)), self._destination.format(document)
        return b"<< /Type /Annot /Subtype /Link /Border [ 0 0 0 ] /Rect [ %b ] /Dest %b >>" % (rect, leads_to)
