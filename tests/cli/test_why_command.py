"""`why`: the reasons of a set as text and as a document, and on the bill; its exit codes."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import jsonschema

from cli.test_substitutes_command import TOO_FAR
from paper_text import text_of


def test_the_document_adds_up_and_satisfies_its_schema(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written()
    done = spoutline("why", path, "1", "--json")
    assert done.code == 0
    document = json.loads(done.out)
    schema = json.loads(spoutline("schema", "--output", "why").out)
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(document)
    plan = json.loads(spoutline("plan", path, "--json").out)["positions"][0]
    assert document["set"] == [link["part_number"] for link in plan["set"]]
    assert document["set_price_minor"] == plan["price_minor"]
    assert [place["part_number"] for place in document["places"]] == document["set"]
    for place in document["places"]:
        assert place["there"] == sum(step["removed"] for step in place["steps"]) + place["left"]
    others = json.loads(spoutline("substitutes", path, "1", "nozzle", "--json").out)["fitting"]
    as_good = [one for one in others if len(one["gives_up"]) == len(one["keeps"])]
    nozzle = document["places"][-1]
    assert nozzle["runner_up"]["price_difference_minor"] == min(one["price_difference_minor"] for one in as_good)


def test_text_and_bill_say_the_same_and_the_bill_only_on_request(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, bill = written(), tmp_path / "bill.pdf"
    text = spoutline("why", path, "1").out
    assert "in the catalog, of this kind" in text
    assert spoutline("bill", path, "--pdf", bill, "--without-calculations").code == 0
    assert "why these parts" not in text_of(bill.read_bytes())
    assert spoutline("bill", path, "--pdf", bill, "--without-calculations", "--why", "--force").code == 0
    paper = " ".join(text_of(bill.read_bytes()).split())
    assert "Annex: why these parts" in paper
    told = next(line.strip() for line in text.splitlines() if "Next would be" in line)
    assert told.split("(")[0].strip() in paper


def test_without_a_set_the_reasons_are_those_against_it(spoutline: Any, written: Callable[..., Path]) -> None:
    path = written(TOO_FAR)
    done = spoutline("why", path, "far")
    assert done.code == 1
    assert "no set" in done.out.lower()
    assert json.loads(spoutline("why", path, "far", "--json").out)["places"] == []


def test_reasons_without_a_paper_to_hold_them_are_refused(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("bill", written(), "--csv", "x.csv", "--why")
    assert done.code == 2
    assert "--pdf" in done.err
