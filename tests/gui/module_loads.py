"""A window opened over a book in a process of its own; prints the modules of the program loaded on its thread.

``python module_loads.py DATABASE``: from the moment on at which the window is there, through its opening and the first
turn to every place.
"""

from __future__ import annotations

import json
import sys
import threading
import time
from collections.abc import Callable
from importlib.machinery import ModuleSpec
from pathlib import Path

from PySide6.QtWidgets import QApplication

from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.places import PLACES
from spoutline.gui.window.start import ShownWindow
from spoutline.model.language import Language

_LONGEST_S = 60.0


class OnThisThread:
    """Notes which modules are looked for on the thread it was made on; finds none."""

    def __init__(self) -> None:
        self._thread = threading.get_ident()
        self.names: list[str] = []

    def find_spec(self, name: str, _path: object = None, _target: object = None) -> ModuleSpec | None:
        if threading.get_ident() == self._thread and name.startswith("spoutline"):
            self.names.append(name)
        return None


def main(database: str) -> None:
    app = QApplication(sys.argv[:1])
    settings = Settings(database=database, profiles=Path(database).with_name("profiles"))
    shown = ShownWindow(lambda: open_workbench(settings), demo_survey("small_town"), Language.ENGLISH)
    loads = OnThisThread()
    sys.meta_path.insert(0, loads)  # type: ignore[arg-type]

    def wait(until: Callable[[], bool]) -> None:
        end = time.monotonic() + _LONGEST_S
        while not until() and time.monotonic() < end:
            app.processEvents()
            time.sleep(0.002)

    wait(lambda: "spoutline.ruletables.inspection_items" in sys.modules)  # the last of what is loaded behind the view
    wait(lambda: not shown.window.busy_bar.isVisible())
    opening, loads.names = loads.names, []
    for place in PLACES:
        shown.opening.verbs.do(place.action)
        wait(lambda: not shown.window.busy_bar.isVisible())
    print(json.dumps({"opening": opening, "turning": loads.names}))
    shown.window.close()
    shown.opening.close()


if __name__ == "__main__":
    main(sys.argv[1])
