"""`whatif`: text, document, paper and survey written; what is told in other languages; bad answers; exit codes."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from paper_text import pages_of, text_of

GASOLINE = {"liquid": {"family": "gasoline", "blend_percent": 10}}
STATION = ({"label": "1", **GASOLINE}, {"label": "2", **GASOLINE}, {"label": "3", "liquid": {"family": "diesel"}})


def test_the_document_satisfies_its_schema_and_says_what_plans_say_of_both_surveys(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, other = written(*STATION), tmp_path / "e85.json"
    done = spoutline("whatif", path, "--blend", "e85", "--json", "--accept", other)
    assert done.code == 0
    document = json.loads(done.out)
    schema = json.loads(spoutline("schema", "--output", "whatif").out)
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(document)
    assert [one["label"] for one in document["positions"]] == ["1", "2"]
    assert (document["question"], document["answer"], document["untouched"]) == ("blend", "E85", 1)
    plans = {}
    for side, survey in (("before", path), ("after", other)):
        plans[side] = {one["label"]: one for one in json.loads(spoutline("plan", survey, "--json").out)["positions"]}
    for one in document["positions"]:
        for side, planned in plans.items():
            assert one[side]["parts"] == [link["part_number"] for link in planned[one["label"]]["set"]]
            assert one[side]["price_minor"] == planned[one["label"]]["price_minor"]
        assert one["difference_minor"] == one["after"]["price_minor"] - one["before"]["price_minor"]
        assert [part["before"] for part in one["parts"] if part["before"]] == one["before"]["parts"]
        assert one["effect"] == "must_change"
    totals = document["totals"]
    assert totals["difference_minor"] == sum(one["difference_minor"] for one in document["positions"])
    assert totals["after_minor"] == totals["before_minor"] + totals["difference_minor"]
    accepted = json.loads(other.read_text(encoding="utf-8"))
    assert [one["liquid"].get("blend_percent") for one in accepted["positions"]] == [85, 85, None]


def test_text_and_paper_tell_the_same_sets_once_for_like_positions(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, paper = written(*STATION), tmp_path / "what_if.pdf"
    done = spoutline("whatif", path, "--blend", "E85", "--pdf", paper)
    document = json.loads(spoutline("whatif", path, "--blend", "E85", "--json").out)
    told = " ".join(text_of(paper.read_bytes()).split())
    assert done.out.count("parts must be changed") == 2  # in the summary, and once for the like positions
    assert "Positions: 2 × parts must be changed." in done.out
    assert "1, 2: parts must be changed" in done.out
    assert "1, 2: parts must be changed" in told
    for part in document["leaving"] + document["coming"]:
        assert f"{part['quantity']} × {part['maker']} {part['part_number']}" in done.out
        assert part["part_number"] in told
    assert "Demonstration catalog" in told
    assert "Local codes" in told


def test_a_position_without_a_set_then_ends_with_one_and_says_why(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("whatif", written(*STATION), "--vapor", "balance", "--position", "1")
    assert done.code == 1
    assert "no set fits any more" in done.out
    assert "cannot be met together" in done.out
    assert "Other positions, which stay as they are: 2." in done.out
    diesel = spoutline("whatif", written(*STATION), "--vapor", "balance", "--position", "3")
    assert diesel.code == 1
    assert "diesel" in diesel.out.lower()


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("de", ("Was wäre, wenn", "muss weg", "Teile, die gehen")),
        ("es", ("Qué pasaría si", "tiene que salir", "Piezas que salen")),
        ("fr", ("Et si", "doit partir", "Pièces qui partent")),
    ],
)
def test_it_is_told_in_every_language(
    spoutline: Any, written: Callable[..., Path], language: str, words: tuple[str, ...]
) -> None:
    done = spoutline("whatif", written(*STATION), "--blend", "E85", "--language", language)
    assert done.code == 0
    assert [word for word in words if word not in done.out] == []


def test_outlets_that_are_written_stand_beside_usual_ones(spoutline: Any, written: Callable[..., Path]) -> None:
    asked = ("--outlet", "1 NPT male", "--outlet", "npt_1", "--outlet", "3/4 npt", "--position", "1")
    done = spoutline("whatif", written(*STATION), *asked, "--json")
    document = json.loads(done.out)
    assert [one["answer"] for one in document["columns"]] == ["1 NPT male", "npt_1", "npt_3_4"]
    alone = spoutline("whatif", written(*STATION), "--outlet", "1 NPT male", "--position", "1")
    assert "1 NPT male" in alone.out


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        ((), "name one other answer, or several to one question"),
        (("--blend", "E85", "--duty", "truck"), "name one other answer, or several to one question"),
        (("--blend", "lots"), "as fuel labels name it"),
        (("--outlet", "lots"), "or thread, size and gender"),
        (("--blend", "E85", "--position", "9"), "use one of: 1, 2, 3"),
        (("--jurisdiction", "nowhere"), "nowhere"),
        (("--edition", "Nobody's@3"), "Nobody"),
    ],
)
def test_an_answer_that_is_none_is_told_and_nothing_is_written(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path, arguments: tuple[str, ...], told: str
) -> None:
    out = tmp_path / "other.json"
    done = spoutline("whatif", written(*STATION), *arguments, "--accept", out)
    assert done.code == 2
    assert told in done.err
    assert not out.exists()


def test_several_answers_stand_side_by_side_on_one_page_and_in_a_document_of_their_own(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, paper = written(*STATION), tmp_path / "side_by_side.pdf"
    asked = ("--blend", "E10", "--blend", "E15", "--blend", "E85")
    done = spoutline("whatif", path, *asked, "--json")
    assert done.code == 0
    document = json.loads(done.out)
    schema = json.loads(spoutline("schema", "--output", "whatif-matrix").out)
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(document)
    assert [one["answer"] for one in document["columns"]] == ["E10", "E15", "E85"]
    for place, (answer, column) in enumerate(zip(asked[1::2], document["columns"], strict=True)):
        alone = json.loads(spoutline("whatif", path, "--blend", answer, "--json").out)
        assert column["price_minor"] == alone["totals"]["after_minor"]
        assert column["difference_minor"] == alone["totals"]["difference_minor"]
        assert [one["cells"][place]["price_minor"] for one in document["positions"]] == [
            one["after"]["price_minor"] for one in alone["positions"]
        ]
    done = spoutline("whatif", path, *asked, "--pdf", paper)
    told = " ".join(text_of(paper.read_bytes()).split())
    assert len(pages_of(paper.read_bytes())) == 1
    for words in ("What must be changed when", "Positions where parts must be changed", "E85"):
        assert words in told
        assert words in done.out
    assert "1, 2" in done.out
    for part in document["parts"]:
        assert part["part_number"] in told


def test_a_survey_is_written_with_one_answer_alone(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    out = tmp_path / "other.json"
    done = spoutline("whatif", written(*STATION), "--blend", "E15", "--blend", "E85", "--accept", out)
    assert done.code == 2
    assert "one answer alone" in done.err
    assert not out.exists()


def test_lasting_sets_are_told_with_their_extra_price_and_accepting_asks_for_their_parts(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, other, paper = written(*STATION), tmp_path / "lasting.json", tmp_path / "lasting.pdf"
    done = spoutline("whatif", path, "--blend", "E85", "--lasting", "--json", "--accept", other, "--pdf", paper)
    assert done.code == 0
    document = json.loads(done.out)
    jsonschema.Draft202012Validator(json.loads(spoutline("schema", "--output", "whatif").out)).validate(document)
    assert document["lasting"] is True
    assert {one["effect"] for one in document["positions"]} == {"other_lasts"}
    planned = json.loads(spoutline("plan", other, "--json").out)["positions"]
    for one, plan in zip(document["positions"], planned, strict=False):
        assert one["after"]["parts"] == [link["part_number"] for link in plan["set"]]
        assert one["difference_minor"] == one["after"]["price_minor"] - one["before"]["price_minor"]
    accepted = json.loads(other.read_text(encoding="utf-8"))
    assert [one["liquid"].get("blend_percent") for one in accepted["positions"]] == [10, 10, None]
    told = " ".join(text_of(paper.read_bytes()).split())
    assert "Sets that also last for" in told
    assert "Price of the lasting sets" in told
    for arguments in (("--duty", "truck"), ("--blend", "E15", "--blend", "E85")):
        assert spoutline("whatif", path, *arguments, "--lasting").code == 2
