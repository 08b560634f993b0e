"""The source tables of the invented catalogue compiled into the database: all of them, or nothing."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Engine, insert, select, update

from spoutline.catalogue.descriptions import entry_of
from spoutline.catalogue.draft import DraftDesk
from spoutline.catalogue.editions import catalogue_row, published
from spoutline.catalogue.publishing import create_catalogue, publish_draft
from spoutline.catalogue.schema import CATALOGUE_SCHEMA, store_faults
from spoutline.catalogue.shelf_lookup import FIRST_STATE
from spoutline.catalogue.source import SourceCatalogue, read_source
from spoutline.catalogue.tables import CatalogueRow, StateRow
from spoutline.database.engine import writing
from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import DEMONSTRATION, CatalogueEdition


@frozen(kw_only=True)
class BuildReport:
    """What a compilation put into the database."""

    edition: CatalogueEdition
    fingerprint: str
    parts_count: int
    makers_count: int


def compile_catalogue(source: Path, engine: Engine) -> BuildReport:
    """Check every source table, then publish them as the next edition of *Demonstration* in one transaction.

    Where no part changed the newest edition stays the newest. The tables must exist already
    (``CATALOGUE_SCHEMA.bring_up_to_date``). Raise ``InputFault`` with every fault of every row, or ``StoreFault``; the
    database then stays as it was.
    """
    catalogue = read_source(source)
    return BuildReport(
        edition=publish_source(engine, catalogue),
        fingerprint=catalogue.fingerprint,
        parts_count=len(catalogue.parts),
        makers_count=len(catalogue.makers),
    )


def publish_source(engine: Engine, catalogue: SourceCatalogue) -> CatalogueEdition:
    """Let *Demonstration* hold what ``catalogue`` holds; raise ``StoreFault``."""
    with store_faults(engine), writing(engine, CATALOGUE_SCHEMA.lock) as connection:
        if connection.execute(select(StateRow.id)).scalar() is None:
            connection.execute(insert(StateRow), [FIRST_STATE])
        row = catalogue_row(connection, DEMONSTRATION) or create_catalogue(connection, DEMONSTRATION)
        desk = DraftDesk(connection, row.id, row.last_edition)
        desk.put(entry_of(part) for part in catalogue.parts)
        desk.keep_only({part.ref for part in catalogue.parts})
        desk.references.put(catalogue.references)
        desk.references.keep_only({one.ref for one in catalogue.references})
        noted = {"source_fingerprint": catalogue.fingerprint}
        connection.execute(update(CatalogueRow).where(CatalogueRow.id == row.id).values(**noted))
        newest = published(connection, row, row.last_edition)
        done, leading = desk.counts, desk.references
        if (
            newest is not None
            and newest.edition.title == catalogue.edition
            and not (done.new or done.changed or done.gone or leading.new or leading.changed or leading.gone)
        ):
            return newest.edition
        return publish_draft(connection, row, title=catalogue.edition, notes=catalogue.notes, publisher="", on=None)
