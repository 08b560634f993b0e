"""The database that holds the compiled catalogue: its engine, its migrations, its faults in plain words."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, Engine, StaticPool, create_engine, event, inspect, make_url, text
from sqlalchemy.exc import ArgumentError, DBAPIError, NoSuchModuleError, SQLAlchemyError

from spoutline.discretion import discreet, shown_address
from spoutline.model.faults import InputFault, InputProblem, StoreFault

if TYPE_CHECKING:
    from sqlalchemy.engine.interfaces import DBAPIConnection
    from sqlalchemy.pool import ConnectionPoolEntry

VERSION_TABLE = "catalogue_version"
MIGRATIONS = Path(__file__).parent / "migrations"
# the newest of the scripts: each is named after its revision, as catalogue_0001_parts.py
NEWEST = "_".join(max(script.stem for script in (MIGRATIONS / "versions").glob("catalogue_*.py")).split("_")[:2])
_BUSY_TIMEOUT_MS = 30_000  # a first compile by another window takes about a second


def catalogue_engine(url: str) -> Engine:
    """Return the engine for ``url``; raise ``InputFault`` where no driver understands it."""
    try:
        parsed = make_url(url)
        # Threads must share a database in memory, and a file has a connection for each of them.
        in_memory = parsed.get_backend_name() == "sqlite" and parsed.database in (None, "", ":memory:")
        options: dict[str, Any] = {"poolclass": StaticPool} if in_memory else {}
        if in_memory:
            options["connect_args"] = {"check_same_thread": False}
        engine = create_engine(parsed, **options)
    except (ArgumentError, NoSuchModuleError, ModuleNotFoundError, ValueError) as fault:
        wanted = (
            f"give a database URL such as sqlite:///file or postgresql+psycopg://host/name ({_first_line(fault, url)})"
        )
        raise InputFault((InputProblem("", "database", repr(shown_address(url)), wanted),)) from None
    if engine.dialect.name == "sqlite":
        _make_transactional(engine)
    return engine


@contextmanager
def store_faults(engine: Engine) -> Iterator[None]:
    """Turn a failing database into a ``StoreFault`` that a person can read."""
    try:
        yield
    except SQLAlchemyError as fault:
        cause = fault.orig if isinstance(fault, DBAPIError) else fault
        reason = _first_line(cause or fault, _address(engine))
        raise StoreFault(f"The catalog in {shown(engine)} cannot be used: {reason}.") from fault


def shown(engine: Engine) -> str:
    """Return the database as it may be shown: an SQLite file by its path, any other without its password."""
    if engine.dialect.name == "sqlite":
        return str(engine.url.database or "memory")
    return shown_address(_address(engine))


@contextmanager
def writing(engine: Engine) -> Iterator[Connection]:
    """Open a transaction that writes: it takes its lock at once, so that two writers queue up instead of failing."""
    with engine.connect().execution_options(writes=True) as connection, connection.begin():
        if connection.dialect.name == "postgresql":
            connection.execute(text("SELECT pg_advisory_xact_lock(hashtext('spoutline catalogue'))"))
        yield connection


def bring_up_to_date(engine: Engine, migrations: Path = MIGRATIONS) -> None:
    """Migrate the catalogue's tables to the newest revision in one transaction.

    ``migrations`` is alembic's script folder. Raise ``StoreFault`` where a step fails or the tables were made by a
    newer program: the database then stays as it was.
    """
    with store_faults(engine), engine.connect() as connection:
        if stored_revision(connection) == NEWEST:
            return
    with store_faults(engine), writing(engine) as connection:
        _upgrade(connection, shown(engine), migrations)


def stored_revision(connection: Connection) -> str | None:
    """Return the revision of the catalogue's tables; None where there are none yet."""
    if not inspect(connection).has_table(VERSION_TABLE):
        return None
    return connection.execute(text(f"SELECT version_num FROM {VERSION_TABLE}")).scalar()  # noqa: S608  (a constant)


def _upgrade(connection: Connection, shown_name: str, migrations: Path) -> None:
    from alembic import command
    from alembic.config import Config
    from alembic.util.exc import CommandError

    logging.getLogger("alembic").setLevel(logging.WARNING)
    config = Config()
    config.set_main_option("script_location", str(migrations).replace("%", "%%"))
    config.attributes["connection"] = connection
    try:
        command.upgrade(config, "head")
    except CommandError as fault:
        raise StoreFault(
            f"The catalog in {shown_name} was made by another version of the program "
            f"({stored_revision(connection)}) and was left as it is. Use the newer program, or another database."
        ) from fault
    except Exception as fault:
        raise StoreFault(
            f"The catalog in {shown_name} could not be brought to the form that this version needs: "
            f"{_first_line(fault, _address(connection.engine))}. It was left as it was."
        ) from fault


def _make_transactional(engine: Engine) -> None:
    """Switch off the driver's own transactions: they would commit before each change of the schema."""

    @event.listens_for(engine, "connect")
    def on_connect(connection: DBAPIConnection, _entry: ConnectionPoolEntry) -> None:
        connection.isolation_level = None
        cursor = connection.cursor()
        cursor.execute(f"PRAGMA busy_timeout = {_BUSY_TIMEOUT_MS}")
        cursor.execute("PRAGMA foreign_keys = ON")
        cursor.close()

    @event.listens_for(engine, "begin")
    def on_begin(connection: Connection) -> None:
        connection.exec_driver_sql("BEGIN IMMEDIATE" if connection.get_execution_options().get("writes") else "BEGIN")


def _address(engine: Engine) -> str:
    return engine.url.render_as_string(hide_password=False)


def _first_line(fault: BaseException, url: str) -> str:
    return discreet((str(fault).strip() or type(fault).__name__).splitlines()[0].rstrip("."), url)
