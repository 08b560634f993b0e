"""Start the window: first paint, then the book, then the survey to show."""

from __future__ import annotations

import sys
from collections.abc import Callable, Sequence
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QFileDialog

from spoutline.bootstrap.demos import ready_stations
from spoutline.bootstrap.fault_log import FaultLog, log_folder
from spoutline.bootstrap.languages import remember_language
from spoutline.bootstrap.preferences import OpenWith, home_folder, preferred_opening
from spoutline.frozen import frozen
from spoutline.gui.actions import ActionId
from spoutline.gui.collection import FIRST_LOOK_MS, WindowCollector, leave_out_what_is_there
from spoutline.gui.edits.question import Step
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.places import PLACES, Place
from spoutline.gui.short_turns import take_short_turns
from spoutline.gui.widgets.after_paint import AfterPaint
from spoutline.gui.widgets.laid_out import show_laid_out
from spoutline.gui.widgets.notice_bar import Offer
from spoutline.gui.widgets.theme import ThemeChoice
from spoutline.gui.window.faults import UnexpectedFault
from spoutline.gui.window.first_survey import begin_own, is_first_start, survey_to_show, units_to_show
from spoutline.gui.window.language import WindowLanguage
from spoutline.gui.window.main_window import TABLE_ENDINGS, MainWindow
from spoutline.gui.window.memory import LastView, WindowMemory
from spoutline.gui.window.pages_ahead import USED_BY_PAGES
from spoutline.gui.window.theme_keeper import ThemeKeeper
from spoutline.gui.wording import tr
from spoutline.model.faults import DamagedStore, NewerStore, StoreFault
from spoutline.model.language import Language

if TYPE_CHECKING:
    from spoutline.book.records import StoredSurvey
    from spoutline.bootstrap import Workbench
    from spoutline.gui.window.start_choice import StartChoice
    from spoutline.model.survey import Survey
    from spoutline.units.accepted import UnitSystem

_BACKUP = JobKey(JobKind.BACKUP)
_BACKUP_LOOK_MS = 60 * 60 * 1000
_PAGES = JobKey(JobKind.OPEN, "pages")
_PAGES_AFTER_MS = 1_500  # the first drawing is there by then
_SET_PAGE: Final = "spoutline.gui.pages.result.set_page"
_PAGES_MADE_LATER: Final = {
    Place.PARTS: "spoutline.gui.pages.result.bill_page",
    Place.POSITIONS: "spoutline.gui.pages.survey.grid_page",
    Place.QUOTATION: "spoutline.gui.pages.quotation.page",
    Place.INSTALLER: "spoutline.gui.pages.installer.page",
    Place.CONVERSION: "spoutline.gui.pages.conversion.page",
    Place.CATALOGUES: "spoutline.gui.pages.catalogues.page",
    Place.START: "spoutline.gui.pages.start.page",
}
WorkbenchFactory = Callable[[], "Workbench"]


@frozen
class FirstStart:
    """What the first job brings where the book is empty: the use cases, and the catalogues there are.

    ``filled`` are those of the catalogues that hold parts already.
    """

    workbench: Workbench
    own_catalogues: tuple[str, ...]
    filled: tuple[str, ...]


@frozen
class Opened:
    """What the first job brings: the use cases, the survey to show, the units to show it in.

    ``is_remembered`` says that the book already names this survey as the last one.
    """

    workbench: Workbench
    stored: StoredSurvey
    system: UnitSystem
    is_remembered: bool


def run(
    workbench_factory: WorkbenchFactory,
    survey: Survey | None,
    argv: Sequence[str],
    language: Language = Language.ENGLISH,
    trouble: str = "",
    *,
    open_with: OpenWith | None = None,
) -> int:
    """Open the window and stay until it is closed.

    Parameters
    ----------
    workbench_factory
        Opens the stores; called off the window's thread, after the first paint.
    survey
        The survey to show; None for the one that was open last. Where the book is empty the window asks.
    argv
        Arguments for Qt.
    language
        Of the window; another can be chosen in it.
    trouble
        What was wrong with a file that should have been opened; told once the window shows a survey.
    open_with
        What is shown at first where no survey is named; None for what is preferred.

    Returns
    -------
    int
        Qt's exit code.
    """
    app = QApplication(list(argv))
    app.setApplicationName("spoutline")
    app.setDesktopFileName("spoutline")
    take_short_turns()
    theme = ThemeKeeper(app)
    former_hook = sys.excepthook
    collector = WindowCollector(app, FIRST_LOOK_MS)
    shown = ShownWindow(workbench_factory, survey, language, theme, trouble=trouble, open_with=open_with)
    try:
        return app.exec()
    finally:
        sys.excepthook = former_hook
        shown.opening.close()
        collector.stop()


class ShownWindow:
    """The window on the screen; another one takes its place, over the same stores, where another language is chosen.

    Everything that shows a text is built anew, so that no page has to know that a language can change.
    """

    def __init__(
        self,
        factory: WorkbenchFactory,
        survey: Survey | None,
        language: Language,
        theme: ThemeKeeper | None = None,
        *,
        trouble: str = "",
        open_with: OpenWith | None = None,
    ) -> None:
        self.translations = WindowLanguage()
        self._theme, self._trouble = theme, trouble
        self._open_with = open_with or preferred_opening()
        self._memory = WindowMemory(home_folder() / "window.ini")
        self._show(factory, survey, language)

    def _show(self, factory: WorkbenchFactory, survey: Survey | None, language: Language, label: str = "") -> None:
        self.translations.use(language)
        choice = self._theme.choice if self._theme is not None else ThemeChoice.DESKTOP
        self.window = MainWindow(language, self._memory, choice)
        self.window.language_wanted.connect(self.switch)
        self.window.theme_wanted.connect(self.use_theme)
        faults = UnexpectedFault(self.window, FaultLog(log_folder()))
        sys.excepthook = faults
        self.window.show()
        self.opening = Opening(
            self.window, factory, survey, faults, label=label, trouble=self._trouble, open_with=self._open_with
        )
        self._trouble = ""
        self._open_with = OpenWith.LAST_SURVEY  # a window that takes the place of this one goes on where it was
        QTimer.singleShot(0, self.opening.start)

    def use_theme(self, tag: str) -> None:
        """Show everything in other colours, now and after the next start."""
        choice = ThemeChoice(tag)
        self.window.show_theme(choice)
        if self._theme is not None:
            try:
                self._theme.use(choice)
            except StoreFault as fault:
                self.window.show_trouble(str(fault))

    def switch(self, tag: str) -> None:
        """Show everything in another language, at the same survey and position, and remember it."""
        language, former = Language(tag), self.window
        workbench = self.opening.workbench
        if workbench is None:
            return
        if former.workplace is None:
            self._exchange(language, workbench, former)
            return
        session = former.workplace.session
        if not session.save_state.is_saved:
            former.show_trouble(tr("Not all changes are in the book yet; choose the language when they are."))
            return
        self._exchange(language, workbench, former, session.label)

    def _exchange(self, language: Language, workbench: Workbench, former: MainWindow, label: str = "") -> None:
        try:
            remember_language(language)
        except StoreFault as fault:
            former.show_trouble(str(fault))
        workbench.speak(language)
        place = former.geometry()
        self._show(lambda: workbench, None, language, label)
        self.window.setGeometry(place)
        former.close()
        former.deleteLater()


class Opening:
    """Opens the stores behind the window that is already shown, and puts the survey into it."""

    def __init__(
        self,
        window: MainWindow,
        workbench_factory: WorkbenchFactory,
        survey: Survey | None,
        faults: UnexpectedFault,
        *,
        label: str = "",
        trouble: str = "",
        open_with: OpenWith = OpenWith.LAST_SURVEY,
    ) -> None:
        self._open_with = open_with
        self._window, self._factory, self._survey, self._label = window, workbench_factory, survey, label
        self._trouble = trouble
        window.jobs.broke.connect(faults.show)
        self._view: LastView | None = None  # of the window before
        self.opened: Opened | None = None
        self.workbench: Workbench | None = None  # once the stores are open
        self.choice: StartChoice | None = None  # while the window asks how to begin

    def start(self) -> None:
        """Open the stores off the window's thread."""
        self._window.notices.put_away()
        self._view = self._window.memory.last_view()
        self._window.jobs.start(JobKey(JobKind.OPEN), self._open, self._show, self._fail)

    def close(self) -> None:
        """Close the stores."""
        self._window.jobs.close()
        if self.workbench is not None:
            self.workbench.close()

    def _open(self, _: Ticket) -> Opened | FirstStart:
        workbench = self._factory()
        if self._survey is None and is_first_start(workbench):
            own = [facts for facts in workbench.catalogues().all() if not facts.is_demonstration]
            filled = tuple(facts.name for facts in own if facts.draft_parts)
            return FirstStart(workbench, tuple(facts.name for facts in own), filled)
        return self._opened(workbench, survey_to_show(workbench, self._survey))

    def _opened(self, workbench: Workbench, stored: StoredSurvey) -> Opened:
        from spoutline.book.records import SettingName

        workbench.open_parts()  # compiles the catalogue at the very first start
        usual = workbench.jurisdictions().usual_units(stored.survey.site.jurisdiction)
        book = workbench.book_to_read()
        system = units_to_show(book.setting(SettingName.UNIT_SYSTEM), usual)
        is_remembered = book.setting(SettingName.LAST_SURVEY) == str(stored.id)
        _make_ready(workbench, system, stored.survey.site.currency)
        for page in self._pages_of_first_view(stored.id):
            import_module(page)
        if self._open_with is OpenWith.START_VIEW:
            ready_stations()  # read beside the window that shows them
        return Opened(workbench, stored, system, is_remembered)

    def _pages_of_first_view(self, survey_id: int) -> tuple[str, ...]:
        """Return the modules of the pages that are in view at first, besides the walk."""
        pages = [_PAGES_MADE_LATER[Place.START]] if self._open_with is OpenWith.START_VIEW else []
        view = self._view
        if view is not None and self._survey is None and view.survey_id == survey_id:
            pages += [_SET_PAGE] if view.step is Step.SET else []
            pages += [_PAGES_MADE_LATER[view.place]] if view.place in _PAGES_MADE_LATER else []
        return tuple(pages)

    def _show(self, found: Opened | FirstStart) -> None:
        self.workbench = found.workbench
        if isinstance(found, Opened):
            self._show_survey(found)
        else:
            self._ask(found)

    def _ask(self, found: FirstStart) -> None:
        """Ask how to begin, in the place where the workplace will stand."""
        from spoutline.gui.window.start_choice import OwnBeginning, StartChoice

        workbench, jobs = found.workbench, self._window.jobs
        choice = StartChoice(found.own_catalogues)
        self.choice = choice

        def begin(make: Callable[[], StoredSurvey], then: Callable[[Opened], None]) -> None:
            key = JobKey(JobKind.OPEN)
            jobs.start(
                key, lambda _: self._opened(workbench, make()), then, lambda fault: choice.show_fault(str(fault))
            )

        def begin_with_own(own: OwnBeginning) -> None:
            is_filled = own.catalogue.casefold() in {name.casefold() for name in found.filled}
            begin(
                lambda: begin_own(workbench, own.catalogue, own.site, without_demonstration=own.without_demonstration),
                lambda opened: self._show_own(opened, is_filled=is_filled),
            )

        choice.demonstration_wanted.connect(lambda: begin(lambda: survey_to_show(workbench, None), self._show_survey))

        def begin_with_file() -> None:
            path, _ = QFileDialog.getOpenFileName(self._window, tr("Read a survey file"), "", "JSON (*.json)")
            if path:
                self.read_first(Path(path))

        choice.own_wanted.connect(begin_with_own)
        choice.tour_wanted.connect(self._show_tour)
        choice.file_wanted.connect(begin_with_file)
        self._window.file_dropped.connect(self.read_dropped_first)
        self._window.show_start(choice)
        self._tell_trouble()

    def read_first(self, path: Path) -> None:
        """Put a survey file into the empty book and open it; say why where it cannot be."""
        from spoutline.book.survey_text import read_survey

        workbench, choice = self.workbench, self.choice
        if workbench is None or choice is None:
            return

        def work(_: Ticket) -> Opened:
            return self._opened(workbench, workbench.book().create(read_survey(path)))

        def take(opened: Opened) -> None:
            self._window.memory.add_file(path)
            self._show_survey(opened)

        self._window.jobs.start(JobKey(JobKind.OPEN), work, take, lambda fault: choice.show_fault(str(fault)))

    def read_dropped_first(self, path: str) -> None:
        """Read a file that was dropped while the window asks how to begin; a table says what it needs first."""
        choice = self.choice
        if choice is None:  # a survey is there by now: its own window takes what is dropped
            return
        if Path(path).suffix.lower() in TABLE_ENDINGS:
            name = Path(path).name
            choice.show_fault(tr("{0} is a table of positions: begin a survey first, then drop it here.").format(name))
        else:
            self.read_first(Path(path))

    def _show_tour(self) -> None:
        from spoutline.gui.dialogs.tour import TourDialog

        TourDialog(self._window).exec()

    def _show_own(self, opened: Opened, *, is_filled: bool) -> None:
        """Show the survey just begun, and the page on which its catalog is filled, unless it holds parts already."""
        self._show_survey(opened)
        if is_filled:
            return
        self.verbs.show_catalogues()
        if self._window.workplace is not None:
            self._window.workplace.catalogues_page.show_import()

    def _show_survey(self, opened: Opened) -> None:
        from spoutline.gui.session import Session
        from spoutline.gui.window.verbs import Verbs

        self.opened, self.choice = opened, None
        leave_out_what_is_there()
        self._window.jobs.hold()
        session = Session(opened.workbench, opened.stored, opened.system, self._window)
        workplace = self._window.attach(session)
        AfterPaint(workplace, self._painted)
        self.verbs = Verbs(self._window, workplace)
        if not opened.is_remembered:
            self.verbs.surveys.remember_survey(opened.stored)
        self.verbs.positions.tell_changed_types()
        session.look_at(self._label)
        if self._survey is None:
            self._show_last_view(session.stored.id)
            if self._open_with is OpenWith.START_VIEW:
                self.verbs.do(ActionId.START)
        self._tell_trouble()
        show_laid_out(workplace)
        self._back_up(opened.workbench)
        QTimer.singleShot(_PAGES_AFTER_MS, self._window, self._load_pages)

    def _painted(self) -> None:
        """Let work begin; the first look for garbage need not go through the workplace, which stays to the end."""
        leave_out_what_is_there()
        self._window.jobs.let_go()

    def _show_last_view(self, survey_id: int) -> None:
        """Go on at the place, position and step that were in view when the window was closed."""
        view, workplace = self._view, self._window.workplace
        if view is None or workplace is None or view.survey_id != survey_id:
            return
        workplace.session.look_at(view.label)
        if view.step is not Step.CONVERSION:
            workplace.show_step(view.step)
        if view.place is not Place.SURVEY:
            self.verbs.do(next(one.action for one in PLACES if one.place is view.place))

    def _back_up(self, workbench: Workbench) -> None:
        """Make the backup of the day, now and in a window that stays open over midnight."""
        jobs = self._window.jobs

        def work(_: Ticket) -> object:
            return workbench.keeping().back_up_daily()

        def start() -> None:
            jobs.start(_BACKUP, work, lambda _: None, lambda fault: self._window.show_trouble(str(fault)), priority=-1)

        self._daily = QTimer(self._window)
        self._daily.setInterval(_BACKUP_LOOK_MS)
        self._daily.timeout.connect(start)
        self._daily.start()
        start()

    def _load_pages(self) -> None:
        """Load what the other pages and the writer need, off the window's thread and before somebody asks for it."""
        workbench, workplace = self.workbench, self._window.workplace

        def work(ticket: Ticket) -> None:
            for name in (_SET_PAGE, *_PAGES_MADE_LATER.values(), *USED_BY_PAGES):
                if ticket.should_stop():
                    return
                import_module(name)
            ready_stations()  # the start view lists them
            if workbench is not None:
                workbench.saving_book()
                if workplace is not None:  # reads what papers warn of
                    workbench.packing().words(workbench.language, workplace.session.display)

        def make(_: object) -> None:
            leave_out_what_is_there()
            if workplace is not None:
                workplace.make_pages_ahead()

        self._window.jobs.start(_PAGES, work, make, lambda _: leave_out_what_is_there(), priority=-2)

    def _tell_trouble(self) -> None:
        if self._trouble:
            self._window.show_trouble(self._trouble)
        self._trouble = ""

    def _fail(self, fault: Exception) -> None:
        self._window.waiting_label.setText(tr("The book of surveys cannot be opened."))
        again = Offer(tr("Try again"), self.start)
        offers = (Offer(tr("Restore a backup…"), self._restore), again) if isinstance(fault, DamagedStore) else (again,)
        self._window.show_trouble(_told(fault), offers)

    def _restore(self) -> None:
        """Show the backups of a book that cannot be opened; open it where one was put back."""
        from spoutline.gui.dialogs.backups import BackupsDialog

        dialog = BackupsDialog(self._factory().keeping(), parent=self._window)
        dialog.exec()
        if dialog.restored is not None:
            self.start()


def _told(fault: Exception) -> str:
    """Return why the book cannot be opened, in the language of the window where that is known."""
    if not isinstance(fault, NewerStore):
        return str(fault)
    words = tr(
        "{place} was written by a newer version of Spoutline ({written_by}; form {form}). This is Spoutline {program}, "
        "which knows forms up to {known_form}; nothing was changed. Use the newer program, or restore a backup that "
        "was made before."
    )
    return words.format(
        place=fault.place,
        written_by=fault.written_by or tr("not noted which"),
        form=fault.form,
        program=fault.program,
        known_form=fault.known_form,
    )


def _make_ready(workbench: Workbench, system: UnitSystem, currency: str) -> None:
    """Load what the first view is made from, and the words that tell a plan, while the window goes on answering.

    On the window's thread the same would keep it from its loop of events for half a second.
    """
    import spoutline.bootstrap.agreements
    import spoutline.bootstrap.printing
    import spoutline.documents.drawing.flow_chart
    import spoutline.documents.drawing.position
    import spoutline.gui.session
    import spoutline.gui.window.save_display
    import spoutline.gui.window.verbs
    import spoutline.gui.window.workplace  # noqa: F401
    from spoutline.units.display import Display

    workbench.story(Display(system)).money(0, currency)  # reads the phrases, and how amounts are written
