"""No cheaper set exists that the inspector accepts; found by enumeration from the cheapest chain upward."""

from __future__ import annotations

import pytest

from oracle.cheapest import cheapest_accepted
from spoutline.bootstrap import Workbench
from spoutline.model.part import Part
from sweep.places import PLACES, place_survey


@pytest.mark.parametrize("name", PLACES)
def test_the_chosen_set_is_the_cheapest_the_inspector_accepts(
    workbench: Workbench, catalogue: tuple[Part, ...], name: str
) -> None:
    survey = place_survey(name)
    plan = workbench.plan_position(survey, "P")
    assert plan.chosen is not None
    found = cheapest_accepted(plan.position, survey.site, catalogue, budget=20_000)
    if found.doubtful or not found.complete:
        # a cheaper chain was lost or won by less than two honest calculations differ, or the count ran out
        assert found.price_minor is None or plan.chosen.hanging_set.price_minor <= found.price_minor
        return
    assert found.links is not None
    assert plan.chosen.hanging_set.price_minor == found.price_minor, [link.part.number for link in found.links]
