"""Watches the window's thread: how long it does not answer, and what it does meanwhile."""

from __future__ import annotations

import sys
import threading
import time
from collections import Counter
from dataclasses import dataclass, field
from types import FrameType, TracebackType

from PySide6.QtCore import QCoreApplication, QEvent, QObject

LEAST_S = 0.03  # a block longer than two frames of the screen is felt
_ASKED_EVERY_S = 0.005
_CALLS_NAMED = 6
_SEEN_NAMED = 3
_ASKED = QEvent.Type(QEvent.registerEventType())


@dataclass(frozen=True, slots=True)
class Block:
    """A question to the window's thread waited for so long.

    ``work_s`` is what the thread itself worked since it answered the question before, ``process_s`` what the program
    worked in all its threads while the question waited: where that is less than ``seconds``, the machine was busy with
    something else. ``where`` is what was seen to run most often, the innermost call of the program first.
    """

    seconds: float
    work_s: float
    process_s: float
    where: str


@dataclass
class BlockDetector:
    """Finds the times in which the window's thread does not answer for ``least_s`` or longer.

    A second thread posts an event, waits until it is received, and posts the next one a little later. While one waits
    too long it looks at what the window's thread is doing, so that a block can be named.
    """

    least_s: float = LEAST_S
    blocks: list[Block] = field(default_factory=list)

    def __enter__(self) -> BlockDetector:
        self._thread, self._over = threading.get_ident(), threading.Event()
        self._receiver = _Receiver()
        self._watcher = threading.Thread(target=self._watch, daemon=True)
        self._watcher.start()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, fault: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._over.set()
        self._receiver.answered.set()
        self._watcher.join()

    @property
    def longest_s(self) -> float:
        """The longest block found; 0 where there was none."""
        return max((block.seconds for block in self.blocks), default=0.0)

    def _watch(self) -> None:
        receiver = self._receiver
        while not self._over.wait(_ASKED_EVERY_S):
            receiver.answered.clear()
            asked, worked, seen = time.perf_counter(), time.process_time(), Counter[str]()
            QCoreApplication.postEvent(receiver, QEvent(_ASKED))
            if not receiver.answered.wait(self.least_s * 0.4):
                seen[_told(sys._current_frames().get(self._thread))] += 1
                while not receiver.answered.wait(_ASKED_EVERY_S) and not self._over.is_set():
                    # at the end nobody answers any more: the window's thread waits for this one
                    seen[_told(sys._current_frames().get(self._thread))] += 1
            spent, worked = receiver.answered_at - asked, receiver.process_at - worked
            if spent >= self.least_s and not self._over.is_set():
                self.blocks.append(Block(spent, receiver.worked_s, worked, _named(seen)))


class _Receiver(QObject):
    """Lives on the window's thread and says when an event has reached it."""

    def __init__(self) -> None:
        super().__init__()
        self.answered = threading.Event()
        self.worked_s = self.answered_at = self.process_at = 0.0
        self._before = time.thread_time()

    def event(self, event: QEvent) -> bool:
        """Qt: an event has come."""
        if event.type() != _ASKED:
            return super().event(event)
        now = time.thread_time()
        self.worked_s, self._before = now - self._before, now
        self.answered_at, self.process_at = time.perf_counter(), time.process_time()
        self.answered.set()
        return True


def _named(seen: Counter[str]) -> str:
    """Return what was seen most often, with the share of the looks at which it was."""
    whole = seen.total()
    return "; ".join(f"{times * 100 // whole} % {told}" for told, times in seen.most_common(_SEEN_NAMED))


def _told(frame: FrameType | None) -> str:
    """Return the innermost calls of the program that a frame stands in, innermost first."""
    calls: list[str] = []
    while frame is not None and len(calls) < _CALLS_NAMED:
        if "spoutline" in frame.f_code.co_filename:
            calls.append(f"{frame.f_globals.get('__name__', '')}.{frame.f_code.co_name}")
        frame = frame.f_back
    return " < ".join(calls)
