from __future__ import annotations

from typing import TYPE_CHECKING, cast

import pytest
from pytestqt.qtbot import QtBot

from spoutline.book.records import StaleSurvey, StoredSurvey
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.positions import add_position, remove_position, rename_position
from spoutline.gui.session import Changed, SaveState, Session
from spoutline.model.faults import StoreFault
from spoutline.model.survey import Position, Site, Survey
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

SURVEY = Survey(site=Site(name="Invented Corner"), positions=(Position(label="A1"), Position(label="A2")))


class FakeBook:
    """Keeps surveys in memory and fails when told to."""

    def __init__(self) -> None:
        self.saved: list[Survey] = []
        self.fault: Exception | None = None

    def save(self, stored: StoredSurvey, survey: Survey) -> StoredSurvey:
        if self.fault is not None:
            raise self.fault
        self.saved.append(survey)
        return StoredSurvey(id=stored.id, revision=stored.revision + 1, survey=survey)


class FakeWorkbench:
    """Hands out the fake book."""

    def __init__(self, book: FakeBook) -> None:
        self._book = book

    def book(self) -> FakeBook:
        return self._book


@pytest.fixture
def book() -> FakeBook:
    return FakeBook()


@pytest.fixture
def fake_session(qtbot: QtBot, book: FakeBook) -> Session:
    return Session(cast("Workbench", FakeWorkbench(book)), StoredSurvey(id=1, revision=1, survey=SURVEY), UnitSystem.SI)


def test_every_edit_undo_and_redo_reaches_the_book_before_the_call_returns(
    fake_session: Session, book: FakeBook
) -> None:
    after = add_position(SURVEY, "A3", "2")
    assert make_edit(fake_session, after, "Add", "A3")
    assert book.saved == [after]
    fake_session.undo_stack.undo()
    assert book.saved == [after, SURVEY]
    fake_session.undo_stack.redo()
    assert book.saved == [after, SURVEY, after]
    assert fake_session.stored.revision == 4


def test_edit_that_changes_nothing_is_none(fake_session: Session, book: FakeBook) -> None:
    assert not make_edit(fake_session, SURVEY, "Nothing")
    assert fake_session.undo_stack.count() == 0
    assert book.saved == []


def test_undo_turns_back_to_the_position_that_was_looked_at(fake_session: Session) -> None:
    make_edit(fake_session, add_position(SURVEY, "A3", "2"), "Add", "A3")
    assert fake_session.label == "A3"
    fake_session.undo_stack.undo()
    assert fake_session.label == "A1"
    fake_session.undo_stack.redo()
    assert fake_session.label == "A3"


def test_focus_follows_a_renamed_and_leaves_a_removed_position(fake_session: Session) -> None:
    make_edit(fake_session, rename_position(SURVEY, "A1", "Pump", "1"), "Rename", "Pump")
    assert fake_session.label == "Pump"
    after, focus = remove_position(fake_session.survey, "Pump")
    make_edit(fake_session, after, "Remove", focus)
    assert fake_session.label == "A2"


def test_undo_menu_names_the_edit(fake_session: Session) -> None:
    make_edit(fake_session, add_position(SURVEY, "A3", "2"), "Add a position", "A3")
    assert fake_session.undo_stack.undoText() == "Add a position"


def test_failed_save_keeps_the_edit_and_says_so_until_it_succeeds(fake_session: Session, book: FakeBook) -> None:
    told: list[tuple[SaveState, str]] = []
    fake_session.save_state_changed.connect(lambda state, reason: told.append((state, reason)))
    after = add_position(SURVEY, "A3", "2")
    book.fault = StoreFault("The disk is full.")
    make_edit(fake_session, after, "Add")
    assert fake_session.survey == after
    assert told == [(SaveState.FAILED, "The disk is full.")]
    book.fault = None
    fake_session.save_again()
    assert book.saved == [after]
    assert told[-1][0] is SaveState.SAVED


def stale(fake_session: Session, book: FakeBook) -> tuple[Survey, Survey]:
    mine, theirs = add_position(SURVEY, "mine", "2"), add_position(SURVEY, "theirs", "2")
    book.fault = StaleSurvey(StoredSurvey(id=1, revision=7, survey=theirs))
    make_edit(fake_session, mine, "Add")
    book.fault = None
    return mine, theirs


def test_newer_work_of_others_is_not_overwritten_unasked(fake_session: Session, book: FakeBook) -> None:
    mine, _ = stale(fake_session, book)
    assert fake_session.save_state is SaveState.STALE
    make_edit(fake_session, add_position(mine, "more", "2"), "Add")
    assert book.saved == []


def test_keeping_mine_saves_over_the_newer_revision(fake_session: Session, book: FakeBook) -> None:
    mine, _ = stale(fake_session, book)
    fake_session.keep_mine()
    assert book.saved == [mine]
    assert fake_session.stored.revision == 8


def test_taking_theirs_turns_to_the_newer_revision(fake_session: Session, book: FakeBook) -> None:
    _, theirs = stale(fake_session, book)
    fake_session.take_theirs()
    assert fake_session.survey == theirs
    assert fake_session.save_state is SaveState.SAVED
    assert fake_session.undo_stack.count() == 0


def test_views_hear_what_changed_and_only_that(fake_session: Session) -> None:
    heard: list[Changed] = []
    fake_session.changed.connect(heard.append)
    fake_session.look_at("A2")
    fake_session.look_at("A2")
    fake_session.look_at("nowhere")
    fake_session.use_units(UnitSystem.US)
    fake_session.look_at_part("N-1")
    assert heard == [Changed.FOCUS, Changed.UNITS, Changed.PART]
