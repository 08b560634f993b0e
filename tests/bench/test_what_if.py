"""How long the first answer to *what if* takes, the columns of the catalogue being there already.

Run on request: ``pytest tests/bench/test_what_if.py -s``. The figures are measured, never asserted.
"""

from __future__ import annotations

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bench.test_substitutes import _generated, _tables
from planning.surveys import CAR, CAR_RETRACTOR, MARINA, NO_WANTED_FLOW, REEL, TRUCK
from spoutline.model.survey import Survey
from spoutline.model.what_if import WhatIf, WhatIfQuestion
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_site import plan_site
from spoutline.planning.what_if.answer import what_if
from spoutline.planning.what_if.answers import blend_of

CASES = {
    "car_e15": (CAR, "E15"),
    "car_e85": (CAR, "E85"),
    "retractor_e85": (CAR_RETRACTOR, "E85"),
    "marina_e85": (MARINA, "E85"),
    "truck_b100": (TRUCK, "B100"),
    "reel_b20": (REEL, "B20"),
    "little_pressure_e85": (NO_WANTED_FLOW, "E85"),
}


@pytest.mark.parametrize("count", [1_000, 10_000])
@pytest.mark.parametrize("name", CASES)
def test_first_answer(benchmark: BenchmarkFixture, name: str, count: int) -> None:
    survey, text = CASES[name]
    found = _first(benchmark, survey, text, count)
    assert found == 1


def _first(benchmark: BenchmarkFixture, survey: Survey, text: str, count: int) -> int:
    store, tables = _generated(count), _tables()
    before = plan_site(survey, tables, store)
    asked = WhatIf(WhatIfQuestion.BLEND, blend_of(text, "blend"))
    answer = benchmark.pedantic(lambda: what_if(before, asked, PlanningContext(tables, store)), rounds=5, iterations=1)
    return len(answer.positions)
