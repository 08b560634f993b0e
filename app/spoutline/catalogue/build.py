"""The catalogues of a book opened, *Demonstration* compiled first where its source has another text."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Engine, select

from spoutline.catalogue.schema import CATALOGUE_SCHEMA, store_faults
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.catalogue.source_files import fingerprint_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.catalogue.tables import CatalogueRow, StateRow
from spoutline.database.engine import open_engine
from spoutline.database.faults import Patience
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef


def open_shelf(url: str, source: Path, *, may_create: bool = True, columns: Path | None = None) -> CatalogueShelf:
    """Open the catalogues at a SQLAlchemy ``url``; compile ``source`` first where *Demonstration* has another text.

    A missing SQLite file is made where it ``may_create`` one; ``columns`` is the folder for columns of editions. Raise
    ``InputFault`` for a bad source and ``StoreFault`` for a failing database; either leaves it as it was.
    """
    engine = open_engine(url, Patience.LONG, may_create=may_create)
    try:
        CATALOGUE_SCHEMA.bring_up_to_date(engine)
        stored, left_out = _stored(engine)
        if not left_out and stored != fingerprint_of(source):
            from spoutline.catalogue.compile import compile_catalogue  # checks and models of rows: seldom needed

            compile_catalogue(source, engine)
    except BaseException:
        engine.dispose()
        raise
    return CatalogueShelf(engine, columns)


def ensure_catalogue(url: str, source: Path, *, may_create: bool = True) -> CatalogueStore:
    """Open the newest edition of *Demonstration*; otherwise as ``open_shelf``."""
    return open_shelf(url, source, may_create=may_create).parts(EditionRef(DEMONSTRATION))


def _stored(engine: Engine) -> tuple[str | None, bool]:
    """Return the fingerprint that *Demonstration* was compiled from, and whether the book does without it."""
    compiled = select(CatalogueRow.source_fingerprint).where(CatalogueRow.name == DEMONSTRATION)
    with store_faults(engine), engine.connect() as connection:
        left_out = connection.execute(select(StateRow.demonstration_left_out)).scalar()
        return connection.execute(compiled).scalar(), bool(left_out)
