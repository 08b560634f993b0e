"""The terms of a quotation, subject by subject: made, changed, opened, saved and kept as usual terms."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path
from weakref import ref

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeySequence, QShortcut, QUndoCommand
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QStackedWidget,
    QWidget,
)

from spoutline.bootstrap.quotations import QuotationService
from spoutline.catalogue.price_lists import PriceListNames
from spoutline.documents.own_files import FileForm
from spoutline.frozen import frozen
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.saving import FilesInUse, Saving
from spoutline.gui.dialogs.terms_page import TermsPage
from spoutline.gui.edit_stack import EditStack
from spoutline.gui.edits.terms_draft import DraftProblem, TermsDraft, draft_of, judged_terms, judged_usual
from spoutline.gui.edits.terms_subjects import LABOUR, SUBJECTS
from spoutline.gui.roles import Role, Tone
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.quotation_terms import Terms
from spoutline.model.survey import Survey
from spoutline.model.usual_terms import UsualTerms

_FILES = "TOML (*.toml)"
_WANTED_SIZE = QSize(1160, 760)
_EDGES = QSize(40, 60)  # pixels of the screen that frame and title bar take
_WORDS = {
    Tone.BAD: "needs a look",
    Tone.QUESTION: "something is still needed",
    Tone.GOOD: "complete",
}


@frozen
class FormState:
    """What the form holds: the draft, the folder where its picture is looked for, and the file it is the text of."""

    draft: TermsDraft
    folder: Path | None
    file: Path | None = None


class _Change(QUndoCommand):
    def __init__(self, dialog: TermsDialog, before: FormState, after: FormState, page: int) -> None:
        super().__init__()
        self._dialog = ref(dialog)  # see ``EditStack``
        self._before, self._after, self._page = before, after, page

    def redo(self) -> None:
        self._show(self._after)

    def undo(self) -> None:
        self._show(self._before)

    def _show(self, state: FormState) -> None:
        dialog = self._dialog()
        if dialog is not None:
            dialog.show_state(state, self._page)


class TermsDialog(FormDialog):
    """Asks for the terms of a quotation.

    ``terms`` holds them once the dialog is accepted, ``path`` the file that says exactly the same, ``folder`` where
    the letterhead's picture is to be looked for. ``start`` None begins with the usual terms and, for the day,
    ``today``. For a ``survey`` the page of labour says how many hours the table comes to. ``in_use`` returns the files
    that the program draws on, which the terms are not written over.
    """

    help_topic = "quotations"

    def __init__(
        self,
        service: QuotationService,
        start: Terms | None,
        folder: Path | None,
        parent: QWidget | None = None,
        *,
        today: date | None = None,
        survey: Survey | None = None,
        in_use: FilesInUse = tuple,
    ) -> None:
        super().__init__(tr("Terms of the quotation"), parent)
        self._service, self._survey, self._in_use = service, survey, in_use
        self._terms: Terms | None = None
        self._is_asked = False  # whether entries that are still missing are to be shown
        self._emptied: set[str] = set()
        self._undo = EditStack(self)
        names, usual = self._names(), self._usual() if start is None else UsualTerms()
        self._makers = names.makers
        self._state = FormState(draft_of(start or usual, today, self._makers), folder)
        self._first = self._state.draft
        self._make_body(names)
        self._make_foot()
        self._make_keys()
        self.show_state(self._state, 0, is_first=True)
        self._fit_screen()
        self.subject_list.setCurrentRow(0)

    @property
    def terms(self) -> Terms | None:
        """The terms that were accepted; None before that."""
        return self._terms

    @property
    def path(self) -> Path | None:
        """The file that says exactly what the form holds; None where there is none."""
        return self._state.file

    @property
    def folder(self) -> Path | None:
        """The folder where the letterhead's picture is looked for before the one of the usual terms."""
        return self._state.folder

    @property
    def draft(self) -> TermsDraft:
        """Everything typed."""
        return self._state.draft

    def page(self, subject: str) -> TermsPage:
        """Return the page of a subject by its name."""
        return next(page for page in self.pages if page.subject.name == subject)

    def show_state(self, state: FormState, page: int, *, is_first: bool = False) -> None:
        """Show another state of the form, and the page where it differs."""
        before = None if is_first else self._state.draft
        self._state = state
        for one in self.pages:
            one.show_draft(state.draft, before)
        self._show_problems()
        self._show_hours()
        if not is_first and page != self.subject_list.currentRow():
            self.subject_list.setCurrentRow(page)
        place = tr("Terms as in {path}").format(path=state.file) if state.file else tr("Terms not saved as a file")
        self.place_label.setText(place)

    def undo(self) -> None:
        """Take the last change back."""
        self._undo.undo()

    def redo(self) -> None:
        """Make the change again that was taken back."""
        self._undo.redo()

    def open_file(self, path: Path) -> None:
        """Fill the form from a terms file; say what is wrong with one that is not usable."""
        try:
            terms = self._service.terms().read_terms(path)
        except InputFault as fault:
            self.show_fault(str(fault))
            return
        self.show_fault("")
        self._push(FormState(draft_of(terms, makers=self._makers), path.parent, path), self.subject_list.currentRow())

    def save_as(self, path: Path) -> None:
        """Write the terms into a file; comments of a file that is there stay beside what is not changed."""
        terms = self._judged()
        if terms is None:
            return
        try:
            written = self._service.terms().write_terms(terms, path, self._state.folder)
        except StoreFault as fault:
            self.show_fault(str(fault))
            return
        self._push(FormState(draft_of(written, makers=self._makers), path.parent, path), self.subject_list.currentRow())
        self._say(tr("Saved as {path}.").format(path=path))

    def keep_as_usual(self) -> None:
        """Keep what quotations share as the usual terms; the rest of the form may be open."""
        self._finish_typing()
        judged = judged_usual(self._state.draft)
        if judged.terms is None:
            self._show_way(judged.problems, tr("The usual terms are as they were"))
            return
        try:
            place = self._service.terms().keep_usual_terms(judged.terms, self._state.folder)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self._say(tr("Kept as usual terms in {path}.").format(path=place))

    # inside

    def _make_body(self, names: PriceListNames) -> None:
        row = QHBoxLayout()
        row.setSpacing(14)
        self.subject_list = QListWidget(self)
        self.subject_list.setAccessibleName(tr("Subjects of the terms"))
        self.subject_list.setFixedWidth(210)
        self.subject_list.setItemDelegate(MarkDelegate(self.subject_list))
        self.stack = QStackedWidget(self)
        self.pages: list[TermsPage] = []
        for at, subject in enumerate(SUBJECTS):
            item = QListWidgetItem(tr(subject.title), self.subject_list)
            item.setSizeHint(QSize(0, 32))
            page = TermsPage(subject, names, self._picture, self._picture_name, self)
            page.typed.connect(lambda path, text, at=at: self._take_text(path, text, at))
            page.rows_written.connect(lambda path, rows, at=at: self._take_rows(path, rows, at))
            self.pages.append(page)
            self.stack.addWidget(page)
        self.subject_list.currentRowChanged.connect(self.stack.setCurrentIndex)
        row.addWidget(self.subject_list)
        row.addWidget(self.stack, 1)
        self.place_label = plain_label("", "quiet")
        self.body.addWidget(self.place_label)
        self.body.addLayout(row, 1)

    def _make_foot(self) -> None:
        self.said_label = plain_label("", "quiet", wraps=True)
        self.said_label.hide()
        self.body.addWidget(self.said_label)
        self.open_button = QPushButton(tr("Open a file…"), self)
        self.open_button.setToolTip(tr("Fill the form from a terms file (Ctrl+O)"))
        self.save_button = QPushButton(tr("Save as a file…"), self)
        self.save_button.setToolTip(tr("Write these terms into a file (Ctrl+S)"))
        self.usual_button = QPushButton(tr("Keep as usual terms"), self)
        self.usual_button.setToolTip(
            tr("Letterhead, conditions, prices, labor and taxes stand in every new quotation then")
        )
        for place, button in enumerate((self.open_button, self.save_button, self.usual_button)):
            button.setAutoDefault(False)
            self.foot.insertWidget(place, button)
        self.open_button.clicked.connect(self._ask_open)
        self.save_button.clicked.connect(self._ask_save)
        self.usual_button.clicked.connect(self.keep_as_usual)
        take = self.add_buttons(tr("Use these terms"))
        take.setDefault(False)  # Return in a field goes on with the form instead of ending it
        take.setAutoDefault(False)
        take.setToolTip(tr("Quote on these terms (Ctrl+Return)"))

    def _make_keys(self) -> None:
        keys = (
            (QKeySequence(QKeySequence.StandardKey.Undo), self.undo),
            (QKeySequence(QKeySequence.StandardKey.Redo), self.redo),
            (QKeySequence(QKeySequence.StandardKey.Open), self._ask_open),
            (QKeySequence(QKeySequence.StandardKey.Save), self._ask_save),
            (QKeySequence("Ctrl+Return"), self.accept),
            (QKeySequence("Ctrl+PgDown"), lambda: self._turn(1)),
            (QKeySequence("Ctrl+PgUp"), lambda: self._turn(-1)),
        )
        for key, act in keys:
            QShortcut(key, self).activated.connect(act)

    def _fit_screen(self) -> None:
        screen = self.screen()
        room = screen.availableSize() - _EDGES if screen is not None else _WANTED_SIZE
        self.resize(_WANTED_SIZE.boundedTo(room))

    def _names(self) -> PriceListNames:
        try:
            return self._service.terms().price_list_names()
        except InputFault as fault:
            self.show_fault(str(fault))
            return PriceListNames()

    def _usual(self) -> UsualTerms:
        try:
            return self._service.terms().usual_terms()
        except InputFault as fault:
            self.show_fault(str(fault))
            return UsualTerms()

    def _picture(self, name: str) -> Path | None:
        return self._service.terms().picture(name, self._state.folder)

    def _picture_name(self, path: Path) -> str:
        found = self._picture(path.name)
        return path.name if found is not None and found.resolve() == path.resolve() else str(path)

    def _take_text(self, path: str, text: str, page: int) -> None:
        if text != self._state.draft.texts[path]:
            if not text.strip():
                self._emptied.add(path)
            self._push(replace(self._state, draft=self._state.draft.with_text(path, text), file=None), page)

    def _take_rows(self, path: str, rows: tuple[tuple[str, ...], ...], page: int) -> None:
        self._push(replace(self._state, draft=self._state.draft.with_rows(path, rows), file=None), page)

    def _push(self, after: FormState, page: int) -> None:
        if after != self._state:
            self._say("")
            self._undo.push(_Change(self, self._state, after, page))

    def _show_problems(self) -> None:
        problems = judged_terms(self._state.draft).problems
        for at, page in enumerate(self.pages):
            paths = {*page.fields, *page.sections}
            here = [one for one in problems if one.spot.path in paths]
            shown = [one for one in here if self._is_shown(one)]
            page.show_problems(shown)
            tone = Tone.BAD if shown else Tone.QUESTION if here else Tone.GOOD
            item = self.subject_list.item(at)
            item.setData(Role.TONE, tone.value)
            words = tr(_WORDS[tone])
            item.setToolTip(words)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{item.text()}: {words}")
        if not any(self._is_shown(one) for one in problems) and self._is_asked:
            self.show_fault("")

    def _show_hours(self) -> None:
        """Say what the labour table comes to at the station in hand; nothing while it is faulty."""
        usual = judged_usual(self._state.draft).terms
        words = ""
        if self._survey is not None and usual is not None and usual.labour.tasks:
            found = self._service.terms().labour_forecast(usual.labour, self._survey)
            start = tr("Survey in hand (positions: {positions}, dispensers: {dispensers}): {most}{hours:f} hours.")
            most = tr("at most ") if found.is_most else ""
            words = start.format(
                positions=found.positions, dispensers=found.dispensers, most=most, hours=found.hours.normalize()
            )
        self.page(LABOUR.name).sections["labour.tasks"].show_note(words)

    def _is_shown(self, problem: DraftProblem) -> bool:
        return self._is_asked or not problem.is_missing or problem.spot.path in self._emptied

    def _judged(self) -> Terms | None:
        """Return the terms of the form; where there are none, lead to what stands in the way."""
        self._finish_typing()
        judged = judged_terms(self._state.draft)
        if judged.terms is None:
            self._show_way(judged.problems, tr("Nothing was taken"))
        return judged.terms

    def _show_way(self, problems: tuple[DraftProblem, ...], lead: str) -> None:
        """Say what stands in the way, and put the keyboard where the first of it is."""
        self._is_asked = True
        self._show_problems()
        first = min(problems, key=lambda one: self._page_of(one.spot.path))
        at = self._page_of(first.spot.path)
        more = tr(" {0} more entries need a look.").format(len(problems) - 1) if len(problems) > 1 else ""
        self.show_fault(f"{lead}: {SUBJECTS[at].title}, {first}{more}")
        self.subject_list.setCurrentRow(at)
        self.pages[at].go_to(first.spot)

    def _page_of(self, path: str) -> int:
        found = (at for at, page in enumerate(self.pages) if path in page.fields or path in page.sections)
        return next(found, self.subject_list.currentRow())

    def _finish_typing(self) -> None:
        self.pages[self.stack.currentIndex()].finish_typing()

    def _say(self, text: str) -> None:
        self.said_label.setText(text)
        self.said_label.setVisible(bool(text))
        if text:
            self._is_asked = False
            self.show_fault("")

    def _turn(self, step: int) -> None:
        self.subject_list.setCurrentRow((self.subject_list.currentRow() + step) % len(self.pages))

    def _ask_open(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr("Terms of the quotation"), self._folder_text(), _FILES)
        if path:
            self.open_file(Path(path))

    def _ask_save(self) -> None:
        if self._judged() is None:
            return
        place = str(self._state.file or Path(self._folder_text()) / "terms.toml")
        saving = Saving(self._in_use, self)
        path = saving.ask(tr("Save the terms"), place, FileForm.TOML, edited=self._state.file)
        if path is not None:
            self.save_as(path)

    def _folder_text(self) -> str:
        return str(self._state.folder) if self._state.folder is not None else ""

    def accept(self) -> None:
        """Qt: close with the terms; where they are not usable, lead to what stands in the way."""
        terms = self._judged()
        if terms is not None:
            self._terms = terms
            super().accept()

    def reject(self) -> None:
        """Qt: leave everything as it was; ask before what was typed is lost."""
        self._finish_typing()
        is_lost = self._state.draft != self._first and self._state.file is None
        if is_lost and not self.is_sure(tr("Leave the terms as they were? What you wrote here is lost.")):
            return
        super().reject()
