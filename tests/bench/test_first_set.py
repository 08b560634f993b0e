"""From the columns of a catalogue to the first set on the screen, on kind and unkind positions; a table is printed.

Run on request: ``pytest tests/bench/test_first_set.py -s``. Processor milliseconds, the least of three, columns in
memory and the rest worked out anew each time: ``masks`` judges all parts of all places, ``first set`` is the whole plan
without alternatives (conflicts included where nothing fits), ``with alternatives`` all of it. The last column is the
exponent of growth of the first set from the size before. No time is asserted. How the search compares with CP-SAT is
measured in ``test_unkind_positions.py``.
"""

from __future__ import annotations

import json
import math
import os
import subprocess
import sys
import time
from collections.abc import Callable
from datetime import date
from functools import cache
from pathlib import Path

import pytest

from bench.column_stores import ColumnStore, generated_columns
from bench.generated_parts import generated_parts
from planning import surveys
from spoutline.catalogue.column_files import ColumnFiles
from spoutline.catalogue.descriptions import entry_of
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.limit import RuleTables
from spoutline.model.part import HANGING_KINDS
from spoutline.model.requirement import Requirement
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.pool import narrow_pool
from spoutline.rules.derive.requirement import requirement_for
from spoutline.ruletables.load import load_rule_tables

SIZES = (1_000, 10_000, 100_000, 1_000_000)[: int(os.environ.get("BENCH_SIZES", "4"))]  # fewer where time is short
POSITIONS = {
    "car": surveys.CAR,
    "truck": surveys.TRUCK,
    "marina": surveys.MARINA,
    "low hook": surveys.LOW_HOOK,
    "low pressure": surveys.LOW_PRESSURE,
    "weak outlet": surveys.SLIGHT_OUTLET,
    "E85": surveys.CAR_E85,
    "nothing fits": surveys.TOO_FAR,
}


@cache
def _tables() -> RuleTables:
    return load_rule_tables("us_general", resources=Path(__file__).parents[2] / "resources", own_profiles=None)


def _milliseconds(work: Callable[[], object], times: int = 3) -> float:
    spent = []
    for _ in range(times):
        before = time.process_time()
        work()
        spent.append(time.process_time() - before)
    return min(spent) * 1e3


@pytest.mark.timeout(7_200)
@pytest.mark.parametrize("name", POSITIONS)
def test_first_set(name: str) -> None:
    survey, before = POSITIONS[name], None
    position, site = survey.positions[0], survey.site
    requirement = requirement_for(position, site, _tables())
    assert isinstance(requirement, Requirement)
    for count in SIZES:
        store = ColumnStore(generated_columns(count))
        context = PlanningContext(_tables(), store)
        plan = plan_position(position, site, context, with_alternatives=False)
        masks = _milliseconds(lambda held=store: narrow_pool(requirement, _tables(), held))
        first = _milliseconds(lambda asked=context: plan_position(position, site, asked, with_alternatives=False))
        whole = _milliseconds(lambda asked=context: plan_position(position, site, asked))
        grown = "" if before is None else f"{math.log(first / before[1]) / math.log(count / before[0]):.2f}"
        before = count, first
        print(f"\n| {name} | {count:,} | {plan.status} | {masks:.1f} | {first:.1f} | {whole:.1f} | {grown} |", end="")


_CHILD = """
import json, resource, sys, time
from pathlib import Path
from bench.column_stores import ColumnStore
from bench.test_first_set import POSITIONS, _tables
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position

count, folder = int(sys.argv[1]), Path(sys.argv[2])
survey = POSITIONS["car"]
spent = []
for _ in range(3):
    before = time.process_time()
    if not spent:
        context = PlanningContext(_tables(), ColumnStore.mapped(count, folder))
    plan = plan_position(survey.positions[0], survey.site, context, with_alternatives=False)
    spent.append((time.process_time() - before) * 1e3)
print(json.dumps([str(plan.status), spent, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024]))
"""


@pytest.mark.timeout(7_200)
def test_a_process_that_maps_a_million_parts(tmp_path: Path) -> None:
    for count in SIZES:
        for kind in HANGING_KINDS:
            ColumnFiles(tmp_path).write(str(count), generated_columns(count)[kind])
        done = subprocess.run(
            [sys.executable, "-c", _CHILD, str(count), str(tmp_path)],
            capture_output=True,
            text=True,
            check=True,
            cwd=Path(__file__).parents[1],
        )
        status, spent, peak = json.loads(done.stdout)
        print(
            f"\n{count:,} mapped: {status}, cold {spent[0]:.0f} ms, warm {min(spent[1:]):.0f} ms, {peak:.0f} MiB",
            end="",
        )


@pytest.mark.timeout(7_200)
def test_columns_of_an_edition_in_sqlite(tmp_path: Path) -> None:
    for count in SIZES[:3]:
        engine = open_engine(f"sqlite:///{tmp_path / f'{count}.sqlite3'}")
        CATALOGUE_SCHEMA.bring_up_to_date(engine)
        shelf = CatalogueShelf(engine, tmp_path / "columns")
        shelf.create("Bench")
        with shelf.draft("Bench") as desk:
            desk.put(entry_of(part) for part in generated_parts(count, seed=7))
        published = _milliseconds(
            lambda held=shelf: held.publish("Bench", notes="", publisher="", on=date(2026, 1, 1)), 1
        )

        def read(held: object = engine) -> None:
            other = CatalogueShelf(held, tmp_path / "columns")
            store = other.parts(EditionRef("Bench"))
            for kind in HANGING_KINDS:
                store.columns(kind)

        print(
            f"\n{count:,} in SQLite: published with columns {published:.0f} ms, mapped {_milliseconds(read):.0f} ms",
            end="",
        )
        engine.dispose()
