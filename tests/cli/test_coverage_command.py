"""`catalogue coverage`: the map in words, as JSON, in a CSV file and on paper."""

from __future__ import annotations

import csv
import json
from collections.abc import Callable
from io import StringIO
from pathlib import Path

import pytest

from program_runs import Spoutline
from spoutline.documents.own_files import FileForm, is_own

Run = Callable[..., tuple[int, str, str]]
LIQUIDS_AND_DUTIES = ("--liquid", "e10", "--duty", "car", "--climate", "moderate")
ASKED = (*LIQUIDS_AND_DUTIES, "--outlet", "npt_3_4", "--outlet", "coaxial_balance")


@pytest.fixture
def book(shared_database: Path, spoutline: Spoutline) -> Run:
    def run(*words: str) -> tuple[int, str, str]:
        done = spoutline("--database", str(shared_database), *words)
        return done.code, done.out, done.err

    return run


def test_every_combination_is_answered(book: Run) -> None:
    code, out, _ = book("catalogue", "coverage", "Demonstration", *ASKED, "--most", "2", "--json")
    told = json.loads(out)
    states = {(one["vapour"], one["outlet"]): one["state"] for one in told["combinations"]}
    assert len(states) == 6
    # a single outlet without a return leads no vapour back: balance and assist need one (UL 330, clause 4 note)
    assert states["balance", "npt_3_4"] == states["vacuum_assist", "npt_3_4"] == "nothing_fits"
    assert states["none", "npt_3_4"] == states["balance", "coaxial_balance"] == "fits"
    assert code == 1
    reasons = [one["reason"] for one in told["combinations"] if one["state"] == "nothing_fits"]
    assert all(reasons)
    assert {(one["sets"], one["counted_all"]) for one in told["combinations"] if one["state"] == "fits"} == {(2, False)}
    assert [(one["place"], one["joins"]) for one in told["to_stock"]] == [("whip_hose", True)]


def test_files_hold_what_was_said(book: Run, tmp_path: Path) -> None:
    for ending, form in (("csv", FileForm.CSV), ("pdf", FileForm.PDF), ("json", FileForm.JSON)):
        file = tmp_path / f"map.{ending}"
        book("--language", "de", "catalogue", "coverage", "Demonstration", *ASKED, "--most", "2", "--out", str(file))
        assert is_own(file, form)
    rows = list(csv.DictReader(StringIO((tmp_path / "map.csv").read_text(encoding="utf-8-sig"), newline="")))
    cells = json.loads((tmp_path / "map.json").read_text())["combinations"]
    assert [row["state"] for row in rows] == [cell["state"] for cell in cells]
    assert [row["reason"] for row in rows] == [cell["reason"] for cell in cells]
    assert [row["makers"] for row in rows] == ["; ".join(cell["makers"]) for cell in cells]


def test_bad_options_are_refused(book: Run, tmp_path: Path) -> None:
    for words, told in (
        (("--most", "0"), "--most"),
        (("--currency", "XYZ"), "currency"),
        (("--out", str(tmp_path / "map.doc")), ".csv, .pdf, .html, .eml, .json"),
        (("--jurisdiction", "nowhere"), "nowhere"),
    ):
        code, _, err = book("catalogue", "coverage", "Demonstration", *ASKED, *words)
        assert code == 2
        assert told in err
    assert not list(tmp_path.iterdir())
