"""What a hundred editions of a large catalogue cost: room on the disk, and time to write, publish and read.

Run on request: ``pytest tests/bench/test_editions.py -s``. The figures are printed and never asserted.
``SPOUTLINE_BENCH_PARTS`` is the number of parts, 100,000 where it is not set; each edition changes one in a thousand.
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable
from datetime import date
from pathlib import Path

from pytest_benchmark.fixture import BenchmarkFixture

from bench.generated_parts import generated_parts
from spoutline.catalogue.descriptions import entry_of
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice
from spoutline.model.part import PartKind

PARTS = int(os.environ.get("SPOUTLINE_BENCH_PARTS", "100000"))
EDITIONS = 100
NAME = "Large list"


def test_a_hundred_editions(benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    file = tmp_path / "book.sqlite3"
    engine = open_engine(f"sqlite:///{file}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine)
    shelf.create(NAME)
    entries = [entry_of(part) for part in generated_parts(PARTS, seed=7)]
    told = [("parts written into the draft", _timed(lambda: _put(shelf, entries)))]
    told.append(("first edition published", _timed(lambda: _publish(shelf, 1))))
    one = _size(engine.url.database)
    changed = max(1, PARTS // 1000)
    started = time.perf_counter()
    for edition in range(2, EDITIONS + 1):
        place = (edition * changed) % PARTS
        prices = (EntryPrice(currency="USD", minor=edition),)
        _put(shelf, [entry.model_copy(update={"prices": prices}) for entry in entries[place : place + changed]])
        _publish(shelf, edition)
    told.append((f"{EDITIONS - 1} further editions of {changed} changes", time.perf_counter() - started))
    all_of_them = _size(engine.url.database)
    print(f"\n{PARTS} parts: one edition {one / 1e6:.1f} MB, {EDITIONS} editions {all_of_them / 1e6:.1f} MB")
    print(f"ratio {all_of_them / one:.2f}; copies would be {EDITIONS}")
    for what, seconds in told:
        print(f"{what}: {seconds:.1f} s")
    store = shelf.parts(EditionRef(NAME, EDITIONS // 2))
    print(f"nozzles of edition {EDITIONS // 2}, cold: {_timed(lambda: store.candidates(_NOZZLES)):.2f} s; then warm")
    benchmark(store.candidates, _NOZZLES)
    shelf.close()


_NOZZLES = CandidateFilter(kind=PartKind.NOZZLE)


def _put(shelf: CatalogueShelf, entries: list[CatalogueEntry]) -> None:
    with shelf.draft(NAME) as desk:
        desk.put(entries)


def _publish(shelf: CatalogueShelf, edition: int) -> None:
    shelf.publish(NAME, notes=f"edition {edition}", publisher="bench", on=date(2026, 1, 1))


def _timed(work: Callable[[], object]) -> float:
    started = time.perf_counter()
    work()
    return time.perf_counter() - started


def _size(name: str | None) -> int:
    return sum(path.stat().st_size for path in Path(str(name)).parent.glob(f"{Path(str(name)).name}*"))
