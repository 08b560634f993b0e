"""The book's tables brought to the newest revision, all or nothing."""

from __future__ import annotations

import logging
from pathlib import Path

from sqlalchemy import Connection, Engine, inspect, text

from spoutline.discretion import discreet
from spoutline.model.faults import StoreFault

VERSION_TABLE = "book_version"
NEWEST = "book_0005"
MIGRATIONS = Path(__file__).parent / "migrations"


def bring_up_to_date(engine: Engine, shown: str, migrations: Path = MIGRATIONS) -> None:
    """Migrate the book to the newest revision in one transaction.

    Arguments: ``shown`` names the database in messages; ``migrations`` is alembic's script folder. Raise
    ``StoreFault`` where a step fails or the book was written by a newer program: the book then stays as it was.
    """
    with engine.connect() as connection:
        if stored_revision(connection) == NEWEST:
            return
    with engine.connect().execution_options(writes=True) as connection, connection.begin():
        if connection.dialect.name == "postgresql":
            connection.execute(text("SELECT pg_advisory_xact_lock(hashtext('spoutline book'))"))
        _upgrade(connection, shown, migrations)


def stored_revision(connection: Connection) -> str | None:
    """Return the revision that the database says it has; None where the book has no tables yet."""
    if not inspect(connection).has_table(VERSION_TABLE):
        return None
    return connection.execute(text(f"SELECT version_num FROM {VERSION_TABLE}")).scalar()  # noqa: S608  (a constant)


def _upgrade(connection: Connection, shown: str, migrations: Path) -> None:
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
            f"The database {shown} was written by another version of the program ({stored_revision(connection)}) and "
            f"was left as it is. Use the newer program, or another database."
        ) from fault
    except Exception as fault:
        reason = (str(fault).strip() or type(fault).__name__).splitlines()[0]
        raise StoreFault(
            f"The database {shown} could not be brought to the form that this version needs: "
            f"{discreet(reason, connection.engine.url.render_as_string(hide_password=False))}. It was left as it was."
        ) from fault
