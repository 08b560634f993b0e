"""A window over a station of many unlike positions, gone through from its opening on; prints its blocks as JSON.

``python big_window_run.py DATABASE PROFILES [COUNT]``: with COUNT the station of so many positions is put into the book
and the window closed when its first drawing is there, which is not measured; without it the survey that was open last
is shown, and what a person does is done one thing after the other, each watched by a detector of its own.
"""

from __future__ import annotations

import gc
import json
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import astuple
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication

from bench.unlike_station import unlike_station
from bench.window_clock import BlockDetector
from bench.window_run import DrawingClock, _edit, _is_drawn, _wait

if TYPE_CHECKING:
    from spoutline.gui.window.start import ShownWindow
    from spoutline.gui.window.workplace import Workplace

_PAUSE_S = 1.0
_FIRST_GARBAGE_S = 9.0  # by then the first look for garbage, and what is loaded behind the first view, are over
_STEP_M = 0.01


class Phases:
    """What a person does one after the other, with the blocks of the window's thread meanwhile."""

    def __init__(self) -> None:
        self.blocks: dict[str, list[tuple[object, ...]]] = {}

    @contextmanager
    def watched(self, name: str, after_s: float = _PAUSE_S) -> Iterator[None]:
        """Watch the window's thread while something is done and a while after it."""
        with BlockDetector() as detector:
            yield
            end = time.time() + after_s
            _wait(lambda: time.time() > end)
        self.blocks[name] = [astuple(one) for one in detector.blocks]


def main(database: str, profiles: str, count: int = 0) -> None:
    gc.disable()  # as the program does while its window loads
    from spoutline.gui.plain_imports import leave_sources_unread

    leave_sources_unread()
    from spoutline.bootstrap import Settings, open_workbench
    from spoutline.gui.collection import FIRST_LOOK_MS, WindowCollector
    from spoutline.gui.short_turns import take_short_turns
    from spoutline.gui.window.start import ShownWindow
    from spoutline.gui.window.theme_keeper import ThemeKeeper
    from spoutline.model.language import Language

    take_short_turns()
    app, clock, phases = QApplication(sys.argv[:1]), DrawingClock(), Phases()
    collector = WindowCollector(app, FIRST_LOOK_MS)
    with phases.watched("opening", _FIRST_GARBAGE_S):
        shown = ShownWindow(
            lambda: open_workbench(Settings(database=database, profiles=Path(profiles))),
            unlike_station(count) if count else None,
            Language.ENGLISH,
            ThemeKeeper(app),
        )
        sys.excepthook = sys.__excepthook__  # no dialog is to wait for somebody
        shown.window.installEventFilter(clock)
        _wait(lambda: _is_drawn(shown, clock))
    if not count:
        _go_through(shown, phases)
        print(json.dumps(phases.blocks))
    shown.window.close()
    shown.opening.close()
    collector.stop()


def _go_through(shown: ShownWindow, phases: Phases) -> None:
    workplace = shown.window.workplace
    assert workplace is not None
    for name, step in _steps(shown, workplace):
        with phases.watched(name):
            step()


def _steps(shown: ShownWindow, workplace: Workplace) -> Iterator[tuple[str, Callable[[], object]]]:
    """Yield what is done, each by its name."""
    from spoutline.gui.edits.positions import duplicate_positions
    from spoutline.gui.edits.question import Step
    from spoutline.gui.places import PLACES, Place

    verbs, session = shown.opening.verbs, workplace.session
    labels = [one.label for one in session.survey.positions]
    yield "edit", lambda: _edit(shown, _STEP_M)
    yield "undo", session.undo_stack.undo
    yield "step of the set", lambda: workplace.show_step(Step.SET)
    yield "edit on the set", lambda: _edit(shown, _STEP_M)
    yield "undo on the set", session.undo_stack.undo
    yield "another position", lambda: session.look_at(labels[len(labels) // 2])
    for record in PLACES:
        yield f"{record.place}, first", lambda action=record.action: verbs.do(action)  # type: ignore[misc]
    for record in PLACES:
        yield f"{record.place}, again", lambda action=record.action: verbs.do(action)  # type: ignore[misc]
        if record.place is Place.POSITIONS:
            yield "rows filtered", lambda: workplace.grid_page.filter_edit.setText("e85")
            yield "rows not filtered", lambda: workplace.grid_page.filter_edit.setText("")
            yield "edit among all rows", lambda: _edit(shown, _STEP_M)
            yield "undo among all rows", session.undo_stack.undo
    yield "search offered", verbs.seeking.offered
    more, copies = duplicate_positions(session.survey, frozenset(labels[:1]))
    yield "position added", lambda: workplace.context.edit(more, "Duplicate a position", copies[0])
    yield "undo of the position", session.undo_stack.undo
    stored = session.stored
    other = session.workbench.book().create(unlike_station(3))
    yield "another survey", lambda: verbs.surveys.turn_to(other)
    big = session.workbench.book().stored(stored.id)  # the window reads it off its thread
    yield "back to the big one", lambda: verbs.surveys.turn_to(big)


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], *map(int, sys.argv[3:]))
