"""One SQLAlchemy engine for the book: SQLite in WAL with full synchronisation, or whatever the URL names."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from sqlalchemy import Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import ArgumentError, DBAPIError, NoSuchModuleError, SQLAlchemyError

from spoutline.model.faults import InputFault, InputProblem, StoreFault

if TYPE_CHECKING:
    from sqlalchemy.engine.interfaces import DBAPIConnection
    from sqlalchemy.pool import ConnectionPoolEntry

_BUSY_TIMEOUT_MS = 15_000


def book_engine(url: str) -> Engine:
    """Return the engine for ``url``; raise ``InputFault`` where no driver understands it."""
    try:
        engine = create_engine(url)
    except (ArgumentError, NoSuchModuleError, ModuleNotFoundError, ValueError) as fault:
        wanted = f"give a path, or a URL such as sqlite:///file or postgresql://host/name ({_first_line(fault)})"
        raise InputFault((InputProblem("", "database", repr(url), wanted),)) from fault
    if engine.dialect.name == "sqlite":
        _make_durable(engine)
    return engine


@contextmanager
def store_faults(url: str) -> Iterator[None]:
    """Turn a failing database into a ``StoreFault`` that a person can read."""
    try:
        yield
    except SQLAlchemyError as fault:
        cause = fault.orig if isinstance(fault, DBAPIError) else fault
        raise StoreFault(f"The database {shown_url(url)} cannot be used: {_first_line(cause or fault)}.") from fault


def shown_url(url: str) -> str:
    """Return the URL as it may be shown: an SQLite file by its path, any other without its password."""
    parsed = make_url(url)
    if parsed.get_backend_name() == "sqlite":
        return str(parsed.database)
    return parsed.render_as_string(hide_password=True)


def _make_durable(engine: Engine) -> None:
    """Let a commit survive a crash of the process (WAL) and of the machine (synchronous FULL).

    The driver's own transaction handling is switched off: it would commit before each change of the schema, so that a
    failed migration could not be rolled back.
    """

    @event.listens_for(engine, "connect")
    def on_connect(connection: DBAPIConnection, _entry: ConnectionPoolEntry) -> None:
        connection.isolation_level = None
        cursor = connection.cursor()
        cursor.execute(f"PRAGMA busy_timeout = {_BUSY_TIMEOUT_MS}")
        cursor.execute("PRAGMA journal_mode = WAL")
        cursor.execute("PRAGMA synchronous = FULL")
        cursor.execute("PRAGMA foreign_keys = ON")
        cursor.close()

    @event.listens_for(engine, "begin")
    def on_begin(connection: Connection) -> None:
        # A writer takes its lock at once: two of them queue up, where a late upgrade of a read lock would fail.
        connection.exec_driver_sql("BEGIN IMMEDIATE" if connection.get_execution_options().get("writes") else "BEGIN")


def _first_line(fault: BaseException) -> str:
    return (str(fault).strip() or type(fault).__name__).splitlines()[0].rstrip(".")
