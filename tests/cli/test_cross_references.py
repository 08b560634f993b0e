"""Old numbers from the shell: tables taken in whole or not at all, numbers followed where a part is asked for."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from program_runs import Spoutline

Run = Callable[..., tuple[int, str, str]]
NAME = "Office list"
PRICE = "71.23"
# numbers and makers are invented
TABLE = """\
Fennel Supply, numbers of others

Competitor;Their number;Our number;Our maker;Match;Note
Brackwater Pumps;B-100;QX-100;Quillwort Works;equivalent;
Brackwater Pumps;B-101;QX-100;Quillwort Works;same;renumbered 2020
;;;;;
Aldertarn;B-100;B-101;Brackwater Pumps;;
"""


@pytest.fixture
def book(own_database: Path, spoutline: Spoutline) -> Run:
    """Return a function that runs a command on a book of the test's own, with an empty catalogue in it."""

    def run(*words: str) -> tuple[int, str, str]:
        done = spoutline("--database", str(own_database), *words)
        return done.code, done.out, done.err

    assert run("catalogue", "new", NAME)[0] == 0
    return run


def taken(run: Run, path: Path, text: str, *words: str, code: int = 0) -> Any:
    path.write_text(text, encoding="utf-8")
    found, out, told = run("catalogue", "cross-reference", "import", str(path), "--into", NAME, "--json", *words)
    assert found == code, told + out
    return json.loads(out)


def listed(run: Run) -> list[tuple[str, str]]:
    found = json.loads(run("catalogue", "cross-reference", "list", f"{NAME}@draft", "--json")[1])
    return [(one["maker"], one["number"]) for one in found["cross_references"]]


def test_a_table_is_taken_in_compared_and_written_again(book: Run, tmp_path: Path) -> None:
    path = tmp_path / "numbers.csv"
    tried = taken(book, path, TABLE, "--dry-run")
    assert (tried["new"], tried["taken_in"], listed(book)) == (3, False, [])
    done = taken(book, path, TABLE)
    assert (done["new"], done["faults"]) == (3, 0)
    assert [one["part_number"] for one in done["astray"]] == ["QX-100", "QX-100"]  # the draft has no part yet
    assert listed(book) == [("Aldertarn", "B-100"), ("Brackwater Pumps", "B-100"), ("Brackwater Pumps", "B-101")]
    again = taken(book, path, TABLE.replace("renumbered 2020", "renumbered 2021"))
    assert (again["new"], again["changed"], again["unchanged"]) == (0, 1, 2)
    csv_file, workbook = tmp_path / "out.csv", tmp_path / "out.xlsx"
    code, _, told = book(
        *("catalogue", "cross-reference", "export", f"{NAME}@draft"), "--csv", str(csv_file), "--xlsx", str(workbook)
    )
    assert code == 0, told
    rows = list(openpyxl.load_workbook(workbook).active.values)
    assert rows[0] == ("number", "maker", "part_number", "part_maker", "relation", "remark")
    assert len(rows) == 4
    for file in (csv_file, workbook):
        code, out, told = book("catalogue", "cross-reference", "import", str(file), "--into", NAME, "--json")
        assert code == 0, told
        assert json.loads(out)["unchanged"] == 3


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("number,maker,part_number,part_maker\nB-1,Brackwater,B-1,Brackwater\n", "a number cannot lead to itself"),
        ("number,maker,part_number,part_maker\nA,Q,B,Q\nB,Q,A,Q\n", "does not lead back"),
        ("number,maker,part_number,part_maker\nA,Q,,Q\n", "the number of the part that it leads to"),
        ("number,maker,part_number,part_maker\nA,Q,B,\n", "the maker of that part"),
        ("number,maker,part_number,part_maker\nA,Q,B,Z\nA,Q,C,Z\n", "row 2 has this number of Q too"),
        ("number,maker,part_number,part_maker\n=1+1,Q,B,Z\n", "a number holds letters, digits"),
        ("number,maker,part_number,part_maker\n,Q,B,Z\n", "the old number of each row"),
        ("number,maker,part_number,part_maker,relation\nA,Q,B,Z,equivalant\n", "did you mean equivalent?"),
        ("number,maker,part_number,part_maker\nA\u202e,Q,B,Z\n", "U+202E"),
        ("number,maker,part_number,part_maker\n" + "9" * 81 + ",Q,B,Z\n", "at most 80 signs"),
        ("number,part_number,part_maker\nA,B,Z\n", "name the maker of all rows"),
    ],
)
def test_a_faulty_row_is_told_by_its_cell_and_nothing_changes(book: Run, tmp_path: Path, text: str, told: str) -> None:
    path = tmp_path / "numbers.csv"
    path.write_text(text, encoding="utf-8")
    code, out, err = book("catalogue", "cross-reference", "import", str(path), "--into", NAME)
    assert code == 2
    assert told in out + err
    assert listed(book) == []


def test_one_old_number_is_added_and_taken_out_by_hand(book: Run) -> None:
    put = ("catalogue", "cross-reference", "add", NAME)
    assert book(*put, "Brackwater", "B-1", "Quillwort", "QX-1", "--relation", "same")[0] == 0
    assert book(*put, "Aldertarn", "B-1", "Brackwater", "B-1")[0] == 0
    code, _, told = book(*put, "Quillwort", "QX-1", "Aldertarn", "B-1")
    assert (code, "does not lead back" in told) == (2, True)
    code, _, told = book("catalogue", "cross-reference", "remove", NAME, "B-1")
    assert (code, "name the maker: Aldertarn, Brackwater" in told) == (2, True)
    assert book("catalogue", "cross-reference", "remove", NAME, "B-1", "--old-maker", "Aldertarn")[0] == 0
    assert listed(book) == [("Brackwater", "B-1")]
    checked = book("catalogue", "check", NAME)
    assert (checked[0], "part_number" in checked[1]) == (1, True)


def test_a_number_is_followed_and_one_of_two_makers_asks_for_the_maker(spoutline: Spoutline) -> None:
    find = ("catalogue", "cross-reference", "find")
    done = spoutline(*find, "bm4411", "--json")
    way = json.loads(done.out)["ways"][0]
    assert [(one["kind"], one["after"]["number"]) for one in way["steps"]] == [
        ("equivalent", "OB-N165"),
        ("successor", "QW-N101"),  # of `catalog/nozzles.csv`
    ]
    done = spoutline(*find, "20-300")
    assert done.code == 2
    assert "Pebblewick Trading, Wickettarn Supply" in done.out
    assert spoutline(*find, "Wickettarn Supply 20-300").code == 0
    assert spoutline(*find, "no such number").code == 2


def test_why_not_takes_an_old_number_and_shows_the_way(spoutline: Spoutline, tmp_path: Path) -> None:
    survey = tmp_path / "town.json"
    assert spoutline("demo", "small_town", "--out", str(survey)).code == 0
    old = spoutline("whynot", str(survey), "1A gasoline", "Brindlemoss Pumpworks BM 4411")
    new = spoutline("whynot", str(survey), "1A gasoline", "QW-N101")
    way, _, rest = old.out.partition("\n")
    assert "BM 4411 → Otterbramble Nozzleworks OB-N165" in way
    assert "OB-N165 → Quillmere Forgeworks QW-N101 (took its place)" in way
    assert (old.code, rest) == (new.code, new.out)
    shared = spoutline("whynot", str(survey), "1A gasoline", "20-300")
    assert shared.code == 2
    assert "several makers have this number" in shared.err


def test_a_pin_and_a_single_price_with_an_old_number_are_told_or_followed(spoutline: Spoutline, tmp_path: Path) -> None:
    survey, terms = tmp_path / "town.json", tmp_path / "terms.toml"
    assert spoutline("demo", "small_town", "--out", str(survey)).code == 0
    document = json.loads(survey.read_text(encoding="utf-8"))
    pinned = json.loads(survey.read_text(encoding="utf-8"))
    pinned["positions"][0]["decisions"] = {"pinned": ["BM 4411"]}
    survey.write_text(json.dumps(pinned), encoding="utf-8")
    told = spoutline("plan", str(survey))
    assert told.code == 2
    assert "it is an old number; write the one that it leads to: Quillmere Forgeworks QW-N101" in told.err
    survey.write_text(json.dumps(document), encoding="utf-8")
    assert spoutline("demo", "--terms", "--out", str(terms)).code == 0
    text = terms.read_text(encoding="utf-8")
    override = f'part = "BM 4420"\nunit_price = "{PRICE}"\nby = "Ada Fenn"\n'
    terms.write_text(f"{text}\n[[overrides]]\n{override}", encoding="utf-8")
    priced = tmp_path / "order.csv"
    assert spoutline("quote", str(survey), "--terms", str(terms), "--csv", str(priced)).code in (0, 1)
    lines = [line for line in priced.read_text(encoding="utf-8-sig").splitlines() if ",QW-N103," in line]
    assert lines  # the part that BM 4420 leads to stands in the sets of the demo station
    assert all(f",{PRICE}," in line for line in lines)
