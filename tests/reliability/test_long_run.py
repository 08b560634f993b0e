"""A short stretch of the long day, and that its judgement sees what rises; the whole day is run by hand."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from reliability.long_run import Reading, faults_of

_SCRIPT = Path(__file__).with_name("long_run.py")


def day(*, memory: float = 0.0, files: int = 0, threads: int = 0, widgets: int = 0) -> list[Reading]:
    """Return the readings of a day in which each figure rises by so much from reading to reading."""
    return [
        Reading(
            edits=100 * n, plans=10 * n, papers=4 * n, memory_mb=300 + memory * n, files=20 + files * n,
            threads=6 + threads * n, widgets=1_500 + widgets * n,
        )
        for n in range(1, 21)
    ]  # fmt: skip


def test_a_flat_day_has_no_fault() -> None:
    assert faults_of(day()) == []


@pytest.mark.parametrize("rise", [{"memory": 5.0}, {"files": 1}, {"threads": 1}, {"widgets": 30}])
def test_what_rises_is_named(rise: dict[str, int]) -> None:
    (fault,) = faults_of(day(**rise))  # type: ignore[arg-type]
    assert fault.startswith(next(iter(rise)))


@pytest.mark.parametrize(
    ("edits", "papers"),
    [pytest.param(4, 0, marks=pytest.mark.in_part), pytest.param(30, 1, marks=pytest.mark.at_length)],
)
def test_a_stretch_of_the_day_runs_to_its_end(edits: int, papers: int) -> None:
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(_SCRIPT.parents[1])}
    command = [sys.executable, str(_SCRIPT), "--edits", str(edits)]
    done = subprocess.run(command, env=environment, capture_output=True, text=True, timeout=300, check=False)
    # so short a day is all warm-up, so that what rises in it says nothing
    assert done.returncode in (0, 1), done.stderr
    assert "Traceback" not in done.stderr
    last = [line.split() for line in done.stdout.splitlines() if line.lstrip()[:1].isdigit()][-1]
    assert [int(last[place]) for place in (0, 2)] == [edits, papers]
    assert int(last[1]) > 1
