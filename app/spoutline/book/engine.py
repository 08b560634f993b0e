"""One SQLAlchemy engine for the book: SQLite in WAL with full synchronisation, or whatever the URL names."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import ArgumentError, DBAPIError, NoSuchModuleError, SQLAlchemyError

from spoutline.book.file_watch import make_file, watch_file, watched_path
from spoutline.book.passing import Patience, connect_arguments, store_fault
from spoutline.discretion import discreet, shown_address
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from sqlalchemy.engine.interfaces import DBAPIConnection
    from sqlalchemy.pool import ConnectionPoolEntry


def book_engine(url: str, patience: Patience = Patience.USUAL, *, may_create: bool = True) -> Engine:
    """Return the engine for ``url``; raise ``InputFault`` where no driver understands it.

    ``patience`` says how long a step waits for a lock or a server before it gives up with ``BusyStore``. A missing
    SQLite file is made here and at no other time, where it ``may_create`` one; raise ``StoreFault`` where it cannot.
    """
    try:
        parsed = make_url(url)
        engine = create_engine(parsed, connect_args=connect_arguments(parsed, patience), pool_pre_ping=True)
    except (ArgumentError, NoSuchModuleError, ModuleNotFoundError, ValueError) as fault:
        wanted = f"give a path, or a URL such as sqlite:///file or postgresql://host/name ({_first_line(fault, url)})"
        raise InputFault((InputProblem("", "database", repr(shown_address(url)), wanted),)) from None
    if engine.dialect.name == "sqlite":
        path = watched_path(engine)
        if path is not None and may_create:
            make_file(path)
        _make_durable(engine, patience)
        watch_file(engine)
    return engine


@contextmanager
def store_faults(url: str) -> Iterator[None]:
    """Turn a failing database into a ``StoreFault`` that a person can read."""
    try:
        yield
    except SQLAlchemyError as fault:
        cause = fault.orig if isinstance(fault, DBAPIError) else fault
        raise store_fault(cause or fault, f"The database {shown_url(url)}", url) from fault


def shown_url(url: str) -> str:
    """Return the URL as it may be shown: an SQLite file by its path, any other without its password."""
    if url.partition("://")[0].partition("+")[0] == "sqlite":
        return str(make_url(url).database)
    return shown_address(url)


def file_of(url: str) -> Path | None:
    """Return the file of an SQLite database; None for a server or for what is no address."""
    try:
        parsed = make_url(url)
    except (ArgumentError, ValueError):
        return None  # opening it tells what is wrong
    return Path(parsed.database) if parsed.get_backend_name() == "sqlite" and parsed.database else None


def _make_durable(engine: Engine, patience: Patience) -> None:
    """Let a commit survive a crash of the process (WAL) and of the machine (synchronous FULL).

    The driver's own transaction handling is switched off: it would commit before each change of the schema, so that a
    failed migration could not be rolled back.
    """

    @event.listens_for(engine, "connect")
    def on_connect(connection: DBAPIConnection, _entry: ConnectionPoolEntry) -> None:
        connection.isolation_level = None
        cursor = connection.cursor()
        cursor.execute(f"PRAGMA busy_timeout = {patience.value}")
        cursor.execute("PRAGMA journal_mode = WAL")
        cursor.execute("PRAGMA synchronous = FULL")
        cursor.execute("PRAGMA foreign_keys = ON")
        cursor.close()

    @event.listens_for(engine, "begin")
    def on_begin(connection: Connection) -> None:
        # A writer takes its lock at once: two of them queue up, where a late upgrade of a read lock would fail.
        connection.exec_driver_sql("BEGIN IMMEDIATE" if connection.get_execution_options().get("writes") else "BEGIN")


def _first_line(fault: BaseException, url: str) -> str:
    return discreet((str(fault).strip() or type(fault).__name__).splitlines()[0].rstrip("."), url)
