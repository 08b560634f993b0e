"""Invented stations of a conversion programme, the same for the same seed."""

from __future__ import annotations

import random
from pathlib import Path

from spoutline.model.survey import Survey

_OUTLETS = {
    "none": {"thread": "NPT", "size": "3/4", "gender": "female", "path": "single"},
    "balance": {"thread": "UN", "size": "1-7/8-12", "gender": "female", "path": "balance"},
    "vacuum_assist": {"thread": "M", "size": "34x1.5", "gender": "female", "path": "vacuum_assist"},
}
_AGENCIES = (
    "wisconsin",
    "maryland",
    "virginia",
    "north_carolina",
    "kentucky",
    "unknown",
    "georgia",
    "california_retail",
)
_INSTALLED = {
    "none": (
        ("whip_hose", "TH-W101"),
        ("breakaway", "LS-B101"),
        ("curb_hose", "TH-H101"),
        ("swivel", "LS-S101"),
        ("nozzle", "QW-N101"),
    ),
    "balance": (("whip_hose", "TH-W117"), ("breakaway", "QW-B113"), ("curb_hose", "TH-H151"), ("nozzle", "QW-N120")),
    "vacuum_assist": (("curb_hose", "TH-H169"), ("nozzle", "OB-N126")),
}


def generated_site(number: int, draw: random.Random) -> Survey:
    """Return one invented station: two to six dispensers with two positions each."""
    today = draw.choice(("balance", "vacuum_assist", "vacuum_assist"))
    dispensers = draw.randint(2, 6)
    positions = [
        _position(dispenser, side, today, draw) for dispenser in range(1, dispensers + 1) for side in ("A", "B")
    ]
    return Survey.model_validate(
        {
            "site": {
                "name": f"Invented Stop {number:04d}",
                "climate": {"low_c": draw.choice((-25, -15)), "high_c": 40},
            },
            "positions": positions,
            "conversion": {
                "agency": draw.choice(_AGENCIES),
                "emissions": {
                    "gasoline_throughput_m3": draw.randrange(1000, 9000, 100),
                    "own_shares": [{"year": 2027, "share": 0.96}],
                },
                "sequence": {"start_date": "2027-03-01", "condensate_traps": draw.randint(0, 2)},
                "money": {
                    "labour_rate_per_hour": "90",
                    "upkeep_today_per_year": str(draw.randrange(2500, 6000, 100)),
                    "upkeep_after_per_year": "1200",
                },
            },
        }
    )


def small_site(number: int, draw: random.Random) -> Survey:
    """Return the first two dispensers of such a station, for tests that ask what is done and not how fast."""
    site = generated_site(number, draw)
    return site.model_copy(update={"positions": site.positions[:4]})


def chain_site(number: int, draw: random.Random, positions: int) -> Survey:
    """Return a station of a chain: every tenth position asks what no other does, by its reach and outlet height."""
    site = generated_site(number, draw)
    today = site.positions[0].vapour_today
    places = [(place // 2 + 1, "AB"[place % 2]) for place in range(positions)]
    drawn = [_position(dispenser, side, today, draw) for dispenser, side in places]
    for one in drawn[::10]:
        one["filler"] = {"distance_m": round(draw.uniform(1.5, 2.3), 5), "height_m": 0.9}
        one["outlet"] = {**_OUTLETS[today], "height_m": round(draw.uniform(1.9, 2.3), 5)}
    return Survey.model_validate({**site.model_dump(mode="json"), "positions": drawn})


def _position(dispenser: int, side: str, today: str, draw: random.Random) -> dict[str, object]:
    return {
        "label": f"{dispenser}{side}",
        "dispenser": str(dispenser),
        "liquid": {"family": "gasoline", "blend_percent": 10},
        "vapour_today": today,
        "outlet": {**_OUTLETS[today], "height_m": draw.choice((2.0, 2.1, 2.2))},
        "filler": {"distance_m": draw.choice((1.6, 1.8, 2.0, 2.2)), "height_m": 0.9},
        "installed": [
            {"kind": kind, "number": part, "age_years": draw.randint(2, 12), "condition": "good"}
            for kind, part in _INSTALLED[today]
        ],
    }


def write_sites(folder: Path, count: int, *, seed: int = 20261125) -> None:
    """Write ``count`` invented surveys into ``folder``."""
    draw = random.Random(seed)
    for number in range(1, count + 1):
        survey = generated_site(number, draw)
        (folder / f"site_{number:04d}.json").write_text(survey.model_dump_json(), encoding="utf-8")
