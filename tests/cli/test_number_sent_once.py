"""A number goes out with one content alone, whatever command would write its papers.

Common practice, no source: who holds two papers of one number and different amounts cannot tell which stands.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "{number}"
dated = 2026-11-25
"""
DEARER = """
[freight]
amount = 80
"""
SENT = {"--pdf": "q.pdf", "--html": "q.html", "--mail": "q.eml", "--xlsx": "q.xlsx"}


@pytest.fixture
def run(spoutline: Any, tmp_path: Path, database_to_copy: Path) -> Callable[..., Any]:
    """Return a function that runs a command on a book of its own."""
    own = Path(shutil.copy(database_to_copy, tmp_path / "own.sqlite3"))
    return lambda *arguments: spoutline(*arguments, "--database", own)


@pytest.fixture
def terms(tmp_path: Path) -> Callable[..., Path]:
    """Return a function that writes terms and returns their file."""

    def write(number: str = "HS-1", more: str = "") -> Path:
        path = tmp_path / f"terms{len(list(tmp_path.glob('terms*')))}.toml"
        path.write_text(TERMS.format(number=number) + more, encoding="utf-8")
        return path

    return write


@pytest.fixture
def survey(run: Callable[..., Any], written: Callable[..., Path], terms: Callable[..., Path]) -> Path:
    """Return the survey of a station whose quotation was sent as HS-1."""
    path = written()
    assert run("quotation", "keep", path, "--terms", terms(), "--by", "Odile").code == 0
    assert run("quotation", "issue", 1, "--by", "Odile").code == 0
    return path


@pytest.mark.parametrize("option", SENT)
def test_no_paper_with_other_content_is_written_under_a_number_that_was_sent(
    run: Callable[..., Any], survey: Path, terms: Callable[..., Path], tmp_path: Path, option: str
) -> None:
    paper, order = tmp_path / SENT[option], tmp_path / "order.csv"
    late = run("quote", survey, "--terms", terms(more=DEARER), option, paper, "--csv", order)
    assert late.code == 2
    assert "heading.number: 'HS-1'" in late.err or "heading.number: HS-1" in late.err
    assert "to Hollow Ford Fuels" in late.err
    assert "`spoutline quotation revise 1`" in late.err
    assert not paper.exists()
    assert not order.exists()


def test_another_number_is_what_would_be_right(
    run: Callable[..., Any], survey: Path, terms: Callable[..., Path], tmp_path: Path
) -> None:
    paper = tmp_path / "q.pdf"
    assert run("quote", survey, "--terms", terms("HS-2", DEARER), "--pdf", paper).code == 0
    assert paper.exists()


def test_what_was_sent_is_written_again(
    run: Callable[..., Any], survey: Path, terms: Callable[..., Path], tmp_path: Path
) -> None:
    again, printed = tmp_path / "again.pdf", tmp_path / "printed.pdf"
    assert run("quote", survey, "--terms", terms(), "--pdf", again).code == 0
    assert run("quotation", "print", 1, "--pdf", printed).code == 0
    assert again.read_bytes() == printed.read_bytes()


def test_what_stays_in_the_house_is_written_and_so_is_what_only_a_draft_has(
    run: Callable[..., Any], survey: Path, terms: Callable[..., Path], tmp_path: Path
) -> None:
    order, paper = tmp_path / "order.csv", tmp_path / "q.pdf"
    assert run("quote", survey, "--terms", terms(more=DEARER), "--csv", order).code == 0
    assert run("quotation", "keep", survey, "--terms", terms("HS-3"), "--by", "Odile").code == 0
    assert run("quote", survey, "--terms", terms("HS-3", DEARER), "--pdf", paper).code == 0
    assert order.exists()
    assert paper.exists()


@pytest.mark.parametrize(
    ("language", "told"),
    [("de", "eigene Nummer"), ("es", "su propio número"), ("fr", "son propre numéro")],
)
def test_it_is_told_in_every_language(
    run: Callable[..., Any], survey: Path, terms: Callable[..., Path], tmp_path: Path, language: str, told: str
) -> None:
    asked = ("quote", survey, "--terms", terms(more=DEARER), "--pdf", tmp_path / "q.pdf", "--language", language)
    assert told in " ".join(run(*asked).err.split())
