"""What the edition in hand has sets for: a matrix to walk through, and what stands behind each cell of it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QPlainTextEdit,
    QProgressBar,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.coverage import CoverageAsked
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.explain.phrases.coverage_words import CoverageWord
from spoutline.explain.plan.coverage_text import climate_text, gap_text, spoken_text, summary_text
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, Ticket
from spoutline.gui.models.coverage_matrix import CoverageMatrix
from spoutline.gui.pages.catalogues.chosen import COVER, COVERED, FILE, InHand
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Matrix
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.coverage_kinds import ClimateBand
from spoutline.model.coverage_map import CoverageCell, CoverageMap, CoverageScope, stock_gaps
from spoutline.model.language import Language
from spoutline.model.plan import PositionPlan
from spoutline.planning.keeping.coverage_map import climate_of


class CoveragePanel(QWidget):
    """Makes the map of one climate band when a person asks; it grows as answers come, and can be stopped."""

    def __init__(
        self,
        context: Context,
        in_hand: InHand,
        notify: Notify,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
    ) -> None:
        super().__init__(parent)
        self._context, self._in_hand, self._notify, self._today = context, in_hand, notify, today
        self._asked: CoverageAsked | None = None
        self.found: CoverageMap | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        column.addLayout(self._head())
        self.state_label = plain_label(tr("Every combination is asked as a plan asks it."), "quiet", wraps=True)
        column.addWidget(self.state_label)
        self.bar = QProgressBar(self)
        self.bar.setAccessibleName(tr("Combinations asked"))
        self.bar.setTextVisible(False)  # the bar of the theme is too low for words: the state tells them
        self.bar.hide()
        column.addWidget(self.bar)
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        splitter.addWidget(self._matrix())
        self.detail = QPlainTextEdit(self)
        self.detail.setReadOnly(True)
        self.detail.setTabChangesFocus(True)
        self.detail.setAccessibleName(tr("What stands behind the chosen combination"))
        self.detail.setPlaceholderText(tr("Pick a combination to see what would be chosen, or why nothing fits."))
        splitter.addWidget(self.detail)
        splitter.setSizes([720, 340])
        column.addWidget(splitter, 1)
        context.jobs.progressed.connect(self._on_progress)

    def _head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        label = QLabel(tr("C&limate"), self)
        self.band_box = StillBox(self)
        self.band_box.setAccessibleName(tr("Climate band of the map"))
        label.setBuddy(self.band_box)
        self._word_bands()
        self.band_box.setCurrentIndex(list(ClimateBand).index(ClimateBand.MODERATE))
        self.make_button = QPushButton(tr("&Make the map"), self)
        self.make_button.setObjectName("primary")
        self.make_button.clicked.connect(lambda _=False: self.make())
        self.stop_button = QPushButton(tr("&Stop"), self)
        self.stop_button.clicked.connect(lambda _=False: self.stop())
        self.stop_button.hide()
        self.hands = PaperHands(
            self._context.session.workbench,
            self._context.jobs,
            self._wanted,
            key=FILE,
            tell=self._notify,
            parent=self,
        )
        self.paper_button = self.hands.menu_button(tr("Paper (P&DF)"), tr("The whole map, as a paper"))
        self.csv_button = QPushButton(tr("Save &as CSV…"), self)
        self.csv_button.clicked.connect(lambda _=False: self._ask_file())
        row.addWidget(label)
        row.addWidget(self.band_box)
        row.addWidget(self.make_button)
        row.addWidget(self.stop_button)
        row.addStretch(1)
        self._allow(False)
        row.addWidget(self.paper_button)
        row.addWidget(self.csv_button)
        return row

    def _word_bands(self) -> None:
        story, chosen = self._context.story, max(self.band_box.currentIndex(), 0)
        self.band_box.clear()
        self.band_box.addItems([climate_text(band, climate_of(band), story) for band in ClimateBand])
        self.band_box.setCurrentIndex(chosen)

    def _matrix(self) -> Matrix:
        self.model = CoverageMatrix(self._context.story, self)
        self.table = Matrix(tr("Coverage map: combinations by outlet"), self)
        self.table.setModel(self.model)
        self.table.selectionModel().currentChanged.connect(self._on_picked)
        return self.table

    def refresh(self) -> None:
        """Forget the map of another edition."""
        row = self._in_hand.row
        self.make_button.setEnabled(row is not None)
        if row is None or self._asked is None or row.ref != self._asked.edition:
            self.stop()
            self._forget()

    def make(self) -> None:
        """Ask every combination of the band and show the answers as they come."""
        row = self._in_hand.row
        if row is None:
            return
        session, ref = self._context.session, row.ref
        service, site = session.workbench.covering(), session.survey.site
        scope = CoverageScope(climates=(list(ClimateBand)[self.band_box.currentIndex()],))
        self._forget()
        self.model.begin(scope.outlets, self._context.story)
        self._asked = CoverageAsked(edition=ref, jurisdiction=site.jurisdiction, scope=scope)

        def work(ticket: Ticket) -> tuple[CoverageAsked, CoverageMap]:
            currency = service.currency(ref, site.currency)
            asked = CoverageAsked(edition=ref, jurisdiction=site.jurisdiction, scope=scope, currency=currency)
            return asked, service.map(asked, ticket, ticket.hand_over)

        self._show_working(working=True)
        self.state_label.setText(tr("Asking the combinations…"))
        self._context.jobs.start(COVER, work, self._show, self._fail, partly=self._take)

    def stop(self) -> None:
        """End the work; what was answered stays in sight and is not asked again."""
        if self._context.jobs.is_at_work(COVER):
            self._context.jobs.cancel(COVER)
            self.state_label.setText(tr("Stopped. What was answered is not asked again."))
        self._show_working(working=False)

    def save(self, path: Path) -> None:
        """Write the map into a file as a table."""
        found, session = self.found, self._context.session
        if found is None:
            return
        service, english = session.workbench.covering(), session.workbench.story(session.display, Language.ENGLISH)
        save_aside(self._context, FILE, path, lambda: service.csv(found, english), notify=self._notify)

    def _wanted(self) -> WantedPaper | None:
        found, service = self.found, self._context.session.workbench.covering()
        if found is None:
            return None
        story, today = self._context.story, self._today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.pdf(found, story, today, form)

        return WantedPaper(make=make, stem=_stem(found), name=str(found.edition.ref))

    def _take(self, cell: object) -> None:
        if isinstance(cell, CoverageCell):
            self.model.take(cell)
            if self.model.rowCount() == 1 and not self.table.currentIndex().isValid():
                self.table.setCurrentIndex(self.model.index(0, 0))

    def _show(self, made: tuple[CoverageAsked, CoverageMap]) -> None:
        self._asked, self.found = made
        self._show_working(working=False)
        story = self._context.story
        told = [summary_text(self.found, story)]
        gaps = [f"{gap_text(gap, story)} ({gap.combinations})" for gap in stock_gaps(self.found.cells)]
        if gaps:
            told.append(f"{story.word(CoverageWord.TO_STOCK)}{story.writing.colon} {'; '.join(gaps)}.")
        self.state_label.setText(" ".join(told))
        self._allow(True)
        self._on_picked(self.table.currentIndex(), QModelIndex())

    def _fail(self, fault: Exception) -> None:
        self._show_working(working=False)
        self.state_label.setText(told(str(fault)))

    def _forget(self) -> None:
        self._asked = self.found = None
        self._context.jobs.cancel(COVERED)
        self.model.begin((), self._context.story)
        self.detail.clear()
        self._allow(False)

    def _allow(self, is_there: bool) -> None:
        self.hands.allow(is_there)
        self.csv_button.setEnabled(is_there)

    def _show_working(self, *, working: bool) -> None:
        self.bar.setVisible(working)
        self.stop_button.setVisible(working)
        self.make_button.setVisible(not working)
        self.band_box.setEnabled(not working)

    def _on_progress(self, key: JobKey, done: int, total: int) -> None:
        if key == COVER:
            self.bar.setMaximum(total)
            self.bar.setValue(done)
            words = tr("{done} of {total} combinations asked")
            self.state_label.setText(words.format(done=done, total=total))

    def _on_picked(self, current: QModelIndex, _before: QModelIndex) -> None:
        cell, asked = self.model.cell(current), self._asked
        if cell is None or asked is None:
            self.detail.clear()
            return
        self.detail.setPlainText("\n".join(_cell_lines(cell, self._context)))
        if self._context.jobs.is_at_work(COVER) or cell.refusal is not None:
            return  # the whole plan is made where nothing else waits
        service = self._context.session.workbench.covering()

        def work(ticket: Ticket) -> PositionPlan:
            return service.plan(asked, cell.combination, ticket)

        def show(plan: PositionPlan) -> None:
            lines = (*_cell_lines(cell, self._context), "", *_plan_lines(plan, cell, self._context))
            self.detail.setPlainText("\n".join(lines))

        self._context.jobs.start(COVERED, work, show, lambda fault: self.detail.appendPlainText(str(fault)))

    def _ask_file(self) -> None:
        if self.found is None:
            return
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Save"), f"{_stem(self.found)}.{FileForm.CSV}", FileForm.CSV)
        if path is not None:
            self.save(path)


def _stem(found: CoverageMap) -> str:
    return f"{file_stem(str(found.edition.ref))}-coverage"


def _cell_lines(cell: CoverageCell, context: Context) -> Iterator[str]:
    """Yield what the map knows of a combination: the answer, and how many parts of each place remain, of whom."""
    story = context.story
    yield spoken_text(cell, climate_of(cell.combination.climate), story)
    if cell.makers:
        yield f"{story.word(CoverageWord.MAKERS)}{story.writing.colon} {', '.join(cell.makers)}"
    for one in cell.slots:
        words = tr("{place}: {remaining} of {all} parts allowed; makers: {makers}")
        yield words.format(
            place=story.title(one.slot), remaining=one.remaining, all=one.in_catalogue, makers=len(one.makers)
        )


def _plan_lines(plan: PositionPlan, cell: CoverageCell, context: Context) -> Iterator[str]:
    """Yield the parts of the set that would be chosen, or why nothing fits and what would free a set."""
    story = context.story
    if plan.chosen is not None:
        for link in plan.chosen.hanging_set.links:
            price = link.price_minor(cell.currency)
            money = "" if price is None else story.money(price, cell.currency)
            part = f"{link.part.ref}, {story.part_name(link.part)}"
            yield f"{story.title(link.slot)}{story.writing.colon} {part}, {money}"
    if plan.conflict is not None:
        yield from story.conflict(plan.conflict)
        yield from (story.relaxation(one, cell.currency) for one in plan.conflict.relaxations)
