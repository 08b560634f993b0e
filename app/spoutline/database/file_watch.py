"""The file under an open SQLite database: deleted or replaced, it is noticed before anything is called saved.

SQLite goes on writing into a file that nobody can open any more, and makes an empty one where a file is missing. Both
would lose what a person is told is saved; so a connection is used only while its file lies at the path it was opened
by, and none is opened where no file lies.
"""

from __future__ import annotations

import contextlib
import os
import secrets
import sqlite3
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from sqlalchemy import Engine
    from sqlalchemy.engine.interfaces import DBAPIConnection
    from sqlalchemy.pool import ConnectionPoolEntry, PoolProxiedConnection

APPLICATION_ID = 0x53504C4E  # "SPLN" in the header of a file that this program made (PRAGMA application_id)
IN_MEMORY = (None, "", ":memory:")  # what a URL of SQLite names where no file is meant
_KEY = "spoutline file"

FileIdentity = tuple[int, int]


def file_identity(path: Path) -> FileIdentity | None:
    """Return what tells the file at ``path`` from every other (device and number); None where there is none."""
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino


def gone(path: Path) -> StoreFault:
    """Return the fault of a book whose file is no longer at its place."""
    return StoreFault(
        Worded(
            "The file of the book, {path}, is no longer there: it was moved, renamed or deleted. "
            "Put it back, restore a backup, or write the survey to a file.",
            path=path,
        )
    )


def watched_path(engine: Engine) -> Path | None:
    """Return the file of an SQLite engine; None for a server and for a database in memory."""
    name = engine.url.database
    return None if engine.dialect.name != "sqlite" or name is None or name in IN_MEMORY else Path(name)


def make_file(path: Path) -> None:
    """Make an empty SQLite database in WAL mode at ``path``, whole or not at all; one that lies there stays as it is.

    Raise ``StoreFault`` where it cannot be made.
    """
    if path.exists():
        return
    part = path.with_name(f".{path.name[:40]}-{secrets.token_hex(4)}.part")
    try:
        with contextlib.closing(sqlite3.connect(part)) as connection:
            connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
            connection.execute("PRAGMA journal_mode = WAL")
        with contextlib.suppress(FileExistsError):
            _move_if_free(part, path)
    except (OSError, sqlite3.Error) as fault:
        raise StoreFault(
            Worded("The database {path} cannot be used: it cannot be made ({reason}).", path=path, reason=fault)
        ) from fault
    finally:
        for ending in ("", "-wal", "-shm", "-journal"):
            part.with_name(part.name + ending).unlink(missing_ok=True)


def _move_if_free(part: Path, path: Path) -> None:
    """Put a file at its place unless another lies there; raise ``FileExistsError`` then."""
    try:
        os.link(part, path)
    except FileExistsError:
        raise
    except OSError:  # a file system without links
        if path.exists():
            raise FileExistsError(path) from None
        part.rename(path)


def watch_file(engine: Engine) -> None:
    """Let ``engine`` use a connection only while its file lies where it was opened."""
    from sqlalchemy import event
    from sqlalchemy.exc import DisconnectionError

    path = watched_path(engine)
    if path is None:
        return

    @event.listens_for(engine, "do_connect")
    def before_connect(_dialect: object, entry: ConnectionPoolEntry, _arguments: object, _options: object) -> None:
        identity = file_identity(path)
        if identity is None:
            raise gone(path)
        entry.info[_KEY] = identity

    @event.listens_for(engine, "checkout")
    def on_checkout(_connection: DBAPIConnection, entry: ConnectionPoolEntry, _proxy: PoolProxiedConnection) -> None:
        identity = file_identity(path)
        if identity is None:
            raise gone(path)
        if identity != entry.info.get(_KEY):
            raise DisconnectionError("another file lies there now")  # the pool opens that one instead
