"""A point picked among sets weighed becomes the agreed set, of a position or of all at once, and papers show it.

The expectations are relations between what the program says in different places; none is a figure of the trade.
"""

from __future__ import annotations

import csv
import io
import json
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from program_runs import Spoutline

GASOLINE = {"liquid": {"family": "gasoline", "blend_percent": 10}}
STATION = ({"label": "1", **GASOLINE}, {"label": "2", **GASOLINE}, {"label": "3", "liquid": {"family": "diesel"}})
Run = Callable[..., str]


@pytest.fixture
def run(spoutline: Spoutline, own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Run:
    """Run a step over a book of its own and return what it printed."""
    monkeypatch.chdir(tmp_path)

    def go(*arguments: object, expect: int = 0) -> str:
        done = spoutline("--database", own_database, *arguments)
        assert done.code == expect, done.err
        return done.err if expect else done.out

    return go


@pytest.fixture
def survey(tmp_path: Path) -> Path:
    """Return the file of a station with two equal positions and a third one."""
    path = tmp_path / "survey.json"
    path.write_text(json.dumps({"site": {"name": "Picked Point Fuels"}, "positions": list(STATION)}))
    return path


def agreed_by_label(run: Run, survey: Path) -> dict[str, list[str]]:
    document = json.loads(run("agreed", survey, "--json"))
    return {one["label"]: [link["part_number"] for link in one["set"]] for one in document["positions"]}


def billed(path: Path) -> Counter[str]:
    rows = csv.DictReader(io.StringIO(path.read_text("utf-8-sig")))
    found: Counter[str] = Counter()
    for row in rows:
        found[row["Part number"]] += int(row["Qty"])
    return found


def points_of(run: Run, *asked: object) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = json.loads(run("weigh", *asked, "--json"))["front"]["points"]
    return found


def test_a_point_of_a_position_is_agreed_alone_and_billed(run: Run, survey: Path) -> None:
    axes = ("--axes", "price,lead,flow")
    points = points_of(run, survey, "1", *axes)
    last = len(points)
    assert last > 1
    run("weigh", survey, "1", *axes, "--agree", last, "--by", "O. Owner", "--reason", "the shortest lead time")
    assert agreed_by_label(run, survey) == {"1": points[-1]["set"]}
    assert "the shortest lead time" in run("agreed", survey, "--history")
    assert "1 of 3 positions differ." in run("agreed", survey, "--compare", "plan", "agreed")
    run("bill", survey, "--csv", "bill.csv")
    run("bill", survey, "--csv", "plan.csv", "--sets", "plan")
    assert Counter(points[-1]["set"]) <= billed(Path("bill.csv"))
    assert billed(Path("bill.csv")) != billed(Path("plan.csv"))


def test_a_point_of_a_station_is_agreed_at_all_positions_at_once(run: Run, survey: Path) -> None:
    document = json.loads(run("weigh", survey, "--axes", "price,lead", "--json"))
    last = len(document["combinations"])
    run("weigh", survey, "--axes", "price,lead", "--agree", last, "--by", "O. Owner")
    choices = document["combinations"][-1]["choices"]
    wanted = {
        label: group["points"][choice - 1]["set"]
        for group, choice in zip(document["groups"], choices, strict=True)
        for label in group["positions"]
    }
    assert agreed_by_label(run, survey) == wanted
    run("bill", survey, "--csv", "bill.csv")
    hanging: Counter[str] = Counter(number for numbers in wanted.values() for number in numbers)
    assert hanging <= billed(Path("bill.csv"))


def test_a_set_without_a_part_asked_for_is_not_agreed_before_it_is_taken(run: Run, survey: Path) -> None:
    points = points_of(run, survey, "1", "--axes", "price,lead")
    last = len(points)
    run("weigh", survey, "1", "--axes", "price,lead", "--take", last, "--accept", "other.json")
    free = ("--axes", "price,lead", "--free", "--agree", 1, "--by", "O. Owner")
    told = run("weigh", "other.json", "1", *free, expect=2)
    assert "take the set first, then agree" in told
    missing = set(points[-1]["set"]) - set(points[0]["set"])
    assert missing
    assert all(number in told for number in missing)
    run("agreed", "other.json", expect=1)


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        (("--agree", "1"), "--by"),
        (("--by", "O. Owner"), "--agree"),
        (("--agree", "999", "--by", "O. Owner"), "use a number from 1 to"),
        (("--agree", "1", "--by", "O", "--take", "1", "--accept", "x.json"), "not both"),
    ],
)
def test_half_a_wish_is_refused_and_nothing_agreed(run: Run, survey: Path, asked: tuple[str, ...], says: str) -> None:
    assert says in run("weigh", survey, "1", "--axes", "price", *asked, expect=2)
    run("agreed", survey, expect=1)
