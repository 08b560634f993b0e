"""What a change of the survey means in money, told by the shell before anybody quotes it again."""

from __future__ import annotations

import csv
import io
import json
from decimal import Decimal
from pathlib import Path

import pytest

from program_runs import Run
from short_terms import RECONNECTABLE, SINGLE_USE, short_terms
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.survey import Survey


@pytest.fixture
def survey() -> Survey:
    return demo_survey("small_town")


@pytest.fixture
def run(own_run: Run, survey: Survey) -> Run:
    Path("before.json").write_text(survey.model_dump_json(round_trip=True))
    first = survey.positions[0]
    third = first.model_copy(update={"label": "9A"})
    after = survey.model_copy(update={"positions": (*survey.positions, third)})
    Path("after.json").write_text(after.model_dump_json(round_trip=True))
    Path("terms.toml").write_text(short_terms("PV-1", SINGLE_USE, RECONNECTABLE))

    own_run("quotation", "keep", "before.json", "--terms", "terms.toml", "--by", "R. Example")
    return own_run


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
    Path("dear.toml").write_text(freight + short_terms("PV-1", SINGLE_USE, RECONNECTABLE))
    told = json.loads(run("quotation", "preview", 1, "before.json", "--terms", "dear.toml", "--json"))
    for option in told["options"]:
        assert Decimal(option["total"]["difference"]) == 12
        assert [(one["kind"], Decimal(one["amount"]["difference"])) for one in option["amounts"]] == [("freight", 12)]
        assert option["lines"] == []


def test_an_unknown_quotation_is_told(run: Run) -> None:
    assert "77" in run("quotation", "preview", "77", "after.json", expect=2)
