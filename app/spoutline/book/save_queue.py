"""Saves off the window's thread: one writer, in order, the newest state of the survey first; it tells what is on disk.

A state that a newer one replaces before its turn is left out. A state is told as saved only after the database has it
on disk, so every revision that was shown as saved stays among the revisions of the survey.
"""

from __future__ import annotations

import threading
import time
from collections.abc import Callable
from enum import StrEnum
from typing import TYPE_CHECKING

from spoutline.book.records import RemovedSurvey, SettingName, StaleSurvey, StoredSurvey
from spoutline.frozen import frozen
from spoutline.model.answered import same_answers
from spoutline.model.faults import BusyStore, InputFault, ReadOnlyStore, StoreFault
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.book.book import Book
    from spoutline.model.survey import Survey

_IDLE_S = 1.0  # the thread ends when nothing was asked of it for so long; the next request starts another
_FIRST_PAUSE_S, _LONGEST_PAUSE_S = 0.25, 5.0


class SaveOutcome(StrEnum):
    """What became of a state of the survey, or of a look at the book."""

    SAVED = "saved"  # on disk
    WAITING = "waiting"  # the book does not answer; it is tried again without being asked
    FAILED = "failed"  # tried again with the next state, or when asked
    READ_ONLY = "read_only"  # this person may not write
    STALE = "stale"  # somebody else saved a newer revision; nothing was written
    REMOVED = "removed"  # the survey is not on the list of the book any more; nothing was written
    SOUND = "sound"  # a look found the survey in the book as it was last saved
    NEWER = "newer"  # a look found a newer revision, while nothing of one's own is unsaved
    NOT_REMEMBERED = "not_remembered"  # a setting could not be kept; nothing of a survey


_OUTCOMES = (
    (InputFault, SaveOutcome.REMOVED),  # the book holds no such survey
    (BusyStore, SaveOutcome.WAITING),
    (ReadOnlyStore, SaveOutcome.READ_ONLY),
)


@frozen(kw_only=True)
class SaveReport:
    """One report of the queue.

    ``turn`` counts the surveys followed and ``number`` the states put in, so that a late report is known as one.
    ``stored`` is what the book holds where that is known; ``reason`` is for a person.
    """

    outcome: SaveOutcome
    turn: int
    number: int
    stored: StoredSurvey | None = None
    reason: str = ""


@frozen(kw_only=True)
class _State:
    turn: int
    number: int
    survey: Survey
    puts_back: bool = False


class SaveQueue:
    """Saves the states of one survey at a time. Its methods return at once; reports come from the writer's thread."""

    def __init__(
        self,
        book: Callable[[], Book],
        tell: Callable[[SaveReport], None],
        *,
        pauses: tuple[float, float] = (_FIRST_PAUSE_S, _LONGEST_PAUSE_S),
    ) -> None:
        self._book, self._tell, self._pauses = book, tell, pauses
        self._changed = threading.Condition()
        self._thread: threading.Thread | None = None
        self._closed = False
        self._turn = 0
        self._number = 0
        self._base: StoredSurvey | None = None
        self._waiting: _State | None = None
        self._in_doubt: list[Survey] = []  # handed to a commit of which nobody heard whether it came through
        self._settings: dict[SettingName, str] = {}
        self._look_wanted = False
        self._place: object = None
        self._hurried = False

    def follow(self, stored: StoredSurvey) -> int:
        """Save over ``stored`` from now on and return the turn; states of another base that wait are dropped."""
        with self._changed:
            self._turn += 1
            self._base, self._waiting, self._in_doubt, self._place = stored, None, [], None
            return self._turn

    def put(self, survey: Survey, *, puts_back: bool = False) -> int:
        """Take the newest state of the survey and return its number; it replaces one that still waits.

        With ``puts_back`` a survey that was taken off the list is put on it again.
        """
        with self._changed:
            self._number += 1
            self._waiting = _State(turn=self._turn, number=self._number, survey=survey, puts_back=puts_back)
            self._wake()
            return self._number

    def remember(self, name: SettingName, value: str) -> None:
        """Keep a setting when the book can take it; a newer value of the same name replaces one that still waits."""
        with self._changed:
            self._settings[name] = value
            self._wake()

    def look(self) -> None:
        """Ask whether the book still holds the survey as it was last saved; what is found is reported."""
        with self._changed:
            self._look_wanted = True
            self._wake()

    def close(self, wait_s: float = 0.0) -> None:
        """Take nothing more; wait so long at most for the writer to come to an end of what it does."""
        with self._changed:
            self._closed = True
            self._waiting, self._look_wanted = None, False
            self._settings.clear()
            self._changed.notify_all()
            thread = self._thread
        if thread is not None and wait_s > 0:
            thread.join(wait_s)

    def _wake(self) -> None:
        """Let the writer look at what there is to do; called with the lock held."""
        if self._closed:
            return
        self._hurried = True
        if self._thread is None:
            # a daemon: a server that never answers must not keep a program from ending that nobody waits for
            self._thread = threading.Thread(target=self._work, name="saving", daemon=True)
            self._thread.start()
        self._changed.notify_all()

    # on the writer's thread

    def _work(self) -> None:
        pause, longest = self._pauses
        while True:
            with self._changed:
                if not self._is_wanted() and not self._changed.wait_for(self._is_wanted, _IDLE_S):
                    self._thread = None
                    return
                if self._closed:
                    self._thread = None
                    return
                state, settings = self._waiting, dict(self._settings)
                is_look, self._look_wanted, self._hurried = self._look_wanted, False, False
                turn, base = self._turn, self._base
            passed = self._save(state) if state is not None else True
            if passed:
                passed = self._remember(settings)
            if is_look and state is None and base is not None:
                self._look(turn, base)
            if passed:
                pause = self._pauses[0]
                continue
            self._rest(pause)
            pause = min(pause * 2, longest)

    def _is_wanted(self) -> bool:
        return self._closed or self._look_wanted or self._waiting is not None or bool(self._settings)

    def _rest(self, pause: float) -> None:
        """Wait before the next try; a new request cuts it short, but never to nothing."""
        end = time.monotonic() + pause
        with self._changed:
            self._changed.wait_for(lambda: self._closed or self._hurried, max(0.0, end - time.monotonic()))
        if not self._closed:
            time.sleep(min(pause, self._pauses[0]))

    def _save(self, state: _State) -> bool:
        """Save a state and report; return False where it waits for the book and is to be tried again."""
        with self._changed:
            if state.turn != self._turn or self._base is None:
                self._drop(state)
                return True
            base = self._base
        outcome, stored, reason = self._tried(base, state)
        with self._changed:
            if state.turn == self._turn and outcome is SaveOutcome.SAVED:
                self._base, self._in_doubt = stored, []
            elif state.turn == self._turn and outcome is SaveOutcome.WAITING:
                self._in_doubt.append(state.survey)
        if outcome is not SaveOutcome.WAITING:
            self._drop(state)
        self._tell(SaveReport(outcome=outcome, turn=state.turn, number=state.number, stored=stored, reason=reason))
        return outcome is not SaveOutcome.WAITING

    def _tried(self, base: StoredSurvey, state: _State) -> tuple[SaveOutcome, StoredSurvey | None, str]:
        """Return what became of a state, what the book holds where that is known, and the reason."""
        try:
            return SaveOutcome.SAVED, self._saved(base, state), ""
        except StaleSurvey as stale:
            return SaveOutcome.STALE, stale.stored, str(stale)
        except (InputFault, StoreFault) as fault:
            outcome = next((one for kind, one in _OUTCOMES if isinstance(fault, kind)), SaveOutcome.FAILED)
            return outcome, None, str(fault)
        except Exception as fault:  # a defect of ours must not end the writer without a word
            return SaveOutcome.FAILED, None, Worded("The program met a fault of its own ({reason!r}).", reason=fault)

    def _saved(self, base: StoredSurvey, state: _State) -> StoredSurvey:
        book = self._book()
        if not state.puts_back:
            self._check_place(book, base)
        try:
            return book.put_back(base, state.survey) if state.puts_back else book.save(base, state.survey)
        except StaleSurvey as stale:
            held = stale.stored
            if not any(same_answers(held.survey, one) for one in self._in_doubt):
                raise
            # what was handed over when the connection was lost did come through
            with self._changed:
                if state.turn == self._turn:
                    self._base, self._in_doubt = held, []
            return held if same_answers(held.survey, state.survey) else book.save(held, state.survey)

    def _check_place(self, book: Book, base: StoredSurvey) -> None:
        """Raise ``StaleSurvey`` where another file lies at the path and holds the survey otherwise than it was saved.

        A revision that only happens to have the same number would else be overwritten.
        """
        place = book.place
        if self._place is not None and place != self._place and place is not None:
            held = book.stored(base.id)
            if held != base:
                raise StaleSurvey(held)
        if place is not None:
            self._place = place

    def _look(self, turn: int, base: StoredSurvey) -> None:
        outcome, stored, reason = SaveOutcome.SOUND, base, ""
        try:
            book = self._book()
            self._check_place(book, base)
            if book.current_revision(base.id) != base.revision:
                stored = book.stored(base.id)
                outcome, reason = SaveOutcome.NEWER, str(StaleSurvey(stored))
        except StaleSurvey as stale:
            outcome, stored, reason = SaveOutcome.NEWER, stale.stored, str(stale)
        except RemovedSurvey as fault:
            outcome, reason = SaveOutcome.REMOVED, str(fault)
        except BusyStore:
            return  # what was saved is saved; whether it can be reached the next save will tell
        except (InputFault, StoreFault) as fault:
            outcome, reason = SaveOutcome.FAILED, str(fault)
        with self._changed:
            # a state that came in meanwhile will tell by itself
            if turn != self._turn or self._waiting is not None or self._base is not base:
                return
            number = self._number
        self._tell(SaveReport(outcome=outcome, turn=turn, number=number, stored=stored, reason=reason))

    def _remember(self, settings: dict[SettingName, str]) -> bool:
        for name, value in settings.items():
            try:
                self._book().remember(name, value)
            except BusyStore:
                return False
            except ReadOnlyStore:
                pass  # who only reads has nothing remembered, and is not bothered with it
            except StoreFault as fault:
                self._tell(
                    SaveReport(
                        outcome=SaveOutcome.NOT_REMEMBERED, turn=self._turn, number=self._number, reason=str(fault)
                    )
                )
            with self._changed:
                if self._settings.get(name) == value:
                    del self._settings[name]
        return True

    def _drop(self, state: _State) -> None:
        with self._changed:
            if self._waiting is state:
                self._waiting = None
