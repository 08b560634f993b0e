"""One start of the window and some edits in it, measured from inside; prints the figures as JSON.

``python window_run.py DATABASE PROFILES STARTED [DEMO]``: STARTED is the time (``time.time``) at which the process
began. The window shows the survey that was open last, or the ready one that DEMO names.
"""

from __future__ import annotations

import gc
import json
import statistics
import sys
import time
from collections.abc import Callable
from dataclasses import astuple
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QEventLoop, QObject, QTimer
from PySide6.QtWidgets import QApplication

from bench.window_clock import BlockDetector

if TYPE_CHECKING:
    from spoutline.gui.widgets.drawing_view import DrawingView
    from spoutline.gui.window.start import ShownWindow
    from spoutline.gui.window.workplace import Workplace

EDITS = 12
STEP_M = 0.01
_LOADED_S = 2.5
_LONGEST_S = 60.0


class DrawingClock(QObject):
    """Notes when the window, and when a drawing of a made plan, was painted; of that the processor time as well.

    It listens to the window and to the view of the drawing alone: told of every event, it would slow down what it
    measures.
    """

    def __init__(self) -> None:
        super().__init__()
        self.first_paint = self.first_worked = 0.0
        self.drawn = self.worked = 0.0
        self.shown: object | None = None
        self.view: DrawingView | None = None

    def follow(self, view: DrawingView) -> None:
        """Listen to the view that shows the drawing, too."""
        if self.view is None:
            self.view = view
            view.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802  (Qt's name)
        """Qt: note a paint; nothing is kept from anybody."""
        if event.type() is QEvent.Type.Paint:
            if not self.first_paint:
                self.first_paint, self.first_worked = time.time(), time.process_time()
            if self.view is not None and watched is self.view and not self.view.is_stale:
                drawing = self.view.drawing
                if drawing is not None and drawing is not self.shown:
                    self.shown, self.drawn, self.worked = drawing, time.time(), time.process_time()
        return False


def main(database: str, profiles: str, started: float, demo: str = "") -> None:
    gc.disable()  # as the program does while its window loads
    from spoutline.gui.plain_imports import leave_sources_unread

    leave_sources_unread()
    from spoutline.bootstrap import Settings, open_workbench
    from spoutline.bootstrap.demos import demo_survey
    from spoutline.gui.collection import FIRST_LOOK_MS, WindowCollector
    from spoutline.gui.edits.question import Step
    from spoutline.gui.short_turns import take_short_turns
    from spoutline.gui.window.start import ShownWindow
    from spoutline.model.language import Language

    take_short_turns()

    app = QApplication(sys.argv[:1])
    clock, survey = DrawingClock(), demo_survey(demo) if demo else None
    collector = WindowCollector(app, FIRST_LOOK_MS)
    with BlockDetector() as opening:
        shown = ShownWindow(
            lambda: open_workbench(Settings(database=database, profiles=Path(profiles))),
            survey,
            Language.ENGLISH,
        )
        shown.window.installEventFilter(clock)
        _wait(lambda: _is_drawn(shown, clock))
    first_paint, first_drawing, drawn_work = clock.first_paint - started, clock.drawn - started, clock.worked
    _wait_until_still(shown)
    edits, works, editing = _edited(shown, clock)
    workplace = _workplace(shown)
    assert workplace is not None
    workplace.show_step(Step.SET)
    _wait_until_still(shown)
    set_edits, set_works, set_editing = _edited(shown, clock)
    workplace.show_step(Step.LIQUID)  # where the next start is measured
    print(
        json.dumps(
            {
                "first_paint_s": first_paint,
                "first_drawing_s": first_drawing,
                "first_paint_work_s": clock.first_worked,
                "first_drawing_work_s": drawn_work,
                "edit_s": statistics.median(edits),
                "edit_work_s": statistics.median(works),
                "edit_on_the_set_s": statistics.median(set_edits),
                "edit_on_the_set_work_s": statistics.median(set_works),
                "opening": [astuple(one) for one in opening.blocks],
                "editing": [astuple(one) for one in editing.blocks],
                "editing_on_the_set": [astuple(one) for one in set_editing.blocks],
            }
        )
    )
    shown.window.close()
    shown.opening.close()
    collector.stop()


def _workplace(shown: ShownWindow) -> Workplace | None:
    return shown.window.workplace


def _is_drawn(shown: ShownWindow, clock: DrawingClock) -> bool:
    """Say whether a drawing of a made plan was painted; the clock follows its view as soon as there is one."""
    workplace = _workplace(shown)
    if workplace is not None:
        clock.follow(workplace.side_panel.drawing)
    return _is_planned(shown) and clock.drawn > 0


def _is_planned(shown: ShownWindow) -> bool:
    workplace = _workplace(shown)
    return workplace is not None and workplace.plans.plan(workplace.session.label) is not None


def _is_whole(shown: ShownWindow) -> bool:
    workplace = _workplace(shown)
    staged = workplace.plans.staged(workplace.session.label) if workplace is not None else None
    return staged is not None and staged.is_whole


def _edited(shown: ShownWindow, clock: DrawingClock) -> tuple[list[float], list[float], BlockDetector]:
    """Edit some times; return what each new drawing took by the clock and as work of the processor, and the blocks."""
    edits: list[float] = []
    works: list[float] = []
    with BlockDetector() as blocks:
        for _ in range(EDITS):
            before, began, worked = clock.shown, time.time(), time.process_time()
            _edit(shown, STEP_M)  # always to an answer that was not planned before
            _wait(lambda seen=before: clock.shown is not seen and _is_planned(shown))  # type: ignore[misc]
            edits.append(clock.drawn - began)
            works.append(clock.worked - worked)
            _wait(lambda: _is_whole(shown))
    return edits, works, blocks


def _wait_until_still(shown: ShownWindow) -> None:
    """Let what the window loads behind its first view come to its end, as a person does who reads it first."""
    still_from = time.time() + _LOADED_S
    _wait(lambda: time.time() > still_from and not shown.window.busy_bar.isVisible())


def _edit(shown: ShownWindow, by_m: float) -> None:
    """Move the filler of the position in view, as its field does."""
    workplace = _workplace(shown)
    assert workplace is not None
    survey, position = workplace.session.survey, workplace.session.position
    filler = position.filler.model_copy(update={"distance_m": round(position.filler.distance_m + by_m, 3)})
    changed = position.model_copy(update={"filler": filler})
    positions = tuple(changed if one.label == position.label else one for one in survey.positions)
    workplace.context.edit(survey.model_copy(update={"positions": positions}), "Move the filler")


def _wait(until: Callable[[], bool]) -> None:
    """Let the loop of events turn until something is so."""
    loop, timer, end = QEventLoop(), QTimer(), time.time() + _LONGEST_S

    def look() -> None:
        if until() or time.time() > end:
            loop.quit()

    timer.timeout.connect(look)
    timer.start(5)
    loop.exec()
    if time.time() > end:
        raise SystemExit("the window did not come to what was awaited")


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], float(sys.argv[3]), *sys.argv[4:])
