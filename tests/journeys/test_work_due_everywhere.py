"""A service firm asks what is due at all its stations: on the command line, in a table and in a calendar.

Days are counted by hand: 30 days for a month (Oklahoma Administrative Code 165:26-2-92(c)), the same day of the next
year for a year.
"""

from __future__ import annotations

import csv
import json
import shutil
from datetime import date
from io import StringIO
from pathlib import Path

import icalendar
import pytest

from paper_text import text_of
from program_runs import Spoutline
from spoutline.bootstrap import Settings, open_workbench
from spoutline.model.survey import Survey

GASOLINE = {"label": "1A", "liquid": {"family": "gasoline", "blend_percent": 10}}


@pytest.fixture
def own(database_to_copy: Path, tmp_path: Path) -> tuple[str, str]:
    """Return the options of a book with three stations, one of them surveyed twice."""
    path = tmp_path / "own.sqlite3"
    shutil.copy(database_to_copy, path)
    bench = open_workbench(Settings(database=str(path), profiles=tmp_path / "profiles"))
    try:
        for name in ("Fern Pond Fuels", "Heron Ford Fuels", "Quiet Mill Fuels", "Heron Ford Fuels"):
            bench.book().create(Survey.model_validate({"site": {"name": name}, "positions": [GASOLINE]}))
    finally:
        bench.close()
    return ("--database", str(path))


def test_the_work_due_at_all_stations_comes_overdue_first(
    spoutline: Spoutline, tmp_path: Path, own: tuple[str, str]
) -> None:
    for site, item, day in (
        ("Fern Pond Fuels", "shear_valve", "2025-11-20"),
        ("Fern Pond Fuels", "hose_pulled_out", "2026-10-01"),
        ("Heron Ford Fuels", "continuity", "2026-11-29"),
    ):
        assert spoutline("record", "inspected", site, "1A", item, "--on", day, *own).code == 0
    table, calendar = tmp_path / "due.csv", tmp_path / "due.ics"
    asked = ("due", "--on", "2026-11-29", *own)
    told = spoutline(*asked, "--every", "monthly", "--every", "yearly", "--csv", table, "--ics", calendar)
    assert told.code == 1  # something is overdue
    # the station without a record is named, not passed over
    assert "Quiet Mill Fuels, 1A" in told.err
    assert "--in-service" in told.err
    rows = list(csv.DictReader(StringIO(table.read_text(encoding="utf-8-sig"), newline="")))
    seen = {(row["site"], row["item"]): (row["due"], row["overdue_days"], row["last_done"]) for row in rows}
    assert len(seen) == len(rows)  # the station surveyed twice is there once
    assert seen["Fern Pond Fuels", "hose_pulled_out"] == ("2026-10-31", "29", "2026-10-01")
    assert seen["Fern Pond Fuels", "shear_valve"] == ("2026-11-20", "9", "2025-11-20")
    assert seen["Heron Ford Fuels", "continuity"] == ("2027-11-29", "0", "2026-11-29")
    assert {row["every"] for row in rows} == {"monthly", "yearly"}
    days = [row["due"] for row in rows]
    assert days == sorted(days)
    lines = told.out.splitlines()
    assert [line[:10] for line in lines] == days
    pulled = next(line for line in lines if "Fern Pond Fuels, 1A  hose_pulled_out" in line)
    assert "overdue 29 d" in pulled
    events = icalendar.Calendar.from_ical(calendar.read_bytes()).walk("VEVENT")
    assert min(event.decoded("dtstart") for event in events) == date(2026, 11, 29)
    # until a day, as a document, after the work was done
    spoutline("record", "inspected", "Fern Pond Fuels", "1A", "hose_pulled_out", "--on", "2026-11-29", *own)
    document = json.loads(spoutline(*asked, "--json", "--until", "2026-12-29").out)
    pulled_again = [one for one in document["due"] if one["item"] == "hose_pulled_out"]
    # 29 November and 30 days
    assert [(one["site"], one["due"], one["overdue_days"]) for one in pulled_again] == [
        ("Fern Pond Fuels", "2026-12-29", 0),
        ("Heron Ford Fuels", "2026-12-29", 0),
    ]
    assert all(one["due"] <= "2026-12-29" for one in document["due"])
    assert document["uncounted"][0]["site"] == "Quiet Mill Fuels"
    # a day for stations without records; files of the program are written anew without asking
    again = spoutline(*asked, "--in-service", "2026-11-28", "--csv", table, "--ics", calendar)
    assert again.err == ""
    assert "Quiet Mill Fuels, 1A" in again.out


def test_bad_days_are_named_and_nothing_is_written(spoutline: Spoutline, tmp_path: Path, own: tuple[str, str]) -> None:
    table = tmp_path / "due.csv"
    for option in ("--on", "--until", "--in-service"):
        done = spoutline("due", option, "yesterday", "--csv", table, *own)
        assert done.code == 2
        assert option in done.err
        assert "YYYY-MM-DD" in done.err
    assert not table.exists()


def test_nothing_overdue_ends_with_0(spoutline: Spoutline, own: tuple[str, str]) -> None:
    spoutline("record", "inspected", "Heron Ford Fuels", "1A", "continuity", "--on", "2026-11-29", *own)
    done = spoutline("due", "--on", "2026-11-29", *own)
    assert done.code == 0
    assert "overdue" not in done.out


def test_the_work_due_is_a_paper_in_the_language_asked_for(
    spoutline: Spoutline, tmp_path: Path, own: tuple[str, str]
) -> None:
    spoutline("record", "inspected", "Fern Pond Fuels", "1A", "hose_pulled_out", "--on", "2026-10-01", *own)
    pdf, page = tmp_path / "due.pdf", tmp_path / "due.html"
    asked = ("due", "--on", "2026-11-29", "--every", "monthly", "--pdf", pdf, "--html", page, "--language", "de", *own)
    assert spoutline(*asked).code == 1
    told = " ".join(text_of(pdf).split())
    assert told.index("Überfällig") < told.index("Fern Pond Fuels")
    # 1 October and 30 days are 31 October, 29 days before 29 November
    assert "31.10.2026 29 T überfällig" in told
    assert "Quiet Mill Fuels, 1A: keine datierte Aufzeichnung" in told
    assert "29 T überfällig" in page.read_text(encoding="utf-8")
