"""Bad input gives exit code 2 and a message that names the field; nothing is written and nothing is lost.

The exit codes are the contract of the command line; the bounds named are those of the survey model.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

GASOLINE = {"family": "gasoline", "blend_percent": 10}


@pytest.mark.parametrize(
    ("change", "field", "word"),
    [
        ({"label": ""}, "positions[0].label", "characters"),
        ({"duty": "lorry"}, "positions[0].duty", "truck"),
        ({"liquid": {"family": "petrol"}}, "positions[0].liquid.family", "gasoline"),
        ({"liquid": {"family": "gasoline", "blend_percent": -1}}, "positions[0].liquid.blend_percent", "at least 0"),
        ({"vapour_wanted": "ballance"}, "positions[0].vapour_wanted", "did you mean balance?"),
        ({"outlet": {"thread": "BSPP"}}, "positions[0].outlet.thread", "NPT, G, M, UN"),
        ({"outlet": {"path": "double"}}, "positions[0].outlet.path", "single"),
        ({"outlet": {"height_m": 99}}, "positions[0].outlet.height_m", "at most 6"),
        ({"filler": {"distance_m": "far"}}, "positions[0].filler.distance_m", "a number"),
        ({"retrieval": "spring"}, "positions[0].retrieval", "retractor"),
        ({"hold_open_wanted": "yes"}, "positions[0].hold_open_wanted", "true or false"),
        ({"in_flammable_zone": 1}, "positions[0].in_flammable_zone", "true or false"),
        ({"hold_open": True}, "positions[0].hold_open", "did you mean hold_open_wanted?"),
        ({"decisions": {"pinned": ["no such part"]}}, "positions[0].decisions.pinned[0]", "part number"),
        ({"decisions": {"refused": ["no such part"]}}, "positions[0].decisions.refused[0]", "part number"),
    ],
)
def test_a_faulty_position_field_is_named(
    change: dict[str, Any], field: str, word: str, spoutline: Any, written: Callable[..., Path]
) -> None:
    done = spoutline("plan", written({"label": "1", "liquid": GASOLINE} | change))
    assert done.code == 2
    assert done.out == ""
    assert f"{field}: " in done.err
    assert word in done.err


@pytest.mark.parametrize(
    ("change", "field", "word"),
    [
        ({"jurisdiction": "us_genral"}, "site.jurisdiction", "did you mean us_general?"),
        ({"jurisdiction": "../secrets"}, "site.jurisdiction", "us_general"),
        ({"currency": "CHF"}, "site.currency", "EUR, USD"),
        ({"currency": "usd"}, "site.currency", "ISO 4217"),
        ({"climate": {"low_c": 40, "high_c": 30}}, "site.climate.low_c", "must not exceed"),
        ({"climate": {"low_c": -200}}, "site.climate.low_c", "at least -60"),
        ({"service": "robot"}, "site.service", "self, attended, unattended"),
        ({"name": " "}, "site.name", "at least 1"),
    ],
)
def test_a_faulty_site_field_is_named(
    change: dict[str, Any], field: str, word: str, spoutline: Any, written: Callable[..., Path]
) -> None:
    done = spoutline("plan", written(**change))
    assert done.code == 2
    assert f"{field}: " in done.err
    assert word in done.err


def test_every_name_that_nothing_stands_behind_is_reported_at_once(
    spoutline: Any, written: Callable[..., Path]
) -> None:
    pinned = {"label": "1", "decisions": {"pinned": ["nothing"]}}
    done = spoutline("plan", written(pinned, jurisdiction="atlantis", currency="CHF"))
    assert done.code == 2
    assert [line.split(": ")[1] for line in done.err.splitlines()] == [
        "site.jurisdiction",
        "site.currency",
        "positions[0].decisions.pinned[0]",
    ]


@pytest.mark.parametrize(
    ("content", "word"),
    [
        (b"", "an empty text"),
        (b"label,duty\n1,car\n", "must be JSON"),
        (b"[]", "one JSON object"),
        (b'{"site": ', "line 1, column"),
        (b"\x00\x01\x02", "must be JSON"),
        (b"\xff\xfe{\x00}\x00", "UTF-8"),
        (b"PK\x03\x04 a workbook", "must be JSON"),
        (b'{"version": 2, "site": {"name": "A"}, "positions": [{"label": "1"}]}', "version: 2"),
    ],
)
def test_a_file_that_is_no_survey_is_refused_by_every_command(
    content: bytes, word: str, spoutline: Any, tmp_path: Path
) -> None:
    path = tmp_path / "survey.json"
    path.write_bytes(content)
    for command in (["plan", path], ["bill", path, "--pdf", tmp_path / "bill.pdf"], ["whynot", path, "1", "X"]):
        done = spoutline(*command)
        assert done.code == 2
        assert word in done.err
        assert str(path) in done.err
    assert not (tmp_path / "bill.pdf").exists()
    assert path.read_bytes() == content


def test_a_missing_file_and_a_folder_are_named(spoutline: Any, tmp_path: Path) -> None:
    for name, word in ((tmp_path / "missing.json", "No such file"), (tmp_path, "directory")):
        done = spoutline("plan", name)
        assert done.code == 2
        assert str(name) in done.err
        assert word in done.err


def test_a_survey_on_standard_input_is_named_so_in_faults(spoutline: Any) -> None:
    done = spoutline("plan", "-", stdin=b"no survey")
    assert done.code == 2
    assert "standard input" in done.err


def test_an_unknown_position_or_part_names_what_there_is(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written()
    done = spoutline("whynot", path, "7", "X")
    assert done.code == 2
    assert "position: '7'" in done.err
    assert "use one of: 1" in done.err
    done = spoutline("whynot", path, "1", "no-such-part")
    assert done.code == 2
    assert "part number: 'no-such-part'" in done.err


@pytest.mark.parametrize(
    "arguments",
    [
        ["plan"],
        ["bill", "x.json", "--pdf"],
        ["whynot", "x.json"],
        ["schema", "extra"],
        ["profile"],
        ["profile", "show"],
        ["nonsense"],
        ["--units", "furlongs", "plan", "x.json"],
        ["plan", "x.json", "--colour"],
    ],
)
def test_arguments_that_make_no_command_give_usage_and_2(arguments: list[str], spoutline: Any) -> None:
    done = spoutline(*arguments)
    assert done.code == 2
    assert done.err.startswith("usage: spoutline")


def test_an_unknown_demo_names_those_there_are(spoutline: Any) -> None:
    done = spoutline("demo", "small_twon")
    assert done.code == 2
    assert "did you mean small_town?" in done.err


def test_a_database_that_cannot_be_opened_is_named(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    (tmp_path / "letter.txt").write_text("Dear customer, " * 100)
    for database, word in ((tmp_path, "folder"), (tmp_path / "letter.txt", "letter.txt"), ("nosuch://x", "database")):
        done = spoutline("--database", database, "plan", written())
        assert done.code == 2
        assert word in done.err
    assert (tmp_path / "letter.txt").read_text() == "Dear customer, " * 100


def test_a_survey_of_hostile_text_is_only_text(spoutline: Any, written: Callable[..., Path]) -> None:
    hostile = "<b>&\x1b[31m=cmd|' /C calc'!A0;--"
    done = spoutline("plan", written({"label": hostile, "liquid": GASOLINE}, name=hostile))
    assert done.code in (0, 1)
    assert "\x1b" not in done.out
    assert "<b>&" in done.out


def test_deep_or_huge_json_is_refused_without_a_crash(spoutline: Any, tmp_path: Path) -> None:
    path = tmp_path / "deep.json"
    for text in ("[" * 200_000, '{"a":' * 50_000, json.dumps({"site": {"name": "x" * 1_000_000}, "positions": []})):
        path.write_text(text)
        assert spoutline("plan", path).code == 2


@pytest.mark.parametrize(
    "command", [("quotation", "list"), ("quotation", "show"), ("whynot", "SURVEY", "1"), ("substitutes", "SURVEY", "1")]
)
def test_bytes_of_an_argument_that_are_no_text_are_refused(
    command: tuple[str, ...], spoutline: Any, written: Callable[..., Path]
) -> None:
    # a byte that is no UTF-8 comes in as half of a sign: PEP 383
    survey = str(written({"label": "1", "liquid": GASOLINE}))
    done = spoutline(*(survey if word == "SURVEY" else word for word in command), "Elm\udcf4")
    assert done.code == 2
    assert "'Elm\\udcf4' is not usable; write it in the encoding of this shell" in done.err
