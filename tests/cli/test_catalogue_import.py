"""Suppliers' tables into the draft of a catalogue, from the shell: told by cell, repaired, remembered, compared."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from program_runs import Spoutline

Run = Callable[..., tuple[int, str, str]]
NAME, MAKER = "Office list", "Quillwort Works"
# maker, numbers and prices are invented
PARTS = """\
Fennel Supply, price list 2026

Part No.;Description;Bore (in);Length;Materials;Price
;;in;ft;;USD
Curb hoses;;;;;
QX-100;3/4" x 9' hardwall;3/4;9;aluminum, nbr;$12.50
QX-101;1" x 10' hardwall;1;10 ft;aluminium nbr;1,250.00
QX-102;1" x 12' hardwall;1;12;stainless steel nbr;1,250
Total;;;;;2,512.50
"""


@pytest.fixture
def book(own_database: Path, spoutline: Spoutline) -> Run:
    """Return a function that runs a command on a book of the test's own, with an empty catalogue in it."""

    def run(*words: str) -> tuple[int, str, str]:
        done = spoutline("--database", str(own_database), *words)
        return done.code, done.out, done.err

    assert run("catalogue", "new", NAME)[0] == 0
    return run


@pytest.fixture
def table(tmp_path: Path) -> Callable[[str], str]:
    """Return a function that writes a table and returns its path."""
    count = 0

    def write(text: str) -> str:
        nonlocal count
        count += 1
        path = tmp_path / f"table{count}.csv"
        path.write_text(text, encoding="utf-8")
        return str(path)

    return write


def imported(run: Run, *words: str, code: int = 0) -> Any:
    found, text, told = run("catalogue", "import", *words, "--into", NAME, "--json")
    assert found == code, told
    return json.loads(text)


def draft_parts(run: Run) -> int:
    listed = json.loads(run("catalogue", "list", "--json")[1])["catalogues"]
    return int(next(one["draft"]["parts"] for one in listed if one["name"] == NAME))


def exported(run: Run, tmp_path: Path) -> dict[str, list[str]]:
    """Return the rows of the exchange file's tables by number."""
    import csv
    import io
    import zipfile

    path = tmp_path / "export.zip"
    assert run("catalogue", "export", f"{NAME}@draft", "--out", str(path), "--force")[0] == 0
    with zipfile.ZipFile(path) as archive:
        rows: dict[str, list[str]] = {}
        for name in archive.namelist():
            if name.endswith(".csv") and name not in ("prices.csv", "origins.csv"):
                for row in csv.DictReader(io.StringIO(archive.read(name).decode())):
                    rows[row["number"]] = [f"{key}={value}" for key, value in row.items() if value]
    return rows


def test_faults_and_questions_are_told_by_cell_and_nothing_is_changed(book: Run, table: Callable[[str], str]) -> None:
    path = table(PARTS)
    told = imported(book, path, "--maker", MAKER, "--dry-run", code=1)
    assert [(one["kind"], one["cell"][-2:], one["nearest"]) for one in told["reports"]] == [
        ("fault", "E6", "aluminium"),
        ("question", "F8", "1250"),
    ]
    assert {"field": "materials", "word": "aluminum", "nearest": "aluminium", "times": 1} in told["offers"]
    assert {one["pattern"] for one in told["text_patterns"]} >= {"hose_bore", "hose_length", "hardwall"}
    assert imported(book, path, "--maker", MAKER, code=2)["taken_in"] is False
    code, text, _ = book("catalogue", "import", path, "--into", NAME, "--maker", MAKER)
    assert code == 2
    assert "nothing was changed" in text
    assert draft_parts(book) == 0


def test_a_repaired_table_is_taken_in_and_its_map_reads_the_next_one(
    book: Run, table: Callable[[str], str], tmp_path: Path
) -> None:
    kept = tmp_path / "maps" / "fennel.toml"
    kept.parent.mkdir()
    said = ("--maker", MAKER, "--supplier", "Fennel Supply", "--replace", "materials:aluminum=aluminium")
    done = imported(book, table(PARTS), *said, "--skip-row", "8", "--confirm", "hardwall", "--save-map", str(kept))
    assert (done["taken_in"], done["new"], done["rows"]["totals"], done["rows"]["skipped"]) == (True, 2, 1, 1)
    rows = exported(book, tmp_path)
    # 3/4 in = 19.05 mm, 9 ft = 2.7432 m: international yard and pound agreement, 1959
    for word in ("bore_mm=19.05", "length_m=2.7432", "materials=aluminium nbr", "construction=hardwall"):
        assert word in rows["QX-100"]
    assert "supplier=Fennel Supply" in rows["QX-100"]

    (kept.parent / "other.toml").write_text('fingerprint = "0123"\n[[column]]\ntitle = "Nr"\nfield = "number"\n')
    text = PARTS.replace("12.50", "20.50").replace("QX-101", "QX 101").replace("QX-102", "QX-103")
    again = imported(book, table(text.replace("1,250\n", "9.00\n")), "--map", str(kept.parent), "--dry-run")
    assert again["recognised"] is True
    counts = {name: again[name] for name in ("new", "changed", "missing", "price_moves", "near_duplicates")}
    assert counts == {"new": 2, "changed": 1, "missing": 1, "price_moves": 1, "near_duplicates": 1}
    changes = {one["number"]: one for one in again["changes"]}
    assert changes["QX-100"]["fields"] == [{"field": "price in USD", "before": "12.50", "after": "20.50"}]
    assert changes["QX-100"]["price_moves"] == [{"currency": "USD", "share": 0.64}]
    assert changes["QX 101"]["alike"] == [{"number": "QX-101", "maker": MAKER}]
    assert changes["QX-101"]["change"] == "missing"
    assert draft_parts(book) == 2  # a dry run changed nothing


def test_a_price_file_changes_prices_alone_and_adds_parts_that_are_not_yet_described(
    book: Run, table: Callable[[str], str], tmp_path: Path
) -> None:
    imported(book, table("Part no,Kind,Bore (mm),Price USD\nQX-1,curb hose,19,5\n"), "--maker", MAKER)
    prices = table("Part no;Text;EUR\nQX-1;Hose;4,50\nQX-2;Kugel 5;7,00\n")
    done = imported(book, prices, "--maker", MAKER, "--decimal-comma")
    assert (done["new"], done["changed"]) == (1, 1)
    rows = exported(book, tmp_path)
    assert {"bore_mm=19", "name=Hose"} <= set(rows["QX-1"])
    assert "name=Kugel 5" in rows["QX-2"]
    diff = json.loads(book("catalogue", "list", "--json")[1])
    assert diff["planned_with"] == "Demonstration"
    assert book("catalogue", "check", NAME)[0] == 0  # what is not yet described is no fault
    assert imported(book, prices, "--maker", MAKER, "--decimal-comma")["unchanged"] == 2
    less = table("Part no;EUR\nQX-2;7,00\n")
    assert imported(book, less, "--maker", MAKER, "--decimal-comma")["missing"] == 1
    assert draft_parts(book) == 2
    imported(book, less, "--maker", MAKER, "--decimal-comma", "--take-out-missing")
    assert draft_parts(book) == 1


def test_a_heading_or_a_kind_for_all_rows_changes_no_kind_that_is_known(
    book: Run, table: Callable[[str], str], tmp_path: Path
) -> None:
    imported(book, table("Part no,Kind,Bore (mm)\nQX-1,whip hose,19\n"), "--maker", MAKER)
    prices = table("Part no,Text,Price USD\nCurb hoses,,\nQX-1,Hose,5\nQX-2,Hose,6\n")
    imported(book, prices, "--maker", MAKER, "--kind", "nozzle")
    rows = exported(book, tmp_path)
    assert "bore_mm=19" in rows["QX-1"]
    changed = imported(book, table("Part no,Kind\nQX-1,curb hose\n"), "--maker", MAKER)["changes"]
    told = {each["field"]: (each["before"], each["after"]) for one in changes_of(changed, "QX-1") for each in one}
    assert told["kind"] == ("whip_hose", "curb_hose")
    assert told["bore_mm"] == ("19.0", "")  # what goes with the kind is told


def changes_of(changes: list[dict[str, Any]], number: str) -> list[list[dict[str, str]]]:
    return [one["fields"] for one in changes if one["number"] == number]


@pytest.mark.parametrize(
    ("text", "words", "told"),
    [
        ("Part no,Bore (mm)\nQX-1,19\n", (), "say the kind of the part"),
        ("Part no,Kind,Bore (mm)\nQX-1,nozzle,19\n", (), "a nozzle has no such figure"),
        ("Part no,GTIN\nQX-1,4006381333932\n", (), "check digit"),
        ("Part no,Price USD\nQX#1,5\n", (), "a number holds letters"),
        ("Part no,Status,Price USD\nQX-1,superseded,5\n", (), "names the part that took its place"),
    ],
)
def test_what_makes_no_part_is_told_at_its_cell(
    book: Run, table: Callable[[str], str], text: str, words: tuple[str, ...], told: str
) -> None:
    # 4006381333931 is the sound EAN-13 of the check digit's usual worked example (GS1); its last digit is wrong here
    found = imported(book, table(text), "--maker", MAKER, *words, code=2)
    (report,) = found["reports"]
    assert told in report["wanted"]
    assert report["row"] == 2


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("--column", "Z=number"), "name one column of"),
        (("--confirm", "magic"), "hose_bore"),
        (("--currency", "dollars"), "--currency"),
        (("--skip-row", "99"), "no such row"),
        (("--replace", "materials"), "FIELD:WORD=BY"),
        (("--sheet", "Prices"), "no sheets"),
        (("--map", "no.toml"), "no.toml"),
    ],
)
def test_what_is_said_wrong_of_a_table_is_refused(
    book: Run, table: Callable[[str], str], words: tuple[str, ...], told: str
) -> None:
    code, _, err = book("catalogue", "import", table(PARTS), "--into", NAME, "--maker", MAKER, *words)
    assert code == 2
    assert told in err
    assert draft_parts(book) == 0


def test_columns_are_printed_and_another_file_is_no_table(
    book: Run, table: Callable[[str], str], tmp_path: Path
) -> None:
    code, text, _ = book("catalogue", "import", table(PARTS), "--into", NAME, "--columns")
    assert code == 0
    assert "  C  Bore (in)  →  bore_mm in in" in text
    code, _, err = book("catalogue", "import", str(tmp_path / "none.zip"), "--into", NAME)
    assert (code, "none.zip" in err) == (2, True)
    refused = book("catalogue", "import", table(PARTS), "--into", "Demonstration", "--maker", MAKER)
    assert refused[0] == 2


def test_the_schema_of_tables_is_printed_and_a_table_that_keeps_it_needs_no_word(
    book: Run, table: Callable[[str], str], tmp_path: Path
) -> None:
    code, text, _ = book("catalogue", "schema")
    assert code == 0
    resources = {one["name"]: one["schema"]["fields"] for one in json.loads(text)["resources"]}
    names = [field["name"] for field in resources["prices"]]
    assert names[:3] == ["number", "maker", "name"]
    row = {"number": "QX-1", "maker": MAKER, "price USD": "5.00", "price EUR": "4.50"}
    line = ",".join(row.get(name, "") for name in names)
    assert imported(book, table(f"{','.join(names)}\n{line}\n"))["new"] == 1
