"""What an edition does before it is published: parts that differ, and stations of the book planned with both."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPlainTextEdit,
    QPushButton,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from spoutline.book.records import SurveyEntry
from spoutline.bootstrap.catalogues import SurveyEffect
from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.gui.jobs import JobKey, Ticket
from spoutline.gui.models.catalogue_rows import EditionRow, edition_words
from spoutline.gui.models.effect_rows import (
    EffectRow,
    difference_columns,
    differing,
    effect_columns,
    effect_lines,
    effect_rows,
    summary,
)
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.pages.catalogues.chosen import DIFFERENCE, EFFECT, SURVEYS, InHand
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import plain_label, tab_pages
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.catalogue_edition import EditionRef

_KEY = Qt.ItemDataRole.UserRole


class EffectPanel(QWidget):
    """Compares two editions; what differs is read at once, stations are planned when a person asks for it."""

    def __init__(self, context: Context, in_hand: InHand, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._in_hand = context, in_hand
        self._refs: tuple[EditionRef, ...] = ()
        self._follows: EditionRef | None = None  # the edition in hand that the two lists were set for
        self._rows: list[EffectRow] = []
        self._names: dict[int, str] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        column.addLayout(self._head())
        column.addWidget(self._middle(), 1)
        column.addLayout(self._foot())
        context.jobs.progressed.connect(self._show_progress)
        self._enable()

    def _head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.before_box, self.after_box = StillBox(self), StillBox(self)
        for words, box in ((tr("From"), self.before_box), (tr("to"), self.after_box)):
            label = plain_label(words, "quiet")
            label.setBuddy(box)
            box.setAccessibleName(tr("Compare {0}").format(words))
            box.setMinimumContentsLength(24)
            box.activated.connect(lambda _: self._compare())
            row.addWidget(label)
            row.addWidget(box)
        row.addStretch(1)
        return row

    def _middle(self) -> QWidget:
        middle = QSplitter(Qt.Orientation.Horizontal, self)
        middle.setChildrenCollapsible(False)
        middle.addWidget(self._survey_side(middle))
        self.tabs = QTabWidget(middle)
        self.tabs.setDocumentMode(True)
        pages = tab_pages(self.tabs)
        self.difference_model = RecordTable(difference_columns(), self)
        self.difference_table = Table(tr("Parts that differ"), pages, shares=(28, 26, 16, 40))
        self.difference_table.setModel(self.difference_model)
        self.tabs.addTab(self.difference_table, tr("Parts that differ"))
        self.tabs.addTab(self._sets_side(pages), tr("Sets that differ"))
        middle.addWidget(self.tabs)
        middle.setSizes([240, 720])
        middle.setStretchFactor(1, 1)
        return middle

    def _survey_side(self, parent: QWidget) -> QWidget:
        side = QWidget(parent)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        self.survey_list = QListWidget(side)
        self.survey_list.setAccessibleName(tr("Surveys to plan with both"))
        self.survey_list.itemChanged.connect(lambda _: self._enable())
        column.addWidget(plain_label(tr("Surveys to plan with both"), "quiet"))
        column.addWidget(self.survey_list, 1)
        row = QHBoxLayout()
        for words, state in ((tr("All"), Qt.CheckState.Checked), (tr("None"), Qt.CheckState.Unchecked)):
            button = QPushButton(words, side)
            button.clicked.connect(lambda _=False, wanted=state: self._tick_all(wanted))
            row.addWidget(button)
        column.addLayout(row)
        return side

    def _sets_side(self, parent: QWidget) -> QWidget:
        side = QSplitter(Qt.Orientation.Vertical, parent)
        side.setChildrenCollapsible(False)
        self.effect_model = RecordTable(effect_columns(self._context.story), self)
        self.sorted = SortedRecords(self)
        self.sorted.setSourceModel(self.effect_model)
        self.effect_table = Table(tr("Sets that differ"), side, shares=(24, 22, 18, 17, 36))
        self.effect_table.setModel(self.sorted)
        self.effect_table.setSortingEnabled(True)
        self.effect_table.picked.connect(self._show_row)
        self.detail = QPlainTextEdit(side)
        self.detail.setReadOnly(True)
        self.detail.setAccessibleName(tr("The set in hand, before and after"))
        side.addWidget(self.effect_table)
        side.addWidget(self.detail)
        side.setSizes([260, 130])
        side.setStretchFactor(0, 1)
        return side

    def _foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.state_label = plain_label("", "quiet", wraps=True)
        self.stop_button = QPushButton(tr("Sto&p"), self)
        self.stop_button.clicked.connect(lambda _=False: self.stop())
        self.plan_button = QPushButton(tr("Plan &with both"), self)
        self.plan_button.setObjectName("primary")
        self.plan_button.clicked.connect(lambda _=False: self.plan())
        row.addWidget(self.state_label, 1)
        row.addWidget(self.stop_button)
        row.addWidget(self.plan_button)
        return row

    # what is compared

    def refresh(self) -> None:
        """Offer the editions of the book; another one in hand is compared with the one before it."""
        rows, row = self._in_hand.rows, self._in_hand.row
        if row is None:
            return
        refs = tuple(one.ref for one in rows)
        pair = self.pair
        if refs != self._refs:
            self._refs = refs
            for box in (self.before_box, self.after_box):
                box.clear()
                box.addItems([edition_words(one) for one in rows])
        if row.ref != self._follows or not all(one in refs for one in pair or (None,)):
            self._follows = row.ref
            pair = self._usual_pair(row)
        if pair is not None:
            for box, ref in zip((self.before_box, self.after_box), pair, strict=True):
                box.setCurrentIndex(refs.index(ref))
        self._read_surveys()
        self._compare()

    def _usual_pair(self, row: EditionRow) -> tuple[EditionRef, EditionRef]:
        """Return the edition before this one and this one.

        The first of its catalogue is compared with what the book plans with; where that is itself, with its draft.
        """
        numbers = [edition.number or 0 for edition in row.facts.editions]
        own = row.edition.number or 0 if row.edition is not None else len(numbers) + 1
        earlier = [number for number in numbers if number < own]
        if earlier:
            return EditionRef(row.facts.name, earlier[-1]), row.ref
        refs = [one.ref for one in self._in_hand.rows]
        of_book = [one.ref for one in self._in_hand.rows if one.by_book and one.ref != row.ref]
        draft = EditionRef(row.facts.name, is_draft=True)
        if not of_book and draft != row.ref and draft in refs:
            return row.ref, draft
        return of_book[0] if of_book else row.ref, row.ref

    @property
    def pair(self) -> tuple[EditionRef, EditionRef] | None:
        """The two editions compared; None where one is not chosen yet."""
        places = self.before_box.currentIndex(), self.after_box.currentIndex()
        if min(places) < 0 or max(places) >= len(self._refs):
            return None
        return self._refs[places[0]], self._refs[places[1]]

    def _compare(self) -> None:
        """Read which parts differ; what was planned with other editions is forgotten."""
        pair, service = self.pair, self._context.session.workbench.catalogues()
        if pair is None:
            return
        self.stop()
        self._show_effects([])
        told = tr("Both are the same edition: nothing differs. Choose another one to compare it with.")
        self.state_label.setText(told if pair[0] == pair[1] else "")
        self._enable()

        def show(found: tuple[EntryChange, ...]) -> None:
            self.difference_model.show_records(found)
            self.difference_table.fit_columns()
            self.tabs.setTabText(0, tr("Parts that differ ({0})").format(len(found)))

        self._context.jobs.start(DIFFERENCE, lambda _: service.changes(*pair), show, self._fail)

    # which stations

    def _read_surveys(self) -> None:
        workbench = self._context.session.workbench
        self._context.jobs.start(SURVEYS, lambda _: workbench.book().entries(), self._show_surveys, self._fail)

    def _show_surveys(self, entries: tuple[SurveyEntry, ...]) -> None:
        ticked = set(self.survey_ids) if self._names else {self._context.session.stored.id}
        self._names = {entry.id: entry.name for entry in entries}
        self.survey_list.blockSignals(True)
        self.survey_list.clear()
        for entry in entries:
            item = QListWidgetItem(entry.name, self.survey_list)
            item.setData(_KEY, entry.id)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Checked if entry.id in ticked else Qt.CheckState.Unchecked)
        self.survey_list.blockSignals(False)
        self._enable()

    @property
    def survey_ids(self) -> tuple[int, ...]:
        """The surveys ticked, in the order of the list."""
        items = (self.survey_list.item(row) for row in range(self.survey_list.count()))
        return tuple(int(item.data(_KEY)) for item in items if item.checkState() is Qt.CheckState.Checked)

    def _tick_all(self, state: Qt.CheckState) -> None:
        for row in range(self.survey_list.count()):
            self.survey_list.item(row).setCheckState(state)

    # planning

    def plan(self) -> None:
        """Plan the surveys ticked with both editions, off the window's thread, and show each as it is done."""
        pair, keys, service = self.pair, self.survey_ids, self._context.session.workbench.catalogues()
        if pair is None or not keys:
            return
        before, after = pair

        def work(ticket: Ticket) -> None:
            for found in service.effects_on_book(before, after, keys, ticket):
                ticket.hand_over(found)

        def done(_: object) -> None:
            self.state_label.setText(summary(self._rows))
            self._enable()

        self._show_effects([])
        self.tabs.setCurrentIndex(1)
        self.state_label.setText(tr("Planning…"))
        self._context.jobs.start(EFFECT, work, done, self._fail, partly=self._take)
        self._enable()

    def stop(self) -> None:
        """End the planning; what was found so far stays."""
        if self._context.jobs.is_at_work(EFFECT):
            self._context.jobs.cancel(EFFECT)
            told = summary(self._rows)
            self.state_label.setText(f"{tr('Stopped.')} {told}".strip())
        self._enable()

    def _take(self, found: SurveyEffect) -> None:
        name = self._names.get(found.survey_id, "")
        self._show_effects([*self._rows, *effect_rows(found, name)])

    def _show_effects(self, rows: list[EffectRow]) -> None:
        self._rows = rows
        told = differing(rows)
        self.effect_model.replace_columns(effect_columns(self._context.story))
        self.effect_model.show_records(told)
        self.effect_table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        self.effect_table.fit_columns()
        self.tabs.setTabText(1, tr("Sets that differ ({0})").format(len(told)) if rows else tr("Sets that differ"))
        self.detail.setPlainText("")
        self.effect_table.pick_row(0)

    def _show_row(self, row: object) -> None:
        if isinstance(row, EffectRow):
            self.detail.setPlainText("\n".join(effect_lines(row, self._context.story)))

    def _show_progress(self, key: JobKey, done: int, total: int) -> None:
        if key == EFFECT:
            self.state_label.setText(tr("Planning survey {0} of {1}…").format(done + 1, total))

    def _fail(self, fault: Exception) -> None:
        self.state_label.setText(told(str(fault)))
        self._enable()

    def _enable(self) -> None:
        is_planning = self._context.jobs.is_at_work(EFFECT)
        self.stop_button.setVisible(is_planning)
        pair = self.pair
        differs = pair is not None and pair[0] != pair[1]
        self.plan_button.setEnabled(bool(self.survey_ids) and not is_planning and differs)
