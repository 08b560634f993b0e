"""The source tables compiled into the database: all of them, or nothing."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, Engine, delete, insert, select

from spoutline.catalogue.part_records import Columns, rows_of
from spoutline.catalogue.schema import CATALOGUE_SCHEMA, store_faults
from spoutline.catalogue.source import SourceCatalogue, fingerprint_of, read_source
from spoutline.catalogue.store import CatalogueStore
from spoutline.catalogue.tables import CatalogueTable, EditionRow, MakerRow, PartRecord
from spoutline.database.engine import open_engine, writing
from spoutline.database.faults import Patience

_EDITION_KEY = 1  # the only row of its table
_INSERT_CHUNK = 5_000  # parts whose rows are held in memory at once


@dataclass(frozen=True, slots=True, kw_only=True)
class BuildReport:
    """What a compilation put into the database."""

    edition: str
    fingerprint: str
    parts_count: int
    makers_count: int


def ensure_catalogue(url: str, source: Path, *, may_create: bool = True) -> CatalogueStore:
    """Open the catalogue at a SQLAlchemy ``url``; compile ``source`` first where the database has another text.

    A missing SQLite file is made where it ``may_create`` one. Raise ``InputFault`` for a bad source and ``StoreFault``
    for a failing database; either leaves it as it was.
    """
    engine = open_engine(url, Patience.LONG, may_create=may_create)
    try:
        CATALOGUE_SCHEMA.bring_up_to_date(engine)
        if _stored_fingerprint(engine) != fingerprint_of(source):
            compile_catalogue(source, engine)
    except BaseException:
        engine.dispose()
        raise
    return CatalogueStore(engine)


def compile_catalogue(source: Path, engine: Engine) -> BuildReport:
    """Check every source table, then replace the whole catalogue in one transaction.

    The tables must exist already (``CATALOGUE_SCHEMA.bring_up_to_date``). Raise ``InputFault`` with every fault of
    every row, or ``StoreFault``; the database then stays as it was.
    """
    catalogue = read_source(source)
    replace_catalogue(engine, catalogue)
    return BuildReport(
        edition=catalogue.edition,
        fingerprint=catalogue.fingerprint,
        parts_count=len(catalogue.parts),
        makers_count=len(catalogue.makers),
    )


def replace_catalogue(engine: Engine, catalogue: SourceCatalogue) -> None:
    """Put ``catalogue`` in the place of what the database holds, in one transaction; raise ``StoreFault``."""
    with store_faults(engine), writing(engine, CATALOGUE_SCHEMA.lock) as connection:
        last_id = connection.execute(select(EditionRow.last_part_id)).scalar() or 0
        for table in reversed(CatalogueTable.metadata.sorted_tables):
            connection.execute(delete(table))
        _insert_parts(connection, catalogue, first_id=last_id + 1)
        makers = [{"prefix": maker.prefix, "name": maker.name} for maker in catalogue.makers]
        if makers:
            connection.execute(insert(MakerRow), makers)
        edition: Columns = {"id": _EDITION_KEY, "edition": catalogue.edition, "fingerprint": catalogue.fingerprint}
        connection.execute(insert(EditionRow), [edition | {"last_part_id": last_id + len(catalogue.parts)}])


def _insert_parts(connection: Connection, catalogue: SourceCatalogue, *, first_id: int) -> None:
    parts = catalogue.parts
    for start in range(0, len(parts), _INSERT_CHUNK):
        rows: dict[type[CatalogueTable], list[Columns]] = defaultdict(list)
        for offset, part in enumerate(parts[start : start + _INSERT_CHUNK], start):
            for table, columns in rows_of(part, first_id + offset):
                rows[table].append(columns)
        rows_first = sorted(rows, key=lambda table: table is not PartRecord)  # what the others refer to
        for table in rows_first:
            connection.execute(insert(table), rows[table])


def _stored_fingerprint(engine: Engine) -> str | None:
    with store_faults(engine), engine.connect() as connection:
        return connection.execute(select(EditionRow.fingerprint)).scalar()
