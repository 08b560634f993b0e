"""The papers of the quotation in hand, written into files off the window's thread."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from spoutline.gui.jobs import Ticket
from spoutline.gui.pages.bill_page import Report, file_stem
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation_in_hand import InHand
from spoutline.gui.pages.quotation_work import FILE
from spoutline.gui.wording import tr
from spoutline.whole_files import write_file


class QuotationFiles(QObject):
    """Writes papers: ``pdf``, ``xlsx``, ``csv`` or ``pick``.

    Signals
    -------
    failed(str)
        Why a file was not written.
    """

    failed = Signal(str)

    def __init__(self, context: Context, tell: Report, parent: QWidget) -> None:
        super().__init__(parent)
        self._context, self._tell, self._window = context, tell, parent

    def ask(self, hand: InHand, suffix: str, option: int) -> None:
        """Ask for a file and write a paper into it."""
        if hand.quotation is None:
            return
        ending = "pdf" if suffix == "pick" else suffix
        stem = f"{file_stem(hand.quotation.terms.heading.number)}-r{hand.revision}"
        name = f"{stem}{'-pick-list' if suffix == 'pick' else ''}.{ending}"
        path, _ = QFileDialog.getSaveFileName(self._window, tr("Save"), name, f"{ending.upper()} (*.{ending})")
        if path:
            self.save(hand, Path(path), suffix, option)

    def save(self, hand: InHand, path: Path, suffix: str, option: int) -> None:
        """Write a paper into a file; one that was issued as it was sent. ``option`` is the pick list's, from 0."""
        made, stored, revision = hand.quotation, hand.stored, hand.revision
        if made is None:
            return
        desk, display = self._context.session.workbench.quoting(), self._context.session.display
        was_issued = hand.was_issued

        def work(_: Ticket) -> None:
            if was_issued and stored is not None and suffix in ("pdf", "xlsx"):
                papers = desk.issued_papers(stored.id, revision)
                write_file(path, papers.pdf if suffix == "pdf" else papers.workbook)
                return
            make: dict[str, Callable[[], bytes]] = {
                "pdf": lambda: desk.pdf(made, revision, display),
                "xlsx": lambda: desk.workbook(made, revision, display),
                "csv": lambda: desk.order_csv(made, revision),
                "pick": lambda: desk.pick_list(made, option, revision, display),
            }
            write_file(path, make[suffix]())

        self._context.jobs.start(
            FILE,
            work,
            lambda _: self._tell(tr("Saved as {path}").format(path=path)),
            lambda fault: self.failed.emit(str(fault)),
        )
