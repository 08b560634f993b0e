"""A programme of conversions: a folder of surveys, a yearly budget, a run over all cores, the ranked sites."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLineEdit, QProgressBar, QPushButton, QWidget

from spoutline.explain.conversion.programme_words import ProgrammeWords
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.programme_files import ProgrammeFiles
from spoutline.gui.dialogs.programme_terms import ProgrammeTermsForm
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.programme_nodes import programme_nodes
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.faults import Cancelled, InputFault, StoreFault
from spoutline.model.programme import Programme
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_RUN = JobKey(JobKind.SITE_PLAN, "programme")


class ProgrammeDialog(FormDialog):
    """Runs a programme and shows it, the last one of the book at first; ``processes`` None takes one for each core."""

    help_topic = "conversions"

    def __init__(
        self,
        workbench: Workbench,
        jobs: Jobs,
        parent: QWidget | None = None,
        *,
        processes: int | None = None,
        display: Display | None = None,
    ) -> None:
        super().__init__(tr("Program of several sites"), parent)
        self._workbench, self._jobs, self._processes = workbench, jobs, processes
        self._display = display or Display(UnitSystem.US)
        self._words: ProgrammeWords | None = None
        self.programme: Programme | None = None
        self.resize(900, 680)
        lead = tr("Advice, no permission: the agency of each site decides before its work begins.")
        self.body.addWidget(plain_label(lead, "quiet", wraps=True))
        self.body.addLayout(self._folder_row())
        self.terms_form = ProgrammeTermsForm(self)
        self.body.addWidget(self.terms_form)
        self.body.addLayout(self._run_row())
        self.progress_bar = QProgressBar(self)
        self.progress_bar.setAccessibleName(tr("Sites converted"))
        self.progress_bar.setTextVisible(False)  # the bar of the theme is too low for words: the state tells them
        self.progress_bar.hide()
        self.body.addWidget(self.progress_bar)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.state_label)
        self.model = NodeTree((tr("Year or rank"), tr("Site"), tr("Cash"), tr("More a year later")), self)
        self.tree = Tree(tr("Sites of the program"), self, shares=(3, 6, 3, 3))
        self.tree.setModel(self.model)
        self.tree.picked.connect(self._show_why)
        self.body.addWidget(self.tree, 1)
        self.why_label = plain_label("", "quiet", wraps=True)
        self.why_label.setAccessibleName(tr("Why the site lies in its year"))
        self.body.addWidget(self.why_label)
        self.files = ProgrammeFiles(workbench, jobs, self._show_saved, self)
        self.foot.insertWidget(0, self.files)
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

    def _run_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.run_button = QPushButton(tr("Calc&ulate"), self)
        self.run_button.setObjectName("primary")
        self.run_button.clicked.connect(self.run)
        self.stop_button = QPushButton(tr("S&top"), self)
        self.stop_button.setAutoDefault(False)
        self.stop_button.setEnabled(False)
        self.stop_button.clicked.connect(self.stop)
        row.addStretch(1)
        row.addWidget(self.run_button)
        row.addWidget(self.stop_button)
        return row

    def run(self) -> None:
        """Convert the surveys of the folder and rank them."""
        folder = Path(self.folder_edit.text().strip())
        try:
            terms = self.terms_form.terms(folder.name or "programme")
        except InputFault as fault:
            self.show_fault(str(fault))
            return
        self.show_fault("")
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
        self._words = ProgrammeWords(programme, self._workbench.converting().words(self._display))
        self.files.show_programme(programme, self._display)
        self.model.show_nodes(programme_nodes(self._words))
        self.tree.expandAll()
        self._show_why(None)
        self.tree.fit_columns()
        self._tell_placed(programme)

    def _tell_placed(self, programme: Programme) -> None:
        """Say how many sites have a year."""
        done = sum(one.year is not None for one in programme.ranked)
        words = tr("{name}: {done} of {ready} ready sites are placed; {others} are not ready.")
        text = words.format(name=programme.name, done=done, ready=len(programme.ranked), others=len(programme.others))
        self.state_label.setText(f"{text} {tr('The run was stopped early.')}" if programme.stopped else text)

    def _show_saved(self, text: str, *, is_fault: bool) -> None:
        """Say that a file was saved, or why not."""
        self.show_fault(text if is_fault else "")
        if not is_fault:
            self.state_label.setText(text)

    def _show_why(self, record: object) -> None:
        """Say why the site of the current row lies in its year, and what a year of waiting costs."""
        words = self._words
        ranked = () if words is None else words.programme.ranked
        found = next((one for one in ranked if one.site.place == record), None)
        if found is None or words is None:
            self.why_label.setText("" if words is None else " · ".join(words.terms()))
            return
        told = (words.why(found), words.deadline(found), words.waiting(found))
        self.why_label.setText(" ".join(text for text in told if text))

    def _show_latest(self) -> None:
        """Show the programme made last; nothing where the book holds none."""
        try:
            programme = wait_for(self._latest)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        if programme is not None:
            self.terms_form.show_terms(programme)
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
        self.state_label.clear()
        if self.programme is not None:
            self._tell_placed(self.programme)
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
            self.state_label.setText(tr("{done} of {total} sites converted").format(done=done, total=total))

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
