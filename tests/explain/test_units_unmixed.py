"""A sheet keeps to one unit system: behind no figure of a check or worked line stands a unit of the other.

The units of each system are those of SP 811 (NIST); sources are quotations and are left as their authors print them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.explain.plan.story import Story
from spoutline.model.plan import PositionPlan
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

FOREIGN = {
    UnitSystem.US: r"m|mm|cm|kPa|Pa|bar|N|N/m|kg|g|kg/m|kg/m³|L|L/min|m/s|mm²/s|m²|m³|°C|K|Kv|g/day|g/m²·day|Ω/m|kΩ/m",
    UnitSystem.SI: r"in|ft|psi|lbf|lbf/ft|lb|lb/ft|lb/ft³|gal|gpm|ft/s|ft²|cSt|°F|Cv|lb/day|lb/ft²·day|Ω/ft|kΩ/ft",
}


def sentences(plan: PositionPlan, story: Story) -> Iterator[str]:
    assert plan.chosen is not None
    for check in plan.chosen.checks:
        text = story.check(check)
        yield from (text.value, text.limit, text.margin, text.remark, *text.facts)
        for line in check.lines:
            worked = story.worked_line(line)
            yield from (worked.inputs, worked.result, worked.note)
    assert plan.requirement is not None
    for requirement in plan.requirement.lines:
        yield story.requirement_line(requirement).answer


@pytest.mark.parametrize("demo", ["small_town", "truck_stop"])
def test_no_figure_carries_a_unit_of_the_other_system(workbench: Workbench, demo: str, plans_once: None) -> None:
    survey = demo_survey(demo)
    plans = [workbench.plan_position(survey, position.label) for position in survey.positions[::2]]
    for system in UnitSystem:
        check_units(plans, workbench.story(Display(system)), system)


def check_units(plans: list[PositionPlan], story: Story, system: UnitSystem) -> None:
    foreign = re.compile(rf"\d ?(?:{FOREIGN[system]})(?![\w/²³·])")
    told = 0
    for plan in plans:
        for sentence in sentences(plan, story):
            plain = re.sub(r"\b\d+(?:-\d+)?/\d+ in\b", "", sentence)  # a thread's name: 3/4 in
            assert not foreign.search(plain), sentence
            told += 1
    assert told > 300
