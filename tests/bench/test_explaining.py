"""How long it takes to say why each part of a set hangs there, and what else could hang in a place.

Run on request: ``pytest tests/bench/test_explaining.py -s``. Processor milliseconds on generated parts, columns in
memory and the rest worked out anew each time, the least of two: how the catalogue comes down to the set (``why``), with
how many parts were left; all that could hang in the place of the swivel, the nozzle and the curb hose, with how many
parts those are. No time is asserted.
"""

from __future__ import annotations

import os
import time
from functools import cache
from pathlib import Path

import pytest

from bench.column_stores import ColumnStore, generated_columns
from bench.figures import tell
from planning.surveys import CAR, TRUCK
from spoutline.model.limit import RuleTables
from spoutline.model.plan import PositionPlan
from spoutline.model.requirement import Slot
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.funnel import set_reasons
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.substitutes import substitutes
from spoutline.ruletables.load import load_rule_tables

SIZES = (1_000, 10_000, 100_000)[: int(os.environ.get("BENCH_SIZES", "2"))]  # more on request
SURVEYS = {"car": CAR, "truck": TRUCK}
PLACES = (Slot.SWIVEL, Slot.NOZZLE, Slot.CURB_HOSE)
_ROUNDS = 2


@cache
def _tables() -> RuleTables:
    return load_rule_tables("us_general", resources=Path(__file__).parents[2] / "resources", own_profiles=None)


@pytest.mark.timeout(3_600)
@pytest.mark.parametrize("name", SURVEYS)
def test_explaining(name: str) -> None:
    survey = SURVEYS[name]
    for count in SIZES:
        context = PlanningContext(_tables(), ColumnStore(generated_columns(count)))
        plan = plan_position(survey.positions[0], survey.site, context, with_alternatives=False)
        assert plan.chosen is not None
        told = [_why(plan, context)]
        tell(f"why, {name}, {count}", told[0][0])
        for slot in PLACES:
            if plan.chosen.hanging_set.part_in(slot) is not None:
                told.append(_others(plan, slot, context))
                tell(f"substitutes, {slot}, {name}, {count}", told[-1][0])
        print(f"| {name} | {count:,} | {' | '.join(f'{spent_ms:.0f} ({found})' for spent_ms, found in told)} |")


def _why(plan: PositionPlan, context: PlanningContext) -> tuple[float, int]:
    spent = []
    for _ in range(_ROUNDS):
        begun = time.process_time()
        found = set_reasons(plan, context)
        spent.append(time.process_time() - begun)
    return min(spent) * 1e3, sum(place.left for place in found.places)


def _others(plan: PositionPlan, slot: Slot, context: PlanningContext) -> tuple[float, int]:
    part = plan.chosen and plan.chosen.hanging_set.part_in(slot)
    assert part is not None
    spent = []
    for _ in range(_ROUNDS):
        begun = time.process_time()
        found = substitutes(plan, part.ref, context)
        spent.append(time.process_time() - begun)
    return min(spent) * 1e3, len(found.fitting)
