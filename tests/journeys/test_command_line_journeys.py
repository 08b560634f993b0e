"""A person's whole way through the command line; in the first journey each step is a process, as in a script.

The expectations are relations between what the program says in different places, and the contract of the command line;
figures of the trade are held against their sources in the tests of the layers.
"""

from __future__ import annotations

import csv
import io
import json
import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from paper_text import pages_of
from program_runs import Spoutline
from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey


@dataclass(frozen=True)
class Step:
    """What a step printed."""

    stdout: str


Program = Callable[..., Step]


@pytest.fixture
def program(spoutline: Spoutline, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Program:
    """Run a step in this process."""
    monkeypatch.chdir(tmp_path)

    def go(*arguments: object, expect: int = 0) -> Step:
        done = spoutline(*arguments)
        assert done.code == expect, done.err
        return Step(done.out)

    return go


@pytest.fixture
def process(shared_database: Path, tmp_path: Path) -> Program:
    """Run a step in a process of its own."""

    def go(*arguments: object, expect: int = 0) -> Step:
        command = [sys.executable, "-m", "spoutline", "--database", str(shared_database)]
        command += ["--profiles", str(tmp_path / "profiles"), *map(str, arguments)]
        done = subprocess.run(
            command, cwd=tmp_path, input="", capture_output=True, text=True, check=False, env=dict(os.environ)
        )
        assert done.returncode == expect, done.stderr
        assert "Traceback" not in done.stderr
        return Step(done.stdout)

    return go


def planned(program: Program, survey: Path, expect: int = 0) -> list[dict[str, Any]]:
    positions: list[dict[str, Any]] = json.loads(program("plan", survey, "--json", expect=expect).stdout)["positions"]
    return positions


def changed(survey: Path, change: Callable[[dict[str, Any]], None]) -> Path:
    document = json.loads(survey.read_text())
    change(document)
    survey.write_text(json.dumps(document))
    return survey


def test_from_a_demo_to_a_bill_that_holds_every_part_and_ends_with_the_caution_sheet(
    process: Program, tmp_path: Path
) -> None:
    survey = tmp_path / "station.json"
    survey.write_text(process("demo", "small_town").stdout)
    positions = planned(process, survey)
    process("bill", survey, "--pdf", "bill.pdf", "--csv", "bill.csv", "--xlsx", "bill.xlsx")
    numbers = {link["part_number"] for position in positions for link in position["set"]}
    numbers |= {line["part_number"] for position in positions for line in position["accessories"]}

    pages = pages_of(tmp_path / "bill.pdf")
    paper = "\n".join(pages)
    assert [number for number in sorted(numbers) if number not in paper] == []
    first_caution_page = max(index for index, text in enumerate(pages) if "aution sheet" in text)
    for word in ("lock", "drain", "authority having jurisdiction"):
        assert word in "\n".join(pages[first_caution_page:]).lower()
    assert "List price" not in pages[-1]

    table = (tmp_path / "bill.csv").read_text(encoding="utf-8-sig")
    assert [number for number in sorted(numbers) if number not in table] == []
    workbook = openpyxl.load_workbook(tmp_path / "bill.xlsx")
    cells = {cell.value for sheet in workbook for row in sheet.iter_rows() for cell in row}
    assert numbers <= cells


def test_the_prices_of_the_bill_add_up_to_those_of_the_plan(program: Program, tmp_path: Path) -> None:
    survey = tmp_path / "station.json"
    survey.write_text(program("demo", "truck_stop").stdout)
    positions = planned(program, survey)
    program("bill", survey, "--csv", "bill.csv")
    rows = list(csv.DictReader(io.StringIO((tmp_path / "bill.csv").read_text(encoding="utf-8-sig"))))
    minor = sum(link["unit_price_minor"] for position in positions for link in position["set"])
    minor += sum(
        line["unit_price_minor"] * line["quantity"] for position in positions for line in position["accessories"]
    )
    money = [name for name in rows[0] if "amount" in name.lower()]
    assert len(money) == 1, list(rows[0])
    parts = [row for row in rows if any(row.values()) and row[money[0]]]
    assert sum(Decimal(row[money[0]].replace(",", "")) for row in parts) == Decimal(minor) / 100


def test_an_alternative_that_a_person_pins_is_what_the_next_plan_chooses(program: Program, tmp_path: Path) -> None:
    survey = tmp_path / "station.json"
    survey.write_text(program("demo", "small_town").stdout)
    before = planned(program, survey)[0]
    wanted = next(item for item in before["alternatives"] if item["kind"] == "reconnectable")

    def pin(document: dict[str, Any]) -> None:
        document["positions"][0].setdefault("decisions", {})["pinned"] = wanted["part_numbers"]

    after = planned(program, changed(survey, pin))[0]
    assert [link["part_number"] for link in after["set"]] == wanted["part_numbers"]
    assert after["price_minor"] == wanted["price_minor"]
    assert after["price_minor"] - before["price_minor"] == wanted["price_difference_minor"]


def test_a_refused_part_leaves_the_set_and_the_set_gets_no_cheaper(program: Program, tmp_path: Path) -> None:
    survey = tmp_path / "station.json"
    survey.write_text(program("demo", "small_town").stdout)
    before = planned(program, survey)[0]
    nozzle = before["set"][-1]["part_number"]

    def refuse(document: dict[str, Any]) -> None:
        document["positions"][0].setdefault("decisions", {})["refused"] = [nozzle]

    after = planned(program, changed(survey, refuse))[0]
    assert nozzle not in [link["part_number"] for link in after["set"]]
    assert after["price_minor"] >= before["price_minor"]
    told = program("whynot", survey, before["label"], nozzle, expect=1).stdout
    assert nozzle in told


def test_a_stricter_own_jurisdiction_changes_the_plan_and_is_named_in_it(program: Program, tmp_path: Path) -> None:
    survey = tmp_path / "station.json"
    survey.write_text(program("demo", "small_town").stdout)
    profile = tmp_path / "short_hoses.toml"
    program("profile", "copy", "us_general", "short_hoses", "--title", "Short hoses only")
    program("profile", "export", "short_hoses", "--out", profile)
    rows = profile.read_text().split("[[limit]]")
    row = next(text for text in rows if 'id = "hose.length_max"\n' in text)
    value = next(line for line in row.splitlines() if line.startswith("value = "))
    unit = next(line for line in row.splitlines() if line.startswith("unit = "))
    shorter = row.replace(value, "value = 1.0").replace(unit, 'unit = "m"')
    profile.write_text("[[limit]]".join(shorter if text == row else text for text in rows))
    program("profile", "import", profile)

    def move(document: dict[str, Any]) -> None:
        document["site"]["jurisdiction"] = "short_hoses"

    positions = planned(program, changed(survey, move), expect=1)
    # The car's filler is 1.8 m away: 1 m of hose cannot be enough, and no curb hose is sold so short.
    assert positions[0]["status"] == "does_not_fit"
    assert "hose_length" in positions[0]["conflict"]["requirements"]
    assert "Short hoses only" in program("plan", survey, expect=1).stdout


def test_a_survey_saved_by_the_window_comes_back_after_the_program_was_killed(tmp_path: Path) -> None:
    database = str(tmp_path / "book.sqlite3")
    code = """
import os, signal, sys
from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey
bench = open_workbench(Settings(database=sys.argv[1]))
stored = bench.book().create(demo_survey("marina"))
site = stored.survey.site.model_copy(update={"name": "Renamed just before the crash"})
bench.book().save(stored, stored.survey.model_copy(update={"site": site}))
os.kill(os.getpid(), signal.SIGKILL)
"""
    done = subprocess.run([sys.executable, "-c", code, database], check=False)
    assert done.returncode == -9
    bench = open_workbench(Settings(database=database))
    (entry,) = bench.book().entries()
    assert (entry.name, entry.revision) == ("Renamed just before the crash", 2)
    assert bench.book().stored(entry.id).survey.positions == demo_survey("marina").positions
    bench.close()
