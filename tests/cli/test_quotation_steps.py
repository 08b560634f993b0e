"""Steps in the life of a quotation on the command line: two people at once, and which option is ordered."""

from __future__ import annotations

import csv
import io
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.quotation_papers import QuotationPapers
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

ONE_OPTION = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "HS-1"
dated = 2026-11-25
"""
TWO_OPTIONS = """
[[options]]
title = "Single-use"
breakaway = "single_use"
[[options]]
title = "Reconnectable"
breakaway = "reconnectable"
"""


@pytest.fixture
def go(spoutline: Any, written: Callable[..., Path], tmp_path: Path, database_to_copy: Path) -> Callable[..., Any]:
    """Return a function that runs ``quotation`` on a book of its own."""
    own = Path(shutil.copy(database_to_copy, tmp_path / "own.sqlite3"))
    return lambda *arguments: spoutline("quotation", *arguments, "--database", own)


def keep(go: Callable[..., Any], survey: Path, folder: Path, text: str) -> None:
    path = folder / "terms.toml"
    path.write_text(text, encoding="utf-8")
    assert go("keep", survey, "--terms", path, "--by", "Odile").code == 0


def options_in(go: Callable[..., Any], path: Path) -> set[str]:
    """Print the lines for an order system into ``path`` and return the options that they are of."""
    assert go("print", 1, "--csv", path).code == 0
    return {row["option"] for row in csv.DictReader(io.StringIO(path.read_text(encoding="utf-8-sig")))}


def test_who_issues_second_is_told_and_overwrites_nothing(
    go: Callable[..., Any], written: Callable[..., Path], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep(go, written(), tmp_path, ONE_OPTION)
    make = QuotationPapers.pdf

    def while_merle_issues(papers: QuotationPapers, *arguments: Any) -> bytes:
        monkeypatch.setattr(QuotationPapers, "pdf", make)
        other = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
        other.quoting().life().issue(other.quoting().life().stored(1), "Merle", Display(UnitSystem.SI))
        other.close()
        return make(papers, *arguments)

    monkeypatch.setattr(QuotationPapers, "pdf", while_merle_issues)
    late = go("issue", 1, "--by", "Odile")
    assert late.code == 2
    assert "changed by somebody else in the meantime (it is now issued, revision 1)" in late.err
    assert [line.split()[-1] for line in go("show", 1).out.splitlines() if " r1 issued" in line] == ["Merle"]


def test_the_paper_for_screen_readers_is_kept_with_what_was_issued_and_written_again(
    go: Callable[..., Any], written: Callable[..., Path], tmp_path: Path
) -> None:
    keep(go, written(), tmp_path, ONE_OPTION)
    issued = tmp_path / "issued.html"
    assert go("issue", 1, "--by", "Odile", "--html", issued).code == 0
    assert go("print", 1, "--html", tmp_path / "again.html", "--pdf", tmp_path / "again.pdf").code == 0
    assert (tmp_path / "again.html").read_bytes() == issued.read_bytes()
    assert issued.read_text(encoding="utf-8").startswith("<!DOCTYPE html>")
    # it is what the book holds, not a paper made anew
    with closing(sqlite3.connect(tmp_path / "own.sqlite3")) as raw, raw:
        ((kept,),) = raw.execute("SELECT html FROM quotation_revisions").fetchall()
        assert kept == issued.read_bytes()
        raw.execute("UPDATE quotation_revisions SET html = ?", (b"as it was sent",))
    assert go("print", 1, "--html", tmp_path / "kept.html").code == 0
    assert (tmp_path / "kept.html").read_bytes() == b"as it was sent"
    # a version that kept none issued it: the paper is made from the revision
    with closing(sqlite3.connect(tmp_path / "own.sqlite3")) as raw, raw:
        raw.execute("UPDATE quotation_revisions SET html = NULL")
    assert go("print", 1, "--html", tmp_path / "made.html").code == 0
    assert (tmp_path / "made.html").read_bytes() == issued.read_bytes()
    assert go("print", 1).code == 2


def test_an_order_names_its_option_where_there_is_a_choice(
    go: Callable[..., Any], written: Callable[..., Path], tmp_path: Path
) -> None:
    keep(go, written(), tmp_path, ONE_OPTION + TWO_OPTIONS)
    assert go("issue", 1, "--by", "Odile").code == 0
    assert options_in(go, tmp_path / "offered.csv") == {"Single-use", "Reconnectable"}
    for arguments in ((), ("--option", "Gold")):
        refused = go("answer", 1, "accepted", "--by", "Merle", *arguments)
        assert refused.code == 2
        assert "option: " in refused.err
        assert "Single-use, Reconnectable" in refused.err
    assert go("answer", 1, "declined", "--by", "Merle", "--option", "Reconnectable").code == 2
    assert go("answer", 1, "accepted", "--by", "Merle", "--option", "Reconnectable", "--note", "by letter").code == 0
    assert "Merle: Reconnectable; by letter" in go("show", 1).out
    assert options_in(go, tmp_path / "ordered.csv") == {"Reconnectable"}


def test_an_only_option_need_not_be_named(go: Callable[..., Any], written: Callable[..., Path], tmp_path: Path) -> None:
    keep(go, written(), tmp_path, ONE_OPTION)
    assert go("issue", 1, "--by", "Odile").code == 0
    assert go("answer", 1, "accepted", "--by", "Merle").code == 0
    assert "r1 accepted  Merle" in go("show", 1).out
