"""The files of a programme: paper, tables and calendar, saved from its dialog."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault
from spoutline.model.programme import Programme
from spoutline.units.display import Display
from spoutline.whole_files import write_file

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_FILE = JobKey(JobKind.FILE, "programme")


class Tell(Protocol):
    """Hears that a file was saved, or why it was not."""

    def __call__(self, text: str, *, is_fault: bool) -> None:
        """Tell a person."""
        ...


class ProgrammeFiles(QWidget):
    """Buttons that save a programme; there is nothing to press before one is shown."""

    def __init__(self, workbench: Workbench, jobs: Jobs, tell: Tell, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._workbench, self._jobs, self._tell = workbench, jobs, tell
        self._programme: Programme | None = None
        self._display: Display | None = None
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        self.hands = PaperHands(
            workbench,
            jobs,
            self._wanted,
            key=_FILE,
            tell=lambda text: self._tell(text, is_fault=False),
            parent=self,
            refuse=lambda text: self._tell(text, is_fault=True),
        )
        self.hands.allow(False)
        row.addWidget(self.hands.menu_button(tr("Paper (P&DF)"), tr("Years, sites and money, as a paper")))
        self.buttons: dict[FileForm, QPushButton] = {}
        for form, words, hint in (
            (FileForm.XLSX, tr("Save &workbook…"), tr("Years, sites, visits and terms (XLSX)")),
            (FileForm.CSV, tr("Save ta&ble…"), tr("One line for each site (CSV)")),
            (FileForm.ICS, tr("Save c&alendar…"), tr("Visits and deadlines; the first year must be named")),
        ):
            button = QPushButton(words, self)
            button.setAutoDefault(False)
            button.setToolTip(hint)
            button.clicked.connect(self._asker(form))
            button.setEnabled(False)
            row.addWidget(button)
            self.buttons[form] = button

    def show_programme(self, programme: Programme, display: Display) -> None:
        """Save this programme from now on, with quantities in the units of ``display``."""
        self._programme, self._display = programme, display
        self.hands.allow(True)
        for form, button in self.buttons.items():
            button.setEnabled(form is not FileForm.ICS or programme.first_year is not None)

    def _asker(self, form: FileForm) -> Callable[[], None]:
        return lambda: self._ask(form)

    def _ask(self, form: FileForm) -> None:
        if self._programme is None:
            return
        path = Saving(self._workbench.files_in_use, self).ask(tr("Save"), f"{tr('program')}.{form}", form)
        if path is not None:
            self.save_to(path, form)

    def save_to(self, path: Path, form: FileForm) -> None:
        """Write the programme into a file: workbook, table or calendar."""
        content = self._content(form)
        if content is None:
            return

        def tell_fault(fault: Exception) -> None:
            reason = fault.problems[0].wanted if isinstance(fault, InputFault) else fault
            self._tell(tr("Nothing was saved: {reason}").format(reason=reason), is_fault=True)

        self._jobs.start(
            _FILE,
            lambda _: write_file(path, content()),
            lambda _: self._tell(tr("Saved as {path}").format(path=path), is_fault=False),
            tell_fault,
        )

    def _wanted(self) -> WantedPaper | None:
        programme, display, service = self._programme, self._display, self._workbench.converting()
        if programme is None or display is None:
            return None

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.programme_pdf(programme, display, form=form)

        return WantedPaper(make=make, stem=tr("program"), name=programme.name)

    def _content(self, form: FileForm) -> Callable[[], bytes] | None:
        programme, display, service = self._programme, self._display, self._workbench.converting()
        if programme is None or display is None:
            return None
        makers: dict[FileForm, Callable[[], bytes]] = {
            FileForm.XLSX: lambda: service.programme_xlsx(programme, display),
            FileForm.CSV: lambda: service.programme_csv(programme),
            FileForm.ICS: lambda: service.programme_calendar(programme, display),
        }
        return makers[form]
