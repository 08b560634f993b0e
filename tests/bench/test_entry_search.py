"""How long the entries of a large catalogue take to be found while somebody types.

Run on request: ``pytest tests/bench/test_entry_search.py -s``. Figures are printed, never asserted.
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
from spoutline.model.catalogue_entry import CatalogueEntry

PARTS = int(os.environ.get("SPOUTLINE_BENCH_PARTS", "100000"))
NAME = "Large list"
SHOWN = 300  # as the window shows


def entries(count: int) -> Iterator[CatalogueEntry]:
    """Yield entries with all their figures that lack their lead times: they are found like described ones."""
    drawn = [entry_of(part) for part in generated_parts(min(count, 5_000), seed=7)]
    for serial in range(count):
        like = drawn[serial % len(drawn)]
        number = f"{like.number[:4]}{serial:06d}"
        changes = {"number": number, "lead_days": None, "item_number": f"S {serial * 7 % count:06d}"}
        yield like.model_copy(update=changes)


@pytest.fixture(scope="module")
def shelf(tmp_path_factory: pytest.TempPathFactory) -> Iterator[CatalogueShelf]:
    """Yield a book with one large draft."""
    engine = open_engine(f"sqlite:///{tmp_path_factory.mktemp('search') / 'book.sqlite3'}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine)
    shelf.create(NAME)
    with shelf.draft(NAME) as desk:
        desk.put(entries(PARTS))
    yield shelf
    shelf.close()


@pytest.mark.parametrize(
    "text", ["", "g", "gp-n", "gp-n0123", "1234", "3/4", "generated nozzle", "nozzle 12", "skylark", "no such part"]
)
def test_entries_are_found_while_somebody_types(benchmark: BenchmarkFixture, shelf: CatalogueShelf, text: str) -> None:
    found = benchmark(shelf.find, EditionRef(NAME, is_draft=True), text, limit=SHOWN)
    told = f"{found[1].number}" if found[1].is_all else f"more than {found[1].number}"
    print(f"\n{text!r}: {told} entries")
