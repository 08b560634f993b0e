"""What is done with a paper, alike wherever one is made: saved, printed, handed to mail."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property
from itertools import pairwise
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QUrl
from PySide6.QtGui import QAction, QDesktopServices
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QMenu, QPushButton, QWidget
from shiboken6 import isValid

from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm, form_of
from spoutline.frozen import frozen
from spoutline.gui.dialogs.printing import print_document
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.quotation_terms import Party
from spoutline.whole_files import InUse, write_file

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

MakePaper = Callable[[Ticket, PaperForm], bytes]
Tell = Callable[[str], Any]


@frozen(kw_only=True)
class WantedPaper:
    """A paper as a person wants it now.

    Parameters
    ----------
    make
        Gives it in a form, off the window's thread, so it must not touch the window.
    stem, name
        The stem of its file's name, and the name of the print job.
    recipient
        Whom it goes to; None for nobody who is known.
    pdf
        Its pages where they are made already.
    only_pdf
        Whether it is of use as pages alone.
    """

    make: MakePaper
    stem: str
    name: str
    recipient: Party | None = None
    pdf: bytes | None = None
    only_pdf: bool = False


def open_with_desktop(path: Path) -> bool:
    """Ask the desktop to open a file with its own program; say whether it has one."""
    return QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))


def button_grid(buttons: Sequence[QPushButton], columns: int) -> QGridLayout:
    """Return buttons in rows of so many, all of one width; the keyboard goes through them in the order of reading."""
    for before, after in pairwise(buttons):
        QWidget.setTabOrder(before, after)
    grid = QGridLayout()
    for place, button in enumerate(buttons):
        grid.addWidget(button, *divmod(place, columns))
    for column in range(columns):
        grid.setColumnStretch(column, 1)
    return grid


def button_row(buttons: Sequence[QPushButton]) -> QHBoxLayout:
    """Return buttons beside each other, at the left of the room."""
    row = QHBoxLayout()
    for button in buttons:
        row.addWidget(button)
    row.addStretch(1)
    return row


class PaperHands(QObject):
    """Saves, prints and mails one paper of a page or dialog: by three buttons, or by a button with a menu of the three.

    ``wanted`` returns the paper, or None where there is none, of which the page has told the reason. ``key`` is that
    under which files are written, ``tell`` hears what became of it and ``refuse`` (else ``tell`` too) why nothing did.
    ``sources`` returns the files that the paper is made from, beside those that the program draws on; ``open_file``
    opens the mail that was written.
    """

    def __init__(
        self,
        workbench: Workbench,
        jobs: Jobs,
        wanted: Callable[[], WantedPaper | None],
        *,
        key: JobKey,
        tell: Tell,
        parent: QWidget,
        refuse: Tell | None = None,
        sources: Callable[[], Sequence[InUse]] = tuple,
    ) -> None:
        super().__init__(parent)
        self._workbench, self._jobs, self._wanted = workbench, jobs, wanted
        self._key, self._window, self._sources = key, parent, sources
        self._tell, self._refuse = tell, refuse or tell
        self._pressed: list[QPushButton] = []
        self._is_allowed = True
        self.open_file: Callable[[Path], bool] = open_with_desktop

    # what is pressed

    @cached_property
    def buttons(self) -> tuple[QPushButton, QPushButton, QPushButton]:
        """The three buttons, in the order of reading."""
        save, print_it, mail = (self._button(words, hint, act) for words, hint, act in self._steps())
        return save, print_it, mail

    @property
    def save_button(self) -> QPushButton:
        """The button that saves the paper."""
        return self.buttons[0]

    @property
    def print_button(self) -> QPushButton:
        """The button that prints it."""
        return self.buttons[1]

    @property
    def mail_button(self) -> QPushButton:
        """The button that hands it to mail."""
        return self.buttons[2]

    def menu_button(self, words: str, hint: str = "") -> QPushButton:
        """Return one button for where three have no room: its menu has the same three steps."""
        button = self._button(words, hint, None)
        menu = QMenu(button)
        menu.setToolTipsVisible(True)
        for text, tip, act in self._steps():
            action = QAction(text, menu)
            action.setToolTip(tip)
            action.triggered.connect(lambda _=False, do=act: do())
            menu.addAction(action)
        button.setMenu(menu)
        return button

    def allow(self, ready: bool) -> None:
        """Let the paper be handed on, or not while it is being made."""
        self._is_allowed = ready
        for button in self._pressed:
            button.setEnabled(ready)

    def _steps(self) -> tuple[tuple[str, str, Callable[[], None]], ...]:
        pages = tr("As pages (PDF), or as one HTML page for screen readers and mails.")
        mail = tr(
            "Writes a mail with this paper attached and opens it in your mail program; nothing is sent by itself."
        )
        return (
            (tr("Save PD&F…"), pages, self.save),
            (tr("Print…"), "", self.print_shown),
            (tr("Hand to &mail…"), mail, self.mail),
        )

    def _button(self, words: str, hint: str, act: Callable[[], None] | None) -> QPushButton:
        button = QPushButton(words, self._window)
        button.setToolTip(hint)
        button.setAutoDefault(False)
        button.setEnabled(self._is_allowed)
        if act is not None:
            button.clicked.connect(lambda _=False: act())
        self._pressed.append(button)
        return button

    # steps

    def save(self) -> None:
        """Ask for a file and write the paper into it."""
        paper = self._wanted()
        if paper is not None:
            path = self._saving().ask_paper(tr("Save"), paper.stem, only_pdf=paper.only_pdf)
            if path is not None:
                self._write(path, paper)

    def save_to(self, path: Path) -> None:
        """Write the paper into a file, as HTML where its name ends so; a failure leaves a file that was there."""
        paper = self._wanted()
        if paper is not None:
            self._write(path, paper)

    def print_shown(self) -> None:
        """Print its pages; those that are not made yet are made first."""
        paper = self._wanted()
        if paper is None:
            return
        if paper.pdf is not None:
            self._print(paper.pdf, paper.name)
            return
        make, name = paper.make, paper.name
        self._tell(tr("Making the paper…"))
        self._jobs.start(
            JobKey(JobKind.PAPER, f"print {self._key.subject}"),
            lambda ticket: make(ticket, PaperForm.PDF),
            lambda pdf: self._print(pdf, name, is_told=True),
            lambda fault: self._fail(tr("Nothing was printed: {reason}"), fault),
        )

    def mail(self) -> None:
        """Ask for a file, write a mail with the paper into it, and open that."""
        paper = self._wanted()
        if paper is not None:
            path = self._saving().ask(tr("Hand to mail"), f"{paper.stem}.{FileForm.MAIL}", FileForm.MAIL)
            if path is not None:
                self._write_mail(path, paper)

    def mail_to(self, path: Path) -> None:
        """Write the paper into a mail, and open that once it is there."""
        paper = self._wanted()
        if paper is not None:
            self._write_mail(path, paper)

    def _saving(self) -> Saving:
        return Saving(self._workbench.files_in_use, self._window, self._sources())

    def _write(self, path: Path, paper: WantedPaper) -> None:
        form, make, pdf = form_of(path), paper.make, paper.pdf

        def content(ticket: Ticket) -> bytes:
            return pdf if pdf is not None and form is PaperForm.PDF else make(ticket, form)

        self._start(path, content, lambda: tr("Saved as {path}").format(path=path))

    def _write_mail(self, path: Path, paper: WantedPaper) -> None:
        service, make, pdf, recipient = self._workbench.mailing(), paper.make, paper.pdf, paper.recipient

        def content(ticket: Ticket) -> bytes:
            pages = pdf if pdf is not None else make(ticket, PaperForm.PDF)
            return service.draft(pages, path.stem, recipient)

        def opened() -> str:
            is_opened = self.open_file(path)
            words = (
                tr("Saved as {path}. Your mail program is asked to open it.")
                if is_opened
                else tr("Saved as {path}; no program here opens it.")
            )
            large = tr("It is larger than many mail services take.") if service.is_large(path) else ""
            return f"{words.format(path=path)} {large}".strip()

        self._start(path, content, opened)

    def _start(self, path: Path, content: Callable[[Ticket], bytes], done: Callable[[], str]) -> None:
        def tell(_: object) -> None:
            if isValid(self):  # a dialog may be gone by now; its file is there all the same
                self._tell(done())

        self._jobs.start(
            self._key,
            lambda ticket: write_file(path, content(ticket)),
            tell,
            lambda fault: self._fail(tr("Nothing was saved: {reason}"), fault),
        )

    def _print(self, pdf: bytes, name: str, *, is_told: bool = False) -> None:
        if not isValid(self):
            return
        try:
            is_sent = print_document(pdf, name, self._window, self._workbench.files_in_use)
        except StoreFault as fault:
            self._refuse(told(str(fault)))
            return
        if is_told:
            self._tell(tr("Sent to the printer.") if is_sent else tr("Nothing was printed."))

    def _fail(self, words: str, fault: Exception) -> None:
        if isValid(self):
            reason = fault.problems[0].wanted if isinstance(fault, InputFault) else str(fault)
            self._refuse(words.format(reason=told(reason)))
