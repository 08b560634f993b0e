"""From a survey file to the printed result: what comes out must be what the published texts say."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from oracle.set_inspection import inspect_set
from program_runs import Spoutline
from spoutline.model.part import Part
from spoutline.model.plan import SetLink
from spoutline.model.requirement import Slot
from spoutline.model.survey import Survey

SEPARATION_WINDOW_N = (444.8, 1556.9)  # UL 567:2021 6.3 (secondary): 100 to 350 lbf


def _run(document: dict[str, Any], folder: Path, spoutline: Spoutline) -> tuple[int, str, str]:
    path = folder / "survey.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    done = spoutline("plan", path, "--json")
    return done.code, done.out, done.err


def _survey(*positions: dict[str, Any], **site: Any) -> dict[str, Any]:
    labelled = [{"label": str(number)} | position for number, position in enumerate(positions, 1)]
    return {"site": {"name": "Published"} | site, "positions": labelled}


BLENDS = [
    # UL 2586 1.4, 2586A 1.3, 2586B 1.3 (verified scopes)
    ("gasoline", 10, "E10"),
    ("gasoline", 15, "E25"),
    ("gasoline", 25, "E25"),
    ("gasoline", 30, "E85"),
    ("gasoline", 85, "E85"),
    ("diesel", 5, "B5"),
    ("diesel", 6, "B20"),
    ("diesel", 20, "B20"),
    ("diesel", 99.9, "B100"),
    ("def", 0, None),
]


def _blend_survey() -> dict[str, Any]:
    positions = [{"liquid": {"family": family, "blend_percent": percent}} for family, percent, _ in BLENDS]
    return _survey(*positions, climate={"low_c": 0, "high_c": 38})


def test_classes_and_spouts_in_the_output_are_the_published_ones(tmp_path: Path, spoutline: Spoutline) -> None:
    code, out, err = _run(_blend_survey(), tmp_path, spoutline)
    assert code == 0, err
    for plan, (family, percent, listing_class) in zip(json.loads(out)["positions"], BLENDS, strict=True):
        assert plan["status"] == "fits", (family, percent)
        assert plan["requirement"]["listing_class"] == listing_class
        slots = {link["slot"]: link["attributes"] for link in plan["set"]}
        spout = slots["nozzle"]["spout_outside_diameter_m"]
        # SAE J285:2007 (secondary) 0.807-0.840 and 0.929-0.937 in; ISO 22241-4 (memory) 19 mm
        low, high = {"gasoline": (0.020498, 0.021336), "diesel": (0.023597, 0.0238), "def": (0.0185, 0.0195)}[family]
        assert low <= spout <= high + 1e-6
        if listing_class is not None:
            assert listing_class in slots["nozzle"]["listings"]
            least, greatest = SEPARATION_WINDOW_N
            assert slots["breakaway"]["separation_minimum_n"] >= least
            assert slots["breakaway"]["separation_maximum_n"] <= greatest
        hose = sum(slots[slot]["length_m"] for slot in ("curb_hose", "whip_hose"))
        assert hose <= 5.4864 + 1e-9  # Okla. 165:26-2-92(a)(1), verified: 18 ft


def test_the_inspector_accepts_every_printed_set(
    tmp_path: Path, spoutline: Spoutline, catalogue: tuple[Part, ...]
) -> None:
    parts = {part.number: part for part in catalogue}
    document = _blend_survey()
    survey = Survey.model_validate(document)
    _, out, _ = _run(document, tmp_path, spoutline)
    for plan, position in zip(json.loads(out)["positions"], survey.positions, strict=True):
        links = [SetLink(slot=Slot(link["slot"]), part=parts[link["part_number"]]) for link in plan["set"]]
        assert not inspect_set(position, survey.site, links).musts


@pytest.mark.parametrize(("family", "percent"), [("gasoline", 90), ("diesel", 21), ("diesel", 50), ("diesel", 99)])
def test_a_gap_in_the_published_scopes_is_refused_and_never_rounded_up(
    tmp_path: Path, spoutline: Spoutline, family: str, percent: float
) -> None:
    liquid = {"family": family, "blend_percent": percent}
    code, out, _ = _run(_survey({"liquid": liquid}), tmp_path, spoutline)
    plan = json.loads(out)["positions"][0]
    assert code == 1
    assert plan["status"] == "no_listing_class"
    assert not plan["set"]


def test_bad_input_names_its_field_and_prints_no_traceback(tmp_path: Path, spoutline: Spoutline) -> None:
    outlet = {"height_m": -1.0}
    code, out, err = _run(_survey({"outlet": outlet, "duty": "lorry"}), tmp_path, spoutline)
    assert code == 2
    assert "height_m" in err
    assert "duty" in err
    assert "Traceback" not in err + out


def test_resistance_and_flow_stay_inside_their_published_limits(tmp_path: Path, spoutline: Spoutline) -> None:
    code, out, _ = _run(_survey({"liquid": {"family": "gasoline", "blend_percent": 10}}), tmp_path, spoutline)
    assert code == 0
    checks = {check["id"]: check for check in json.loads(out)["positions"][0]["checks"]}
    assert checks["resistance_total"]["value"] <= 1e6  # NFPA 77 guidance (memory)
    # EPA fact sheet on 40 CFR 80.22(j), verified: 10 gpm into road vehicles
    for name in ("flow_cold", "flow_hot"):
        assert checks[name]["value"] <= 10 * 3.785411784e-3 / 60 * (1 + 1e-9)
