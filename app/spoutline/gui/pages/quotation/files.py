"""The papers of the quotation in hand, written into files off the window's thread."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from spoutline.bootstrap.quotations import QuotationService
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm, form_of
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.work import FILE
from spoutline.gui.wording import told, tr
from spoutline.model.quotation import Quotation
from spoutline.units.display import Display
from spoutline.whole_files import InUse


class FileKind(StrEnum):
    """Which file of a quotation."""

    PDF = "pdf"
    WORKBOOK = "xlsx"
    ORDER = "csv"  # lines for an order system
    PICK_LIST = "pick_list"
    MARGIN = "margin"  # cost and margin, internal

    @property
    def ending(self) -> str:
        """Ending of the file's name, where it has but one."""
        if self is FileKind.MARGIN:
            return FileKind.PDF.value
        return FileKind.PDF.value if self is FileKind.PICK_LIST else self.value


_STEM_ENDS = {FileKind.PICK_LIST: "-pick-list", FileKind.MARGIN: "-internal-margin"}


def _margin(service: QuotationService, made: Quotation, revision: int, display: Display, path: Path) -> bytes:
    """Return the internal sheet in the form that the ending of its file's name asks for."""
    match path.suffix.lower():
        case ".csv":
            return service.margin_csv(made, revision)
        case ".xlsx":
            return service.margin_workbook(made, revision, display)
        case _:
            return service.margin_sheet(made, revision, display, form_of(path))


class QuotationFiles(QObject):
    """Writes the files of a quotation.

    Signals
    -------
    failed(str)
        Why a file was not written.
    """

    failed = Signal(str)

    def __init__(self, context: Context, notify: Notify, parent: QWidget) -> None:
        super().__init__(parent)
        self._context, self._notify, self._window = context, notify, parent

    def ask(self, hand: InHand, kind: FileKind, option: int, sources: Sequence[InUse] = ()) -> None:
        """Ask for a file and write a paper into it; it takes the place of none of the ``sources``."""
        if hand.quotation is None:
            return
        ending = kind.ending
        stem = f"{file_stem(hand.quotation.terms.heading.number)}-r{hand.revision}"
        stem = f"{stem}{_STEM_ENDS.get(kind, '')}"
        saving = Saving(self._context.session.workbench.files_in_use, self._window, tuple(sources))
        if kind is FileKind.MARGIN:
            path = saving.ask_sheet(tr("Save the internal sheet"), stem)
        elif ending == FileForm.PDF:
            path = saving.ask_paper(tr("Save"), stem)
        else:
            path = saving.ask(tr("Save"), f"{stem}.{ending}", FileForm(ending))
        if path is not None:
            self.save(hand, path, kind, option)

    def save(self, hand: InHand, path: Path, kind: FileKind, option: int) -> None:
        """Write a paper into a file; one that was issued as it was sent. ``option`` is the pick list's, from 0.

        A paper is written as HTML where the name of its file ends so.
        """
        made, stored, revision = hand.quotation, hand.stored, hand.revision
        if made is None:
            return
        service, display = self._context.session.workbench.quoting(), self._context.session.display
        was_issued, ordered, form = hand.was_issued, hand.ordered, form_of(path)

        def as_sent(quotation_id: int) -> bytes:
            if kind is FileKind.PDF and form is PaperForm.HTML:
                return service.issued_html(quotation_id, revision, display)
            papers = service.issued_papers(quotation_id, revision)
            return papers.pdf if kind is FileKind.PDF else papers.workbook

        def content() -> bytes:
            if was_issued and stored is not None and kind in {FileKind.PDF, FileKind.WORKBOOK}:
                return as_sent(stored.id)
            make: dict[FileKind, Callable[[], bytes]] = {
                FileKind.PDF: lambda: service.pdf(made, revision, display, form),
                FileKind.WORKBOOK: lambda: service.workbook(made, revision, display),
                FileKind.ORDER: lambda: service.order_csv(made, revision, ordered),
                FileKind.MARGIN: lambda: _margin(service, made, revision, display, path),
                FileKind.PICK_LIST: lambda: service.pick_list(made, option, revision, display, form),
            }
            return make[kind]()

        save_aside(
            self._context,
            FILE,
            path,
            content,
            notify=self._notify,
            refused=lambda fault: self.failed.emit(told(str(fault))),
        )
