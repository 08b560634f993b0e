"""`why` where there is no set: text, document, bounds, and the survey in which a way out is taken."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from cli.test_substitutes_command import TOO_FAR
from paper_text import text_of

LATE = {
    "label": "late",
    "liquid": {"family": "gasoline", "blend_percent": 10},
    "decisions": {"longest_lead_time_days": 0},
}
DIESEL_VAPOR = {
    "label": "vapor",
    "liquid": {"family": "diesel", "blend_percent": 5},
    "vapour_wanted": "balance",
}


def test_the_document_satisfies_its_schema_and_names_both_demands(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("why", written(TOO_FAR), "far", "--json")
    assert done.code == 1
    document = json.loads(done.out)
    jsonschema.Draft202012Validator(json.loads(spoutline("schema", "--output", "why").out)).validate(document)
    found = document["no_set"]
    assert found["ending"] == "complete"
    assert [{one["line"] for one in conflict["demands"]} for conflict in found["conflicts"]] == [
        {"hose_length", "reach"}
    ]
    figures = {one["line"]: one for one in found["conflicts"][0]["figures"]}
    assert figures["hose_length"]["asked"] == pytest.approx(18 * 0.3048)  # NFPA 30A 6.5.1 (from memory): 18 ft
    assert figures["reach"]["attained"] < figures["reach"]["asked"]
    (way,) = found["ways"]
    assert (way["number"], way["line"], way["by_answer"]) == (1, "reach", False)
    assert [[one["line"] for one in group] for group in found["beyond_the_station"]] == [["hose_length"]]


def test_a_document_with_a_set_has_no_reasons_against_one(spoutline: Any, written: Callable[..., Path]) -> None:
    assert json.loads(spoutline("why", written(), "1", "--json").out)["no_set"] is None


@pytest.mark.parametrize(
    ("language", "cannot", "way"),
    [
        ("en", "What cannot be had together", "1. Accept a lead time of"),
        ("de", "Was nicht zugleich geht", "1. Eine Lieferzeit von"),
        ("es", "Lo que no puede cumplirse a la vez", "1. Aceptar un plazo de entrega de"),
        ("fr", "Ce qui ne peut aller ensemble", "1. Accepter un délai de livraison de"),
    ],
)
def test_it_is_told_in_every_language(
    language: str, cannot: str, way: str, spoutline: Any, written: Callable[..., Path]
) -> None:
    told = spoutline("why", written(LATE), "late", "--language", language).out
    assert cannot in told
    assert way in told
    document = json.loads(spoutline("why", written(LATE), "late", "--json").out)
    slots = document["no_set"]["conflicts"][0]["slots"]
    assert slots
    for slot in slots:  # no part comes from stock, so each slot is empty, and the text has its count
        assert slot["left"] == 0
        assert str(slot["there"]) in told
        assert slot["nearest"][0]["part_number"] in told
        misses = [near["breaks"][0]["by"] for near in slot["nearest"]]
        assert misses == sorted(misses)
        assert misses[0] > 0


def test_a_way_out_is_accepted_into_another_file(spoutline: Any, written: Callable[..., Path], tmp_path: Path) -> None:
    path, other = written(LATE), tmp_path / "other.json"
    before = path.read_bytes()
    done = spoutline("why", path, "late", "--json", "--way", "1", "--accept", other)
    way = json.loads(done.out)["no_set"]["ways"][0]
    assert path.read_bytes() == before
    after = json.loads(other.read_text("utf-8"))
    assert after["positions"][0]["decisions"]["longest_lead_time_days"] == way["needed"]
    plan = json.loads(spoutline("plan", other, "--json").out)["positions"][0]
    assert [link["part_number"] for link in plan["set"]] == way["set"]
    assert plan["price_minor"] == way["price_minor"]


def test_contradicting_answers_are_told_apart(spoutline: Any, written: Callable[..., Path]) -> None:
    found = json.loads(spoutline("why", written(DIESEL_VAPOR), "vapor", "--json").out)["no_set"]
    assert [{one["answer"] for one in conflict["demands"]} for conflict in found["conflicts"]] == [{"liquid", "vapour"}]
    assert found["ways"][0]["answers"] == [
        {"answer": "vapour", "family": None, "blend_percent": None, "vapour": "none"}
    ]


@pytest.mark.parametrize(
    ("arguments", "named"),
    [
        (("--way", "1"), "--accept"),
        (("--accept", "x.json"), "--way"),
        (("--way", "9", "--accept", "x.json"), "--way"),
        (("--most", "0"), "--most"),
    ],
)
def test_bad_answers_are_refused_and_nothing_is_written(
    arguments: tuple[str, ...],
    named: str,
    spoutline: Any,
    written: Callable[..., Path],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    path = written(LATE)
    monkeypatch.chdir(tmp_path)
    done = spoutline("why", path, "late", *arguments)
    assert done.code == 2
    assert named in done.err
    assert not (tmp_path / "x.json").exists()


def test_a_bound_that_was_reached_is_said(spoutline: Any, written: Callable[..., Path]) -> None:
    told = spoutline("why", written(TOO_FAR), "far", "--most", "1").out
    assert "There may be more" in told
    assert "Nothing that people at the station" not in told  # which is not known then


@pytest.mark.parametrize(
    ("language", "annex"),
    [
        ("en", "Annex: why no set fits"),
        ("de", "Anhang: warum kein Satz passt"),
        ("es", "Anexo: por qué no hay ningún conjunto"),
        ("fr", "Annexe : pourquoi aucun ensemble ne convient"),
    ],
)
def test_the_bill_says_on_request_why_no_set_fits(
    language: str, annex: str, spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, bill = (
        written(LATE, {**LATE, "label": "late too"}, {"label": "fits", "liquid": LATE["liquid"]}),
        tmp_path / "b.pdf",
    )
    arguments = ("bill", path, "--pdf", bill, "--without-calculations", "--force", "--language", language)
    assert spoutline(*arguments).code == 1
    assert annex not in " ".join(text_of(bill.read_bytes()).split())
    assert spoutline(*arguments, "--why").code == 1
    paper = " ".join(text_of(bill.read_bytes()).split())
    assert paper.count(annex) >= 1
    way = json.loads(spoutline("why", path, "late", "--json").out)["no_set"]["ways"][0]
    assert way["set"]
    told = spoutline("why", path, "late", "--language", language).out
    sentence = next(line for line in told.splitlines() if line.strip().startswith("1.")).strip().removeprefix("1. ")
    assert sentence.split("(")[0].strip() in paper
    assert all(number in paper for number in way["set"])


def test_a_paper_without_a_set_is_the_same_each_time(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path = written(TOO_FAR, DIESEL_VAPOR)
    papers = []
    for name in ("a.pdf", "b.pdf"):
        spoutline("bill", path, "--pdf", tmp_path / name, "--without-calculations", "--why")
        papers.append((tmp_path / name).read_bytes())
    assert papers[0] == papers[1]


def test_the_reasons_are_a_paper_of_their_own(spoutline: Any, written: Callable[..., Path], tmp_path: Path) -> None:
    against, for_it, mail = tmp_path / "late.pdf", tmp_path / "parts.html", tmp_path / "late.eml"
    done = spoutline("why", written(LATE), "late", "--pdf", against, "--mail", mail, "--dated", "2026-11-29")
    assert done.code == 1, done.err
    assert against.read_bytes()[:4] == b"%PDF"
    told = " ".join(text_of(against).split())
    for sentence in ("Why no set fits", "What cannot be had together", "Accept a lead time of"):
        assert sentence in told
    assert "Subject: Why no set fits" in mail.read_text(encoding="ascii")
    assert spoutline("why", written(), "1", "--pdf", for_it).code == 0
    assert "Why these parts" in for_it.read_text(encoding="utf-8")
