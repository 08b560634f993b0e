"""Lose the power at every moment of a run of saves: what was shown as saved must be in the book that is left.

strace records what the program writes, syncs, cuts, renames and deletes, and when it shows a state as saved. From that
every state is rebuilt that a disk may hold when the power goes: what was synced is there; of what was not, each file
keeps any beginning of its later writes, and of the last write it keeps perhaps whole sectors only.

Shown: cuts of each file by itself, of all together and at random; the log and the database; torn last writes. Not
shown: writes that a disk reorders inside one file without a sync between them, disks that lie about a sync, and a
folder that forgets a file which was synced (ext4, XFS and APFS keep it).

Run by hand: ``PYTHONPATH=tests python tests/reliability/power_loss.py --edits 60``; the tests run a few.
"""

from __future__ import annotations

import argparse
import random
import re
import shutil
import subprocess
import sys
import tempfile
import time
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import Enum, auto
from pathlib import Path

from reliability.kill_trials import faults_of, shown_in
from reliability.random_edits import START, first_survey
from spoutline.book.book import open_book

_SECTOR = 512
_CALLS = "openat,close,write,pwrite64,pwritev,ftruncate,fsync,fdatasync,rename,renameat,renameat2,unlink,unlinkat,link"
_STATES_A_MOMENT = 6


class Kind(Enum):
    """What was done to a file."""

    WRITE = auto()
    CUT = auto()
    SYNC = auto()
    DELETE = auto()
    SHOWN = auto()


@dataclass(frozen=True)
class Step:
    """One thing the program did; ``name`` is that of the file."""

    kind: Kind
    name: str = ""
    offset: int = 0
    content: bytes = b""


@dataclass
class Tally:
    """What the trials found."""

    moments: int = 0
    states: int = 0
    shown: int = 0
    faults: list[str] = field(default_factory=list)


def strace() -> str | None:
    """Return the path of strace where it is installed and may trace."""
    path = shutil.which("strace")
    if path is None:
        return None
    probe = subprocess.run([path, "-qq", "-e", "trace=none", "true"], capture_output=True, check=False)
    return path if probe.returncode == 0 else None


def recorded(tool: str, folder: Path, database: Path, survey_id: int, seed: int, edits: int) -> list[Step]:
    """Run random edits under strace and return what they did to the files of the book, in order."""
    log = folder / "strace.log"
    script = Path(__file__).with_name("random_edits.py")
    command = [tool, "-f", "-y", "-xx", "-s", "1000000", "-e", f"trace={_CALLS}", "-o", str(log)]
    program = [sys.executable, str(script), str(database), str(survey_id), str(seed), str(edits)]
    subprocess.run([*command, *program], check=True, stdout=subprocess.PIPE)
    return list(steps_in(log, database))


_LINE = re.compile(r"^(\d+)\s+(.*)$")
_CALL = re.compile(r"^(\w+)\((.*)\)\s+= (-?\d+)")
_FILE = re.compile(r"^\d+<([^>]*)>")


def steps_in(log: Path, database: Path) -> Iterator[Step]:
    """Yield the steps of a record that concern the book. A call is done when it returns, not when it is begun."""
    begun: dict[str, str] = {}
    for line in log.read_text(encoding="latin-1").splitlines():
        found = _LINE.match(line)
        if found is None:
            continue
        thread, text = found[1], found[2]
        if text.endswith("<unfinished ...>"):
            begun[thread] = text.removesuffix("<unfinished ...>").rstrip()
            continue
        if text.startswith("<... "):
            text = begun.pop(thread, "") + text.split("resumed>", 1)[1]
        call = _CALL.match(text)
        if call is not None and int(call[3]) >= 0:
            yield from _steps(call[1], call[2], int(call[3]), database)


def _steps(name: str, arguments: str, result: int, database: Path) -> Iterator[Step]:
    if name in ("unlink", "unlinkat"):
        path = _text(re.findall(r'"([^"]*)"', arguments)[0])
        if path.decode().startswith(str(database)):
            yield Step(Kind.DELETE, Path(path.decode()).name)
        return
    file = _FILE.match(arguments)
    if file is None:
        return
    path_text = _text(file[1]).decode(errors="replace") if "\\x" in file[1] else file[1]
    if name == "write" and arguments.startswith("1<"):
        yield Step(Kind.SHOWN, content=_written(arguments)[:result])
        return
    if not path_text.startswith(str(database)) or path_text.endswith("-shm"):
        return
    file_name = Path(path_text).name
    if name == "pwrite64":
        yield Step(Kind.WRITE, file_name, int(arguments.rsplit(",", 1)[1]), _written(arguments)[:result])
    elif name == "ftruncate":
        yield Step(Kind.CUT, file_name, int(arguments.rsplit(",", 1)[1]))
    elif name in ("fsync", "fdatasync"):
        yield Step(Kind.SYNC, file_name)
    elif name != "close":
        raise AssertionError(f"{name} is not known to be done to a book: {arguments[:80]}")


def _written(arguments: str) -> bytes:
    return _text(arguments.split('"', 2)[1])


def _text(hexadecimal: str) -> bytes:
    return bytes.fromhex(hexadecimal.replace("\\x", "")) if "\\x" in hexadecimal else hexadecimal.encode("latin-1")


def applied(files: dict[str, bytearray], step: Step) -> None:
    """Do one step to the files in memory."""
    if step.kind is Kind.WRITE:
        content = files.setdefault(step.name, bytearray())
        content.extend(bytes(max(0, step.offset + len(step.content) - len(content))))
        content[step.offset : step.offset + len(step.content)] = step.content
    elif step.kind is Kind.CUT:
        content = files.setdefault(step.name, bytearray())
        del content[step.offset :]
        content.extend(bytes(step.offset - len(content)))
    elif step.kind is Kind.DELETE:
        files.pop(step.name, None)


def states(durable: dict[str, bytearray], open_steps: list[Step], rng: random.Random) -> Iterator[dict[str, bytearray]]:
    """Yield what the disk may hold: ``durable`` and, of each file, some beginning of the steps that no sync has met."""
    by_file: dict[str, list[Step]] = defaultdict(list)
    for step in open_steps:
        by_file[step.name].append(step)
    names = sorted(by_file)
    everything = {name: len(by_file[name]) for name in names}
    cuts = [everything, dict.fromkeys(names, 0)]
    cuts += [{**everything, name: 0} for name in names]
    cuts += [{name: rng.randint(0, len(by_file[name])) for name in names} for _ in range(2)]
    tried: set[tuple[tuple[str, int], ...]] = set()
    for cut in cuts[: _STATES_A_MOMENT + len(names)]:
        key = tuple(sorted(cut.items()))
        if key in tried:
            continue
        tried.add(key)
        files = {name: bytearray(content) for name, content in durable.items()}
        for name, number in cut.items():
            for step in by_file[name][:number]:
                applied(files, step)
            if number < len(by_file[name]) and (torn := _torn(by_file[name][number], rng)) is not None:
                applied(files, torn)
        yield files


def _torn(step: Step, rng: random.Random) -> Step | None:
    """Return a beginning, of whole sectors, of a write that the loss of power cut short; None for other steps."""
    if step.kind is not Kind.WRITE:
        return None
    sectors = rng.randint(0, len(step.content) // _SECTOR)
    return Step(Kind.WRITE, step.name, step.offset, step.content[: sectors * _SECTOR]) if sectors else None


def check_all(
    steps: list[Step], before: dict[str, bytes], survey_id: int, database: Path, folder: Path, seed: int
) -> Tally:
    """Lose the power after every step, open each state that may be left, and return what was found."""
    rng, tally = random.Random(seed), Tally()
    durable = {name: bytearray(content) for name, content in before.items()}
    open_steps: list[Step] = []
    output = b""
    place = folder / "after"
    for step in steps:
        if step.kind is Kind.SHOWN:
            output += step.content
        elif step.kind is Kind.SYNC:
            for done in [one for one in open_steps if one.name == step.name]:
                applied(durable, done)
            open_steps = [one for one in open_steps if one.name != step.name]
        else:
            open_steps.append(step)
        if START not in output:
            continue
        tally.moments += 1
        shown = shown_in(output)
        tally.shown = len(shown)
        for files in states(durable, open_steps, rng):
            shutil.rmtree(place, ignore_errors=True)
            place.mkdir()
            for name, content in files.items():
                (place / name).write_bytes(content)
            tally.states += 1
            tally.faults += [
                f"moment {tally.moments}: {fault}" for fault in faults_of(place / database.name, survey_id, shown)
            ]
    return tally


def run(tool: str, folder: Path, seed: int, edits: int) -> Tally:
    """Record a run of edits and check every state that a loss of power may leave of it."""
    database = folder / "book.sqlite3"
    book = open_book(f"sqlite:///{database}")
    survey_id = book.create(first_survey()).id
    book.close()
    before = {one.name: one.read_bytes() for one in folder.iterdir() if not one.name.endswith("-shm")}
    steps = recorded(tool, folder, database, survey_id, seed, edits)
    return check_all(steps, before, survey_id, database, folder, seed)


def main() -> int:
    """Run the trial that the command line asks for and print the tally."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--edits", type=int, default=60)
    parser.add_argument("--seed", type=int, default=int(time.time()))
    arguments = parser.parse_args()
    tool = strace()
    if tool is None:
        print("strace is not installed, or may not trace here: nothing was tried")
        return 2
    began = time.monotonic()
    with tempfile.TemporaryDirectory(prefix="power-") as folder:
        tally = run(tool, Path(folder), arguments.seed, arguments.edits)
    print(
        f"seed {arguments.seed}: {tally.moments} moments, {tally.states} states of the disk, {tally.shown} "
        f"states shown as saved, {len(tally.faults)} faults, {time.monotonic() - began:.0f} s"
    )
    print("\n".join(tally.faults[:20]))
    return 1 if tally.faults else 0


if __name__ == "__main__":
    sys.exit(main())
