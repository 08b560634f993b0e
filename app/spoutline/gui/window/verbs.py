"""What each command of the window does: one call each."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtGui import QGuiApplication

from spoutline.book.records import SettingName
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.question import Step
from spoutline.gui.session import Changed
from spoutline.gui.window.help_steps import HelpSteps
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.position_steps import PositionSteps
from spoutline.gui.window.preference_steps import Effects, PreferenceSteps
from spoutline.gui.window.seeking import Leading, Seeking
from spoutline.gui.window.survey_steps import SurveySteps
from spoutline.gui.window.workplace import Workplace
from spoutline.gui.wording import tr
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from spoutline.gui.pages.start.page import StartPage

_READING_NOTES_MS = 2_000


class Verbs:
    """Binds the commands of the menu to the workplace."""

    def __init__(self, window: MainWindow, workplace: Workplace) -> None:
        self._window, self._workplace, self._session = window, workplace, workplace.session
        self.positions = PositionSteps(window, workplace)
        self.surveys = SurveySteps(window, workplace, self.positions)
        effects = Effects(self.use_units, self.rules_changed, self.surveys.open_backups)
        self.preferences = PreferenceSteps(window, self._session, effects)
        self.help = HelpSteps(window, workplace)
        self.seeking = Seeking(window, workplace, Leading(self.do, self.surveys.turn_to, self.help.help_found))
        self._calls = self._calls_by_action()
        self._bind()
        self._show_units()
        self._reading = QTimer(window)
        self._reading.setInterval(_READING_NOTES_MS)
        self._reading.timeout.connect(self.tell_reading)
        self._reading.start()
        self.tell_reading()

    def _calls_by_action(self) -> dict[ActionId, Callable[[], object]]:
        place, session = self._workplace, self._session
        drawing = place.side_panel.drawing
        return {
            ActionId.START: place.show_start,
            ActionId.SURVEYS: self.surveys.open_surveys,
            ActionId.NEW_SURVEY: self.surveys.new_survey,
            ActionId.IMPORT_SURVEY: self.surveys.ask_and_read,
            ActionId.EXPORT_SURVEY: self.surveys.ask_and_write,
            ActionId.BACKUPS: self.surveys.open_backups,
            ActionId.QUIT: self._window.close,
            ActionId.UNDO: session.undo_stack.undo,
            ActionId.REDO: session.undo_stack.redo,
            ActionId.UNDO_LIST: self.show_undo_list,
            ActionId.RECENT: self.show_recent,
            ActionId.PREFERENCES: self.preferences.open_preferences,
            ActionId.ADD_POSITION: self.positions.add_position,
            ActionId.DUPLICATE_POSITION: self.positions.duplicate_position,
            ActionId.RENAME_POSITION: self.positions.rename_position,
            ActionId.REMOVE_POSITION: self.positions.remove_position,
            ActionId.COPY_ANSWERS: self.positions.copy_answers,
            ActionId.WHAT_IF: place.what_if.ask,
            ActionId.WEIGH: place.weighing.ask,
            ActionId.AGREE: place.agreeing.agree_planned,
            ActionId.WITHDRAW: place.agreeing.withdraw,
            ActionId.AGREEMENTS: place.agreeing.show_history,
            ActionId.SEARCH: self.seeking.ask,
            ActionId.WALK: place.show_walk,
            ActionId.PREVIOUS_STEP: lambda: place.move_step(-1),
            ActionId.NEXT_STEP: lambda: place.move_step(1),
            ActionId.PREVIOUS_POSITION: lambda: place.move_position(-1),
            ActionId.NEXT_POSITION: lambda: place.move_position(1),
            ActionId.SITE: lambda: place.show_step(Step.SITE),
            ActionId.PART_QUESTION: place.show_part_question,
            ActionId.BILL: place.show_bill,
            ActionId.GRID: place.show_grid,
            ActionId.QUOTATIONS: place.show_quotations,
            ActionId.CONVERSION: place.show_conversion,
            ActionId.INSTALLER: place.show_installer,
            ActionId.CATALOGUES: self.show_catalogues,
            ActionId.PROGRAMME: self.open_programme,
            ActionId.IMPORT_TABLE: self.positions.import_table,
            ActionId.DISPENSER_TYPES: self.positions.open_dispenser_types,
            ActionId.REPEAT_DISPENSER: self.positions.repeat_dispenser,
            ActionId.MIRROR_DISPENSER: self.positions.mirror_dispenser,
            ActionId.PROFILES: self.open_local_rules,
            ActionId.UNITS_SI: lambda: self.use_units(UnitSystem.SI),
            ActionId.UNITS_US: lambda: self.use_units(UnitSystem.US),
            ActionId.ENLARGE: drawing.enlarge,
            ActionId.REDUCE: drawing.reduce,
            ActionId.FIT_DRAWING: drawing.show_whole,
            ActionId.HELP: self.help.show_help,
            ActionId.TOUR: self.help.show_tour,
            ActionId.KEYS: self.help.show_keys,
            ActionId.ABOUT: self.help.show_about,
        }

    def _bind(self) -> None:
        window, workplace = self._window, self._workplace
        for action_id, action in window.actions_by_id.items():
            action.triggered.connect(self._caller(action_id))
        workplace.site_panel.asked.connect(self.do)
        workplace.guide.asked.connect(self.do)
        workplace.recent_files = lambda: window.memory.files
        workplace.start_page_made.connect(self._bind_start)
        window.help_opener = self.help.open_help
        window.file_dropped.connect(self.surveys.read_dropped)
        self._session.changed.connect(self._on_changed)

    def tell_reading(self) -> None:
        """Say what was read from the book otherwise than an older version wrote it."""
        self.surveys.tell_notes(self._session.workbench.reading_notes())

    def do(self, action_id: ActionId) -> None:
        """Carry out a command."""
        self._calls[action_id]()

    def _caller(self, action_id: ActionId) -> Callable[[], None]:
        return lambda: self.do(action_id)

    def _bind_start(self, page: StartPage) -> None:
        surveys = self.surveys
        page.opened.connect(surveys.turn_to)
        page.file_wanted.connect(lambda path: surveys.read_file(Path(path)) if path else surveys.ask_and_read())
        page.tour_wanted.connect(self.help.show_tour)
        page.all_wanted.connect(surveys.open_surveys)

    # rules and units

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
        self._workplace.sets.plan_anew()
        self._workplace.forget_bill()
        self._workplace.fetch_choices()

    def use_units(self, system: UnitSystem) -> None:
        """Show and read figures in another unit system, now and after the next start."""
        self._session.use_units(system)
        self._session.remember(SettingName.UNIT_SYSTEM, system.value)
        self._show_units()

    def show_undo_list(self) -> None:
        """Show every change since the survey was opened."""
        from spoutline.gui.dialogs.undo_list import UndoListDialog

        UndoListDialog(self._session.undo_stack, self._window).exec()

    def show_recent(self) -> None:
        """Open the list of files used last below the menu that it belongs to."""
        self._window.recent_menu.popup(self._window.mapToGlobal(self._window.menuBar().geometry().bottomLeft()))

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
