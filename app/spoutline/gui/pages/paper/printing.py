"""Print a document: its rendered pages painted onto the printer's sheets."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QMarginsF, QRectF
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QWidget

from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.saving import FilesInUse, Saving
from spoutline.gui.pages.paper.page_images import printed_images

_DOTS_PER_INCH = 200
_LETTER_SHAPE = 11.0 / 8.5
_TOLERANCE = 0.02


def print_document(document: bytes, name: str, parent: QWidget, in_use: FilesInUse) -> bool:
    """Ask for a printer and print the document; return whether it was sent.

    A print dialog can print into a file: it takes the place of none that ``in_use`` returns.
    """
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(name)
    dialog = QPrintDialog(printer, parent)
    if dialog.exec() != QPrintDialog.DialogCode.Accepted:
        return False
    file = printer.outputFileName()
    if file and not Saving(in_use, parent).may_write(Path(file), FileForm.PDF):
        return False
    paint_pages(printer, printed_images(document, _DOTS_PER_INCH))
    return True


def paint_pages(printer: QPrinter, images: tuple[QImage, ...]) -> None:
    """Paint one image per sheet, as large as the sheet allows; the sheet is chosen by the first page's shape."""
    if not images:
        return
    shape = images[0].height() / images[0].width()
    is_letter = abs(shape - _LETTER_SHAPE) < _TOLERANCE
    size = QPageSize(QPageSize.PageSizeId.Letter if is_letter else QPageSize.PageSizeId.A4)
    printer.setPageLayout(QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0)))
    painter = QPainter(printer)
    for place, image in enumerate(images):
        if place:
            printer.newPage()
        room = QRectF(painter.viewport())
        scale = min(room.width() / image.width(), room.height() / image.height())
        wide, high = image.width() * scale, image.height() * scale
        painter.drawImage(QRectF((room.width() - wide) / 2, (room.height() - high) / 2, wide, high), image)
    painter.end()
