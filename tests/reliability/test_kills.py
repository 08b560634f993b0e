"""A few of the kill trials; ``kill_trials.py`` runs as many as are asked for."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from reliability import kill_trials
from reliability.kill_trials import faults_of
from reliability.random_edits import digest, first_survey
from spoutline.book.book import open_book


@pytest.mark.skipif(not hasattr(os, "fork"), reason="the trials fork, which this system cannot")
def test_what_was_shown_as_saved_is_in_the_book_after_a_kill() -> None:
    # in a process of its own: one that has a window already cannot fork another
    script = Path(kill_trials.__file__)
    command = [sys.executable, str(script), "--count", "6", "--seed", "20310501"]
    environment = {**os.environ, "PYTHONPATH": str(script.parents[1])}
    done = subprocess.run(command, env=environment, capture_output=True, text=True, check=False)
    found = re.search(r"6 kills, (\d+) states shown as saved, .* 0 faults", done.stdout)
    assert found is not None, done.stdout + done.stderr
    assert int(found[1]) > 0
    assert done.returncode == 0


def test_the_trials_notice_a_revision_that_is_lost_or_another(tmp_path: Path) -> None:
    path = tmp_path / "book.sqlite3"
    book = open_book(f"sqlite:///{path}")
    stored = book.create(first_survey())
    book.close()
    assert faults_of(path, stored.id, {1: digest(first_survey())}) == []
    assert faults_of(path, stored.id, {2: "00"}) == ["revision 2 was shown as saved and is lost"]
    assert faults_of(path, stored.id, {1: "00"}) == ["revision 1 was shown as saved and is another"]
