"""Where the database is: a path or a URL as a person gives it, turned into the URL that SQLAlchemy opens."""

from __future__ import annotations

from pathlib import Path

from spoutline.model.faults import InputFault, InputProblem

DEFAULT_FILE = "spoutline.sqlite3"
_DRIVERS = {"postgresql": "postgresql+psycopg", "postgres": "postgresql+psycopg"}


def database_url(given: str | None, user_folder: Path) -> str:
    """Return the SQLAlchemy URL for what was given: nothing, a path, or a URL.

    Nothing means a file in ``user_folder``. Folders on the way to an SQLite file are made. Raise ``InputFault`` where
    the text is neither, or the folder cannot be made.
    """
    if given is None:
        return _sqlite_url(user_folder / DEFAULT_FILE)
    if not given.strip():
        raise _fault(given, "give the path of a database file, or a database URL")
    scheme, colon, rest = given.partition("://")
    if not colon:
        return _sqlite_url(Path(given).expanduser())
    if scheme == "sqlite":
        name = rest.removeprefix("/")
        if name in ("", ":memory:"):
            raise _fault(given, "an SQLite database must be a file, so that nothing is lost")
        return _sqlite_url(Path(name))
    return f"{_DRIVERS.get(scheme, scheme)}://{rest}"


def _sqlite_url(path: Path) -> str:
    path = path.absolute()
    if path.is_dir():
        raise _fault(str(path), "this is a folder; name a database file in it")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise _fault(str(path), f"its folder cannot be made ({fault.strerror or fault})") from fault
    return f"sqlite:///{path}"


def _fault(given: str, wanted: str) -> InputFault:
    return InputFault((InputProblem("", "database", repr(given), wanted),))
