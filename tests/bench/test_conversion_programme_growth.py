"""How a programme grows with the number of sites: 20, 200 and 2,000 invented stations over all cores.

Run on request: ``pytest tests/bench/test_conversion_programme_growth.py -s``. Measured, never asserted.
"""

from __future__ import annotations

from functools import partial
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bench.generated_sites_conversion import write_sites
from spoutline.bootstrap import Settings
from spoutline.bootstrap.workbench import open_converting
from spoutline.model.programme import SiteOutcome
from spoutline.planning.conversion.folder import convert_files, surveys_of
from spoutline.planning.conversion.programme import programme_of
from spoutline.planning.conversion.programme_terms import ProgrammeTerms

SIZES = (20, 200, 2_000)


@pytest.mark.parametrize("count", SIZES)
def test_programme(benchmark: BenchmarkFixture, count: int, shared_database: Path, tmp_path: Path) -> None:
    write_sites(tmp_path, count)
    open_converter = partial(open_converting, Settings(database=str(shared_database)))

    def run() -> int:
        results, stopped = convert_files(surveys_of(tmp_path), open_converter)
        assert not stopped
        programme = programme_of(results, ProgrammeTerms(name="bench", budget=None, years=1))
        assert all(one.outcome is not SiteOutcome.FAULT for one in programme.others)
        return len(programme.ranked)

    assert benchmark.pedantic(run, rounds=1, iterations=1) > 0
