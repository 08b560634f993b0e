"""A writable copy of the source tables, and the compiled catalogue."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Engine

from catalogue_chains import remarks
from spoutline import assets
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.catalogue.source import SourceCatalogue, read_source
from spoutline.catalogue.store import CatalogueStore
from spoutline.database.engine import open_engine
from spoutline.model.part import Part, PartStatus
from stores.catalogue.entries import NAME


@pytest.fixture
def source(tmp_path: Path) -> Path:
    return Path(shutil.copytree(assets.catalogue_folder(), tmp_path / "catalog"))


@pytest.fixture
def url(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'catalogue.sqlite3'}"


@pytest.fixture(scope="session")
def reviewed() -> SourceCatalogue:
    return read_source(assets.catalogue_folder())


@pytest.fixture
def compiled_url(own_database: Path) -> str:
    """Return a database of the test's own into which the unchanged source is compiled already."""
    return f"sqlite:///{own_database}"


@pytest.fixture(scope="session")
def store(catalogue_store: CatalogueStore) -> CatalogueStore:
    return catalogue_store


@pytest.fixture(scope="session")
def sound(reviewed: SourceCatalogue) -> tuple[Part, ...]:
    """Active parts that are no near miss."""
    said = remarks()
    return tuple(
        part for part in reviewed.parts if part.status is PartStatus.ACTIVE and not said[part.number].startswith("trap")
    )


@pytest.fixture
def engine(tmp_path: Path) -> Iterator[Engine]:
    """Yield a book without a catalogue."""
    made = open_engine(f"sqlite:///{tmp_path / 'book.sqlite3'}")
    CATALOGUE_SCHEMA.bring_up_to_date(made)
    yield made
    made.dispose()


@pytest.fixture
def shelf(engine: Engine) -> CatalogueShelf:
    """Return a shelf with one catalogue, whose draft is empty."""
    made = CatalogueShelf(engine)
    made.create(NAME)
    return made
