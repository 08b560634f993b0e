"""A programme of conversions: a folder of surveys, a yearly budget, a run over all cores, the ranked sites."""

from __future__ import annotations

from decimal import Decimal, InvalidOperation
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLineEdit, QProgressBar, QPushButton, QSpinBox, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.roles import Tone
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.faults import Cancelled, InputFault, InputProblem, StoreFault
from spoutline.model.programme import Programme, RankedSite, SiteOutcome, SiteResult
from spoutline.units.writing import Writing

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_RUN = JobKey(JobKind.SITE_PLAN, "programme")
_TONES = {
    SiteOutcome.NOTHING_TO_DO: Tone.NOTE,
    SiteOutcome.NOT_ALLOWED: Tone.BAD,
    SiteOutcome.OPEN: Tone.BAD,
    SiteOutcome.FAULT: Tone.BAD,
}


class ProgrammeDialog(FormDialog):
    """Runs a programme and shows it, the last one of the book at first; ``processes`` None takes one for each core."""

    help_topic = "conversions"

    def __init__(
        self, workbench: Workbench, jobs: Jobs, parent: QWidget | None = None, *, processes: int | None = None
    ) -> None:
        super().__init__(tr("Program of several sites"), parent)
        self._workbench, self._jobs, self._processes = workbench, jobs, processes
        self.programme: Programme | None = None
        self.resize(860, 620)
        lead = tr("Advice, no permission: the agency of each site decides before its work begins.")
        self.body.addWidget(plain_label(lead, "quiet", wraps=True))
        self.body.addLayout(self._folder_row())
        self.body.addLayout(self._terms_row())
        self.progress_bar = QProgressBar(self)
        self.progress_bar.setAccessibleName(tr("Sites converted"))
        self.progress_bar.hide()
        self.body.addWidget(self.progress_bar)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.state_label)
        self.model = NodeTree((tr("Year or rank"), tr("Site"), tr("Cost"), tr("Net present value")), self)
        self.tree = Tree(tr("Sites of the program"), self, shares=(3, 6, 3, 3))
        self.tree.setModel(self.model)
        self.body.addWidget(self.tree, 1)
        self.add_close()
        jobs.progressed.connect(self._on_progress)
        self._show_latest()

    def _folder_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.folder_edit = QLineEdit(self)
        self.folder_edit.setPlaceholderText(tr("Folder of survey files"))
        self.folder_edit.setAccessibleName(tr("Folder of survey files"))
        self.folder_button = QPushButton(tr("Choose &folder…"), self)
        self.folder_button.setAutoDefault(False)
        self.folder_button.clicked.connect(self._choose_folder)
        row.addWidget(self.folder_edit, 1)
        row.addWidget(self.folder_button)
        return row

    def _terms_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.budget_edit = QLineEdit(self)
        self.budget_edit.setPlaceholderText(tr("Annual budget; empty: no limit"))
        self.budget_edit.setAccessibleName(tr("Annual budget"))
        self.years_box = QSpinBox(self)
        self.years_box.setRange(1, 50)
        self.years_box.setValue(5)
        self.years_box.setButtonSymbols(QSpinBox.ButtonSymbols.NoButtons)
        self.years_box.setSuffix(tr(" years"))
        self.years_box.setAccessibleName(tr("Years of the program"))
        self.run_button = QPushButton(tr("&Calculate"), self)
        self.run_button.setObjectName("primary")
        self.run_button.clicked.connect(self.run)
        self.stop_button = QPushButton(tr("S&top"), self)
        self.stop_button.setAutoDefault(False)
        self.stop_button.setEnabled(False)
        self.stop_button.clicked.connect(self.stop)
        for widget, stretch in (
            (self.budget_edit, 1),
            (self.years_box, 0),
            (self.run_button, 0),
            (self.stop_button, 0),
        ):
            row.addWidget(widget, stretch)
        return row

    def run(self) -> None:
        """Convert the surveys of the folder and rank them."""
        from spoutline.planning.conversion.programme import ProgrammeTerms

        folder = Path(self.folder_edit.text().strip())
        try:
            budget = _budget(self.budget_edit.text())
        except InputFault as fault:
            self.show_fault(str(fault))
            return
        self.show_fault("")
        terms = ProgrammeTerms(name=folder.name or "programme", budget=budget, years=self.years_box.value())
        workbench, processes = self._workbench, self._processes

        def work(ticket: Ticket) -> tuple[int | None, Programme]:
            converting = workbench.converting()
            return converting.convert_folder(folder, terms, ticket, processes, resume=converting.run_file(folder))

        self._set_running(True)
        self._jobs.start(_RUN, work, self._show_made, self._show_trouble)

    def stop(self) -> None:
        """Ask the run to stop."""
        self._jobs.cancel(_RUN)
        self._set_running(False)
        self.state_label.setText(tr("Stopped. What was worked out is kept; Calculate goes on from there."))

    def show_programme(self, programme: Programme) -> None:
        """Show the years with their sites, then what is left out."""
        self.programme = programme
        self.model.show_nodes(tuple(_nodes(programme, Writing(self._workbench.language))))
        self.tree.expandAll()
        self.tree.fit_columns()
        done = sum(one.year is not None for one in programme.ranked)
        words = tr("{name}: {done} of {ready} ready sites are placed; {others} are not ready.")
        text = words.format(name=programme.name, done=done, ready=len(programme.ranked), others=len(programme.others))
        self.state_label.setText(f"{text} {tr('The run was stopped early.')}" if programme.stopped else text)

    def _show_latest(self) -> None:
        """Show the programme made last; nothing where the book holds none."""
        try:
            programme = wait_for(self._latest)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        if programme is not None:
            self.show_programme(programme)

    def _latest(self) -> Programme | None:
        store = self._workbench.book().programmes
        entries = store.entries()
        return store.programme(entries[0].id) if entries else None

    def _show_made(self, made: tuple[int | None, Programme]) -> None:
        kept_as, programme = made
        self._set_running(False)
        self.show_programme(programme)
        if kept_as is None:
            self.show_fault(tr("NOT saved: the book may only be read"))

    def _show_trouble(self, fault: Exception) -> None:
        self._set_running(False)
        if not isinstance(fault, Cancelled):
            self.show_fault(str(fault))

    def _set_running(self, running: bool) -> None:
        self.run_button.setEnabled(not running)
        self.stop_button.setEnabled(running)
        self.progress_bar.setRange(0, 0)
        self.progress_bar.setVisible(running)

    def _on_progress(self, key: object, done: int, total: int) -> None:
        if key == _RUN and self.progress_bar.isVisible():
            self.progress_bar.setRange(0, total)
            self.progress_bar.setValue(done)

    def _choose_folder(self) -> None:
        path = QFileDialog.getExistingDirectory(self, tr("Folder of survey files"))
        if path:
            self.folder_edit.setText(path)

    def reject(self) -> None:
        """Qt: leave; a run in hand ends."""
        self._jobs.cancel(_RUN)
        super().reject()

    def accept(self) -> None:
        """Qt: close; a run in hand ends."""
        self._jobs.cancel(_RUN)
        super().accept()


def _budget(text: str) -> Decimal | None:
    if not text.strip():
        return None
    try:
        value = Decimal(text.strip())
    except InvalidOperation:
        value = Decimal(0)
    if not value.is_finite() or value <= 0:
        raise InputFault((InputProblem("", "money of one year", repr(text), "write an amount above 0, or nothing"),))
    return value


def _nodes(programme: Programme, writing: Writing) -> list[Node]:
    found: list[Node] = []
    for year in programme.years:
        here = tuple(_ranked(one, writing) for one in programme.ranked if one.year == year.year)
        cells = (
            tr("Year {0}").format(year.year),
            f"{year.sites}",
            f"{writing.amount(year.spent)} {programme.currency}",
            "",
        )
        found.append(Node(cells=cells, children=here, is_head=True))
    left = tuple(_ranked(one, writing) for one in programme.ranked if one.year is None)
    if left:
        found.append(Node(cells=(tr("In no year"), f"{len(left)}", "", ""), children=left, is_head=True))
    others = tuple(_other(one) for one in programme.others)
    if others:
        found.append(Node(cells=(tr("Not ready"), f"{len(others)}", "", ""), children=others, is_head=True))
    return found


def _ranked(one: RankedSite, writing: Writing) -> Node:
    site = one.site
    reason = f" – {one.left_out.replace('_', ' ')}" if one.left_out else ""
    cost = tr("not known") if site.cost is None else f"{writing.amount(site.cost)} {site.currency}"
    value = "" if site.net_present_value is None else f"{writing.amount(site.net_present_value)} {site.currency}"
    return Node(
        cells=(str(one.rank), f"{site.name}{reason}", cost, value),
        record=site.place,
        tone=Tone.GOOD if one.year is not None else Tone.CAUTION,
        hint=site.place,
    )


def _other(one: SiteResult) -> Node:
    words = one.outcome.replace("_", " ")
    return Node(
        cells=("", f"{one.name} – {words}", "", ""),
        record=one.place,
        tone=_TONES.get(one.outcome, Tone.NOTE),
        hint=f"{one.place} {one.message}".strip(),
    )
