"""No cheaper set exists in which the inspector finds nothing broken; by enumeration from the cheapest chain upward."""

from __future__ import annotations

import pytest

from oracle.cheapest import cheapest_clean
from oracle.set_inspection import inspect_set
from spoutline.bootstrap import Workbench
from spoutline.model.part import Part
from sweep.places import PLACES, place_survey

pytestmark = pytest.mark.usefixtures("plans_once")  # the same place is asked about again and again


@pytest.mark.parametrize("name", PLACES)
def test_the_chosen_set_is_the_cheapest_clean_one(workbench: Workbench, catalogue: tuple[Part, ...], name: str) -> None:
    survey = place_survey(name)
    plan = workbench.plan_position(survey, "P")
    assert plan.chosen is not None
    chosen = plan.chosen.hanging_set
    found = cheapest_clean(plan.position, survey.site, catalogue, budget=400_000)
    assert found.complete, "raise the budget: not every chain was looked at"
    if found.links is None:
        assert not inspect_set(plan.position, survey.site, chosen.links).clean
        return
    assert found.price_minor is not None
    if found.doubtful:
        # a cheaper chain was lost or won by less than two honest calculations differ
        assert chosen.price_minor >= found.price_minor
        return
    assert chosen.price_minor == found.price_minor, [link.part.number for link in found.links]
