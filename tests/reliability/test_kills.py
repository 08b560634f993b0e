"""A few of the kill trials; ``kill_trials.py`` runs as many as are asked for."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from reliability.kill_trials import faults_of, run
from reliability.random_edits import digest, first_survey
from spoutline.book.book import open_book


@pytest.mark.skipif(not hasattr(os, "fork"), reason="the trials fork, which this system cannot")
@pytest.mark.filterwarnings("ignore:This process .* is multi-threaded:DeprecationWarning")
def test_what_was_shown_as_saved_is_in_the_book_after_a_kill(tmp_path: Path) -> None:
    tally = run(6, tmp_path, seed=20310501)
    assert tally.kills == 6
    assert tally.shown > 0
    assert tally.faults == []


def test_the_trials_notice_a_revision_that_is_lost_or_another(tmp_path: Path) -> None:
    path = tmp_path / "book.sqlite3"
    book = open_book(f"sqlite:///{path}")
    stored = book.create(first_survey())
    book.close()
    assert faults_of(path, stored.id, {1: digest(first_survey())}) == []
    assert faults_of(path, stored.id, {2: "00"}) == ["revision 2 was shown as saved and is lost"]
    assert faults_of(path, stored.id, {1: "00"}) == ["revision 1 was shown as saved and is another"]
