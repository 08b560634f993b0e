"""From the columns of a catalogue to the first set on the screen, on kind and unkind positions; a table is printed.

Run on request: ``pytest tests/bench/test_first_set.py -s``. Processor milliseconds, the least of three, columns in
memory and the rest worked out anew each time: ``masks`` judges all parts of all places, ``first set`` is the whole plan
without alternatives (conflicts included where nothing fits), ``with alternatives`` all of it. The last column is the
exponent of growth of the first set from the size before. No time is asserted. How the search compares with CP-SAT is
measured in ``test_unkind_positions.py``, what mapping and compiling columns take in ``test_large_catalogue.py``.
"""

from __future__ import annotations

import math
import os
import time
from collections.abc import Callable
from functools import cache
from pathlib import Path

import pytest

from bench.column_stores import ColumnStore, generated_columns
from bench.figures import tell
from planning import surveys
from spoutline.model.limit import RuleTables
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
        tell(f"first set, {name}, {count}", first)
        tell(f"with alternatives, {name}, {count}", whole)
        print(f"\n| {name} | {count:,} | {plan.status} | {masks:.1f} | {first:.1f} | {whole:.1f} | {grown} |", end="")
