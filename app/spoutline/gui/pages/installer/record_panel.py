"""The commissioning record of the position in focus: filled in on screen or from a form, kept, printed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.installer.record_fields import RecordFields
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import ScrolledPage, plain_label
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef
from spoutline.model.record import CommissioningRecord, PhotoNote
from spoutline.planning.sets.plan_site import fingerprint_of
from spoutline.whole_files import InUse

_FILE = JobKey(JobKind.FILE, "record")


class RecordPanel(QWidget):
    """Holds the record of one position until it is kept.

    Signals
    -------
    kept()
        A record was put into the book, so that lists of records are out of date.
    """

    kept = Signal()

    def __init__(
        self, context: Context, language: Callable[[], Language], notify: Notify, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._context, self._language, self._notify = context, language, notify
        self._shown: object = None
        self._sources: list[InUse] = []  # forms and photos read here, which no paper may take the place of
        self._photos: dict[str, tuple[PhotoNote, bytes]] = {}
        self._read: dict[str, CommissioningRecord] = {}  # of the form last read, by position, not yet kept
        self._read_photos: Mapping[str, bytes] = {}  # pictures of that form, by SHA-256
        page = ScrolledPage(self)
        self.state_label = plain_label("", wraps=True)
        self.fields = RecordFields(context, language, self)
        page.column.addWidget(self.state_label)
        page.column.addWidget(self.fields)
        page.column.addLayout(self._photo_row())
        page.column.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 0)
        column.addWidget(page, 1)
        column.addLayout(self._buttons())

    def _photo_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.photo_button = QPushButton(tr("Add pho&tos…"), self)
        self.photo_button.clicked.connect(self._ask_photos)
        self.photo_label = plain_label("", "quiet", wraps=True)
        row.addWidget(self.photo_button)
        row.addWidget(self.photo_label, 1)
        return row

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.read_button = QPushButton(tr("Read a &filled form…"), self)
        self.read_button.clicked.connect(self._ask_form)
        self.keep_button = QPushButton(tr("Save the re&cord"), self)
        self.keep_button.setObjectName("primary")
        self.keep_button.clicked.connect(self.keep)
        self.hands = self._hands(self._wanted_record)
        self.bill_hands = self._hands(self._wanted_bill)
        self.paper_button = self.hands.menu_button(tr("Record (P&DF)"), tr("The record of this position, as a paper"))
        self.bill_button = self.bill_hands.menu_button(
            tr("&Bill as built"), tr("The parts of the site as they hang there now, as a paper")
        )
        for button in (self.read_button, self.keep_button, self.paper_button, self.bill_button):
            row.addWidget(button, 1)
        return row

    def _hands(self, wanted: Callable[[], WantedPaper | None]) -> PaperHands:
        return PaperHands(
            self._context.session.workbench,
            self._context.jobs,
            wanted,
            key=_FILE,
            tell=self._notify,
            parent=self,
            refuse=self.state_label.setText,
            sources=lambda: self._sources,
        )

    def refresh(self) -> None:
        """Show the fields of the position in focus; another position begins without photos."""
        session = self._context.session
        plan = self._context.sets.plan(session.label)
        self.fields.show_plan(plan)
        if (session.label, plan) == self._shown:
            return
        self._shown = (session.label, plan)
        self._photos = {}
        self.photo_label.setText("")
        is_ready = plan is not None and plan.chosen is not None
        self.keep_button.setEnabled(is_ready)
        for hands in (self.hands, self.bill_hands):
            hands.allow(is_ready)
        if plan is None:
            self.state_label.setText(tr("Planning…"))
        elif plan.chosen is None:
            self.state_label.setText(tr("This position has no set, so there is nothing to record."))
        else:
            words = tr("Position {0}: an entry outside its limit is marked at once.")
            self.state_label.setText(words.format(session.label))
            self._show_read()

    def set_fitted(self, planned: PartRef, fitted: tuple[PartRef, ...], reason: str) -> None:
        """Enter another part for a planned one, with its reason."""
        self.refresh()
        self.fields.set_fitted(planned, fitted, reason)

    def keep(self) -> None:
        """Put the record into the book; it is there when this returns, or the fault is told."""
        try:
            record = self.fields.record(self._notes())
            photos = {digest: content for digest, (_, content) in self._photos.items()}
            record, faults = self._judged(record)
            desk = self._context.session.workbench.packing()
            wait_for(lambda: desk.records().add_commissioning(record, photos))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        self._read.pop(record.position, None)
        kept = tr("The record of {0} is kept in the book.").format(record.position)
        self.state_label.setText(" ".join((kept, *(f"✗ {text}" for text in faults))))
        self._notify(tr("The record of {0} is kept in the book.").format(record.position))
        self.kept.emit()

    def _judged(self, record: CommissioningRecord) -> tuple[CommissioningRecord, tuple[str, ...]]:
        """Return the record with what was found wrong in it, and the words for that."""
        context, session = self._context, self._context.session
        plan = context.sets.plan(session.label)
        if plan is None:
            return record, ()
        desk, survey, display, language = session.workbench.packing(), session.survey, session.display, self._language()
        story = context.story
        judged = wait_for(lambda: desk.judge_built(record, plan, survey, desk.words(language, display), story))
        return judged.record, judged.record.found

    def read_form(self, path: Path) -> None:
        """Read a filled form: show what it holds of the position in focus now, of the others when they come there."""
        session, language = self._context.session, self._language()
        try:
            form = wait_for(lambda: session.workbench.packing().read_form(path, language))
            records = form.records
            mine = {one.position: one for one in records if one.site == session.survey.site.name}
            if session.label not in mine:
                held = ", ".join(f"{one.site}, {one.position}" for one in records)
                wanted = f"the form holds nothing of {session.survey.site.name}, {session.label}; it holds {held}"
                raise InputFault((InputProblem(str(path), "position", repr(session.label), wanted),))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        self._read, self._read_photos = mine, form.photos
        self._sources.append(InUse(path, tr("the filled form")))
        self.refresh()
        self._show_read()

    def _show_read(self) -> None:
        """Show what the form last read holds of the position in focus, and name the others that wait to be kept."""
        session = self._context.session
        record = self._read.get(session.label)
        if record is None:
            return
        self.fields.show_record(record)
        for note in record.photos:
            self._photos[note.sha256] = (note, self._read_photos[note.sha256])
        self._show_photos()
        if record.plan_revision != fingerprint_of(session.survey):
            self.state_label.setText(tr("The survey has changed since this form was printed. Look at every line."))
            return
        if record.unread:
            asked = "; ".join(self.fields.unread_texts(record))
            self.state_label.setText(tr("Fields that could not be read, to be filled in here: {0}").format(asked))
            return
        others = [label for label in self._read if label != session.label]
        if others:
            words = tr("The form also holds {0}: go to each position, look at it and keep it.")
            self.state_label.setText(words.format(", ".join(others)))

    def add_photos(self, paths: tuple[Path, ...]) -> None:
        """Attach photos to the record."""
        for path in paths:
            try:
                note, content = self._context.session.workbench.packing().read_photo(path)
            except InputFault as fault:
                self.state_label.setText(told(str(fault)))
                continue
            self._photos[note.sha256] = (note, content)
            self._sources.append(InUse(path, tr("a photo of the record")))
        self._show_photos()

    def _show_photos(self) -> None:
        self.photo_label.setText(", ".join(note.name for note, _ in self._photos.values()))

    def _wanted_record(self) -> WantedPaper | None:
        session, language = self._context.session, self._language()
        workbench, display = session.workbench, session.display
        shown = self._context.sets.whole_site(with_alternatives=False)
        photos = {digest: content for digest, (_, content) in self._photos.items()}
        record = self._record_or_none()
        if record is None:
            return None

        def make(ticket: Ticket, form: PaperForm) -> bytes:
            service, site_plan = workbench.packing(), shown(ticket)
            judged = service.judge(record, site_plan)
            return service.record_sheet((judged,), site_plan, photos, language, display, form=form)

        return WantedPaper(make=make, stem=self._stem("record"), name=session.survey.site.name)

    def _wanted_bill(self) -> WantedPaper | None:
        """Return the bill of the site as built: with the changes of this record and of those in the book."""
        session = self._context.session
        survey, workbench, display = session.survey, session.workbench, session.display
        shown = self._context.sets.whole_site()
        record = self._record_or_none()
        if record is None:
            return None

        def make(ticket: Ticket, form: PaperForm) -> bytes:
            service, site_plan = workbench.packing(), shown(ticket)
            known = service.records().commissioning(survey.site.name)
            revision = site_plan.provenance.survey_fingerprint
            records = [one.record for one in known if one.record.plan_revision == revision]
            records.append(record)
            built = service.as_built(site_plan, records)
            return workbench.bills().pdf(built, display, records=records, form=form)

        return WantedPaper(make=make, stem=self._stem("as-built"), name=session.survey.site.name)

    def _stem(self, ending: str) -> str:
        session = self._context.session
        return f"{file_stem(session.survey.site.name)}-{file_stem(session.label)}-{ending}"

    def _notes(self) -> tuple[PhotoNote, ...]:
        return tuple(note for note, _ in self._photos.values())

    def _record_or_none(self) -> CommissioningRecord | None:
        try:
            return self._judged(self.fields.record(self._notes()))[0]
        except InputFault as fault:
            self.state_label.setText(told(str(fault)))
            return None

    def _ask_photos(self) -> None:
        paths, _ = QFileDialog.getOpenFileNames(self, tr("Photos"), "", "PNG, JPEG (*.png *.jpg *.jpeg)")
        if paths:
            self.add_photos(tuple(Path(path) for path in paths))

    def _ask_form(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr("Read a filled form"), "", "PDF, JSON (*.pdf *.json)")
        if path:
            self.read_form(Path(path))
