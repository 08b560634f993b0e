"""Surveys off the beaten track: planning ends soon, and what it chooses is not absurd to a fitter's eye."""

from __future__ import annotations

from typing import Any

import pytest

from oracle.set_inspection import inspect_set
from spoutline.bootstrap import Workbench
from spoutline.model.plan import PlanStatus
from spoutline.model.requirement import Slot
from spoutline.model.survey import Survey

_SLOW_PUMP = {"supply": {"maximum_flow_l_min": 25}}
_DIESEL = {"family": "diesel", "blend_percent": 20}

ODD: dict[str, tuple[dict[str, Any], dict[str, Any]]] = {
    "a boat filled slower than wanted": (
        {"jurisdiction": "europe", "climate": {"low_c": 0, "high_c": 45}, "service": "unattended"},
        {
            "liquid": {"family": "gasoline", "blend_percent": 10},
            "duty": "marine",
            "vapour_today": "balance",
            "outlet": {"thread": "UN", "size": "1-7/8-12", "path": "balance", "height_m": 2.82},
            "filler": {"distance_m": 2.46, "height_m": -1.62},
        }
        | _SLOW_PUMP,
    ),
    "a car filled slower than wanted": (
        {"climate": {"low_c": -5, "high_c": 35}, "service": "unattended"},
        {
            "liquid": _DIESEL,
            "outlet": {"size": "1", "height_m": 1.95, "direction": "sideways"},
            "filler": {"distance_m": 5.05, "height_m": 1.04},
            "other_fillers": [{"label": "near", "distance_m": 2.26, "height_m": 1.03}],
            "hold_open_wanted": True,
        }
        | _SLOW_PUMP,
    ),
    "a filler as far as the longest hose goes": (
        {"jurisdiction": "us_vapour_rules", "climate": {"low_c": 0, "high_c": 52}},
        {
            "liquid": {"family": "diesel"},
            "outlet": {"height_m": 2.12},
            "filler": {"distance_m": 5.8, "height_m": 1.03},
            "supply": {"pressure_kpa": 100, "wanted_flow_l_min": 15},
        },
    ),
    "a strong latch on a weak outlet": (
        {"climate": {"low_c": -10, "high_c": 40}},
        {"hold_open_wanted": True, "outlet": {"pull_strength_n": 1200}},
    ),
}


@pytest.mark.timeout(120)
@pytest.mark.parametrize("name", ODD)
def test_planning_ends_and_stacks_no_adaptors(workbench: Workbench, name: str) -> None:
    site, position = ODD[name]
    survey = Survey.model_validate({"site": {"name": name} | site, "positions": [{"label": "P"} | position]})
    plan = workbench.plan_position(survey, "P")
    if plan.status is not PlanStatus.FITS:
        assert plan.conflict is not None
        assert plan.conflict.requirements
        return
    assert plan.chosen is not None
    links = plan.chosen.hanging_set.links
    assert inspect_set(plan.position, survey.site, links).accepted
    adaptors = [link.part.number for link in links if link.slot is Slot.ADAPTOR]
    assert len(adaptors) <= 1, adaptors
