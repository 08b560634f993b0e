"""The day on which to ask a customer again: kept beside the quotation, listed when it is due, over with the answer."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from datetime import date, timedelta
from pathlib import Path

import pytest

from program_runs import Run
from spoutline.bootstrap import Settings, open_workbench
from stores.quotation_life import SI, quoted


@pytest.fixture
def drafts(own_database: Path) -> Path:
    """Return a book with three drafts: F-1, F-2 and F-3."""
    with closing(open_workbench(Settings(database=str(own_database)))) as bench:
        for number in ("F-1", "F-2", "F-3"):
            bench.quoting().life().keep(quoted(bench, heading={"number": number, "dated": date(2026, 11, 25)}))
    return own_database


def listed(own_run: Run, *asked: object) -> list[tuple[str, str | None]]:
    found = json.loads(own_run("quotation", "list", "--json", *asked))["quotations"]
    return [(one["number"], one["follow_up"]) for one in found]


def test_quotations_to_be_followed_up_are_listed_by_their_day(own_run: Run, drafts: Path) -> None:
    assert own_run("quotation", "follow-up", 1, "2026-12-05") == "1  F-1 r1  draft  follow up 2026-12-05\n"
    own_run("quotation", "follow-up", "F-3", "2026-12-01")
    assert listed(own_run) == [("F-3", "2026-12-01"), ("F-2", None), ("F-1", "2026-12-05")], (
        "in the order of their changes"
    )
    assert [one for one, _ in listed(own_run, "--sort", "follow-up")] == ["F-3", "F-1", "F-2"]
    assert listed(own_run, "--on", "2026-11-30") == []
    assert [one for one, _ in listed(own_run, "--due", "--on", "2026-12-01")] == ["F-3"]
    assert [one for one, _ in listed(own_run, "--on", "2026-12-05")] == ["F-3", "F-1"]
    text = own_run("quotation", "list", "--on", "2026-12-05")
    assert "follow up 2026-12-01" in text
    assert "F-2" not in text
    assert "follow up 2026-12-05" in own_run("quotation", "show", 1)
    own_run("quotation", "follow-up", 1, "--none")
    assert [one for one, _ in listed(own_run, "--on", "2027-12-05")] == ["F-3"]
    assert "follow up" not in own_run("quotation", "show", 1)


def test_due_means_due_today_where_no_day_is_named(own_run: Run, drafts: Path) -> None:
    today = date.today()
    own_run("quotation", "follow-up", 1, today - timedelta(days=1))
    own_run("quotation", "follow-up", 2, today + timedelta(days=2))
    assert [one for one, _ in listed(own_run, "--due")] == ["F-1"]


@pytest.mark.parametrize(
    ("said", "told"),
    [
        (("1", "next week"), "is no day"),
        (("1",), "is required"),
        (("1", "2026-12-01", "--none"), "not allowed with"),
        (("77", "2026-12-01"), "no such quotation"),
    ],
)
def test_what_is_no_day_or_quotation_is_told(own_run: Run, drafts: Path, said: tuple[str, ...], told: str) -> None:
    assert told in own_run("quotation", "follow-up", *said, expect=2)


def test_the_day_changes_nothing_that_was_sent_and_the_answer_ends_it(own_run: Run, drafts: Path) -> None:
    def kept() -> tuple[object, ...]:
        with closing(sqlite3.connect(drafts)) as raw:
            revision = raw.execute("SELECT document, pdf, workbook FROM quotation_revisions WHERE quotation_id = 1")
            row = raw.execute("SELECT version, changed_at FROM quotations WHERE id = 1")
            return (*revision.fetchone(), *row.fetchone())

    with closing(open_workbench(Settings(database=str(drafts)))) as bench:
        bench.quoting().life().issue(bench.quoting().life().stored(1), "Odile", SI)
    before = kept()
    own_run("quotation", "follow-up", 1, "2026-12-05")
    assert kept() == before
    own_run("quotation", "answer", 1, "declined", "--by", "Odile")
    assert listed(own_run, "--on", "2026-12-31") == []
    own_run("quotation", "follow-up", 1, "2027-03-01")  # asked again in spring all the same
    assert listed(own_run, "--on", "2027-03-01") == [("F-1", "2027-03-01")]


def test_a_book_of_before_is_brought_up_to_date(own_run: Run, drafts: Path) -> None:
    with closing(sqlite3.connect(drafts)) as raw, raw:
        raw.execute("UPDATE book_version SET version_num = 'book_0010'")
        raw.execute("ALTER TABLE quotations DROP COLUMN follow_up")
        raw.execute("ALTER TABLE quotation_revisions DROP COLUMN html")
        for table in ("supplier_layouts", "stock_entries", "stock_levels"):
            raw.execute(f"DROP TABLE {table}")
    assert [one for one, _ in listed(own_run)] == ["F-3", "F-2", "F-1"]
    own_run("quotation", "follow-up", 2, "2026-12-05")
    assert listed(own_run, "--on", "2026-12-05") == [("F-2", "2026-12-05")]
