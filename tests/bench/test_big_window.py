"""What keeps the window from its loop of events over a station of 1,000 unlike positions, step by step.

Run on request, with a screen: ``xvfb-run -a pytest tests/bench/test_big_window.py -p no:xdist -s``. Blocks are told by
what the window's thread worked itself, beside the clock; one is named where that was 30 ms or more. The figures are
measured, never asserted. ``BENCH_POSITIONS`` is the number of positions, 1,000 where it is not set.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from bench.window_clock import LEAST_S

POSITIONS = os.environ.get("BENCH_POSITIONS", "1000")
SHOWN = 3  # blocks named of a step


def gone_through(folder: Path, own: Path, *count: str) -> dict[str, Any]:
    """Run the window over a book in a process of its own; return the blocks of each step."""
    tests = Path(__file__).parents[1]
    environment = os.environ | {"HOME": str(folder), "PYTHONPATH": str(tests)}
    environment.pop("QT_QPA_PLATFORM", None)
    environment |= {f"XDG_{name}_HOME": str(folder / name) for name in ("CONFIG", "DATA", "STATE", "CACHE")}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    command = [sys.executable, str(tests / "bench" / "big_window_run.py"), str(own), str(folder / "profiles"), *count]
    done = subprocess.run(command, env=environment, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    found: dict[str, Any] = json.loads(done.stdout.splitlines()[-1]) if done.stdout else {}
    return found


@pytest.mark.timeout(1_800)
def test_a_big_station_lets_the_window_answer(database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory) -> None:
    assert sys.platform != "linux" or os.environ.get("DISPLAY"), "the window needs a screen: xvfb-run -a pytest ..."
    folder = tmp_path_factory.mktemp("big")
    own = Path(shutil.copy(database_to_copy, folder / "own.sqlite3"))
    gone_through(folder, own, POSITIONS)
    steps = gone_through(folder, own)
    assert len(steps) > 20
    print()
    for name, blocks in steps.items():
        long = sorted((block for block in blocks if block[1] >= LEAST_S), key=lambda block: -block[1])
        print(f"{name}: {len(long)} blocks of {LEAST_S * 1000:.0f} ms of own work")
        for spent, work, _, where in long[:SHOWN]:
            print(f"  {work * 1000:.0f} ms of own work, {spent * 1000:.0f} ms by the clock: {where}")
