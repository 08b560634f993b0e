"""How long the entries of a large catalogue take to be found while somebody types.

Run on request: ``pytest -s tests/bench/test_entry_search.py --benchmark-only``. Figures are printed, never asserted.
``SPOUTLINE_BENCH_PARTS`` is the number of parts, 100,000 where it is not set.
"""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bench.generated_parts import generated_parts
from spoutline.catalogue.descriptions import entry_of
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.model.catalogue_edition import EditionRef

PARTS = int(os.environ.get("SPOUTLINE_BENCH_PARTS", "100000"))
NAME = "Large list"
SHOWN = 300  # as the window shows


@pytest.fixture(scope="module")
def shelf(tmp_path_factory: pytest.TempPathFactory) -> Iterator[CatalogueShelf]:
    """Yield a book with one large draft."""
    engine = open_engine(f"sqlite:///{tmp_path_factory.mktemp('search') / 'book.sqlite3'}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine)
    shelf.create(NAME)
    with shelf.draft(NAME) as desk:
        desk.put(entry_of(part) for part in generated_parts(PARTS, seed=7))
    yield shelf
    shelf.close()


@pytest.mark.parametrize("text", ["", "n", "no", "nozzle", "nozzle 12", "1234", "no such part"])
def test_entries_are_found_while_somebody_types(benchmark: BenchmarkFixture, shelf: CatalogueShelf, text: str) -> None:
    found = benchmark(shelf.find, EditionRef(NAME, is_draft=True), text, limit=SHOWN)
    print(f"\n{text!r}: {found[1]} entries")
