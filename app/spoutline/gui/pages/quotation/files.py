"""The papers and tables of the quotation in hand, made off the window's thread."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import StrEnum
from pathlib import Path
from typing import Final

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import MakePaper, PaperHands, WantedPaper
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import Ticket
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.pages.quotation.guidance import number_words
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.work import FILE
from spoutline.gui.wording import told, tr
from spoutline.model.quotation import Quotation
from spoutline.whole_files import InUse


class FileKind(StrEnum):
    """Which file of a quotation."""

    PDF = "pdf"
    WORKBOOK = "xlsx"
    ORDER = "csv"  # lines for an order system
    PICK_LIST = "pick_list"
    MARGIN = "margin"  # cost and margin, internal
    MARGIN_WORKBOOK = "margin_xlsx"
    MARGIN_TABLE = "margin_csv"

    @property
    def ending(self) -> str:
        """Ending of the file's name; of a paper that of its pages."""
        return FileForm.PDF.value if self in PAPERS else self.value.removeprefix("margin_")


PAPERS: Final = (FileKind.PDF, FileKind.PICK_LIST, FileKind.MARGIN)
_FOR_THE_CUSTOMER: Final = (FileKind.PDF, FileKind.WORKBOOK)  # each bears the number by which both sides know it
_MARGIN_END: Final = "-internal-margin"
_STEM_ENDS: Final = {
    FileKind.PICK_LIST: "-pick-list",
    FileKind.MARGIN: _MARGIN_END,
    FileKind.MARGIN_WORKBOOK: _MARGIN_END,
    FileKind.MARGIN_TABLE: _MARGIN_END,
}


class QuotationFiles(QObject):
    """Hands the papers of a quotation on and writes its tables; what was issued goes out as it was sent.

    ``hand`` returns what is in hand, ``option`` the place of the option of the pick list, ``sources`` the files that no
    output may take the place of, ``shown`` the pages of the quotation as they are seen.

    Signals
    -------
    failed(str)
        Why a file was not written.
    """

    failed = Signal(str)

    def __init__(
        self,
        context: Context,
        notify: Notify,
        parent: QWidget,
        *,
        hand: Callable[[], InHand],
        option: Callable[[], int],
        sources: Callable[[], Sequence[InUse]],
        shown: Callable[[], bytes | None],
    ) -> None:
        super().__init__(parent)
        self._context, self._notify, self._window = context, notify, parent
        self._hand, self._option, self._sources, self._shown = hand, option, sources, shown
        self.hands = {kind: self._hands_of(kind) for kind in PAPERS}

    def _hands_of(self, kind: FileKind) -> PaperHands:
        return PaperHands(
            self._context.session.workbench,
            self._context.jobs,
            lambda: self._wanted(kind),
            key=FILE,
            tell=self._notify,
            parent=self._window,
            refuse=self.failed.emit,
            sources=self._sources,
        )

    def ask(self, kind: FileKind) -> None:
        """Ask for a file and write a table of the quotation into it."""
        made = self._hand().quotation
        if made is None or self._is_another_of_a_sent_number(kind):
            return
        saving = Saving(self._context.session.workbench.files_in_use, self._window, self._sources())
        path = saving.ask(tr("Save"), f"{self._stem(made, kind)}.{kind.ending}", FileForm(kind.ending))
        if path is not None:
            self.save(path, kind)

    def save(self, path: Path, kind: FileKind) -> None:
        """Write a paper or a table into a file; a paper as HTML where the name of its file ends so."""
        if kind in self.hands:
            self.hands[kind].save_to(path)
            return
        made = self._hand().quotation
        if made is not None and not self._is_another_of_a_sent_number(kind):
            save_aside(
                self._context,
                FILE,
                path,
                self._table(made, kind),
                notify=self._notify,
                refused=lambda fault: self.failed.emit(told(str(fault))),
            )

    def _table(self, made: Quotation, kind: FileKind) -> Callable[[], bytes]:
        hand, service, display = self._hand(), self._context.session.workbench.quoting(), self._context.session.display
        stored, revision, ordered = hand.stored, hand.revision, hand.ordered
        if kind is FileKind.WORKBOOK and hand.was_issued and stored is not None:
            issued = stored.id
            return lambda: service.life().issued_papers(issued, revision).workbook
        return {
            FileKind.WORKBOOK: lambda: service.papers().workbook(made, revision, display),
            FileKind.ORDER: lambda: service.papers().order_csv(made, revision, ordered),
            FileKind.MARGIN_WORKBOOK: lambda: service.papers().margin_workbook(made, revision, display),
            FileKind.MARGIN_TABLE: lambda: service.papers().margin_csv(made, revision),
        }[kind]

    def _wanted(self, kind: FileKind) -> WantedPaper | None:
        made = self._hand().quotation
        if made is None:
            return None
        if self._is_another_of_a_sent_number(kind):
            return None
        is_sent = kind is FileKind.PDF
        return WantedPaper(
            make=self.maker(kind),
            stem=self._stem(made, kind),
            name=made.terms.heading.number,
            recipient=made.terms.customer if is_sent else None,  # the others stay in the house
            pdf=self._shown() if is_sent else None,
        )

    def _is_another_of_a_sent_number(self, kind: FileKind) -> bool:
        """Say whether a paper for the customer would bear a number that another bears already; tell so if it would."""
        hand = self._hand()
        other = hand.sent_before
        if other is None or hand.was_issued or kind not in _FOR_THE_CUSTOMER:
            return False
        self.failed.emit(number_words(other))
        return True

    def maker(self, kind: FileKind) -> MakePaper:
        """Return what makes a paper of the quotation in hand; raise ``ValueError`` where there is none."""
        hand, option = self._hand(), self._option()
        made, stored, revision = hand.quotation, hand.stored, hand.revision
        if made is None:
            raise ValueError("there is no quotation in hand")
        service, display = self._context.session.workbench.quoting(), self._context.session.display
        issued = stored.id if kind is FileKind.PDF and hand.was_issued and stored is not None else None

        def make(_: Ticket, form: PaperForm) -> bytes:
            if issued is not None:
                if form is PaperForm.HTML:
                    return service.life().issued_html(issued, revision, display)
                return service.life().issued_papers(issued, revision).pdf
            match kind:
                case FileKind.PICK_LIST:
                    return service.papers().pick_list(made, option, revision, display, form)
                case FileKind.MARGIN:
                    return service.papers().margin_sheet(made, revision, display, form)
                case _:
                    return service.papers().pdf(made, revision, display, form)

        return make

    def _stem(self, made: Quotation, kind: FileKind) -> str:
        return f"{file_stem(made.terms.heading.number)}-r{self._hand().revision}{_STEM_ENDS.get(kind, '')}"
