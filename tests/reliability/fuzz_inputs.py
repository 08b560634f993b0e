"""Damaged and hostile input for readers, stored documents and commands, all in one process.

``python tests/reliability/fuzz_inputs.py --cases N`` runs it at length; ``--keep FOLDER`` keeps each input that shows a
defect, ``--only NAME`` tries one target, ``--minutes M`` ends a run by time. Counted: cases, taken, refused, defects
(exit 3, tracebacks and faults other than a refusal), cases over 5 s of this process's own time, cases during which the
process grew by more than 300 MB, and by how much it grew at most above its start.
"""

from __future__ import annotations

import argparse
import itertools
import logging
import random
import resource
import sys
import tempfile
import time
import warnings
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from reliability.fuzz_commands import commands, stored_documents
from reliability.fuzz_seeds import make_seeds
from reliability.fuzz_targets import Outcome, Target, Verdict, readers
from spoutline.bootstrap import Settings, open_workbench

SLOW_S = 5.0
LARGE_MB = 300.0
_TOLD_EVERY = 20_000


@dataclass
class Report:
    """What a run found."""

    cases: int = 0
    verdicts: Counter[Verdict] = field(default_factory=Counter)
    of_target: Counter[tuple[str, Verdict]] = field(default_factory=Counter)
    defects: Counter[str] = field(default_factory=Counter)
    slow: Counter[str] = field(default_factory=Counter)
    large: Counter[str] = field(default_factory=Counter)
    took_s: Counter[str] = field(default_factory=Counter)
    longest_s: float = 0.0
    longest: str = ""
    peak_mb: float = 0.0
    elapsed_s: float = 0.0

    @property
    def is_clean(self) -> bool:
        """True where no case showed a defect, took too long or too much memory."""
        return not (self.defects or self.slow or self.large)

    def __str__(self) -> str:
        names = sorted({name for name, _ in self.of_target})
        told = [
            f"cases {self.cases}: taken {self.verdicts[Verdict.TAKEN]}, refused {self.verdicts[Verdict.REFUSED]}, "
            f"defects {sum(self.defects.values())}, over {SLOW_S:g} s {sum(self.slow.values())}, "
            f"over {LARGE_MB:g} MB {sum(self.large.values())}; longest {self.longest_s:.2f} s ({self.longest}), "
            f"at most {self.peak_mb:.0f} MB above the start, {self.elapsed_s:.0f} s"
        ]
        for name in names:
            counts = [self.of_target[name, one] for one in Verdict]
            each = ", ".join(f"{one} {count}" for one, count in zip(Verdict, counts, strict=True))
            told.append(f"  {name}: {each}; {1000 * self.took_s[name] / sum(counts):.1f} ms each")
        for words, found in (("defect", self.defects), ("slow", self.slow), ("large", self.large)):
            told += [f"{count} x {words}: {where}" for where, count in found.most_common(40)]
        return "\n".join(told)


class Fuzzer:
    """Tries targets in turn and keeps count."""

    def __init__(self, targets: Sequence[Target], folder: Path, keep: Path | None = None) -> None:
        self.targets = targets
        self.report = Report()
        self._folder = folder
        self._keep = keep

    def run(self, cases: int, seed: int, until: float = float("inf")) -> Report:
        """Try so many damaged inputs, or until a time of ``time.monotonic``."""
        chance, begun, start = random.Random(seed), time.monotonic(), _held_mb()
        order = list(_in_turn([one for one in self.targets if one.share]))
        for number, target in enumerate(itertools.cycle(order)):
            if number >= cases or time.monotonic() > until:
                break
            self.try_one(target, target.content(chance), start)
            if self.report.cases % _TOLD_EVERY == 0:
                self.report.elapsed_s = time.monotonic() - begun
                sys.stdout.write(f"{self.report}\n")
                sys.stdout.flush()
        self.report.elapsed_s = time.monotonic() - begun
        return self.report

    def try_one(self, target: Target, content: bytes, start_mb: float = 0.0) -> Outcome:
        """Give one input to a target and count how it ended."""
        path = self._folder / target.file
        path.write_bytes(content)
        _forget_peak()
        held, begun = _held_mb(), time.process_time()
        outcome = target.take(path)
        took, peak = time.process_time() - begun, _peak_mb()
        report = self.report
        report.cases += 1
        report.verdicts[outcome.verdict] += 1
        report.of_target[target.name, outcome.verdict] += 1
        report.peak_mb = max(report.peak_mb, peak - start_mb)
        report.took_s[target.name] += took
        if took > report.longest_s:
            report.longest_s, report.longest = took, target.name
        if outcome.verdict is Verdict.DEFECT:
            report.defects[f"{target.name}: {outcome.where}"] += 1
        if took > SLOW_S:
            report.slow[target.name] += 1
        if peak - held > LARGE_MB:
            report.large[target.name] += 1
        if self._keep is not None and (outcome.verdict is Verdict.DEFECT or took > SLOW_S or peak - held > LARGE_MB):
            self._keep.mkdir(parents=True, exist_ok=True)
            if report.defects[f"{target.name}: {outcome.where}"] > 3:
                return outcome  # enough of this kind
            name = f"{report.cases}-{target.name.replace(' ', '_')}-{target.file}"
            (self._keep / name).write_bytes(content)
            (self._keep / f"{name}.txt").write_text(f"{outcome} {took:.2f} s, {peak - held:.0f} MB\n", encoding="utf-8")
        return outcome


def _in_turn(targets: Sequence[Target]) -> Iterator[Target]:
    """Yield targets as often as their shares say, spread evenly."""
    whole = sum(one.share for one in targets)
    places = (
        (whole / one.share * (count + 0.5), place) for place, one in enumerate(targets) for count in range(one.share)
    )
    for _, place in sorted(places):
        yield targets[place]


def quiet() -> None:
    """Keep the libraries from telling of each damaged file."""
    for name in ("pypdf", "PIL", "openpyxl"):
        logging.getLogger(name).setLevel(logging.CRITICAL)
    warnings.filterwarnings("ignore", module=r"(openpyxl|pypdf|PIL)")


def _held_mb() -> float:
    """Return the memory that this process holds now, MB; the most it has held where the system does not tell."""
    with suppress(OSError):
        return int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1]) * resource.getpagesize() / 2**20
    return _peak_mb()


def _peak_mb() -> float:
    """Return the most memory that this process has held since ``_forget_peak``, MB."""
    with suppress(OSError, StopIteration):
        lines = Path("/proc/self/status").read_text(encoding="ascii").splitlines()
        return int(next(line for line in lines if line.startswith("VmHWM")).split()[1]) / 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def _forget_peak() -> None:
    """Start to measure the peak of memory anew (Linux, proc(5): 5 to clear_refs)."""
    with suppress(OSError):
        Path("/proc/self/clear_refs").write_text("5", encoding="ascii")


def all_targets(database: Path, folder: Path) -> tuple[Target, ...]:
    """Return everything that takes a file; commands run over ``database``, other files lie in ``folder``."""
    bench = open_workbench(Settings(database=str(database), profiles=folder / "profiles"))
    try:
        made = make_seeds(bench)
    finally:
        bench.close()
    return (*readers(made, folder), *stored_documents(made), *commands(made, database, folder))


def main() -> int:
    """Run on request, print the report, and fail where anything was found."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--cases", type=int, default=10_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--minutes", type=float, default=float("inf"))
    parser.add_argument("--only", default="", help="try only targets whose name holds this")
    parser.add_argument("--database", type=Path, help="a database to go on with, so that no catalogue is compiled")
    parser.add_argument("--keep", type=Path, help="folder for the inputs that show a defect")
    arguments = parser.parse_args()
    quiet()
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        database = arguments.database or folder / "book.sqlite3"
        targets = [one for one in all_targets(database, folder) if arguments.only in one.name]
        fuzzer = Fuzzer(targets, folder, arguments.keep)
        for target in targets:
            for sound in target.sound:
                outcome = fuzzer.try_one(target, sound)
                if outcome.verdict is not Verdict.TAKEN:
                    sys.stdout.write(f"the sound input of {target.name} is {outcome}\n")
        fuzzer.report = Report()
        report = fuzzer.run(arguments.cases, arguments.seed, time.monotonic() + 60 * arguments.minutes)
    sys.stdout.write(f"{report}\n")
    return int(not report.is_clean)


if __name__ == "__main__":
    sys.exit(main())
