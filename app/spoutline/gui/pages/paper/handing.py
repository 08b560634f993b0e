"""What a page does with the paper that it shows, beside saving it: printed, or handed to mail."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

from PySide6.QtCore import QObject, QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from spoutline.documents.own_files import FileForm
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.printing import print_document
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.wording import tr
from spoutline.model.faults import StoreFault
from spoutline.model.quotation_terms import Party


@dataclass(frozen=True, slots=True)
class Called:
    """What a paper is called: the stem of its file's name, the name of the print job, and whom it goes to."""

    stem: str
    name: str
    recipient: Party | None = None


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


class PaperHands(QObject):
    """The buttons *Print* and *Hand to mail* of a page with a paper, and what they do.

    ``document`` returns the paper shown, None where there is none; ``called`` what it is called. ``key`` and ``notify``
    are those under which the page writes its files and tells of them; ``open_file`` opens the mail that was written.
    """

    def __init__(
        self,
        context: Context,
        document: Callable[[], bytes | None],
        called: Callable[[], Called],
        *,
        key: JobKey,
        notify: Notify,
        parent: QWidget,
    ) -> None:
        super().__init__(parent)
        self._context, self._document, self._called = context, document, called
        self._key, self._notify, self._window = key, notify, parent
        self.open_file: Callable[[Path], bool] = open_with_desktop
        self.print_button = QPushButton(tr("Print…"), parent)
        self.print_button.clicked.connect(lambda _=False: self.print_shown())
        self.mail_button = QPushButton(tr("Hand to &mail…"), parent)
        self.mail_button.setToolTip(
            tr("Writes a mail with this paper attached and opens it in your mail program; nothing is sent by itself.")
        )
        self.mail_button.clicked.connect(lambda _=False: self._ask_and_mail())

    @property
    def buttons(self) -> tuple[QPushButton, QPushButton]:
        """The two buttons, in the order of reading."""
        return self.print_button, self.mail_button

    def allow(self, ready: bool) -> None:
        """Let the paper be handed on, or not while it is being made."""
        for button in self.buttons:
            button.setEnabled(ready)

    def print_shown(self) -> None:
        """Print the pages shown."""
        document = self._document()
        if document is None:
            return
        try:
            print_document(document, self._called().name, self._window, self._context.session.workbench.files_in_use)
        except StoreFault as fault:
            self._notify(str(fault))

    def _ask_and_mail(self) -> None:
        if self._document() is None:
            return
        saving = Saving(self._context.session.workbench.files_in_use, self._window)
        path = saving.ask(tr("Hand to mail"), f"{self._called().stem}.{FileForm.MAIL}", FileForm.MAIL)
        if path is not None:
            self.mail_to(path)

    def mail_to(self, path: Path) -> None:
        """Write the paper shown into a mail, and open that once it is there."""
        document, recipient = self._document(), self._called().recipient
        if document is None:
            return
        service = self._context.session.workbench.mailing()

        def open_mail() -> str:
            is_opened = self.open_file(path)
            told = (
                tr("Saved as {path}. Your mail program is asked to open it.")
                if is_opened
                else tr("Saved as {path}; no program here opens it.")
            )
            large = tr("It is larger than many mail services take.") if service.is_large(path) else ""
            return f"{told.format(path=path)} {large}".strip()

        save_aside(
            self._context,
            self._key,
            path,
            lambda: service.draft(document, path.stem, recipient),
            notify=self._notify,
            saved=open_mail,
        )
