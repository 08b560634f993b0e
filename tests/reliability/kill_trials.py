"""Kill the program at random moments of random edits: what it showed as saved must be in the book.

Run by hand: ``PYTHONPATH=tests python tests/reliability/kill_trials.py --count 500``; the tests run a few.
"""

from __future__ import annotations

import argparse
import hashlib
import os
import random
import signal
import sqlite3
import sys
import tempfile
import time
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path

from reliability.random_edits import START, edit, first_survey
from spoutline.book.book import open_book

_TRIALS_A_BOOK = 40


@dataclass
class Tally:
    """What the trials found."""

    kills: int = 0
    shown: int = 0
    revisions: int = 0
    faults: list[str] = field(default_factory=list)


def faults_of(database: Path, survey_id: int, shown: dict[int, str]) -> list[str]:
    """Return what is wrong with a book in which these revisions were shown as saved, by revision and fingerprint."""
    try:
        return _faults_of(database, survey_id, shown)
    except sqlite3.DatabaseError as fault:
        return [f"the book cannot be read: {fault}"]


def _faults_of(database: Path, survey_id: int, shown: dict[int, str]) -> list[str]:
    with closing(sqlite3.connect(database)) as raw:
        found = [f"integrity: {line}" for (line,) in raw.execute("PRAGMA integrity_check") if line != "ok"]
        rows = dict(
            raw.execute("SELECT revision, document FROM survey_revisions WHERE survey_id = ?", (survey_id,)).fetchall()
        )
        survey = raw.execute("SELECT revision, document FROM surveys WHERE id = ?", (survey_id,)).fetchone()
    if survey is None:
        return [*found, "the survey is lost"]
    revision, document = survey
    if sorted(rows) != list(range(1, revision + 1)):
        found.append(f"the revisions of the survey are {sorted(rows)[-5:]}, and it says {revision}")
    if rows.get(revision) != document:
        found.append(f"revision {revision} is not what the survey says")
    for number, fingerprint in shown.items():
        held = rows.get(number)
        if held is None or hashlib.sha256(held.encode()).hexdigest() != fingerprint:
            found.append(f"revision {number} was shown as saved and is {'another' if held else 'lost'}")
    return found


def shown_in(output: bytes) -> dict[int, str]:
    """Return what a session showed as saved; a last line that was cut by the kill was shown too, but tells nothing."""
    whole = output[: output.rfind(b"\n") + 1].replace(START, b"").split(b"\n")
    return {int(line.split()[0]): line.split()[1].decode() for line in whole if line}


def killed(database: Path, survey_id: int, rng: random.Random, longest_s: float) -> dict[int, str]:
    """Let a session edit in a process of its own, kill it, and return what it had shown as saved."""
    read, write = os.pipe()
    seed = rng.randrange(2**31)
    child = os.fork()
    if child == 0:  # no test framework, no exit handlers: this process is there to be killed
        try:
            os.close(read)
            edit(database, survey_id, seed, write)
        finally:
            os._exit(70)
    os.close(write)
    output = b""
    while START not in output:
        piece = os.read(read, 65_536)
        if not piece:
            raise AssertionError("the session did not start")
        output += piece
    time.sleep(rng.uniform(0, longest_s))
    os.kill(child, signal.SIGKILL)
    while piece := os.read(read, 65_536):
        output += piece
    os.close(read)
    os.waitpid(child, 0)
    return shown_in(output)


def run(count: int, folder: Path, seed: int, longest_s: float = 0.5) -> Tally:
    """Kill ``count`` sessions and return what was found."""
    rng, tally = random.Random(seed), Tally()
    database, survey_id = folder, 0
    for number in range(count):
        if number % _TRIALS_A_BOOK == 0:
            database = folder / f"book-{number}.sqlite3"
            book = open_book(f"sqlite:///{database}")
            survey_id = book.create(first_survey()).id
            book.close()
        shown = killed(database, survey_id, rng, longest_s)
        tally.kills += 1
        tally.shown += len(shown)
        tally.faults += [f"trial {number}: {fault}" for fault in faults_of(database, survey_id, shown)]
    for database in folder.glob("book-*.sqlite3"):
        with closing(sqlite3.connect(database)) as raw:
            tally.revisions += raw.execute("SELECT count(*) FROM survey_revisions").fetchone()[0]
    return tally


def main() -> int:
    """Run the trials that the command line asks for and print the tally."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=500)
    parser.add_argument("--seed", type=int, default=int(time.time()))
    arguments = parser.parse_args()
    began = time.monotonic()
    with tempfile.TemporaryDirectory(prefix="kills-") as folder:
        tally = run(arguments.count, Path(folder), arguments.seed)
    print(
        f"seed {arguments.seed}: {tally.kills} kills, {tally.shown} states shown as saved, {tally.revisions} revisions "
        f"in the books, {len(tally.faults)} faults, {time.monotonic() - began:.0f} s"
    )
    print("\n".join(tally.faults))
    return 1 if tally.faults else 0


if __name__ == "__main__":
    sys.exit(main())
