"""The main window: menu, notices, status line; the workplace in the middle once a survey is open."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QMetaMethod, QMimeData, QSize, Qt, Signal
from PySide6.QtGui import QAction, QActionGroup, QCloseEvent, QDragEnterEvent, QDropEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QLabel, QMainWindow, QMenu, QProgressBar, QVBoxLayout, QWidget

from spoutline.gui.actions import ACTIONS, ActionId, ActionRecord, MenuId, action_record
from spoutline.gui.escaping import mnemonic_safe
from spoutline.gui.jobs import Jobs
from spoutline.gui.languages import LANGUAGE_NAMES
from spoutline.gui.position_links import named_in
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.foot_line import FootLine
from spoutline.gui.widgets.icons import icon
from spoutline.gui.widgets.notice_bar import NoticeBar, Offer
from spoutline.gui.widgets.reading_order import next_in_order
from spoutline.gui.widgets.theme import ThemeChoice, theme_words
from spoutline.gui.window.memory import LastView, WindowMemory
from spoutline.gui.wording import told, tr
from spoutline.model.language import Language

if TYPE_CHECKING:
    from collections.abc import Callable

    from spoutline.gui.session import Session
    from spoutline.gui.window.save_display import SaveDisplay
    from spoutline.gui.window.workplace import Workplace

_NEEDS_SURVEY = frozenset(ActionId) - {ActionId.QUIT, ActionId.KEYS, ActionId.ABOUT}
_ICONS = {
    ActionId.UNDO: "undo",
    ActionId.REDO: "redo",
    ActionId.ADD_POSITION: "add",
    ActionId.DUPLICATE_POSITION: "duplicate",
    ActionId.RENAME_POSITION: "rename",
    ActionId.REMOVE_POSITION: "remove",
    ActionId.COPY_ANSWERS: "copy_to",
    ActionId.BILL: "bill",
    ActionId.SITE: "site",
    ActionId.PROFILES: "rules",
    ActionId.PART_QUESTION: "search",
    ActionId.SURVEYS: "book",
    ActionId.ENLARGE: "enlarge",
    ActionId.REDUCE: "reduce",
    ActionId.FIT_DRAWING: "whole",
}


_MOST_WAYS = 3  # buttons of a notice that lead to positions
_WANTED_SIZE = QSize(1440, 880)
_FRAME = QSize(12, 44)  # what the desktop's title bar and borders take, so that the window never opens past the screen
TABLE_ENDINGS: Final = (".csv", ".tsv", ".txt", ".xlsx")  # of tables of positions; any other file is read as a survey


class MainWindow(QMainWindow):
    """Shown at once with a line that the book is being opened; ``attach`` puts the workplace in.

    Signals
    -------
    file_dropped(str)
        A file was dropped on the window; its path.
    language_wanted(str)
        Another language was chosen; its tag.
    theme_wanted(str)
        Other colours were chosen.
    """

    file_dropped = Signal(str)
    language_wanted = Signal(str)
    theme_wanted = Signal(str)

    def __init__(
        self,
        language: Language = Language.ENGLISH,
        memory: WindowMemory | None = None,
        theme: ThemeChoice = ThemeChoice.DESKTOP,
    ) -> None:
        super().__init__()
        self.language, self.theme = language, theme
        self.memory = memory if memory is not None else WindowMemory(parent=self)
        self.setWindowTitle("Spoutline")
        self.setWindowIcon(icon("spoutline"))
        if not self.memory.give_window_back(self):
            self.resize(_WANTED_SIZE.boundedTo(self.screen().availableSize() - _FRAME))
        self.jobs = Jobs(self)
        self.workplace: Workplace | None = None
        self.saving: SaveDisplay | None = None
        self._start: QWidget | None = None
        self.help_opener: Callable[[str, QWidget], None] | None = None
        self.actions_by_id: dict[ActionId, QAction] = {}
        self._build_menu()
        self._middle = QWidget(self)
        self.foot_line = FootLine(tr("Advice only: local codes and the authority having jurisdiction decide."), self)
        self.notices = NoticeBar(self._middle, self.foot_line)
        self._column = QVBoxLayout(self._middle)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(4)
        self.waiting_label = QLabel(tr("Opening the book of surveys…"), self._middle)
        self.waiting_label.setObjectName("pageTitle")
        self.waiting_label.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._column.addWidget(self.waiting_label, 1)
        self.setCentralWidget(self._middle)
        self._build_status()

    def _build_menu(self) -> None:
        menus = {menu: self.menuBar().addMenu(tr(menu.value)) for menu in MenuId}
        units = QActionGroup(self)
        for record in ACTIONS:
            if record.starts_group:
                menus[record.menu].addSeparator()
            action = self._action_of(record, menus[record.menu])
            action.setObjectName(record.id.value)
            action.setStatusTip(tr(record.hint))
            action.setCheckable(record.checkable)
            if record.keys:
                action.setShortcuts([QKeySequence(keys) for keys in (record.keys, *record.more_keys)])
            if record.id in _ICONS:
                action.setIcon(icon(_ICONS[record.id]))
            if record.checkable:
                units.addAction(action)
            action.setEnabled(record.id not in _NEEDS_SURVEY)
            if action.menu() is None:
                menus[record.menu].addAction(action)
            self.actions_by_id[record.id] = action

        self._build_themes(menus[MenuId.SHOW])
        self._build_languages(menus[MenuId.SHOW])

    def _action_of(self, record: ActionRecord, menu: QMenu) -> QAction:
        if record.id is not ActionId.RECENT:
            return QAction(tr(record.title), self)
        self.recent_menu = menu.addMenu(tr(record.title))
        self.recent_menu.aboutToShow.connect(self._show_recent)
        return self.recent_menu.menuAction()

    def _show_recent(self) -> None:
        self.recent_menu.clear()
        for path in self.memory.files:
            action = self.recent_menu.addAction(mnemonic_safe(path.name))
            action.setStatusTip(str(path))
            action.triggered.connect(partial(self.file_dropped.emit, str(path)))
        if not self.memory.files:
            self.recent_menu.addAction(tr("No file yet")).setEnabled(False)

    def _build_themes(self, menu: QMenu) -> None:
        menu.addSeparator()
        self.theme_menu = menu.addMenu(tr("&Theme"))
        group = QActionGroup(self)
        for choice in ThemeChoice:
            action = QAction(theme_words(choice), self)
            action.setObjectName(f"theme_{choice}")
            action.setCheckable(True)
            action.setChecked(choice is self.theme)
            action.triggered.connect(partial(self.theme_wanted.emit, choice.value))
            group.addAction(action)
            self.theme_menu.addAction(action)

    def show_theme(self, choice: ThemeChoice) -> None:
        """Mark the colours in use."""
        self.theme = choice
        for action in self.theme_menu.actions():
            action.setChecked(action.objectName() == f"theme_{choice}")

    def _build_languages(self, menu: QMenu) -> None:
        self.language_menu = menu.addMenu(tr("La&nguage"))
        group = QActionGroup(self)
        for language, name in LANGUAGE_NAMES.items():
            action = QAction(name, self)
            action.setObjectName(f"language_{language}")
            action.setCheckable(True)
            action.setChecked(language is self.language)
            action.triggered.connect(partial(self.language_wanted.emit, language.value))
            group.addAction(action)
            self.language_menu.addAction(action)

    def _build_status(self) -> None:
        self.save_label = QLabel(self)
        self.units_label = QLabel(self)
        self.busy_bar = QProgressBar(self)
        self.busy_bar.setRange(0, 0)
        self.busy_bar.setFixedWidth(110)
        self.busy_bar.setTextVisible(False)
        self.busy_bar.setAccessibleName(tr("Work in hand"))
        self.busy_bar.hide()
        bar = self.statusBar()
        bar.addWidget(self.foot_line, 1)
        for widget in (self.busy_bar, self.units_label, self.save_label):
            bar.addPermanentWidget(widget)
        self.jobs.busy_changed.connect(self.busy_bar.setVisible)

    def show_start(self, choice: QWidget) -> None:
        """Show the choice of how to begin where the workplace will stand."""
        self.waiting_label.hide()
        self._put_away_start()
        self._start = choice
        self._column.addWidget(choice, 1)

    def _put_away_start(self) -> None:
        if self._start is not None:
            self._start.hide()
            self._start.deleteLater()
            self._start = None

    def attach(self, session: Session) -> Workplace:
        """Put the workplace over ``session`` into the window."""
        from spoutline.gui.window.save_display import SaveDisplay
        from spoutline.gui.window.workplace import Workplace

        self.waiting_label.hide()
        self._put_away_start()
        workplace = Workplace(session, self.jobs, self.notify, self._middle)
        self.workplace = workplace
        workplace.page_changed.connect(self.foot_line.clear_told)
        self._column.addWidget(workplace, 1)
        for name, splitter in workplace.splitters.items():
            self.memory.give_splitter_back(name, splitter)
        for action in self.actions_by_id.values():
            action.setEnabled(True)
        self._follow_undo(session)
        self.saving = SaveDisplay(session, self.save_label, self.notices, self)
        self.saving.written.connect(lambda path: self.memory.add_file(Path(path)))
        self.setAcceptDrops(True)
        workplace.fetch_choices()
        return workplace

    def notify(self, text: str, tone: Tone = Tone.NOTE, offers: tuple[Offer, ...] = ()) -> None:
        """Show a notice above the page; it leads to the positions that it names."""
        self.notices.notify(text, tone=tone, offers=(*offers, *self._ways_to_positions(text)))

    def show_trouble(self, text: str, offers: tuple[Offer, ...] = ()) -> None:
        """Show what went wrong above the page; the notice leads to the positions that it names."""
        self.notify(text, Tone.BAD, offers)

    def turn_to_position(self, label: str) -> None:
        """Bring a position into view."""
        if self.workplace is not None:
            self.workplace.turn_to_position(label)

    def _ways_to_positions(self, text: str) -> tuple[Offer, ...]:
        if self.workplace is None:
            return ()
        labels = (one.label for one in self.workplace.session.survey.positions)
        words = tr("Show {0}")
        return tuple(
            Offer(mnemonic_safe(words.format(label)), partial(self.turn_to_position, label))
            for label in named_in(told(text), labels)[:_MOST_WAYS]
        )

    def _follow_undo(self, session: Session) -> None:
        """Let the menu say what undo and redo would do."""
        stack = session.undo_stack
        undo, redo = self.actions_by_id[ActionId.UNDO], self.actions_by_id[ActionId.REDO]
        undo.setEnabled(stack.canUndo())
        redo.setEnabled(stack.canRedo())
        stack.canUndoChanged.connect(undo.setEnabled)
        stack.canRedoChanged.connect(redo.setEnabled)
        stack.undoTextChanged.connect(self._show_undo_text)
        stack.redoTextChanged.connect(self._show_redo_text)

    def _show_undo_text(self, text: str) -> None:
        self._show_command_text(ActionId.UNDO, text)

    def _show_redo_text(self, text: str) -> None:
        self._show_command_text(ActionId.REDO, text)

    def _show_command_text(self, action_id: ActionId, text: str) -> None:
        words = tr(action_record(action_id).title)
        self.actions_by_id[action_id].setText(f"{words}: {mnemonic_safe(text)}" if text else words)

    def focusNextPrevChild(self, forward: bool) -> bool:
        """Qt: let Tab go through what is in view in the order of reading."""
        to = next_in_order(self.centralWidget(), QApplication.focusWidget(), forward=forward)
        if to is None:
            return super().focusNextPrevChild(forward)
        reason = Qt.FocusReason.TabFocusReason if forward else Qt.FocusReason.BacktabFocusReason
        to.setFocus(reason)
        return True

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Qt: take a single file of this machine."""
        if _dropped_file(event.mimeData()) and self.isSignalConnected(QMetaMethod.fromSignal(self.file_dropped)):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Qt: hand the file on."""
        path = _dropped_file(event.mimeData())
        if path:
            event.acceptProposedAction()
            self.file_dropped.emit(path)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Qt: end all work before the window goes; it stays where something would be lost and the person says so."""
        if self.saving is not None and not self.saving.may_leave(is_closing=True):
            event.ignore()
            return
        self._keep_view()
        if self.saving is not None and self.workplace is not None:
            self.saving.stop()
            self.workplace.session.close()
        self.jobs.close()
        super().closeEvent(event)

    def open_help(self, topic: str, over: QWidget) -> None:
        """Open a page of the manual over a window, once there is a book to read the rules of."""
        if self.help_opener is not None:
            self.help_opener(topic, over)

    def _keep_view(self) -> None:
        """Remember size, splitters and what is in view for the next start."""
        self.memory.keep_window(self)
        workplace = self.workplace
        if workplace is None:
            return
        for name, splitter in workplace.splitters.items():
            self.memory.keep_splitter(name, splitter)
        session = workplace.session
        view = LastView(survey_id=session.stored.id, label=session.label, place=workplace.place, step=workplace.step)
        self.memory.keep_view(view)


def _dropped_file(data: QMimeData) -> str:
    """Return the path of the one file in ``data``; empty where it holds none, several, or one of another machine."""
    urls = data.urls()
    return urls[0].toLocalFile() if len(urls) == 1 else ""
