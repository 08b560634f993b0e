"""Survey files: every fault is reported with its field, its value and what would be right; nothing is guessed.

The bounds that the messages must name are those in the survey model's declarations.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.book.choices import choice_of
from spoutline.book.survey_check import check_names
from spoutline.book.survey_text import read_survey, survey_from_bytes, survey_from_json, survey_to_json
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey


def document(**position: Any) -> dict[str, Any]:
    return {"site": {"name": "Maple Ferry Fuels"}, "positions": [{"label": "1", **position}]}


def problems(faulty: object) -> dict[str, str]:
    with pytest.raises(InputFault) as refused:
        survey_from_json(json.dumps(faulty), "survey.json")
    return {problem.field: str(problem) for problem in refused.value.problems}


def test_a_short_survey_takes_the_defaults_that_a_person_would_expect() -> None:
    survey = survey_from_json(json.dumps(document()), "survey.json")
    assert survey.site.jurisdiction == "us_general"
    assert survey.positions[0].outlet.thread == "NPT"


@pytest.mark.parametrize(
    ("position", "field", "words"),
    [
        ({"outlet": {"thread": "NTP"}}, "positions[0].outlet.thread", ("'NTP'", "did you mean NPT?", "NPT, G, M, UN")),
        ({"outlet": {"height_m": -1}}, "positions[0].outlet.height_m", ("-1", "above 0 and at most 6")),
        ({"outlet": {"height_m": "2.1"}}, "positions[0].outlet.height_m", ("'2.1'", "a number is needed")),
        ({"outlet": {"height_m": True}}, "positions[0].outlet.height_m", ("true", "a number is needed")),
        ({"outlet": {"height": 2}}, "positions[0].outlet.height", ("no such field", "did you mean height_m?")),
        ({"outlet": 3}, "positions[0].outlet", ("an object is needed", "thread")),
        ({"filler": {"distance_m": 31}}, "positions[0].filler.distance_m", ("31", "at least 0 and at most 30")),
        ({"filler": {"plan_legs_m": [2, 0]}}, "positions[0].filler.plan_legs_m[1]", ("0", "above 0")),
        ({"filler": {"plan_legs_m": 2}}, "positions[0].filler.plan_legs_m", ("a list is needed",)),
        ({"other_fillers": [{}] * 13}, "positions[0].other_fillers", ("a list of 13", "at most 12 entries")),
        ({"liquid": {"family": "petrol"}}, "positions[0].liquid.family", ("gasoline, diesel, kerosene",)),
        ({"liquid": {"blend_percent": 101}}, "positions[0].liquid.blend_percent", ("at most 100",)),
        ({"liquid": {"family": "def", "blend_percent": 5}}, "positions[0].liquid.blend_percent", ("it must be 0",)),
        ({"duty": "lorry"}, "positions[0].duty", ("car, truck, marine, reel",)),
        ({"prepay": "yes"}, "positions[0].prepay", ("'yes'", "true or false")),
        ({"label": ""}, "positions[0].label", ("at least 1 and at most 60 characters",)),
        ({"label": "x" * 61}, "positions[0].label", ("at most 60 characters", "…")),
        ({"label": None}, "positions[0].label", ("null", "a text is needed")),
        ({"decisions": {"pinned": ["a", ""]}}, "positions[0].decisions.pinned[1]", ("a text is needed",)),
        (
            {"decisions": {"longest_lead_time_days": 1.5}},
            "positions[0].decisions.longest_lead_time_days",
            ("1.5", "a whole number", "at least 0"),
        ),
    ],
)
def test_a_fault_names_field_value_and_what_would_be_right(
    position: dict[str, Any], field: str, words: tuple[str, ...]
) -> None:
    found = problems(document(**position))
    assert list(found) == [field]
    assert found[field].startswith(f"survey.json: {field}: ")
    for word in words:
        assert word in found[field]


def test_all_faults_of_a_survey_are_reported_together() -> None:
    faulty = document(duty="lorry", outlet={"height_m": 0})
    faulty["site"] |= {"currency": "usd", "climate": {"low_c": -61, "high_c": 71}}
    faulty["version"] = 2
    assert set(problems(faulty)) == {
        "version",
        "site.climate.low_c",
        "site.climate.high_c",
        "site.currency",
        "positions[0].duty",
        "positions[0].outlet.height_m",
    }


def test_site_faults_are_named() -> None:
    faulty = document()
    faulty["site"] = {"name": "A", "climate": {"low_c": 50, "high_c": 10}}
    assert "must not exceed high_c (10)" in problems(faulty)["site.climate.low_c"]
    del faulty["site"]
    assert "nothing" in problems(faulty)["site"]


def test_an_empty_survey_and_doubled_labels_are_refused() -> None:
    assert "an empty list" in problems({"site": {"name": "A"}, "positions": []})["positions"]
    doubled = {"site": {"name": "A"}, "positions": [{"label": "1"}, {"label": "1"}]}
    assert "every label must be unique" in problems(doubled)["positions[1].label"]


@pytest.mark.parametrize("number", ["NaN", "Infinity", "-Infinity", "1e999"])
def test_a_number_that_is_none_is_refused(number: str) -> None:
    text = json.dumps(document(outlet={"height_m": 12345})).replace("12345", number)
    with pytest.raises(InputFault, match=r"outlet\.height_m"):
        survey_from_json(text, "survey.json")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "an empty text"),
        ("not json", "line 1, column 1"),
        ('{"site": {"name": "A"},\n "positions": [}', "line 2, column 16"),
        ("[]", "one JSON object"),
        ("3", "one JSON object"),
        ('"text"', "one JSON object"),
        ('{"site": {"name": "A", "name": "B"}, "positions": [{"label": "1"}]}', "name: written twice"),
        ("[" * 100_000, "must be a JSON survey"),
        ('{"site": ' + "9" * 5000 + "}", "must be a JSON survey"),
        ('{"site": {"name": "\\ud800"}, "positions": [{"label": "1"}]}', "survey.json"),
    ],
)
def test_a_text_that_is_no_survey_says_where(text: str, words: str) -> None:
    with pytest.raises(InputFault) as refused:
        survey_from_json(text, "survey.json")
    assert words in str(refused.value)


def test_bytes_must_be_utf_8_and_a_byte_order_mark_is_welcome() -> None:
    with pytest.raises(InputFault, match=r"encoding: byte 10 \(0xff\)"):
        survey_from_bytes(b'{"site": "\xff"}', "survey.json")
    raw = b"\xef\xbb\xbf" + json.dumps(document()).encode()
    assert survey_from_bytes(raw, "survey.json").positions[0].label == "1"


def test_files_that_cannot_be_read_are_input_faults(tmp_path: Path) -> None:
    with pytest.raises(InputFault, match="No such file"):
        read_survey(tmp_path / "missing.json")
    with pytest.raises(InputFault, match="directory"):
        read_survey(tmp_path)


TEXTS = st.text(st.characters(exclude_categories=("Cs", "Cc", "Cf")), min_size=1, max_size=20).filter(
    lambda text: text.strip()
)


def _is_measure(number: float) -> bool:
    return number == 0 or abs(number) >= 1e-9  # what is smaller measures nothing on a station and is refused


@given(
    name=TEXTS,
    notes=st.text(st.characters(exclude_categories=("Cs",)), max_size=50),
    height=st.floats(0.001, 6),
    blend=st.floats(0, 100).filter(_is_measure),
    tank=st.floats(-5, 5).filter(_is_measure),
)
def test_a_survey_survives_writing_and_reading_exactly(
    name: str, notes: str, height: float, blend: float, tank: float
) -> None:
    faulty = document(
        notes=notes, outlet={"height_m": height}, liquid={"blend_percent": blend}, filler={"height_m": tank}
    )
    faulty["site"]["name"] = name
    survey = survey_from_json(json.dumps(faulty), "survey.json")
    text = survey_to_json(survey)
    assert survey_from_json(text, "again") == survey
    assert survey_to_json(survey_from_json(text, "again")) == text


@given(st.recursive(st.none() | st.booleans() | st.floats() | st.text(), st.lists, max_leaves=5))
def test_no_json_value_in_a_field_brings_anything_but_an_input_fault(value: object) -> None:
    for faulty in (
        document(outlet=value),
        document(filler={"plan_legs_m": value}),
        {"site": value, "positions": value},
    ):
        try:
            assert isinstance(survey_from_json(json.dumps(faulty), "survey.json"), Survey)
        except InputFault as fault:
            assert fault.problems


def test_names_that_nothing_stands_behind_are_reported_together() -> None:
    hanging = [{"kind": "nozzle", "number": number} for number in ("C-9", "C-7")]
    named = document(decisions={"pinned": ["A-1", "A-9"], "refused": ["B-9"]}, installed=hanging)
    named["site"] |= {"jurisdiction": "us_genral", "currency": "CHF"}
    survey = survey_from_json(json.dumps(named), "survey.json")
    with pytest.raises(InputFault) as refused:
        check_names(
            survey,
            jurisdictions=("europe", "us_general"),
            currencies=("EUR", "USD"),
            wrong_parts=lambda parts: {part: "near it are A-1" for part in parts if part.number.endswith("9")},
            shared_numbers=lambda parts: {part: "two makers have it" for part in parts if part.number.endswith("7")},
        )
    texts = [str(problem) for problem in refused.value.problems]
    assert "site.jurisdiction: 'us_genral'" in texts[0]
    assert "did you mean us_general?" in texts[0]
    assert "site.currency: 'CHF'" in texts[1]
    assert "EUR, USD" in texts[1]
    assert "positions[0].decisions.pinned[1]: 'A-9'" in texts[2]
    assert "near it are A-1" in texts[2]
    assert "positions[0].decisions.refused[0]: 'B-9'" in texts[3]
    assert "positions[0].installed[1].number: 'C-7'" in texts[4]
    assert len(texts) == 5  # a part that hangs there need be in no catalogue


def test_choices_say_what_is_left_when_they_are_many() -> None:
    assert choice_of("x", ()) == "there is nothing to choose from"
    assert choice_of("x", tuple(str(number) for number in range(30))).endswith("22, 23 and 6 more")
