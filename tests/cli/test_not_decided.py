"""What takes more work than a question may is told on every paper and document, and never as if nothing fitted.

The work that a question may take is set so small that questions over the invented catalog are left open: a search that
went on all the same, in whatever place, would find the sets that are known to be there and fail these tests.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from paper_text import text_of
from spoutline import assets
from spoutline.model.refit import Commonality
from spoutline.search.listener import Listener

DEMO = assets.resources_folder() / "demo"
MARINA, DOCK, TRUCKS = DEMO / "marina.json", "Dock gasoline", DEMO / "truck_stop.json"
NOTHING = 1.0
LITTLE = tuple(20_000.0 * 1.08**step for step in range(46))  # some of them leave something open, from all to nothing
WORDS = [("en", "not decided"), ("de", "nicht entschieden"), ("es", "sin decidir"), ("fr", "non tranché")]
pytestmark = pytest.mark.plans_anew
TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "HS-1"
dated = 2026-11-25
"""


@pytest.fixture
def allowing() -> Iterator[Callable[[float], None]]:
    with pytest.MonkeyPatch.context() as patch:
        yield lambda work: patch.setattr(Listener, "most_work", work)


def schema_of(spoutline: Any, output: str) -> Any:
    return json.loads(spoutline("schema", "--output", output).out)


def plan_document(spoutline: Any, survey: Path) -> Any:
    done = spoutline("plan", survey, "--json")
    document = json.loads(done.out)
    jsonschema.Draft202012Validator(schema_of(spoutline, "plan")).validate(document)
    return document


def hazy(spoutline: Any, allowing: Callable[[float], None], rule: str) -> dict[str, Any]:
    """Return the plan of the marina with so little work that something is left open as a rule tells, by label."""
    for work in LITTLE:
        allowing(work)
        positions = plan_document(spoutline, MARINA)["positions"]
        if any(rule in rules_of(one) for one in positions):
            return {one["label"]: one for one in positions}
    raise AssertionError(f"no work leaves open what {rule} tells")


def rules_of(position: Any) -> set[str]:
    return {finding["rule_id"] for finding in position["findings"]}


@pytest.mark.parametrize(("language", "word"), WORDS)
def test_a_plan_says_not_decided_in_every_language(
    language: str, word: str, spoutline: Any, allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    done = spoutline("plan", MARINA, "--language", language)
    assert done.code == 1
    told = done.out
    assert told.count(word) >= len(json.loads(MARINA.read_text("utf-8"))["positions"])


def test_a_document_has_a_status_of_its_own_and_what_a_person_can_do(
    spoutline: Any, allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    for position in plan_document(spoutline, MARINA)["positions"]:
        assert (position["status"], position["set"], position["conflict"]) == ("not_decided", [], None)
        assert rules_of(position) == {"sets_not_decided"} | rules_of_survey(position)
        assert {way["id"] for way in position["ways_out"]} == {"ask_for_a_part", "loosen_a_limit"}


def rules_of_survey(position: Any) -> set[str]:
    """Return the rules that found something before any set was looked for."""
    return {one["rule_id"] for one in position["findings"] if one["severity"] != "advice"}


def test_a_set_that_is_not_proven_best_stands_and_says_so(spoutline: Any, allowing: Callable[[float], None]) -> None:
    whole = {one["label"]: one for one in plan_document(spoutline, MARINA)["positions"]}
    found = hazy(spoutline, allowing, "set_not_proven_best")
    unproven = [label for label, one in found.items() if "set_not_proven_best" in rules_of(one)]
    for label in unproven:
        (told,) = (one for one in found[label]["findings"] if one["rule_id"] == "set_not_proven_best")
        facts = {one["name"]: one["value"] for one in told["facts"]}
        assert found[label]["status"] == "fits"
        assert (told["severity"], told["verdict"]) == ("advice", "note")
        if "price_floor" in facts:  # as many lines given up: what is proven lies at the best set's price or below
            floor, currency = facts["price_floor"].split()
            assert float(floor) * 100 <= whole[label]["price_minor"] <= found[label]["price_minor"]
            assert currency == "USD"
        else:
            assert facts["fewest_departures"] < facts["departures_of_set"]
    assert not any("set_not_proven_best" in rules_of(one) for one in whole.values())
    for label, one in found.items():  # what was proven is what it is with all the work that it takes
        if one["status"] == "fits" and label not in unproven:
            assert one["set"] == whole[label]["set"]


def test_alternatives_that_were_left_open_have_a_line_of_their_own(
    spoutline: Any, allowing: Callable[[float], None]
) -> None:
    whole = {one["label"]: one for one in plan_document(spoutline, MARINA)["positions"]}
    found = hazy(spoutline, allowing, "other_sets_not_decided")
    for label, one in found.items():
        kinds = {
            kind
            for finding in one["findings"]
            if finding["rule_id"] == "other_sets_not_decided"
            for fact in finding["facts"]
            for kind in fact["value"].split(", ")
        }
        if one["status"] == "fits" and "set_not_proven_best" not in rules_of(one):
            there, now = ({other["kind"] for other in plan["alternatives"]} for plan in (whole[label], one))
            missing = there - now
            assert missing <= kinds, label


def test_reasons_that_were_left_open_are_no_proof_that_nothing_fits(
    spoutline: Any, written: Callable[..., Path], allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    done = spoutline("why", MARINA, DOCK, "--json")
    assert done.code == 1
    document = json.loads(done.out)
    jsonschema.Draft202012Validator(schema_of(spoutline, "why")).validate(document)
    assert document["no_set"]["ending"] == "undecided"
    assert "more work than a question may" in spoutline("why", MARINA, DOCK).out


def test_a_bill_and_the_installers_papers_list_the_position(
    spoutline: Any, tmp_path: Path, allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    bill, short, pack = (tmp_path / f"{name}.pdf" for name in ("bill", "short", "pack"))
    labels = [one["label"] for one in json.loads(MARINA.read_text("utf-8"))["positions"]]
    for done in (
        spoutline("bill", MARINA, "--pdf", bill),
        spoutline("bill", MARINA, "--pdf", short, "--short"),
        spoutline("pack", MARINA, "--pdf", pack),
    ):
        assert done.code == 1
        assert all(label in done.err for label in labels)
    for paper in (bill, short):
        told = text_of(paper)
        assert told.count("not decided") >= (len(labels) if paper is bill else 1)  # a short one tells like ones once
        assert all(label in told for label in labels)
        assert "it is not shown that none fits" in told
    assert text_of(pack).count("Not decided. No set was found") >= len(labels) - 1  # like ones are told together


def test_a_bill_tells_that_a_set_is_not_proven_best(
    spoutline: Any, tmp_path: Path, allowing: Callable[[float], None]
) -> None:
    hazy(spoutline, allowing, "set_not_proven_best")
    spoutline("bill", MARINA, "--pdf", tmp_path / "bill.pdf")
    assert "it is not proven that none comes before it" in text_of(tmp_path / "bill.pdf")


def test_a_quotation_leaves_no_position_out_in_silence(
    spoutline: Any, tmp_path: Path, allowing: Callable[[float], None]
) -> None:
    terms, paper = tmp_path / "terms.toml", tmp_path / "quotation.pdf"
    terms.write_text(TERMS, encoding="utf-8")
    allowing(NOTHING)
    done = spoutline("quote", MARINA, "--terms", terms, "--pdf", paper)
    assert done.code == 1
    told = " ".join((done.out, done.err, text_of(paper) if paper.exists() else ""))
    for position in json.loads(MARINA.read_text("utf-8"))["positions"]:
        assert position["label"] in told
    assert "not decided" in told.lower()


@pytest.mark.parametrize(("language", "word"), WORDS)
def test_a_conversion_counts_it_as_open(
    language: str, word: str, spoutline: Any, allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    done = spoutline("convert", DEMO / "conversion_balance.json", "--language", language)
    assert done.code == 1
    assert word in done.out.lower()
    document = json.loads(spoutline("convert", DEMO / "conversion_balance.json", "--json").out)
    outcomes = {one["outcome"] for one in document["positions"]}
    assert "not_decided" in outcomes
    assert "no_set" not in outcomes


def test_a_map_of_an_edition_has_a_sign_for_it(spoutline: Any, allowing: Callable[[float], None]) -> None:
    allowing(NOTHING)
    asked = ("--liquid", "e10", "--duty", "car", "--vapor", "none", "--outlet", "npt_3_4", "--climate", "mild")
    done = spoutline("catalogue", "coverage", "Demonstration", *asked)
    assert done.code == 1
    assert "1 were not decided" in done.out
    assert "✗" not in done.out


@pytest.mark.parametrize(
    "arguments",
    [
        ("substitutes", MARINA, DOCK, "QW-N110"),
        ("whynot", MARINA, DOCK, "QW-N131"),
        ("weigh", MARINA, DOCK),
        ("whatif", TRUCKS, "--liquid", "diesel:20"),
        ("swap", MARINA, DOCK, "QW-N110"),
        ("drawing", MARINA, DOCK),
    ],
)
def test_no_command_meets_a_fault_of_its_own(
    arguments: tuple[object, ...], spoutline: Any, allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    done = spoutline(*arguments)
    assert done.code in (1, 2), done.err
    assert "no set fits" not in done.out.lower()


def test_a_plan_tells_what_sets_chosen_together_could_still_save(
    spoutline: Any, written: Callable[..., Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    two = [{"label": label, "liquid": {"family": "gasoline", "blend_percent": 10}} for label in "12"]
    monkeypatch.setattr(Commonality, "open_minor", 1_234)
    alone = written(*two)
    assert "could still be saved" not in spoutline("plan", alone).out
    assert json.loads(spoutline("plan", alone, "--json").out)["still_to_save_minor"] == 0
    together = written(*two, stock_price="35")
    assert "at most 12.34 USD could still be saved" in " ".join(spoutline("plan", together).out.split())
    assert json.loads(spoutline("plan", together, "--json").out)["still_to_save_minor"] == 1_234
