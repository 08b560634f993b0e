"""Surveys opened, read from files and written into them, and a book put back from a backup: a person's steps."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtWidgets import QFileDialog

from spoutline.book.records import SettingName, StoredSurvey
from spoutline.book.survey_text import read_survey
from spoutline.gui.edits.question import Step
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.waiting import wait_for
from spoutline.gui.window.main_window import TABLE_ENDINGS, MainWindow
from spoutline.gui.window.position_steps import PositionSteps
from spoutline.gui.window.workplace import Workplace
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, InputNote, StoreFault

_NOTES_SHOWN = 4


class SurveySteps:
    """Takes the steps that turn the window to another survey, or put one into a file."""

    def __init__(self, window: MainWindow, workplace: Workplace, positions: PositionSteps) -> None:
        self._window, self._workplace, self._session = window, workplace, workplace.session
        self._positions = positions

    def open_surveys(self) -> None:
        """Show the surveys of the book and turn to the one chosen."""
        from spoutline.gui.dialogs.surveys import SurveysDialog

        dialog = SurveysDialog(self._session.workbench, self._session.stored.id, self._window)
        dialog.exec()
        self.turn_to(dialog.chosen)

    def new_survey(self) -> None:
        """Show the surveys of the book with the keyboard in the field for a new site's name."""
        from spoutline.gui.dialogs.surveys import SurveysDialog

        dialog = SurveysDialog(self._session.workbench, self._session.stored.id, self._window)
        dialog.name_edit.setFocus()
        dialog.exec()
        self.turn_to(dialog.chosen)
        self.tell_notes(dialog.notes)

    def open_backups(self) -> None:
        """Show the backups of the book; where one was put back, go on with what it holds."""
        from spoutline.gui.dialogs.backups import BackupsDialog
        from spoutline.gui.window.first_survey import survey_to_show

        workbench, saving = self._session.workbench, self._window.saving
        may_leave = saving.may_leave if saving is not None else self._session.may_leave
        dialog = BackupsDialog(workbench.keeping(), may_leave, self._window)
        dialog.exec()
        if dialog.restored is None:
            return
        try:
            self._session.open(wait_for(lambda: survey_to_show(workbench, None)))
        except (InputFault, StoreFault) as fault:
            self._window.show_trouble(str(fault))
            return
        self._workplace.show_step(Step.LIQUID)
        words = tr("The book is the backup again: {count} surveys. What lay there before is {path}.")
        aside = dialog.restored.set_aside
        self._window.notify(words.format(count=dialog.restored.report.surveys, path=aside or tr("nothing")))

    def turn_to(self, stored: StoredSurvey | None) -> None:
        """Turn to another survey; None stays with this one."""
        if stored is not None and self._session.turn_to(stored):
            self.remember_survey(stored)
            self._workplace.show_step(Step.LIQUID)
            self._positions.tell_changed_types()

    def remember_survey(self, stored: StoredSurvey) -> None:
        """Open this survey at the next start."""
        self._session.remember(SettingName.LAST_SURVEY, str(stored.id))

    def ask_and_read(self) -> None:
        """Ask for a survey file and put it into the book."""
        path, _ = QFileDialog.getOpenFileName(self._window, tr("Read a survey file"), "", "JSON (*.json)")
        if path:
            self.read_file(Path(path))

    def read_file(self, path: Path) -> None:
        """Put a survey file into the book and turn to it; every faulty field is named where it cannot be."""
        workbench = self._session.workbench

        notes: list[InputNote] = []

        def work(_: Ticket) -> StoredSurvey:
            return workbench.book().create(read_survey(path, notes.append))

        def take(stored: StoredSurvey) -> None:
            self._window.memory.add_file(path)
            self.turn_to(stored)
            self.tell_notes(notes)

        self._window.jobs.start(JobKey(JobKind.FILE), work, take, lambda fault: self._window.show_trouble(str(fault)))

    def read_dropped(self, path: str) -> None:
        """Read a file that was dropped on the window: a table of positions by its ending, else a survey."""
        file = Path(path)
        if file.suffix.lower() in TABLE_ENDINGS:
            self._positions.read_table(file)
        else:
            self.read_file(file)

    def ask_and_write(self) -> None:
        """Ask for a place and write the survey there."""
        if self._window.saving is not None:
            self._window.saving.ask_and_write()

    def write_file(self, path: Path) -> None:
        """Write the survey into a file."""
        if self._window.saving is not None:
            self._window.saving.write_file(path)

    def tell_notes(self, notes: Sequence[InputNote]) -> None:
        """Say how what was read was understood; quiet where all stands as it was written."""
        if notes:
            more = [tr("and {0} more").format(len(notes) - _NOTES_SHOWN)] if len(notes) > _NOTES_SHOWN else []
            self._window.notify("\n".join([*(str(note) for note in notes[:_NOTES_SHOWN]), *more]))
