"""What a command takes as people start it: ``--version``, and the plan of one position.

Run on request: ``pytest tests/bench/test_commands.py -s``. Seconds of processor time, user and system, of a process of
its own, the least of several; compiled, over a catalogue whose columns are kept. No time is asserted.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

from bench.figures import tell
from planning.surveys import CAR

ROUNDS = 7


def spent_s(command: list[str], environment: dict[str, str]) -> float:
    """Return the seconds of processor time of a command that succeeds."""
    started = subprocess.Popen(command, env=environment, stdout=subprocess.DEVNULL)
    _, status, used = os.wait4(started.pid, 0)
    started.returncode = os.waitstatus_to_exitcode(status)
    assert started.returncode == 0, command
    return used.ru_utime + used.ru_stime


def test_commands(database_to_copy: Path, tmp_path: Path) -> None:
    own = shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    survey = tmp_path / "car.json"
    survey.write_text(CAR.model_dump_json(), encoding="utf-8")
    environment = os.environ | {"HOME": str(tmp_path)}
    environment |= {f"XDG_{name}_HOME": str(tmp_path / name) for name in ("CONFIG", "DATA", "STATE", "CACHE")}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)  # an installed program is compiled
    program = [sys.executable, "-m", "spoutline"]
    for name, command in (
        ("--version", [*program, "--version"]),
        ("plan", [*program, "plan", str(survey), "--database", str(own)]),
    ):
        spent_s(command, environment)  # compiles what it imports, and keeps the columns
        taken = min(spent_s(command, environment) for _ in range(ROUNDS))
        tell(f"{name}, s", taken)
        print(f"\n{name}: {taken:.3f} s")
