"""Take the pictures of the README anew, of the real window over demo stations.

.venv/bin/python packaging/take_pictures.py
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PIL import Image
from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtWidgets import QApplication

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.edits.question import Step
from spoutline.gui.jobs import JobKind
from spoutline.gui.session import Session
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.verbs import Verbs
from spoutline.gui.window.workplace import Workplace
from spoutline.units.accepted import UnitSystem

FOLDER = Path(__file__).resolve().parent / "pictures"
SIZE = (1428, 856)
_LONGEST_MS, _STEP_MS, _SETTLED_MS = 300_000, 100, 700


def main() -> int:
    """Take all pictures."""
    app = QApplication(sys.argv[:1])
    dress(app, dark=False)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        bench = open_workbench(Settings(database=str(folder / "book.sqlite3"), profiles=folder / "profiles"))

        window, place = planned_window(bench, "small_town", SIZE)
        place.show_step(Step.SET)
        _take(window, "window")
        place.show_bill()
        _wait(lambda: place.bill_page.document is not None)
        _take(window, "bill")
        window.jobs.close()
        window, place = planned_window(bench, "refit_48", SIZE)
        place.show_quotations()
        page = place.quotation_page
        page.terms.use_file(bench.quoting().terms().demo_terms())
        page.panel.offer.make_button.click()
        _wait(lambda: page.paper.document is not None)
        _take(window, "quotation")
        window.jobs.close()
        bench.close()
    return 0


def planned_window(bench: Workbench, demo: str, size: tuple[int, int]) -> tuple[MainWindow, Workplace]:
    """Return the window over a demo station that is planned."""
    session = Session(bench, bench.book().create(demo_survey(demo)), UnitSystem.US)
    window = MainWindow()
    place = window.attach(session)
    window.verbs = Verbs(window, place)  # type: ignore[attr-defined]
    window.resize(*size)
    window.show()
    _wait(lambda: place.context.plan is not None)
    return window, place


def wait_until_quiet(window: MainWindow) -> None:
    """Wait until no job of the window runs, and its answers are laid out."""
    _wait(lambda: not any(map(window.jobs.is_busy, JobKind)))


def picture(window: MainWindow, path: Path) -> None:
    """Write what the window shows, in few colours."""
    window.grab().save(str(path))
    with Image.open(path) as image:
        image.convert("RGB").quantize(256, dither=Image.Dither.NONE).save(path, optimize=True)


def _wait(done: Callable[[], bool]) -> None:
    for _ in range(_LONGEST_MS // _STEP_MS):
        if done():
            break
        _pass(_STEP_MS)
    else:
        raise TimeoutError("the window did not show what the picture is of")
    _pass(_SETTLED_MS)


def _pass(time_ms: int) -> None:
    """Let time pass in an event loop, which lets the workers run meanwhile."""
    loop = QEventLoop()
    QTimer.singleShot(time_ms, loop.quit)
    loop.exec()


def _take(window: MainWindow, name: str) -> None:
    wait_until_quiet(window)
    picture(window, FOLDER / f"{name}.png")


if __name__ == "__main__":
    sys.exit(main())
