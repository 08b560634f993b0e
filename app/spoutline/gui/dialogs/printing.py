"""Print a document: its rendered pages painted onto the printer's sheets."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QMarginsF, QRectF
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QWidget

from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.saving import FilesInUse, Saving
from spoutline.gui.widgets.page_images import page_shapes, printed_images
from spoutline.gui.wording import tr
from spoutline.model.faults import StoreFault

_DOTS_PER_INCH = 200
_LETTER_SHAPE = 11.0 / 8.5
_TOLERANCE = 0.02


def print_document(document: bytes, name: str, parent: QWidget, in_use: FilesInUse) -> bool:
    """Ask for a printer and print the pages of the document that are asked for; return whether it was sent.

    A print dialog can print into a file: it takes the place of none that ``in_use`` returns. Raise ``StoreFault`` where
    the printer takes nothing.
    """
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(name)
    count = len(page_shapes(document))
    dialog = QPrintDialog(printer, parent)
    dialog.setMinMax(1, count)
    if dialog.exec() != QPrintDialog.DialogCode.Accepted:
        return False
    file = printer.outputFileName()
    if file and not Saving(in_use, parent).may_write(Path(file), FileForm.PDF):
        return False
    if not paint_pages(printer, printed_images(document, _DOTS_PER_INCH, pages_asked_for(printer, count))):
        raise StoreFault(tr("Nothing was printed: the printer, or the file that it prints into, takes nothing."))
    return True


def pages_asked_for(printer: QPrinter, count: int) -> range:
    """Return the places of the pages that the dialog chose, from 0: all ``count`` of them where it chose no range."""
    if printer.printRange() != QPrinter.PrintRange.PageRange or printer.fromPage() < 1:
        return range(count)
    return range(printer.fromPage() - 1, min(max(printer.toPage(), printer.fromPage()), count))


def paint_pages(printer: QPrinter, images: Iterable[QImage]) -> bool:
    """Paint one image per sheet, as large as the sheet allows; return whether the printer took them.

    The sheet is chosen by the first page's shape. Images are taken one by one: a long paper is never in memory whole.
    """
    painter: QPainter | None = None
    for image in images:
        if painter is None:
            printer.setPageLayout(_layout_for(image))
            painter = QPainter(printer)
            if not painter.isActive():
                return False
        else:
            printer.newPage()
        room = QRectF(painter.viewport())
        scale = min(room.width() / image.width(), room.height() / image.height())
        wide, high = image.width() * scale, image.height() * scale
        painter.drawImage(QRectF((room.width() - wide) / 2, (room.height() - high) / 2, wide, high), image)
    return painter is not None and painter.end()


def _layout_for(image: QImage) -> QPageLayout:
    is_letter = abs(image.height() / image.width() - _LETTER_SHAPE) < _TOLERANCE
    size = QPageSize(QPageSize.PageSizeId.Letter if is_letter else QPageSize.PageSizeId.A4)
    return QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0))
