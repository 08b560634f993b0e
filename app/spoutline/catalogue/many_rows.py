"""Many rows of a table written at once, their values in order: what a catalogue of real size is written with."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from sqlalchemy import Connection, insert

from spoutline.catalogue.tables import CatalogueTable

Row = tuple[Any, ...]  # values as the driver takes them; only the driver sees them
_VALUES_AT_ONCE: Final = 30_000  # below the 32,766 that one statement of SQLite takes


def insert_rows(
    connection: Connection,
    table: type[CatalogueTable],
    columns: Sequence[str],
    rows: Sequence[Row],
    *,
    fires_triggers: bool = False,
) -> None:
    """Write rows, each with the values of ``columns`` in their order.

    Where the table ``fires_triggers``, as few statements as SQLite takes write them all: before each statement with a
    trigger its full-text table writes down what it gathered, which a row at a time takes five times as long.
    """
    if connection.dialect.name != "sqlite":
        connection.execute(insert(table), [dict(zip(columns, row, strict=True)) for row in rows])
        return
    quote = connection.dialect.identifier_preparer.quote
    names = ", ".join(map(quote, columns))
    one = f"({', '.join('?' * len(columns))})"
    begun = f"INSERT INTO {quote(table.__table__.name)} ({names}) VALUES "  # noqa: S608  (names of our own tables)
    if not fires_triggers:
        connection.exec_driver_sql(begun + one, list(rows))
        return
    step = _VALUES_AT_ONCE // len(columns)
    for start in range(0, len(rows), step):
        some = rows[start : start + step]
        connection.exec_driver_sql(begun + ", ".join([one] * len(some)), tuple(value for row in some for value in row))
