from __future__ import annotations

import threading
from typing import TYPE_CHECKING, cast

import pytest
from pytestqt.qtbot import QtBot

from spoutline.book.records import RemovedSurvey, SettingName, StaleSurvey, StoredSurvey
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.positions import add_position, remove_position, rename_position
from spoutline.gui.session import Changed, SaveState, Session
from spoutline.model.faults import BusyStore, ReadOnlyStore, StoreFault
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Position, Site, Survey
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

SURVEY = Survey(site=Site(name="Invented Corner"), positions=(Position(label="A1"), Position(label="A2")))


class FakeBook:
    """Keeps surveys in memory and fails when told to; ``gate`` holds a save back."""

    place = None

    def __init__(self) -> None:
        self.saved: list[Survey] = []
        self.back: list[Survey] = []
        self.remembered: dict[SettingName, str] = {}
        self.fault: Exception | None = None
        self.current = StoredSurvey(id=1, revision=1, survey=SURVEY)
        self.gate = threading.Event()
        self.gate.set()
        self.savers: set[str] = set()

    def save(self, stored: StoredSurvey, survey: Survey) -> StoredSurvey:
        self.savers.add(threading.current_thread().name)
        self.gate.wait(10)
        if self.fault is not None:
            raise self.fault
        self.saved.append(survey)
        self.current = StoredSurvey(id=stored.id, revision=stored.revision + 1, survey=survey)
        return self.current

    def put_back(self, stored: StoredSurvey, survey: Survey) -> StoredSurvey:
        self.back.append(survey)
        self.current = StoredSurvey(id=stored.id, revision=stored.revision + 1, survey=survey)
        return self.current

    def current_revision(self, survey_id: int) -> int:
        if self.fault is not None:
            raise self.fault
        return self.current.revision

    def stored(self, survey_id: int) -> StoredSurvey:
        return self.current

    def remember(self, name: SettingName, value: str) -> None:
        if self.fault is not None:
            raise self.fault
        self.remembered[name] = value


class FakeWorkbench:
    """Hands out the fake book."""

    def __init__(self, book: FakeBook) -> None:
        self._book = book

    def saving_book(self) -> FakeBook:
        return self._book


@pytest.fixture
def book() -> FakeBook:
    return FakeBook()


@pytest.fixture
def fake_session(qtbot: QtBot, book: FakeBook) -> Session:
    return Session(cast("Workbench", FakeWorkbench(book)), book.current, UnitSystem.SI)


def edited(session: Session, label: str) -> Survey:
    after = add_position(session.survey, label, "2")
    make_edit(session, after, "Add")
    return after


def wait_state(qtbot: QtBot, session: Session, state: SaveState) -> None:
    qtbot.waitUntil(lambda: session.save_state is state, timeout=5_000)


def test_every_edit_undo_and_redo_reaches_the_book(fake_session: Session, book: FakeBook) -> None:
    after = add_position(SURVEY, "A3", "2")
    assert make_edit(fake_session, after, "Add", "A3")
    assert fake_session.settle()
    assert book.saved == [after]
    fake_session.undo_stack.undo()
    assert fake_session.settle()
    assert book.saved == [after, SURVEY]
    fake_session.undo_stack.redo()
    assert fake_session.settle()
    assert book.saved == [after, SURVEY, after]
    assert fake_session.stored.revision == 4


def test_a_save_that_lasts_does_not_hold_up_the_window_and_is_never_called_saved(
    qtbot: QtBot, fake_session: Session, book: FakeBook
) -> None:
    book.gate.clear()
    first = edited(fake_session, "A3")
    assert fake_session.save_state is SaveState.SAVING
    qtbot.waitUntil(lambda: bool(book.savers))
    assert threading.current_thread().name not in book.savers
    between, last = edited(fake_session, "A4"), edited(fake_session, "A5")
    assert fake_session.save_state is SaveState.SAVING
    told: list[tuple[SaveState, Survey, Survey]] = []
    fake_session.save_state_changed.connect(
        lambda state, _: told.append((state, fake_session.survey, fake_session.stored.survey))
    )
    book.gate.set()
    wait_state(qtbot, fake_session, SaveState.SAVED)
    # in order; the state in between was replaced before its turn, and nothing was shown as saved that was not
    assert book.saved == [first, last]
    assert between not in book.saved
    assert told == [(SaveState.SAVED, last, last)]


def test_edit_that_changes_nothing_is_none(fake_session: Session, book: FakeBook) -> None:
    assert not make_edit(fake_session, SURVEY, "Nothing")
    assert fake_session.undo_stack.count() == 0
    assert fake_session.settle()
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


@pytest.mark.parametrize(
    ("fault", "state"),
    [(StoreFault("The disk is full."), SaveState.FAILED), (ReadOnlyStore("Only read."), SaveState.READ_ONLY)],
)
def test_failed_save_keeps_the_edit_and_says_so_until_it_succeeds(
    qtbot: QtBot, fake_session: Session, book: FakeBook, fault: StoreFault, state: SaveState
) -> None:
    told: list[tuple[SaveState, str]] = []
    fake_session.save_state_changed.connect(lambda state, reason: told.append((state, reason)))
    book.fault = fault
    after = edited(fake_session, "A3")
    assert not fake_session.settle()
    assert fake_session.survey == after
    assert told == [(SaveState.SAVING, ""), (state, str(fault))]
    book.fault = None
    fake_session.save_again()
    assert fake_session.settle()
    assert book.saved == [after]


def test_a_book_that_is_busy_is_tried_again_without_being_asked(
    qtbot: QtBot, fake_session: Session, book: FakeBook
) -> None:
    book.fault = BusyStore("The book does not answer for now.")
    edited(fake_session, "A3")
    wait_state(qtbot, fake_session, SaveState.WAITING)
    assert fake_session.save_reason == "The book does not answer for now."
    last = edited(fake_session, "A4")
    wait_state(qtbot, fake_session, SaveState.WAITING)
    book.fault = None
    wait_state(qtbot, fake_session, SaveState.SAVED)
    assert book.saved == [last]


def test_a_commit_whose_answer_was_lost_is_known_again(qtbot: QtBot, fake_session: Session, book: FakeBook) -> None:
    """The server took the save and went away before it said so: the next try meets its own work, not a stranger's."""
    plain_save, mine = book.save, add_position(SURVEY, "A3", "2")

    def lose_the_answer(stored: StoredSurvey, survey: Survey) -> StoredSurvey:
        if stored.revision != book.current.revision:
            raise StaleSurvey(book.current)
        plain_save(stored, survey)
        if len(book.saved) == 1:
            raise BusyStore("The connection was lost.")
        return book.current

    book.save = lose_the_answer  # type: ignore[method-assign]
    make_edit(fake_session, mine, "Add")
    wait_state(qtbot, fake_session, SaveState.SAVED)
    assert book.saved == [mine]
    assert fake_session.stored == StoredSurvey(id=1, revision=2, survey=mine)
    last = edited(fake_session, "A4")
    assert fake_session.settle()
    assert book.saved == [mine, last]


def stale(fake_session: Session, book: FakeBook) -> tuple[Survey, Survey]:
    mine, theirs = add_position(SURVEY, "mine", "2"), add_position(SURVEY, "theirs", "2")
    book.fault = StaleSurvey(StoredSurvey(id=1, revision=7, survey=theirs))
    make_edit(fake_session, mine, "Add")
    fake_session.settle()
    book.fault = None
    return mine, theirs


def test_newer_work_of_others_is_not_overwritten_unasked(fake_session: Session, book: FakeBook) -> None:
    mine, _ = stale(fake_session, book)
    assert fake_session.save_state is SaveState.STALE
    make_edit(fake_session, add_position(mine, "more", "2"), "Add")
    assert not fake_session.settle()
    assert fake_session.save_state is SaveState.STALE
    assert book.saved == []


def test_keeping_mine_saves_over_the_newer_revision(fake_session: Session, book: FakeBook) -> None:
    mine, _ = stale(fake_session, book)
    fake_session.keep_mine()
    assert fake_session.settle()
    assert book.saved == [mine]
    assert fake_session.stored.revision == 8


def test_taking_theirs_turns_to_the_newer_revision(fake_session: Session, book: FakeBook) -> None:
    _, theirs = stale(fake_session, book)
    fake_session.take_theirs()
    assert fake_session.survey == theirs
    assert fake_session.save_state is SaveState.SAVED
    assert fake_session.undo_stack.count() == 0


def test_a_look_finds_what_others_did_while_nothing_was_edited(
    qtbot: QtBot, fake_session: Session, book: FakeBook
) -> None:
    theirs = StoredSurvey(id=1, revision=2, survey=add_position(SURVEY, "theirs", "2"))
    book.current = theirs
    fake_session.look()
    wait_state(qtbot, fake_session, SaveState.NEWER)
    assert fake_session.save_state.is_saved
    fake_session.take_theirs()
    assert fake_session.survey == theirs.survey
    book.fault = RemovedSurvey(1)
    fake_session.look()
    wait_state(qtbot, fake_session, SaveState.REMOVED)
    book.fault = None
    fake_session.put_back()
    assert fake_session.settle()
    assert book.back == [theirs.survey]


def test_a_look_saves_what_could_not_be_saved_before(qtbot: QtBot, fake_session: Session, book: FakeBook) -> None:
    book.fault = StoreFault("The file is not there.")
    after = edited(fake_session, "A3")
    wait_state(qtbot, fake_session, SaveState.FAILED)
    book.fault = None
    fake_session.look()
    wait_state(qtbot, fake_session, SaveState.SAVED)
    assert book.saved == [after]


def test_choices_are_remembered_off_the_windows_thread_and_who_only_reads_is_not_bothered(
    qtbot: QtBot, fake_session: Session, book: FakeBook
) -> None:
    fake_session.remember(SettingName.UNIT_SYSTEM, "US")
    qtbot.waitUntil(lambda: book.remembered == {SettingName.UNIT_SYSTEM: "US"})
    told: list[str] = []
    fake_session.not_remembered.connect(told.append)
    book.fault = ReadOnlyStore("Only read.")
    fake_session.remember(SettingName.UNIT_SYSTEM, "SI")
    book_fault = StoreFault("The disk is full.")
    qtbot.wait(200)
    book.fault = book_fault
    fake_session.remember(SettingName.LAST_SURVEY, "3")
    qtbot.waitUntil(lambda: told == ["The disk is full."])


def test_views_hear_what_changed_and_only_that(fake_session: Session) -> None:
    heard: list[Changed] = []
    fake_session.changed.connect(heard.append)
    fake_session.look_at("A2")
    fake_session.look_at("A2")
    fake_session.look_at("nowhere")
    fake_session.use_units(UnitSystem.US)
    fake_session.look_at_part(PartRef("N-1"))
    assert heard == [Changed.FOCUS, Changed.UNITS, Changed.PART]
