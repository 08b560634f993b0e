"""Over the whole catalogue the chosen set costs what an independent integer solver finds."""

from __future__ import annotations

import pytest

from planning.mixed_integer import REGRET, Programme
from planning.surveys import ALL_THAT_FIT
from spoutline.calc.catenary import longest_clear_length
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Position, Retrieval
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import chooser_for
from spoutline.planning.sets.pool import narrow_pool
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part


def longest_clear_m(position: Position, clearance_m: float) -> float:
    """Return the longest chain that hangs clear at every filler, and on the hook of a free hose; a reel's hangs not."""
    if position.duty == "reel" or position.retrieval is Retrieval.REEL:
        return 1e9
    ends = [(one.distance_m, one.height_m) for one in position.fillers if one.height_m > clearance_m]
    if position.retrieval is Retrieval.NONE:
        ends.append((position.hook.distance_m, position.hook.height_m))
    lengths = [
        longest_clear_length(
            distance_m=distance,
            start_height_m=position.outlet.height_m,
            end_height_m=height,
            clearance_m=clearance_m,
        )
        for distance, height in ends
    ]
    return min((length or 0.0 for length in lengths), default=1e9)


@pytest.mark.parametrize("name", ["car", "car_e85", "truck", "balance", "reel", "def"])
def test_the_chosen_set_is_the_integer_optimum_of_the_whole_catalogue(
    name: str, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey = ALL_THAT_FIT[name]
    position = survey.positions[0]
    requirement = requirement_for(position, survey.site, us_tables)
    assert isinstance(requirement, Requirement)
    clearance = longest_clear_m(position, us_tables.jurisdiction.number(LimitId.GROUND_CLEARANCE))
    pool = narrow_pool(requirement, us_tables, catalogue)
    choice = chooser_for(requirement, pool, PlanningContext(us_tables, catalogue)).choose()
    assert choice is not None
    optimum = Programme(requirement, us_tables, catalogue, clearance_m=clearance, given_up=choice.dropped).best()
    hanging_set = choice.judged.hanging_set
    assert optimum is not None
    regrets = sum(
        one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN
        for link in hanging_set.links
        for one in judge_part(link.part, link.slot, requirement, us_tables)
    )
    assert regrets * REGRET + hanging_set.price_minor == pytest.approx(optimum, abs=0.5)
