"""A path opens what it names, whatever signs it holds."""

from __future__ import annotations

import json
import os
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import make_url

from spoutline.book.address import database_files, database_url
from spoutline.book.book import open_book
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.faults import InputFault

# signs that a URL (RFC 3986), SQLite's URI names (sqlite.org/uri.html), a shell or Python's formats give a meaning
NAMES = (
    "what?.db",
    "what?mode=memory.db",
    "%41.db",
    "100%.db",
    "a#b.db",
    "two words .db",
    "quote'\".db",
    "back\\slash.db",
    "加油站 Ä ü.db",
    "e\u0301.db",  # composed of two signs
    "file:x.db",
    "file:x?mode=memory&cache=shared",
    ":memory:",
    "-leading.db",
    "a+b&c=d;e@f:g.db",
    "{x}.db",
    "~tilde.db",
    "nul\u200bwidth.db",
)


@pytest.mark.parametrize("name", NAMES)
def test_a_book_lies_in_the_file_that_its_path_names(
    name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = tmp_path / f"in {name.replace('~', '')}"
    folder.mkdir()
    monkeypatch.chdir(folder)
    url = database_url(name, tmp_path)
    assert make_url(url).database == str(folder / name)
    book = open_book(url)
    book.create(demo_survey("marina"))
    book.close()
    left = [path.name for path in folder.iterdir() if not path.name.startswith(f"{name}-")]
    assert left == [name]
    with closing(sqlite3.connect(folder / name)) as connection:
        assert connection.execute("select count(*) from surveys").fetchone() == (1,)
    assert database_files(name, tmp_path)[0] == folder / name
    again = open_book(url)
    assert len(again.entries()) == 1
    again.close()


def test_a_url_of_sqlite_is_read_as_a_url(tmp_path: Path) -> None:
    assert make_url(database_url(f"sqlite:///{tmp_path}/a%3Fb.db", tmp_path)).database == f"{tmp_path}/a?b.db"
    for given in ("sqlite://", "sqlite:///:memory:", "sqlite:///a.db?mode=memory&uri=true", "sqlite+pysqlite:///x?a=b"):
        with pytest.raises(InputFault):
            database_url(given, tmp_path)


@pytest.mark.parametrize("name", [name for name in NAMES if name not in ("-leading.db", "~tilde.db")])
def test_surveys_and_outputs_are_where_their_paths_say(
    name: str, spoutline: Any, written: Callable[..., Path], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = tmp_path / "work"
    folder.mkdir()
    monkeypatch.chdir(folder)
    Path(f"{name}.json").write_bytes(written().read_bytes())
    done = spoutline("bill", f"{name}.json", "--csv", f"{name}.csv")
    assert done.code == 0, done.err
    assert sorted(path.name for path in folder.iterdir()) == sorted([f"{name}.csv", f"{name}.json"])


def test_a_name_that_is_no_text_is_told_and_opens_what_it_names(
    written: Callable[..., Path], own_database: Path, tmp_path: Path
) -> None:
    """Names are bytes on POSIX systems (IEEE Std 1003.1, 3.170): not every one is UTF-8."""
    raw = os.fsencode(tmp_path) + b"/odd\xff.json"
    Path(os.fsdecode(raw)).write_bytes(written().read_bytes())
    program = [sys.executable, "-m", "spoutline", "--database", str(own_database)]
    done = subprocess.run([*program, "plan", raw, "--json"], check=False, capture_output=True)
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout)
    missing = subprocess.run([*program, "plan", raw + b"x"], check=False, capture_output=True)
    assert missing.returncode == 2
    assert b"Traceback" not in missing.stderr
