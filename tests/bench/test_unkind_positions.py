"""The search alone, from judged parts, on kind and unkind positions, beside CP-SAT in the same run; a table is printed.

Run on request: ``pytest tests/bench/test_unkind_positions.py -s``. Processor milliseconds of one thread, the least of
three; nothing is asserted of them, only that both find the same cost. ``columns`` is what is made once of the items and
serves all questions that differ in their limits; CP-SAT gets the problem without dominated items, its model built anew,
and its time is told as so many times that of the solving as well.
The last column is the exponent of growth of the solving from each size to the next.
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
from search.cp_sat import cp_sat_optimum
from spoutline.model.limit import RuleTables
from spoutline.model.requirement import Requirement
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import chooser_for
from spoutline.planning.sets.pool import narrow_pool
from spoutline.rules.derive.requirement import requirement_for
from spoutline.ruletables.load import load_rule_tables
from spoutline.search.columns import columns_of
from spoutline.search.dominance import reduced
from spoutline.search.graph import MAJOR, Problem
from spoutline.search.item_table import ItemsOf, Names
from spoutline.search.optimum import best_chain

SIZES = (1_000, 10_000, 100_000, 1_000_000)[: int(os.environ.get("BENCH_SIZES", "4"))]  # fewer where time is short
COMPARED = 100_000  # the largest size at which CP-SAT is asked as well
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


@cache
def _context(count: int) -> PlanningContext:
    return PlanningContext(_tables(), ColumnStore(generated_columns(count)))


def _problems(name: str, count: int) -> list[Problem]:
    """Return the chain problems of the first question: every should kept."""
    survey, context = POSITIONS[name], _context(count)
    requirement = requirement_for(survey.positions[0], survey.site, context.tables)
    assert isinstance(requirement, Requirement)
    chooser = chooser_for(requirement, narrow_pool(requirement, context.tables, context.parts), context)
    return list(chooser.search.problems(chooser.query(frozenset())))


def _milliseconds(work: Callable[[], object], times: int = 3) -> float:
    spent = []
    for _ in range(times):
        before = time.process_time()
        work()
        spent.append(time.process_time() - before)
    return min(spent) * 1e3


@pytest.mark.timeout(3_600)
@pytest.mark.parametrize("name", POSITIONS)
def test_search(name: str) -> None:
    before: tuple[int, float] | None = None
    for count in SIZES:
        problems = _problems(name, count)
        prepared = [(columns_of(problem), Names(ItemsOf(problem))) for problem in problems]
        making = _milliseconds(lambda asked=problems: [columns_of(problem) for problem in asked], 1)
        answers = [best_chain(columns, names) for columns, names in prepared if columns is not None]
        solving = _milliseconds(lambda asked=prepared: [best_chain(one, names) for one, names in asked if one])
        costs = [one.chain.major * MAJOR + one.chain.cost if one.chain else None for one in answers]
        other, times = "-", ""
        if count <= COMPARED:
            started = time.process_time()
            assert [cp_sat_optimum(reduced(problem)) for problem in problems] == costs
            taken = (time.process_time() - started) * 1e3
            other, times = f"{taken:.0f}", f"{taken / solving:.0f}"
            tell(f"CP-SAT, {name}, {count}", taken)
        tell(f"search, {name}, {count}", solving)
        grown = "" if before is None else f"{math.log(solving / before[1]) / math.log(count / before[0]):.2f}"
        before = count, solving
        items = sum(len(layer.items) for problem in problems for layer in problem.layers)
        fits = "fits" if any(cost is not None for cost in costs) else "no chain"
        row = (name, f"{count:,}", f"{items:,}", fits, f"{making:.1f}", f"{solving:.1f}", other, times, grown)
        print(f"\n| {' | '.join(row)} |", end="")
