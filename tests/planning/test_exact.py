"""The chosen set is the cheapest that passes all checks: held against enumeration and against an integer solver.

The enumeration tries every chain of a small random catalogue. The integer programme (HiGHS through
scipy.optimize.milp) takes the whole catalogue and the figures of the rules.
"""

from __future__ import annotations

import pytest

from examples import each_with_seeds
from planning.enumeration import Weighing, chains, should_lines_broken, small_catalogue
from planning.stores import ListStore
from planning.surveys import ALL_THAT_FIT, TIGHT
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.plan import PlanStatus
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Survey
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import chooser_for, plan_position
from spoutline.planning.sets.pool import narrow_pool
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part


def enumerated_best(requirement: Requirement, tables: RuleTables, store: ListStore) -> tuple[int, int] | None:
    """Return (shoulds broken, price) of the best chain."""
    weighing = Weighing(requirement, tables)
    best: tuple[int, int] | None = None
    for hanging_set in chains(requirement, store):
        by_parts = weighing.by_parts(hanging_set)
        if by_parts is None or (best is not None and by_parts >= best):
            continue
        by_checks = weighing.by_checks(hanging_set)
        if by_checks is not None:
            found = (by_parts[0] + by_checks, by_parts[1])
            best = found if best is None else min(best, found)
    return best


@pytest.mark.parametrize(("name", "seed"), [*each_with_seeds(ALL_THAT_FIT, 4), *each_with_seeds(TIGHT, 6)])
def test_plan_is_the_best_of_all_chains(name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    survey: Survey = {**ALL_THAT_FIT, **TIGHT}[name]
    position, site = survey.positions[0], survey.site
    requirement = requirement_for(position, site, us_tables)
    assert isinstance(requirement, Requirement)
    store = small_catalogue(catalogue, requirement, us_tables, seed)
    plan = plan_position(position, site, PlanningContext(us_tables, store), with_alternatives=False)
    best = enumerated_best(requirement, us_tables, store)
    if best is None:
        assert plan.status is PlanStatus.DOES_NOT_FIT
        return
    assert plan.chosen is not None
    hanging_set = plan.chosen.hanging_set
    regrets = sum(
        one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN
        for link in hanging_set.links
        for one in judge_part(link.part, link.slot, requirement, us_tables)
    )
    assert (len(should_lines_broken(plan.chosen.checks)) + regrets, hanging_set.price_minor) == best


def test_the_bounds_leave_the_full_checks_next_to_nothing_to_turn_down(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    # A set that the bounds let through and a check turned down would cost another search: counted, not timed.
    turned_down = {}
    for name, survey in {**ALL_THAT_FIT, **TIGHT}.items():
        requirement = requirement_for(survey.positions[0], survey.site, us_tables)
        assert isinstance(requirement, Requirement)
        pool = narrow_pool(requirement, us_tables, catalogue)
        chooser = chooser_for(requirement, pool, PlanningContext(us_tables, catalogue))
        chooser.choose()
        turned_down[name] = chooser.turned_down
    # Once the wanted flow is given up, a nozzle's own least flow is judged by its check alone.
    assert {name for name, count in turned_down.items() if count} <= {"no_wanted_flow"}
    assert turned_down["no_wanted_flow"] < 30
