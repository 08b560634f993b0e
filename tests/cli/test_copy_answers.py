"""`copy-answers`: answers of one position given to others in the shell, as *Copy answers* of the window gives them."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from program_runs import Spoutline

Written = Callable[..., Path]


@pytest.fixture
def survey(tmp_path: Path) -> Path:
    def one(label: str, family: str, blend: float | None, **others: object) -> dict[str, object]:
        liquid = {"family": family} if blend is None else {"family": family, "blend_percent": blend}
        return {"label": label, "dispenser": label[0], "liquid": liquid, **others}

    positions = [
        one("1A", "gasoline", 10, duty="truck", notes="windy"),
        one("2A", "gasoline", 10),
        one("2B", "gasoline", 15),
        one("3A", "gasoline", None),  # 10 percent is assumed there, and an assumed blend is no product
        one("4A", "gasoline", 10, duty="car"),
    ]
    path = tmp_path / "station.json"
    document = {"format": "spoutline-survey", "version": 1, "site": {"name": "Fern Pond"}, "positions": positions}
    path.write_text(json.dumps(document))
    return path


def read(path: Path) -> dict[str, dict[str, object]]:
    return {one["label"]: one for one in json.loads(path.read_text(encoding="utf-8"))["positions"]}


def test_answers_go_to_the_positions_of_the_same_product(spoutline: Spoutline, survey: Path, tmp_path: Path) -> None:
    before, out = read(survey), tmp_path / "after.json"
    ask = ("copy-answers", survey, "1A", "--answers", "duty")
    seen = spoutline(*ask, "--same-product")
    assert seen.code == 0
    assert seen.out.splitlines()[:2] == ["2A", "4A"]
    assert "nothing was written" in seen.out
    assert read(survey) == before
    done = json.loads(spoutline(*ask, "--same-product", "--json", "--out", out).out)
    assert (done["changed"], done["answers"], done["written"]) == (["2A", "4A"], ["duty"], True)
    after = read(out)
    duties = [after[label].get("duty") for label in ("1A", "2A", "2B", "3A", "4A")]
    assert duties == ["truck", "truck", None, None, "truck"]
    assert "notes" not in after["2A"]  # of another group
    # what nobody answered at the one is answered by nobody at the others
    cleared = tmp_path / "cleared.json"
    spoutline("copy-answers", survey, "2A", "--answers", "duty", "--to", "1A", "--out", cleared)
    assert "duty" not in read(cleared)["1A"]


def test_all_or_some_get_several_groups(spoutline: Spoutline, survey: Path, tmp_path: Path) -> None:
    out = tmp_path / "after.json"
    groups = ("--answers", "liquid", "--answers", "notes")
    told = json.loads(spoutline("copy-answers", survey, "1A", *groups, "--all", "--json", "--out", out).out)
    assert told["changed"] == ["2A", "2B", "3A", "4A"]
    assert all(one["liquid"] == {"family": "gasoline", "blend_percent": 10} for one in read(out).values())
    assert {one["notes"] for one in read(out).values()} == {"windy"}
    some = json.loads(spoutline("copy-answers", survey, "1A", *groups, "--to", "2B", "--to", "3A", "--json").out)
    assert some["changed"] == ["2B", "3A"]


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (("9Z", "--answers", "duty", "--all"), "9Z"),
        (("1A", "--answers", "duty", "--to", "9Z"), "9Z"),
        (("1A", "--answers", "duty"), "--same-product"),
        (("3A", "--answers", "duty", "--same-product"), "--to"),
        (("1A", "--answers", "colour", "--all"), "liquid"),
    ],
)
def test_what_cannot_be_is_told(spoutline: Spoutline, survey: Path, arguments: tuple[str, ...], told: str) -> None:
    done = spoutline("copy-answers", survey, *arguments)
    assert done.code == 2
    assert told in done.err
