"""Positions for the planning tests, written as a person would survey them."""

from __future__ import annotations

from spoutline.model.survey import Survey


def survey_of(*, site: dict[str, object] | None = None, **position: object) -> Survey:
    """Return a survey with one position called 1A."""
    return Survey.model_validate(
        {"site": {"name": "Hollow Ford", **(site or {})}, "positions": [{"label": "1A", **position}]}
    )


CAR = survey_of(liquid={"family": "gasoline", "blend_percent": 10})
CAR_E85 = survey_of(liquid={"family": "gasoline", "blend_percent": 70}, prepay=True)
CAR_RETRACTOR = survey_of(
    liquid={"family": "gasoline", "blend_percent": 10}, retrieval="retractor", filler={"distance_m": 2.8}
)
TRUCK = survey_of(
    liquid={"family": "diesel", "blend_percent": 20},
    duty="truck",
    outlet={"size": "1", "height_m": 2.4},
    filler={"distance_m": 2.2, "height_m": 1.1},
)
BALANCE = survey_of(
    liquid={"family": "gasoline", "blend_percent": 10},
    vapour_today="balance",
    vapour_wanted="balance",
    outlet={"thread": "UN", "size": "1-7/8-12", "path": "balance"},
)
REEL = survey_of(
    site={"fenced": True},
    liquid={"family": "diesel", "blend_percent": 5},
    duty="reel",
    retrieval="reel",
    outlet={"size": "1"},
    filler={"distance_m": 9.0},
)
DEF = survey_of(liquid={"family": "def"}, duty="truck", in_flammable_zone=False, site={"climate": {"low_c": -5}})
MARINA = survey_of(
    liquid={"family": "gasoline", "blend_percent": 0},
    duty="marine",
    outlet={"size": "1"},
    filler={"distance_m": 6.0, "height_m": -0.5},
)
# Positions where the sums bind: pressure that barely gives the flow, an outlet that bears little, length and clearance.
LOW_PRESSURE = survey_of(liquid={"family": "gasoline", "blend_percent": 10}, supply={"pressure_kpa": 14}, prepay=True)
NO_WANTED_FLOW = survey_of(liquid={"family": "gasoline", "blend_percent": 10}, supply={"pressure_kpa": 4})
THIRSTY_TRUCK = survey_of(
    liquid={"family": "diesel", "blend_percent": 20},
    duty="truck",
    outlet={"size": "1", "height_m": 2.6},
    filler={"distance_m": 2.2, "height_m": 1.1},
    supply={"pressure_kpa": 95, "wanted_flow_l_min": 140, "maximum_flow_l_min": 150},
)
SLIGHT_OUTLET = survey_of(liquid={"family": "diesel", "blend_percent": 5}, outlet={"pull_strength_n": 1200})
JUST_WITHIN_REACH = survey_of(
    liquid={"family": "gasoline", "blend_percent": 10},
    outlet={"height_m": 2.3},
    filler={"distance_m": 2.3, "height_m": 1.0},
)
LOW_HOOK = survey_of(liquid={"family": "gasoline", "blend_percent": 10}, hook={"height_m": 0.5, "distance_m": 0.6})
LONG_CORD = survey_of(
    liquid={"family": "gasoline", "blend_percent": 10},
    retrieval="retractor",
    retractor={"height_m": 2.2, "clamp_fraction": 0.6},
    filler={"distance_m": 3.0},
)
TIGHT = {
    "low_pressure": LOW_PRESSURE,
    "no_wanted_flow": NO_WANTED_FLOW,
    "thirsty_truck": THIRSTY_TRUCK,
    "slight_outlet": SLIGHT_OUTLET,
    "just_within_reach": JUST_WITHIN_REACH,
    "low_hook": LOW_HOOK,
    "long_cord": LONG_CORD,
}
TOO_FAR = survey_of(liquid={"family": "gasoline", "blend_percent": 10}, filler={"distance_m": 7.0})
ALL_THAT_FIT = {
    "car": CAR,
    "car_e85": CAR_E85,
    "car_retractor": CAR_RETRACTOR,
    "truck": TRUCK,
    "balance": BALANCE,
    "reel": REEL,
    "def": DEF,
    "marina": MARINA,
}
