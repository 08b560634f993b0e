"""Every part of the catalogue is swapped into accepted sets: program and inspector must turn down the same swaps."""

from __future__ import annotations

import pytest

from oracle.set_inspection import inspect_set
from spoutline.bootstrap import Workbench
from spoutline.model.part import Part
from spoutline.model.plan import PlanStatus
from sweep.places import PLACES, place_survey
from sweep.verdicts import disagreements

pytestmark = pytest.mark.usefixtures("plans_once")  # the same place is asked about again and again


@pytest.mark.parametrize("name", PLACES)
def test_both_turn_down_the_same_swaps(workbench: Workbench, catalogue: tuple[Part, ...], name: str) -> None:
    survey = place_survey(name)
    plan = workbench.plan_position(survey, "P")
    assert plan.status is PlanStatus.FITS
    assert plan.chosen is not None
    assert plan.requirement is not None
    links = plan.chosen.hanging_set.links
    assert inspect_set(plan.position, survey.site, links).accepted
    found, judged = disagreements(
        plan.requirement, workbench.jurisdictions().tables(survey.site.jurisdiction), links, catalogue
    )
    assert judged > len(links)
    assert not found, f"{len(found)} of {judged} swaps:\n" + "\n".join(map(str, found))
