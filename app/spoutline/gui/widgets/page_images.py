"""Pages of a PDF as images, for the preview and the printer. Runs on any thread, one call at a time."""

from __future__ import annotations

import threading
from collections.abc import Iterable, Iterator

from PySide6.QtCore import QBuffer, QIODevice
from PySide6.QtGui import QImage

_ONE_AT_A_TIME = threading.Lock()  # the renderer's library keeps global state
_POINTS_PER_INCH = 72.0


def page_shapes(document: bytes) -> tuple[float, ...]:
    """Return height over width of every page."""
    import pypdfium2

    with _ONE_AT_A_TIME:
        pdf = pypdfium2.PdfDocument(document)
        try:
            sizes = [pdf.get_page_size(place) for place in range(len(pdf))]
        finally:
            pdf.close()
    return tuple(height / width for width, height in sizes)


def page_image(document: bytes, place: int, width_px: int) -> QImage:
    """Return one page as an image of this width in pixels."""
    import pypdfium2

    with _ONE_AT_A_TIME:
        pdf = pypdfium2.PdfDocument(document)
        try:
            page = pdf[place]
            bitmap = page.render(scale=width_px / page.get_width(), rev_byteorder=True, prefer_bgrx=True)
            shape = QImage.Format.Format_RGBX8888
            image = QImage(bytes(bitmap.buffer), bitmap.width, bitmap.height, bitmap.stride, shape).copy()
            bitmap.close()
            page.close()
        finally:
            pdf.close()
    return image


def png_bytes(image: QImage) -> bytes:
    """Return an image as PNG."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")  # type: ignore[call-overload]  # the stubs want bytes, which Qt refuses
    return bytes(buffer.data().data())


def printed_images(document: bytes, dots_per_inch: int, places: Iterable[int] | None = None) -> Iterator[QImage]:
    """Yield pages as images at a printer's resolution: those at ``places``, counted from 0, or all of them."""
    import pypdfium2

    with _ONE_AT_A_TIME:
        pdf = pypdfium2.PdfDocument(document)
        try:
            widths = [pdf.get_page_size(place)[0] for place in range(len(pdf))]
        finally:
            pdf.close()
    for place in range(len(widths)) if places is None else places:
        yield page_image(document, place, round(widths[place] / _POINTS_PER_INCH * dots_per_inch))
