"""What takes more work than a question may is told on every paper and document, and never as if nothing fitted.

The work that a question may take is set so small that questions over the invented catalog are left open: a search that
went on all the same, in whatever place, would find the sets that are known to be there and fail these tests.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from decimal import Decimal
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from paper_text import text_of
from spoutline import assets
from spoutline.model.refit import Commonality
from spoutline.planning.pack import swap
from spoutline.planning.sets import choice
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.set_query import SetAnswer, SetQuery
from spoutline.search.answer import Decision
from spoutline.search.effort import Exhausted
from spoutline.search.listener import Listener

DEMO = assets.resources_folder() / "demo"
MARINA, DOCK, TRUCKS = DEMO / "marina.json", "Dock gasoline", DEMO / "truck_stop.json"
FITTING = "OB-N107"  # hangs at the dock
NOTHING = 1.0
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


@pytest.fixture
def unproven(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let no set be proven to be the best, by five dollars, and let questions after that take next to no work."""
    whole = ChainSearch.answer

    def answer(search: ChainSearch, query: SetQuery, listener: Listener | None = None) -> SetAnswer:
        found = whole(search, query, listener)
        if found.hanging_set is None or found.floor is None:
            return found
        return SetAnswer(found.hanging_set, Decision.UNDECIDED, found.floor - 500)

    monkeypatch.setattr(ChainSearch, "answer", answer)
    monkeypatch.setattr(choice, "_SPARED", 1e-9)


def by_label(spoutline: Any) -> dict[str, Any]:
    return {one["label"]: one for one in plan_document(spoutline, MARINA)["positions"]}


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


def test_a_set_that_is_not_proven_best_stands_and_says_so(spoutline: Any, request: pytest.FixtureRequest) -> None:
    whole = by_label(spoutline)
    assert not any("set_not_proven_best" in rules_of(one) for one in whole.values())
    request.getfixturevalue("unproven")
    with_price = 0
    for label, one in by_label(spoutline).items():
        assert (one["status"], one["set"]) == ("fits", whole[label]["set"])
        (told,) = (finding for finding in one["findings"] if finding["rule_id"] == "set_not_proven_best")
        assert (told["severity"], told["verdict"]) == ("advice", "note")
        facts = {fact["name"]: fact["value"] for fact in told["facts"]}
        assert facts["limits_that_bind"]
        if "price_floor" in facts:
            price, floor = (facts[name].split() for name in ("set_price", "price_floor"))
            assert (Decimal(price[0]) * 100, price[1]) == (one["price_minor"], "USD")
            assert (Decimal(floor[0]) * 100, floor[1]) == (one["price_minor"] - 500, "USD")
            with_price += 1
        else:
            assert facts["fewest_departures"] < facts["departures_of_set"]
    assert with_price


def test_alternatives_that_were_left_open_have_a_line_of_their_own(
    spoutline: Any, request: pytest.FixtureRequest
) -> None:
    whole = by_label(spoutline)
    assert not any("other_sets_not_decided" in rules_of(one) for one in whole.values())
    request.getfixturevalue("unproven")
    for label, one in by_label(spoutline).items():
        kinds = {
            kind
            for finding in one["findings"]
            if finding["rule_id"] == "other_sets_not_decided"
            for fact in finding["facts"]
            for kind in fact["value"].split(", ")
        }
        there, now = ({other["kind"] for other in plan["alternatives"]} for plan in (whole[label], one))
        assert kinds
        assert there - now <= kinds


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


def test_a_position_that_nothing_fits_says_where_its_reasons_were_left_open(
    spoutline: Any, written: Callable[..., Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    def left_open(*_: Any, **__: Any) -> None:
        raise Exhausted

    monkeypatch.setattr(ConflictFinder, "conflict", left_open)
    (low,) = (
        one for one in plan_document(spoutline, DEMO / "refit_48.json")["positions"] if one["label"] == "4A diesel"
    )
    assert (low["status"], low["conflict"]) == ("does_not_fit", None)
    assert "reasons_not_decided" in rules_of(low)


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
        assert "not decided whether a set fits" in done.err
        assert "without a set" not in done.err  # which is more than is known
    for paper in (bill, short):
        told = text_of(paper)
        assert told.count("not decided") >= (len(labels) if paper is bill else 1)  # a short one tells like ones once
        assert all(label in told for label in labels)
        assert "it is not shown that none fits" in told
    assert text_of(pack).count("Not decided. No set was found") >= len(labels) - 1  # like ones are told together


@pytest.mark.usefixtures("unproven")
def test_a_bill_tells_that_a_set_is_not_proven_best(spoutline: Any, tmp_path: Path) -> None:
    for name, options in (("bill.pdf", ()), ("short.pdf", ("--short",))):
        spoutline("bill", MARINA, "--pdf", tmp_path / name, *options)
        assert "it is not proven that none comes before it" in text_of(tmp_path / name)


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
    assert "not decided whether a set fits" in done.err
    assert "without a set" not in done.err


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


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "at most 12.34 USD could still be saved"),
        ("de", "höchstens 12,34"),
        ("es", "como máximo 12.34"),  # as in the United States
        ("fr", "au plus 12,34"),
    ],
)
@pytest.mark.parametrize("form", [(), ("--short",)])
def test_a_bill_tells_what_sets_chosen_together_could_still_save(
    language: str,
    words: str,
    form: tuple[str, ...],
    spoutline: Any,
    written: Callable[..., Path],
    monkeypatch: pytest.MonkeyPatch,
    tmp_path: Path,
) -> None:
    two = [{"label": label, "liquid": {"family": "gasoline", "blend_percent": 10}} for label in "12"]
    paper = tmp_path / "bill.pdf"
    asked = ("bill", written(*two, stock_price="35"), "--pdf", paper, "--language", language, *form)
    assert spoutline(*asked).code == 0
    assert words not in " ".join(text_of(paper).split())
    monkeypatch.setattr(Commonality, "open_minor", 1_234)
    assert spoutline(*asked, "--force").code == 0
    assert words in " ".join(text_of(paper).split())


def test_a_station_tells_what_no_choice_costs_less_than(
    spoutline: Any, written: Callable[..., Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    """By hand: price of the sets and of their part numbers, less what is left open, is the floor."""
    car = {"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}}
    survey = written(car, {"label": "2", "duty": "truck", "liquid": {"family": "diesel", "blend_percent": 5}})
    command = ("site", survey, "--stock-price", "35")
    assert json.loads(spoutline(*command, "--json").out)["commonality"]["floor"] is None
    monkeypatch.setattr("spoutline.planning.refit.commonality._MOST_COLUMNS", 0)
    found = json.loads(spoutline(*command, "--json").out)["commonality"]
    price = Decimal(found["sets_together"]) + 35 * found["part_numbers_together"]
    assert Decimal(found["left_open"]) > 0
    assert price - Decimal(found["left_open"]) == Decimal(found["floor"])
    assert f"at most {Decimal(found['left_open']):,} could still be saved" in " ".join(spoutline(*command).out.split())


@pytest.mark.parametrize(
    ("language", "words", "thousands", "point"),
    [
        ("en", "no choice costs less than", ",", "."),
        ("de", "keine Wahl kostet weniger als", ".", ","),
        ("es", "ninguna elección cuesta menos de", ",", "."),  # as in the United States
        ("fr", "aucun choix ne coûte moins de", "", ","),
    ],
)
def test_texts_of_a_station_and_of_its_quotation_tell_both_bounds(
    language: str,
    words: str,
    thousands: str,
    point: str,
    spoutline: Any,
    written: Callable[..., Path],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """By hand: sets and the price of their part numbers are the best so far; less the gap, they are the floor."""
    car = {"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}}
    truck = {"label": "2", "duty": "truck", "liquid": {"family": "diesel", "blend_percent": 5}}
    survey, terms = written(car, truck), tmp_path / "terms.toml"
    terms.write_text(f"stock_price = 35\n{TERMS}", "utf-8")
    site = ("site", survey, "--stock-price", "35")
    both = (site, ("quote", survey, "--terms", terms, "--csv", tmp_path / "order.csv", "--force"))
    for command in both:
        assert words not in told_in_one(spoutline, *command, "--language", language)
    monkeypatch.setattr("spoutline.planning.refit.commonality._MOST_COLUMNS", 0)
    found = json.loads(spoutline(*site, "--json").out)["commonality"]
    best = Decimal(found["sets_together"]) + 35 * found["part_numbers_together"]
    for command, floor in zip(both, (Decimal(found["floor"]), best - Decimal("12.34")), strict=True):
        told = told_in_one(spoutline, *command, "--language", language)
        shown = [f"{one:,}".replace(",", "T").replace(".", point).replace("T", thousands) for one in (best, floor)]
        assert f"{words} {shown[1]}." in told
        assert f": {shown[0]}" in told
        monkeypatch.setattr(Commonality, "open_minor", 1_234)  # left open, of the quotation


def told_in_one(spoutline: Any, *command: Any) -> str:
    """Return what a command prints on one line, thousands parted by spaces without them."""
    text = " ".join(spoutline(*command).out.split())
    return re.sub(r"(?<=\d) (?=\d{3})", "", text)


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


@pytest.mark.parametrize(("language", "word"), WORDS)
def test_why_not_says_what_is_known_of_a_part_and_what_could_be_loosened(
    language: str, word: str, spoutline: Any, allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    done = spoutline("whynot", MARINA, DOCK, FITTING, "--language", language)
    assert (done.code, done.err) == (1, "")
    assert FITTING in done.out
    assert word.rsplit(maxsplit=1)[-1] in done.out.lower()
    if language == "en":
        assert "breaks no rule by itself" in done.out
        assert "limits that bind" in done.out


@pytest.fixture
def stock(tmp_path: Path) -> Path:
    path = tmp_path / "stock.csv"
    path.write_text("part_number,quantity\nOB-N101,2\nOB-N109,2\nOB-N113,1\n", encoding="utf-8")
    return path


@pytest.mark.parametrize(("language", "word"), WORDS)
def test_a_swap_says_of_each_part_whether_it_is_decided(
    language: str, word: str, spoutline: Any, stock: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = ("swap", MARINA, DOCK, FITTING, "--stock", stock, "--language", language)
    assert word.rsplit(maxsplit=1)[-1] not in spoutline(*asked).out.lower()
    whole = swap.chooser_for

    class Nothing(Listener):
        most_work = NOTHING

    monkeypatch.setattr(
        swap,
        "chooser_for",
        lambda requirement, pool, context: whole(requirement, pool, replace(context, listener=Nothing())),
    )
    done = spoutline(*asked)
    assert (done.code, done.err) == (1, "")
    assert [line[:9] for line in done.out.splitlines() if not line.startswith(" ")] == [
        "? OB-N109",
        "? OB-N113",
        "✗ OB-N101",
    ]
    assert done.out.lower().count(word.rsplit(maxsplit=1)[-1]) >= 2


def test_a_swap_at_a_position_that_is_not_decided_says_so(
    spoutline: Any, stock: Path, allowing: Callable[[float], None]
) -> None:
    allowing(NOTHING)
    done = spoutline("swap", MARINA, DOCK, FITTING, "--stock", stock)
    assert done.code == 2
    assert "not decided whether a set fits this position" in done.err
