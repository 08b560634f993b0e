"""Where a file is written: asked for and checked before anything is done.

Where the command line wants ``--force``, the window asks.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from spoutline.documents.own_files import FileForm, own_test
from spoutline.documents.paper_form import PaperForm, form_of
from spoutline.gui.wording import tr
from spoutline.whole_files import InUse, OutputPlan, PlannedFile, is_same_file

# forms that programs open by the ending; lines of text go by the name that whoever gets them wants
_TOLD_BY_ENDING = frozenset(
    {
        FileForm.PDF,
        FileForm.XLSX,
        FileForm.CSV,
        FileForm.ICS,
        FileForm.HTML,
        FileForm.JSON,
        FileForm.SVG,
        FileForm.PNG,
        FileForm.MAIL,
    }
)
_OTHER_ENDINGS = {FileForm.HTML: ("htm",), FileForm.CSV: ("txt", "tsv")}  # that stand for the same form
FilesInUse = Callable[[], Sequence[InUse]]


class Saving:
    """Asks for files on behalf of a page or dialog.

    ``program`` returns the files that the program draws on, as ``Workbench.files_in_use`` does, ``in_use`` are further
    ones: no output takes the place of one.
    """

    def __init__(self, program: FilesInUse, parent: QWidget, in_use: Sequence[InUse] = ()) -> None:
        self._program, self._parent, self._in_use = program, parent, tuple(in_use)

    def ask(self, title: str, name: str, form: FileForm, *, edited: Path | None = None) -> Path | None:
        """Ask for a file of a form and return it where it may be written; None where not.

        ``edited`` is the file that is being edited, which may be written over.
        """
        path_text, _ = QFileDialog.getSaveFileName(self._parent, title, name, f"{form.upper()} (*.{form})")
        if not path_text:
            return None
        path = _of_form(Path(path_text), form)
        return path if self.may_write(path, form, edited=edited, typed=Path(path_text)) else None

    def ask_table(self, title: str, stem: str) -> tuple[Path, FileForm] | None:
        """Ask for the file of a table, XLSX or CSV by its ending; return it with its form where it may be written."""
        types = f"XLSX (*.{FileForm.XLSX});;CSV (*.{FileForm.CSV})"
        path_text, chosen = QFileDialog.getSaveFileName(self._parent, title, f"{stem}.{FileForm.XLSX}", types)
        if not path_text:
            return None
        typed = Path(path_text)
        is_csv = typed.suffix.lower() == f".{FileForm.CSV}" or chosen.startswith("CSV")
        form = FileForm.CSV if is_csv else FileForm.XLSX
        path = _of_form(typed, form)
        return (path, form) if self.may_write(path, form, typed=typed) else None

    def ask_paper(self, title: str, stem: str, *, only_pdf: bool = False) -> Path | None:
        """Ask for the file of a paper, PDF or HTML, and return it where it may be written; None where not.

        The ending tells the form; see ``paper_form.form_of``.
        """
        pages, page = f"PDF (*.{FileForm.PDF})", f"{tr('HTML page, for screen readers')} (*.{FileForm.HTML})"
        types = pages if only_pdf else f"{pages};;{page}"
        path_text, chosen = QFileDialog.getSaveFileName(self._parent, title, f"{stem}.{FileForm.PDF}", types)
        if not path_text:
            return None
        typed = Path(path_text)
        is_page = chosen == page or form_of(typed) is PaperForm.HTML
        form = FileForm.HTML if is_page and not only_pdf else FileForm.PDF
        path = _of_form(typed, form)
        return path if self.may_write(path, form, typed=typed) else None

    def ask_picture(self, title: str, stem: str) -> Path | None:
        """Ask for the file of a drawing, SVG or PNG by its ending; return it where it may be written."""
        types = f"SVG (*.{FileForm.SVG});;PNG (*.{FileForm.PNG})"
        path_text, chosen = QFileDialog.getSaveFileName(self._parent, title, f"{stem}.{FileForm.SVG}", types)
        if not path_text:
            return None
        typed = Path(path_text)
        is_png = typed.suffix.lower() == ".png" or chosen.startswith("PNG")
        form = FileForm.PNG if is_png else FileForm.SVG
        path = _of_form(typed, form)
        return path if self.may_write(path, form, typed=typed) else None

    def may_write(self, path: Path, form: FileForm, *, edited: Path | None = None, typed: Path | None = None) -> bool:
        """Say whether a file may be written; where somebody else's stands there, the person is asked.

        So is who ``typed`` another name in a file dialog, which asked about that one.
        """
        plan = OutputPlan([PlannedFile(path.name, path, own_test(form))], (*self._program(), *self._in_use))
        clashes = plan.clashes()
        if clashes:
            words = tr("Nothing was written. {path}: {reason}.")
            QMessageBox.warning(self._parent, "Spoutline", words.format(path=path, reason=clashes[0].wanted))
            return False
        if edited is not None and is_same_file(path, edited):
            return True
        if plan.foreign():
            words = tr("{path} is there already, and this program did not write it as such a file. Replace it?")
            return self._confirmed(words.format(path=path))
        if typed is not None and typed != path and path.exists():
            return self._confirmed(tr("{path} is there already. Replace it?").format(path=path))
        return True

    def _confirmed(self, question: str) -> bool:
        buttons = QMessageBox.StandardButton.Yes | QMessageBox.StandardButton.No
        answer = QMessageBox.question(self._parent, "Spoutline", question, buttons, QMessageBox.StandardButton.No)
        return answer == QMessageBox.StandardButton.Yes


def _of_form(path: Path, form: FileForm) -> Path:
    """Return a typed name with the ending of its form, where it has none or one that stands for another form.

    What follows a point need be no ending, as in "rev 1.2".
    """
    ending = path.suffix.lower().removeprefix(".")
    if ending in (form, *_OTHER_ENDINGS.get(form, ())) or (ending and form not in _TOLD_BY_ENDING):
        return path
    is_of_another = ending in {*_TOLD_BY_ENDING, *(one for more in _OTHER_ENDINGS.values() for one in more)}
    return path.with_suffix(f".{form}") if is_of_another else path.with_name(f"{path.name}.{form}")
