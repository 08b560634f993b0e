"""The fields of a commissioning record on screen: each entry is judged as it is typed."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QPlainTextEdit, QVBoxLayout, QWidget

from spoutline.book.survey_faults import made
from spoutline.documents.pack.commissioning_form import expected_text, limit_text
from spoutline.documents.pack.form_reading import service_end
from spoutline.documents.pack.record_sheet import unread_text, verdict_text
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.gui.local_days import day_text, day_typed
from spoutline.gui.pages.context import Context
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import Card, empty_layout, plain_label
from spoutline.gui.widgets.day_edit import DayEdit
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import PositionPlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import (
    SWAP_REASONS,
    ChangeReason,
    CommissioningRecord,
    ItemResult,
    PartChange,
    PartMark,
    PhotoNote,
    ReadingVerdict,
    RecordEntry,
    RecordItem,
)
from spoutline.planning.sets.plan_site import fingerprint_of
from spoutline.units.meter_readings import MeterReading, parse_reading, reading_as_written

_LEFT_OUT = "-"
_ABREAST = 4  # fields of who did it, side by side
_ROW_HEIGHT = 40  # two lines of words, or a field
_PAGE = re.compile(r"^p[0-9]+_")  # number of the page in the name of a form's field


@dataclass(slots=True)
class _ItemRow:
    """The fields of one item."""

    item: RecordItem
    reading: LineEditor | None
    result: QComboBox | None
    note: LineEditor
    verdict: QLabel


@dataclass(slots=True)
class _PartRow:
    """The fields of one part."""

    planned: PartRef
    fitted: LineEditor
    reason: QComboBox
    serial: LineEditor
    service_until: LineEditor


class RecordFields(QWidget):
    """Holds what is entered for one position."""

    def __init__(self, context: Context, language: Callable[[], Language], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._language = context, language
        self._shown: object = None
        self._items: list[_ItemRow] = []
        self._parts: list[_PartRow] = []
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(self._readings_card())
        column.addWidget(self._parts_card())
        column.addWidget(self._people_card())

    def _readings_card(self) -> Card:
        card = Card(tr("Readings and trials"), self)
        self._item_grid = QGridLayout()
        self._item_grid.setColumnStretch(0, 3)
        self._item_grid.setColumnStretch(4, 2)
        self._item_grid.setColumnStretch(5, 2)
        card.body.addLayout(self._item_grid)
        return card

    def _parts_card(self) -> Card:
        card = Card(tr("As built"), self)
        self._part_grid = QGridLayout()
        self._part_grid.setColumnStretch(2, 2)
        self._part_grid.setColumnStretch(3, 2)
        card.body.addLayout(self._part_grid)
        return card

    def _people_card(self) -> Card:
        card = Card(tr("Who did it"), self)
        grid = QGridLayout()
        self.people: dict[str, LineEditor] = {}
        for place, (name, words) in enumerate(
            (
                ("done_on", tr("Date")),
                ("done_by", tr("Work done by")),
                ("licence", tr("License")),
                ("signed_by", tr("Signed (type the name)")),
                ("instruments", tr("Instruments used (type, number)")),
            )
        ):
            field = DayEdit(self) if name == "done_on" else LineEditor(self)
            field.setObjectName(f"record_{name}")
            field.setAccessibleName(words)
            field.setMaxLength(200)
            self.people[name] = field
            line, column = 2 * (place // _ABREAST), place % _ABREAST
            wide = _ABREAST if name == "instruments" else 1
            grid.addWidget(plain_label(words, "quiet"), line, column, 1, wide)
            grid.addWidget(field, line + 1, column, 1, wide)
        card.body.addLayout(grid)
        self.remarks_edit = QPlainTextEdit(self)
        self.remarks_edit.setPlaceholderText(tr("Remarks"))
        self.remarks_edit.setAccessibleName(tr("Remarks"))
        self.remarks_edit.setMaximumHeight(70)
        self.remarks_edit.setTabChangesFocus(True)
        card.body.addWidget(self.remarks_edit)
        return card

    def show_plan(self, plan: PositionPlan | None) -> None:
        """Show the fields of a position; what was typed stays while plan, language and units stay."""
        wanted = (plan, self._context.session.display, self._language())
        if wanted == self._shown:
            return
        self._shown = wanted
        empty_layout(self._item_grid)
        empty_layout(self._part_grid)
        self._items, self._parts = [], []
        if plan is not None and plan.chosen is not None:
            self._show_items(plan)
            self._show_parts(plan)

    def _story(self) -> Story:
        session = self._context.session
        return session.workbench.packing().words(self._language(), session.display).story

    def _show_items(self, plan: PositionPlan) -> None:
        story, service = self._story(), self._context.session.workbench.packing()
        heads = ("", tr("Computed"), tr("Limit"), tr("Entry"), tr("Against the limit"), tr("Remark"))
        for column, words in enumerate(heads):
            self._item_grid.addWidget(plain_label(words, "quiet"), 0, column)
        items = [item for item in service.items(plan) if item.applies]
        for line, item in enumerate(items, start=1):
            self._item_grid.setRowMinimumHeight(line, _ROW_HEIGHT)
            row = self._item_row(item, story)
            self._items.append(row)
            entry: QWidget | None = row.reading or row.result
            widgets: tuple[QWidget | None, ...] = (
                _two_lines(story.word(item.id)),
                plain_label(expected_text(item, story)),
                plain_label(limit_text(item, story)),
                entry,
                row.verdict,
                row.note,
            )
            for column, widget in enumerate(widgets):
                if widget is not None:
                    self._item_grid.addWidget(widget, line, column, Qt.AlignmentFlag.AlignVCenter)
            self._judge(row)

    def _item_row(self, item: RecordItem, story: Story) -> _ItemRow:
        title = story.word(item.id)
        verdict = plain_label("", wraps=True)
        note = LineEditor(self)
        note.setMaxLength(200)
        note.setAccessibleName(f"{title}: {tr('Remark')}")
        if item.dimension is None:
            box = StillBox(self)
            box.setObjectName(f"result_{item.id}")
            box.setAccessibleName(title)
            box.addItem("", None)
            for result in ItemResult:
                box.addItem(story.word(result), result)
            row = _ItemRow(item, None, box, note, verdict)
            box.currentIndexChanged.connect(lambda _: self._judge(row))
            return row
        field = LineEditor(self)
        field.setObjectName(f"reading_{item.id}")
        field.setAccessibleName(title)
        field.setPlaceholderText(self._context.session.display.asked_unit(item.dimension))
        row = _ItemRow(item, field, None, note, verdict)
        field.textChanged.connect(lambda _: self._judge(row))
        return row

    def _show_parts(self, plan: PositionPlan) -> None:
        story = self._story()
        links = plan.chosen.hanging_set.links if plan.chosen is not None else ()
        refs = [link.part.ref for link in links]
        session = self._context.session
        shown = told_apart(refs, wait_for(lambda: session.workbench.parts().namesakes(refs, session.survey)))
        heads = ("", tr("Planned"), tr("Installed"), tr("Why"), story.word(Word.SERIAL), story.word(Word.SERVICE_UNTIL))
        for column, words in enumerate(heads):
            self._part_grid.addWidget(plain_label(words, "quiet"), 0, column)
        for line, link in enumerate(links):
            fitted = LineEditor(shown[line], self)
            fitted.setObjectName(f"fitted_{line + 1}")
            fitted.setMaxLength(200)
            fitted.setAccessibleName(tr("{0}: installed").format(story.word(link.slot)))
            reason = StillBox(self)
            reason.setObjectName(f"reason_{line + 1}")
            reason.setAccessibleName(tr("{0}: reason").format(story.word(link.slot)))
            reason.addItem(tr("as planned"), None)
            for one in SWAP_REASONS:
                reason.addItem(story.word(one), one)
            serial = self._part_field(f"serial_{line + 1}", f"{story.word(link.slot)}: {story.word(Word.SERIAL)}")
            until = f"{story.word(link.slot)}: {story.word(Word.SERVICE_UNTIL)}"
            service = self._part_field(f"service_until_{line + 1}", until)
            self._parts.append(_PartRow(link.part.ref, fitted, reason, serial, service))
            head = plain_label(story.title(link.slot))
            for column, widget in enumerate((head, plain_label(shown[line], "quiet"), fitted, reason, serial, service)):
                self._part_grid.addWidget(widget, line + 1, column)

    def _part_field(self, name: str, words: str) -> LineEditor:
        field = LineEditor(self)
        field.setObjectName(name)
        field.setMaxLength(200)
        field.setAccessibleName(words)
        return field

    def _marks(self) -> Iterator[PartMark]:
        """Yield what is stamped on the parts; raise ``InputFault`` for an end of service life that is no day."""
        for place, row in enumerate(self._parts, start=1):
            until = service_end(row.service_until.text())
            mark = made(PartMark, part=place, serial=row.serial.text(), service_until=until)
            if mark != PartMark(part=place):
                yield mark

    def _judge(self, row: _ItemRow) -> None:
        """Mark an entry at once: in words and, where it is out of limit or no reading, by the look of a fault."""
        try:
            entry = self._entry(row)
        except InputFault as fault:
            text, is_bad = fault.problems[0].wanted, True
        else:
            verdict = self._context.session.workbench.packing().verdict(row.item, entry)
            text, is_bad = verdict_text(verdict, self._story()), verdict is ReadingVerdict.OUTSIDE
        row.verdict.setText(text)
        row.verdict.setObjectName("fault" if is_bad else "")
        row.verdict.style().unpolish(row.verdict)
        row.verdict.style().polish(row.verdict)

    def _entry(self, row: _ItemRow) -> RecordEntry | None:
        """Return what a row holds; None for nothing. Raise ``InputFault`` for a text that is no reading."""
        reading, result = MeterReading(value=None), row.result.currentData() if row.result is not None else None
        if row.reading is not None and row.reading.text().strip() and row.item.dimension is not None:
            system, language = self._context.session.display.system, Language(self._story().phrases.language)
            reading = parse_reading(row.reading.text(), row.item.dimension, system, language, field=row.item.id.value)
        note = row.note.text().strip()
        if reading == MeterReading(value=None) and result is None and not note:
            return None
        return made(
            RecordEntry,
            item=row.item.id,
            reading=reading.value,
            over_range=reading.over_range,
            result=result,
            note=note,
        )

    def _change(self, row: _PartRow) -> PartChange | None:
        written = row.fitted.text().strip()
        if written in (row.planned.number, str(row.planned)):
            return None
        reason = row.reason.currentData()
        if not written or reason is None:
            wanted = f"write the part number fitted (or {_LEFT_OUT} for none) and choose why"
            raise InputFault((InputProblem("", str(row.planned), repr(row.fitted.text()), wanted),))
        workbench, survey = self._context.session.workbench, self._context.session.survey
        named = () if written == _LEFT_OUT else wait_for(lambda: workbench.parts().parts_named(written, survey)[:6])
        fitted = tuple(part.ref for part in named)
        return made(PartChange, planned=row.planned, fitted=fitted, reason=ChangeReason(reason))

    def record(self, photos: tuple[PhotoNote, ...]) -> CommissioningRecord:
        """Return the record as entered; raise ``InputFault`` naming the field that cannot be used."""
        session = self._context.session
        entries = tuple(entry for row in self._items if (entry := self._entry(row)) is not None)
        changes = tuple(change for row in self._parts if (change := self._change(row)) is not None)
        return made(
            CommissioningRecord,
            site=session.survey.site.name,
            position=session.label,
            plan_revision=fingerprint_of(session.survey),
            parts=tuple(row.planned for row in self._parts),
            changes=changes,
            marks=tuple(self._marks()),
            entries=entries,
            photos=photos,
            done_on=day_typed(self.people["done_on"].text(), "date"),
            done_by=self.people["done_by"].text(),
            licence=self.people["licence"].text(),
            instruments=self.people["instruments"].text(),
            signed_by=self.people["signed_by"].text(),
            remarks=self.remarks_edit.toPlainText()[:4000],
            catalogue_edition=wait_for(lambda: session.workbench.parts().catalogue_edition(session.survey)),
        )

    def set_fitted(self, planned: PartRef, fitted: tuple[PartRef, ...], reason: str) -> None:
        """Enter another part for a planned one, with its reason."""
        for row in self._parts:
            if planned.names(row.planned):
                row.fitted.setText(", ".join(map(str, fitted)) or _LEFT_OUT)
                row.reason.setCurrentIndex(row.reason.findData(ChangeReason(reason)))

    def _read_text(self, entry: RecordEntry | None, dimension: Dimension) -> str:
        if entry is None:
            return ""
        reading = MeterReading(value=entry.reading, over_range=entry.over_range)
        return reading_as_written(reading, dimension, self._context.session.display)

    def unread_texts(self, record: CommissioningRecord) -> tuple[str, ...]:
        """Return what a form asks for again, in words."""
        return tuple(unread_text(one, self._story()) for one in record.unread)

    def show_record(self, record: CommissioningRecord) -> None:
        """Show a record read from a form, to be looked over before it is kept."""
        # a reading that could not be read stands in its field as it was written, marked, to be put right
        unread = {_PAGE.sub("", one.field).removesuffix("_reading"): one.value for one in record.unread}
        for row in self._items:
            entry = record.entry(row.item.id)
            if row.reading is not None and row.item.dimension is not None:
                row.reading.setText(unread.get(row.item.id.value, "") or self._read_text(entry, row.item.dimension))
            if row.result is not None:
                row.result.setCurrentIndex(max(0, row.result.findData(entry.result if entry else None)))
            row.note.setText(entry.note if entry else "")
        for place, part_row in enumerate(self._parts, start=1):
            if written := unread.get(f"part{place}_fitted"):
                part_row.fitted.setText(written)
            mark = record.mark(place)
            part_row.serial.setText(mark.serial)
            until = mark.service_until.isoformat() if mark.service_until is not None else ""
            part_row.service_until.setText(until or unread.get(f"part{place}_service_until", ""))
        for change in record.changes:
            self.set_fitted(change.planned, change.fitted, change.reason.value)
        self.people["done_on"].setText(day_text(record.done_on) if record.done_on else unread.get("done_on", ""))
        for name in ("done_by", "licence", "signed_by", "instruments"):
            self.people[name].setText(getattr(record, name))
        self.remarks_edit.setPlainText(record.remarks)


def _two_lines(words: str) -> QLabel:
    """Return what is asked, with room for a second line: a grid asks no label how high it is when it wraps."""
    label = plain_label(words, wraps=True)
    label.setMinimumHeight(_ROW_HEIGHT)
    return label
