"""First paint, first drawing, an edit and its new drawing, and what keeps the window from its loop of events.

Run on request, with a screen: ``xvfb-run -a pytest tests/bench/test_window.py -p no:xdist -s``. The first start, which
puts a survey into the book and keeps the columns of the catalogue, is not measured. Times are told by the clock and as
work of the processor, which tells more on a busy machine. The figures are measured, never asserted;
``tests/gui/test_block_detector.py`` shows that the detector sees a block of 100 ms.
"""

from __future__ import annotations

import json
import os
import shutil
import statistics
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from bench.figures import tell

ROUNDS = 5
SHOWN = 8  # blocks named


def started_once(folder: Path, own: Path, *demo: str) -> dict[str, Any]:
    """Start the window over a book in a process of its own; return what it measured."""
    tests = Path(__file__).parents[1]
    environment = os.environ | {"HOME": str(folder), "PYTHONPATH": str(tests)}
    environment.pop("QT_QPA_PLATFORM", None)  # tests run without a screen; here it is the matter
    environment |= {f"XDG_{name}_HOME": str(folder / name) for name in ("CONFIG", "DATA", "STATE", "CACHE")}
    command = [sys.executable, str(tests / "bench" / "window_run.py"), str(own), str(folder / "profiles")]
    environment.pop("PYTHONDONTWRITEBYTECODE", None)  # an installed program is compiled
    done = subprocess.run(
        [*command, str(time.time()), *demo], env=environment, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    found: dict[str, Any] = json.loads(done.stdout.splitlines()[-1])
    return found


@pytest.mark.timeout(1_800)
def test_the_window_comes_up_and_follows_edits(
    database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory
) -> None:
    assert sys.platform != "linux" or os.environ.get("DISPLAY"), "the window needs a screen: xvfb-run -a pytest ..."
    folder = tmp_path_factory.mktemp("start")
    own = Path(shutil.copy(database_to_copy, folder / "own.sqlite3"))
    started_once(folder, own, "small_town")
    runs = [started_once(folder, own) for _ in range(ROUNDS)]
    print()
    for name in ("first_paint", "first_drawing", "edit", "edit_on_the_set"):
        found, work = ([run[name + ending] * 1000 for run in runs] for ending in ("_s", "_work_s"))
        said = name.replace("_", " ")
        tell(f"window, {said}, ms", min(found))
        tell(f"window, {said}, ms of work", min(work))
        told = f"{said}: {statistics.median(found):.0f} ms, least {min(found):.0f} ms"
        print(f"{told}; work {statistics.median(work):.0f} ms, least {min(work):.0f} ms")
    for phase in ("opening", "editing", "editing_on_the_set"):
        blocks = [block for run in runs for block in run[phase]]
        print(f"{phase.replace('_', ' ')}: {len(blocks) / ROUNDS:.1f} blocks over 30 ms a run")
        for spent, work, all_work, where in sorted(blocks, reverse=True)[:SHOWN]:
            told = f"{work * 1000:.0f} ms of own work, {all_work * 1000:.0f} ms of all threads"
            print(f"  {spent * 1000:.0f} ms, {told}: {where}")
    assert all(run["first_paint_s"] < run["first_drawing_s"] for run in runs)
