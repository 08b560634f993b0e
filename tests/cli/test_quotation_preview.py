"""What a change of the survey means in money, told by the shell before anybody quotes it again."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path

import pytest

from program_runs import Spoutline
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.survey import Survey

TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "{number}"
dated = 2026-11-25
[[options]]
title = "Single-use"
breakaway = "single_use"
[[options]]
title = "Reconnectable"
breakaway = "reconnectable"
"""
Run = Callable[..., str]


@pytest.fixture
def survey() -> Survey:
    return demo_survey("small_town")


@pytest.fixture
def run(
    spoutline: Spoutline, own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, survey: Survey
) -> Run:
    monkeypatch.chdir(tmp_path)
    Path("before.json").write_text(survey.model_dump_json(round_trip=True))
    first = survey.positions[0]
    third = first.model_copy(update={"label": "9A"})
    after = survey.model_copy(update={"positions": (*survey.positions, third)})
    Path("after.json").write_text(after.model_dump_json(round_trip=True))
    Path("terms.toml").write_text(TERMS.format(number="PV-1"))

    def go(*arguments: object, expect: int = 0) -> str:
        done = spoutline("--database", own_database, *arguments)
        assert done.code == expect, done.err
        return done.out

    go("quotation", "keep", "before.json", "--terms", "terms.toml", "--by", "R. Example")
    return go


def ordered(run: Run, survey: str) -> dict[str, dict[str, tuple[int, Decimal]]]:
    """Return by option and part number the pieces and amount of the lines that quoting a survey writes."""
    run("quote", survey, "--terms", "terms.toml", "--csv", "order.csv")
    found: dict[str, dict[str, tuple[int, Decimal]]] = {}
    for row in csv.DictReader(io.StringIO(Path("order.csv").read_text(encoding="utf-8-sig"))):
        lines = found.setdefault(row["option"], {})
        lines[row["part_number"]] = (int(row["quantity"]), Decimal(row["amount"]))
    return found


def test_the_preview_tells_what_both_orders_come_to_and_the_lines_between_them(run: Run) -> None:
    """Held against the order lines of both surveys: without freight, labor and tax a total is the sum of its lines."""
    told = json.loads(run("quotation", "preview", "PV-1", "after.json", "--json"))
    before, after = ordered(run, "before.json"), ordered(run, "after.json")
    assert (told["quotation"], told["revision"], told["currency_after"]) == ("PV-1", 1, "USD")
    assert [one["title"] for one in told["options"]] == ["Single-use", "Reconnectable"]
    for option in told["options"]:
        old, new = before[option["title"]], after[option["title"]]
        sums = [sum(amount for _, amount in lines.values()) for lines in (old, new)]
        assert [Decimal(option["total"][side]) for side in ("before", "after")] == sums
        assert Decimal(option["total"]["difference"]) == sums[1] - sums[0] > 0
        changed = {number for number in old.keys() | new.keys() if old.get(number) != new.get(number)}
        assert {one["part_number"] for one in option["lines"]} == changed
        for one in option["lines"]:
            pieces = (old.get(one["part_number"], (0, 0))[0], new.get(one["part_number"], (0, 0))[0])
            assert (one["pieces_before"], one["pieces_after"]) == pieces


def test_the_preview_keeps_nothing_and_says_it_in_words(run: Run) -> None:
    text = run("quotation", "preview", 1, "after.json")
    assert text.startswith("Single-use: ")
    assert "(+" in text
    assert "Nothing changes in money." in run("quotation", "preview", 1, "before.json")
    spanish = run("--language", "es", "quotation", "preview", 1, "before.json")
    assert "En dinero no cambia nada." in spanish
    (kept,) = json.loads(run("quotation", "list", "--json"))["quotations"]
    assert (kept["revision"], kept["status"]) == (1, "draft")


def test_other_terms_are_compared_too(run: Run) -> None:
    freight = '[freight]\nmethod = "fixed"\namount = 12\n'
    Path("dear.toml").write_text(freight + TERMS.format(number="PV-1"))
    told = json.loads(run("quotation", "preview", 1, "before.json", "--terms", "dear.toml", "--json"))
    for option in told["options"]:
        assert Decimal(option["total"]["difference"]) == 12
        assert [(one["kind"], Decimal(one["amount"]["difference"])) for one in option["amounts"]] == [("freight", 12)]
        assert option["lines"] == []


def test_an_unknown_quotation_is_told(spoutline: Spoutline, run: Run, own_database: Path) -> None:
    done = spoutline("--database", own_database, "quotation", "preview", "77", "after.json")
    assert done.code == 2
    assert "77" in done.err
