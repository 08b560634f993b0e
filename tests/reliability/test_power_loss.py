"""A short run of the loss of power; ``power_loss.py`` runs longer ones."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from reliability.power_loss import Kind, Step, check_all, recorded, run, states, strace
from reliability.random_edits import first_survey
from spoutline.book.book import open_book

TOOL = strace()
needs_strace = pytest.mark.skipif(TOOL is None, reason="strace is not installed, or may not trace here")


@needs_strace
def test_what_was_shown_as_saved_is_in_the_book_after_a_loss_of_power(tmp_path: Path) -> None:
    assert TOOL is not None
    tally = run(TOOL, tmp_path, seed=7, edits=8)
    assert tally.shown > 0
    assert tally.states > tally.moments > 8
    assert tally.faults == []


@needs_strace
def test_the_trial_notices_a_program_that_does_not_sync(tmp_path: Path) -> None:
    assert TOOL is not None
    database = tmp_path / "book.sqlite3"
    book = open_book(f"sqlite:///{database}")
    survey_id = book.create(first_survey()).id
    book.close()
    before = {database.name: database.read_bytes()}
    steps = recorded(TOOL, tmp_path, database, survey_id, 7, 8)
    careless = [step for step in steps if step.kind is not Kind.SYNC]
    assert check_all(careless, before, survey_id, database, tmp_path, 7).faults


def test_states_are_beginnings_of_what_no_sync_has_met() -> None:
    log = [Step(Kind.WRITE, "log", 0, b"a" * 600), Step(Kind.WRITE, "log", 600, b"b")]
    steps = [*log, Step(Kind.WRITE, "book", 0, b"c")]
    held = [{name: bytes(content) for name, content in files.items()} for files in states({}, steps, random.Random(1))]
    assert {"log": b"a" * 600 + b"b", "book": b"c"} in held
    assert {"log": b"a" * 600 + b"b"} in held
    assert all(len(files.get("log", b"")) in (0, 512, 600, 601) for files in held)
