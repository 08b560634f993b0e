"""One SQLAlchemy engine for every store: SQLite in WAL with full synchronisation, or whatever the URL names."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, Engine, StaticPool, create_engine, event, make_url, text
from sqlalchemy.exc import ArgumentError, NoSuchModuleError

from spoutline.database.faults import Patience, connect_arguments, first_line
from spoutline.database.file_watch import IN_MEMORY, make_file, watch_file, watched_path
from spoutline.discretion import shown_address
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from sqlalchemy.engine.interfaces import DBAPIConnection
    from sqlalchemy.orm import Session
    from sqlalchemy.pool import ConnectionPoolEntry


def open_engine(url: str, patience: Patience = Patience.USUAL, *, may_create: bool = True) -> Engine:
    """Return the engine for ``url``; raise ``InputFault`` where no driver understands it.

    ``patience`` says how long a step waits for a lock or a server before it gives up with ``BusyStore``. A missing
    SQLite file is made here and at no other time, where it ``may_create`` one, whole at once, so that several first
    starts share it; raise ``StoreFault`` where it cannot.
    """
    try:
        parsed = make_url(url)
        arguments = connect_arguments(parsed, patience)
        options: dict[str, Any] = {}
        if parsed.get_backend_name() == "sqlite" and parsed.database in IN_MEMORY:
            options["poolclass"] = StaticPool  # threads share a database in memory; of a file each has a connection
            arguments["check_same_thread"] = False
        engine = create_engine(parsed, connect_args=arguments, pool_pre_ping=True, **options)
    except (ArgumentError, NoSuchModuleError, ModuleNotFoundError, ValueError) as fault:
        wanted = Worded(
            "give a path, or a URL such as sqlite:///file or postgresql://host/name ({reason})",
            reason=first_line(fault, url),
        )
        raise InputFault((InputProblem("", "database", repr(shown_address(url)), wanted),)) from None
    if engine.dialect.name == "sqlite":
        path = watched_path(engine)
        if path is not None and may_create:
            make_file(path)
        _make_durable(engine, patience)
        watch_file(engine)
    return engine


@contextmanager
def writing(engine: Engine, lock: str) -> Iterator[Connection]:
    """Open a transaction that writes: it takes its lock at once, so that two writers queue up instead of failing.

    ``lock`` names what is written: on a server, which locks no whole database, writers of the same name queue up.
    """
    with engine.connect().execution_options(writes=True) as connection, connection.begin():
        if connection.dialect.name == "postgresql":
            connection.execute(text("SELECT pg_advisory_xact_lock(hashtext(:lock))"), {"lock": lock})
        yield connection


def queue_up(session: Session, lock: str) -> None:
    """Wait until no other transaction on a server holds this lock; it is held until the end of this one.

    Where somebody else may write the same row between looking and writing, ask for it before looking. SQLite lets only
    one transaction write at a time.
    """
    if session.get_bind().dialect.name == "postgresql":
        session.execute(text("SELECT pg_advisory_xact_lock(hashtext(:lock))"), {"lock": lock})


def shown_url(url: str) -> str:
    """Return the URL as it may be shown: an SQLite file by its path, any other without its password."""
    if url.partition("://")[0].partition("+")[0] == "sqlite":
        return str(make_url(url).database or "memory")
    return shown_address(url)


def url_of(engine: Engine) -> str:
    """Return the URL of an engine with its secrets, for what takes an address; never to be shown."""
    return engine.url.render_as_string(hide_password=False)


def file_of(url: str) -> Path | None:
    """Return the file of an SQLite database; None for a server, for one in memory and for what is no address."""
    try:
        parsed = make_url(url)
    except (ArgumentError, ValueError):
        return None  # opening it tells what is wrong
    if parsed.get_backend_name() != "sqlite" or parsed.database is None or parsed.database in IN_MEMORY:
        return None
    return Path(parsed.database)


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
