"""Keep one window open for a long day: thousands of edits, hundreds of plans and papers; memory and handles stay flat.

Run by hand, best under a display of its own::

    PYTHONPATH=tests xvfb-run -a python tests/reliability/long_run.py --edits 5000

It prints a line every so many edits and ends with 1 where, after the warm-up (the first quarter), memory or
widgets rose by more than a tenth, or open files or threads rose at all.
"""

from __future__ import annotations

import argparse
import random
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtWidgets import QApplication

from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.collection import WindowCollector, leave_out_what_is_there
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.positions import add_position, remove_position
from spoutline.gui.edits.question import Step
from spoutline.gui.session import Session
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.verbs import Verbs
from spoutline.gui.window.workplace import Workplace
from spoutline.model.plan import PositionPlan
from spoutline.model.survey import Position, Survey
from spoutline.units.accepted import UnitSystem

_MOST_POSITIONS = 9
_LINES = 20
_EDITS_A_PLAN = 10
_EDITS_A_PAPER = 25
_LONGEST_WAIT_S = 120.0
_ALLOWED_GROWTH = 1.10


@dataclass(frozen=True, slots=True)
class Reading:
    """What the process takes after so many edits."""

    edits: int
    plans: int
    papers: int
    memory_mb: float
    files: int
    threads: int
    widgets: int

    @property
    def line(self) -> str:
        """The reading as a line of the table."""
        counts = f"{self.edits:6} {self.plans:6} {self.papers:6}"
        return f"{counts} {self.memory_mb:9.1f} {self.files:6} {self.threads:8} {self.widgets:8}"


HEAD = " edits  plans papers memory_MB  files  threads  widgets"


def faults_of(readings: list[Reading]) -> list[str]:
    """Return what rose after the warm-up: the highest of the last quarter against the highest of the second."""
    quarter = len(readings) // 4
    warm, last = readings[quarter : 2 * quarter], readings[-quarter:]
    found = []
    before, after = max(one.memory_mb for one in warm), max(one.memory_mb for one in last)
    if after > before * _ALLOWED_GROWTH:
        found.append(f"memory rose from {before:.0f} MB to {after:.0f} MB")
    for name in ("files", "threads", "widgets"):
        before, after = (max(getattr(one, name) for one in part) for part in (warm, last))
        if after > before * (_ALLOWED_GROWTH if name == "widgets" else 1):  # pages differ in how many widgets they show
            found.append(f"{name} rose from {before} to {after}")
    return found


class Day:
    """One window over a book of its own, worked with by a hand that never tires."""

    def __init__(self, app: QApplication, folder: Path, seed: int) -> None:
        self._app, self._rng = app, random.Random(seed)
        self.bench = open_workbench(Settings(database=str(folder / "book.sqlite3"), profiles=folder / "profiles"))
        demo = demo_survey("small_town")
        self._pattern = demo.positions
        stored = self.bench.book().create(demo)
        self.bench.parts().search("", None, 1)
        leave_out_what_is_there()
        self.window = MainWindow()
        self.session = Session(self.bench, stored, UnitSystem.US, self.window)
        self.workplace: Workplace = self.window.attach(self.session)
        self.verbs = Verbs(self.window, self.workplace)
        self.window.resize(1280, 800)
        self.window.show()
        self.edits = self.plans = self.papers = 0
        self.workplace.plans.updated.connect(self._count_plan)

    def _count_plan(self, label: str) -> None:
        if isinstance(self.workplace.plans.plan(label), PositionPlan):
            self.plans += 1

    def wait(self, ready: Callable[[], bool]) -> None:
        """Let Qt work until something is so; raise ``TimeoutError`` where it does not come."""
        end = time.monotonic() + _LONGEST_WAIT_S
        while not ready():
            if time.monotonic() > end:
                raise TimeoutError("the window did not come to rest")
            self._turn(20)

    def _turn(self, ms: int = 0) -> None:
        """Let Qt's own loop run: outside of one nothing is deleted that was to be deleted later."""
        loop = QEventLoop()
        QTimer.singleShot(ms, loop.quit)
        loop.exec()

    def step(self) -> None:
        """Make one edit; now and then wait for the plans, make a paper, turn to another page or position."""
        session, chance = self.session, self._rng.random()
        if chance < 0.1 and session.undo_stack.canUndo():
            session.undo_stack.undo()
        elif chance < 0.15 and session.undo_stack.canRedo():
            session.undo_stack.redo()
        else:
            make_edit(session, self._edited(session.survey, chance), "Edit")
        self.edits += 1
        self._turn()
        if self.edits % 7 == 0:
            session.look_at(self._rng.choice(session.survey.positions).label)
        if self.edits % _EDITS_A_PAPER == 0:
            self._paper()
        elif self.edits % _EDITS_A_PLAN == 0:
            self.workplace.show_step(self._rng.choice((Step.LIQUID, Step.VAPOUR, Step.PLACE, Step.SET)))
            self.wait(lambda: self.workplace.plans.plan(session.label) is not None)

    def _edited(self, survey: Survey, chance: float) -> Survey:
        if chance < 0.3 and len(survey.positions) < _MOST_POSITIONS:
            return add_position(survey, f"N{self.edits}", str(self._rng.randrange(1, 9)))
        if chance < 0.4 and len(survey.positions) > 2:
            return remove_position(survey, self._rng.choice(survey.positions).label)[0]
        at = self._rng.randrange(len(survey.positions))
        changed = self._changed(survey.positions[at])
        return survey.model_copy(update={"positions": (*survey.positions[:at], changed, *survey.positions[at + 1 :])})

    def _changed(self, position: Position) -> Position:
        """Return the position with another answer, as a surveyor would give it."""
        kind = self._rng.randrange(4)
        if kind == 0:
            return position.model_copy(update={"notes": f"edit {self.edits} " + "x" * self._rng.randrange(300)})
        if kind == 1:
            return position.model_copy(update={"hold_open_wanted": not position.hold_open_wanted})
        if kind == 2:
            filler = position.filler.model_copy(update={"distance_m": round(self._rng.uniform(1.5, 2.6), 3)})
            return position.model_copy(update={"filler": filler})
        pattern = self._rng.choice(self._pattern)
        return pattern.model_copy(update={"label": position.label, "dispenser": position.dispenser})

    def _paper(self) -> None:
        """Turn to a page with a paper and wait until the paper is there, or the page says why there is none."""
        place = self.workplace
        turn = self.papers % 4
        if turn == 0:
            place.show_bill()
            self.wait(lambda: place.bill_page.document is not None)
        elif turn == 1:
            place.show_conversion()
            self.wait(lambda: place.conversion_page.document is not None)
        elif turn == 2:
            place.show_installer()
            self.wait(lambda: place.installer_page.pack_panel.document is not None)
        else:
            place.show_grid()
            place.show_bill()
            self.wait(lambda: place.bill_page.document is not None)
        self.papers += 1
        place.show_step(Step.SET)

    def rest(self) -> None:
        """Wait until all is planned and saved, and let go what can go."""
        labels = [position.label for position in self.session.survey.positions]
        plans = self.workplace.plans
        self.wait(lambda: all(plans.plan(label) or plans.trouble(label) for label in labels))
        self.wait(lambda: self.session.save_state.is_saved)

    def reading(self) -> Reading:
        """Measure the process."""
        status = dict(line.split(":", 1) for line in Path("/proc/self/status").read_text(encoding="utf-8").splitlines())
        return Reading(
            edits=self.edits,
            plans=self.plans,
            papers=self.papers,
            memory_mb=int(status["VmRSS"].split()[0]) / 1024,
            files=sum(1 for _ in Path("/proc/self/fd").iterdir()),
            threads=int(status["Threads"]),
            widgets=len(self._app.allWidgets()),
        )

    def close(self) -> None:
        """Close the window and its stores."""
        self.session.settle(10_000)
        self.window.jobs.close()
        self.window.close()
        self.bench.close()


def run(edits: int, seed: int, show: Callable[[str], None]) -> list[Reading]:
    """Work through a day of so many edits and return the readings taken on the way."""
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    dress(app)
    collector = WindowCollector(app)
    readings: list[Reading] = []
    with tempfile.TemporaryDirectory() as folder:
        day = Day(app, Path(folder), seed)
        show(HEAD)
        for number in range(1, edits + 1):
            day.step()
            if number % max(1, edits // _LINES) == 0:
                day.rest()
                readings.append(day.reading())
                show(readings[-1].line)
        day.close()
    collector.stop()
    return readings


def main() -> int:
    """Run a day and say what rose."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--edits", type=int, default=5_000)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args()
    readings = run(chosen.edits, chosen.seed, lambda line: print(line, flush=True))
    found = faults_of(readings)
    print("\n".join(found) if found else "flat")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
