"""Why no set fits, on generated parts: until the first obstacle, until all of them; a table is printed.

Run on request: ``pytest tests/bench/test_no_set.py -s``. Processor milliseconds, the least of three, columns in memory
and the rest worked out anew each time: ``plan`` is the plan that finds no set, ``named`` the time from there until the
first obstacle is named, ``reasons`` until it is told with its reasons, ``all`` until everything is known. No time is
asserted.
"""

from __future__ import annotations

import os
import time
from functools import cache
from pathlib import Path

import pytest

from bench.column_stores import ColumnStore, generated_columns
from planning.surveys import TOO_FAR, survey_of
from spoutline.model.limit import RuleTables
from spoutline.model.no_set import ConflictReasons, Demand, NoSetEnding
from spoutline.planning.no_set.listening import NoSetListening
from spoutline.planning.no_set.why_no_set import why_no_set
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.ruletables.load import load_rule_tables

SIZES = (1_000, 10_000, 100_000)[: int(os.environ.get("BENCH_SIZES", "2"))]  # more on request
_E10 = {"family": "gasoline", "blend_percent": 10}
POSITIONS = {
    "too far": TOO_FAR,
    "weak outlet": survey_of(liquid={"family": "diesel", "blend_percent": 5}, outlet={"pull_strength_n": 300}),
    "no lead time": survey_of(liquid=_E10, decisions={"longest_lead_time_days": 0}),
    "no DEF parts": survey_of(liquid={"family": "def"}, duty="truck", in_flammable_zone=False),
    "no balance parts": survey_of(
        liquid=_E10,
        vapour_today="balance",
        vapour_wanted="balance",
        outlet={"thread": "UN", "size": "1-7/8-12", "path": "balance"},
    ),
    "contradiction": survey_of(liquid={"family": "diesel", "blend_percent": 50}, vapour_wanted="balance"),
}


@cache
def _tables() -> RuleTables:
    return load_rule_tables("us_general", resources=Path(__file__).parents[2] / "resources", own_profiles=None)


@pytest.mark.timeout(3_600)
@pytest.mark.parametrize("name", POSITIONS)
def test_no_set(name: str) -> None:
    survey = POSITIONS[name]
    for count in SIZES:
        context = PlanningContext(_tables(), ColumnStore(generated_columns(count)))
        spent: list[tuple[float, float, float, float]] = []
        for _ in range(3):
            begun = time.process_time()
            plan = plan_position(survey.positions[0], survey.site, context, with_alternatives=False)
            planned = time.process_time()
            first: list[float] = []

            named: list[float] = []

            def on_obstacle(_: tuple[Demand, ...], named: list[float] = named) -> None:
                named.append(time.process_time())

            def on_conflict(_: ConflictReasons, first: list[float] = first) -> None:
                first.append(time.process_time())

            listening = NoSetListening(on_obstacle=on_obstacle, on_conflict=on_conflict)
            found = why_no_set(plan, survey, context, listening)
            ended = time.process_time()
            assert found.ending in (NoSetEnding.COMPLETE, NoSetEnding.ANSWERS)
            assert len(found.conflicts) == len(first) >= 1
            spent.append((planned - begun, named[0] - planned, first[0] - planned, ended - planned))
        plan_ms, first_ms, reasons_ms, all_ms = (min(column) * 1e3 for column in zip(*spent, strict=True))
        told = f"{len(found.conflicts)} obstacles, {len(found.trials)} ways out"
        print(f"| {name} | {count:,} | {plan_ms:.0f} | {first_ms:.0f} | {reasons_ms:.0f} | {all_ms:.0f} | {told} |")
