"""A chain of many stations, ranked: how a run grows with its stations, and what it takes when taken up again.

Run on request: ``pytest tests/bench/test_chain_of_stations.py -s``; a table is printed, nothing is asserted
of times. Every station has 30 positions, of which three ask what no other position of the chain asks; the others are
drawn from a few hundred questions. Two processes. Processor seconds are those of all processes, starting them included.
``memory`` is the most that a worker ever held, MiB. ``BENCH_STATIONS`` names other numbers of stations (``100,1000``).
``resumed`` is the run again with the finished stations written down; ``answers kept`` with those of the positions only,
as where the price of nothing but the stations' own work changed. The last row is no measurement: 10,000 stations by the
growth from the last size but one to the last.
"""

from __future__ import annotations

import multiprocessing
import os
import random
import threading
import time
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from functools import partial
from pathlib import Path

import pytest

from bench.figures import peak_mib, tell
from bench.generated_sites_conversion import chain_site
from spoutline.bootstrap import Settings
from spoutline.bootstrap.kept_answers import answers_for_run
from spoutline.bootstrap.workbench import open_converting
from spoutline.model.programme import SiteOutcome, SiteResult
from spoutline.planning.conversion.folder import OpenConverter, convert_files, surveys_of
from spoutline.planning.conversion.programme import programme_of
from spoutline.planning.conversion.programme_terms import ProgrammeTerms
from spoutline.planning.conversion.run_log import RunLog

SIZES = tuple(map(int, os.environ.get("BENCH_STATIONS", "30,100,300").split(",")))
POSITIONS = 30
TOLD = 10_000
PROCESSES = 2


@dataclass(frozen=True)
class Cost:
    """Seconds of the processor, of all processes, and by the clock; the most memory of a worker, MiB."""

    cpu_s: float
    clock_s: float
    worker_mib: float


def measured(run: Callable[[Path], None], log: Path) -> Cost:
    before, begun, over, peaks = os.times(), time.perf_counter(), threading.Event(), [0.0]
    watcher = threading.Thread(target=_watch, args=(over, peaks), daemon=True)
    watcher.start()
    run(log)
    over.set()
    watcher.join()
    after = os.times()
    cpu_s = sum(after[:4]) - sum(before[:4])
    return Cost(cpu_s, time.perf_counter() - begun, max(peaks))


def _watch(over: threading.Event, peaks: list[float]) -> None:
    """Note the peaks of the workers until the run is over; a worker keeps its own until it ends."""
    while not over.wait(0.1):
        for worker in multiprocessing.active_children():
            with suppress(OSError):
                peaks.append(peak_mib(worker.pid or "self"))


def write_chain(folder: Path, count: int) -> None:
    folder.mkdir()
    draw = random.Random(20261129)
    for number in range(1, count + 1):
        text = chain_site(number, draw, POSITIONS).model_dump_json()
        (folder / f"site_{number:05d}.json").write_text(text, encoding="utf-8")


def run_over(folder: Path, kept: Path, open_converter: OpenConverter, log: Path) -> None:
    with answers_for_run(kept) as answers, RunLog(log, "bench") as written:
        results, stopped = convert_files(
            surveys_of(folder), open_converter, processes=PROCESSES, log=written, answers=answers
        )
    assert not stopped
    assert all(one.outcome is not SiteOutcome.FAULT for one in results)
    assert ranked(results) > 0


def ranked(results: tuple[SiteResult, ...]) -> int:
    return len(programme_of(results, ProgrammeTerms(name="bench", budget=None, years=5)).ranked)


@pytest.mark.timeout(7_200)
def test_a_chain_of_stations(shared_database: Path, tmp_path: Path) -> None:
    open_converter = partial(open_converting, Settings(database=str(shared_database)))
    whole: list[Cost] = []
    print("\n| stations | positions | whole run, CPU / clock | answers kept | resumed | CPU a station | worker |")
    print("|---|---|---|---|---|---|---|")
    for count in SIZES:
        folder, kept = tmp_path / f"chain_{count}", tmp_path / f"kept_{count}"
        write_chain(folder, count)
        run = partial(run_over, folder, kept, open_converter)
        cost = measured(run, tmp_path / f"{count}.run")
        answered = measured(run, tmp_path / f"{count}_again.run")
        resumed = measured(run, tmp_path / f"{count}.run")
        whole.append(cost)
        print(
            f"| {count:,} | {count * POSITIONS:,} | {cost.cpu_s:.1f} / {cost.clock_s:.1f} s | {answered.cpu_s:.1f} s "
            f"| {resumed.cpu_s:.2f} s | {cost.cpu_s / count * 1e3:.0f} ms | {cost.worker_mib:.0f} MiB |"
        )
    each = (whole[-1].cpu_s - whole[-2].cpu_s) / (SIZES[-1] - SIZES[-2])
    cpu_s = whole[-1].cpu_s + each * (TOLD - SIZES[-1])
    told = f"{cpu_s:.0f} s, {cpu_s / PROCESSES / 60:.1f} min on {PROCESSES} free cores"
    print(f"| {TOLD:,} (told) | {TOLD * POSITIONS:,} | {told} | | | {each * 1e3:.0f} ms | |")
    tell(f"chain of {TOLD} stations, told min", cpu_s / PROCESSES / 60)
    tell("chain, ms a station", each * 1e3)
    tell("chain, MiB a worker", max(one.worker_mib for one in whole))
