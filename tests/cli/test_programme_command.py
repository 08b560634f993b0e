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
from paper_text import text_of
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
        "Its deadline is 2028;",
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
        ("de", ("Preissteigerung: 3 %", "Ihre Frist ist 2029", "Ein Jahr später: kostet")),
        ("es", ("Alza de precios: 3 %", "Su plazo es 2029", "Un año después: cuesta")),
        ("fr", ("Hausse des prix\u00a0: 3 %", "Son échéance est 2029", "Un an plus tard\u00a0: coûte")),
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


def test_every_output_is_written_and_known_again(run: Any, tmp_path: Path) -> None:
    forms = (FileForm.PDF, FileForm.HTML, FileForm.CSV, FileForm.XLSX, FileForm.ICS)
    paths = {form: tmp_path / f"north.{form}" for form in forms}
    outputs = [text for form, path in paths.items() for text in (f"--{form}", path)]
    run(*TERMS, *outputs, "--dated", "2026-12-01")
    assert all(is_own(path, form) for form, path in paths.items())
    assert "Dec 1, 2026" in text_of(paths[FileForm.PDF])
    before = {form: path.read_bytes() for form, path in paths.items()}
    run(*TERMS, *outputs, "--dated", "2026-12-01")
    assert {form: path.read_bytes() for form, path in paths.items()} == before  # the same for the same


def test_a_calendar_without_a_first_year_is_refused_before_anything_is_worked_out(run: Any, tmp_path: Path) -> None:
    done = run("--budget", "5000", "--ics", tmp_path / "north.ics", "--csv", tmp_path / "north.csv")
    assert done.code == 2
    assert "--from" in done.err
    assert list(tmp_path.iterdir()) == []
