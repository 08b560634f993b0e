"""One table of what the program aims at and what was measured, row by row; it goes into DEVELOPERS.md as it is printed.

    python tests/bench/table.py [--quick] [--rows NAME ...]

Runs the benches that the rows need, each in a process of its own, and prints the table in Markdown: aim, measured, and
how the time grows (exponent of the number of parts, from one size to ten times as many). ``--quick`` takes the rows
that cost little. Figures are processor time, the least of several runs, unless a row says otherwise: run it on a quiet
machine. ``pytest tests/bench -s -p no:xdist`` runs all benches, with more figures than stand here.
"""

from __future__ import annotations

import argparse
import math
import os
import platform
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

TESTS = Path(__file__).parents[1]
sys.path.insert(0, str(TESTS))

from bench.figures import FIGURES_FILE, told_in  # noqa: E402  (run as a script, the folder of tests is not known before)

Figures = Mapping[str, float]
SIZES = (1_000, 10_000, 100_000)
KIND = ("car", "truck", "low hook", "low pressure", "weak outlet", "E85")
_SIZES_ASKED = {"BENCH_SIZES": "3"}


@dataclass(frozen=True)
class Row:
    """A row of the table: what is measured, the aim, the benches that measure it and how their figures are told."""

    name: str
    what: str
    aim: str
    benches: tuple[str, ...]
    told: Callable[[Figures], tuple[str, str]]  # measured, growth
    is_quick: bool = False
    environment: tuple[tuple[str, str], ...] = ()
    needs_screen: bool = False


def main() -> int:
    """Measure the rows that are asked for and print the table."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--quick", action="store_true", help="only rows that take seconds")
    parser.add_argument("--rows", nargs="+", choices=[row.name for row in ROWS], metavar="NAME", help=_names())
    asked = parser.parse_args()
    rows = [row for row in ROWS if (not asked.rows or row.name in asked.rows) and (row.is_quick or not asked.quick)]
    begun = time.monotonic()
    with tempfile.TemporaryDirectory() as folder:
        figures = measured(rows, Path(folder) / "figures.jsonl")
    print("\n".join(table(rows, figures, round(time.monotonic() - begun))))
    return 0


def _names() -> str:
    return "rows to measure: " + ", ".join(row.name for row in ROWS)


def measured(rows: Sequence[Row], file: Path) -> Figures:
    """Run the benches of the rows, each once, and return what they told; what fails is said and left open."""
    runs = dict.fromkeys((row.benches, row.environment, row.needs_screen) for row in rows)
    for benches, environment, needs_screen in runs:
        command = [sys.executable, "-m", "pytest", "-q", "-p", "no:xdist", "-p", "no:cacheprovider", *benches]
        if needs_screen and not os.environ.get("DISPLAY"):
            if shutil.which("xvfb-run") is None:
                print(f"{benches[0]}: there is no screen, and no xvfb-run to make one", file=sys.stderr)
                continue
            command = ["xvfb-run", "-a", *command]
        print(" ".join(benches), file=sys.stderr, flush=True)
        whole = os.environ | dict(environment) | {FIGURES_FILE: str(file)}
        done = subprocess.run(command, cwd=TESTS.parent, env=whole, capture_output=True, text=True, check=False)
        if done.returncode:
            print(done.stdout[-3000:], file=sys.stderr)
    return told_in(file)


def table(rows: Sequence[Row], figures: Figures, took_s: int) -> Iterator[str]:
    """Yield the lines of the table, with the machine and the day below."""
    yield "| what | aim | measured | growth |"
    yield "|---|---|---|---|"
    for row in rows:
        try:
            found, grown = row.told(figures)
        except KeyError:
            found, grown = "not measured", ""
        yield f"| {row.what} | {row.aim} | {found} | {grown} |"
    yield ""
    busy = f", load {os.getloadavg()[0]:.1f} at the end" if hasattr(os, "getloadavg") else ""
    yield (
        f"{date.today():%B %d, %Y}, {_processor()}, {os.cpu_count()} cores{busy}, Python {platform.python_version()}; "
        f"`python tests/bench/table.py`, {took_s // 60} min {took_s % 60} s. Processor time, least of several runs."
    )


def _processor() -> str:
    known = Path("/proc/cpuinfo")
    lines = known.read_text("utf-8").splitlines() if known.exists() else []
    return next((line.partition(":")[2].strip() for line in lines if line.startswith("model name")), platform.machine())


def exponent(figures: Figures, name: str, smaller: int, larger: int) -> str:
    """Return the exponent of growth of a figure, ``name`` being its name with ``{}`` for the number of parts."""
    ratio = figures[name.format(larger)] / figures[name.format(smaller)]
    return f"{math.log(ratio) / math.log(larger / smaller):.2f}"


def _growth(figures: Figures, name: str) -> str:
    return ", ".join(exponent(figures, name, one, one * 10) for one in SIZES[:-1])


def _over_sizes(name: str, places: int = 0) -> Callable[[Figures], tuple[str, str]]:
    def told(figures: Figures) -> tuple[str, str]:
        return " / ".join(f"{figures[name.format(size)]:.{places}f}" for size in SIZES) + " ms", _growth(figures, name)

    return told


def _first_and_second(figures: Figures) -> tuple[str, str]:
    first, second = (_over_sizes(f"{which} of near copies, {{}}")(figures) for which in ("first", "second"))
    return f"{first[0]}; {second[0]}", second[1]


def _times(*kinds: str) -> Callable[[Figures], tuple[str, str]]:
    def times(figures: Figures, kind: str) -> str:
        whole, first = f"with alternatives, {kind}, {{}}", f"first set, {kind}, {{}}"
        found = [figures[whole.format(size)] / figures[first.format(size)] for size in SIZES]
        return " / ".join(f"{one:.1f}" for one in found) + " times"

    def told(figures: Figures) -> tuple[str, str]:
        return "; ".join(times(figures, kind) for kind in kinds), ""

    return told


def _one_chain(kind: str) -> Callable[[Figures], tuple[str, str]]:
    def told(figures: Figures) -> tuple[str, str]:
        own, other = figures[f"search, {kind}, 10000"], figures[f"CP-SAT, {kind}, 10000"]
        found = f"{own:.1f} ms; CP-SAT {other:.0f} ms, {other / own:.0f} times"
        return found, _growth(figures, f"search, {kind}, {{}}")

    return told


def _random_chains(figures: Figures) -> tuple[str, str]:
    found = []
    for tightness in ("1.2", "0.8", "0.6"):
        own, other = figures[f"random chain, {tightness}"], figures[f"CP-SAT, random chain, {tightness}"]
        found.append(f"{tightness}: {own:.1f} ms, {other / own:.0f} times")
    return "; ".join(found), ""


def _unlike(figures: Figures) -> tuple[str, str]:
    told = f"{figures['unlike station, planned and quoted, s']:.0f} s; bill {figures['unlike station, bill, s']:.0f} s"
    return f"{told}, {figures['unlike station, bill, pages']:.0f} pages", ""


def _commands(figures: Figures) -> tuple[str, str]:
    return f"{figures['--version, s']:.2f} / {figures['plan, s']:.2f} s", ""


def _explaining(figures: Figures) -> tuple[str, str]:
    names = ("why, car", *(f"substitutes, {slot}, car" for slot in ("swivel", "nozzle")))
    found = " / ".join(f"{figures[f'{name}, 10000'] / 1e3:.2f}" for name in names)
    return f"{found} s", ", ".join(exponent(figures, f"{name}, {{}}", 1_000, 10_000) for name in names)


def _window(figures: Figures) -> tuple[str, str]:
    told = []
    for of in ("ms", "ms of work"):
        paint, drawing, edit = (figures[f"window, {name}, {of}"] for name in ("first paint", "first drawing", "edit"))
        told.append(f"{paint / 1e3:.2f} / {drawing / 1e3:.2f} s; {edit:.0f} ms")
    return f"{told[0]} by the clock ({told[1]} of work)", ""


def _compiled(figures: Figures) -> tuple[str, str]:
    told = f"{figures['compile 100000, s']:.1f} s / {figures['compile 100000, MiB']:.0f} MiB"
    return told, _growth(figures, "compile {}, s")


def _exchanged(figures: Figures) -> tuple[str, str]:
    steps = ("import", "publish", "export")
    told = (f"{figures[f'{one} 100000, s']:.0f} s, {figures[f'{one} 100000, MiB']:.0f} MiB" for one in steps)
    return "; ".join(told), ", ".join(_growth(figures, f"{one} {{}}, s") for one in steps)


def _million(figures: Figures) -> tuple[str, str]:
    name = "plan of 1000000 mapped"
    warm, cold = figures[f"{name}, warm ms"], figures[f"{name}, cold ms"]
    grown = exponent(figures, "plan of {} mapped, warm ms", 100_000, 1_000_000)
    return f"{warm:.0f} ms, cold {cold:.0f} ms / {figures[f'{name}, MiB']:.0f} MiB", grown


def _chain_of_stations(figures: Figures) -> tuple[str, str]:
    told = f"{figures['chain of 10000 stations, told min']:.1f} min, told by the growth"
    each = f"{figures['chain, ms a station']:.0f} ms a station more"
    return f"{told}; {each}, {figures['chain, MiB a worker']:.0f} MiB a worker", ""


def _first_sets() -> Iterator[Row]:
    bench = ("tests/bench/test_first_set.py",)
    asked = tuple(_SIZES_ASKED.items())
    for kind in (*KIND, "marina", "nothing fits"):
        aim = "5 / 15 / 50 ms"
        what = f"first set, {kind}, 1,000 / 10,000 / 100,000 parts"
        yield Row(kind.replace(" ", "-"), what, aim, bench, _over_sizes(f"first set, {kind}, {{}}"), environment=asked)
    yield Row(
        "alternatives",
        "the same with all alternatives, car; marina",
        "3 times",
        bench,
        _times("car", "marina"),
        environment=asked,
    )


ROWS: tuple[Row, ...] = (
    *_first_sets(),
    Row(
        "no-chain",
        "one chain without an answer, marina, 10,000 parts",
        "15 ms",
        ("tests/bench/test_unkind_positions.py",),
        _one_chain("marina"),
        environment=tuple(_SIZES_ASKED.items()),
    ),
    Row(
        "random",
        "random chains, six sums, 400 a place, limits so many times",
        "20 times as fast as CP-SAT",
        ("tests/bench/test_random_chains.py",),
        _random_chains,
        is_quick=True,
    ),
    Row(
        "near-copies",
        "near copies of a few parts, all of whose chains just miss a limit, 1,000 / 10,000 / 100,000 items",
        "ends",
        ("tests/bench/test_random_chains.py",),
        _over_sizes("near copies, {}"),
        is_quick=True,
    ),
    Row(
        "second-of-near-copies",
        "the cheapest of near copies that mostly miss a limit, and the second cheapest, 1,000 / 10,000 / 100,000 items",
        "-; 1 s each",
        ("tests/bench/test_random_chains.py",),
        _first_and_second,
        is_quick=True,
    ),
    Row(
        "unlike",
        "station of 1,000 unlike positions, planned and quoted; its bill",
        "30 s; 20 s",
        ("tests/bench/test_thousand_unlike.py",),
        _unlike,
    ),
    Row(
        "commands",
        "`--version` / `plan` of one position",
        "0.08 / 0.4 s",
        ("tests/bench/test_commands.py",),
        _commands,
        is_quick=True,
    ),
    Row(
        "explaining",
        "why each part of a set, car, 10,000 parts; what else could hang: swivel; nozzle",
        "1.5 s each",
        ("tests/bench/test_explaining.py",),
        _explaining,
        is_quick=True,
    ),
    Row(
        "window",
        "window: first paint / first drawing; edit to its drawing",
        "0.25 / 0.8 s; 60 ms",
        ("tests/bench/test_window.py",),
        _window,
        is_quick=True,
        needs_screen=True,
    ),
    Row(
        "compile",
        "catalog of 100,000 compiled / memory of the process",
        "10 s / 150 MiB",
        ("tests/bench/test_large_catalogue.py::test_compiling_an_edition",),
        _compiled,
    ),
    Row(
        "exchange",
        "exchange file of 100,000 parts imported; published; exported",
        "30 s, 300 MiB each",
        ("tests/bench/test_large_catalogue.py::test_taking_an_exchange_file_in",),
        _exchanged,
    ),
    Row(
        "million",
        "first set, car, 1,000,000 parts mapped / memory of the process",
        "500 ms / 1,024 MiB",
        ("tests/bench/test_large_catalogue.py::test_planning_from_mapped_columns",),
        _million,
    ),
    Row(
        "chain",
        "10,000 stations, 300,000 positions, two processes",
        "10 min on two cores",
        ("tests/bench/test_chain_of_stations.py",),
        _chain_of_stations,
    ),
)

if __name__ == "__main__":
    sys.exit(main())
