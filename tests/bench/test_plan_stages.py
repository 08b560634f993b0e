"""When each stage of a plan stands: the set, its counts, each kind of other set; a table is printed.

Run on request: ``pytest tests/bench/test_plan_stages.py -s``. Processor milliseconds from the question, the least of
three, columns in memory. Kinds of other sets are told in turn, whether or not there is one. Where nothing fits, the set
is the word that there is none; what is in the way follows the counts, then each way out, and the whole at the end.
"""

from __future__ import annotations

import time

import pytest

from bench.column_stores import ColumnStore, generated_columns
from bench.test_first_set import POSITIONS, _tables
from spoutline.model.survey import Survey
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_stages

SIZES = (1_000, 10_000, 100_000)


def stood_after(survey: Survey, context: PlanningContext) -> list[float]:
    """Return after how many milliseconds each stage stood."""
    before, stood = time.process_time(), []
    for _ in plan_stages(survey.positions[0], survey.site, context):
        stood.append((time.process_time() - before) * 1e3)
    return stood


@pytest.mark.timeout(7_200)
@pytest.mark.parametrize("count", SIZES)
def test_stages(count: int) -> None:
    context = PlanningContext(_tables(), ColumnStore(generated_columns(count)))
    print(f"\n| {count:,} parts | set | with counts | other sets, or ways out, one after the other |")
    for name, survey in POSITIONS.items():
        stood_after(survey, context)
        least = map(min, zip(*(stood_after(survey, context) for _ in range(3)), strict=True))
        first, counted, *others = (f"{one:.1f}" for one in least)
        print(f"| {name} | {first} | {counted} | {', '.join(others)} |")
