"""Look up any catalogue part and read what speaks against it at the position in focus."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt, QTimer
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QSplitter, QVBoxLayout, QWidget

from spoutline.gui.jobs import JobKey, JobKind
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.models.table_columns import part_columns
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.result.part_decisions import DecisionTexts, PartDecisions
from spoutline.gui.roles import Role
from spoutline.gui.session import Changed
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import NamedTexts, ScrolledPage, plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef, any_names
from spoutline.model.plan import PartVerdict

_PAUSE_MS = 200
_MOST_ROWS = 500
_SEARCH = JobKey(JobKind.PART_SEARCH)


class WhyNotPanel(QWidget):
    """A search over the catalogue; the verdict on the marked part below."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._part: PartRef | None = None
        self._marks_first = False
        self._listed: tuple[str, PartKind | None] | None = None  # what the list answers, or is about to
        self._way = ""  # from an old number that was typed to the part asked about
        self._wanted: PartRef | None = None  # what the search shall mark: one of several with one number
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 10, 10, 10)
        column.addLayout(self._search_row())
        self.model: RecordTable[Part] = RecordTable((), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.model)
        splitter = QSplitter(Qt.Orientation.Vertical, self)
        splitter.setChildrenCollapsible(False)
        self.table = Table(tr("Catalog parts found"), splitter, shares=(3, 3, 6, 4, 3))
        self.table.setModel(proxy)
        self.table.setSortingEnabled(True)
        self.table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        self.table.picked.connect(self._pick)
        splitter.addWidget(self.table)
        splitter.addWidget(self._verdict_side(splitter))
        splitter.setSizes([220, 260])
        column.addWidget(splitter, 1)
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_PAUSE_MS)
        self._pause.timeout.connect(self._search)
        context.session.changed.connect(self._on_changed)

    def start(self) -> None:
        """Fetch parts when the panel is first seen."""
        if self._listed is None:
            self._search()

    def ask_about(self, part: PartRef) -> None:
        """Look up one part and ask about it."""
        with QSignalBlocker(self.kind_box):  # else the former words would be looked up among all kinds
            self.kind_box.setCurrentIndex(0)
        self.search_edit.setText(part.number)
        self._wanted = part
        self._search_and_mark()

    def focus_search(self) -> None:
        """Put the keyboard into the search field."""
        self.search_edit.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.search_edit.selectAll()

    def _search_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        label = QLabel(tr("Fi&nd"), self)
        self.search_edit = QLineEdit(self)
        self.search_edit.setAccessibleName(tr("Number, name or maker of a part"))
        self.search_edit.setPlaceholderText(tr("Number, name or maker"))
        self.search_edit.setClearButtonEnabled(False)
        self.search_edit.textChanged.connect(lambda _: self._pause.start())
        self.search_edit.returnPressed.connect(self._search_and_mark)
        label.setBuddy(self.search_edit)
        self.kind_box = StillBox(self)
        self.kind_box.setAccessibleName(tr("Kind of part"))
        self.kind_box.addItem(tr("All kinds"), None)
        for kind in PartKind:
            self.kind_box.addItem(self._context.story.title(kind), kind.value)
        self.kind_box.currentIndexChanged.connect(lambda _: self._search())
        row.addWidget(label)
        row.addWidget(self.search_edit, 1)
        row.addWidget(self.kind_box)
        return row

    def _verdict_side(self, parent: QWidget) -> QWidget:
        side = ScrolledPage(parent)
        self.verdict_title = plain_label(
            tr("Mark a part to read what speaks against it here."), "cardTitle", wraps=True
        )
        side.column.addWidget(self.verdict_title)
        texts = DecisionTexts(keep=tr("&Use it in the set"), refuse=tr("E&xclude it"), release=tr("&Leave it open"))
        self.decisions = PartDecisions(self._context, texts, lambda: self._part, self)
        names = (tr("Use the marked part in the set"), tr("Exclude the marked part"), tr("Leave the marked part open"))
        for button, name in zip(self.decisions.buttons, names, strict=True):
            button.setAccessibleName(name)
            button.setEnabled(False)
        side.column.addLayout(self.decisions.row)
        self.verdict_label = plain_label("", wraps=True)
        self.verdict_label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.verdict_label.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        side.column.addWidget(self.verdict_label)
        self._data = NamedTexts(self)
        side.column.addWidget(self._data)
        side.column.addStretch(1)
        return side

    def _search_and_mark(self) -> None:
        """Return pressed in the search field asks about the part found, not only for the list."""
        is_searching = self._context.jobs.is_at_work(_SEARCH)
        if self._listed == self._words and not is_searching:
            self._pause.stop()
            self._mark()
        else:
            self._marks_first = True
            if self._listed != self._words:
                self._search()

    @property
    def _words(self) -> tuple[str, PartKind | None]:
        value = self.kind_box.currentData()
        return self.search_edit.text().strip(), PartKind(value) if value else None

    def _search(self) -> None:
        self._pause.stop()
        self._listed = text, kind = self._words
        workbench, survey = self._context.session.workbench, self._context.session.survey
        self._context.jobs.start(
            _SEARCH,
            lambda _: workbench.parts().search(text, kind, _MOST_ROWS, survey=survey),
            self._show_parts,
            self._show_no_parts,
        )

    def _show_parts(self, parts: tuple[Part, ...]) -> None:
        self.model.replace_columns(part_columns(self._context.story, self._context.session.survey.site.currency, parts))
        self.model.show_records(parts)
        self.table.fit_columns()
        if self._marks_first:
            self._marks_first = False
            self._mark()
        else:
            self._follow()

    def _mark(self) -> None:
        """Ask about the part that the words lead to: one verdict, not first another on what merely holds the number."""
        if not self._follow():
            self.table.pick_row(self._row_named(self.search_edit.text().strip()))

    def _follow(self) -> bool:
        """Ask about the part that an old number leads to, and show the way; say so where there is nothing at all.

        Return True where the words are an old number.
        """
        text, has_hits = self.search_edit.text().strip(), bool(self.model.records)
        if not text:
            return False
        session = self._context.session
        try:
            current, trace = wait_for(lambda: session.workbench.parts().found_ref(text, session.survey))
        except (InputFault, StoreFault) as fault:
            if not has_hits:
                self.verdict_title.setText(told(str(fault)))
            return False
        if trace is None:
            if not has_hits:
                self.verdict_title.setText(tr("No catalog part has this in its number, name or maker."))
            return False
        way = self._context.story.number_trace(trace)
        if (self._part, self._way) != (current, way):  # else the verdict is there, or on its way
            self._way, self._part = way, current
            self._ask()
        return True

    def _row_named(self, number: str) -> int:
        """Return the row of the part asked about, or with exactly this number; the first row where none has it."""
        model = self.table.model()
        wanted = self._wanted if self._wanted is not None and self._wanted.number == number else PartRef(number)
        found = (model.index(row, 0).data(Role.RECORD) for row in range(model.rowCount()))
        rows = (row for row, part in enumerate(found) if isinstance(part, Part) and wanted.names(part.ref))
        return next(rows, 0)

    def _show_no_parts(self, fault: Exception) -> None:
        self._listed = None
        self._show_trouble(fault)

    def _show_trouble(self, fault: Exception) -> None:
        self.verdict_title.setText(told(str(fault)))

    def _pick(self, record: object) -> None:
        if isinstance(record, Part):
            self._part, self._way = record.ref, ""
            self._ask()

    def _ask(self) -> None:
        session, part = self._context.session, self._part
        if part is None:
            return
        survey, label = session.survey, session.label
        self.verdict_title.setText(tr("Judging {part} at {label}…").format(part=part.number, label=label))
        self._context.jobs.start(
            JobKey(JobKind.WHY_NOT),
            lambda ticket: session.workbench.why_not(survey, label, part, ticket),
            self._show_verdict,
            self._show_trouble,
            priority=5,
        )

    def _show_verdict(self, verdict: PartVerdict) -> None:
        story, part = self._context.story, verdict.part
        self.verdict_title.setText(f"{part.number}  {story.part_name(part)}")
        way = (self._way,) if self._way else ()
        self.verdict_label.setText("\n\n".join((*way, *story.part_verdict(verdict))))
        self._data.show_rows((row.label, row.text) for row in story.part_data(part))
        decided, may = self._context.session.position.decisions, bool(verdict.slots)
        may_refuse = may and not any_names(decided.refused, part.ref)
        self.decisions.allow(decided, part.ref, may_keep=may, may_refuse=may_refuse)

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.PART:
            return
        if what & Changed.UNITS and self.model.records:
            self._show_parts(self.model.records)
        if self._part is not None and self.isVisible():
            self._ask()
