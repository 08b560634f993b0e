"""A drawing as a picture of its own, as large as on paper."""

from __future__ import annotations

from io import BytesIO

from reportlab.pdfgen.canvas import Canvas

from spoutline.documents.content.blocks import PaperSize
from spoutline.documents.drawing.fit import Fit, fit
from spoutline.documents.drawing.shapes import Drawing
from spoutline.documents.pdf.fonts import register_fonts
from spoutline.documents.pdf.painter import DrawingFlowable
from spoutline.documents.pdf.styles import FIGURE_HEIGHT, MARGIN_SIDE, PAGE_SIZES

_POINTS_PER_INCH = 72.0


def figure_fit(drawing: Drawing) -> Fit:
    """Return how ``drawing`` is set in the figure of an A4 page."""
    return fit(drawing, width_pt=PAGE_SIZES[PaperSize.A4][0] - 2 * MARGIN_SIDE, height_pt=FIGURE_HEIGHT)


def drawing_png(drawing: Drawing, dots_per_inch: int) -> bytes:
    """Return ``drawing`` as PNG on white, as large as on paper at this resolution; equal drawings give equal bytes.

    It is painted as on paper and then rastered, so that both show the same. Not for two threads at a time.
    """
    import pypdfium2

    register_fonts()
    fitted = figure_fit(drawing)
    page = BytesIO()
    canvas = Canvas(page, pagesize=(fitted.width_pt, fitted.height_pt), invariant=1)
    DrawingFlowable(drawing, fitted).drawOn(canvas, 0, 0)
    canvas.save()
    picture = BytesIO()
    pdf = pypdfium2.PdfDocument(page.getvalue())
    try:
        image = pdf[0].render(scale=dots_per_inch / _POINTS_PER_INCH).to_pil()
        image.save(picture, "PNG", dpi=(dots_per_inch, dots_per_inch))
    finally:
        pdf.close()
    return picture.getvalue()
