"""Work off the window's thread: pure function in, value out; late and cancelled answers are dropped."""

from __future__ import annotations

import threading
from collections.abc import Callable
from enum import StrEnum
from typing import Any

from PySide6.QtCore import QObject, QRunnable, QThreadPool, QTimer, Signal, Slot

from spoutline.frozen import frozen
from spoutline.gui.wording import tr
from spoutline.model.faults import Cancelled, InputFault, StoreFault, Undecided
from spoutline.whole_files.environment import fault_of_place

URGENT = 10  # priority of what a person looks at and waits for
_HELD_MS = 500  # the longest that other work waits for it
_BUILDING_MS = 3_000  # the longest that all work waits for a view that is being built
_AFTER_MS = 20  # its answer is painted first
_REST_S = 0.04  # about what a window takes to draw a new set

Work = Callable[["Ticket"], Any]
Deliver = Callable[[Any], None]
Fail = Callable[[Exception], None]


class ProgramFault(Exception):
    """A job met a defect of ours: what a person reads in its place; the defect itself goes to ``Jobs.broke``."""


class JobKind(StrEnum):
    """Kinds of work. A new job of a kind and key takes the place of the one before."""

    OPEN = "open"
    BACKUP = "backup"
    PLAN = "plan"
    SITE_PLAN = "site_plan"
    PART_SEARCH = "part_search"
    WHY_NOT = "why_not"
    WHY = "why"
    MEASURE = "measure"
    WHAT_IF = "what_if"
    WEIGH = "weigh"
    CHART = "chart"
    PAPER = "paper"
    FILE = "file"
    PAGE_IMAGE = "page_image"
    CHOICES = "choices"
    SUBSTITUTES = "substitutes"
    QUOTATION = "quotation"
    SETS = "sets"
    CATALOGUE = "catalogue"
    STANDING = "standing"
    COMMAND_SEARCH = "command_search"
    ROW_TEXTS = "row_texts"


@frozen
class JobKey:
    """What makes two jobs the same question: their kind and, for work on one position, its label."""

    kind: JobKind
    subject: str = ""


class Ticket:
    """A job in hand. The work asks it whether to go on; it also serves the use cases as their progress listener."""

    def __init__(self, key: JobKey, post: _Post) -> None:
        self.key = key
        self._post = post
        self._stopped = threading.Event()

    def cancel(self) -> None:
        """Ask the work to stop; its answer is dropped whether or not it does."""
        self._stopped.set()

    def should_stop(self) -> bool:
        """Return True once the job was cancelled or replaced."""
        return self._stopped.is_set()

    def rest(self) -> None:
        """Let the window draw what it was given before the work goes on: both share one interpreter."""
        self._stopped.wait(_REST_S)

    def on_progress(self, done: int, total: int) -> None:
        """Tell the window how far the work is."""
        if not self._stopped.is_set():
            self._post.progressed.emit(self.key, done, total)

    def hand_over(self, value: object) -> None:
        """Give the window a part of the answer while the work goes on."""
        if not self._stopped.is_set():
            self._post.handed_over.emit(self, value)


class _Post(QObject):
    """Carries answers from the worker's thread to the window's (queued by Qt because the threads differ)."""

    finished = Signal(object, object, object)
    progressed = Signal(object, int, int)
    handed_over = Signal(object, object)


class _Run(QRunnable):
    def __init__(self, ticket: Ticket, work: Work, post: _Post) -> None:
        super().__init__()
        self._ticket, self._post = ticket, post
        self._work: Work | None = work

    def run(self) -> None:
        value: Any = None
        fault: Exception | None = None
        try:
            if self._work is not None and not self._ticket.should_stop():
                value = self._work(self._ticket)
        except Exception as error:  # reported in one place, on the window's thread
            fault = error
        except BaseException as error:  # such as SystemExit: on its way out of here it would end the whole program
            fault = RuntimeError(f"a job was left by {type(error).__name__}")
        self._work = None  # what it holds of the window goes with ``_Waiting``, on the window's thread
        try:
            self._post.finished.emit(self._ticket, value, fault)
        except RuntimeError:  # the window is gone and nobody waits for the answer
            return


@frozen
class _Waiting:
    work: Work
    deliver: Deliver
    fail: Fail
    partly: Deliver | None


class Jobs(QObject):
    """Runs work on a thread pool and delivers each answer once, on the window's thread.

    Python runs one thread at a time, so that work which nobody waits for would slow down what somebody waits for:
    while an urgent job is in hand, what starts with no priority is held back for a moment. An urgent job never waits
    for a thread behind work of no hurry.

    Signals
    -------
    busy_changed(bool)
        Work has begun, or the last job in hand is finished.
    progressed(JobKey, int, int)
        A job finished that many units of so many.
    delivered(JobKey)
        The value of a job was handed on.
    broke(object)
        A job met an exception that is neither bad input nor a failing store; the exception, to be written down.
    """

    broke = Signal(object)
    delivered = Signal(object)
    busy_changed = Signal(bool)
    progressed = Signal(object, int, int)

    def __init__(self, parent: QObject | None = None, *, threads: int = 2) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(threads)
        self._spare = QThreadPool(self)
        self._spare.setMaxThreadCount(1)
        self._post = _Post()
        self._post.finished.connect(self._finish)
        self._post.progressed.connect(self._progress)
        self._post.handed_over.connect(self._hand_over)
        self._current: dict[JobKey, Ticket] = {}
        self._waiting: dict[Ticket, _Waiting] = {}
        self._urgent: set[Ticket] = set()
        self._held: list[tuple[_Run, int]] = []
        self._is_building = False
        self._release = QTimer(self)
        self._release.setSingleShot(True)
        self._release.timeout.connect(self._start_held)
        self._built = QTimer(self)
        self._built.setSingleShot(True)
        self._built.timeout.connect(self.let_go)

    def start(
        self,
        key: JobKey,
        work: Work,
        deliver: Deliver,
        fail: Fail,
        *,
        partly: Deliver | None = None,
        priority: int = 0,
    ) -> Ticket:
        """Run ``work(ticket)`` and hand its value to ``deliver``, or its exception to ``fail``.

        ``partly`` gets, in order and before ``deliver``, what the work hands over on its way.
        ``fail`` gets faults that a person can read: bad input, a failing store, or ``ProgramFault`` for all else.
        A job of the same key that is still in hand is cancelled first: its answer would be late.
        """
        self.cancel(key)
        ticket = Ticket(key, self._post)
        self._current[key] = ticket
        self._waiting[ticket] = _Waiting(work, deliver, fail, partly)
        if len(self._waiting) == 1:
            self.busy_changed.emit(True)
        run = _Run(ticket, work, self._post)
        if priority >= URGENT:
            self._urgent.add(ticket)
        if self._is_building or (self._urgent and priority <= 0):
            self._held.append((run, priority))
            if not self._is_building and not self._release.isActive():
                self._release.start(_HELD_MS)
        else:
            self._begin(run, priority)
        return ticket

    def _begin(self, run: _Run, priority: int) -> None:
        """Give work to a thread; what a person waits for has one to spare where papers of minutes take all others."""
        is_full = self._pool.activeThreadCount() >= self._pool.maxThreadCount()
        pool = self._spare if is_full and priority >= URGENT else self._pool
        pool.start(run, priority)

    def hold(self) -> None:
        """Start nothing more until ``let_go``: whoever builds a view has Python for itself meanwhile.

        Where the building fails, or the view is never shown, work goes on after a while all the same.
        """
        self._is_building = True
        self._built.start(_BUILDING_MS)

    def let_go(self) -> None:
        """Start what was asked for since ``hold``: what is urgent now, the rest after it."""
        self._is_building = False
        self._built.stop()
        held, self._held = self._held, []
        for run, priority in held:
            if priority >= URGENT or not self._urgent:
                self._begin(run, priority)
            else:
                self._held.append((run, priority))
        if self._held and not self._release.isActive():
            self._release.start(_HELD_MS)

    def _start_held(self) -> None:
        """Start what was held back."""
        self._release.stop()
        held, self._held = self._held, []
        for run, priority in held:
            self._begin(run, priority)

    def cancel(self, key: JobKey) -> None:
        """Drop the job of this key, if there is one in hand."""
        ticket = self._current.pop(key, None)
        if ticket is not None:
            ticket.cancel()

    def cancel_all(self) -> None:
        """Drop everything in hand."""
        for key in tuple(self._current):
            self.cancel(key)

    def is_busy(self, kind: JobKind) -> bool:
        """Say whether a wanted job of this kind is in hand."""
        return any(key.kind is kind for key in self._current)

    def is_at_work(self, key: JobKey) -> bool:
        """Say whether the wanted job of this key is in hand."""
        return key in self._current

    def close(self) -> None:
        """Cancel everything and wait for the workers to end, so that no store is closed under them."""
        self.cancel_all()
        self._release.stop()
        self._held.clear()
        for pool in (self._pool, self._spare):
            pool.clear()
            pool.waitForDone()

    @Slot(object, int, int)
    def _progress(self, key: JobKey, done: int, total: int) -> None:
        if key in self._current:
            self.progressed.emit(key, done, total)

    @Slot(object, object)
    def _hand_over(self, ticket: Ticket, value: object) -> None:
        waiting = self._waiting.get(ticket)
        if waiting is not None and waiting.partly is not None and self._is_wanted(ticket):
            waiting.partly(value)

    def _is_wanted(self, ticket: Ticket) -> bool:
        return self._current.get(ticket.key) is ticket and not ticket.should_stop()

    @Slot(object, object, object)
    def _finish(self, ticket: Ticket, value: object, fault: Exception | None) -> None:
        self._urgent.discard(ticket)
        if self._held and not self._urgent:
            self._release.start(_AFTER_MS)
        waiting = self._waiting.pop(ticket)
        wanted = self._is_wanted(ticket)
        if wanted:
            del self._current[ticket.key]
        if not self._waiting:
            self.busy_changed.emit(False)
        if not wanted or isinstance(fault, Cancelled):
            return
        if fault is None:
            waiting.deliver(value)
            self.delivered.emit(ticket.key)
        elif isinstance(fault, InputFault | StoreFault | Undecided):
            waiting.fail(fault)
        elif isinstance(fault, OSError) and (of_place := fault_of_place(fault)) is not None:
            waiting.fail(of_place)
        else:
            waiting.fail(ProgramFault(tr("The program met a fault of its own and did not finish this.")))
            self.broke.emit(fault)
