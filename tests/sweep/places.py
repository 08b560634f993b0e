"""Invented positions as a distributor meets them, each with the sites they stand on."""

from __future__ import annotations

from typing import Any

from spoutline.model.survey import Survey

_UNITED_STATES = {"jurisdiction": "us_general", "climate": {"low_c": -10, "high_c": 38}}
_DISTRICT = {"jurisdiction": "us_vapour_rules", "climate": {"low_c": -5, "high_c": 40}}
_EUROPE = {"jurisdiction": "europe", "currency": "EUR", "climate": {"low_c": -10, "high_c": 35}}
_BALANCE = {"thread": "UN", "size": "1-7/8-12", "path": "balance"}
_ASSIST = {"thread": "M", "size": "34x1.5", "path": "vacuum_assist"}
_ONE_INCH = {"thread": "NPT", "size": "1"}
_G = {"thread": "G", "size": "3/4"}
_G_ONE = {"thread": "G", "size": "1"}


def _gasoline(percent: float) -> dict[str, Any]:
    return {"family": "gasoline", "blend_percent": percent}


def _diesel(percent: float) -> dict[str, Any]:
    return {"family": "diesel", "blend_percent": percent}


_TRUCK = {"distance_m": 2.4, "height_m": 1.2}
_BOAT = {"distance_m": 4.5, "height_m": 0.6}

PLACES: dict[str, tuple[dict[str, Any], dict[str, Any]]] = {
    "town gasoline": (_UNITED_STATES, {"liquid": _gasoline(10)}),
    "town gasoline with latch and prepay": (
        _UNITED_STATES,
        {"liquid": _gasoline(10), "hold_open_wanted": True, "prepay": True},
    ),
    "flex fuel": (_UNITED_STATES, {"liquid": _gasoline(85)}),
    "car diesel": (_UNITED_STATES, {"liquid": _diesel(5)}),
    "truck stop": (
        _UNITED_STATES,
        {"liquid": _diesel(20), "duty": "truck", "outlet": _ONE_INCH, "filler": _TRUCK, "hold_open_wanted": True},
    ),
    "urea beside trucks": (
        _UNITED_STATES,
        {"liquid": {"family": "def"}, "duty": "truck", "filler": _TRUCK, "in_flammable_zone": True},
    ),
    "marina": (
        _UNITED_STATES,
        {"liquid": _gasoline(0), "duty": "marine", "outlet": _ONE_INCH, "filler": _BOAT},
    ),
    "gasoline on a retractor": (_UNITED_STATES, {"liquid": _gasoline(15), "retrieval": "retractor"}),
    "fuel oil on a reel": (
        _UNITED_STATES,
        {"liquid": {"family": "fuel_oil"}, "duty": "reel", "retrieval": "reel", "outlet": _ONE_INCH},
    ),
    "balance gasoline": (
        _DISTRICT,
        {"liquid": _gasoline(10), "vapour_today": "balance", "vapour_wanted": "balance", "outlet": _BALANCE},
    ),
    "exempt fleet gasoline": (_DISTRICT, {"liquid": _gasoline(10)}),
    "assist on a retractor": (
        _DISTRICT,
        {
            "liquid": _gasoline(10),
            "vapour_today": "vacuum_assist",
            "vapour_wanted": "vacuum_assist",
            "outlet": _ASSIST,
            "retrieval": "retractor",
        },
    ),
    "decommissioned balance": (
        _UNITED_STATES,
        {"liquid": _gasoline(10), "vapour_today": "balance", "outlet": _BALANCE},
    ),
    "european gasoline": (_EUROPE, {"liquid": _gasoline(10), "outlet": _G}),
    "european assist": (
        _EUROPE,
        {
            "liquid": _gasoline(5),
            "vapour_today": "vacuum_assist",
            "vapour_wanted": "vacuum_assist",
            "outlet": _ASSIST,
        },
    ),
    "european truck": (_EUROPE, {"liquid": _diesel(5), "duty": "truck", "outlet": _G_ONE, "filler": _TRUCK}),
}


def place_survey(name: str) -> Survey:
    """Return a one-position survey of a named place; its position is labelled ``P``."""
    site, position = PLACES[name]
    return Survey.model_validate({"site": {"name": name} | site, "positions": [{"label": "P"} | position]})
