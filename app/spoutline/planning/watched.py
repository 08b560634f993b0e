"""Units of work that a listener hears of, one after the other."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import TypeVar

from spoutline.model.faults import Cancelled
from spoutline.planning.protocols import Progress

_T = TypeVar("_T")


def watched(units: Sequence[_T], progress: Progress | None) -> Iterator[_T]:
    """Yield units of work, telling ``progress`` how many are finished; raise ``Cancelled`` where it asks to stop."""
    for done, unit in enumerate(units):
        if progress is not None:
            progress.on_progress(done, len(units))
            if progress.should_stop():
                raise Cancelled
        yield unit
    if progress is not None:
        progress.on_progress(len(units), len(units))


def unless_stopped(units: Iterable[_T], should_stop: Callable[[], bool]) -> Iterator[_T]:
    """Yield units of work; raise ``Cancelled`` before one where ``should_stop`` says so."""
    for unit in units:
        if should_stop():
            raise Cancelled
        yield unit
