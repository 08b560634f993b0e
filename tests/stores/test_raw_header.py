"""A look at the first bytes of a book takes no lock away from connections of the same process.

Source: https://www.sqlite.org/howtocorrupt.html, section 2.2: closing any descriptor drops the locks of the process.
"""

from __future__ import annotations

import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest

from spoutline.book.book_file import FileKind, inspect_file
from spoutline.database.raw_header import first_bytes

WRITER = """
import sqlite3, sys
connection = sqlite3.connect(sys.argv[1], timeout=0, isolation_level=None)
try:
    connection.execute("BEGIN IMMEDIATE")
except sqlite3.OperationalError as fault:
    sys.exit(str(fault))
"""


def another_process_may_write(path: Path) -> bool:
    return subprocess.run([sys.executable, "-c", WRITER, path], check=False, capture_output=True).returncode == 0


def test_locks_of_this_process_stay(tmp_path: Path) -> None:
    path = tmp_path / "book.db"
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("CREATE TABLE held (x)")
    assert another_process_may_write(path)
    connection.execute("BEGIN IMMEDIATE")
    assert first_bytes(path, 15) == b"SQLite format 3"
    assert inspect_file(path).kind is FileKind.OTHER_DATABASE
    assert not another_process_may_write(path)
    connection.execute("ROLLBACK")
    assert another_process_may_write(path)
    connection.close()


def test_a_file_that_took_the_name_is_read(tmp_path: Path) -> None:
    path, newer = tmp_path / "book.db", tmp_path / "newer.db"
    path.write_bytes(b"first")
    assert first_bytes(path, 100) == b"first"
    newer.write_bytes(b"second")
    newer.replace(path)
    assert first_bytes(path, 100) == b"second"
    path.unlink()
    with pytest.raises(FileNotFoundError):
        first_bytes(path, 100)
