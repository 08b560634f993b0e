"""How long the work due at the stations of a book takes to list: with every station planned, and as it was kept.

Run on request: ``pytest tests/bench/test_due_work.py -s``. The figures are measured, never asserted. With
one small station 200 times (1,200 positions), on two cores beside other work in November 2026: 109 s where every
station was planned, 2.8 s where what they ask for was kept.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.settings import cache_folder
from spoutline.model.record import CommissioningRecord

_STATIONS = 200
_ON = date(2026, 11, 29)


@pytest.fixture(scope="module")
def bench(database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Workbench]:
    """Yield use cases over a book of stations whose every position has a record."""
    folder = tmp_path_factory.mktemp("due")
    path = folder / "book.sqlite3"
    path.write_bytes(database_to_copy.read_bytes())
    bench = open_workbench(Settings(database=str(path), profiles=folder / "profiles"))
    one = demo_survey("small_town")
    for number in range(_STATIONS):
        survey = one.model_copy(update={"site": one.site.model_copy(update={"name": f"Station {number:03}"})})
        bench.book().create(survey)
        bench.packing().records().add_commissionings(
            [(record(survey.site.name, position.label), {}) for position in survey.positions]
        )
    yield bench
    bench.close()


def record(site: str, position: str) -> CommissioningRecord:
    return CommissioningRecord(site=site, position=position, plan_revision="0" * 16, done_on=date(2025, 11, 20))


def forget() -> None:
    for path in (cache_folder() / "inspection_needs").glob("*"):
        path.unlink()


def test_every_station_planned(benchmark: BenchmarkFixture, bench: Workbench) -> None:
    found = benchmark.pedantic(bench.due_work().due, (_ON,), setup=forget, rounds=1)
    assert len({row.site.name for row in found.rows}) == _STATIONS


def test_as_it_was_kept(benchmark: BenchmarkFixture, bench: Workbench) -> None:
    first = bench.due_work().due(_ON)
    assert benchmark.pedantic(bench.due_work().due, (_ON,), rounds=3) == first
