"""Named cases of `convert`: side by side, the report of one of them, every language, what cannot be had."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import icalendar
import pytest

from paper_text import text_of
from program_runs import Spoutline
from spoutline.bootstrap.demos import demo_survey

CASES = ("--case", "Half stays=keep:1", "--case", "Sold early=sold:5,B20")


@pytest.fixture
def survey(tmp_path: Path) -> Path:
    """Return a station of two hoses that lose recovery and one for diesel, with a case of its own."""
    data = demo_survey("conversion_assist").model_dump(mode="json")
    data["positions"] = [data["positions"][0], data["positions"][2], data["positions"][-1]]
    data["positions"][-1]["liquid"]["blend_percent"] = 5
    data["positions"][-1]["liquid_today"] = None
    data["conversion"]["cases"] = [{"name": "Kept", "retention": True}]
    path = tmp_path / "survey.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    return path


def test_cases_stand_beside_what_the_survey_asks(spoutline: Spoutline, survey: Path) -> None:
    done = spoutline("convert", survey, *CASES, "--cases", "--json")
    document = json.loads(done.out)
    assert document["case"] == ""
    cases = {one["name"]: one for one in document["cases"]}
    assert list(cases) == ["", "Kept", "Half stays", "Sold early"]
    assert [cases[name]["losing_recovery"] for name in cases] == [2, 0, 1, 2]
    assert cases["Sold early"]["years"] == 5
    assert cases["Half stays"]["positions"] == ["1A regular"]
    assert cases[""]["cost"] == str(document["money"]["total"])
    assert float(cases["Kept"]["cost"]) < float(cases["Half stays"]["cost"]) < float(cases[""]["cost"])
    plain = json.loads(spoutline("convert", survey, "--json").out)
    assert plain["cases"] == []  # those of the survey only where they are asked for
    assert plain["money"] == document["money"]


def test_the_report_of_a_case_says_so_on_every_paper(spoutline: Spoutline, survey: Path, tmp_path: Path) -> None:
    report, page, plan = (tmp_path / name for name in ("report.pdf", "page.pdf", "plan.ics"))
    asked = ("--of-case", "Half stays", "--pdf", report, "--one-page", page, "--ics", plan, "--start", "2027-03-01")
    done = spoutline("convert", survey, *CASES, *asked)
    assert "Case: Half stays (recovery stays on 1)" in done.out
    told = " ".join(text_of(report).split())
    assert "The cases side by side" in told
    assert "Sold early: diesel becomes B20; the station is sold after 5 years. Changed at: 4B diesel." in told
    for paper in (report, page):
        assert "Case: Half stays" in text_of(paper)
    base = tmp_path / "base.ics"
    spoutline("convert", survey, "--ics", base, "--start", "2027-03-01")
    events = [icalendar.Calendar.from_ical(path.read_bytes()).walk("VEVENT") for path in (plan, base)]
    assert all("(Half stays)" in str(one["summary"]) for one in events[0])
    uids = [{str(one["uid"]) for one in found} for found in events]
    assert uids[0].isdisjoint(uids[1])  # a question in the calendar moves nothing of the plan


@pytest.mark.parametrize(
    ("language", "told"),
    [
        (
            "de",
            ("Die Fälle nebeneinander", "Half stays: die Gasrückführung bleibt auf 1.", "Wie die Aufnahme verlangt"),
        ),
        ("es", ("Los casos lado a lado", "Half stays: la recuperación se queda en 1.", "Como pide el levantamiento")),
        ("fr", ("Les cas côte à côte", "Half stays : la récupération reste sur 1.", "Comme le relevé le demande")),
    ],
)
def test_cases_are_told_in_every_language(
    spoutline: Spoutline, survey: Path, language: str, told: tuple[str, ...]
) -> None:
    text = spoutline("convert", survey, *CASES, "--language", language).out.replace("\N{NO-BREAK SPACE}", " ")
    assert all(one in text for one in told)


@pytest.mark.parametrize(
    ("arguments", "named"),
    [
        (("--case", "x"), "--case"),
        (("--case", "x=E15", "--case", "x=B20"), "--case"),
        (("--case", "x=keep:9"), "name an island of the station: 1, 2, 4"),
        (("--of-case", "Kept"), "--of-case"),  # not asked for with --cases
        ((*CASES, "--of-case", "Other"), "Half stays, Sold early"),
    ],
)
def test_cases_that_cannot_be_had_are_named(
    spoutline: Spoutline, survey: Path, tmp_path: Path, arguments: tuple[Any, ...], named: str
) -> None:
    done = spoutline("convert", survey, *arguments, "--csv", tmp_path / "tasks.csv")
    assert done.code == 2
    assert named in done.err
    assert not (tmp_path / "tasks.csv").exists()
