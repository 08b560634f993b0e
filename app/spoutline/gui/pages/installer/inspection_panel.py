"""Inspections of the site with their next days, and the wear log: what was replaced, when and why."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QFormLayout,
    QHBoxLayout,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.book.survey_faults import made
from spoutline.documents.own_files import FileForm
from spoutline.documents.pack.inspection_sheet import item_text
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.local_days import day_text
from spoutline.gui.models.record_table import Column, RecordTable, SortedRecords
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.day_edit import DayEdit
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.inspection import DueItem
from spoutline.model.language import Language
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import SitePlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import MEASURED_ITEMS, WEAR_REASONS, ChangeReason, InspectionEntry, WearEntry
from spoutline.units.meter_readings import MeterReading, parse_reading

_DUE = JobKey(JobKind.SITE_PLAN, "inspection")
_FILE = JobKey(JobKind.FILE, "inspection")


class InspectionPanel(QWidget):
    """Shows what is due from a day of handing over on; notes what was done and what was replaced.

    Signals
    -------
    noted()
        A replacement was put into the wear log, so that another part hangs there.
    """

    noted = Signal()

    def __init__(
        self,
        context: Context,
        language: Callable[[], Language],
        notify: Notify,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
    ) -> None:
        super().__init__(parent)
        self._context, self._language, self._notify, self._today = context, language, notify, today
        self._site_plan: SitePlan | None = None
        self._due: tuple[DueItem, ...] = ()
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        splitter.addWidget(self._due_card(splitter))
        splitter.addWidget(self._wear_card(splitter))
        splitter.setSizes([600, 400])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 0)
        column.addWidget(splitter)

    def _due_card(self, parent: QWidget) -> Card:
        card = Card(tr("Due"), parent)
        row = QHBoxLayout()
        self.service_edit = DayEdit(self, self._today())
        self.service_edit.setAccessibleName(tr("Day of handing over"))
        self.service_edit.editingFinished.connect(self.refresh)
        row.addWidget(plain_label(tr("Day of handing over"), "quiet"))
        row.addWidget(self.service_edit)
        row.addStretch(1)
        card.body.addLayout(row)
        self.state_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.state_label)
        self.due_model: RecordTable[DueItem] = RecordTable((), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.due_model)
        self.due_table = Table(tr("Inspections due"), self, shares=(5, 5, 9, 4))
        self.due_table.setModel(proxy)
        self.due_table.teach(tr("Inspections fall due from the day of handing over on; give it above."))
        self.due_table.setSortingEnabled(True)
        self.due_table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        card.body.addWidget(self.due_table, 1)
        card.body.addLayout(self._done_rows())
        buttons = QHBoxLayout()
        self.done_button = QPushButton(tr("Note it as do&ne today"), self)
        self.done_button.clicked.connect(self.note_done)
        self.hands = PaperHands(
            self._context.session.workbench,
            self._context.jobs,
            self._wanted,
            key=_FILE,
            tell=self._notify,
            parent=self,
            refuse=self.state_label.setText,
        )
        self.calendar_button = QPushButton(tr("Save a &calendar…"), self)
        self.calendar_button.clicked.connect(self._ask_and_save)
        paper = self.hands.menu_button(tr("Paper (P&DF)"), tr("The inspection plan of the site, as a paper"))
        for button in (self.done_button, paper, self.calendar_button):
            buttons.addWidget(button, 1)
        card.body.addLayout(buttons)
        return card

    def _done_rows(self) -> QVBoxLayout:
        """Return what is told of an inspection that is noted as done: who, with what, and what was read."""
        rows, row = QVBoxLayout(), QHBoxLayout()
        self.done_by_edit = LineEditor(self)
        self.instruments_edit = LineEditor(self)
        self.reading_edit = LineEditor(self)
        for field, words in (
            (self.done_by_edit, tr("Work done by")),
            (self.reading_edit, tr("Resistance read")),
            (self.instruments_edit, tr("Instruments used (type, number)")),
        ):
            field.setPlaceholderText(words)
            field.setToolTip(words)
            field.setAccessibleName(words)
            field.setMaxLength(200)
        row.addWidget(self.done_by_edit, 1)
        row.addWidget(self.reading_edit, 1)
        rows.addLayout(row)
        rows.addWidget(self.instruments_edit)  # in a row of its own: beside others its words are cut
        self.due_table.picked.connect(lambda _: self._allow_reading())
        return rows

    def _allow_reading(self) -> None:
        """Take a resistance only where the picked inspection reads one."""
        picked = self.due_table.current_record()
        is_measured = isinstance(picked, DueItem) and picked.item.id in MEASURED_ITEMS
        self.reading_edit.setEnabled(is_measured)
        if not is_measured:
            self.reading_edit.clear()

    def _wear_card(self, parent: QWidget) -> Card:
        card = Card(tr("Wear log"), parent)
        self.wear_model: RecordTable[WearEntry] = RecordTable(
            (
                Column(
                    title=tr("Date"),
                    text=lambda entry: day_text(entry.done_on),
                    sort=lambda entry: entry.done_on.toordinal(),
                ),
                Column(
                    title=tr("Position"), text=lambda entry: entry.position, positions=lambda entry: (entry.position,)
                ),
                Column(title=tr("Removed"), text=lambda entry: str(entry.removed)),
                Column(title=tr("Installed"), text=lambda entry: str(entry.fitted) or "–"),
                Column(title=tr("Why"), text=lambda entry: self._reason_words(entry.reason)),
            ),
            self,
        )
        self.wear_table = Table(tr("Wear log"), self, shares=(4, 3, 3, 3, 3))
        self.wear_table.setModel(self.wear_model)
        self.wear_table.teach(tr("Parts that were replaced come here; the fields below add the first."))
        card.body.addWidget(self.wear_table, 1)
        form = QFormLayout()
        self.removed_box = StillBox(self)
        self.fitted_edit = LineEditor(self)
        self.reason_box = StillBox(self)
        self.wear_day_edit = DayEdit(self, self._today())
        self.wear_note_edit = LineEditor(self)
        self.wear_note_edit.setMaxLength(200)
        for words, widget in (
            (tr("Removed here"), self.removed_box),
            (tr("Installed (part number)"), self.fitted_edit),
            (tr("Why"), self.reason_box),
            (tr("Date"), self.wear_day_edit),
            (tr("Remark"), self.wear_note_edit),
        ):
            form.addRow(words, widget)
        card.body.addLayout(form)
        self.wear_button = QPushButton(tr("Add to the &wear log"), self)
        self.wear_button.clicked.connect(self.note_wear)
        card.body.addWidget(self.wear_button)
        return card

    def _reason_words(self, reason: ChangeReason) -> str:
        place = self.reason_box.findData(reason)
        return self.reason_box.itemText(place) if place >= 0 else reason.value.replace("_", " ")

    def refresh(self) -> None:
        """Work out what is due for the survey in hand, and show the wear log."""
        session = self._context.session
        self._show_parts()
        if self.reason_box.count() == 0:
            words = session.workbench.packing().words(session.workbench.language, session.display).story
            for reason in WEAR_REASONS:
                self.reason_box.addItem(words.word(reason), reason)
        try:
            in_service = _day(self.service_edit, tr("day of handing over"))
            site, desk = session.survey.site.name, session.workbench.packing()
            self.wear_model.show_records(wait_for(lambda: desk.records().wear(site)))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        self.wear_table.fit_columns()
        workbench, shown = session.workbench, self._context.sets.whole_site(with_alternatives=False)

        def work(ticket: Ticket) -> tuple[SitePlan, tuple[DueItem, ...]]:
            site_plan = shown(ticket)
            return site_plan, workbench.packing().due(site_plan, in_service)

        self.state_label.setText(tr("Working out what is due…"))
        self._context.jobs.start(_DUE, work, self._show_due, self._show_trouble)

    def note_done(self) -> None:
        """Note the picked inspection as done today."""
        picked = self.due_table.current_record()
        if not isinstance(picked, DueItem):
            return
        session = self._context.session
        try:
            reading = self._reading()
            entry = made(
                InspectionEntry,
                site=session.survey.site.name,
                position=picked.position,
                item=picked.item.id,
                done_on=self._today(),
                done_by=self.done_by_edit.text(),
                instruments=self.instruments_edit.text(),
                reading=reading.value,
                over_range=reading.over_range,
            )
            wait_for(lambda: session.workbench.packing().records().add_inspection(entry))
        except (InputFault, StoreFault) as fault:
            self._show_trouble(fault)
            return
        self.reading_edit.clear()
        self.refresh()

    def _reading(self) -> MeterReading:
        written, system = self.reading_edit.text().strip(), self._context.session.display.system
        if not written:
            return MeterReading(value=None)
        language = self._context.session.workbench.language
        return parse_reading(written, Dimension.RESISTANCE, system, language, field=tr("Resistance read"))

    def note_wear(self) -> None:
        """Add a replacement to the wear log."""
        session = self._context.session
        try:
            fitted = self.fitted_edit.text().strip()
            entry = made(
                WearEntry,
                site=session.survey.site.name,
                position=session.label,
                done_on=_day(self.wear_day_edit, tr("date")),
                removed=self.removed_box.currentData(),
                fitted=wait_for(lambda: session.workbench.parts().part(fitted, session.survey)).ref if fitted else "",
                reason=ChangeReason(self.reason_box.currentData()),
                note=self.wear_note_edit.text(),
                catalogue_edition=wait_for(lambda: session.workbench.parts().catalogue_edition(session.survey)),
            )
            desk, survey, story = session.workbench.packing(), session.survey, self._context.story
            plan = self._context.sets.plan(session.label)
            judged = wait_for(lambda: desk.judge_wear(entry, plan, survey, story))
            wait_for(lambda: desk.records().add_wear(judged))
        except (InputFault, StoreFault) as fault:
            self._show_trouble(fault)
            return
        self.fitted_edit.clear()
        self.wear_note_edit.clear()
        self.refresh()
        self.noted.emit()
        if judged.found:
            self._notify(" ".join(f"✗ {text}" for text in judged.found))

    def save_calendar(self, path: Path) -> None:
        """Write the inspections as a calendar."""
        site_plan, due = self._site_plan, self._due
        if site_plan is None:
            return
        session, language = self._context.session, self._language()
        service, display = session.workbench.packing(), session.display

        def content() -> bytes:
            return service.inspection_calendar(site_plan, due, language, display)

        save_aside(self._context, _FILE, path, content, notify=self._notify, refused=self._show_trouble)

    def _wanted(self) -> WantedPaper | None:
        site_plan, due = self._site_plan, self._due
        if site_plan is None:
            return None
        session, language = self._context.session, self._language()
        service, display = session.workbench.packing(), session.display

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.inspection_plan(site_plan, due, language, display, form=form)

        return WantedPaper(make=make, stem=self._stem, name=session.survey.site.name)

    @property
    def _stem(self) -> str:
        return f"{file_stem(self._context.session.survey.site.name)}-inspections"

    def _ask_and_save(self) -> None:
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Save"), f"{self._stem}.{FileForm.ICS}", FileForm.ICS)
        if path is not None:
            self.save_calendar(path)

    def _show_parts(self) -> None:
        session = self._context.session
        plan, desk, survey = self._context.sets.plan(session.label), session.workbench.packing(), session.survey
        try:
            parts = wait_for(lambda: desk.hanging(plan, survey))
        except (InputFault, StoreFault) as fault:
            parts = ()
            self._show_trouble(fault)
        current = self.removed_box.currentText()
        self.removed_box.clear()
        for part, shown in zip(parts, told_apart(parts), strict=True):
            self.removed_box.addItem(shown, part)
        self.removed_box.setCurrentIndex(max(0, self.removed_box.findText(current)) if parts else -1)
        self.wear_button.setEnabled(bool(parts))

    def _show_due(self, found: tuple[SitePlan, tuple[DueItem, ...]]) -> None:
        self._site_plan, self._due = found
        session = self._context.session
        story = session.workbench.packing().words(self._language(), session.display).story
        self.due_model.replace_columns(
            (
                Column(
                    title=tr("Next due"),
                    text=lambda one: day_text(one.next_due),
                    sort=lambda one: one.next_due.toordinal(),
                ),
                Column(title=tr("Position"), text=lambda one: one.position, positions=lambda one: (one.position,)),
                Column(
                    title=tr("What"),
                    text=lambda one: item_text(one, story),
                    hint=lambda one: f"{item_text(one, story)} {one.item.source}",
                ),
                Column(
                    title=tr("Last done"),
                    text=lambda one: day_text(one.last_done) if one.last_done else "–",
                    sort=lambda one: one.last_done.toordinal() if one.last_done else 0,
                ),
            )
        )
        self.due_model.show_records(sorted(self._due, key=lambda one: (one.next_due, one.position)))
        self.due_table.fit_columns()
        late = sum(one.next_due <= self._today() for one in self._due)
        self.state_label.setText(tr("{0} of {1} are due by today.").format(late, len(self._due)))

    def _show_trouble(self, fault: Exception) -> None:
        self.state_label.setText(told(str(fault)))


def _day(field: DayEdit, name: str) -> date:
    day = field.day(name)
    if day is None:
        raise InputFault((InputProblem("", name, "nothing", tr("a day is needed")),))
    return day
