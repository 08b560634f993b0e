"""`stock`: counted by scanning, taken for a job, undone by another entry, ordered; on the command line."""

from __future__ import annotations

import csv
import json
import shutil
from collections.abc import Callable
from io import StringIO
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from paper_text import text_of
from program_runs import Done, Spoutline

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


def lines_of(done: Done) -> dict[str, dict[str, Any]]:
    return {one["part_number"]: one for one in json.loads(done.out)["lines"]}


def test_a_job_takes_the_rest_alone_and_everything_again_where_somebody_insists(
    spoutline: Spoutline, written: Written, own: tuple[str, str], tmp_path: Path
) -> None:
    survey = written()
    wanted = [one["part_number"] for one in json.loads(spoutline("plan", survey, "--json").out)["positions"][0]["set"]]
    first, second = wanted[:2]
    for part in (first, second):
        spoutline("stock", "receive", "van", part, "--quantity", "5", *own)
    job = ("stock", "job", survey, "--json", *own)
    lines_of(spoutline(*job, "--take"))
    told = lines_of(spoutline(*job, "--take"))
    assert {part: (told[part]["taken"], told[part]["takes"]) for part in (first, second)} == {
        first: (1, 0),
        second: (1, 0),
    }
    assert "taken already 1" in spoutline("stock", "job", survey, *own).out
    entries = json.loads(spoutline("stock", "entries", "--json", *own).out)["entries"]
    assert sorted(one["part_number"] for one in entries if one["movement"] == "taken") == sorted((first, second))
    # another job of the same station takes its own
    other = lines_of(spoutline(*job, "--job", "after the drive-off"))
    assert (other[first]["taken"], other[first]["takes"]) == (0, 1)
    again = lines_of(spoutline(*job, "--again", "--take"))
    assert (again[first]["taken"], again[first]["takes"]) == (1, 1)
    over = spoutline("stock", "job", survey, *own).out
    assert "bring back 1" in over
    spoutline("stock", "return", "van", first, "--job", "Maple Ferry Fuels", *own)
    assert lines_of(spoutline(*job))[first]["taken"] == 1
    # an entry undone was not taken
    number = next(one["entry"] for one in entries if one["movement"] == "taken" and one["part_number"] == second)
    spoutline("stock", "undo", str(number), *own)
    terms = tmp_path / "terms.toml"
    terms.write_text(
        "[seller]\nname = 'Invented Supply'\n[customer]\nname = 'Fern'\n"
        "[heading]\nnumber = 'X-1'\ndated = 2026-11-25\n"
        "[[spares]]\nkind = 'nozzle'\npercent = 100\nsingles = 'share'\n",
        encoding="utf-8",
    )
    nozzle = wanted[-1]
    # one nozzle hangs there, and a spare of 100 percent goes with it: two
    assert lines_of(spoutline(*job, "--spares", f"file:{terms}"))[nozzle]["needed"] == 2
    refused = spoutline(*job, "--spares", "some")
    assert (refused.code, "quotation:ID" in refused.err) == (2, True)


def test_a_count_is_closed_once_what_it_did_not_find_was_seen(spoutline: Spoutline, own: tuple[str, str]) -> None:
    refused = spoutline("stock", "close", "van", *own)
    assert (refused.code, "knows no van" in refused.err) == (2, True)
    spoutline("stock", "receive", "van", "QW-N103", "--quantity", "4", *own)
    spoutline("stock", "receive", "van", "QW-N106", *own)
    refused = spoutline("stock", "close", "van", "--count", "May", *own)
    assert (refused.code, "'May'" in refused.err) == (2, True)
    spoutline("stock", "count", "van", "QW-N106", "--count", "May", *own)
    seen = spoutline("stock", "close", "van", "--count", "May", *own)
    assert seen.code == 1
    assert "QW-N103" in seen.out
    assert "QW-N106" not in seen.out
    assert len(json.loads(spoutline("stock", "entries", "--json", *own).out)["entries"]) == 3  # nothing was added
    closed = spoutline("stock", "close", "van", "--count", "May", "--confirm", "--by", "Merle", "--json", *own)
    assert closed.code == 0
    told = json.loads(closed.out)
    assert [(one["at_hand"], one["counted_as"]) for one in told["not_found"]] == [(4, 0)]
    entries = json.loads(spoutline("stock", "entries", "--json", *own).out)["entries"]
    added = entries[-1]
    assert (added["movement"], added["pieces"], added["count"], added["done_by"]) == ("counted", 0, "May", "Merle")
    assert told["entries"] == [added["entry"]]
    done = spoutline("stock", "close", "van", "--count", "May", "--confirm", *own)
    assert (done.code, "found everything" in done.out) == (0, True)
    spoutline("stock", "undo", str(added["entry"]), *own)
    held = {
        one["part_number"]: one["quantity"]
        for one in json.loads(spoutline("stock", "list", "--json", *own).out)["lines"]
    }
    assert held == {"QW-N103": 4, "QW-N106": 1}


def test_what_is_short_goes_to_each_supplier_in_its_own_file(
    spoutline: Spoutline, written: Written, own: tuple[str, str], tmp_path: Path
) -> None:
    survey, folder = written(), tmp_path / "orders"
    hung = json.loads(spoutline("plan", survey, "--json").out)["positions"][0]["set"]
    nozzle = hung[-1]
    spoutline("stock", "receive", "van", nozzle["part_number"], *own)
    spoutline("stock", "level", "van", nozzle["part_number"], "--least", "6", "--lot", "4", *own)
    columns = ("--column", "Article=part_number", "--column", "Qty=quantity", "--column", "Our no.=order")
    more = ("--column", "Rev=revision", "--column", "List=list_price", "--column", "For=site", "--file", "xlsx")
    assert spoutline("supplier", "set", nozzle["maker"], *columns, *more, *own).code == 0
    done = spoutline("stock", "job", survey, "--orders", folder, "--number", "VAN-7", "--json", *own)
    told = json.loads(done.out)
    ordered: dict[str, int] = {}
    for one in told["orders"]:
        path = Path(one["file"])
        assert path.name.startswith("VAN-7-")
        if one["supplier"] == nozzle["maker"]:
            assert path.suffix == ".xlsx"
            sheet = openpyxl.load_workbook(path).active
            assert sheet is not None
            head, *rows = list(sheet.values)
            assert head == ("Article", "Qty", "Our no.", "Rev", "List", "For")
            (row,) = (row for row in rows if row[0] == nozzle["part_number"])
            # one lies there and goes to the job, six are to stay: two lots of four
            assert row[:4] == (nozzle["part_number"], 8, "VAN-7", None)
            assert row[5] == "Maple Ferry Fuels"
            ordered |= {str(row[0]): int(str(row[1])) for row in rows}
        else:
            text = path.read_text(encoding="utf-8-sig").splitlines()
            ordered |= {row["Part number"]: int(row["Quantity"]) for row in csv.DictReader(text)}
    wanted = {line["part_number"]: line["order"] for line in told["lines"] if line["order"]}
    assert ordered.keys() == wanted.keys()
    assert all(pieces >= wanted[part] for part, pieces in ordered.items())  # whole packs
    assert sum(one["pieces"] for one in told["orders"]) == sum(ordered.values())
    again = spoutline("stock", "reorder", "--orders", folder, *own)
    assert (again.code, "Quillmere" in again.out) == (1, True)


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
