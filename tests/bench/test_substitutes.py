"""How long the list of everything that could hang in a place takes, and how it grows with the catalogue.

Run on request: ``pytest tests/bench/test_substitutes.py -s``. The figures are measured, never asserted.
``built_in`` is the catalogue that comes with the program, every place of the set one after the other.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bench.generated_parts import generated_parts
from planning.stores import ListStore
from planning.surveys import CAR, MARINA, NO_WANTED_FLOW, TRUCK
from spoutline.catalogue.build import ensure_catalogue
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.limit import RuleTables
from spoutline.model.plan import PositionPlan
from spoutline.model.requirement import Slot
from spoutline.model.survey import Survey
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.substitutes import substitutes
from spoutline.ruletables.load import load_rule_tables

TOP = Path(__file__).parents[2]
SURVEYS = {"car": CAR, "truck": TRUCK, "marina": MARINA, "no_wanted_flow": NO_WANTED_FLOW}


@pytest.fixture(scope="session")
def built_in(tmp_path_factory: pytest.TempPathFactory) -> CatalogueStore:
    place = tmp_path_factory.mktemp("catalogue") / "catalogue.db"
    return ensure_catalogue(f"sqlite:///{place}", TOP / "catalog")


@cache
def _tables() -> RuleTables:
    return load_rule_tables("us_general", resources=TOP / "resources", own_profiles=None)


@cache
def _generated(count: int) -> ListStore:
    return ListStore(generated_parts(count, seed=7))


def _plan(survey: Survey, context: PlanningContext) -> PositionPlan:
    return plan_position(survey.positions[0], survey.site, context, with_alternatives=False)


@pytest.mark.parametrize("with_misfits", [False, True])
@pytest.mark.parametrize("name", SURVEYS)
def test_every_place_of_a_set(
    benchmark: BenchmarkFixture, built_in: CatalogueStore, name: str, with_misfits: bool
) -> None:
    context = PlanningContext(_tables(), built_in)
    plan = _plan(SURVEYS[name], context)
    assert plan.chosen is not None
    numbers = plan.chosen.hanging_set.refs

    def every_place() -> int:
        return sum(len(substitutes(plan, one, context, with_misfits=with_misfits).fitting) for one in numbers)

    assert benchmark.pedantic(every_place, rounds=3, iterations=1, warmup_rounds=1)


@pytest.mark.parametrize("count", [1_000, 10_000])
@pytest.mark.parametrize("slot", [Slot.SWIVEL, Slot.NOZZLE, Slot.CURB_HOSE])
def test_one_place_of_a_larger_catalogue(benchmark: BenchmarkFixture, count: int, slot: Slot) -> None:
    context = PlanningContext(_tables(), _generated(count))
    plan = _plan(CAR, context)
    assert plan.chosen is not None
    part = plan.chosen.hanging_set.part_in(slot)
    assert part is not None
    found = benchmark.pedantic(lambda: substitutes(plan, part.ref, context), rounds=1, iterations=1)
    assert found.fitting
