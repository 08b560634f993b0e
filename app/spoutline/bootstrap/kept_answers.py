"""Answers to what positions ask, kept in a file of the cache as they come and shared by the processes of a run.

A question is known by a key over all that its answer rests on, so that nothing kept is ever wrong, only unused. What
the file cannot give is worked out anew: it may be lost, cut off or full at any time.
"""

from __future__ import annotations

import hashlib
import sqlite3
import tempfile
from collections.abc import Callable, Iterator, Sequence
from contextlib import AbstractContextManager, closing, contextmanager, nullcontext, suppress
from pathlib import Path

from pydantic import ValidationError

from spoutline.planning.conversion.position_answer import PositionAnswer

_FORMAT = 1
_LARGEST = 128 * 1024 * 1024  # bytes of the file; some 200,000 answers
_KEPT_SHARE = 0.5  # of these, at the start of a run: the oldest answers make room
_PATIENCE_S = 10.0
_ASKED = "SELECT CAST(answer AS BLOB), CAST(digest AS BLOB) FROM answers WHERE key = ?"
_TABLE = "CREATE TABLE IF NOT EXISTS answers (key BLOB UNIQUE NOT NULL, answer BLOB NOT NULL, digest BLOB NOT NULL)"


class SharedAnswers:
    """Answers of one file, for one thread of one process of a run; implements ``memory.KeptAnswers``.

    Parameters
    ----------
    path
        The file, made ready by ``answers_for_run``.
    turns
        Locks that all processes of the run share: whoever has that of a question works it out. None in one process.
    """

    def __init__(self, path: Path, turns: Sequence[AbstractContextManager[object]] = ()) -> None:
        self._turns = turns
        self._file: sqlite3.Connection | None = None
        self._is_full = False
        with suppress(sqlite3.Error):
            self._file = _opened(path)

    def close(self) -> None:
        """Close the file."""
        if self._file is not None:
            self._file.close()

    def answer(self, key: str, work: Callable[[], PositionAnswer]) -> PositionAnswer:
        """Return the answer kept under ``key``; else that of ``work``, which no other process does meanwhile."""
        known = self._read(key)
        if known is not None:
            return known
        with self._turn(key):
            known = self._read(key)
            if known is None:
                known = work()
                self._keep(key, known)
        return known

    def _turn(self, key: str) -> AbstractContextManager[object]:
        return self._turns[int(key[:8], 16) % len(self._turns)] if self._turns else nullcontext()

    def _read(self, key: str) -> PositionAnswer | None:
        if self._file is None:
            return None
        asked = bytes.fromhex(key)
        try:
            row = self._file.execute(_ASKED, (asked,)).fetchone()
        except sqlite3.Error:
            self._give_up()
            return None
        if row is None or row[1] != _digest(asked, row[0]):
            return None
        try:
            return PositionAnswer.model_validate_json(row[0])
        except ValidationError:
            return None

    def _keep(self, key: str, answer: PositionAnswer) -> None:
        if self._file is None or self._is_full:
            return
        asked, text = bytes.fromhex(key), answer.model_dump_json(exclude_defaults=True).encode()
        try:
            self._file.execute("REPLACE INTO answers VALUES (?, ?, ?)", (asked, text, _digest(asked, text)))
        except sqlite3.OperationalError as fault:
            if fault.sqlite_errorcode != sqlite3.SQLITE_FULL:
                self._give_up()
            self._is_full = True  # what is there goes on being read
        except sqlite3.Error:
            self._give_up()

    def _give_up(self) -> None:
        self.close()
        self._file = None


@contextmanager
def answers_for_run(folder: Path) -> Iterator[Path]:
    """Make the file of answers in ``folder`` ready for a run and yield it; one that ends with the run if none can be.

    A file that is damaged or of another version of the program is made anew; what is too much of it goes, oldest first.
    """
    path = folder / "answers.sqlite3"
    if _is_ready(path):
        yield path
        return
    with tempfile.TemporaryDirectory(prefix="spoutline-", ignore_cleanup_errors=True) as own:
        path = Path(own) / "answers.sqlite3"
        _is_ready(path)
        yield path


def _is_ready(path: Path) -> bool:
    """Say whether the file is sound and has room; a damaged one is made anew."""
    for _ in range(2):
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            with closing(_opened(path)) as file:
                _check(file)
                file.execute(_TABLE)
                file.execute(f"PRAGMA user_version = {_FORMAT}")
                _make_room(file)
        except sqlite3.DatabaseError as fault:
            if isinstance(fault, sqlite3.OperationalError) and fault.sqlite_errorcode != sqlite3.SQLITE_CORRUPT:
                return False  # it cannot be written or is in use, which is no damage
            if not _is_gone(path):
                return False
        except OSError:
            return False
        else:
            return True
    return False


def _opened(path: Path) -> sqlite3.Connection:
    file = sqlite3.connect(path, timeout=_PATIENCE_S, isolation_level=None)
    try:
        file.execute("PRAGMA journal_mode = WAL")  # written beside readers, and whole or not at all
        file.execute("PRAGMA synchronous = NORMAL")
        (page,) = file.execute("PRAGMA page_size").fetchone()
        file.execute(f"PRAGMA max_page_count = {_LARGEST // page}")
    except sqlite3.Error:
        file.close()
        raise
    return file


def _check(file: sqlite3.Connection) -> None:
    """Raise ``sqlite3.DatabaseError`` where the file is damaged or of another format."""
    (version,) = file.execute("PRAGMA user_version").fetchone()
    (told,) = file.execute("PRAGMA quick_check(1)").fetchone()
    if version not in (0, _FORMAT) or told != "ok":
        raise sqlite3.DatabaseError("no answers of this version")


def _make_room(file: sqlite3.Connection) -> None:
    page, count, free = (
        file.execute(f"PRAGMA {name}").fetchone()[0] for name in ("page_size", "page_count", "freelist_count")
    )
    share = (count - free) * page / _LARGEST
    if share > _KEPT_SHARE:
        (rows,) = file.execute("SELECT count(*) FROM answers").fetchone()
        gone = int(rows * (1 - _KEPT_SHARE / share))
        file.execute("DELETE FROM answers WHERE rowid IN (SELECT rowid FROM answers ORDER BY rowid LIMIT ?)", (gone,))


def _is_gone(path: Path) -> bool:
    """Take a file away with what SQLite keeps beside it; say whether that could be done."""
    try:
        for one in (path, path.with_name(f"{path.name}-wal"), path.with_name(f"{path.name}-shm")):
            one.unlink(missing_ok=True)
    except OSError:
        return False
    return True


def _digest(key: bytes, answer: bytes) -> bytes:
    return hashlib.blake2b(key + answer, digest_size=16).digest()
