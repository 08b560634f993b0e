"""The command `programme` over years: terms on paper, deadlines, split sites, every language, bad terms."""

from __future__ import annotations

import csv
import json
from io import StringIO
from pathlib import Path
from random import Random
from typing import Any

import pytest

from bench.generated_sites_conversion import small_site
from program_runs import Spoutline
from spoutline.documents.conversion import programme_table
from spoutline.documents.own_files import FileForm, is_own

TERMS = ("--budget", "5000", "--from", "2027", "--years", "8", "--price-rise", "3", "--interest", "5", "--carry-over")


@pytest.fixture(scope="module")
def sites(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a folder of two stations whose conversions may go ahead; the second has a deadline of its own."""
    folder, draw = tmp_path_factory.mktemp("north"), Random(7)
    for number in (1, 2):
        data = small_site(number, draw).model_dump(mode="json")
        data["conversion"].update({"agency": "maryland", "deadline_year": 2029 if number == 2 else None})
        (folder / f"site_{number}.json").write_text(json.dumps(data), encoding="utf-8")
    return folder


@pytest.fixture
def run(spoutline: Spoutline, sites: Path) -> Any:
    def call(*arguments: object) -> Any:
        return spoutline("programme", sites, "--processes", "1", "--resume", sites / "north.run", *arguments)

    return call


def test_terms_reasons_deadlines_and_waiting_are_told(run: Any) -> None:
    done = run(*TERMS, "--deadline", "Invented Stop 0001=2028")
    told = done.out
    for text in (
        "Budget: 5,000.00 USD a year",
        "goes to the next, without interest",
        "Price rise: 3 % a year",
        "Interest: 5 % a year",
        "Why: its deadline is 2028;",
        "Deadline 2028: ",
        "Deadline 2029: ",
        "A year later: costs ",
        "own hours ",
        "not a proof",
    ):
        assert text in told
    assert told.index("Invented Stop 0001") < told.index("Invented Stop 0002")


def test_nothing_stated_is_said_to_be_none(run: Any) -> None:
    told = run().out
    assert "Budget: no limit" in told
    assert "Price rise: none counted" in told
    assert "Interest: none counted" in told
    assert "Deadline 2029: not looked at" in told  # no first year is named


def test_a_dear_site_is_done_in_visits_of_whole_dispensers(run: Any, sites: Path, tmp_path: Path) -> None:
    whole = json.loads(run("--budget", "90000", "--json").out)
    work = next(one["site"]["work"] for one in whole["ranked"] if one["site"]["place"] == "site_1.json")
    dispensers = [name for unit in work["units"] for name in unit["dispensers"]]
    assert len(work["units"]) == len(set(dispensers)) == 2
    cash = sum(float(unit["cash"]) for unit in work["units"]) + float(work["visit_cash"])
    budget = f"{cash - 1:.2f}"
    table = tmp_path / "north.csv"
    done = run("--budget", budget, "--years", "9", "--from", "2027", "--json", "--csv", table)
    found = next(one for one in json.loads(done.out)["ranked"] if one["site"]["place"] == "site_1.json")
    assert [name for visit in found["visits"] for name in visit["dispensers"]] == dispensers
    assert len({visit["year"] for visit in found["visits"]}) == 2
    assert all(float(visit["cash"]) <= float(budget) for visit in found["visits"])
    rows = {row["file"]: row for row in csv.DictReader(StringIO(table.read_text(encoding="utf-8-sig")))}
    assert rows["site_1.json"]["year"] == str(2026 + found["year"])
    assert rows["site_1.json"]["visits"].count("(") == 2
    assert rows["site_1.json"]["year_reason"] == "in_parts"
    assert rows["site_2.json"]["deadline"] == "2029"
    assert is_own(table, FileForm.CSV)
    table.write_text("\ufeff" + ",".join(programme_table.COLUMNS_EVER[0]) + "\r\n", encoding="utf-8")
    assert is_own(table, FileForm.CSV)  # as an older version wrote it


@pytest.mark.parametrize(
    ("language", "told"),
    [
        ("de", ("Preissteigerung: 3 %", "Warum: ihre Frist ist 2029", "Ein Jahr später: kostet")),
        ("es", ("Alza de precios: 3 %", "Por qué: su plazo es 2029", "Un año después: cuesta")),
        ("fr", ("Hausse des prix : 3 %", "Pourquoi : son échéance est 2029", "Un an plus tard : coûte")),
    ],
)
def test_the_program_is_told_in_every_language(run: Any, language: str, told: tuple[str, ...]) -> None:
    text = run(*TERMS, "--language", language).out
    assert all(one in text for one in told)


@pytest.mark.parametrize(
    ("arguments", "named"),
    [
        (("--from", "27"), "--from"),
        (("--price-rise", "three"), "--price-rise"),
        (("--price-rise", "51"), "--price-rise"),
        (("--interest", "-1"), "--interest"),
        (("--deadline", "site_1.json"), "--deadline"),
        (("--deadline", "site_1.json=soon"), "--deadline"),
        (("--from", "2027", "--deadline", "nowhere=2028"), "nowhere"),
        (("--deadline", "site_1=2028"), "--from"),
    ],
)
def test_terms_that_cannot_be_are_named(run: Any, arguments: tuple[str, ...], named: str) -> None:
    done = run(*arguments)
    assert done.code == 2
    assert named in done.err
    assert "Traceback" not in done.err
