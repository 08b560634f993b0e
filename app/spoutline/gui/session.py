"""The survey in hand, its undo stack and what the window looks at: the only mutable state of the window."""

from __future__ import annotations

import threading
from collections.abc import Callable
from contextlib import suppress
from enum import Enum, Flag, auto
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QEventLoop, QObject, QTimer, Signal, Slot

from spoutline.book.records import SettingName, StaleSurvey, StoredSurvey
from spoutline.book.save_queue import SaveOutcome, SaveQueue, SaveReport
from spoutline.gui.edit_stack import EditStack
from spoutline.gui.waiting import wait_for
from spoutline.model.answered import same_answers
from spoutline.model.faults import StoreFault
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Position, Survey
from spoutline.planning.refit.survey_merge import MergeConflict, merged
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


_OWN_COPY = "(own copy)"
_MOST_EDITS = 1_000  # that can be undone: more than a day's work, and bounded in a window that stays open for weeks
_NAME_ROOM = 60 - len(_OWN_COPY) - 1  # a site's name has at most 60 characters


class Changed(Flag):
    """What a view has to look at again."""

    SURVEY = auto()
    FOCUS = auto()
    UNITS = auto()
    PART = auto()
    ALL = SURVEY | FOCUS | UNITS


class SaveState(Enum):
    """Whether the book holds what the window shows."""

    SAVED = auto()
    NEWER = auto()  # all of one's own is in the book, and somebody else's newer revision too
    SAVING = auto()
    WAITING = auto()  # the book does not answer; it is tried again without being asked
    FAILED = auto()
    READ_ONLY = auto()
    STALE = auto()
    REMOVED = auto()

    @property
    def is_saved(self) -> bool:
        """Whether nothing in the window would be lost with it."""
        return self in (SaveState.SAVED, SaveState.NEWER)


_STATES = {
    SaveOutcome.SAVED: SaveState.SAVED,
    SaveOutcome.WAITING: SaveState.WAITING,
    SaveOutcome.FAILED: SaveState.FAILED,
    SaveOutcome.READ_ONLY: SaveState.READ_ONLY,
    SaveOutcome.STALE: SaveState.STALE,
    SaveOutcome.REMOVED: SaveState.REMOVED,
    SaveOutcome.NEWER: SaveState.NEWER,
}
_RETRIED = (SaveState.FAILED, SaveState.READ_ONLY)


class _Post(QObject):
    """Carries reports from the writer's thread to the window's (queued by Qt because the threads differ)."""

    reported = Signal(object)


class _Reports:
    """What the writer's thread tells a session; the post is not deleted while it does.

    It is no object of Qt, so that it outlives those: nothing of one that is being deleted could be called.
    """

    def __init__(self, session: QObject) -> None:
        self.post = _Post(session)  # the session's, so that the writer's thread never deletes it
        self._lock = threading.Lock()
        self._is_gone = False
        session.destroyed.connect(partial(_Reports._end, self))  # held by the session: a method would be so weakly

    def tell(self, report: SaveReport) -> None:
        """Hand a report on, unless the session is gone and nobody waits for it."""
        with self._lock:
            if not self._is_gone:
                with suppress(RuntimeError):  # where a program that ends deletes it without a word
                    self.post.reported.emit(report)

    def _end(self, _session: QObject | None = None) -> None:
        with self._lock:
            self._is_gone = True


class Session(QObject):
    """One open survey.

    Every edit is handed to the queue of saves before the call returns; ``save_state`` says whether the book has it on
    disk. Where saving fails the edit stays in the window; the next edit or ``save_again`` tries once more.

    Signals
    -------
    changed(Changed)
        The survey, the position looked at or the unit system is another one.
    save_state_changed(SaveState, str)
        What is known of the last save, with the reason in plain words.
    not_remembered(str)
        A choice could not be kept for the next start, with the reason.
    """

    changed = Signal(object)
    save_state_changed = Signal(object, str)
    not_remembered = Signal(str)

    def __init__(
        self, workbench: Workbench, stored: StoredSurvey, system: UnitSystem, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.workbench = workbench
        self.undo_stack = EditStack(self)
        self.undo_stack.setUndoLimit(_MOST_EDITS)
        self._stored = stored
        self._survey = stored.survey
        self._label = stored.survey.positions[0].label
        self._display = Display(system)
        self._save_state = SaveState.SAVED
        self._reason = ""
        self._newer: StoredSurvey | None = None
        self._part: PartRef | None = None
        self.may_leave: Callable[[], bool] = lambda: True
        reports = _Reports(self)
        reports.post.reported.connect(self._on_report)
        self._queue = SaveQueue(workbench.saving_book, reports.tell)
        self._turn = self._queue.follow(stored)
        self._number = 0

    @property
    def survey(self) -> Survey:
        """The survey as the window shows it."""
        return self._survey

    @property
    def stored(self) -> StoredSurvey:
        """The survey as the book was last known to hold it."""
        return self._stored

    @property
    def label(self) -> str:
        """Label of the position looked at."""
        return self._label

    @property
    def position(self) -> Position:
        """The position looked at."""
        position = self._survey.position(self._label)
        return position if position is not None else self._survey.positions[0]

    @property
    def display(self) -> Display:
        """The unit system in which figures are shown and read."""
        return self._display

    @property
    def save_state(self) -> SaveState:
        """Whether the book holds what the window shows."""
        return self._save_state

    @property
    def save_reason(self) -> str:
        """Why the book does not hold what the window shows; empty where it does."""
        return self._reason

    @property
    def part(self) -> PartRef | None:
        """The part looked at; None for none."""
        return self._part

    def look_at_part(self, part: PartRef) -> None:
        """Turn to another part, in the drawing and in every list at once."""
        if part != self._part:
            self._part = part
            self.changed.emit(Changed.PART)

    def look_at(self, label: str) -> None:
        """Turn to another position of the survey; an unknown label changes nothing."""
        if label != self._label and self._survey.position(label) is not None:
            self._label = label
            self.changed.emit(Changed.FOCUS)

    def use_units(self, system: UnitSystem) -> None:
        """Show and read figures in another unit system."""
        if system is not self._display.system:
            self._display = Display(system)
            self.changed.emit(Changed.UNITS)

    def replace_survey(self, survey: Survey, label: str) -> None:
        """Set the survey; for edit commands only. The book is told before any view is."""
        self._survey = survey
        focus = survey.position(label) or survey.position(self._label) or survey.positions[0]
        what = Changed.SURVEY if focus.label == self._label else Changed.SURVEY | Changed.FOCUS
        self._label = focus.label
        self._save()
        self.changed.emit(what)

    def turn_to(self, stored: StoredSurvey) -> bool:
        """Turn to another survey unless something of this one would be lost and the person would rather stay."""
        if not self.may_leave():
            return False
        self.open(stored)
        return True

    def open(self, stored: StoredSurvey) -> None:
        """Turn to another survey of the book, whatever is unsaved of this one. Its undo stack is empty."""
        self._stored, self._survey, self._newer = stored, stored.survey, None
        self._turn = self._queue.follow(stored)
        self._label = stored.survey.positions[0].label
        self.undo_stack.clear()
        self._announce(SaveState.SAVED, "")
        self.changed.emit(Changed.ALL)

    def save_again(self) -> None:
        """Try the failed save once more."""
        self._save()

    def put_back(self) -> None:
        """Put the survey, which somebody took off the list of the book, back on it as the window shows it."""
        self._newer = None
        self._number = self._queue.put(self._survey, puts_back=True)
        self._announce(SaveState.SAVING, "")

    def keep_mine(self) -> None:
        """Save over the newer revision that somebody else wrote. The book keeps theirs among its past revisions."""
        if self._newer is not None:
            self._go_on_from(self._newer)
            self._save()

    def _go_on_from(self, stored: StoredSurvey) -> None:
        self._stored, self._newer = stored, None
        self._turn = self._queue.follow(stored)

    def take_theirs(self) -> None:
        """Turn to the newer revision that somebody else wrote."""
        if self._newer is not None:
            self.open(self._newer)

    def merge_both(self) -> tuple[MergeConflict, ...] | None:
        """Bring both edits together and save; return where mine stands against theirs, None where nothing was saved.

        Undo begins anew: what was done before would take their work away.
        """
        newer = self._newer
        if newer is None:
            return ()
        found = merged(self._stored.survey, self._survey, newer.survey)
        if found.survey is None:
            return None
        self._go_on_from(newer)
        self._survey = found.survey
        if found.survey.position(self._label) is None:
            self._label = found.survey.positions[0].label
        self.undo_stack.clear()
        self._save()
        self.changed.emit(Changed.ALL)
        return found.conflicts

    def keep_both(self) -> None:
        """Put my survey into the book as one of its own and turn to it; theirs stays as it is."""
        if self._newer is None:
            return
        name = f"{self._survey.site.name[:_NAME_ROOM]} {_OWN_COPY}"
        site = self._survey.site.model_copy(update={"name": name})
        own = self._survey.model_copy(update={"site": site})
        try:
            self.open(wait_for(lambda: self.workbench.saving_book().create(own)))
        except StoreFault as fault:
            self._announce(SaveState.STALE, str(fault))

    def remember(self, name: SettingName, value: str) -> None:
        """Keep a choice for the next start."""
        self._queue.remember(name, value)

    def look(self) -> None:
        """Ask whether the book still holds the survey; what is found comes with ``save_state_changed``."""
        if self._save_state not in (SaveState.SAVING, SaveState.WAITING):
            self._queue.look()

    def settle(self, longest_ms: int = 1_000) -> bool:
        """Let a save that is under way come to its end, the window painting meanwhile; say whether all is saved."""
        if self._save_state is SaveState.SAVING:
            loop = QEventLoop()
            QTimer.singleShot(longest_ms, loop, loop.quit)

            def leave(state: SaveState, _: str) -> None:
                if state is not SaveState.SAVING:
                    loop.quit()

            self.save_state_changed.connect(leave)
            loop.exec(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
            self.save_state_changed.disconnect(leave)
        return self._save_state.is_saved

    def close(self) -> None:
        """Save nothing more."""
        self._queue.close(0.2)

    def _save(self) -> None:
        if self._newer is not None and self._save_state is not SaveState.NEWER:
            self._announce(SaveState.STALE, str(StaleSurvey(self._newer)))
            return
        self._newer = None
        self._number = self._queue.put(self._survey)
        self._announce(SaveState.SAVING, "")

    @Slot(object)
    def _on_report(self, report: SaveReport) -> None:
        if report.outcome is SaveOutcome.NOT_REMEMBERED:
            self.not_remembered.emit(report.reason)
            return
        if report.turn != self._turn:
            return
        if report.outcome is SaveOutcome.SAVED and report.stored is not None:
            self._stored = report.stored
        if report.number != self._number:
            return  # a newer state is on its way and will tell by itself
        if report.outcome is SaveOutcome.SOUND:
            self._on_sound()
            return
        if report.outcome in (SaveOutcome.STALE, SaveOutcome.NEWER):
            self._newer = report.stored
        state = _STATES[report.outcome]
        if state is SaveState.NEWER and not same_answers(self._survey, self._stored.survey):
            state = SaveState.STALE
        self._announce(state, report.reason)

    def _on_sound(self) -> None:
        """Try again what could not be saved: the book is there and holds the survey as last saved."""
        if self._save_state in _RETRIED and not same_answers(self._survey, self._stored.survey):
            self._save()
        elif same_answers(self._survey, self._stored.survey):
            self._newer = None
            self._announce(SaveState.SAVED, "")

    def _announce(self, state: SaveState, reason: str) -> None:
        if (state, reason) != (self._save_state, self._reason):
            self._save_state, self._reason = state, reason
            self.save_state_changed.emit(state, reason)
