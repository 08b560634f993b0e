"""What a price file of very many rows costs: time and memory until its parts lie in a draft.

Run on request: ``pytest tests/bench/test_table_intake.py -s``. The figures are printed only.
``SPOUTLINE_BENCH_ROWS`` is the number of rows, 100,000 where it is not set. The aim is 60 s and 500 MB on two cores.
"""

from __future__ import annotations

import os
import time
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bench.figures import peak_mib
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult, open_supplier_table, take_in

ROWS = int(os.environ.get("SPOUTLINE_BENCH_ROWS", "100000"))
NAME = "Large list"
TITLES = "Part No.,Description,Kind,Bore (in),Length (ft),Materials,Weight (lb),Inlet,Outlet,List price USD"
# maker, numbers and prices are invented
SAID = {"maker": "Quillwort Works", "supplier": "Fennel Supply"}


def written(path: Path, cents: int) -> Path:
    """Write a table of hoses that lack some of their figures."""
    with path.open("w", encoding="utf-8") as file:
        file.write(f"{TITLES}\n")
        for number in range(ROWS):
            feet, price = number % 20 + 5, (1000 + number % 977 + cents) / 100
            file.write(
                f'QX-{number},"3/4"" x {feet}\' hardwall",curb hose,3/4,{feet},"nbr, brass",{1 + number % 37 / 10},'
                f"NPT 3/4 male single,NPT 3/4 male single,{price:.2f}\n"
            )
    return path


def taken_in(shelf: CatalogueShelf, opened: OpenedTable) -> TableResult:
    """Take a table into the draft."""
    with shelf.draft(NAME) as desk:
        return take_in(desk, opened, lambda _rows: True)


@pytest.mark.timeout(3600)
def test_a_table_of_very_many_rows(benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    engine = open_engine(f"sqlite:///{tmp_path / 'book.sqlite3'}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine)
    shelf.create(NAME)
    before_mb = peak_mib()
    for what, cents in (("new parts", 0), ("changed prices", 7)):
        begun, used = time.perf_counter(), time.process_time()
        result = taken_in(shelf, open_supplier_table(written(tmp_path / f"p{cents}.csv", cents), (), SAID, {}))
        took, of_processor = time.perf_counter() - begun, time.process_time() - used
        counts = result.changes
        print(
            f"\n{ROWS} rows, {what}: {took:.1f} s ({of_processor:.1f} s of a processor), new {counts.new}, "
            f"changed {counts.changed}, peak {peak_mib():.0f} MiB, {peak_mib() - before_mb:.0f} MiB above the start"
        )
        assert result.report.is_sound
    opened = open_supplier_table(tmp_path / "p7.csv", (), SAID, {})
    benchmark.pedantic(taken_in, (shelf, opened), rounds=1)  # nothing changes
    shelf.close()
