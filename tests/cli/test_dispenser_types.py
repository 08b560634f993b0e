"""Dispenser types from the shell: kept, changed, exchanged as tables, chosen for a survey and told on its plan."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from program_runs import Spoutline

Run = Callable[..., tuple[int, str, str]]


@pytest.fixture
def run(own_database: Path, spoutline: Spoutline) -> Run:
    """Return a function that runs a command on a book of the test's own."""

    def go(*words: str) -> tuple[int, str, str]:
        done = spoutline("--database", str(own_database), *words)
        return done.code, done.out, done.err

    return go


def test_types_are_imported_changed_chosen_and_renewed(run: Run, tmp_path: Path) -> None:
    table, survey, typed = tmp_path / "types.csv", tmp_path / "town.json", tmp_path / "typed.json"
    assert run("demo", "--dispenser-types", "--out", str(table))[0] == 0
    assert "3 new" in run("dispenser-type", "import", str(table))[1]
    assert run("demo", "small_town", "--out", str(survey))[0] == 0
    choose = ("dispenser-type", "choose", str(survey), "snipebeck 200 r", "--dispenser", "1", "--take-all")
    assert run(*choose, "--out", str(typed))[0] == 0
    positions = json.loads(typed.read_text(encoding="utf-8"))["positions"]
    assert [one.get("dispenser_type") is not None for one in positions] == [
        one["dispenser"] == "1" for one in positions
    ]
    assert positions[0]["retrieval"] == "retractor"
    assert "From dispenser type Snipebeck 200 R: outlet" in run("plan", str(typed))[1]
    told = json.loads(run("plan", str(typed), "--json")[1])["positions"][0]
    assert told["dispenser_type"] == "Snipebeck 200 R"
    assert "outlet.height_m" in told["inherited"]
    assert run("dispenser-type", "changed", str(typed))[0] == 0
    assert run("dispenser-type", "change", "Snipebeck 200 R", "--set", "outlet.height_m=2.5 m")[0] == 0
    code, out, _ = run("dispenser-type", "changed", str(typed))
    # 88.58 and 98.43 in of 25.4 mm, to the sixteenth of a tape
    assert (code, "Outlet height 7 ft 4 9/16 in → 8 ft 2 7/16 in" in out) == (1, True)
    assert json.loads(typed.read_text(encoding="utf-8"))["positions"][0]["outlet"]["height_m"] == 2.25
    renewed = json.loads(run("dispenser-type", "renew", str(typed))[1])
    assert renewed["positions"][0]["outlet"]["height_m"] == 2.5


def test_a_table_is_written_and_taken_in_again(run: Run, tmp_path: Path) -> None:
    put = ("dispenser-type", "add", "=Heron", "--set", "outlet.thread=G", "--set", "outlet.size=1")
    assert run(*put)[0] == 0
    files = tmp_path / "out.csv", tmp_path / "out.xlsx"
    assert run("dispenser-type", "export", "--csv", str(files[0]), "--xlsx", str(files[1]))[0] == 0
    assert "'=Heron" in files[0].read_text(encoding="utf-8-sig")  # a spreadsheet must take it for no formula
    for file in files:
        code, out, told = run("dispenser-type", "import", str(file))
        assert (code, "1 unchanged" in out) == (0, True), told + out
    assert run("dispenser-type", "remove", "=heron")[0] == 0
    assert json.loads(run("dispenser-type", "list", "--json")[1])["dispenser_types"] == []


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("name,outlet height\nA,2.1\n", "say in which unit the column is"),
        ("name,outlet.height_m\nA,900\n", "less than or equal to 6"),
        ("name,outlet.thread,outlet.size\nA,NPT,34x1.5\n", "NPT"),
        ("name,retrieval\nA,rel\n", "did you mean reel?"),
        ("name,overhead\nA,perhaps\n", "write yes or no"),
        ("name,retrieval\nA,none\na,reel\n", "row 2 has this name too"),
        ("maker,retrieval\nA,none\n", "map one column to name"),
        ("name,retrieval\n,none\n", "the name of each type"),
        ("name,remark\nA\u202eB,x\n", "U+202E"),
        ("name,reel.turns_left\nA,1e999\n", "number"),
        ("name,supply.pressure_kpa\nA,-5\n", "greater than 0"),
    ],
)
def test_a_faulty_row_is_told_and_nothing_changes(run: Run, tmp_path: Path, text: str, told: str) -> None:
    path = tmp_path / "types.csv"
    path.write_text(text, encoding="utf-8")
    code, out, err = run("dispenser-type", "import", str(path))
    assert code == 2
    assert told in out + err
    assert json.loads(run("dispenser-type", "list", "--json")[1])["dispenser_types"] == []


def test_what_cannot_be_is_refused_with_what_would_be_right(run: Run, tmp_path: Path) -> None:
    survey = tmp_path / "town.json"
    assert run("demo", "small_town", "--out", str(survey))[0] == 0
    code, _, told = run("dispenser-type", "choose", str(survey), "Heron")
    assert (code, "no dispenser types yet" in told) == (2, True)
    assert run("dispenser-type", "add", "Heron")[0] == 0
    code, _, told = run("dispenser-type", "add", "HERON")
    assert (code, "a type of this name" in told) == (2, True)
    code, _, told = run("dispenser-type", "choose", str(survey), "Heron", "--dispenser", "99")
    assert (code, "use one of: 1" in told) == (2, True)
