"""The tables of a store brought to the newest revision, all or nothing."""

from __future__ import annotations

import logging
import threading
from pathlib import Path

from sqlalchemy import Connection, Engine, inspect, text

import spoutline
from spoutline.database.engine import shown_url, url_of, writing
from spoutline.database.faults import first_line, store_faults
from spoutline.frozen import frozen
from spoutline.model.faults import NewerStore, StoreFault
from spoutline.model.worded import Worded

_ONE_AT_A_TIME = threading.Lock()  # alembic keeps the migration in hand in a variable of its module


@frozen(kw_only=True)
class Schema:
    """The tables of one store, as alembic's scripts in ``migrations`` make them.

    ``called`` begins a message about the store, before the name of its database; ``lock`` is what its writers queue
    up for on a server. The version of the program that last migrated the tables is noted in ``noted_in``, a table of
    names and values, where the database has it: a program that is older can name it then.
    """

    called: str
    lock: str
    version_table: str
    newest: str
    migrations: Path
    noted_in: str = "settings"

    def bring_up_to_date(self, engine: Engine) -> None:
        """Migrate the tables to the newest revision in one transaction.

        Raise ``StoreFault`` where a step fails or a newer program wrote them: the database then stays as it was.
        """
        with store_faults(f"{self.called} {shown_url(url_of(engine))}", url_of(engine)):
            with engine.connect() as connection:
                if self.stored_revision(connection) == self.newest:
                    return
            with writing(engine, self.lock) as connection:
                self._upgrade(connection)

    def stored_revision(self, connection: Connection) -> str | None:
        """Return the revision that the database says its tables have; None where there are none yet."""
        if not inspect(connection).has_table(self.version_table):
            return None
        query = f"SELECT version_num FROM {self.version_table}"  # noqa: S608  (a constant of the program)
        return connection.execute(text(query)).scalar()

    def _upgrade(self, connection: Connection) -> None:
        from alembic import command
        from alembic.config import Config
        from alembic.util.exc import CommandError

        logging.getLogger("alembic").setLevel(logging.WARNING)
        config = Config()
        config.set_main_option("script_location", str(self.migrations).replace("%", "%%"))
        config.attributes["connection"] = connection
        url = url_of(connection.engine)
        place = f"{self.called} {shown_url(url)}"
        try:
            with _ONE_AT_A_TIME:
                command.upgrade(config, "head")
            self._note_program(connection)
        except CommandError as fault:
            raise NewerStore(
                place,
                form=str(self.stored_revision(connection)),
                written_by=self._noted_program(connection),
                known_form=self.newest,
                program=spoutline.__version__,
            ) from fault
        except Exception as fault:
            raise StoreFault(
                Worded(
                    "{place} could not be brought to the form that this version needs: {reason}. It was "
                    "left as it was.",
                    place=place,
                    reason=first_line(fault, url),
                )
            ) from fault

    def _note_program(self, connection: Connection) -> None:
        if not inspect(connection).has_table(self.noted_in):
            return
        noted = {"name": self._note_name, "value": spoutline.__version__}
        connection.execute(text(f"DELETE FROM {self.noted_in} WHERE name = :name"), noted)  # noqa: S608  (a constant)
        connection.execute(text(f"INSERT INTO {self.noted_in} (name, value) VALUES (:name, :value)"), noted)  # noqa: S608

    def _noted_program(self, connection: Connection) -> str:
        """Return the version that last migrated the tables; empty where it is not noted."""
        if not inspect(connection).has_table(self.noted_in):
            return ""
        query = text(f"SELECT value FROM {self.noted_in} WHERE name = :name")  # noqa: S608  (a constant)
        return str(connection.execute(query, {"name": self._note_name}).scalar() or "")

    @property
    def _note_name(self) -> str:
        return f"{self.version_table} written by"
