"""What each command of the window does: one call each."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QFileDialog, QWidget

from spoutline.book.records import SettingName, StoredSurvey
from spoutline.book.survey_text import read_survey
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.positions import duplicate_position, free_label, remove_position
from spoutline.gui.edits.question import Step
from spoutline.gui.help_place import topic_of
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.session import Changed
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.notice_bar import Offer
from spoutline.gui.window.main_window import TABLE_ENDINGS, MainWindow
from spoutline.gui.window.seeking import Seeking
from spoutline.gui.window.workplace import Workplace
from spoutline.gui.wording import tr
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, InputNote, StoreFault
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from spoutline.bootstrap.manual import Manual
    from spoutline.bootstrap.preferences import OpenWith
    from spoutline.gui.dialogs.preferences import Preferred
    from spoutline.gui.models.command_search import Found
    from spoutline.gui.pages.start.page import StartPage

_NOTES_SHOWN = 4
_READING_NOTES_MS = 2_000


class Verbs:
    """Binds the commands of the menu to the workplace."""

    def __init__(self, window: MainWindow, workplace: Workplace) -> None:
        self._window, self._workplace, self._session = window, workplace, workplace.session
        self.seeking = Seeking(window, workplace, self)
        drawing = workplace.side_panel.drawing
        self._calls: dict[ActionId, Callable[[], object]] = {
            ActionId.START: workplace.show_start,
            ActionId.SURVEYS: self.open_surveys,
            ActionId.NEW_SURVEY: self.new_survey,
            ActionId.IMPORT_SURVEY: self.ask_and_read,
            ActionId.EXPORT_SURVEY: self.ask_and_write,
            ActionId.BACKUPS: self.open_backups,
            ActionId.QUIT: window.close,
            ActionId.UNDO: self._session.undo_stack.undo,
            ActionId.REDO: self._session.undo_stack.redo,
            ActionId.UNDO_LIST: self.show_undo_list,
            ActionId.RECENT: self.show_recent,
            ActionId.PREFERENCES: self.open_preferences,
            ActionId.ADD_POSITION: self.add_position,
            ActionId.DUPLICATE_POSITION: self.duplicate_position,
            ActionId.RENAME_POSITION: self.rename_position,
            ActionId.REMOVE_POSITION: self.remove_position,
            ActionId.COPY_ANSWERS: self.copy_answers,
            ActionId.WHAT_IF: workplace.what_if.ask,
            ActionId.WEIGH: workplace.weighing.ask,
            ActionId.AGREE: workplace.agreeing.agree_planned,
            ActionId.WITHDRAW: workplace.agreeing.withdraw,
            ActionId.AGREEMENTS: workplace.agreeing.show_history,
            ActionId.SEARCH: self.seeking.ask,
            ActionId.WALK: workplace.show_walk,
            ActionId.PREVIOUS_STEP: lambda: workplace.move_step(-1),
            ActionId.NEXT_STEP: lambda: workplace.move_step(1),
            ActionId.PREVIOUS_POSITION: lambda: workplace.move_position(-1),
            ActionId.NEXT_POSITION: lambda: workplace.move_position(1),
            ActionId.SITE: lambda: workplace.show_step(Step.SITE),
            ActionId.PART_QUESTION: workplace.show_part_question,
            ActionId.BILL: workplace.show_bill,
            ActionId.GRID: workplace.show_grid,
            ActionId.QUOTATIONS: workplace.show_quotations,
            ActionId.CONVERSION: workplace.show_conversion,
            ActionId.INSTALLER: workplace.show_installer,
            ActionId.CATALOGUES: self.show_catalogues,
            ActionId.PROGRAMME: self.open_programme,
            ActionId.IMPORT_TABLE: self.import_table,
            ActionId.DISPENSER_TYPES: self.open_dispenser_types,
            ActionId.REPEAT_DISPENSER: self.repeat_dispenser,
            ActionId.MIRROR_DISPENSER: self.mirror_dispenser,
            ActionId.PROFILES: self.open_local_rules,
            ActionId.UNITS_SI: lambda: self.use_units(UnitSystem.SI),
            ActionId.UNITS_US: lambda: self.use_units(UnitSystem.US),
            ActionId.ENLARGE: drawing.enlarge,
            ActionId.REDUCE: drawing.reduce,
            ActionId.FIT_DRAWING: drawing.show_whole,
            ActionId.HELP: self.show_help,
            ActionId.TOUR: self.show_tour,
            ActionId.KEYS: self.show_keys,
            ActionId.ABOUT: self.show_about,
        }
        for action_id, action in window.actions_by_id.items():
            action.triggered.connect(self._caller(action_id))
        workplace.site_panel.asked.connect(self.do)
        workplace.guide.asked.connect(self.do)
        workplace.recent_files = lambda: window.memory.files
        workplace.start_page_made.connect(self._bind_start)
        window.help_opener = self.open_help
        window.file_dropped.connect(self.read_dropped)
        self._session.changed.connect(self._on_changed)
        self._show_units()
        self._reading = QTimer(window)
        self._reading.setInterval(_READING_NOTES_MS)
        self._reading.timeout.connect(self.tell_reading)
        self._reading.start()
        self.tell_reading()

    def tell_reading(self) -> None:
        """Say what was read from the book otherwise than an older version wrote it."""
        self._tell_notes(self._session.workbench.reading_notes())

    def do(self, action_id: ActionId) -> None:
        """Carry out a command."""
        self._calls[action_id]()

    def _caller(self, action_id: ActionId) -> Callable[[], None]:
        return lambda: self.do(action_id)

    # surveys

    def _bind_start(self, page: StartPage) -> None:
        page.opened.connect(self.turn_to)
        page.file_wanted.connect(lambda path: self.read_file(Path(path)) if path else self.ask_and_read())
        page.tour_wanted.connect(self.show_tour)
        page.all_wanted.connect(self.open_surveys)

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
        self._tell_notes(dialog.notes)

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
            self.tell_changed_types()

    def remember_survey(self, stored: StoredSurvey) -> None:
        """Open this survey at the next start."""
        self._remember(SettingName.LAST_SURVEY, str(stored.id))

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
            self._tell_notes(notes)

        self._window.jobs.start(JobKey(JobKind.FILE), work, take, lambda fault: self._window.show_trouble(str(fault)))

    def _tell_notes(self, notes: Sequence[InputNote]) -> None:
        """Say how what was read was understood; quiet where all stands as it was written."""
        if notes:
            more = [tr("and {0} more").format(len(notes) - _NOTES_SHOWN)] if len(notes) > _NOTES_SHOWN else []
            self._window.notify("\n".join([*(str(note) for note in notes[:_NOTES_SHOWN]), *more]))

    def read_dropped(self, path: str) -> None:
        """Read a file that was dropped on the window: a table of positions by its ending, else a survey."""
        file = Path(path)
        if file.suffix.lower() in TABLE_ENDINGS:
            self.read_table(file)
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

    # positions

    def add_position(self) -> None:
        """Ask for names and add a position."""
        survey, position = self._session.survey, self._session.position
        proposal = free_label(survey, position.label)
        self._ask_names("", proposal, position.dispenser, tr("Add a position"))

    def rename_position(self) -> None:
        """Ask for other names of the position."""
        position = self._session.position
        self._ask_names(position.label, position.label, position.dispenser, tr("Rename {0}").format(position.label))

    def _ask_names(self, label: str, proposal: str, dispenser: str, text: str) -> None:
        from spoutline.gui.dialogs.position_name import PositionNameDialog

        dialog = PositionNameDialog(
            self._session.survey, label, proposal=proposal, dispenser=dispenser, parent=self._window
        )
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, text, dialog.new_label)

    def duplicate_position(self) -> None:
        """Add a position with the same answers and turn to it."""
        label = self._session.label
        try:
            after, new_label = duplicate_position(self._session.survey, label)
        except InputFault as fault:
            self._window.show_trouble(str(fault))
            return
        self._workplace.context.edit(after, tr("Duplicate {0}").format(label), new_label)

    def remove_position(self) -> None:
        """Take the position off the site; undo brings it back, so nothing is asked."""
        label = self._session.label
        try:
            after, focus = remove_position(self._session.survey, label)
        except InputFault as fault:
            self._window.show_trouble(str(fault))
            return
        self._workplace.context.edit(after, tr("Remove {0}").format(label), focus)

    def copy_answers(self) -> None:
        """Ask which answers go to which positions and copy them."""
        from spoutline.gui.dialogs.copy_answers import CopyAnswersDialog

        dialog = CopyAnswersDialog(self._session.survey, self._session.label, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, tr("Copy answers of {0}").format(self._session.label))

    def open_dispenser_types(self) -> None:
        """Show the types of the book; one that is chosen there answers for the positions of a dispenser."""
        from spoutline.gui.dialogs.dispenser_types import DispenserTypesDialog

        dialog = DispenserTypesDialog(self._session, self._workplace.context.intake, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, dialog.said)
        self.tell_changed_types()

    def tell_changed_types(self) -> None:
        """Say where the book knows a type of the survey otherwise now, and offer its figures."""
        session = self._session
        if all(position.dispenser_type is None for position in session.survey.positions):
            return
        try:
            found = wait_for(lambda: session.workbench.dispenser_types().changed(session.survey))
        except (InputFault, StoreFault):
            return  # what cannot be read is told where it is asked for
        renewed = [one for one in found if one.current is not None]
        if not renewed:
            return
        named = ", ".join(dict.fromkeys(one.before.name for one in renewed))
        words = tr("Changed in the book since they were chosen: dispenser type {0}. The survey stays as it is.")
        offer = Offer(tr("Take the new &figures"), self._take_new_figures)
        self._window.notify(words.format(named), offers=(offer,))

    def _take_new_figures(self) -> None:
        session = self._session
        try:
            after = wait_for(lambda: session.workbench.dispenser_types().with_current(session.survey))
        except (InputFault, StoreFault) as fault:
            self._window.show_trouble(str(fault))
            return
        self._workplace.context.edit(after, tr("Take the new figures of dispenser types"))

    def repeat_dispenser(self) -> None:
        """Ask for names and repeat the dispenser under them."""
        from spoutline.gui.dialogs.dispensers import RepeatDialog

        dispenser = self._session.position.dispenser
        dialog = RepeatDialog(self._session.survey, dispenser, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, tr("Repeat dispenser {0}").format(dispenser))

    def mirror_dispenser(self) -> None:
        """Ask for the sides and repeat the positions of one on the other."""
        from spoutline.gui.dialogs.dispensers import MirrorDialog

        dispenser = self._session.position.dispenser
        dialog = MirrorDialog(self._session.survey, dispenser, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, tr("Other side of dispenser {0}").format(dispenser))

    def import_table(self) -> None:
        """Ask for a table, show what its positions would change, and take them in one step."""
        path, _ = QFileDialog.getOpenFileName(
            self._window, tr("Read positions from a table"), "", f"CSV, XLSX (*{' *'.join(TABLE_ENDINGS)})"
        )
        if path:
            self.read_table(Path(path))

    def read_table(self, path: Path) -> None:
        """Show a table of positions and take them in one step."""
        from spoutline.gui.dialogs.table_intake import TableIntakeDialog
        from spoutline.gui.intake.works import PositionsWork

        session = self._session
        work = PositionsWork(session.workbench.position_tables(), session.survey, session.display.system)
        dialog = TableIntakeDialog(
            tr("Read positions from a table"), self._workplace.context.intake, work, self._window
        )
        dialog.open_file(path)
        taken = dialog.taken if dialog.exec() == QDialog.DialogCode.Accepted else None
        if taken is not None and taken.survey is not None:
            self._workplace.context.edit(taken.survey, tr("Read positions from {0}").format(path.name))
            self._window.notify(dialog.told)

    # rules, units, help

    def open_programme(self) -> None:
        """Show the programme of several sites."""
        from spoutline.gui.dialogs.programme import ProgrammeDialog

        session = self._session
        ProgrammeDialog(session.workbench, self._window.jobs, self._window, display=session.display).exec()

    def open_local_rules(self) -> None:
        """Show the jurisdictions; plans are made anew where one was changed."""
        from spoutline.gui.dialogs.local_rules import LocalRulesDialog

        dialog = LocalRulesDialog(
            self._session.workbench, self._session.survey.site.jurisdiction, self._window, self._session.survey
        )
        dialog.exec()
        if dialog.changed:
            self.rules_changed()

    def show_catalogues(self) -> None:
        """Show the catalogs of the book; plans are made anew where another edition is planned with."""
        self._workplace.show_catalogues(self.rules_changed)

    def rules_changed(self) -> None:
        """Plan anew with the rules as they are now."""
        self._workplace.plans.forget()
        self._workplace.sets.refresh()
        self._workplace.forget_bill()
        self._workplace.fetch_choices()

    def use_units(self, system: UnitSystem) -> None:
        """Show and read figures in another unit system, now and after the next start."""
        self._session.use_units(system)
        self._remember(SettingName.UNIT_SYSTEM, system.value)
        self._show_units()

    def show_undo_list(self) -> None:
        """Show every change since the survey was opened."""
        from spoutline.gui.dialogs.undo_list import UndoListDialog

        UndoListDialog(self._session.undo_stack, self._window).exec()

    def show_recent(self) -> None:
        """Open the list of files used last below the menu that it belongs to."""
        self._window.recent_menu.popup(self._window.mapToGlobal(self._window.menuBar().geometry().bottomLeft()))

    def open_preferences(self) -> None:
        """Show what is preferred and put other choices into effect."""
        from spoutline.bootstrap.data_folder import use_data_folder
        from spoutline.bootstrap.preferences import preferred_opening
        from spoutline.gui.dialogs.preferences import PreferencesDialog, Preferred

        workbench, window = self._session.workbench, self._window
        try:
            now = Preferred(
                language=window.language,
                units=self._session.display.system,
                theme=window.theme,
                open_with=preferred_opening(),
                catalogue=str(wait_for(lambda: workbench.catalogues().chosen())),
                jurisdiction=wait_for(workbench.usual_jurisdiction),
            )
        except (InputFault, StoreFault) as fault:
            window.show_trouble(str(fault))
            return
        dialog = PreferencesDialog(workbench, now, use_data_folder, self.open_backups, window)
        if dialog.exec() == QDialog.DialogCode.Accepted:
            self.prefer(now, dialog.preferred)

    def prefer(self, before: Preferred, after: Preferred) -> None:
        """Put choices into effect; the language last, for that builds the window anew."""
        workbench = self._session.workbench
        if after.units is not before.units:
            self.use_units(after.units)
        if after.theme is not before.theme:
            self._window.theme_wanted.emit(after.theme.value)
        if after.open_with is not before.open_with:
            self._open_with(after.open_with)
        if after.jurisdiction != before.jurisdiction:
            self._remember(SettingName.JURISDICTION, after.jurisdiction)
        if after.catalogue != before.catalogue:
            try:
                wait_for(lambda: workbench.catalogues().choose(EditionRef.from_text(after.catalogue)))
            except (InputFault, StoreFault) as fault:
                self._window.show_trouble(str(fault))
            else:
                self.rules_changed()
        if after.language is not before.language:
            self._window.language_wanted.emit(after.language.value)

    def _open_with(self, wanted: OpenWith) -> None:
        from spoutline.bootstrap.preferences import Preference, keep_preference

        try:
            keep_preference(Preference.OPEN_WITH, wanted.value)
        except StoreFault as fault:
            self._window.show_trouble(str(fault))

    def show_help(self) -> None:
        """Open the page of the manual that fits what has the keyboard."""
        self.open_help(topic_of(self._window.focusWidget(), self._workplace.place), self._window)

    def open_help(self, topic: str, over: QWidget) -> None:
        """Open a page of the manual over a window, in the help that is open there already or in a new one."""
        from spoutline.gui.dialogs.help_window import HelpWindow

        found = over.findChild(HelpWindow, options=Qt.FindChildOption.FindDirectChildrenOnly)
        help_window = found if found is not None else HelpWindow(self._manual(), self._workplace.context.story, over)
        help_window.show_topic(topic)
        help_window.show()
        help_window.raise_()
        help_window.activateWindow()

    def _manual(self) -> Manual:
        session = self._session
        return session.workbench.manual(session.display, session.survey.site.jurisdiction)

    def help_found(self) -> tuple[Found, ...]:
        """Return the pages of help and the words of the trade as the one search offers them."""
        from spoutline.gui.models.command_search import Found, FoundKind

        manual = self._manual()

        def opener(topic: str) -> Callable[[], object]:
            return lambda: self.open_help(topic, self._window)

        pages = [
            Found(kind=FoundKind.HELP, title=one.title, told=tr("Page of help"), go=opener(one.name))
            for one in manual.topics
        ]
        terms = [
            Found(kind=FoundKind.HELP, title=one.word, told=one.meaning, go=opener("glossary")) for one in manual.terms
        ]
        return (*pages, *terms)

    def show_keys(self) -> None:
        """List all commands with their keys."""
        from spoutline.gui.dialogs.keys import KeysDialog

        KeysDialog(self._window).exec()

    def show_about(self) -> None:
        """Say what the program is for and what it leaves to others."""
        import spoutline
        from spoutline.gui.dialogs.keys import AboutDialog

        advice = self._workplace.context.story.phrases.text["advice"]
        AboutDialog(spoutline.__version__, advice, self._window).exec()

    def show_tour(self) -> None:
        """Show in pictures how each of three people works here."""
        from spoutline.gui.dialogs.tour import TourDialog

        TourDialog(self._window).exec()
        self._window.memory.tour_seen()

    def _remember(self, name: SettingName, value: str) -> None:
        self._session.remember(name, value)

    def _on_changed(self, what: Changed) -> None:
        if what & (Changed.SURVEY | Changed.UNITS):
            self._show_units()

    def _show_units(self) -> None:
        system = self._session.display.system
        self._window.actions_by_id[ActionId.UNITS_SI].setChecked(system is UnitSystem.SI)
        self._window.actions_by_id[ActionId.UNITS_US].setChecked(system is UnitSystem.US)
        self._window.units_label.setText(tr("Metric units") if system is UnitSystem.SI else tr("US units"))
        name = self._session.survey.site.name
        self._window.setWindowTitle(f"{name} – Spoutline")
        QGuiApplication.setApplicationDisplayName("")
