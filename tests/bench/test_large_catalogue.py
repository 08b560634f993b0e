"""A large catalogue compiled, mapped and planned from, each step in a process of its own; seconds and memory.

Run on request: ``pytest tests/bench/test_large_catalogue.py -s``. Seconds of processor time, and the most memory that
the process ever held, MiB, of which some 60 are the program and its libraries. Nothing is asserted of either.
``BENCH_SIZES`` is how many of the sizes are measured.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from bench.column_stores import generated_columns
from bench.figures import tell
from spoutline.catalogue.column_files import ColumnFiles
from spoutline.model.part import HANGING_KINDS

COMPILED = (1_000, 10_000, 100_000)[: int(os.environ.get("BENCH_SIZES", "3"))]
MAPPED = (1_000, 10_000, 100_000, 1_000_000)[: int(os.environ.get("BENCH_SIZES", "4"))]


def done(*step: object) -> dict[str, float]:
    """Do a step of ``large_catalogue.py`` in a process of its own; return what it took."""
    tests = Path(__file__).parents[1]
    command = [sys.executable, str(tests / "bench" / "large_catalogue.py"), *map(str, step)]
    environment = os.environ | {"PYTHONPATH": str(tests)}
    answer = subprocess.run(command, capture_output=True, text=True, check=False, env=environment)
    assert answer.returncode == 0, answer.stderr
    found: dict[str, float] = json.loads(answer.stdout.splitlines()[-1])
    return found


@pytest.mark.timeout(7_200)
def test_compiling_an_edition(tmp_path: Path) -> None:
    print("\n| parts | draft written | edition compiled | its memory | columns mapped |")
    for count in COMPILED:
        database, columns = tmp_path / f"{count}.sqlite3", tmp_path / f"columns_{count}"
        wrote = done("write", database, count)
        published = done("publish", database, columns)
        read = done("read", database, columns)
        tell(f"compile {count}, s", published["first_s"])
        tell(f"compile {count}, MiB", published["peak_mib"])
        told = f"{wrote['first_s']:.2f} s | {published['first_s']:.2f} s | {published['peak_mib']:.0f} MiB"
        print(f"| {count:,} | {told} | {read['first_s'] * 1e3:.0f} ms |")


@pytest.mark.timeout(7_200)
def test_taking_an_exchange_file_in(tmp_path: Path) -> None:
    """Two price lists of each maker go along, with two prices for every part."""
    print("\n| parts | imported | published | exported |")
    for count in COMPILED:
        file, database = tmp_path / f"{count}.zip", tmp_path / f"taken_{count}.sqlite3"
        done("file", file, count)
        steps = {
            "import": done("import", database, file),
            "publish": done("check", database, tmp_path / f"columns_{count}"),
            "export": done("export", database),
        }
        for name, took in steps.items():
            tell(f"{name} {count}, s", took["first_s"])
            tell(f"{name} {count}, MiB", took["peak_mib"])
        told = (f"{took['first_s']:.2f} s, {took['peak_mib']:.0f} MiB" for took in steps.values())
        print(f"| {count:,} | {' | '.join(told)} |")


@pytest.mark.timeout(7_200)
def test_planning_from_mapped_columns(tmp_path: Path) -> None:
    print("\n| parts | first set, cold | warm | memory |")
    for count in MAPPED:
        for kind in HANGING_KINDS:
            ColumnFiles(tmp_path).write(str(count), generated_columns(count)[kind])
        took = done("plan", tmp_path, count)
        tell(f"plan of {count} mapped, cold ms", took["first_s"] * 1e3)
        tell(f"plan of {count} mapped, warm ms", took["least_s"] * 1e3)
        tell(f"plan of {count} mapped, MiB", took["peak_mib"])
        told = f"{took['first_s'] * 1e3:.0f} ms | {took['least_s'] * 1e3:.0f} ms | {took['peak_mib']:.0f} MiB"
        print(f"| {count:,} | {told} |")
