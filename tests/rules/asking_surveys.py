"""Positions that, taken together, ask everything that rules hold against a part; and positions drawn at random."""

from __future__ import annotations

from typing import Any, Final

from hypothesis import strategies as st

from rules.stations import tables
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Survey
from spoutline.rules.derive.requirement import requirement_for
from sweep.combinations import BLENDS, DUTIES, FILLERS, JURISDICTIONS, RETRIEVALS, VAPOUR

_E10, _E30 = {"family": "gasoline", "blend_percent": 10}, {"family": "gasoline", "blend_percent": 30}
_BALANCE = {"thread": "UN", "size": "1-7/8-12", "path": "balance"}
_ASSIST = {"thread": "M", "size": "34x1.5", "path": "vacuum_assist"}
# by what each asks that others do not: the position, and what its site says
_ASKING: Final[dict[str, tuple[dict[str, Any], dict[str, Any]]]] = {
    "latch and prepay": ({"liquid": _E10, "hold_open_wanted": True, "prepay": True}, {}),
    "latch overhead": (
        {"liquid": _E10, "hold_open_wanted": True, "overhead": True},
        {"jurisdiction": "us_general"},
    ),
    "low permeation, enhanced": ({"liquid": _E10}, {"jurisdiction": "us_vapour_rules"}),
    "diesel on a reel": (
        {"liquid": {"family": "diesel", "blend_percent": 20}, "duty": "reel", "retrieval": "reel"},
        {},
    ),
    "tight drum, attended": (
        {
            "liquid": {"family": "fuel_oil"},
            "duty": "reel",
            "retrieval": "reel",
            "reel": {"drum_diameter_m": 0.12, "turns_left": 2},
        },
        {"service": "attended"},
    ),
    "diesel for cars": ({"liquid": {"family": "diesel", "blend_percent": 5}}, {}),
    "DEF in the zone": ({"liquid": {"family": "def"}, "duty": "truck", "in_flammable_zone": True}, {}),
    "balance": ({"liquid": _E10, "vapour_today": "balance", "vapour_wanted": "balance", "outlet": _BALANCE}, {}),
    "vacuum assist": (
        {"liquid": _E10, "vapour_today": "vacuum_assist", "vapour_wanted": "vacuum_assist", "outlet": _ASSIST},
        {},
    ),
    "recovery taken off": (
        {"liquid": _E10, "vapour_today": "balance", "vapour_wanted": "none", "outlet": _BALANCE},
        {"jurisdiction": "us_without_recovery"},
    ),
    "Europe, oxygenates": ({"liquid": _E30}, {"jurisdiction": "europe", "currency": "EUR"}),
    "little flow": ({"liquid": _E10, "supply": {"maximum_flow_l_min": 8, "wanted_flow_l_min": 5}}, {}),
    "decided": (
        {
            "liquid": _E10,
            "reconnectable_wanted": True,
            "decisions": {"longest_lead_time_days": 30, "refused": ["XX-N1 00000", "GP-C000012"]},
        },
        {"currency": "EUR"},
    ),
    "marina": (
        {
            "liquid": _E10,
            "duty": "marine",
            "filler": {"distance_m": 4.5, "height_m": 2.6},
            "supply": {"pressure_kpa": 500, "maximum_flow_l_min": 140},
        },
        {"climate": {"low_c": -35, "high_c": 55}},
    ),
    "sideways, fenced": ({"liquid": _E10, "outlet": {"direction": "sideways", "height_m": 0.6}}, {"fenced": True}),
}
ASKING = tuple(_ASKING)


def asking(name: str) -> Requirement:
    """Return what one of the positions asks."""
    position, site = _ASKING[name]
    about = {"name": "Every part", "jurisdiction": "us_general", "climate": {"low_c": -5, "high_c": 40}} | site
    survey = Survey.model_validate({"site": about, "positions": [{"label": "1"} | position]})
    asked = requirement_for(survey.positions[0], survey.site, tables(survey.site.jurisdiction))
    assert isinstance(asked, Requirement), asked
    return asked


@st.composite
def requirements(draw: st.DrawFn) -> Requirement | None:
    """Draw a survey of one position as a person may answer it; None where it is refused."""
    family = draw(st.sampled_from(sorted(BLENDS)))
    duty, vapour = draw(st.sampled_from(DUTIES)), draw(st.sampled_from(VAPOUR))
    jurisdiction = draw(st.sampled_from(JURISDICTIONS))
    outlet: dict[str, Any] = {"none": {}, "balance": _BALANCE, "vacuum_assist": _ASSIST}[vapour]
    outlet = outlet | {
        "height_m": draw(st.sampled_from((0.6, 2.1, 2.6))),
        "direction": draw(st.sampled_from(("down", "sideways"))),
        "vapour_return_available": draw(st.booleans()),
    }
    document = {
        "site": {
            "name": "Drawn",
            "jurisdiction": jurisdiction,
            "currency": draw(st.sampled_from(("USD", "EUR"))),
            "climate": {"low_c": draw(st.sampled_from((-25, -5, 0))), "high_c": draw(st.sampled_from((30, 50)))},
            "service": draw(st.sampled_from(("self", "attended", "unattended"))),
            "fenced": draw(st.booleans()),
        },
        "positions": [
            {
                "label": "1",
                "liquid": {"family": family, "blend_percent": draw(st.sampled_from(BLENDS[family]))},
                "duty": duty,
                "vapour_today": vapour,
                "vapour_wanted": draw(st.sampled_from((vapour, vapour, "none"))),
                "outlet": outlet,
                "filler": FILLERS[duty],
                "retrieval": draw(st.sampled_from(RETRIEVALS)),
                "reel": {"drum_diameter_m": draw(st.sampled_from((0.12, 0.3, 0.5)))},
                "hold_open_wanted": draw(st.booleans()),
                "prepay": draw(st.booleans()),
                "overhead": draw(st.booleans()),
                "reconnectable_wanted": draw(st.booleans()),
                "in_flammable_zone": draw(st.booleans()) if family == "def" else None,
                "supply": {
                    "pressure_kpa": draw(st.sampled_from((60, 200, 345, 600))),
                    "maximum_flow_l_min": draw(st.sampled_from((None, 8, 37.85, 140))),
                },
                "decisions": {
                    "longest_lead_time_days": draw(st.sampled_from((None, 7, 30))),
                    "refused": draw(st.sampled_from(([], ["XX-N1 00000", "GP-C000012"]))),
                },
            }
        ],
    }
    survey = Survey.model_validate(document)
    found = requirement_for(survey.positions[0], survey.site, tables(jurisdiction))
    return found if isinstance(found, Requirement) else None
