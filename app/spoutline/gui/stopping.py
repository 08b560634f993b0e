"""A long step that a person may stop: what is done whole or not at all tells by its end which of them it was."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import TypeVar

from spoutline.gui.jobs import Ticket
from spoutline.model.faults import Cancelled
from spoutline.planning.protocols import Progress

_Value = TypeVar("_Value")


class Stopping:
    """Lets a person stop a step without dropping its answer: it may have come to its end before it heard of it."""

    def __init__(self) -> None:
        self._asked = threading.Event()

    def ask(self) -> None:
        """Ask the step to stop."""
        self._asked.set()

    def watched(self, step: Callable[[Progress], _Value]) -> Callable[[Ticket], _Value | None]:
        """Return the work of a job that does a step; its value is None where the step was stopped."""
        self._asked.clear()

        def work(ticket: Ticket) -> _Value | None:
            try:
                return step(_Watching(ticket, self._asked))
            except Cancelled:
                return None

        return work


class _Watching:
    def __init__(self, ticket: Ticket, asked: threading.Event) -> None:
        self._ticket, self._asked = ticket, asked

    def on_progress(self, done: int, total: int) -> None:
        self._ticket.on_progress(done, total)

    def should_stop(self) -> bool:
        return self._asked.is_set() or self._ticket.should_stop()
