"""`stock`: counted by scanning, taken for a job, undone by another entry, ordered; on the command line."""

from __future__ import annotations

import csv
import json
import shutil
from collections.abc import Callable
from io import StringIO
from pathlib import Path

import pytest

from paper_text import text_of
from program_runs import Spoutline

Written = Callable[..., Path]


@pytest.fixture
def own(database_to_copy: Path, tmp_path: Path) -> tuple[str, str]:
    path = tmp_path / "own.sqlite3"
    shutil.copy(database_to_copy, path)
    return ("--database", str(path))


def test_a_van_is_counted_loaded_and_ordered_for(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey = written()
    wanted = [one["part_number"] for one in json.loads(spoutline("plan", survey, "--json").out)["positions"][0]["set"]]
    first, second = wanted[:2]
    assert "knows no van" in spoutline("stock", "list", *own).err
    counted = spoutline("stock", "count", "van", first, first, "--by", "Merle", "--json", *own)
    assert [one["at_hand"] for one in json.loads(counted.out)["entries"]] == [2, 2]
    assert spoutline("stock", "count", "van", "-", *own, stdin=f"{second}\n\n{first}\n".encode()).code == 0
    # nothing is added where one of several codes names nothing
    refused = spoutline("stock", "receive", "van", first, "6291041500213", "no-such-part", *own)
    assert refused.code == 2
    assert "has this GTIN" in refused.err
    assert "no-such-part" in refused.err
    # a wrong check digit is told: 629104150021 asks for a 3
    assert "must be 3" in spoutline("stock", "count", "van", "6291041500214", *own).err
    assert spoutline("stock", "level", "van", first, "--least", "4", "--lot", "3", *own).code == 0
    ordered = spoutline("stock", "reorder", "--json", *own)
    assert ordered.code == 1
    # three of the first lie there, four are to: one lot of three
    (row,) = json.loads(ordered.out)["lines"]
    assert (row["part_number"], row["quantity"], row["order"]) == (first, 3, 3)
    table, pdf, page = tmp_path / "job.csv", tmp_path / "job.pdf", tmp_path / "job.html"
    files = ("--csv", table, "--pdf", pdf, "--html", page)
    job = spoutline("stock", "job", survey, "--place", "van", "--take", *files, *own)
    assert job.code == 1  # the other parts are short
    rows = {row["part_number"]: row for row in csv.DictReader(StringIO(table.read_text("utf-8-sig"), newline=""))}
    assert set(wanted) <= set(rows)
    assert (rows[first]["takes"], rows[first]["short"]) == ("1", "0")
    assert (rows[wanted[2]]["takes"], rows[wanted[2]]["short"]) == ("0", "1")
    assert "To take" in text_of(pdf)
    assert first in page.read_text(encoding="utf-8")
    entries = json.loads(spoutline("stock", "entries", "--json", *own).out)["entries"]
    taken = [one for one in entries if one["movement"] == "taken"]
    assert {one["job"] for one in taken} == {"Maple Ferry Fuels"}
    number = next(one["entry"] for one in taken if one["part_number"] == first)
    assert spoutline("stock", "undo", str(number), *own).code == 0
    assert spoutline("stock", "undo", str(number), *own).code == 2
    (held,) = (
        one
        for one in json.loads(spoutline("stock", "list", "--json", *own).out)["lines"]
        if one["part_number"] == first
    )
    assert held["quantity"] == 3


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (("count", "van", "QW-N103", "--quantity", "-1"), ""),
        (("count", "van", "QW-N103", "--quantity", "1.5"), "whole number"),
        (("count", " ", "QW-N103"), "place"),
        (("receive", "van", "QW-N103", "--quantity", "0"), "from 1 on"),
        (("undo", "7"), "no such entry"),
        (("list", "--place", "attic"), "no van and no store"),
    ],
)
def test_bad_input_is_told_and_nothing_is_added(
    spoutline: Spoutline, own: tuple[str, str], arguments: tuple[str, ...], told: str
) -> None:
    done = spoutline("stock", *arguments, *own)
    assert done.code == 2
    assert told in done.err
    assert spoutline("stock", "entries", *own).out == "no entries\n"
