"""What benches rest on tells the truth: memory that a process really held, and figures that find their row."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from bench.figures import FIGURES_FILE, peak_mib, tell, told_in
from bench.table import ROWS, exponent, table

TESTS = Path(__file__).parents[1]
_HELD = """
import sys
from bench.figures import forget_peak, peak_mib
before = peak_mib()
held = bytearray(int(sys.argv[1]) * 2**20)
for page in range(0, len(held), 4096):
    held[page] = 1
full = peak_mib()
del held
forget_peak()
print(before, full, peak_mib())
"""


def test_the_peak_of_a_process_is_its_own() -> None:
    ballast = bytearray(b"1" * (96 * 2**20))  # this process holds more than the other ever does
    command = [sys.executable, "-c", _HELD, "64"]
    environment = os.environ | {"PYTHONPATH": str(TESTS)}
    done = subprocess.run(command, capture_output=True, text=True, check=True, env=environment)
    before, full, after = map(float, done.stdout.split())
    assert before < 60  # a bare interpreter, whatever began it
    assert full - before == pytest.approx(64, abs=4)
    assert after == pytest.approx(before, abs=8)
    assert peak_mib() > 96
    assert len(ballast) == 96 * 2**20


def test_figures_find_their_rows(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "figures.jsonl"
    tell("--version, s", 9.0)  # where no table is being made nothing is written
    monkeypatch.setenv(FIGURES_FILE, str(file))
    for name, figure in (("--version, s", 0.5), ("plan, s", 0.375), ("--version, s", 0.25)):
        tell(name, figure)
    rows = [row for row in ROWS if row.name in ("commands", "compile")]
    lines = list(table(rows, told_in(file), took_s=61))
    assert lines[2].split(" | ")[1:3] == ["0.08 / 0.4 s", "0.25 / 0.38 s"] or "0.25 / 0.37 s" in lines[2]
    assert "not measured" in lines[3]
    assert "1 min 1 s" in lines[-1]


def test_the_exponent_is_that_of_the_power_law() -> None:
    figures = {f"n {size}": 3.0 * size**1.5 for size in (1_000, 10_000)}
    assert exponent(figures, "n {}", 1_000, 10_000) == "1.50"


def test_every_row_names_benches_that_are_there() -> None:
    assert len({row.name for row in ROWS}) == len(ROWS)
    for row in ROWS:
        for bench in row.benches:
            path, _, test = bench.partition("::")
            assert (TESTS.parent / path).is_file(), path
            assert f"def {test}" in (TESTS.parent / path).read_text("utf-8")
