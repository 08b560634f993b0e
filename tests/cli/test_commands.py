"""Each command does what the contract of the command line says."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import jsonschema
import pytest

import spoutline as package
from spoutline.book.survey_text import survey_from_json
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.answered import same_answers, site_assumptions

GASOLINE = {"family": "gasoline", "blend_percent": 10}
DIESEL_B30 = {"family": "diesel", "blend_percent": 30}


def test_plan_prints_requirement_set_checks_and_the_price(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("plan", written())
    assert done.code == 0
    for head in ("What is asked", "Chosen set, dispenser first", "Checks", "List price of the set"):
        assert head in done.out
    assert "1 of 1 position has a set that keeps every must." in done.out


def test_plan_reads_standard_input(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written()
    assert spoutline("plan", "-", stdin=path.read_bytes()).out == spoutline("plan", path).out


def test_a_blend_without_a_listing_class_gives_1_with_reason_and_ways_out(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    # Scopes of UL 2586B, 567B and 330B: up to 5 and up to 20 percent biodiesel, and 100 percent; nothing between.
    path = written({"label": "ok", "liquid": GASOLINE}, {"label": "none", "liquid": DIESEL_B30})
    done = spoutline("plan", path)
    assert done.code == 1
    assert "Ways out" in done.out
    assert "1 of 2 positions have a set" in done.out
    document = json.loads(spoutline("plan", path, "--json").out)
    ok, none = document["positions"]
    assert ok["status"] == "fits"
    assert none["status"] == "no_listing_class"
    assert none["set"] == []
    assert none["ways_out"]


def section(text: str, head: str) -> str:
    """Return the lines below ``head`` that are set deeper than it, each run of white space as one space."""
    lines = text.splitlines()
    start = next(number for number, line in enumerate(lines) if line.strip() == head)
    body = []
    for line in lines[start + 1 :]:
        if not line.startswith("    "):
            break
        body.append(line)
    return " ".join(" ".join(body).split())


@pytest.mark.parametrize(
    ("fields", "status", "reason", "way"),
    [
        # UL 2586B, 567B, 330B scopes: B5, B20 and B100 and nothing between
        (
            {"liquid": DIESEL_B30},
            "no listing class",
            "No listing class covers this blend (diesel with 30 % biodiesel; covered up to 20 %",
            "Sell a blend of B20 or less",
        ),
        (
            {"liquid": {"family": "diesel", "blend_percent": 5}, "vapour_wanted": "balance"},
            "answers contradict",
            "Vapor recovery is asked for, but this liquid gives no vapor to recover",
            "Set the wanted vapor status to none",
        ),
        (
            {"liquid": GASOLINE, "filler": {"distance_m": 3, "height_m": 0.9, "plan_legs_m": [1, 1]}},
            "outside what can be computed",
            "cannot be joined by a hanging hose",
            "Measure heights and distances again",
        ),
    ],
)
def test_a_refusal_is_printed_with_its_reason_and_its_ways_out(
    fields: dict[str, Any], status: str, reason: str, way: str, spoutline: Any, written: Callable[..., Path]
) -> None:
    done = spoutline("plan", written({"label": "1", **fields}))
    assert done.code == 1
    assert f"Position 1 (dispenser 1): {status}" in done.out
    assert reason in section(done.out, "Findings")
    assert way in section(done.out, "Ways out")


def test_a_position_that_nothing_fits_is_printed_with_the_conflict_and_what_would_free_a_set(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    # a filler 9 m away cannot be reached with the 18 ft of NIST Handbook 44 (5.4864 m)
    far = written({"label": "1", "liquid": GASOLINE, "filler": {"distance_m": 9, "height_m": 0.9}})
    done = spoutline("plan", far)
    assert done.code == 1
    assert "Position 1 (dispenser 1): no set fits" in done.out
    why = section(done.out, "Why nothing fits")
    assert "greatest hose length, reach to the filler" in why
    assert "Parts that nothing else excludes, cheapest first: " in why
    assert "Greatest hose length: 18 ft would have to become" in section(done.out, "What would free a set")
    assert done.out.index("Why nothing fits") < done.out.index("What is asked")


def test_plan_tells_each_requirement_in_a_sentence_and_the_yearly_loss_of_the_hoses(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    text = " ".join(spoutline("plan", written()).out.split())
    assert "Gasoline with 10 % ethanol asks for parts listed for class E10." in text
    assert "No latch: none is wanted." in text
    assert "through these hoses," in text
    assert "through low-permeation hoses at their limit." in text


def test_units_change_the_texts_and_never_the_figures(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written()
    si, us = spoutline("plan", path, "--units", "si"), spoutline("--units", "us", "plan", path)
    assert si.out != us.out
    assert spoutline("plan", path, "--units", "us").out == us.out
    si_json, us_json = (json.loads(spoutline("plan", path, "--json", "--units", units).out) for units in ("si", "us"))
    assert si_json["positions"][0]["checks"] == us_json["positions"][0]["checks"]
    assert si_json["positions"][0]["set"] == us_json["positions"][0]["set"]


def test_units_are_those_usual_where_the_site_lies(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path = written()
    assert spoutline("plan", path).out == spoutline("plan", path, "--units", "us").out
    path = written(jurisdiction="europe", currency="USD")
    assert spoutline("plan", path).out == spoutline("plan", path, "--units", "si").out
    # one's own jurisdiction has the units of the one it was copied from
    folder = ("--profiles", str(tmp_path / "own"))
    for base, own, units in (("us_general", "brack_county", "us"), ("europe", "kanton_nord", "si")):
        assert spoutline("profile", "copy", base, own, *folder).code == 0
        path = written(jurisdiction=own)
        assert spoutline("plan", path, *folder).out == spoutline("plan", path, "--units", units, *folder).out


def test_schema_prints_a_schema_that_the_demos_satisfy_and_faults_do_not(spoutline: Any) -> None:
    schema = json.loads(spoutline("schema").out)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for name in spoutline("demo").out.split():
        validator.validate(json.loads(spoutline("demo", name).out))
    faulty = {"site": {"name": "A"}, "positions": [{"label": "1", "duty": "lorry"}]}
    assert not validator.is_valid(faulty)
    assert not validator.is_valid({"positions": [{"label": "1"}]})


def test_the_schema_has_every_field_of_the_contract(spoutline: Any) -> None:
    definitions = json.loads(spoutline("schema").out)["$defs"]
    fields = set(definitions["Position"]["properties"])
    assert fields >= {
        "label",
        "liquid",
        "duty",
        "vapour_today",
        "vapour_wanted",
        "outlet",
        "filler",
        "retrieval",
        "hold_open_wanted",
        "prepay",
        "in_flammable_zone",
    }
    assert set(definitions["Site"]["properties"]) >= {"name", "jurisdiction", "climate", "currency", "service"}
    assert set(definitions["Outlet"]["properties"]) >= {"thread", "size", "path", "height_m"}
    assert set(definitions["Filler"]["properties"]) >= {"distance_m", "height_m"}
    assert set(definitions["Climate"]["properties"]) == {"low_c", "high_c"}


@pytest.mark.parametrize("name", ["small_town", "truck_stop", "marina", "mixed_fuels"])
def test_every_demo_can_be_planned_and_its_document_satisfies_the_output_schema(
    name: str, spoutline: Any, tmp_path: Path
) -> None:
    path = tmp_path / "demo.json"
    assert spoutline("demo", name, "--out", path).code == 0
    assert path.read_text() == spoutline("demo", name).out
    done = spoutline("plan", path, "--json")
    document = json.loads(done.out)
    schema = json.loads(spoutline("schema", "--output").out)
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(document)
    kept = [position["keeps_every_must"] for position in document["positions"]]
    assert done.code == (0 if all(kept) else 1)
    assert document["provenance"]["program_version"] == package.__version__


def test_the_demos_have_sets_but_for_a_blend_without_a_class_and_a_kept_part_that_was_replaced(spoutline: Any) -> None:
    """The catalogue's file of swivels says that LS-S113, which the refit keeps at two positions, is superseded."""
    lacking = {
        "mixed_fuels": [("3 B30", "no_listing_class")],
        "refit_48": [("4A diesel", "does_not_fit"), ("4B diesel", "does_not_fit")],
    }
    for name in spoutline("demo").out.split():
        survey = spoutline("demo", name).out.encode()
        document = json.loads(spoutline("plan", "-", "--json", stdin=survey).out)
        missing = [
            (position["label"], position["status"])
            for position in document["positions"]
            if not position["keeps_every_must"]
        ]
        assert missing == lacking.get(name, [])
        ways = [one["conflict"]["relaxations"][0] for one in document["positions"] if one["conflict"]]
        maker = "Larkspindle Couplings"
        replaced = {"part_before": "LS-S113", "part_now": "LS-S101", "maker_before": maker, "maker_now": maker}
        assert all(way["successions"] == [replaced] for way in ways)


def test_a_written_demo_holds_what_was_answered_and_nothing_else(spoutline: Any) -> None:
    for name in spoutline("demo").out.split():
        read = survey_from_json(spoutline("demo", name).out, name)
        assert same_answers(read, demo_survey(name))
        assert site_assumptions(read.site), name  # nobody said the climate of an invented station


def test_the_larger_demos_are_stations_with_islands(spoutline: Any) -> None:
    stations = {
        name: survey_from_json(spoutline("demo", name).out, name).model_dump(mode="json")["positions"]
        for name in ("truck_stop", "marina", "mixed_fuels", "refit_48")
    }
    assert {name: len(positions) for name, positions in stations.items()} == {
        "truck_stop": 15,
        "marina": 6,
        "mixed_fuels": 14,
        "refit_48": 48,
    }
    for positions in stations.values():
        assert all(position["island"] for position in positions)
        stands_on = {(position["dispenser"], position["island"]) for position in positions}
        assert len(stands_on) == len({dispenser for dispenser, _ in stands_on})
    truck = stations["truck_stop"]
    # a lane is fuelled from both sides: its master on one island, its satellite on the next
    lanes = [{one["label"].split()[1]: one["island"] for one in truck if one["label"][0] == lane} for lane in "123"]
    assert all(set(lane) == {"master", "satellite", "DEF"} for lane in lanes)
    assert [lane["satellite"] for lane in lanes][:2] == [lane["master"] for lane in lanes][1:]
    sold = {(one["liquid"]["family"], one["liquid"]["blend_percent"]) for one in stations["mixed_fuels"]}
    assert {("def", 0), ("gasoline", 85), ("gasoline", 15), ("kerosene", 0), ("fuel_oil", 0)} <= sold
    (unlisted,) = (one for one in stations["mixed_fuels"] if one["label"] == "3 B30")
    assert "no listing class" in unlisted["notes"]


def test_the_document_names_slot_part_and_attributes_in_si(spoutline: Any, written: Callable[..., Path]) -> None:
    position = json.loads(spoutline("plan", written(), "--json").out)["positions"][0]
    slots = [link["slot"] for link in position["set"]]
    assert slots[-1] == "nozzle"
    assert {"breakaway", "curb_hose"} <= set(slots)
    nozzle = position["set"][-1]["attributes"]
    # SAE J285: spouts of unleaded gasoline nozzles are at most 21.34 mm (0.840 in) outside.
    assert 0.019 < nozzle["spout_outside_diameter_m"] <= 0.02134
    assert "bore_m" not in nozzle
    hose = next(link for link in position["set"] if link["slot"] == "curb_hose")["attributes"]
    assert hose["bore_m"] > 0
    assert "spout_outside_diameter_m" not in hose
    assert position["requirement"]["listing_class"] == "E10"
    price = sum(link["unit_price_minor"] for link in position["set"])
    assert position["price_minor"] == price


def test_each_check_passes_exactly_when_its_value_lies_in_its_window(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    positions = json.loads(spoutline("plan", "-", "--json", stdin=demo(spoutline)).out)
    checked = 0
    for position in positions["positions"]:
        for check in position["checks"]:
            lower, upper = check["limit"]["lower"], check["limit"]["upper"]
            if check["value"] is None or (lower is None and upper is None) or check["outcome"] == "information":
                continue
            inside = (lower is None or check["value"] >= lower["value"] * (1 - 1e-9)) and (
                upper is None or check["value"] <= upper["value"] * (1 + 1e-9)
            )
            assert check["passes"] == inside, check
            checked += 1
    assert checked > 20


def demo(spoutline: Any, name: str = "small_town") -> bytes:
    survey: str = spoutline("demo", name).out
    return survey.encode()


def test_whynot_says_0_for_a_chosen_part_and_1_with_the_rule_for_an_impossible_one(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    path = written()
    position = json.loads(spoutline("plan", path, "--json").out)["positions"][0]
    nozzle = position["set"][-1]["part_number"]
    assert spoutline("whynot", path, "1", nozzle).code == 0
    def_path = path.parent / "def.json"
    def_path.write_text(json.dumps({"site": {"name": "A"}, "positions": [{"label": "1", "liquid": {"family": "def"}}]}))
    done = spoutline("whynot", def_path, "1", nozzle)
    assert done.code == 1
    assert nozzle in done.out
    assert len(done.out.splitlines()) > 1


def test_profiles_can_be_listed_shown_copied_edited_imported_and_removed(spoutline: Any, tmp_path: Path) -> None:
    listed = spoutline("profile", "list").out
    for name in ("us_general", "us_vapour_rules", "us_without_recovery", "europe"):
        assert f"{name}  (built in)" in listed
    assert "hose.length_max" in spoutline("profile", "show", "us_general").out
    assert spoutline("profile", "copy", "us_general", "my_county", "--title", "My county").code == 0
    assert "my_county  (own)  My county" in spoutline("profile", "list").out
    edited = tmp_path / "my_county.toml"
    assert spoutline("profile", "export", "my_county", "--out", edited).code == 0
    assert edited.read_text() == spoutline("profile", "export", "my_county").out
    assert spoutline("profile", "import", edited).code == 0
    assert spoutline("profile", "remove", "my_county").code == 0
    assert "my_county" not in spoutline("profile", "list").out


def test_a_copied_profile_can_be_planned_with_at_once(spoutline: Any, written: Callable[..., Path]) -> None:
    spoutline("profile", "copy", "us_general", "my_county")
    done = spoutline("plan", written(jurisdiction="my_county"), "--json")
    assert done.code == 0
    assert json.loads(done.out)["site"]["jurisdiction"] == "my_county"


@pytest.mark.parametrize(
    ("arguments", "word"),
    [
        (["profile", "show", "us_genral"], "us_general"),
        (["profile", "copy", "atlantis", "mine"], "us_general"),
        (["profile", "copy", "us_general", "europe"], "taken"),
        (["profile", "copy", "us_general", "../mine"], "id"),
        (["profile", "remove", "us_general"], "us_general"),
        (["profile", "import", "missing.toml"], "No such file"),
    ],
)
def test_profile_faults_are_named(arguments: list[str], word: str, spoutline: Any) -> None:
    done = spoutline(*arguments)
    assert done.code == 2
    assert word in done.err


def test_an_imported_profile_is_checked_before_it_is_kept(spoutline: Any, tmp_path: Path) -> None:
    broken = tmp_path / "broken.toml"
    text = spoutline("profile", "export", "us_general").out
    broken.write_text(text)
    done = spoutline("profile", "import", broken)
    assert done.code == 2
    assert "built-in" in done.err
    broken.write_text(text.replace('id = "us_general"', 'id = "mine"', 1).replace("value = ", "valeu = ", 1))
    done = spoutline("profile", "import", broken)
    assert done.code == 2
    assert "valeu" in done.err
    broken.write_bytes(b"\xff")
    assert "UTF-8" in spoutline("profile", "import", broken).err
    assert "mine" not in spoutline("profile", "list").out


def test_version_and_help_say_what_they_should(spoutline: Any) -> None:
    assert spoutline("--version").out == f"spoutline {package.__version__}\n"
    helped = spoutline("--help").out
    for name in ("plan", "bill", "whynot", "schema", "profile", "demo"):
        assert name in helped


# an outlet half a metre above the ground: a hose of the usual 3 m hangs as a loop of 1.5 m and must lie on the ground,
# at rest and drawn out alike; the clearance of 0.1 m is good practice and no law
LOW_OUTLET = {"label": "1", "liquid": GASOLINE, "outlet": {"height_m": 0.5}}


def test_a_set_that_misses_good_practice_says_so_beside_its_verdict_and_still_ends_with_0(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    done = spoutline("plan", written(LOW_OUTLET))
    assert done.code == 0
    assert "Position 1 (dispenser 1): a set fits; good-practice lines not met: 2\n" in done.out
    station = spoutline("site", written(LOW_OUTLET))
    assert station.code == 0
    assert "; good-practice lines not met: 2\n" in station.out
    assert "good-practice" not in spoutline("plan", written()).out


def test_positions_that_ask_the_same_are_told_once_and_then_referred_to(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    def hose(label: str, dispenser: str, blend_percent: float = 10) -> dict[str, Any]:
        return {
            "label": label,
            "dispenser": dispenser,
            "liquid": {"family": "gasoline", "blend_percent": blend_percent},
        }

    survey = written(hose("1A", "1"), hose("1B", "1"), hose("2A", "2", 15), hose("2B", "2"))
    done = spoutline("plan", survey)
    assert done.code == 0
    assert "Position 1B (dispenser 1): as position 1A: a set fits\n" in done.out
    assert "Position 2B (dispenser 2): as position 1A: a set fits\n" in done.out
    assert "Position 2A (dispenser 2): a set fits\n" in done.out  # another blend, another class: told in full
    assert done.out.count("Chosen set, dispenser first") == 2
    assert "4 of 4 positions have a set" in done.out
    document = json.loads(spoutline("plan", survey, "--json").out)
    assert all(len(one["set"]) >= 4 and one["checks"] for one in document["positions"])


def test_catalog_names_a_price_that_cannot_be_and_ends_with_1(
    spoutline: Any, workbench: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    done = spoutline("catalog")
    assert (done.code, done.out.splitlines()[-1]) == (0, "Prices asked about: none")
    monkeypatch.setattr("spoutline.rules.parts.prices.comparable_price", _priced_as_if_mistyped)
    done = spoutline("catalog")
    assert done.code == 1
    assert "LS-B101" in done.out
    assert "look it up before it decides the set" in done.out


def _priced_as_if_mistyped(part: Any, currency: str) -> float | None:
    price = part.price_minor(currency)
    if price is None or part.hose is not None:
        return None
    return 100.0 if part.number == "LS-B101" else float(price)


def test_a_plan_names_what_nobody_answered_and_keeps_status_and_exit_code(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    path = written({"label": "1"}, {"label": "2", "liquid": {"family": "diesel", "blend_percent": 5}, "duty": "car"})
    done = spoutline("plan", path, "--json")
    assert done.code == 0
    untouched, told = json.loads(done.out)["positions"]
    assert (untouched["status"], told["status"]) == ("fits", "fits")
    assert {"liquid.family", "duty"} <= set(untouched["assumed"])
    assert not {"liquid.family", "liquid.blend_percent", "duty"} & set(told["assumed"])
    text = spoutline("plan", path).out
    assert "Nobody answered, so usual values are assumed: liquid, blend, duty" in text
    # outlet strength and pressure: once for the station, among no position's findings
    assert text.count("The pull that the dispenser outlet bears is not surveyed") == 1
    assert text.count("are not surveyed at any position") == 1
