"""How planning one position with all checks grows with the catalogue: 1,000, 10,000 and 100,000 generated parts.

Run on request: ``pytest tests/bench/test_search_growth.py -s``. The figures are measured, never asserted.
``search`` is the best set from judged parts; ``plan`` adds the catalogue filter, the part rules and the alternatives.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bench.generated_parts import generated_parts
from planning.stores import ListStore
from planning.surveys import CAR, TRUCK
from spoutline.model.limit import RuleTables
from spoutline.model.plan import PlanStatus
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Survey
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import chooser_for, plan_position
from spoutline.planning.sets.pool import narrow_pool
from spoutline.rules.derive.requirement import requirement_for
from spoutline.ruletables.load import load_rule_tables

SIZES = (1_000, 10_000, 100_000)
SURVEYS = {"car": CAR, "truck": TRUCK}


@cache
def _store(count: int) -> ListStore:
    return ListStore(generated_parts(count, seed=7))


@cache
def _tables() -> RuleTables:
    return load_rule_tables("us_general", resources=Path(__file__).parents[2] / "resources", own_profiles=None)


def _context(count: int) -> PlanningContext:
    return PlanningContext(_tables(), _store(count))


def _requirement(survey: Survey) -> Requirement:
    requirement = requirement_for(survey.positions[0], survey.site, _tables())
    assert isinstance(requirement, Requirement)
    return requirement


@pytest.mark.parametrize("count", SIZES)
@pytest.mark.parametrize("name", SURVEYS)
def test_search(benchmark: BenchmarkFixture, name: str, count: int) -> None:
    requirement, context = _requirement(SURVEYS[name]), _context(count)
    pool = narrow_pool(requirement, context.tables, context.parts)
    choice = benchmark.pedantic(
        lambda: chooser_for(requirement, pool, context).choose(), rounds=5, iterations=1, warmup_rounds=1
    )
    assert choice is not None


@pytest.mark.parametrize("count", SIZES)
@pytest.mark.parametrize("name", SURVEYS)
def test_plan(benchmark: BenchmarkFixture, name: str, count: int) -> None:
    survey, context = SURVEYS[name], _context(count)
    plan = benchmark.pedantic(
        lambda: plan_position(survey.positions[0], survey.site, context), rounds=3, iterations=1, warmup_rounds=1
    )
    assert plan.status is PlanStatus.FITS
