"""Where the database is: a path or a URL as a person gives it, turned into the URL that SQLAlchemy opens."""

from __future__ import annotations

import re
from pathlib import Path
from urllib.parse import unquote

from spoutline.discretion import shown_address
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

_SCHEME = re.compile(r"([A-Za-z][A-Za-z0-9+.-]*)://")
DEFAULT_FILE = "spoutline.sqlite3"
_DRIVERS = {"postgresql": "postgresql+psycopg", "postgres": "postgresql+psycopg"}


_COMPANIONS = ("-wal", "-shm", "-journal")  # files that SQLite keeps beside a database: sqlite.org/tempfiles.html


def database_files(given: str | None, user_folder: Path) -> tuple[Path, ...]:
    """Return the files of the database that was given, there or not; none where a server keeps it. Makes nothing."""
    path = file_given(given, user_folder)
    return () if path is None else (path, *(path.with_name(f"{path.name}{ending}") for ending in _COMPANIONS))


def database_url(given: str | None, user_folder: Path) -> str:
    """Return the SQLAlchemy URL for what was given: nothing, a path, or a URL.

    Nothing means a file in ``user_folder``. Folders on the way to an SQLite file are made. Raise ``InputFault`` where
    the text is neither, or the folder cannot be made.
    """
    if given is not None and not given.strip():
        raise _fault(given, "give the path of a database file, or a database URL")
    path = file_given(given, user_folder)
    if path is not None:
        return _sqlite_url(path)
    scheme, _, rest = str(given).partition("://")
    if scheme.partition("+")[0] == "sqlite":
        wanted = "an SQLite database must be a file, so that nothing is lost"
        if "?" in rest:
            wanted = "options of the driver are not taken; a question mark in the name of a file is written %3F here"
        raise _fault(str(given), wanted)
    return f"{_DRIVERS.get(scheme, scheme)}://{rest}"


def file_given(given: str | None, user_folder: Path) -> Path | None:
    """Return the database file that was given; None for the URL of a server, or of a database in memory."""
    if given is None:
        return user_folder / DEFAULT_FILE
    scheme = _SCHEME.match(given)
    if scheme is None:
        try:
            return Path(given).expanduser().absolute()
        except RuntimeError:  # a ~ of nobody who is known here is a sign of the name
            return Path(given).absolute()
    if scheme[1].partition("+")[0] != "sqlite":
        return None
    # behind a question mark stand the driver's options, such as `uri=true`, which make another file of the name
    name = unquote(given[scheme.end() :]).removeprefix("/")
    return None if name in ("", ":memory:") or "?" in given else Path(name).absolute()


def _sqlite_url(path: Path) -> str:
    path = path.absolute()
    try:
        is_folder = path.is_dir()
    except OSError as fault:
        wanted = Worded("it cannot be read ({reason})", reason=fault.strerror or fault)
        raise _fault(str(path), wanted) from fault
    if is_folder:
        raise _fault(str(path), "this is a folder; name a database file in it")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise _fault(
            str(path), Worded("its folder cannot be made ({reason})", reason=fault.strerror or fault)
        ) from fault
    from sqlalchemy import URL

    return URL.create("sqlite", database=str(path)).render_as_string(hide_password=False)


def _fault(given: str, wanted: str) -> InputFault:
    return InputFault((InputProblem("", "database", repr(shown_address(given)), wanted),))
